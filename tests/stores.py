"""Where the tests keep their databases: an SQLite file in their folder, or a database of the tests' own server."""

from __future__ import annotations

import hashlib
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import Protocol

from db.engine import writing_engine
from db.schema import Base
from tests.postgres import Server

TEMPLATE = "with_tables"


class Place(Protocol):
    """One of the two."""

    @property
    def name(self) -> str:
        """sqlite or postgresql."""
        ...

    async def url(self, folder: Path, *, tables: bool = True) -> str:
        """The database of a folder, made on the first asking, with all tables or with none."""
        ...


@dataclass(frozen=True, slots=True)
class Files:
    """SQLite files."""

    name: str = "sqlite"

    async def url(self, folder: Path, *, tables: bool = True) -> str:
        url = f"sqlite:///{folder / 'easeward.sqlite'}"
        if tables and not (folder / "easeward.sqlite").exists():
            await _make_tables(url)
        return url


@dataclass(slots=True)
class Databases:
    """Databases of one server; those that were made for a test are dropped after it."""

    server: Server
    name: str = "postgresql"
    _made: list[str] = field(default_factory=list)

    async def url(self, folder: Path, *, tables: bool = True) -> str:
        name = "t" + hashlib.sha256(str(folder).encode()).hexdigest()[:20]
        if name not in self._made:
            if tables:
                await self._template()
            await self.server.do(f"CREATE DATABASE {name} TEMPLATE {TEMPLATE if tables else 'template1'}")
            self._made.append(name)
        return self.server.url(name)

    async def drop_all(self) -> None:
        """Throws away what the last test made."""
        while self._made:
            await self.server.do(f"DROP DATABASE {self._made.pop()} WITH (FORCE)")

    async def _template(self) -> None:
        if not await self.server.do(f"SELECT 1 FROM pg_database WHERE datname = '{TEMPLATE}'"):
            await self.server.do(f"CREATE DATABASE {TEMPLATE}")
            await _make_tables(self.server.url(TEMPLATE))


async def _make_tables(url: str) -> None:
    async with writing_engine(url) as engine, engine.begin() as connection:
        await connection.run_sync(Base.metadata.create_all)


_here: list[Place] = [Files()]


def here() -> Place:
    """Where the running test keeps its databases."""
    return _here[-1]


@asynccontextmanager
async def kept_in(place: Place) -> AsyncIterator[Place]:
    """Keep databases in `place` while the block runs."""
    _here.append(place)
    try:
        yield place
    finally:
        _here.pop()
        if isinstance(place, Databases):
            await place.drop_all()
