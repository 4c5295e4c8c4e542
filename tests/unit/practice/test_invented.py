"""The invented group: who is in it, and that each answers only what a person would be asked."""

from __future__ import annotations

from collections import Counter

import pytest

from bot.practice.invented import DATES, FIRST_CHAT, MOST, Life, Row, Turn, by_programme, group
from bot.practice.manners import Asked, Say, Tap
from plans.simulated import Asked as Load

LOAD = Load.of({"calf-stretch": 300, "hip-hinge": 300})
SESSION = Asked("session", 5, {value: (f"c:1:{value}", value) for value in ("all", "some", "part", "none", "odd")})


def test_a_group_has_as_many_people_as_asked_for_each_with_a_name_and_a_chat_of_their_own() -> None:
    for count in (1, 7, 30, MOST):
        found = group(count)
        assert len({one.name for one in found}) == len({one.chat for one in found}) == count
        assert min(one.chat for one in found) == FIRST_CHAT


@pytest.mark.parametrize("count", [0, -3, MOST + 1])
def test_a_group_of_nobody_or_of_more_than_there_are_names_is_refused(count: int) -> None:
    with pytest.raises(ValueError, match=f"not {count}"):
        group(count)


def test_the_same_number_gives_the_same_group() -> None:
    assert group(30) == group(30)


def test_among_thirty_every_turn_happens_to_somebody_while_the_dates_last() -> None:
    found = group(30)
    assert set(Counter(one.turn for one in found)) == set(Turn)
    assert all(0 <= one.joins_on < DATES and one.turns_on < DATES for one in found)
    assert all(len(some) >= 3 for some in by_programme(found).values())


def life(turn: Turn = Turn.NONE) -> Life:
    return Life(next(one for one in group(30) if one.turn is turn))


def test_a_session_is_felt_once_however_often_it_is_asked_about() -> None:
    one = life()
    for date in range(one.member.joins_on, DATES):
        one.wakes(date)
        first, again = (one.answers(SESSION, Row(date, LOAD, None)) for _ in range(2))
        assert first == again
        assert first is None or isinstance(first, Tap)


def test_who_falls_silent_answers_nothing_from_then_on() -> None:
    one = life(Turn.SILENT)
    for date in range(DATES):
        one.wakes(date)
        if date >= max(one.member.turns_on, one.member.joins_on):
            assert one.is_silent
            assert one.answers(SESSION, Row(date, LOAD, None)) is None
            assert one.tries("sit-and-reach") is None


def test_what_happens_to_somebody_is_said_once_and_on_its_day() -> None:
    one = life(Turn.GRAVE)
    said = []
    for date in range(DATES):
        one.wakes(date)
        said += [(date, words) for words in (one.says(), one.says()) if words is not None]
    assert said == [(one.member.turns_on, Say("tingling in my left foot since yesterday, still there"))]


@pytest.mark.parametrize("name", ["back-scratch", "sit-and-reach", "knee-to-wall", "fingertip-to-floor"])
def test_three_tries_of_a_test_are_numbers_that_the_test_can_have(name: str) -> None:
    one = life()
    one.wakes(DATES - 1)
    said = one.tries(name)
    assert said is not None
    assert len([float(part) for part in said.text.split(", ")]) == 3
