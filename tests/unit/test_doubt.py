"""What two readings disagree on is asked back; it changes no field, and takes nothing from a sign that is sure."""

from __future__ import annotations

from math import log

import pytest

from plans import doubt
from plans.checkin import CheckIn, Completion, Flag, FlagState
from plans.doubt import UNLIKELY, doubt_in, speaks_against, suspected
from plans.redflags import SUSPECTED, find_flag
from plans.replies import read_reply
from plans.scopes import said
from plans.second_reading import FIELDS, SecondReading
from plans.talk import Ask, merged, next_ask

LIKENESSES = [
    "lights went out and I was on the floor",
    "I see a shadow coming down over one eye",
    "my head went light as a feather and I nearly went over",
]
NOTHING = {field: answers[0] for field, answers in FIELDS.items()}


def reading(**likely: float) -> SecondReading:
    """A second reading that holds "nothing said" for likely, but for the fields that are named."""
    odds = {}
    for field, answers in FIELDS.items():
        share = likely.get(field, 0.999)
        others = (1 - share) / (len(answers) - 1)
        odds[field] = (log(share), *[log(others)] * (len(answers) - 1))
    return SecondReading(odds)


@pytest.fixture
def second(monkeypatch: pytest.MonkeyPatch) -> dict[str, float]:
    """How likely the second reader holds "nothing said" for, by field; may be changed."""
    likely: dict[str, float] = {}
    monkeypatch.setattr(doubt, "second_reading", lambda told: reading(**likely))
    return likely


@pytest.mark.parametrize("text", ["done", "done, pain 2", "no time today", "did half, too tired", "👍", "all done, 0"])
def test_what_is_said_plainly_is_not_doubted(text: str) -> None:
    assert read_reply(text).asked_back is None


def test_what_two_readings_agree_on_is_not_doubted(second: dict[str, float]) -> None:
    assert doubt_in(said("words"), NOTHING, None) is None


@pytest.mark.parametrize("field", ["completion", "pain"])
def test_what_they_disagree_on_is_named(second: dict[str, float], field: str) -> None:
    second[field] = 0.3
    assert doubt_in(said("words"), NOTHING, None) == field


def test_a_reason_is_only_asked_for_where_there_is_one(second: dict[str, float]) -> None:
    second |= {"why": 0.1, "completion": 0.9}
    assert doubt_in(said("words"), NOTHING, None) == "completion"
    second["completion"] = 0.999
    assert doubt_in(said("words"), NOTHING | {"completion": Completion.NONE}, None) == "completion"
    second |= {"why": 0.0001, "completion": 0.9}
    assert doubt_in(said("words"), NOTHING | {"completion": Completion.PART}, None) == "why"


def test_many_small_doubts_are_one(second: dict[str, float]) -> None:
    second["completion"] = second["pain"] = 0.7
    assert doubt_in(said("words"), NOTHING, None) is None
    second["kind"] = 0.7
    assert doubt_in(said("words"), NOTHING, None) is not None


def test_the_graver_the_sign_the_less_is_doubted_beside_it(second: dict[str, float]) -> None:
    assert sorted(UNLIKELY.values()) == [UNLIKELY[flag] for flag in (None, *Flag)]
    second["completion"] = 0.05
    assert doubt_in(said("words"), NOTHING, Flag.SAME_DAY) == "completion"
    assert doubt_in(said("words"), NOTHING, Flag.EMERGENCY) is None


def test_a_pain_beside_a_sign_is_never_doubted_as_the_sign_may_hang_on_it(second: dict[str, float]) -> None:
    second |= {"pain": 0.0001, "completion": 0.9}
    read = NOTHING | {"pain": 9, "completion": None}
    assert doubt_in(said("words"), read, Flag.SAME_DAY) == "completion"
    reply = read_reply("pain 9 in my hip")
    assert (reply.red_flag, merged(CheckIn(), reply, None).pain) == (Flag.SAME_DAY, 9)


def test_a_sign_is_suspected_before_it_is_likelier_than_none(second: dict[str, float]) -> None:
    told = said("everything went rather dark all at once")
    assert suspected(told) is None
    second["red_flag"] = 0.35
    assert suspected(told) is not None
    assert suspected(said("rather dark")) is None


def test_a_sign_is_asked_about_where_the_second_reader_sees_none_and_an_emergency_last(
    second: dict[str, float],
) -> None:
    second["red_flag"] = 0.4
    assert not speaks_against(said("words"), Flag.CLINICIAN)
    second["red_flag"] = 0.9
    assert speaks_against(said("words"), Flag.CLINICIAN)
    assert speaks_against(said("words"), Flag.SAME_DAY)
    assert not speaks_against(said("words"), Flag.EMERGENCY)


def test_what_is_denied_harmless_or_somebody_elses_is_not_shown(monkeypatch: pytest.MonkeyPatch) -> None:
    shown: list[str] = []

    def noted(told: tuple[str, ...]) -> SecondReading:
        shown.extend(told)
        return reading()

    monkeypatch.setattr(doubt, "second_reading", noted)
    suspected(said("no tingling today, swelled with pride, but my head went funny"))
    assert "funny" in shown
    assert not {"tingling", "pride", "no"} & set(shown)


@pytest.mark.parametrize("text", LIKENESSES)
def test_words_that_no_table_has_make_an_unsure_flag_that_the_talk_asks_about(text: str) -> None:
    flag = find_flag(text)
    assert flag is not None
    assert (flag.sign, flag.sure) == (SUSPECTED, False)
    assert read_reply(text).unsure is True
    assert next_ask(merged(CheckIn(), read_reply(text), flag)) is Ask.FLAG


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


@pytest.mark.parametrize(
    "text",
    [
        "I fainted in the kitchen this morning after the session",
        "my left calf is swollen and hot since last night",
        "Skipped it today, I passed out!",
    ],
)
def test_a_plain_sign_stays_sure(text: str) -> None:
    flag = find_flag(text)
    assert flag is not None
    assert flag.sure is True


def test_what_else_is_doubted_takes_nothing_from_a_sure_sign(second: dict[str, float]) -> None:
    second |= {"red_flag": 0.1, "completion": 0.0001}
    text = "my left calf is swollen and hot since last night"
    reply = read_reply(text)
    assert (reply.red_flag, reply.asked_back) == (Flag.SAME_DAY, "completion")
    assert merged(CheckIn(), reply, find_flag(text)).flag_state is FlagState.CONFIRMED
