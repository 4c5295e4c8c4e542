"""What is said of four weeks of answers."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plans.checkin import CheckIn, Place
from plans.ledger import Entry, RowKind
from plans.trends import Direction, interval, kendall, pain, slopes, spread, tightness, trend

FIRST = date(2026, 3, 2)
LAST = FIRST + timedelta(days=27)


def days(*values: int, every: int = 1) -> list[tuple[date, int]]:
    return [(FIRST + timedelta(days=every * index), value) for index, value in enumerate(values)]


def test_a_steady_rise_is_told_with_its_size_in_points() -> None:
    found = trend(days(1, 1, 2, 2, 3, 3, 4, 4, 5, 5, every=3), LAST)
    assert found.direction is Direction.RISING
    assert (found.answers, found.days) == (10, 27)
    assert found.change is not None
    assert found.low is not None
    assert found.high is not None
    assert found.change == pytest.approx(4.5)
    assert 0 < found.low < found.change <= found.high


def test_the_same_the_other_way_round_falls_as_much() -> None:
    up, down = (trend(days(*values, every=3), LAST) for values in (range(10), range(9, -1, -1)))
    assert down.direction is Direction.FALLING
    assert (up.change, up.low, up.high) == pytest.approx((-(down.change or 0), -(down.high or 0), -(down.low or 0)))


def test_from_mostly_nothing_to_mostly_one_is_a_rise_of_more_than_nothing() -> None:
    before, after = (0, 1, 0, 0, 0, 1, 0, 0, 0, 0, 0, 1, 0, 0), (1, 1, 0, 1, 1, 1, 1, 1, 0, 1, 1, 1, 0, 1)
    found = trend(days(*before, *after), LAST)
    assert (found.direction, found.low) == (Direction.RISING, 0)


def test_two_weeks_alike_after_two_weeks_alike_are_only_one_step_and_no_trend_yet() -> None:
    assert trend(days(*[0] * 14, *[1] * 14), LAST).direction is Direction.UNCLEAR


def test_one_bad_day_is_no_trend() -> None:
    assert trend(days(*[1] * 13, 9, *[1] * 14), LAST).direction is Direction.UNCLEAR


def test_always_the_same_is_no_trend_and_no_error() -> None:
    found = trend(days(*[2] * 28), LAST)
    assert (found.direction, found.change, found.low, found.high) == (Direction.UNCLEAR, 0, 0, 0)


@pytest.mark.parametrize("found", [[], days(5), days(0, 1, 2, 3, 4, 5, 6, every=3), days(*range(10))])
def test_few_answers_or_a_short_time_tell_nothing(found: list[tuple[date, int]]) -> None:
    said = trend(found, LAST)
    assert (said.direction, said.change) == (Direction.TOO_FEW, None)
    assert said.answers == len(found)


def test_what_is_older_than_four_weeks_or_later_is_left_out() -> None:
    old = [(FIRST - timedelta(days=day), 10) for day in range(1, 20)]
    later = [(LAST + timedelta(days=1), 10)]
    assert trend([*old, *days(*[1] * 28), *later], LAST) == trend(days(*[1] * 28), LAST)


def test_pain_elsewhere_is_no_pain_where_the_programme_works_and_days_without_a_word_do_not_count() -> None:
    rows = [
        Entry(on, RowKind.SESSION, day=1, checkin=CheckIn(pain=value, place=place, tightness=10 - value))
        for (on, value), place in zip(days(*range(10), every=3), [None, Place.HERE] * 5, strict=True)
    ]
    away = Entry(FIRST + timedelta(days=1), RowKind.SESSION, day=1, checkin=CheckIn(pain=10, place=Place.ELSEWHERE))
    quiet = Entry(FIRST + timedelta(days=2), RowKind.SESSION, day=1)
    assert pain([*rows, away, quiet], LAST) == trend(days(*range(10), every=3), LAST)
    assert tightness([*rows, away, quiet], LAST).direction is Direction.FALLING


def test_two_points_have_a_slope_and_no_interval() -> None:
    between = slopes([(0, 1), (2, 5)])
    assert between == [2]
    assert interval(between, spread([1, 5]), 0.95) == (None, None)


def test_days_that_are_alike_weaken_a_trend() -> None:
    values = [0, 1, 1, 2, 3, 2, 4, 5]
    assert 0 < kendall(values, alike=0.5) < kendall(values)
