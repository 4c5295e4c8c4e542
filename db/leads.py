"""Leases in the database: what only one process does at a time, and which workers are alive."""

from __future__ import annotations

from sqlalchemy import BindParameter, ColumnElement, delete, exists, or_
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncSession
from sqlalchemy.orm import InstrumentedAttribute

from db.schema import Lease


async def hold(session: AsyncSession, name: str, holder: str, *, now: float, seconds: float) -> bool:
    """Take or renew the lease `name` in one statement; False while somebody else holds it. `now` is machine time."""
    insert = (sqlite if session.get_bind().dialect.name == "sqlite" else postgresql).insert(Lease)
    free = or_(Lease.holder == holder, Lease.until <= now)
    statement = (
        insert.values(name=name, holder=holder, until=now + seconds)
        .on_conflict_do_update(
            index_elements=[Lease.name],
            set_={"holder": insert.excluded.holder, "until": insert.excluded.until},
            where=free,
        )
        .returning(Lease.name)
    )
    return (await session.execute(statement)).first() is not None


async def give_up(session: AsyncSession, name: str, holder: str) -> None:
    """Let the next one have the lease at once."""
    found = await session.get(Lease, name, with_for_update=True)
    if found is not None and found.holder == holder:
        await session.delete(found)


FORGOTTEN_AFTER = 3600.0
"""Seconds after which a dead worker's sign of life is no longer kept: whatever it held is long free. Our own choice."""


async def beat(session: AsyncSession, worker: str, *, now: float, seconds: float) -> None:
    """Say that `worker` is alive for `seconds` more."""
    await hold(session, _life(worker), worker, now=now, seconds=seconds)
    await session.execute(delete(Lease).where(Lease.until <= now - FORGOTTEN_AFTER))


async def end(session: AsyncSession, worker: str) -> None:
    """Say that `worker` has ended in order and holds nothing."""
    await give_up(session, _life(worker), worker)


def died(worker: InstrumentedAttribute[str | None], now: float | BindParameter[float]) -> ColumnElement[bool]:
    """Whether the worker that a column names has given signs of life and gives none any more."""
    return exists().where(Lease.holder == worker, Lease.name == _LIFE + worker, Lease.until <= now)


_LIFE = "worker:"


def _life(worker: str) -> str:
    return f"{_LIFE}{worker}"
