"""What is kept of clients' courses, read at once for an export: a few statements, however many courses there are."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, Select, select
from sqlalchemy.ext.asyncio import AsyncSession

from db import courses
from db.courses import CourseState
from db.schema import (
    Alert,
    Answer,
    Coach,
    CoachNote,
    Course,
    LedgerRow,
    MeasureRow,
    Overrule,
    Person,
    ProgrammeVersion,
)
from plans.ledger import Entry


@dataclass(frozen=True, slots=True)
class Kept:
    """One course that has begun, with all that belongs to it, oldest first."""

    course: Course
    person: Person
    version: ProgrammeVersion
    versions: Mapping[int, ProgrammeVersion]
    """Every version that a row is of, by its number; shared by all courses that were read."""
    rows: Sequence[tuple[LedgerRow, Entry, datetime | None]]
    """Each row, what the rules see of it, and when it was last answered."""
    tests: Sequence[MeasureRow]
    """Those that are done."""
    alerts: Sequence[Alert]
    overrules: Sequence[Overrule]
    notes: Sequence[CoachNote]
    words: Sequence[Answer]
    """The client's own words about the rows, and the movements in which a nerve spoke."""


_BEGUN = Course.state.in_([CourseState.ACTIVE, CourseState.WAITING, CourseState.FINISHED]) | (
    (Course.state == CourseState.STOPPED) & Course.starts_on.is_not(None)
)
"""Who is still joining, or stopped before the first date, has no record yet."""


async def of_coach(session: AsyncSession, coach_id: int, person_id: int | None = None) -> list[Kept]:
    """Every course of a coach's clients, or of one of them, whatever became of it; never one of another coach."""
    chosen = Course.coach_id == coach_id
    return await _kept(session, chosen if person_id is None else chosen & (Course.person_id == person_id))


async def of_person(session: AsyncSession, person_id: int) -> list[Kept]:
    """Every course of somebody's own."""
    return await _kept(session, Course.person_id == person_id)


def clients_of(coach_id: int) -> Select[int]:
    """The numbers of the people who have a course with a coach."""
    return select(Course.person_id).where(Course.coach_id == coach_id)


def key_of(coach: Coach) -> str:
    """How the keys of messages begin that carry records of a coach's clients: an erasure finds them by it."""
    return f"export:{coach.id}:"


async def _kept(session: AsyncSession, chosen: ColumnElement[bool]) -> list[Kept]:
    chosen = chosen & _BEGUN
    found = await session.execute(
        select(Course, Person, ProgrammeVersion)
        .join(Person, Person.id == Course.person_id)
        .join(ProgrammeVersion, ProgrammeVersion.id == Course.version_id)
        .where(chosen)
        .order_by(Course.id)
    )
    theirs = select(Course.id).where(chosen)
    used = select(LedgerRow.version_id).where(LedgerRow.course_id.in_(theirs))
    of_rows = select(ProgrammeVersion).where(ProgrammeVersion.id.in_(used))
    versions = {one.id: one for one in await session.scalars(of_rows)}
    rows: defaultdict[int, list[tuple[LedgerRow, Entry, datetime | None]]] = defaultdict(list)
    for row, entry, at in await courses.histories(session, LedgerRow.course_id.in_(theirs)):
        rows[row.course_id].append((row, entry, at))
    of_row = {row.id: row.course_id for several in rows.values() for row, _entry, _at in several}
    told = await session.scalars(
        select(Answer)
        .join(LedgerRow, LedgerRow.id == Answer.ledger_id)
        .where(LedgerRow.course_id.in_(theirs), Answer.field.in_(("words", "barred")))
        .order_by(Answer.id)
    )
    words = _by(told, lambda answer: of_row.get(answer.ledger_id or 0, 0))
    tests, alerts, overrules, notes = [
        _by(await session.scalars(select(table).where(table.course_id.in_(theirs)).order_by(table.id)), _course_of)
        for table in (MeasureRow, Alert, Overrule, CoachNote)
    ]
    return [
        Kept(
            course,
            person,
            version,
            versions,
            rows[course.id],
            [test for test in tests[course.id] if test.value is not None],
            alerts[course.id],
            overrules[course.id],
            notes[course.id],
            words[course.id],
        )
        for course, person, version in found
    ]


def _course_of(row: Any) -> int:
    return int(row.course_id)


def _by(rows: Iterable[Any], course_of: Any) -> defaultdict[int, list[Any]]:
    found: defaultdict[int, list[Any]] = defaultdict(list)
    for row in rows:
        found[course_of(row)].append(row)
    return found
