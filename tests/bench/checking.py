"""Reading and judging a long programme beside merely parsing its YAML: `python -m tests.bench.checking [--runs N]`.

A year of sessions that are all written out, and the samples. Runs are interleaved; medians in milliseconds.
"""

from __future__ import annotations

import argparse
import time
from collections.abc import Callable
from importlib.resources import files
from statistics import median
from typing import Any

from ruamel.yaml import YAML

from plans.lint import check
from plans.movements import library
from plans.nodes import read_nodes
from plans.reading import read_programme
from plans.written import WrittenProgramme

DAYS, ITEMS = 365, 7
HEAD = """\
title: A year
goal: Reach further.
for: Anybody in a bench.
setting: At home.
led-by: Somebody.
muscles: [hamstrings, calves]
equipment: [mat, chair, strap: [towel]]
days:
"""


def year() -> str:
    """A programme of a year, every item of every session day on lines of its own."""
    keys = [key for key, movement in library().items() if movement.sides]
    lines = [HEAD]
    for day in range(DAYS):
        if day % 7 == 6:
            lines.append("  - rest: Walk a little.\n")
            continue
        lines.append(f"  - title: Day {day + 1}\n    text: Slowly, with a long breath out.\n    session:\n")
        lines.append("      warm-up: Walk on the spot.\n      blocks:\n")
        lines.append("        - rounds: 2\n          rest: 20\n          items:\n")
        for item in range(ITEMS):
            key = keys[(day // 14 + item * 5) % len(keys)]
            lines.append(
                f"            - movement: {key}\n              hold: {30 + day % 15}\n              side: each\n"
            )
            lines.append("              effort: 5-6\n              cue: breathe out\n")
    return "".join(lines)


def _parse(text: str) -> Any:
    return YAML(typ="safe", pure=True).load(text)


def _check(text: str) -> Any:
    return check(read_programme(text))


def _timed(work: Callable[[str], Any], text: str) -> float:
    begun = time.perf_counter()
    work(text)
    return (time.perf_counter() - begun) * 1000


def measure(name: str, text: str, runs: int) -> None:
    """Prints the medians for one text, and what each step of reading takes."""
    _check(text)
    pairs = [(_timed(_parse, text), _timed(_check, text)) for _ in range(runs)]
    parsed, checked = (median(column) for column in zip(*pairs, strict=True))
    lines = text.count("\n")
    print(f"{name}: {lines:,} lines; parse {parsed:.0f} ms, check {checked:.0f} ms, ratio {checked / parsed:.2f}")
    nodes = median(_timed(read_nodes, text) for _ in range(runs))
    data, programme = read_nodes(text).data, read_programme(text)
    shapes = median(_timed(lambda _text: WrittenProgramme.model_validate(data), text) for _ in range(runs))
    judged = median(_timed(lambda _text: check(programme), text) for _ in range(runs))
    rest = checked - nodes - shapes - judged
    print(f"  nodes {nodes:.0f}, shapes {shapes:.0f}, building {rest:.0f}, judging {judged:.0f} ms")


def main() -> None:
    """Measures the year and the samples."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--runs", type=int, default=5)
    runs = parser.parse_args().runs
    measure("a year, written out", year(), runs)
    for name in ("rowing-club", "hill-walkers", "pit-musicians"):
        measure(name, files("plans.library").joinpath(f"{name}.yaml").read_text(encoding="utf-8"), runs)


if __name__ == "__main__":
    main()
