"""Shapes on the paper: rounded bars and outlines as SVG paths, with their bounds."""

from __future__ import annotations

from collections.abc import Iterable
from math import sqrt
from typing import NamedTuple

from plans.figures.camera import Spot

Bounds = tuple[float, float, float, float]
"""Left, top, right, bottom."""


class Shape(NamedTuple):
    """One shape on the paper, how near it is (body heights), and its class for the style."""

    depth: float
    path: str
    kind: str
    bounds: Bounds


_ROUND = "M%.4f %.4fa%.4f %.4f 0 1 0 %.4f 0a%.4f %.4f 0 1 0 %.4f 0Z"
_TO_THIN = "M%.4f %.4fA%.4f %.4f 0 1 1 %.4f %.4fL%.4f %.4fA%.4f %.4f 0 0 1 %.4f %.4fZ"
_TO_THICK = "M%.4f %.4fA%.4f %.4f 0 0 1 %.4f %.4fL%.4f %.4fA%.4f %.4f 0 1 1 %.4f %.4fZ"
"""A circle, and bars whose thicker end is the first or the second one: their larger arc is there."""


def capsule(a: Spot, b: Spot, ra: float, rb: float, kind: str, depth: float = 0.0) -> Shape:
    """A rounded bar from a to b, as thick as ra and rb at its ends."""
    (ax, ay), (bx, by) = a, b
    bounds = (
        ax - ra if ax - ra < bx - rb else bx - rb,
        ay - ra if ay - ra < by - rb else by - rb,
        ax + ra if ax + ra > bx + rb else bx + rb,
        ay + ra if ay + ra > by + rb else by + rb,
    )
    dx, dy = bx - ax, by - ay
    far = sqrt(dx * dx + dy * dy)
    if far <= abs(ra - rb) + 1e-9:
        (x, y), r = (a, ra) if ra >= rb else (b, rb)
        path = _ROUND % (x - r, y, r, r, 2 * r, r, r, -2 * r)
        return Shape(depth, path, kind, bounds)
    x, y = dx / far, dy / far
    lean = (ra - rb) / far
    over = sqrt(1 - lean * lean)
    c, s, d, e = x * lean - y * over, y * lean + x * over, x * lean + y * over, y * lean - x * over
    ends = (ax + ra * c, ay + ra * s, ra, ra, ax + ra * d, ay + ra * e, bx + rb * d, by + rb * e, rb, rb)
    path = (_TO_THIN if lean > 0 else _TO_THICK) % (*ends, bx + rb * c, by + rb * s)
    return Shape(depth, path, kind, bounds)


def outline(spots: Iterable[Spot], kind: str, depth: float = 0.0) -> Shape:
    """The convex outline of some spots."""
    found = _hull(sorted(set(spots)))
    path = "M" + "L".join(f"{x:.4f} {y:.4f}" for x, y in found) + "Z"
    across, down = [x for x, _ in found], [y for _, y in found]
    return Shape(depth, path, kind, (min(across), min(down), max(across), max(down)))


def _hull(spots: list[Spot]) -> list[Spot]:
    sides = []
    for row in (spots, spots[::-1]):
        line: list[Spot] = []
        for spot in row:
            while len(line) > 1 and _turns_in(line[-2], line[-1], spot):
                line.pop()
            line.append(spot)
        sides.append(line[:-1])
    return sides[0] + sides[1]


def _turns_in(a: Spot, b: Spot, c: Spot) -> bool:
    return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]) <= 0


def one(shapes: Iterable[Shape], kind: str) -> Shape:
    """Several shapes as a single one."""
    found = list(shapes)
    depth = sum(shape.depth for shape in found) / len(found)
    return Shape(depth, "".join(shape.path for shape in found), kind, bounds_of(found))


def bounds_of(shapes: Iterable[Shape]) -> Bounds:
    """Left, top, right and bottom of some shapes. Raises ValueError without any."""
    lefts, tops, rights, bottoms = zip(*(shape.bounds for shape in shapes), strict=True)
    return min(lefts), min(tops), max(rights), max(bottoms)
