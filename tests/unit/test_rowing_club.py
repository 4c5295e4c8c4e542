"""The rowing club's four weeks: six steps up, and a dose that does enough and no more."""

from __future__ import annotations

import re
from dataclasses import replace
from importlib.resources import files

import pytest

from plans import lint
from plans.dose import HOLDING_KINDS, items, minutes, muscle_seconds, sets_of, stretch_once
from plans.easing import eased
from plans.heavier import is_heavier, movements_of
from plans.movements import MovementKind, library
from plans.programme import Day, Programme
from plans.reading import read_programme

DAYS = 28
RESTS = [7, 14, 21]
STEPS = [8, 11, 15, 18, 22, 25]
LIGHT = {MovementKind.DYNAMIC, MovementKind.ACTIVE, MovementKind.CONTROL}


@pytest.fixture(scope="module", name="sample")
def _sample() -> Programme:
    return read_programme(files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8"))


def sessions(programme: Programme) -> list[Day]:
    return [day for day in programme.days if day.kind == "session"]


def heavier_days(programme: Programme) -> list[int]:
    """Days heavier than the session day before them, for a client who did everything before clean."""
    found: list[int] = []
    known: set[str] = set()
    clean: list[Day] = []
    for day in sessions(programme):
        if is_heavier(day, clean, known):
            found.append(day.number)
        clean.append(day)
        known |= movements_of(day)
    return found


def test_four_weeks_have_sessions_three_rest_days_and_a_test_at_both_ends(sample: Programme) -> None:
    expected = dict.fromkeys(range(1, DAYS + 1), "session") | dict.fromkeys(RESTS, "rest") | {DAYS: "measure"}
    assert {day.number: day.kind for day in sample.days} == expected
    assert [day.number for day in sample.days if day.measure is not None] == [1, DAYS]


def test_both_tests_are_taken_alike(sample: Programme) -> None:
    first, last = sample.day(1).measure, sample.day(DAYS).measure
    assert first is not None
    assert first == last
    assert sample.measures == (first.measure,) == ("fingertip-to-floor",)


def test_exactly_six_days_are_heavier_than_what_was_last_done(sample: Programme) -> None:
    assert heavier_days(sample) == STEPS


def test_a_heavier_day_brings_at_most_one_new_movement(sample: Programme) -> None:
    known: set[str] = set(movements_of(sample.day(1)))
    new: dict[int, list[str]] = {}
    for day in sessions(sample)[1:]:
        if fresh := sorted(movements_of(day) - known):
            new[day.number] = fresh
        known |= movements_of(day)
    assert new == {
        8: ["hip-hinge-drill"],
        15: ["standing-hamstring-hinge"],
        18: ["romanian-deadlift"],
        22: ["rear-foot-raised-hip-flexor"],
    }


def test_the_weight_appears_once_the_bow_is_known_and_grows_once(sample: Programme) -> None:
    loads = {
        day.number: item.load.kilograms
        for day in sessions(sample)
        for _block, item in items(day.session)
        if item.load is not None
    }
    assert loads == {18: 2, 19: 2, 20: 2, 22: 2, 23: 2, 24: 2, 25: 3, 26: 3}


def test_each_target_gets_five_to_ten_minutes_a_week_on_each_side(sample: Programme) -> None:
    """Thomas et al. 2018, Int J Sports Med 39:243 (5 minutes a week); Ingram et al. 2025, Sports Med (10)."""
    for week in lint.weeks(sample):
        total = muscle_seconds(week, HOLDING_KINDS)
        for muscle in sample.muscles:
            for side in ("left", "right"):
                low, high = total[muscle, side]
                assert 300 <= low <= high <= 600, (week[0].number, muscle, side)


def test_no_session_gives_a_target_more_than_four_minutes(sample: Programme) -> None:
    """Ingram et al. 2025, Sports Med."""
    for day in sessions(sample):
        for muscle in sample.muscles:
            low, high = muscle_seconds([day], HOLDING_KINDS)[muscle, "left"]
            assert 60 <= low <= high <= 240, (day.number, muscle)


def test_every_static_hold_is_30_to_45_seconds_and_a_minute_in_all(sample: Programme) -> None:
    """60 s an exercise: ACSM position stand, Garber et al. 2011; 30 s = 60 s a hold: Bandy et al. 1997."""
    for day in sessions(sample):
        for block, item in items(day.session):
            if item.movement.kind is MovementKind.STATIC and item.dose.hold is not None:
                where = (day.number, item.movement.key)
                assert 30 <= item.dose.hold.low <= item.dose.hold.high <= 45, where
                assert stretch_once(item)[MovementKind.STATIC][0] * sets_of(block, item)[0] >= 60, where


def test_every_session_starts_warm_with_light_movement_and_takes_8_to_20_minutes(sample: Programme) -> None:
    for day in sessions(sample):
        assert day.session is not None
        assert day.session.warm_up, day.number
        first = next(item for _block, item in items(day.session))
        assert first.movement.kind in LIGHT, day.number
        assert minutes(day)[0] >= 8, day.number
        assert minutes(day)[1] <= 20, day.number


def test_one_sided_movements_say_their_side_and_two_sided_ones_do_not(sample: Programme) -> None:
    for day in sessions(sample):
        for _block, item in items(day.session):
            assert (item.side == "each") is item.movement.sides, (day.number, item.movement.key)


def test_the_targets_are_what_the_stretches_are_for(sample: Programme) -> None:
    stretched = {
        muscle
        for day in sessions(sample)
        for _block, item in items(day.session)
        if item.movement.kind in HOLDING_KINDS
        for muscle in item.movement.main
    }
    assert set(sample.muscles) <= stretched


def test_a_day_fits_a_phone(sample: Programme) -> None:
    assert max(len(day.text or "") for day in sample.days) <= 160
    assert max(len(list(items(day.session))) for day in sample.days) <= 7
    assert all(day.title for day in sample.days)


def test_the_checker_has_nothing_to_say(sample: Programme) -> None:
    assert [str(finding) for finding in lint.check(sample).findings] == []


@pytest.mark.parametrize("level", [1, 2])
def test_lighter_versions_need_nothing_that_the_equipment_list_does_not_have(sample: Programme, level: int) -> None:
    lighter = replace(sample, days=tuple(eased(day, level, library()) for day in sample.days))
    assert [str(finding) for finding in lint.check(lighter).findings if finding.code == "equipment"] == []


def test_a_text_holds_for_the_lighter_versions_too_and_names_no_dose(sample: Programme) -> None:
    dose_words = re.compile(r"\b\d+ ?(?:kg|s|seconds|times|rounds?|minutes?)\b", re.IGNORECASE)
    assert [day.number for day in sessions(sample) if dose_words.search(day.text or "")] == []
