"""A week of sessions in shares: who says nothing counts as left out, and then as done."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plans.adherence import Week, week_of
from plans.checkin import CheckIn, Completion
from plans.ledger import Entry, RowKind

MONDAY = date(2026, 3, 2)


def week(*said: CheckIn) -> Week:
    rows = [Entry(MONDAY + timedelta(days=n), RowKind.SESSION, day=1, checkin=one) for n, one in enumerate(said)]
    return week_of([*rows, Entry(MONDAY + timedelta(days=6), RowKind.REST)])


def test_completion_lies_between_all_silent_ones_left_out_and_all_of_them_done() -> None:
    found = week(CheckIn(Completion.DONE, 0), CheckIn(Completion.PART, 2), CheckIn(Completion.NONE), CheckIn())
    assert (found.due, found.done, found.part, found.left_out, found.silent) == (4, 1, 1, 1, 1)
    assert found.completion == (0.25, 0.5)
    assert found.response == pytest.approx(0.75)
    assert found.pains == (0, 2)


def test_of_a_week_without_sessions_anything_may_be_true() -> None:
    assert (week().completion, week().response) == ((0.0, 1.0), 0.0)
