"""Adherence in three figures that stay apart: completion, dose and answers, each with both its bounds.

Sources: bounds and the 80 % mark as in Bailey 2020 (Br J Sports Med 54:326); intervals by Wilson's score method as
tabled by Newcombe 1998 (Stat Med 17:857), of differences by his hybrid of two of them (Stat Med 17:873, method 10).
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from math import hypot, sqrt

from plans.checkin import Completion
from plans.ledger import Entry, RowKind

Z95 = 1.959963984540054
"""The 97.5 % point of the standard normal distribution."""


def wilson(successes: float, trials: float, *, z: float = Z95) -> tuple[float, float]:
    """The Wilson score interval of a proportion, as fractions of 1; (0, 1) when nothing was tried.

    Counts may be broken ones, for trials that count less than whole.

    Raises ValueError when successes are not between 0 and trials.

    >>> [round(bound, 4) for bound in wilson(15, 148)]
    [0.0624, 0.1605]
    """
    if not 0 <= successes <= trials:
        raise ValueError(f"{successes} of {trials}: successes must be from 0 to the number of trials")
    if trials == 0:
        return 0.0, 1.0
    share = successes / trials
    middle = share + z * z / (2 * trials)
    spread = z * sqrt(share * (1 - share) / trials + z * z / (4 * trials * trials))
    scale = 1 + z * z / trials
    low = 0.0 if successes == 0 else (middle - spread) / scale
    high = 1.0 if successes == trials else (middle + spread) / scale
    return low, high


def newcombe(first: tuple[float, float], second: tuple[float, float], *, z: float = Z95) -> tuple[float, float]:
    """The interval of one proportion less another, each as (successes, trials) and independent of the other.

    >>> [round(bound, 4) for bound in newcombe((56, 70), (48, 80))]
    [0.0524, 0.3339]
    """
    if not first[1] or not second[1]:
        return -1.0, 1.0
    (a, b), (c, d) = wilson(*first, z=z), wilson(*second, z=z)
    p, q = first[0] / first[1], second[0] / second[1]
    return p - q - hypot(p - a, d - q), p - q + hypot(b - p, q - c)


@dataclass(frozen=True, slots=True)
class Week:
    """What came of the sessions that were due in one week; all are counts of dates, `pains` are 0-10."""

    due: int
    """Sessions delivered; a session that did not arrive is not due."""
    done: int
    part: int
    left_out: int
    silent: int
    """Delivered, and nothing said about whether it was done."""
    answered: int
    """Delivered sessions with any answer."""
    pains: tuple[int, ...]

    @property
    def completion(self) -> tuple[float, float]:
        """Share of due sessions done, lower and upper bound: the silent ones count as left out, then as done."""
        if self.due == 0:
            return 0.0, 1.0
        return self.done / self.due, (self.done + self.silent) / self.due

    @property
    def response(self) -> float:
        """Share of due sessions with any answer, 0-1."""
        return self.answered / self.due if self.due else 0.0


def week_of(rows: Iterable[Entry]) -> Week:
    """Counts the sessions among the rows of one week."""
    sent = [row for row in rows if row.kind is RowKind.SESSION and (row.delivered or row.checkin.completion)]
    by = {value: sum(1 for row in sent if row.checkin.completion is value) for value in (*Completion, None)}
    return Week(
        due=len(sent),
        done=by[Completion.DONE],
        part=by[Completion.PART],
        left_out=by[Completion.NONE],
        silent=by[None],
        answered=sum(1 for row in sent if row.checkin.completion or row.checkin.pain is not None),
        pains=tuple(row.checkin.pain for row in sent if row.checkin.pain is not None),
    )
