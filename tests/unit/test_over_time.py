"""What changes over the weeks, written once: every day gets the value of its week."""

from __future__ import annotations

import pytest

from plans.programme import Day, Item, Programme, Span
from plans.reading import ProgrammeErrors, read_programme
from tests.texts import HEAD, REST

SESSIONS = """\
sessions:
  morning:
    blocks:
      - rounds: {rounds}
        items:
          - {{movement: sway, reps: 8}}
          - {{movement: reach, side: each, {item}}}
"""


def plan(item: str, *, rounds: str = "1", head: str = HEAD, days: int = 28) -> Programme:
    text = head.replace("days:\n", SESSIONS.format(rounds=rounds, item=item) + "days:\n")
    return read_programme(text + f"  - {{session: morning, times: {days}}}\n", name="p.yaml")


def problems(item: str, *, rounds: str = "1", days: int = 28) -> list[str]:
    with pytest.raises(ProgrammeErrors) as caught:
        plan(item, rounds=rounds, days=days)
    return [str(problem) for problem in caught.value.problems]


def item_of(day: Day) -> Item:
    assert day.session is not None
    return day.session.blocks[0].items[1]


def holds(read: Programme) -> list[int]:
    return [hold.low for day in read.days if (hold := item_of(day).dose.hold) is not None]


def test_two_rounds_in_week_1_and_three_from_week_2() -> None:
    read = plan("hold: 30", rounds="{week 1: 2, week 2: 3}", days=21)
    assert [day.session.blocks[0].rounds.low for day in read.days if day.session] == [2] * 7 + [3] * 14


def test_a_value_stays_until_the_next_one_whatever_their_order_in_the_file() -> None:
    assert holds(plan("hold: {week 3: 60, week 1: 20, day 10: 45}")) == [20] * 9 + [45] * 5 + [60] * 14


def test_a_number_grows_each_week_and_stays_at_its_most() -> None:
    read = plan("hold: {start: 30, each-week: 10, at-most: 45}")
    assert holds(read) == [30] * 7 + [40] * 7 + [45] * 14


def test_growth_without_an_end_goes_on() -> None:
    read = plan("sets: {start: 1, each-week: 1}, hold: 30")
    assert [item_of(day).sets for day in read.days[::7]] == [Span(n, n) for n in (1, 2, 3, 4)]


def test_a_range_grows_at_both_ends() -> None:
    read = plan("reps: {start: 8-10, each-week: 2, at-most: 12}")
    assert [item_of(day).dose.reps for day in read.days[::7]] == [Span(8, 10), Span(10, 12), Span(12, 12), Span(12, 12)]


@pytest.mark.parametrize(
    ("load", "words"),
    [
        ("{start: 4 kg, each-week: 0.5 kg, at-most: 5 kg}", ["4 kg", "4.5 kg", "5 kg", "5 kg"]),
        ("{start: 10 lb, each-week: 5 lb}", ["10 lb", "15 lb", "20 lb", "25 lb"]),
        ("{week 1: a book, week 3: a little more}", ["a book", "a book", "a little more", "a little more"]),
    ],
)
def test_a_weight_grows_in_its_own_unit(load: str, words: list[str]) -> None:
    read = plan(f"reps: 8, load: {load}")
    assert [load.words for day in read.days[::7] for load in [item_of(day).load] if load is not None] == words


def test_a_movement_a_stance_and_a_cue_can_change() -> None:
    text = HEAD + (
        "  - session: {blocks: [{items: [{movement: {week 1: reach, week 2: far-reach}, side: each, hold: 30,"
        " stance: {week 1: feet wide, day 9: feet closer}}]}]}\n"
    )
    days = read_programme(text + "  - {as-day: 1, times: 9}\n").days
    shown = [
        (day.session.blocks[0].items[0].movement.key, day.session.blocks[0].items[0].stance)
        for day in days
        if day.session
    ]
    assert shown == [("reach", "feet wide")] * 7 + [("far-reach", "feet wide")] + [("far-reach", "feet closer")] * 2


def test_an_item_is_there_from_and_until_a_time() -> None:
    text = HEAD + (
        "  - session: {blocks: [{items: [{movement: sway, reps: 8},"
        " {movement: reach, hold: 30, side: each, from: week 2},"
        " {movement: far-reach, hold: 30, side: each, from: day 3, until: week 1}]}]}\n"
    )
    days = read_programme(text + "  - {as-day: 1, times: 7}\n").days
    counts = [[item.movement.key for item in day.session.blocks[0].items] for day in days if day.session]
    assert counts == [["sway"]] * 2 + [["sway", "far-reach"]] * 5 + [["sway", "reach"]]


def test_a_block_without_anything_left_is_left_out_and_a_day_without_any_is_a_problem() -> None:
    text = HEAD + (
        "  - session: {blocks: [{items: [{movement: sway, reps: 8}]},"
        " {until: day 1, items: [{movement: sway, reps: 4}]}]}\n"
        "  - {as-day: 1}\n"
    )
    days = read_programme(text).days
    assert [len(day.session.blocks) for day in days if day.session] == [2, 1]
    with pytest.raises(ProgrammeErrors, match="day 1, blocks: found nothing for day 2") as caught:
        read_programme(
            HEAD + "  - session: {blocks: [{until: day 1, items: [{movement: sway, reps: 4}]}]}\n  - {as-day: 1}\n"
        )
    assert len(caught.value.problems) == 1


def test_a_week_is_as_many_days_as_there_are_training_days() -> None:
    head = HEAD.replace("muscles:", "training-days: [monday, wednesday, friday]\nmuscles:")
    assert holds(plan("hold: {week 1: 30, week 2: 40}", head=head, days=6)) == [30, 30, 30, 40, 40, 40]


