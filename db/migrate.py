"""Bringing a database to this version's tables, with Alembic and the migrations inside this package.

A migration's file is named after its revision (`0001_the_tables.py`), and the last one by name is the newest. Alembic
is loaded only when there is something to do: a start has mostly nothing.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from importlib.resources import as_file, files
from typing import TYPE_CHECKING, Any

from sqlalchemy import Connection, inspect

from db.engine import address_of, file_of, is_file, writing_engine
from db.schema import Base

if TYPE_CHECKING:
    from alembic.script import ScriptDirectory


async def upgrade(url: str) -> str:
    """Makes the database if it is not there, runs the migrations it lacks, and returns its version."""
    address = address_of(url)
    if is_file(address):
        file_of(address).parent.mkdir(parents=True, exist_ok=True)
        file_of(address).touch(mode=0o600)  # health data: nobody else reads a new file
    async with writing_engine(url) as engine, engine.begin() as connection:
        await connection.run_sync(_upgrade)
    return head()


async def current(url: str) -> str | None:
    """The version that a database is at; None for one without tables."""
    async with writing_engine(url) as engine, engine.begin() as connection:
        return await connection.run_sync(_current)


def _current(connection: Connection) -> str | None:
    if not inspect(connection).has_table("alembic_version"):
        return None
    found = connection.exec_driver_sql("SELECT version_num FROM alembic_version").scalar()
    return None if found is None else str(found)


def head() -> str:
    """The version that this program needs. Raises LookupError when the package has no migrations."""
    names = [file.name for file in files("db").joinpath("migrations", "versions").iterdir()]
    found = max((name.partition("_")[0] for name in names if name[0].isdigit()), default=None)
    if found is None:
        raise LookupError("the package holds no migrations")
    return found


def _upgrade(connection: Connection) -> None:
    if connection.dialect.name == "postgresql":
        connection.exec_driver_sql(f"SELECT pg_advisory_xact_lock({_ONE_AT_A_TIME})")
    if _current(connection) == head():
        return
    with _script() as script:

        def steps(revision: Any, _context: Any) -> Any:
            return script._upgrade_revs("head", revision)

        _run(script, connection, steps)


_ONE_AT_A_TIME = 0x6561736577617264
"""An advisory lock's number: processes that start together migrate one after another."""


def _run(script: ScriptDirectory, connection: Connection, steps: Callable[[Any, Any], Any]) -> None:
    from alembic.config import Config
    from alembic.runtime.environment import EnvironmentContext

    with EnvironmentContext(Config(), script, fn=steps, destination_rev="head") as environment:
        environment.configure(connection=connection, target_metadata=Base.metadata, render_as_batch=True)
        environment.run_migrations()


@contextmanager
def _script() -> Iterator[ScriptDirectory]:
    """The migrations as Alembic's script directory, wherever the package is installed."""
    from alembic.script import ScriptDirectory

    with as_file(files("db").joinpath("migrations")) as folder:
        yield ScriptDirectory(str(folder))
