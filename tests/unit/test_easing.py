"""Easing: a lighter day is never more than the day."""

from __future__ import annotations

from importlib.resources import files
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.dose import items, minutes, work_seconds
from plans.easing import eased
from plans.movements import library
from plans.programme import Day, Item, Span
from plans.reading import read_programme
from tests.samples import NEW, programme, session

SAMPLE = read_programme(files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8"))


def parts(day: Day) -> list[tuple[int, Item]]:
    return [(block.rounds, item) for block, item in items(day.session)]


def numbers(item: Item) -> list[int]:
    dose = item.dose
    spans = (dose.reps, dose.hold, dose.flow, dose.steps, dose.breaths)
    ends = [end for span in spans if isinstance(span, Span) for end in (span.low, span.high)]
    return [item.sets, *ends, dose.last_hold or 0, dose.relax or 0]


@pytest.mark.parametrize("day", SAMPLE.days, ids=lambda day: str(day.number))
def test_each_level_of_every_day_is_no_more_than_the_one_before(day: Day) -> None:
    levels = [eased(day, level, library()) for level in (0, 1, 2)]
    assert levels[0] == day
    for fuller, lighter in pairwise(levels):
        for (rounds, item), (fewer, less) in zip(parts(fuller), parts(lighter), strict=True):
            assert fewer <= rounds
            assert all(a >= b for a, b in zip(numbers(item), numbers(less), strict=True))
            assert less.load is None
        assert sum(work_seconds(lighter).values()) <= sum(work_seconds(fuller).values())
        assert minutes(lighter) <= minutes(fuller)


def test_a_session_really_gets_lighter() -> None:
    day = SAMPLE.day(18)
    assert sum(work_seconds(eased(day, 2, library())).values()) < sum(work_seconds(day).values()) / 2


def test_an_easier_neighbour_takes_a_movements_place() -> None:
    keys = [item.movement.key for _rounds, item in parts(eased(SAMPLE.day(15), 1, library()))]
    assert "supine-hamstring-strap" in keys
    assert "standing-hamstring-hinge" not in keys


def test_rest_and_test_days_stay_as_they_are() -> None:
    assert eased(SAMPLE.day(7), 2, library()) == SAMPLE.day(7)
    assert eased(SAMPLE.day(28), 2, library()) == SAMPLE.day(28)


@pytest.mark.parametrize("level", [-1, 3])
def test_another_level_is_refused(level: int) -> None:
    with pytest.raises(ValueError, match=f"ease level {level}"):
        eased(SAMPLE.day(1), level, library())


@given(st.integers(1, 12), st.sampled_from([1, 2]), st.integers(5, 40))
def test_no_floor_ever_raises_anything(rounds: int, level: int, floor: int) -> None:
    plan = programme(session(min(rounds, 20)), NEW)
    for day in plan.days:
        light = eased(day, level, library(), hold_floor=floor)
        for (before, item), (after, less) in zip(parts(day), parts(light), strict=True):
            assert after <= before
            assert all(a >= b for a, b in zip(numbers(item), numbers(less), strict=True))
