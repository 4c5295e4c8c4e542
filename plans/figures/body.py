"""The body that joint angles make: every joint as a point, every part with its frame.

Lengths are shares of body height. A body stands at the origin facing along x, its left along y, up along z.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from plans.figures.angles import SIDES as SIDES
from plans.figures.angles import Angles, Fingers, Girdle, Turn
from plans.figures.angles import ImpossiblePose as ImpossiblePose
from plans.figures.proportions import COLLAR, HALF_HIPS, HALF_SHOULDERS, HEEL, LENGTHS, MASSES, THICK
from plans.figures.space import (
    Frame,
    Point,
    about_forward,
    about_left,
    about_up,
    add,
    between,
    then,
    times,
    turned,
    up_of,
)


@dataclass(frozen=True, slots=True)
class Part:
    """One part of a body: from joint to joint, with its frame (forward, left, up of that part)."""

    begin: Point
    end: Point
    frame: Frame
    fan: float = 0.0
    """Of fingers: degrees between the outer ones."""

    def at(self, share: float, *, forward: float = 0.0, left: float = 0.0) -> Point:
        """A point along the part, moved off its middle in its own directions."""
        return add(between(self.begin, self.end, share), turned(self.frame, (forward, left, 0.0)))


Body = dict[str, Part]
"""Parts by name; paired ones as "left thigh"."""

KNUCKLES = 1 - (LENGTHS["fingers"] + LENGTHS["tips"]) / LENGTHS["hand"]
"""How far along a hand its fingers begin."""

SPINE = ("lumbar 1", "lumbar 2", "thorax 1", "thorax 2", "thorax 3")


CHAINS = (
    ("pelvis", *SPINE, "neck", "head"),
    *(("pelvis", f"{side} thigh", f"{side} shank", f"{side} foot") for side in SIDES),
    *(
        (SPINE[-1], *(f"{side} {part}" for part in ("upper arm", "forearm", "hand", "fingers", "tips")))
        for side in SIDES
    ),
    *((f"{side} hand", f"{side} thumb") for side in SIDES),
)
"""Every part of a body hangs from the one before it."""


def bare(name: str) -> str:
    """A part's name without its side or number: "left upper arm" is an upper arm."""
    return name.removeprefix("left ").removeprefix("right ").rstrip(" 123")


def thick(name: str) -> float:
    """Half of a part's thickness."""
    return THICK[bare(name)]


def sign_of(side: str) -> float:
    """1 for the left side, -1 for the right."""
    return 1.0 if side == "left" else -1.0


def body_of(angles: Angles, root: Frame | None = None) -> Body:
    """The body of a pose, its pelvis at the origin, turned as the pose says or as `root`."""
    pelvis = root if root is not None else pelvis_frame(angles.pelvis)
    body: Body = {"pelvis": _on((0.0, 0.0, 0.0), pelvis, LENGTHS["pelvis"])}
    _spine(body, angles)
    for side in SIDES:
        _leg(body, angles, side)
        _arm(body, angles, side)
    return body


def pelvis_frame(turn: Turn) -> Frame:
    """Leaned forward, then to the left, then turned to the left."""
    return then(then(about_up(turn.turn), about_left(turn.flex)), about_forward(-turn.out))


def _on(begin: Point, frame: Frame, along: float, fan: float = 0.0) -> Part:
    return Part(begin, add(begin, times(up_of(frame), along)), frame, fan)


def _spine(body: Body, angles: Angles) -> None:
    here, frame = body["pelvis"].end, body["pelvis"].frame
    for region, turn in (("lumbar", angles.lumbar), ("thorax", angles.thorax)):
        names = [name for name in SPINE if name.startswith(region)]
        bend = _bend(turn, len(names))
        for name in names:
            frame = then(frame, bend)
            body[name] = _on(here, frame, LENGTHS[region] / len(names))
            here = body[name].end
    bend = _bend(angles.neck, 2)
    body["neck"] = _on(here, then(frame, bend), LENGTHS["neck"])
    head = then(then(body["neck"].frame, bend), about_left(angles.nod))
    body["head"] = _on(body["neck"].end, head, LENGTHS["head"])


def _bend(turn: Turn, parts: int) -> Frame:
    """What one of some equal parts of the spine bends: turned to the left, bent forward, then to the left."""
    bend = then(about_left(turn.flex / parts), about_forward(-turn.out / parts))
    return then(about_up(turn.turn / parts), bend)


def limb_frame(turn: Turn, side: str) -> Frame:
    """The frame of a limb in that of the part from which it hangs."""
    sign = sign_of(side)
    return then(then(about_left(-turn.flex), about_forward(sign * turn.out)), about_up(sign * turn.turn))


