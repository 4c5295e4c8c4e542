"""Putting a backup in the place of what is there: all or nothing, and nothing of it leaves a second time."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import delete, select, update
from sqlalchemy.ext.asyncio import AsyncConnection, AsyncSession

from db import copying, erasure
from db.delivery import State
from db.due import DueKind
from db.schema import ChatPace, Due, Inbox, Lease, Note, Outbox

OPEN = (State.WAITING, State.LEASED, State.SENDING)


@dataclass(frozen=True, slots=True)
class Restored:
    """What came back, and what was done about the time since."""

    rows: int
    erased_again: int
    not_sent_again: int
    newest: datetime | None
    """The last moment that the backup knows of."""
    coaches_stay: int = 0
    """Coaches who were erased, and who have clients in the backup: see `db.erasure.erase_again`."""


async def put_back(
    source: AsyncConnection, target: AsyncConnection, known: Sequence[tuple[int, datetime, datetime]]
) -> Restored:
    """Replaces all rows by those of the backup; `known` are erasures that it may not have heard of.

    A message that was on its way when the backup was made may have left since: it counts as unknown, and a copy of a
    message to many that waited for its reader's morning is let go. Updates that
    were stored and not handled are handled, for their effect is not in the backup.
    """
    await copying.empty(target)
    await copying.copy(source, target)
    rows = sum((await copying.compare(source, target)).values())
    session = AsyncSession(bind=target, join_transaction_mode="conditional_savepoint", expire_on_commit=False)
    async with session:
        again, stay = await erasure.erase_again(session, known)
        newest = await _newest(session)
        unsent = await session.execute(
            update(Outbox)
            .where(Outbox.state.in_(OPEN))
            .values(state=State.UNKNOWN, why="restored", worker=None, lease_until=None, payload={})
            .returning(Outbox.id)
        )
        count = len(unsent.all())
        await session.execute(
            update(Inbox).where(Inbox.state == "leased").values(state="waiting", worker=None, lease_until=None)
        )
        await session.execute(delete(Due).where(Due.kind == DueKind.LETTER))
        for table in (Lease, ChatPace):
            await session.execute(delete(table))
        await session.execute(delete(Note).where(Note.name.in_(["budget", "last_update"])))
        await session.commit()
    return Restored(rows, again, count, newest, stay)


async def _newest(session: AsyncSession) -> datetime | None:
    made = await session.scalar(select(Outbox.made_at).order_by(Outbox.id.desc()).limit(1))
    stored = await session.scalar(select(Inbox.stored_at).order_by(Inbox.stored_at.desc()).limit(1))
    return max((moment for moment in (made, stored) if moment is not None), default=None)
