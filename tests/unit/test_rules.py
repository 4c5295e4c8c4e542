"""The rules row by row, and what holds for any evidence."""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.checkin import CheckIn, Completion, Flag, FlagState, Kind, Morning, Place, Why
from plans.rules import RULES, Evidence, Settings, Tell, Verdict, most_cautious, votes

DONE, PART, NONE = Completion.DONE, Completion.PART, Completion.NONE


def verdict(said: CheckIn, *, heavier: bool = False, morning: Morning | None = None) -> Verdict:
    return most_cautious(votes(Evidence(said, next_is_heavier=heavier, morning=morning)))


@pytest.mark.parametrize(
    ("pain", "expected"),
    [
        (0, Verdict.ADVANCE),
        (2, Verdict.ADVANCE),
        (3, Verdict.REPEAT),
        (5, Verdict.REPEAT),
        (6, Verdict.REST),
        (7, Verdict.REST),
        (8, Verdict.REFER),
        (10, Verdict.REFER),
    ],
)
def test_pain_alone_decides_at_the_cut_offs(pain: int, expected: Verdict) -> None:
    """2, 3, 5 and 6 are where wordings of the pain-monitoring model part (Thomee 1997; Silbernagel 2007)."""
    assert verdict(CheckIn(DONE, pain=pain)) is expected


@pytest.mark.parametrize("pain", [3, 4, 5])
def test_acceptable_pain_that_has_settled_lets_a_client_go_on_to_a_day_that_is_not_heavier(pain: int) -> None:
    said = CheckIn(DONE, pain=pain)
    assert verdict(said, morning=Morning.SETTLED) is Verdict.ADVANCE
    assert verdict(said, morning=Morning.SETTLED, heavier=True) is Verdict.REPEAT
    assert verdict(said, morning=Morning.SAME) is Verdict.EASE
    assert verdict(said, morning=Morning.WORSE) is Verdict.REST


def test_worse_on_two_mornings_running_waits_for_the_coach() -> None:
    seen = Evidence(CheckIn(DONE, pain=4), morning=Morning.WORSE, morning_before=Morning.WORSE)
    assert most_cautious(votes(seen)) is Verdict.REFER


def test_the_same_eases_once_and_not_again_on_a_rest_date() -> None:
    seen = Evidence(CheckIn(DONE, pain=4), morning=Morning.SAME, judged_before=True, on_rest=True)
    assert votes(seen) == ()


def test_a_confirmed_flag_refers_at_any_pain_and_tells_the_coach_at_once() -> None:
    said = CheckIn(DONE, pain=0, flag=Flag.CLINICIAN, flag_state=FlagState.CONFIRMED)
    (vote,) = [vote for vote in votes(Evidence(said)) if vote.rule == "red-flag"]
    assert (vote.verdict, vote.tell) == (Verdict.REFER, Tell.NOW)


def test_nerve_signs_count_as_a_confirmed_flag() -> None:
    assert verdict(CheckIn(DONE, pain=1, kind=Kind.NERVE)) is Verdict.REFER


def test_words_that_may_be_a_flag_hand_nothing_out() -> None:
    said = CheckIn(DONE, pain=0, flag=Flag.SAME_DAY, flag_state=FlagState.UNSURE)
    assert verdict(said) is Verdict.REFER
    assert verdict(replace(said, flag_state=FlagState.DENIED)) is Verdict.ADVANCE


@pytest.mark.parametrize(
    ("kind", "pain", "expected"),
    [
        (Kind.SHARP, 3, Verdict.REFER),
        (Kind.SHARP, 2, Verdict.REPEAT),
        (Kind.SHARP, 0, Verdict.ADVANCE),
        (Kind.POP, 0, Verdict.REFER),
        (Kind.DULL_BOTH, 2, Verdict.ADVANCE),
    ],
)
def test_a_sharp_pain_or_a_pop_is_strain_like(kind: Kind, pain: int, expected: Verdict) -> None:
    assert verdict(CheckIn(DONE, pain=pain, kind=kind)) is expected


