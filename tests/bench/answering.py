"""From a tap to its answer: `python -m tests.bench.answering [--rates 200,…] [--seconds N] [--runs N]`.

So many clients a second, each once, tap that today's session is done, at moments that know nothing of one another and
wait for no answer, so that a queue counts. Timed from the tap's moment until the platform has the tap's answer, and
until it has the changed message with what comes next. Ours is `easeward serve` on SQLite and on PostgreSQL (every
commit on disk), asking for updates and, with `--webhook`, by webhook. Beside it, in turns: the chat library with an
empty handler that answers the tap and changes the message to one word, on our transport and on its own. Each is a
process of its own; processor time is that process's, and the PostgreSQL server's is told apart.
"""

from __future__ import annotations

import argparse
import asyncio
import sys
import tempfile
import time
from collections.abc import AsyncIterator, Callable, Sequence
from contextlib import AbstractAsyncContextManager, asynccontextmanager, contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import aiohttp

from db import migrate
from db.engine import opened
from tests.bench.clients import Town, taps
from tests.bench.processes import Running, platform, ready, served, used_by_server
from tests.postgres import SAFE, serving
from tests.stores import Databases, Files, Place

CROWD = "tests.bench.crowd"
WARMING = 100
"""Taps before those that count, at a tenth of the machine's rate."""


@dataclass(frozen=True, slots=True)
class Subject:
    """What answers: its process, and the processor seconds of its database's own so far."""

    process: Running
    server_used: Callable[[], float]


Begin = Callable[[str, int], AbstractAsyncContextManager[Subject]]
"""Begins what answers at a platform, with so many clients; ended with the block."""


def empty(stock: bool) -> Begin:
    """The library with an empty handler."""

    @asynccontextmanager
    async def begin(api: str, _clients: int) -> AsyncIterator[Subject]:
        words = [sys.executable, "-m", "tests.bench.empty", api, *(["--stock"] if stock else [])]
        process = await asyncio.create_subprocess_exec(*words, stdout=asyncio.subprocess.PIPE)
        if process.stdout is None:
            raise RuntimeError("it has no output")
        await process.stdout.readline()
        try:
            yield Subject(Running(process.pid, api, time.perf_counter()), lambda: 0.0)
        finally:
            process.kill()
            await process.wait()

    return begin


def ours(place: Place, *, webhook: bool = False) -> Begin:
    """`easeward serve` on a fresh database."""

    @asynccontextmanager
    async def begin(api: str, clients: int) -> AsyncIterator[Subject]:
        with tempfile.TemporaryDirectory(dir=".") as folder:
            url = await place.url(Path(folder), tables=False)
            await migrate.upgrade(url)
            async with opened(url) as database:
                await Town(database).fill(clients)
            async with served(url, api, webhook=webhook) as process:
                await ready(process)
                yield Subject(process, lambda: used_by_server(place.server) if isinstance(place, Databases) else 0.0)
            if isinstance(place, Databases):
                await place.drop_all()

    return begin


@dataclass(frozen=True, slots=True)
class Found:
    """What one run has shown: sorted seconds from tap to answer and to the changed message, and shares of a core."""

    answers: Sequence[float]
    changes: Sequence[float]
    share: float
    server_share: float
    taps: int

    def __str__(self) -> str:
        return (
            f"answer p50 {quantile(self.answers, 0.5) * 1000:.0f} p99 {quantile(self.answers, 0.99) * 1000:.0f} ms, "
            f"change p50 {quantile(self.changes, 0.5) * 1000:.0f} p99 {quantile(self.changes, 0.99) * 1000:.0f} ms; "
            f"{self.share:.2f} of a core, server {self.server_share:.2f}; {len(self.answers)} of {self.taps} answered"
        )


def quantile(ordered: Sequence[float], part: float) -> float:
    """Of sorted numbers that which so large a part of them is not above."""
    return ordered[min(len(ordered) - 1, int(part * len(ordered)))] if ordered else float("nan")


async def run(begin: Begin, api: str, rate: float, seconds: float) -> Found:
    """One run: some taps to warm up, then those that count, until all are answered or a minute is over."""
    count = round(rate * seconds)
    async with begin(api, WARMING + count) as subject, aiohttp.ClientSession() as http:
        await asyncio.sleep(1)
        await _tapped(http, api, taps(range(WARMING), "all", 50, seed=1), 30)
        await asyncio.sleep(1)
        before, server_before, begun = subject.process.used(), subject.server_used(), time.perf_counter()
        heard = await _tapped(http, api, taps(range(WARMING, WARMING + count), "all", rate, seed=2), seconds + 60)
        took = time.perf_counter() - begun
        return Found(
            sorted(heard["taps"].values()),
            sorted(heard["edits"].values()),
            (subject.process.used() - before) / took,
            (subject.server_used() - server_before) / took,
            count,
        )


async def _tapped(http: aiohttp.ClientSession, api: str, coming: list[Any], most: float) -> dict[str, dict[str, float]]:
    async with http.post(f"{api}/reset"), http.post(f"{api}/crowd", json=coming):
        until = time.perf_counter() + most
    while True:
        await asyncio.sleep(0.25)
        async with http.get(f"{api}/heard") as answer:
            heard: dict[str, dict[str, float]] = await answer.json()
        done = min(len(heard["taps"]), len(heard["edits"])) >= len(coming)
        if done or time.perf_counter() > until:
            return heard


@contextmanager
def _places() -> Any:
    with serving(options=SAFE, on_disk=True) as server:
        yield Files(), Databases(server)


async def main(rates: Sequence[float], seconds: float, runs: int, webhook: bool) -> None:
    """All of it, in turns."""
    with _places() as (file, server):
        subjects: dict[str, Begin] = {
            "empty, our transport": empty(False),
            "empty, its own transport": empty(True),
            "ours on SQLite": ours(file),
            "ours on PostgreSQL": ours(server),
        }
        if webhook:
            subjects |= {
                "ours on SQLite, webhook": ours(file, webhook=True),
                "ours on PostgreSQL, webhook": ours(server, webhook=True),
            }
        for rate in rates:
            for _ in range(runs):
                for name, begin in subjects.items():
                    async with platform(module=CROWD) as api:
                        print(f"{rate:g} a second, {name}: {await run(begin, api, rate, seconds)}", flush=True)


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("--rates", default="200")
    words.add_argument("--seconds", type=float, default=20.0)
    words.add_argument("--runs", type=int, default=3)
    words.add_argument("--webhook", action="store_true")
    found = words.parse_args()
    asyncio.run(main([float(rate) for rate in found.rates.split(",")], found.seconds, found.runs, found.webhook))
