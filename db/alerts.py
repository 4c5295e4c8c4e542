"""What a coach must know: one open alert a client and cause, later events join it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime
from enum import StrEnum
from typing import Any

from sqlalchemy import exists, func, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db.due import DueKind
from db.schema import Alert, AlertCall, Coach, Course, Due, Helper, LedgerRow, Person
from plans.checkin import Flag


class News(StrEnum):
    """What an event asks for: nothing now, a place on the morning list, a call, or a change of calls not yet seen."""

    NOTHING = "nothing"
    LIST = "list"
    CALL = "call"
    MORE = "more"


QUOTES = 3
"""So many of a client's messages stay with an open alert, the newest. Our own choice."""


async def raise_alert(
    session: AsyncSession,
    course: Course,
    *,
    cause: str,
    at_once: bool,
    red: bool,
    facts: Mapping[str, int | float | str | bool],
    report: Mapping[str, Any],
    row: LedgerRow | None,
    now: datetime,
) -> tuple[Alert, News]:
    """Opens an alert, or joins the open one of the same client and cause; says what is to be done about it.

    What is graver than before, and what comes after somebody has seen the alert, is called anew.
    """
    found = await session.scalar(
        select(Alert).where(Alert.course_id == course.id, Alert.cause == cause, Alert.closed_at.is_(None))
    )
    if found is not None:
        return found, _join(found, at_once=at_once, red=red, facts=facts, report=report)
    alert = Alert(
        course_id=course.id,
        ledger_id=row.id if row else None,
        cause=cause,
        at_once=at_once,
        red=red,
        facts=dict(facts),
        report=dict(report),
        events=1,
        rung=0,
        opened_at=now,
    )
    session.add(alert)
    await session.flush()
    return alert, News.CALL if at_once else News.LIST


def _join(
    found: Alert, *, at_once: bool, red: bool, facts: Mapping[str, int | float | str | bool], report: Mapping[str, Any]
) -> News:
    graver = (at_once, red, _level(facts)) > (found.at_once, found.red, _level(found.facts))
    found.events += 1
    if (_level(facts), _pain(facts)) >= (_level(found.facts), _pain(found.facts)):
        found.facts = dict(facts)
    before = found.report or {}
    quotes = list(dict.fromkeys([*before.get("words", ()), *report.get("words", ())]))[-QUOTES:]
    found.report = {**before, **report, "words": quotes, "since": before.get("since") or report.get("since")}
    found.at_once, found.red = found.at_once or at_once, found.red or red
    if not found.at_once:
        found.told_at = None
        return News.LIST
    if graver or found.seen_at is not None:
        found.seen_at = found.seen_by = None
        found.rung = 0
        return News.CALL
    return News.MORE


def _level(facts: Mapping[str, Any]) -> int:
    levels = [str(level) for level in Flag]
    return levels.index(str(facts["flag"])) if facts.get("flag") in levels else -1


def _pain(facts: Mapping[str, Any]) -> float:
    return float(facts.get("pain", 0) or 0)


async def note_call(session: AsyncSession, alert: Alert, person: Person, outbox_id: int, now: datetime) -> None:
    """Remembers whom a call went to, and with which message."""
    number = await next_number(session, alert)
    session.add(AlertCall(alert_id=alert.id, number=number, person_id=person.id, outbox_id=outbox_id, at=now))
    await session.flush()


async def next_number(session: AsyncSession, alert: Alert) -> int:
    """The number of an alert's next call, from 1."""
    last = await session.scalar(select(func.max(AlertCall.number)).where(AlertCall.alert_id == alert.id))
    return (last or 0) + 1


async def calls_of(session: AsyncSession, alert: Alert) -> Sequence[tuple[AlertCall, Person]]:
    """All calls for an alert, in their order."""
    query = select(AlertCall, Person).join(Person, Person.id == AlertCall.person_id)
    found = await session.execute(query.where(AlertCall.alert_id == alert.id).order_by(AlertCall.number))
    return [(call, person) for call, person in found]


_UNSEEN = (Alert.at_once.is_(True), Alert.seen_at.is_(None), Alert.closed_at.is_(None))
_CALLED = exists().where(Due.kind == DueKind.CALL, Due.subject == Alert.id)
"""Has a next call of its own; an alert without one goes along with a graver one that the same answer raised."""


async def called(session: AsyncSession, course: Course) -> Sequence[Alert]:
    """A client's alerts that are called until somebody has seen them."""
    query = select(Alert).where(Alert.course_id == course.id, *_UNSEEN, _CALLED)
    return (await session.scalars(query.order_by(Alert.id))).all()


