"""One budget for all workers: what each takes, when it counts, and what the platform's complaints do."""

from __future__ import annotations

import json
import random

import pytest

from db.budget import GRANT_SECONDS, RECOVERY_SECONDS, Budget, Log, budget_of


class Worker:
    """A worker that sends `delay` seconds after it was granted something."""

    def __init__(self, name: str, delay: float = 0.0) -> None:
        self.name, self.delay, self.log, self.sent = name, delay, Log(), [0.0][:0]
        self._next = 0

    def take(self, budget: Budget, wanted: int, now: float) -> int:
        granted = budget.take(wanted, self.name, self.log, now=now)
        self.log.grant(range(self._next, self._next + granted), now)
        self._next += granted
        return granted

    def leave(self, now: float) -> None:
        for message, at in list(self.log.granted.items()):
            if at + self.delay <= now:
                self.log.leaves(message, now)
                self.sent.append(now)
        self.log.forget(now)


@pytest.mark.parametrize("delay", [0.0, 0.3, 0.9])
def test_no_second_holds_more_than_the_budget_whoever_sends_and_whenever_it_begins(delay: float) -> None:
    budget, workers = Budget(30, 30), [Worker("a"), Worker("b", delay), Worker("c", delay / 2)]
    for step in range(600):
        now = step / 100
        for worker in random.Random(step).sample(workers, 3):
            worker.leave(now)
            worker.take(budget, 7, now)
    moments = sorted(moment for worker in workers for moment in worker.sent)
    for start in moments:
        assert sum(1 for moment in moments if start <= moment < start + 1.0) <= 30
    assert len(moments) >= 30 * 6 / (1 + delay) - 30


def test_what_found_nothing_to_send_can_be_taken_by_another() -> None:
    budget, one, two = Budget(3, 3), Log(), Log()
    assert budget.take(3, "one", one, now=0.0) == 3
    assert budget.wait(0.25) == pytest.approx(1.0)
    budget.settle("one", 2)
    assert budget.wait(0.25) == 0.0
    assert budget.take(5, "two", two, now=0.5) == 2


def test_what_was_granted_to_a_worker_that_died_is_free_soon() -> None:
    budget = Budget(10, 10)
    assert budget.take(10, "dead", Log(), now=0.0) == 10
    assert budget.take(10, "alive", Log(), now=GRANT_SECONDS) == 0
    assert budget.take(10, "alive", Log(), now=GRANT_SECONDS + 1.0) == 10


def test_a_grant_that_nobody_counts_with_any_more_is_known_as_too_late() -> None:
    log = Log()
    log.grant([7], 0.0)
    assert not log.too_late(7, GRANT_SECONDS)
    assert log.too_late(7, GRANT_SECONDS + 0.1)


def test_a_pause_stops_every_worker_and_the_longer_one_counts() -> None:
    budget = Budget(10, 10)
    budget.complain(5.0, 0.0)
    budget.complain(1.0, 1.0)
    assert budget.take(1, "a", Log(), now=4.9) == 0
    assert budget.wait(4.0) == 1.0
    assert budget.take(1, "b", Log(), now=5.0) == 1


def test_a_complaint_lowers_the_budget_once_for_all_that_were_under_way() -> None:
    budget = Budget(30, 30)
    for _ in range(16):
        budget.complain(2.0, 0.0)
    assert budget.per_second == 24
    budget.complain(2.0, 10.0)
    assert budget.per_second == 19


def test_the_budget_comes_back_one_by_one_and_no_further_than_it_was() -> None:
    budget = Budget(3, 3)
    budget.complain(0.0, 0.0)
    assert budget.per_second == 2
    for at, expected in ((RECOVERY_SECONDS - 1, 2), (RECOVERY_SECONDS, 3), (RECOVERY_SECONDS * 10, 3)):
        budget.take(1, "a", Log(), now=at)
        assert budget.per_second == expected


def test_a_budget_that_sends_nothing_is_refused() -> None:
    with pytest.raises(ValueError, match="budget of 0"):
        budget_of(None, 0)


def test_the_record_is_the_same_after_it_was_stored() -> None:
    budget, log = Budget(30, 30), Log()
    assert budget.take(4, "w", log, now=10.0) == 4
    log.grant([1, 2, 3, 4], 10.0)
    log.leaves(1, 10.1)
    budget.take(2, "w", log, now=10.2)
    budget.complain(3.0, 10.3)
    stored = json.loads(json.dumps(budget.as_json()))
    assert budget_of(stored, 30) == budget
    assert budget_of(stored, 10).per_second == 10


def test_a_tenth_and_three_at_most_is_kept_for_what_is_urgent() -> None:
    assert [Budget(most, most).reserve for most in (1, 9, 10, 25, 30, 1000)] == [0, 0, 1, 2, 3, 3]
    budget, log = Budget(30, 30), Log()
    granted = budget.take(64, "w", log, now=0.0)
    assert (granted, budget.plain(granted, 0.0)) == (30, 27)
    budget.settle("w", 3)
    log.grant(range(27), 0.0)
    assert budget.wait(0.1) == 0.0, "an alert may leave at once"
    assert budget.wait(0.1, keep=budget.reserve) == pytest.approx(1.0)
    granted = budget.take(64, "w", log, now=0.1)
    assert (granted, budget.plain(granted, 0.1)) == (3, 0)


def test_where_there_is_room_nothing_is_kept_from_anybody() -> None:
    budget = Budget(30, 30)
    granted = budget.take(5, "w", Log(), now=0.0)
    assert (granted, budget.plain(granted, 0.0)) == (5, 5)
