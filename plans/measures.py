"""Measures of flexibility: their units, their error, and an honest word on a change.

The smallest detectable change (MDC) of each comes from studies with trained testers; for somebody who measures alone
this program takes one and a half times as much, its own choice. A change of exactly the MDC is inside the error.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from math import sqrt
from types import MappingProxyType

ALONE = 1.5
"""Factor on the MDC for a client who measures without a tester (own choice, no published number)."""


class Change(StrEnum):
    """What a difference between two tests is worth."""

    GAIN = "gain"
    INSIDE = "inside"
    LOSS = "loss"


@dataclass(frozen=True, slots=True)
class Measure:
    """One test: values are in `unit`, plausible from `low` to `high`; `mdc` is for a trained tester."""

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
            "tip of the longest finger to the floor, in centimetres: 0 when you touch it."
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
        how="Sit with straight knees, feet flat against the box. Reach forward slowly along the scale; best of two.",
        source="Lopez-Minarro 2009, J Sports Sci Med 8:116",
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
            "back until the heel only just stays down. Measure from the big toe to the wall, in centimetres."
        ),
        source="Powden 2015, Man Ther 20:524",
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
            "One hand over the shoulder, the other up the back. Measure between the middle fingers, in centimetres: "
            "minus for a gap, plus when they overlap."
        ),
        source="Jones 1998; Hesseberg 2015 (4.6 cm at 90 %, 5.5 at 95 %)",
    ),
)

MEASURES: Mapping[str, Measure] = MappingProxyType({measure.key: measure for measure in _ALL})


def sem(sd: float, icc: float) -> float:
    """Standard error of measurement, SD x sqrt(1 - ICC), in the unit of the SD."""
    return sd * sqrt(1 - icc)


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


def plausible(measure: Measure, value: float) -> bool:
    """Whether a value can be true at all; what cannot is asked back, never stored."""
    return measure.low <= value <= measure.high
