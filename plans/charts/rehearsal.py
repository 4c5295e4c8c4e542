"""A rehearsal as one picture (SVG): dates to finish with and without the rules, and what followed each day."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from plans.charts.axes import Panel, columns_under, gutter, said, steps
from plans.charts.marks import FILLS, across, box, pain, path, upright
from plans.charts.paper import BODY, MARGIN, RIGHT, SMALL, SWATCH, Key, Paper
from plans.rehearsal import DayFared, Outcome
from plans.rules import Verdict

HIGH = 380.0
"""Of a panel."""
WIDEST = 64.0
"""Of a column, however few there are."""

FOLLOWED = {
    Verdict.REPEAT: "the day again, also when it was missed",
    Verdict.EASE: "lighter",
    Verdict.REST: "a day off",
    Verdict.REFER: "waiting for the coach",
}
"""What holds a client up, mildest first."""


def picture(title: str, found: Outcome, plain: Outcome) -> str:
    """The picture of a group beside the same group without the rules, as the text of an SVG file."""
    middle = f"half within {found.median:g} dates" if found.median is not None else "nobody finished"
    group, care = f"{found.clients} simulated clients, {middle}", "invented, no evidence"
    paper = Paper()
    paper.head(title, group)
    paper.words(care, BODY, kind="soft")
    paper.part("Dates until the programme was through, share of the group")
    if found.finished:
        _finishing(paper, found, plain)
    paper.part("For each session day, times a client")
    if found.days:
        _days(paper, found.days)
    paper.room(12)
    paper.words(_worst(found))
    return paper.svg(f"{title}: {group}; {care}")


def _finishing(paper: Paper, found: Outcome, plain: Outcome) -> None:
    """How many clients finished on each date; the dashed line is the date of the programme as published."""
    if plain.median is not None:
        words = f"as published: {plain.median:g}, hurting or not"
        paper.keys([Key(lambda x, y: across(0, x - SWATCH / 2, x + SWATCH / 2, y), words)])
    dates = [*found.finished, *plain.finished]
    first, last = min(dates), max(dates)
    counts = Counter(found.finished)
    ticks = steps(0, 100 * max(counts.values()) / found.clients)
    told = said(ticks, "%", ".")
    left = MARGIN + gutter(told)
    panel = Panel.on(paper, HIGH, ticks, told, left)
    step = min(WIDEST, (RIGHT - left) / (last - first + 1))
    for date, count in sorted(counts.items()):
        y = panel.up(100 * count / found.clients)
        paper.add(box("bar", left + (date - first) * step, y, max(1.0, step - 2), panel.bottom - y))
    if plain.median is not None:
        x = left + (plain.median - first + 0.5) * step
        paper.add(upright(0, x, panel.top - 20, panel.bottom))
    shown = [date for date in steps(first, last, 10) if date == round(date) and first <= date <= last]
    columns_under(paper, [left + (date - first + 0.5) * step for date in shown], [f"{date:.0f}" for date in shown])


def _days(paper: Paper, days: Sequence[DayFared]) -> None:
    """How often a client was held up on each session day, by what; a disc: how often it hurt by 3 and more."""
    paper.keys([_key(FILLS[verdict], words) for verdict, words in FOLLOWED.items()])
    paper.keys([Key(lambda x, y: pain(x, y, 9), "hurt by 3 and more")])
    ticks = steps(0, max(0.1, *(max(day.held_up, day.pained) for day in days)))
    told = said(ticks, "", ".")
    left = MARGIN + gutter(told)
    panel = Panel.on(paper, HIGH, ticks, told, left)
    step = min(WIDEST, (RIGHT - left) / len(days))
    wide = max(2.0, step * 0.7)
    middles = [left + (place + 0.5) * step for place in range(len(days))]
    for x, day in zip(middles, days, strict=True):
        under = 0.0
        for verdict in FOLLOWED:
            share = day.followed[verdict.word]
            if share:
                top = panel.up(under + share)
                paper.add(box(FILLS[verdict], x - wide / 2, top, wide, panel.up(under) - top))
                under += share
        paper.add(pain(x, panel.up(day.pained), min(9.0, max(3.0, step * 0.28))))
    paper.add(path("axis", f"M{left:.1f} {panel.bottom:.2f}H{RIGHT}"))
    columns_under(paper, middles, [str(day.day) for day in days])


def _key(kind: str, words: str) -> Key:
    return Key(lambda x, y: box(kind, x - 13, y - SMALL * 0.4, 26, SMALL * 0.8), words)


def _worst(found: Outcome) -> str:
    days = ", ".join(f"day {day.day}" for day in found.trouble)
    return f"To look at first: {days}." if days else "No day stands out."
