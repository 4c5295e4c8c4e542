"""Feet brought to their places: on the floor, at a wall, or an ankle laid on the other leg."""

from __future__ import annotations

from dataclasses import replace

from plans.figures.angles import Angles, Turn, is_within
from plans.figures.body import Body, Part, end_frame, foot_of, sign_of
from plans.figures.bones import ankle_turn, limb_turn, poles, two_bones
from plans.figures.landmarks import Spot, place_of, spot
from plans.figures.proportions import LENGTHS, THICK
from plans.figures.space import (
    Frame,
    Point,
    about_forward,
    about_left,
    about_up,
    add,
    angle,
    between,
    facing,
    forward_of,
    sub,
    then,
    times,
    turned,
    unit,
)
from plans.figures.written import Foothold

_LIFT = {"flat": 0.0, "toes": 50.0, "heel": -25.0, "top": 140.0, "wall": -90.0}
_KNEES = {"out": (0.3, 1.0, 0.0), "in": (0.3, -1.0, 0.0), "down": (1.0, 0.0, -1.0), "up": (0.0, 0.0, 1.0)}


def reach_with_foot(body: Body, angles: Angles, side: str, hold: Foothold, yaw: float) -> tuple[Body, Angles]:
    """The body with a foot at its place. Raises ImpossiblePose when it does not reach."""
    pelvis, thigh = body["pelvis"], body[f"{side} thigh"]
    tilted = about_forward(sign_of(side) * hold.tilt)
    foot = then(then(about_up(yaw + sign_of(side) * hold.toes), about_left(_LIFT[hold.on])), tilted)
    place = _ankle_at(body, side, hold, foot)
    what = f"the place of the {side} foot"
    for pole in poles(_knee_pole(body, side, hold, foot), sub(place, thigh.begin), side):
        knee, ankle = two_bones(thigh.begin, place, LENGTHS["thigh"], LENGTHS["shank"], pole, what)
        bend = angle(sub(knee, thigh.begin), sub(ankle, knee))
        upper = facing(pole if bend < 2 else sub(knee, between(thigh.begin, ankle, 0.5)), sub(thigh.begin, knee))
        hip = limb_turn(pelvis.frame, upper, side)
        if is_within("hip", hip):
            break
    shank = then(upper, about_left(bend))
    if hold.to is not None:
        foot = then(shank, end_frame(angles.ankle[side], side))
    new = {
        **body,
        f"{side} thigh": Part(thigh.begin, knee, upper),
        f"{side} shank": Part(knee, ankle, shank),
        f"{side} foot": foot_of(ankle, foot),
    }
    changed = replace(
        angles,
        hip={**angles.hip, side: hip},
        knee={**angles.knee, side: Turn(bend)},
        ankle={**angles.ankle, side: ankle_turn(shank, foot, side)},
    )
    return new, changed


def _knee_pole(body: Body, side: str, hold: Foothold, foot: Frame) -> Point:
    """Where a knee points: as said, else where the toes point and a little up, so that it never folds back."""
    said = hold.knee or ("out" if hold.to is not None else "down" if hold.on == "top" else None)
    if said is None:
        return add(forward_of(foot), (0.0, 0.0, 0.35))
    if said == "up":
        return _KNEES["up"]
    x, y, z = _KNEES[said]
    return turned(body["pelvis"].frame, (x, y * sign_of(side), z))


def _ankle_at(body: Body, side: str, hold: Foothold, frame: Frame) -> Point:
    """The ankle of a foot whose lowest point is at its height, or which lies on what it is put to."""
    left = body[f"{side} thigh"].begin[1] if hold.out is None else sign_of(side) * hold.out
    if hold.to is not None:
        found = spot(body, hold.to) if isinstance(hold.to, str) else Spot(place_of(hold.to, left))
        return add(found.place, times(unit(found.looks), THICK["shank"] * 0.8)) if found.looks else found.place
    foot = foot_of((0.0, 0.0, 0.0), frame)
    low = min(foot.begin[2], foot.end[2]) - (THICK["foot"] if hold.on == "top" else 0.0)
    return (hold.at, left, hold.height - low)
