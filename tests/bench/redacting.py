"""Log lines that try to carry a token or somebody's words: `python -m tests.bench.redacting [--count N] [--seed S]`."""

from __future__ import annotations

import argparse
import time
from multiprocessing import get_context

from tests.log_fuzz import fuzz

BATCH = 20_000


def run(seed: int) -> list[str]:
    """One batch."""
    return fuzz(seed, BATCH)


def main() -> int:
    """Runs all batches and prints what came of them."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--count", type=int, default=1_000_000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--processes", type=int, default=2)
    wanted = parser.parse_args()
    batches, begun, bad = -(-wanted.count // BATCH), time.perf_counter(), list[str]()
    with get_context("spawn").Pool(wanted.processes) as pool:
        for found in pool.imap_unordered(run, range(wanted.seed * 10_000, wanted.seed * 10_000 + batches)):
            bad += found
    print(f"{batches * BATCH:,} lines in {time.perf_counter() - begun:.0f} s, {len(bad)} with something in them")
    print("\n".join(bad[:5]))
    return 1 if bad else 0


if __name__ == "__main__":
    raise SystemExit(main())
