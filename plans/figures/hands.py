"""Hands brought to what they touch: the arm reaches, the forearm turns the palm, the wrist lays the hand on it."""

from __future__ import annotations

from dataclasses import replace
from math import atan2, degrees
from typing import NamedTuple

from plans.figures.angles import Angles, Turn, is_within
from plans.figures.body import Body, Part, hand_frame, put_hand, sign_of
from plans.figures.bones import limb_turn, poles, two_bones
from plans.figures.landmarks import Spot, place_of, spot
from plans.figures.proportions import LENGTHS
from plans.figures.space import (
    Frame,
    Point,
    about_left,
    about_up,
    add,
    angle,
    between,
    facing,
    forward_of,
    inverse,
    length,
    sub,
    then,
    times,
    turned,
    turns_of,
)
from plans.figures.things import touched
from plans.figures.written import Handhold, Prop, Way

_WAYS = {
    "forward": (1.0, 0.0, 0.0),
    "back": (-1.0, 0.0, 0.0),
    "up": (0.0, 0.0, 1.0),
    "down": (0.0, 0.0, -1.0),
    "out": (0.0, 1.0, 0.0),
    "in": (0.0, -1.0, 0.0),
}
_ELBOWS = {
    "down": (-0.1, 0.1, -1.0),
    "out": (0.0, 1.0, -0.1),
    "up": (0.1, 0.2, 1.0),
    "back": (-1.0, 0.2, 0.0),
    "forward": (1.0, 0.2, 0.0),
    "in": (0.2, -1.0, 0.0),
}
IN_THE_HAND = 0.5 * LENGTHS["hand"]
"""From the wrist to what a hand touches with, of body height: the roots of the fingers."""
ON_THE_PALM = 0.018
"""How far the middle of a hand is above what it lies on, of body height."""


def reach_with_hand(
    body: Body, angles: Angles, side: str, hold: Handhold, props: tuple[Prop, ...], yaw: float
) -> tuple[Body, Angles]:
    """The body with a hand at its place. Raises ImpossiblePose when it does not reach."""
    top, sign = body["thorax 3"].frame, sign_of(side)
    target = target_of(body, side, hold, props)
    lies = _lying(hold, target, side, yaw)
    in_hand = 0.0 if lies or angles.wrist[side] != Turn() else IN_THE_HAND
    said = turned(top, (-0.5, 0.35 * sign, -0.6)) if hold.elbow is None else _way(_ELBOWS[hold.elbow], sign, yaw)
    for pole in poles(said, sub(target.place, body[f"{side} upper arm"].begin), side):
        arm = _arm_to(body, side, target.place, in_hand, pole)
        turn, wrist = _hand_on(arm, lies, hold, target, angles, side, yaw)
        if lies is None or _can(turn, wrist):
            break
    new = {**body, f"{side} upper arm": arm.upper, f"{side} forearm": arm.fore}
    put_hand(new, side, then(arm.fore.frame, hand_frame(turn, wrist, side)), angles.fingers[side])
    changed = replace(
        angles,
        shoulder={**angles.shoulder, side: replace(limb_turn(top, arm.upper.frame, side), turn=0.0)},
        elbow={**angles.elbow, side: Turn(arm.bend)},
        forearm={**angles.forearm, side: turn},
        wrist={**angles.wrist, side: wrist},
    )
    return new, changed


class _Arm(NamedTuple):
    upper: Part
    fore: Part
    bend: float


def _arm_to(body: Body, side: str, place: Point, in_hand: float, pole: Point) -> _Arm:
    """An arm whose wrist, or what is in its hand, is at a place, the elbow towards the pole."""
    shoulder = body[f"{side} upper arm"].begin
    what = f"what the {side} hand touches"
    elbow, end = two_bones(shoulder, place, LENGTHS["upper arm"], LENGTHS["forearm"] + in_hand, pole, what)
    bend = angle(sub(elbow, shoulder), sub(end, elbow))
    away = sub(between(shoulder, end, 0.5), elbow)
    upper = facing(away if length(away) > 1e-4 else forward_of(body["thorax 3"].frame), sub(shoulder, elbow))
    fore = then(upper, about_left(-bend))
    wrist = add(elbow, turned(fore, (0.0, 0.0, -LENGTHS["forearm"])))
    return _Arm(Part(shoulder, elbow, upper), Part(elbow, wrist, fore), bend)


def _hand_on(
    arm: _Arm, lies: Frame | None, hold: Handhold, target: Spot, angles: Angles, side: str, yaw: float
) -> tuple[float, Turn]:
    """How the forearm is turned and the wrist is bent."""
    if lies is not None:
        return _wrist_turn(arm.fore.frame, lies, side)
    return _palm_turn(arm.fore.frame, hold, target, side, yaw, angles.forearm[side]), angles.wrist[side]


def _can(turn: float, wrist: Turn) -> bool:
    """Whether forearm and wrist go so far."""
    return is_within("forearm", Turn(turn=turn)) and is_within("wrist", wrist)


def _way(way: Point, sign: float, yaw: float) -> Point:
    return turned(about_up(yaw), (way[0], way[1] * sign, way[2]))


def target_of(body: Body, side: str, hold: Handhold, props: tuple[Prop, ...]) -> Spot:
    """What a hand touches. Raises ImpossiblePose for what is not there."""
    shoulder = body[f"{side} upper arm"].begin
    if not isinstance(hold.to, str):
        return Spot(place_of(hold.to, shoulder[1]))
    found = touched(props, hold.to, shoulder, held_off=ON_THE_PALM)
    return found if found is not None else spot(body, hold.to, side)


def _lying(hold: Handhold, target: Spot, side: str, yaw: float) -> Frame | None:
    """The frame of a hand that has a direction of its own: palm on what it lies on, fingers forward or up."""
    if not (hold.flat or (hold.palm and hold.point)):
        return None
    sign, looks = sign_of(side), target.looks or (0.0, 0.0, 1.0)
    palm = _way(_WAYS[hold.palm], sign, yaw) if hold.palm else times(looks, -1.0)
    point: Way = hold.point or ("up" if abs(looks[2]) < 0.5 else "forward")
    return facing(palm, times(_way(_WAYS[point], sign, yaw), -1.0))


def _wrist_turn(fore: Frame, hand: Frame, side: str) -> tuple[float, Turn]:
    """How a forearm is turned and its wrist is bent for a hand's direction."""
    turn, out, flex = turns_of(then(inverse(fore), hand))
    return _round(sign_of(side) * turn + 90), Turn(-flex, sign_of(side) * out)


def _round(turn: float) -> float:
    """The same turn between -180 and 180."""
    return (turn + 180) % 360 - 180


def _palm_turn(fore: Frame, hold: Handhold, target: Spot, side: str, yaw: float, written: float) -> float:
    """How far a forearm turns so that the palm looks at what it touches, as far as it goes; else as it is written."""
    sign = sign_of(side)
    if hold.palm is not None:
        palm = _way(_WAYS[hold.palm], sign, yaw)
    elif target.looks is not None and not written:
        palm = times(target.looks, -1.0)
    else:
        return written
    x, y, _ = turned(inverse(fore), palm)
    if x * x + y * y < 1e-6:
        return written
    return max(-80.0, min(80.0, _round(sign * degrees(atan2(y, x)) + 90)))
