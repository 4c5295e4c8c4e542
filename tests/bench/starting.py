"""How soon the program is there, and what memory it takes: `python -m tests.bench.starting [--clients N] [--runs N]`.

What `easeward check` imports, in a process of its own, beside a bare Python; `easeward serve` on an SQLite file with
10,000 clients of one coach whose mornings are all due: from its start to /readyz and to the first tick, and its memory
before, while and after it makes and sends 10,000 sessions. Wall and processor seconds; what others run on the machine
counts in the first alone.
"""

from __future__ import annotations

import argparse
import asyncio
import os
import subprocess
import sys
import tempfile
import time
from statistics import median

from sqlalchemy import func, select

from db import migrate
from db.engine import opened
from db.schema import LedgerRow, Outbox
from tests.acceptance.test_workers import clients_due_now
from tests.bench.processes import platform, ready, served

CHECK = "import bot.cli, bot.cli.writing, bot.words.judging, plans.reading"


def imported(words: str) -> tuple[float, float]:
    """Wall and processor seconds of a Python that runs some words."""
    before, begun = os.times(), time.perf_counter()
    subprocess.run([sys.executable, "-c", words], check=True)
    after = os.times()
    used = after.children_user + after.children_system - before.children_user - before.children_system
    return time.perf_counter() - begun, used


def importing(runs: int) -> None:
    """What the small commands load."""
    for name, words in (("bare Python", "pass"), ("what easeward check imports", CHECK)):
        found = [imported(words) for _ in range(runs)]
        wall, used = (median(times) for times in zip(*found, strict=True))
        print(f"{name}: {wall:.2f} s, {used:.2f} s of processor (median of {runs})", flush=True)


async def serving(clients: int, runs: int) -> None:
    """Starts with nothing due, then a morning of everybody."""
    with tempfile.TemporaryDirectory() as folder:
        url = f"sqlite:///{folder}/easeward.sqlite"
        await migrate.upgrade(url)
        async with platform() as api:
            starts = []
            for _ in range(runs):
                async with served(url, api) as one:
                    starts.append((*await ready(one), one.memory("VmRSS")))
            wall, used, memory = (median(values) for values in zip(*starts, strict=True))
            print(f"ready: {wall:.2f} s, {used:.2f} s of processor, {memory:.0f} MiB (median of {runs})", flush=True)
            async with opened(url) as database:
                await database.write(lambda session: clients_due_now(session, clients))
                async with served(url, api) as one:
                    wall, used = await ready(one)
                    print(f"ready with {clients:,} mornings due: {wall:.2f} s, {used:.2f} s of processor", flush=True)
                    while True:
                        await asyncio.sleep(2)
                        async with database.reading() as session:
                            made = await session.scalar(select(func.count()).select_from(LedgerRow)) or 0
                            left = await session.scalar(
                                select(func.count()).select_from(Outbox).where(Outbox.state == "sent")
                            )
                        print(f"  {made:,} made, {left:,} sent, {one.memory('VmRSS'):.0f} MiB", flush=True)
                        if left == clients:
                            break
                    await asyncio.sleep(5)
                    seconds = time.perf_counter() - one.begun
                    now, most = one.memory("VmRSS"), one.memory("VmHWM")
                    print(f"{clients:,} mornings in {seconds:.0f} s, {one.used():.1f} s of processor")
                    print(f"memory afterwards {now:.0f} MiB, at most {most:.0f} MiB", flush=True)


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("--clients", type=int, default=10_000)
    words.add_argument("--runs", type=int, default=5)
    found = words.parse_args()
    importing(found.runs)
    asyncio.run(serving(found.clients, found.runs))
