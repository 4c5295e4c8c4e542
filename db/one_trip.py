"""SQLite's driver with one change of thread for a statement: a change costs more than most statements.

The driver makes the cursor, runs the statement, fetches its rows and closes the cursor in one change of thread each.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterable
from typing import Any

import aiosqlite

AT_ONCE = 256
"""So many rows come along with the statement; what is more is fetched when it is asked for. Our own choice."""


def connecting(database: str, **given: Any) -> aiosqlite.Connection:
    """A connection that is yet to be awaited; takes what `sqlite3.connect` takes."""
    connection = _Connection(lambda: sqlite3.connect(database, **given), iter_chunk_size=AT_ONCE)
    connection._thread.daemon = True  # as SQLAlchemy does: a thread that was forgotten keeps no process from its end
    return connection


class _Connection(aiosqlite.Connection):
    def cursor(self) -> _Cursor:  # type: ignore[override]
        return _Cursor(self)


class _Cursor(aiosqlite.Cursor):
    """A cursor that is made when its statement is run."""

    _cursor: sqlite3.Cursor

    def __init__(self, connection: _Connection) -> None:
        self._conn = connection
        self._rows: list[Any] = []
        self._open = False

    async def execute(self, sql: str, parameters: Iterable[Any] | None = None) -> _Cursor:
        self._cursor, self._rows, self._open = await self._there(_run, self._conn._conn, sql, parameters or ())
        return self

    async def executemany(self, sql: str, parameters: Iterable[Iterable[Any]]) -> _Cursor:
        self._cursor = await self._there(self._conn._conn.executemany, sql, parameters)
        return self

    async def fetchall(self) -> list[Any]:
        rows, self._rows = self._rows, []
        return rows + list(await super().fetchall()) if self._open else rows

    async def fetchmany(self, size: int | None = None) -> list[Any]:
        wanted = self._cursor.arraysize if size is None else size
        rows, self._rows = self._rows[:wanted], self._rows[wanted:]
        missing = wanted - len(rows)
        return rows + list(await super().fetchmany(missing)) if self._open and missing else rows

    async def fetchone(self) -> Any:
        return next(iter(await self.fetchmany(1)), None)

    async def close(self) -> None:
        self._rows = []
        if self._open:
            self._open = False
            await super().close()

    async def _there(self, work: Callable[..., Any], *given: Any) -> Any:
        """What the connection's thread makes of it."""
        there: Any = self._conn
        return await there._execute(work, *given)


def _run(raw: sqlite3.Connection, sql: str, parameters: Any) -> tuple[sqlite3.Cursor, list[Any], bool]:
    """The cursor, its first rows, and whether there may be more; a cursor without more is closed."""
    cursor = raw.execute(sql, parameters)
    rows = cursor.fetchmany(AT_ONCE) if cursor.description else []
    more = len(rows) == AT_ONCE
    if not more:
        cursor.close()
    return cursor, rows, more
