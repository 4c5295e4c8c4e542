"""SQLite's driver in one change of thread for a statement: the same rows as from the driver itself."""

from __future__ import annotations

import sqlite3
from collections.abc import AsyncIterator
from pathlib import Path
from typing import Any

import pytest

from db.one_trip import AT_ONCE, connecting

NUMBERS = "WITH RECURSIVE n(x) AS (SELECT 1 UNION ALL SELECT x + 1 FROM n WHERE x < ?) SELECT x FROM n"


@pytest.fixture
async def connection(tmp_path: Path) -> AsyncIterator[Any]:
    async with connecting(str(tmp_path / "x.db"), isolation_level=None) as made:
        await made.execute("CREATE TABLE one (id INTEGER PRIMARY KEY, name TEXT UNIQUE)")
        yield made


@pytest.mark.parametrize("count", [0, 1, AT_ONCE - 1, AT_ONCE, AT_ONCE + 1, 3 * AT_ONCE + 5])
async def test_all_rows_come_in_order_however_they_are_fetched(connection: Any, count: int) -> None:
    async def run() -> Any:
        return await connection.cursor().execute(NUMBERS, (max(1, count),))

    everything = [(n,) for n in range(1, max(1, count) + 1)]
    assert await (await run()).fetchall() == everything

    cursor, found = await run(), []
    while some := await cursor.fetchmany(100):
        found += some
    assert found == everything

    cursor, found = await run(), []
    while (row := await cursor.fetchone()) is not None:
        found.append(row)
    assert found == everything

    first = await (cursor := await run()).fetchmany(2)
    assert first + await cursor.fetchall() == everything


async def test_a_closed_cursor_has_no_rows_and_lets_others_write(connection: Any) -> None:
    cursor = await connection.cursor().execute(NUMBERS, (2 * AT_ONCE,))
    await cursor.close()
    assert await cursor.fetchall() == []
    await connection.execute("BEGIN EXCLUSIVE")
    await connection.execute("COMMIT")


async def test_it_tells_what_a_statement_did(connection: Any) -> None:
    cursor = connection.cursor()
    await cursor.execute("INSERT INTO one (name) VALUES (?)", ("a",))
    assert (cursor.lastrowid, cursor.rowcount, cursor.description) == (1, 1, None)
    cursor = connection.cursor()
    await cursor.executemany("INSERT INTO one (name) VALUES (?)", [("b",), ("c",)])
    assert cursor.rowcount == 2
    cursor = await connection.cursor().execute("UPDATE one SET name = name || '!' RETURNING id")
    assert [column[0] for column in cursor.description] == ["id"]
    assert await cursor.fetchall() == [(1,), (2,), (3,)]


async def test_an_error_reaches_whoever_asked_and_the_connection_goes_on(connection: Any) -> None:
    cursor = await connection.cursor().execute("INSERT INTO one (name) VALUES ('a')")
    with pytest.raises(sqlite3.IntegrityError):
        await connection.cursor().execute("INSERT INTO one (name) VALUES ('a')")
    cursor = await connection.cursor().execute("SELECT count(*) FROM one")
    assert await cursor.fetchone() == (1,)
