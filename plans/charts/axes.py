"""Axes: whole steps for numbers, weeks for dates, and panels with their grid. Lengths are pixels."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil, floor, log10

from plans.charts.marks import path
from plans.charts.paper import LEADING, MARGIN, RIGHT, SMALL, Paper, clean, shortened
from plans.figures.letters import broken, wide

UNIT_ROOM, GAP = 120.0, 14.0
"""The most that a unit may take, and the gap between an axis's words and its panel."""
DATES_HIGH = 48.0
"""The room of dates under a panel."""
BETWEEN_WORDS = 12.0
"""The least gap from one column's words to the next."""


@dataclass(frozen=True, slots=True)
class Scale:
    """A straight scale: `low` stands at `begin`, `high` at `end`."""

    low: float
    high: float
    begin: float
    end: float

    def __call__(self, value: float) -> float:
        """Where a value stands."""
        return self.begin + (value - self.low) / (self.high - self.low) * (self.end - self.begin)


LEAST_RANGE = 1e-3
"""Numbers that are nearer together are on an axis as if they were the same."""


def steps(low: float, high: float, most: int = 5) -> tuple[float, ...]:
    """Numbers from at most `low` to at least `high` in equal steps of 1, 2 or 5 times a power of ten, about `most`.

    >>> steps(3, 17)
    (0.0, 5.0, 10.0, 15.0, 20.0)
    >>> steps(0.2, 0.9, 4)
    (0.0, 0.5, 1.0)
    """
    if high - low < LEAST_RANGE:
        low, high = low - 1, high + 1
    raw = (high - low) / (most - 1)
    ten = 10.0 ** floor(log10(raw))
    step = next(times * ten for times in (1, 2, 5, 10) if times * ten >= raw * (1 - 1e-9))
    first, last = floor(low / step + 1e-9), ceil(high / step - 1e-9)
    return tuple(float(f"{number * step:.12g}") for number in range(first, last + 1))


def number(value: float, decimal: str = ".") -> str:
    """A number in few digits, with a true minus sign and the language's decimal sign.

    >>> number(-2.5, ","), number(40.0)
    ('−2,5', '40')
    """
    return f"{value:.10g}".replace("-", "−").replace(".", decimal)


def said(ticks: Sequence[float], unit: str, decimal: str) -> list[str]:
    """The words at the steps of an axis: numbers, and the unit beside the highest."""
    words = [number(tick, decimal) for tick in ticks]
    return [*words[:-1], f"{words[-1]} {shortened(unit, UNIT_ROOM)}".strip()]


def gutter(words: Sequence[str]) -> float:
    """The room to the left of a panel that the words at its steps need."""
    return max((wide(word, SMALL) for word in words), default=0.0) + GAP


@dataclass(frozen=True, slots=True)
class Panel:
    """The room of some data, and where its numbers stand in it."""

    left: float
    right: float
    top: float
    bottom: float
    up: Scale

    @classmethod
    def on(cls, paper: Paper, high: float, ticks: Sequence[float], words: Sequence[str], left: float) -> Panel:
        """A panel with a line and its words at each step; words have room above the highest."""
        top = paper.room(high) + SMALL * 1.3
        bottom = paper.y - 8
        panel = cls(left, RIGHT, top, bottom, Scale(ticks[0], ticks[-1], bottom, top))
        for tick, word in zip(ticks, words, strict=True):
            y = panel.up(tick)
            kind = "axis" if tick == ticks[0] else "grid"
            paper.add(path(kind, f"M{left:.1f} {y:.2f}H{RIGHT}"))
            paper.put(word, left - GAP, y + SMALL * 0.36, kind="soft", anchor="end")
        return panel


@dataclass(frozen=True, slots=True)
class Weeks:
    """Dates from left to right: whole weeks from a Monday."""

    monday: date
    count: int
    left: float

    @classmethod
    def of(cls, first: date, last: date, left: float, *, least: int, most: int) -> Weeks:
        """The weeks that hold both dates: at least and at most so many; of more, the latest."""
        monday = first - timedelta(days=first.weekday())
        count = (last - monday).days // 7 + 1
        if count > most:
            monday, count = monday + timedelta(weeks=count - most), most
        return cls(monday, max(count, least), left)

    @property
    def wide(self) -> float:
        """Of one week."""
        return (RIGHT - self.left) / self.count

    def has(self, on: date) -> bool:
        """Whether a date is among them."""
        return 0 <= (on - self.monday).days < 7 * self.count

    def place(self, on: date) -> tuple[int, int]:
        """The week of a date, counted from 0, and its weekday, Monday being 0."""
        return divmod((on - self.monday).days, 7)

    def middle(self, on: date) -> float:
        """Where a date stands."""
        return self.left + ((on - self.monday).days + 0.5) * self.wide / 7


def dates_under(paper: Paper, weeks: Weeks, top: float, words: Mapping[date, str]) -> None:
    """The words of as many Mondays as have room under what begins at `top`, each with a line at the week's begin."""
    mondays = [weeks.monday + timedelta(weeks=n) for n in range(weeks.count)]
    told = [clean(words.get(monday, "")) for monday in mondays]
    longest = max(wide(word, SMALL) for word in told)
    every = max(1, ceil((longest + 24) / weeks.wide))
    baseline = paper.room(DATES_HIGH) + SMALL + 4
    for place in range(0, weeks.count, every):
        x = weeks.left + place * weeks.wide
        paper.add(path("grid", f"M{x:.1f} {top:.1f}V{baseline:.1f}"))
        if x + 8 + wide(told[place], SMALL) <= RIGHT or place == 0:
            paper.put(shortened(told[place], RIGHT - x - 8), x + 8, baseline, kind="soft")


def columns_under(paper: Paper, middles: Sequence[float], words: Sequence[str]) -> None:
    """Words under the middles of columns that stand at equal distances, in two lines at most.

    Where there is no room for all, under every second, third and so on.
    """
    step = middles[1] - middles[0] if len(middles) > 1 else RIGHT - MARGIN
    told = [broken(clean(word), max(step - BETWEEN_WORDS, 150), SMALL, most=2) for word in words]
    widths = [max((wide(line, SMALL) for line in lines), default=0.0) for lines in told]
    every = max(1, ceil((max(widths, default=0.0) + BETWEEN_WORDS) / step))
    shown = range(0, len(middles), every)
    lines = max((len(told[place]) for place in shown), default=0)
    top = paper.room(DATES_HIGH + (lines - 1) * SMALL * LEADING) if lines else paper.y
    free = float(MARGIN)
    for place in shown:
        half = widths[place] / 2
        x = min(max(middles[place], MARGIN + half), RIGHT - half)
        if x - half >= free:
            paper.lines(told[place], x, top + SMALL + 4, kind="soft", anchor="middle")
            free = x + half + BETWEEN_WORDS
