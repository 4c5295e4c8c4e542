"""What is worked out once of an answer says what the rules say of it, and what is kept for an equal one stays true."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import date, timedelta
from statistics import median

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.checkin import CheckIn, Completion, Flag, FlagState, Kind, Morning, Place, Why
from plans.course import Decision, Position
from plans.heard import hearing
from plans.ledger import Entry, Question, RowKind
from plans.past import Past
from plans.questions import question_of
from plans.rehearsal import Stage, journey
from plans.replay import replayed
from plans.rules import (
    Evidence,
    Settings,
    counted_pain,
    counts_as_done,
    deciding,
    hurts_on,
    is_sore,
    most_cautious,
    votes,
)
from plans.simulated import natures
from tests.unit.test_sample_programmes import SAMPLES

MONDAY = date(2026, 5, 4)
scales = st.none() | st.integers(0, 10)
answers = st.builds(
    CheckIn,
    completion=st.none() | st.sampled_from(Completion),
    pain=scales,
    kind=st.none() | st.sampled_from(Kind),
    place=st.none() | st.sampled_from(Place),
    why=st.none() | st.sampled_from(Why),
    half=st.none() | st.booleans(),
    sore=st.booleans(),
    odd=st.booleans(),
    tightness=scales,
    flag=st.none() | st.sampled_from(Flag),
    flag_state=st.none() | st.sampled_from(FlagState),
)
cut_offs = st.builds(Settings, st.integers(0, 2), st.integers(3, 5), st.integers(6, 8))
kinds = st.sampled_from([RowKind.SESSION, RowKind.REST, RowKind.MEASURE])


@given(answers, cut_offs, st.integers(0, 4))
def test_an_answer_is_heard_as_the_rules_read_it(said: CheckIn, limits: Settings, usual: int) -> None:
    heard = hearing(limits, usual)(said)
    assert heard.hurts is hurts_on(said, usual)
    assert heard.sore is is_sore(said, usual)
    assert heard.done is (said.completion in (Completion.DONE, Completion.PART))
    numbered = said.pain is not None
    assert heard.clean is (numbered and counts_as_done(said) and counted_pain(said, usual) <= limits.clean)
    here = said.place is not Place.ELSEWHERE
    assert heard.counted == (counted_pain(said, usual) if numbered and here else None)
    assert (heard.felt is None) is not (here and (numbered or said.sore))
    assert heard.well is (said.pain is not None and said.pain <= usual and not said.sore)
    assert heard.nerves_denied is (said.kind is Kind.NERVE and said.flag_state is FlagState.DENIED)
    assert heard.reports is (hurts_on(said, usual) or said.odd or said.flag is not None)
    assert hearing(limits, usual)(replace(said)) is heard, "equal answers are one object"


@given(answers, kinds, st.lists(st.sampled_from(Morning), max_size=2), st.booleans(), st.integers(0, 4))
def test_an_answer_that_opens_nothing_leaves_no_question(
    said: CheckIn, kind: RowKind, mornings: list[Morning], asked: bool, usual: int
) -> None:
    """The question as it is read off the answer, without what was heard of it."""
    past = Past.of([Entry(MONDAY, kind, 1, checkin=said)], Settings(), usual)
    today = MONDAY + timedelta(days=3)
    past.mornings = [(MONDAY + timedelta(days=n + 1), morning) for n, morning in enumerate(mornings)]
    past.asked_on = [MONDAY + timedelta(days=1)] if asked else []
    done = kind is RowKind.SESSION and said.completion in (Completion.DONE, Completion.PART)
    missing = (said.odd and None in (said.kind, said.pain)) or (done and said.pain is None)
    expected = None
    if past.source is None:
        pass
    elif said.flag_state is FlagState.UNSURE:
        expected = Question.FLAG
    elif missing and not asked:
        expected = Question.PAIN
    elif hurts_on(said, usual) and Morning.SETTLED not in mornings:
        expected = Question.MORNING
    assert question_of(past, asked_on=today) is expected


@given(st.lists(scales, min_size=1, max_size=12))
def test_tightness_is_held_against_the_median_of_those_before(told: list[int | None]) -> None:
    said = (CheckIn(Completion.DONE, pain=0, tightness=tight) for tight in told)
    rows = [Entry(MONDAY + timedelta(days=n), RowKind.SESSION, 1, checkin=one) for n, one in enumerate(said)]
    before = [tight for tight in told[:-1] if tight is not None]
    expected = told[-1] - median(before) if told[-1] is not None and len(before) >= 5 else 0
    assert Past.of(rows, Settings()).over_tightness == expected


@given(answers)
def test_the_deciding_vote_is_the_first_of_the_most_cautious(said: CheckIn) -> None:
    cast = votes(Evidence(said))
    winners = [vote for vote in cast if vote.verdict is not None and vote.verdict is most_cautious(cast)]
    assert deciding(cast) is (winners[0] if winners else None)


@pytest.mark.parametrize("name", sorted(SAMPLES))
def test_a_decision_kept_from_equal_evidence_is_what_a_fresh_look_gives(name: str) -> None:
    """All clients share the kept decisions; each must hold this client's own evidence, and its votes."""
    stage, seen = Stage(SAMPLES[name]), 0

    def watch(_position: Position, past: Past, decision: Decision, _today: date) -> None:
        nonlocal seen
        if decision.seen is None:
            return
        seen += 1
        assert decision.seen.checkin == (past.source.checkin if past.source else CheckIn())
        assert decision.seen.over_tightness == past.over_tightness
        assert (decision.seen.tries, decision.seen.lingering) == (past.earlier_tries, past.lingering())
        own = tuple(vote for vote in decision.votes if vote.rule != "lapse")
        assert own == votes(decision.seen)
        stored = replayed(decision.as_json())
        assert stored is not None
        assert stored[1] == own

    for number, nature in enumerate(natures(60, random.Random(4))):
        journey(stage, nature, random.Random(number), watch=watch)
    assert seen > 1000
