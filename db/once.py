"""Inserting at most once: a unique constraint decides, not a look beforehand."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import Insert
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncConnection, AsyncSession

from db.schema import Base

Executor = AsyncSession | AsyncConnection
"""What runs a statement: a use case's session, or the connection on which the writer merges small changes."""


def on_sqlite(executor: Executor) -> bool:
    """Whether statements go to SQLite; else they go to PostgreSQL."""
    dialect = executor.dialect if isinstance(executor, AsyncConnection) else executor.get_bind().dialect
    return dialect.name == "sqlite"


def insert_unless_there(executor: Executor, table: type[Base], rows: Sequence[Mapping[str, Any]]) -> Insert:
    """A statement that inserts `rows` and leaves out those that break a unique constraint."""
    insert = (sqlite if on_sqlite(executor) else postgresql).insert(table)
    values = rows[0] if len(rows) == 1 else list(rows)  # a list is compiled anew each time
    statement: Insert = insert.values(values).on_conflict_do_nothing()
    return statement


def insert_or_change(executor: Executor, table: type[Base], key: str, **values: Any) -> Insert:
    """A statement that inserts a row, or gives the one with the same `key` the new values."""
    insert = (sqlite if on_sqlite(executor) else postgresql).insert(table)
    changed = {name: insert.excluded[name] for name in values if name != key}
    statement: Insert = insert.values(**values).on_conflict_do_update(index_elements=[key], set_=changed)
    return statement
