"""Movements that a client leaves out: a neighbour takes their place, or nobody does."""

from __future__ import annotations

from plans.barring import without
from plans.programme import Day
from tests.samples import REST, programme

PLAN = programme(
    "  - session: {blocks: [{items: [{movement: sway, reps: 8},"
    " {movement: far-reach, hold: 30, side: each, cue: far}]}, {items: [{movement: fold, reps: 5, load: 2 kg}]}]}\n",
    REST,
)


def keys(day: Day) -> list[list[str]]:
    return [[item.movement.key for item in block.items] for block in day.session.blocks] if day.session else []


def left(*barred: str) -> list[list[str]]:
    return keys(without(PLAN.day(1), barred, PLAN.catalogue()))


def test_nothing_barred_changes_nothing() -> None:
    assert without(PLAN.day(1), (), PLAN.catalogue()) is PLAN.day(1)
    assert left("childs-pose") == keys(PLAN.day(1))


def test_the_nearest_easier_neighbour_takes_its_place_and_the_cue_goes() -> None:
    assert left("far-reach") == [["sway", "reach"], ["fold"]]
    day = without(PLAN.day(1), ["far-reach"], PLAN.catalogue())
    assert day.session is not None
    assert [item.cue for item in day.session.blocks[0].items] == [None, None]


def test_a_movement_without_a_neighbour_is_left_out_with_its_block() -> None:
    assert left("far-reach", "reach") == [["sway"], ["fold"]]
    assert left("fold") == [["sway", "far-reach"]]


def test_a_session_of_which_nothing_remains_becomes_none() -> None:
    assert without(PLAN.day(1), ["sway", "far-reach", "reach", "fold"], PLAN.catalogue()).session is None
    assert without(PLAN.day(2), ["sway"], PLAN.catalogue()) is PLAN.day(2)
