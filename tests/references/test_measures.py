"""The error of a test against published tables and worked examples."""

from __future__ import annotations

from datetime import time

import pytest

from plans.measures import MEASURES, Change, at_another_time, compare, counted, mdc95, plausible

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


@pytest.mark.parametrize(
    ("key", "better", "error", "lowest", "highest"),
    [
        ("fingertip-to-floor", -1, 4.5, -30, 80),
        ("sit-and-reach", 1, 4.0, -40, 80),
        ("chair-sit-and-reach", 1, 7.1, -50, 40),
        ("straight-leg-raise", 1, 7.0, 10, 150),
        ("active-knee-extension", -1, 8.0, 0, 90),
        ("knee-to-wall", 1, 1.9, 0, 30),
        ("back-scratch", 1, 5.5, -60, 30),
    ],
)
def test_each_test_has_its_direction_its_error_and_its_bounds(
    key: str, better: int, error: float, lowest: float, highest: float
) -> None:
    """The errors are those of the sources that each test names; the bounds are our own choice."""
    measure = MEASURES[key]
    for limit, alone in ((error, False), (error * 1.5, True)):
        assert compare(measure, 0, better * limit, alone=alone) is Change.INSIDE
        assert compare(measure, 0, better * (limit + 0.01), alone=alone) is Change.GAIN
        assert compare(measure, 0, -better * limit, alone=alone) is Change.INSIDE
        assert compare(measure, 0, -better * (limit + 0.01), alone=alone) is Change.LOSS
    assert compare(measure, 10, 10 + better * (error + 0.01), alone=False) is Change.GAIN
    assert compare(measure, 10, 10 + better * (error - 0.01), alone=False) is Change.INSIDE
    assert plausible(measure, lowest)
    assert plausible(measure, highest)
    assert not plausible(measure, lowest - 0.1)
    assert not plausible(measure, highest + 0.1)


@pytest.mark.parametrize(
    ("key", "tries", "result"),
    [
        ("fingertip-to-floor", [12, 10], 10),
        ("sit-and-reach", [12, 10], 12),
        ("chair-sit-and-reach", [9, 8, 3, 4], 4),
        ("chair-sit-and-reach", [9, 8], 9),
        ("straight-leg-raise", [70, 75], 75),
        ("active-knee-extension", [30, 25], 25),
        ("knee-to-wall", [8, 9, 13], 10),
        ("back-scratch", [-4, -6], -4),
    ],
)
def test_the_best_try_counts_or_the_mean_and_practice_does_not(key: str, tries: list[float], result: float) -> None:
    assert counted(MEASURES[key], tries) == result


def test_no_try_at_all_comes_to_nothing() -> None:
    with pytest.raises(ValueError, match=r"^a test needs a try$"):
        counted(MEASURES["knee-to-wall"], [])


@pytest.mark.parametrize(
    ("first", "second", "another"),
    [
        (time(7), time(9), False),
        (time(7), time(9, 1), True),
        (time(9, 1), time(7), True),
        (time(23), time(1), False),
        (time(23), time(1, 1), True),
        (time(0), time(12), True),
    ],
)
def test_more_than_two_hours_apart_on_the_clock_is_another_time_of_day(
    first: time, second: time, another: bool
) -> None:
    assert at_another_time(first, second) is another
