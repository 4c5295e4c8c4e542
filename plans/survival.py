"""How many stay, and for how long, when some are still there: the Kaplan-Meier curve with its intervals.

Kaplan & Meier 1958, J Am Stat Assoc 53:457; variance by Greenwood 1926, intervals on the log(-log) scale (Kalbfleisch
& Prentice 1980). Who is still there has not left: they count as there until then, and not at all afterwards.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from math import exp, log, sqrt

from plans.adherence import Z95, wilson


@dataclass(frozen=True, slots=True)
class Stay:
    """How long somebody was there, in any unit from 0, and whether they left then; otherwise they are still there."""

    time: int
    left: bool


@dataclass(frozen=True, slots=True)
class Step:
    """One time at which somebody left: those there just before, those who left, and the share that stays longer.

    `share` is 0-1, `low` and `high` are its 95 % interval.
    """

    time: int
    there: int
    left: int
    share: float
    low: float
    high: float


@dataclass(frozen=True, slots=True)
class Curve:
    """The share that is still there after each time at which somebody left."""

    people: int
    steps: tuple[Step, ...]

    def at(self, time: int) -> Step | None:
        """The step that holds at a time; none while nobody has left."""
        return next((step for step in reversed(self.steps) if step.time <= time), None)


def kaplan_meier(stays: Iterable[Stay]) -> Curve:
    """The curve of these stays; who left and who is still there at the same time were both there until then.

    >>> curve = kaplan_meier([Stay(1, True), Stay(2, False), Stay(3, True), Stay(3, False)])
    >>> [(step.time, step.there, step.left, step.share) for step in curve.steps]
    [(1, 4, 1, 0.75), (3, 2, 1, 0.375)]
    """
    found = list(stays)
    left = Counter(stay.time for stay in found if stay.left)
    ends = sorted(stay.time for stay in found)
    exact, greenwood = Fraction(1), 0.0
    steps: list[Step] = []
    for time, gone in sorted(left.items()):
        there = sum(1 for end in ends if end >= time)
        exact *= Fraction(there - gone, there)
        share = float(exact)
        if there > gone:
            greenwood += gone / (there * (there - gone))
            low, high = _interval(share, greenwood)
        else:  # the formula ends at a share of 0; the upper end stays what it was (own choice)
            low, high = 0.0, steps[-1].high if steps else wilson(0, there)[1]
        steps.append(Step(time, there, gone, share, low, high))
    return Curve(len(found), tuple(steps))


def _interval(share: float, greenwood: float) -> tuple[float, float]:
    """The 95 % interval of a share between 0 and 1, from Greenwood's sum."""
    spread = Z95 * sqrt(greenwood) / abs(log(share))
    return share ** exp(spread), share ** exp(-spread)
