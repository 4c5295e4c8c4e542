"""A digest's figures in words: rates with both bounds, steps with their interval, counts with their names."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from bot.words import Words
from bot.words.charts import verdict_words
from bot.words.doses import Gettext, same
from plans.comparing import Comparison, Figure, Rate
from plans.rules import Verdict
from plans.trends import Direction, Trend

NAMES = 8
"""Names in one line of a message; the rest is counted."""


@dataclass(frozen=True, slots=True)
class FigureWords:
    """One figure: this week and four weeks; the four before and the step between, where there was something before."""

    name: str
    week: str
    month: str
    month_interval: str
    before: str
    step: str
    clear: int
    """1 when it is surely up, -1 when surely down, else 0."""


def figures(words: Words, found: Comparison) -> list[FigureWords]:
    """The three figures."""
    _ = words.gettext
    named = ((_("Done"), found.completion), (_("Dose"), found.dose), (_("Answered"), found.answers))
    return [_figure(name, figure, _) for name, figure in named]


def _figure(name: str, found: Figure, gettext: Gettext) -> FigureWords:
    compared = found.month.sessions > 0 and found.before.sessions > 0
    month = found.month
    step = found.month_step
    clear = step.surely
    ends = (-step.high, -step.low) if clear < 0 else (step.low, step.high)
    return FigureWords(
        name,
        rate(found.week),
        rate(month) if month.sessions else "",
        percent(month.low, month.high),
        rate(found.before) if compared else "",
        span(ends, sign=not clear, gettext=gettext),
        clear if compared else 0,
    )


def rate(found: Rate) -> str:
    """Both bounds of a rate; a dash where nothing was due."""
    return percent(found.least, found.most) if found.sessions else "–"


def percent(low: float, high: float) -> str:
    r"""From one share to another, with a blank that does not break.

    >>> percent(0.5, 0.704), percent(0.8, 0.801)
    ('50–70\xa0%', '80\xa0%')
    """
    return f"{span((low, high))}\N{NO-BREAK SPACE}%"


def span(ends: tuple[float, float], *, sign: bool = False, gettext: Gettext = same) -> str:
    """Both ends in percent; with a sign where they are a change, a true minus.

    >>> span((-0.09, 0.21), sign=True)
    '−9 to +21'
    """
    _ = gettext
    low, high = (round(100 * end) for end in ends)
    if not sign:
        return f"{low}" if low == high else f"{low}–{high}"
    least, most = (f"{end:+d}".replace("-", "−") if end else "0" for end in (low, high))
    return _("{low} to {high}").format(low=least, high=most)


def directions(words: Words, name: str, found: Mapping[Direction, int]) -> str:
    """Of how many clients something rises or falls; empty when nobody has answered enough."""
    _ = words.gettext
    if not any(found[direction] for direction in Direction if direction is not Direction.TOO_FEW):
        return ""
    said = {
        Direction.RISING: _("rises for {count}"),
        Direction.FALLING: _("falls for {count}"),
        Direction.UNCLEAR: _("no clear trend for {count}"),
        Direction.TOO_FEW: _("too few answers from {count}"),
    }
    parts = [text.format(count=found[direction]) for direction, text in said.items() if found[direction]]
    return f"{name}: {', '.join(parts)}"


def trend(words: Words, found: Trend) -> str:
    """One client's trend with its interval."""
    _ = words.gettext
    said = {
        Direction.RISING: _("rises"),
        Direction.FALLING: _("falls"),
        Direction.UNCLEAR: _("no clear trend"),
        Direction.TOO_FEW: _("too few answers"),
    }[found.direction]
    if found.change is None or found.low is None or found.high is None:
        return said
    low, high = _points(found.low), _points(found.high)
    if low == high:
        return said
    if found.direction is Direction.UNCLEAR:
        return _("{said} ({low} to {high} points)").format(said=said, low=low, high=high)
    change = _points(found.change)
    return _("{said}, {change} points ({low} to {high})").format(said=said, change=change, low=low, high=high)


def _points(value: float) -> str:
    """A change in points, with a true sign where it is none of 0."""
    return f"{value:+.1f}".replace("-", "−") if round(value, 1) else "0"


def followed(words: Words, found: Mapping[Verdict, int]) -> str:
    """How often each verdict followed."""
    named = verdict_words(words)
    return ", ".join(f"{found[verdict]} {named[verdict]}" for verdict in Verdict if found[verdict])


def names(words: Words, found: Sequence[str] | Iterable[str], most: int = NAMES) -> str:
    """Names in one line; beyond `most` they are counted."""
    found = list(found)
    more = len(found) - most
    shown = ", ".join(found[:most])
    return shown if more <= 0 else words.gettext("{names} and {more} more").format(names=shown, more=more)
