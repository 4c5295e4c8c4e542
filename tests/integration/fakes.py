"""What the tests of the two roads share: a database in a folder, clocks that are set, a small platform."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path

from db.engine import Database, opened, writing_engine
from db.schema import Base

NOON = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


@asynccontextmanager
async def database_in(folder: Path) -> AsyncIterator[Database]:
    """A database with all its tables in `folder`; opened again, it is the same one."""
    url = f"sqlite:///{folder}/easeward.db"
    async with writing_engine(url) as engine, engine.begin() as connection:
        await connection.run_sync(Base.metadata.create_all)
    async with opened(url) as database:
        yield database


class SetCalendar:
    """A calendar clock that stands where it was set."""

    def __init__(self, at: datetime = NOON) -> None:
        self.at = at

    def now(self) -> datetime:
        return self.at

    def forward(self, **kwargs: float) -> None:
        self.at += timedelta(**kwargs)


class SetMachine:
    """A machine clock that stands where it was set."""

    def __init__(self, at: float = 1_000.0) -> None:
        self.at = at

    def now(self) -> float:
        return self.at
