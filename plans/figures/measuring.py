"""How a test is read: its poses, and a ruler where the number is."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from typing import Annotated

from pydantic import Field
from ruamel.yaml import YAML

from plans.entries import entries
from plans.figures.body import SIDES, Body, ImpossiblePose
from plans.figures.drawing import Camera, Shape
from plans.figures.library import Frame, bodies, shapes_of
from plans.figures.space import Point
from plans.figures.written import Drawn
from plans.movements import Muscle

CENTIMETRE = 1 / 170
"""Of the height of somebody who is 170 cm tall (own choice): a mark on the ruler for every five."""
BROAD, LEAST = 0.045, 0.30
"""How broad a ruler is, and how long at least."""


class Measured(Drawn):
    """The figure of one test, and between which two places its ruler lies, the zero first; None for an angle."""

    ruler: Annotated[tuple[str, str], Field(min_length=2)] | None = None


class _Test:
    """A test works no muscle in particular."""

    sides = False
    main: tuple[Muscle, ...] = ()


@cache
def measured(key: str) -> Measured:
    """What is written of a test's figure. Raises KeyError for a test that has none."""
    return Measured.model_validate(YAML(typ="safe", pure=True).load(entries("measures")[key])[key])


def measuring(key: str) -> list[Frame]:
    """The start of a test and its reading, the ruler beside it. Raises KeyError for a test that has no figure."""
    how = measured(key)
    found = bodies(key, how)
    camera, test = Camera.of(how.view), _Test()
    frames = [Frame(shapes_of(body, how, test, working=False), None, body) for body in found]
    if how.ruler is None:
        return frames
    a, b = (_place(found[-1], name, how, other) for name, other in (how.ruler, how.ruler[::-1]))
    last, ruler = frames[-1], sorted(_ruler(camera, a, b), key=lambda shape: shape.depth)
    behind = [shape for shape in ruler if shape.depth < 0]
    return [*frames[:-1], Frame((*behind, *last.shapes, *ruler[len(behind) :]), None, last.body)]


def _place(body: Body, name: str, how: Measured, other: str) -> Point:
    """A place that a ruler begins or ends at; floor and wall are met straight from the other place."""
    if name == "floor":
        x, y, _z = _place(body, other, how, name)
        return (x, y, 0.0)
    if name == "wall":
        _x, y, z = _place(body, other, how, name)
        return (next(prop.at for prop in how.props if prop.what == "wall"), y, z)
    side, _, what = name.partition(" ")
    if side not in SIDES or what not in _ENDS:
        raise ImpossiblePose(f"no ruler lies at {name!r}; there are floor, wall, left or right {', '.join(_ENDS)}")
    part, end = _ENDS[what]
    found = body[f"{side} {part}"]
    return found.end if end else found.begin


_ENDS = {"fingertip": ("hand", True), "toe": ("foot", True), "sole": ("foot", False)}


def _ruler(camera: Camera, a: Point, b: Point) -> Iterator[Shape]:
    """A ruler whose zero is at `a`, upright before the body or level behind it, and the distance as a bar before it."""
    (ax, ay), (bx, by) = camera.seen(a), camera.seen(b)
    upright = abs(by - ay) > abs(bx - ax)
    long = max(LEAST, abs(by - ay if upright else bx - ax) + 0.08)
    way = (1.0 if by >= ay else -1.0) if upright else (1.0 if bx >= ax else -1.0)

    def at(along: float, across: float) -> tuple[float, float]:
        return (ax + 0.03 + across, ay + way * along) if upright else (ax + way * along, ay - 0.006 - across)

    corners = [at(0, 0), at(0, BROAD), at(long, BROAD), at(long, 0)]
    depth = 9.0 if upright else -8.0
    yield _shape(corners, "ruler", depth, closed=True)
    for mark in range(1, int(long / (5 * CENTIMETRE)) + 1):
        along = mark * 5 * CENTIMETRE
        yield _shape([at(along, 0), at(along, BROAD * (0.7 if mark % 2 == 0 else 0.4))], "mark", depth)
    distance = abs(by - ay if upright else bx - ax)
    yield _shape([at(0, -0.008), at(distance, -0.008)], "distance", 9.1)
    for along in (0.0, distance):
        yield _shape([at(along, -0.025), at(along, BROAD)], "reading", 9.1)


def _shape(points: list[tuple[float, float]], kind: str, depth: float, *, closed: bool = False) -> Shape:
    path = "M" + "L".join(f"{x:.4f} {y:.4f}" for x, y in points) + ("Z" if closed else "")
    xs, ys = [x for x, _y in points], [y for _x, y in points]
    return Shape(depth, path, kind, (min(xs), min(ys), max(xs), max(ys)))


RULER_STYLE = """
.ruler{fill:#f4ecc9;stroke:#8d8459;stroke-width:.004}.mark{stroke:#6d6640;stroke-width:.004}
.distance{stroke:#7a2f1d;stroke-width:.014}.reading{stroke:#7a2f1d;stroke-width:.006}
"""
"""The style of a ruler's shapes."""
