"""A client's course as one picture: what was done and what followed, pain, tightness, and each measure with its error.

It needs the ledger's dates with their answers and verdicts, the client's usual pain and the pain settings as lines, and
for each measure (a side for itself) its tests with the baseline and the smallest change that counts there.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise

from plans.charts.axes import Panel, Weeks, dates_under, gutter, said
from plans.charts.course import did_keys, done_and_followed, line_key, sample, short, verdict_keys
from plans.charts.days import Day, Did, Line
from plans.charts.marks import across, mark, pain, path
from plans.charts.measured import Measured, axis, draw
from plans.charts.paper import BODY, MARGIN, RIGHT, SMALL, Key, Paper
from plans.rules import Verdict

MOST_WEEKS, LEAST_WEEKS = 18, 2
"""A picture has room for so many weeks; of a longer course it shows the latest."""
TOGETHER_DATES = 7
"""Answers that are farther apart are not joined by a line (own choice)."""
SCORES = (0.0, 2.0, 4.0, 6.0, 8.0, 10.0)
HIGH = 310.0
"""Of a panel."""


@dataclass(frozen=True, slots=True)
class ProgressWords:
    """Every word on the picture. `weekdays` names Monday to Sunday in two letters or so, `dates` says each Monday.

    `done`, `followed`, `pain` and `tightness` are headings, the latter two with their scale; `nothing` stands where
    there is no answer, `no_tests` where a measure was not tried; `decimal` is the sign between ones and tenths.
    """

    title: str
    note: str
    done: str
    did: Mapping[Did, str]
    followed: str
    verdicts: Mapping[Verdict, str]
    pain: str
    tightness: str
    before: str
    after: str
    nothing: str
    no_tests: str
    weekdays: tuple[str, ...]
    dates: Mapping[date, str]
    decimal: str = "."


@dataclass(frozen=True, slots=True)
class Progress:
    """A course: its dates in order, lines across the pain panel (usual pain, cut-offs), and its measures.

    Without dates it shows the measures alone: more than two are better on a picture of their own.
    """

    days: tuple[Day, ...]
    lines: tuple[Line, ...]
    measures: tuple[Measured, ...]
    words: ProgressWords


def progress_svg(progress: Progress) -> str:
    """The picture as an SVG file's text. Raises KeyError for a mark without words."""
    paper, words = Paper(), progress.words
    paper.head(words.title, words.note)
    ends = [day.on for day in progress.days] or [result.on for one in progress.measures for result in one.results]
    if not ends:
        paper.part(words.done)
        paper.words(words.nothing, BODY, kind="soft")
        return paper.svg()
    axes = [axis(measured, words.decimal) for measured in progress.measures]
    left = MARGIN + gutter([*short(words.weekdays), "10", *(word for _ticks, told in axes for word in told)])
    weeks = Weeks.of(min(ends), max(ends), left, least=LEAST_WEEKS, most=MOST_WEEKS)
    days = [day for day in progress.days if weeks.has(day.on)]
    if days:
        _done(paper, weeks, days, words)
        _pain(paper, weeks, days, progress.lines, words)
    if any(day.before is not None or day.after is not None for day in days):
        _tightness(paper, weeks, days, words)
    for measured, (ticks, told) in zip(progress.measures, axes, strict=True):
        paper.part(measured.name)
        if any(weeks.has(result.on) for result in measured.results):
            draw(paper, weeks, measured, ticks, told, words.dates)
        else:
            paper.words(words.no_tests, BODY, kind="soft")
    return paper.svg()


def _done(paper: Paper, weeks: Weeks, days: Sequence[Day], words: ProgressWords) -> None:
    paper.part(words.done)
    paper.keys(did_keys(days, words.did))
    paper.room(10)
    done_and_followed(paper, weeks, days, words.weekdays, words.dates)
    keys = verdict_keys(days, words.verdicts)
    if keys:
        paper.room(4)
        paper.words(words.followed, SMALL, kind="soft")
        paper.keys(keys)


def _pain(paper: Paper, weeks: Weeks, days: Sequence[Day], lines: Sequence[Line], words: ProgressWords) -> None:
    """Each answer, those of near dates joined; the lines lie under them."""
    paper.part(words.pain)
    answers = [(day.on, day.pain) for day in days if day.pain is not None]
    if not answers:
        paper.words(words.nothing, BODY, kind="soft")
        return
    paper.keys(line_key(number, line) for number, line in enumerate(lines))
    panel = Panel.on(paper, HIGH, SCORES, said(SCORES, "", words.decimal), weeks.left)
    paper.add(*(across(number, panel.left, RIGHT, panel.up(line.value)) for number, line in enumerate(lines)))
    places = [(weeks.middle(on), panel.up(value)) for on, value in answers]
    for ((before, _), a), ((after, _), b) in pairwise(zip(answers, places, strict=True)):
        if (after - before).days <= TOGETHER_DATES:
            paper.add(path("painway", f"M{a[0]:.2f} {a[1]:.2f}L{b[0]:.2f} {b[1]:.2f}"))
    radius = min(9.0, max(4.5, weeks.wide / 7 * 0.42))
    paper.add(*(pain(x, y, radius) for x, y in places))
    dates_under(paper, weeks, panel.bottom, words.dates)


def _tightness(paper: Paper, weeks: Weeks, days: Sequence[Day], words: ProgressWords) -> None:
    """Before and after of a date over each other, joined; when nobody is asked before, no words are needed."""
    paper.part(words.tightness)
    if any(day.before is not None for day in days):
        paper.keys((Key(sample("before"), words.before), Key(sample("after"), words.after)))
    panel = Panel.on(paper, HIGH, SCORES, said(SCORES, "", words.decimal), weeks.left)
    size = min(1.1, max(0.55, weeks.wide / 7 / 16))
    for day in days:
        x = weeks.middle(day.on)
        if day.before is not None and day.after is not None:
            paper.add(path("way", f"M{x:.2f} {panel.up(day.before):.2f}V{panel.up(day.after):.2f}"))
        if day.before is not None:
            paper.add(mark("before", x, panel.up(day.before), size))
        if day.after is not None:
            paper.add(mark("after", x, panel.up(day.after), size * 0.8 if day.before == day.after else size))
    dates_under(paper, weeks, panel.bottom, words.dates)
