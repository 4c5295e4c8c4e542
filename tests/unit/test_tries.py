"""Tries of a test as people type them, and units."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.measures import MEASURES, Counts, counted
from plans.tries import Try, tries_in
from plans.units import CM_AN_INCH, INCHES, Units, kept, unit_in, value_in


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("12", [12]),
        ("-3.5", [-3.5]),
        ("−2", [-2]),
        ("minus 4", [-4]),
        ("plus 2 cm", [2]),
        ("12,5", [12.5]),
        ("12, 13", [12, 13]),
        ("12 13 12.5", [12, 13, 12.5]),
        ("110 mm", [11]),
        ("5 in", [12.7]),
        ('5"', [12.7]),
        ("45°", [45]),
        ("12cm and then 13cm.", [12, 13]),
    ],
)
def test_numbers_with_or_without_a_unit_are_tries(text: str, values: list[float]) -> None:
    assert [one.value for one in tries_in(text, "cm")] == pytest.approx(values)


@pytest.mark.parametrize(
    "text",
    ["", "done 3", "12 times", "3 x 12", "11/10", "7:15", "12 or so", "pain 3", "12e3", "1234", "12 " * 40],
)
def test_anything_else_is_none(text: str) -> None:
    assert tries_in(text, "cm") == ()


def test_a_side_holds_until_the_next_one() -> None:
    assert tries_in("left 8, 9 right: 10", "cm") == (Try(8, "left"), Try(9, "left"), Try(10, "right"))


def test_a_number_without_a_unit_is_in_the_persons_own() -> None:
    assert tries_in("5", INCHES) == (Try(12.7),)
    assert tries_in("5 cm", INCHES) == (Try(5.0),)


@given(st.lists(st.integers(-300, 900).map(lambda tenths: tenths / 10), min_size=1, max_size=8))
def test_what_is_written_plainly_is_read_back(values: list[float]) -> None:
    assert [one.value for one in tries_in("; ".join(f"{value} cm" for value in values), "cm")] == values


@given(st.integers(-400, 600).map(lambda tenths: tenths / 10))
def test_an_inch_is_2_54_centimetres_there_and_back(inches: float) -> None:
    centimetres = kept(inches, INCHES)
    assert centimetres == pytest.approx(inches * CM_AN_INCH, abs=0.005)
    assert value_in(centimetres, "cm", Units.INCH) == inches


def test_degrees_are_the_same_for_everybody() -> None:
    assert unit_in("degrees", Units.INCH) == "degrees"
    assert value_in(72.04, "degrees", Units.INCH) == 72.0


@given(st.lists(st.integers(0, 30), min_size=1, max_size=6), st.sampled_from(sorted(MEASURES)))
def test_what_counts_is_among_the_tries_or_their_mean(tries: list[int], key: str) -> None:
    measure = MEASURES[key]
    found = counted(measure, [float(one) for one in tries])
    assert min(tries) <= found <= max(tries)
    if measure.counts is Counts.BEST and len(tries) > measure.practice:
        real = tries[measure.practice :]
        assert found == (min(real) if measure.lower_is_better else max(real))


def test_practice_tries_do_not_count_where_real_ones_follow() -> None:
    chair = MEASURES["chair-sit-and-reach"]
    assert counted(chair, [20.0, 20.0, 3.0, 5.0]) == 5.0
    with pytest.raises(ValueError, match="needs a try"):
        counted(chair, [])
