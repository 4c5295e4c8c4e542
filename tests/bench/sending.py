"""How fast the outbox drains: `python -m tests.bench.sending [--messages N] [--runs N] [--workers | --profile]`.

10,000 due sessions leave through outbox and real HTTP, every row fenced and marked before and after its request, every
commit on disk (SQLite `synchronous=FULL`, PostgreSQL `fsync` and `synchronous_commit` on, both on the same disk).
Beside it, in the same run, against the same platform in a process of its own: bare `Bot.send_message` on the same
transport at the same concurrency, and on the chat library's own transport. Every run is printed; the best medians are
compared.
"""

from __future__ import annotations

import argparse
import asyncio
import cProfile
import statistics
import sys
import tempfile
import time
from collections.abc import AsyncIterator, Awaitable, Callable, Iterator
from contextlib import asynccontextmanager, contextmanager
from datetime import UTC, datetime
from pathlib import Path

import aiohttp
from sqlalchemy import insert
from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot
from telegram.request import BaseRequest, HTTPXRequest

from bot.alive import worker_name
from bot.clocks import SystemCalendar, SystemMachine
from bot.sending import Sender
from bot.transport import AiohttpRequest
from db import outbox
from db.engine import Database, opened
from db.schema import Outbox
from db.writer import announce
from tests.bench.processes import platform
from tests.postgres import SAFE, serving
from tests.stores import Databases, Files, Place

TEXT = "Day 9: hips and hamstrings, 14 minutes.\n" + "Split-stance hinge: 2 x 5 a side, hold the last 20 s.\n" * 5
CONCURRENCIES = (16, 32, 64, 128)


async def arrived(url: str) -> dict[str, int]:
    """What the platform has counted; it begins anew."""
    async with aiohttp.ClientSession() as http:
        async with http.get(f"{url}/count") as answer:
            found: dict[str, int] = await answer.json()
        async with http.post(f"{url}/reset"):
            return found


@asynccontextmanager
async def bot_at(url: str, request: BaseRequest) -> AsyncIterator[Bot]:
    """A bot on a transport."""
    async with Bot("100:bench", base_url=f"{url}/bot", request=request) as bot:
        yield bot


async def bare(bot: Bot, messages: int, concurrency: int) -> float:
    """Messages a second of `send_message` alone."""
    numbers = iter(range(messages))

    async def one() -> None:
        for number in numbers:
            await bot.send_message(chat_id=1000 + number, text=f"{number} {TEXT}")

    begin = time.perf_counter()
    await asyncio.gather(*(one() for _ in range(concurrency)))
    return messages / (time.perf_counter() - begin)


async def fill(database: Database, messages: int) -> None:
    """As many due sessions, each for a person of its own."""
    now = datetime.now(UTC)

    async def job(session: AsyncSession) -> None:
        rows = [
            {
                "key": f"session:{number}:2026-03-02",
                "chat": 1000 + number,
                "kind": "session",
                "lane": 2,
                "method": "send_message",
                "payload": {"text": f"{number} {TEXT}"},
                "state": "waiting",
                "attempts": 0,
                "next_at": 0.0,
                "made_at": now,
            }
            for number in range(messages)
        ]
        for start in range(0, messages, 1000):
            await session.execute(insert(Outbox), rows[start : start + 1000])
        announce(outbox.TOPIC)

    await database.write(job)


async def durable(database: Database, bot: Bot, messages: int, concurrency: int, profile: str | None = None) -> float:
    """Messages a second through the outbox, from the start of the sender until the last mark is committed."""
    await fill(database, messages)
    sender = Sender(
        database,
        bot,
        calendar=SystemCalendar(),
        machine=SystemMachine(),
        worker="bench",
        on_unreachable=_nobody,
        per_second=1_000_000,
        concurrency=concurrency,
        chat_pace=1.0,
    )
    profiler = cProfile.Profile() if profile else None
    if profiler:
        profiler.enable()
    begin = time.perf_counter()
    task = asyncio.create_task(sender.run())
    while await _still_open(database):
        await asyncio.sleep(0.05)
    taken = time.perf_counter() - begin
    if profiler:
        profiler.disable()
        profiler.dump_stats(str(profile))
    sender.stop()
    await task
    async with database.reading() as session:
        assert await outbox.counts(session) == {"sent": messages}
    return messages / taken


async def _still_open(database: Database) -> bool:
    async with database.reading() as session:
        return bool(await outbox.open_work(session, limit=1))


async def _nobody(_session: AsyncSession, _chat: int) -> None:
    return None


async def one_durable_run(place: Place, url: str, messages: int, concurrency: int, profile: str | None = None) -> float:
    """A fresh database, one run, and no message twice or never."""
    with tempfile.TemporaryDirectory(dir=".") as folder:
        async with opened(await place.url(Path(folder))) as database, bot_at(url, AiohttpRequest()) as bot:
            rate = await durable(database, bot, messages, concurrency, profile)
        if isinstance(place, Databases):
            await place.drop_all()
    counted = await arrived(url)
    assert counted == {"arrived": messages, "doubles": 0}, counted
    return rate


