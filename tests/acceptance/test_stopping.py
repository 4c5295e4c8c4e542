"""Real workers asked to stop under load: they end in ten seconds, lose nothing, and send nothing twice."""

from __future__ import annotations

import asyncio
import os
import signal
import time
from pathlib import Path

import pytest

from tests.acceptance.test_workers import _hold, broken_promises, under_way
from tests.killing import Lab, is_there, lab
from tests.stores import Place

pytestmark = pytest.mark.timeout(240)

IN_TIME = 10.0
"""Seconds; what the service manager is promised."""


async def stopped(place: Lab, number: int) -> float:
    """Asks a worker to stop and waits until it is gone; the seconds that it took."""
    begun = time.monotonic()
    os.kill(number, signal.SIGTERM)
    async with asyncio.timeout(3 * IN_TIME):
        while is_there(number):
            await asyncio.sleep(0.02)
    place.alive.pop(number)
    return time.monotonic() - begun


async def outcomes(place: Lab) -> dict[str, int]:
    return {name: count for name, count in (await place.verdict()).items() if count}


async def test_a_worker_that_is_asked_to_stop_finishes_what_is_in_hand_and_leaves_nothing_unknown(
    tmp_path: Path, store: Place
) -> None:
    async with lab(tmp_path, delay=0.3) as place:
        for _ in range(2):
            worker = await place.start()
            await place.put(150)
            await place.feed(50)
            await under_way(place)
            assert await stopped(place, worker) < IN_TIME
            assert await place.busy() == 0
        await place.start()
        assert await broken_promises(place) == {}
        verdict = await outcomes(place)
        assert verdict.get("session unknown", 0) == 0
        assert verdict.get("alerts repeated and marked so", 0) == 0
        assert '"stopped"' in place.log.read_text()


async def test_a_platform_that_is_slower_than_the_stop_costs_an_unknown_session_and_never_a_second_one(
    tmp_path: Path, store: Place
) -> None:
    async with lab(tmp_path, delay=7.5) as place:
        worker = await place.start()
        await place.put(20)
        await under_way(place)
        assert await stopped(place, worker) < IN_TIME
        assert await place.busy() == 0
        assert (await outcomes(place)).get("session unknown", 0) > 0
        await place.start()
        assert await broken_promises(place) == {}


async def test_a_database_that_is_held_by_somebody_does_not_hold_up_the_end(tmp_path: Path) -> None:
    async with lab(tmp_path, delay=0.1) as place:
        worker = await place.start()
        await place.put(200)
        await under_way(place)
        held = await asyncio.to_thread(_hold, place.database.address.database or "")
        assert await stopped(place, worker) < IN_TIME
        await asyncio.to_thread(held.close)
        await place.start()
        assert await broken_promises(place) == {}
