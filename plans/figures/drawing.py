"""A posed body as a drawing: rounded parts, the nearer before the farther, the working part hatched."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from html import escape
from itertools import pairwise
from math import atan2, cos, pi, radians, sin, sqrt

from plans.figures.body import SIDES, SPINE, Body, Part
from plans.figures.posing import CHAIR_BACK, HEIGHTS, SEAT, THICK, landmark, thick
from plans.figures.space import Point, add, cross, dot, times, turned, unit
from plans.figures.written import Prop
from plans.movements import Muscle

VIEWS = {
    "side": (0.0, 4.0),
    "front": (90.0, 6.0),
    "back": (-90.0, 6.0),
    "above": (0.0, 90.0),
    "slant": (40.0, 14.0),
    "slant back": (-40.0, 14.0),
}
"""From where a figure is seen: degrees round from its right side towards its front, and up."""

WIDE = {"pelvis": 0.098, "lumbar": 0.080, "thorax": 0.108}
"""Half of the trunk's breadth, of body height (own choice, for the look)."""


@dataclass(frozen=True, slots=True)
class Camera:
    """Where a figure is seen from: right and up on the paper, and towards the eye."""

    right: Point
    up: Point
    near: Point

    @classmethod
    def of(cls, view: str) -> Camera:
        """A named view. Raises KeyError for another name."""
        around, above = VIEWS[view]
        a, e = radians(around), radians(above)
        near = (sin(a) * cos(e), -cos(a) * cos(e), sin(e))
        right = (cos(a), sin(a), 0.0)
        return cls(right, cross(near, right), near)

    def seen(self, point: Point) -> tuple[float, float]:
        """A point on the paper; down is positive."""
        return dot(point, self.right), -dot(point, self.up)

    def depth(self, point: Point) -> float:
        """How near a point is."""
        return dot(point, self.near)


@dataclass(frozen=True, slots=True)
class Shape:
    """One shape on the paper, with how near it is and its class for the style."""

    depth: float
    path: str
    kind: str
    bounds: tuple[float, float, float, float]


def _capsule(a: tuple[float, float], b: tuple[float, float], ra: float, rb: float) -> str:
    """A rounded bar from a to b, as thick as ra and rb at its ends."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    far = sqrt(dx * dx + dy * dy)
    if far <= abs(ra - rb) + 1e-9:
        (x, y), r = (a, ra) if ra >= rb else (b, rb)
        return f"M{x - r:.4f} {y:.4f}a{r:.4f} {r:.4f} 0 1 0 {2 * r:.4f} 0a{r:.4f} {r:.4f} 0 1 0 {-2 * r:.4f} 0Z"
    way, lean = atan2(dy, dx), _lean(ra, rb, far)
    p = [_around(a, ra, way + lean), _around(a, ra, way - lean), _around(b, rb, way - lean), _around(b, rb, way + lean)]
    return (
        f"M{p[0][0]:.4f} {p[0][1]:.4f}A{ra:.4f} {ra:.4f} 0 {int(lean < pi / 2)} 1 {p[1][0]:.4f} {p[1][1]:.4f}"
        f"L{p[2][0]:.4f} {p[2][1]:.4f}A{rb:.4f} {rb:.4f} 0 {int(lean > pi / 2)} 1 {p[3][0]:.4f} {p[3][1]:.4f}Z"
    )


def _lean(ra: float, rb: float, far: float) -> float:
    share = (ra - rb) / far
    return atan2(sqrt(max(0.0, 1 - share * share)), share)


def _around(centre: tuple[float, float], radius: float, at: float) -> tuple[float, float]:
    return centre[0] + radius * cos(at), centre[1] + radius * sin(at)


def _bar(camera: Camera, a: Point, b: Point, ra: float, rb: float, kind: str, nearer: float = 0.0) -> Shape:
    p, q = camera.seen(a), camera.seen(b)
    bounds = (
        min(p[0] - ra, q[0] - rb),
        min(p[1] - ra, q[1] - rb),
        max(p[0] + ra, q[0] + rb),
        max(p[1] + ra, q[1] + rb),
    )
    depth = (camera.depth(a) + camera.depth(b)) / 2 + nearer
    return Shape(depth, _capsule(p, q, ra, rb), kind, bounds)


def _breadth(camera: Camera, part: Part, half_wide: float, half_deep: float) -> float:
    """Half of a flat part's thickness as it is seen, across its own length."""
    begin, end = camera.seen(part.begin), camera.seen(part.end)
    along = end[0] - begin[0], end[1] - begin[1]
    far = sqrt(along[0] ** 2 + along[1] ** 2)
    across = (-along[1] / far, along[0] / far) if far > 1e-6 else (1.0, 0.0)
    left, forward = turned(part.frame, (0.0, 1.0, 0.0)), turned(part.frame, (1.0, 0.0, 0.0))
    wide, deep = (
        sum(a * b for a, b in zip(across, (dot(axis, camera.right), -dot(axis, camera.up)), strict=True))
        for axis in (left, forward)
    )
    return sqrt((half_wide * wide) ** 2 + (half_deep * deep) ** 2)


