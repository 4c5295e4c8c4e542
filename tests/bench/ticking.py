"""What a tick and a start cost: `python -m tests.bench.ticking [--people 1000,100000,1000000] [--runs N]`.

A tick: 10 people are due among so many, on SQLite and PostgreSQL, every commit on disk. Everybody has one row in `due`,
on a day to come. Before each run 10 rows, each time other people's, are moved to now and the 10 that were done are put
back. Nobody has a course, so `bot.flows.day.morning` looks the person up and cancels the row: a cheap use case, but a
real one, each in a transaction of its own; the question is whether the cost follows what is due or the number of
people. An idle tick, with nothing due, is timed beside it. The sizes take turns, so that a slow moment of the disk
meets all alike, and the medians are compared with the smallest size's.

A start: a fresh process opens the database with the most people, starts the ticks, and has done 10 due rows; the system
still has the tables in memory. The wait for the first tick's turn is told apart from the work. Beside it, one
APScheduler job a client in memory, in a process of its own: started when every job stands and 10 due ones have run.
Jobs are added 100 at a time with a turn for the loop in between, and no client is read from anywhere, both in favour of
the jobs. Peak memory is the process's own (the server's is not in it), and a stall is the longest time in which a task
that sleeps 1 ms did not come round.
"""

from __future__ import annotations

import argparse
import asyncio
import json
import os
import re
import sqlite3
import statistics
import sys
import tempfile
import time
from collections.abc import AsyncIterator, Awaitable, Callable, Sequence
from contextlib import AsyncExitStack, asynccontextmanager
from dataclasses import asdict, dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from apscheduler.schedulers.asyncio import AsyncIOScheduler
from apscheduler.triggers.cron import CronTrigger
from apscheduler.triggers.date import DateTrigger
from sqlalchemy.ext.asyncio import AsyncSession

from bot.clocks import SystemCalendar
from bot.settings import Settings
from bot.ticks import Ticker, ticking
from db import due
from db.due import DueKind
from db.engine import Database, address_of, file_of, opened
from plans.localtime import data_version
from tests.postgres import SAFE, Server, serving
from tests.stores import Databases, Files, Place

DUE = 10
CHUNK = 50_000
STRIDE = 7919
"""A prime: steps of it meet everybody once before anybody twice, and lie far apart in the tables."""

WITHIN = 1.3
"""Target: a tick among however many people, in terms of one among the fewest."""

START_WITHIN = 2.0
"""Target: seconds of a start."""

STARTS = 3
SHORT_PERIOD = 0.1
CLIENTS = 50_000
BOT = "bench_bot"


# --- the tables -----------------------------------------------------------------------------------------------------


def later(person: int, now: datetime) -> datetime:
    """When a person's next morning is: tomorrow or the day after, at one of a day's minutes."""
    return now + timedelta(days=1, minutes=person % 1440)


def fill_file(file: Path, people: int, now: datetime) -> None:
    """So many people and as many future mornings in an SQLite file that nobody else has open."""
    shape = "%Y-%m-%d %H:%M:%S.%f"
    made = now.strftime(shape)
    connection = sqlite3.connect(file, isolation_level=None)
    connection.execute("PRAGMA synchronous = OFF")
    connection.execute("BEGIN")
    for start in range(1, people + 1, CHUNK):
        some = range(start, min(start + CHUNK, people + 1))
        connection.executemany(
            "INSERT INTO person (id, chat, label, language, zone, morning, created_at) "
            "VALUES (?, ?, ?, 'en', 'Europe/Berlin', '07:00:00.000000', ?)",
            ((person, 1000 + person, f"Person {person}", made) for person in some),
        )
        connection.executemany(
            "INSERT INTO due (kind, subject, at, zone_data) VALUES (?, ?, ?, ?)",
            ((DueKind.MORNING.value, person, later(person, now).strftime(shape), data_version()) for person in some),
        )
    connection.execute("COMMIT")
    connection.close()


