"""Two clocks, injected. The calendar moves in practice and tests; the machine clock only ever runs."""

from __future__ import annotations

import time
from datetime import UTC, datetime
from email.utils import parsedate_to_datetime
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


class PlatformClock:
    """How far the host's clock is off, by the dates that stand in the platform's answers."""

    def __init__(self) -> None:
        self._heard_at = float("-inf")
        self._off = 0.0

    def heard(self, date: str | None) -> None:
        """Takes the `Date` of an answer, once in a while; what cannot be read says nothing (RFC 9110, 5.6.7)."""
        if date is None or time.monotonic() - self._heard_at < HEAR_SECONDS:
            return
        try:
            told = parsedate_to_datetime(date)
        except ValueError:
            return
        if told.tzinfo is not None:
            self._off = (datetime.now(UTC) - told).total_seconds()
            self._heard_at = time.monotonic()

    def off_by(self) -> float | None:
        """Seconds that the host's clock is ahead; None when the platform was not heard lately."""
        return self._off if time.monotonic() - self._heard_at < STALE_SECONDS else None


HEAR_SECONDS, STALE_SECONDS = 5.0, 120.0
WRONG_SECONDS = 300.0
"""A host's clock that is further off than this sends nobody anything by itself. Our own choice."""


class SystemMachine:
    """The host's monotonic clock, set once to the time of day so that values survive a restart."""

    def __init__(self) -> None:
        self._offset = time.time() - time.monotonic()

    def now(self) -> float:
        return time.monotonic() + self._offset

    def steer(self, epoch: float) -> None:
        """From now on runs with a clock that stands at `epoch` seconds since 1970: the one that all workers share."""
        self._offset = epoch - time.monotonic()
