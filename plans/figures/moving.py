"""The way from one pose to the next: every part turns evenly about its joint, and what stays in its place stays."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import acos, cos, degrees, pi, radians, sin

from plans.figures.body import CHAINS, SIDES, Body, Part, moved
from plans.figures.space import Frame, Point, add, between, dot, inverse, length, sub, then, times, turned, unit

STILL = 0.02
"""Of body height: a part whose end moves by less from pose to pose stays where it is (own choice)."""


def way(first: Body, last: Body, steps: int) -> Iterator[Body]:
    """The bodies between two poses, of a movement that begins and ends softly; neither end is among them."""
    for step in range(1, steps + 1):
        share = (1 - cos(pi * step / (steps + 1))) / 2
        yield _held(_between(first, last, share), first, last, share)


def _between(first: Body, last: Body, share: float) -> Body:
    a, b = first["pelvis"], last["pelvis"]
    body = {"pelvis": _part(between(a.begin, b.begin, share), turn_between(a.frame, b.frame, share), a, b, share)}
    for chain in CHAINS:
        for parent, name in pairwise(chain):
            body[name] = _hung(body[parent], first, last, (parent, name), share)
    return body


def _hung(parent: Part, first: Body, last: Body, names: tuple[str, str], share: float) -> Part:
    """A part on its parent: where it hangs and how it is turned there lie between what they are in both poses."""
    (pa, a), (pb, b) = ((body[names[0]], body[names[1]]) for body in (first, last))
    places = [turned(inverse(p.frame), sub(part.begin, p.begin)) for p, part in ((pa, a), (pb, b))]
    turns = [then(inverse(p.frame), part.frame) for p, part in ((pa, a), (pb, b))]
    begin = add(parent.begin, turned(parent.frame, between(places[0], places[1], share)))
    return _part(begin, then(parent.frame, turn_between(turns[0], turns[1], share)), a, b, share)


def _part(begin: Point, frame: Frame, a: Part, b: Part, share: float) -> Part:
    along = [turned(inverse(part.frame), sub(part.end, part.begin)) for part in (a, b)]
    fan = a.fan + (b.fan - a.fan) * share
    return Part(begin, add(begin, turned(frame, between(along[0], along[1], share))), frame, fan)


def _held(body: Body, first: Body, last: Body, share: float) -> Body:
    """The body moved so that what touches the same place in both poses touches it on the way too."""
    shifts = []
    for name in [f"{side} {part}" for side in SIDES for part in ("foot", "hand", "shank")]:
        if length(sub(first[name].end, last[name].end)) < STILL:
            shifts.append(sub(between(first[name].end, last[name].end, share), body[name].end))
    if not shifts:
        return body
    middle = times(_sum(shifts), 1 / len(shifts))
    return moved(body, middle)


def _sum(points: Sequence[Point]) -> Point:
    total: Point = (0.0, 0.0, 0.0)
    for point in points:
        total = add(total, point)
    return total


def turn_between(first: Frame, last: Frame, share: float) -> Frame:
    """The turn a share of the way, about the one axis that leads from the first to the last (half a turn: any axis)."""
    whole = then(inverse(first), last)
    angle = acos(max(-1.0, min(1.0, (whole[0][0] + whole[1][1] + whole[2][2] - 1) / 2)))
    if angle < 1e-6:
        return first
    axis = (whole[2][1] - whole[1][2], whole[0][2] - whole[2][0], whole[1][0] - whole[0][1])
    if length(axis) < 1e-6:
        axis = next(row for row in _columns_of_half_turn(whole) if length(row) > 1e-3)
    return then(first, about(unit(axis), degrees(angle) * share))


def _columns_of_half_turn(whole: Frame) -> Iterator[Point]:
    """Of half a turn about an axis n the matrix is 2 n n' - 1: each column of it plus 1 lies along n."""
    for k in range(3):
        yield (whole[0][k] + (k == 0), whole[1][k] + (k == 1), whole[2][k] + (k == 2))


def about(axis: Point, angle: float) -> Frame:
    """A turn by degrees about an axis of length 1 (Rodrigues)."""
    c, s = cos(radians(angle)), sin(radians(angle))
    rows = []
    for forward in ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)):
        along = times(axis, dot(axis, forward) * (1 - c))
        across = (
            axis[1] * forward[2] - axis[2] * forward[1],
            axis[2] * forward[0] - axis[0] * forward[2],
            axis[0] * forward[1] - axis[1] * forward[0],
        )
        rows.append(add(add(times(forward, c), times(across, s)), along))
    x, y, z = rows
    return ((x[0], y[0], z[0]), (x[1], y[1], z[1]), (x[2], y[2], z[2]))