async def fill_server(server: Server, database: str, people: int, now: datetime) -> None:
    """So many people and as many future mornings in a PostgreSQL database, with fresh statistics."""
    for start in range(1, people + 1, CHUNK):
        some = f"generate_series({start}, {min(start + CHUNK - 1, people)}) AS n"
        await server.do(
            "INSERT INTO person (id, chat, label, language, zone, morning, created_at) "
            f"SELECT n, 1000 + n, 'Person ' || n, 'en', 'Europe/Berlin', '07:00', '{now.isoformat()}' FROM {some}",
            database=database,
        )
        await server.do(
            f"INSERT INTO due (kind, subject, zone_data, at) SELECT '{DueKind.MORNING.value}', n, '{data_version()}', "
            f"timestamptz '{now.isoformat()}' + interval '1 day' + n % 1440 * interval '1 minute' FROM {some}",
            database=database,
        )
    await server.do("VACUUM (ANALYZE)", database=database)
    await server.do("CHECKPOINT", database=database)


async def filled(place: Place, folder: Path, people: int) -> str:
    """The address of a fresh database with so many people, none of them due; prints how long that took."""
    begin, now = time.perf_counter(), datetime.now(UTC)
    folder.mkdir()
    url = await place.url(folder)
    if isinstance(place, Databases):
        await fill_server(place.server, str(address_of(url).database), people, now)
    else:
        await asyncio.to_thread(fill_file, file_of(address_of(url)), people, now)
    await asyncio.to_thread(os.sync)
    print(f"{place.name}: {people:,} people filled in {time.perf_counter() - begin:.1f} s", flush=True)
    return url


class Town:
    """An open database with so many people, of whom always another 10 come due."""

    def __init__(self, database: Database, people: int, turn: int = 0) -> None:
        self.database = database
        self.people = people
        self._turn = turn
        self._ticker = Ticker(database, SystemCalendar(), BOT)

    async def come_due(self) -> None:
        """Moves the rows of the next 10 people to now, and puts those of the last 10 back."""
        now = datetime.now(UTC)
        done, next_ones = (self._ten(self._turn - 1) if self._turn else []), self._ten(self._turn)
        self._turn += 1

        async def job(session: AsyncSession) -> None:
            for person in done:
                await due.plan(session, DueKind.MORNING, person, later(person, now))
            for person in next_ones:
                await due.plan(session, DueKind.MORNING, person, now - timedelta(seconds=1))

        await self.database.write(job)
        assert await self.how_many_due() == DUE

    async def how_many_due(self) -> int:
        """How many rows are due now, or were put off for some minutes because their use case failed."""
        async with self.database.reading() as session:
            return len(await due.due_by(session, datetime.now(UTC) + timedelta(hours=1), limit=2 * DUE))

    async def tick(self) -> float:
        """The milliseconds of one tick, after which nothing is due."""
        begin = time.perf_counter()
        await self._ticker.tick()
        taken = time.perf_counter() - begin
        assert await self.how_many_due() == 0
        return taken * 1000

    async def busy_tick(self) -> float:
        """The milliseconds of one tick with 10 due."""
        await self.come_due()
        return await self.tick()

    def _ten(self, turn: int) -> list[int]:
        found = [number * STRIDE % self.people + 1 for number in range(turn * DUE, turn * DUE + DUE)]
        assert len(set(found)) == DUE, f"{self.people} people are too few, or a multiple of {STRIDE}"
        return found


# --- ticks ----------------------------------------------------------------------------------------------------------


async def in_turns(what: str, towns: Sequence[Town], runs: int, run: Callable[[Town], Awaitable[float]]) -> None:
    """Runs every town in turn, prints every run and the medians in terms of the first town's."""
    for town in towns:
        await run(town)  # warms up, not counted
    taken: dict[int, list[float]] = {town.people: [] for town in towns}
    for _ in range(runs):
        for town in towns:
            taken[town.people].append(await run(town))
    first = statistics.median(taken[towns[0].people])
    for people, found in taken.items():
        print(f"{what} among {people:9,}: " + " ".join(f"{ms:.1f}" for ms in found) + " ms")
    for people, found in taken.items():
        median = statistics.median(found)
        ratio = median / first
        print(
            f"{what} among {people:9,}: median {median:.2f} ms = {ratio:.2f} of that among {towns[0].people:,}"
            f" ({_met(ratio <= WITHIN)}: {WITHIN})",
            flush=True,
        )


