"""Real workers under load, killed at random moments: `python -m tests.bench.kills [--kills N] [--seed S]`.

On SQLite one worker at a time, on PostgreSQL four of all roles. In the end nothing may be lost, no session may have
arrived twice, an alert only repeated with the line that says so, and what was in flight counts as unknown.
"""

from __future__ import annotations

import argparse
import asyncio
import random
import tempfile
import time
from pathlib import Path

from tests.killing import Lab, lab
from tests.postgres import SAFE, serving
from tests.stores import Databases, Files, Place, kept_in

FORBIDDEN = (
    "sessions twice",
    "sent but never arrived",
    "alerts never arrived",
    "alerts repeated without a word",
    "updates without their answer",
    "updates waiting",
    "updates leased",
    "updates failed",
)


async def killed(place: Lab, kills: int, roles: tuple[str, ...], rng: random.Random) -> list[int]:
    """Keeps work waiting and kills; returns what was in hand at each kill."""
    for role in roles:
        await place.start(role)
    in_hand = []
    for kill in range(kills):
        if kill % 10 == 0:
            async with place.http.get(f"{place.platform}/count"):
                await place.put(600)
            await place.feed(100)
        in_hand.append(await place.kill_at_random(rng, longest=0.6))
    return in_hand


async def one(place: Place, kills: int, seed: int, roles: tuple[str, ...]) -> bool:
    """One database's run; says what came of it and whether that is as promised."""
    begin = time.monotonic()
    with tempfile.TemporaryDirectory() as folder:
        async with kept_in(place), lab(Path(folder)) as laboratory:
            in_hand = await killed(laboratory, kills, roles, random.Random(seed))
            await laboratory.until_done(600)
            verdict = await laboratory.verdict()
    wrong = {name: verdict.get(name, 0) for name in FORBIDDEN if verdict.get(name, 0)}
    print(f"{place.name}: {kills} kills, {sum(n > 0 for n in in_hand)} of them with work in hand, seed {seed}")
    for name in sorted(verdict):
        print(f"  {name}: {verdict[name]}")
    print(f"  {'BROKEN: ' + str(wrong) if wrong else 'held'}, {time.monotonic() - begin:.0f} s", flush=True)
    return not wrong


async def main(kills: int, seed: int) -> bool:
    """Both databases, half of the kills each."""
    held = await one(Files(), kills // 2, seed, ("all",))
    with serving(options=SAFE, on_disk=True) as server:
        return await one(Databases(server), kills - kills // 2, seed, ("all", "all", "updates", "sender")) and held


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("--kills", type=int, default=1000)
    words.add_argument("--seed", type=int, default=1)
    found = words.parse_args()
    raise SystemExit(0 if asyncio.run(main(found.kills, found.seed)) else 1)
