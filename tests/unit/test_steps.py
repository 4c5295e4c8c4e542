"""A session one step after the other."""

from __future__ import annotations

import pytest

from plans.programme import Day
from plans.steps import LONGEST, MOST, steps_of
from tests.samples import REST, programme, session
from tests.unit.test_sample_programmes import SAMPLES

SESSION_DAYS = [(name, day) for name, plan in SAMPLES.items() for day in plan.days if day.session is not None]


def test_rounds_are_led_one_after_the_other_with_the_rest_between() -> None:
    steps = steps_of(programme(session(2), REST).day(1))
    named = [(step.item.movement.key if step.item else step.words, step.round) for step in steps]
    assert named == [("Walk.", 1), ("sway", 1), ("reach", 1), ("sway", 2), ("reach", 2)]


def test_a_hold_of_each_side_is_timed_left_then_right_and_a_moving_item_is_not() -> None:
    steps = steps_of(programme(session(2), REST).day(1))
    assert steps[1].holds == ()
    assert steps[2].holds == (("left", 30), ("right", 30))


def test_a_rest_day_has_no_steps() -> None:
    assert steps_of(programme(session(2), REST).day(2)) == ()


def test_what_is_above_the_lower_number_is_offered() -> None:
    more = (
        "  - session:\n      blocks:\n        - rounds: 1-2\n          items: [{movement: sway, sets: 1-2, reps: 8}]\n"
    )
    assert [(step.round, step.set, step.offered) for step in steps_of(programme(more).day(1))] == [
        (1, 1, False),
        (1, 2, True),
        (2, 1, True),
        (2, 2, True),
    ]


@pytest.mark.parametrize(("name", "day"), SESSION_DAYS, ids=lambda found: getattr(found, "number", found))
def test_every_day_of_the_samples_can_be_led(name: str, day: Day) -> None:
    steps = steps_of(day)
    assert day.session is not None
    assert {step.item.movement.key for step in steps if step.item} == {
        item.movement.key for block in day.session.blocks for item in block.items
    }, name
    assert len(steps) < MOST
    assert all(sum(seconds for _side, seconds in step.holds) <= 2 * LONGEST for step in steps)
