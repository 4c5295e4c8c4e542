"""The slope and its test against Sen's example and a second implementation; how often a trend of nothing is called."""

from __future__ import annotations

import random
from datetime import date, timedelta
from statistics import median

import pytest
from scipy.stats import kendalltau, norm, theilslopes

from plans.trends import Direction, interval, kendall, slopes, spread, trend

SEN = [(1, 9), (2, 15), (3, 19), (4, 20), (10, 45), (12, 55), (18, 78)]
"""Sen 1968, J Am Stat Assoc 63:1379, section 6."""
FIRST = date(2026, 3, 2)
LAST = FIRST + timedelta(days=27)


def test_the_published_slope_and_interval_come_out() -> None:
    between = slopes(SEN)
    assert median(between) == 4
    assert interval(between, spread([y for _t, y in SEN]), 0.93) == pytest.approx((26 / 7, 35 / 8))


def test_a_second_implementation_agrees_on_slope_and_interval_up_to_its_rounding() -> None:
    """It rounds the places of both ends, ours go outwards: at most one slope further."""
    chance = random.Random(1968)
    for _ in range(200):
        count = chance.randint(8, 28)
        times = sorted(chance.sample(range(40), count))
        values = [chance.randint(0, 10) for _t in times]
        second = theilslopes(values, times)
        between = slopes(list(zip(times, values, strict=True)))
        assert median(between) == pytest.approx(second.slope)
        low, high = interval(between, spread(values), 0.95)
        assert low is not None
        assert high is not None
        assert low <= second.low_slope
        assert second.high_slope <= high
        assert sum(1 for slope in between if low < slope < second.low_slope) <= 1
        assert sum(1 for slope in between if second.high_slope < slope < high) <= 1


def test_a_second_implementation_of_the_rank_test_agrees_up_to_the_correction_for_continuity() -> None:
    chance = random.Random(1938)
    for _ in range(100):
        values = [chance.randint(0, 4) for _ in range(chance.randint(8, 28))]
        second = kendalltau(range(len(values)), values, method="asymptotic")
        statistic = norm.isf(second.pvalue / 2)
        ours = abs(kendall(values))
        assert ours <= statistic + 1e-9
        signs = sum((y > x) - (y < x) for i, x in enumerate(values) for y in values[i + 1 :])
        if abs(signs) > 1:
            assert ours * abs(signs) / (abs(signs) - 1) == pytest.approx(statistic)


def _days(chance: random.Random, *, alike: float, left_out: float, rise: float) -> list[tuple[date, int]]:
    """Whole numbers about 3 with a spread of 1.2, each day like the one before, a share of them left out."""
    found, error = [], chance.gauss(0, 1.2)
    for day in range(28):
        if chance.random() >= left_out:
            found.append((FIRST + timedelta(days=day), min(10, max(0, round(3 + rise * day + error)))))
        error = alike * error + chance.gauss(0, 1.2 * (1 - alike**2) ** 0.5)
    return found


def _called(*, alike: float, left_out: float, rise: float) -> tuple[float, float]:
    """Shares of 500 clients that are called rising and falling."""
    chance = random.Random(28)
    found = [trend(_days(chance, alike=alike, left_out=left_out, rise=rise), LAST).direction for _ in range(500)]
    return found.count(Direction.RISING) / 500, found.count(Direction.FALLING) / 500


@pytest.mark.parametrize(("alike", "at_most"), [(0.0, 0.07), (0.3, 0.09), (0.5, 0.11), (0.7, 0.13)])
@pytest.mark.parametrize("left_out", [0.0, 0.3, 0.6])
def test_a_trend_of_nothing_is_seldom_called_one(alike: float, at_most: float, left_out: float) -> None:
    """Nominal 5 %, and 2 % for the chance of 500; days that are like their neighbours cost a little more."""
    assert sum(_called(alike=alike, left_out=left_out, rise=0)) <= at_most


def test_a_rise_of_nearly_three_points_is_mostly_found_and_never_called_a_fall() -> None:
    rising, falling = _called(alike=0.0, left_out=0.0, rise=0.1)
    assert rising > 0.8
    assert falling == 0
