"""What changed from one version of a programme to another, in words; compared by what clients read."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from difflib import SequenceMatcher

from bot.words.doses import block_line, item_line, link_words
from plans.dose import items
from plans.findings import in_runs
from plans.programme import Day, Programme, Session

Line = tuple[str, str]
"""What a line is about (a movement's key, a field's name), and the line itself."""


def changes(old: Programme, new: Programme) -> list[str]:
    """Every difference as one line, the same difference on several days together; none for equal content."""
    about = [text for name, was, now in _fields(old, new) if (text := _differs(name, was, now))]
    return [*about, *_movements(old, new), *_gathered(_days(old, new))]


def _differs(name: str, was: str, now: str) -> str | None:
    if was == now:
        return None
    return f"{name}: new: {now}" if not was else f"{name}: gone: {was}" if not now else f"{name}: {was} -> {now}"


def _fields(old: Programme, new: Programme) -> Iterator[tuple[str, str, str]]:
    reads: dict[str, Callable[[Programme], object]] = {
        "title": lambda p: p.title,
        "goal": lambda p: p.goal,
        "for": lambda p: p.who_for,
        "ages": lambda p: f"{p.ages.low}-{p.ages.high}" if p.ages else "",
        "setting": lambda p: p.setting,
        "company": lambda p: p.company or "",
        "supervised": lambda p: p.supervised or "",
        "led-by": lambda p: p.led_by,
        "motivation": lambda p: p.motivation or "",
        "besides": lambda p: p.besides or "",
        "language": lambda p: p.language,
        "cautions": lambda p: " ".join(p.cautions),
        "muscles": lambda p: ", ".join(p.muscles),
        "equipment": lambda p: ", ".join(str(thing) for thing in p.equipment),
        "measures": lambda p: ", ".join(p.measures),
        "pace": lambda p: p.pace,
        "days a week": lambda p: p.week,
        "weekdays": lambda p: ", ".join(str(day + 1) for day in p.training.weekdays) if p.training else "",
        "pain up to which a day is clean": lambda p: p.settings.clean,
        "pain up to which a day is repeated": lambda p: p.settings.acceptable,
        "pain from which the coach decides": lambda p: p.settings.severe,
    }
    for name, read in reads.items():
        yield name, str(read(old)), str(read(new))


def _movements(old: Programme, new: Programme) -> Iterator[str]:
    """Own movements that came, went or are described differently."""
    before, after = ({movement.key: movement for movement in version.movements} for version in (old, new))
    for key in [*before, *(key for key in after if key not in before)]:
        if key not in after:
            yield f"movement {key}: gone"
        elif key not in before:
            yield f"movement {key}: new: {after[key].name}"
        elif before[key] != after[key]:
            names = type(after[key]).model_fields
            changed = [name for name in names if getattr(before[key], name) != getattr(after[key], name)]
            yield f"movement {key}: {', '.join(changed).replace('_', '-')} changed"


def _days(old: Programme, new: Programme) -> Iterator[tuple[str, int]]:
    """What changed on which day of the new version, or of the old one for days that went."""
    was, now = ([repr(replace(day, number=0)) for day in version.days] for version in (old, new))
    for how, a, b, c, d in _opcodes(was, now):
        if how == "equal":
            if a != c:
                text = f"the same as {in_runs(range(a + 1, b + 1))} before"
                yield from ((text, number) for number in range(c + 1, d + 1))
            continue
        both = min(b - a, d - c)
        for step in range(both):
            for text in _day(old.days[a + step], new.days[c + step]):
                yield text, c + step + 1
        for gone in old.days[a + both : b]:
            yield f"day {gone.number} before, {_title(gone)}: gone", c + both + 1
        for added in new.days[c + both : d]:
            yield f"new day: {_title(added)}", added.number


def _opcodes(was: Sequence[str], now: Sequence[str]) -> Iterator[tuple[str, int, int, int, int]]:
    """How one list became the other; what both begin and end with is alike first, as many days are the same."""
    shorter = min(len(was), len(now))
    head = next((i for i in range(shorter) if was[i] != now[i]), shorter)
    tail = next((i for i in range(shorter - head) if was[-1 - i] != now[-1 - i]), shorter - head)
    yield "equal", 0, head, 0, head
    middle = SequenceMatcher(None, was[head : len(was) - tail], now[head : len(now) - tail], autojunk=False)
    yield from ((how, a + head, b + head, c + head, d + head) for how, a, b, c, d in middle.get_opcodes())
    yield "equal", len(was) - tail, len(was), len(now) - tail, len(now)


def _title(day: Day) -> str:
    return day.title or day.kind


def _day(old: Day, new: Day) -> Iterator[str]:
    if old.kind != new.kind:
        yield f"a {new.kind} day instead of a {old.kind} day"
    was, now = list(_lines(old)), list(_lines(new))
    matched = SequenceMatcher(None, [about for about, _text in was], [about for about, _text in now], autojunk=False)
    for how, a, b, c, d in matched.get_opcodes():
        if how == "equal":
            pairs = zip(was[a:b], now[c:d], strict=True)
            yield from (f"{before} -> {after}" for (_x, before), (_y, after) in pairs if before != after)
        else:
            yield from (f"gone: {text}" for _about, text in was[a:b])
            yield from (f"new: {text}" for _about, text in now[c:d])


def _lines(day: Day) -> Iterator[Line]:
    """Everything that a client reads of a day, each line with what it is about."""
    texts = (("title", day.title), ("text", day.text), ("caution", day.caution), ("link", link_words(day)))
    yield from ((name, f'{name} "{text}"') for name, text in texts if text)
    if day.measure is not None:
        photo = ", photo invited" if day.measure.photo else ""
        before = f", before it: {day.measure.warm_up}" if day.measure.warm_up else ""
        yield "measure", f"test {day.measure.measure}, {day.measure.trials} trials{photo}{before}"
    if day.session is not None:
        yield from _session(day.session)


def _session(session: Session) -> Iterator[Line]:
    around = (("warm-up", session.warm_up), ("cool-down", session.cool_down))
    yield from ((name, f'{name} "{part.text}", {part.seconds} s') for name, part in around if part)
    if session.focus:
        yield "focus", f'focus "{session.focus}"'
    for number, block in enumerate(session.blocks, start=1):
        if text := block_line(block):
            yield f"block {number}", f"block {number}: {text.rstrip(':')}"
    for _block, item in items(session):
        yield item.movement.key, item_line(item)


def _gathered(found: Iterator[tuple[str, int]]) -> list[str]:
    days: dict[str, list[int]] = {}
    for text, day in found:
        days.setdefault(text, []).append(day)
    return [f"{in_runs(_unique(where))}: {text}" for text, where in days.items()]


def _unique(days: Sequence[int]) -> list[int]:
    return sorted(set(days))
