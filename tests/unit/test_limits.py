"""Which movements an answer about the body bars, so that no day of a programme brings one to that client."""

from __future__ import annotations

import pytest

from plans.cautions import Caution
from plans.dose import items
from plans.fitting import Fit, fitted
from plans.limits import OF_EVERYBODY, asked_of, barred_by
from plans.movements import Movement, easier_than
from plans.programme import Day
from plans.reading import read_programme
from tests.samples import HEAD, REST, SAMPLES, programme, sample

ASKED = [caution for caution in Caution if caution not in OF_EVERYBODY]


def movements_of(day: Day) -> list[Movement]:
    here = [item for _block, item in items(day.session)]
    return [item.movement for item in here] + [item.meanwhile for item in here if item.meanwhile is not None]


@pytest.mark.parametrize("name", SAMPLES)
def test_only_what_the_programmes_movements_ask_for_is_asked(name: str) -> None:
    plan = sample(name)
    met = {caution for day in plan.days for movement in movements_of(day) for caution in movement.cautions}
    easier = {key for day in plan.days for m in movements_of(day) for key in easier_than(m.key, plan.catalogue())}
    met |= {caution for key in easier for caution in plan.catalogue()[key].cautions}
    assert set(asked_of(plan)) == met - OF_EVERYBODY
    assert len(asked_of(plan)) <= 8, "a list that is still read"


def test_a_programme_without_cautions_asks_nothing() -> None:
    plan = programme(REST, REST)
    assert asked_of(plan) == ()
    assert barred_by(plan, ASKED) == []


@pytest.mark.parametrize("caution", ASKED)
@pytest.mark.parametrize("loose", [False, True])
def test_no_day_brings_what_was_barred_eased_or_not(caution: Caution, loose: bool) -> None:
    for plan in map(sample, SAMPLES):
        fit = Fit(barred=barred_by(plan, [caution], loose=loose), loose=loose)
        for day in plan.days:
            for level in (0, 1, 2):
                kept = movements_of(fitted(day, level, fit, plan.catalogue()))
                assert not [movement.key for movement in kept if caution in movement.cautions]


def test_what_is_barred_is_what_can_be_met_and_nothing_else() -> None:
    plan = sample("rowing-club")
    barred = barred_by(plan, [Caution.KNEELING])
    catalogue = plan.catalogue()
    assert all(Caution.KNEELING in catalogue[key].cautions for key in barred)
    kneeling = {key for key, movement in catalogue.items() if Caution.KNEELING in movement.cautions}
    assert set(barred) < kneeling, "of a whole library only what this programme leads to"
    here = {movement.key for day in plan.days for movement in movements_of(day)}
    assert here & kneeling <= set(barred)


def test_an_easier_neighbour_with_the_same_caution_is_barred_too_and_one_without_takes_the_place() -> None:
    head = HEAD.replace("harder: far-reach}", "harder: far-reach, cautions: [kneeling]}").replace(
        "easier: reach}", "easier: reach, cautions: [kneeling, back-bend]}"
    )
    plan = read_programme(head + "  - session: {blocks: [{items: [{movement: far-reach, hold: 30, side: each}]}]}\n")
    assert asked_of(plan) == (Caution.KNEELING, Caution.BACK_BEND)
    assert barred_by(plan, [Caution.KNEELING]) == ["far-reach", "reach"]
    assert barred_by(plan, [Caution.BACK_BEND]) == ["far-reach"]
    fit = Fit(barred=barred_by(plan, [Caution.BACK_BEND]))
    assert [movement.key for movement in movements_of(fitted(plan.day(1), 0, fit, plan.catalogue()))] == ["reach"]
