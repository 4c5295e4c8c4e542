"""What benches run beside themselves: a platform, serving processes, and what these use of processor and memory."""

from __future__ import annotations

import asyncio
import os
import re
import sys
import time
from collections.abc import AsyncIterator, Iterator, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass
from pathlib import Path

import aiohttp

from tests.postgres import Server, free_port

TOKEN = "100:bench"
TICKS = os.sysconf("SC_CLK_TCK")


@dataclass(frozen=True, slots=True)
class Running:
    """A process: its number, what answers there, and when it was begun."""

    number: int
    address: str
    begun: float

    def used(self) -> float:
        """Processor seconds so far."""
        return used_by(self.number)

    def memory(self, what: str) -> float:
        """VmRSS, or VmHWM for the most so far, in MiB."""
        found = re.search(rf"{what}:\s+(\d+)", Path(f"/proc/{self.number}/status").read_text())
        return int(found[1]) / 1024 if found else float("nan")


def used_by(number: int, *, with_ended: bool = False) -> float:
    """Processor seconds of a process so far; with those of its children that have ended, if asked for."""
    fields = Path(f"/proc/{number}/stat").read_text().rpartition(")")[2].split()
    return sum(int(field) for field in fields[11 : 15 if with_ended else 13]) / TICKS


def used_by_server(server: Server) -> float:
    """Processor seconds of a PostgreSQL server so far, all its processes together."""
    first = int((server.folder / "data" / "postmaster.pid").read_text().split()[0])
    return used_by(first, with_ended=True) + sum(used_by(number) for number in _children(first))


def _children(parent: int) -> Iterator[int]:
    for folder in Path("/proc").glob("[0-9]*"):
        try:
            fields = (folder / "stat").read_text().rpartition(")")[2].split()
        except OSError:
            continue
        if int(fields[1]) == parent:
            yield int(folder.name)


@asynccontextmanager
async def platform(*words: str, module: str = "tests.bench.platform") -> AsyncIterator[str]:
    """A platform in a process of its own; yields its address."""
    port = free_port()
    process = await asyncio.create_subprocess_exec(
        sys.executable, "-m", module, str(port), *words, stdout=asyncio.subprocess.PIPE
    )
    if process.stdout is None:
        raise RuntimeError("the platform has no output")
    await process.stdout.readline()
    try:
        yield f"http://127.0.0.1:{port}"
    finally:
        process.kill()
        await process.wait()


@asynccontextmanager
async def served(
    url: str, api: str, *, per_second: int = 1000, words: Sequence[str] = (), webhook: bool = False
) -> AsyncIterator[Running]:
    """`easeward serve` in a process of its own."""
    port = free_port()
    settings = {
        "EASEWARD_TOKEN": TOKEN,
        "EASEWARD_API_URL": api,
        "EASEWARD_DATABASE_URL": url,
        "EASEWARD_MESSAGES_PER_SECOND": str(per_second),
        "EASEWARD_WEB_PORT": str(port),
        "EASEWARD_LOG_LEVEL": "ERROR",
    }
    if webhook:
        settings |= {
            "EASEWARD_WEBHOOK_URL": f"http://127.0.0.1:{port}/in",
            "EASEWARD_WEBHOOK_SECRET": "a-secret-of-a-bench",
        }
    begun = time.perf_counter()
    command = [sys.executable, "-m", "bot.cli", "serve", *words]
    process = await asyncio.create_subprocess_exec(*command, env=os.environ | settings)
    try:
        yield Running(process.pid, f"http://127.0.0.1:{port}", begun)
    finally:
        process.terminate()
        await process.wait()


async def ready(running: Running) -> tuple[float, float]:
    """Wall and processor seconds until it says so."""
    async with aiohttp.ClientSession() as http, asyncio.timeout(120):
        while True:
            try:
                async with http.get(f"{running.address}/readyz") as answer:
                    if answer.status == 200:
                        return time.perf_counter() - running.begun, running.used()
            except aiohttp.ClientError:
                await asyncio.sleep(0.01)
