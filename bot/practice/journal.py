"""A client's course so far, from what is stored: each date, what was said of it, and every vote that led to it.

It only reads. The reasons are the bot's own words (`bot/words/templates/reasons.j2`); the votes are those that were
stored when a row was made, as `easeward explain` shows them.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from functools import lru_cache
from typing import Any

from sqlalchemy import func, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.words import words
from bot.words.facts import facts
from db import courses
from db.engine import Database
from db.schema import CheckInRow, Course, LedgerRow, MeasureRow, Outbox, Person, ProgrammeVersion
from plans.ledger import RowKind
from plans.measures import MEASURES
from plans.programme import Day, Programme
from plans.reading import read_programme
from plans.replay import evidence_of

STANDING = frozenset({RowKind.ASKING, RowKind.WAITING, RowKind.AWAY, RowKind.OFF})
"""Kinds of rows that hand no programme day out: the day in hand is still to come."""
_LANGUAGE = "en"


async def journal(database: Database, chat: int) -> dict[str, Any]:
    """The newest course of a chat's person as plain data; one without any has `programme` None and no rows.

    `rows` are its dates, oldest first; `ahead` are the programme days still to come as they are written; `letters`
    counts the chat's messages by what became of them.
    """
    async with database.reading() as session:
        person = await session.scalar(select(Person).where(Person.chat == chat))
        course = await courses.newest_course(session, person) if person is not None else None
        found: dict[str, Any] = {"chat": chat, "programme": None, "rows": [], "ahead": []}
        found["letters"] = await _letters(session, chat)
        if course is None:
            return found
        version = await session.get_one(ProgrammeVersion, course.version_id)
        programme = _programme(version.digest, version.source)
        rows = await _rows(session, course)
        return found | {
            "programme": programme.title,
            "days": len(programme.days),
            "state": course.state,
            "paused": course.paused,
            "rows": list(_told(programme, rows)),
            "ahead": [_planned(programme, day) for day in _ahead(programme, course, [row for row, *_ in rows])],
        }


@lru_cache(maxsize=8)
def _programme(_digest: str, source: str) -> Programme:
    return read_programme(source)


async def _letters(session: AsyncSession, chat: int) -> dict[str, int]:
    found = await session.execute(
        select(Outbox.state, func.count()).where(Outbox.chat == chat).group_by(Outbox.state).order_by(Outbox.state)
    )
    return {state: count for state, count in found}


_Row = tuple[LedgerRow, CheckInRow | None, list[MeasureRow]]


async def _rows(session: AsyncSession, course: Course) -> Sequence[_Row]:
    query = (
        select(LedgerRow, CheckInRow)
        .outerjoin(CheckInRow, CheckInRow.ledger_id == LedgerRow.id)
        .where(LedgerRow.course_id == course.id)
        .order_by(LedgerRow.local_date)
    )
    tests: dict[int | None, list[MeasureRow]] = {}
    taken = select(MeasureRow).where(MeasureRow.course_id == course.id, MeasureRow.value.is_not(None))
    for test in await session.scalars(taken.order_by(MeasureRow.id)):
        tests.setdefault(test.ledger_id, []).append(test)
    return [(row, said, tests.get(row.id, [])) for row, said in await session.execute(query)]


def _ahead(programme: Programme, course: Course, rows: Sequence[LedgerRow]) -> range:
    """Numbers of the programme days that are still to come."""
    if course.state in (courses.CourseState.FINISHED, courses.CourseState.STOPPED):
        return range(0)
    handed_out = bool(rows) and rows[-1].kind not in STANDING and not rows[-1].prescribed
    return range(course.day + handed_out, len(programme.days) + 1)


def _planned(programme: Programme, number: int) -> dict[str, Any]:
    day = programme.day(number)
    return {"day": number, "kind": day.kind, "test": _task(day), "title": day.title}


def _task(day: Day | None) -> str | None:
    """The test of a programme day."""
    return day.measure.measure if day is not None and day.measure is not None else None


# --- one date -------------------------------------------------------------------------------------------------------


def _told(programme: Programme, rows: Sequence[_Row]) -> Iterator[dict[str, Any]]:
    before: int | None = None
    for row, said, tests in rows:
        yield _row(programme, row, said, tests) | {"came": came(row, before)}
        before = row.day if row.kind in (RowKind.SESSION, RowKind.MEASURE) else before


def _row(programme: Programme, row: LedgerRow, said: CheckInRow | None, tests: Sequence[MeasureRow]) -> dict[str, Any]:
    decision = row.decision or {}
    planned = programme.day(row.day) if row.day is not None else None
    checkin = courses.as_checkin(said)
    votes = decision.get("votes") or []
    return {
        "date": row.local_date.isoformat(),
        "kind": row.kind,
        "day": row.day,
        "title": planned.title if planned is not None else None,
        "test": _task(planned) if row.kind != RowKind.REST else None,
        "level": row.level,
        "withheld": row.withheld,
        "changed": softened(decision),
        "morning": row.morning,
        "completion": checkin.completion,
        "pain": checkin.pain,
        "said": facts(checkin) or None,
        "tests": [_test(test) for test in tests],
        "verdict": decision.get("verdict"),
        "reason": decision.get("reason"),
        "because": because(str(decision.get("reason")), _facts_of(decision)),
        "votes": [_vote(vote, decision) for vote in votes],
        "seen": list(_seen(decision.get("seen") or {})),
    }


def _test(test: MeasureRow) -> str:
    measure = MEASURES[test.measure]
    name = f"{measure.name}, {test.side}" if test.side else measure.name
    return f"{name} {test.value:g} {measure.unit}"


def _facts_of(decision: Mapping[str, Any]) -> Mapping[str, Any]:
    found = [vote["facts"] for vote in decision.get("votes") or () if vote["rule"] == decision.get("reason")]
    return found[0] if found else {}


def softened(decision: Mapping[str, Any]) -> bool:
    """Whether a report before the session has changed a day that was handed out already: it is voted on by itself."""
    return bool(decision.get("votes")) and not decision.get("seen") and decision.get("reason") not in ("lapse", "off")


CAME = {"advance": "on", "repeat": "again", "ease": "lighter", "rest": "off", "refer": "waits"}
"""How a date came about, by the verdict that made it."""


_OF_KIND = {RowKind.ASKING: "asks", RowKind.WAITING: "waits", RowKind.AWAY: "away", RowKind.OFF: "off"}


def came(row: LedgerRow, before: int | None) -> str:
    """How a date came about in one word: first, on, again, lighter, off, waits, asks, away.

    `before` is the programme day of the last date that had a session or test.
    """
    if row.kind in _OF_KIND:
        return _OF_KIND[RowKind(row.kind)]
    if row.kind == RowKind.REST and row.prescribed:
        return "off"
    decision = row.decision or {}
    if softened(decision):
        return "lighter"
    if decision.get("reason") == "start":
        return "first"
    verdict = decision.get("verdict")
    if verdict is None and row.kind == RowKind.SESSION and row.day == before:
        return "again"
    return CAME.get(verdict or "", "on")


# --- in words -------------------------------------------------------------------------------------------------------


def because(rule: str, f: Mapping[str, Any]) -> str | None:
    """Why something follows, in the bot's own words to the client; None where it says nothing."""
    return str(words(_LANGUAGE).say("reasons.because", reason=rule, f=f)) or None


