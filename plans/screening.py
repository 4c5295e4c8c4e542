"""Before a course begins: what is asked about a body, in our own words, and what follows from the answers.

The order of thought is that of the ACSM's screening algorithm (Riebe et al. 2015, Med Sci Sports Exerc 47:2473): how
active somebody is, symptoms or known disease of heart, vessels, metabolism or kidneys, and the intensity, which is
light here. Precautions for joints, bones and nerves are common practice. Two lists come first, then one of what the
programme's own movements ask for (`plans.limits`); only "something of this" opens their single questions. Answers are
plain words in a record; what is asked next is the first that it lacks.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum

from plans.cautions import Caution
from plans.limits import OF_EVERYBODY
from plans.rules import MOST_USUAL

Answers = Mapping[str, str]
Question = str
"""A Step, or a Caution of the programme that is asked about by itself."""


class Step(StrEnum):
    """A question of the screening."""

    AGE = "age"
    INSIDE = "inside"
    """One list: heart, breath, fainting, high blood pressure, diabetes, known disease."""
    CHEST = "chest"
    BREATH = "breath"
    FAINT = "faint"
    DISEASE = "disease"
    OUTSIDE = "outside"
    """One list: operation, fracture, joints, bones, pregnancy, nerves, something under treatment."""
    OPERATION = "operation"
    JOINT = "joint"
    BONES = "bones"
    PREGNANCY = "pregnancy"
    NERVES = "nerves"
    LOOSE = "loose"
    TREATED = "treated"
    LIMITS = "limits"
    """One list: what the programme's movements ask for, by their cautions."""
    ACTIVE = "active"
    USUAL = "usual"
    """What the area always feels like, 0-10."""


LISTS = {
    Step.INSIDE: (Step.CHEST, Step.BREATH, Step.FAINT, Step.DISEASE),
    Step.OUTSIDE: (
        Step.OPERATION,
        Step.JOINT,
        Step.BONES,
        Step.PREGNANCY,
        Step.NERVES,
        Step.LOOSE,
        Step.TREATED,
    ),
}
"""The two lists about health, and the single questions that each opens."""

OF_MOVEMENTS = tuple(caution for caution in Caution if caution not in OF_EVERYBODY)
"""What the third list may open, whatever the programme."""

HEALTH = frozenset(
    (*(step for first, singles in LISTS.items() for step in (first, *singles)), Step.LIMITS, *OF_MOVEMENTS)
)
"""Everything about health: what is asked again when somebody says that it has changed."""

NERVES = (Caution.FOLD_WITH_LEG_SYMPTOMS, Caution.REACH_WITH_ARM_SYMPTOMS)
"""Cautions whose yes is a nerve sign."""

YOUNG, ADULT, OLDER = "under-18", "adult", "older"
NONE, SOMETHING, YES, NO = "none", "something", "yes", "no"


def allowed(question: Question) -> tuple[str, ...]:
    """The answers that a question has. Raises ValueError for what is none."""
    if question in OF_MOVEMENTS:
        return (YES, NO)
    step = Step(question)
    if step is Step.AGE:
        return (YOUNG, ADULT, OLDER)
    if step is Step.USUAL:
        return tuple(str(n) for n in range(11))
    return (NONE, SOMETHING) if step in (*LISTS, Step.LIMITS) else (YES, NO)


def next_step(answers: Answers, cautions: Sequence[Caution] = ()) -> Step | Caution | None:
    """The first question that is still open, with a programme's `cautions`; None when all is answered.

    >>> next_step({}), next_step({"age": "adult", "inside": "none"})
    (<Step.AGE: 'age'>, <Step.OUTSIDE: 'outside'>)
    """
    return next((step for step in _steps(answers, cautions) if step not in answers), None)


def _steps(answers: Answers, cautions: Sequence[Caution]) -> Iterator[Step | Caution]:
    yield Step.AGE
    for first, singles in LISTS.items():
        yield first
        if answers.get(first) == SOMETHING:
            yield from singles
    if cautions:
        yield Step.LIMITS
        if answers.get(Step.LIMITS) == SOMETHING:
            yield from cautions
    yield Step.ACTIVE
    yield Step.USUAL


def answered(answers: Answers, question: Question, value: str) -> dict[str, str]:
    """The record with one more answer. Raises ValueError for an answer that the question does not have."""
    if value not in allowed(question):
        raise ValueError(f"{value!r} is no answer to {question}; there are {', '.join(allowed(question))}")
    return {**answers, question: value}


@dataclass(frozen=True, slots=True)
class Screened:
    """What follows: `waits` are the reasons for which the coach's word comes first, `noted` what the coach only hears.

    `usual` is the usual pain that the rules allow for (0-4); above that it counts for nothing and is a reason to wait.
    `limits` are the cautions that hold for this body: movements with them are left out.
    """

    too_young: bool
    older: bool
    loose: bool
    usual: int
    waits: tuple[Step | Caution, ...]
    noted: tuple[Step | Caution, ...]
    limits: tuple[Caution, ...]


def screened(answers: Answers) -> Screened:
    """What a record leads to, as far as it goes.

    A symptom waits in any case; a known disease only for somebody who is not active, since the work is light (Riebe et
    al. 2015, for moderate and lighter work). "Something of this" of the health lists without any single yes waits too.
    A nerve sign that a movement's caution asks about waits; what else a movement asks for is told to the coach.
    """
    usual = int(answers.get(Step.USUAL, 0))
    limits = tuple(caution for caution in OF_MOVEMENTS if answers.get(caution) == YES)
    noted = (*(step for step in (Step.DISEASE, Step.LOOSE) if answers.get(step) == YES), *limits, *_unsaid(answers))
    waits = tuple(_waits(answers, usual))
    return Screened(
        too_young=answers.get(Step.AGE) == YOUNG,
        older=answers.get(Step.AGE) == OLDER,
        loose=answers.get(Step.LOOSE) == YES,
        usual=usual if usual <= MOST_USUAL else 0,
        waits=waits,
        noted=tuple(step for step in noted if step not in waits),
        limits=limits,
    )


def _unsaid(answers: Answers) -> tuple[Step, ...]:
    """The third list when something of it holds and no single question found out what."""
    asked = [caution for caution in OF_MOVEMENTS if caution in answers]
    nothing = bool(asked) and all(answers[caution] == NO for caution in asked)
    return (Step.LIMITS,) if answers.get(Step.LIMITS) == SOMETHING and nothing else ()


USUAL_ALONE = 2
"""Up to this usual pain a course begins by itself; above it the coach's word comes first."""


def _waits(answers: Answers, usual: int) -> Iterator[Step | Caution]:
    for first, singles in LISTS.items():
        said = [step for step in singles if answers.get(step) == YES]
        if answers.get(first) == SOMETHING and not said and all(step in answers for step in singles):
            yield first
        for step in said:
            if step is Step.LOOSE or (step is Step.DISEASE and answers.get(Step.ACTIVE) == YES):
                continue
            yield step
    yield from (caution for caution in NERVES if answers.get(caution) == YES)
    if usual > USUAL_ALONE:
        yield Step.USUAL