def _leg(body: Body, angles: Angles, side: str) -> None:
    pelvis, sign = body["pelvis"], sign_of(side)
    thigh = then(pelvis.frame, limb_frame(angles.hip[side], side))
    hip = add(pelvis.begin, turned(pelvis.frame, (0.0, sign * HALF_HIPS, 0.0)))
    knee, ankle = angles.knee[side], angles.ankle[side]
    body[f"{side} thigh"] = _on(hip, thigh, -LENGTHS["thigh"])
    shank = then(thigh, about_left(knee.flex))
    body[f"{side} shank"] = _on(body[f"{side} thigh"].end, shank, -LENGTHS["shank"])
    body[f"{side} foot"] = foot_of(body[f"{side} shank"].end, then(shank, end_frame(ankle, side)))


def foot_of(ankle: Point, frame: Frame) -> Part:
    """The sole of a foot, from heel to toes, below an ankle."""
    sole = -LENGTHS["ankle height"]
    heel = add(ankle, turned(frame, (-HEEL, 0.0, sole)))
    return Part(heel, add(ankle, turned(frame, (LENGTHS["foot"] - HEEL, 0.0, sole))), frame)


def _arm(body: Body, angles: Angles, side: str) -> None:
    upper = then(body["thorax 3"].frame, limb_frame(angles.shoulder[side], side))
    body[f"{side} upper arm"] = _on(shoulder_of(body, side, angles.girdle[side]), upper, -LENGTHS["upper arm"])
    fore = then(upper, about_left(-angles.elbow[side].flex))
    body[f"{side} forearm"] = _on(body[f"{side} upper arm"].end, fore, -LENGTHS["forearm"])
    put_hand(body, side, then(fore, hand_frame(angles.forearm[side], angles.wrist[side], side)), angles.fingers[side])


def shoulder_of(body: Body, side: str, girdle: Girdle) -> Point:
    """The shoulder joint of a body: the collar bone's outer end."""
    top, sign = body["thorax 3"], sign_of(side)
    bone = turned(
        then(about_up(sign * girdle.back), about_forward(sign * girdle.up)),
        (0.0, sign * (HALF_SHOULDERS - COLLAR), 0.0),
    )
    return add(top.end, turned(top.frame, add((0.0, sign * COLLAR, -0.012), bone)))


def hand_frame(turn: float, wrist: Turn, side: str) -> Frame:
    """The frame of a hand in that of its forearm; its forward is where the palm looks, its outer side the thumb's."""
    return end_frame(Turn(wrist.flex, wrist.out, turn - 90), side)


def end_frame(turn: Turn, side: str) -> Frame:
    """The frame of a limb's end, a hand or a foot, in that of the limb: turned, tilted, then bent."""
    sign = sign_of(side)
    return then(then(about_up(sign * turn.turn), about_forward(sign * turn.out)), about_left(-turn.flex))


def put_hand(body: Body, side: str, frame: Frame, fingers: Fingers) -> None:
    """Puts a hand with its fingers on the end of a forearm."""
    hand = _on(body[f"{side} forearm"].end, frame, -LENGTHS["hand"])
    first = then(frame, about_left(-fingers.knuckles))
    body[f"{side} hand"] = hand
    roots = _on(hand.at(KNUCKLES), first, -LENGTHS["fingers"], fingers.fan)
    body[f"{side} fingers"] = roots
    second = then(first, about_left(-fingers.middle))
    body[f"{side} tips"] = _on(roots.end, second, -LENGTHS["tips"], fingers.fan)
    off = then(about_forward(sign_of(side) * fingers.thumb), about_left(-fingers.thumb_in))
    root = hand.at(0.18, left=sign_of(side) * 0.016)
    body[f"{side} thumb"] = _on(root, then(frame, off), -LENGTHS["thumb"])


def moved(body: Body, by: Point) -> Body:
    """The same body somewhere else."""
    return {name: Part(add(part.begin, by), add(part.end, by), part.frame, part.fan) for name, part in body.items()}


def masses(body: Body) -> Iterator[tuple[Point, float]]:
    """The middle of each part with its share of the body's mass."""
    for name, part in body.items():
        kind = bare(name)
        if kind in MASSES:
            yield between(part.begin, part.end, 0.5), MASSES[kind] / {"lumbar": 2, "thorax": 3}.get(kind, 1)


def centre_of_mass(body: Body) -> Point:
    """The centre of mass of a body."""
    total, whole = (0.0, 0.0, 0.0), 0.0
    for point, mass in masses(body):
        total, whole = add(total, times(point, mass)), whole + mass
    return times(total, 1 / whole)
