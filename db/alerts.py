"""What a coach must know: one open alert a client and cause, later events join it."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime

from sqlalchemy import select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Alert, Course, LedgerRow


async def raise_alert(
    session: AsyncSession,
    course: Course,
    *,
    cause: str,
    at_once: bool,
    facts: Mapping[str, int | float | str | bool],
    row: LedgerRow | None,
    now: datetime,
) -> tuple[Alert, bool]:
    """Opens an alert, or joins the open one of the same client and cause; True when the coach is to be told now.

    An alert that waited for the list and becomes one to tell at once is told at once.
    """
    found = await session.scalar(
        select(Alert).where(Alert.course_id == course.id, Alert.cause == cause, Alert.closed_at.is_(None))
    )
    if found is not None:
        found.events += 1
        graver = at_once and not found.at_once
        found.at_once = found.at_once or at_once
        return found, graver
    alert = Alert(
        course_id=course.id,
        ledger_id=row.id if row else None,
        cause=cause,
        at_once=at_once,
        facts=dict(facts),
        events=1,
        opened_at=now,
    )
    session.add(alert)
    await session.flush()
    return alert, at_once


async def close_all(session: AsyncSession, course: Course, now: datetime) -> None:
    """Closes a course's open alerts: the coach has dealt with them."""
    await session.execute(
        update(Alert).where(Alert.course_id == course.id, Alert.closed_at.is_(None)).values(closed_at=now)
    )


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
