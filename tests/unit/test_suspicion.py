"""The third voice: a sign that no table has is suspected, one that the words speak against is left unsure."""

from __future__ import annotations

import pytest

from plans import suspicions_en
from plans.checkin import CheckIn, Flag
from plans.redflags import SUSPECTED, find_flag
from plans.replies import read_reply
from plans.scopes import said
from plans.suspicion import LEVELS, speaks_against, suspected
from plans.talk import Ask, merged, next_ask
from plans.weighing import ANY, felt_words_of, table_of

LIKENESSES = [
    "lights went out and I was on the floor",
    "I see a shadow coming down over one eye",
    "my head went light as a feather and I nearly went over",
]


@pytest.mark.parametrize("text", LIKENESSES)
def test_words_that_go_with_signs_make_an_unsure_flag(text: str) -> None:
    flag = find_flag(text)
    assert flag is not None
    assert (flag.sign, flag.sure) == (SUSPECTED, False)
    assert read_reply(text).unsure is True


@pytest.mark.parametrize("text", LIKENESSES)
def test_a_suspicion_is_asked_back_by_the_talk(text: str) -> None:
    said_so = merged(CheckIn(), read_reply(text), find_flag(text))
    assert next_ask(said_so) is Ask.FLAG


@pytest.mark.parametrize(
    "text",
    [
        "done with everything today, nothing hurts at all",
        "no tingling, no numbness and no swelling in my knee today",
        "my dad had chest pain last night so I was at the hospital",
        "stopped half way because it hurt",
        "can I do the session with a swollen finger or not?",
    ],
)
def test_what_the_grammar_has_understood_is_not_suspected(text: str) -> None:
    flag = find_flag(text)
    assert flag is None or flag.sign != SUSPECTED


def test_a_sign_that_nearly_all_words_speak_against_is_left_unsure() -> None:
    text = (
        "session done today, no pain, all good, every exercise finished before work, then the team gave way at the end"
    )
    assert speaks_against(said(text), Flag.SAME_DAY)
    flag = find_flag(text)
    assert flag is not None
    assert flag.sure is False


def test_a_plain_sign_stays_sure() -> None:
    for text in (
        "I fainted in the kitchen this morning after the session",
        "my left calf is swollen and hot since last night",
    ):
        assert not speaks_against(said(text), Flag.SAME_DAY)
        flag = find_flag(text)
        assert flag is not None
        assert flag.sure is True


def test_an_emergency_needs_more_against_it_than_any_other_sign() -> None:
    text = "Skipped it today, I passed out!"
    assert speaks_against(said(text), Flag.SAME_DAY)
    assert not speaks_against(said(text), Flag.EMERGENCY)
    reply = read_reply(text)
    assert (reply.red_flag, reply.unsure) == (Flag.EMERGENCY, False)


def test_denied_and_harmless_words_weigh_nothing() -> None:
    assert "swelling" not in felt_words_of(said("no swelling, done"))
    assert "pride" not in felt_words_of(said("swelled with pride"))
    assert suspected(said("")) is None


def test_every_word_of_the_table_has_a_weight_for_every_level() -> None:
    table = table_of(suspicions_en.WEIGHTS)
    assert {len(weights) for weights in table.values()} == {len(LEVELS)}
    assert ANY in table
    assert set(LEVELS[1:]) == set(Flag)
