"""The migrations lead to exactly the tables of the schema."""

from __future__ import annotations

import asyncio
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import Connection

from db import migrate
from db.engine import writing_engine
from db.schema import Base
from tests.stores import here

pytestmark = pytest.mark.usefixtures("store")


def differences(connection: Connection) -> list[object]:
    context = MigrationContext.configure(connection, opts={"compare_type": True})
    return list(compare_metadata(context, Base.metadata))


async def test_an_empty_database_is_brought_to_exactly_the_schema(tmp_path: Path) -> None:
    url = await here().url(tmp_path, tables=False)
    assert await migrate.upgrade(url) == migrate.head()
    assert await migrate.current(url) == migrate.head()
    async with writing_engine(url) as engine, engine.begin() as connection:
        assert await connection.run_sync(differences) == []


def test_the_newest_by_name_is_what_alembic_takes_for_the_newest() -> None:
    with migrate._script() as script:
        assert migrate.head() == script.get_current_head()
        for one in script.walk_revisions():
            assert Path(one.path).name.startswith(f"{one.revision}_")


async def test_migrating_again_changes_nothing(tmp_path: Path) -> None:
    url = await here().url(tmp_path, tables=False)
    await migrate.upgrade(url)
    await migrate.upgrade(url)
    assert await migrate.current(url) == migrate.head()


async def test_processes_that_start_together_migrate_one_after_another(tmp_path: Path) -> None:
    url = await here().url(tmp_path, tables=False)
    assert await asyncio.gather(*(migrate.upgrade(url) for _ in range(4))) == [migrate.head()] * 4


async def test_a_new_file_gets_its_folder_and_is_its_owners_alone(tmp_path: Path) -> None:
    file = tmp_path / "new" / "e.sqlite"
    assert await migrate.upgrade(f"sqlite:///{file}") == migrate.head()
    assert file.stat().st_mode & 0o077 == 0
