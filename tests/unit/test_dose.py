"""Dose: seconds for each muscle and side, and minutes, worked out by hand."""

from __future__ import annotations

import pytest

from plans.dose import minutes, muscle_seconds, once, week_seconds, work_seconds
from plans.movements import Muscle
from plans.programme import Day, Dose, Span
from tests.samples import REST, programme

HAMSTRINGS = Muscle.HAMSTRINGS


def day(*items: str, block: str = "", session: str = "") -> Day:
    written = ", ".join(f"{{{item}}}" for item in items)
    return programme(f"  - session: {{{session}blocks: [{{{block}items: [{written}]}}]}}\n").day(1)


@pytest.mark.parametrize(
    ("dose", "seconds"),
    [
        (Dose(hold=Span(30, 30)), (30, 30)),
        (Dose(reps=Span(3, 3), hold=Span(10, 15)), (30, 45)),
        (Dose(reps=Span(8, 10)), (32, 40)),
        (Dose(reps=Span(16, 16, total=True)), (32, 32)),
        (Dose(reps=Span(3, 3), contract=6, relax=20), (78, 78)),
        (Dose(reps=Span(8, 8), last_hold=20), (52, 52)),
        (Dose(flow=Span(60, 120)), (60, 120)),
        (Dose(steps=Span(20, 20)), (40, 40)),
        (Dose(breaths=Span(6, 8)), (30, 40)),
    ],
)
def test_one_set_on_one_side_takes_its_seconds(dose: Dose, seconds: tuple[int, int]) -> None:
    """A repetition is 4 s, a step 2 s, a breath 5 s; a count of both sides is halved."""
    assert once(dose) == seconds


@pytest.mark.parametrize(
    ("item", "left", "right"),
    [
        ("movement: reach, hold: 30, side: each", 30, 30),
        ("movement: reach, sets: 3, hold: 20-30, side: each", 60, 60),
        ("movement: reach, hold: 30, side: left", 30, 0),
        ("movement: reach, hold: 30, side: right", 0, 30),
        ("movement: reach, reps: 3, contract: 6, relax: 20, side: each", 60, 60),
        ("movement: reach, reps: 6 in total, hold: 10, side: alternate", 30, 30),
        ("movement: fold, reps: 5", 20, 20),
        ("movement: sway, reps: 8", 0, 0),
        ("movement: reach, hold: 30, side: each, practice: true", 0, 0),
    ],
)
def test_stretching_counts_for_each_muscle_and_side_by_its_lower_end(item: str, left: int, right: int) -> None:
    found = muscle_seconds(day(item))
    assert (found.get((HAMSTRINGS, "left"), 0), found.get((HAMSTRINGS, "right"), 0)) == (left, right)


def test_rounds_multiply_and_days_add_up() -> None:
    plan = programme(
        "  - session: {blocks: [{rounds: 3, items: [{movement: reach, sets: 2, hold: 30, side: each}]}]}\n",
        "  - {as-day: 1}\n",
        REST,
    )
    assert muscle_seconds(plan.day(1))[HAMSTRINGS, "left"] == 180
    assert week_seconds(plan.days)[HAMSTRINGS, "left"] == 360


def test_work_is_counted_for_each_movement_on_all_turns_by_its_upper_end() -> None:
    done = day("movement: reach, hold: 20-30, side: each", "movement: sway, reps: 8", block="rounds: 2, ")
    assert work_seconds(done) == {"reach": 120, "sway": 64}


@pytest.mark.parametrize(
    ("block", "session", "expected"),
    [
        ("", "", (2, 2)),  # 2 x (30 + 15) = 90 s
        ("rounds: 2, rest: 30, ", "", (4, 4)),  # 2 x 90 + 30 = 210 s
        ("", "warm-up: Walk., ", (4, 4)),  # 120 + 90 = 210 s
    ],
)
def test_minutes_have_changes_rests_and_the_warm_up(block: str, session: str, expected: tuple[int, int]) -> None:
    assert minutes(day("movement: reach, hold: 30, side: each", block=block, session=session)) == expected


def test_a_range_gives_a_range_of_minutes_and_rests_lie_between_sets() -> None:
    """3 sets on each side of 20 or 60 s, two changes of 15 s, two rests of 20 s: 190 and 430 s."""
    assert minutes(day("movement: reach, sets: 3, rest: 20, hold: 20-60, side: each")) == (4, 8)


def test_a_rest_day_takes_no_minutes() -> None:
    assert minutes(programme(REST).day(1)) == (0, 0)
