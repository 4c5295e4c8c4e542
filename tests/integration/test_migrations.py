"""The migrations lead to exactly the tables of the schema."""

from __future__ import annotations

from pathlib import Path

from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import Connection

from db import migrate
from db.engine import writing_engine
from db.schema import Base


def differences(connection: Connection) -> list[object]:
    context = MigrationContext.configure(connection, opts={"compare_type": True})
    return list(compare_metadata(context, Base.metadata))


async def test_an_empty_database_is_brought_to_exactly_the_schema(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'new' / 'e.sqlite'}"
    assert await migrate.upgrade(url) == migrate.head()
    assert await migrate.current(url) == migrate.head()
    async with writing_engine(url) as engine, engine.begin() as connection:
        assert await connection.run_sync(differences) == []


async def test_migrating_again_changes_nothing(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'e.sqlite'}"
    await migrate.upgrade(url)
    await migrate.upgrade(url)
    assert await migrate.current(url) == migrate.head()
