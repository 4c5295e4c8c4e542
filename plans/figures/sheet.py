"""Figures side by side: one movement from start to end, and contact sheets of many."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from html import escape

from plans.figures.drawing import HATCH, STYLE, shapes_svg
from plans.figures.library import Frame, bounds, frames
from plans.figures.written import Drawn
from plans.movements import Movement

CELL_WIDE, CELL_HIGH = 1.42, 1.42
"""Of body height: the room of one pose."""
TEXT = 0.062


def strip(found: Sequence[Frame], x: float, y: float) -> Iterator[str]:
    """The poses of a movement from left to right, on one floor line, each in a cell."""
    left, _top, right, bottom = bounds(list(found))
    shift = CELL_WIDE / 2 - (left + right) / 2
    for number, frame in enumerate(found):
        at_x, at_y = x + number * CELL_WIDE + shift, y + CELL_HIGH - 0.14 - max(0.0, bottom)
        yield f'<g transform="translate({at_x:.4f} {at_y:.4f})">{shapes_svg(frame.shapes)}</g>'
        if frame.say:
            at_x, at_y = x + (number + 0.5) * CELL_WIDE, y + CELL_HIGH - 0.03
            yield f'<text x="{at_x:.3f}" y="{at_y:.3f}" text-anchor="middle">{escape(frame.say)}</text>'


def sheet(how: Mapping[str, Drawn], movements: Mapping[str, Movement], *, columns: int = 2) -> str:
    """A contact sheet of movements, as the text of an SVG file. Raises ImpossiblePose for one that cannot be drawn."""
    most = max((len(one.poses) for one in how.values()), default=1)
    wide, high = most * CELL_WIDE, CELL_HIGH + 0.14
    body = []
    for number, (key, one) in enumerate(how.items()):
        x, y = number % columns * wide, number // columns * high
        body.append(f'<text class="name" x="{x + 0.04:.3f}" y="{y + 0.09:.3f}">{escape(movements[key].name)}</text>')
        body += strip(frames(key, one, movements[key]), x, y + 0.10)
    rows = -(-len(how) // columns)
    return svg(columns * wide, max(1, rows) * high, "".join(body))


WORDS = f"""
text{{font-family:DejaVu Sans;font-size:{TEXT}px;fill:#2c2e2b}}.name{{font-size:.072px;font-weight:bold}}
.dose{{font-size:.075px}}.block{{font-size:.075px;font-weight:bold}}.soft{{font-size:.07px;fill:#5d6059}}
"""
"""The style of words on a drawing."""


def svg(wide: float, high: float, body: str, *, scale: float = 360) -> str:
    """A whole SVG file of a drawing in body heights; `scale` is pixels for one."""
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {wide:.3f} {high:.3f}" width="{wide * scale:.0f}" '
        f'height="{high * scale:.0f}"><style>{STYLE}{WORDS}</style><defs>{HATCH}</defs>'
        f'<rect width="100%" height="100%" fill="#fbf9f3"/>{body}</svg>'
    )
