"""What a reply says, field by field."""

from __future__ import annotations

import subprocess
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans import words_en
from plans.checkin import Completion, Flag, Kind, Morning, Place, Side, Why
from plans.redflags import find_flag
from plans.replies import read_reply
from plans.wording import LONGEST, opened

PARTS = """
done part half no later yes pain no-pain 3 8 11 0 -1 3/10 3-4 from to left right both knee chest
hurts sore tingling numb pop popped not never or and but , . ? ! 7:30 sets min last year if maybe
stopped gone still sharp sudden swollen between legs worse the same sorry i meant out of ten 50 % 👍
😭 can't put weight on it
"""
phrases = st.lists(st.sampled_from(PARTS.split()), max_size=14).map(" ".join)


def test_done_with_a_bare_number_is_done_with_that_pain() -> None:
    reply = read_reply("done 3")
    assert (reply.completion, reply.pain, reply.unsure) == (Completion.DONE, 3, False)


def test_no_pain_is_zero_and_not_unknown() -> None:
    assert read_reply("done, no pain").pain == 0
    assert read_reply("done").pain is None


@pytest.mark.parametrize("text", ["👍", "yes", "done", "✅"])
def test_thumbs_up_or_yes_is_done(text: str) -> None:
    assert read_reply(text).completion is Completion.DONE


@pytest.mark.parametrize("text", ["no", "later", "not today", "tomorrow", "👎"])
def test_no_or_later_is_none(text: str) -> None:
    assert read_reply(text).completion is Completion.NONE


@pytest.mark.parametrize(
    "text",
    [
        "done 3 sets",
        "done day 4",
        "done at 7:30",
        "done in 5 minutes",
        "done, 5 kg",
        "done 10 reps",
        "done 3x",
        "did 80 %",
    ],
)
def test_a_pain_is_never_taken_from_a_number_of_something_else(text: str) -> None:
    assert read_reply(text).pain is None


@pytest.mark.parametrize(
    ("text", "pain"),
    [
        ("pain went from 5 to 2", 2),
        ("pain 3-4", 4),
        ("pain 3,5", 4),
        ("3 out of 10", 3),
        ("pain five", 5),
        ("pain 5, sorry, I meant 3", 3),
        ("pain was 5 now 2", 2),
        ("hurts 10/10", 10),
    ],
)
def test_the_latest_of_a_change_and_the_higher_of_a_range_is_the_pain(text: str, pain: int) -> None:
    assert read_reply(text).pain == pain


@pytest.mark.parametrize(("text", "number"), [("pain 11/10", "11/10"), ("pain -1", "-1"), ("done, pain 20", "20")])
def test_a_number_off_the_scale_is_refused_with_the_number_and_never_clamped(text: str, number: str) -> None:
    reply = read_reply(text)
    assert reply.pain is None
    assert reply.unsure
    assert reply.error == f"{number} is not on the scale from 0 to 10"


def test_pain_without_a_number_is_asked_back_and_what_was_said_is_kept() -> None:
    reply = read_reply("done but my left knee hurts")
    assert (reply.completion, reply.side, reply.body) == (Completion.DONE, Side.LEFT, "knee")
    assert (reply.pain, reply.unsure, reply.asked_back) == (None, True, "pain")


def test_a_sharp_pain_from_three_on_is_for_the_same_day() -> None:
    assert read_reply("sharp pain 3").red_flag is Flag.SAME_DAY
    assert read_reply("sharp pain 2").red_flag is None
    unknown = read_reply("sharp pain in my knee")
    assert (unknown.red_flag, unknown.unsure, unknown.asked_back) == (Flag.SAME_DAY, True, "pain")


def test_pain_from_eight_on_is_for_the_same_day() -> None:
    assert read_reply("done 8").red_flag is Flag.SAME_DAY
    assert read_reply("done 7").red_flag is None


def test_a_nerve_sign_is_unsure_until_it_is_known_whether_it_lasts() -> None:
    gone = read_reply("my toes went numb, gone now")
    assert (gone.red_flag, gone.kind, gone.unsure, gone.lasts) == (Flag.CLINICIAN, Kind.NERVE, True, False)
    lasting = read_reply("my toes are still numb")
    assert (lasting.red_flag, lasting.unsure, lasting.lasts) == (Flag.CLINICIAN, False, True)


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("did half, no time", Why.TIME),
        ("stopped, too hard", Why.TOO_HARD),
        ("not today, back hurts 5", Why.PAIN),
        ("no, I have the flu", Why.ILL),
        ("forgot", Why.OTHER),
        ("done, no time for more", None),
    ],
)
def test_the_reason_of_a_session_that_was_not_done_whole(text: str, why: Why | None) -> None:
    assert read_reply(text).why is why


