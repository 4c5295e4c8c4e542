"""Backup, restore and moving: every row of every table, on both kinds of database, and nothing sent a second time."""

from __future__ import annotations

from collections.abc import Awaitable, Callable
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from typing import Any

import pytest
from pydantic import SecretStr
from sqlalchemy import JSON, BigInteger, Boolean, Date, Double, LargeBinary, Table, Text, Time, func, insert, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.cli import keeping
from bot.settings import Settings
from db import copying, erasure, migrate, outbox
from db.engine import opened, served_alone, serving_lock
from db.erasure import StillCoach
from db.schema import Coach, Course, Due, Erasure, Inbox, Instant, LedgerRow, Outbox, Person, ProgrammeVersion
from db.trouble import AlreadyServing
from tests.postgres import Server
from tests.stores import Databases, Files, here, kept_in

AT = datetime(2026, 3, 2, 7, 30, 15, 123456, tzinfo=UTC)


def filler(table: Table, number: int) -> dict[str, Any]:
    """A row whose every column holds something; what refers to another table refers to that table's same number."""
    samples: dict[type[Any], Any] = {
        JSON: {"ü": [1, None]},
        LargeBinary: b"\0\xff",
        Date: date(2026, 3, 2),
        Time: time(7),
        Instant: AT + timedelta(days=number),
        Boolean: bool(number % 2),
        Double: number + 0.1,
        BigInteger: number,
        Text: f"‘{number}’ é",
    }
    row = {column.name: samples[type(column.type)] for column in table.columns}
    for column in table.columns:
        if column.primary_key or column.foreign_keys:
            row[column.name] = number if isinstance(column.type, BigInteger) else f"{table.name}{number}"
    if table.name == "outbox":
        row |= {"edits": None if number == 1 else number - 1, "state": "sent"}
    return row


async def filled(session: AsyncSession) -> None:
    """Three rows in each table, the last one's references to the ones before."""
    for table in copying.TABLES:
        for number in (1, 2, 3):
            await session.execute(insert(table).values(**filler(table, number)))
    await copying._continue_numbers(await session.connection())


def settings(url: str) -> Settings:
    return Settings(database_url=url, token=SecretStr("1000:practice"))


async def prepared(folder: Path, fill: Callable[[AsyncSession], Awaitable[Any]] = filled) -> str:
    """A migrated database with rows; its address."""
    folder.mkdir(exist_ok=True)
    url = await here().url(folder, tables=False)
    await migrate.upgrade(url)
    async with opened(url) as database:
        await database.write(fill)
    return url


async def rows_of(url: str) -> dict[str, int]:
    async with opened(url) as database, copying.snapshot(database) as source:
        return await copying.counts(source)


@pytest.mark.usefixtures("store")
async def test_a_backup_holds_every_row_and_comes_back_to_the_row(tmp_path: Path) -> None:
    said: list[str] = []
    url = await prepared(tmp_path / "a")
    await keeping.backup(settings(url), tmp_path / "copy.sqlite", said.append)
    await keeping.backup(settings(url), tmp_path / "a" / "new" / "copy.sqlite", print)
    tables = len(copying.TABLES)
    assert said == [f"{tmp_path / 'copy.sqlite'}: {3 * tables} rows of {tables} tables, compared row for row"]
    assert (tmp_path / "copy.sqlite").stat().st_mode & 0o077 == 0
    assert sorted(path.name for path in tmp_path.iterdir() if path.is_file()) == ["copy.sqlite"]
    empty = await prepared(tmp_path / "b", _nothing)
    await keeping.restore(settings(empty), tmp_path / "copy.sqlite", None, said.append)
    gone = {"lease": 0, "chat_pace": 0}
    assert await rows_of(empty) == dict.fromkeys((table.name for table in copying.TABLES), 3) | gone
    async with opened(empty) as database:
        assert (await database.write(_new_person)) > 3, "new rows get new numbers"


async def _nothing(_session: AsyncSession) -> None:
    return None


async def _new_person(session: AsyncSession) -> int:
    person = Person(chat=99, label="New", created_at=AT)
    session.add(person)
    await session.flush()
    return person.id


async def test_moving_to_postgresql_keeps_every_row_and_goes_on_counting(tmp_path: Path, postgres: Server) -> None:
    url = await prepared(tmp_path)
    said: list[str] = []
    async with kept_in(Databases(postgres)) as place:
        target = await place.url(tmp_path, tables=False)
        await keeping.move_data(settings(url), target, said.append)
        assert len(said) == len(copying.TABLES) + 1
        async with opened(url) as old, opened(target) as new, copying.snapshot(old) as a, copying.snapshot(new) as b:
            assert await copying.compare(a, b) == dict.fromkeys((table.name for table in copying.TABLES), 3)
        async with opened(target) as database:
            assert (await database.write(_new_person)) > 3
        with pytest.raises(copying.NotEmpty, match="name an empty database"):
            await keeping.move_data(settings(url), target, said.append)


