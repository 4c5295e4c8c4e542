"""Real workers killed, stopped, robbed of their database: nothing is lost, and nothing comes twice but what may."""

from __future__ import annotations

import asyncio
import os
import random
import resource
import signal
import sqlite3
from collections import Counter
from collections.abc import AsyncIterator
from datetime import UTC, datetime, timedelta
from importlib.resources import files
from pathlib import Path

import pytest
from sqlalchemy import func, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.alive import ALIVE_SECONDS
from db import due
from db.engine import is_file
from db.schema import Coach, Course, Lease, LedgerRow, Outbox, Person, ProgrammeVersion
from tests.bench.kills import FORBIDDEN
from tests.killing import Lab, lab
from tests.postgres import Server, serving
from tests.stores import Databases, Files, Place, kept_in

pytestmark = pytest.mark.timeout(240)


async def broken_promises(place: Lab, seconds: float = 120) -> dict[str, int]:
    """What was lost or came twice, once everything is done."""
    await place.until_done(seconds)
    verdict = await place.verdict()
    return {name: verdict[name] for name in FORBIDDEN if verdict.get(name)}


async def under_way(place: Lab) -> None:
    """Waits until workers have something in hand."""
    async with asyncio.timeout(30):
        while not await place.busy():
            await asyncio.sleep(0.01)


async def test_workers_killed_at_random_moments_lose_nothing(tmp_path: Path, store: Place) -> None:
    alone = isinstance(store, Files)
    rng = random.Random(7)
    async with lab(tmp_path) as place:
        for role in ["all"] if alone else ["all", "updates", "sender"]:
            await place.start(role)
        in_hand = []
        for kill in range(12):
            if kill % 4 == 0:
                await place.put(300)
                await place.feed(60)
            in_hand.append(await place.kill_at_random(rng, longest=0.8))
        assert sum(count > 0 for count in in_hand) >= 4
        assert await broken_promises(place) == {}


@pytest.fixture
async def server(postgres: Server) -> AsyncIterator[Server]:
    """The server, with the test's databases on it."""
    async with kept_in(Databases(postgres)):
        yield postgres


async def test_a_worker_that_slept_while_others_took_over_sends_nothing_twice(tmp_path: Path, server: Server) -> None:
    async with lab(tmp_path, delay=0.2) as place:
        slow = await place.start("sender")
        await place.put(400)
        await under_way(place)
        os.kill(slow, signal.SIGSTOP)
        await place.start("sender")
        await asyncio.sleep(ALIVE_SECONDS + 3)
        async with asyncio.timeout(60):
            while await place.open_work():
                await asyncio.sleep(0.2)
        before = sum((await place.seen()).values())
        verdict = await place.verdict()
        on_the_way = verdict.get("session unknown", 0) + verdict.get("alerts repeated and marked so", 0)
        os.kill(slow, signal.SIGCONT)
        await asyncio.sleep(2)
        late = sum((await place.seen()).values()) - before
        assert late <= on_the_way, "whoever wakes up sends at most what it had marked as on its way before it slept"
        await place.put(40)
        assert await broken_promises(place) == {}


async def leader(place: Lab) -> int | None:
    """The process that leads."""
    async with place.database.reading() as session:
        holder = await session.scalar(select(Lease.holder).where(Lease.name == "lead"))
    return None if holder is None else int(holder.rpartition("-")[0].rpartition(":")[2])


async def test_another_process_leads_within_seconds_when_the_leader_is_killed(tmp_path: Path, server: Server) -> None:
    async with lab(tmp_path) as place:
        for _ in range(2):
            await place.start("all")
        async with asyncio.timeout(20):
            while (first := await leader(place)) is None:
                await asyncio.sleep(0.1)
        await place.kill(first)
        await place.feed(20)
        async with asyncio.timeout(12):
            while await leader(place) in (None, first):
                await asyncio.sleep(0.1)
        assert await broken_promises(place) == {}
        assert (await place.verdict())["updates handled"] == 20


async def test_a_leader_that_is_asked_to_stop_hands_over_at_once(tmp_path: Path, server: Server) -> None:
    async with lab(tmp_path) as place:
        await place.start("all")
        async with asyncio.timeout(20):
            while (first := await leader(place)) is None:
                await asyncio.sleep(0.1)
        await place.start("updates")
        await asyncio.sleep(2)
        os.kill(first, signal.SIGTERM)
        async with asyncio.timeout(4):
            while await leader(place) in (None, first):
                await asyncio.sleep(0.05)
        place.alive.pop(first)


