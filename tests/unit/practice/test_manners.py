"""Invented clients: what they take for a question, and what they do about it."""

from __future__ import annotations

import html
from typing import Any

import pytest

from bot.practice.manners import CITY, Manner, Say, Scene, Tap, asked, next_act
from bot.words import words
from bot.words.checkin import first_buttons
from bot.words.message import Rows

WORDS = words("en")
ROW: dict[str, Any] = {"test": None, "tests": []}


def message(number: int, *rows: list[tuple[str, str]], text: str = "", by: str = "bot") -> dict[str, Any]:
    buttons = [[{"label": label, "data": data} for label, data in row] for row in rows]
    return {"id": number, "from": by, "text": text, "buttons": buttons}


def of(number: int, rows: Rows) -> dict[str, Any]:
    return message(number, *([(str(button.label), str(button.data)) for button in row] for row in rows))


def scene(*messages: dict[str, Any], dates: int = 1, row: dict[str, Any] = ROW, done: tuple[Any, ...] = ()) -> Scene:
    return Scene(messages, {"rows": [ROW] * (dates - 1) + [row] if dates else []}, done)


SESSION = of(7, first_buttons(WORDS, 3))
PAIN = message(7, [(str(n), f"c:3:pain:{n}") for n in range(1, 11)])
MORNING = message(9, [("Settled", "m:4:settled"), ("Same", "m:4:same"), ("Worse", "m:4:worse")])
NOTED = message(7, [("Change this answer", "c:3:fix")])


def test_the_five_buttons_of_a_session_are_one_question() -> None:
    found = asked([SESSION])
    assert found is not None
    assert (found.name, set(found.buttons)) == ("session", {"all", "some", "part", "none"})


def test_an_answered_day_leaves_nothing_open_not_even_what_is_older() -> None:
    assert asked([of(5, first_buttons(WORDS, 2)), NOTED]) is None
    assert asked([message(1, text="Hello")]) is None


def test_a_tidy_client_taps_that_all_is_done() -> None:
    assert next_act(Manner.TIDY, scene(SESSION)) == Tap(7, "c:3:all", "All done, no pain")


def test_a_tidy_client_types_the_number_of_a_test_before_the_session() -> None:
    open_test = {"test": "fingertip-to-floor", "tests": []}
    assert next_act(Manner.TIDY, scene(SESSION, row=open_test)) == Say("14, 14, 14")
    taken = {"test": "fingertip-to-floor", "tests": ["fingertip to floor 14 cm"]}
    assert next_act(Manner.TIDY, scene(SESSION, row=taken)) == Tap(7, "c:3:all", "All done, no pain")


def test_a_sore_client_tells_of_pain_that_the_rules_act_on() -> None:
    assert next_act(Manner.SORE, scene(SESSION)) == Tap(7, "c:3:some", "Done, some pain")
    assert next_act(Manner.SORE, scene(PAIN)) == Tap(7, "c:3:pain:4", "4")
    assert next_act(Manner.SORE, scene(MORNING, dates=3)) == Tap(9, "m:4:same", "Same")


def test_a_chaotic_client_taps_what_is_old_and_then_types() -> None:
    old = of(5, first_buttons(WORDS, 2))
    first = next_act(Manner.CHAOTIC, scene(old, SESSION, PAIN, dates=1))
    assert first == Tap(5, "c:2:all", "All done, no pain")
    then = next_act(Manner.CHAOTIC, scene(old, SESSION, dates=1, done=(first,)))
    assert isinstance(then, Say)


@pytest.mark.parametrize("manner", Manner)
def test_nobody_stops_before_the_city_is_typed(manner: Manner) -> None:
    question = message(4, text=html.unescape(str(WORDS.say("joining.zone"))))
    assert next_act(manner, scene(question, dates=0)) == Say(CITY)


def test_who_has_answered_an_old_day_asks_for_todays() -> None:
    old = Tap(7, "c:3:all", "All done, no pain")
    assert next_act(Manner.TIDY, scene(SESSION, done=(old,))) == Say("/today")
    assert next_act(Manner.TIDY, scene(SESSION, done=(old, Say("/today")))) == old


@pytest.mark.parametrize("manner", Manner)
def test_nobody_goes_on_for_ever(manner: Manner) -> None:
    same = Tap(7, "c:3:all", "All done, no pain")
    assert next_act(manner, scene(SESSION, done=(same, same, same))) is None


@pytest.mark.parametrize("manner", Manner)
def test_where_nothing_is_open_only_the_chaotic_client_speaks(manner: Manner) -> None:
    act = next_act(manner, scene(NOTED))
    assert isinstance(act, Say) if manner is Manner.CHAOTIC else act is None
