"""Who stays with a programme: the share that gets past each of its days, with its interval, as a curve in steps.

It needs the steps of a Kaplan-Meier curve, the days on which people are who are still on their way, and how many were
still there at some days.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil

from plans.charts.axes import BETWEEN_WORDS, Panel, Scale, gutter, number, said
from plans.charts.marks import box, path
from plans.charts.paper import BODY, LEADING, MARGIN, RIGHT, SMALL, Key, Paper
from plans.figures.letters import wide

HIGH = 420.0
MOST_DAYS = 8
"""Days that have room under the curve."""
SHARES = (0.0, 20.0, 40.0, 60.0, 80.0, 100.0)


@dataclass(frozen=True, slots=True)
class Drop:
    """A day at which somebody left: the share that stays longer, with its interval, fractions of 1.

    Raises ValueError unless 0 <= low <= share <= high <= 1.
    """

    day: int
    share: float
    low: float
    high: float

    def __post_init__(self) -> None:
        if not 0 <= self.low <= self.share <= self.high <= 1:
            raise ValueError(f"a share of {self.share} between {self.low} and {self.high}: from 0 to 1, in this order")


@dataclass(frozen=True, slots=True)
class StayingWords:
    """Every word on the picture; `there` names the row of numbers under the days."""

    title: str
    note: str
    stays: str
    interval: str
    still: str
    day: str
    there: str
    nothing: str
    percent: str = "%"
    decimal: str = "."


@dataclass(frozen=True, slots=True)
class Staying:
    """A programme of so many days; the curve ends at `until`, the furthest day that anybody was handed.

    `still` are the days of those who are on their way; `stays` are the furthest days of all, leavers and finishers too.
    """

    days: int
    until: int
    drops: tuple[Drop, ...]
    still: tuple[int, ...]
    stays: tuple[int, ...]
    words: StayingWords


def staying_svg(staying: Staying) -> str:
    """The picture as an SVG file's text."""
    paper, words = Paper(), staying.words
    paper.head(words.title, words.note)
    paper.room(14)
    if not staying.stays:
        paper.words(words.nothing, BODY, kind="soft")
        return paper.svg()
    keys = [
        Key(lambda x, y: path("line", f"M{x - 20:.1f} {y:.1f}H{x + 20:.1f}"), words.stays),
    ]
    if staying.drops:
        keys.append(Key(lambda x, y: box("band", x - 20, y - 14, 40, 28), words.interval))
    if staying.still:
        keys.append(Key(_tick, words.still))
    paper.keys(keys)
    left = MARGIN + gutter(said(SHARES, words.percent, words.decimal))
    panel = Panel.on(paper, HIGH, SHARES, said(SHARES, words.percent, words.decimal), left)
    across = Scale(0, max(1, staying.days), left, RIGHT - 20)
    _curve(paper, staying, panel, across)
    _under(paper, staying, across)
    return paper.svg()


def _tick(x: float, y: float) -> str:
    return path("way", f"M{x:.2f} {y - 11:.2f}V{y + 11:.2f}")


def _curve(paper: Paper, staying: Staying, panel: Panel, across: Scale) -> None:
    drops, end = staying.drops, across(staying.until)
    upper = _steps([(drop.day, drop.high) for drop in drops], panel, across)
    lower = _steps([(drop.day, drop.low) for drop in drops], panel, across)
    if drops:
        ways = [*upper, (end, upper[-1][1]), (end, lower[-1][1]), *reversed(lower)]
        paper.add(path("band", "M" + "L".join(f"{x:.2f} {y:.2f}" for x, y in ways) + "Z"))
    line = _steps([(drop.day, drop.share) for drop in drops], panel, across)
    paper.add(path("line", "M" + "L".join(f"{x:.2f} {y:.2f}" for x, y in [*line, (end, line[-1][1])])))
    for day in sorted(set(staying.still)):
        share = next((drop.share for drop in reversed(drops) if drop.day <= day), 1.0)
        paper.add(_tick(across(day), panel.up(100 * share)))


def _steps(drops: Sequence[tuple[int, float]], panel: Panel, across: Scale) -> list[tuple[float, float]]:
    """The corners of a line that begins at the whole and goes down at each day."""
    corners = [(across(0), panel.up(100))]
    for day, share in drops:
        corners += [(across(day), corners[-1][1]), (across(day), panel.up(100 * share))]
    return corners


def _under(paper: Paper, staying: Staying, across: Scale) -> None:
    """The days under the curve, and how many were there at each of them or later."""
    days = _days(staying.days)
    high = SMALL * LEADING
    first = paper.room(high + 8) + SMALL
    for day in days:
        paper.put(number(day), across(day), first, kind="soft", anchor="middle")
    paper.words(staying.words.day, SMALL, kind="soft")
    paper.room(10)
    paper.words(staying.words.there, SMALL, kind="soft")
    row = paper.room(high) + SMALL
    free = 0.0
    for day in sorted({1, *days}):
        told = number(sum(1 for stay in staying.stays if stay >= day))
        half = wide(told, SMALL, bold=True) / 2
        if across(day) - half >= free:
            paper.put(told, across(day), row, bold=True, anchor="middle")
            free = across(day) + half + BETWEEN_WORDS


def _days(last: int) -> list[int]:
    """The days that are written under the curve: the end of every week, of every second week and so on."""
    every = 7 * max(1, ceil(last / 7 / MOST_DAYS))
    return list(range(every, last + 1, every)) or [last]
