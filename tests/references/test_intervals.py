"""Wilson's interval, and Newcombe's of a difference, against published values and a second implementation."""

from __future__ import annotations

import pytest
from statsmodels.stats.proportion import confint_proportions_2indep, proportion_confint

from plans.adherence import newcombe, wilson

NEWCOMBE = [
    (81, 263, 0.2553, 0.3662),
    (15, 148, 0.0624, 0.1605),
    (0, 20, 0.0, 0.1611),
    (1, 29, 0.0061, 0.1718),
]
"""Newcombe 1998, Stat Med 17:857, table I, method 3."""


@pytest.mark.parametrize(("successes", "trials", "low", "high"), NEWCOMBE)
def test_the_interval_is_the_published_one(successes: int, trials: int, low: float, high: float) -> None:
    assert wilson(successes, trials) == pytest.approx((low, high), abs=5e-5)


def test_one_week_cannot_tell_sixty_from_ninety_percent() -> None:
    low, high = wilson(5, 7)
    assert (round(low, 3), round(high, 3)) == (0.359, 0.918)


@pytest.mark.parametrize("trials", [1, 2, 7, 28, 365])
def test_a_second_implementation_agrees_for_every_count(trials: int) -> None:
    for successes in range(trials + 1):
        second = proportion_confint(successes, trials, method="wilson")
        assert wilson(successes, trials) == pytest.approx(second, abs=1e-12)


def test_impossible_counts_are_refused() -> None:
    with pytest.raises(ValueError, match="8 of 7"):
        wilson(8, 7)


DIFFERENCES = [
    ((56, 70), (48, 80), 0.0524, 0.3339),
    ((9, 10), (3, 10), 0.1705, 0.8090),
    ((6, 7), (2, 7), 0.0582, 0.8062),
    ((5, 56), (0, 29), -0.0381, 0.1926),
    ((0, 10), (0, 20), -0.1611, 0.2775),
    ((0, 10), (0, 10), -0.2775, 0.2775),
    ((10, 10), (0, 20), 0.6791, 1.0),
    ((10, 10), (0, 10), 0.6075, 1.0),
]
"""Newcombe 1998, Stat Med 17:873, table II, method 10; the values are from memory."""


@pytest.mark.parametrize(("first", "second", "low", "high"), DIFFERENCES)
def test_the_interval_of_a_difference_is_the_published_one(
    first: tuple[int, int], second: tuple[int, int], low: float, high: float
) -> None:
    assert newcombe(first, second) == pytest.approx((low, high), abs=5e-5)


@pytest.mark.parametrize("trials", [(7, 28), (28, 28), (5, 200)])
def test_a_second_implementation_agrees_on_differences_for_every_count(trials: tuple[int, int]) -> None:
    for first in range(trials[0] + 1):
        for second in range(0, trials[1] + 1, 3):
            other = confint_proportions_2indep(first, trials[0], second, trials[1], method="newcomb", compare="diff")
            assert newcombe((first, trials[0]), (second, trials[1])) == pytest.approx(other, abs=1e-12)


def test_without_trials_a_difference_can_be_anything() -> None:
    assert newcombe((0, 0), (3, 7)) == newcombe((3, 7), (0, 0)) == (-1, 1)
