"""What only one process does at a time: a lease in the database that its holder renews and others take over."""

from __future__ import annotations

from sqlalchemy import or_
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncSession

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
