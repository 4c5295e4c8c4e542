"""Years of simulated clients over the real program while everything fails: `python -m tests.bench.faults --years N
--seed S [--jobs J]`.

Each world is a coach and eight clients for six weeks, from one seed (`tests.simulation`). What broke is printed
with its world's seed: `--only SEED` plays that one again, step by step. `--mutants` breaks the program on purpose in
every known way and says which of them are seen.
"""

from __future__ import annotations

import argparse
import gc
import os
import random
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor, as_completed
from multiprocessing import get_context
from pathlib import Path

from tests.simulation.mutants import MUTANTS, SEEDS, is_seen
from tests.simulation.world import Found, Plan, simulate

CLIENTS, DAYS = 8, 42
YEAR = 365.0
MEMORY = Path("/dev/shm")
"""Where a database costs no disk, on hosts that have it."""


def one(seed: int) -> tuple[Found, float]:
    """One world, and the CPU seconds that it took."""
    gc.freeze()
    gc.set_threshold(50_000, 20, 20)
    begin = time.process_time()
    with tempfile.TemporaryDirectory(dir=MEMORY if MEMORY.is_dir() else None) as folder:
        found = simulate(Plan(seed, days=DAYS, clients=CLIENTS), Path(folder))
    return found, time.process_time() - begin


def worlds(seeds: Iterator[int], days: float, jobs: int) -> Iterator[tuple[Found, float]]:
    """World after world until so many client-days are lived."""
    with ProcessPoolExecutor(jobs, mp_context=get_context("spawn")) as pool:
        running = {pool.submit(one, next(seeds)) for _ in range(jobs)}
        while running:
            done = next(as_completed(running))
            running.remove(done)
            found, seconds = done.result()
            days -= found.counts["client-days"]
            if days > 0:
                running.add(pool.submit(one, next(seeds)))
            yield found, seconds


def main(years: float, seed: int, jobs: int) -> bool:
    """Lives through so many client-years; whether everything held."""
    rng, begin = random.Random(seed), time.monotonic()
    seeds = iter(lambda: rng.randrange(10**9), -1)
    faults: Counter[str] = Counter()
    counts: Counter[str] = Counter()
    broken: list[Found] = []
    cpu, number = 0.0, 0
    for found, seconds in worlds(seeds, years * YEAR, jobs):
        cpu, number = cpu + seconds, number + 1
        faults += found.faults
        counts += found.counts
        days = found.counts["client-days"]
        print(f"world {found.seed}: {days} client-days, {found.faults.total()} faults, {seconds:.0f} s", flush=True)
        if found.broken:
            broken.append(found)
            print(found.report(), flush=True)
    days = counts["client-days"]
    print(f"\nseed {seed}: {number} worlds, {days} client-days ({days / YEAR:.1f} years), {faults.total()} faults")
    for name, count in faults.most_common():
        print(f"  {count:>8} {name}")
    print("  seen: " + ", ".join(f"{count} {name}" for name, count in counts.items() if name != "client-days"))
    print(f"  {1000 * cpu / max(1, days):.0f} ms of CPU a client-day, {time.monotonic() - begin:.0f} s, {jobs} jobs")
    worst = Counter(name for found in broken for name in dict.fromkeys(name for name, _what in found.broken))
    print(f"  BROKEN in {len(broken)} worlds: {dict(worst)}" if broken else "  held")
    return not broken


def mutants() -> bool:
    """Breaks the program on purpose in every known way; whether each was seen."""
    missed = []
    for name, mutant in MUTANTS.items():
        for seed in range(1, 1 + SEEDS):
            with tempfile.TemporaryDirectory(dir=MEMORY if MEMORY.is_dir() else None) as folder:
                if is_seen(mutant, seed, Path(folder)):
                    print(f"seen in world {seed}: {name}", flush=True)
                    break
        else:
            missed.append(name)
            print(f"NOT SEEN: {name}", flush=True)
    return not missed


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("--years", type=float, default=4)
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--jobs", type=int, default=os.cpu_count() or 1)
    words.add_argument("--only", type=int)
    words.add_argument("--mutants", action="store_true")
    given = words.parse_args()
    if given.only is not None:
        again, _seconds = one(given.only)
        print(again.report())
        sys.exit(bool(again.broken))
    if given.mutants:
        sys.exit(0 if mutants() else 1)
    sys.exit(0 if main(given.years, given.seed, given.jobs) else 1)
