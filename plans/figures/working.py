"""The working muscles: hatched where they lie on trunk and limbs, dashed where the body hides them."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping
from itertools import pairwise
from typing import NamedTuple

from plans.figures.body import SIDES, SPINE, Body, Part, sign_of, thick
from plans.figures.camera import Camera
from plans.figures.painting import Bar
from plans.figures.proportions import THICK, WIDE
from plans.figures.shapes import Shape
from plans.figures.space import Point, dot, turned
from plans.movements import Muscle


class _Lie(NamedTuple):
    """Where a muscle group lies: part, from and to along it, forward and outward in half thicknesses, half its own."""

    part: str
    begin: float
    end: float
    forward: float
    out: float
    half: float


_LIES: Mapping[Muscle, _Lie] = {
    Muscle.HAMSTRINGS: _Lie("thigh", 0.12, 0.92, -0.55, 0.0, 0.020),
    Muscle.QUADRICEPS: _Lie("thigh", 0.12, 0.90, 0.50, 0.0, 0.022),
    Muscle.HIP_FLEXORS: _Lie("thigh", -0.10, 0.34, 0.62, 0.0, 0.022),
    Muscle.GLUTES: _Lie("thigh", -0.12, 0.16, -0.95, 0.2, 0.030),
    Muscle.HIP_ROTATORS: _Lie("thigh", -0.06, 0.12, -0.70, 0.6, 0.026),
    Muscle.ADDUCTORS: _Lie("thigh", 0.08, 0.85, 0.0, -0.62, 0.019),
    Muscle.CALVES: _Lie("shank", 0.04, 0.66, -0.50, 0.0, 0.019),
    Muscle.ANKLES: _Lie("shank", 0.80, 1.02, 0.35, 0.0, 0.019),
    Muscle.FEET: _Lie("foot", 0.15, 0.9, 0.0, 0.0, 0.012),
    Muscle.FOREARMS: _Lie("forearm", 0.08, 0.80, 0.25, 0.0, 0.014),
    Muscle.SHOULDERS: _Lie("upper arm", -0.05, 0.42, 0.1, 0.35, 0.024),
    Muscle.LOWER_BACK: _Lie("lumbar", 0.0, 1.0, -0.70, 0.0, 0.020),
    Muscle.UPPER_BACK: _Lie("thorax", 0.05, 0.95, -0.72, 0.0, 0.022),
    Muscle.SIDE_TRUNK: _Lie("lumbar", -0.3, 1.0, 0.0, 0.9, 0.022),
    Muscle.ABDOMEN: _Lie("lumbar", -0.2, 1.0, 0.72, 0.0, 0.022),
    Muscle.CHEST: _Lie("chest", -0.2, 0.75, 0.70, 0.55, 0.030),
    Muscle.LATS: _Lie("thorax", -0.6, 0.9, -0.35, 0.75, 0.022),
    Muscle.NECK: _Lie("neck", -0.2, 1.0, -0.35, 0.5, 0.016),
}

HIDDEN = -0.4
"""A muscle that looks away from the eye by more is behind the body."""


def hatches(body: Body, camera: Camera, working: Iterable[Muscle], lead: str) -> Mapping[str, list[Shape]]:
    """Hatched shapes by the solid on which they lie; `lead` is the side that works, or "both"."""
    found: dict[str, list[Shape]] = defaultdict(list)
    sides = SIDES if lead == "both" else (lead,)
    for muscle in working:
        lie = _LIES[muscle]
        if lie.part in ("lumbar", "thorax"):
            for side in sides if lie.out else sides[-1:]:
                found["trunk"] += _on_back(body, camera, lie, side)
            continue
        for side in sides:
            solid = {"chest": "trunk", "neck": "neck"}.get(lie.part, f"{side} {lie.part}")
            found[solid].append(_hatch(camera, *_ends(body, lie, side)))
    return found


def _ends(body: Body, lie: _Lie, side: str) -> tuple[Point, Point, Point, float]:
    """Where a muscle begins and ends, where it looks, and half its thickness."""
    sign = sign_of(side)
    if lie.part == "chest":
        top = body["thorax 3"]
        a = top.at(lie.begin, forward=lie.forward * 0.06, left=sign * 0.03)
        return a, top.at(lie.end, forward=lie.forward * 0.055, left=sign * 0.095), _looks(top, 1.0, 0.0), lie.half
    part = body["neck" if lie.part == "neck" else f"{side} {lie.part}"]
    deep = 0.035 if lie.part == "neck" else thick(lie.part)
    a, b = (part.at(share, forward=lie.forward * deep, left=sign * lie.out * deep) for share in (lie.begin, lie.end))
    return a, b, _looks(part, lie.forward, sign * lie.out), lie.half


def _looks(part: Part, forward: float, left: float) -> Point:
    return turned(part.frame, (forward, left, 0.0))


def _hatch(camera: Camera, a: Point, b: Point, looks: Point, half: float) -> Shape:
    kind = "hatch hidden" if dot(looks, camera.near) < HIDDEN else "hatch"
    return Bar.of(camera, a, b, (half, half * 0.85), kind).shape


def _on_back(body: Body, camera: Camera, lie: _Lie, side: str) -> Iterator[Shape]:
    """A muscle of the trunk from one part of the spine to the next."""
    sign = sign_of(side)
    names = [name for name in SPINE if name.startswith(lie.part)]
    off = {"forward": lie.forward * THICK[lie.part], "left": sign * lie.out * WIDE[lie.part]}
    spots = [body[names[0]].at(lie.begin, **off), *(body[name].at(1.0, **off) for name in names[:-1])]
    spots.append(body[names[-1]].at(lie.end, **off))
    looks = _looks(body[names[0]], lie.forward, sign * lie.out)
    for a, b in pairwise(spots):
        yield _hatch(camera, a, b, looks, lie.half)
