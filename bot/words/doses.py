"""A day's dose in words, as a coach would say it, for a message on a phone."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from plans.dose import minutes
from plans.programme import ONCE, Block, BuildUp, Day, Dose, Item, LastHold, Load, Own, Sides, Span

Gettext = Callable[[str], str]


def same(text: str) -> str:
    """English stays as it is."""
    return text


def headline(day: Day, *, gettext: Gettext = same) -> str:
    """The day's number, what it is about, and how long it takes."""
    return ", ".join(part for part in (day_title(day, gettext=gettext), day_length(day, gettext=gettext)) if part)


def day_title(day: Day, *, gettext: Gettext = same) -> str:
    """The day's number and what it is about."""
    name = day.title or (day.session.focus if day.session else None)
    start = gettext("Day {number}").format(number=day.number)
    return f"{start}: {name}" if name else start


def day_length(day: Day, *, gettext: Gettext = same) -> str:
    """How long the day takes; empty for a day that takes no time."""
    _ = gettext
    low, high = minutes(day)
    if not high:
        return ""
    length = _("about {low} minutes") if low == high else _("{low} to {high} minutes")
    return length.format(low=low, high=high)


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a session: words, or an item with its number in the session."""

    words: str
    number: int = 0
    item: Item | None = None


def session_lines(day: Day, *, gettext: Gettext = same) -> list[str]:
    """The session line by line, numbered through; empty for a day without one."""
    return [
        f"{line.number}. {item_line(line.item, gettext=gettext)}" if line.item else line.words
        for line in lines_of(day, gettext)
    ]


def lines_of(day: Day, _: Gettext) -> Iterator[Line]:
    """The session line by line, items apart from words."""
    session = day.session
    if session is None:
        return
    if session.warm_up:
        yield Line(_("First: {text}").format(text=session.warm_up.text))
    number, together = 1, False
    for block in session.blocks:
        words = block_line(block, gettext=_) or (_("Then:") if together else "")
        if words:
            yield Line(words)
        together = block.rounds != ONCE or block.time is not None or block.optional or block.title is not None
        for item in block.items:
            yield Line("", number, item)
            number += 1
    if session.cool_down:
        yield Line(_("To end: {text}").format(text=session.cool_down.text))


def block_line(block: Block, *, gettext: Gettext = same) -> str:
    """How often a block's items are done, when that is more than simply once; else an empty text."""
    _ = gettext
    text = _times_round(block, _)
    if block.optional:
        text = _("If you like, {text}").format(text=text) if text else _("If you like:")
    if block.title:
        text = f"{block.title}. {text}" if text else f"{block.title}:"
    return text


def _times_round(block: Block, _: Gettext) -> str:
    if block.time is not None:
        return _("{time} of these, round after round without hurry:").format(time=_time(block.time, _))
    if block.rounds == ONCE:
        return ""
    rounds = _span(block.rounds, _)
    if block.rest:
        return _("{rounds} rounds of these, rest {seconds} s between rounds:").format(rounds=rounds, seconds=block.rest)
    return _("{rounds} rounds of these:").format(rounds=rounds)


def item_line(item: Item, *, gettext: Gettext = same) -> str:
    """One movement with its dose and all that is said about doing it."""
    parts = [dose_words(item, gettext=gettext), *_how(item, gettext)]
    return f"{named(item)}: {', '.join(parts)}"


def named(item: Item) -> str:
    """The movement with its variation, stance and grip."""
    about = [item.variation.name[:1].lower() + item.variation.name[1:]] if item.variation else []
    about += [text for text in (item.stance, item.grip) if text]
    return f"{item.movement.name} ({', '.join(about)})" if about else item.movement.name


def _how(item: Item, _: Gettext) -> Iterator[str]:
    if item.meanwhile is not None:
        held = item.meanwhile.name[:1].lower() + item.meanwhile.name[1:]
        same_one = item.meanwhile.key == item.movement.key
        yield (
            _("the other side held meanwhile") if same_one else _("meanwhile the other side: {held}").format(held=held)
        )
    if item.build_up is not None:
        yield _build_up(item.build_up, _)
    if item.load is not None:
        held = f" {item.load.held}" if item.load.held else ""
        yield f"{_load(item.load, _)}{held}"
    if item.equipment:
        yield _("with {things}").format(things=", ".join(str(thing) for thing in item.equipment))
    if item.effort is not None:
        yield _effort(item.effort, _)
    if item.stop:
        yield _("stop {where}").format(where=item.stop)
    if item.rest and item.sets.high > 1:
        yield _("rest {seconds} s between sets").format(seconds=item.rest)
    if item.practice:
        yield _("for practice")
    if item.optional:
        yield _("if you like")
    if item.cue:
        yield item.cue
    if item.link:
        yield _link(item.link.address, item.link.start, _)


def _load(load: Load, _: Gettext) -> str:
    if load.own is None:
        return _("with {load}").format(load=load.words)
    return {
        Own.SAME: _("with the same load as last time"),
        Own.MORE: _("with a little more load than last time"),
        Own.LESS: _("with a little less load than last time"),
    }[load.own]


def _effort(effort: Span, _: Gettext) -> str:
    return _("stretch feeling {effort} of 10").format(effort=_span(effort, _))


def _build_up(what: BuildUp, _: Gettext) -> str:
    return {
        BuildUp.RANGE: _("each time a little further"),
        BuildUp.SPEED: _("each time a little faster"),
        BuildUp.EFFORT: _("each time a little firmer"),
    }[what]


def _link(address: str, start: str | None, _: Gettext) -> str:
    return _("{address} from {start}").format(address=address, start=start) if start else address


def link_words(day: Day, *, gettext: Gettext = same) -> str | None:
    """The day's recording and where in it to begin."""
    return _link(day.link.address, day.link.start, gettext) if day.link else None


def dose_words(item: Item, *, gettext: Gettext = same) -> str:
    """The dose alone: "2 x 30 s each side", "8-10 times", "2 min"."""
    _ = gettext
    text = _amount(item.dose, _)
    if item.sets != ONCE:
        text = f"{_span(item.sets, _)} x {text}"
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
    if dose.holds:
        parts.append(_("{seconds} s").format(seconds=_(", then ").join(map(str, dose.holds))))
    if dose.flow is not None:
        parts.append(_("{time} without counting").format(time=_time(dose.flow, _)))
    if dose.steps is not None:
        parts.append(_("{count} steps").format(count=_span(dose.steps, _)))
    if dose.breaths is not None:
        parts.append(_("{count} slow breaths").format(count=_span(dose.breaths, _)))
    text = ", ".join(parts)
    if dose.reps is not None:
        text = _repeated(dose.reps, text, _)
    if dose.squeeze is not None:
        text += _(", each squeezed {seconds} s").format(seconds=dose.squeeze)
    if dose.last_hold is not None:
        text += _last_hold(dose.last_hold, _)
    return text


def _last_hold(last: LastHold, _: Gettext) -> str:
    text = _(", the last one held {seconds} s").format(seconds=last.seconds)
    own = [_("with {things}").format(things=", ".join(map(str, last.equipment)))] if last.equipment else []
    own += [_effort(last.effort, _)] if last.effort else []
    own += [last.cue] if last.cue else []
    return f"{text} ({', '.join(own)})" if own else text


def _repeated(reps: Span, text: str, _: Gettext) -> str:
    if reps == ONCE:
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