def test_what_begins_later_is_not_there_before() -> None:
    read = plan("hold: 30, load: {day 8: 2 kg}, effort: {week 2: 5}, sets: {week 2: 2}", days=8)
    first, last = item_of(read.days[0]), item_of(read.days[7])
    assert (first.load, first.effort, first.sets) == (None, None, Span(1, 1))
    assert last.load is not None
    assert (last.load.words, last.effort, last.sets) == ("2 kg", Span(5, 5), Span(2, 2))


@pytest.mark.parametrize(
    ("item", "message"),
    [
        ("hold: {week 2: 30}", "session morning, block 1, item 2: found on day 1 no dose, allowed: one of reps, hold"),
        ("reps: 3, contract: 6, relax: {week 2: 20}", "found on day 1 only one of contract and relax"),
        ("hold: 20, reps: {week 2: 3}, squeeze: 2", "found on day 1 last-hold or squeeze, and no reps"),
    ],
)
def test_an_item_needs_its_dose_from_its_first_day_on_and_says_so_once(item: str, message: str) -> None:
    found = problems(item)
    assert message in found[0]
    assert len(found) == 1


def test_a_movement_is_needed_from_the_first_day_on() -> None:
    text = HEAD + "  - session: {blocks: [{items: [{movement: {week 2: reach}, side: each, hold: 30}]}]}\n"
    with pytest.raises(ProgrammeErrors, match="movement: found nothing for day 1: it begins with week 2"):
        read_programme(text)
    assert read_programme(text.replace("hold: 30", "hold: 30, from: week 2}, {movement: sway, reps: 8")).days


@pytest.mark.parametrize(
    ("item", "message"),
    [
        ("hold: {weak 1: 30}", 'found the word \'weak 1\', allowed: a time such as "week 3" or "day 15"'),
        ("hold: {week 0: 30}", "found the word 'week 0'"),
        ("hold: {week 1: soon}", "hold, week 1: found 'soon', allowed: seconds like 30"),
        (
            "hold: {start: 30, each-wek: 5}",
            "found the word 'each-wek', allowed: one of start, each-week, at-most; did you mean each-week?",
        ),
        ("hold: {start: 30}", "found no 'each-week'"),
        ("hold: 30, cue: {start: far, each-week: further}", "only what has a number can grow each week"),
        ("reps: 5, load: {start: a book, each-week: 1 kg}", "only what has a number can grow each week"),
        ("hold: {}", "found an empty mapping"),
        ("hold: 30, from: later", 'found \'later\', allowed: a time such as "week 3" or "day 15"'),
    ],
)
def test_what_is_no_time_or_no_growth_is_named(item: str, message: str) -> None:
    assert any(message in problem for problem in problems(item)), problems(item)


def test_repeated_days_are_the_same_but_for_what_changes() -> None:
    text = HEAD + (
        "  - {title: Test, measure: {which: fingertip-to-floor}}\n"
        "  - {title: First, session: {blocks: [{items:"
        " [{movement: reach, side: each, hold: {week 1: 30, week 2: 45}}]}]}}\n"
        "  - {as-day: 2, title: Again, times: 4}\n"
        + REST
        + "  - as-days: 2-7\n  - measure: {which: fingertip-to-floor}\n"
    )
    days = read_programme(text).days
    assert [day.kind for day in days] == ["measure", *["session"] * 5, "rest", *["session"] * 5, "rest", "measure"]
    assert [day.title for day in days[:13]] == ["Test", "First", *["Again"] * 4, None, "First", *["Again"] * 4, None]
    assert [item_hold(day) for day in days if day.session] == [30] * 5 + [45] * 5


def item_hold(day: Day) -> int:
    assert day.session is not None
    hold = day.session.blocks[0].items[0].dose.hold
    assert hold is not None
    return hold.low


@pytest.mark.parametrize(
    ("last", "message"),
    [
        (
            "  - as-days: 1-9\n",
            "day 4, as-days: found 1-9, allowed: earlier days, the smaller number first; before it there are 1 to 3",
        ),
        ("  - as-days: 3-2\n", "day 4, as-days: found 3-2"),
        ("  - as-days: some\n", "allowed: a range of earlier days, such as 1-7"),
        ("  - as-day: 3\n", "day 4, as-day: found 3, allowed: the number of an earlier day that has a session"),
        ("  - session: mornin\n", "day 4, session: found 'mornin', allowed: a session"),
        ("  - {rest: Walk., times: 399}\n", "found more than 400 days"),
        ("  - {measure: {which: back-scratch}, times: 2}\n", "a measure is taken on one day: leave out times"),
    ],
)
def test_a_repetition_that_has_nothing_to_repeat_is_named(last: str, message: str) -> None:
    first = "  - session: {blocks: [{items: [{movement: sway, reps: 8}]}]}\n  - {as-day: 1}\n"
    with pytest.raises(ProgrammeErrors) as caught:
        read_programme(HEAD + first + REST + last)
    assert any(message in str(problem) for problem in caught.value.problems), caught.value


def test_a_day_is_named_by_its_number_when_an_entry_before_it_stands_for_several() -> None:
    first = "  - {session: {blocks: [{items: [{movement: sway, reps: 8}]}]}, times: 5}\n  - as-days: 1-5\n"
    with pytest.raises(ProgrammeErrors, match="day 11, block 1, item 1"):
        read_programme(HEAD + first + "  - session: {blocks: [{items: [{movement: sway, resp: 8}]}]}\n")


def test_a_session_that_no_day_has_is_named() -> None:
    text = HEAD.replace("days:\n", SESSIONS.format(rounds=1, item="hold: 30") + "days:\n")
    with pytest.raises(ProgrammeErrors, match="session morning: found 'morning', which no day has"):
        read_programme(text + REST)
