"""A test's own error in a group: only from enough people, each with as many tries as most."""

from __future__ import annotations

import random

from plans.group_error import ENOUGH, Tries, group_errors
from plans.repeatability import repeatability


def taken(people: int, tries: int = 3, measure: str = "knee-to-wall", side: str | None = "left") -> list[Tries]:
    rng = random.Random(people)
    return [Tries(measure, side, [10 + person + rng.random() for _ in range(tries)]) for person in range(people)]


def test_the_error_is_told_from_enough_people_on() -> None:
    (few,), (enough,) = group_errors(taken(ENOUGH - 1)), group_errors(taken(ENOUGH))
    assert (few.people, few.found) == (ENOUGH - 1, None)
    assert enough.found == repeatability([one.tries for one in taken(ENOUGH)])


def test_only_those_with_as_many_tries_as_most_are_counted() -> None:
    (found,) = group_errors([*taken(12, tries=3), *taken(4, tries=2), *taken(5, tries=1)])
    assert (found.people, found.found) == (12, repeatability([one.tries for one in taken(12)]))


def test_practice_tries_are_left_out_and_sides_stand_apart() -> None:
    both = [*taken(10, 4, "chair-sit-and-reach", "left"), *taken(10, 4, "chair-sit-and-reach", "right")]
    left, right = group_errors(both)
    assert (left.side, right.side) == ("left", "right")
    assert left.found is not None
    assert left.found.tries == 2


def test_where_nobody_differs_nothing_is_told() -> None:
    (found,) = group_errors([Tries("fingertip-to-floor", None, [5, 5])] * 12)
    assert (found.people, found.found) == (12, None)
    assert group_errors([]) == []
