"""Curves of very few people."""

from __future__ import annotations

from plans.adherence import wilson
from plans.survival import Curve, Stay, kaplan_meier


def share(curve: Curve, time: int) -> float:
    step = curve.at(time)
    return 1.0 if step is None else step.share


def test_nobody_and_nobody_who_left_have_a_curve_without_steps() -> None:
    for stays in ([], [Stay(3, False), Stay(9, False)]):
        curve = kaplan_meier(stays)
        assert (curve.people, curve.steps) == (len(stays), ())
        assert curve.at(100) is None


def test_who_is_still_there_counts_until_then_and_is_not_lost() -> None:
    lost = kaplan_meier([Stay(1, True), Stay(2, True), Stay(3, True)])
    there = kaplan_meier([Stay(1, True), Stay(2, False), Stay(3, True)])
    assert [step.there for step in there.steps] == [3, 1]
    assert share(there, 2) > share(lost, 2)


def test_the_share_holds_from_each_time_until_the_next() -> None:
    curve = kaplan_meier([Stay(2, True), Stay(5, True), Stay(5, False), Stay(9, False)])
    assert [share(curve, time) for time in (0, 1, 2, 4, 5, 50)] == [1, 1, 0.75, 0.75, 0.5, 0.5]


def test_when_all_leave_at_once_the_interval_is_that_of_a_count() -> None:
    (step,) = kaplan_meier([Stay(4, True), Stay(4, True)]).steps
    assert (step.share, step.low, step.high) == (0, *wilson(0, 2))


def test_steps_fall_and_intervals_hold_their_share() -> None:
    curve = kaplan_meier([Stay(time % 7 + 1, time % 3 > 0) for time in range(40)])
    shares = [step.share for step in curve.steps]
    assert shares == sorted(shares, reverse=True)
    assert all(step.low <= step.share <= step.high for step in curve.steps)
