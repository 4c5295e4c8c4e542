"""What a coach says about a day has a plain place in the file; and what makes no sense there is named."""

from __future__ import annotations

import pytest

from plans.easing import eased
from plans.equipment import Thing
from plans.measures import MEASURES
from plans.movements import library
from plans.programme import BuildUp, Day, Item, LastHold, Link, Own, Programme, Sides, Span, Training
from plans.reading import ProgrammeErrors, read_programme
from tests.texts import HEAD, REST

VARIED = HEAD.replace(
    "kind: dynamic}",
    "kind: dynamic, variations: [{name: Feet apart, how: Stand wide., main: [adductors]}]}",
)


def plan(item: str, *, block: str = "", session: str = "", day: str = "", head: str = VARIED) -> Programme:
    written = f"  - {{{day}session: {{{session}blocks: [{{{block}items: [{{{item}}}]}}]}}}}\n"
    return read_programme(head + written, name="p.yaml")


def item_of(day: Day) -> Item:
    assert day.session is not None
    return day.session.blocks[0].items[0]


def read(item: str) -> Item:
    return item_of(plan(item).day(1))


def problems(item: str = "movement: sway, reps: 8", **more: str) -> list[str]:
    with pytest.raises(ProgrammeErrors) as caught:
        plan(item, **more)
    return [str(problem) for problem in caught.value.problems]


def test_a_last_hold_may_bring_its_own_equipment_effort_and_cue() -> None:
    assert read("movement: sway, reps: 8, last-hold: 20").dose.last_hold == LastHold(20)
    said = "{seconds: 20, equipment: [strap: towel], effort: 6-7, cue: breathe out}"
    item = read(f"movement: sway, reps: 8, last-hold: {said}")
    assert item.dose.last_hold == LastHold(20, (Thing("strap", ("towel",)),), Span(6, 7), "breathe out")
    assert item.things == (Thing("strap", ("towel",)),)


def test_holds_that_build_up_are_a_list_and_a_squeeze_is_in_every_repetition() -> None:
    assert read("movement: reach, hold: [10, 20, 30], side: each").dose.holds == (10, 20, 30)
    assert read("movement: sway, reps: 8, squeeze: 3").dose.squeeze == 3
    assert read("movement: sway, reps: 8, build-up: range").build_up is BuildUp.RANGE


def test_one_side_is_held_while_the_other_works() -> None:
    held = read("movement: reach, reps: 8, side: each, other-side: held")
    assert held.meanwhile is held.movement
    other = read("movement: reach, reps: 8, side: left, other-side: {movement: far-reach}")
    assert other.meanwhile is not None
    assert (other.movement.key, other.meanwhile.key, other.side) == ("reach", "far-reach", Sides.LEFT)


def test_sets_and_rounds_may_leave_a_last_helping_to_the_client() -> None:
    day = plan("movement: sway, sets: 2-3, reps: 8", block="rounds: 1-2, optional: true, ").day(1)
    assert day.session is not None
    assert (item_of(day).sets, day.session.blocks[0].rounds, day.session.blocks[0].optional) == (
        Span(2, 3),
        Span(1, 2),
        True,
    )
    light = eased(day, 1, library())
    assert light.session is not None
    assert (item_of(light).sets, light.session.blocks[0].rounds) == (Span(1, 1), Span(1, 1))


def test_a_lighter_day_leaves_out_what_is_only_for_those_who_like() -> None:
    text = (
        "  - session: {blocks: [{items: [{movement: sway, reps: 8}, {movement: reach, hold: 30, optional: true}]},"
        " {optional: true, items: [{movement: reach, hold: 30}]}]}\n"
    )
    light = eased(read_programme(HEAD + text).day(1), 1, library())
    assert light.session is not None
    assert [[item.movement.key for item in block.items] for block in light.session.blocks] == [["sway"]]


def test_a_block_may_go_round_for_a_time_with_its_own_changes_and_title() -> None:
    day = plan("movement: sway, reps: 8", block="title: Circuit, time: 5 min, change: 5, ").day(1)
    assert day.session is not None
    block = day.session.blocks[0]
    assert (block.title, block.time, block.change) == ("Circuit", Span(300, 300), 5)


@pytest.mark.parametrize(
    ("written", "kilograms", "own"),
    [
        ("4 kg", 4, None),
        ("10 lb", 4.5359237, None),
        ("as last time", None, Own.SAME),
        ("a little more than last time", None, Own.MORE),
        ("A little less", None, Own.LESS),
        ("a heavy book", None, None),
    ],
)
def test_a_load_is_a_weight_words_or_the_clients_own(written: str, kilograms: float | None, own: Own | None) -> None:
    """A pound is 0.45359237 kg (international avoirdupois pound)."""
    load = read(f"movement: fold, reps: 5, load: {written}, held: at the chest").load
    assert load is not None
    assert (load.words, load.held, load.own) == (written, "at the chest", own)
    assert load.kilograms == (None if kilograms is None else pytest.approx(kilograms))


def test_a_variation_is_one_of_the_movements_own_and_may_be_for_other_muscles() -> None:
    item = read("movement: sway, reps: 8, variation: feet apart, stance: toes out, grip: hands on hips")
    assert item.variation is not None
    assert (item.variation.name, item.main, item.stance, item.grip) == (
        "Feet apart",
        ("adductors",),
        "toes out",
        "hands on hips",
    )
    (found,) = problems("movement: sway, reps: 8, variation: feet appart")
    assert "found 'feet appart', allowed: a variation of Sway: Feet apart; or say it with stance or grip" in found
    assert found.endswith("did you mean feet apart?")
    assert "none: Long reach has no variations" in problems("movement: reach, reps: 8, variation: any")[0]


