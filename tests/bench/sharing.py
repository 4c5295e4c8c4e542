"""What sending costs: `python -m tests.bench.sharing [--rates 30,1000] [--seconds N] [--runs N]`.

Sessions wait to leave, more than can; `easeward serve` sends them at its limit, on SQLite and on PostgreSQL, every
commit on disk. Told is how many arrived a second and what share of a core the process took for it, beyond what it
takes when nothing waits; the PostgreSQL server's is told apart. Beside it, in turns, a process that sends as many by
bare `Bot.send_message` on the same transport.
"""

from __future__ import annotations

import argparse
import asyncio
import sys
import tempfile
import time
from collections.abc import AsyncIterator, Callable, Sequence
from contextlib import asynccontextmanager
from pathlib import Path

from bot.transport import AiohttpRequest
from db import migrate
from db.engine import opened
from tests.bench.processes import Running, platform, ready, served, used_by_server
from tests.bench.sending import TEXT, arrived, bot_at, fill, places
from tests.stores import Databases, Place

SETTLING = 3.0
"""Seconds before those that count."""

Used = Callable[[], tuple[float, float]]
"""Processor seconds so far: of the process, and of its database's server."""


async def bare(api: str, per_second: int) -> None:
    """Sends so many a second, each at its moment, until it is ended from outside."""
    async with bot_at(api, AiohttpRequest()) as bot:
        print("ready", flush=True)
        begun, sent = time.monotonic(), 0
        under_way: set[asyncio.Task[object]] = set()
        while True:
            for number in range(sent, int((time.monotonic() - begun) * per_second)):
                task = asyncio.create_task(bot.send_message(chat_id=1000 + number, text=f"{number} {TEXT}"))
                under_way.add(task)
                task.add_done_callback(under_way.discard)
                sent += 1
            await asyncio.sleep(1 / 30)


@asynccontextmanager
async def sending_bare(api: str, per_second: int) -> AsyncIterator[Used]:
    """The bare sender, in a process of its own."""
    words = [sys.executable, "-m", "tests.bench.sharing", "--bare", api, "--rates", str(per_second)]
    process = await asyncio.create_subprocess_exec(*words, stdout=asyncio.subprocess.PIPE)
    if process.stdout is None:
        raise RuntimeError("it has no output")
    await process.stdout.readline()
    running = Running(process.pid, api, time.perf_counter())
    try:
        yield lambda: (running.used(), 0.0)
    finally:
        process.kill()
        await process.wait()


@asynccontextmanager
async def serving(place: Place, api: str, per_second: int, waiting: int) -> AsyncIterator[Used]:
    """`easeward serve` while so many sessions wait to leave."""
    with tempfile.TemporaryDirectory(dir=".") as folder:
        url = await place.url(Path(folder), tables=False)
        await migrate.upgrade(url)
        if waiting:
            async with opened(url) as database:
                await fill(database, waiting)
        async with served(url, api, per_second=per_second) as process:
            await ready(process)
            yield lambda: (process.used(), used_by_server(place.server) if isinstance(place, Databases) else 0.0)
        if isinstance(place, Databases):
            await place.drop_all()


async def measured(api: str, used: Used, seconds: float) -> tuple[float, float, float]:
    """Messages a second that arrived, and shares of a core of the process and the server."""
    await asyncio.sleep(SETTLING)
    await arrived(api)
    before, begun = used(), time.perf_counter()
    await asyncio.sleep(seconds)
    after, took = used(), time.perf_counter() - begun
    count = (await arrived(api))["arrived"]
    return count / took, (after[0] - before[0]) / took, (after[1] - before[1]) / took


async def main(rates: Sequence[int], seconds: float, runs: int) -> None:
    """Idle, then each rate, in turns."""
    with places() as both:
        for place in both:
            async with platform() as api, serving(place, api, 30, 0) as used:
                _count, share, server = await measured(api, used, seconds)
                print(f"nothing to send, {place.name}: {share:.3f} of a core, server {server:.3f}", flush=True)
        for rate in rates:
            waiting = round(rate * (seconds + 4 * SETTLING) + 1000)
            for _ in range(runs):
                async with platform() as api, sending_bare(api, rate) as used:
                    count, share, _server = await measured(api, used, seconds)
                    print(f"{rate} a second, bare: {count:.0f} a second, {share:.3f} of a core", flush=True)
                for place in both:
                    async with platform() as api, serving(place, api, rate, waiting) as used:
                        count, share, server = await measured(api, used, seconds)
                    print(
                        f"{rate} a second, {place.name}: {count:.0f} a second, {share:.3f} of a core, "
                        f"server {server:.3f}",
                        flush=True,
                    )


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("--rates", default="30,1000")
    words.add_argument("--seconds", type=float, default=15.0)
    words.add_argument("--runs", type=int, default=3)
    words.add_argument("--bare", help=argparse.SUPPRESS)
    found = words.parse_args()
    rates = [int(rate) for rate in found.rates.split(",")]
    if found.bare:
        asyncio.run(bare(found.bare, rates[0]))
    else:
        asyncio.run(main(rates, found.seconds, found.runs))
