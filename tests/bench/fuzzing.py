"""Updates and bodies at random, many: `python -m tests.bench.fuzzing [--updates N] [--bodies N] [--seed S]`.

What people can send must be handled; what no platform would send may fail, alone, and must be stored or refused. The
exit code is 1 when something else came of one, with the seed that makes it again. Programme files: tests/bench/mutants.
"""

from __future__ import annotations

import argparse
import asyncio
import logging
import tempfile
import time
from pathlib import Path

from db.engine import opened
from tests.fuzzing import people, read_bodies, run
from tests.postgres import serving
from tests.stores import Databases, Files, Place, kept_in


async def updates(place: Place, seed: int, count: int) -> int:
    """One database's run; how many were not as they should be."""
    begun = time.perf_counter()
    with tempfile.TemporaryDirectory() as folder:
        async with kept_in(place), opened(await place.url(Path(folder))) as database:
            await database.write(people)
            found, wrong = await run(database, seed, count)
    told = ", ".join(f"{number:,} {what}" for what, number in sorted(found.items()))
    print(
        f"{place.name}: {count:,} updates, seed {seed}: {told}; {len(wrong)} wrong, {time.perf_counter() - begun:.0f} s"
    )
    print("\n".join(wrong[:5]), flush=True)
    return len(wrong)


async def main(wanted: argparse.Namespace) -> int:
    """Both databases, then bodies."""
    wrong = await updates(Files(), wanted.seed, wanted.updates // 2)
    with serving() as server:
        wrong += await updates(Databases(server), wanted.seed + 1, wanted.updates - wanted.updates // 2)
    found = read_bodies(wanted.seed, wanted.bodies)
    print(f"{wanted.bodies:,} bodies: {found['update']:,} updates, {found['refused']:,} refused")
    return 1 if wrong else 0


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("--updates", type=int, default=50_000)
    words.add_argument("--bodies", type=int, default=200_000)
    words.add_argument("--seed", type=int, default=1)
    logging.disable()  # every refused act would be told
    raise SystemExit(asyncio.run(main(words.parse_args())))
