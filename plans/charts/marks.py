"""Colours, patterns and small shapes of charts; whatever a colour says, a shape, a pattern or a word says as well.

The three strong colours are blue, vermillion and bluish green of Okabe and Ito, "Color Universal Design" (2002, revised
2008; jfly.uni-koeln.de/color), which people with every common kind of colour vision tell apart; their other colours are
too pale for this paper. The hatching, ink, outline and paper are those of the figures. Lengths are pixels.
"""

from __future__ import annotations

from plans.rules import Verdict

PAPER, INK, SOFT = "#fbf9f3", "#2c2e2b", "#5d6059"
TILE, BAND, GRID = "#f0ede2", "#e4e7dc", "#d5d8cd"
"""Faint grounds and lines that say nothing by themselves."""
BLUE, VERMILLION, GREEN = "#0072b2", "#d55e00", "#009e73"
WORK, WORK_GROUND, TEAL = "#a8452c", "#f6e7d2", "#6f8f94"
"""The hatching of a working muscle, and the trunk, as in a figure."""

RADIUS = 12.0
"""Half of a mark's width and height at size 1, its outline with it."""

STYLE = f"""
text{{font-family:DejaVu Sans}}.ink{{fill:{INK}}}.soft{{fill:{SOFT}}}
.value{{fill:{INK};stroke:{PAPER};stroke-width:7;stroke-linejoin:round;paint-order:stroke}}
.grid{{stroke:{GRID};stroke-width:2;fill:none}}.axis{{stroke:{SOFT};stroke-width:2.5;fill:none}}
.tile{{fill:{TILE}}}.band{{fill:{BAND}}}.edge{{stroke:{SOFT};stroke-width:2;stroke-dasharray:3 6;fill:none}}
.line{{stroke:{INK};stroke-width:3;fill:none;stroke-linejoin:round}}.across{{stroke:{SOFT};stroke-width:3;fill:none}}
.way{{stroke:{SOFT};stroke-width:3;fill:none}}
.pain{{fill:{VERMILLION};stroke:{INK};stroke-width:2}}
.painway{{stroke:{VERMILLION};stroke-width:3.5;fill:none;stroke-linejoin:round}}
.open{{fill:{PAPER};stroke:{INK};stroke-width:2.5}}.asked{{fill:{TILE};stroke:{SOFT};stroke-width:3}}
.more{{fill:none;stroke:{SOFT};stroke-width:3;stroke-dasharray:5 6}}
.bar{{fill:{BLUE}}}.hatch{{fill:url(#hatch);stroke:{INK};stroke-width:2.5}}.sure{{fill:{BLUE};stroke:{INK};stroke-width:2.5}}
.unsure{{fill:url(#slant);stroke:{INK};stroke-width:2.5}}.dotted{{fill:url(#dots);stroke:{INK};stroke-width:2.5}}
.lined{{fill:url(#lines);stroke:{INK};stroke-width:2.5}}
.crossed{{fill:url(#cross);stroke:{INK};stroke-width:2.5}}.full{{fill:{VERMILLION};stroke:{INK};stroke-width:2.5}}.dark{{fill:{INK};stroke:{INK};stroke-width:2.5}}
"""

PATTERNS = (
    '<pattern id="hatch" width="12" height="12" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">'
    f'<rect width="12" height="12" fill="{WORK_GROUND}"/><rect width="5" height="12" fill="{WORK}"/></pattern>'
    '<pattern id="slant" width="12" height="12" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">'
    f'<rect width="12" height="12" fill="{PAPER}"/><rect width="4" height="12" fill="{BLUE}"/></pattern>'
    '<pattern id="dots" width="12" height="12" patternUnits="userSpaceOnUse">'
    f'<rect width="12" height="12" fill="{PAPER}"/><circle cx="6" cy="6" r="2.8" fill="{GREEN}"/></pattern>'
    '<pattern id="lines" width="10" height="10" patternUnits="userSpaceOnUse">'
    f'<rect width="10" height="10" fill="{PAPER}"/><rect width="10" height="4" fill="{TEAL}"/></pattern>'
    '<pattern id="cross" width="12" height="12" patternUnits="userSpaceOnUse">'
    f'<rect width="12" height="12" fill="{PAPER}"/><path d="M0 0 12 12M12 0 0 12" stroke="{INK}" stroke-width="1.8"/>'
    "</pattern>"
)

