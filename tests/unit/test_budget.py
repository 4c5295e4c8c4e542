from __future__ import annotations

import pytest

from bot.budget import RECOVERY_SECONDS, Budget


def test_no_second_holds_more_than_the_budget_whenever_it_begins() -> None:
    budget = Budget(30)
    moments = [n / 100 for n in range(400) for _ in range(budget.take(7, n / 100))]
    for start in moments:
        assert sum(1 for moment in moments if start <= moment < start + 1.0) <= 30
    assert len(moments) == 30 * 4


def test_what_was_not_used_can_be_taken_again() -> None:
    budget = Budget(3)
    assert budget.take(3, 0.0) == 3
    assert budget.wait(0.25) == 0.75
    budget.give_back(2)
    assert budget.wait(0.25) == 0.0
    assert budget.take(5, 0.5) == 2


def test_a_pause_stops_everything_and_the_longer_one_counts() -> None:
    budget = Budget(10)
    budget.pause(5.0, 0.0)
    budget.pause(1.0, 1.0)
    assert budget.take(1, 4.9) == 0
    assert budget.wait(4.0) == 1.0
    assert budget.take(1, 5.0) == 1


def test_a_complaint_lowers_the_budget_once_for_all_that_were_under_way() -> None:
    budget = Budget(30)
    for _ in range(16):
        budget.complain(2.0, 0.0)
    assert budget.per_second == 24
    budget.complain(2.0, 10.0)
    assert budget.per_second == 19


def test_the_budget_comes_back_one_by_one_and_no_further_than_it_was() -> None:
    budget = Budget(3)
    budget.complain(0.0, 0.0)
    assert budget.per_second == 2
    budget.take(1, RECOVERY_SECONDS - 1)
    assert budget.per_second == 2
    budget.take(1, RECOVERY_SECONDS)
    assert budget.per_second == 3
    budget.take(1, RECOVERY_SECONDS * 10)
    assert budget.per_second == 3


def test_a_budget_that_sends_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="budget of 0"):
        Budget(0)


def test_a_request_counts_from_when_it_leaves_and_not_from_when_it_was_granted() -> None:
    budget = Budget(30)
    assert budget.take(30, 0.0) == 30
    for _ in range(30):
        budget.leaves(0.5)
    assert budget.take(1, 1.0) == 0
    assert budget.wait(1.0) == 0.5
    assert budget.take(40, 1.5) == 30


def test_a_budget_that_is_resumed_keeps_its_pause_and_its_rate_and_never_gets_more_than_it_has() -> None:
    budget = Budget(30)
    budget.resume(24, 10.0)
    assert budget.take(40, 9.9) == 0
    assert budget.take(40, 10.0) == 24
    budget = Budget(10)
    budget.resume(24, 0.0)
    assert budget.take(40, 1.0) == 10
