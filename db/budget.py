"""How much all workers of a bot may send together: never more than so many requests in any second.

The record is pure and lives in one row of the database (`db.pace`); each worker keeps its own log of what it sends and
writes it there whenever it asks for more. All times are seconds of the machine clock that the workers share.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

RECOVERY_SECONDS = 60.0
"""After each such time without a complaint one more request a second is allowed again. Our own choice."""

GRANT_SECONDS = 2.0
"""A request that was granted leaves within this time or is given back. Our own choice."""

RESERVE = 3
"""Requests a second, and a tenth of all at most, that are kept for what is urgent. Our own choice."""

GRAIN = 0.02
"""Seconds: requests that leave closer together than this are counted in one, at the later moment."""


@dataclass(slots=True)
class Log:
    """What one worker does with its grants: which are open, and when the others left, as (moment, count)."""

    granted: dict[int, float] = field(default_factory=dict)
    """By message: when its request was granted."""
    left: list[tuple[float, int]] = field(default_factory=list)

    @property
    def open(self) -> int:
        """How many requests are granted and have not left."""
        return len(self.granted)

    def grant(self, messages: Iterable[int], now: float) -> None:
        """Requests for these messages may leave from now on."""
        self.granted |= dict.fromkeys(messages, now)

    def drop(self, message: int) -> None:
        """A granted request will not leave."""
        self.granted.pop(message, None)

    def too_late(self, message: int, now: float) -> bool:
        """Whether a grant is so old that nobody counts with it any more."""
        return now - self.granted.get(message, now) > GRANT_SECONDS

    def leaves(self, message: int, now: float) -> None:
        """A request leaves: from here its second counts, however long it took since it was granted."""
        self.drop(message)
        moment = math.ceil(now / GRAIN) * GRAIN
        if self.left and self.left[-1][0] >= moment:
            self.left[-1] = (self.left[-1][0], self.left[-1][1] + 1)
        else:
            self.left.append((moment, 1))

    def forget(self, now: float) -> None:
        """Drops what left more than a second ago."""
        self.left = [(moment, count) for moment, count in self.left if moment > now - 1.0]


@dataclass(frozen=True, slots=True)
class Spent:
    """What the record knows of one worker, and from when."""

    seen: float
    open: int
    left: tuple[tuple[float, int], ...]

    def counted(self, now: float) -> list[tuple[float, int]]:
        """What still counts: what left within a second, and grants that may still leave."""
        gone = [(moment, count) for moment, count in self.left if moment > now - 1.0]
        return [*gone, (now, self.open)] if self.open and self.seen + GRANT_SECONDS > now - 1.0 else gone


@dataclass(slots=True)
class Budget:
    """The record that the workers share.

    >>> budget, log = Budget(most=2, per_second=2), Log()
    >>> budget.take(5, "w", log, now=0.0)
    2
    >>> log.grant([7, 8], 0.0); log.leaves(7, 0.0); log.leaves(8, 0.0)
    >>> budget.take(5, "w", log, now=0.5), budget.take(5, "w", log, now=1.0)
    (0, 2)
    """

    most: int
    """The rate that was set, requests a second."""
    per_second: int
    """The rate in use: less than `most` after a complaint of the platform."""
    paused_until: float = 0.0
    raised_at: float = 0.0
    workers: dict[str, Spent] = field(default_factory=dict)

    def take(self, wanted: int, worker: str, log: Log, *, now: float) -> int:
        """How many of `wanted` requests `worker` may send now; its log is kept with them counted as open."""
        self._recover(now)
        self.workers[worker] = Spent(now, log.open, tuple(log.left))
        self.workers = {name: spent for name, spent in self.workers.items() if spent.counted(now)}
        granted = 0 if now < self.paused_until else max(0, min(wanted, self.per_second - self._used(now)))
        if granted:
            self.workers[worker] = Spent(now, log.open + granted, tuple(log.left))
        return granted

    def plain(self, granted: int, now: float) -> int:
        """How many of the requests `granted` just now may be for what is not urgent: the others are kept for that."""
        return max(0, granted - max(0, self.reserve - (self.per_second - self._used(now))))

    @property
    def reserve(self) -> int:
        """How many requests a second are kept for what is urgent."""
        return min(RESERVE, self.per_second // 10)

    def settle(self, worker: str, unused: int) -> None:
        """Takes back what was granted to `worker` just now and found nothing to send."""
        spent = self.workers.get(worker)
        if spent is not None:
            self.workers[worker] = Spent(spent.seen, spent.open - unused, spent.left)

    def wait(self, now: float, keep: int = 0) -> float:
        """Seconds until something may be sent and `keep` more, as far as is known here; 0 if it may be now."""
        if now < self.paused_until:
            return self.paused_until - now
        spare = self.per_second - self._used(now) - keep
        if spare > 0:
            return 0.0
        moments = sorted(part for spent in self.workers.values() for part in spent.counted(now))
        for moment, count in moments:
            spare += count
            if spare > 0:
                return max(0.0, moment + 1.0 - now)
        return 1.0

    def complain(self, seconds: float, now: float) -> None:
        """The platform said "too many": nothing for `seconds`, then a fifth less; once for all that were under way."""
        if now >= self.paused_until:
            self.per_second = max(1, self.per_second * 4 // 5)
        self.paused_until = self.raised_at = max(self.paused_until, now + seconds)

    def _used(self, now: float) -> int:
        return sum(count for spent in self.workers.values() for _moment, count in spent.counted(now))

    def _recover(self, now: float) -> None:
        while self.per_second < self.most and now - self.raised_at >= RECOVERY_SECONDS:
            self.per_second += 1
            self.raised_at += RECOVERY_SECONDS

    def as_json(self) -> dict[str, Any]:
        """The record as it is stored."""
        workers = {name: [spent.seen, spent.open, *spent.left] for name, spent in self.workers.items()}
        return {
            "per_second": self.per_second,
            "paused_until": self.paused_until,
            "raised_at": self.raised_at,
            "workers": workers,
        }


def budget_of(stored: Mapping[str, Any] | None, most: int) -> Budget:
    """The record as it was stored, or a fresh one, under the rate that is set now.

    Raises ValueError for a rate at which nothing would be sent.
    """
    if most < 1:
        raise ValueError(f"a budget of {most} a second sends nothing: at least 1")
    if stored is None:
        return Budget(most, most)
    workers = {
        name: Spent(seen, count, tuple((moment, n) for moment, n in left))
        for name, (seen, count, *left) in stored["workers"].items()
    }
    return Budget(most, min(most, stored["per_second"]), stored["paused_until"], stored["raised_at"], workers)
