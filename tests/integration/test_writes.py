"""What `Database.write` promises, on both kinds of database."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from sqlalchemy import select, text
from sqlalchemy.exc import DBAPIError, IntegrityError
from sqlalchemy.ext.asyncio import AsyncSession

from db import due, leads
from db.due import DueKind
from db.engine import Database, opened
from db.schema import Due, Lease, Note
from db.trouble import passing
from db.writer import Job, NestedWrite, announce, inside_write
from tests.postgres import Server
from tests.stores import Databases, here, kept_in

pytestmark = pytest.mark.usefixtures("store")

AT = datetime(2026, 3, 2, 7, tzinfo=UTC)


def noting(name: str, value: int = 0) -> Job[str]:
    async def job(session: AsyncSession) -> str:
        session.add(Note(name=name, value={"n": value}))
        await session.flush()
        return name

    return job


async def names(database: Database) -> list[str]:
    async with database.reading() as session:
        return sorted(await session.scalars(select(Note.name)))


async def test_a_job_is_there_after_its_commit_and_an_exception_undoes_it_alone(database: Database) -> None:
    async def failing(session: AsyncSession) -> None:
        await noting("bad")(session)
        raise ValueError("no")

    results = await asyncio.gather(
        database.write(noting("first")), database.write(failing), database.write(noting("last")), return_exceptions=True
    )
    assert results[0] == "first"
    assert isinstance(results[1], ValueError)
    assert await names(database) == ["first", "last"]


async def test_a_savepoint_inside_a_job_undoes_its_part_alone(database: Database) -> None:
    async def in_part(session: AsyncSession) -> None:
        async with session.begin_nested():
            await noting("half")(session)
            await session.execute(text("INSERT INTO note (name, value) VALUES ('kept', '{}')"))

    async def job(session: AsyncSession) -> None:
        await noting("kept")(session)
        with pytest.raises(IntegrityError):
            await in_part(session)
        await noting("after")(session)

    await database.write(job)
    assert await names(database) == ["after", "kept"]


async def test_a_job_cannot_ask_for_another(database: Database) -> None:
    async def job(session: AsyncSession) -> None:
        assert inside_write()
        await noting("outer")(session)
        await database.write(noting("inner"))

    with pytest.raises(NestedWrite):
        await database.write(job)
    assert not inside_write()
    assert await names(database) == []


async def test_a_cancelled_caller_does_not_undo_its_job(database: Database) -> None:
    started, go_on = asyncio.Event(), asyncio.Event()

    async def job(session: AsyncSession) -> None:
        started.set()
        await go_on.wait()
        await noting("done")(session)

    task = asyncio.create_task(database.write(job))
    await started.wait()
    task.cancel()
    with pytest.raises(asyncio.CancelledError):
        await task
    go_on.set()
    async with asyncio.timeout(5):
        while await names(database) != ["done"]:
            await asyncio.sleep(0.01)


async def test_readers_cannot_write(database: Database) -> None:
    async with database.reading() as session:
        with pytest.raises(DBAPIError, match=r"read-?only"):
            await session.execute(text("DELETE FROM note"))


async def test_a_commit_wakes_listeners_and_an_undoing_does_not(database: Database) -> None:
    event = asyncio.Event()
    database.news.listen("rows", event)

    async def bad(_session: AsyncSession) -> None:
        announce("rows")
        raise ValueError("no")

    async def good(_session: AsyncSession) -> None:
        announce("rows")

    with pytest.raises(ValueError, match="no"):
        await database.write(bad)
    await asyncio.sleep(0.05)
    assert not event.is_set()
    await database.write(good)
    await asyncio.wait_for(event.wait(), 2)


async def test_two_who_plan_the_same_at_once_do_not_meet(database: Database) -> None:
    await asyncio.gather(
        *(
            database.write(lambda session, n=n: due.plan_by(session, DueKind.LIST, 1, AT + timedelta(hours=n)))  # type: ignore[misc]
            for n in (5, 3, 4, 1, 2)
        )
    )
    async with database.reading() as session:
        assert await due.planned(session, DueKind.LIST, 1) == AT + timedelta(hours=1)
    await database.write(lambda session: due.plan(session, DueKind.LIST, 1, AT + timedelta(hours=9)))
    async with database.reading() as session:
        assert (await session.scalars(select(Due.at))).all() == [AT + timedelta(hours=9)]


async def test_a_lease_has_one_holder_until_it_is_over_or_given_up(database: Database) -> None:
    async def hold(who: str, now: float) -> bool:
        return await database.write(lambda session: leads.hold(session, "lead", who, now=now, seconds=6))

    assert sum(await asyncio.gather(*(hold(f"w{n}", 0.0) for n in range(8)))) == 1
    async with database.reading() as session:
        holder = (await session.get_one(Lease, "lead")).holder
    assert await hold(holder, 5.0)
    assert not await hold("other", 10.9)
    assert await hold("other", 11.0)
    await database.write(lambda session: leads.give_up(session, "lead", holder))
    assert not await hold(holder, 12.0)
    await database.write(lambda session: leads.give_up(session, "lead", "other"))
    assert await hold(holder, 12.0)


async def test_a_statement_that_is_wrong_is_no_trouble_that_passes(database: Database) -> None:
    async def wrong(session: AsyncSession) -> None:
        await session.execute(text("SELECT nothing FROM nowhere"))

    with pytest.raises(DBAPIError) as caught:
        await database.write(wrong)
    assert not passing(caught.value)


# --- what only a server has ------------------------------------------------------------------------------------------


@pytest.fixture
async def two(tmp_path: Path, postgres: Server) -> AsyncIterator[tuple[Database, Database]]:
    """One database on the server, opened as by two processes."""
    async with kept_in(Databases(postgres)):
        url = await here().url(tmp_path)
        async with opened(url) as one, opened(url) as other:
            yield one, other


async def test_what_one_process_announces_wakes_the_others(two: tuple[Database, Database]) -> None:
    event = asyncio.Event()
    two[1].news.listen("rows", event)

    async def job(_session: AsyncSession) -> None:
        announce("rows")

    await two[0].write(job)
    await asyncio.wait_for(event.wait(), 2)


async def test_jobs_that_block_each_other_are_run_again_and_both_take_hold(two: tuple[Database, Database]) -> None:
    for name in ("a", "b"):
        await two[0].write(noting(name))
    runs = {"one": 0, "other": 0}

    def crossing(who: str, order: tuple[str, str]) -> Job[None]:
        async def job(session: AsyncSession) -> None:
            runs[who] += 1
            for name in order:
                row = await session.get_one(Note, name, with_for_update=True, populate_existing=True)
                row.value = {"n": row.value["n"] + 1}
                await session.flush()
                await asyncio.sleep(0.1)

        return job

    await asyncio.gather(
        two[0].write(crossing("one", ("a", "b"))),
        two[1].write(crossing("other", ("b", "a"))),
    )
    assert sum(runs.values()) >= 3
    async with two[0].reading() as session:
        assert [note.value for note in await session.scalars(select(Note).order_by(Note.name))] == [{"n": 2}, {"n": 2}]


async def test_the_clock_that_all_share_is_the_servers(two: tuple[Database, Database]) -> None:
    first, second = await two[0].epoch(), await two[1].epoch()
    assert first is not None
    assert second is not None
    assert 0 <= second - first < 5


async def test_a_process_that_stops_in_a_transaction_does_not_keep_its_locks(
    postgres: Server, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It is undone by the server, and the others go on; its own change fails as trouble that passes."""
    monkeypatch.setattr("db.postgres.IDLE_SECONDS", 1)

    def setting(value: int, pause: float) -> Job[None]:
        async def job(session: AsyncSession) -> None:
            note = await session.get_one(Note, "shared", with_for_update=True, populate_existing=True)
            await asyncio.sleep(pause)
            note.value = {"n": value}
            await session.flush()

        return job

    async with kept_in(Databases(postgres)):
        url = await here().url(tmp_path)
        async with opened(url) as stopped, opened(url) as other, asyncio.timeout(10):
            await stopped.write(noting("shared"))
            first = asyncio.create_task(stopped.write(setting(1, 2.5)))
            await asyncio.sleep(0.3)
            begun = asyncio.get_running_loop().time()
            await other.write(setting(2, 0))
            assert asyncio.get_running_loop().time() - begun < 2
            with pytest.raises(DBAPIError) as caught:
                await first
            assert passing(caught.value)
            async with other.reading() as session:
                assert await session.scalar(select(Note.value)) == {"n": 2}