def test_soreness_repeats_before_a_heavier_day_until_it_has_settled() -> None:
    said = CheckIn(DONE, pain=2, kind=Kind.DULL_BOTH)
    assert verdict(said, heavier=True) is Verdict.REPEAT
    assert verdict(said, heavier=True, morning=Morning.SETTLED) is Verdict.ADVANCE
    assert verdict(said) is Verdict.ADVANCE


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        (CheckIn(PART, pain=0, why=Why.TOO_HARD, half=True), Verdict.EASE),
        (CheckIn(PART, pain=0, why=Why.TIME, half=True), Verdict.ADVANCE),
        (CheckIn(PART, pain=0, why=Why.TIME, half=False), Verdict.REPEAT),
        (CheckIn(PART, pain=4, why=Why.TOO_HARD, half=True), Verdict.EASE),
        (CheckIn(PART, pain=0, why=Why.OTHER, half=True), Verdict.REPEAT),
        (CheckIn(NONE, why=Why.TIME), Verdict.REPEAT),
        (CheckIn(), Verdict.REPEAT),
        (CheckIn(DONE), Verdict.REPEAT),
    ],
)
def test_what_was_done_decides_where_nothing_hurts(said: CheckIn, expected: Verdict) -> None:
    assert verdict(said) is expected


def test_pain_elsewhere_below_six_votes_nothing() -> None:
    assert verdict(CheckIn(DONE, pain=5, place=Place.ELSEWHERE)) is Verdict.ADVANCE
    assert verdict(CheckIn(DONE, pain=6, place=Place.ELSEWHERE)) is Verdict.REST


@pytest.mark.parametrize("wrong", [{"clean": 3}, {"acceptable": 6}, {"severe": 9}, {"clean": -1}, {"severe": 5}])
def test_no_setting_loosens_a_hard_bound(wrong: dict[str, int]) -> None:
    with pytest.raises(ValueError, match=next(iter(wrong))):
        Settings(**wrong)


# --- for any evidence -----------------------------------------------------------------------------------------------

said_anything = st.builds(
    CheckIn,
    completion=st.sampled_from([*Completion, None]),
    pain=st.one_of(st.none(), st.integers(0, 10)),
    kind=st.sampled_from([*Kind, None]),
    place=st.sampled_from([Place.HERE, None]),
    why=st.sampled_from([*Why, None]),
    half=st.sampled_from([True, False, None]),
    sore=st.booleans(),
    flag=st.sampled_from([*Flag, None]),
    flag_state=st.sampled_from([*FlagState, None]),
)
any_evidence = st.builds(
    Evidence,
    checkin=said_anything,
    next_is_heavier=st.booleans(),
    morning=st.sampled_from([*Morning, None]),
    morning_before=st.sampled_from([*Morning, None]),
)


@given(any_evidence, st.integers(0, 10))
def test_more_pain_never_gives_a_bolder_verdict(seen: Evidence, pain: int) -> None:
    before = replace(seen, checkin=replace(seen.checkin, pain=pain))
    after = replace(seen, checkin=replace(seen.checkin, pain=min(pain + 1, 10)))
    assert most_cautious(votes(after)) >= most_cautious(votes(before))


@given(any_evidence)
def test_a_worse_morning_never_gives_a_bolder_verdict(seen: Evidence) -> None:
    order = [Morning.SETTLED, Morning.SAME, Morning.WORSE]
    found = [most_cautious(votes(replace(seen, morning=morning))) for morning in order]
    assert found == sorted(found)


@given(any_evidence, st.integers(3, 10))
def test_a_worse_kind_at_pain_of_three_and_more_never_gives_a_bolder_verdict(seen: Evidence, pain: int) -> None:
    order = [Kind.DULL_BOTH, Kind.DULL_ONE, Kind.OTHER, Kind.SHARP, Kind.NERVE]
    found = [most_cautious(votes(replace(seen, checkin=replace(seen.checkin, pain=pain, kind=kind)))) for kind in order]
    assert found == sorted(found)


@given(any_evidence)
def test_a_worse_completion_for_the_same_reason_never_gives_a_bolder_verdict(seen: Evidence) -> None:
    found = [
        most_cautious(votes(replace(seen, checkin=replace(seen.checkin, completion=how, why=Why.TIME))))
        for how in (DONE, PART, NONE)
    ]
    assert found == sorted(found)


@given(any_evidence, st.permutations(RULES))
def test_the_order_of_the_rules_decides_nothing(seen: Evidence, order: list[object]) -> None:
    found = {vote.rule for rule in order if (vote := rule(seen)) is not None}  # type: ignore[operator]
    assert found == {vote.rule for vote in votes(seen)} - {"clean"}


@given(any_evidence)
def test_a_confirmed_flag_wins_over_everything(seen: Evidence) -> None:
    flagged = replace(seen.checkin, flag=Flag.CLINICIAN, flag_state=FlagState.CONFIRMED)
    assert most_cautious(votes(replace(seen, checkin=flagged))) is Verdict.REFER
