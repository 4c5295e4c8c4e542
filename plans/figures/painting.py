"""What is in front of what: solids in space, each with its shapes on the paper, from the farthest to the nearest.

Two solids whose shapes overlap on the paper are compared where they do: bars at the spot where they cross, a box by
that side of it beyond which the other one lies. Where this goes round in a circle, the mean depths decide.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import NamedTuple

from plans.figures.camera import Camera, Spot
from plans.figures.shapes import Bounds, Shape, bounds_of, capsule
from plans.figures.space import Point, between, length, sub
from plans.figures.things import Box


class Bar(NamedTuple):
    """A round bar in space and on the paper: its ends, half of its thickness and how near it is at each."""

    begin: Point
    end: Point
    halves: tuple[float, float]
    a: Spot
    b: Spot
    depths: tuple[float, float]
    shape: Shape

    @classmethod
    def of(cls, camera: Camera, begin: Point, end: Point, halves: tuple[float, float], kind: str) -> Bar:
        """A bar as it is seen."""
        a, b = camera.seen(begin), camera.seen(end)
        depths = camera.depth(begin), camera.depth(end)
        shape = capsule(a, b, halves[0] * camera.zoom, halves[1] * camera.zoom, kind, sum(depths) / 2)
        return cls(begin, end, halves, a, b, depths, shape)


@dataclass(frozen=True, slots=True)
class Solid:
    """Something solid: the shapes that are drawn of it in their order, and the bars or the box of which it is made.

    `joined` are the solids that go on at an end of its first bar (0 where it begins, 1 where it ends), as skin does:
    no line is seen between them.
    """

    name: str
    shapes: Sequence[Shape]
    bars: Sequence[Bar] = ()
    box: Box | None = None
    nearer: float = 0.0
    """Of body height: how much nearer it counts than it is."""
    joined: Mapping[str, int] = field(default_factory=dict)


@dataclass(slots=True)
class _Placed:
    solid: Solid
    bounds: Bounds
    depth: float
    behind: list[_Placed] = field(default_factory=list)
    is_done: bool = False


def painted(solids: Sequence[Solid], camera: Camera) -> list[Shape]:
    """The shapes of some solids, the farthest first."""
    placed = sorted((_placed(solid) for solid in solids), key=lambda one: one.depth)
    for number, one in enumerate(placed):
        for other in placed[:number]:
            if not _apart(one.bounds, other.bounds) and other.solid.name not in one.solid.joined:
                nearer = _nearer(one.solid, other.solid, camera)
                if nearer is not None:
                    front, back = (one, other) if nearer >= 0 else (other, one)
                    front.behind.append(back)
    shapes: list[Shape] = []
    done: dict[str, Solid] = {}
    for one in placed:
        for solid in _after_what_is_behind(one):
            shapes += solid.shapes
            for name in solid.joined:
                if name in done:
                    shapes.append(_patch(done[name], done[name].joined[solid.name], camera))
            done[solid.name] = solid
    return shapes


LINE = 0.0065
"""How thick lines are, in body heights on the paper."""
_PATCH = 0.014
"""Of body height: how far along a limb a patch goes from the joint."""


def _patch(solid: Solid, at: int, camera: Camera) -> Shape:
    """What hides the line of the nearer limb at a joint: a short piece of the farther one."""
    bar = solid.bars[0]
    a, b = (bar.end, bar.begin) if at else (bar.begin, bar.end)
    half = bar.halves[at] - LINE / 2 / camera.zoom
    piece = between(a, b, min(1.0, _PATCH / length(sub(b, a))))
    return Bar.of(camera, a, piece, (half, half), f"{bar.shape.kind} bare").shape


def _placed(solid: Solid) -> _Placed:
    depth = sum(shape.depth for shape in solid.shapes) / len(solid.shapes)
    return _Placed(solid, bounds_of(solid.shapes), depth + solid.nearer)


def _after_what_is_behind(one: _Placed) -> Iterator[Solid]:
    if one.is_done:
        return
    one.is_done = True
    for other in sorted(one.behind, key=lambda other: other.depth):
        yield from _after_what_is_behind(other)
    yield one.solid


def _apart(one: Bounds, other: Bounds) -> bool:
    return one[0] > other[2] or other[0] > one[2] or one[1] > other[3] or other[1] > one[3]


def _nearer(one: Solid, other: Solid, camera: Camera) -> float | None:
    """By how much one solid is nearer than another where they overlap; None where they do not."""
    if one.box is not None:
        return _before_box(other, one.box, camera, -1.0)
    if other.box is not None:
        return _before_box(one, other.box, camera, 1.0)
    deepest, found = 0.0, None
    for bar in one.bars:
        for against in other.bars:
            if _apart(bar.shape.bounds, against.shape.bounds):
                continue
            apart, share, along = _crossing(bar.a, bar.b, against.a, against.b)
            room = (max(bar.halves) + max(against.halves)) * camera.zoom - apart
            if room > deepest:
                first = bar.depths[0] + (bar.depths[1] - bar.depths[0]) * share
                second = against.depths[0] + (against.depths[1] - against.depths[0]) * along
                deepest, found = room, first - second
    return None if found is None else found + one.nearer - other.nearer


def _crossing(a: Spot, b: Spot, c: Spot, d: Spot) -> tuple[float, float, float]:
    """How near two lines come on the paper, and how far along each that is."""
    ux, uy, vx, vy = b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]
    wx, wy = c[0] - a[0], c[1] - a[1]
    uu, vv, cross = ux * ux + uy * uy, vx * vx + vy * vy, ux * vy - uy * vx
    if abs(cross) > 1e-9:
        s, t = (wx * vy - wy * vx) / cross, (wx * uy - wy * ux) / cross
        if 0 <= s <= 1 and 0 <= t <= 1:
            return 0.0, s, t
    best = (9.0, 0.0, 0.0)
    for t in (0.0, 1.0):
        s = _on(((wx + t * vx) * ux + (wy + t * vy) * uy) / uu) if uu > 1e-12 else 0.0
        best = min(best, ((wx + t * vx - s * ux) ** 2 + (wy + t * vy - s * uy) ** 2, s, t))
    for s in (0.0, 1.0):
        t = _on(((s * ux - wx) * vx + (s * uy - wy) * vy) / vv) if vv > 1e-12 else 0.0
        best = min(best, ((wx + t * vx - s * ux) ** 2 + (wy + t * vy - s * uy) ** 2, s, t))
    return best[0] ** 0.5, best[1], best[2]


def _on(share: float) -> float:
    return 0.0 if share < 0 else 1.0 if share > 1 else share


def _before_box(solid: Solid, box: Box, camera: Camera, sign: float) -> float:
    """Positive for a solid before a box: it is beyond a side of the box that can be seen, by most of all sides."""
    best, found = -9.0, 0.0
    low, high = _reach(solid)
    for axis in range(3):
        seen = camera.near[axis]
        if abs(seen) < 0.03:
            continue
        for gap, looks in ((low[axis] - box.high[axis], seen), (box.low[axis] - high[axis], -seen)):
            if gap > best:
                best, found = gap, looks
    return sign * found


def _reach(solid: Solid) -> tuple[list[float], list[float]]:
    """The lowest and the highest corner of a solid, its round bars without half of their thickness."""
    if solid.box is not None:
        return list(solid.box.low), list(solid.box.high)
    ends = [point for bar in solid.bars for point in (bar.begin, bar.end)]
    return [min(end[axis] for end in ends) for axis in range(3)], [max(end[axis] for end in ends) for axis in range(3)]
