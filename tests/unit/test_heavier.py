"""Heavier days: a new movement, more load, a harder neighbour, or half as much dose again."""

from __future__ import annotations

import random

import pytest

from plans.heavier import Heaviness, is_heavier, more_of, movements_of
from plans.programme import Day
from tests.samples import NEW, REST, TEST, programme, session
from tests.unit.test_sample_programmes import SAMPLES

EVERYTHING = frozenset({"sway", "reach", "far-reach", "fold"})


def day(*items: str, rounds: int = 1) -> Day:
    """A session day of these items, each written as in a file."""
    lines = "".join(f"            - {{{item}}}\n" for item in items)
    start = f"  - session:\n      warm-up: Walk.\n      blocks:\n        - rounds: {rounds}\n          items:\n"
    return programme(start + lines).day(1)


def fold(load: str | None) -> Day:
    return day("movement: fold, reps: 5" + (f", load: {load}" if load else ""))


def reach(seconds: int) -> Day:
    return day(f"movement: reach, hold: {seconds}, side: each")


def test_nothing_is_heavier_before_anything_was_done_clean() -> None:
    assert not is_heavier(reach(60), [], ())


def test_the_same_day_again_is_not_heavier() -> None:
    plan = programme(session(), session())
    assert not is_heavier(plan.day(2), [plan.day(1)], movements_of(plan.day(1)))


def test_a_movement_new_to_the_client_is_heavier_until_it_is_known() -> None:
    plan = programme(session(), NEW)
    assert is_heavier(plan.day(2), [plan.day(1)], {"sway", "reach"})
    assert not is_heavier(plan.day(2), [plan.day(2)], {"sway", "reach", "fold"})


@pytest.mark.parametrize(
    ("before", "now", "heavier"),
    [
        (None, "2 kg", True),
        ("2 kg", "2 kg", False),
        ("2 kg", "4 kg", True),
        ("4 kg", "2 kg", False),
        ("2 kg", None, False),
        ("4 kg", "5 lb", False),
        ("2 kg", "5 lb", True),
        (None, "a light book", True),
        ("a light book", "A light book", False),
        ("a light book", "a heavy book", True),
        ("2 kg", "a heavy book", True),
        ("a light book", "2 kg", True),
        ("2 kg", "as last time", False),
        ("2 kg", "a little more", True),
    ],
)
def test_more_load_is_heavier(before: str | None, now: str | None, heavier: bool) -> None:
    assert is_heavier(fold(now), [fold(before)], EVERYTHING) is heavier


def test_a_harder_neighbour_is_heavier_even_when_it_is_known() -> None:
    far = day("movement: far-reach, hold: 30, side: each")
    assert is_heavier(far, [reach(30)], EVERYTHING)
    assert not is_heavier(reach(30), [far], EVERYTHING)


@pytest.mark.parametrize(("seconds", "heavier"), [(30, False), (44, False), (45, True), (60, True)])
def test_half_as_much_again_of_one_movement_is_heavier(seconds: int, heavier: bool) -> None:
    assert is_heavier(reach(seconds), [reach(30)], EVERYTHING) is heavier


def test_many_small_additions_are_heavier_together() -> None:
    """30 s each side and 8 s of swaying, then 40 s each side and 8 + 28 s of others: 68 and 116 s."""
    before = day("movement: reach, hold: 30, side: each", "movement: sway, reps: 2")
    now = day("movement: reach, hold: 40, side: each", "movement: sway, reps: 2", "movement: fold, reps: 7")
    assert is_heavier(now, [before], EVERYTHING)


def test_one_more_round_of_two_is_half_as_much_again() -> None:
    plan = programme(session(2), session(3))
    assert is_heavier(plan.day(2), [plan.day(1)], EVERYTHING)


def test_rest_and_test_days_have_no_movements_and_are_never_heavier() -> None:
    plan = programme(session(), REST, TEST)
    for number in (2, 3):
        assert movements_of(plan.day(number)) == frozenset()
        assert not is_heavier(plan.day(number), [plan.day(1)], EVERYTHING)


def test_sessions_that_take_turns_are_not_heavier_than_each_other() -> None:
    short, long = day("movement: sway, reps: 8"), day("movement: reach, hold: 60, side: each")
    assert is_heavier(long, [short], EVERYTHING)
    assert not is_heavier(long, [long, short], EVERYTHING)
    assert is_heavier(day("movement: reach, hold: 90, side: each"), [long, short], EVERYTHING)


def test_a_weight_is_compared_with_the_last_clean_day_that_had_one() -> None:
    other = day("movement: reach, hold: 60, side: each")
    assert is_heavier(fold("4 kg"), [fold("2 kg"), other], EVERYTHING)
    assert not is_heavier(fold("4 kg"), [fold("4 kg"), other], EVERYTHING)
    assert not is_heavier(fold("4 kg"), [fold("2 kg"), fold("4 kg")], EVERYTHING)
    assert is_heavier(fold("4 kg"), [other], EVERYTHING)


@pytest.mark.parametrize("name", sorted(SAMPLES))
def test_a_programme_that_is_looked_up_answers_as_its_days_do(name: str) -> None:
    """Whatever was known and done clean: new movements and what the days say when they are compared themselves."""
    plan, chance = SAMPLES[name], random.Random(name)
    sessions = [day.number for day in plan.days if day.kind == "session"]
    heaviness = Heaviness(plan)
    for _round in range(400):
        day = chance.choice(sessions[:-1])
        known = frozenset(number for number in sessions if number <= day and chance.random() < 0.7)
        clean = tuple(number for number in sorted(known) if chance.random() < 0.6)[-14:]
        coming = plan.day(next(number for number in sessions if number > day))
        compared = [plan.day(number) for number in clean or (day,)]
        movements = set().union(*(movements_of(plan.day(number)) for number in known | {clean[-1] if clean else day}))
        expected = is_heavier(coming, compared, movements)
        assert heaviness.next_is_heavier(day, clean, known) is expected, (day, known, clean)


def test_what_is_more_is_named_as_it_is_compared() -> None:
    plan = programme(session(), NEW)
    new = more_of(plan.day(2), [plan.day(1)], {"sway", "reach"})
    assert (new.new, new.load, new.harder, new.dose, new.is_any) == (("Loaded fold",), False, False, False, True)
    assert more_of(fold("4 kg"), [fold("2 kg")], EVERYTHING).load
    assert more_of(reach(60), [reach(30)], EVERYTHING).dose
    far = day("movement: far-reach, hold: 30, side: each")
    assert more_of(far, [reach(30)], EVERYTHING).harder
    assert not more_of(plan.day(1), [plan.day(1)], EVERYTHING).is_any


def test_before_anything_is_done_clean_only_movements_are_new() -> None:
    found = more_of(fold("4 kg"), [], {"sway"})
    assert (found.new, found.load, found.dose) == (("Loaded fold",), False, False)
