"""One process leads: it ticks and asks for updates. Another takes over within seconds when it is gone."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Awaitable, Callable

from bot.clocks import Machine
from db import leads
from db.engine import Database
from db.trouble import passing

LEASE_SECONDS = 6.0
RENEW_SECONDS = 1.5
"""A leader that could not renew for four times stops; another begins at the latest a renewal later. Our own choice."""

NAME = "lead"

log = logging.getLogger(__name__)


class Lead:
    """Does `duties` while this process holds the lease. They may be begun again, and must bear a second leader for a
    moment: a process that slept past its lease learns of it only when it wakes."""

    def __init__(
        self, database: Database, *, machine: Machine, worker: str, duties: Callable[[], Awaitable[None]]
    ) -> None:
        self._database = database
        self._machine = machine
        self._worker = worker
        self._duties = duties
        self._until = 0.0
        self._task: asyncio.Future[None] | None = None

    async def run(self) -> None:
        """Leads whenever it may, until cancelled. Ends with what the duties die of."""
        try:
            while True:
                await self._follow(await self._holds())
                await self._wait()
        finally:
            await self._stop()
            await self._give_up()

    async def _holds(self) -> bool:
        if self._database.alone:
            return True
        try:
            async with asyncio.timeout(RENEW_SECONDS * 2):
                now = self._machine.now()
                held = await self._database.write(
                    lambda session: leads.hold(session, NAME, self._worker, now=now, seconds=LEASE_SECONDS)
                )
        except Exception as error:
            if not passing(error):
                raise
            log.warning("lead-not-renewed", extra={"error": type(error).__name__})
            return self._machine.now() < self._until
        self._until = now + LEASE_SECONDS if held else 0.0
        return held

    async def _follow(self, held: bool) -> None:
        if held and self._task is None:
            log.info("leading")
            self._task = asyncio.ensure_future(self._duties())
        elif not held and self._task is not None:
            log.warning("lead-lost")
            await self._stop()

    async def _wait(self) -> None:
        if self._task is None:
            await asyncio.sleep(RENEW_SECONDS)
            return
        await asyncio.wait([self._task], timeout=RENEW_SECONDS)
        if self._task.done():
            self._task.result()
            raise RuntimeError("the leader's duties ended by themselves")

    async def _stop(self) -> None:
        if self._task is not None:
            self._task.cancel()
            await asyncio.gather(self._task, return_exceptions=True)
            self._task = None

    async def _give_up(self) -> None:
        if self._until:
            try:
                await self._database.write(lambda session: leads.give_up(session, NAME, self._worker))
            except Exception as error:
                if not passing(error):
                    raise
