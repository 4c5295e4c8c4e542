"""The one writer: whoever wants to change the database hands it a function and hears back after the commit.

What waits together is committed together. Each function runs in a savepoint of its own, so an exception
undoes that function alone and reaches the caller that handed it in. On PostgreSQL functions run in transactions
of their own (`db.transactions`) and only the small changes of `merged` come here.
"""

from __future__ import annotations

import asyncio
from collections import deque
from collections.abc import Awaitable, Callable, Mapping, Sequence
from contextvars import ContextVar
from dataclasses import dataclass, field
from typing import Any, TypeVar

from sqlalchemy.ext.asyncio import AsyncConnection, AsyncEngine, AsyncSession

from db.news import News
from db.trouble import passing

T = TypeVar("T")
R = TypeVar("R")
Job = Callable[[AsyncSession], Awaitable[T]]
"""A function that is given the writer's session."""

Merger = Callable[[AsyncConnection, Sequence[T]], Awaitable[Sequence[R]]]
"""Applies many small changes of one sort at once and says for each, in order, what came of it."""

GROUP = 256
"""At most so many functions and marks share one transaction, so that the first need not wait for the last."""


class NestedWrite(RuntimeError):
    """A function that runs in the writer asked the writer for another one; it would wait for itself."""


class NotInsideWrite(RuntimeError):
    """Something that only makes sense inside the writer's transaction was called outside of it."""


class WriterClosed(RuntimeError):
    """The writer has stopped; nothing was written."""


class JobCancelled(RuntimeError):
    """Something that a function awaited in the writer was cancelled; the function was undone."""


@dataclass(slots=True)
class Running:
    """What belongs to the function that runs just now."""

    session: AsyncSession
    topics: set[str] = field(default_factory=set)

    async def run(self, job: Job[T]) -> T:
        """Runs `job` with the session, where `announce` and the like find it, and commits the session."""
        token = _running.set(self)
        try:
            async with self.session:
                result = await job(self.session)
                await self.session.commit()
            return result
        finally:
            _running.reset(token)


@dataclass(frozen=True, slots=True)
class _Waiting:
    """A function that waits for its turn, or an item that waits to be merged with its like."""

    future: asyncio.Future[Any]
    job: Job[Any] | None = None
    merger: Merger[Any, Any] | None = None
    item: Any = None


@dataclass(slots=True)
class _Group:
    """What one transaction has come to; handed over only after its commit."""

    outcomes: list[tuple[asyncio.Future[Any], Any]] = field(default_factory=list)
    errors: list[tuple[asyncio.Future[Any], Exception]] = field(default_factory=list)
    topics: set[str] = field(default_factory=set)


_running: ContextVar[Running | None] = ContextVar("easeward_running_write", default=None)


def inside_write() -> bool:
    """Whether the caller runs inside the writer's transaction, where nothing but SQL may be awaited."""
    return _running.get() is not None


def current_session() -> AsyncSession:
    """The session of the function that runs in the writer. Raises `NotInsideWrite` elsewhere."""
    return _current().session


def announce(topic: str) -> None:
    """Wake whoever listens to `topic` once what runs now is committed. Without a writer nobody listens."""
    running = _running.get()
    if running is not None:
        running.topics.add(topic)


def _current() -> Running:
    running = _running.get()
    if running is None:
        raise NotInsideWrite("this needs the writer's transaction: call it inside a function given to write()")
    return running


