"""A day as one client's body and home allow it: a neighbour takes a movement's place, or nobody does."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from plans.areas import loads
from plans.cautions import Caution
from plans.checkin import Area
from plans.easing import OLDER_HOLD_FLOOR
from plans.fitting import Fit, fitted, stands, things
from plans.programme import Day, Programme
from tests.samples import REST, programme
from tests.unit.test_sample_programmes import SAMPLES

PLAN = programme(
    "  - session: {blocks: [{items: [{movement: sway, reps: 8},"
    " {movement: far-reach, hold: 30, side: each, cue: far}]}, {items: [{movement: fold, reps: 5, load: 2 kg}]}]}\n",
    REST,
)


def keys(day: Day) -> list[list[str]]:
    return [[item.movement.key for item in block.items] for block in day.session.blocks] if day.session else []


def left(*barred: str) -> list[list[str]]:
    return keys(fitted(PLAN.day(1), 0, Fit(barred), PLAN.catalogue()))


def test_nothing_barred_changes_nothing() -> None:
    assert fitted(PLAN.day(1), 0, Fit(), PLAN.catalogue()) is PLAN.day(1)
    assert left("childs-pose") == keys(PLAN.day(1))


def test_the_nearest_easier_neighbour_takes_its_place_and_the_cue_goes() -> None:
    assert left("far-reach") == [["sway", "reach"], ["fold"]]
    day = fitted(PLAN.day(1), 0, Fit(["far-reach"]), PLAN.catalogue())
    assert day.session is not None
    assert [item.cue for item in day.session.blocks[0].items] == [None, None]


def test_a_movement_without_a_neighbour_is_left_out_with_its_block() -> None:
    assert left("far-reach", "reach") == [["sway"], ["fold"]]
    assert left("fold") == [["sway", "far-reach"]]


def test_a_session_of_which_nothing_remains_becomes_none() -> None:
    assert fitted(PLAN.day(1), 0, Fit(["sway", "far-reach", "reach", "fold"]), PLAN.catalogue()).session is None
    assert fitted(PLAN.day(2), 0, Fit(["sway"]), PLAN.catalogue()) is PLAN.day(2)


def sample_days() -> Iterator[tuple[Programme, Day]]:
    for found in SAMPLES.values():
        yield from ((found, day) for day in found.days if day.session is not None)


@pytest.mark.parametrize("area", [area for area in Area if area is not Area.OTHER])
def test_nothing_that_loads_a_hurting_area_stays(area: Area) -> None:
    for plan, day in sample_days():
        for level in (0, 1, 2):
            found = fitted(day, level, Fit(spares=area), plan.catalogue())
            kept = [item.movement for block in (found.session.blocks if found.session else ()) for item in block.items]
            assert not [movement.key for movement in kept if loads(movement, area)]


def test_very_loose_joints_get_control_or_easier_movements() -> None:
    swapped = 0
    for plan, day in sample_days():
        found = fitted(day, 0, Fit(loose=True), plan.catalogue())
        kept = [item.movement for block in (found.session.blocks if found.session else ()) for item in block.items]
        assert not [movement.key for movement in kept if Caution.LOOSE_JOINTS in movement.cautions]
        swapped += keys(found) != keys(day)
    assert swapped


def test_without_a_thing_its_movements_get_a_neighbour_that_needs_none() -> None:
    missed = 0
    for plan, day in sample_days():
        for thing in things(day):
            found = fitted(day, 0, Fit(lacks=[thing.name]), plan.catalogue())
            assert thing.name not in {other.name for other in things(found)}
            missed += 1
    assert missed > 20


def test_at_65_and_over_no_hold_is_eased_under_30_seconds() -> None:
    changed = 0
    for plan, day in sample_days():
        written, younger, older = (
            [item.dose.hold.low if item.dose.hold else 0 for block in found.session.blocks for item in block.items]
            for found in (
                fitted(day, n, Fit(older=old), plan.catalogue()) for n, old in ((0, False), (2, False), (2, True))
            )
            if found.session is not None
        )
        changed += younger != older
        assert all(hold >= OLDER_HOLD_FLOOR or hold in written for hold in older)
    assert changed


def test_standing_work_is_known_from_how_it_is_described() -> None:
    rowing = SAMPLES["rowing-club"]
    assert any(stands(day) for day in rowing.days)
    assert not stands(PLAN.day(2))
