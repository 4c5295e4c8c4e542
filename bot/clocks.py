"""Two clocks, injected. The calendar moves in practice and tests; the machine clock only ever runs."""

from __future__ import annotations

import time
from datetime import UTC, datetime
from typing import Protocol


class Calendar(Protocol):
    """Says what moment it is for people: due times, lateness, quiet hours."""

    def now(self) -> datetime:
        """The present moment, aware, UTC."""
        ...


class Machine(Protocol):
    """Seconds that never go backwards in one process: leases, backoff, pauses, budgets."""

    def now(self) -> float:
        """Seconds since 1970, steered by a monotonic clock."""
        ...


class SystemCalendar:
    """The host's own time."""

    def now(self) -> datetime:
        return datetime.now(UTC)


class SystemMachine:
    """The host's monotonic clock, set once to the time of day so that values survive a restart."""

    def __init__(self) -> None:
        self._offset = time.time() - time.monotonic()

    def now(self) -> float:
        return time.monotonic() + self._offset

    def steer(self, epoch: float) -> None:
        """From now on runs with a clock that stands at `epoch` seconds since 1970: the one that all workers share."""
        self._offset = epoch - time.monotonic()