class Writer:
    """Runs what it is given on one writing connection, one after another, many in a transaction."""

    def __init__(self, engine: AsyncEngine, news: News) -> None:
        self._engine = engine
        self._news = news
        self._waiting: deque[_Waiting] = deque()
        self._wake = asyncio.Event()
        self._closing = False
        self._task: asyncio.Task[None] | None = None

    def start(self) -> None:
        """Begin to work in a task of its own."""
        self._task = asyncio.get_running_loop().create_task(self._work(), name="easeward-writer")

    async def stop(self) -> None:
        """Finish what waits already, refuse what comes later, and end."""
        self._closing = True
        self._wake.set()
        if self._task is not None:
            await self._task

    async def write(self, job: Job[T]) -> T:
        """Run `job` in a savepoint and return its result after the commit; its exception undoes it alone.

        A caller that is cancelled does not undo its job. A job must not commit, and awaits nothing but SQL.
        Raises `NestedWrite` inside another job and `WriterClosed` after `stop`.
        """
        result: T = await self._hand_in(_Waiting(self._future(), job=job))
        return result

    async def merged(self, merger: Merger[T, R], item: T) -> R:
        """Let `merger` apply `item` together with all its like that wait, and return what came of it after the commit.

        A merger may run twice, the first time undone: when another one of its transaction fails.
        """
        result: R = await self._hand_in(_Waiting(self._future(), merger=merger, item=item))
        return result

    def _future(self) -> asyncio.Future[Any]:
        refuse_nested()
        if self._closing:
            raise WriterClosed("the writer has stopped: nothing was written")
        return asyncio.get_running_loop().create_future()

    async def _hand_in(self, waiting: _Waiting) -> Any:
        self._waiting.append(waiting)
        self._wake.set()
        return await asyncio.shield(waiting.future)

    async def _work(self) -> None:
        try:
            while not (self._closing and not self._waiting):
                await self._wake.wait()
                self._wake.clear()
                while self._waiting:
                    await self._one_group()
        finally:
            self._closing = True
            _fail(list(self._waiting), WriterClosed("the writer was stopped: nothing was written"))

    async def _one_group(self) -> None:
        group = [self._waiting.popleft() for _ in range(min(GROUP, len(self._waiting)))]
        try:
            done = await self._commit(group)
        except Exception as error:
            _fail(group, error)
        except BaseException:
            _fail(group, WriterClosed("the writer was stopped before the commit: nothing was written"))
            raise
        else:
            self._hand_over(done)

    async def _commit(self, waiting: Sequence[_Waiting]) -> _Group:
        """Small changes go without savepoints, which cost more than they do; if one fails, all again with them."""
        if len(waiting) == 1 and waiting[0].job is not None:
            return await self._alone(waiting[0].job, waiting[0].future)
        merging = _by_merger(waiting)
        if any(one.job is not None for one in waiting):
            return await self._carefully(merging, waiting)
        group = _Group()
        try:
            async with self._engine.connect() as connection, connection.begin():
                for merger, alike in merging.items():
                    await _merge(connection, merger, alike, group)
        except Exception as error:
            if passing(error):
                raise
            return await self._carefully(merging, waiting)
        return group

    async def _alone(self, job: Job[Any], future: asyncio.Future[Any]) -> _Group:
        """A function that has the transaction to itself: what undoes it undoes all there is."""
        group = _Group()
        await _run(AsyncSession(self._engine, expire_on_commit=False), job, future, group)
        return group

    async def _carefully(
        self, merging: Mapping[Merger[Any, Any], Sequence[_Waiting]], waiting: Sequence[_Waiting]
    ) -> _Group:
        group = _Group()
        async with self._engine.connect() as connection, connection.begin():
            for merger, alike in merging.items():
                try:
                    async with connection.begin_nested():
                        await _merge(connection, merger, alike, group)
                except Exception as error:
                    group.errors.extend((one.future, error) for one in alike)
            for one in waiting:
                if one.job is not None:
                    await _run(_session(connection), one.job, one.future, group)
        return group

    def _hand_over(self, group: _Group) -> None:
        for future, result in group.outcomes:
            future.set_result(result)
        for future, error in group.errors:
            future.set_exception(error)
        self._news.spread(group.topics)


def _by_merger(waiting: Sequence[_Waiting]) -> dict[Merger[Any, Any], list[_Waiting]]:
    alike: dict[Merger[Any, Any], list[_Waiting]] = {}
    for one in waiting:
        if one.merger is not None:
            alike.setdefault(one.merger, []).append(one)
    return alike


async def _merge(
    connection: AsyncConnection, merger: Merger[Any, Any], alike: Sequence[_Waiting], group: _Group
) -> None:
    results = await merger(connection, [one.item for one in alike])
    group.outcomes.extend((one.future, result) for one, result in zip(alike, results, strict=True))


async def _run(session: AsyncSession, job: Job[Any], future: asyncio.Future[Any], group: _Group) -> None:
    running = Running(session)
    try:
        result = await running.run(job)
    except asyncio.CancelledError as error:
        if _being_stopped():
            raise
        group.errors.append((future, JobCancelled(f"cancelled inside a write: {error!r}")))
    except Exception as error:
        group.errors.append((future, error))
    else:
        group.outcomes.append((future, result))
        group.topics |= running.topics


def _session(connection: AsyncConnection) -> AsyncSession:
    return AsyncSession(bind=connection, join_transaction_mode="create_savepoint", expire_on_commit=False)


def _being_stopped() -> bool:
    task = asyncio.current_task()
    return task is not None and task.cancelling() > 0


def _fail(waiting: Sequence[_Waiting], error: Exception) -> None:
    for one in waiting:
        if not one.future.done():
            one.future.set_exception(error)


def refuse_nested() -> None:
    """Raises `NestedWrite` inside a function that runs in the writer: it would wait for itself."""
    if inside_write():
        raise NestedWrite("a function inside the writer must use its own session, not call the writer again")
