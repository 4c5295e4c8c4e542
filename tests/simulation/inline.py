"""SQLite without threads: each statement runs at once on the loop, and a process can be told to die at any of them."""

from __future__ import annotations

import asyncio
import sqlite3
from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from sqlalchemy import event, make_url
from sqlalchemy.ext.asyncio import AsyncEngine, create_async_engine

from db.engine import Database
from db.news import News
from db.writer import Writer

Gate = Callable[[str], None]
"""Told of each step of a process, by name; raises when the process dies there."""


class Cursor:
    """What SQLAlchemy's adapter for aiosqlite asks of a cursor."""

    def __init__(self, connection: Connection) -> None:
        self._gate = connection.gate
        self._cursor = connection.raw.cursor()
        self.arraysize = 1

    async def __aenter__(self) -> Cursor:
        return self

    async def execute(self, statement: str, values: Any = ()) -> Cursor:
        commits = statement == "COMMIT"
        self._gate("commit" if commits else "statement")
        self._cursor.execute(statement, values)
        if commits:
            self._gate("committed")
        return self

    async def executemany(self, statement: str, values: Any) -> Cursor:
        self._gate("statement")
        self._cursor.executemany(statement, values)
        return self

    async def fetchall(self) -> list[Any]:
        return self._cursor.fetchall()

    async def fetchmany(self, size: int | None = None) -> list[Any]:
        return self._cursor.fetchmany(size) if size is not None else self._cursor.fetchmany()

    async def close(self) -> None:
        self._cursor.close()

    @property
    def description(self) -> Any:
        return self._cursor.description

    @property
    def rowcount(self) -> int:
        return self._cursor.rowcount

    @property
    def lastrowid(self) -> int | None:
        return self._cursor.lastrowid


class Connection:
    """What SQLAlchemy's adapter for aiosqlite asks of a connection."""

    def __init__(self, raw: sqlite3.Connection, gate: Gate) -> None:
        self.raw = self._connection = self._conn = raw
        self.gate = gate

    def cursor(self) -> Cursor:
        return Cursor(self)

    async def execute_fetchall(self, statement: str, values: Any = ()) -> list[Any]:
        self.gate("statement")
        return self.raw.execute(statement, values).fetchall()

    async def commit(self) -> None:
        self.gate("commit")
        self.raw.commit()
        self.gate("committed")

    async def rollback(self) -> None:
        self.raw.rollback()

    async def close(self) -> None:
        self.raw.close()

    def stop(self) -> None:
        self.raw.close()

    async def create_function(self, *given: Any, **more: Any) -> None:
        self.raw.create_function(*given, **more)

    @property
    def isolation_level(self) -> str | None:
        return self.raw.isolation_level


class Shared(Database):
    """The same, as a database from which several processes serve at once."""

    @property
    def alone(self) -> bool:
        return False


class SortedNews(News):
    """Wakes in the same order in every run."""

    def spread(self, topics: Any) -> None:
        super().spread(sorted(topics))


@dataclass
class Slot:
    """An engine, and what it opens just now: engines are used again, as each keeps its compiled statements."""

    engine: AsyncEngine = field(init=False)
    file: Path = field(init=False)
    gate: Gate = field(init=False)
    opened: list[sqlite3.Connection] = field(init=False, default_factory=list)

    begin: str
    read_only: bool

    def __post_init__(self) -> None:
        self.engine = create_async_engine(
            make_url("sqlite+aiosqlite:///simulated"),
            connect_args={"async_creator_fn": self._connect},
            pool_size=8 if self.read_only else 1,
            max_overflow=0,
            hide_parameters=True,
        )

        @event.listens_for(self.engine.sync_engine, "begin")
        def start(connection: Any) -> None:
            connection.exec_driver_sql(self.begin)

    async def _connect(self, *_given: Any, **_more: Any) -> Connection:
        raw = sqlite3.connect(self.file, isolation_level=None)
        for pragma in ("busy_timeout = 1000", "journal_mode = WAL", "synchronous = OFF", "foreign_keys = ON"):
            raw.execute(f"PRAGMA {pragma}")
        if self.read_only:
            raw.execute("PRAGMA query_only = ON")
        self.opened.append(raw)
        return Connection(raw, self.gate)

    def close(self) -> None:
        """Closes every connection where it stands; an open transaction is undone."""
        for raw in self.opened:
            raw.close()


_FREE: dict[tuple[str, bool], list[Slot]] = defaultdict(list)


def _slot(file: Path, gate: Gate, begin: str, *, read_only: bool) -> Slot:
    free = _FREE[begin, read_only]
    found = free.pop() if free else Slot(begin, read_only)
    found.file, found.gate, found.opened = file, gate, []
    return found


class TurnWriter(Writer):
    """Takes its turn with the writers of other processes, where SQLite itself would let it wait."""

    def __init__(self, engine: AsyncEngine, news: News, turn: asyncio.Lock) -> None:
        super().__init__(engine, news)
        self._turn = turn

    async def _commit(self, waiting: Any) -> Any:
        async with self._turn:
            return await super()._commit(waiting)


class Opened:
    """An open database, as `db.engine.opened` makes it, for one process; `drop` is what a death does to it."""

    def __init__(self, file: Path, gate: Gate, turn: asyncio.Lock, *, shared: bool) -> None:
        self._writing = _slot(file, gate, "BEGIN IMMEDIATE", read_only=False)
        self._reading = _slot(file, gate, "BEGIN", read_only=True)
        news = SortedNews()
        self.writer = TurnWriter(self._writing.engine, news, turn)
        kind = Shared if shared else Database
        address = make_url(f"sqlite+aiosqlite:///{file}")
        self.database = kind(address, self._reading.engine, self.writer, self.writer, news, "SQLite inline")

    async def drop(self) -> None:
        """Closes all that is open where it stands."""
        for slot in (self._writing, self._reading):
            slot.close()
            await slot.engine.dispose()
            _FREE[slot.begin, slot.read_only].append(slot)
