"""Opening the database: one serving process at a time, readers that cannot write, errors that quote nobody."""

from __future__ import annotations

import asyncio
import os
import signal
import sys
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from sqlalchemy import insert, text
from sqlalchemy.exc import IntegrityError
from sqlalchemy.ext.asyncio import AsyncSession

from bot.cli.examination import _commits
from db.engine import UnfitDatabase, forgetful, opened, serving_lock
from db.schema import Note
from db.trouble import AlreadyServing
from tests.integration.fakes import database_in
from tests.stores import Place

HOLDER = """
import asyncio, sys
from db.engine import serving_lock
async def hold():
    async with serving_lock(sys.argv[1]):
        print("held", flush=True)
        await asyncio.sleep(60)
asyncio.run(hold())
"""


@asynccontextmanager
async def another_process_serving(url: str) -> AsyncIterator[asyncio.subprocess.Process]:
    process = await asyncio.create_subprocess_exec(
        sys.executable, "-c", HOLDER, url, stdout=asyncio.subprocess.PIPE, cwd=Path(__file__).parents[2]
    )
    try:
        if process.stdout is None:
            raise RuntimeError("the other process has no output to read")
        assert await asyncio.wait_for(process.stdout.readline(), 30) == b"held\n"
        yield process
    finally:
        if process.returncode is None:
            process.kill()
        await process.wait()


async def test_a_second_serving_process_is_refused_with_the_files_name_and_the_others_id(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'easeward.db'}"
    async with another_process_serving(url) as other:
        with pytest.raises(AlreadyServing) as refused:
            async with serving_lock(url):
                pass
    assert str(tmp_path / "easeward.db.lock") in str(refused.value)
    assert f"process {other.pid} " in str(refused.value)


async def test_a_process_that_was_killed_keeps_nobody_out(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'easeward.db'}"
    async with another_process_serving(url) as other:
        os.kill(other.pid, signal.SIGKILL)
        await other.wait()
        async with serving_lock(url):
            assert (tmp_path / "easeward.db.lock").read_text() == f"{os.getpid()}\n"


async def test_a_lock_that_was_given_back_can_be_taken_again(tmp_path: Path) -> None:
    url = f"sqlite:///{tmp_path / 'easeward.db'}"
    async with serving_lock(url):
        pass
    async with serving_lock(url):
        with pytest.raises(AlreadyServing):
            async with serving_lock(url):
                pass


@pytest.mark.parametrize("url", ["mysql://example.org/x", "no address", "sqlite://", "sqlite:///:memory:"])
async def test_an_address_that_cannot_be_used_is_refused_in_words(url: str) -> None:
    with pytest.raises(UnfitDatabase, match=r"SQLite|file is needed|sqlite:///file"):
        async with opened(url):
            pass


async def test_the_database_is_durable_and_holds_its_references(tmp_path: Path) -> None:
    async with database_in(tmp_path) as database:
        assert database.version.startswith("SQLite 3.")

        async def pragmas(session: AsyncSession) -> list[object]:
            names = ("journal_mode", "synchronous", "foreign_keys")
            return [await session.scalar(text(f"PRAGMA {name}")) for name in names]

        full = 2
        assert await database.write(pragmas) == ["wal", full, 1]


async def test_an_error_of_the_database_quotes_nothing_that_was_to_be_written(tmp_path: Path) -> None:
    async def twice(session: AsyncSession) -> None:
        for _ in range(2):
            await session.execute(insert(Note).values(name="n", value={"said": "my knee hurts"}))

    async with database_in(tmp_path) as database:
        with pytest.raises(IntegrityError) as broken:
            await database.write(twice)
    assert "knee" not in str(broken.value)


async def test_settings_of_a_server_with_which_it_may_forget_are_named(tmp_path: Path, store: Place) -> None:
    async with database_in(tmp_path) as database, database.reading() as session:
        found = await forgetful(session)
    assert found == ([] if store.name == "sqlite" else ["fsync", "full_page_writes"])
    assert [_commits(found).fine, _commits(["fsync"]).fine] == [store.name == "sqlite", False]
