"""A day's session as one picture of a phone's width: each movement from start to end, its dose under its figure.

Words come in as they are said to the client; nothing here knows a language. Lengths are body heights, as in figures.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from html import escape
from textwrap import wrap

from plans.figures.drawing import shapes_svg
from plans.figures.library import Frame, bounds, drawn, frames
from plans.figures.sheet import svg
from plans.movements import Movement

WIDE = 2.9
"""Width of a card: two poses side by side, and a margin."""
MARGIN, LINE, LETTERS = 0.09, 0.098, 62
"""Left and right; from line to line; letters that fit on one (DejaVu Sans at 0.075, checked by a test)."""
PIXELS = 1080
"""Width of the picture file, for a phone held upright."""


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a session: words, and the movement that they are about, if they are about one."""

    words: str
    movement: Movement | None = None


def card(title: str, lines: Sequence[Line], caution: str) -> str:
    """The card as the text of an SVG file. A movement without poses is there in words alone."""
    body: list[str] = []
    y = 0.16
    for part in wrap(title, LETTERS - 8):
        body.append(_text(MARGIN, y, part, "name"))
        y += LINE * 1.15
    for line in lines:
        y += 0.03
        if line.movement is not None and line.movement.key in drawn():
            found = frames(line.movement.key, drawn()[line.movement.key], line.movement)
            high = _high(found)
            body += _row(found, y, high)
            y += high + 0.07
        for part in wrap(line.words, LETTERS):
            body.append(_text(MARGIN, y + 0.05, part, "dose" if line.movement else "block"))
            y += LINE
    y += 0.06
    for part in wrap(caution, LETTERS):
        body.append(_text(MARGIN, y + 0.05, part, "soft"))
        y += LINE
    return svg(WIDE, y + 0.06, "".join(body), scale=PIXELS / WIDE)


def _high(found: Sequence[Frame]) -> float:
    _left, top, _right, bottom = bounds(list(found))
    return bottom - top + 0.06


def _row(found: Sequence[Frame], y: float, high: float) -> Iterator[str]:
    """The first and the last pose side by side, on one floor line."""
    shown = [found[0], found[-1]] if len(found) > 1 else [found[0]]
    left, _top, right, bottom = bounds(list(found))
    cell = (WIDE - 2 * MARGIN) / len(shown)
    for number, frame in enumerate(shown):
        x = MARGIN + (number + 0.5) * cell - (left + right) / 2
        yield f'<g transform="translate({x:.4f} {y + high - bottom:.4f})">{shapes_svg(frame.shapes)}</g>'


def _text(x: float, y: float, words: str, kind: str) -> str:
    return f'<text class="{kind}" x="{x:.3f}" y="{y:.3f}">{escape(words)}</text>'
