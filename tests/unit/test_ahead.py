"""The dates ahead: those that a client gets for whom everything goes well, row by row."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plans.ahead import Coming, ahead
from plans.checkin import CheckIn, Completion
from plans.course import Overruling, Word, decide
from plans.ledger import Entry, RowKind
from plans.pace import Pace
from plans.programme import Programme
from plans.reading import read_programme
from plans.rules import Settings
from plans.track import Position
from tests.texts import HEAD, REST, TEST, session

MONDAY = date(2026, 5, 4)
PROGRAMME = read_programme(HEAD + TEST + session() * 2 + REST + session(3) + session() * 2)
SESSION, REST_DAY, MEASURE, OFF = RowKind.SESSION, RowKind.REST, RowKind.MEASURE, RowKind.OFF


def coming(
    past: list[Entry] | None = None,
    position: Position | None = None,
    *,
    dates: int = 14,
    pace: Pace | None = None,
    word: Overruling | None = None,
    programme: Programme = PROGRAMME,
) -> list[Coming]:
    first = past[-1].on + timedelta(days=1) if past else MONDAY
    place = position or Position(1)
    return list(ahead(programme, place, past or [], first, dates, settings=Settings(), pace=pace, overruling=word))


def test_a_clean_course_goes_through_the_programme_to_its_end() -> None:
    found = coming()
    assert [one.on for one in found] == [MONDAY + timedelta(days=n) for n in range(7)]
    assert [(one.kind, one.day) for one in found] == [
        (MEASURE, 1), (SESSION, 2), (SESSION, 3), (REST_DAY, 4), (SESSION, 5), (SESSION, 6), (SESSION, 7),
    ]  # fmt: skip


def test_it_looks_so_many_dates_ahead_and_no_further() -> None:
    assert len(coming(dates=3)) == 3


def test_dates_without_training_have_no_day() -> None:
    found = coming(pace=Pace(MONDAY, (0, 2, 4)))
    assert [one.kind for one in found[:5]] == [MEASURE, OFF, SESSION, OFF, SESSION]
    assert [one.day for one in found if one.kind is SESSION] == [2, 3, 5, 6, 7]


def test_a_session_that_nothing_is_said_of_yet_is_taken_to_go_well() -> None:
    past = [Entry(MONDAY, SESSION, day=2, delivered=True)]
    assert coming(past, Position(2))[0] == Coming(MONDAY + timedelta(days=1), SESSION, 3, 0)


def test_what_was_said_counts_as_it_was() -> None:
    sore = Entry(MONDAY, SESSION, day=2, checkin=CheckIn(Completion.DONE, pain=6))
    first, second = coming([sore], Position(2))[:2]
    assert (first.kind, first.day) == (REST_DAY, None)
    assert (second.kind, second.day, second.level) == (SESSION, 2, 1)


def test_nothing_lies_ahead_of_what_must_be_looked_at_first() -> None:
    severe = Entry(MONDAY, SESSION, day=2, checkin=CheckIn(Completion.DONE, pain=9))
    assert coming([severe], Position(2)) == []


def test_a_coachs_word_acts_once() -> None:
    past = [Entry(MONDAY, SESSION, day=2, checkin=CheckIn(Completion.DONE, pain=0))]
    found = coming(past, Position(2), word=Overruling(Word.REPEAT))
    assert [one.day for one in found[:2]] == [2, 3]


@pytest.mark.parametrize("start", [1, 2, 5])
def test_it_is_what_the_rules_hand_out_when_each_date_is_lived_so(start: int) -> None:
    position, history = Position(start, 1 if start > 1 else 0), list[Entry]()
    lived = []
    for n in range(14):
        on = MONDAY + timedelta(days=n)
        found = decide(PROGRAMME, position, history, on, settings=Settings())
        if found.kind is None:
            break
        position = found.position
        lived.append(Coming(on, found.kind, found.day, position.level))
        said = CheckIn(Completion.DONE, pain=0) if found.kind is SESSION else CheckIn()
        history.append(
            Entry(on, found.kind, found.day, position.level, found.prescribed, True, said, None, found.kind is MEASURE)
        )
    assert coming(position=Position(start, 1 if start > 1 else 0)) == lived