def figure(body: Body, camera: Camera, working: Iterable[Muscle] = (), lead: str = "both") -> list[Shape]:
    """The shapes of a body, the farthest first; the working muscles of the leading side are hatched on their part."""
    shapes = [*_trunk(body, camera), *_head(body, camera)]
    for side in SIDES:
        shapes += _limbs(body, camera, side)
    for muscle in working:
        shapes += _hatches(body, camera, muscle, lead)
    return sorted(shapes, key=lambda shape: shape.depth)


def _chain(bars: list[Shape], kind: str, depth: float) -> Iterator[Shape]:
    """Bars as one shape: an outline round all of them first, then their filling."""
    path = "".join(bar.path for bar in bars)
    bounds = bounds_of(bars)
    yield Shape(depth, path, "outline", bounds)
    yield Shape(depth + 1e-4, path, kind, bounds)


def _trunk(body: Body, camera: Camera) -> Iterator[Shape]:
    """The trunk in one: hips, waist and chest, one rounded bar after the other."""
    names = ("pelvis", *SPINE)
    wide = [WIDE[name.split()[0]] * (0.86 if name == "lumbar 2" else 1.0) for name in names]
    radii = [_breadth(camera, body[name], w, THICK[name.split()[0]]) for name, w in zip(names, wide, strict=True)]
    radii[-1] *= 0.92
    ends = [*radii[1:], radii[-1] * 0.80]
    bars = [
        _bar(camera, body[name].begin, body[name].end, begin, end, "trunk")
        for name, begin, end in zip(names, radii, ends, strict=True)
    ]
    middle = body["lumbar 2"]
    yield from _chain(bars, "trunk", camera.depth(middle.end))


def _head(body: Body, camera: Camera) -> Iterator[Shape]:
    neck, head = body["neck"], body["head"]
    nose, middle = head.at(0.44, forward=0.070), head.at(0.5)
    seen = camera.depth(nose) > camera.depth(middle) - 0.02
    bars = [_bar(camera, head.at(0.36, forward=0.008), head.at(0.64, forward=0.002), 0.050, 0.058, "head")]
    if seen or abs(dot(turned(head.frame, (1.0, 0.0, 0.0)), camera.near)) < 0.6:
        bars.append(_bar(camera, head.at(0.50, forward=0.045), nose, 0.014, 0.008, "head"))
    yield from _chain([_bar(camera, neck.begin, neck.end, 0.031, 0.029, "near")], "near", camera.depth(neck.begin))
    yield from _chain(bars, "head", camera.depth(middle) + 0.02)


_TAPER = {"thigh": (0.052, 0.034), "shank": (0.036, 0.022), "upper arm": (0.030, 0.023), "forearm": (0.024, 0.017)}


