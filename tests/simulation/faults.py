"""What goes wrong, and how often: drawn from the one seed, counted by name."""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum


class Trouble(StrEnum):
    """What happens to one request."""

    TOO_MANY = "429"
    SERVER_ERROR = "5xx"
    NEVER_CONNECTED = "never connected"
    RESET = "reset before it arrived"
    LOST = "answer lost"
    LATE = "arrived after the connection broke"
    SLOW = "slow answer"
    UNREADABLE = "unreadable answer"
    BAD_REQUEST = "400"
    SLEPT = "process slept past its leases"


REQUESTS: Mapping[Trouble, float] = {
    Trouble.TOO_MANY: 0.03,
    Trouble.SERVER_ERROR: 0.06,
    Trouble.NEVER_CONNECTED: 0.03,
    Trouble.RESET: 0.03,
    Trouble.LOST: 0.04,
    Trouble.LATE: 0.015,
    Trouble.SLOW: 0.04,
    Trouble.UNREADABLE: 0.005,
    Trouble.BAD_REQUEST: 0.004,
    Trouble.SLEPT: 0.002,
}
"""The share of requests that each trouble meets."""


@dataclass(frozen=True, slots=True)
class Rates:
    """How often what goes wrong; `days` are rates for one day of the whole program, the others shares."""

    requests: Mapping[Trouble, float] = field(default_factory=lambda: dict(REQUESTS))
    repeated: float = 0.06
    """Of answers to a poll: some updates come again."""
    reordered: float = 0.06
    polls: float = 0.05
    """Of polls that bring something: refused, and as many whose answer is lost."""
    handler: float = 0.004
    not_drawn: float = 0.01
    crash: float = 1.2
    """Deaths a day."""
    crash_in_tick: float = 0.02
    outage: float = 0.08
    """Times a day that the platform answers nothing but errors for a while."""
    held_back: float = 0.06
    """Times a day that the platform keeps updates to itself, up to a day."""
    calendar: float = 0.06
    """Jumps of the calendar a day."""
    zone_data: float = 0.04
    coach: float = 0.03
    """Times a day that the coach blocks the bot for a while."""
    unfiled: float = 0.02
    """Times a day that the platform forgets its files."""


NONE = Rates({}, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0)
"""Nothing goes wrong."""


class Faults:
    """Draws what goes wrong and counts it. `quiet`: nothing goes wrong for now."""

    def __init__(self, rates: Rates, rng: random.Random) -> None:
        self.rates = rates
        self.rng = rng
        self.injected: Counter[str] = Counter()
        self.quiet = True
        self._kinds = list(rates.requests)
        self._shares = list(rates.requests.values())
        self._any = sum(self._shares)

    def happens(self, name: str, share: float) -> bool:
        """Whether something that meets this share of cases happens now; counted when it does."""
        if self.quiet or share <= 0 or self.rng.random() >= share:
            return False
        self.injected[name] += 1
        return True

    def of_request(self) -> Trouble | None:
        """The trouble of the next request."""
        if self.quiet or self.rng.random() >= self._any:
            return None
        found = self.rng.choices(self._kinds, self._shares)[0]
        self.injected[found] += 1
        return found

    def count(self, name: str) -> None:
        """Counts a fault that was decided elsewhere."""
        self.injected[name] += 1