@pytest.mark.parametrize(
    ("text", "half"), [("did most of it", True), ("did 2/3", True), ("less than half", False), ("part of it", None)]
)
def test_half_says_whether_a_part_was_half_or_more(text: str, half: bool | None) -> None:
    reply = read_reply(text)
    assert (reply.completion, reply.half) == (Completion.PART, half)


@pytest.mark.parametrize(
    ("text", "morning"),
    [
        ("all gone", Morning.SETTLED),
        ("much better", Morning.SETTLED),
        ("the same", Morning.SAME),
        ("a bit better", Morning.SAME),
        ("still sore", Morning.SAME),
        ("it got worse", Morning.WORSE),
    ],
)
def test_how_it_is_now(text: str, morning: Morning) -> None:
    assert read_reply(text).morning is morning


@pytest.mark.parametrize(
    ("text", "wish"),
    [
        ("stop", "stop"),
        ("STOP", "stop"),
        ("pause please", "pause"),
        ("can you change the time", "change-time"),
        ("I am pregnant", "health-changed"),
        ("help", "help"),
        ("something lighter please", "lighter"),
        ("shorter", "shorter"),
        ("show today's", "today"),
        ("thanks", "thanks"),
        ("what does a round mean", "question"),
        ("I want to quit the programme", "quit-programme"),
        ("had to stop because of a call", None),
        ("...", None),
    ],
)
def test_what_is_asked_for(text: str, wish: str | None) -> None:
    assert read_reply(text).request == wish


@pytest.mark.parametrize(
    ("text", "number"),
    [("3", 3.0), ("-3,5 cm", -3.5), ("12.5", 12.5), ("90 degrees", 90.0), ("done 3", None), ("3 sets", None)],
)
def test_a_reply_that_is_one_bare_number_is_kept_as_a_number_and_is_no_pain(text: str, number: float | None) -> None:
    reply = read_reply(text)
    assert reply.number == number
    assert number is None or reply.pain is None


def test_tightness_is_apart_from_pain() -> None:
    reply = read_reply("done 2, tightness 6")
    assert (reply.pain, reply.tightness) == (2, 6)


def test_soreness_words_are_no_pain() -> None:
    reply = read_reply("dull ache in both calves 2")
    assert (reply.sore, reply.pain, reply.kind, reply.side) == (True, 2, Kind.DULL_BOTH, Side.BOTH)
    assert read_reply("done, not sore").sore is False


def test_a_pain_elsewhere_is_said_to_be_elsewhere() -> None:
    assert read_reply("pain 3 elsewhere").place is Place.ELSEWHERE
    assert read_reply("pain 3, same spot").place is Place.HERE


@pytest.mark.parametrize("text", ["", "   ", "🤔", "asdf", "<b></b>", "?"])
def test_what_says_nothing_is_asked_back(text: str) -> None:
    reply = read_reply(text)
    assert (reply.completion, reply.pain, reply.unsure) == (None, None, True)


def test_markup_quotes_and_capitals_change_nothing() -> None:
    assert read_reply("<b>DIDN’T</b> hurt &amp; done") == read_reply("didn't hurt & done")


def test_a_reading_as_json_has_the_stable_keys_and_plain_values() -> None:
    found = read_reply("did half, left calf hurts 4").as_json()
    assert found == {
        "completion": "part",
        "pain": 4,
        "sore": False,
        "red_flag": None,
        "side": "left",
        "place": None,
        "kind": None,
        "why": "pain",
        "unsure": False,
    }


def test_an_unknown_language_is_named_in_the_error() -> None:
    with pytest.raises(ValueError, match="'xx'"):
        read_reply("done", language="xx")


def test_no_phrase_stands_under_two_concepts() -> None:
    seen: dict[tuple[str, ...], str] = {}
    for concept, lines in words_en.PHRASES.items():
        for phrase in opened(lines):
            assert seen.setdefault(phrase, concept) == concept, " ".join(phrase)


def test_reading_replies_pulls_in_nothing_slow() -> None:
    code = "import sys, plans.replies; print(*sorted({name.split('.')[0] for name in sys.modules}))"
    loaded = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True).stdout.split()
    assert {"pydantic", "telegram", "sqlalchemy", "ruamel", "aiohttp", "typer"}.isdisjoint(loaded)


