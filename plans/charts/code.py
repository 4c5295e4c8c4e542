"""An invitation as a picture: the link as a QR code, to be held before a phone's camera, with words above it."""

from __future__ import annotations

from dataclasses import dataclass

import segno

from plans.charts.paper import MARGIN, WIDE, Paper

QUIET = 4
"""Modules of white around the code (ISO/IEC 18004)."""


@dataclass(frozen=True, slots=True)
class Code:
    """What is on the picture: the link, a title, and a note in small letters."""

    link: str
    title: str
    note: str


def code_svg(code: Code) -> str:
    """The picture as an SVG file's text, 1080 pixels wide. Error correction is level M: 15 % may be unreadable."""
    rows = [[bool(dark) for dark in row] for row in segno.make(code.link, error="m", boost_error=False).matrix]
    paper = Paper()
    paper.head(code.title, code.note)
    side = (WIDE - 2 * MARGIN) // (len(rows) + 2 * QUIET)
    left = (WIDE - side * len(rows)) / 2
    top = paper.room(side * (len(rows) + 2 * QUIET)) + side * QUIET
    white = side * (len(rows) + 2 * QUIET)
    paper.add(
        f'<rect x="{left - side * QUIET:g}" y="{top - side * QUIET:g}" width="{white}" height="{white}" fill="#fff"/>'
    )
    for y, row in enumerate(rows):
        for x, dark in enumerate(row):
            if dark:
                at = f'x="{left + x * side:g}" y="{top + y * side:g}"'
                paper.add(f'<rect {at} width="{side}" height="{side}" fill="#000" shape-rendering="crispEdges"/>')
    return paper.svg()
