"""This week and this month beside the month before: bounds worked out by hand, intervals by simulated clients."""

from __future__ import annotations

import random
from datetime import date, timedelta

import pytest

from plans.adherence import newcombe, wilson
from plans.checkin import CheckIn, Completion
from plans.comparing import Due, compared, due
from plans.ledger import Entry, RowKind

LAST = date(2026, 3, 29)
DONE = CheckIn(completion=Completion.DONE, pain=0)
HALF = CheckIn(completion=Completion.PART, half=True)
NONE = CheckIn(completion=Completion.NONE)
SILENT = CheckIn()


def back(*said: CheckIn, asked: float = 1, given: float = 1, first: int = 0) -> list[Due]:
    """One session a date, the newest first, from so many dates back."""
    return [Due(LAST - timedelta(days=first + n), one, asked, given) for n, one in enumerate(said)]


def test_each_figure_counts_by_itself_and_the_silent_are_between_its_bounds() -> None:
    found = compared([back(DONE, DONE, HALF, NONE, SILENT)], LAST)
    assert (found.completion.week.least, found.completion.week.most) == (0.4, 0.6)
    assert (found.dose.week.least, found.dose.week.most) == (0.5, 0.7)
    assert (found.answers.week.least, found.answers.week.most) == (0.8, 0.8)


def test_intervals_go_around_both_bounds() -> None:
    week = compared([back(DONE, DONE, HALF, NONE, SILENT)], LAST).completion.week
    assert (week.low, week.high) == (wilson(2, 5)[0], wilson(3, 5)[1])


def test_weeks_and_months_begin_on_their_dates() -> None:
    found = compared([back(*[DONE] * 7, *[NONE] * 21, *[DONE] * 28, *[NONE] * 9)], LAST).completion
    assert (found.week.sessions, found.month.sessions, found.before.sessions) == (7, 28, 28)
    assert (found.week.least, found.month.least, found.before.least) == (1, 0.25, 1)
    assert (found.month_step.least, found.month_step.most) == (-0.75, -0.75)
    assert (found.month_step.low, found.month_step.high) == newcombe((7, 28), (28, 28))
    assert found.month_step.surely == -1


def test_the_silent_widen_a_step_to_both_sides() -> None:
    step = compared([back(*[DONE] * 20, *[SILENT] * 8, *[DONE] * 20, *[SILENT] * 8)], LAST).completion.month_step
    assert (step.least, step.most) == pytest.approx((-8 / 28, 8 / 28))
    assert step.low == newcombe((20, 28), (28, 28))[0]
    assert step.high == newcombe((28, 28), (20, 28))[1]
    assert step.surely == 0


def test_a_lighter_session_done_in_full_is_a_part_of_the_dose_asked_for() -> None:
    found = compared([[*back(DONE, asked=600, given=300), *back(DONE, asked=600, given=600, first=1)]], LAST)
    assert found.dose.week.least == found.dose.week.most == 0.75
    assert found.completion.week.least == 1


def test_a_long_session_counts_for_more_and_makes_the_dose_less_sure() -> None:
    found = compared([[*back(DONE, asked=900, given=900), *back(*[NONE] * 3, asked=100, given=100, first=1)]], LAST)
    assert found.dose.week.least == 0.75
    trials = 1200**2 / (900**2 + 3 * 100**2)
    assert found.dose.week.low == pytest.approx(wilson(0.75 * trials, trials)[0])


def test_nothing_that_came_leaves_everything_open() -> None:
    found = compared([[]], LAST).dose
    assert (found.week.sessions, found.week.least, found.week.most, found.week.low, found.week.high) == (0, 0, 1, 0, 1)
    assert (found.month_step.low, found.month_step.high) == (-1, 1)
    assert compared([], LAST).dose == found


def test_only_sessions_that_came_are_due() -> None:
    rows = [
        Entry(LAST, RowKind.SESSION, day=3, checkin=DONE),
        Entry(LAST - timedelta(days=1), RowKind.REST, day=2),
        Entry(LAST - timedelta(days=2), RowKind.SESSION, day=1, delivered=False),
        Entry(LAST - timedelta(days=3), RowKind.SESSION, day=1, delivered=False, checkin=DONE),
    ]
    found = due(rows, lambda row: (600, 600 - 100 * (row.day or 0)))
    assert [(one.on, one.asked, one.given) for one in found] == [(LAST, 600, 300), (rows[3].on, 600, 500)]


def _group(chance: random.Random, shares: list[float]) -> list[list[Due]]:
    """Eight weeks of clients who do their own share of the days, the same in both months."""
    return [back(*(DONE if chance.random() < share else NONE for _day in range(56))) for share in shares]


def test_a_group_of_unlike_clients_has_a_wider_interval_that_holds_the_truth() -> None:
    """Shares drawn around 0.7; nominal 95 %, twelve clients, 300 groups."""
    chance = random.Random(12)
    held = steady = naive = 0
    for _ in range(300):
        found = compared(_group(chance, [chance.betavariate(2.1, 0.9) for _client in range(12)]), LAST).completion
        held += found.month.low <= 0.7 <= found.month.high
        steady += found.month_step.surely == 0
        low, high = wilson(round(found.month.least * 336), 336)
        naive += low <= 0.7 <= high
    assert held / 300 > 0.90
    assert naive / 300 < 0.70
    assert steady / 300 > 0.93


def test_what_is_lasting_in_each_client_does_not_hide_what_changed_in_all() -> None:
    now, then = [DONE] * 9 + [NONE], [DONE] * 6 + [NONE] * 4
    steady = back(*(now * 3)[:28], *(then * 3)[:28])
    poor = back(*[DONE] * 10, *[NONE] * 18, *[DONE] * 2, *[NONE] * 26)
    assert compared([steady, poor] * 5, LAST).completion.month_step.surely == 1