@given(st.text(max_size=300) | phrases)
def test_any_text_can_be_read_and_pain_stays_on_its_scale(text: str) -> None:
    reply = read_reply(text)
    assert reply.pain is None or 0 <= reply.pain <= 10
    assert reply.unsure is (reply.asked_back is not None)
    assert reply.error is None or reply.pain is None


@given(phrases)
def test_capitals_and_spacing_do_not_change_a_reading(text: str) -> None:
    assert read_reply(text.upper()) == read_reply(text) == read_reply("\n " + text.replace(" ", " \t  ") + " \n ")


@pytest.mark.parametrize(
    ("text", "same"),
    [
        ("No pain\nHalf of it", "No pain. Half of it"),
        ("Done\n\npain 3\r\nleft hip", "Done. pain 3. left hip"),
        ("Pain:\n3\nDone", "Pain: 3. Done"),
    ],
)
def test_a_line_break_ends_a_sentence_unless_a_mark_says_otherwise(text: str, same: str) -> None:
    assert read_reply(text) == read_reply(same)


def test_a_no_does_not_reach_over_a_line_break() -> None:
    assert read_reply("No pain\nDone").completion is Completion.DONE
    assert read_reply("no tingling\nmy calf is swollen").red_flag is Flag.SAME_DAY


@given(phrases)
def test_adding_no_pain_never_takes_a_red_flag_away(text: str) -> None:
    before, after = read_reply(text), read_reply(text + " no pain")
    assert before.red_flag is None or after.red_flag is not None


@pytest.mark.parametrize(
    "piece", ["no tingling, ", "sharp pain 9 ", "<", "n't ", "3-", "pop pop ", "a " * 40, "left ", "&lt;b "]
)
def test_the_longest_messages_are_read_to_their_bound(piece: str) -> None:
    text = (piece * LONGEST)[:LONGEST]
    assert read_reply(text + " chest pain") == read_reply(text)


@pytest.mark.parametrize(
    ("text", "pain"),
    [
        ("my pain this morning was 5, after the session 3", 3),
        ("pain this morning 3, after the session 8", 8),
        ("heel pain 4 on first steps, 2 now", 2),
        ("left knee pain 4, right knee 2 now", 4),
        ("last month this hurt like 7, now it's a one", 1),
        ("pain 1 now, before was 4", 1),
        ("no pain before, after the session 4", 4),
        ("the pain is a five no sorry a three", 3),
        ("the pain would be a 2, no, a 3", 3),
        ("half of it, pain was 3 then 5. No, 4", 4),
        ("pain twenty no sorry I mean two", 2),
        ("pain lies at 2", 2),
        ("the pain is by 2", 2),
        ("done, pain a solid one", 1),
        ("all done, a one", 1),
        ("it aches in the left glute, I'd call it 2", 2),
        ("done. Number: 1", 1),
        ("pain 2½", 3),
        ("the pain went from a 4 to an 8", 8),
        ("it used to hurt every morning, today nothing hurts, done", 0),
        ("nil pain", 0),
        ("pain 5 in the start, then it was gone, so 0", 0),
        ("on a scale of 1-10 pain is 5", 5),
        ("pain (0-10): 3", 3),
        ("pain zero on the scale to ten", 0),
        ("pain 2 out of possible 10", 2),
        ("if ten is the worst i'd say 3", 3),
        ("pain went from 1 to 10: awful", 10),
        ("pain 10, it is the worst in 3 days", 10),
        ("at rep 8 it hurts 4", 4),
        ("0 pain, 1 happy camper", 0),
        ("woke at 4, pain by now 2", 2),
        ("all exercises done, 4", 4),
    ],
)
def test_a_pain_in_other_words(text: str, pain: int) -> None:
    assert read_reply(text).pain == pain


@pytest.mark.parametrize(
    "text",
    [
        "calls til 7",
        "did three out of the five exercises",
        "did 10 minutes of the 20",
        "I did number 3",
        "this one was good",
        "it hurts by 7",
        "pain 85 percent",
        "a hundred out of ten pain",
        "pain eleven",
        "done. lost the derby 0-3",
        "exercises 1 to 6 yes, 7 and 8 no",
        "done, fingers 4 and 5 are numb",
        "done. the two small toes are numb",
        "tightness 6 on a scale of 1-10",
    ],
)
def test_a_number_that_is_no_pain_on_the_scale_is_not_taken_for_one(text: str) -> None:
    assert read_reply(text).pain is None


