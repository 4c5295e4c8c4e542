"""Mornings grow quieter for somebody who does not answer, and are whole again after a word."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from plans.checkin import CheckIn, Completion, Morning
from plans.ledger import Entry, RowKind
from plans.silence import SHORT, STILL, WEEKLY, Voice, silent_mornings, voice

FIRST = date(2026, 3, 2)


def row(number: int, kind: RowKind = RowKind.SESSION, **more: Any) -> Entry:
    return Entry(FIRST + timedelta(days=number), kind, day=1)._replace(**more)


def test_only_mornings_that_asked_and_arrived_count() -> None:
    past = [
        row(0, checkin=CheckIn(completion=Completion.DONE)),
        row(1),
        row(2, RowKind.REST),
        row(3, RowKind.ASKING),
        row(4, delivered=False),
        row(5, RowKind.MEASURE),
    ]
    assert silent_mornings(past, None) == 3
    assert silent_mornings([], None) == 0


def test_a_word_of_any_kind_ends_the_silence() -> None:
    past = [row(number) for number in range(6)]
    assert silent_mornings(past, None) == 6
    assert silent_mornings(past, FIRST + timedelta(days=3)) == 2
    answered = [*past, row(6, RowKind.ASKING, morning=Morning.SAME), row(7)]
    assert silent_mornings(answered, None) == 1
    assert silent_mornings([*past, row(6, recorded=True)], None) == 0


def test_a_silent_month_morning_by_morning() -> None:
    heard = [voice(n, RowKind.SESSION) for n in range(40)]
    assert heard[:SHORT] == [Voice.WHOLE] * 3
    assert heard[SHORT:WEEKLY] == [Voice.LINE] * 4
    assert [n for n, said in enumerate(heard) if said is Voice.OFFER] == [7, 14, 21]
    assert set(heard[STILL:]) == {Voice.NOTHING}
    assert sum(said is not Voice.NOTHING for said in heard) == 10


def test_days_that_ask_nothing_are_whole_at_first_and_then_still() -> None:
    assert [voice(n, RowKind.REST) for n in (0, 2, 3, 7)] == [Voice.WHOLE] * 2 + [Voice.NOTHING] * 2


@given(st.integers(0, 100), st.sampled_from(list(RowKind)))
def test_longer_silence_never_brings_more_than_the_first_days_did(silent: int, kind: RowKind) -> None:
    order = [Voice.NOTHING, Voice.OFFER, Voice.LINE, Voice.WHOLE]
    assert order.index(voice(silent, kind)) <= order.index(voice(0, kind))
