"""What is due and when: one row a kind and subject, found by an index on the instant."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from enum import StrEnum

from sqlalchemy import Insert, delete, select, update
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncSession

from db.once import on_sqlite
from db.schema import Due
from plans.localtime import data_version


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
    CALL = "call"
    """(alert)"""
    ABSENCE = "absence"
    """(absence)"""
    THINGS = "things"
    """(person)"""
    RETEST = "retest"
    """(person)"""
    TRACES = "traces"
    """(chat of somebody who was erased)"""
    LETTER = "letter"
    """(a client's copy of a message to many)"""


async def plan(session: AsyncSession, kind: DueKind, subject: int, at: datetime) -> None:
    """Sets when something is due; planning it again moves it."""
    await session.execute(_planning(session, kind, subject, at, only_earlier=False))


async def plan_by(session: AsyncSession, kind: DueKind, subject: int, at: datetime) -> None:
    """Sets when something is due at the latest; what is planned earlier stays."""
    await session.execute(_planning(session, kind, subject, at, only_earlier=True))


def _planning(session: AsyncSession, kind: DueKind, subject: int, at: datetime, *, only_earlier: bool) -> Insert:
    """One statement, so that two who plan the same at once do not meet."""
    insert = (sqlite if on_sqlite(session) else postgresql).insert(Due)
    row = insert.values(kind=kind, subject=subject, at=at, zone_data=data_version())
    statement: Insert = row.on_conflict_do_update(
        index_elements=[Due.kind, Due.subject],
        set_={"at": insert.excluded.at, "zone_data": insert.excluded.zone_data},
        where=Due.at > insert.excluded.at if only_earlier else None,
    )
    return statement


async def planned(session: AsyncSession, kind: DueKind, subject: int) -> datetime | None:
    """When something is due; None if it is not planned."""
    return await session.scalar(select(Due.at).where(Due.kind == kind, Due.subject == subject))


async def cancel(session: AsyncSession, kind: DueKind, subject: int) -> None:
    """Forgets something that was due."""
    await session.execute(delete(Due).where(Due.kind == kind, Due.subject == subject))


async def due_by(session: AsyncSession, now: datetime, *, limit: int) -> Sequence[Due]:
    """What is due by now, the earliest first."""
    found = await session.scalars(select(Due).where(Due.at <= now).order_by(Due.at, Due.id).limit(limit))
    return found.all()


async def by_other_zone_data(session: AsyncSession, *, limit: int) -> Sequence[Due]:
    """What was planned with another release of the zone data than this program's, the earliest first of each."""
    found: list[Due] = []
    for other in (Due.zone_data < data_version(), Due.zone_data > data_version()):
        chosen = select(Due).where(other).order_by(Due.zone_data, Due.at).limit(limit - len(found))
        found += await session.scalars(chosen)
    return found


async def leave_as_is(session: AsyncSession, row: int) -> None:
    """Notes that an instant stands, whatever this program's zone data gives."""
    await session.execute(update(Due).where(Due.id == row).values(zone_data=data_version()))


async def next_instant(session: AsyncSession) -> datetime | None:
    """The earliest instant at which anything is due."""
    return await session.scalar(select(Due.at).order_by(Due.at).limit(1))


async def next_of(session: AsyncSession, kind: DueKind) -> datetime | None:
    """The earliest instant at which something of a kind is due."""
    return await session.scalar(select(Due.at).where(Due.kind == kind).order_by(Due.at).limit(1))
