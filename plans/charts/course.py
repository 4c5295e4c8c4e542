"""What was done on each date and what followed: side by side for some weeks, a column a week for many."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from datetime import date

from plans.charts.axes import GAP, Weeks, dates_under
from plans.charts.days import Day, Did, Line
from plans.charts.marks import VERDICTS, across, box, mark
from plans.charts.paper import SMALL, SWATCH, Key, Paper, shortened
from plans.rules import Verdict

BESIDE_WEEKS = 4
"""Up to so many weeks stand side by side, date by date."""
STRIP_HIGH, ROW_HIGH = 92.0, 40.0
NAME_ROOM = 70.0
"""The most that the name of a weekday may take."""


def sample(name: str) -> Callable[[float, float], str]:
    """A mark for the legend."""
    return lambda x, y: mark(name, x, y)


def did_keys(days: Sequence[Day], words: Mapping[Did, str]) -> list[Key]:
    """The marks of what was done that occur, in their order."""
    found = {day.did for day in days}
    return [Key(sample(did.value), words[did]) for did in Did if did in found]


def verdict_keys(days: Sequence[Day], words: Mapping[Verdict, str]) -> list[Key]:
    """The marks of what followed that occur, the mildest first."""
    found = {day.verdict for day in days}
    return [Key(sample(VERDICTS[verdict]), words[verdict]) for verdict in Verdict if verdict in found]


def line_key(number: int, line: Line) -> Key:
    """The sample of a line across a panel, the one with this number."""
    return Key(lambda x, y: across(number, x - SWATCH / 2, x + SWATCH / 2, y), line.words)


def short(weekdays: Sequence[str]) -> list[str]:
    """The names of weekdays as they have room beside the rows of a calendar."""
    return [shortened(word, NAME_ROOM) for word in weekdays[:7]]


def done_and_followed(
    paper: Paper, weeks: Weeks, days: Sequence[Day], weekdays: Sequence[str], dates: Mapping[date, str]
) -> None:
    """The dates with their marks; `weekdays` names Monday to Sunday, `dates` says Mondays."""
    top = paper.y
    if weeks.count <= BESIDE_WEEKS:
        paper.room(STRIP_HIGH)
        for day in days:
            paper.add(*_upright(weeks, day, top))
    else:
        paper.room(7 * ROW_HIGH)
        for number, word in enumerate(short(weekdays)):
            baseline = top + (number + 0.5) * ROW_HIGH + SMALL * 0.36
            paper.put(word, weeks.left - GAP, baseline, kind="soft", anchor="end")
        for day in days:
            paper.add(*_beside(weeks, day, top))
    dates_under(paper, weeks, top, dates)


def _upright(weeks: Weeks, day: Day, top: float) -> list[str]:
    """A date of the strip: what was done, and under it what followed."""
    step = weeks.wide / 7
    x, size = weeks.middle(day.on), min(1.4, (step - 6) / 24)
    shapes = [box("tile", x - step / 2 + 1.5, top, step - 3, STRIP_HIGH - 4, round_=6)]
    if day.did is not None:
        shapes.append(mark(day.did.value, x, top + 24, size))
    if day.verdict is not None:
        shapes.append(mark(VERDICTS[day.verdict], x, top + 66, min(size, 1.0)))
    return shapes


def _beside(weeks: Weeks, day: Day, top: float) -> list[str]:
    """A date of the calendar: what was done, and to the right what followed."""
    week, weekday = weeks.place(day.on)
    wide = min(weeks.wide, 84.0)
    x, y = weeks.left + (week + 0.5) * weeks.wide, top + (weekday + 0.5) * ROW_HIGH
    shapes = [box("tile", x - weeks.wide / 2 + 1.5, y - ROW_HIGH / 2 + 1.5, weeks.wide - 3, ROW_HIGH - 3, round_=6)]
    if day.did is not None:
        shapes.append(mark(day.did.value, x - wide * 0.23, y, min(1.1, wide * 0.46 / 24)))
    if day.verdict is not None:
        shapes.append(mark(VERDICTS[day.verdict], x + wide * 0.24, y, min(0.9, wide * 0.4 / 24)))
    return shapes
