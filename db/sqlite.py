"""SQLite: one file, many readers, one writing connection, and a lock that keeps a second serving process out."""

from __future__ import annotations

import fcntl
import os
import sqlite3
import time
from collections.abc import AsyncIterator, Iterator
from contextlib import asynccontextmanager, contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import event
from sqlalchemy.engine import URL
from sqlalchemy.ext.asyncio import AsyncEngine, create_async_engine

from db.one_trip import connecting
from db.trouble import AlreadyServing

BUSY_MS = 10_000
"""How long, in milliseconds, a writer waits for another process's short write."""


@asynccontextmanager
async def writing(address: URL) -> AsyncIterator[AsyncEngine]:
    """An engine of one connection that takes the right to write at the beginning of each transaction."""
    async with _engine(address, begin="BEGIN IMMEDIATE", pool=1) as engine:
        yield engine


@asynccontextmanager
async def reading(address: URL) -> AsyncIterator[AsyncEngine]:
    """An engine of some connections that see one moment of the database and cannot change it."""
    async with _engine(address, begin="BEGIN", pool=8, read_only=True) as engine:
        yield engine


@asynccontextmanager
async def _engine(address: URL, *, begin: str, pool: int, read_only: bool = False) -> AsyncIterator[AsyncEngine]:
    engine = create_async_engine(
        address,
        connect_args={"isolation_level": None, "async_creator_fn": connecting},
        pool_size=pool,
        max_overflow=0,
        pool_timeout=BUSY_MS / 1000,
        hide_parameters=True,
    )

    @event.listens_for(engine.sync_engine, "connect")
    def prepare(connection: Any, _record: Any) -> None:
        cursor = connection.cursor()
        for pragma in _pragmas(read_only):
            _set(cursor, pragma)
        cursor.close()

    @event.listens_for(engine.sync_engine, "begin")
    def start(connection: Any) -> None:
        connection.exec_driver_sql(begin)

    try:
        yield engine
    finally:
        await engine.dispose()


def _set(cursor: Any, pragma: str) -> None:
    """Sets one pragma. A new file that another process turns to WAL just now is locked, and SQLite does not wait."""
    until = time.monotonic() + BUSY_MS / 1000
    while True:
        try:
            cursor.execute(f"PRAGMA {pragma}")
            return
        except sqlite3.OperationalError as error:
            if "locked" not in str(error) or time.monotonic() > until:
                raise
            time.sleep(0.01)


def _pragmas(read_only: bool) -> list[str]:
    pragmas = [f"busy_timeout = {BUSY_MS}", "journal_mode = WAL", "synchronous = FULL", "foreign_keys = ON"]
    return [*pragmas, "query_only = ON"] if read_only else pragmas


@contextmanager
def file_lock(database: str) -> Iterator[None]:
    """Hold the right to serve from the file `database`; the system gives it back even after a kill.

    Raises `AlreadyServing`, naming the lock file and the process that holds it.
    """
    path = Path(f"{database}.lock")
    path.parent.mkdir(parents=True, exist_ok=True)
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
