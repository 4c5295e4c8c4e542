"""Easing: a lighter day is never more than the day."""

from __future__ import annotations

from dataclasses import replace
from importlib.resources import files
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plans.dose import items, minutes, work_seconds
from plans.easing import eased, hold_floor
from plans.movements import Movement, Variation, library
from plans.programme import Block, BuildUp, Day, Dose, Item, LastHold, Link, Load, Session, Sides, Span
from plans.reading import read_programme
from tests.samples import programme, session

SAMPLE = read_programme(files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8"))


def parts(day: Day) -> list[tuple[int, Item]]:
    return [(block.rounds.high, item) for block, item in items(day.session)]


def numbers(item: Item) -> list[int]:
    dose = item.dose
    spans = (dose.reps, dose.hold, dose.flow, dose.steps, dose.breaths)
    ends = [end for span in spans if isinstance(span, Span) for end in (span.low, span.high)]
    last = dose.last_hold.seconds if dose.last_hold else 0
    return [item.sets.high, *ends, *dose.holds, last, dose.relax or 0]


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


spans = st.none() | st.tuples(st.integers(1, 90), st.integers(0, 30)).map(lambda ends: Span(ends[0], sum(ends)))
seconds = st.none() | st.integers(1, 300)
doses = st.builds(
    Dose,
    reps=spans,
    hold=spans,
    holds=st.lists(st.integers(1, 300), max_size=4).map(tuple),
    squeeze=seconds,
    contract=seconds,
    relax=seconds,
    last_hold=st.none() | st.integers(1, 300).map(LastHold),
    flow=spans,
    steps=spans,
)
turns = st.integers(1, 20).flatmap(lambda low: st.integers(low, 20).map(lambda high: Span(low, high)))
written = st.builds(
    Item,
    movement=st.sampled_from(sorted(library().values(), key=lambda movement: movement.key)),
    dose=doses,
    sets=turns,
    side=st.sampled_from(Sides),
    load=st.none() | st.just(Load(4, "4 kg")),
)
blocks = st.builds(Block, items=st.lists(written, min_size=1, max_size=3).map(tuple), rounds=turns)
days = st.lists(blocks, min_size=1, max_size=3).map(lambda found: Day(1, session=Session(tuple(found))))


@settings(deadline=None)
@given(days, st.integers(5, 40))
def test_no_dose_and_no_floor_ever_makes_a_level_more_than_the_one_before(day: Day, floor: int) -> None:
    for fuller, lighter in pairwise(eased(day, level, library(), hold_floor=floor) for level in (0, 1, 2)):
        for (rounds, item), (fewer, less) in zip(parts(fuller), parts(lighter), strict=True):
            assert fewer <= rounds
            assert all(a >= b for a, b in zip(numbers(item), numbers(less), strict=True))
            assert less.load is None


@pytest.mark.parametrize(("floor", "held"), [(10, [20, 15]), (30, [30, 30]), (60, [30, 30])])
def test_a_hold_of_30_s_goes_down_to_its_floor_and_no_lower(floor: int, held: list[int]) -> None:
    day = programme(session(1)).day(1)
    for level, expected in zip((1, 2), held, strict=True):
        light = parts(eased(day, level, library(), hold_floor=floor))
        assert [item.dose.hold for _rounds, item in light if item.dose.hold] == [Span(expected, expected)]


def test_a_cue_goes_with_the_movement_it_was_written_for() -> None:
    before, after = SAMPLE.day(22), eased(SAMPLE.day(22), 1, library())
    cues = {item.movement.key: item.cue for _rounds, item in parts(before) if item.cue}
    assert cues == {"rear-foot-raised-hip-flexor": "upright with a long back"}
    assert [item.cue for _rounds, item in parts(after) if item.cue] == []
    kept = [item.cue for _rounds, item in parts(eased(SAMPLE.day(4), 1, library()))]
    assert "other leg long and heavy" in kept


@pytest.mark.parametrize(("ages", "floor"), [(None, 10), (Span(40, 70), 10), (Span(65, 99), 30)])
def test_holds_of_people_of_65_and_over_stay_at_30_s(ages: Span | None, floor: int) -> None:
    """Feland et al. 2001, Phys Ther 81:1110."""
    assert hold_floor(ages) == floor


def test_a_coachs_own_easier_movement_takes_its_neighbours_place() -> None:
    plan = programme("  - session: {blocks: [{items: [{movement: far-reach, hold: 30, side: each}]}]}\n")
    light = eased(plan.day(1), 1, plan.catalogue())
    assert [item.movement.key for _rounds, item in parts(light)] == ["reach"]


FULL = Dose(
    reps=Span(10, 12),
    hold=Span(30, 45),
    holds=(30, 20),
    squeeze=5,
    contract=6,
    relax=22,
    last_hold=LastHold(45, cue="breathe"),
    flow=Span(60, 90),
    steps=Span(20, 30),
    breaths=Span(6, 8),
)


@pytest.mark.parametrize(
    ("level", "floor", "dose"),
    [
        (
            1,
            10,
            Dose(
                reps=Span(7, 9),
                hold=Span(20, 30),
                holds=(20, 15),
                squeeze=5,
                contract=6,
                relax=15,
                last_hold=LastHold(30, cue="breathe"),
                flow=Span(45, 65),
                steps=Span(15, 22),
                breaths=Span(4, 6),
            ),
        ),
        (
            2,
            10,
            Dose(
                reps=Span(5, 6),
                hold=Span(15, 20),
                holds=(15, 10),
                squeeze=5,
                contract=6,
                relax=10,
                last_hold=LastHold(20, cue="breathe"),
                flow=Span(30, 45),
                steps=Span(10, 15),
                breaths=Span(3, 4),
            ),
        ),
        (
            2,
            35,
            Dose(
                reps=Span(5, 6),
                hold=Span(30, 35),
                holds=(30, 20),
                squeeze=5,
                contract=6,
                relax=22,
                last_hold=LastHold(35, cue="breathe"),
                flow=Span(35, 45),
                steps=Span(10, 15),
                breaths=Span(3, 4),
            ),
        ),
    ],
)
def test_three_quarters_and_then_a_half_in_whole_steps_are_left_of_each_number(
    level: int, floor: int, dose: Dose
) -> None:
    movement = library()["standing-hamstring-hinge"]
    day = Day(1, session=Session((Block((Item(movement, FULL, sets=Span(3, 4)),), rounds=Span(4, 5)),)))
    light = eased(day, level, library(), hold_floor=floor).session
    assert light is not None
    (block,) = light.blocks
    assert block.rounds == Span(4 - level, 4 - level)
    assert block.items[0].sets == Span(3 - level, 3 - level)
    assert block.items[0].dose == dose


def test_what_is_done_once_is_still_done_once() -> None:
    item = Item(library()["standing-hamstring-hinge"], Dose(reps=Span(1, 3), steps=Span(1, 3), breaths=Span(1, 3)))
    light = eased(Day(1, session=Session((Block((item,), time=Span(65, 95)),))), 2, library()).session
    assert light is not None
    (block,) = light.blocks
    assert (block.rounds, block.time, block.items[0].sets) == (Span(1, 1), Span(30, 45), Span(1, 1))
    assert block.items[0].dose == Dose(reps=Span(1, 1), steps=Span(1, 1), breaths=Span(1, 1))


def test_each_level_is_one_movement_down_its_chain_until_the_chain_or_the_library_ends() -> None:
    keys = ("standing-hamstring-hinge", "doorway-hamstring", "supine-hamstring-strap")
    top, middle, last = (library()[key] for key in keys)
    chain = {
        movement.key: movement
        for movement in (
            top.model_copy(update={"easier": middle.key}),
            middle.model_copy(update={"easier": last.key}),
            last.model_copy(update={"easier": None}),
        )
    }
    day = Day(1, session=Session((Block((Item(chain[top.key], FULL, meanwhile=chain[middle.key]),)),)))

    def both(level: int, known: dict[str, Movement]) -> tuple[str, str | None]:
        ((_rounds, item),) = parts(eased(day, level, known))
        return item.movement.key, item.meanwhile.key if item.meanwhile else None

    assert both(1, chain) == (middle.key, last.key)
    assert both(2, chain) == (last.key, last.key)
    without_the_last = {key: movement for key, movement in chain.items() if key != last.key}
    assert both(2, without_the_last) == (middle.key, middle.key)


def test_what_is_only_for_those_who_like_is_left_out_unless_nothing_else_is_there() -> None:
    movement = library()["standing-hamstring-hinge"]
    must, may = Item(movement, FULL), Item(movement, FULL, optional=True)

    def left(*blocks: Block) -> list[int]:
        session = eased(Day(1, session=Session(blocks)), 1, library()).session
        return [len(block.items) for block in session.blocks] if session else []

    assert left(Block((must, must, may)), Block((must, must, must), optional=True)) == [2]
    assert left(Block((may, may))) == [2]
    assert left(Block((must, may, may), optional=True)) == [1]


def test_what_a_coach_said_of_a_movement_goes_when_another_takes_its_place_and_build_up_and_load_always() -> None:
    movement = library()["standing-hamstring-hinge"]
    said = Item(
        movement.model_copy(update={"easier": None}),
        FULL,
        cue="slowly",
        stop="before the back rounds",
        variation=Variation(name="wide", how="Feet wide."),
        stance="feet wide",
        grip="overhand",
        link=Link("https://example.org/film"),
        build_up=BuildUp.RANGE,
        load=Load(4, "4 kg"),
    )
    ((_rounds, kept),) = parts(eased(Day(1, session=Session((Block((said,)),))), 1, library()))
    words = ("cue", "stop", "variation", "stance", "grip", "link")
    assert [getattr(kept, name) for name in words] == [getattr(said, name) for name in words]
    assert (kept.build_up, kept.load) == (None, None)
    replaced = Session((Block((replace(said, movement=movement),)),))
    ((_rounds, other),) = parts(eased(Day(1, session=replaced), 1, library()))
    assert other.movement.key != movement.key
    assert [getattr(other, name) for name in words] == [None] * 6
