"""A process of the program: composed as the composition root does it, and mortal at every step."""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable, Coroutine, Mapping
from contextvars import copy_context
from datetime import datetime
from pathlib import Path
from typing import Any, TypeVar

from sqlalchemy import text
from sqlalchemy.ext.asyncio import AsyncSession

from bot import failing
from bot.alive import alive
from bot.clocks import Calendar, Machine
from bot.handlers import STORED, Stored, handlers
from bot.lead import Lead
from bot.painting import NotDrawn, Painting
from bot.practice.shapes import BOT_USERNAME
from bot.receiving import InboxWorker, Poller, QuietApplication, add_handlers, built, dispatch
from bot.sending import Sender
from bot.ticks import Ticker
from bot.transport import AiohttpRequest
from tests.simulation.inline import Opened
from tests.simulation.loop import OWNED, NumberedTask

T = TypeVar("T")

TOKEN = "1000:simulated"
PICTURE = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR" + (64).to_bytes(4, "big") * 2
"""All that the platform looks at of a picture."""


class Died(BaseException):
    """The process ends here, at once: nothing that stands behind this point is done."""


class HandlerBroke(Exception):
    """A handler fails for no reason of its own."""


class Mortal:
    """Says of each step whether the process still lives; `fuse` is how many steps are left, None for no end."""

    def __init__(self, name: str) -> None:
        self.name = name
        self.dead = False
        self.fuse: int | None = None
        self.died_at = ""
        self.asleep_until = 0.0

    def gate(self, step: str) -> None:
        """One step. Raises Died."""
        if self.dead:
            raise Died(self.name)
        if self.fuse is not None:
            self.fuse -= 1
            if self.fuse <= 0:
                self.dead, self.died_at = True, step
                raise Died(self.name)

    async def awake(self) -> bool:
        """Waits while the process sleeps; whether it did."""
        loop = asyncio.get_running_loop()
        slept = loop.time() < self.asleep_until
        while not self.dead and loop.time() < self.asleep_until:
            await asyncio.sleep(self.asleep_until - loop.time())
        return slept


class Painter(Painting):
    """Draws nothing; `fails` says whether the next picture cannot be drawn."""

    def __init__(self, fails: Callable[[], bool]) -> None:
        super().__init__()
        self._fails = fails

    async def picture(self, digest: str, recipe: Mapping[str, Any]) -> bytes:
        if self._fails():
            raise NotDrawn("the painter is gone")
        return PICTURE


class Process:
    """One life of the program on a database; `shared` when there are others at the same time."""

    def __init__(
        self,
        mortal: Mortal,
        file: Path,
        transport: Callable[..., AiohttpRequest],
        *,
        calendar: Calendar,
        machine: Machine,
        turn: asyncio.Lock,
        shared: bool,
        painter: Painting,
        breaks: Callable[[], bool],
        pace: float,
    ) -> None:
        self.mortal = mortal
        self.tasks: set[NumberedTask] = set()
        self.ended: list[BaseException] = []
        """What a loop has died of, apart from the process itself."""
        self._open = Opened(file, mortal.gate, turn, shared=shared)
        self.database = self._open.database
        self._machine = machine
        self.ticker = Ticker(self.database, calendar, BOT_USERNAME)
        self.application = built(TOKEN, "http://platform", transport)
        add_handlers(self.application, handlers(BOT_USERNAME))
        hooks = failing.Hooks(calendar, BOT_USERNAME)
        bot = self.application.bot
        self.sender = Sender(
            self.database,
            bot,
            calendar=calendar,
            machine=machine,
            worker=mortal.name,
            on_unreachable=hooks.unreachable,
            chat_pace=pace,
            painting=painter,
        )
        self.inbox = InboxWorker(
            self.database,
            bot,
            handle=_handling(self.application, breaks),
            on_failed=hooks.update_failed,
            machine=machine,
            worker=mortal.name,
        )
        poller = Poller(self.database, bot, calendar=calendar, transport=transport)
        self.lead = Lead(self.database, machine=machine, worker=mortal.name, duties=poller.run)

    def begin(self) -> None:
        """Starts everything; returns at once."""
        self.spawn(self._live()).add_done_callback(self._over)

    def _over(self, life: asyncio.Task[None]) -> None:
        if not life.cancelled() and not self.mortal.dead and (error := life.exception()) is not None:
            self.ended.append(error)
        self.mortal.dead = True

    def spawn(self, work: Coroutine[Any, Any, T]) -> asyncio.Task[T]:
        """Runs something inside this process."""
        context = copy_context()
        context.run(OWNED.set, self.tasks)
        return context.run(asyncio.get_running_loop().create_task, work)

    async def end(self) -> None:
        """Drops all that was in memory."""
        self.mortal.dead = True
        while self.tasks:
            for task in sorted(self.tasks, key=lambda one: one.number):
                task.cancel()
            await asyncio.sleep(0)
        await self._open.drop()

    async def _live(self) -> None:
        self._open.writer.start()
        await self.application.initialize()
        async with alive(self.database, self._machine, self.mortal.name):
            loops = (self.lead.run(), self.inbox.run(), self.sender.run())
            tasks = [asyncio.get_running_loop().create_task(one) for one in loops]
            await asyncio.wait(tasks, return_when=asyncio.FIRST_EXCEPTION)
            for task in tasks:
                if task.done():
                    task.result()


def _handling(application: QuietApplication, breaks: Callable[[], bool]) -> Callable[..., Awaitable[None]]:
    """Handles an update, and leaves a mark in the same transaction by which its effect can be counted."""

    async def handle(
        session: AsyncSession, update: Mapping[str, Any], document: bytes | None, stored_at: datetime
    ) -> None:
        await session.execute(text("INSERT INTO sim_effect VALUES (:id)"), {"id": update["update_id"]})
        token = STORED.set(Stored(stored_at, document))
        try:
            await dispatch(application, update)
        finally:
            STORED.reset(token)
        if breaks():
            raise HandlerBroke

    return handle
