"""A rehearsal on the command line: the group on all cores, a progress bar, and what came of it in words."""

from __future__ import annotations

import os
import random
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from functools import cache
from multiprocessing import get_context

from plans.programme import Programme
from plans.reading import read_programme
from plans.rehearsal import MANY, Journey, Outcome, Stage, client_of, outcome
from plans.simulated import NATURES, natures

BATCH, ALONE = 100, 400
"""Clients a task; groups up to this size stay in one process."""
BAR = 40
"""Characters of the longest bar."""

Step = Callable[[int], None]
"""Told how many clients have gone through."""


@cache
def _stage(source: str) -> Stage:
    return Stage(read_programme(source))


def _batch(source: str, seed: int, first: int, kinds: Sequence[int], adapted: bool) -> list[Journey]:
    stage = _stage(source)
    return [client_of(stage, NATURES[kind], seed, first + n, adapted=adapted) for n, kind in enumerate(kinds)]


def rehearse(
    source: str, clients: int, seed: int, *, adapted: bool = True, step: Step = lambda _count: None
) -> Outcome:
    """A group goes through the programme of a file's text; the same seed gives the same group."""
    stories: list[Journey] = []
    for batch in _batches(source, clients, seed, adapted):
        stories += batch
        step(len(batch))
    return outcome(read_programme(source), stories)


def _batches(source: str, clients: int, seed: int, adapted: bool) -> Iterator[list[Journey]]:
    kinds = [NATURES.index(nature) for nature in natures(clients, random.Random(seed))]
    starts = range(0, clients, BATCH)
    if clients <= ALONE:
        yield from (_batch(source, seed, first, kinds[first : first + BATCH], adapted) for first in starts)
        return
    with ProcessPoolExecutor(os.cpu_count(), mp_context=get_context("spawn")) as pool:
        tasks = [pool.submit(_batch, source, seed, first, kinds[first : first + BATCH], adapted) for first in starts]
        yield from (task.result() for task in tasks)


def in_words(programme: Programme, found: Outcome, plain: Outcome) -> str:
    """What came of a group with the rules, beside the same group without; and which days to look at."""
    return "\n".join(_lines(programme, found, plain))


def _lines(programme: Programme, found: Outcome, plain: Outcome) -> Iterator[str]:
    yield f"{programme.title}: {found.clients} simulated clients (invented, no evidence)"
    if found.median is not None:
        yield f"dates to finish: half within {found.median:g}, nine of ten within {found.ninetieth:g}"
    yield f"nobody could on average be faster than {found.floor:.0f}: {found.done:.0%} of due sessions are done"
    told = "the coach was told of each" if not found.untold else f"of {found.untold} no coach was told"
    yield f"not finished after four times the dates: {found.unfinished:.1%}" + (f"; {told}" if found.unfinished else "")
    yield from _picture(found.finished)
    yield ""
    yield "what followed: " + ", ".join(f"{share:.1%} {verdict}" for verdict, share in found.verdicts.items())
    yield f"waiting for the coach: {found.waited:.1%} of dates"
    yield f"a coach of {MANY} hears of it a day: at once {found.alerts:.2f}, on the morning's list {found.listed:.2f}"
    yield ""
    yield f"{'':34}with the rules   as published"
    yield f"{'work done of what was written':34}{found.delivered:>14.0%}{plain.delivered:>15.0%}"
    yield f"{'done sessions with pain of 3+':34}{found.pained:>14.1%}{plain.pained:>15.1%}"
    yield f"{'on a worse morning, 100 clients':34}{found.on_sorer:>14.0f}{plain.on_sorer:>15.0f}"
    yield ""
    if not found.trouble:
        yield "No day stands out: nobody is held up much more on one than on another."
        return
    yield "Days to look at:"
    for day in found.trouble:
        title = f" ({day.title})" if day.title else ""
        yield f"  day {day.day}{title}: not passed {day.held_up:.2f} times a client, hurt {day.pained:.2f} times"


def _picture(finished: Sequence[int]) -> Iterator[str]:
    """How many finished within each span of dates, as bars."""
    if not finished:
        return
    width = max(1, (finished[-1] - finished[0]) // 12 + 1)
    counts = Counter((dates - finished[0]) // width for dates in finished)
    most = max(counts.values())
    for part in range(max(counts) + 1):
        first = finished[0] + part * width
        label = f"{first}" if width == 1 else f"{first}-{first + width - 1}"
        yield f"  {label:>9} {'#' * round(BAR * counts[part] / most)} {counts[part] or ''}".rstrip()
