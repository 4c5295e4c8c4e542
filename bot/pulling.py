"""Pulling work out of a table: claim a little, work on it in tasks, sleep until something was committed."""

from __future__ import annotations

import asyncio
import logging
from abc import ABC, abstractmethod
from collections.abc import Sequence
from typing import Generic, TypeVar

from db.engine import Database
from db.trouble import FIRST_PAUSE, LONGEST_PAUSE, passing

T = TypeVar("T")

log = logging.getLogger(__name__)

POLL_SECONDS = 5.0
"""The longest sleep without a look at the table, should another process have written to it."""


class Puller(ABC, Generic[T]):
    """A loop over claimed rows, many at once. `stop()` ends it; what is in hand gets `grace` seconds to finish.

    At most `concurrency` rows are in hand, and more are claimed when there is room for `least` of them or none is.
    """

    def __init__(
        self, database: Database, *, topics: Sequence[str], concurrency: int, least: int = 1, grace: float = 10.0
    ) -> None:
        self.database = database
        self._topics = topics
        self._concurrency = concurrency
        self._least = least
        self._pause = FIRST_PAUSE
        self._grace = grace
        self._wake = asyncio.Event()
        self._stopping = False
        self._tasks: set[asyncio.Task[None]] = set()
        self.more_behind = True
        """Whether rows may wait for those in hand to be done; a claim that knows better says so."""

    @abstractmethod
    async def claim(self, limit: int) -> Sequence[T]:
        """Take at most `limit` rows, all that may be taken now; fewer mean that there are no more."""

    @abstractmethod
    async def work(self, row: T) -> None:
        """Do one row's work. An exception from here ends the loop and reaches whoever runs it."""

    async def begin(self) -> None:
        """What happens before the first claim."""

    async def finish(self) -> None:
        """What happens after the last row, whatever ended the loop."""

    async def idle_seconds(self) -> float:
        """How long at most to sleep after all that can be claimed was claimed."""
        return POLL_SECONDS

    def stop(self) -> None:
        """Claim nothing more; `run` returns when what is in hand is done or the grace is over."""
        self._stopping = True
        self._wake.set()

    async def run(self) -> None:
        """Work until `stop`. Cancelled, it cancels what is in hand and waits for that to be recorded."""
        for topic in self._topics:
            self.database.news.listen(topic, self._wake)
        try:
            await self.begin()
            while not self._stopping:
                await self._round()
            await self._let_finish()
        finally:
            for topic in self._topics:
                self.database.news.unlisten(topic, self._wake)
            await self._cancel_rest()
            await self.finish()

    @property
    def stopping(self) -> bool:
        """Whether nothing new is to be begun."""
        return self._stopping

    def wake(self) -> None:
        """Look for work at once."""
        self._wake.set()

    async def _round(self) -> None:
        self._wake.clear()
        try:
            await self._look_for_work()
            self._pause = FIRST_PAUSE
        except Exception as error:
            if not passing(error):
                raise
            log.warning("database-away", extra={"error": type(error).__name__, "pause": self._pause})
            await asyncio.sleep(self._pause)
            self._pause = min(LONGEST_PAUSE, self._pause * 2)
        self._reap()

    async def _look_for_work(self) -> None:
        self.more_behind = True
        room = self._concurrency - len(self._tasks)
        enough = room >= self._least or not self._tasks
        rows = await self.claim(room) if enough else []
        for row in rows:
            self._start(row)
        if len(rows) < room or not enough:
            await self._sleep(await self.idle_seconds() if enough else None)

    def _start(self, row: T) -> None:
        task = asyncio.create_task(self.work(row))
        self._tasks.add(task)
        task.add_done_callback(self._ended)

    def _ended(self, task: asyncio.Task[None]) -> None:
        if self.more_behind or task.cancelled() or task.exception() is not None:
            self._wake.set()

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
