"""Rehearsals that were asked for in the chat: done one after the other, outside of any write."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import delete, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Person, ProgrammeVersion, Rehearsal
from db.writer import announce

TOPIC = "rehearsal"
"""What is announced when there may be something to rehearse."""
TRIES = 3
"""So often one is begun; one that ends the process each time is given up."""


@dataclass(frozen=True, slots=True)
class Asked:
    """A rehearsal in a worker's hands."""

    id: int
    version: int
    person: int
    tries: int


async def ask(session: AsyncSession, version: ProgrammeVersion, person: Person, now: datetime) -> None:
    """Asks for a rehearsal; one that this person still waits for is asked for once only."""
    waits = select(Rehearsal.id).where(Rehearsal.version_id == version.id, Rehearsal.person_id == person.id)
    if await session.scalar(waits) is None:
        session.add(Rehearsal(version_id=version.id, person_id=person.id, tries=0, lease_until=0.0, asked_at=now))
        await session.flush()
    announce(TOPIC)


async def claim(session: AsyncSession, worker: str, *, machine_now: float, lease_seconds: float) -> Sequence[Asked]:
    """Takes the oldest one that nobody has in hand."""
    oldest = select(Rehearsal.id).where(Rehearsal.lease_until <= machine_now).order_by(Rehearsal.id).limit(1)
    rows = await session.execute(
        update(Rehearsal)
        .where(Rehearsal.id.in_(oldest.with_for_update(skip_locked=True)))
        .values(worker=worker, lease_until=machine_now + lease_seconds, tries=Rehearsal.tries + 1)
        .returning(Rehearsal.id, Rehearsal.version_id, Rehearsal.person_id, Rehearsal.tries),
        execution_options={"synchronize_session": False},
    )
    return [Asked(*row) for row in rows]


async def done(session: AsyncSession, asked: Asked, worker: str) -> bool:
    """Forgets a rehearsal that is over; False if another worker has taken it over."""
    gone = delete(Rehearsal).where(Rehearsal.id == asked.id, Rehearsal.worker == worker).returning(Rehearsal.id)
    return await session.scalar(gone) is not None


async def open_work(session: AsyncSession) -> list[str]:
    """The rehearsals that are still to be told of, in words."""
    return [f"rehearsal {number}" for number in await session.scalars(select(Rehearsal.id).order_by(Rehearsal.id))]


async def free_all(session: AsyncSession) -> None:
    """Frees what an ended process had in hand."""
    await session.execute(update(Rehearsal).values(lease_until=0.0))
