"""A coach's word for the next row: what each does, what wins over it, and what it never does."""

from __future__ import annotations

from datetime import timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plans.checkin import CheckIn, Completion, Kind, Why
from plans.course import Decision, Overruling, Position, Word, decide
from plans.ledger import Entry, RowKind
from plans.pace import Pace
from plans.rules import Settings, Verdict
from tests.samples import NEW, REST, programme, session
from tests.unit.test_course import CLEAN, START, ask, held

HARD = CheckIn(Completion.PART, pain=0, why=Why.TOO_HARD, half=True)
HURT = CheckIn(Completion.DONE, pain=6, kind=Kind.OTHER)
GRAVE = CheckIn(Completion.DONE, pain=9)


def said(word: Word, *, newer: bool = False, day: int | None = None, let_go: bool = False) -> Overruling:
    return Overruling(word, newer, day, let_go)


def brings(found: Decision) -> tuple[RowKind | None, int | None, int]:
    return found.kind, found.day, found.position.level


@pytest.mark.parametrize(
    ("word", "day", "gets"),
    [
        (Word.REPEAT, None, (RowKind.SESSION, 1, 1)),
        (Word.EASE, None, (RowKind.SESSION, 1, 2)),
        (Word.CLIMB, None, (RowKind.SESSION, 2, 0)),
        (Word.REST, None, (RowKind.REST, None, 0)),
        (Word.MOVE, 4, (RowKind.SESSION, 4, 1)),
        (Word.MOVE, 1, (RowKind.SESSION, 1, 1)),
        (Word.FINISH, None, (None, None, 0)),
    ],
)
def test_each_word_after_a_clean_session_one_level_lighter(
    word: Word, day: int | None, gets: tuple[RowKind | None, int | None, int]
) -> None:
    found = ask(Position(1, 1), held(1, level=1), overruling=said(word, day=day))
    assert brings(found) == gets
    assert found.heeded is True


def test_a_day_off_comes_before_what_would_have_come() -> None:
    off = ask(Position(1), held(1), overruling=said(Word.REST))
    assert (off.kind, off.reason) == (RowKind.REST, "coach")
    row = Entry(START + timedelta(days=1), RowKind.REST, prescribed=True)
    assert brings(ask(off.position, held(1), row)) == (RowKind.SESSION, 2, 0)


def test_a_climb_is_one_level_up_from_where_the_course_stands() -> None:
    assert brings(ask(Position(1, 2), held(1, HARD, level=2), overruling=said(Word.CLIMB))) == (RowKind.SESSION, 1, 1)
    assert brings(ask(Position(1, 0), held(1, HARD), overruling=said(Word.CLIMB))) == (RowKind.SESSION, 1, 0)


def test_an_advance_that_climbs_by_itself_does_not_climb_twice() -> None:
    found = ask(Position(1, 2), held(1, level=2), overruling=said(Word.CLIMB))
    assert (brings(found), found.heeded) == ((RowKind.SESSION, 2, 1), True)


@pytest.mark.parametrize("word", [word for word in Word if word is not Word.GO_ON])
def test_no_word_hands_anything_out_where_the_rules_wait_for_the_coach(word: Word) -> None:
    found = ask(Position(1), held(1, GRAVE), overruling=said(word, day=2), ask=False)
    assert found.kind is RowKind.WAITING


@pytest.mark.parametrize("word", [Word.REPEAT, Word.EASE, Word.CLIMB])
def test_newer_graver_evidence_wins_over_a_word_and_says_so(word: Word) -> None:
    found = ask(Position(1, 1), held(1, HURT, level=1), overruling=said(word, newer=True), ask=False)
    assert (brings(found), found.heeded) == ((RowKind.REST, None, 2), False)
    seen = ask(Position(1, 1), held(1, HURT, level=1), overruling=said(word), ask=False)
    assert (seen.kind, seen.heeded) == (RowKind.SESSION, True)


def test_forward_newer_evidence_keeps_the_client_and_back_it_acts_on_that_day() -> None:
    late = held(4, HARD)
    assert brings(ask(Position(4), late, overruling=said(Word.MOVE, day=6, newer=True))) == (RowKind.SESSION, 4, 1)
    back = ask(Position(4), late, overruling=said(Word.MOVE, day=1, newer=True))
    assert (brings(back), back.heeded) == ((RowKind.SESSION, 1, 1), False)
    assert brings(ask(Position(4), late, overruling=said(Word.MOVE, day=6))) == (RowKind.SESSION, 6, 0)


def test_after_waiting_nobody_climbs_or_goes_forward() -> None:
    waited = [held(2, GRAVE), Entry(START + timedelta(days=1), RowKind.WAITING)]
    for word in (Word.CLIMB, Word.MOVE):
        found = ask(Position(2, 1), *waited, overruling=said(word, day=6, let_go=True))
        assert brings(found) == (RowKind.SESSION, 2, 1)
    assert brings(ask(Position(2, 1), *waited, overruling=said(Word.EASE, let_go=True))) == (RowKind.SESSION, 2, 2)