def test_a_back_is_no_pause_and_a_headache_keeps_its_number() -> None:
    assert read_reply("pain 4 in my back on the left side").request is None
    assert read_reply("have a headache, 5").pain == 5
    assert read_reply("it hurt but it did not last, 6").pain == 6


def test_a_strong_pain_that_is_taken_back_is_asked_back() -> None:
    reply = read_reply("pain 8 sorry no pain")
    assert (reply.pain, reply.red_flag, reply.unsure) == (0, Flag.SAME_DAY, True)


def test_a_strong_pain_of_the_same_day_is_not_forgotten_for_a_later_number() -> None:
    reply = read_reply("pain was 9 in the morning, after the session 2")
    assert (reply.pain, reply.red_flag, reply.unsure) == (2, Flag.SAME_DAY, True)
    assert read_reply("pain was 9 yesterday, 2 now").red_flag is None
    assert read_reply("done 9, no pain").unsure is True


@pytest.mark.parametrize(
    ("text", "completion"),
    [
        ("the exercises are all made", Completion.DONE),
        ("have finnish all", Completion.DONE),
        ("session is through", Completion.DONE),
        ("all 4 rounds", Completion.DONE),
        ("I left out nothing", Completion.DONE),
        ("did I skip it? No I did not", Completion.DONE),
        ("almost skipped it. Didn't.", Completion.DONE),
        ("did it after school", Completion.DONE),
        ("terminé", Completion.DONE),
        ("done all but there is a swelling on my knee", Completion.DONE),
        ("I have let out the cat-cow, the rest is made", Completion.PART),
        ("left the last two out", Completion.PART),
        ("everything but the hip one", Completion.PART),
        ("all apart from the pigeon", Completion.PART),
        ("first two only", Completion.PART),
        ("tapped out at number five", Completion.PART),
        ("I quit after the third stretch", Completion.PART),
        ("the rest stayed undone", Completion.PART),
        ("couldn't do the floor ones", Completion.PART),
        ("did ¾", Completion.PART),
        ("done? no.", Completion.NONE),
        ("I should've done it. I didn't.", Completion.NONE),
        ("I did not the session", Completion.NONE),
        ("so no session", Completion.NONE),
        ("will do it after school", Completion.NONE),
        ("I quit", None),
        ("still numb this evening", None),
        ("I am Finnish", None),
        ("how do I do the second one?", None),
        ("I left work early and went out", None),
        ("just a bit sore", None),
        ("5/6, pain 2/10", Completion.PART),
        ("did legs, skipped arms", Completion.PART),
        ("couldn't hold the last pose so skipped it", Completion.PART),
        ("the arms yes, the legs no", Completion.PART),
        ("all done except neck rolls", Completion.PART),
        ("I have not realised the exercises", Completion.NONE),
        ("felt like quitting but didn't", Completion.DONE),
        ("it hurts when I do the second one", None),
        ("can't remember if I did it", None),
    ],
)
def test_completion_in_other_words(text: str, completion: Completion | None) -> None:
    assert read_reply(text).completion is completion


@pytest.mark.parametrize("text", ["did it i think", "done i think?", "did most of it?? i think??", "yes and no"])
def test_a_doubt_about_what_was_done_is_asked_back(text: str) -> None:
    assert read_reply(text).unsure


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("did half, then the baby woke up", Why.OTHER),
        ("no session, my kid has a fever", Why.OTHER),
        ("not done, my boss wanted a report", Why.TIME),
        ("too much snow, no time, nothing done", Why.TIME),
        ("2 hard, quit halfway", Why.TOO_HARD),
        ("it was to heavy for me, did half", Why.TOO_HARD),
        ("got the norovirus, no session", Why.ILL),
        ("did half, pain 4 in the hip", Why.PAIN),
        ("half, 3", None),
        ("did half of the mat ones", None),
        ("not yet, I will do it after I drop the twins", None),
    ],
)
def test_a_reason_in_other_words(text: str, why: Why | None) -> None:
    assert read_reply(text).why is why


def test_a_reason_in_unknown_words_is_asked_back_and_never_guessed() -> None:
    reply = read_reply("no session, our oven burst")
    assert (reply.completion, reply.why, reply.asked_back, reply.unsure) == (Completion.NONE, None, "why", True)
    assert read_reply("no session").asked_back is None
    assert read_reply("done, our oven burst").asked_back is None
    assert read_reply("no session, chest pain, our oven burst").asked_back != "why"


