"""From what is written to a body at its place: what it rests on is on the floor, hands and feet where they touch.

Hands and feet are brought to their places by a two-bone step of inverse kinematics; the angles that this takes are held
to the joints' ranges like written ones.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import asin, atan2, degrees, sqrt
from typing import Any

from plans.figures.body import (
    SIDES,
    Angles,
    Body,
    ImpossiblePose,
    Part,
    Turn,
    body_of,
    check,
    foot_of,
    moved,
    pelvis_frame,
    shoulder_of,
)
from plans.figures.proportions import LENGTHS
from plans.figures.space import (
    UPRIGHT,
    Frame,
    Point,
    about_forward,
    about_left,
    about_up,
    add,
    angle,
    cross,
    dot,
    facing,
    inverse,
    length,
    sub,
    then,
    times,
    turned,
    unit,
)
from plans.figures.written import Foothold, Handhold, Pose, Prop, WrittenTurn

THICK = {
    "pelvis": 0.062,
    "lumbar": 0.056,
    "thorax": 0.062,
    "head": 0.060,
    "neck": 0.030,
    "thigh": 0.042,
    "shank": 0.030,
    "foot": 0.018,
    "upper arm": 0.025,
    "forearm": 0.021,
    "hand": 0.016,
}
"""Half of each part's thickness, of body height (own choice, for the look)."""

SHORT = 0.015
"""Of body height: so far from its place a hand or foot still counts as touching."""
SEAT = 0.255
"""Height of a chair's seat, of body height (43 cm for 170)."""


def thick(part: str) -> float:
    """Half of a part's thickness."""
    bare = part.removeprefix("left ").removeprefix("right ").rstrip(" 123")
    return THICK[bare]


@dataclass(frozen=True, slots=True)
class Posed:
    """A body at its place, and the angles that it took."""

    body: Body
    angles: Angles


def posed(pose: Pose, props: tuple[Prop, ...] = ()) -> Posed:
    """The body of a written pose. Raises ImpossiblePose, naming the joint or what cannot be reached."""
    angles = _angles(pose)
    root = then(about_up(pose.yaw), _root(pose, angles))
    body = body_of(angles, root)
    body = _flat_feet(body, pose)
    body = moved(body, add(_resting(body, pose), (pose.forward, 0.0, 0.0)))
    for side in SIDES:
        if side in pose.feet:
            body, angles = _put_foot(body, angles, side, pose.feet[side])
    for side in SIDES:
        if side in pose.hands:
            body, angles = _put_hand(body, angles, side, pose.hands[side], props)
    check(angles)
    return Posed(body, angles)


def _angles(pose: Pose) -> Angles:
    sitting = pose.base == "sit"
    usual = {"sit": 90 + pose.lean, "all fours": ON_FOURS + pose.lean}.get(pose.base, 0.0)
    hips = _pair(pose.hips, WrittenTurn(flex=max(-40.0, min(130.0, usual))))
    knees = _pair(pose.knees, WrittenTurn(flex=90) if sitting else _KNEES.get(pose.base))
    return Angles(
        lumbar=pose.lumbar.value(),
        thorax=pose.thorax.value(),
        neck=pose.neck.value(),
        hip=hips,
        knee=knees,
        ankle=_pair(pose.ankles, None),
        shoulder=_pair(pose.shoulders, None),
        elbow=_pair(pose.elbows, None),
        wrist=_pair(pose.wrists, None),
    )


ON_FOURS = 78.0
"""Lean of the pelvis on hands and knees: arms are longer than thighs, so the back rises a little to the shoulders."""
_KNEES = {
    "all fours": WrittenTurn(flex=90),
    "kneel": WrittenTurn(flex=90),
    "kneel left": WrittenTurn(flex=90),
    "kneel right": WrittenTurn(flex=90),
}


def _pair(found: Mapping[Any, WrittenTurn] | None, usual: WrittenTurn | None) -> dict[str, Turn]:
    usual = usual or WrittenTurn()
    return {side: ((found or {}).get(side) or usual).value() for side in SIDES}


def _root(pose: Pose, angles: Angles) -> Frame:
    """The turn of the pelvis: as the base leg has it, as the pose lies, or as it is written."""
    where, _, which = pose.base.partition(" ")
    leg = which if which in SIDES else "left"
    hip, knee, ankle = (getattr(angles, joint)[leg].flex for joint in ("hip", "knee", "ankle"))
    if pose.base == "lie on the left":
        return then(about_forward(-90 + pose.side), about_left(pose.lean))
    if pose.base == "lie on the right":
        return then(about_forward(90 - pose.side), about_left(pose.lean))
    pitch = {
        "stand": hip - knee + ankle,
        "kneel": 90 + hip - knee,
        "all": ON_FOURS,
        "sit": 0.0,
    }.get(where, -90.0 if pose.base == "lie on the back" else 90.0)
    return pelvis_frame(Turn(pitch + pose.lean, pose.side, 0.0))


