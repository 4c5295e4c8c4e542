"""Two versions of a programme compared, in words."""

from __future__ import annotations

import pytest

from bot.words.changes import changes
from plans.reading import read_programme
from tests.texts import HEAD, REST, TEST, session

OLD = HEAD + session() * 3 + REST + TEST


def compared(new: str, *, old: str = OLD) -> list[str]:
    return changes(read_programme(old), read_programme(new))


def test_the_same_content_has_no_changes_whatever_its_form() -> None:
    assert compared(OLD) == []
    assert compared("# A comment\n" + OLD.replace("days:\n", "\ndays:\n")) == []
    assert compared(HEAD + session() + "  - {as-day: 1, times: 2}\n" + REST + TEST) == []


@pytest.mark.parametrize(
    ("was", "now", "line"),
    [
        ("goal: Move with less effort.", "goal: Move.", "goal: Move with less effort. -> Move."),
        ("setting: At home.", "setting: At home.\nages: 65+", "ages: new: 65-99"),
        ("company: alone\n", "", "company: gone: alone"),
        (
            "muscles: [hamstrings]",
            "muscles: [hamstrings]\nsettings: {pain-clean: 1}",
            "pain up to which a day is clean: 2 -> 1",
        ),
        ("equipment: [mat]", "equipment: [mat, strap: towel]", "equipment: mat -> mat, strap (or towel)"),
        ("how: Reach forward.", "how: Reach.", "movement reach: how changed"),
        ("hold: 30", "hold: 45", "days 1-3: Long reach: 30 s each side -> Long reach: 45 s each side"),
        ("rounds: 2", "rounds: 3", "days 1-3: block 1: 2 rounds of these -> block 1: 3 rounds of these"),
        ("{movement: sway, reps: 8}", "{movement: fold, reps: 8}", "days 1-3: gone: Sway: 8 times"),
        (
            "warm-up: Walk.",
            "warm-up: {text: Walk., time: 3 min}",
            'days 1-3: warm-up "Walk.", 120 s -> warm-up "Walk.", 180 s',
        ),
        ("rest: Walk a little.", "rest: Sleep.", 'day 4: text "Walk a little." -> text "Sleep."'),
        (
            "{which: fingertip-to-floor}",
            "{which: back-scratch}",
            "day 5: test fingertip-to-floor, 3 trials -> test back-scratch, 3 trials",
        ),
    ],
)
def test_each_change_is_one_line_with_its_days(was: str, now: str, line: str) -> None:
    assert line in compared(OLD.replace(was, now))


def test_a_day_put_in_moves_the_others_and_changes_nothing_else() -> None:
    assert compared(HEAD + session() * 2 + REST + session() + REST + TEST) == [
        "day 3: new day: rest",
        "days 4-6: the same as days 3-5 before",
    ]
    assert compared(OLD.replace(REST, session(3) + REST)) == [
        "day 4: new day: session",
        "days 5-6: the same as days 4-5 before",
    ]


def test_a_day_that_went_is_named_as_it_was() -> None:
    assert compared(HEAD + session() * 3 + TEST) == [
        "day 4: day 4 before, rest: gone",
        "day 4: the same as day 5 before",
    ]


def test_own_movements_come_and_go() -> None:
    more = OLD.replace("movements:\n", "movements:\n  bow: {name: Bow, how: Bow., main: [hamstrings], kind: dynamic}\n")
    assert compared(more) == ["movement bow: new: Bow"]
    assert compared(OLD, old=more) == ["movement bow: gone"]