def _limbs(body: Body, camera: Camera, side: str) -> Iterator[Shape]:
    kind = "far" if _is_far(body, camera, side) else "near"

    def bar(name: str) -> Shape:
        part = body[f"{side} {name}"]
        return _bar(camera, part.begin, part.end, *_TAPER[name], kind)

    depths = _depths(body, camera, side)

    foot, hand = body[f"{side} foot"], body[f"{side} hand"]
    lift = times(turned(foot.frame, (0.0, 0.0, 1.0)), 0.017)
    sole = _bar(camera, add(foot.begin, times(lift, 1.3)), add(foot.end, times(lift, 0.8)), 0.021, 0.013, kind)
    leg = [bar("thigh"), bar("shank"), sole]
    arm = [bar("upper arm"), bar("forearm"), _bar(camera, hand.begin, hand.end, 0.018, 0.012, kind)]
    for bars, depth in ((leg, depths["leg"]), (arm, depths["arm"])):
        yield from _chain(bars, kind, depth)


def _is_far(body: Body, camera: Camera, side: str) -> bool:
    other = "left" if side == "right" else "right"
    return camera.depth(body[f"{side} thigh"].begin) < camera.depth(body[f"{other} thigh"].begin) - 0.04


_CHAINS = {"leg": ("thigh", "shank", "foot"), "arm": ("upper arm", "forearm", "hand")}


def _depths(body: Body, camera: Camera, side: str) -> dict[str, float]:
    """How near a leg and an arm are, each as a whole; arms a little nearer, the far side a little farther."""
    nearer = -0.05 if _is_far(body, camera, side) else 0.05
    found = {}
    for chain, names in _CHAINS.items():
        parts = [body[f"{side} {name}"] for name in names]
        middle = sum(camera.depth(part.begin) + camera.depth(part.end) for part in parts) / (2 * len(parts))
        found[chain] = middle + nearer + (0.03 if chain == "arm" else 0.0)
    return found


# --- the working part -----------------------------------------------------------------------------------------------

_SPOTS: dict[Muscle, tuple[tuple[str, float, float, float, float, float], ...]] = {
    Muscle.HAMSTRINGS: (("thigh", 0.12, 0.92, -0.55, 0.0, 0.020),),
    Muscle.QUADRICEPS: (("thigh", 0.12, 0.90, 0.50, 0.0, 0.022),),
    Muscle.HIP_FLEXORS: (("thigh", -0.10, 0.34, 0.62, 0.0, 0.022),),
    Muscle.GLUTES: (("thigh", -0.12, 0.16, -0.95, 0.2, 0.030),),
    Muscle.HIP_ROTATORS: (("thigh", -0.06, 0.12, -0.70, 0.6, 0.026),),
    Muscle.ADDUCTORS: (("thigh", 0.08, 0.85, 0.0, -0.62, 0.019),),
    Muscle.CALVES: (("shank", 0.04, 0.66, -0.50, 0.0, 0.019),),
    Muscle.ANKLES: (("shank", 0.80, 1.02, 0.35, 0.0, 0.019),),
    Muscle.FEET: (("foot", 0.15, 0.9, 0.0, 0.0, 0.012),),
    Muscle.FOREARMS: (("forearm", 0.08, 0.80, 0.25, 0.0, 0.014),),
    Muscle.SHOULDERS: (("upper arm", -0.05, 0.42, 0.1, 0.35, 0.024),),
    Muscle.LOWER_BACK: (("lumbar", 0.0, 1.0, -0.70, 0.0, 0.020),),
    Muscle.UPPER_BACK: (("thorax", 0.05, 0.95, -0.72, 0.0, 0.022),),
    Muscle.SIDE_TRUNK: (("lumbar", -0.3, 2.0, 0.0, 0.9, 0.022),),
    Muscle.ABDOMEN: (("lumbar", -0.2, 1.3, 0.72, 0.0, 0.022),),
    Muscle.CHEST: (("chest", 0.0, 0.0, 0.70, 0.55, 0.030),),
    Muscle.LATS: (("thorax", -0.6, 0.9, -0.35, 0.75, 0.022),),
    Muscle.NECK: (("neck", -0.2, 1.0, -0.35, 0.5, 0.016),),
}
"""Where a muscle group lies: part, from and to along it, forward and outward in half thicknesses, half its own."""