def test_days_and_items_link_into_a_recording() -> None:
    plain = plan(
        "movement: sway, reps: 8, link: 'https://example.org/a'",
        day="link: {to: 'https://example.org/b', start: '12:30'}, ",
    )
    assert plain.day(1).link == Link("https://example.org/b", "12:30")
    assert item_of(plain.day(1)).link == Link("https://example.org/a")
    assert "allowed: an address that begins with https://" in problems(day="link: 'http://example.org', ")[0]
    assert (
        "allowed: minutes and seconds, such as 12:30" in problems(day="link: {to: 'https://x.org', start: '90'}, ")[0]
    )


def test_warm_up_and_cool_down_may_say_their_time() -> None:
    day = plan("movement: sway, reps: 8", session="warm-up: {text: Walk., time: 3 min}, cool-down: Lie down., ").day(1)
    assert day.session is not None
    assert day.session.warm_up is not None
    assert day.session.cool_down is not None
    assert (day.session.warm_up.seconds, day.session.cool_down.seconds) == (180, 120)


@pytest.mark.parametrize(
    ("written", "training"),
    [("[friday, monday]", Training(2, (0, 4))), ("3", Training(3))],
)
def test_training_days_are_named_or_left_to_the_client(written: str, training: Training) -> None:
    head = HEAD.replace("muscles:", f"training-days: {written}\nmuscles:")
    read = plan("movement: sway, reps: 8", head=head)
    assert (read.training, read.week) == (training, training.count)


@pytest.mark.parametrize("written", ["[funday]", "0", "8", "[]", "true", "[monday, monday]"])
def test_training_days_that_are_none_are_named(written: str) -> None:
    head = HEAD.replace("muscles:", f"training-days: {written}\nmuscles:")
    assert "weekdays such as [monday, thursday]" in problems(head=head)[0]


def test_a_group_goes_together_on_named_days_or_daily() -> None:
    together = HEAD.replace("muscles:", "pace: together\nmuscles:")
    assert plan("movement: sway, reps: 8", head=together).pace == "together"
    loose = together.replace("muscles:", "training-days: 3\nmuscles:")
    assert "pace together needs training-days that are named" in problems(head=loose)[0]


def test_equipment_has_stand_ins() -> None:
    head = HEAD.replace("equipment: [mat]", "equipment: [mat, strap: [towel, belt], chair: stool]")
    assert plan("movement: sway, reps: 8", head=head).equipment == (
        Thing("mat"),
        Thing("strap", ("towel", "belt")),
        Thing("chair", ("stool",)),
    )


@pytest.mark.parametrize("written", ["[7: 8]", "[strap: []]", "[{a: b, c: d}]", "[[mat]]", "['']"])
def test_equipment_that_is_no_thing_is_named(written: str) -> None:
    head = HEAD.replace("equipment: [mat]", f"equipment: {written}")
    assert "strap: [towel, belt]" in problems(head=head)[0]


@pytest.mark.parametrize(
    ("item", "message"),
    [
        ("movement: reach, reps: 8, squeeze: 2, hold: [10, 20], side: each", "leave out reps"),
        ("movement: reach, hold: 30, squeeze: 2", "squeeze needs reps"),
        ("movement: reach, hold: 30, last-hold: 20", "last-hold needs reps"),
        ("movement: reach, reps: 8, other-side: held", "other-side needs a side that works"),
        ("movement: reach, reps: 8, other-side: lifted, side: each", "found 'lifted', allowed: held"),
        ("movement: sway, reps: 8, held: in both hands", "load is missing"),
        ("movement: sway, reps: 8, contract: 6", "contract and relax go together"),
        ("movement: sway, reps: 8, effort: 11", "1 to 10 of 10"),
        ("movement: sway, reps: 8, effort: about 5", "1 to 10 of 10"),
        ("movement: sway, reps: 8, sets: 21", "1 to 20, or a range like 2-3"),
        ("movement: sway, flow: 2 h", 'minutes like "2 min"'),
        ("movement: sway, flow: 61 min", "at most 60 min"),
        ("movement: sway, reps: 8, practice: maybe", "found 'maybe', allowed: true or false"),
        ("movement: sway, reps: 8, build-up: depth", "range, speed or effort"),
        ("movement: sway, reps: 8, load: 4", 'a weight with its unit like "4 kg"'),
        ("movement: sway, reps: [1, 2]", "found a list of 2"),
        ("movement: Sway, reps: 8", "a short name of small letters, digits and hyphens"),
    ],
)
def test_what_makes_no_sense_in_an_item_is_named(item: str, message: str) -> None:
    assert any(message in problem for problem in problems(item)), problems(item)


def test_what_makes_no_sense_in_a_block_or_a_day_is_named() -> None:
    assert "rounds and time cannot both say how often" in problems(block="rounds: 2, time: 5 min, ")[0]
    assert "session and rest cannot be the same day" in problems(day="rest: Walk., ")[0]
    assert "did you mean warm-up?" in problems(session="warmup: Walk., ")[0]


@pytest.mark.parametrize("key", MEASURES)
def test_a_day_can_take_every_test_that_there_is(key: str) -> None:
    programme = read_programme(HEAD + f"  - measure: {{which: {key}}}\n" + REST)
    task = programme.days[0].measure
    assert task is not None
    assert task.measure == key


def test_a_measure_must_be_one_of_the_programmes() -> None:
    head = HEAD.replace("muscles:", "measures: [back-scratch]\nmuscles:")
    with pytest.raises(
        ProgrammeErrors, match="day 1, measure, which: found 'sit-and-reach', allowed: one of the measures"
    ):
        read_programme(head + "  - measure: {which: sit-and-reach}\n" + REST)
