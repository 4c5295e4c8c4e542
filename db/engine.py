"""Opening the database: `reading()` for looking, `write()` for every change, the same on SQLite and PostgreSQL."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import AbstractAsyncContextManager, AsyncExitStack, asynccontextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Protocol, TypeVar

from sqlalchemy import make_url, text
from sqlalchemy.engine import URL
from sqlalchemy.exc import ArgumentError
from sqlalchemy.ext.asyncio import AsyncConnection, AsyncEngine, AsyncSession

from db import postgres, sqlite
from db.news import News
from db.writer import Job, Merger, Writer

T = TypeVar("T")
R = TypeVar("R")


class UnfitDatabase(ValueError):
    """The database address names something that cannot be used."""


class _Writes(Protocol):
    async def write(self, job: Job[T]) -> T: ...


@dataclass(frozen=True, slots=True)
class Database:
    """An open database: `reading()` for looking, `write()` for every change."""

    address: URL
    engine: AsyncEngine
    writer: Writer
    writes: _Writes
    news: News
    version: str
    """What the database calls itself, as "SQLite 3.51.3"."""

    @property
    def alone(self) -> bool:
        """Whether only one process can serve from it, so that whatever another one had begun is over."""
        return is_file(self.address)

    @asynccontextmanager
    async def reading(self) -> AsyncIterator[AsyncSession]:
        """A session that sees one moment of the database and cannot change it."""
        async with AsyncSession(self.engine, expire_on_commit=False) as session:
            yield session

    async def write(self, job: Job[T]) -> T:
        """Run `job` in a transaction and return its result after the commit; its exception undoes it alone.

        A caller that is cancelled does not undo its job. A job must not commit, awaits nothing but SQL, and may be
        run again when it lost against another one. Raises `NestedWrite` inside another job.
        """
        return await self.writes.write(job)

    async def merged(self, merger: Merger[T, R], item: T) -> R:
        """Apply a small change together with its like: see `Writer.merged`."""
        return await self.writer.merged(merger, item)

    async def epoch(self) -> float | None:
        """Seconds since 1970 by the clock that all processes share; None where there is only one process."""
        if self.alone:
            return None
        async with self.reading() as session:
            return float((await session.execute(text("SELECT extract(epoch FROM clock_timestamp())"))).scalar_one())


def address_of(url: str) -> URL:
    """The address with the driver in use. Raises `UnfitDatabase` unless it is an SQLite file or a PostgreSQL server.

    >>> address_of("sqlite:///clients.db").drivername, address_of("postgresql://host/clients").drivername
    ('sqlite+aiosqlite', 'postgresql+asyncpg')
    """
    try:
        parsed = make_url(url)
        backend = parsed.get_backend_name()
    except ArgumentError:
        raise UnfitDatabase("that is no database address: write sqlite:///file.db or postgresql://host/name") from None
    if backend == "postgresql":
        return parsed.set(drivername="postgresql+asyncpg")
    if backend != "sqlite":
        shown = parsed.render_as_string()
        raise UnfitDatabase(
            f"{shown}: SQLite and PostgreSQL are supported, as sqlite:///file.db or postgresql://host/name"
        )
    if parsed.database in (None, "", ":memory:"):
        raise UnfitDatabase(f"{url}: a file is needed, as sqlite:///file.db, because readers open it too")
    return parsed.set(drivername="sqlite+aiosqlite")


def is_file(address: URL) -> bool:
    """Whether the database is an SQLite file."""
    return address.get_backend_name() == "sqlite"


@asynccontextmanager
async def opened(url: str) -> AsyncIterator[Database]:
    """Open the database at `url`, start what writes, and close all in the end. The tables must be there."""
    address = address_of(url)
    async with AsyncExitStack() as stack:
        engine = await stack.enter_async_context(writing_engine(url))
        async with engine.connect() as connection:
            version = await version_of(connection)
        store = sqlite if is_file(address) else postgres
        readers = await stack.enter_async_context(store.reading(address))
        news = News()
        merging = engine
        if not is_file(address):  # a connection of its own: marks wait for no use case
            merging = await stack.enter_async_context(postgres.writing(address, connections=1))
        writer = Writer(merging, news)
        writer.start()
        stack.push_async_callback(writer.stop)
        writes: _Writes = writer
        if not is_file(address):
            writes = postgres.Transactions(engine)
            stack.push_async_callback(writes.stop)
            listener = postgres.Listener(engine, news)
            stack.push_async_callback(listener.stop)
            await listener.start()
        yield Database(address, readers, writer, writes, news, version)


@asynccontextmanager
async def writing_engine(url: str) -> AsyncIterator[AsyncEngine]:
    """An engine that changes the database, for migrations and other work outside the stores."""
    address = address_of(url)
    async with (sqlite if is_file(address) else postgres).writing(address) as engine:
        yield engine


async def version_of(connection: AsyncConnection) -> str:
    """What the database calls itself, as "SQLite 3.51.3" or "PostgreSQL 15.14"."""
    if connection.dialect.name == "sqlite":
        return f"SQLite {(await connection.exec_driver_sql('SELECT sqlite_version()')).scalar_one()}"
    found = (await connection.exec_driver_sql("SHOW server_version")).scalar_one()
    return f"PostgreSQL {str(found).split()[0]}"


async def forgetful(session: AsyncSession) -> list[str]:
    """The server's settings with which it may lose a commit that it has confirmed, as "fsync"; an SQLite file has none.

    With a lost mark a message can leave a second time (PostgreSQL's documentation, chapter 19.5).
    """
    if session.get_bind().dialect.name == "sqlite":
        return []
    names = ("fsync", "full_page_writes", "synchronous_commit")
    return [name for name in names if await session.scalar(text(f"SHOW {name}")) == "off"]


async def answers(url: str) -> None:
    """Returns when the database answers once. Raises what `db.trouble.passing` knows while it is away."""
    if not is_file(address_of(url)):
        async with writing_engine(url) as engine, engine.connect() as connection:
            await connection.exec_driver_sql("SELECT 1")


def serving_lock(url: str) -> AbstractAsyncContextManager[None]:
    """Hold the right to serve: from an SQLite file for one process, from PostgreSQL for any number together.

    Raises `AlreadyServing` when it cannot be had, naming who holds it.
    """
    return _lock(url, shared=True)


def served_alone(url: str) -> AbstractAsyncContextManager[None]:
    """Hold the right that nobody serves meanwhile. Raises `AlreadyServing`."""
    return _lock(url, shared=False)


@asynccontextmanager
async def _lock(url: str, *, shared: bool) -> AsyncIterator[None]:
    address = address_of(url)
    if is_file(address):
        with sqlite.file_lock(address.database or ""):
            yield
    else:
        async with postgres.lock(address, shared=shared):
            yield


def file_of(address: URL) -> Path:
    """The file of an SQLite database."""
    return Path(address.database or "")
