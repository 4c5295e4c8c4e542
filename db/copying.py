"""Whole databases: one copied into another, row for row, and both compared. Backup, restore and moving are this.

A backup is an SQLite file with the same tables, whatever the database it was made of.
"""

from __future__ import annotations

import sqlite3
from collections.abc import AsyncIterator, Mapping
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import Row, Table, func, insert, select, text
from sqlalchemy.ext.asyncio import AsyncConnection

from db import migrate
from db.engine import Database, address_of, file_of, is_file, writing_engine
from db.schema import Base

BATCH = 500
"""Rows in hand at a time."""

TABLES: tuple[Table, ...] = tuple(Base.metadata.sorted_tables)
"""All tables, each after those that it refers to."""


class NotEmpty(ValueError):
    """There is something where a copy was to go; nothing was written."""


class Differs(RuntimeError):
    """A copy is not what was copied; the message names the first row that differs, by its key."""


class OtherVersion(ValueError):
    """A database has the tables of another version of this program."""


async def check_version(url: str) -> None:
    """Raises `OtherVersion`, with what to do, unless the tables at `url` are this program's."""
    address = address_of(url)
    if is_file(address) and not file_of(address).exists():
        raise OtherVersion(f"{address.database} is not there: serve or migrate makes it")
    found, needed = await migrate.current(url), migrate.head()
    if found != needed:
        raise OtherVersion(f"the tables are at version {found}, this program has {needed}: run easeward migrate first")


async def counts(connection: AsyncConnection) -> dict[str, int]:
    """How many rows each table has."""
    return {
        table.name: (await connection.execute(select(func.count()).select_from(table))).scalar_one() for table in TABLES
    }


async def refuse_rows(connection: AsyncConnection) -> None:
    """Raises `NotEmpty` if any table has a row."""
    for name, count in (await counts(connection)).items():
        if count:
            raise NotEmpty(f"the table {name} has {count} rows already: name an empty database")


async def empty(connection: AsyncConnection) -> None:
    """Deletes all rows of all tables."""
    await connection.execute(text("UPDATE outbox SET edits = NULL WHERE edits IS NOT NULL"))
    for table in reversed(TABLES):
        await connection.execute(table.delete())


async def copy(source: AsyncConnection, target: AsyncConnection) -> None:
    """Copies every row of every table; the target's are empty and its transaction is the caller's."""
    for table in TABLES:
        async for rows in _batches(source, table):
            await target.execute(insert(table), [dict(row._mapping) for row in rows])
    await _continue_numbers(target)


async def compare(source: AsyncConnection, target: AsyncConnection) -> Mapping[str, int]:
    """Compares every row of every table; returns how many each has. Raises `Differs`."""
    compared = {}
    for table in TABLES:
        compared[table.name] = 0
        others = _rows(target, table)
        async for row in _rows(source, table):
            other = await anext(others, None)
            if other is None or tuple(row) != tuple(other):
                raise Differs(f"table {table.name}: the row {_key(table, row)} is not the same in the copy")
            compared[table.name] += 1
        if (more := await anext(others, None)) is not None:
            raise Differs(f"table {table.name}: the copy has the row {_key(table, more)}, which was not copied")
    return compared


def _key(table: Table, row: Row[Any]) -> str:
    return ", ".join(f"{column.name} {row._mapping[column]}" for column in table.primary_key)


async def _rows(connection: AsyncConnection, table: Table) -> AsyncIterator[Row[Any]]:
    async for rows in _batches(connection, table):
        for row in rows:
            yield row


async def _batches(connection: AsyncConnection, table: Table) -> AsyncIterator[list[Row[Any]]]:
    """All rows of a table in the order of their key, which is one column in all of our tables."""
    (key,) = table.primary_key.columns
    chosen = select(table).order_by(key).limit(BATCH)
    rows = list(await connection.execute(chosen))
    while rows:
        yield rows
        rows = list(await connection.execute(chosen.where(key > rows[-1]._mapping[key])))


async def _continue_numbers(connection: AsyncConnection) -> None:
    """New rows get numbers above those that were copied; SQLite sees to that by itself."""
    if connection.dialect.name == "sqlite":
        return
    for table in TABLES:
        (key,) = table.primary_key.columns
        sequence = select(func.pg_get_serial_sequence(table.name, key.name))
        name = (await connection.execute(sequence)).scalar_one()
        if name is not None:
            last = select(func.coalesce(func.max(key), 0) + 1)
            await connection.execute(select(func.setval(name, last.scalar_subquery(), False)))


@asynccontextmanager
async def snapshot(database: Database) -> AsyncIterator[AsyncConnection]:
    """One moment of a database that goes on being served; whatever is read of it belongs together."""
    async with database.engine.connect() as connection, connection.begin():
        yield connection


async def into_file(source: AsyncConnection, file: Path) -> Mapping[str, int]:
    """Copies one moment of a database into a new SQLite file and compares; returns the rows of each table.

    The file appears under its name only when it is whole. Raises `NotEmpty` if there is one, and `Differs`.
    """
    if file.exists():
        raise NotEmpty(f"{file} is there already: name a new file")
    file.parent.mkdir(parents=True, exist_ok=True)
    partial = file.with_name(f"{file.name}.partial")
    partial.unlink(missing_ok=True)
    partial.touch(mode=0o600)
    url = f"sqlite:///{partial}"
    await migrate.upgrade(url)
    async with writing_engine(url) as engine:
        async with engine.begin() as target:
            await copy(source, target)
        async with engine.begin() as target:
            compared = await compare(source, target)
            (answer,) = (await target.execute(text("PRAGMA integrity_check"))).scalars()
            if answer != "ok":
                raise Differs(f"{partial}: the new file is damaged: {answer}")
        async with engine.connect() as target:
            raw: Any = (await target.get_raw_connection()).driver_connection
            await raw.execute_fetchall("PRAGMA wal_checkpoint(TRUNCATE)")
            await raw.execute_fetchall("PRAGMA journal_mode = DELETE")
    partial.rename(file)
    return compared


def damage_of(file: Path) -> str | None:
    """What is wrong with a backup, None if nothing is. Changes nothing."""
    try:
        with sqlite3.connect(f"file:{file}?mode=ro", uri=True) as raw:
            answers = [row[0] for row in raw.execute("PRAGMA integrity_check")]
    except sqlite3.DatabaseError as error:
        return str(error)
    return None if answers == ["ok"] else "; ".join(answers[:3])
