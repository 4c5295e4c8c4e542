"""Dose: seconds for each muscle and side, and minutes, worked out by hand."""

from __future__ import annotations

import pytest

from plans.dose import BOTH, HOLDING_KINDS, by_kind, minutes, muscle_seconds, once, work_seconds
from plans.movements import Muscle
from plans.programme import Day, Dose, LastHold, Span
from plans.reading import read_programme
from tests.samples import HEAD, REST, programme

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
        (Dose(reps=Span(8, 8), last_hold=LastHold(20)), (52, 52)),
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
    found = muscle_seconds([day(item)], HOLDING_KINDS)
    assert [found.get((HAMSTRINGS, side), (0, 0))[0] for side in ("left", "right")] == [left, right]


def test_rounds_multiply_and_days_add_up() -> None:
    plan = programme(
        "  - session: {blocks: [{rounds: 3, items: [{movement: reach, sets: 2, hold: 30, side: each}]}]}\n",
        "  - {as-day: 1}\n",
        REST,
    )
    assert muscle_seconds([plan.day(1)], HOLDING_KINDS)[HAMSTRINGS, "left"] == (180, 180)
    assert muscle_seconds(plan.days, HOLDING_KINDS)[HAMSTRINGS, "left"] == (360, 360)


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


@pytest.mark.parametrize(
    ("dose", "seconds"),
    [
        (Dose(holds=(10, 20, 30)), (60, 60)),  # one after the other
        (Dose(reps=Span(8, 8), squeeze=3), (56, 56)),  # 8 x (4 + 3)
        (Dose(reps=Span(3, 3), hold=Span(10, 10), squeeze=2), (36, 36)),  # 3 x (10 + 2)
    ],
)
def test_holds_in_turn_and_squeezes_take_their_seconds(dose: Dose, seconds: tuple[int, int]) -> None:
    assert once(dose) == seconds


def test_a_movement_says_how_long_its_repetition_takes() -> None:
    assert once(Dose(reps=Span(10, 10)), rep_seconds=1) == (10, 10)


def kinds_of(item: str, **more: str) -> dict[tuple[str, str], tuple[int, int]]:
    """Seconds for the hamstrings by side and kind."""
    return {(side, kind): s for (m, side, kind), s in by_kind(day(item, **more)).items() if m is HAMSTRINGS}


def test_kinds_are_kept_apart_and_the_last_hold_of_moving_work_is_static() -> None:
    found = kinds_of("movement: sway, reps: 8, last-hold: 20")
    assert found == {(side, kind): s for side in BOTH for kind, s in (("dynamic", (32, 32)), ("static", (20, 20)))}


def test_contract_and_relax_and_a_load_make_their_own_kind() -> None:
    assert set(kinds_of("movement: reach, reps: 2, contract: 6, relax: 20, side: each")) == {
        (side, "contract-relax") for side in BOTH
    }
    assert kinds_of("movement: reach, hold: 30, side: left, load: 2 kg") == {("left", "loaded"): (30, 30)}


def test_the_side_that_is_held_meanwhile_is_stretched_as_long_as_the_other_works() -> None:
    """10 repetitions of 4 s on the right, and the left held for these 40 s."""
    found = kinds_of("movement: sway, reps: 10, side: right, other-side: {movement: reach}")
    assert found == {("right", "dynamic"): (40, 40), ("left", "static"): (40, 40)}
    both = kinds_of("movement: sway, reps: 10, side: each, other-side: {movement: reach}")
    assert both == {(side, kind): (40, 40) for side in BOTH for kind in ("dynamic", "static")}


def test_a_movement_may_be_for_other_muscles_on_the_side_that_does_not_lead() -> None:
    head = HEAD.replace(
        "main: [hamstrings], kind: dynamic", "main: [hamstrings], other-side: [hip-flexors], kind: static"
    )
    left = read_programme(head + "  - session: {blocks: [{items: [{movement: sway, hold: 30, side: left}]}]}\n").day(1)
    assert {(m, side) for m, side, _kind in by_kind(left)} == {(HAMSTRINGS, "left"), (Muscle.HIP_FLEXORS, "right")}
    held = head + "  - session: {blocks: [{items: [{movement: sway, hold: 30, side: left, other-side: held}]}]}\n"
    assert {(m, side) for m, side, _kind in by_kind(read_programme(held).day(1))} == {
        (HAMSTRINGS, "left"),
        (HAMSTRINGS, "right"),
    }


def test_ranges_of_sets_and_rounds_and_what_is_for_who_likes_give_a_range() -> None:
    item = "movement: reach, sets: 2-3, hold: 30, side: each"
    assert kinds_of(item, block="rounds: 1-2, ")["left", "static"] == (60, 180)
    assert kinds_of(item + ", optional: true")["left", "static"] == (0, 90)
    assert kinds_of(item, block="optional: true, ")["left", "static"] == (0, 90)


def test_a_timed_block_goes_round_as_often_as_fits() -> None:
    """One round is 2 x (30 + 15) = 90 s; into 5 minutes fit 3, into 60 s none, and one is done all the same."""
    item = "movement: reach, hold: 30, side: each"
    assert kinds_of(item, block="time: 5 min, ")["left", "static"] == (90, 90)
    assert kinds_of(item, block="time: 60, ")["left", "static"] == (30, 30)
    assert minutes(day(item, block="time: 5 min, ")) == (5, 5)
