"""A limb of two bones brought to a place, and what its joints do for that: a step of inverse kinematics."""

from __future__ import annotations

from collections.abc import Iterator
from math import asin, atan2, cos, degrees, radians, sin, sqrt

from plans.figures.angles import ImpossiblePose, Turn
from plans.figures.body import sign_of
from plans.figures.space import (
    Frame,
    Point,
    about_forward,
    about_left,
    add,
    cross,
    dot,
    inverse,
    length,
    sub,
    then,
    times,
    turned,
    turns_of,
    unit,
)

SHORT = 0.0005
"""Of body height: so far from its place a hand or foot still counts as touching; under a millimetre."""


def two_bones(begin: Point, end: Point, first: float, second: float, pole: Point, what: str) -> tuple[Point, Point]:
    """Where the middle joint and the end come, the middle one towards `pole`. Raises ImpossiblePose out of reach."""
    way = sub(end, begin)
    far = length(way)
    if far > first + second + SHORT or far < abs(first - second) - SHORT:
        raise ImpossiblePose(
            f"{what} is {far:.3f} body heights away; it reaches from {abs(first - second):.3f} to {first + second:.3f}"
        )
    far = min(max(far, abs(first - second) + 1e-6), first + second - 1e-6)
    along = unit(way)
    out = sub(pole, times(along, dot(pole, along)))
    if length(out) < 1e-6:
        out = cross(along, (0.0, 1.0, 0.0))
    share = (first * first - second * second + far * far) / (2 * far)
    high = sqrt(max(0.0, first * first - share * share))
    middle = add(add(begin, times(along, share)), times(unit(out), high))
    return middle, add(begin, times(along, far))


SWUNG = (0, 15, -15, 30, -30, 45, -45, 60, -60, 75, -75, 90, -90)
"""Degrees by which an elbow or a knee is swung about the line from the limb's root to its end, one after the other,
until the joints can do it."""


def poles(pole: Point, way: Point, side: str) -> Iterator[Point]:
    """Where an elbow or a knee may point: as said, and swung from there; at last as said again, to be judged."""
    along = unit(way)
    out = sub(pole, times(along, dot(pole, along)))
    across = cross(along, out)
    for swung in (*SWUNG, 0):
        at = -sign_of(side) * radians(swung)
        yield add(times(out, cos(at)), times(across, sin(at)))


def limb_turn(parent: Frame, child: Frame, side: str) -> Turn:
    """The turn of a limb's joint that gives a frame."""
    sign = sign_of(side)
    rel = then(inverse(parent), child)
    down = turned(rel, (0.0, 0.0, -1.0))
    out = degrees(asin(max(-1.0, min(1.0, sign * down[1]))))
    flex = degrees(atan2(down[0], -down[2])) if abs(out) < 89 else 0.0
    flex = flex + 360 if flex < -120 else flex  # an arm overhead is raised in front, not behind
    if flex > 180 and out > 0:  # beyond it, the arm is raised at the side
        flex, out = flex - 180, 180 - out
    rest = then(inverse(then(about_left(-flex), about_forward(sign * out))), rel)
    return Turn(flex, out, sign * degrees(atan2(rest[1][0], rest[0][0])))


def ankle_turn(shank: Frame, foot: Frame, side: str) -> Turn:
    """What an ankle does between a shank and a foot."""
    turn, out, flex = turns_of(then(inverse(shank), foot))
    return Turn(-flex, sign_of(side) * out, sign_of(side) * turn)
