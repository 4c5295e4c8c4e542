"""Reliability of a test from repeated tries, beside a published table and a reference library."""

from __future__ import annotations

import random

import pandas as pd
import pytest
from statsmodels.formula.api import ols
from statsmodels.stats.anova import anova_lm

from plans.repeatability import repeatability

SHROUT = [[9, 2, 5, 8], [6, 1, 3, 2], [8, 4, 6, 8], [7, 1, 2, 6], [10, 5, 6, 9], [6, 2, 4, 7]]
"""Six people, four judges: Shrout & Fleiss 1979, Psychol Bull 86:420, table 2."""


def test_the_published_example_gives_its_coefficients() -> None:
    """ICC(2,1) .29 and ICC(3,1) .71: the same paper, table 4."""
    found = repeatability(SHROUT)
    assert (round(found.agreement, 2), round(found.consistency, 2)) == (0.29, 0.71)


@pytest.mark.parametrize("seed", range(5))
def test_random_groups_agree_with_a_reference_librarys_analysis_of_variance(seed: int) -> None:
    """statsmodels, two-way without interaction; coefficients from its mean squares by Shrout & Fleiss."""
    chance = random.Random(seed)
    people, tries = chance.randint(4, 30), chance.randint(2, 5)
    rows = [
        [chance.gauss(level, 2.0) + 0.5 * n for n in range(tries)]
        for level in (chance.gauss(10, 6) for _ in range(people))
    ]
    long = pd.DataFrame(
        [(p, n, value) for p, row in enumerate(rows) for n, value in enumerate(row)], columns=list("pty")
    )
    table = anova_lm(ols("y ~ C(p) + C(t)", long).fit())
    between, trial, rest = (float(table["mean_sq"][name]) for name in ("C(p)", "C(t)", "Residual"))
    found = repeatability(rows)
    assert found.error == pytest.approx(rest**0.5)
    assert found.consistency == pytest.approx((between - rest) / (between + (tries - 1) * rest))
    agreement = (between - rest) / (between + (tries - 1) * rest + tries * (trial - rest) / people)
    assert found.agreement == pytest.approx(agreement)
    assert found.smallest_change == pytest.approx(1.96 * (2 * rest) ** 0.5)


@pytest.mark.parametrize("rows", [[], [[1, 2]], [[1], [2]], [[1, 2], [3]], [[5, 5], [5, 5]]])
def test_what_cannot_tell_is_refused(rows: list[list[float]]) -> None:
    with pytest.raises(ValueError, match=r"two of each|nobody differs"):
        repeatability(rows)
