"""The Kaplan-Meier curve against worked examples and a second implementation."""

from __future__ import annotations

import math
import random

import pytest
from statsmodels.duration.survfunc import SurvfuncRight

from plans.survival import Stay, kaplan_meier


def stays(text: str) -> list[Stay]:
    """Times as they are printed; a plus is somebody who was still there."""
    return [Stay(int(word.rstrip("+")), not word.endswith("+")) for word in text.split()]


BEWICK = stays("1 1 4 5 6+ 9 9+ 22")
"""Bewick 2004, Crit Care 8:389."""
SIX_MP = stays("6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+")
"""Freireich 1963, Blood 21:699: weeks of remission under 6-MP."""


def test_both_published_curves_come_out() -> None:
    assert [round(step.share, 3) for step in kaplan_meier(BEWICK).steps] == [0.75, 0.625, 0.5, 0.333, 0]
    shares = [round(step.share, 3) for step in kaplan_meier(SIX_MP).steps]
    assert shares == [0.857, 0.807, 0.753, 0.690, 0.627, 0.538, 0.448]


def test_the_intervals_are_those_that_statistics_programs_print_for_it() -> None:
    """Values from memory: the log(-log) intervals that Stata's `sts list` prints for these data."""
    printed = [
        (0.6197, 0.9516),
        (0.5631, 0.9228),
        (0.5032, 0.8894),
        (0.4316, 0.8491),
        (0.3675, 0.8049),
        (0.2678, 0.7468),
        (0.1881, 0.6801),
    ]
    assert [(round(step.low, 4), round(step.high, 4)) for step in kaplan_meier(SIX_MP).steps] == printed


def test_a_second_implementation_agrees_on_random_stays() -> None:
    chance = random.Random(1958)
    for _ in range(200):
        many, last = chance.randint(2, 60), chance.choice([5, 20, 100])
        found = [Stay(chance.randint(1, last), chance.random() < 0.6) for _ in range(many)]
        if not any(stay.left for stay in found):
            continue
        curve = kaplan_meier(found)
        second = SurvfuncRight([stay.time for stay in found], [int(stay.left) for stay in found])
        steps = {step.time: step for step in curve.steps}
        for time, share, error in zip(second.surv_times, second.surv_prob, second.surv_prob_se, strict=True):
            if int(time) not in steps:
                continue  # a time at which nobody left
            step = steps[int(time)]
            assert step.share == pytest.approx(share)
            if 0 < share < 1:
                spread = 1.959963984540054 * error / abs(share * math.log(share))
                assert step.low == pytest.approx(math.exp(math.log(share) * math.exp(spread)))
                assert step.high == pytest.approx(math.exp(math.log(share) * math.exp(-spread)))


def test_intervals_hold_the_truth_nearly_as_often_as_they_say() -> None:
    """A tenth leaves at each of ten times, and some are only looked at for a while; 40 people, 1,000 groups."""
    chance = random.Random(40)
    held = looked = 0
    for _ in range(1000):
        found = []
        for _person in range(40):
            left = next((time for time in range(1, 11) if chance.random() < 0.1), 99)
            seen = chance.choice([4, 8, 10])
            found.append(Stay(min(left, seen), left <= seen))
        step = next((step for step in kaplan_meier(found).steps if step.time == 4), None)
        if step is not None:
            looked += 1
            held += step.low <= 0.9**4 <= step.high
    assert 0.93 < held / looked < 0.98