def test_a_word_on_top_of_letting_go_does_not_undo_it() -> None:
    found = ask(Position(1, 1), held(1, GRAVE), overruling=said(Word.REPEAT, let_go=True))
    assert brings(found) == (RowKind.SESSION, 1, 1)


def test_after_days_away_a_move_forward_comes_in_its_lightest_form() -> None:
    away = [Entry(START + timedelta(days=n), RowKind.AWAY) for n in range(1, 31)]
    found = ask(Position(1), held(1), *away, overruling=said(Word.MOVE, day=4))
    assert brings(found) == (RowKind.SESSION, 4, 2)


def test_on_a_date_without_training_a_word_waits() -> None:
    plan = programme(*(session() for _ in range(6)))
    pace = Pace(START, (START.weekday(),))
    off = decide(
        plan,
        Position(1),
        [held(1)],
        START + timedelta(days=1),
        settings=Settings(),
        pace=pace,
        overruling=said(Word.EASE),
    )
    assert (off.kind, off.heeded) == (RowKind.OFF, None)


answers = st.builds(
    CheckIn,
    completion=st.none() | st.sampled_from(Completion),
    pain=st.none() | st.integers(0, 10),
    kind=st.none() | st.sampled_from(Kind),
    why=st.none() | st.sampled_from([Why.TIME, Why.TOO_HARD, Why.PAIN]),
    half=st.none() | st.booleans(),
)
words = st.sampled_from([word for word in Word if word is not Word.GO_ON])
LONG = programme(session(), session(), REST, session(), NEW, session(), REST, session())


@settings(max_examples=400)
@given(
    st.lists(answers, min_size=1, max_size=4), st.integers(1, 8), st.integers(0, 2), words, st.booleans(),
    st.integers(1, 8), st.booleans(),
)  # fmt: skip
def test_whatever_was_said_a_word_never_lifts_waiting_and_never_climbs_two_levels(
    history: list[CheckIn], day: int, level: int, word: Word, newer: bool, to: int, asks: bool
) -> None:
    if LONG.day(day).kind != "session":
        day += 1
    past = [held(day, one, after=n, level=level) for n, one in enumerate(history)]
    plain = ask(Position(day, level), *past, plan=LONG, ask=asks)
    found = ask(Position(day, level), *past, plan=LONG, ask=asks, overruling=said(word, newer=newer, day=to))
    assert found.votes == plain.votes
    assert 0 <= found.position.level <= 2
    if plain.kind in (RowKind.WAITING, RowKind.ASKING):
        assert found._replace(heeded=None) == plain
    elif word is not Word.FINISH:
        assert found.position.level >= max(0, min(level, plain.position.level) - 1)
    if newer and plain.verdict is not None and plain.verdict >= Verdict.EASE:
        assert found.position.level >= plain.position.level or word is Word.FINISH
        assert found.kind is not RowKind.SESSION or plain.kind is RowKind.SESSION


def test_a_clean_answer_after_the_coach_looked_leaves_the_word_as_it_is() -> None:
    assert brings(ask(Position(1), held(1, CLEAN), overruling=said(Word.EASE, newer=True))) == (RowKind.SESSION, 1, 1)


@pytest.mark.parametrize("let_go", [False, True])
def test_nothing_bolder_is_handed_out_on_the_date_after_waiting(let_go: bool) -> None:
    """The session that follows a wait is the day in hand as it stands: no climb, and no move ahead."""
    waited = [held(4, HARD, level=1), Entry(START + timedelta(days=1), RowKind.WAITING)]
    past = waited[:1] if let_go else waited
    climbed = ask(Position(4, 1), *past, overruling=said(Word.CLIMB, let_go=let_go))
    assert brings(climbed) == (RowKind.SESSION, 4, 1)
    ahead = ask(Position(4, 1), *past, overruling=said(Word.MOVE, day=6, let_go=let_go))
    assert (brings(ahead), ahead.heeded) == ((RowKind.SESSION, 4, 1), False)


@pytest.mark.parametrize("dates", [9, 14])
def test_after_a_lapse_of_missed_sessions_a_move_forward_comes_in_its_lightest_form(dates: int) -> None:
    missed = [held(2, CheckIn(), after=1 + n) for n in range(dates)]
    found = ask(Position(2), held(1), *missed, overruling=said(Word.MOVE, day=4))
    assert brings(found) == (RowKind.SESSION, 4, 2)


def test_a_climb_after_a_session_that_was_done_and_not_passed_takes_the_rest_day_first() -> None:
    short = CheckIn(Completion.PART, pain=0, why=Why.TIME, half=False)
    past = [held(1, level=1), held(2, short, after=1, level=1)]
    assert brings(ask(Position(2, 1), *past, overruling=said(Word.CLIMB))) == (RowKind.REST, 3, 0)
    missed = [held(1, level=1), held(2, CheckIn(), after=1, level=1)]
    assert brings(ask(Position(2, 1), *missed, overruling=said(Word.CLIMB))) == (RowKind.SESSION, 2, 0)
