"""Whether a client's pain or tightness rises or falls over four weeks: a slope that single bad days do not move.

The slope is the median of all slopes between two points (Theil 1950; Sen 1968, J Am Stat Assoc 63:1379), whether it is
more than chance is asked by Kendall's rank test. Both allow for equal answers, and for days that are like the days
beside them.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from itertools import combinations, pairwise
from math import floor, sqrt
from statistics import NormalDist, fmean, median

from plans.checkin import Place
from plans.ledger import Entry

WINDOW = timedelta(days=28)
"""Dates that a trend is looked for in."""
LEAST_ANSWERS, LEAST_SPAN = 8, 14
"""Answers, and days from the first to the last of them, that a trend over four weeks needs (own choice)."""
MOST_ALIKE = 0.9
"""The correlation of neighbouring days that is allowed for at most (own choice)."""
CONFIDENCE = 0.95

Point = tuple[float, float]
"""Time and value."""


class Direction(StrEnum):
    """What can be said of a trend."""

    RISING = "rising"
    FALLING = "falling"
    UNCLEAR = "no clear trend"
    TOO_FEW = "too few answers to tell"


@dataclass(frozen=True, slots=True)
class Trend:
    """The change over a span of days in points of the 0-10 scale, with its 95 % interval, from so many answers.

    An end of the interval that is 0 is left out of it when the direction is rising or falling: on a scale of whole
    numbers many slopes are exactly 0.
    """

    direction: Direction
    answers: int
    days: int
    """From the first answer to the last."""
    change: float | None = None
    low: float | None = None
    high: float | None = None


def slopes(points: Sequence[Point]) -> list[float]:
    """All slopes between two points at different times, the least first; Theil-Sen's own is their median."""
    return sorted((y - x) / (t - s) for (s, x), (t, y) in combinations(sorted(points), 2))


def interval(between: Sequence[float], error: float, confidence: float) -> tuple[float, float] | tuple[None, None]:
    """Sen's interval of the median slope by the normal approximation (his 2.6); none where there are too few for it.

    >>> points = [(1, 9), (2, 15), (3, 19), (4, 20), (10, 45), (12, 55), (18, 78)]
    >>> median(slopes(points)), interval(slopes(points), spread([y for _t, y in points]), 0.93)
    (4.0, (3.7142857142857144, 4.375))
    """
    off = floor((len(between) - NormalDist().inv_cdf((1 + confidence) / 2) * error) / 2) - 1
    return (between[off], between[-1 - off]) if off >= 0 else (None, None)


def kendall(values: Sequence[float], *, alike: float = 0.0) -> float:
    """Kendall's rank statistic of values in the order of time, in standard errors of no trend; more than 0 rises.

    Corrected for continuity, and for equal values; 0 when all are equal.
    """
    signs = sum((later > earlier) - (later < earlier) for earlier, later in combinations(values, 2))
    error = spread(values, alike)
    if abs(signs) <= 1 or error == 0:
        return 0.0
    return (signs - (1 if signs > 0 else -1)) / error


def spread(values: Sequence[float], alike: float = 0.0) -> float:
    """The standard error of Kendall's statistic without a trend.

    Neighbours that correlate by `alike` (r, from 0 to below 1) widen it by (1 + r) / (1 - r) in its square, as they do
    for a mean.
    """
    count = len(values)
    equal = sum(same * (same - 1) * (2 * same + 5) for same in Counter(values).values())
    return sqrt((count * (count - 1) * (2 * count + 5) - equal) / 18 * (1 + alike) / (1 - alike))


def trend(said: Iterable[tuple[date, int]], until: date) -> Trend:
    """The trend of answers on the 0-10 scale in the four weeks that end on a date, one answer a date."""
    found = sorted((on, value) for on, value in said if until - WINDOW < on <= until)
    days = (found[-1][0] - found[0][0]).days if found else 0
    if len(found) < LEAST_ANSWERS or days < LEAST_SPAN:
        return Trend(Direction.TOO_FEW, len(found), days)
    points = [((on - found[0][0]).days, value) for on, value in found]
    between, values = slopes(points), [value for _t, value in points]
    slope = median(between)
    alike = _alike([(t, y - slope * t) for t, y in points])
    low, high = interval(between, spread(values, alike), CONFIDENCE)
    if low is None or high is None:
        return Trend(Direction.TOO_FEW, len(found), days)
    direction = _direction(kendall(values, alike=alike), low, high)
    return Trend(direction, len(found), days, slope * days, low * days, high * days)


def _direction(statistic: float, low: float, high: float) -> Direction:
    """A trend where rank test and interval agree on it."""
    surely = NormalDist().inv_cdf((1 + CONFIDENCE) / 2)
    if statistic > surely and low >= 0:
        return Direction.RISING
    return Direction.FALLING if statistic < -surely and high <= 0 else Direction.UNCLEAR


def _alike(rest: Sequence[Point]) -> float:
    """How alike neighbouring days are once the slope is off, from 0; what few days hide of it is added back.

    A fitted line lowers a first-order correlation by about (1 + 4 r) / n (from memory: Kendall 1954 and Marriott &
    Pope 1954, Biometrika 41).
    """
    middle = fmean(value for _t, value in rest)
    spread = fmean((value - middle) ** 2 for _t, value in rest)
    pairs = [(x - middle) * (y - middle) for (s, x), (t, y) in pairwise(rest) if t - s == 1]
    if not pairs or spread == 0:
        return 0.0
    found = fmean(pairs) / spread
    return min(MOST_ALIKE, max(0.0, found + (1 + 4 * found) / len(rest)))


def pain(rows: Iterable[Entry], until: date) -> Trend:
    """The trend of pain where the programme works."""
    said = ((row.on, row.checkin.pain) for row in rows if row.checkin.place is not Place.ELSEWHERE)
    return trend(((on, value) for on, value in said if value is not None), until)


def tightness(rows: Iterable[Entry], until: date) -> Trend:
    """The trend of tightness."""
    said = ((row.on, row.checkin.tightness) for row in rows)
    return trend(((on, value) for on, value in said if value is not None), until)
