"""SQLite's driver asked directly: nothing that surrounds a statement, where that costs most."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime
from typing import Any

from sqlalchemy.ext.asyncio import AsyncConnection


async def fetched(connection: AsyncConnection, statement: str, values: Mapping[str, Any]) -> list[Any]:
    """All rows of a statement with :named values, in the connection's transaction; nothing is converted."""
    driver: Any = (await connection.get_raw_connection()).driver_connection
    return list(await driver.execute_fetchall(statement, dict(values)))


def as_text(moment: datetime) -> str:
    """An instant as the tables hold it in SQLite.

    >>> as_text(datetime(2026, 3, 2, 12, tzinfo=UTC))
    '2026-03-02 12:00:00.000000'
    """
    return moment.astimezone(UTC).replace(tzinfo=None).isoformat(" ", "microseconds")
