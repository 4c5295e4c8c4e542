"""Trouble with the database that passes: it was restarted, its disk is full, somebody else holds it. Then: again."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Awaitable, Callable
from typing import TypeVar

import asyncpg
from sqlalchemy.exc import DBAPIError
from sqlalchemy.exc import TimeoutError as PoolTimeout

T = TypeVar("T")

FIRST_PAUSE, LONGEST_PAUSE = 0.05, 5.0
"""Seconds between two tries, doubled each time. Our own choice."""

CLASHES = frozenset({"40001", "40P01"})
"""SQLSTATE of a transaction that lost against another one and is to be run again: serialization failure, deadlock
(PostgreSQL's documentation, appendix A)."""

_PASSING_CLASSES = ("08", "53", "57P", "25P03")
"""SQLSTATE classes, same source: connection exception, insufficient resources, operator intervention; and the one of a
transaction that was left open too long."""

_PASSING_IN_SQLITE = ("locked", "disk is full", "disk i/o error", "unable to open")


class AlreadyServing(RuntimeError):
    """Another process serves from this database."""


log = logging.getLogger(__name__)


def passing(error: BaseException) -> bool:
    """Whether an error says that the database cannot be used just now and nothing was wrong with what was asked."""
    if isinstance(error, DBAPIError):
        return error.connection_invalidated or _passing_cause(error.orig)
    if isinstance(error, asyncpg.InterfaceError | asyncpg.PostgresError):
        return isinstance(error, asyncpg.InterfaceError) or _passing_cause(error)
    return isinstance(error, OSError | PoolTimeout)


def clashed(error: BaseException) -> bool:
    """Whether a transaction was undone only because of another one at the same time."""
    return isinstance(error, DBAPIError) and _sqlstate(error.orig) in CLASHES


def _passing_cause(cause: BaseException | None) -> bool:
    state = _sqlstate(cause)
    if state is not None:
        return state in CLASHES or state.startswith(_PASSING_CLASSES)
    return isinstance(cause, OSError) or any(words in str(cause).lower() for words in _PASSING_IN_SQLITE)


def _sqlstate(cause: BaseException | None) -> str | None:
    found = getattr(cause, "sqlstate", None)
    return found if isinstance(found, str) else None


async def steadily(call: Callable[[], Awaitable[T]]) -> T:
    """Do `call` until the database takes it. For what may be done twice: a lost commit is not told from none."""
    pause = FIRST_PAUSE
    while True:
        try:
            return await call()
        except Exception as error:
            if not passing(error):
                raise
            log.warning("database-away", extra={"error": type(error).__name__, "pause": pause})
        await asyncio.sleep(pause)
        pause = min(LONGEST_PAUSE, pause * 2)
