"""A session one step after the other, for whoever wants to be led through it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from plans.dose import LEFT, RIGHT, rounds_of
from plans.programme import Day, Item, Sides

MOST = 80
"""Steps of one session; what comes after them is led no further. Our own choice: no session of an hour has so many."""


@dataclass(frozen=True, slots=True)
class Step:
    """One step: words alone (a warm-up, a cool-down), or one set of an item in one round of its block.

    `rest` is seconds before the next step; `offered` says that it is done only by whoever likes.
    """

    words: str | None = None
    item: Item | None = None
    round: int = 1
    rounds: int = 1
    set: int = 1
    sets: int = 1
    rest: int = 0
    offered: bool = False

    @property
    def holds(self) -> tuple[tuple[str | None, int], ...]:
        """What can be timed of it, as (side or None, seconds), in turn; empty where nothing is held for a set time."""
        if self.item is None or self.item.dose.hold is None:
            return ()
        seconds = self.item.dose.hold.high
        times = 1 if self.item.dose.reps is None else min(self.item.dose.reps.high, LONGEST // max(1, seconds))
        each = ((side, seconds) for side in _sides(self.item) for _ in range(max(1, times)))
        return tuple(each)


LONGEST = 300
"""Seconds: holds of one step and side that are timed together. Our own choice."""


def _sides(item: Item) -> tuple[str | None, ...]:
    if item.side in (Sides.EACH, Sides.ALTERNATE):
        return (LEFT, RIGHT)
    return {Sides.LEFT: (LEFT,), Sides.RIGHT: (RIGHT,)}.get(item.side, (None,))


def steps_of(day: Day) -> tuple[Step, ...]:
    """The steps of a day's session in their order, with the higher number where a coach gave a range.

    What is above the lower number is offered. Empty for a day without a session.
    """
    return tuple(_steps(day))[:MOST]


def _steps(day: Day) -> Iterator[Step]:
    session = day.session
    if session is None:
        return
    if session.warm_up is not None:
        yield Step(words=session.warm_up.text)
    for block in session.blocks:
        low, high = rounds_of(block)
        for number in range(1, high + 1):
            for place, item in enumerate(block.items):
                last = place == len(block.items) - 1
                for count in range(1, item.sets.high + 1):
                    pause = item.rest if count < item.sets.high else block.rest if last and number < high else 0
                    offered = number > low or count > item.sets.low or item.optional
                    yield Step(None, item, number, high, count, item.sets.high, pause, offered)
    if session.cool_down is not None:
        yield Step(words=session.cool_down.text)
