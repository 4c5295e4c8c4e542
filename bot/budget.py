"""How much may be sent: never more than so many requests in any second, less after the platform complained."""

from __future__ import annotations

from collections import deque

RECOVERY_SECONDS = 60.0
"""After each such time without a complaint one more request a second is allowed again. Our own choice."""


class Budget:
    """Counts what was sent in the last second and pauses everything when told to. All times are machine seconds.

    >>> budget = Budget(2)
    >>> budget.take(5, now=0.0), budget.take(5, now=0.5), budget.take(5, now=1.0)
    (2, 0, 2)
    """

    def __init__(self, per_second: int) -> None:
        if per_second < 1:
            raise ValueError(f"a budget of {per_second} a second sends nothing: at least 1")
        self._most = per_second
        self._granted: deque[float] = deque()
        self._sent: deque[float] = deque()
        self._raised_at = 0.0
        self.per_second = per_second
        self.paused_until = 0.0

    def resume(self, per_second: int, paused_until: float) -> None:
        """Go on where an earlier process left off: at its rate, and silent for as long as it was told to be."""
        self.per_second = min(self._most, per_second)
        self.paused_until = self._raised_at = paused_until

    def take(self, wanted: int, now: float) -> int:
        """How many of `wanted` requests may be sent now; they count as sent unless given back."""
        self._recover(now)
        self._forget(now)
        left = self.per_second - len(self._sent) - len(self._granted)
        granted = 0 if now < self.paused_until else max(0, min(wanted, left))
        self._granted.extend([now] * granted)
        return granted

    def leaves(self, now: float) -> None:
        """A granted request leaves: from here its second counts, however long it took since it was granted."""
        if self._granted:
            self._granted.popleft()
        self._sent.append(now)

    def give_back(self, unused: int = 1) -> None:
        """Take back the last `unused` requests that were granted and will not leave."""
        for _ in range(min(unused, len(self._granted))):
            self._granted.pop()

    def wait(self, now: float) -> float:
        """Seconds until something may be sent; 0 if it may be now."""
        if now < self.paused_until:
            return self.paused_until - now
        self._forget(now)
        counted = sorted([*self._granted, *self._sent])
        if len(counted) < self.per_second:
            return 0.0
        return max(0.0, counted[-self.per_second] + 1.0 - now)

    def pause(self, seconds: float, now: float) -> None:
        """Send nothing for `seconds`; the longer of two pauses counts."""
        self.paused_until = max(self.paused_until, now + seconds)

    def complain(self, seconds: float, now: float) -> None:
        """The platform said "too many": pause, and go on with a fifth less; once for all that were under way."""
        first = now >= self.paused_until
        self.pause(seconds, now)
        if first:
            self.per_second = max(1, self.per_second * 4 // 5)
        self._raised_at = self.paused_until

    def _forget(self, now: float) -> None:
        for moments in (self._granted, self._sent):
            while moments and moments[0] <= now - 1.0:
                moments.popleft()

    def _recover(self, now: float) -> None:
        while self.per_second < self._most and now - self._raised_at >= RECOVERY_SECONDS:
            self.per_second += 1
            self._raised_at += RECOVERY_SECONDS
