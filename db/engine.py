"""Opening the database: many readers, one writer, and a lock that keeps a second serving process out.

What only SQLite needs is here and in `db.writer`; the stores know nothing of it.
"""

from __future__ import annotations

import fcntl
import os
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any, TypeVar

from sqlalchemy import event, make_url
from sqlalchemy.engine import URL
from sqlalchemy.ext.asyncio import AsyncConnection, AsyncEngine, AsyncSession, create_async_engine

from db.writer import Job, Merger, Writer

T = TypeVar("T")

BUSY_MS = 10_000
"""How long, in milliseconds, a writer waits for another process's short write."""


class UnfitDatabase(ValueError):
    """The database address names something that cannot be used."""


class AlreadyServing(RuntimeError):
    """Another process serves from this database."""


@dataclass(frozen=True, slots=True)
class Database:
    """An open database: `reading()` for looking, `write()` for every change."""

    url: str
    engine: AsyncEngine
    writer: Writer
    version: str
    """What the database calls itself, as "SQLite 3.51.3"."""

    @asynccontextmanager
    async def reading(self) -> AsyncIterator[AsyncSession]:
        """A session that sees one moment of the database and cannot change it."""
        async with AsyncSession(self.engine, expire_on_commit=False) as session:
            yield session

    async def write(self, job: Job[T]) -> T:
        """Run `job` in the writer and return its result after the commit: see `Writer.write`."""
        return await self.writer.write(job)

    async def merged(self, merger: Merger[T], item: T) -> bool:
        """Apply a small change together with its like: see `Writer.merged`."""
        return await self.writer.merged(merger, item)


def sqlite_url(url: str) -> URL:
    """The address with the driver in use. Raises `UnfitDatabase` unless it names an SQLite file.

    >>> str(sqlite_url("sqlite:///clients.db"))
    'sqlite+aiosqlite:///clients.db'
    """
    parsed = make_url(url)
    if parsed.get_backend_name() != "sqlite":
        raise UnfitDatabase(f"{parsed.render_as_string()}: only SQLite is supported, as sqlite:///file.db")
    if parsed.database in (None, "", ":memory:"):
        raise UnfitDatabase(f"{url}: a file is needed, as sqlite:///file.db, because readers open it too")
    return parsed.set(drivername="sqlite+aiosqlite")


@asynccontextmanager
async def opened(url: str) -> AsyncIterator[Database]:
    """Open the database at `url`, start its writer, and close both in the end. The tables must be there."""
    address = sqlite_url(url)
    async with _engine(address, begin="BEGIN IMMEDIATE", pool=1) as writing:
        async with writing.connect() as connection:
            version = await sqlite_version(connection)
        async with _engine(address, begin="BEGIN", pool=8, read_only=True) as reading:
            writer = Writer(writing)
            writer.start()
            try:
                yield Database(url, reading, writer, version)
            finally:
                await writer.stop()


@asynccontextmanager
async def writing_engine(url: str) -> AsyncIterator[AsyncEngine]:
    """An engine of one writing connection, for migrations and other work that is alone with the database."""
    async with _engine(sqlite_url(url), begin="BEGIN IMMEDIATE", pool=1) as engine:
        yield engine


async def sqlite_version(connection: AsyncConnection) -> str:
    """The version of the SQLite library in use, as "SQLite 3.51.3"."""
    found = await connection.exec_driver_sql("SELECT sqlite_version()")
    return f"SQLite {found.scalar_one()}"


@asynccontextmanager
async def _engine(address: URL, *, begin: str, pool: int, read_only: bool = False) -> AsyncIterator[AsyncEngine]:
    engine = create_async_engine(
        address,
        connect_args={"isolation_level": None},
        pool_size=pool,
        max_overflow=0,
        pool_timeout=BUSY_MS / 1000,
        hide_parameters=True,
    )

    @event.listens_for(engine.sync_engine, "connect")
    def prepare(connection: Any, _record: Any) -> None:
        cursor = connection.cursor()
        for pragma in _pragmas(read_only):
            cursor.execute(f"PRAGMA {pragma}")
        cursor.close()

    @event.listens_for(engine.sync_engine, "begin")
    def start(connection: Any) -> None:
        connection.exec_driver_sql(begin)

    try:
        yield engine
    finally:
        await engine.dispose()


def _pragmas(read_only: bool) -> list[str]:
    pragmas = [f"busy_timeout = {BUSY_MS}", "journal_mode = WAL", "synchronous = FULL", "foreign_keys = ON"]
    return [*pragmas, "query_only = ON"] if read_only else pragmas


@contextmanager
def serving_lock(url: str) -> Iterator[None]:
    """Hold the right to serve from the SQLite file at `url`; the system gives it back even after a kill.

    Raises `AlreadyServing`, naming the lock file and the process that holds it.
    """
    database = sqlite_url(url).database
    path = Path(f"{database}.lock")
    with open(path, "a+", encoding="ascii") as file:
        try:
            fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except BlockingIOError:
            raise AlreadyServing(_taken(path)) from None
        file.truncate(0)
        file.write(f"{os.getpid()}\n")
        file.flush()
        yield


def _taken(path: Path) -> str:
    holder = path.read_text(encoding="ascii").strip() or "unknown"
    return f"{path}: process {holder} already serves from this database; stop it first"
