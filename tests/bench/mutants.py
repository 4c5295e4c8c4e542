"""A mutation fuzz of programme files: `python -m tests.bench.mutants [--count N] [--seed S] [--processes P]`.

Every mutant must end in a good error or in a programme that can be used, within five seconds. What does not is printed
with its seed and text, and the exit code is 1.
"""

from __future__ import annotations

import argparse
import random
import signal
import time
from collections import Counter
from multiprocessing import get_context

from tests.mutating import mutant, verdict

LONGEST = 5.0
"""Seconds for one mutant."""
BATCH = 500


def run(seed: int) -> tuple[Counter[str], float, list[str]]:
    """One batch of mutants: outcomes, the slowest in seconds, failures in words."""

    def too_slow(_signal: int, _frame: object) -> None:
        raise TimeoutError(f"more than {LONGEST} s")

    signal.signal(signal.SIGALRM, too_slow)
    chance, found, slowest, failures = random.Random(seed), Counter[str](), 0.0, list[str]()
    for number in range(BATCH):
        text = mutant(chance)
        begun = time.perf_counter()
        signal.setitimer(signal.ITIMER_REAL, LONGEST)
        try:
            found[verdict(text)] += 1
        except Exception as error:
            failures.append(f"seed {seed}, mutant {number}: {type(error).__name__}: {error}\n{text}\n")
        finally:
            signal.setitimer(signal.ITIMER_REAL, 0)
        slowest = max(slowest, time.perf_counter() - begun)
    return found, slowest, failures


def main() -> int:
    """Runs all batches and prints what came of them."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=100_000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--processes", type=int, default=2)
    parser.add_argument("--show", type=int, default=5, help="how many failures to print in full")
    wanted = parser.parse_args()
    batches = -(-wanted.count // BATCH)
    total, slowest, failures = Counter[str](), 0.0, list[str]()
    with get_context("spawn").Pool(wanted.processes) as pool:
        for found, slow, bad in pool.imap_unordered(
            run, range(wanted.seed * 1_000_000, wanted.seed * 1_000_000 + batches)
        ):
            total += found
            slowest = max(slowest, slow)
            failures += bad
    print(f"{batches * BATCH:,} mutants: {total['programme']:,} programmes, {len(failures)} failures")
    print("first problems: " + ", ".join(f"{code} {n:,}" for code, n in total.most_common() if code != "programme"))
    print(f"slowest {slowest * 1000:.0f} ms")
    print("\n".join(failures[: wanted.show]))
    return 1 if failures else 0


if __name__ == "__main__":
    raise SystemExit(main())
