"""Inserting at most once: a unique constraint decides, not a look beforehand."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy import Insert
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Base


def insert_unless_there(session: AsyncSession, table: type[Base], rows: Sequence[Mapping[str, Any]]) -> Insert:
    """A statement that inserts `rows` and leaves out those that break a unique constraint."""
    if session.get_bind().dialect.name == "postgresql":
        return postgresql.insert(table).values(list(rows)).on_conflict_do_nothing()
    return sqlite.insert(table).values(list(rows)).on_conflict_do_nothing()
