"""The daily talk: the next question is the first thing that the record lacks."""

from __future__ import annotations

from dataclasses import replace

import pytest

from plans.checkin import Area, CheckIn, Completion, Flag, FlagState, Kind, Place, Side, Why
from plans.redflags import find_flag
from plans.replies import read_reply
from plans.talk import Ask, answered, is_begun, merged, next_ask

DONE, PART, NONE = Completion.DONE, Completion.PART, Completion.NONE


@pytest.mark.parametrize(
    ("said", "ask"),
    [
        (CheckIn(), None),
        (CheckIn(DONE), Ask.PAIN),
        (CheckIn(DONE, pain=0), None),
        (CheckIn(PART), Ask.HALF),
        (CheckIn(PART, half=True), Ask.WHY),
        (CheckIn(PART, half=True, why=Why.TIME), Ask.PAIN),
        (CheckIn(NONE), Ask.WHY),
        (CheckIn(NONE, why=Why.TIME), None),
        (CheckIn(NONE, why=Why.PAIN, odd=True), Ask.KIND),
        (CheckIn(odd=True), Ask.KIND),
        (CheckIn(odd=True, kind=Kind.SHARP), Ask.PLACE),
        (CheckIn(odd=True, kind=Kind.SHARP, place=Place.HERE), Ask.PAIN),
        (CheckIn(DONE, flag=Flag.CLINICIAN, flag_state=FlagState.UNSURE), Ask.FLAG),
    ],
)
def test_the_next_question_is_the_first_thing_missing(said: CheckIn, ask: Ask | None) -> None:
    assert next_ask(said) is ask


def test_a_button_answers_its_question() -> None:
    assert answered(CheckIn(), Ask.PLACE, "here-left") == CheckIn(place=Place.HERE, side=Side.LEFT)
    assert answered(CheckIn(NONE), Ask.WHY, "pain").odd
    assert answered(CheckIn(PART), Ask.HALF, "no").half is False


@pytest.mark.parametrize(
    ("ask", "value"), [(Ask.PAIN, "11"), (Ask.PAIN, "-1"), (Ask.PAIN, "x"), (Ask.KIND, "blue"), (Ask.HALF, "maybe")]
)
def test_a_forged_answer_is_refused(ask: Ask, value: str) -> None:
    with pytest.raises(ValueError, match=r".+"):
        answered(CheckIn(), ask, value)


def typed(said: CheckIn, text: str) -> CheckIn:
    return merged(said, read_reply(text), find_flag(text))


def test_words_fill_what_they_say_and_leave_the_rest() -> None:
    assert typed(CheckIn(tightness=4), "done, pain 2") == CheckIn(DONE, pain=2, tightness=4)
    assert typed(CheckIn(DONE, pain=4), "no pain") == CheckIn(DONE, pain=0)


def test_a_sign_in_words_is_a_confirmed_flag_and_a_doubtful_one_is_asked_back() -> None:
    sure = typed(CheckIn(), "I have numbness between my legs")
    assert (sure.flag, sure.flag_state) == (Flag.EMERGENCY, FlagState.CONFIRMED)


def test_a_confirmed_flag_outlives_everything_said_later() -> None:
    flagged = CheckIn(DONE, pain=5, flag=Flag.SAME_DAY, flag_state=FlagState.CONFIRMED)
    after = typed(flagged, "all fine now, no pain")
    assert (after.flag, after.flag_state, after.pain) == (Flag.SAME_DAY, FlagState.CONFIRMED, 5)


def test_tightness_alone_begins_nothing() -> None:
    assert not is_begun(CheckIn(tightness=3))
    assert is_begun(CheckIn(odd=True))


def test_a_completion_in_doubt_is_asked_and_not_noted() -> None:
    reply = replace(read_reply("all done"), unsure=True, asked_back="completion")
    assert reply.completion is DONE
    assert merged(CheckIn(), reply, None).completion is None
    assert merged(CheckIn(PART), reply, None).completion is PART


@pytest.mark.parametrize(("pain", "noted"), [(1, None), (2, None), (3, 3), (7, 7)])
def test_a_pain_in_doubt_is_noted_only_where_that_is_more_careful(pain: int, noted: int | None) -> None:
    reply = replace(read_reply("done"), pain=pain, unsure=True, asked_back="pain")
    assert merged(CheckIn(), reply, None).pain == noted


