"""The checker's dose limits at their edges.

Sources: 60 s an exercise on at least two days a week (ACSM position stand, Garber et al. 2011, Med Sci Sports Exerc
43:1334); at least 5 days and 5 minutes a week (Thomas et al. 2018, Int J Sports Med 39:243); no further gain past 4
minutes a session and 10 a week (Ingram et al. 2025, Sports Med). The cases are plain arithmetic on these numbers.
"""

from __future__ import annotations

import pytest

from plans.dose import HOLDING_KINDS, muscle_seconds
from plans.lint import check
from plans.movements import Muscle
from plans.reading import read_programme
from tests.texts import HEAD, REST

DAY = """\
  - session:
      warm-up: Walk.
      blocks:
        - items:
            - {{movement: reach, sets: {sets}, hold: {hold}, side: each}}
"""


def week(sets: int, hold: int, days: int) -> str:
    """A week of one exercise: so many sets of a hold on each side, on so many days."""
    return HEAD + DAY.format(sets=sets, hold=hold) * days + REST * (7 - days)


def codes(text: str) -> tuple[list[str], list[str], list[str]]:
    report = check(read_programme(text))
    errors, warnings, notes = ([f.code for f in found] for found in (report.errors, report.warnings, report.notes))
    return errors, warnings, notes


@pytest.mark.parametrize(
    ("sets", "hold", "days", "errors", "warnings", "notes"),
    [
        (2, 30, 5, [], [], []),  # 60 s an exercise, 300 s a week: at the edge, fine
        (3, 30, 3, [], ["dose-small"], ["some-days"]),  # 270 s a week
        (1, 30, 7, [], ["dose-small", "exercise-short"], []),  # 210 s a week, 30 s an exercise
        (4, 60, 5, [], [], ["dose-large"]),  # 240 s a session is at its limit, 1,200 s a week above
        (5, 60, 5, [], [], ["dose-large", "session-large"]),  # 300 s a session
        (2, 30, 2, [], ["dose-small"], ["some-days"]),  # 120 s a week: the least that may be published
        (1, 59, 2, ["dose-too-small"], ["exercise-short"], ["some-days"]),  # 118 s a week
        (2, 30, 1, ["dose-too-small", "few-days"], [], []),  # one day a week
        (6, 10, 5, [], [], []),  # holds of 10 s are the shortest
        (7, 9, 5, ["hold-short"], [], []),
        (1, 60, 5, [], [], []),  # and of 60 s the longest
        (1, 61, 5, [], ["hold-long"], []),
    ],
)
def test_the_limits_hold_at_their_edges(
    sets: int, hold: int, days: int, errors: list[str], warnings: list[str], notes: list[str]
) -> None:
    assert codes(week(sets, hold, days)) == (errors, warnings, notes)


def test_equal_totals_count_the_same() -> None:
    """9 x 10 s is 3 x 30 s (Johnson et al. 2014, Phys Ther Sport 15:101)."""
    nine, three = (
        muscle_seconds(read_programme(week(sets, hold, 5)).days, HOLDING_KINDS) for sets, hold in ((9, 10), (3, 30))
    )
    assert nine == three == {(Muscle.HAMSTRINGS, side): (450, 450) for side in ("left", "right")}


def test_a_promise_that_the_evidence_does_not_carry_is_named() -> None:
    """Warneke et al. 2025, Delphi consensus: not the main means for posture or injury prevention."""
    text = week(2, 30, 5).replace("Move with less effort.", "Prevents injuries and fixes your posture.")
    assert codes(text)[1] == ["claim"]
