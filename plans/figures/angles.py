"""A pose as joint angles, each within the range of its joint."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from plans.figures.proportions import BENT_HIP, GIVE, RANGES

Side = Literal["left", "right"]
SIDES: tuple[Side, Side] = ("left", "right")


class ImpossiblePose(ValueError):
    """A pose that no body takes: it names the joint, what was asked, and what is possible."""


@dataclass(frozen=True, slots=True)
class Turn:
    """What one joint does, in degrees: bent (`flex`), out to the side (`out`, of a spine to the left), turned outward
    (`turn`, of a spine to the left)."""

    flex: float = 0.0
    out: float = 0.0
    turn: float = 0.0


STRAIGHT = Turn()


@dataclass(frozen=True, slots=True)
class Girdle:
    """What one shoulder girdle does, in degrees about the collar bone's inner end: raised, and drawn back."""

    up: float = 0.0
    back: float = 0.0


@dataclass(frozen=True, slots=True)
class Fingers:
    """What the fingers of one hand do, in degrees: bent at the knuckles and in themselves, and how far they fan."""

    knuckles: float = 12.0
    middle: float = 20.0
    fan: float = 0.0
    thumb: float = 35.0
    """How far the thumb stands off the hand, in its plane."""
    thumb_in: float = 15.0
    """How far the thumb stands before the palm."""


FINGERS = {
    "soft": Fingers(),
    "flat": Fingers(knuckles=0, middle=0, thumb_in=0),
    "spread": Fingers(knuckles=0, middle=0, fan=50, thumb=65, thumb_in=0),
    "gathered": Fingers(knuckles=35, middle=15, fan=0, thumb=10, thumb_in=45),
    "fist": Fingers(knuckles=80, middle=125, thumb=5, thumb_in=60),
    "grip": Fingers(knuckles=60, middle=75, thumb=10, thumb_in=55),
}
"""What the fingers of a hand can do, by the word for it (own choice, for the look)."""


def _pair(value: Turn = STRAIGHT) -> dict[str, Turn]:
    return dict.fromkeys(SIDES, value)


@dataclass(frozen=True, slots=True)
class Angles:
    """Every joint of a pose. Paired joints are by side; the pelvis is turned in space."""

    pelvis: Turn = STRAIGHT
    lumbar: Turn = STRAIGHT
    thorax: Turn = STRAIGHT
    neck: Turn = STRAIGHT
    nod: float = 0.0
    """The head bent on the neck alone, beyond what the neck bends."""
    hip: Mapping[str, Turn] = field(default_factory=_pair)
    knee: Mapping[str, Turn] = field(default_factory=_pair)
    ankle: Mapping[str, Turn] = field(default_factory=_pair)
    girdle: Mapping[str, Girdle] = field(default_factory=lambda: dict.fromkeys(SIDES, Girdle()))
    shoulder: Mapping[str, Turn] = field(default_factory=_pair)
    elbow: Mapping[str, Turn] = field(default_factory=_pair)
    forearm: Mapping[str, float] = field(default_factory=lambda: dict.fromkeys(SIDES, 0.0))
    """Turned palm up (the elbow bent to 90), from thumb up; palm down is negative."""
    wrist: Mapping[str, Turn] = field(default_factory=_pair)
    fingers: Mapping[str, Fingers] = field(default_factory=lambda: dict.fromkeys(SIDES, Fingers()))


_PAIRED = ("hip", "knee", "ankle", "shoulder", "elbow", "wrist")


def check(angles: Angles) -> None:
    """Raises ImpossiblePose for a joint beyond its range."""
    a, b, neck = angles.lumbar, angles.thorax, angles.neck
    _within("spine", "spine", {"flex": a.flex + b.flex, "side": a.out + b.out, "turn": a.turn + b.turn})
    _within("neck", "neck", {"flex": neck.flex + angles.nod, "side": neck.out, "turn": neck.turn})
    for side in SIDES:
        for joint in _PAIRED:
            turn: Turn = getattr(angles, joint)[side]
            if turn.flex or turn.out or turn.turn:
                _within(joint, f"{side} {joint}", {"flex": turn.flex, "out": turn.out, "turn": turn.turn})
        _within("forearm", f"{side} forearm", {"turn": angles.forearm[side]})
        girdle = angles.girdle[side]
        if girdle.up or girdle.back:
            _within("girdle", f"{side} shoulder girdle", {"up": girdle.up, "back": girdle.back})


def _within(joint: str, named: str, values: Mapping[str, float]) -> None:
    for axis, value in values.items():
        if not value:
            continue
        found = range_of(joint, axis, values.get("flex", 0.0))
        if found is None:
            raise ImpossiblePose(f"{named}: there is no {axis} in this joint, found {value:g}")
        low, high = found
        if not low <= value <= high:
            raise ImpossiblePose(f"{named}: {axis} {value:.0f} degrees; it goes from {low:.0f} to {high:.0f}")


def range_of(joint: str, axis: str, flex: float = 0.0) -> tuple[float, float] | None:
    """How far an axis of a joint goes when the joint is bent so far, with what is given beyond the printed range; None
    for an axis that the joint does not have."""
    found = RANGES.get((joint, axis))
    if found is None:
        return None
    more = BENT_HIP * max(0.0, min(1.0, flex / 90)) if (joint, axis) == ("hip", "turn") else 0.0
    return found.low - GIVE, found.high + GIVE + more


def is_within(joint: str, turn: Turn) -> bool:
    """Whether a joint goes so far."""
    for axis in ("flex", "out", "turn"):
        value, found = getattr(turn, axis), range_of(joint, axis, turn.flex)
        if value and not (found and found[0] <= value <= found[1]):
            return False
    return True
