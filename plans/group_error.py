"""A test's own error in a group, from the tries that each client took one after the other."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from plans.measures import MEASURES
from plans.programme_report import SMALL
from plans.repeatability import Repeatability, repeatability

ENOUGH = SMALL
"""People from whose tries an error is told (own choice)."""


@dataclass(frozen=True, slots=True)
class Tries:
    """One client's first test of one side: every try in order, in the measure's unit."""

    measure: str
    side: str | None
    tries: Sequence[float]


@dataclass(frozen=True, slots=True)
class GroupError:
    """One test of one side: how many people took it again in one sitting, and what follows if they are enough."""

    measure: str
    side: str | None
    people: int
    found: Repeatability | None


def group_errors(taken: Iterable[Tries]) -> list[GroupError]:
    """For each test and side, from all with the number of tries that most took; practice tries are left out."""
    by_test: defaultdict[tuple[str, str | None], list[Sequence[float]]] = defaultdict(list)
    for one in taken:
        real = one.tries[MEASURES[one.measure].practice :]
        if len(real) >= 2:
            by_test[one.measure, one.side].append(real)
    return [_error(measure, side, rows) for (measure, side), rows in sorted(by_test.items(), key=str)]


def _error(measure: str, side: str | None, rows: Sequence[Sequence[float]]) -> GroupError:
    (usual, _count), *_others = Counter(len(row) for row in rows).most_common(1)
    alike = [row for row in rows if len(row) == usual]
    differ = len({value for row in alike for value in row}) > 1
    return GroupError(measure, side, len(alike), repeatability(alike) if len(alike) >= ENOUGH and differ else None)
