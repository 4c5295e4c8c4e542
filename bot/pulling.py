"""Pulling work out of a table: claim a little, work on it in tasks, sleep until something was committed."""

from __future__ import annotations

import asyncio
from abc import ABC, abstractmethod
from collections.abc import Sequence
from typing import Generic, TypeVar

from db.engine import Database

T = TypeVar("T")

POLL_SECONDS = 5.0
"""The longest sleep without a look at the table, should another process have written to it."""


class Puller(ABC, Generic[T]):
    """A loop over claimed rows, many at once. `stop()` ends it; what is in hand gets `grace` seconds to finish."""

    def __init__(self, database: Database, *, topic: str, concurrency: int, grace: float = 10.0) -> None:
        self.database = database
        self._topic = topic
        self._concurrency = concurrency
        self._grace = grace
        self._wake = asyncio.Event()
        self._stopping = False
        self._tasks: set[asyncio.Task[None]] = set()

    @abstractmethod
    async def claim(self, limit: int) -> Sequence[T]:
        """Take at most `limit` rows; none if there is nothing to do now."""

    @abstractmethod
    async def work(self, row: T) -> None:
        """Do one row's work. An exception from here ends the loop and reaches whoever runs it."""

    async def begin(self) -> None:
        """What happens before the first claim."""

    async def finish(self) -> None:
        """What happens after the last row, whatever ended the loop."""

    async def idle_seconds(self) -> float:
        """How long at most to sleep when nothing was claimed."""
        return POLL_SECONDS

    def stop(self) -> None:
        """Claim nothing more; `run` returns when what is in hand is done or the grace is over."""
        self._stopping = True
        self._wake.set()

    async def run(self) -> None:
        """Work until `stop`. Cancelled, it cancels what is in hand and waits for that to be recorded."""
        self.database.writer.listen(self._topic, self._wake)
        try:
            await self.begin()
            while not self._stopping:
                await self._round()
            await self._let_finish()
        finally:
            self.database.writer.unlisten(self._topic, self._wake)
            await self._cancel_rest()
            await self.finish()

    async def _round(self) -> None:
        self._wake.clear()
        room = self._concurrency - len(self._tasks)
        rows = await self.claim(room) if room > 0 else []
        for row in rows:
            self._start(row)
        if not rows:
            await self._sleep(await self.idle_seconds() if room > 0 else None)
        self._reap()

    def _start(self, row: T) -> None:
        task = asyncio.create_task(self.work(row))
        self._tasks.add(task)
        task.add_done_callback(lambda _: self._wake.set())

    async def _sleep(self, seconds: float | None) -> None:
        try:
            await asyncio.wait_for(self._wake.wait(), seconds)
        except TimeoutError:
            return

    def _reap(self) -> None:
        done = {task for task in self._tasks if task.done()}
        self._tasks -= done
        for task in done:
            task.result()

    async def _let_finish(self) -> None:
        if self._tasks:
            await asyncio.wait(self._tasks, timeout=self._grace)
        self._reap()

    async def _cancel_rest(self) -> None:
        for task in self._tasks:
            task.cancel()
        await asyncio.gather(*self._tasks, return_exceptions=True)
        self._tasks.clear()
