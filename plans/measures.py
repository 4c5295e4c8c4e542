"""Measures of flexibility: their units, their error, and an honest word on a change.

The smallest detectable change (MDC) of each comes from studies with trained testers; for somebody who measures alone
this program takes one and a half times as much, its own choice. A change of exactly the MDC is inside the error.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import time, timedelta
from enum import StrEnum
from math import sqrt
from types import MappingProxyType

ALONE = 1.5
"""Factor on the MDC for a client who measures without a tester (own choice, no published number)."""
ANOTHER_TIME = timedelta(hours=2)
"""Further apart than this two tests are at another time of day: stiffness changes over a day (own choice)."""


class Change(StrEnum):
    """What a difference between two tests is worth."""

    GAIN = "gain"
    INSIDE = "inside"
    LOSS = "loss"


class Counts(StrEnum):
    """Which of several tries counts."""

    BEST = "best"
    MEAN = "mean"


@dataclass(frozen=True, slots=True)
class Measure:
    """One test: values are in `unit`, plausible from `low` to `high`; `mdc` (at 95 %) is for a trained tester.

    `practice` tries come before those that count; with `sides` each side is a test of its own.
    """

    key: str
    name: str
    unit: str
    lower_is_better: bool
    mdc: float
    low: float
    high: float
    sides: bool
    how: str
    source: str
    counts: Counts = Counts.BEST
    practice: int = 0


_ALL = (
    Measure(
        key="fingertip-to-floor",
        name="fingertip to floor",
        unit="cm",
        lower_is_better=True,
        mdc=4.5,
        low=-30,
        high=80,
        sides=False,
        how=(
            "Barefoot, feet together, knees straight. Bend forward slowly and let both hands hang. Measure from the "
            "tip of the longest finger to the floor: 0 when you touch it."
        ),
        source="Perret 2001, Arch Phys Med Rehabil 82:1566; Ekedahl 2012, 93:2210",
    ),
    Measure(
        key="sit-and-reach",
        name="sit and reach",
        unit="cm",
        lower_is_better=False,
        mdc=4.0,
        low=-40,
        high=80,
        sides=False,
        how=(
            "Barefoot, sit with straight knees, the soles flat against a box or a stair. Reach forward slowly with "
            "both hands. Measure from the soles to the fingertips: plus beyond the soles, minus when short of them."
        ),
        source="Lopez-Minarro 2009, J Sports Sci Med 8:116",
    ),
    Measure(
        key="chair-sit-and-reach",
        name="chair sit and reach",
        unit="cm",
        lower_is_better=False,
        mdc=7.1,
        low=-50,
        high=40,
        sides=True,
        how=(
            "Sit on the front edge of a chair against a wall, one leg straight with the heel down, the other foot "
            "flat. Reach slowly to the toes of the straight leg. Measure from the fingertips to the toes: minus for a "
            "gap, plus when you reach past them."
        ),
        source="Jones 1998; Hesseberg 2015 (6.0 cm at 90 %, 7.1 at 95 %)",
        practice=2,
    ),
    Measure(
        key="straight-leg-raise",
        name="straight leg raise",
        unit="degrees",
        lower_is_better=False,
        mdc=7.0,
        low=10,
        high=150,
        sides=True,
        how=(
            "Lie on your back, the other leg flat. Lift one leg slowly with a straight knee until it pulls firmly. Lay "
            "a phone with a level on the shin and read the angle to the floor, in degrees."
        ),
        source="Neto 2015, J Sport Rehabil 24(4): 6 to 7 degrees",
    ),
    Measure(
        key="active-knee-extension",
        name="active knee extension",
        unit="degrees",
        lower_is_better=True,
        mdc=8.0,
        low=0,
        high=90,
        sides=True,
        how=(
            "Lie on your back, one thigh upright, held by both hands. Straighten that knee slowly as far as it goes. "
            "Read with a phone with a level how many degrees the shin is short of upright: 0 is a straight knee."
        ),
        source="Neto 2015, J Sport Rehabil 24(4): 7 to 8 degrees; 15 in an injured leg (Reurink 2013)",
    ),
    Measure(
        key="knee-to-wall",
        name="knee to wall",
        unit="cm",
        lower_is_better=False,
        mdc=1.9,
        low=0,
        high=30,
        sides=True,
        how=(
            "Foot straight, toes towards a wall. Bring the knee to the wall with the heel down, then move the foot "
            "back until the heel only just stays down. Measure from the big toe to the wall."
        ),
        source="Powden 2015, Man Ther 20:524",
        counts=Counts.MEAN,
    ),
    Measure(
        key="back-scratch",
        name="back scratch",
        unit="cm",
        lower_is_better=False,
        mdc=5.5,
        low=-60,
        high=30,
        sides=True,
        how=(
            "One hand over the shoulder, the other up the back. The side is that of the upper hand. Measure between "
            "the middle fingers: minus for a gap, plus when they overlap."
        ),
        source="Jones 1998; Hesseberg 2015 (4.6 cm at 90 %, 5.5 at 95 %)",
    ),
)

MEASURES: Mapping[str, Measure] = MappingProxyType({measure.key: measure for measure in _ALL})


def mdc95(standard_error: float) -> float:
    """The smallest change that repeating the test alone gives only once in twenty times: 1.96 x sqrt 2 x SEM."""
    return 1.96 * sqrt(2) * standard_error


def compare(measure: Measure, before: float, after: float, *, alone: bool = True) -> Change:
    """Whether a retest differs from the baseline by more than the error of the test.

    >>> compare(MEASURES["fingertip-to-floor"], 12, 5, alone=False)
    <Change.GAIN: 'gain'>
    >>> compare(MEASURES["fingertip-to-floor"], 12, 7.5, alone=False)
    <Change.INSIDE: 'inside'>
    """
    limit = measure.mdc * (ALONE if alone else 1)
    better = before - after if measure.lower_is_better else after - before
    if better > limit:
        return Change.GAIN
    return Change.LOSS if better < -limit else Change.INSIDE


def counted(measure: Measure, tries: Sequence[float]) -> float:
    """What several tries come to, in the measure's unit: the best or the mean of those after the practice ones.

    Fewer tries than that all count. Raises ValueError for none.

    >>> counted(MEASURES["fingertip-to-floor"], [12, 10.5, 11])
    10.5
    >>> counted(MEASURES["knee-to-wall"], [8, 9, 10])
    9.0
    """
    if not tries:
        raise ValueError("a test needs a try")
    real = tries[measure.practice :] or tries
    if measure.counts is Counts.MEAN:
        return sum(real) / len(real)
    return min(real) if measure.lower_is_better else max(real)


def plausible(measure: Measure, value: float) -> bool:
    """Whether a value can be true at all; what cannot is asked back, never stored."""
    return measure.low <= value <= measure.high


def at_another_time(first: time, second: time) -> bool:
    """Whether two tests were taken at different times of day, by the client's own clock; midnight is no border.

    >>> at_another_time(time(7), time(10)), at_another_time(time(23, 30), time(0, 30))
    (True, False)
    """
    apart = abs((first.hour - second.hour) * 60 + first.minute - second.minute)
    return timedelta(minutes=min(apart, 24 * 60 - apart)) > ANOTHER_TIME
