"""The calendar of the practice chat: it stands still until somebody moves it, and only forward."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime
from typing import Protocol

from bot.practice.store import Store


class Unsettled(Exception):
    """A move of the calendar that could not be finished because something hangs; `what` names it."""

    def __init__(self, what: Sequence[str]) -> None:
        super().__init__("still open: " + ", ".join(what))
        self.what = tuple(what)


class Mover(Protocol):
    """Moves the calendar, doing everything that becomes due on the way."""

    def now(self) -> datetime:
        """Where the calendar stands."""
        ...

    async def move(self, target: datetime) -> None:
        """Visits every due instant up to the target, in order. Raises ValueError backwards, Unsettled."""
        ...

    async def next_morning(self) -> datetime:
        """The next instant at which somebody's morning message is due."""
        ...


class StandingCalendar:
    """A calendar clock that stands where it was put; its position is kept in the practice chat's store."""

    _FACT = "calendar"

    def __init__(self, store: Store, start: datetime) -> None:
        self._store = store
        kept = store.fact(self._FACT)
        self._now = datetime.fromisoformat(kept) if kept else start
        if kept is None:
            store.keep(self._FACT, start.isoformat())

    def now(self) -> datetime:
        return self._now

    def put(self, moment: datetime) -> None:
        """Puts the calendar forward. Raises ValueError for a moment before the present one."""
        if moment < self._now:
            raise ValueError(f"{moment.isoformat()} is before {self._now.isoformat()}: the calendar only goes forward")
        self._now = moment
        self._store.keep(self._FACT, moment.isoformat())
