"""Rehearsals for the chat: each in a process of its own, so that nothing waits for it and no write is open."""

from __future__ import annotations

import asyncio
import json
import logging
import sys
from asyncio.subprocess import PIPE
from collections.abc import Sequence
from typing import Any, TypeVar

from sqlalchemy.ext.asyncio import AsyncSession

from bot.clocks import Calendar, Machine
from bot.flows.desk import Desk
from bot.pulling import Puller
from bot.words.message import Message
from db import rehearsals
from db.engine import Database
from db.rehearsals import Asked
from db.schema import Person, ProgrammeVersion
from db.trouble import steadily
from db.writer import Job

T = TypeVar("T")

log = logging.getLogger(__name__)

SECONDS = 240.0
"""One that takes longer is given up. Our own choice."""
LEASE_SECONDS = SECONDS + 60


class NotRehearsed(RuntimeError):
    """A rehearsal that could not be done."""


class Rehearser(Puller[Asked]):
    """Does what was asked for, one after the other."""

    def __init__(
        self, database: Database, *, calendar: Calendar, machine: Machine, worker: str, bot_username: str
    ) -> None:
        super().__init__(database, topics=(rehearsals.TOPIC,), concurrency=1)
        self._calendar = calendar
        self._machine = machine
        self._worker = worker
        self._bot_username = bot_username

    async def begin(self) -> None:
        """Where only one process serves, frees what an earlier one had in hand."""
        if self.database.alone:
            await self._write(rehearsals.free_all)

    async def claim(self, limit: int) -> Sequence[Asked]:
        """The oldest that nobody has in hand."""
        now = self._machine.now()
        return await self._write(
            lambda session: rehearsals.claim(session, self._worker, machine_now=now, lease_seconds=LEASE_SECONDS)
        )

    async def work(self, row: Asked) -> None:
        """Rehearses, then tells what came of it; a rehearsal that cannot be done is told of too."""
        found: dict[str, Any] | None = None
        if row.tries <= rehearsals.TRIES:
            try:
                found = await rehearsed_apart(await self._source(row))
            except NotRehearsed as error:
                log.error("rehearsal-failed", extra={"subject": row.id, "error": type(error).__name__})
        await self._write(lambda session: self._tell(session, row, found))

    async def _source(self, row: Asked) -> str:
        async with self.database.reading() as session:
            return (await session.get_one(ProgrammeVersion, row.version)).source

    async def _write(self, job: Job[T]) -> T:
        return await steadily(lambda: self.database.write(job))

    async def _tell(self, session: AsyncSession, row: Asked, found: dict[str, Any] | None) -> None:
        if not await rehearsals.done(session, row, self._worker):
            return
        person = await session.get_one(Person, row.person)
        title = (await session.get_one(ProgrammeVersion, row.version)).title
        now, cause = self._calendar.now(), f"rehearsal:{row.id}"
        desk = Desk(session=session, now=now, cause=cause, bot_username=self._bot_username)
        words = desk.words(person)
        if found is None:
            await desk.say(person, Message(words.say("previewing.not_rehearsed", title=title)))
            return
        text = words.say("previewing.rehearsed", title=title, clients=found["clients"], r=_rounded(found))
        await desk.picture(person, {"base64": found["png"], "filename": "rehearsal.png"}, text)


def _rounded(found: dict[str, Any]) -> dict[str, Any]:
    dates = {name: None if found[name] is None else f"{found[name]:g}" for name in ("median", "ninetieth")}
    days = [{"day": d["day"], "held": f"{d['held']:.2f}", "hurt": f"{d['hurt']:.2f}"} for d in found["days"]]
    return {**dates, "days": days}


async def rehearsed_apart(source: str) -> dict[str, Any]:
    """What `bot.rehearsed` says of a programme file's text, from a process of its own. Raises NotRehearsed."""
    process = await asyncio.create_subprocess_exec(sys.executable, "-m", "bot.rehearsed", stdin=PIPE, stdout=PIPE)
    try:
        async with asyncio.timeout(SECONDS):
            out, _nothing = await process.communicate(source.encode())
        if process.returncode != 0:
            raise NotRehearsed(f"the process ended with {process.returncode}")
        return dict(json.loads(out))
    except TimeoutError as error:
        raise NotRehearsed(f"not done within {SECONDS:g} seconds") from error
    finally:
        if process.returncode is None:
            process.kill()
            await process.wait()
