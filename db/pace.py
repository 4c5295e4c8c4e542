"""The budget's one row: read, changed and written under its lock, so that no worker takes what another was granted."""

from __future__ import annotations

from sqlalchemy import bindparam, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db.budget import Budget, budget_of
from db.once import Executor, insert_unless_there
from db.schema import Note
from db.writer import announce

TOPIC = "pace"
"""What is announced when the platform has complained: every worker looks at the budget again."""

_NAME = "budget"
_LOCKED = select(Note.value).where(Note.name == _NAME).with_for_update()
_KEEP = update(Note).where(Note.name == _NAME).values(value=bindparam("record", type_=Note.__table__.c.value.type))


async def locked(session: Executor, most: int) -> Budget:
    """The budget, nobody else's until this transaction is over. `most` is the rate that is set."""
    stored = await session.scalar(_LOCKED)
    if stored is None:
        fresh = {"name": _NAME, "value": Budget(most, most).as_json()}
        await session.execute(insert_unless_there(session, Note, [fresh]))
        stored = await session.scalar(_LOCKED)
    return budget_of(stored, most)


async def keep(session: Executor, budget: Budget) -> None:
    """Writes the budget back."""
    await session.execute(_KEEP, {"record": budget.as_json()}, execution_options={"synchronize_session": False})


async def complain(session: AsyncSession, most: int, seconds: float, now: float) -> Budget:
    """Notes that the platform wants nothing for `seconds`, for all workers."""
    budget = await locked(session, most)
    budget.complain(seconds, now)
    await keep(session, budget)
    announce(TOPIC)
    return budget
