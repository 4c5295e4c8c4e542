"""A pain alert while much else waits: `python -m tests.bench.alerting [--alerts N] [--rate N] [--per-second N,…]`.

Clients tap a severe pain at moments that know nothing of one another; timed from the tap's moment until the platform
has the coach's alert. `easeward serve` on SQLite and on PostgreSQL, every commit on disk, at the platform's usual 30
messages a second and at 1,000. *Waiting*: 100,000 sessions wait to leave all the time. *Wave*: the mornings of some
thousand clients are due at once, made tick by tick and sent beside the taps. Forty coaches, as one chat gets one
message a second.
"""

from __future__ import annotations

import argparse
import asyncio
import tempfile
import time
from collections.abc import Sequence
from pathlib import Path
from typing import Any

import aiohttp
from sqlalchemy import func, select

from db import migrate
from db.engine import Database, opened
from db.schema import LedgerRow, Outbox
from tests.bench.answering import CROWD, quantile
from tests.bench.clients import Town, taps
from tests.bench.processes import Running, platform, ready, served, used_by_server
from tests.bench.sending import fill, places
from tests.stores import Databases, Place

COACHES = 40
WITHIN = 2.0
"""Target: seconds within which 99 of 100 alerts have left."""


async def one_run(place: Place, alerts: int, rate: float, per_second: int, *, waiting: int, waking: int) -> str:
    """One run on a fresh database; what it has shown."""
    with tempfile.TemporaryDirectory(dir=".") as folder:
        url = await place.url(Path(folder), tables=False)
        await migrate.upgrade(url)
        async with opened(url) as database:
            await Town(database, coaches=COACHES).fill(alerts, waking=waking)
            if waiting:
                await fill(database, waiting)
            async with platform(module=CROWD) as api, served(url, api, per_second=per_second) as process:
                await ready(process)
                await asyncio.sleep(2)
                before, begun = _used(process, place), time.perf_counter()
                told = await _told(api, taps(range(alerts), "pain:8", rate, seed=3))
                took, after = time.perf_counter() - begun, _used(process, place)
                beside = await _beside(database)
        if isinstance(place, Databases):
            await place.drop_all()
    p50, p99, most = quantile(told, 0.5), quantile(told, 0.99), told[-1]
    met = "target met" if p99 <= WITHIN else "TARGET MISSED"
    return (
        f"{len(told)} of {alerts} alerts, p50 {p50:.2f} p99 {p99:.2f} most {most:.2f} s ({met}); {beside}; "
        f"{(after[0] - before[0]) / took:.2f} of a core, server {(after[1] - before[1]) / took:.2f}"
    )


def _used(process: Running, place: Place) -> tuple[float, float]:
    """Processor seconds so far: of the process, and of its database's server."""
    return process.used(), used_by_server(place.server) if isinstance(place, Databases) else 0.0


async def _told(api: str, coming: list[Any]) -> Sequence[float]:
    """Sorted seconds of each alert; waits a minute for the last."""
    async with aiohttp.ClientSession() as http:
        async with http.post(f"{api}/reset"), http.post(f"{api}/crowd", json=coming):
            until = time.perf_counter() + coming[-1][0] + 60
        while True:
            await asyncio.sleep(0.5)
            async with http.get(f"{api}/heard") as answer:
                told: dict[str, float] = (await answer.json())["told"]
            if len(told) == len(coming) or time.perf_counter() > until:
                return sorted(told.values())


async def _beside(database: Database) -> str:
    async with database.reading() as session:
        sessions = select(func.count()).select_from(Outbox).where(Outbox.kind == "session")
        waiting = await session.scalar(sessions.where(Outbox.state == "waiting"))
        made = await session.scalar(select(func.count()).select_from(LedgerRow).where(LedgerRow.kind == "session"))
    return f"{waiting:,} sessions still wait, {made:,} rows made"


async def main(alerts: int, rate: float, limits: Sequence[int], waiting: int, waking: int, runs: int) -> None:
    """Both troubles on both databases at each limit."""
    with places() as both:
        for per_second in limits:
            for place in both:
                loads = {"waiting": {"waiting": waiting, "waking": 0}, "wave": {"waiting": 0, "waking": waking}}
                for name, load in loads.items():
                    for _ in range(runs):
                        said = await one_run(place, alerts, rate, per_second, **load)
                        print(f"{place.name}, {name}, {per_second} messages a second: {said}", flush=True)


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("--alerts", type=int, default=210)
    words.add_argument("--rate", type=float, default=3.0, help="alerts a second")
    words.add_argument("--per-second", default="30,1000")
    words.add_argument("--waiting", type=int, default=100_000)
    words.add_argument("--waking", type=int, default=5_000)
    words.add_argument("--runs", type=int, default=1)
    found = words.parse_args()
    limits = [int(limit) for limit in found.per_second.split(",")]
    asyncio.run(main(found.alerts, found.rate, limits, found.waiting, found.waking, found.runs))