def _vote(vote: Mapping[str, Any], decision: Mapping[str, Any]) -> dict[str, Any]:
    said = because(vote["rule"], vote["facts"])
    return {
        "rule": vote["rule"],
        "verdict": vote["verdict"],
        "tell": vote["tell"],
        "words": said or str(words(_LANGUAGE).say("reasons.seen", reason=vote["rule"], f=vote["facts"])),
        "decided": vote["rule"] == decision.get("reason"),
    }


def _seen(seen: Mapping[str, Any]) -> Iterator[str]:
    """What the rules looked at, a short sentence each; nothing where they had no say."""
    if not seen:
        return
    yield f"The answer: {facts(evidence_of(seen).checkin) or 'none'}."
    for name, value in seen.items():
        sentence = _SEEN.get(name)
        if sentence is not None:
            yield sentence.format(value=_times(value) if name.endswith("tries") else _plain(value))


_SEEN = {
    "morning": "This morning: {value}.",
    "morning_before": "The morning before: {value}.",
    "next_is_heavier": "The next day is a heavier one.",
    "judged_before": "That answer had been judged already; only the morning's word was new.",
    "on_rest": "It followed a rest day.",
    "usual": "It always hurts about {value} of 10 there.",
    "lingering": "The same soreness has been there for long.",
    "weeks": "Mean pain of last week and this one: {value}.",
    "over_tightness": "Tighter than usual by {value} points.",
    "tries": "The day was done {value} before and not passed.",
    "light_tries": "The lightest version was done {value} and not clean.",
    "nerve_before": "There were nerve signs before.",
}
"""A sentence for each part of the evidence but the answer itself and the settings."""


def _times(count: int) -> str:
    return {1: "once", 2: "twice"}.get(count, f"{count} times")


def _plain(value: Any) -> str:
    return " and ".join(f"{part:.1f}" for part in value) if isinstance(value, list | tuple) else str(value)
