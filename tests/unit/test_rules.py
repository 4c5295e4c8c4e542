"""The rules row by row, and what holds for any evidence."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.checkin import CheckIn, Completion, Flag, FlagState, Kind, Morning, Place, Side, Why
from plans.replay import evidence_json, evidence_of
from plans.rules import (
    RULES,
    Evidence,
    Lingering,
    Settings,
    Tell,
    Verdict,
    Vote,
    counted_pain,
    deciding,
    hurts_on,
    is_sore,
    most_cautious,
    votes,
)

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


def nerve(pain: int | None, state: FlagState) -> CheckIn:
    return CheckIn(DONE, pain=pain, kind=Kind.NERVE, flag=Flag.CLINICIAN, flag_state=state)


@pytest.mark.parametrize(
    ("said", "before", "expected"),
    [
        (nerve(1, FlagState.DENIED), False, Verdict.EASE),
        (nerve(2, FlagState.DENIED), False, Verdict.EASE),
        (nerve(3, FlagState.DENIED), False, Verdict.REFER),
        (nerve(None, FlagState.DENIED), False, Verdict.REFER),
        (nerve(1, FlagState.DENIED), True, Verdict.REFER),
        (nerve(0, FlagState.CONFIRMED), False, Verdict.REFER),
        (nerve(0, FlagState.UNSURE), False, Verdict.REFER),
        (CheckIn(DONE, pain=0, kind=Kind.NERVE), False, Verdict.REFER),
    ],
)
def test_nerve_signs_ease_only_when_gone_mild_and_new(said: CheckIn, before: bool, expected: Verdict) -> None:
    assert most_cautious(votes(Evidence(said, nerve_before=before))) is expected


@pytest.mark.parametrize(
    ("lingering", "expected", "tell"),
    [
        (Lingering.NO, Verdict.ADVANCE, None),
        (Lingering.NOTED, Verdict.ADVANCE, Tell.LIST),
        (Lingering.REST, Verdict.REST, Tell.NOW),
    ],
)
def test_what_is_there_too_long_rests_or_is_noted(lingering: Lingering, expected: Verdict, tell: Tell | None) -> None:
    given = votes(Evidence(CheckIn(DONE, pain=2), lingering=lingering))
    assert most_cautious(given) is expected
    assert [vote.tell for vote in given if vote.rule.startswith("sore-")] == ([tell] if tell else [])


@pytest.mark.parametrize(
    ("weeks", "expected"),
    [
        (None, Verdict.ADVANCE),
        ((2.0, 2.9), Verdict.ADVANCE),
        ((2.1, 3.0), Verdict.ADVANCE),
        ((2.0, 3.0), Verdict.EASE),
        ((1.1, 3.0), Verdict.EASE),
        ((1.0, 3.0), Verdict.REST),
        ((4.0, 3.0), Verdict.ADVANCE),
    ],
)
def test_pain_that_rises_from_week_to_week_eases_or_rests(weeks: tuple[float, float] | None, expected: Verdict) -> None:
    assert most_cautious(votes(Evidence(CheckIn(DONE, pain=2), weeks=weeks))) is expected


@pytest.mark.parametrize(("over", "expected"), [(2.5, Verdict.ADVANCE), (3, Verdict.REPEAT)])
def test_much_tighter_than_usual_repeats(over: float, expected: Verdict) -> None:
    assert most_cautious(votes(Evidence(CheckIn(DONE, pain=0), over_tightness=over))) is expected


@pytest.mark.parametrize(
    ("said", "tries", "light", "expected"),
    [
        (CheckIn(DONE, pain=4), 2, 0, Verdict.EASE),
        (CheckIn(DONE, pain=4), 1, 0, Verdict.REPEAT),
        (CheckIn(DONE, pain=4), 0, 3, Verdict.EASE),
        (CheckIn(DONE, pain=4), 0, 2, Verdict.REPEAT),
        (CheckIn(DONE, pain=0), 2, 3, Verdict.ADVANCE),
        (CheckIn(NONE, why=Why.TIME), 2, 0, Verdict.EASE),
    ],
)
def test_a_day_that_is_not_passed_again_and_again_is_eased(
    said: CheckIn, tries: int, light: int, expected: Verdict
) -> None:
    assert most_cautious(votes(Evidence(said, tries=tries, light_tries=light))) is expected


@pytest.mark.parametrize(
    ("usual", "pain", "expected"),
    [
        (0, 3, Verdict.REPEAT),
        (2, 3, Verdict.ADVANCE),
        (2, 4, Verdict.REPEAT),
        (4, 5, Verdict.ADVANCE),
        (4, 6, Verdict.REST),
        (4, 8, Verdict.REFER),
    ],
)
def test_the_usual_pain_and_a_point_more_counts_as_two(usual: int, pain: int, expected: Verdict) -> None:
    assert most_cautious(votes(Evidence(CheckIn(DONE, pain=pain), usual=usual))) is expected


def test_the_usual_pain_is_no_soreness_and_the_same_votes_nothing() -> None:
    said = CheckIn(DONE, pain=2, kind=Kind.DULL_BOTH)
    assert most_cautious(votes(Evidence(said, next_is_heavier=True, usual=2))) is Verdict.ADVANCE
    assert most_cautious(votes(Evidence(said, morning=Morning.SAME, usual=2))) is Verdict.ADVANCE
    assert most_cautious(votes(Evidence(said, morning=Morning.WORSE, usual=2))) is Verdict.REST
    assert not hurts_on(said, 2)
    assert most_cautious(votes(Evidence(replace(said, kind=Kind.SHARP, pain=3), usual=3))) is Verdict.REFER


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


@pytest.mark.parametrize(
    "bounds", [(0, 0, 1), (0, 5, 6), (2, 2, 3), (2, 5, 8), (2, 5, 6), (1, 3, 4)], ids=lambda found: str(found)
)
def test_settings_may_be_as_strict_as_anybody_likes(bounds: tuple[int, int, int]) -> None:
    found = Settings(*bounds)
    assert (found.clean, found.acceptable, found.severe) == bounds


@pytest.mark.parametrize("bounds", [(2, 1, 8), (0, 5, 5), (3, 5, 8), (2, 6, 8), (2, 5, 9)])
def test_a_bound_that_overtakes_its_neighbour_is_refused(bounds: tuple[int, int, int]) -> None:
    with pytest.raises(ValueError, match="settings only make rules stricter"):
        Settings(*bounds)


def flagged(state: FlagState) -> CheckIn:
    return CheckIn(DONE, pain=0, flag=Flag.CLINICIAN, flag_state=state)


@pytest.mark.parametrize(
    ("seen", "expected"),
    [
        (
            Evidence(flagged(FlagState.CONFIRMED)),
            Vote("red-flag", Verdict.REFER, Tell.NOW, {"flag": "clinician"}),
        ),
        (
            Evidence(flagged(FlagState.UNSURE)),
            Vote("unsure-flag", Verdict.REFER, Tell.NOW, {"flag": "clinician"}),
        ),
        (
            Evidence(nerve(1, FlagState.DENIED)),
            Vote("nerve-signs", Verdict.EASE, Tell.LIST, {"gone": True}),
        ),
        (
            Evidence(nerve(3, FlagState.DENIED)),
            Vote("nerve-signs", Verdict.REFER, Tell.NOW, {"gone": True}),
        ),
        (
            Evidence(CheckIn(DONE, pain=0, kind=Kind.NERVE)),
            Vote("nerve-signs", Verdict.REFER, Tell.NOW, {"gone": False}),
        ),
        (
            Evidence(CheckIn(DONE, pain=3, kind=Kind.SHARP)),
            Vote("strain-like", Verdict.REFER, Tell.NOW, {"kind": "sharp", "pain": 3}),
        ),
        (
            Evidence(CheckIn(DONE, kind=Kind.POP)),
            Vote("strain-like", Verdict.REFER, Tell.NOW, {"kind": "pop", "pain": 0}),
        ),
        (Evidence(CheckIn(DONE, pain=8)), Vote("severe", Verdict.REFER, Tell.NOW, {"pain": 8})),
        (Evidence(CheckIn(DONE, pain=6)), Vote("excessive", Verdict.REST, Tell.NOW, {"pain": 6})),
        (
            Evidence(CheckIn(DONE, pain=0), morning=Morning.WORSE, morning_before=Morning.WORSE),
            Vote("morning-after", Verdict.REFER, Tell.NOW, {"morning": "worse-twice"}),
        ),
        (
            Evidence(CheckIn(DONE, pain=0), morning=Morning.WORSE, morning_before=Morning.SAME),
            Vote("morning-after", Verdict.REST, Tell.NOW, {"morning": "worse"}),
        ),
        (
            Evidence(CheckIn(DONE, pain=0), morning=Morning.SAME),
            Vote("morning-after", Verdict.EASE, None, {"morning": "same"}),
        ),
        (
            Evidence(CheckIn(DONE, pain=3)),
            Vote("acceptable", Verdict.REPEAT, None, {"pain": 3, "heavier": False}),
        ),
        (
            Evidence(CheckIn(PART, pain=5, why=Why.TOO_HARD), next_is_heavier=True),
            Vote("acceptable", Verdict.EASE, None, {"pain": 5, "heavier": True}),
        ),
        (
            Evidence(CheckIn(DONE, pain=1, kind=Kind.SHARP)),
            Vote("sore", Verdict.REPEAT, None, {"pain": 1, "kind": "sharp"}),
        ),
        (
            Evidence(CheckIn(DONE, pain=2, sore=True), next_is_heavier=True),
            Vote("sore", Verdict.REPEAT, None, {"kind": "dull", "heavier": True}),
        ),
        (
            Evidence(CheckIn(DONE, pain=2), lingering=Lingering.NOTED),
            Vote("sore-noted", None, Tell.LIST, {"pain": 2}),
        ),
        (
            Evidence(CheckIn(DONE), lingering=Lingering.NOTED),
            Vote("sore-noted", None, Tell.LIST, {"pain": 0}),
        ),
        (
            Evidence(CheckIn(DONE, pain=2), lingering=Lingering.REST),
            Vote("sore-too-long", Verdict.REST, Tell.NOW, {"pain": 2}),
        ),
        (
            Evidence(CheckIn(DONE), lingering=Lingering.REST),
            Vote("sore-too-long", Verdict.REST, Tell.NOW, {"pain": 0}),
        ),
        (
            Evidence(CheckIn(DONE, pain=0), weeks=(1.24, 3.26)),
            Vote("week-on-week", Verdict.REST, Tell.NOW, {"before": 1.2, "now": 3.3}),
        ),
        (
            Evidence(CheckIn(DONE, pain=0), weeks=(2.04, 3.16)),
            Vote("week-on-week", Verdict.EASE, None, {"before": 2.0, "now": 3.2}),
        ),
        (Evidence(CheckIn(DONE, pain=0), over_tightness=3), Vote("tight", Verdict.REPEAT, None, {"over": 3})),
        (Evidence(CheckIn(PART, pain=0, why=Why.TOO_HARD)), Vote("too-hard", Verdict.EASE)),
        (Evidence(CheckIn(PART, pain=0, why=Why.TIME)), Vote("cut-short", Verdict.REPEAT)),
        (Evidence(CheckIn(DONE)), Vote("unanswered", Verdict.REPEAT)),
        (Evidence(CheckIn(PART)), Vote("unanswered", Verdict.REPEAT)),
        (Evidence(CheckIn(NONE)), Vote("not-done", Verdict.REPEAT, None, {"answered": True})),
        (Evidence(CheckIn()), Vote("not-done", Verdict.REPEAT, None, {"answered": False})),
        (
            Evidence(CheckIn(DONE, pain=4), tries=2),
            Vote("stuck", Verdict.EASE, Tell.LIST, {"tries": 3}),
        ),
        (
            Evidence(CheckIn(DONE, pain=4), tries=2, light_tries=5),
            Vote("stuck", Verdict.EASE, Tell.LIST, {"tries": 5}),
        ),
        (Evidence(CheckIn(DONE, pain=2)), Vote("clean", Verdict.ADVANCE, None, {"pain": 2})),
    ],
    ids=lambda found: found.rule if isinstance(found, Vote) else "",
)
def test_each_vote_says_its_verdict_when_the_coach_hears_and_the_numbers_behind(seen: Evidence, expected: Vote) -> None:
    """Whether a coach is called at once hangs on `tell`, what client and coach read on the numbers."""
    assert [vote for vote in votes(seen) if vote.rule == expected.rule] == [expected]


@pytest.mark.parametrize(
    ("said", "rules"),
    [
        (CheckIn(DONE, pain=7), ["excessive"]),
        (CheckIn(DONE, pain=8), ["severe"]),
        (CheckIn(DONE, pain=7, place=Place.ELSEWHERE), ["excessive"]),
        (nerve(1, FlagState.UNSURE), ["unsure-flag"]),
        (nerve(1, FlagState.CONFIRMED), ["red-flag", "nerve-signs"]),
        (CheckIn(DONE, pain=2, kind=Kind.SHARP), ["sore"]),
        (CheckIn(DONE, pain=2, kind=Kind.SHARP, place=Place.ELSEWHERE), ["clean"]),
        (CheckIn(PART, pain=4, why=Why.TOO_HARD), ["acceptable", "too-hard"]),
        (CheckIn(NONE, pain=6), ["excessive", "not-done"]),
    ],
)
def test_a_coach_is_told_of_each_reason_once(said: CheckIn, rules: list[str]) -> None:
    assert [vote.rule for vote in votes(Evidence(said))] == rules


def test_on_a_rest_day_nothing_was_to_be_done_and_no_day_is_stuck() -> None:
    assert votes(Evidence(CheckIn(), on_rest=True, tries=5, light_tries=5)) == ()


@pytest.mark.parametrize(
    ("said", "usual", "asked"),
    [
        (CheckIn(DONE, pain=2), 0, False),
        (CheckIn(DONE, pain=3), 0, True),
        (CheckIn(DONE), 0, False),
        (CheckIn(DONE, sore=True), 0, True),
        (CheckIn(DONE, pain=0, kind=Kind.DULL_ONE), 0, True),
        (CheckIn(DONE, pain=0, kind=Kind.NERVE), 0, True),
        (CheckIn(DONE, pain=5, place=Place.ELSEWHERE), 0, False),
        (CheckIn(DONE, place=Place.ELSEWHERE), 0, False),
        (CheckIn(DONE, pain=6, place=Place.ELSEWHERE), 0, True),
        (CheckIn(DONE, pain=4), 3, False),
        (CheckIn(DONE, pain=5), 3, True),
    ],
)
def test_the_next_morning_is_asked_about_what_hurts_on(said: CheckIn, usual: int, asked: bool) -> None:
    assert hurts_on(said, usual) is asked


def test_nobody_has_a_usual_pain_unsaid() -> None:
    said = CheckIn(DONE, pain=2, sore=True)
    assert hurts_on(said)
    assert is_sore(said)
    assert verdict(said, heavier=True) is Verdict.REPEAT


@pytest.mark.parametrize(
    ("said", "usual", "sore"),
    [
        (CheckIn(DONE, pain=2, sore=True), 0, True),
        (CheckIn(DONE, pain=3, sore=True), 0, False),
        (CheckIn(DONE, sore=True), 0, True),
        (CheckIn(DONE, pain=2, kind=Kind.DULL_ONE), 0, True),
        (CheckIn(DONE, pain=2, kind=Kind.SHARP), 0, False),
        (CheckIn(DONE, pain=2, sore=True), 1, False),
        (CheckIn(DONE, pain=2, sore=True, place=Place.ELSEWHERE), 1, True),
    ],
)
def test_soreness_is_dull_or_said_so_with_pain_up_to_two(said: CheckIn, usual: int, sore: bool) -> None:
    assert is_sore(said, usual) is sore


def test_the_deciding_vote_is_the_first_of_the_most_cautious_and_none_where_nothing_was_decided() -> None:
    noted, first, second = Vote("noted", None), Vote("first", Verdict.REST), Vote("second", Verdict.REST)
    assert deciding((noted, Vote("early", Verdict.EASE), first, second)) is first
    assert deciding((noted,)) is None
    assert most_cautious((noted,)) is Verdict.REPEAT


def test_acceptable_pain_before_which_nothing_is_heavier_has_passed_when_it_settled() -> None:
    """The vote that it was clean carries the pain; half of it for want of time is enough."""
    said = CheckIn(PART, pain=5, why=Why.TIME, half=True)
    given = votes(Evidence(said, morning=Morning.SETTLED))
    assert given == (Vote("clean", Verdict.ADVANCE, None, {"pain": 5}),)
    assert Verdict.ADVANCE.word == "advance"


# --- for any evidence -----------------------------------------------------------------------------------------------

said_anything = st.builds(
    CheckIn,
    completion=st.sampled_from([*Completion, None]),
    pain=st.one_of(st.none(), st.integers(0, 10)),
    kind=st.sampled_from([*Kind, None]),
    place=st.sampled_from([Place.HERE, None]),
    side=st.sampled_from([*Side, None]),
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
    usual=st.integers(0, 4),
    lingering=st.sampled_from(Lingering),
    weeks=st.none() | st.tuples(st.floats(0, 10), st.floats(0, 10)),
    over_tightness=st.sampled_from([0, 2.5, 3, 6]),
    tries=st.integers(0, 3),
    light_tries=st.integers(0, 4),
    nerve_before=st.booleans(),
)
bounds = st.tuples(st.integers(0, 2), st.integers(2, 5), st.integers(6, 8)).map(lambda b: Settings(*b))


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
    assert found == {vote.rule for vote in votes(seen)} - {"clean", "stuck"}


@given(any_evidence)
def test_a_confirmed_flag_wins_over_everything(seen: Evidence) -> None:
    flagged = replace(seen.checkin, flag=Flag.CLINICIAN, flag_state=FlagState.CONFIRMED)
    assert most_cautious(votes(replace(seen, checkin=flagged))) is Verdict.REFER


@given(any_evidence, bounds, bounds)
def test_stricter_settings_never_give_a_bolder_verdict(seen: Evidence, one: Settings, other: Settings) -> None:
    strict = Settings(*(min(getattr(one, name), getattr(other, name)) for name in ("clean", "acceptable", "severe")))
    loose = Settings(*(max(getattr(one, name), getattr(other, name)) for name in ("clean", "acceptable", "severe")))
    assert most_cautious(votes(replace(seen, settings=strict))) >= most_cautious(votes(replace(seen, settings=loose)))


@given(any_evidence, bounds)
def test_evidence_that_was_stored_gives_the_same_votes_again(seen: Evidence, settings: Settings) -> None:
    seen = replace(seen, settings=settings)
    again = evidence_of(json.loads(json.dumps(evidence_json(seen))))
    assert again == seen
    assert votes(again) == votes(seen)


def test_a_pain_number_that_nobody_gave_is_never_made_up() -> None:
    with pytest.raises(ValueError, match=r"^no pain number was given$"):
        counted_pain(CheckIn(DONE), 0)
    assert (counted_pain(CheckIn(DONE, pain=4), 3), counted_pain(CheckIn(DONE, pain=5), 3)) == (2, 5)
