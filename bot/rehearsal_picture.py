"""A rehearsal as one picture (SVG): dates to finish with and without the rules, and what followed each day.

Told apart by hatching and words, not by colour alone; on light and dark.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from html import escape

from plans.rehearsal import Outcome

WIDTH, MARGIN, TOP, PANEL = 960, 56, 84, 220
GAP = 96
"""Between the two panels, for the axis and the words."""

WIDEST = 48.0
"""Of a bar, however few there are."""

FOLLOWED = (("repeat", "dots"), ("ease", "lines"), ("rest", "cross"), ("refer", "full"))
"""What holds a client up, mildest first, and how it is drawn."""

_STYLE = """
:root { color-scheme: light dark; --ink: #1d2a2f; --paper: #fbfaf6; --soft: #8a979b; --work: #2f6f73; }
@media (prefers-color-scheme: dark) { :root { --ink: #e8ecea; --paper: #162024; --soft: #76868b; --work: #7cc4bd; } }
svg { background: var(--paper); font: 14px system-ui, sans-serif; }
text { fill: var(--ink); } .soft { fill: var(--soft); } .head { font-weight: 600; font-size: 16px; }
.axis { stroke: var(--ink); stroke-width: 1; } .plain { fill: none; stroke: var(--ink); stroke-dasharray: 4 3; }
.bar { fill: var(--work); } .full { fill: var(--ink); } .edge { stroke: var(--ink); stroke-width: .7; fill: none; }
.mark { stroke: var(--work); stroke-width: 1.4; fill: none; } .dot { fill: var(--work); }
.pain { fill: var(--paper); stroke: var(--ink); stroke-width: 1.6; }
"""

_HATCHES = {
    "dots": '<circle class="dot" cx="3" cy="3" r="1.4"/>',
    "lines": '<path class="mark" d="M0 6 6 0"/>',
    "cross": '<path class="mark" d="M0 6 6 0M0 0 6 6"/>',
}
_PATTERNS = "\n".join(
    f'<pattern id="{name}" width="6" height="6" patternUnits="userSpaceOnUse">{drawn}</pattern>'
    for name, drawn in _HATCHES.items()
)


def picture(title: str, found: Outcome, plain: Outcome) -> str:
    """The picture of a group beside the same group without the rules, as the text of an SVG file."""
    height = TOP + 2 * PANEL + GAP + 64
    middle = f"half within {found.median:g} dates" if found.median is not None else "nobody finished"
    group = f"{found.clients} simulated clients, {middle}; invented, no evidence"
    words = f"{title}: {group}"
    body = "\n".join([*_finishing(found, plain), *_days(found)])
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDTH} {height}" role="img" '
        f'aria-label="{escape(words)}">\n<title>{escape(words)}</title>\n<style>{_STYLE}</style>\n'
        f'<defs>{_PATTERNS}</defs>\n<text class="head" x="{MARGIN}" y="28">{escape(title)}</text>\n'
        f'<text class="soft" x="{MARGIN}" y="48">{escape(group)}</text>\n{body}\n</svg>\n'
    )


def _finishing(found: Outcome, plain: Outcome) -> Iterator[str]:
    """How many clients finished on each date; the dashed line is the date of the programme as published."""
    base = TOP + PANEL
    yield f'<text x="{MARGIN}" y="{TOP - 8}">dates until the programme was through, share of the group</text>'
    yield _line(MARGIN, base, WIDTH - MARGIN, base)
    if not found.finished:
        return
    first = min(found.finished[0], *(plain.finished or found.finished)[:1])
    last = max(found.finished[-1], *(plain.finished or found.finished)[-1:])
    step = min(WIDEST, (WIDTH - 2 * MARGIN) / (last - first + 1))
    counts = Counter(found.finished)
    most = max(counts.values())
    for dates, count in sorted(counts.items()):
        tall = (PANEL - 28) * count / most
        x = MARGIN + (dates - first) * step
        yield _bar('class="bar"', x, base - tall, max(1.0, step - 1), tall)
    yield from _ticks(first, last, step, base)
    if plain.median is not None:
        x = MARGIN + (plain.median - first + 0.5) * step
        yield f'<path class="plain" d="M{x:.1f} {base}V{TOP + 4}"/>'
        yield _soft(x + 6, TOP + 16, f"as published: {plain.median:g}, hurting or not", "start")


def _ticks(first: int, last: int, step: float, base: int) -> Iterator[str]:
    every = max(1, -(-(last - first) // 12))
    for dates in range(first, last + 1, every):
        x = MARGIN + (dates - first + 0.5) * step
        yield _soft(x, base + 18, str(dates))


def _days(found: Outcome) -> Iterator[str]:
    """For each session day how often a client was held up there, by what; a ring: how often it hurt by 3 and more."""
    top = TOP + PANEL + GAP
    base = top + PANEL
    words = "for each session day, times a client: what held them up, and pain of 3 and more"
    yield f'<text x="{MARGIN}" y="{top - 40}">{words}</text>'
    yield from _legend(top - 18)
    yield _line(MARGIN, base, WIDTH - MARGIN, base)
    if not found.days:
        return
    most = max(0.1, *(max(day.held_up, day.pained) for day in found.days))
    step = (WIDTH - 2 * MARGIN) / len(found.days)
    for place, day in enumerate(found.days):
        x, wide, y = MARGIN + place * step, max(2.0, step * 0.7), float(base)
        for verdict, pattern in FOLLOWED:
            tall = (PANEL - 10) * day.followed[verdict] / most
            y -= tall
            fill = 'class="full"' if pattern == "full" else f'fill="url(#{pattern})"'
            yield _bar(fill, x, y, wide, tall)
        yield _bar('class="edge"', x, y, wide, base - y)
        ring = base - (PANEL - 10) * day.pained / most
        yield f'<circle class="pain" cx="{x + wide / 2:.1f}" cy="{ring:.1f}" r="3.5"/>'
        yield _soft(x + wide / 2, base + 18, str(day.day))
    yield _soft(MARGIN - 6, top + 14, f"{most:.2g}", "end")
    yield _soft(MARGIN - 6, base, "0", "end")
    yield f'<text x="{MARGIN}" y="{base + 42}">{escape(_worst(found))}</text>'


def _worst(found: Outcome) -> str:
    days = ", ".join(f"day {day.day}" for day in found.trouble)
    return f"to look at first: {days}" if days else "no day stands out"


def _legend(y: int) -> Iterator[str]:
    x = MARGIN
    for verdict, pattern in FOLLOWED:
        fill = 'class="full"' if pattern == "full" else f'fill="url(#{pattern})"'
        yield _bar(fill, x, y - 11, 16, 12)
        yield _bar('class="edge"', x, y - 11, 16, 12)
        yield f'<text x="{x + 22}" y="{y}">{_NAMES[verdict]}</text>'
        x += 40 + round(7.2 * len(_NAMES[verdict]))
    yield f'<circle class="pain" cx="{x + 6}" cy="{y - 5}" r="3.5"/>'
    yield f'<text x="{x + 18}" y="{y}">hurt by 3 and more</text>'


_NAMES = {
    "repeat": "the day again, also when it was missed",
    "ease": "lighter",
    "rest": "a day off",
    "refer": "waiting for the coach",
}


def _line(x: float, y: float, to_x: float, to_y: float) -> str:
    return f'<path class="axis" d="M{x} {y}L{to_x} {to_y}"/>'


def _bar(how: str, x: float, y: float, wide: float, tall: float) -> str:
    return f'<rect {how} x="{x:.1f}" y="{y:.1f}" width="{wide:.1f}" height="{tall:.1f}"/>'


def _soft(x: float, y: float, words: str, anchor: str = "middle") -> str:
    return f'<text class="soft" text-anchor="{anchor}" x="{x:.1f}" y="{y:.1f}">{escape(words)}</text>'