def _flat_feet(body: Body, pose: Pose) -> Body:
    """Feet that stand are flat, turned as their legs are."""
    where, _, which = pose.base.partition(" ")
    flat = dict(body)
    if where in ("kneel", "all"):
        for side in (which,) if which in SIDES else SIDES:
            flat[f"{side} foot"] = foot_of(body[f"{side} shank"].end, then(about_up(pose.yaw), about_left(168)))
        return flat
    if where != "stand":
        return body
    for side in (which,) if which in SIDES else SIDES:
        toes = turned(body[f"{side} foot"].frame, (1.0, 0.0, 0.0))
        yaw = degrees(atan2(toes[1], toes[0]))
        flat[f"{side} foot"] = foot_of(body[f"{side} shank"].end, about_up(yaw))
    return flat


def _resting(body: Body, pose: Pose) -> Point:
    """How far the body is moved, so that its base rests on its height and stands at the origin."""
    where, _, which = pose.base.partition(" ")
    sides = (which,) if which in SIDES else SIDES
    if where == "stand":
        low = min(min(body[f"{side} foot"].begin[2], body[f"{side} foot"].end[2]) for side in sides)
        at = body[f"{sides[0]} shank"].end[0]
    elif where in ("kneel", "all"):
        low = min(body[f"{side} shank"].begin[2] - THICK["shank"] for side in sides)
        at = body[f"{sides[0]} shank"].begin[0]
    elif where == "sit":
        low, at = body["pelvis"].begin[2] - THICK["pelvis"], 0.0
    else:
        low = min(min(part.begin[2], part.end[2]) - thick(name) for name, part in body.items() if _rests(name))
        at = 0.0
    return (-at, 0.0, pose.height - low)


def _rests(name: str) -> bool:
    return name.rstrip(" 123") in ("pelvis", "lumbar", "thorax", "head")


# --- hands and feet -------------------------------------------------------------------------------------------------