_MIDDLE = ("lumbar", "thorax", "chest", "neck")


def _hatches(body: Body, camera: Camera, muscle: Muscle, lead: str) -> Iterator[Shape]:
    for part, begin, end, forward, out, half in _SPOTS[muscle]:
        if part in _MIDDLE:
            sides = SIDES if lead == "both" and out else (lead if lead in SIDES else "right",)
            for side in sides:
                yield from _on_trunk(body, camera, part, begin, end, forward, out, half, side)
        else:
            for side in SIDES if lead == "both" else (lead,):
                yield _on_limb(body, camera, f"{side} {part}", begin, end, forward, out, half, side)


def _on_limb(
    body: Body, camera: Camera, name: str, begin: float, end: float, forward: float, out: float, half: float, side: str
) -> Shape:
    part, sign = body[name], 1.0 if side == "left" else -1.0
    deep = thick(name)
    a, b = (part.at(share, forward=forward * deep, left=sign * out * deep) for share in (begin, end))
    chain = "arm" if name.endswith("arm") else "leg"
    shape = _bar(camera, a, b, half, half * 0.8, "hatch")
    return Shape(_depths(body, camera, side)[chain] + 3e-4, shape.path, "hatch", shape.bounds)


def _on_trunk(
    body: Body, camera: Camera, part: str, begin: float, end: float, forward: float, out: float, half: float, side: str
) -> Iterator[Shape]:
    sign = 1.0 if side == "left" else -1.0
    if part == "chest":
        top = body["thorax 3"]
        a = top.at(-0.2, forward=forward * 0.06, left=sign * 0.03)
        b = top.at(0.75, forward=forward * 0.055, left=sign * 0.095)
        yield _bar(camera, a, b, half, half * 0.7, "hatch", 0.09)
        return
    if part == "neck":
        neck = body["neck"]
        a, b = (neck.at(share, forward=forward * 0.03, left=sign * out * 0.04) for share in (begin, end))
        yield _bar(camera, a, b, half, half, "hatch", 0.09)
        return
    names = [name for name in SPINE if name.startswith(part)]
    wide, deep = WIDE[part], THICK[part]
    spots = [body[names[0]].at(begin, forward=forward * deep, left=sign * out * wide)]
    spots += [body[name].at(1.0, forward=forward * deep, left=sign * out * wide) for name in names[:-1]]
    spots.append(body[names[-1]].at(min(end, 1.0), forward=forward * deep, left=sign * out * wide))
    away = turned(body[names[0]].frame, (forward, sign * out, 0.0))
    hidden = dot(away, camera.near) < -0.4
    for a, b in pairwise(spots):
        yield _bar(camera, a, b, half, half, "hatch hidden" if hidden else "hatch", 0.09)


# --- things ---------------------------------------------------------------------------------------------------------


def thing(prop: Prop, body: Body, camera: Camera) -> list[Shape]:
    """The shapes of a prop."""
    if prop.between:
        return list(_held(prop, body, camera))
    return list(_DRAWN[prop.what](prop, camera))


def _box(
    camera: Camera, x: float, z: float, long: float, high: float, deep: float = 0.16, left: float = 0.0
) -> list[Shape]:
    """A box on the floor or above it: `x` its middle, `z` its bottom."""
    found = []
    corners = [
        (x + sx * long / 2, left + sy * deep, z + sz * high) for sx in (-1, 1) for sy in (-1, 1) for sz in (0, 1)
    ]
    seen = [camera.seen(corner) for corner in corners]
    hull = _hull(seen)
    path = "M" + "L".join(f"{px:.4f} {py:.4f}" for px, py in hull) + "Z"
    bounds = (min(p[0] for p in seen), min(p[1] for p in seen), max(p[0] for p in seen), max(p[1] for p in seen))
    found.append(Shape(-9.0, path, "thing", bounds))
    return found


