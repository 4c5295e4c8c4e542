"""PostgreSQL: many processes on one database; each change in a transaction of its own, news by LISTEN and NOTIFY."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from typing import Any, TypeVar

from sqlalchemy import text
from sqlalchemy.engine import URL
from sqlalchemy.ext.asyncio import AsyncEngine, AsyncSession, create_async_engine

from db.news import News
from db.trouble import AlreadyServing, clashed, passing, steadily
from db.writer import Job, Running, WriterClosed, refuse_nested

T = TypeVar("T")

CHANNEL = "easeward"
"""The channel of NOTIFY; its payload is a topic."""

CONNECTIONS = 8
"""At most so many connections of one process to write, and as many to read. Our own choice."""

CLASHES_BORNE = 10
"""A transaction that loses against others is run again at most so often. Our own choice."""

IDLE_SECONDS = 15
"""A process that stops in the middle of a transaction keeps its locks no longer than this. Our own choice: longer than
any use case waits for anything but the database, and others have taken its work over by then."""
POOL_SECONDS = 30.0
CONNECT_SECONDS = 10.0

log = logging.getLogger(__name__)


@asynccontextmanager
async def writing(
    address: URL, *, connections: int = CONNECTIONS, idle_seconds: int | None = None
) -> AsyncIterator[AsyncEngine]:
    """An engine whose transactions change the database; one that is left open longer is undone (0: never)."""
    idle = IDLE_SECONDS if idle_seconds is None else idle_seconds
    settings = {"timezone": "UTC", "idle_in_transaction_session_timeout": f"{idle * 1000}"}
    engine = create_async_engine(
        address,
        pool_size=connections,
        max_overflow=0,
        pool_timeout=POOL_SECONDS,
        hide_parameters=True,
        connect_args={"timeout": CONNECT_SECONDS, "server_settings": settings},
    )
    try:
        yield engine
    finally:
        await engine.dispose()


@asynccontextmanager
async def reading(address: URL) -> AsyncIterator[AsyncEngine]:
    """An engine whose transactions see one moment of the database and cannot change it."""
    async with writing(address, idle_seconds=0) as engine:
        yield engine.execution_options(isolation_level="REPEATABLE READ", postgresql_readonly=True)


@asynccontextmanager
async def lock(address: URL, *, shared: bool) -> AsyncIterator[None]:
    """Hold the database's one advisory lock of ours: shared by all who serve, or alone. Raises `AlreadyServing`.

    The server gives it back when the connection ends, also by a restart of the server.
    """
    kind = "_shared" if shared else ""
    async with writing(address, connections=1) as engine, engine.connect() as connection:
        await connection.execution_options(isolation_level="AUTOCOMMIT")
        taken = await connection.scalar(text(f"SELECT pg_try_advisory_lock{kind}(:number)"), {"number": _LOCK})
        if not taken:
            whose = "another command works alone with" if shared else "processes serve from"
            raise AlreadyServing(f"{address.render_as_string()}: {whose} this database; wait or stop them first")
        try:
            yield
        finally:
            try:
                await connection.execute(text(f"SELECT pg_advisory_unlock{kind}(:number)"), {"number": _LOCK})
            except Exception as error:
                if not passing(error):
                    raise
                await connection.invalidate()


_LOCK = 0x6561736577617265


class Transactions:
    """Runs what it is given in transactions of their own, many at once."""

    def __init__(self, engine: AsyncEngine) -> None:
        self._engine = engine
        self._running: set[asyncio.Task[Any]] = set()
        self._closing = False

    async def write(self, job: Job[T]) -> T:
        """Run `job` and return its result after the commit; its exception undoes it.

        A caller that is cancelled does not undo its job. A job that lost against another transaction is run again.
        Raises `NestedWrite` inside another job and `WriterClosed` after `stop`.
        """
        refuse_nested()
        if self._closing:
            raise WriterClosed("the writer has stopped: nothing was written")
        task = asyncio.create_task(self._again(job))
        self._running.add(task)
        task.add_done_callback(self._running.discard)
        return await asyncio.shield(task)

    async def stop(self) -> None:
        """Finish what runs, refuse what comes later."""
        self._closing = True
        await asyncio.gather(*self._running, return_exceptions=True)

    async def _again(self, job: Job[T]) -> T:
        for _ in range(CLASHES_BORNE):
            try:
                return await self._once(job)
            except Exception as error:
                if not clashed(error):
                    raise
                log.info("transaction-again", extra={"error": type(error).__name__})
        return await self._once(job)

    async def _once(self, job: Job[T]) -> T:
        async with self._engine.connect() as connection, connection.begin():
            session = AsyncSession(
                bind=connection, join_transaction_mode="conditional_savepoint", expire_on_commit=False
            )
            running = Running(session)
            result = await running.run(job)
            for topic in running.topics:
                await connection.execute(_NOTIFY, {"channel": CHANNEL, "topic": topic})
        return result


_NOTIFY = text("SELECT pg_notify(:channel, :topic)")


class Listener:
    """Passes on what any process announces. While its connection is away nothing is heard, and then everyone wakes."""

    def __init__(self, engine: AsyncEngine, news: News) -> None:
        self._engine = engine
        self._news = news
        self._task: asyncio.Task[None] | None = None

    async def start(self) -> None:
        """Begin to listen; returns when the first connection does."""
        ready: asyncio.Future[None] = asyncio.get_running_loop().create_future()
        self._task = asyncio.create_task(self._listen_on(ready), name="easeward-listener")
        await asyncio.wait([self._task, ready], return_when=asyncio.FIRST_COMPLETED)
        if self._task.done():
            self._task.result()

    async def stop(self) -> None:
        """Listen no longer."""
        if self._task is not None:
            self._task.cancel()
            await asyncio.wait([self._task])
            if not self._task.cancelled() and (error := self._task.exception()) is not None:
                log.info("listener-stopped", extra={"error": type(error).__name__})  # cut off while it connected

    async def _listen_on(self, ready: asyncio.Future[None]) -> None:
        await self._once(ready)
        while True:
            log.warning("listening-again")
            await steadily(lambda: self._once(None))

    async def _once(self, ready: asyncio.Future[None] | None) -> None:
        gone = asyncio.Event()
        async with self._engine.connect() as connection:
            raw: Any = (await connection.get_raw_connection()).driver_connection
            raw.add_termination_listener(lambda _connection: gone.set())
            await raw.add_listener(CHANNEL, lambda _connection, _pid, _channel, topic: self._news.spread([topic]))
            if ready is not None:
                ready.set_result(None)
            self._news.wake_all()
            await gone.wait()
            await connection.invalidate()
