"""Rehearsed days: speed, every property at every step, and what each rule costs and saves.

`python -m tests.bench.rehearsing [--days N]` rehearses so many client-days on all cores and prints client-days a second
in one process; `--checked N` checks every property at every step of N client-days and prints the seed of what fails;
`--rules` leaves out one rule after the other.
"""

from __future__ import annotations

import argparse
import os
import random
import time
from concurrent.futures import ProcessPoolExecutor
from functools import cache
from importlib.resources import files
from multiprocessing import get_context

from plans import course, rules
from plans.reading import read_programme
from plans.rehearsal import Outcome, Stage, client_of, journey, outcome
from plans.simulated import natures
from tests.properties import check_step, check_step_of_a_group

SAMPLES = ("rowing-club", "hill-walkers", "pit-musicians")
BATCH = 500


@cache
def stage(name: str) -> Stage:
    """A sample, prepared once in each process."""
    return Stage(read_programme(files("plans.library").joinpath(f"{name}.yaml").read_text(encoding="utf-8")))


def run(name: str, seed: int, checked: bool) -> tuple[int, float, list[str]]:
    """One batch of clients: client-days, seconds of the processor, and what failed."""
    place, failures, days = stage(name), list[str](), 0
    kinds = natures(BATCH, random.Random(seed))
    check = check_step_of_a_group if place.pace.together else check_step
    begun = time.process_time()
    for number, nature in enumerate(kinds):
        rng = random.Random(f"{seed}:{number}")
        try:
            days += journey(place, nature, rng, watch=check if checked else None).dates
        except Exception as error:
            failures.append(f"{name}, seed {seed}, client {number} ({nature.name}): {type(error).__name__}: {error}")
    return days, time.process_time() - begun, failures


def many(days: int, seed: int, *, checked: bool) -> int:
    """Rehearses until so many client-days are through; prints speed and failures, returns how many failed."""
    total, seconds, failures, batch = 0, 0.0, list[str](), 0
    with ProcessPoolExecutor(os.cpu_count(), mp_context=get_context("spawn")) as pool:
        while total < days:
            tasks = [
                pool.submit(run, SAMPLES[(batch + n) % len(SAMPLES)], seed * 1_000_000 + batch + n, checked)
                for n in range(12)
            ]
            batch += 12
            for task in tasks:
                found, took, failed = task.result()
                total, seconds = total + found, seconds + took
                failures += failed
    how = "every property checked at every step" if checked else "unchecked"
    print(f"{total:,} client-days, {how}: {len(failures)} failures; {total / seconds:,.0f} a second in one process")
    print("\n".join(failures[:10]))
    return len(failures)


def without_each_rule(clients: int, seed: int) -> None:
    """What a mixed group of the first sample comes to when one rule after the other has no say."""
    whole = rules.RULES
    print(
        f"{'left out':16}{'median':>8}{'90th':>6}{'unfinished':>12}{'at once':>9}{'list':>6}{'pain 3+':>9}{'sorer':>7}"
    )
    for left_out in (None, *whole):
        rules.RULES = tuple(rule for rule in whole if rule is not left_out)
        _forget()
        found = _group(clients, seed)
        name = left_out.__name__.replace("_", "-") if left_out else "nothing"
        print(
            f"{name:16}{found.median or 0:>8g}{found.ninetieth or 0:>6g}{found.unfinished:>12.1%}{found.alerts:>9.2f}"
            f"{found.listed:>6.2f}{found.pained:>9.1%}{found.on_sorer:>7.0f}"
        )
    rules.RULES = whole
    _forget()


def _forget() -> None:
    """What other rules have said is kept nowhere."""
    course._judged.cache_clear()
    course._decided.cache_clear()


def _group(clients: int, seed: int) -> Outcome:
    place = stage(SAMPLES[0])
    kinds = natures(clients, random.Random(seed))
    return outcome(place.programme, [client_of(place, nature, seed, number) for number, nature in enumerate(kinds)])


def main() -> int:
    """Runs what was asked for."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--days", type=int, default=0)
    parser.add_argument("--checked", type=int, default=0)
    parser.add_argument("--rules", action="store_true")
    parser.add_argument("--clients", type=int, default=2000)
    parser.add_argument("--seed", type=int, default=1)
    wanted = parser.parse_args()
    failed = 0
    if wanted.rules:
        without_each_rule(wanted.clients, wanted.seed)
    if wanted.checked:
        failed += many(wanted.checked, wanted.seed, checked=True)
    if wanted.days or not (wanted.rules or wanted.checked):
        failed += many(wanted.days or 10_000_000, wanted.seed, checked=False)
    return 1 if failed else 0


if __name__ == "__main__":
    raise SystemExit(main())
