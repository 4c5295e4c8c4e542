"""The error of a test against published tables and worked examples."""

from __future__ import annotations

import pytest

from plans.measures import MEASURES, Change, compare, mdc95, plausible, sem

LOPEZ_SEM = (
    "2.3 4.0 2.5 2.5 2.2 3.4 1.4 1.3 2.7 3.2 2.6 2.1 2.4 3.3 1.2 1.4 2.3 2.7 2.5 2.4 2.5 2.7 1.4 1.4 2.8 4.0 3.0 4.2"
)
LOPEZ_MDC = "6 11 7 7 6 9 4 4 7 9 7 6 7 9 3 4 6 7 7 7 7 7 4 4 8 11 8 12"
"""Lopez-Minarro 2009, J Sports Sci Med 8:116, table 1, all 28 cells."""


def test_the_smallest_detectable_change_is_the_printed_one_in_all_cells() -> None:
    found = [round(mdc95(float(value))) for value in LOPEZ_SEM.split()]
    assert found == [int(value) for value in LOPEZ_MDC.split()]


@pytest.mark.parametrize(
    ("error", "printed"),
    [(5.3, 14.69), (7.6, 21.07), (2.6, 7.21), (2.9, 8.04)],
    ids=["Reurink 2013", "Reurink 2013, second", "Neto 2015", "Neto 2015, second"],
)
def test_worked_examples_agree_to_two_places(error: float, printed: float) -> None:
    assert mdc95(error) == pytest.approx(printed, abs=0.005)


def test_the_standard_error_is_that_of_jacobson_and_truax() -> None:
    assert sem(7.5, 0.80) == pytest.approx(3.354, abs=5e-4)  # Jacobson & Truax 1991


@pytest.mark.parametrize(
    ("before", "after", "change"),
    [
        (12, 5, Change.GAIN),
        (12, 8, Change.INSIDE),
        (12, 7.5, Change.INSIDE),
        (-2, -7, Change.GAIN),
        (5, 12, Change.LOSS),
    ],
)
def test_fingertip_to_floor_changes_are_judged_by_its_error(before: float, after: float, change: Change) -> None:
    """Limit 4.5 cm: Perret 2001, Arch Phys Med Rehabil 82:1566; Ekedahl 2012, 93:2210."""
    assert compare(MEASURES["fingertip-to-floor"], before, after, alone=False) is change


def test_somebody_who_measures_alone_needs_half_as_much_again() -> None:
    assert compare(MEASURES["fingertip-to-floor"], 12, 5.5) is Change.INSIDE
    assert compare(MEASURES["fingertip-to-floor"], 12, 5) is Change.GAIN


def test_what_cannot_be_is_not_plausible() -> None:
    assert not plausible(MEASURES["fingertip-to-floor"], 300)
    assert plausible(MEASURES["fingertip-to-floor"], -4)
