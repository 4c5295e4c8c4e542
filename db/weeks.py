"""Weeks of all clients of a coach at once, in a handful of statements, however many clients there are."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from functools import lru_cache
from typing import Any, NamedTuple

from sqlalchemy import ColumnElement, Select, and_, or_, select
from sqlalchemy.ext.asyncio import AsyncSession

from db.courses import OPEN, CourseState
from db.schema import Alert, CheckInRow, Course, LedgerRow, MeasureRow, Outbox, Person, ProgrammeVersion
from plans.checkin import Area, CheckIn, Completion, Flag, FlagState, Kind, Morning, Place, Side, Why
from plans.ledger import Entry, RowKind
from plans.rules import Verdict

AT_ONCE = 5_000
"""Rows that are taken from the database at a time."""


class Lived(NamedTuple):
    """One ledger row as the rules see it (but for the rules that voted), and what else is read of it."""

    id: int
    entry: Entry
    verdict: Verdict | None
    """What was decided to get to this row."""
    reason: str | None
    lacks: tuple[str, ...]
    minutes: int | None


@dataclass(frozen=True, slots=True)
class Client:
    """One course: its client, its rows and tests, oldest first, and its open alerts."""

    course: Course
    person: Person
    rows: Sequence[Lived]
    tests: Sequence[MeasureRow]
    """All that are done, whenever that was."""
    alerts: Sequence[Alert]


@dataclass(frozen=True, slots=True)
class Weeks:
    """The clients of a coach or of a version, in the order of their courses, and the versions they go through."""

    clients: Sequence[Client]
    versions: Mapping[int, ProgrammeVersion]


async def of_coach(session: AsyncSession, coach_id: int, *, since: date, ended_since: datetime) -> Weeks:
    """Every course that has begun and is open, or ended since an instant, with its rows from a date on."""
    alive = or_(Course.state.in_(OPEN), Course.ended_at >= ended_since)
    return await _weeks(session, and_(Course.coach_id == coach_id, alive), LedgerRow.local_date >= since)


async def of_version(session: AsyncSession, version_id: int) -> Weeks:
    """Every course of a version that has begun, whatever became of it, with all its rows."""
    return await _weeks(session, Course.version_id == version_id, LedgerRow.id > 0)


async def _weeks(session: AsyncSession, chosen: ColumnElement[bool], dated: ColumnElement[bool]) -> Weeks:
    chosen = and_(chosen, Course.state != CourseState.JOINING, Course.starts_on.is_not(None))
    found = (
        await session.execute(
            select(Course, Person).join(Person, Person.id == Course.person_id).where(chosen).order_by(Course.id)
        )
    ).all()
    tests = (await session.scalars(_joined(select(MeasureRow), MeasureRow, chosen).order_by(MeasureRow.id))).all()
    alerts = await session.scalars(
        _joined(select(Alert), Alert, chosen).where(Alert.closed_at.is_(None)).order_by(Alert.id)
    )
    rows = await _rows(session, chosen, dated, _recorded(tests))
    done, opened = _by_course(test for test in tests if test.value is not None), _by_course(alerts)
    versions = await session.scalars(
        select(ProgrammeVersion).where(ProgrammeVersion.id.in_(select(Course.version_id).where(chosen)))
    )
    return Weeks(
        [Client(course, person, rows[course.id], done[course.id], opened[course.id]) for course, person in found],
        {version.id: version for version in versions},
    )


def _joined(statement: Select[Any], table: Any, chosen: ColumnElement[bool]) -> Select[Any]:
    return statement.join(Course, Course.id == table.course_id).where(chosen)


def _by_course(rows: Iterable[Any]) -> defaultdict[int, list[Any]]:
    found: defaultdict[int, list[Any]] = defaultdict(list)
    for row in rows:
        found[row.course_id].append(row)
    return found


def _recorded(tests: Iterable[MeasureRow]) -> set[int | None]:
    """Ledger rows whose test is done, all sides of it."""
    done: set[int | None] = set()
    under_way: set[int | None] = {None}
    for test in tests:
        (under_way if test.value is None else done).add(test.ledger_id)
    return done - under_way


async def _rows(
    session: AsyncSession, chosen: ColumnElement[bool], dated: ColumnElement[bool], recorded: set[int | None]
) -> defaultdict[int, list[Lived]]:
    """The rows of each course, oldest first."""
    statement = (
        _joined(select(*_COLUMNS, *_SAID), LedgerRow, chosen)
        .outerjoin(CheckInRow, CheckInRow.ledger_id == LedgerRow.id)
        .outerjoin(Outbox, Outbox.id == LedgerRow.outbox_id)
        .where(dated)
        .order_by(LedgerRow.course_id, LedgerRow.local_date)
        .execution_options(yield_per=AT_ONCE)
    )
    found: defaultdict[int, list[Lived]] = defaultdict(list)
    connection = await session.connection()
    async for some in (await connection.stream(statement)).partitions():
        for row in some:
            found[row[0]].append(_lived(row, recorded))
    return found


_COLUMNS = (
    LedgerRow.course_id,
    LedgerRow.id,
    LedgerRow.local_date,
    LedgerRow.kind,
    LedgerRow.day,
    LedgerRow.level,
    LedgerRow.prescribed,
    LedgerRow.withheld,
    Outbox.state,
    LedgerRow.morning,
    LedgerRow.lacks,
    LedgerRow.minutes,
    LedgerRow.decision["verdict"].as_string(),
    LedgerRow.decision["reason"].as_string(),
)
_SAID = (
    CheckInRow.completion,
    CheckInRow.pain,
    CheckInRow.kind,
    CheckInRow.place,
    CheckInRow.area,
    CheckInRow.side,
    CheckInRow.why,
    CheckInRow.half,
    CheckInRow.sore,
    CheckInRow.odd,
    CheckInRow.tightness,
    CheckInRow.flag,
    CheckInRow.flag_state,
)
"""In the order of `CheckIn`."""

_KINDS = {kind.value: kind for kind in RowKind}
_MORNINGS = {morning.value: morning for morning in Morning}
_VERDICTS = {verdict.word: verdict for verdict in Verdict}
_TYPES = (Completion, None, Kind, Place, Area, Side, Why, None, bool, bool, None, Flag, FlagState)


def _lived(row: Sequence[Any], recorded: set[int | None]) -> Lived:
    _course, id_, on, kind, day, level, prescribed, withheld, state, morning, lacks, minutes, verdict, reason, *said = (
        row
    )
    entry = Entry(
        on,
        _KINDS[kind],
        day,
        level,
        prescribed,
        state == "sent" or withheld,
        _checkin(*said),
        _MORNINGS[morning] if morning else None,
        id_ in recorded,
    )
    return Lived(id_, entry, _VERDICTS.get(verdict), reason, tuple(lacks or ()), minutes)


@lru_cache(maxsize=4096)
def _checkin(*said: Any) -> CheckIn:
    """A stored check-in; many clients say the same, and share it."""
    return CheckIn(*map(_typed, said, _TYPES))


def _typed(value: Any, kind: type[Any] | None) -> Any:
    if kind is bool:
        return bool(value)
    return value if kind is None or value is None else kind(value)