def test_every_question_takes_its_buttons() -> None:
    assert answered(CheckIn(DONE), Ask.PAIN, "10").pain == 10
    assert answered(CheckIn(odd=True), Ask.KIND, "sharp").kind is Kind.SHARP
    assert answered(CheckIn(place=Place.ELSEWHERE), Ask.AREA, "knee").area is Area.KNEE
    assert answered(CheckIn(PART), Ask.HALF, "yes").half is True
    assert not answered(CheckIn(NONE), Ask.WHY, "time").odd
    assert next_ask(CheckIn(odd=True, kind=Kind.DULL_BOTH, place=Place.ELSEWHERE)) is Ask.AREA


def test_another_place_forgets_the_area_of_the_first() -> None:
    there = CheckIn(odd=True, place=Place.ELSEWHERE, area=Area.KNEE)
    assert answered(there, Ask.PLACE, "elsewhere") == CheckIn(odd=True, place=Place.ELSEWHERE)


def test_an_unsure_flag_is_confirmed_or_denied_by_its_button() -> None:
    unsure = CheckIn(flag=Flag.CLINICIAN, flag_state=FlagState.UNSURE)
    assert answered(unsure, Ask.FLAG, "yes").flag_state is FlagState.CONFIRMED
    assert answered(unsure, Ask.FLAG, "no").flag_state is FlagState.DENIED


def test_nerve_signs_by_button_are_asked_back_and_lower_no_graver_flag() -> None:
    asked = answered(CheckIn(odd=True), Ask.KIND, "nerve")
    assert (asked.flag, asked.flag_state) == (Flag.CLINICIAN, FlagState.UNSURE)
    graver = CheckIn(odd=True, flag=Flag.SAME_DAY, flag_state=FlagState.DENIED)
    assert answered(graver, Ask.KIND, "nerve").flag is Flag.SAME_DAY
    confirmed = CheckIn(odd=True, flag=Flag.EMERGENCY, flag_state=FlagState.CONFIRMED)
    assert answered(confirmed, Ask.KIND, "nerve") == replace(confirmed, kind=Kind.NERVE)


def test_nerve_signs_in_words_stay_open_until_it_is_known_whether_they_last() -> None:
    tingles = typed(CheckIn(), "my foot tingles")
    assert (tingles.kind, tingles.odd, tingles.flag_state) == (Kind.NERVE, True, FlagState.UNSURE)
    gone = typed(CheckIn(), "my foot tingled but it went away when I came out of it")
    assert (gone.kind, gone.flag_state) == (Kind.NERVE, FlagState.DENIED)


def test_words_that_only_may_be_a_sign_leave_the_kind_open() -> None:
    maybe = typed(CheckIn(kind=Kind.DULL_ONE), "last year I had some numbness in my foot")
    assert (maybe.kind, maybe.flag_state) == (Kind.DULL_ONE, FlagState.UNSURE)


def test_pain_as_the_reason_asks_what_kind_it_is() -> None:
    assert typed(CheckIn(), "stopped half way because it hurt").odd


def test_grave_words_without_a_sign_or_a_number_are_an_unsure_flag() -> None:
    grave = typed(CheckIn(), "the pain is unbearable")
    assert (grave.pain, grave.flag_state) == (None, FlagState.UNSURE)


@pytest.mark.parametrize(
    ("later", "state"),
    [
        ("some tingling in my hand, gone now", FlagState.UNSURE),
        ("my ankle may be bruised?", FlagState.UNSURE),
        ("I was dizzy during the exercises", FlagState.CONFIRMED),
    ],
)
def test_a_lesser_sign_takes_no_open_question_about_a_graver_one_away(later: str, state: FlagState) -> None:
    first = "done 2, chest a bit tight"
    asked = merged(CheckIn(), read_reply(first), find_flag(first))
    assert (asked.flag, asked.flag_state) == (Flag.EMERGENCY, FlagState.UNSURE)
    then = merged(asked, read_reply(later), find_flag(later))
    assert (then.flag, then.flag_state) == (Flag.EMERGENCY, state)
