"""A day for somebody with less time: within the minutes, nothing longer, and what matters most is left."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.checkin import CheckIn, Completion, Why
from plans.dose import items, minutes, session_seconds
from plans.programme import Day, Programme
from plans.shortening import counted, shortened
from tests.samples import programme
from tests.unit.test_sample_programmes import SAMPLES

SESSIONS = [(plan, day) for plan in SAMPLES.values() for day in plan.days if day.session is not None]
ONE = st.sampled_from(SESSIONS)


def count(day: Day) -> int:
    return sum(1 for _ in items(day.session))


@given(ONE, st.integers(1, 40))
def test_a_shortened_day_is_within_its_minutes_or_has_one_item_left(one: tuple[Programme, Day], most: int) -> None:
    plan, day = one
    short = shortened(day, most, plan.muscles)
    assert short.session is not None
    assert day.session is not None
    assert minutes(short)[1] <= most or count(short) == 1
    assert (short == day) is (minutes(day)[1] <= most)
    assert short.session.warm_up == day.session.warm_up
    assert {item.movement.key for _b, item in items(short.session)} <= {i.movement.key for _b, i in items(day.session)}


@given(ONE, st.integers(1, 40), st.integers(1, 40))
def test_less_time_never_brings_more(one: tuple[Programme, Day], first: int, second: int) -> None:
    plan, day = one
    less, more = (shortened(day, most, plan.muscles) for most in sorted((first, second)))
    assert session_seconds(less)[1] <= session_seconds(more)[1] <= session_seconds(day)[1]


@pytest.mark.parametrize("name", sorted(SAMPLES))
def test_work_for_the_target_muscles_goes_last(name: str) -> None:
    plan = SAMPLES[name]
    targets = set(plan.muscles)
    for day in plan.days:
        if day.session is None or not any(targets & set(item.movement.main) for _b, item in items(day.session)):
            continue
        short = shortened(day, 1, plan.muscles)
        assert count(short) == 1
        assert any(targets & set(item.movement.main) for _b, item in items(short.session)), day.number


def test_five_minutes_of_a_day_by_hand() -> None:
    """Day 8 of the rowing club, 15 minutes: what is not for hamstrings or hip flexors goes, then a round."""
    plan = SAMPLES["rowing-club"]
    kept = [item.movement.key for _b, item in items(shortened(plan.day(8), 5, plan.muscles).session)]
    assert set(kept) <= {"supine-hamstring-strap", "half-kneeling-hip-flexor", "hip-hinge-drill", "leg-swings"}
    assert kept


def test_a_short_version_that_is_done_is_a_part_left_off_for_time() -> None:
    plan = SAMPLES["rowing-club"]
    day, done = plan.day(8), CheckIn(completion=Completion.DONE, pain=1)
    few, most = (counted(done, day, shortened(day, n, plan.muscles)) for n in (5, 13))
    assert (few.completion, few.why, few.half, few.pain) == (Completion.PART, Why.TIME, False, 1)
    assert most.half is True
    assert counted(done, day, day) == done
    none = CheckIn(completion=Completion.NONE)
    assert counted(none, day, shortened(day, 5, plan.muscles)) == none


def by_hand(blocks: str) -> Programme:
    return programme(f"  - session: {{blocks: [{blocks}]}}\n")


def test_sets_are_left_off_where_there_are_no_rounds() -> None:
    plan = by_hand("{items: [{movement: reach, sets: 4, hold: 60, side: each}, {movement: fold, sets: 2, reps: 5}]}")
    for most, sets in ((8, [3, 2]), (6, [2, 2]), (4, [1, 1])):
        assert [item.sets.high for _b, item in items(shortened(plan.day(1), most, plan.muscles).session)] == sets


def test_a_block_of_minutes_is_cut_by_minutes_down_to_one() -> None:
    plan = by_hand("{time: 10 min, items: [{movement: sway, reps: 8}, {movement: reach, hold: 30, side: each}]}")
    assert [block.time.high for block, _i in items(shortened(plan.day(1), 6, plan.muscles).session) if block.time] == [
        360,
        360,
    ]
    assert minutes(shortened(plan.day(1), 1, plan.muscles))[1] <= 1


def test_what_is_only_for_those_who_like_goes_first() -> None:
    plan = by_hand(
        "{items: [{movement: reach, hold: 60, side: each}]}, {optional: true, items: [{movement: fold, reps: 20}]}"
    )
    day = plan.day(1)
    short = shortened(day, minutes(day)[1] - 1, plan.muscles)
    assert [item.movement.key for _b, item in items(short.session)] == ["reach"]
