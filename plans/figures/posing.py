"""From what is written to a body at its place: what it rests on is on the floor, hands and feet where they touch."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import atan2, degrees, sqrt
from typing import Any

from plans.figures.angles import FINGERS, SIDES, Angles, Fingers, Girdle, Side, Turn, check
from plans.figures.body import SPINE, Body, Part, bare, body_of, foot_of, moved, pelvis_frame, sign_of, thick
from plans.figures.bones import ankle_turn
from plans.figures.feet import reach_with_foot
from plans.figures.ground import check_floor
from plans.figures.hands import reach_with_hand
from plans.figures.landmarks import ON_AN_ARM
from plans.figures.proportions import THICK, WIDE
from plans.figures.space import (
    Frame,
    Point,
    about_forward,
    about_left,
    about_up,
    add,
    forward_of,
    left_of,
    then,
    turned,
)
from plans.figures.things import SEAT
from plans.figures.written import Foothold, Handhold, Pose, Prop, WrittenTurn


@dataclass(frozen=True, slots=True)
class Posed:
    """A body at its place, and the angles that it took."""

    body: Body
    angles: Angles


def posed(pose: Pose, props: tuple[Prop, ...] = ()) -> Posed:
    """The body of a written pose. Raises ImpossiblePose, naming the joint or what cannot be reached."""
    angles = _angles(pose, props)
    body = body_of(angles, then(about_up(pose.yaw), _root(pose, angles)))
    body, angles = _standing_feet(body, angles, pose)
    body = moved(body, add(_resting(body, pose), (pose.forward, 0.0, 0.0)))
    feet = {side: pose.feet.get(side) or _foot_of_sitting(body, pose, side) for side in SIDES}
    for side, foot in sorted(feet.items(), key=lambda item: item[1] is not None and item[1].to is not None):
        if foot is not None:
            body, angles = reach_with_foot(body, angles, side, foot, pose.yaw)
    for side, hand in sorted(pose.hands.items(), key=lambda item: _holds_an_arm(item[1])):
        body, angles = reach_with_hand(body, angles, side, hand, props, pose.yaw)
    check(angles)
    check_floor(body)
    return Posed(body, angles)


def _holds_an_arm(hand: Handhold) -> bool:
    """Such a hand comes after the one that it may hold."""
    return isinstance(hand.to, str) and hand.to.endswith(ON_AN_ARM)


def _angles(pose: Pose, props: tuple[Prop, ...]) -> Angles:
    usual = {"sit": 90 + pose.lean, "all fours": ON_FOURS + pose.lean}.get(pose.base, 0.0)
    return Angles(
        lumbar=pose.lumbar.value(),
        thorax=pose.thorax.value(),
        neck=pose.neck.value(),
        nod=pose.nod,
        hip=_pair(pose.hips, WrittenTurn(flex=max(-40.0, min(130.0, usual)))),
        knee=_pair(pose.knees, _KNEES.get(pose.base)),
        ankle=_pair(pose.ankles, None),
        girdle={side: pose.girdle[side].value() if side in pose.girdle else Girdle() for side in SIDES},
        shoulder=_pair(pose.shoulders, None),
        elbow=_pair(pose.elbows, None),
        forearm={side: pose.forearms.get(side, 0.0) for side in SIDES},
        wrist=_pair(pose.wrists, None),
        fingers={side: _fingers(pose, props, side) for side in SIDES},
    )


ON_FOURS = 78.0
"""Lean of the pelvis on hands and knees: arms are longer than thighs, so the back rises a little to the shoulders."""
_KNEES = {base: WrittenTurn(flex=90) for base in ("all fours", "kneel", "kneel left", "kneel right", "sit")}


def _pair(found: Mapping[Any, WrittenTurn] | None, usual: WrittenTurn | None) -> dict[str, Turn]:
    usual = usual or WrittenTurn()
    return {side: ((found or {}).get(side) or usual).value() for side in SIDES}


_GRIPPED = ("chair back", "rail", "ankle", "foot", "toes", "elbow", "wrist", "shin", "back of the thigh", "forearm")


def _fingers(pose: Pose, props: tuple[Prop, ...], side: Side) -> Fingers:
    """As written; else closed round what is held, flat where the hand lies flat, else soft."""
    if side in pose.fingers:
        return FINGERS[pose.fingers[side]]
    if any(f"{side} hand" in prop.between for prop in props):
        return FINGERS["grip"]
    hold = pose.hands.get(side)
    if hold and (hold.flat or hold.palm):
        return FINGERS["flat"]
    return FINGERS["grip" if hold and isinstance(hold.to, str) and hold.to.endswith(_GRIPPED) else "soft"]


def _root(pose: Pose, angles: Angles) -> Frame:
    """The turn of the pelvis: as the base leg has it, as the pose lies, or as it is written."""
    if pose.base == "lie on the left":
        return then(about_forward(-90 + pose.side), about_left(pose.lean))
    if pose.base == "lie on the right":
        return then(about_forward(90 - pose.side), about_left(pose.lean))
    leg = _base_legs(pose)[0]
    hip, knee, ankle = angles.hip[leg].flex, angles.knee[leg].flex, angles.ankle[leg].flex
    pitch = {
        "stand": hip - knee + ankle,
        "kneel": 90 + hip - knee,
        "all": ON_FOURS,
        "sit": 0.0,
        "lie": -90.0 if pose.base == "lie on the back" else 90.0,
    }[_kind(pose)]
    return pelvis_frame(Turn(pitch + pose.lean, pose.side, 0.0))


def _kind(pose: Pose) -> str:
    return pose.base.split(" ")[0]


def _base_legs(pose: Pose) -> tuple[str, ...]:
    """The legs that bear the body: the one that the base names, or both."""
    last = pose.base.split(" ")[-1]
    return (last,) if last in SIDES and _kind(pose) in ("stand", "kneel") else SIDES


LIFTED = 0.03
"""Of body height: a knee that is so much higher than the other one is lifted."""
KNEELING_FOOT = 165.0
"""Turn of a foot that lies on its top behind a knee, in degrees."""


def _standing_feet(body: Body, angles: Angles, pose: Pose) -> tuple[Body, Angles]:
    """Feet that stand are flat, turned as their legs are; those behind the knees lie on their tops."""
    if _kind(pose) not in ("stand", "kneel", "all"):
        return body, angles
    new, turns = dict(body), dict(angles.ankle)
    low = min(body[f"{side} shank"].begin[2] for side in _base_legs(pose))
    for side in _base_legs(pose):
        if _kind(pose) == "stand":
            toes = forward_of(body[f"{side} foot"].frame)
            frame = about_up(degrees(atan2(toes[1], toes[0])))
        else:
            frame = then(about_up(pose.yaw), about_left(KNEELING_FOOT))
        shank = body[f"{side} shank"]
        if shank.begin[2] > low + LIFTED:
            continue
        new[f"{side} foot"] = foot_of(shank.end, frame)
        turns[side] = ankle_turn(shank.frame, frame, side)
    return new, replace(angles, ankle=turns)


def _resting(body: Body, pose: Pose) -> Point:
    """How far the body is moved, so that its base rests on its height and stands at the origin."""
    kind, sides = _kind(pose), _base_legs(pose)
    at = 0.0
    if kind == "stand":
        low = min(min(body[f"{side} foot"].begin[2], body[f"{side} foot"].end[2]) for side in sides)
        at = body[f"{sides[0]} shank"].end[0]
    elif kind in ("kneel", "all"):
        low = min(body[f"{side} shank"].begin[2] - THICK["shank"] for side in sides)
        at = body[f"{sides[0]} shank"].begin[0]
    elif kind == "sit":
        low = body["pelvis"].begin[2] - THICK["pelvis"]
    else:
        low = min(_lowest(name, body[name]) for name in ("pelvis", *SPINE, "head"))
        low = min(low, *(body[f"{side} upper arm"].begin[2] - THICK["upper arm"] for side in SIDES))
    return (-at, 0.0, pose.height - low)


def _lowest(name: str, part: Part) -> float:
    """The height of the underside of a part of the trunk, which is broader than deep, or of the head."""
    wide, deep = WIDE.get(bare(name), 0.0), thick(name)
    down = sqrt((wide * left_of(part.frame)[2]) ** 2 + (deep * forward_of(part.frame)[2]) ** 2) if wide else deep
    return min(part.begin[2], part.end[2]) - down


HIGH_SEAT = 0.2
"""Of body height: from here on a seat lets the feet down to the floor."""
SHIN_AHEAD = 0.235
"""Of body height: how far the ankles of somebody who sits are before the hips."""


def _foot_of_sitting(body: Body, pose: Pose, side: Side) -> Foothold | None:
    """Who sits on a seat has the feet on the floor, unless it is written what the leg does."""
    written = any(side in pair for pair in (pose.hips, pose.knees) if pair is not None)
    if pose.base != "sit" or pose.height < HIGH_SEAT or pose.height > SEAT + 0.05 or written:
        return None
    x, y, _ = add(body[f"{side} thigh"].begin, turned(about_up(pose.yaw), (SHIN_AHEAD, 0.0, 0.0)))
    return Foothold(at=x, out=sign_of(side) * y)
