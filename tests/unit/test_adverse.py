"""Adverse events from a ledger: each answer once, soreness is none, and what came after stands with it."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plans.adverse import Event, events
from plans.checkin import CheckIn, Completion, Flag, FlagState, Kind, Morning, Place
from plans.ledger import Entry, RowKind
from plans.rules import Settings

FIRST = date(2026, 5, 4)
DONE = Completion.DONE


def history(*rows: Entry) -> list[Entry]:
    return [row._replace(on=FIRST + timedelta(days=n)) for n, row in enumerate(rows)]


WELL = CheckIn(DONE, pain=0)


def session(said: CheckIn = WELL, *, morning: Morning | None = None, voted: str = "") -> Entry:
    return Entry(FIRST, RowKind.SESSION, day=1, checkin=said, morning=morning, voted=frozenset(voted.split()))


def found(*rows: Entry, usual: int = 0) -> list[Event]:
    return events(history(*rows), Settings(), usual)


@pytest.mark.parametrize(
    ("said", "what"),
    [
        (CheckIn(DONE, pain=6), "excessive"),
        (CheckIn(DONE, pain=8), "severe"),
        (CheckIn(DONE, pain=3, kind=Kind.SHARP), "strain-like"),
        (CheckIn(DONE, pain=0, kind=Kind.POP), "strain-like"),
        (CheckIn(DONE, pain=1, kind=Kind.NERVE, flag=Flag.CLINICIAN, flag_state=FlagState.DENIED), "nerve-signs"),
        (CheckIn(flag=Flag.EMERGENCY, flag_state=FlagState.CONFIRMED), "red-flag"),
        (CheckIn(flag=Flag.SAME_DAY, flag_state=FlagState.UNSURE), "unsure-flag"),
    ],
)
def test_what_is_more_than_soreness_is_an_event(said: CheckIn, what: str) -> None:
    (event,) = found(session(), session(said), session())
    assert (event.told, event.session, event.resumed) == (1, 1, 2)
    assert what in event.what


@pytest.mark.parametrize(
    "said",
    [
        CheckIn(),
        CheckIn(DONE, pain=5),
        CheckIn(DONE, pain=2, kind=Kind.SHARP),
        CheckIn(DONE, pain=2, sore=True, kind=Kind.DULL_BOTH),
        CheckIn(DONE, pain=5, place=Place.ELSEWHERE),
        CheckIn(DONE, pain=1, flag=Flag.SAME_DAY, flag_state=FlagState.DENIED),
        CheckIn(Completion.NONE),
    ],
)
def test_soreness_allowed_pain_and_silence_are_none(said: CheckIn) -> None:
    assert found(session(said), session()) == []


def test_one_answer_that_several_rules_see_is_one_event() -> None:
    (event,) = found(session(CheckIn(Completion.PART, pain=9, kind=Kind.SHARP)))
    assert set(event.what) == {"severe", "strain-like"}


def test_a_worse_morning_belongs_to_the_session_before_it() -> None:
    (event,) = found(session(CheckIn(DONE, pain=4)), session(CheckIn(), morning=Morning.WORSE))
    assert event == Event(0, 0, ("morning-after",), Morning.WORSE, 1)


def test_a_worse_morning_after_an_event_is_no_second_one() -> None:
    rest = Entry(FIRST, RowKind.REST, morning=Morning.WORSE, prescribed=True)
    (event,) = found(session(CheckIn(DONE, pain=6)), rest, session(CheckIn(), morning=Morning.SETTLED))
    assert event.what == ("excessive", "morning-after")
    assert (event.morning, event.resumed) == (Morning.SETTLED, 2)


def test_a_soreness_that_stays_too_long_is_one_from_when_the_rules_said_so() -> None:
    long = session(CheckIn(DONE, pain=3, kind=Kind.DULL_ONE))
    (event,) = found(long, long, session(CheckIn(), voted="sore-too-long"))
    assert (event.told, event.what) == (1, ("sore-too-long",))


def test_what_is_told_on_a_rest_day_belongs_to_the_session_before() -> None:
    rest = Entry(FIRST, RowKind.REST, day=2, checkin=CheckIn(pain=7))
    (event,) = found(session(), rest)
    assert (event.told, event.session, event.resumed, event.morning) == (1, 0, None, None)


def test_words_before_any_session_have_none() -> None:
    (event,) = found(Entry(FIRST, RowKind.WAITING, checkin=CheckIn(pain=9)))
    assert event.session is None
