"""Points and turns in space: x forward, y to the left, z up; angles in degrees."""

from __future__ import annotations

from math import acos, asin, atan2, cos, degrees, radians, sin, sqrt

Point = tuple[float, float, float]
Frame = tuple[Point, Point, Point]
"""Three rows: a turn of space. Its columns are the turned forward, left and up."""


def add(a: Point, b: Point) -> Point:
    """The sum of two points."""
    return (a[0] + b[0], a[1] + b[1], a[2] + b[2])


def sub(a: Point, b: Point) -> Point:
    """From b to a."""
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def times(a: Point, by: float) -> Point:
    """A point stretched."""
    return (a[0] * by, a[1] * by, a[2] * by)


def dot(a: Point, b: Point) -> float:
    """The scalar product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a: Point, b: Point) -> Point:
    """The vector product."""
    return (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def length(a: Point) -> float:
    """How long it is."""
    return sqrt(dot(a, a))


def unit(a: Point) -> Point:
    """The same direction, of length 1. Raises ZeroDivisionError for no direction."""
    return times(a, 1 / length(a))


def between(a: Point, b: Point, share: float) -> Point:
    """The point a share of the way from a to b."""
    return add(a, times(sub(b, a), share))


def turned(frame: Frame, point: Point) -> Point:
    """A point turned by a frame."""
    (a, b, c), (d, e, f), (g, h, i) = frame
    x, y, z = point
    return (a * x + b * y + c * z, d * x + e * y + f * z, g * x + h * y + i * z)


def forward_of(frame: Frame) -> Point:
    """Where a frame's forward points."""
    return (frame[0][0], frame[1][0], frame[2][0])


def left_of(frame: Frame) -> Point:
    """Where a frame's left points."""
    return (frame[0][1], frame[1][1], frame[2][1])


def up_of(frame: Frame) -> Point:
    """Where a frame's up points."""
    return (frame[0][2], frame[1][2], frame[2][2])


def then(first: Frame, second: Frame) -> Frame:
    """`second` in the space of `first`."""
    (a, b, c), (d, e, f), (g, h, i) = first
    (j, k, m), (n, o, p), (q, r, s) = second
    return (
        (a * j + b * n + c * q, a * k + b * o + c * r, a * m + b * p + c * s),
        (d * j + e * n + f * q, d * k + e * o + f * r, d * m + e * p + f * s),
        (g * j + h * n + i * q, g * k + h * o + i * r, g * m + h * p + i * s),
    )


def inverse(frame: Frame) -> Frame:
    """The turn back."""
    return (
        (frame[0][0], frame[1][0], frame[2][0]),
        (frame[0][1], frame[1][1], frame[2][1]),
        (frame[0][2], frame[1][2], frame[2][2]),
    )


def about_forward(angle: float) -> Frame:
    """A turn about the forward axis: up goes to the right."""
    c, s = cos(radians(angle)), sin(radians(angle))
    return ((1, 0, 0), (0, c, -s), (0, s, c))


def about_left(angle: float) -> Frame:
    """A turn about the axis to the left: up goes forward."""
    c, s = cos(radians(angle)), sin(radians(angle))
    return ((c, 0, s), (0, 1, 0), (-s, 0, c))


def about_up(angle: float) -> Frame:
    """A turn about the upward axis: forward goes to the left."""
    c, s = cos(radians(angle)), sin(radians(angle))
    return ((c, -s, 0), (s, c, 0), (0, 0, 1))


def facing(forward: Point, up: Point) -> Frame:
    """The frame whose up is `up` and whose forward is as near to `forward` as that allows."""
    z = unit(up)
    x = sub(forward, times(z, dot(forward, z)))
    if length(x) < 1e-6:
        x = sub((0.0, 0.0, 1.0), times(z, z[2]))
    x = unit(x)
    y = cross(z, x)
    return ((x[0], y[0], z[0]), (x[1], y[1], z[1]), (x[2], y[2], z[2]))


def angle(a: Point, b: Point) -> float:
    """Degrees between two directions, 0-180."""
    return degrees(acos(max(-1.0, min(1.0, dot(unit(a), unit(b))))))


def turns_of(frame: Frame) -> tuple[float, float, float]:
    """A frame as turns one after the other, each about the turned axis: about up, about forward, about left.

    The second is between -90 and 90, the others between -180 and 180.
    """
    about = degrees(asin(max(-1.0, min(1.0, frame[2][1]))))
    return degrees(atan2(-frame[0][1], frame[1][1])), about, degrees(atan2(-frame[2][0], frame[2][2]))
