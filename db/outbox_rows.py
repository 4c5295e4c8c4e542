"""Outbox rows by state, written so that the partial indexes serve, and changes of them that are counted."""

from __future__ import annotations

from typing import Any

from sqlalchemy import ColumnElement, Float, and_, bindparam, literal_column, update
from sqlalchemy.sql.dml import ReturningUpdate

from db.once import Executor
from db.schema import Instant, Outbox

WAITING: ColumnElement[str] = literal_column("'waiting'")
LEASED: ColumnElement[str] = literal_column("'leased'")
SENDING: ColumnElement[str] = literal_column("'sending'")
NO_SYNC = {"synchronize_session": False}
MACHINE_NOW = bindparam("machine_now", type_=Float())
NOW = bindparam("now", type_=Instant())

IN_FLIGHT = Outbox.state.in_([LEASED, SENDING])
IS_LEASED = and_(IN_FLIGHT, Outbox.state == LEASED)
IS_SENDING = and_(IN_FLIGHT, Outbox.state == SENDING)


def changing(where: ColumnElement[bool], **values: Any) -> ReturningUpdate[tuple[int]]:
    """A change whose rows can be counted; built once where it is asked for often."""
    return update(Outbox).where(where).values(**values).returning(Outbox.id)


async def count(session: Executor, statement: ReturningUpdate[tuple[int]], **given: Any) -> int:
    """Runs a change and says how many rows it met."""
    return len((await session.execute(statement, given, execution_options=NO_SYNC)).all())


async def change(session: Executor, where: ColumnElement[bool], **values: Any) -> int:
    """Changes rows; returns how many."""
    return await count(session, changing(where, **values))
