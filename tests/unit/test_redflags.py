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


@pytest.mark.parametrize(
    ("text", "level"),
    [
        ("like a live wire from my bum to my heel", Flag.CLINICIAN),
        ("it went down my leg like lightning", Flag.CLINICIAN),
        ("my hand has no force, I lose grip of the lids", Flag.CLINICIAN),
        ("less strength in both legs than before", Flag.CLINICIAN),
        ("my foot is asleep and will not wake up", Flag.CLINICIAN),
        ("as if in gloves, both hands", Flag.CLINICIAN),
        ("the skin on my shin has gone dead", Flag.CLINICIAN),
        ("my head was turnning round in the roll down", Flag.CLINICIAN),
        ("loosing wieght and the back hurts more and more", Flag.CLINICIAN),
        ("lost 6 kilos and my hip hurts", Flag.CLINICIAN),
        ("feber and back pain", Flag.CLINICIAN),
        ("woken at 2 and again at 4 by pain in my hip", Flag.CLINICIAN),
        ("prikling in the left hand", Flag.CLINICIAN),
        ("not able to step on the left foot", Flag.SAME_DAY),
        ("very thick the ankle", Flag.SAME_DAY),
        ("felt like an elastic band snapped behind my ankle", Flag.SAME_DAY),
        ("the ankle is the size of a melon", Flag.SAME_DAY),
        ("it felt like somebody sat down on my chest", Flag.EMERGENCY),
        ("I can't feel the toilet paper when I wipe", Flag.EMERGENCY),
        ("the poop comes without me noticing", Flag.EMERGENCY),
        ("suddenly my left arm is without power", Flag.EMERGENCY),
        ("I speak like a drunk", Flag.EMERGENCY),
        ("I see everything double", Flag.EMERGENCY),
        ("half the screen is missing when I look at my phone", Flag.EMERGENCY),
        ("giddiness when I get up", Flag.CLINICIAN),
        ("the left leg sleeps me since this morning", Flag.CLINICIAN),
        ("my foot is without feeling since an hour", Flag.CLINICIAN),
        ("my knee is now big", Flag.SAME_DAY),
        ("it is hot and bigger as the other calf", Flag.SAME_DAY),
        ("the knee is inflamed since the session", Flag.SAME_DAY),
        ("my knee fails when I go down", Flag.SAME_DAY),
        ("my speech went all slurry", Flag.EMERGENCY),
        ("everything went double for a minute", Flag.EMERGENCY),
        ("saw black when I stood up", Flag.EMERGENCY),
        ("I cannot take air", Flag.EMERGENCY),
    ],
)
def test_a_sign_is_found_in_other_words_for_it(text: str, level: Flag) -> None:
    found = find_flag(text)
    assert found is not None
    assert found.level is level


@pytest.mark.parametrize(
    "text",
    [
        "popped the kids at nan's",
        "the balloon popped",
        "heard a pop, it was just the toaster",
        "did it in a snap",
        "Snap! Me and my sister both did it",
        "blackout in our street",
        "no power in the house",
        "out cold the minute my head hit the pillow",
        "had my pins and needles out, sewing curtains",
        "I cannot speak for her",
        "You asked about swelling. None",
        "doctor asked about numbness, I have none",
        "no pain wakes me in the night",
        "the pins and needles are not there",
        "my heart skipped a beat when she said yes",
        "brought a cake the size of a tyre",
        "my swollen ego",
        "going up the ladder",
        "stabbing at my laptop",
        "lost 6 kilos",
        "thick socks on my feet",
        "my big toe is fine",
        "my smile is huge",
        "bruised apples for lunch",
        "hit the floor running",
        "gave way to an ambulance on the road",
        "fainted at the price of olive oil",
        "did everything double",
        "burned through the session",
    ],
)
def test_what_is_surely_meant_of_something_else_is_no_flag(text: str) -> None:
    assert find_flag(text) is None
    assert read_reply(text).red_flag is None


@pytest.mark.parametrize(
    "text",
    [
        "popped my knee",
        "it popped the moment I bent",
        "I felt the band of muscle snap",
        "snap! my hamstring",
        "I had a blackout in the lunge",
        "out cold on the floor",
        "pins and needles in my hand from sewing",
        "I cannot speak for a minute, words come out wrong",
        "You asked about swelling. None of it done, the knee is swollen",
        "pain wakes me in the night",
        "my heart skipped a beat when I bent down",
        "my ankle is twice the size",
        "shooting pain going up the thigh",
        "stabbing at the back of my knee",
        "my arm has no power",
        "it shot down 3 times in my leg",
        "burning pain down my leg",
        "bruised apples for lunch and a bruise on my shin",
        "it was lights out for a few seconds",
        "my knee gave way to the side",
        "my smile is huge but my knee is big",
        "my knee popped a few times",
        "could not see straight after the roll",
        "electricity went down my leg",
        "did not sleep because of the pain",
        "bad headache, 8",
        "bad chest pain",
        "my foot then fell asleep and is still numb",
    ],
)
def test_a_harmless_turn_of_words_hides_no_sign_beside_it(text: str) -> None:
    assert read_reply(text).red_flag is not None


def test_a_number_that_rose_is_a_pain_and_no_shooting_one() -> None:
    risen, shooting = read_reply("the pain shot up to 9"), read_reply("the pain shot up my leg, 4")
    assert (risen.pain, risen.red_flag, risen.kind) == (9, Flag.SAME_DAY, None)
    assert (shooting.pain, shooting.sign) == (4, "nerve")


def test_pain_zero_is_no_pain_beside_a_sign_that_needs_one() -> None:
    assert find_flag("lost 6 kilos, pain 0") is None
    assert find_flag("lost 6 kilos, pain 4") is not None


@pytest.mark.parametrize(
    ("text", "lasts"),
    [
        ("numb since two days", True),
        ("my foot is asleep and does not wake up", True),
        ("tingling, still the same", True),
        ("numb this morning", None),
        ("the tingling did not come back", False),
        ("it is numb, has not come back", True),
    ],
)
def test_whether_a_nerve_sign_lasts(text: str, lasts: bool | None) -> None:
    found = find_flag(text)
    assert found is not None
    assert found.lasts is lasts


@pytest.mark.parametrize(("text", "language"), [("mein Herz quabbelt", "de"), ("el corazón me zurumba", "es")])
def test_the_heart_in_words_that_no_table_has_is_asked_back(text: str, language: str) -> None:
    found = find_flag(text, language=language)
    assert found is not None
    assert (found.level, found.sure) == ("emergency", False)


def test_weight_that_goes_by_itself_is_asked_back_even_without_pain() -> None:
    found = find_flag("hab 7 kilo abgnommen ohne dass i was dafür tua", language="de")
    assert found is not None
    assert (found.level, found.sign, found.sure) == ("clinician", "weight-loss", False)
