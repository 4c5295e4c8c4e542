"""Alembic's own command line is not used: `db.migrate` runs the steps. This file makes `alembic revision` work.

`alembic -c db/migrations/alembic.ini revision --autogenerate -m "why"` compares an upgraded database with the schema.
"""

from __future__ import annotations

from typing import Any, Literal

from alembic import context
from sqlalchemy import create_engine

from db.schema import Base, Instant


def plain(kind: str, item: Any, _context: Any) -> str | Literal[False]:
    """A step speaks of the database's own types, never of this program's classes."""
    return "sa.DateTime(timezone=True)" if kind == "type" and isinstance(item, Instant) else False


url = context.config.get_main_option("sqlalchemy.url") or "sqlite://"
with create_engine(url).connect() as connection:
    context.configure(connection=connection, target_metadata=Base.metadata, render_as_batch=True, render_item=plain)
    with context.begin_transaction():
        context.run_migrations()
