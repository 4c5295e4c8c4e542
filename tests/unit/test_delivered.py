"""Dose by week: minutes for one side, of what came and of what was done, worked out by hand."""

from __future__ import annotations

from plans.charts.doses import Dose
from plans.checkin import CheckIn, Completion
from plans.delivered import Handed, by_week
from plans.movements import Muscle
from plans.programme import Day
from plans.reading import read_programme
from tests.texts import HEAD

DONE, NONE = CheckIn(completion=Completion.DONE), CheckIn(completion=Completion.NONE)
HALF, LESS = (CheckIn(completion=Completion.PART, half=half) for half in (True, False))


def day(item: str) -> Day:
    return read_programme(f"{HEAD}  - {{session: {{blocks: [{{items: [{{{item}}}]}}]}}}}\n").day(1)


TWO = day("movement: reach, sets: 2-3, hold: 60, side: each")
"""Two to three minutes of holding for each side."""
ONE = day("movement: reach, hold: 60, side: each")
SWAY = day("movement: sway, reps: 8")


def test_minutes_are_for_one_side_and_from_least_to_most() -> None:
    assert by_week([Handed(0, TWO, TWO, DONE)], Muscle.HAMSTRINGS, 1) == (Dose(2.0, 2.0, 3.0),)
    assert by_week([Handed(0, TWO, TWO, DONE)], Muscle.CALVES, 1) == (Dose(0.0, 0.0, 0.0),)


def test_a_lighter_version_counts_as_it_was_handed_out_beside_what_was_asked_for() -> None:
    assert by_week([Handed(0, TWO, ONE, DONE)], Muscle.HAMSTRINGS, 1) == (Dose(1.0, 2.0, 3.0),)


def test_parts_count_in_part_and_what_was_left_out_or_not_answered_not_at_all() -> None:
    week = [Handed(0, ONE, ONE, said) for said in (DONE, HALF, LESS, NONE, CheckIn())]
    assert by_week(week, Muscle.HAMSTRINGS, 1) == (Dose(1.75, 5.0, 5.0),)


def test_weeks_stay_apart_and_moving_is_no_holding() -> None:
    found = by_week(
        [Handed(0, ONE, ONE, DONE), Handed(2, TWO, TWO, NONE), Handed(2, SWAY, SWAY, DONE)], Muscle.HAMSTRINGS, 3
    )
    assert found == (Dose(1.0, 1.0, 1.0), Dose(0.0, 0.0, 0.0), Dose(0.0, 2.0, 3.0))
