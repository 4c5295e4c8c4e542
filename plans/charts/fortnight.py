"""The last fourteen dates of one client at a glance, for the coach: done, pain, tightness, and what followed.

It needs the ledger's latest dates with their answers and verdicts; of the tightness only what was said after a session.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from plans.charts.axes import Panel, gutter, said
from plans.charts.course import did_keys, line_key, verdict_keys
from plans.charts.days import Day, Did, Line
from plans.charts.marks import VERDICTS, across, box, mark, path
from plans.charts.paper import BODY, LEADING, MARGIN, RIGHT, SMALL, Paper, shortened
from plans.rules import Verdict

DATES = 14
TICKS = (0.0, 5.0, 10.0)
LEFT = MARGIN + gutter(["10"])
COLUMN = (RIGHT - LEFT) / DATES
ROW, HIGH = 60.0, 190.0
"""The height of a row of marks, and of a panel."""


@dataclass(frozen=True, slots=True)
class FortnightWords:
    """Every word on the picture. `weekdays` names Monday to Sunday in two letters or so.

    `pain` and `tightness` say their scale too; `nothing` stands where there is no answer.
    """

    title: str
    note: str
    done: str
    did: Mapping[Did, str]
    pain: str
    tightness: str
    followed: str
    verdicts: Mapping[Verdict, str]
    nothing: str
    weekdays: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Fortnight:
    """Dates in order, of which the fourteen up to the last are shown, and lines across the pain (0-10)."""

    days: tuple[Day, ...]
    lines: tuple[Line, ...]
    words: FortnightWords


def fortnight_svg(fortnight: Fortnight) -> str:
    """The picture as an SVG file's text. Raises KeyError for a mark without words."""
    paper, words = Paper(), fortnight.words
    paper.head(words.title, words.note)
    if not fortnight.days:
        paper.room(20)
        paper.words(words.nothing, BODY, kind="soft")
        return paper.svg()
    last = max(day.on for day in fortnight.days)
    dates = [last - timedelta(days=back) for back in reversed(range(DATES))]
    days = [day for day in fortnight.days if day.on in dates]
    paper.part(words.done)
    paper.keys(did_keys(days, words.did))
    paper.room(8)
    _dates(paper, dates, words.weekdays)
    _marks(paper, dates, {day.on: day.did.value for day in days if day.did is not None}, 1.7)
    paper.part(words.pain)
    _scores(paper, dates, {day.on: day.pain for day in days}, "full", fortnight.lines, words.nothing)
    paper.part(words.tightness)
    _scores(paper, dates, {day.on: day.after for day in days}, "dotted", (), words.nothing)
    verdicts = {day.on: VERDICTS[day.verdict] for day in days if day.verdict is not None}
    if verdicts:
        paper.part(words.followed)
        paper.keys(verdict_keys(days, words.verdicts))
        paper.room(8)
        _marks(paper, dates, verdicts, 1.5)
    return paper.svg()


def _x(place: int) -> float:
    """The middle of a date's column."""
    return LEFT + (place + 0.5) * COLUMN


def _dates(paper: Paper, dates: Sequence[date], weekdays: Sequence[str]) -> None:
    """The weekday and the day of the month above each column."""
    top = paper.room(2 * SMALL * LEADING + 4)
    for place, on in enumerate(dates):
        weekday = weekdays[on.weekday()] if on.weekday() < len(weekdays) else ""
        paper.put(shortened(weekday, COLUMN - 6), _x(place), top + SMALL, kind="soft", anchor="middle")
        paper.put(str(on.day), _x(place), top + SMALL * (1 + LEADING), anchor="middle")


def _marks(paper: Paper, dates: Sequence[date], marks: Mapping[date, str], size: float) -> None:
    top = paper.room(ROW)
    for place, on in enumerate(dates):
        paper.add(box("tile", _x(place) - COLUMN / 2 + 2, top, COLUMN - 4, ROW - 4, round_=6))
        if on in marks:
            paper.add(mark(marks[on], _x(place), top + ROW / 2 - 2, size))


def _scores(
    paper: Paper,
    dates: Sequence[date],
    scores: Mapping[date, int | None],
    kind: str,
    lines: Sequence[Line],
    nothing: str,
) -> None:
    """A bar from 0 and its number above it for each date; where nothing was said there is nothing."""
    if all(score is None for score in scores.values()):
        paper.words(nothing, BODY, kind="soft")
        return
    paper.keys(line_key(number, line) for number, line in enumerate(lines))
    panel = Panel.on(paper, HIGH, TICKS, said(TICKS, "", "."), LEFT)
    for number, line in enumerate(lines):
        paper.add(across(number, LEFT, RIGHT, panel.up(line.value)))
    for place, on in enumerate(dates):
        score = scores.get(on)
        if score is not None:
            y = panel.up(score)
            paper.add(box(kind, _x(place) - 18, y, 36, panel.bottom - y))
            paper.put(str(score), _x(place), y - 8, bold=True, kind="value", anchor="middle")
    paper.add(*_mondays(dates, panel.top, panel.bottom))


def _mondays(dates: Sequence[date], top: float, bottom: float) -> list[str]:
    """A line before each Monday."""
    return [
        path("grid", f"M{LEFT + place * COLUMN:.1f} {top:.1f}V{bottom:.1f}")
        for place, on in enumerate(dates)
        if on.weekday() == 0
    ]