async def test_a_database_server_that_is_lost_and_comes_back_costs_nothing(tmp_path: Path) -> None:
    with serving() as own:
        async with kept_in(Databases(own)), lab(tmp_path) as place:
            for role in ("all", "updates", "sender"):
                await place.start(role)
            for how in (signal.SIGQUIT, signal.SIGINT):
                await place.put(200)
                await place.feed(40)
                await under_way(place)
                await asyncio.to_thread(own.stop, how)
                await place.start("sender")  # it waits for the database
                await asyncio.sleep(1.5)
                await asyncio.to_thread(own.start)
            assert await broken_promises(place) == {}
            for number in list(place.alive):
                await place.kill(number)  # fails for one that has ended by itself


async def test_a_database_that_somebody_else_holds_for_longer_than_is_waited_costs_nothing(tmp_path: Path) -> None:
    async with lab(tmp_path) as place:
        await place.start()
        await place.put(1500)  # enough to be on its way when the database is held
        await place.feed(40)
        await under_way(place)
        held = await asyncio.to_thread(_hold, place.database.address.database or "")
        await asyncio.sleep(12)
        await asyncio.to_thread(held.close)
        assert await broken_promises(place) == {}
        assert '"database-away"' in place.log.read_text()


def _hold(file: str) -> sqlite3.Connection:
    connection = sqlite3.connect(file, isolation_level=None, timeout=30, check_same_thread=False)
    connection.execute("BEGIN IMMEDIATE")
    return connection


async def test_a_full_disk_stops_everything_and_loses_nothing(tmp_path: Path) -> None:
    async with lab(tmp_path) as place:
        assert is_file(place.database.address)
        worker = await place.start()
        await place.put(600)
        await under_way(place)
        wal = Path(f"{place.database.address.database}-wal")
        no_limit = resource.prlimit(worker, resource.RLIMIT_FSIZE)
        resource.prlimit(worker, resource.RLIMIT_FSIZE, (4096, no_limit[1]))
        await asyncio.sleep(1)
        arrived = sum((await place.seen()).values())
        await asyncio.sleep(2)
        assert wal.exists()
        assert sum((await place.seen()).values()) == arrived, "nothing leaves that cannot be written down"
        resource.prlimit(worker, resource.RLIMIT_FSIZE, no_limit)
        assert await broken_promises(place) == {}
        assert '"database-away"' in place.log.read_text()


SAMPLE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")


async def clients_due_now(session: AsyncSession, clients: int) -> None:
    """So many clients of one coach whose morning was a minute ago."""
    now = datetime.now(UTC)
    morning = now - timedelta(minutes=1)
    session.add_all(
        Person(id=n, chat=5000 + n, label=f"P{n}", zone="UTC", morning=morning.time(), created_at=now)
        for n in range(1, clients + 2)
    )
    await session.flush()
    session.add(Coach(id=1, person_id=clients + 1, created_at=now))
    await session.flush()
    session.add(ProgrammeVersion(id=1, coach_id=1, digest="d", title="Rowing", source=SAMPLE, stored_at=now))
    await session.flush()
    for n in range(1, clients + 1):
        session.add(
            Course(person_id=n, coach_id=1, version_id=1, state="active", starts_on=morning.date(), created_at=now)
        )
        await due.plan(session, due.DueKind.MORNING, n, morning)


async def test_a_leader_killed_in_the_middle_of_a_tick_leaves_no_morning_out_and_sends_none_twice(
    tmp_path: Path, store: Place
) -> None:
    clients, step = (600, 20) if isinstance(store, Files) else (150, 70)  # beside others a dead leader costs seconds
    async with lab(tmp_path, delay=0.0, per_second=1000) as place:
        await place.database.write(lambda session: clients_due_now(session, clients))

        async def made() -> int:
            async with place.database.reading() as session:
                return await session.scalar(select(func.count()).select_from(LedgerRow)) or 0

        kills = 0
        async with asyncio.timeout(90):
            while await made() < clients:
                before = await made()
                worker = await place.start("all")
                while await made() < min(before + step, clients):
                    await asyncio.sleep(0.005)
                await place.kill(worker)
                kills += 1
        assert kills >= 2
        await place.start("all")
        await place.until_done(60)
        async with place.database.reading() as session:
            per_person = await session.execute(select(LedgerRow.person_id, func.count()).group_by(LedgerRow.person_id))
            rows = {person: count for person, count in per_person}
            assert rows == dict.fromkeys(range(1, clients + 1), 1)
            states = Counter(await session.scalars(select(Outbox.state).where(Outbox.kind == "session")))
        async with place.http.get(f"{place.platform}/count") as answer:
            counted = await answer.json()
        assert counted["doubles"] == 0
        assert states["sent"] + states["unknown"] == clients
        assert states["sent"] <= counted["arrived"] <= clients
