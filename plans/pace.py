"""On which dates a course trains, and which day its group is on."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from plans.programme import WEEK, Programme, Training

SPREAD = {
    1: (0,),
    2: (0, 3),
    3: (0, 2, 4),
    4: (0, 1, 3, 4),
    5: (0, 1, 2, 4, 5),
    6: (0, 1, 2, 3, 4, 5),
    7: (0, 1, 2, 3, 4, 5, 6),
}
"""Weekdays, Monday is 0, for a client who may choose and has not."""


@dataclass(frozen=True, slots=True)
class Pace:
    """A course's calendar: its start, its training weekdays (None: every date), and whether dates follow the group."""

    start: date
    weekdays: tuple[int, ...] | None = None
    together: bool = False

    def trains_on(self, on: date) -> bool:
        """Whether a date is a training date."""
        return self.trains(on.weekday())

    def trains(self, weekday: int) -> bool:
        """Whether a weekday is for training; Monday is 0 and 7."""
        return self.weekdays is None or weekday % WEEK in self.weekdays

    def is_beside_a_day_off(self, weekday: int) -> bool:
        """Whether the weekday before or after has no training, so that a rest day is taken already."""
        return not (self.trains(weekday - 1) and self.trains(weekday + 1))

    def next_training(self, after: date) -> date:
        """The first training date after a date."""
        return next(on for n in range(1, 8) if self.trains_on(on := after + timedelta(days=n)))

    def group_day(self, on: date) -> int:
        """The day that the group is on: the training dates from its start to this date, both counted."""
        days = (on - self.start).days + 1
        if self.weekdays is None:
            return max(1, days)
        weeks, rest = divmod(max(0, days), 7)
        extra = sum(self.trains_on(self.start + timedelta(days=weeks * 7 + n)) for n in range(rest))
        return max(1, weeks * len(self.weekdays) + extra)


def pace_of(programme: Programme, start: date, chosen: tuple[int, ...] | None = None) -> Pace:
    """The calendar of a course that began on a date; `chosen` are a client's own weekdays, where they may choose."""
    return Pace(start, _weekdays(programme.training, chosen), programme.pace == "together")


def _weekdays(training: Training | None, chosen: tuple[int, ...] | None) -> tuple[int, ...] | None:
    if training is None:
        return None
    if training.weekdays:
        return training.weekdays
    return chosen if chosen is not None and len(chosen) == training.count else SPREAD[training.count]