VERDICTS = {
    Verdict.ADVANCE: "on",
    Verdict.REPEAT: "again",
    Verdict.EASE: "lighter",
    Verdict.REST: "rest",
    Verdict.REFER: "waits",
}
"""The shape of each verdict."""
FILLS = {
    Verdict.ADVANCE: "sure",
    Verdict.REPEAT: "dotted",
    Verdict.EASE: "lined",
    Verdict.REST: "crossed",
    Verdict.REFER: "dark",
}
"""The filling of each verdict's bars."""

_SHAPES = {
    "done": f'<circle r="10.8" fill="{BLUE}" stroke="{INK}" stroke-width="2.4"/>'
    f'<path d="M-5 .5l3.6 4 6.4-8.2" fill="none" stroke="{PAPER}" stroke-width="3"/>',
    "part": f'<circle r="10.8" fill="{PAPER}" stroke="{INK}" stroke-width="2.4"/>'
    f'<path d="M-10.8 0A10.8 10.8 0 0 0 10.8 0Z" fill="{BLUE}" stroke="{INK}" stroke-width="2.4"/>',
    "left-out": f'<circle r="10.6" fill="{PAPER}" stroke="{INK}" stroke-width="2.8"/>',
    "silent": f'<circle r="4" fill="{INK}"/>',
    "rest": f'<path d="M-9.5 0H9.5" stroke="{INK}" stroke-width="5" stroke-linecap="round"/>',
    "measured": f'<path d="M0-10.5 10.5 0 0 10.5-10.5 0Z" fill="{TEAL}" stroke="{INK}" stroke-width="2.4"/>',
    "apart": f'<path d="M0-10.5 10.5 0 0 10.5-10.5 0Z" fill="{PAPER}" stroke="{INK}" stroke-width="2.8"/>',
    "on": f'<path d="M-7-9.5 10 0-7 9.5Z" fill="{INK}"/>',
    "again": f'<path d="M7.5 2.7A8 8 0 1 1 5.1-6.1" fill="none" stroke="{INK}" stroke-width="3.2"/>'
    f'<path d="M11-1.2 9-10.6 1.2-3.2Z" fill="{INK}"/>',
    "lighter": f'<path d="M-9-7.5H9L0 9.5Z" fill="{PAPER}" stroke="{INK}" stroke-width="3" stroke-linejoin="round"/>',
    "waits": f'<path d="M-4.5-9V9M4.5-9V9" stroke="{INK}" stroke-width="5"/>',
    "before": f'<rect x="-7.5" y="-7.5" width="15" height="15" fill="{PAPER}" stroke="{INK}" stroke-width="2.5"/>',
    "after": f'<rect x="-7.5" y="-7.5" width="15" height="15" fill="{GREEN}" stroke="{INK}" stroke-width="2.5"/>',
}
DEFS = PATTERNS + "".join(f'<g id="{name}">{shape}</g>' for name, shape in _SHAPES.items())

DASHES = ("14 9", "3 7", "22 7 3 7")
"""Of lines across a panel, told apart by their pattern; a fourth begins anew."""


def mark(name: str, x: float, y: float, size: float = 1.0) -> str:
    """A small shape with its middle at x, y. Raises KeyError for a name that is not drawn."""
    _SHAPES[name]
    return f'<use href="#{name}" transform="translate({x:.2f} {y:.2f}) scale({size:.3g})"/>'


def pain(x: float, y: float, radius: float) -> str:
    """A pain answer."""
    return f'<circle class="pain" cx="{x:.2f}" cy="{y:.2f}" r="{radius:.1f}"/>'


def box(kind: str, x: float, y: float, wide: float, high: float, *, round_: float = 0) -> str:
    """A rectangle from its upper left corner."""
    corner = f' rx="{round_:g}"' if round_ else ""
    return f'<rect class="{kind}" x="{x:.2f}" y="{y:.2f}" width="{wide:.2f}" height="{high:.2f}"{corner}/>'


def path(kind: str, points: str) -> str:
    """A path of a class of the style."""
    return f'<path class="{kind}" d="{points}"/>'


def across(kind: int, left: float, right: float, y: float) -> str:
    """A level line; `kind` chooses its pattern."""
    return f'<path class="across" stroke-dasharray="{_dash(kind)}" d="M{left:.1f} {y:.2f}H{right:.1f}"/>'


def upright(kind: int, x: float, top: float, bottom: float) -> str:
    """An upright line; `kind` chooses its pattern."""
    return f'<path class="across" stroke-dasharray="{_dash(kind)}" d="M{x:.2f} {bottom:.1f}V{top:.1f}"/>'


def _dash(kind: int) -> str:
    return DASHES[kind % len(DASHES)]
