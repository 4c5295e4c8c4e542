"""The two clocks of the simulation, both moved with the loop; the calendar can be put forward alone."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

from tests.simulation.loop import StillLoop

START = datetime(2026, 3, 2, 5, 0, tzinfo=UTC)


class SimMachine:
    """Seconds of the loop; they go on over the death of a process, as the host's do."""

    def __init__(self, loop: StillLoop) -> None:
        self._loop = loop

    def now(self) -> float:
        return 1_000_000.0 + self._loop.time()


class SimCalendar:
    """The same seconds as instants, and what the calendar was put forward by."""

    def __init__(self, loop: StillLoop, start: datetime = START) -> None:
        self._loop = loop
        self._start = start

    def now(self) -> datetime:
        return self._start + timedelta(seconds=self._loop.time())

    def jump(self, by: timedelta) -> None:
        """Puts the calendar forward, as a host does that slept or whose clock is set."""
        self._start += by