def _hull(points: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """The convex outline of some points."""
    points = sorted(set(points))
    sides = []
    for row in (points, points[::-1]):
        line: list[tuple[float, float]] = []
        for p in row:
            while (
                len(line) > 1
                and (line[-1][0] - line[-2][0]) * (p[1] - line[-2][1])
                - (line[-1][1] - line[-2][1]) * (p[0] - line[-2][0])
                <= 0
            ):
                line.pop()
            line.append(p)
        sides.append(line[:-1])
    return sides[0] + sides[1]


def _turns_in(a: tuple[float, float], b: tuple[float, float], c: tuple[float, float]) -> bool:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) <= 0


def _mat(prop: Prop, camera: Camera) -> list[Shape]:
    return _box(camera, prop.at, -0.012, prop.long or 1.15, 0.012, 0.19, prop.left)


def _chair(prop: Prop, camera: Camera) -> list[Shape]:
    sign = 1.0 if prop.faces == "forward" else -1.0
    x, low, left = prop.at, prop.low, prop.left
    back = x - sign * 0.12
    shapes = _box(camera, x, low + SEAT - 0.03, 0.25, 0.03, 0.12, left)
    for leg in (x - 0.11, x + 0.11):
        for y in (left - 0.11, left + 0.11):
            shapes.append(_line(camera, (leg, y, low), (leg, y, low + SEAT - 0.02), 0.008))
    for y in (left - 0.11, left + 0.11):
        shapes.append(_line(camera, (back, y, low + SEAT), (back - sign * 0.015, y, low + CHAIR_BACK), 0.008))
    shapes += [
        _line(
            camera,
            (back - sign * 0.015, left - 0.11, low + CHAIR_BACK),
            (back - sign * 0.015, left + 0.11, low + CHAIR_BACK),
            0.011,
        )
    ]
    return shapes


def _line(camera: Camera, a: Point, b: Point, half: float, kind: str = "thing", depth: float | None = None) -> Shape:
    shape = _bar(camera, a, b, half, half, kind)
    return Shape(-8.5 if depth is None else depth, shape.path, kind, shape.bounds)


def _wall(prop: Prop, camera: Camera) -> list[Shape]:
    high = prop.height or 1.12
    across = abs(dot((0.0, 1.0, 0.0), camera.right))
    deep = 0.30 if across > 0.5 else 0.14
    return _box(camera, prop.at + (0.02 if prop.at >= 0 else -0.02), 0.0, 0.04, high, deep, prop.left)


def _slab(prop: Prop, camera: Camera) -> list[Shape]:
    """Table, bench, bed: a top on legs or a block."""
    high = prop.low + (prop.height or HEIGHTS[prop.what])
    long = prop.long or {"table": 0.42, "bench": 0.55, "bed": 1.15}[prop.what]
    shapes = _box(camera, prop.at, high - 0.05, long, 0.05, 0.20, prop.left)
    for x in (prop.at - long / 2 + 0.02, prop.at + long / 2 - 0.02):
        shapes.append(_line(camera, (x, prop.left - 0.16, 0.0), (x, prop.left - 0.16, high - 0.04), 0.010))
        shapes.append(_line(camera, (x, prop.left + 0.16, 0.0), (x, prop.left + 0.16, high - 0.04), 0.010))
    return shapes


def _block(prop: Prop, camera: Camera) -> list[Shape]:
    high = prop.height or HEIGHTS.get(prop.what, 0.09)
    return _box(
        camera,
        prop.at,
        prop.low,
        prop.long or {"step": 0.24, "block": 0.12}.get(prop.what, 0.16),
        high,
        0.10,
        prop.left,
    )


