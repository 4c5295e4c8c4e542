"""The rowing club's four weeks beyond what all samples keep: six steps up, a dose that does enough and no more."""

from __future__ import annotations

import re

from plans import lint
from plans.dose import HOLDING_KINDS, items, muscle_seconds, sets_of, stretch_once
from plans.heavier import movements_of
from plans.movements import MovementKind
from tests.unit.test_sample_programmes import SAMPLES, heavier_days, sessions

SAMPLE = SAMPLES["rowing-club"]
DAYS = 28
RESTS = [7, 14, 21]
STEPS = [8, 11, 15, 18, 22, 25]
LIGHT = {MovementKind.DYNAMIC, MovementKind.ACTIVE, MovementKind.CONTROL}


def test_four_weeks_have_sessions_three_rest_days_and_a_test_at_both_ends() -> None:
    expected = dict.fromkeys(range(1, DAYS + 1), "session") | dict.fromkeys(RESTS, "rest") | {DAYS: "measure"}
    assert {day.number: day.kind for day in SAMPLE.days} == expected
    assert [day.number for day in SAMPLE.days if day.measure is not None] == [1, DAYS]
    assert SAMPLE.measures == ("fingertip-to-floor",)


def test_a_session_has_seven_movements_at_most() -> None:
    assert max(len(list(items(day.session))) for day in SAMPLE.days) <= 7


def test_exactly_six_days_are_heavier_than_what_was_last_done() -> None:
    assert heavier_days(SAMPLE) == STEPS


def test_a_heavier_day_brings_at_most_one_new_movement() -> None:
    known: set[str] = set(movements_of(SAMPLE.day(1)))
    new: dict[int, list[str]] = {}
    for day in sessions(SAMPLE)[1:]:
        if fresh := sorted(movements_of(day) - known):
            new[day.number] = fresh
        known |= movements_of(day)
    assert new == {
        8: ["hip-hinge-drill"],
        15: ["standing-hamstring-hinge"],
        18: ["romanian-deadlift"],
        22: ["rear-foot-raised-hip-flexor"],
    }


def test_the_weight_appears_once_the_bow_is_known_and_grows_once() -> None:
    loads = {
        day.number: item.load.kilograms
        for day in sessions(SAMPLE)
        for _block, item in items(day.session)
        if item.load is not None
    }
    assert loads == {18: 2, 19: 2, 20: 2, 22: 2, 23: 2, 24: 2, 25: 3, 26: 3}


def test_each_target_gets_five_to_ten_minutes_a_week_on_each_side() -> None:
    """Thomas et al. 2018, Int J Sports Med 39:243 (5 minutes a week); Ingram et al. 2025, Sports Med (10)."""
    for week in lint.weeks(SAMPLE):
        total = muscle_seconds(week, HOLDING_KINDS)
        for muscle in SAMPLE.muscles:
            for side in ("left", "right"):
                low, high = total[muscle, side]
                assert 300 <= low <= high <= 600, (week[0].number, muscle, side)


def test_no_session_gives_a_target_more_than_four_minutes() -> None:
    """Ingram et al. 2025, Sports Med."""
    for day in sessions(SAMPLE):
        for muscle in SAMPLE.muscles:
            low, high = muscle_seconds([day], HOLDING_KINDS)[muscle, "left"]
            assert 60 <= low <= high <= 240, (day.number, muscle)


def test_every_static_hold_is_30_to_45_seconds_and_a_minute_in_all() -> None:
    """60 s an exercise: ACSM position stand, Garber et al. 2011; 30 s = 60 s a hold: Bandy et al. 1997."""
    for day in sessions(SAMPLE):
        for block, item in items(day.session):
            if item.movement.kind is MovementKind.STATIC and item.dose.hold is not None:
                where = (day.number, item.movement.key)
                assert 30 <= item.dose.hold.low <= item.dose.hold.high <= 45, where
                assert stretch_once(item)[MovementKind.STATIC][0] * sets_of(block, item)[0] >= 60, where


def test_every_session_starts_warm_with_light_movement() -> None:
    for day in sessions(SAMPLE):
        assert day.session is not None
        assert day.session.warm_up, day.number
        first = next(item for _block, item in items(day.session))
        assert first.movement.kind in LIGHT, day.number


def test_one_sided_movements_say_their_side_and_two_sided_ones_do_not() -> None:
    for day in sessions(SAMPLE):
        for _block, item in items(day.session):
            assert (item.side == "each") is item.movement.sides, (day.number, item.movement.key)


def test_the_targets_are_what_the_stretches_are_for() -> None:
    stretched = {
        muscle
        for day in sessions(SAMPLE)
        for _block, item in items(day.session)
        if item.movement.kind in HOLDING_KINDS
        for muscle in item.movement.main
    }
    assert set(SAMPLE.muscles) <= stretched


def test_a_text_holds_for_the_lighter_versions_too_and_names_no_dose() -> None:
    dose_words = re.compile(r"\b\d+ ?(?:kg|s|seconds|times|rounds?|minutes?)\b", re.IGNORECASE)
    assert [day.number for day in sessions(SAMPLE) if dose_words.search(day.text or "")] == []