async def ticks(place: Place, urls: dict[int, str], runs: int) -> None:
    """Ticks with 10 due and with nothing due, among so many people each."""
    async with AsyncExitStack() as stack:
        towns = [Town(await stack.enter_async_context(opened(url)), people) for people, url in sorted(urls.items())]
        print(f"{place.name} is {towns[0].database.version}")
        await in_turns(f"{place.name}: tick, {DUE} due", towns, runs, Town.busy_tick)
        await in_turns(f"{place.name}: tick, none due", towns, runs, Town.tick)


# --- starts ---------------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Measured:
    """What one fresh process says of its start; seconds, MiB and milliseconds."""

    seconds: float
    waited: float
    """Of the seconds: until the first tick had its turn."""
    before: float
    """Memory after the imports."""
    peak: float
    stall: float

    def __str__(self) -> str:
        waited = f", of it {self.waited:.3f} s until the first tick's turn" if self.waited else ""
        return (
            f"{self.seconds:.3f} s{waited}; memory {self.peak:.0f} MiB at most, {self.before:.0f} MiB before; "
            f"longest stall {self.stall:.1f} ms"
        )


def peak_memory() -> float:
    """The most MiB this program has held; getrusage would count in what its parent held when it forked."""
    found = re.search(r"^VmHWM:\s+(\d+) kB$", Path("/proc/self/status").read_text(), re.MULTILINE)
    assert found is not None
    return int(found[1]) / 1024


class Stalls:
    """The longest time in which the event loop did not come round to a task that sleeps 1 ms."""

    def __init__(self) -> None:
        self.longest = 0.0

    async def watch(self) -> None:
        """Watches until it is cancelled."""
        before = time.perf_counter()
        while True:
            await asyncio.sleep(0.001)
            now = time.perf_counter()
            self.longest = max(self.longest, now - before)
            before = now


@asynccontextmanager
async def watching() -> AsyncIterator[Stalls]:
    """Watches for stalls while the block runs."""
    stalls = Stalls()
    task = asyncio.create_task(stalls.watch())
    await asyncio.sleep(0)
    try:
        yield stalls
        await asyncio.sleep(0.005)  # sees the last one too
    finally:
        task.cancel()


class Telling(Ticker):
    """A ticker that tells when its first tick began and that it has ended."""

    began = 0.0

    def __init__(self, database: Database) -> None:
        super().__init__(database, SystemCalendar(), BOT)
        self.ended = asyncio.Event()

    async def tick(self) -> None:
        """As any tick."""
        self.began = self.began or time.perf_counter()
        await super().tick()
        self.ended.set()


async def start(url: str, period: float) -> Measured:
    """Our own start, in this process, which must be fresh."""
    before = peak_memory()
    async with watching() as stalls:
        begin = time.perf_counter()
        async with opened(url) as database:
            ticker = Telling(database)
            async with ticking(ticker, seconds=period):
                ready = time.perf_counter()
                await ticker.ended.wait()
                seconds = time.perf_counter() - begin
    return Measured(seconds, ticker.began - ready, before, peak_memory(), stalls.longest * 1000)


async def start_jobs(clients: int, trigger: str, when: str) -> Measured:
    """One job a client, added before or after the scheduler's start, in this process, which must be fresh."""
    before = peak_memory()
    ran: list[int] = []
    everybody = asyncio.Event()

    async def morning(client: int) -> None:
        ran.append(client)
        if len(ran) == DUE:
            everybody.set()

    async with watching() as stalls:
        begin, now = time.perf_counter(), datetime.now(UTC)
        scheduler = AsyncIOScheduler(timezone="UTC")
        if when == "after":
            scheduler.start()
        for client in range(clients):
            at: dict[str, Any] = {"next_run_time": now} if client < DUE else {}
            scheduler.add_job(morning, _trigger(trigger, client, now), args=(client,), misfire_grace_time=None, **at)
            if client % 100 == 99:
                await asyncio.sleep(0)
        if when == "before":
            scheduler.start()
        await everybody.wait()
        seconds = time.perf_counter() - begin
    measured = Measured(seconds, 0.0, before, peak_memory(), stalls.longest * 1000)
    assert len(scheduler.get_jobs()) >= clients - DUE
    scheduler.shutdown(wait=False)
    return measured


