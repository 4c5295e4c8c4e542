"""Red flags: found by level, denied by a "no", left alone in idioms and movement names, doubted when hypothetical."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.checkin import Flag
from plans.redflags import SIGNS, find_flag
from plans.replies import read_reply

EMERGENCY = {
    "saddle": "numb between my legs",
    "bladder": "I lost control of my bladder",
    "chest": "pressure in my chest",
    "breath": "I can't breathe",
    "faint": "I passed out",
    "heart": "my heart skipped beats",
    "stroke": "one side of my face is drooping",
}
SAME_DAY = {
    "calf": "my left calf is swollen and warm",
    "pop": "heard a pop in my knee",
    "bruise": "a bruise on my thigh",
    "swelling": "my ankle is swollen",
    "weight-bearing": "can't put any weight on it",
    "gives-way": "my knee gave way",
}
CLINICIAN = {
    "nerve": "tingling in my foot",
    "weakness": "my leg feels weak",
    "dizzy": "felt dizzy",
    "night-pain": "the pain wakes me up at night",
    "fever": "fever and my hip hurts",
    "weight-loss": "weight loss and back pain",
}
ALL = [
    (level, *pair)
    for level, table in zip(Flag, (CLINICIAN, SAME_DAY, EMERGENCY), strict=True)
    for pair in table.items()
]


@pytest.mark.parametrize(("level", "sign", "text"), ALL)
def test_each_sign_is_found_at_its_level(level: Flag, sign: str, text: str) -> None:
    found = find_flag(text)
    assert found is not None
    assert (found.level, found.sign) == (level, sign)
    assert found.sure is (sign != "nerve")


def test_every_sign_of_the_table_has_an_example_here() -> None:
    assert {sign.key for sign in SIGNS} == {sign for _, sign, _ in ALL}


@pytest.mark.parametrize(
    "text",
    [
        "no tingling",
        "didn't hear a pop",
        "no chest pain",
        "not numb",
        "no tingling, numbness or pops",
        "never felt dizzy",
        "without any swelling",
        "tingling? no",
        "my knee did not give way",
        "no problems with tingling or dizziness",
    ],
)
def test_a_denied_sign_is_no_flag(text: str) -> None:
    assert find_flag(text) is None


@pytest.mark.parametrize(
    "text",
    [
        "no pain, tingling in my foot",
        "no pain but my chest hurts",
        "no my foot is numb",
        "not just sore, it is swollen",
        "I didn't finish because my foot went numb",
        "no pop but a big bruise",
    ],
)
def test_a_no_does_not_reach_past_its_own_thing(text: str) -> None:
    assert find_flag(text) is not None


@pytest.mark.parametrize(
    "text",
    [
        "popped in a session",
        "killing it",
        "my back cracked pleasantly",
        "dead tired",
        "burning stretch feeling",
        "numb with boredom",
        "shooting for tomorrow",
        "sharp at 7",
        "this programme is killing me lol",
        "my head exploded",
        "blood, sweat and tears",
        "the chest opener was tight",
        "neck rolls and jaw release",
        "knees to chest",
        "the band snapped",
        "a stroke of luck",
        "can't stand planks",
        "in a faint hope",
    ],
)
def test_idioms_and_names_of_movements_are_no_flag(text: str) -> None:
    assert find_flag(text) is None


def test_what_somebody_else_noticed_about_the_client_is_a_flag() -> None:
    found = find_flag("my wife says the left side of my face is suddenly hanging down")
    assert found is not None
    assert (found.level, found.sure) == ("emergency", True)


@pytest.mark.parametrize(
    "text",
    [
        "last year I had chest pain",
        "the lake got swollen",
        "what if I feel a pop",
        "I might have fainted",
        "my dad had a stroke",
        "my friend Hilde fainted in her yoga class",
        "husband called ambulance chest pain",
        "a pop, maybe",
        "dizzy?",
    ],
)
def test_the_past_the_possible_and_the_question_are_asked_back(text: str) -> None:
    found = find_flag(text)
    assert found is not None
    assert found.sure is False


@pytest.mark.parametrize(
    "text", ["tingeling in my foot", "my ankle is swolen", "dizzyness", "CHEST PRESURE", "I fainetd"]
)
def test_a_flag_is_found_through_a_misspelling(text: str) -> None:
    assert find_flag(text) is not None


def test_the_gravest_of_several_signs_is_the_one_that_is_told() -> None:
    found = find_flag("tingling in my foot, a pop and chest pain")
    assert found is not None
    assert (found.level, found.words) == (Flag.EMERGENCY, "chest pain")


@given(st.sampled_from(ALL), st.sampled_from(["done. ", "Hi coach! ", "no pain. ", "all good. ", "3 sets done. "]))
def test_what_was_said_before_in_another_sentence_hides_no_flag(example: tuple[Flag, str, str], before: str) -> None:
    level, _, text = example
    found = find_flag(before + text)
    assert found is not None
    assert found.level is level


@pytest.mark.parametrize(
    "text",
    [
        "nearly fainted when the stretch ended",
        "collapsed in a heap after the hinge",
        "stabbing at the back of my knee",
        "I did hear a pop this time",
        "my knee gave way to the side",
        "everything too blurry on the left",
        "tunnel vision on the right side",
        "my heart skipped a beat when I bent down",
        "faint from hunger in the hinge",
        "burned through the calf, burning pain down the leg",
    ],
)
def test_an_idiom_does_not_hide_a_sign_that_uses_its_words(text: str) -> None:
    assert read_reply(text).red_flag is not None
