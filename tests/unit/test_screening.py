"""What is asked about a body before a course begins, and what follows from the answers."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.cautions import Caution
from plans.screening import HEALTH, LISTS, NO, NONE, SOMETHING, YES, Step, allowed, answered, next_step, screened

PLAIN = {"age": "adult", "inside": NONE, "outside": NONE, "active": YES, "usual": "0"}


def walked(wanted: dict[str, str]) -> dict[str, str]:
    """A whole record: what is asked is answered as wanted, all else in the plainest way."""
    record: dict[str, str] = {}
    while (step := next_step(record)) is not None:
        record = answered(record, step, wanted.get(step, PLAIN.get(step, NO)))
    return record


def test_somebody_well_answers_five_questions_and_begins() -> None:
    record = walked({})
    assert list(record) == ["age", "inside", "outside", "active", "usual"]
    assert screened(record).waits == ()


def test_only_something_opens_the_single_questions_of_its_list() -> None:
    record = walked({"inside": SOMETHING, "breath": YES})
    assert [step for step in record if step in LISTS[Step.INSIDE]] == list(LISTS[Step.INSIDE])
    assert not set(record) & set(LISTS[Step.OUTSIDE])
    assert screened(record).waits == (Step.BREATH,)


@pytest.mark.parametrize(
    ("said", "active", "waits"),
    [
        # the cells of the ACSM's screening algorithm for light and moderate work (Riebe et al. 2015)
        ({}, YES, False),
        ({}, NO, False),
        ({"inside": SOMETHING, "disease": YES}, YES, False),
        ({"inside": SOMETHING, "disease": YES}, NO, True),
        ({"inside": SOMETHING, "chest": YES}, YES, True),
        ({"inside": SOMETHING, "chest": YES}, NO, True),
        ({"inside": SOMETHING, "disease": YES, "faint": YES}, YES, True),
    ],
)
def test_symptoms_wait_and_a_known_disease_waits_for_somebody_inactive(
    said: dict[str, str], active: str, waits: bool
) -> None:
    assert bool(screened(walked(said | {"active": active})).waits) is waits


@pytest.mark.parametrize("step", [step for step in LISTS[Step.OUTSIDE] if step is not Step.LOOSE])
def test_what_bones_joints_and_nerves_have_been_through_waits(step: Step) -> None:
    assert screened(walked({"outside": SOMETHING, step: YES})).waits == (step,)


def test_loose_joints_change_the_movements_and_are_told_to_the_coach() -> None:
    found = screened(walked({"outside": SOMETHING, "loose": YES}))
    assert (found.waits, found.loose, found.noted) == ((), True, (Step.LOOSE,))


def test_something_without_any_single_yes_waits() -> None:
    assert screened(walked({"outside": SOMETHING})).waits == (Step.OUTSIDE,)


@pytest.mark.parametrize(
    ("pain", "waits", "usual"), [(0, False, 0), (2, False, 2), (3, True, 3), (4, True, 4), (5, True, 0)]
)
def test_a_usual_pain_above_two_waits_and_above_four_is_none(pain: int, waits: bool, usual: int) -> None:
    found = screened(walked({"usual": str(pain)}))
    assert (bool(found.waits), found.usual) == (waits, usual)


def test_ages() -> None:
    assert screened(walked({"age": "under-18"})).too_young
    assert screened(walked({"age": "older"})).older


def test_an_answer_that_a_question_does_not_have_is_refused() -> None:
    with pytest.raises(ValueError, match="adult"):
        answered({}, "age", "yes")
    with pytest.raises(ValueError, match="nonsense"):
        answered({}, "nonsense", "yes")


# --- what the programme's own movements ask for ---------------------------------------------------------------------

KNEES = (Caution.ONE_LEG_BALANCE, Caution.FOLD_WITH_LEG_SYMPTOMS, Caution.KNEELING)


def of_movements(wanted: dict[str, str]) -> dict[str, str]:
    """A whole record for a programme that asks about `KNEES`."""
    record: dict[str, str] = {}
    while (step := next_step(record, KNEES)) is not None:
        record = answered(record, step, wanted.get(step, (PLAIN | {"limits": NONE}).get(step, NO)))
    return record


def test_the_list_of_movements_comes_after_the_health_lists_and_opens_its_questions_in_order() -> None:
    assert list(of_movements({})) == ["age", "inside", "outside", "limits", "active", "usual"]
    assert [step for step in of_movements({"limits": SOMETHING}) if step in KNEES] == list(KNEES)


def test_what_a_body_cannot_give_is_left_out_and_told_but_does_not_wait() -> None:
    found = screened(of_movements({"limits": SOMETHING, "kneeling": YES, "one-leg-balance": YES}))
    assert (found.waits, found.limits, found.noted) == ((), (KNEES[0], KNEES[2]), (KNEES[0], KNEES[2]))


def test_a_nerve_sign_among_them_waits() -> None:
    found = screened(of_movements({"limits": SOMETHING, "fold-with-leg-symptoms": YES}))
    assert (found.waits, found.noted, found.limits) == ((KNEES[1],), (), (KNEES[1],))


def test_something_of_movements_without_any_single_yes_is_told_to_the_coach() -> None:
    found = screened(of_movements({"limits": SOMETHING}))
    assert (found.waits, found.noted) == ((), (Step.LIMITS,))
    assert screened(of_movements({})).noted == ()


def test_pregnancy_is_a_health_question_and_no_limit_of_movements() -> None:
    found = screened(walked({"outside": SOMETHING, "pregnancy": YES}))
    assert (found.waits, found.limits) == ((Step.PREGNANCY,), ())


def test_changed_health_asks_the_list_of_movements_again() -> None:
    record = {step: said for step, said in of_movements({"limits": SOMETHING}).items() if step not in HEALTH}
    assert list(record) == ["age", "active", "usual"]
    assert next_step(record | {"inside": NONE, "outside": NONE}, KNEES) is Step.LIMITS


@given(st.data())
def test_any_way_through_ends_and_any_more_yes_never_waits_less(data: st.DataObject) -> None:
    record: dict[str, str] = {}
    while (step := next_step(record, KNEES)) is not None:
        record = answered(record, step, data.draw(st.sampled_from(allowed(step)), label=step))
    before = set(screened(record).waits) - set(LISTS)
    for question in [question for question in record if record[question] == NO and question != Step.ACTIVE]:
        assert before <= set(screened(record | {question: YES}).waits)