@pytest.mark.usefixtures("store")
async def test_a_copy_that_differs_in_one_value_is_named(tmp_path: Path) -> None:
    url, other = await prepared(tmp_path / "a"), await prepared(tmp_path / "b")

    async def change(session: AsyncSession) -> None:
        (await session.get_one(LedgerRow, 2)).level = 7

    async with opened(other) as database:
        await database.write(change)
    async with opened(url) as a, opened(other) as b, copying.snapshot(a) as one, copying.snapshot(b) as two:
        with pytest.raises(copying.Differs, match="table ledger: the row id 2 is not the same"):
            await copying.compare(one, two)


@pytest.mark.usefixtures("store")
async def test_what_was_there_before_a_restore_is_kept_and_nothing_open_is_sent_again(tmp_path: Path) -> None:
    async def under_way(session: AsyncSession) -> None:
        for state in ("waiting", "leased", "sending", "sent"):
            chat = len(state) * 10
            id_ = await outbox.put(
                session, key=state, chat=chat, kind="session", method="send_message", payload={"text": "x"}, now=AT
            )
            (await session.get_one(Outbox, id_)).state = state
        session.add(Inbox(update_id=5, chat=1, payload={"update_id": 5}, state="leased", tries=1, stored_at=AT))

    url = await prepared(tmp_path / "a", under_way)
    said: list[str] = []
    await keeping.backup(settings(url), tmp_path / "copy.sqlite", said.append)
    async with opened(url) as database:
        await database.write(_new_person)
    await keeping.restore(settings(url), tmp_path / "copy.sqlite", None, said.append)
    assert "3 messages that were on their way are not sent again" in said[-1]
    async with opened(url) as database, database.reading() as session:
        rows = (await session.scalars(select(Outbox).order_by(Outbox.id))).all()
        assert [(row.state, row.payload) for row in rows[:3]] == [("unknown", {})] * 3
        assert (await session.get_one(Inbox, 5)).state == "waiting"
        assert await session.scalar(select(func.count()).select_from(Person)) == 0
    (kept,) = tmp_path.glob("before-restore-*.sqlite")
    assert (await rows_of(f"sqlite:///{kept}"))["person"] == 1


def person(number: int, made: datetime = AT) -> Person:
    return Person(id=number, chat=100 + number, label=f"P{number}", created_at=made)


@pytest.mark.usefixtures("store")
async def test_a_copy_for_many_that_waited_is_not_sent_after_a_restore(tmp_path: Path) -> None:
    async def fill(session: AsyncSession) -> None:
        for kind in ("letter", "digest"):
            session.add(Due(kind=kind, subject=1, at=AT, zone_data="x"))

    url = await prepared(tmp_path / "a", fill)
    await keeping.backup(settings(url), tmp_path / "copy.sqlite", print)
    await keeping.restore(settings(url), tmp_path / "copy.sqlite", None, print)
    async with opened(url) as database, database.reading() as session:
        assert list(await session.scalars(select(Due.kind))) == ["digest"]


@pytest.mark.usefixtures("store")
async def test_who_was_erased_stays_erased_after_a_restore(tmp_path: Path) -> None:
    async def two(session: AsyncSession) -> None:
        session.add_all([person(1), person(2)])

    url = await prepared(tmp_path / "a", two)
    await keeping.backup(settings(url), tmp_path / "old.sqlite", print)

    async def forget(session: AsyncSession) -> None:
        await erasure.erase(session, await session.get_one(Person, 1), AT)

    async def again(session: AsyncSession) -> None:
        session.add(person(1, AT + timedelta(days=1)))

    async with opened(url) as database:
        await database.write(forget)
        await database.write(again)
    await keeping.restore(settings(url), tmp_path / "old.sqlite", None, print)
    assert await labels(url) == ["P2"]

    (newer,) = tmp_path.glob("before-restore-*.sqlite")
    elsewhere = await prepared(tmp_path / "b", _nothing)
    await keeping.restore(settings(elsewhere), tmp_path / "old.sqlite", None, print)
    assert await labels(elsewhere) == ["P1", "P2"], "an installation that never heard of the erasure"
    await keeping.restore(settings(elsewhere), tmp_path / "old.sqlite", newer, print)
    assert await labels(elsewhere) == ["P2"]


async def labels(url: str) -> list[str]:
    async with opened(url) as database, database.reading() as session:
        return sorted(await session.scalars(select(Person.label)))


