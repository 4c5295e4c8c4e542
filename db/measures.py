"""Tests of flexibility: begun with one row a side, open until the last try of each is in."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db import courses
from db.schema import Course, LedgerRow, MeasureRow
from plans.dose import LEFT, RIGHT
from plans.measures import MEASURES, Measure, counted
from plans.programme import MeasureTask


async def taken(session: AsyncSession, course: Course) -> Sequence[MeasureRow]:
    """All tests of a course, and of those that it keeps up, that have their value, oldest first."""
    ids = await courses.with_earlier(session, course)
    query = select(MeasureRow).where(MeasureRow.course_id.in_(ids), MeasureRow.value.is_not(None))
    return (await session.scalars(query.order_by(MeasureRow.id))).all()


async def days_tested(session: AsyncSession, course: Course, measure: str) -> set[int | None]:
    """The programme's days on which a test was asked for and taken."""
    query = select(LedgerRow.day).join(MeasureRow, MeasureRow.ledger_id == LedgerRow.id)
    taken_here = query.where(LedgerRow.course_id == course.id, MeasureRow.measure == measure)
    return set((await session.scalars(taken_here.where(MeasureRow.value.is_not(None)))).all())


async def adopt(session: AsyncSession, course: Course, row: LedgerRow, task: MeasureTask | None) -> None:
    """A test that was taken before the first day, while waiting, counts as the one that this day asks for."""
    if task is None:
        return
    mine = (MeasureRow.course_id == course.id, MeasureRow.measure == task.measure, MeasureRow.ledger_id.is_(None))
    await session.execute(update(MeasureRow).where(*mine, MeasureRow.value.is_not(None)).values(ledger_id=row.id))


async def open_ones(session: AsyncSession, course: Course) -> Sequence[MeasureRow]:
    """The sides of the test that is being taken, in their order; none when no test is open."""
    query = select(MeasureRow).where(MeasureRow.course_id == course.id, MeasureRow.value.is_(None))
    return (await session.scalars(query.order_by(MeasureRow.id))).all()


async def begin(
    session: AsyncSession,
    course: Course,
    measure: Measure,
    *,
    tries: int,
    warm: bool | None,
    row: LedgerRow | None,
    now: datetime,
) -> None:
    """Begins a test anew; what was open is closed first. `row` is the day that asks for it."""
    await close(session, course, now)
    for side in (LEFT, RIGHT) if measure.sides else (None,):
        made = MeasureRow(course_id=course.id, measure=measure.key, side=side, tries=[], wanted=tries, warm=warm)
        made.ledger_id, made.begun_at, made.at = row.id if row is not None else None, now, now
        session.add(made)
    await session.flush()


def add(test: MeasureRow, values: Sequence[float], now: datetime, *, enough: bool = False) -> None:
    """Adds tries to one side's test; with the last one, or when that is enough, it has its value."""
    test.tries = [*test.tries, *values]
    if test.tries and (enough or len(test.tries) >= test.wanted):
        test.value = counted(MEASURES[test.measure], test.tries)
        test.at = now


async def close(session: AsyncSession, course: Course, now: datetime) -> None:
    """Closes an open test with the tries that are in; a side without any was not taken."""
    for test in await open_ones(session, course):
        if test.tries:
            add(test, (), now, enough=True)
        else:
            await session.delete(test)
    await session.flush()