@pytest.mark.parametrize(
    ("text", "wish"),
    [
        ("Please be so good as to stop these messages", "stop"),
        ("I don't want these messages anymore", "stop"),
        ("please stop for a while", "pause"),
        ("pls puase until the 14th", "pause"),
        ("cancel everything", "quit-programme"),
        ("I no longer wish to take part", "quit-programme"),
        ("could I get the evening slot from now on", "change-time"),
        ("send it 6:30 instead pls", "change-time"),
        ("can you send the sessions at 7pm", "change-time"),
        ("kindly chnage my timing to 5 am", "change-time"),
        ("the fridge is broken", None),
        ("I sent it to a friend at 7", None),
    ],
)
def test_what_is_asked_for_in_other_words(text: str, wish: str | None) -> None:
    reply = read_reply(text)
    assert (reply.request, reply.completion) == (wish, None)


@pytest.mark.parametrize(
    ("text", "side"),
    [
        ("pain 3 in the two knees", Side.BOTH),
        ("pain 3 in the knee of right", Side.RIGHT),
        ("fingers of left hand went dead", Side.LEFT),
        ("back was a 3 after they left", None),
        ("pain 3, did the two rounds", None),
        ("in the left knee 3, in the right one 1. finished", Side.BOTH),
        ("dull on both sides of the back, 3", Side.BOTH),
    ],
)
def test_the_side_in_other_words(text: str, side: Side | None) -> None:
    assert read_reply(text).side is side


def test_soreness_of_an_earlier_day_is_none_now() -> None:
    assert read_reply("I was sore on Monday, not now").sore is False
    assert read_reply("I was sore on Monday and still am").sore is True


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "done, me duele mucho el pecho y no puedo respirar"),
        ("en", "ok, ich habe Druck auf der Brust"),
        ("es", "hecho, I have pressure in my chest and can not breathe"),
    ],
)
def test_a_warning_sign_in_another_language_counts_beside_a_reply_in_ones_own(language: str, text: str) -> None:
    assert read_reply(text, language=language).red_flag == "emergency"
    found = find_flag(text, language=language)
    assert found is not None
    assert found.level == "emergency"


@pytest.mark.parametrize("text", ["1 2 3 " * 682, "one two three " * 290, "pain 3, " * 500])
def test_a_long_list_of_numbers_is_no_pain_and_is_asked_back(text: str) -> None:
    """It would also cost its writer nothing and the reader seconds: what is compared pair by pair must stay short."""
    reply = read_reply(text)
    assert reply.pain is None
    assert reply.unsure


def test_a_sign_beside_a_long_list_of_numbers_is_still_found() -> None:
    assert read_reply("chest pain " + "1 2 3 " * 500).red_flag == "emergency"


@pytest.mark.parametrize(
    ("text", "pain"),
    [
        ("did exercises 1 to 6, not 7 and 8, on a scale to 10 it was 2.5", 3),
        ("exercises 1 to 6 done, 7 and 8 not. on a scale of 1-10 pain was 4", 4),
        ("did exercises 1-6, left out 7 and 8", None),
        ("did the stretches except 7 and 8. pain 2", 2),
        ("all exercises, skipped 9, pain 1", 1),
        ("pain 3, on a scale of 1 to 10", 3),
        ("done, pain 8, on a scale to 10", 8),
        ("it was an 8, on a scale of 1 to 10, and tightness 4", 8),
    ],
)
def test_exercises_left_out_and_numbers_before_a_scale_are_no_pains(text: str, pain: int | None) -> None:
    assert read_reply(text).pain == pain


@pytest.mark.parametrize(
    "text",
    ["done, no pain except my lower back", "Done. Nothing hurts except my knee", "done, nothing hurts but my chest"],
)
def test_no_pain_but_one_place_is_asked_back(text: str) -> None:
    reply = read_reply(text)
    assert reply.pain is None
    assert reply.asked_back in ("pain", "flag")


def test_what_a_line_break_turns_is_asked_back() -> None:
    assert read_reply("Not\ndone").asked_back == "completion"


@pytest.mark.parametrize(
    "text",
    ["done pain 3, tonight 8", "did it, pain 1, after dinner 8", "done, 2, overnight 9", "done, pain 3, after work 7"],
)
def test_a_higher_number_after_a_time_of_day_is_asked_back(text: str) -> None:
    assert read_reply(text).asked_back in ("pain", "flag")


@pytest.mark.parametrize("text", ["pain 3, done tonight at 8", "done, pain 4, after that 2", "pain 2, done after 8"])
def test_an_hour_and_a_lower_number_after_a_time_of_day_are_not(text: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("plans.replies.doubt_in", lambda *read: None)
    assert read_reply(text).asked_back != "pain"
