"""A pose as joint angles, and the body that it makes: every joint as a point, every part with its frame.

Lengths are shares of body height. A body stands at the origin facing along x, its left along y, up along z.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

from plans.figures.proportions import (
    GIVE,
    HALF_HIPS,
    HALF_SHOULDERS,
    HEEL,
    LENGTHS,
    MASSES,
    RANGES,
)
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
)

SIDES = ("left", "right")


class ImpossiblePose(ValueError):
    """A pose that no body takes: it names the joint, what was asked, and what is possible."""


@dataclass(frozen=True, slots=True)
class Turn:
    """What one joint does, in degrees: bent (`flex`), out to the side (`out`, of a spine to the left), turned outward
    (`turn`, of a spine to the left)."""

    flex: float = 0.0
    out: float = 0.0
    turn: float = 0.0


@dataclass(frozen=True, slots=True)
class Angles:
    """Every joint of a pose. Paired joints are by side; the pelvis is turned in space."""

    pelvis: Turn = Turn()
    lumbar: Turn = Turn()
    thorax: Turn = Turn()
    neck: Turn = Turn()
    hip: Mapping[str, Turn] = field(default_factory=lambda: dict.fromkeys(SIDES, Turn()))
    knee: Mapping[str, Turn] = field(default_factory=lambda: dict.fromkeys(SIDES, Turn()))
    ankle: Mapping[str, Turn] = field(default_factory=lambda: dict.fromkeys(SIDES, Turn()))
    shoulder: Mapping[str, Turn] = field(default_factory=lambda: dict.fromkeys(SIDES, Turn()))
    elbow: Mapping[str, Turn] = field(default_factory=lambda: dict.fromkeys(SIDES, Turn()))
    wrist: Mapping[str, Turn] = field(default_factory=lambda: dict.fromkeys(SIDES, Turn()))


@dataclass(frozen=True, slots=True)
class Part:
    """One part of a body: from joint to joint, with its frame (forward, left, up of that part)."""

    begin: Point
    end: Point
    frame: Frame

    def at(self, share: float, *, forward: float = 0.0, left: float = 0.0) -> Point:
        """A point along the part, moved off its middle in its own directions."""
        return add(between(self.begin, self.end, share), turned(self.frame, (forward, left, 0.0)))


Body = dict[str, Part]
"""Parts by name; paired ones as "left thigh"."""

SPINE = ("lumbar 1", "lumbar 2", "thorax 1", "thorax 2", "thorax 3")


def check(angles: Angles) -> None:
    """Raises ImpossiblePose for a joint beyond its range."""
    spine = Turn(*(getattr(angles.lumbar, axis) + getattr(angles.thorax, axis) for axis in ("flex", "out", "turn")))
    for name, turn in (("spine", spine), ("neck", angles.neck)):
        _check(name, name, Turn(turn.flex, 0.0, turn.turn))
        _check_axis(name, name, "side", turn.out)
    for joint in ("hip", "knee", "ankle", "shoulder", "elbow", "wrist"):
        for side in SIDES:
            _check(joint, f"{side} {joint}", getattr(angles, joint)[side])


def _check(joint: str, named: str, turn: Turn) -> None:
    for axis in ("flex", "out", "turn"):
        _check_axis(joint, named, axis, getattr(turn, axis))


def _check_axis(joint: str, named: str, axis: str, value: float) -> None:
    found = RANGES.get((joint, axis))
    if found is None:
        if value:
            raise ImpossiblePose(f"{named}: there is no {axis} in this joint, found {value:g}")
        return
    if not found.low - GIVE <= value <= found.high + GIVE:
        low, high = found.low - GIVE, found.high + GIVE
        raise ImpossiblePose(f"{named}: {axis} {value:.0f} degrees; it goes from {low:.0f} to {high:.0f}")


def _bent(frame: Frame, turn: Turn) -> Frame:
    """A frame of the spine bent on: forward, to the left, turned to the left."""
    bend = then(about_left(turn.flex), about_forward(-turn.out))
    return then(then(frame, about_up(turn.turn)), bend)


def _limb(frame: Frame, turn: Turn, side: str) -> Frame:
    """The frame of a limb that hangs from another part."""
    sign = 1.0 if side == "left" else -1.0
    out = then(about_left(-turn.flex), about_forward(sign * turn.out))
    return then(then(frame, out), about_up(sign * turn.turn))


def _share(turn: Turn, parts: int) -> Turn:
    return Turn(turn.flex / parts, turn.out / parts, turn.turn / parts)


def _on(begin: Point, frame: Frame, along: float) -> Part:
    return Part(begin, add(begin, turned(frame, (0.0, 0.0, along))), frame)


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


def _spine(body: Body, angles: Angles) -> None:
    here, frame = body["pelvis"].end, body["pelvis"].frame
    for name in SPINE:
        region, count = ("lumbar", 2) if name.startswith("lumbar") else ("thorax", 3)
        frame = _bent(frame, _share(getattr(angles, region), count))
        body[name] = _on(here, frame, LENGTHS[region] / count)
        here = body[name].end
    neck = _bent(frame, _share(angles.neck, 2))
    body["neck"] = _on(here, neck, LENGTHS["neck"])
    body["head"] = _on(body["neck"].end, _bent(neck, _share(angles.neck, 2)), LENGTHS["head"])


def _leg(body: Body, angles: Angles, side: str) -> None:
    sign = 1.0 if side == "left" else -1.0
    pelvis = body["pelvis"]
    thigh = _limb(pelvis.frame, angles.hip[side], side)
    hip = add(pelvis.begin, turned(pelvis.frame, (0.0, sign * HALF_HIPS, 0.0)))
    body[f"{side} thigh"] = _on(hip, thigh, -LENGTHS["thigh"])
    shank = then(thigh, about_left(angles.knee[side].flex))
    body[f"{side} shank"] = _on(body[f"{side} thigh"].end, shank, -LENGTHS["shank"])
    body[f"{side} foot"] = foot_of(body[f"{side} shank"].end, then(shank, about_left(-angles.ankle[side].flex)))


def foot_of(ankle: Point, frame: Frame) -> Part:
    """The sole of a foot, from heel to toes, below an ankle."""
    sole = -LENGTHS["ankle-height"]
    heel = add(ankle, turned(frame, (-HEEL, 0.0, sole)))
    return Part(heel, add(ankle, turned(frame, (LENGTHS["foot"] - HEEL, 0.0, sole))), frame)


def _arm(body: Body, angles: Angles, side: str) -> None:
    top = body["thorax 3"]
    upper = _limb(top.frame, angles.shoulder[side], side)
    body[f"{side} upper arm"] = _on(shoulder_of(body, side), upper, -LENGTHS["upper-arm"])
    fore = then(upper, about_left(-angles.elbow[side].flex))
    body[f"{side} forearm"] = _on(body[f"{side} upper arm"].end, fore, -LENGTHS["forearm"])
    hand = then(fore, about_left(-angles.wrist[side].flex))
    body[f"{side} hand"] = _on(body[f"{side} forearm"].end, hand, -LENGTHS["hand"])


def shoulder_of(body: Body, side: str) -> Point:
    """The shoulder joint of a body."""
    sign = 1.0 if side == "left" else -1.0
    top = body["thorax 3"]
    return add(top.end, turned(top.frame, (0.0, sign * HALF_SHOULDERS, -0.012)))


def moved(body: Body, by: Point) -> Body:
    """The same body somewhere else."""
    return {name: replace(part, begin=add(part.begin, by), end=add(part.end, by)) for name, part in body.items()}


def masses(body: Body) -> Iterator[tuple[Point, float]]:
    """The middle of each part with its share of the body's mass."""
    for name, part in body.items():
        kind = name.removeprefix("left ").removeprefix("right ").replace(" arm", "-arm")
        if kind.startswith(("lumbar", "thorax")):
            kind, count = kind.split()[0], 2 if kind.startswith("lumbar") else 3
            yield between(part.begin, part.end, 0.5), MASSES[kind] / count
        elif kind in MASSES:
            yield between(part.begin, part.end, 0.5), MASSES[kind]


def centre_of_mass(body: Body) -> Point:
    """The centre of mass of a body."""
    total, whole = (0.0, 0.0, 0.0), 0.0
    for point, mass in masses(body):
        total, whole = add(total, times(point, mass)), whole + mass
    return times(total, 1 / whole)
