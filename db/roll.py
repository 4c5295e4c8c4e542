"""All clients of a coach with what a list of them needs, in four statements whatever their number."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from sqlalchemy import Select, exists, func, or_, select
from sqlalchemy.ext.asyncio import AsyncSession
from sqlalchemy.orm import aliased

from db.courses import CourseState, as_checkin
from db.schema import Alert, CheckInRow, Coach, Course, LedgerRow, Person, ProgrammeVersion
from plans.checkin import CheckIn


@dataclass(frozen=True, slots=True)
class Listed:
    """One client: course, person, the programme's title, open alerts, the newest row's kind, the last answer."""

    course: Course
    person: Person
    title: str
    alerts: Sequence[Alert]
    kind: str | None
    """Of the newest row."""
    said_on: date | None
    said: CheckIn


async def listed(session: AsyncSession, coach: Coach) -> list[Listed]:
    """A coach's clients whose course is not stopped; one that another keeps up gives way to it."""
    later = aliased(Course)
    kept_up = exists().where(later.after_id == Course.id)
    own = (Course.coach_id == coach.id) & (Course.state != CourseState.STOPPED) & ~kept_up
    courses = await session.execute(
        select(Course, Person, ProgrammeVersion.title)
        .join(Person, Person.id == Course.person_id)
        .join(ProgrammeVersion, ProgrammeVersion.id == Course.version_id)
        .where(own)
        .order_by(Course.id)
    )
    opened = await session.scalars(
        select(Alert)
        .join(Course, Course.id == Alert.course_id)
        .where(own, Alert.closed_at.is_(None))
        .order_by(Alert.id)
    )
    alerts: dict[int, list[Alert]] = {}
    for alert in opened:
        alerts.setdefault(alert.course_id, []).append(alert)
    kinds = await _newest(session, coach)
    said = await _last_said(session, coach)
    return [
        Listed(course, person, title, alerts.get(course.id, ()), kinds.get(course.id), *said.get(course.id, _NOTHING))
        for course, person, title in courses
    ]


_NOTHING: tuple[date | None, CheckIn] = (None, CheckIn())


async def _newest(session: AsyncSession, coach: Coach) -> dict[int, str]:
    """The kind of each course's newest row."""
    last = _last_dates(coach).subquery()
    rows = await session.execute(
        select(LedgerRow.course_id, LedgerRow.kind).join(
            last, (last.c.course_id == LedgerRow.course_id) & (last.c.on == LedgerRow.local_date)
        )
    )
    return {course: kind for course, kind in rows}


async def _last_said(session: AsyncSession, coach: Coach) -> dict[int, tuple[date | None, CheckIn]]:
    """Each course's last answer and its date."""
    answered = or_(
        CheckInRow.completion.is_not(None), CheckInRow.pain.is_not(None), CheckInRow.kind.is_not(None), CheckInRow.sore
    )
    last = _last_dates(coach).join(CheckInRow, CheckInRow.ledger_id == LedgerRow.id).where(answered).subquery()
    rows = await session.execute(
        select(LedgerRow.course_id, LedgerRow.local_date, CheckInRow)
        .join(last, (last.c.course_id == LedgerRow.course_id) & (last.c.on == LedgerRow.local_date))
        .join(CheckInRow, CheckInRow.ledger_id == LedgerRow.id)
    )
    return {course: (on, as_checkin(row)) for course, on, row in rows}


def _last_dates(coach: Coach) -> Select[int, date]:
    return (
        select(LedgerRow.course_id, func.max(LedgerRow.local_date).label("on"))
        .join(Course, Course.id == LedgerRow.course_id)
        .where(Course.coach_id == coach.id)
        .group_by(LedgerRow.course_id)
    )
