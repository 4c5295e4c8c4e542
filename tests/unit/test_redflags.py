"""Red flags: found by level, denied by a "no", left alone in idioms and movement names, doubted when hypothetical."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.checkin import Flag
from plans.redflags import SIGNS, find_flag
from plans.replies import read_reply

pytestmark = pytest.mark.usefixtures("grammar_alone")

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


@pytest.mark.parametrize(
    "text",
    [
        "my knee popped back in",
        "my shoulder popped back into place",
        "my ankle popped up when I stood",
        "knee popped over to the side",
        "my hip popped out",
        "collapsed in the kitchen",
        "collapsed on the bathroom floor",
        "I collapsed at work",
        "passed out on the sofa after standing up, my wife had to shake me",
        "I passed out in bed after feeling dizzy",
        "passed out at my desk",
        "laughed it off but I couldn't breathe and my chest is tight",
        "I couldn't breathe after the second round",
        "I wet myself twice today",
        "I wet myself, not laughing now",
        "my leg went weak with the second lunge",
        "my arm is numb with pain",
        "dizzy with the roll down",
        "head spinning from the twist",
        "my foot went numb from the cold band",
        "chest is tight with every move",
        "heart racing with no reason",
        "my heart skipped a beat when I got up",
        "my heart skipped beats when I climbed the stairs",
        "blurry vision even with glasses",
        "went blind in one eye",
        "pins and needles on my left foot",
        "walking on pins and needles",
        "my knee gave way to the left",
        "leg gave way to nothing, I just fell",
        "connection between hip and leg is weak",
        "my arm is weak",
        "neck one hurt and my jaw is heavy",
        "the chest exercise gave me chest pain",
        "sharp pain in the chest one",
        "my tendon nearly snapped",
        "I nearly snapped my hamstring",
        "snapped at the back of my knee",
        "throbbing calf and it's hot",
        "electric feeling down the leg",
        "my son pushed me and my knee popped",
        "my dog pulled me over and now my ankle is swollen",
        "husband says my face is drooping",
        "my daughter found me passed out on the floor",
        "the wife noticed my speech was slurred",
        "my wife is scared, I have chest pain",
        "kids screamed when I fainted",
        "she says my left arm is weak",
        "knee swollen, my dad had the same",
        "I had chest pain years ago and it is back now",
        "had a slipped disc ages ago, now my foot is numb",
        "numb toes for years, getting worse",
        "is that swelling on my knee normal? it is twice the size",
        "my heart is galloping and out of step",
        "I fell asleep on the sofa with my arm numb and it still is",
        "couldn't speak for laughing then my mouth drooped",
        "the band snapped and hit my knee, it's swollen",
        "the band snapped back on my shin, big bruise",
        "swollen with fluid knee",
        "tingling of the left hand",
        "numb to the touch, my left thigh",
        "burning down my leg in a bad way",
        "my calf is swollen after the match",
        "heart attack feeling in my chest",
        "heart pounding and pain in my jaw, watching the match final",
        "pain in the neck since yesterday, 8",
        "can't see properly without blinking, blurred since the session",
        "felt a ping in the calf",
    ],
)
def test_a_sign_stays_one_beside_words_that_are_harmless_elsewhere(text: str) -> None:
    assert read_reply(text).red_flag is not None


@pytest.mark.parametrize(
    "text",
    [
        "it's like wearing a corset made of iron, right across my ribs",
        "somebody tied a rope round my chest and keeps pulling",
        "there's a squeezing behind my ribs that goes up to the jaw",
        "I get puffed just sitting here, can't finish a sentence",
        "my lungs won't fill",
        "my pulse is all over the shop",
        "I woke up on the bathroom tiles with no idea how I got there",
        "next thing I remember is the ceiling and my wife shouting",
        "the world went grey and my knees folded",
        "my left cheek won't move when I smile",
        "half my face slid down",
        "nothing comes out when I try to go, since yesterday",
        "the area where I sit on a saddle is like dead",
        "my calf is as hard as wood and hot",
        "the calf throbs like mad and the skin is shiny",
        "there was a noise like a cork from my knee",
        "felt like somebody kicked me in the calf but nobody was there",
        "I heard it tear",
        "it went crack and I went down",
        "my ankle looks like a grapefruit",
        "my thigh has gone all colours",
        "I can only hop, the foot won't hold me",
        "the leg won't take me",
        "my knee keeps folding like a camping chair",
        "my toes are cotton wool",
        "the outside of my thigh is dead to the touch",
        "someone is sticking needles in my sole",
        "my fingers fizz like a can of pop",
        "a current runs from my neck to my thumb",
        "it shoots like a lightning bolt into my foot",
        "burning wire down the back of my leg",
        "I keep dropping my keys with the left hand",
        "my foot slaps on the floor when I walk",
        "I can't stand on tiptoe on that side any more",
        "the pain drags me out of sleep every night",
        "no way I lie helps at night, it throbs on",
        "I'm drenched every night and the back aches",
        "belt is three holes tighter and my hip still aches",
        "shivering and hot with a stiff sore back",
        "the floor was swaying after the last one",
        "I had to hold the wall, everything was spinning",
        "saw stars when I stood up and had to sit",
    ],
)
def test_a_sign_is_found_in_a_likeness(text: str) -> None:
    assert find_flag(text) is not None


@pytest.mark.parametrize(
    "text",
    [
        "Wetting myself laughing at your instructions. Did it. 1",
        "I passed out on the sofa after work, as in slept, missed it",
        "collapsed onto the couch after but only cos I'm lazy. done. 2",
        "collapsed into bed at midnight, did it before. 0",
        "Done! popped the session in before work",
        "did it all while popping out to the shops in between",
        "my car gave way to nobody haha.. stretches done",
        "heart skipped a beat when my song came on lol. done 0",
        "Finished. My heart skipped a beat when the cat jumped on my back 😂",
        "laughed so hard I couldn't breathe when the dog joined in. session done, nothing hurts",
        "done - that playlist is electric!!",
        "my eyes went blurry from peeling onions 🧅 nothing to do with the stretches, those are done",
        "Throbbing music from next door all night but I still managed the full session",
        "all tingly with excitement, holiday tomorrow!! and yes session done",
        "so numb to this rain by now... did it indoors, full session",
        "school run ate the morning, I nearly snapped. no session",
        "Head spinning from all the paperwork, ran out of hours, nothing done",
        "Had the nerve to finish all of it 😎",
        "Paralysed by indecision which rug to use, then finished it on the carpet",
        "I heard a snap, it was the resistance band not me. Did everything, 0 pain",
        "The bulb blew and I was blind as a bat but still completed it",
        "neck-to-chest tuck was the only one i left out, pain 1",
        "the electric is out in the whole building so did it by candle, all of it, pain 1",
        "electric bike broke, walked home and ran out of time, none done",
        "gym prices are a stab in the back lol. Did all at home, pain 2",
        "Did it in the garden and saw a shooting star, pain 0",
        "pop music on, stretches done",
        "i was on pins and needles about my interview so forgot the session",
        "my internet connection is weak so the video wouldnt load, not done",
        "the heat wave is killing us, skipped",
        "My team won the cup, heart still racing with joy 🏆 full session done, pain 0",
        "will pop it in after dinner",
        "went weak at the knees when he proposed yesterday!! so no session, we partied",
        "traffic was a pain in the neck, home late, no time for it",
        "pain in the hole getting the mat out of the press but did it",
        "my boss is a pain in the neck. done, 0",
        "popped the kettle on and did it",
        "popped my head round the door, then did it all",
        "popping to the shops, will do it later",
        "just popping the dinner on then doing it",
        "my phone gave up the ghost, did it from memory",
        "wifi is weak, could not load",
        "coffee too weak to wake me, did it anyway, 0",
        "dying of boredom but did it",
        "that last plank was brutal, nearly died lol. done 2",
        "my ears popped on the plane, did the session, 0",
        "dizzy with happiness, did all",
        "shot out of the house late so skipped",
        "battery died halfway so I stopped",
        "snapped a photo of my downward dog, done",
        "stabbing at the keyboard all day, did it at night, 1",
        "crushed it, 0",
        "killed that session, pain 0",
        "smashed it. burnt my toast though",
        "sharp intake of breath at the cold floor but done, 1",
        "I'm a bit rusty and creaky, done",
        "the kids are driving me up the wall, no session",
        "my legs are on fire from that, love it, done, 0",
        "felt the burn, done, pain 0",
    ],
)
def test_an_alarming_word_with_its_harmless_evidence_is_no_flag(text: str) -> None:
    assert find_flag(text) is None
    assert read_reply(text).red_flag is None


@pytest.mark.parametrize(
    ("text", "level"),
    [
        ("Done, pain 1. The right side of my face fell asleep for an hour.", Flag.EMERGENCY),
        ("did it all, no pain, but the whole left side fell asleep", Flag.EMERGENCY),
        ("done 2 and during it everything on the left fell asleep", Flag.CLINICIAN),
        ("done 1 saw two trees where there was one", Flag.EMERGENCY),
        ("Done, 2. Tunnel vision on standing up.", Flag.EMERGENCY),
        ("done 2 but breathless at the price of moving slowly", Flag.EMERGENCY),
        ("palpitations during overtime at work, done 2", Flag.EMERGENCY),
        ("no - chest pain", Flag.EMERGENCY),
        ("no - numb between the legs", Flag.EMERGENCY),
        ("knee hot, red, fever", Flag.CLINICIAN),
        ("pain 2. Since the last stretch I can't\npee though", Flag.EMERGENCY),
        ("Did it, 2, but I still have a numb feeling\nbetween my legs.", Flag.EMERGENCY),
        ("my chest felt\ntight", Flag.EMERGENCY),
        ("I couldn't\nfeel my leg", Flag.CLINICIAN),
    ],
)
def test_what_sounds_harmless_or_is_cut_in_two_is_still_a_sign(text: str, level: Flag) -> None:
    found = find_flag(text)
    assert read_reply(text).red_flag is level
    assert found is not None
    assert found.level is level
