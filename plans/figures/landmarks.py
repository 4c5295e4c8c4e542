"""Named spots of a body that a hand can touch or something can be held by."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from plans.figures.angles import SIDES, ImpossiblePose
from plans.figures.body import Body, sign_of, thick
from plans.figures.space import Point, forward_of, times, turned
from plans.figures.written import Place

_LIMBS: Mapping[str, tuple[str, float, float, float]] = {
    "knee": ("shank", 0.03, 0.9, 0.0),
    "shin": ("shank", 0.55, 0.9, 0.0),
    "ankle": ("shank", 0.97, 0.9, 0.0),
    "thigh": ("thigh", 0.6, 0.9, 0.0),
    "lower thigh": ("thigh", 0.9, 0.9, 0.0),
    "back of the thigh": ("thigh", 0.75, -1.1, 0.0),
    "foot": ("foot", 0.55, 0.0, 0.0),
    "toes": ("foot", 1.0, 0.0, 0.0),
    "heel": ("foot", 0.0, 0.0, 0.0),
    "elbow": ("forearm", 0.0, 0.9, 0.0),
    "wrist": ("forearm", 0.98, 0.5, 0.0),
    "hand": ("hand", 0.5, 0.5, 0.0),
    "thumb side": ("hand", 0.48, 1.5, 2.5),
    "little finger side": ("hand", 0.48, 1.5, -2.5),
    "fingers": ("fingers", 0.5, 0.5, 0.0),
    "finger tips": ("tips", 1.0, 0.0, 0.0),
    "thumb": ("thumb", 0.8, 0.0, 0.0),
    "forearm": ("forearm", 0.5, 0.9, 0.0),
    "upper arm": ("upper arm", 0.5, 0.9, 0.0),
}
"""A spot of a limb: part, how far along, and how far on its front and outside, in thicknesses."""

_OF_AN_ARM = ("upper arm", "forearm", "hand", "fingers", "tips", "thumb")
ON_AN_ARM = tuple(name for name, (part, *_) in _LIMBS.items() if part in _OF_AN_ARM)
"""Spots that move with an arm."""

_MIDDLE: Mapping[str, tuple[str, float, float, float]] = {
    "head": ("head", 0.6, 0.0, 0.058),
    "back of the head": ("head", 0.5, -0.062, 0.025),
    "forehead": ("head", 0.7, 0.055, 0.0),
    "chin": ("head", 0.15, 0.055, 0.0),
    "chest": ("thorax 3", 0.3, 0.06, 0.02),
    "belly": ("lumbar 2", 0.5, 0.055, 0.03),
    "lower back": ("lumbar 1", 0.5, -0.060, 0.0),
    "upper back": ("thorax 3", 0.2, -0.066, 0.0),
    "hips": ("pelvis", 0.8, 0.0, 0.095),
}
"""A spot of the trunk or the head: part, how far along, forward, and to the side of the hand that touches it."""


@dataclass(frozen=True, slots=True)
class Spot:
    """A place, and where its surface looks; None where it has no surface of its own."""

    place: Point
    looks: Point | None = None


def spot(body: Body, name: str, side: str | None = None) -> Spot:
    """A named spot of the body: "right knee", "left foot", "chest"; `side` is that of the hand which touches it.

    Raises ImpossiblePose for another name.
    """
    which, _, what = name.partition(" ")
    if which in SIDES and what in ("shoulder", "hip"):
        return Spot(body[f"{which} {'upper arm' if what == 'shoulder' else 'thigh'}"].begin)
    if which in SIDES and what in _LIMBS:
        part, share, front, out = _LIMBS[what]
        found = body[f"{which} {part}"]
        looks = times(forward_of(found.frame), 1.0 if front > 0 else -1.0) if front else None
        left = sign_of(which) * out * thick(part)
        return Spot(found.at(share, forward=front * thick(part), left=left), looks)
    if name in _MIDDLE:
        part, share, forward, out = _MIDDLE[name]
        left = out * sign_of(side) if side else 0.0
        looks = (forward, left, 0.0) if abs(forward) < abs(left) else (forward, 0.0, 0.0)
        return Spot(body[part].at(share, forward=forward, left=left), turned(body[part].frame, looks))
    known = ", ".join([*_MIDDLE, *(f"left or right {spot}" for spot in ("shoulder", "hip", *_LIMBS))])
    raise ImpossiblePose(f"{name!r} is no place that a hand can touch; there are floor, wall, seat, {known}")


def landmark(body: Body, name: str) -> Point:
    """The place of a named spot. Raises ImpossiblePose for another name."""
    return spot(body, name).place


def place_of(place: Place, left: float) -> Point:
    """A written place: forward and up, so far to the left, or all three."""
    return place if len(place) == 3 else (place[0], left, place[1])