def _round(prop: Prop, camera: Camera) -> list[Shape]:
    """A rolled towel, a cushion, a ball."""
    half = (prop.height or {"towel": 0.06, "cushion": 0.07, "ball": 0.04}[prop.what]) / 2
    if prop.what == "ball":
        a = b = (prop.at, prop.left, prop.low + half)
    elif prop.what == "towel":
        a, b = (prop.at, prop.left - 0.12, prop.low + half), (prop.at, prop.left + 0.12, prop.low + half)
    else:
        a, b = (prop.at - 0.07, prop.left, prop.low + half), (prop.at + 0.07, prop.left, prop.low + half)
    return [_line(camera, a, b, half)]


def _rail(prop: Prop, camera: Camera) -> list[Shape]:
    high = prop.low + (prop.height or HEIGHTS["rail"])
    return [
        _line(camera, (prop.at, prop.left, prop.low), (prop.at, prop.left, high), 0.010),
        _line(camera, (prop.at - 0.10, prop.left, high), (prop.at + 0.10, prop.left, high), 0.012),
    ]


def _door(prop: Prop, camera: Camera) -> list[Shape]:
    return _box(camera, prop.at, 0.0, 0.05, prop.height or 1.15, 0.03, prop.left)


_DRAWN = {
    "mat": _mat,
    "chair": _chair,
    "wall": _wall,
    "table": _slab,
    "bench": _slab,
    "bed": _slab,
    "step": _block,
    "block": _block,
    "towel": _round,
    "cushion": _round,
    "ball": _round,
    "rail": _rail,
    "door frame": _door,
}


def _held(prop: Prop, body: Body, camera: Camera) -> Iterator[Shape]:
    """A strap, band, stick or weight, from hand to foot or hand to hand; a stick goes on beyond the hands."""
    spots = [landmark(body, name) for name in prop.between]
    if prop.what == "weight":
        middle = times(add(spots[0], spots[-1]), 0.5)
        low = add(middle, (0.0, 0.0, -0.015))
        half = 0.035
        depth = max(camera.depth(spot) for spot in spots) + 0.15
        yield _line(camera, add(low, (0.0, -0.03, 0.0)), add(low, (0.0, 0.03, 0.0)), half, "thing", depth)
        return
    if prop.what == "stick":
        along = times(unit(add(spots[-1], times(spots[0], -1.0))), 0.09)
        spots = [add(spots[0], times(along, -1.0)), add(spots[-1], along)]
    for a, b in pairwise(spots):
        depth = (camera.depth(a) + camera.depth(b)) / 2 + 0.08
        yield _line(camera, a, b, {"stick": 0.009, "band": 0.006}.get(prop.what, 0.005), "strap", depth)


STYLE = """
.outline{fill:#3a3b38;stroke:#3a3b38;stroke-width:.011;stroke-linejoin:round}
.near,.head{fill:#f0d9bd}.far{fill:#d9bfa0}.trunk{fill:#6f8f94}
.hatch{fill:url(#work);stroke:#7a2f1d;stroke-width:.004}.hidden{fill:none;stroke-dasharray:.012 .009}
.thing{fill:#cfd3c8;stroke:#7d8479;stroke-width:.005;stroke-linejoin:round}
.strap{fill:#8a6d2f;stroke:#5e4a1f;stroke-width:.002}
.floor{stroke:#9aa096;stroke-width:.006;stroke-linecap:round}
"""
HATCH = (
    '<pattern id="work" width=".013" height=".013" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">'
    '<rect width=".013" height=".013" fill="#f6e7d2"/><rect width=".0055" height=".013" fill="#a8452c"/></pattern>'
)


def shapes_svg(shapes: Iterable[Shape]) -> str:
    """Shapes as SVG elements, in their order."""
    return "".join(f'<path class="{escape(shape.kind)}" d="{shape.path}"/>' for shape in shapes)


def bounds_of(shapes: Iterable[Shape]) -> tuple[float, float, float, float]:
    """Left, top, right and bottom of some shapes. Raises ValueError without any."""
    found = [shape.bounds for shape in shapes]
    return min(b[0] for b in found), min(b[1] for b in found), max(b[2] for b in found), max(b[3] for b in found)
