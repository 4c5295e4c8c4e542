"""Real workers that are killed: `serve` in processes forked from one that has everything imported (`tests.nursery`),
so that a life costs little, against a platform that counts what arrives.
"""

from __future__ import annotations

import asyncio
import os
import random
import signal
import sys
from collections import Counter
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import aiohttp
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from db import inbox, migrate, outbox
from db.delivery import Kind
from db.engine import Database, opened
from db.schema import Inbox, Outbox
from db.trouble import steadily
from tests.postgres import free_port
from tests.stores import here

CHATS = 200
"""People that the messages go to; a message of one chat waits for the one before."""


@dataclass(slots=True)
class Lab:
    """A platform, a database, and workers that live and die."""

    platform: str
    database: Database
    http: aiohttp.ClientSession
    nursery: asyncio.subprocess.Process
    log: Path
    alive: dict[int, str] = field(default_factory=dict)
    put_so_far: int = 0
    fed: int = 0

    async def start(self, role: str = "all") -> int:
        """Lets a worker begin; returns its process number."""
        if self.nursery.stdin is None or self.nursery.stdout is None:
            raise RuntimeError("the nursery has no pipes")
        self.nursery.stdin.write(f"{role}\n".encode())
        await self.nursery.stdin.drain()
        number = int(await asyncio.wait_for(self.nursery.stdout.readline(), 30))
        self.alive[number] = role
        return number

    async def kill(self, number: int) -> str:
        """Kills a worker where it stands, and waits until it is gone; returns its role.

        Raises RuntimeError, with the end of the workers' log, for one that has ended by itself.
        """
        role = self.alive.pop(number)
        try:
            os.kill(number, signal.SIGKILL)
        except ProcessLookupError:
            raise RuntimeError(f"a worker ended by itself: {self.log.read_text()[-2000:]}") from None
        while is_there(number):
            await asyncio.sleep(0.002)
        return role

    async def put(self, count: int) -> None:
        """Lets sessions and some alerts wait to be sent, each with a text of its own."""
        now = datetime.now(UTC)
        first, self.put_so_far = self.put_so_far, self.put_so_far + count

        async def job(session: AsyncSession) -> None:
            for n in range(first, first + count):
                kind = Kind.ALERT if n % 20 == 0 else Kind.SESSION
                await outbox.put(
                    session,
                    key=f"k{n}",
                    chat=1000 + n % CHATS,
                    kind=kind,
                    method="send_message",
                    payload={"text": f"{kind} {n}", "again": "again:"},
                    now=now,
                )

        await steadily(lambda: self.database.write(job))

    async def feed(self, count: int) -> None:
        """Lets updates wait at the platform."""
        async with self.http.post(f"{self.platform}/feed", json={"count": count, "chats": 50}) as answer:
            self.fed = (await answer.json())["fed"]

    async def busy(self) -> int:
        """How many messages and updates workers have in hand."""

        async def look() -> int:
            async with self.database.reading() as session:
                messages = await session.scalars(select(Outbox.id).where(Outbox.state.in_(["leased", "sending"])))
                updates = await session.scalars(select(Inbox.update_id).where(Inbox.state == "leased"))
                return len(messages.all()) + len(updates.all())

        return await steadily(look)

    async def open_work(self) -> list[str]:
        """What is not done yet, in words."""

        async def look() -> list[str]:
            async with self.database.reading() as session:
                return [*await inbox.open_work(session), *await outbox.open_work(session)]

        return await steadily(look)

    async def until_done(self, seconds: float) -> None:
        """Waits until every update is handled and every message has left; fails when it is not in time."""
        async with asyncio.timeout(seconds):
            while not await self._all_stored() or await self.open_work():
                await asyncio.sleep(0.2)

    async def _all_stored(self) -> bool:
        async def look() -> bool:
            async with self.database.reading() as session:
                return sum((await inbox.counts(session)).values()) >= self.fed

        return await steadily(look)

    async def seen(self) -> Counter[str]:
        """How often each text has arrived."""
        async with self.http.get(f"{self.platform}/seen") as answer:
            return Counter(await answer.json())

    async def kill_at_random(self, rng: random.Random, *, longest: float) -> int:
        """Kills one worker at a random moment, starts another of its role; returns what was in hand just before."""
        await asyncio.sleep(rng.uniform(0, longest))
        number = rng.choice(list(self.alive))
        in_hand = await self.busy()
        role = await self.kill(number)
        await self.start(role)
        return in_hand

    async def verdict(self) -> dict[str, Any]:
        """What became of everything, counted against what arrived. Nothing lost, nothing twice but what may be."""
        seen = await self.seen()
        async with self.database.reading() as session:
            rows = (await session.execute(select(Outbox.key, Outbox.kind, Outbox.state))).all()
            updates = Counter(await session.scalars(select(Inbox.state)))
        found: Counter[str] = Counter()
        for key, kind, state in rows:
            found[f"{kind} {state}"] += 1
            if not key.startswith("k"):
                continue
            text = f"{kind} {key[1:]}"
            arrived, repeated = seen[text], seen[f"again:\n\n{text}"]
            found["sessions twice"] += kind == "session" and arrived > 1
            found["sent but never arrived"] += state == "sent" and arrived + repeated == 0
            found["alerts never arrived"] += kind == "alert" and arrived + repeated == 0
            found["alerts repeated and marked so"] += repeated
            found["alerts repeated without a word"] += kind == "alert" and arrived > 1
        answered = {key for key, _kind, _state in rows if key.startswith("update:")}
        found["updates without their answer"] = sum(f"update:{n}:1" not in answered for n in range(1, self.fed + 1))
        return dict(found) | {f"updates {state}": count for state, count in updates.items()}


@asynccontextmanager
async def lab(folder: Path, *, delay: float = 0.01, per_second: int = 400) -> AsyncIterator[Lab]:
    """An empty database where the test keeps its databases, a platform and a nursery."""
    url, port = await here().url(folder, tables=False), free_port()
    await migrate.upgrade(url)
    pipe = asyncio.subprocess.PIPE
    platform = await asyncio.create_subprocess_exec(
        sys.executable, "-m", "tests.bench.platform", str(port), "--delay", str(delay), stdout=pipe
    )
    address = f"http://127.0.0.1:{port}"
    settings = {
        "EASEWARD_TOKEN": "100:bench",
        "EASEWARD_API_URL": address,
        "EASEWARD_DATABASE_URL": url,
        "EASEWARD_MESSAGES_PER_SECOND": str(per_second),
        "EASEWARD_CHAT_PACE": "0",
    }
    log = folder / "workers.log"
    with log.open("ab") as file:
        nursery = await asyncio.create_subprocess_exec(
            sys.executable, "-m", "tests.nursery", env=os.environ | settings, stdin=pipe, stdout=pipe, stderr=file
        )
    try:
        if platform.stdout is None:
            raise RuntimeError("the platform has no output")
        await platform.stdout.readline()
        async with opened(url) as database, aiohttp.ClientSession() as http:
            place = Lab(address, database, http, nursery, log)
            try:
                yield place
            finally:
                for number in list(place.alive):
                    await place.kill(number)
    finally:
        for process in (nursery, platform):
            process.kill()
            await process.wait()


def is_there(number: int) -> bool:
    """Whether a process runs."""
    try:
        os.kill(number, 0)
    except ProcessLookupError:
        return False
    return True