def _two_bones(begin: Point, end: Point, first: float, second: float, pole: Point, what: str) -> tuple[Point, Point]:
    """Where the middle joint and the end come, the middle one towards `pole`. Raises ImpossiblePose out of reach."""
    way = sub(end, begin)
    far = length(way)
    if far > first + second + SHORT or far < abs(first - second) - SHORT:
        raise ImpossiblePose(
            f"{what} is {far:.2f} body heights away; it reaches from {abs(first - second):.2f} to {first + second:.2f}"
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


def _relative(parent: Frame, child: Frame, side: str) -> Turn:
    """The turn of a limb's joint that gives a frame."""
    sign = 1.0 if side == "left" else -1.0
    rel = then(inverse(parent), child)
    down = turned(rel, (0.0, 0.0, -1.0))
    out = degrees(asin(max(-1.0, min(1.0, sign * down[1]))))
    flex = degrees(atan2(down[0], -down[2])) if abs(out) < 89 else 0.0
    flex = flex + 360 if flex < -120 else flex  # an arm overhead is raised in front, not behind
    rest = then(inverse(then(about_left(-flex), about_forward(sign * out))), rel)
    return Turn(flex, out, sign * degrees(atan2(rest[1][0], rest[0][0])))


def _put_foot(body: Body, angles: Angles, side: str, hold: Foothold) -> tuple[Body, Angles]:
    sign = 1.0 if side == "left" else -1.0
    pelvis, thigh = body["pelvis"], body[f"{side} thigh"]
    foot = _foot_frame(hold, sign)
    ankle = _ankle_of(hold, foot, thigh.begin[1] if hold.out is None else sign * hold.out)
    pole = (0.0, 0.0, 1.0) if hold.knee == "up" else turned(pelvis.frame, _knees(sign)[hold.knee])
    what = f"the place of the {side} foot"
    knee, ankle = _two_bones(thigh.begin, ankle, LENGTHS["thigh"], LENGTHS["shank"], pole, what)
    straight = angle(sub(knee, thigh.begin), sub(ankle, knee)) < 2
    upper = facing(pole if straight else sub(knee, _midway(thigh.begin, ankle)), sub(thigh.begin, knee))
    bend = angle(sub(knee, thigh.begin), sub(ankle, knee))
    shank = then(upper, about_left(bend))
    new = dict(body)
    new[f"{side} thigh"] = Part(thigh.begin, knee, upper)
    new[f"{side} shank"] = Part(knee, ankle, shank)
    new[f"{side} foot"] = foot_of(ankle, foot)
    rel = then(inverse(shank), foot)
    changed = replace(
        angles,
        hip={**angles.hip, side: _relative(pelvis.frame, upper, side)},
        knee={**angles.knee, side: Turn(bend)},
        ankle={**angles.ankle, side: Turn(degrees(atan2(rel[2][0], rel[0][0])))},
    )
    return new, changed


def _knees(sign: float) -> Mapping[str, Point]:
    return {"forward": (1.0, 0.0, -0.2), "out": (0.3, sign, 0.0), "down": (1.0, 0.0, -1.0)}


def _midway(a: Point, b: Point) -> Point:
    return times(add(a, b), 0.5)


def _foot_frame(hold: Foothold, sign: float) -> Frame:
    lift = {"flat": 0.0, "toes": 50.0, "heel": -25.0, "top": 140.0, "wall": -90.0}[hold.on]
    return then(about_up(sign * hold.toes), about_left(lift))


def _ankle_of(hold: Foothold, frame: Frame, left: float) -> Point:
    """The ankle of a foot whose lowest point is at its height."""
    foot = foot_of((0.0, 0.0, 0.0), frame)
    low = min(foot.begin[2], foot.end[2]) - (THICK["foot"] if hold.on == "top" else 0.0)
    return (hold.at, left, hold.height - low)


_ELBOWS = {
    "down": (-0.1, 0.1, -1.0),
    "out": (0.0, 1.0, -0.1),
    "up": (0.1, 0.2, 1.0),
    "back": (-1.0, 0.2, 0.0),
    "forward": (1.0, 0.2, 0.0),
    "in": (0.2, -1.0, 0.0),
}


def _put_hand(body: Body, angles: Angles, side: str, hold: Handhold, props: tuple[Prop, ...]) -> tuple[Body, Angles]:
    sign = 1.0 if side == "left" else -1.0
    top = body["thorax 3"]
    shoulder = shoulder_of(body, side)
    target, hand_frame = _target(body, side, hold, props)
    pole = turned(top.frame, (-0.5, 0.35 * sign, -0.6)) if hold.elbow is None else _world_pole(hold.elbow, sign)
    reach = LENGTHS["forearm"] + (0.0 if hand_frame else 0.6 * LENGTHS["hand"])
    elbow, end = _two_bones(shoulder, target, LENGTHS["upper-arm"], reach, pole, f"what the {side} hand touches")
    bend = angle(sub(elbow, shoulder), sub(end, elbow))
    away = sub(_midway(shoulder, end), elbow)
    upper = facing(away if length(away) > 1e-4 else turned(top.frame, (1.0, 0.0, 0.0)), sub(shoulder, elbow))
    fore = then(upper, about_left(-bend))
    wrist = add(elbow, turned(fore, (0.0, 0.0, -LENGTHS["forearm"])))
    new = dict(body)
    new[f"{side} upper arm"] = Part(shoulder, elbow, upper)
    new[f"{side} forearm"] = Part(elbow, wrist, fore)
    hand = hand_frame or then(fore, about_left(-angles.wrist[side].flex))
    new[f"{side} hand"] = Part(wrist, add(wrist, turned(hand, (0.0, 0.0, -LENGTHS["hand"]))), hand)
    changed = replace(
        angles,
        shoulder={**angles.shoulder, side: _free_turn(_relative(top.frame, upper, side))},
        elbow={**angles.elbow, side: Turn(bend)},
    )
    return new, changed


def _free_turn(turn: Turn) -> Turn:
    """A shoulder's turn about the arm is what the elbow makes of it; it is drawn and not held to a range."""
    return Turn(turn.flex, turn.out, 0.0)


def _world_pole(word: str, sign: float) -> Point:
    x, y, z = _ELBOWS[word]
    return (x, y * sign, z)


def _target(body: Body, side: str, hold: Handhold, props: tuple[Prop, ...]) -> tuple[Point, Frame | None]:
    """Where the hand goes, and its frame when the palm lies flat (then the place is the wrist's)."""
    left = shoulder_of(body, side)[1]
    if not isinstance(hold.to, str):
        place = hold.to if len(hold.to) == 3 else (hold.to[0], left, hold.to[1])
        flat = about_left(-90) if hold.flat else None
        return (place[0], place[1], place[2]), flat
    words = hold.to.split(" at ")
    at = float(words[1]) if len(words) == 2 else None
    if words[0] == "floor":
        place = (at if at is not None else shoulder_of(body, side)[0], left, 0.018 if not hold.flat else 0.03)
        return place, about_left(-90) if hold.flat else None
    if words[0] == "wall":
        wall = _prop(props, "wall", hold.to)
        sign = 1.0 if wall.at >= shoulder_of(body, side)[0] else -1.0
        place = (wall.at - sign * (0.03 if hold.flat else 0.018), left, at if at is not None else 0.8)
        return place, UPRIGHT_HAND if hold.flat else None
    if words[0] in ("seat", "chair back", "table", "step", "block", "bed", "bench", "rail"):
        return _on_prop(
            words[0], _prop(props, words[0].replace("seat", "chair").split(" ")[0], hold.to), at, left
        ), None
    return landmark(body, hold.to), None


UPRIGHT_HAND = about_left(180)
"""Fingers up."""


def _prop(props: tuple[Prop, ...], what: str, wanted: str) -> Prop:
    found = next((prop for prop in props if prop.what == what), None)
    if found is None:
        raise ImpossiblePose(f"a hand is to touch {wanted!r}, but there is no {what} among the props")
    return found


HEIGHTS = {"table": 0.43, "step": 0.11, "block": 0.09, "bed": 0.30, "bench": 0.26, "rail": 0.55, "chair": SEAT}
"""Heights of things, of body height (own choice, from household sizes and a body of 170 cm)."""
CHAIR_BACK = 0.50


def _on_prop(word: str, prop: Prop, at: float | None, left: float) -> Point:
    high = prop.low + (prop.height if prop.height is not None else HEIGHTS[prop.what])
    if word == "chair back":
        back = -0.11 if prop.faces == "forward" else 0.11
        return (prop.at + back, prop.left or left, prop.low + CHAIR_BACK + 0.015)
    return (at if at is not None else prop.at, left, high + 0.018)


_SPOTS: Mapping[str, tuple[str, float, float]] = {
    "knee": ("shank", 0.03, 0.9),
    "shin": ("shank", 0.55, 0.9),
    "ankle": ("shank", 0.97, 0.9),
    "thigh": ("thigh", 0.6, 0.9),
    "foot": ("foot", 0.55, 0.0),
    "toes": ("foot", 1.0, 0.0),
    "heel": ("foot", 0.0, 0.0),
    "elbow": ("forearm", 0.0, 0.9),
    "wrist": ("forearm", 0.98, 0.5),
    "hand": ("hand", 0.5, 0.5),
    "forearm": ("forearm", 0.5, 0.9),
    "upper arm": ("upper arm", 0.5, 0.9),
}
"""A spot of a limb: part, how far along, and how far on its front, in thicknesses."""

_MIDDLE: Mapping[str, tuple[str, float, float, float]] = {
    "head": ("head", 0.6, 0.0, 0.05),
    "back of the head": ("head", 0.5, -0.055, 0.0),
    "forehead": ("head", 0.7, 0.055, 0.0),
    "chin": ("head", 0.15, 0.055, 0.0),
    "chest": ("thorax 3", 0.3, 0.06, 0.0),
    "belly": ("lumbar 2", 0.5, 0.055, 0.0),
    "lower back": ("lumbar 1", 0.5, -0.055, 0.0),
    "upper back": ("thorax 3", 0.2, -0.06, 0.0),
    "hips": ("pelvis", 0.8, 0.0, 0.085),
}


def landmark(body: Body, name: str) -> Point:
    """A named spot of the body: "right knee", "left foot", "chest". Raises ImpossiblePose for another name."""
    side, _, what = name.partition(" ")
    if side in SIDES and what in ("shoulder", "hip"):
        return shoulder_of(body, side) if what == "shoulder" else body[f"{side} thigh"].begin
    if side in SIDES and what in _SPOTS:
        part, share, front = _SPOTS[what]
        forward = front * thick(part)
        return body[f"{side} {part}"].at(share, forward=forward)
    if name in _MIDDLE:
        part, share, forward, _left = _MIDDLE[name]
        return body[part].at(share, forward=forward)
    known = ", ".join([*_MIDDLE, *(f"left or right {spot}" for spot in ("shoulder", "hip", *_SPOTS))])
    raise ImpossiblePose(f"{name!r} is no place that a hand can touch; there are floor, wall, seat, {known}")


__all__ = ["HEIGHTS", "SEAT", "THICK", "UPRIGHT", "Posed", "landmark", "posed", "thick"]