def _trigger(kind: str, client: int, now: datetime) -> DateTrigger | CronTrigger:
    if kind == "date":
        return DateTrigger(later(client, now))
    return CronTrigger(hour=(now.hour + 2 + client % 20) % 24, minute=client // 20 % 60, timezone="UTC")


async def in_fresh_process(*words: str) -> Measured:
    """What another process of this program measured."""
    process = await asyncio.create_subprocess_exec(
        sys.executable, "-m", "tests.bench.ticking", *words, stdout=asyncio.subprocess.PIPE
    )
    said, _ = await process.communicate()
    assert process.returncode == 0, f"{words} ended with {process.returncode}"
    return Measured(**json.loads(said))


async def starts(place: Place, url: str, people: int) -> None:
    """Starts with a short period of the ticks, which shows what they cost, and with the bot's own."""
    usual = float(Settings.model_fields["tick_seconds"].default)
    turn = 0
    for period in (SHORT_PERIOD, usual):
        what = f"{place.name}: start with {people:,} people, a tick every {period:g} s"
        found = []
        for _ in range(STARTS):
            async with opened(url) as database:
                await Town(database, people, turn).come_due()
            turn += 1
            found.append(await in_fresh_process("--start", url, "--period", str(period)))
            print(f"{what}: {found[-1]}", flush=True)
            async with opened(url) as database:
                assert await Town(database, people).how_many_due() == 0
        whole = statistics.median(one.seconds for one in found)
        work = statistics.median(one.seconds - one.waited for one in found)
        print(
            f"{what}: median {whole:.3f} s ({_met(whole < START_WITHIN)}: {START_WITHIN:g} s), "
            f"without the wait {work:.3f} s ({_met(work < START_WITHIN)})",
            flush=True,
        )


async def jobs() -> None:
    """Starts with one job a client."""
    for trigger in ("date", "cron"):
        for when in ("before", "after"):
            found = await in_fresh_process("--jobs", str(CLIENTS), "--trigger", trigger, "--when", when)
            print(f"a {trigger} job a client, {CLIENTS:,} of them, added {when} the start: {found}", flush=True)


def _met(well: bool) -> str:
    return "target met" if well else "TARGET MISSED"


async def main(sizes: list[int], runs: int) -> None:
    """Both questions on both databases, then the jobs."""
    with serving(options=SAFE, on_disk=True) as server:
        places: list[Place] = [Files(), Databases(server)]
        for place in places:
            with tempfile.TemporaryDirectory(prefix="easeward-ticking-") as folder:
                urls = {people: await filled(place, Path(folder) / str(people), people) for people in sizes}
                await ticks(place, urls, runs)
                await starts(place, urls[max(sizes)], max(sizes))
                if isinstance(place, Databases):
                    await place.drop_all()
    await jobs()


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("--people", default="1000,100000,1000000")
    words.add_argument("--runs", type=int, default=21)
    words.add_argument("--start", help=argparse.SUPPRESS)
    words.add_argument("--period", type=float, help=argparse.SUPPRESS)
    words.add_argument("--jobs", type=int, help=argparse.SUPPRESS)
    words.add_argument("--trigger", help=argparse.SUPPRESS)
    words.add_argument("--when", help=argparse.SUPPRESS)
    asked = words.parse_args()
    if asked.start:
        print(json.dumps(asdict(asyncio.run(start(asked.start, asked.period)))))
    elif asked.jobs:
        print(json.dumps(asdict(asyncio.run(start_jobs(asked.jobs, asked.trigger, asked.when)))))
    else:
        asyncio.run(main([int(people) for people in asked.people.split(",")], asked.runs))