async def along(session: AsyncSession, course: Course) -> Sequence[Alert]:
    """A client's unseen alerts that go along with those that are called."""
    query = select(Alert).where(Alert.course_id == course.id, *_UNSEEN, ~_CALLED)
    return (await session.scalars(query.order_by(Alert.id))).all()


async def called_of(session: AsyncSession, coach: Coach) -> Sequence[int]:
    """The numbers of all alerts of a coach's clients that are called until somebody has seen them."""
    query = select(Alert.id).join(Course, Course.id == Alert.course_id)
    return (await session.scalars(query.where(Course.coach_id == coach.id, *_UNSEEN, _CALLED).order_by(Alert.id))).all()


async def unseen_before(session: AsyncSession, moment: datetime) -> int:
    """How many alerts were opened before a moment and have not been seen by anybody."""
    count = select(func.count()).select_from(Alert).where(Alert.opened_at < moment, *_UNSEEN)
    return await session.scalar(count) or 0


async def deaf_coaches(session: AsyncSession) -> Sequence[tuple[Coach, bool]]:
    """Coaches with running courses whose chat refuses messages, and whether anybody else hears their alerts."""
    running = exists().where(Course.coach_id == Coach.id, Course.state.in_(["active", "waiting"]))
    hears = exists().where(
        Helper.coach_id == Coach.id,
        Helper.hears.is_(True),
        Helper.person_id.in_(select(Person.id).where(Person.unreachable_since.is_(None))),
    )
    query = select(Coach, hears).join(Person, Person.id == Coach.person_id)
    found = await session.execute(query.where(Person.unreachable_since.is_not(None), running).order_by(Coach.id))
    return [(coach, heard) for coach, heard in found]


async def list_again(session: AsyncSession, coach_id: int) -> bool:
    """Puts what was told on a list and is still open on the next list once more; False when there is nothing."""
    mine = select(Course.id).where(Course.coach_id == coach_id)
    told = (Alert.at_once.is_(False), Alert.told_at.is_not(None), Alert.closed_at.is_(None))
    again = update(Alert).where(Alert.course_id.in_(mine), *told).values(told_at=None).returning(Alert.id)
    return (await session.execute(again)).first() is not None


async def close_list(session: AsyncSession, coach_id: int, upto: int, now: datetime) -> None:
    """Closes what a coach's morning list has told of, up to an alert's number."""
    mine = select(Course.id).where(Course.coach_id == coach_id)
    await session.execute(
        update(Alert)
        .where(
            Alert.course_id.in_(mine),
            Alert.at_once.is_(False),
            Alert.told_at.is_not(None),
            Alert.closed_at.is_(None),
            Alert.id <= upto,
        )
        .values(closed_at=now)
    )


async def close_all(session: AsyncSession, course: Course, now: datetime) -> None:
    """Closes a course's open alerts: the coach has dealt with them."""
    await session.execute(
        update(Alert).where(Alert.course_id == course.id, Alert.closed_at.is_(None)).values(closed_at=now)
    )


async def ended_open(session: AsyncSession, course: Course) -> bool:
    """Whether a course was ended with a call open, which only its end has closed."""
    query = select(Alert.id).where(
        Alert.course_id == course.id, Alert.at_once.is_(True), Alert.closed_at == course.ended_at
    )
    return await session.scalar(query.limit(1)) is not None


async def told_so_far(session: AsyncSession, course: Course) -> int:
    """How often a coach was to hear at once of something in a course, up to now."""
    query = select(func.sum(Alert.events)).where(Alert.course_id == course.id, Alert.at_once.is_(True))
    return await session.scalar(query) or 0


async def for_list(session: AsyncSession, coach_id: int) -> Sequence[tuple[Alert, Course]]:
    """Alerts of a coach's clients that wait for the morning list."""
    found = await session.execute(
        select(Alert, Course)
        .join(Course, Course.id == Alert.course_id)
        .where(
            Course.coach_id == coach_id,
            Alert.at_once.is_(False),
            Alert.told_at.is_(None),
            Alert.closed_at.is_(None),
        )
        .order_by(Alert.id)
    )
    return [(alert, course) for alert, course in found]


async def open_of(session: AsyncSession, course: Course) -> Sequence[Alert]:
    """A course's open alerts, oldest first."""
    found = await session.scalars(
        select(Alert).where(Alert.course_id == course.id, Alert.closed_at.is_(None)).order_by(Alert.id)
    )
    return found.all()
