"""What is due and when: one row a kind and subject, found by an index on the instant."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from enum import StrEnum

from sqlalchemy import delete, select
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Due


class DueKind(StrEnum):
    """What comes due; the subject is in brackets."""

    MORNING = "morning"
    """(person)"""
    NUDGE = "nudge"
    """(ledger row)"""
    DIGEST = "digest"
    """(coach)"""
    LIST = "list"
    """(coach)"""


async def plan(session: AsyncSession, kind: DueKind, subject: int, at: datetime) -> None:
    """Sets when something is due; planning it again moves it."""
    found = await session.scalar(select(Due).where(Due.kind == kind, Due.subject == subject))
    if found is None:
        session.add(Due(kind=kind, subject=subject, at=at))
    else:
        found.at = at
    await session.flush()


async def plan_by(session: AsyncSession, kind: DueKind, subject: int, at: datetime) -> None:
    """Sets when something is due at the latest; what is planned earlier stays."""
    found = await session.scalar(select(Due).where(Due.kind == kind, Due.subject == subject))
    if found is None or found.at > at:
        await plan(session, kind, subject, at)


async def cancel(session: AsyncSession, kind: DueKind, subject: int) -> None:
    """Forgets something that was due."""
    await session.execute(delete(Due).where(Due.kind == kind, Due.subject == subject))


async def due_by(session: AsyncSession, now: datetime, *, limit: int) -> Sequence[Due]:
    """What is due by now, the earliest first."""
    found = await session.scalars(select(Due).where(Due.at <= now).order_by(Due.at, Due.id).limit(limit))
    return found.all()


async def next_instant(session: AsyncSession) -> datetime | None:
    """The earliest instant at which anything is due."""
    return await session.scalar(select(Due.at).order_by(Due.at).limit(1))


async def next_of(session: AsyncSession, kind: DueKind) -> datetime | None:
    """The earliest instant at which something of a kind is due."""
    return await session.scalar(select(Due.at).where(Due.kind == kind).order_by(Due.at).limit(1))