@contextmanager
def places() -> Iterator[list[Place]]:
    """Both databases, both on this disk and both waiting for it."""
    with serving(options=SAFE, on_disk=True) as server:
        yield [Files(), Databases(server)]


async def sweep(name: str, runs: int, run: Callable[[int], Awaitable[float]], concurrencies: tuple[int, ...]) -> float:
    """Prints every run; returns the best median over the concurrencies."""
    best = 0.0
    for concurrency in concurrencies:
        rates = [await run(concurrency) for _ in range(runs)]
        best = max(best, statistics.median(rates))
        print(
            f"{name:34} at {concurrency:3}: " + " ".join(f"{rate:7.0f}" for rate in rates) + " messages/s", flush=True
        )
    return best


async def main(messages: int, runs: int, delay: float, profile: bool) -> None:
    """The whole comparison."""
    async with platform("--delay", str(delay)) as url:

        async def same_transport(concurrency: int) -> float:
            async with bot_at(url, AiohttpRequest()) as bot:
                rate = await bare(bot, messages, concurrency)
            await arrived(url)
            return rate

        async def own_transport(concurrency: int) -> float:
            async with bot_at(url, HTTPXRequest(connection_pool_size=concurrency)) as bot:
                rate = await bare(bot, messages // 5, concurrency)
            await arrived(url)
            return rate

        with places() as both:
            if profile:
                for place in both:
                    print(place.name, await one_durable_run(place, url, messages, 64, f"/tmp/{place.name}.prof"))
                return
            reference = await sweep("bare, same transport", runs, same_transport, CONCURRENCIES)
            stock = await sweep("bare, the library's own transport", runs, own_transport, (1, 8, 16, 32))
            for place in both:

                async def through(concurrency: int, place: Place = place) -> float:
                    return await one_durable_run(place, url, messages, concurrency)

                rate = await sweep(f"outbox on {place.name}", runs, through, CONCURRENCIES)
                print(
                    f"outbox on {place.name}: {rate:.0f} messages/s = {rate / reference:.2f} of bare on the same "
                    f"transport, {rate / stock:.2f} times the library's own"
                )


# --- several workers --------------------------------------------------------------------------------------------------

WORKERS = (1, 2, 4)
EACH = 16
"""Requests that one worker has open at most, so that the platform's slow answers and not this machine are the limit."""


async def worker(url: str, api: str) -> None:
    """A sender in a process of its own; says when it is ready and works until it is killed."""
    async with opened(url) as database, bot_at(api, AiohttpRequest()) as bot:
        sender = Sender(
            database,
            bot,
            calendar=SystemCalendar(),
            machine=SystemMachine(),
            worker=worker_name(),
            on_unreachable=_nobody,
            per_second=1_000_000,
            concurrency=EACH,
            chat_pace=1.0,
        )
        print("ready", flush=True)
        await sender.run()


async def together(place: Databases, api: str, messages: int, count: int) -> float:
    """Messages a second of so many workers on one database."""
    with tempfile.TemporaryDirectory(dir=".") as folder:
        url = await place.url(Path(folder))
        words = [sys.executable, "-m", "tests.bench.sending", "--worker", url, "--api", api]
        workers = [await asyncio.create_subprocess_exec(*words, stdout=asyncio.subprocess.PIPE) for _ in range(count)]
        for process in workers:
            assert process.stdout is not None
            await process.stdout.readline()
        async with opened(url) as database:
            await fill(database, messages)
            begin = time.perf_counter()
            while await _still_open(database):
                await asyncio.sleep(0.05)
            taken = time.perf_counter() - begin
        for process in workers:
            process.kill()
            await process.wait()
        await place.drop_all()
    counted = await arrived(api)
    assert counted == {"arrived": messages, "doubles": 0}, counted
    return messages / taken


async def compare_workers(messages: int, runs: int) -> None:
    """One, two and four workers on PostgreSQL, against a platform that takes 50 ms for each answer."""
    async with platform("--delay", "0.05") as api:
        with serving(options=SAFE, on_disk=True) as server:
            place, medians = Databases(server), {}
            for count in WORKERS:
                rates = [await together(place, api, messages, count) for _ in range(runs)]
                medians[count] = statistics.median(rates)
                shown = " ".join(f"{rate:7.0f}" for rate in rates)
                ratio = medians[count] / medians[1]
                print(f"{count} workers, 50 ms answers: {shown} messages/s, {ratio:.2f} times one", flush=True)


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("--messages", type=int, default=10_000)
    words.add_argument("--runs", type=int, default=3)
    words.add_argument("--delay", type=float, default=0.0)
    words.add_argument("--profile", action="store_true")
    words.add_argument("--workers", action="store_true", help="one, two and four workers on PostgreSQL instead")
    words.add_argument("--worker", help=argparse.SUPPRESS)
    words.add_argument("--api", help=argparse.SUPPRESS)
    found = words.parse_args()
    if found.worker:
        asyncio.run(worker(found.worker, found.api))
    elif found.workers:
        asyncio.run(compare_workers(found.messages, found.runs))
    else:
        asyncio.run(main(found.messages, found.runs, found.delay, found.profile))
