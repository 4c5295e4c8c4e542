"""A day's dose in words, as a coach would say it, for a message on a phone."""

from __future__ import annotations

from collections.abc import Callable

from plans.dose import minutes
from plans.programme import Block, Day, Dose, Item, Sides, Span

Gettext = Callable[[str], str]


def same(text: str) -> str:
    """English stays as it is."""
    return text


def headline(day: Day, *, gettext: Gettext = same) -> str:
    """The day's number, what it is about, and how long it takes."""
    _ = gettext
    name = day.title or (day.session.focus if day.session else None)
    start = _("Day {number}").format(number=day.number)
    title = f"{start}: {name}" if name else start
    low, high = minutes(day)
    if not high:
        return title
    length = _("about {low} minutes") if low == high else _("{low} to {high} minutes")
    return f"{title}, {length.format(low=low, high=high)}"


def session_lines(day: Day, *, gettext: Gettext = same) -> list[str]:
    """The session line by line, numbered through; empty for a day without one."""
    if day.session is None:
        return []
    lines: list[str] = []
    if day.session.warm_up:
        lines.append(gettext("First: {text}").format(text=day.session.warm_up))
    number, in_rounds = 1, False
    for block in day.session.blocks:
        lines += _round_line(block, gettext) or ([gettext("Then:")] if in_rounds else [])
        in_rounds = block.rounds > 1
        for item in block.items:
            lines.append(f"{number}. {item_line(item, gettext=gettext)}")
            number += 1
    return lines


def _round_line(block: Block, _: Gettext) -> list[str]:
    if block.rounds == 1:
        return []
    if block.rest:
        text = _("{rounds} rounds of these, rest {seconds} s between rounds:")
        return [text.format(rounds=block.rounds, seconds=block.rest)]
    return [_("{rounds} rounds of these:").format(rounds=block.rounds)]


def item_line(item: Item, *, gettext: Gettext = same) -> str:
    """One movement with its dose, effort, load and cue."""
    _ = gettext
    parts = [dose_words(item, gettext=_)]
    if item.load is not None:
        held = f" {item.load.held}" if item.load.held else ""
        parts.append(_("with {load}").format(load=f"{item.load.words}{held}"))
    if item.effort is not None:
        parts.append(_("stretch feeling {effort} of 10").format(effort=_span(item.effort, _)))
    if item.rest and item.sets > 1:
        parts.append(_("rest {seconds} s between sets").format(seconds=item.rest))
    if item.practice:
        parts.append(_("for practice"))
    if item.cue:
        parts.append(item.cue)
    return f"{item.movement.name}: {', '.join(parts)}"


def dose_words(item: Item, *, gettext: Gettext = same) -> str:
    """The dose alone: "2 x 30 s each side", "8-10 times", "2 min"."""
    _ = gettext
    text = _amount(item.dose, _)
    if item.sets > 1:
        text = f"{item.sets} x {text}"
    side = _side_words(item, _)
    return f"{text} {side}" if side else text


def _side_words(item: Item, _: Gettext) -> str | None:
    dose = item.dose
    total = any(span is not None and span.total for span in (dose.reps, dose.steps, dose.breaths))
    return {
        Sides.EACH: _("in total, half on each side") if total else _("each side"),
        Sides.ALTERNATE: _("in total, alternating sides") if total else _("alternating sides"),
        Sides.LEFT: _("left side"),
        Sides.RIGHT: _("right side"),
    }.get(item.side)


def _amount(dose: Dose, _: Gettext) -> str:
    parts: list[str] = []
    if dose.contract is not None:
        parts.append(
            _("tense {contract} s, then relax into it {relax} s").format(contract=dose.contract, relax=dose.relax)
        )
    if dose.hold is not None:
        parts.append(_time(dose.hold, _))
    if dose.flow is not None:
        parts.append(_("{time} without counting").format(time=_time(dose.flow, _)))
    if dose.steps is not None:
        parts.append(_("{count} steps").format(count=_span(dose.steps, _)))
    if dose.breaths is not None:
        parts.append(_("{count} slow breaths").format(count=_span(dose.breaths, _)))
    text = ", ".join(parts)
    if dose.reps is not None:
        text = _repeated(dose.reps, text, _)
    if dose.last_hold is not None:
        text += _(", the last one held {seconds} s").format(seconds=dose.last_hold)
    return text


def _repeated(reps: Span, text: str, _: Gettext) -> str:
    if reps == Span(1, 1):
        return text or _("once")
    count = _span(reps, _)
    if text:
        return f"{count} x {text}"
    return count if reps.about and reps.up_to else _("{count} times").format(count=count)


def _span(span: Span, _: Gettext) -> str:
    if span.about and span.up_to:
        return _("as many as feel good")
    if span.up_to:
        return _("up to {number}").format(number=span.high)
    number = str(span.low) if span.low == span.high else f"{span.low}-{span.high}"
    return _("about {number}").format(number=number) if span.about else number


def _time(span: Span, _: Gettext) -> str:
    whole = span.low % 60 == 0 and span.high % 60 == 0 and span.low >= 60
    low, high = (span.low // 60, span.high // 60) if whole else (span.low, span.high)
    number = str(low) if low == high else f"{low}-{high}"
    return _("{number} min").format(number=number) if whole else _("{number} s").format(number=number)
