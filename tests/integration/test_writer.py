"""The one writer of SQLite, beyond what `test_writes` asks of both kinds of database."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Sequence
from datetime import UTC, datetime
from pathlib import Path

import pytest
from sqlalchemy import func, select, text
from sqlalchemy.exc import IntegrityError
from sqlalchemy.ext.asyncio import AsyncConnection, AsyncSession

from db.engine import Database, opened, writing_engine
from db.news import News
from db.schema import Base, Coach, Note
from db.writer import (
    JobCancelled,
    NestedWrite,
    NotInsideWrite,
    Writer,
    WriterClosed,
    current_session,
    inside_write,
)
from tests.integration.test_writes import names, noting


@pytest.fixture
async def database(tmp_path: Path) -> AsyncIterator[Database]:
    url = f"sqlite:///{tmp_path}/writer.db"
    async with writing_engine(url) as engine, engine.begin() as connection:
        await connection.run_sync(Base.metadata.create_all)
    async with opened(url) as database:
        yield database


async def test_a_result_comes_back_after_its_row_is_there(database: Database) -> None:
    assert await database.write(noting("one")) == "one"
    assert await names(database) == ["one"]


async def test_a_broken_constraint_reaches_only_the_one_who_broke_it(database: Database) -> None:
    results = await asyncio.gather(*(database.write(noting(name)) for name in ("a", "a", "b")), return_exceptions=True)
    assert [type(result) for result in results] == [str, IntegrityError, str]
    assert await names(database) == ["a", "b"]


async def test_a_task_started_inside_a_job_is_refused_too(database: Database) -> None:
    async def spawning(session: AsyncSession) -> None:
        await asyncio.create_task(database.write(noting("inner")))

    with pytest.raises(NestedWrite):
        await asyncio.wait_for(database.write(spawning), 5)


async def test_a_job_sees_what_earlier_jobs_of_its_group_did(database: Database) -> None:
    async def count(session: AsyncSession) -> int:
        return (await session.scalars(select(func.count()).select_from(Note))).one()

    results = await asyncio.gather(
        database.write(noting("a")), database.write(count), database.write(noting("b")), database.write(count)
    )
    assert (results[1], results[3]) == (1, 2)


async def test_two_hundred_concurrent_writers_each_count_once(database: Database) -> None:
    await database.write(noting("counter"))

    async def add_one(session: AsyncSession) -> None:
        note = await session.get_one(Note, "counter")
        note.value = {"n": note.value["n"] + 1}

    await asyncio.gather(*(database.write(add_one) for _ in range(200)))
    async with database.reading() as session:
        assert (await session.get_one(Note, "counter")).value == {"n": 200}


async def test_what_waits_together_is_committed_together(database: Database) -> None:
    moments: list[list[str]] = []

    async def job(session: AsyncSession) -> None:
        await noting(f"n{len(moments)}")(session)
        moments.append(await names(database))

    await asyncio.gather(*(database.write(job) for _ in range(5)))
    assert moments == [[]] * 5
    assert len(await names(database)) == 5


async def test_the_session_travels_to_whatever_a_job_calls(database: Database) -> None:
    async def job(session: AsyncSession) -> bool:
        return current_session() is session and inside_write()

    assert await database.write(job)
    assert not inside_write()
    with pytest.raises(NotInsideWrite):
        current_session()


async def test_marks_that_wait_together_are_merged_into_one_call(database: Database) -> None:
    calls: list[list[int]] = []

    async def even(connection: AsyncConnection, items: Sequence[int]) -> list[bool]:
        calls.append(list(items))
        return [item % 2 == 0 for item in items]

    held = await asyncio.gather(*(database.merged(even, n) for n in range(6)))
    assert held == [True, False, True, False, True, False]
    assert calls == [[0, 1, 2, 3, 4, 5]]


async def test_a_failing_merge_reaches_its_callers_and_leaves_jobs_alone(database: Database) -> None:
    async def broken(connection: AsyncConnection, items: Sequence[int]) -> list[bool]:
        raise ValueError("merge")

    results = await asyncio.gather(database.merged(broken, 1), database.write(noting("kept")), return_exceptions=True)
    assert isinstance(results[0], ValueError)
    assert await names(database) == ["kept"]


async def test_a_commit_that_fails_reaches_every_caller_of_the_group(database: Database) -> None:
    async def dangling(session: AsyncSession) -> None:
        await session.execute(text("PRAGMA defer_foreign_keys = ON"))
        session.add(Coach(person_id=99, created_at=datetime(2026, 1, 1, tzinfo=UTC)))

    results = await asyncio.gather(database.write(noting("lost")), database.write(dangling), return_exceptions=True)
    assert [type(result) for result in results] == [IntegrityError, IntegrityError]
    assert await names(database) == []
    assert await database.write(noting("next")) == "next"


async def test_stopping_finishes_what_waits_and_refuses_what_comes_later(database: Database) -> None:
    engine = database.writer._engine
    writer = Writer(engine, News())
    writer.start()
    waiting = asyncio.create_task(writer.write(noting("waiting")))
    await asyncio.sleep(0)
    await writer.stop()
    assert await waiting == "waiting"
    with pytest.raises(WriterClosed):
        await writer.write(noting("late"))


async def test_a_job_that_awaits_something_cancelled_hurts_only_itself(database: Database) -> None:
    async def cancelled(session: AsyncSession) -> None:
        await noting("gone")(session)
        raise asyncio.CancelledError

    results = await asyncio.gather(database.write(cancelled), database.write(noting("kept")), return_exceptions=True)
    assert isinstance(results[0], JobCancelled)
    assert await names(database) == ["kept"]
