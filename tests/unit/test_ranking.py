"""What is said of movements, by few days made by hand."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plans.checkin import CheckIn, Completion, Place
from plans.ledger import Entry, RowKind
from plans.pooling import Pooling
from plans.ranking import Followed, Outcome, Ranked, Ranking, Went, followed, ranking

FIRST = date(2026, 3, 2)
NEAR = (0, 1, 0, 0, 1, 0, 1, 1)
"""A little scatter that goes with nothing."""


def days(*sessions: str, better: str = "", by: int = 0) -> list[Followed]:
    """A session a date, its movements one letter each; the next answer is 5, less after one of `better`."""
    return [
        Followed(FIRST + timedelta(days=at), frozenset(keys), 5 + NEAR[at % 8] - by * bool(set(keys) & set(better)))
        for at, keys in enumerate(sessions)
    ]


def group(found: Ranking, movement: str) -> Ranked:
    ranked = found.of(movement)
    assert ranked is not None
    return ranked


def test_a_movement_that_goes_with_much_better_mornings_is_said_to_and_comes_first() -> None:
    found = ranking(days(*["ax", "bx", "abx", "x"] * 7, better="a", by=3))
    assert found.groups[0].movements == ("a",)
    assert group(found, "a").went is Went.BETTER
    assert group(found, "b").went is Went.UNCLEAR


def test_the_same_for_the_worse() -> None:
    found = ranking(days(*["ax", "bx", "abx", "x"] * 7, better="a", by=-3))
    assert group(found, "a").went is Went.WORSE
    assert found.groups[-1].went is Went.TOO_FEW


def test_the_difference_is_drawn_towards_none_and_its_interval_is_around_it() -> None:
    ranked = group(ranking(days(*["ax", "bx", "abx", "x"] * 7, better="a", by=2)), "a")
    assert ranked.plain is not None
    assert ranked.change is not None
    assert ranked.low is not None
    assert ranked.high is not None
    assert ranked.plain < ranked.change < 0
    assert ranked.low < ranked.change < ranked.high


def test_what_is_done_every_time_has_no_other_days() -> None:
    always = group(ranking(days(*["ax", "bx"] * 10)), "x")
    assert (always.went, always.change) == (Went.TOO_FEW, None)


@pytest.mark.parametrize("with_it", [0, 1, 4])
def test_fewer_than_five_days_on_either_side_are_too_few(with_it: int) -> None:
    found = ranking(days(*["ab"] * with_it, *["b"] * (20 - with_it), better="a", by=9))
    assert with_it == 0 or group(found, "a").went is Went.TOO_FEW
    found = ranking(days(*["b"] * with_it, *["ab"] * (20 - with_it)))
    assert group(found, "a").went is Went.TOO_FEW


def test_movements_that_are_always_or_nearly_always_done_together_stand_as_one() -> None:
    found = ranking(days(*["abc", "d"] * 5, *["ab", "d"] * 2))
    assert sorted(ranked.movements for ranked in found.groups) == [("a", "b", "c"), ("d",)]


def test_three_days_tell_movements_apart_and_say_that_they_were_mostly_together() -> None:
    found = ranking(days(*["ab", "d"] * 6, "a", "b", "a", "d"))
    assert group(found, "a").movements == ("a",)
    assert "b" in group(found, "a").beside


def test_days_with_one_and_days_with_the_other_are_one_and_the_same_fact() -> None:
    found = ranking(days(*["ab", "cd"] * 12, better="a", by=3))
    first, other = group(found, "a"), group(found, "c")
    assert first.movements == ("a", "b")
    assert (first.went, other.went) == (Went.BETTER, Went.WORSE)
    assert first.change == pytest.approx(-(other.change or 0))
    assert first.instead == ("c", "d")


def test_a_drift_over_the_weeks_is_not_credited_to_what_came_in_later() -> None:
    slowly = [
        Followed(FIRST + timedelta(days=at), frozenset("xa" if at >= 14 else "x"), 8 - at // 4 + NEAR[at % 8])
        for at in range(28)
    ]
    assert group(ranking(slowly), "a").went is Went.UNCLEAR


def test_the_order_of_days_does_not_matter_and_nothing_at_all_is_no_error() -> None:
    some = days(*["ax", "bx", "abx", "x"] * 5, better="a", by=2)
    assert ranking(some) == ranking(some[::-1])
    assert ranking([]).groups == ()


def test_mornings_that_are_all_the_same_show_no_difference() -> None:
    same = [Followed(FIRST + timedelta(days=at), frozenset("a" if at % 2 else "b"), 3) for at in range(20)]
    assert {ranked.went for ranked in ranking(same).groups} == {Went.UNCLEAR}


def entry(at: int, **said: object) -> Entry:
    return Entry(FIRST + timedelta(days=at), RowKind.SESSION, day=at + 1, checkin=CheckIn(**said))  # type: ignore[arg-type]


def test_only_sessions_done_in_full_whose_next_date_was_told_of_are_taken() -> None:
    done, part = Completion.DONE, Completion.PART
    rows = [
        entry(0, completion=done, tightness=1),
        entry(1, completion=part, tightness=2),
        entry(2, completion=done, tightness=3),
        entry(3, tightness=4),
        entry(4, completion=done),
        entry(6, completion=done, tightness=9),
    ]
    outcome, found = followed(rows, lambda row: {f"m{row.day}"})
    assert outcome is Outcome.TIGHTNESS
    assert [(day.on.day, *day.movements, day.next) for day in found] == [(2, "m1", 2), (4, "m3", 4)]


def test_pain_where_the_programme_works_is_taken_when_more_of_it_is_there() -> None:
    rows = [entry(at, completion=Completion.DONE, pain=at) for at in range(4)]
    rows.append(entry(4, completion=Completion.DONE, pain=8, place=Place.ELSEWHERE, tightness=1))
    outcome, found = followed(rows, lambda _row: {"a"})
    assert (outcome, [day.next for day in found]) == (Outcome.PAIN, [1, 2, 3])


def test_pooling_refuses_too_few_values_and_a_ratio_of_nothing() -> None:
    with pytest.raises(ValueError, match="at least four"):
        Pooling.of([[1, 0, 1]], [1, 2, 3], [0, 1, 2])
    with pytest.raises(ValueError, match="more than 0"):
        Pooling.of([[1, 0, 1, 0]], [1, 2, 3, 4], [0, 1, 2, 3]).at(0)
