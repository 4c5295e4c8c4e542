"""Wilson's interval against published values and a second implementation."""

from __future__ import annotations

import pytest
from statsmodels.stats.proportion import proportion_confint

from plans.adherence import wilson

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
