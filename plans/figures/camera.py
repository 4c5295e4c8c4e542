"""From where a figure is seen."""

from __future__ import annotations

from dataclasses import dataclass
from math import cos, radians, sin

from plans.figures.space import Point, cross, dot

VIEWS = {
    "side": (0.0, 4.0),
    "front": (90.0, 6.0),
    "back": (-90.0, 6.0),
    "above": (0.0, 90.0),
    "slant": (40.0, 14.0),
    "slant back": (-40.0, 14.0),
    "slant above": (40.0, 45.0),
    "front above": (90.0, 40.0),
}
"""Degrees round from a figure's right side towards its front, and up."""

Spot = tuple[float, float]
"""A point on the paper: to the right and down, in body heights."""


@dataclass(frozen=True, slots=True)
class Camera:
    """Where a figure is seen from: right and up on the paper, towards the eye, and how many times larger."""

    right: Point
    up: Point
    near: Point
    zoom: float = 1.0
    lower: float = 0.0
    """How much lower on the paper everything is."""

    @classmethod
    def of(cls, view: str, *, zoom: float = 1.0, lower: float = 0.0) -> Camera:
        """A named view. Raises KeyError for another name."""
        around, above = VIEWS[view]
        a, e = radians(around), radians(above)
        near = (sin(a) * cos(e), -cos(a) * cos(e), sin(e))
        right = (cos(a), sin(a), 0.0)
        return cls(right, cross(near, right), near, zoom, lower)

    def seen(self, point: Point) -> Spot:
        """A point on the paper."""
        x, y, z = point
        a, b, c = self.right
        d, e, f = self.up
        return self.zoom * (a * x + b * y + c * z), self.lower - self.zoom * (d * x + e * y + f * z)

    def depth(self, point: Point) -> float:
        """How near a point is, in body heights."""
        return dot(point, self.near)