@pytest.mark.usefixtures("store")
async def test_a_coach_whose_clients_an_old_copy_still_has_does_not_keep_it_from_being_restored(tmp_path: Path) -> None:
    async def coach(session: AsyncSession) -> None:
        session.add_all([person(1), person(2)])
        await session.flush()
        session.add(Coach(id=1, person_id=1, created_at=AT))
        await session.flush()
        session.add(ProgrammeVersion(id=1, coach_id=1, digest="d", title="T", source="", stored_at=AT))
        await session.flush()
        course = Course(id=1, person_id=2, coach_id=1, version_id=1, state="active", created_at=AT)
        course.day, course.level, course.rests_taken = 1, 0, 0
        session.add(course)

    async def forget(session: AsyncSession) -> None:
        await session.delete(await session.get_one(Course, 1))
        await session.flush()
        await erasure.erase(session, await session.get_one(Person, 1), AT)

    url = await prepared(tmp_path / "a", coach)
    await keeping.backup(settings(url), tmp_path / "old.sqlite", print)
    async with opened(url) as database:
        await database.write(forget)
    said: list[str] = []
    await keeping.restore(settings(url), tmp_path / "old.sqlite", None, said.append)
    assert await labels(url) == ["P1", "P2"]
    assert "1 coaches who were erased have clients in it, and stay" in said[-1]


@pytest.mark.usefixtures("store")
async def test_erasing_a_person_leaves_no_row_that_speaks_of_them(tmp_path: Path) -> None:
    url = await prepared(tmp_path)

    async def forget(session: AsyncSession) -> None:
        coach = (await session.scalars(select(Coach).where(Coach.person_id == 2))).one()
        course = await session.get_one(Course, 2)
        course.coach_id = 3
        third = await session.get_one(Coach, 3)
        third.person_id = 3
        inbox = await session.get_one(Inbox, 2)
        chat = (await session.get_one(Person, 2)).chat
        inbox.chat = (await session.get_one(Outbox, 2)).chat = chat
        session.add(Due(kind="morning", subject=2, at=AT, zone_data="2026f"))
        await session.flush()
        await erasure.erase(session, await session.get_one(Person, 2), AT)
        assert await session.get(Coach, coach.id) is None

    async with opened(url) as database:
        await database.write(forget)
        async with database.reading() as session:
            for table in copying.TABLES:
                for name in ("person_id", "course_id", "ledger_id", "used_by"):
                    if name in table.columns and table.name != "erasure":
                        found = await session.scalars(select(table.c[name]))
                        assert 2 not in list(found), (table.name, name)
            assert await session.get(Person, 2) is None
            assert await session.get(Outbox, 2) is None
            assert await session.get(Inbox, 2) is None
            assert (await session.scalars(select(Due.subject).where(Due.kind == "morning"))).all() == []
            assert await session.scalar(select(func.count()).select_from(Erasure)) == 4

    async def coach(session: AsyncSession) -> None:
        course = await session.get_one(Course, 3)
        course.person_id, course.state = 1, "active"
        await session.flush()
        await erasure.erase(session, await session.get_one(Person, 3), AT)

    async with opened(url) as database:
        with pytest.raises(StillCoach):
            await database.write(coach)


async def test_a_file_that_is_no_backup_and_an_existing_one_are_refused(tmp_path: Path) -> None:
    url = await prepared(tmp_path / "a", _nothing)
    (tmp_path / "text.sqlite").write_text("no database at all, only words " * 50)
    with pytest.raises(keeping.UnfitFile, match="no whole backup"):
        await keeping.restore(settings(url), tmp_path / "text.sqlite", None, print)
    with pytest.raises(keeping.UnfitFile, match="no such file"):
        await keeping.restore(settings(url), tmp_path / "gone.sqlite", None, print)
    with pytest.raises(copying.NotEmpty, match="there already"):
        await keeping.backup(settings(url), tmp_path / "text.sqlite", print)


@pytest.mark.usefixtures("store")
async def test_nothing_is_restored_under_a_serving_process(tmp_path: Path) -> None:
    url = await prepared(tmp_path / "a", _nothing)
    await keeping.backup(settings(url), tmp_path / "copy.sqlite", print)
    async with serving_lock(url):
        with pytest.raises(AlreadyServing):
            await keeping.restore(settings(url), tmp_path / "copy.sqlite", None, print)
    if isinstance(here(), Databases):
        async with serving_lock(url), serving_lock(url):
            with pytest.raises(AlreadyServing, match="processes serve"):
                async with served_alone(url):
                    pass
    async with served_alone(url):
        with pytest.raises(AlreadyServing):
            async with serving_lock(url):
                pass


async def test_a_database_of_another_version_is_not_copied(tmp_path: Path) -> None:
    with pytest.raises(copying.OtherVersion, match="easeward migrate"):
        await keeping.backup(settings(await Files().url(tmp_path)), tmp_path / "copy.sqlite", print)
