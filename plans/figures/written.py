"""What is written about a pose: angles in degrees, what the body rests on, and what hands and feet touch.

In a file of poses each movement has a `view`, `props` and `poses`, the first one the start and the last one the end:

    half-kneeling-hip-flexor:
      props: [mat]
      poses:
        - {base: kneel right, feet: {left: {at: 0.27}}}
        - {base: kneel right, hips: {right: -10}, feet: {left: {at: 0.27}}}
"""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, StringConstraints

from plans.figures.angles import SIDES, Girdle, Side, Turn

Degrees = Annotated[float, Field(ge=-180, le=180)]
Share = Annotated[float, Field(ge=-2, le=2, description="Of body height.")]


class _Closed(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True, populate_by_name=True, defer_build=True)


class WrittenTurn(_Closed):
    """One joint: bent, out to the side (a spine to the left), turned outward (a spine to the left)."""

    flex: Degrees = 0
    out: Degrees = 0
    turn: Degrees = 0

    def value(self) -> Turn:
        """The turn as a value."""
        return Turn(self.flex, self.out, self.turn)


def _turn(found: Any) -> Any:
    return {"flex": found} if isinstance(found, int | float) and not isinstance(found, bool) else found


OneTurn = Annotated[WrittenTurn, BeforeValidator(_turn)]


def _both(found: Any) -> Any:
    """The same for both sides, or `left` and `right` apart; a side that is not named is straight."""
    if isinstance(found, dict) and set(found) <= set(SIDES):
        return found
    return dict.fromkeys(SIDES, found)


Pair = Annotated[dict[Side, OneTurn], BeforeValidator(_both)]


class WrittenGirdle(_Closed):
    """One shoulder girdle: raised, and drawn back."""

    up: Degrees = 0
    back: Degrees = 0

    def value(self) -> Girdle:
        """The girdle as a value."""
        return Girdle(self.up, self.back)


BothGirdles = Annotated[dict[Side, WrittenGirdle], BeforeValidator(_both)]
BothForearms = Annotated[dict[Side, Degrees], BeforeValidator(_both)]
BothFingers = Annotated[
    dict[Side, Literal["soft", "flat", "spread", "gathered", "fist", "grip"]],
    BeforeValidator(_both),
]

Place = tuple[Share, Share] | tuple[Share, Share, Share]
"""Forward and up, or forward, left and up."""


class Foothold(_Closed):
    """Where a foot is put: `at` is its ankle forward of the base, `out` to its own side, `height` of what it is on.

    `on` is how: flat, on the toes, on the heel, the top of the foot, or the sole at a wall. `to` is what the outside
    of its ankle lies on instead: a part of the body, or a place. The knee points where the toes do, unless `knee`
    says another way.
    """

    at: Share = 0
    out: Share | None = None
    height: Share = 0
    on: Literal["flat", "toes", "heel", "top", "wall"] = "flat"
    to: str | Place | None = None
    knee: Literal["out", "in", "down", "up"] | None = None
    toes: Degrees = 0
    """Turned outward."""
    tilt: Degrees = 0
    """The outer edge of the sole raised, or with a negative number the inner one."""


Spot = str | Place
"""What a hand touches: a part of the body, a prop, the floor, or a place."""

Way = Literal["forward", "back", "up", "down", "in", "out"]
"""A direction of the person who stands upright; in and out for the side of the hand."""


class Handhold(_Closed):
    """What a hand touches, where its elbow points, and how the hand lies.

    With `flat`, or with both `palm` and `point`, the hand has a direction of its own and the wrist is bent; the place
    is then the wrist's.
    """

    to: Spot
    elbow: Way | None = None
    flat: bool = False
    """The palm lies flat on it, the fingers forward, or up at a wall."""
    palm: Way | None = None
    """Where the palm looks."""
    point: Way | None = None
    """Where the fingers point."""


def _hand(found: Any) -> Any:
    return {"to": found} if isinstance(found, str | list | tuple) else found


OneHand = Annotated[Handhold, BeforeValidator(_hand)]


Hands = Annotated[dict[Side, OneHand], BeforeValidator(_both)]

Base = Literal[
    "stand",
    "stand left",
    "stand right",
    "kneel",
    "kneel left",
    "kneel right",
    "all fours",
    "sit",
    "lie on the back",
    "lie on the front",
    "lie on the left",
    "lie on the right",
]


class Pose(_Closed):
    """One pose as it is written."""

    say: Annotated[str, StringConstraints(max_length=40)] | None = None
    base: Base = "stand"
    lean: Degrees = 0
    """Of the pelvis, forward, beyond what the base gives; when sitting, from upright."""
    side: Degrees = 0
    yaw: Degrees = 0
    """The whole body turned to its left."""
    height: Share = 0
    """Of what the base rests on."""
    forward: Share = 0
    """The whole body moved forward."""
    lumbar: OneTurn = WrittenTurn()
    thorax: OneTurn = WrittenTurn()
    neck: OneTurn = WrittenTurn()
    nod: Degrees = 0
    """The head bent forward on the neck alone."""
    hips: Pair | None = None
    knees: Pair | None = None
    ankles: Pair | None = None
    girdle: BothGirdles = Field(default_factory=dict)
    shoulders: Pair | None = None
    elbows: Pair | None = None
    forearms: BothForearms = Field(default_factory=dict)
    """Turned so that the palm looks up when the elbow is bent; negative: down; 0: the thumb is up."""
    wrists: Pair | None = None
    """`flex` towards the palm, `out` towards the thumb."""
    fingers: BothFingers = Field(default_factory=dict)
    hands: Hands = Field(default_factory=dict)
    feet: dict[Side, Foothold] = Field(default_factory=dict)


class Prop(_Closed):
    """A thing beside the body: `at` its place forward, `height` and `long` its size; `between` what it is held by."""

    what: Literal[
        "mat", "chair", "wall", "table", "bench", "bed", "step", "block", "towel", "cushion", "ball", "rail", "strap",
        "band", "stick", "weight", "door frame",
    ]  # fmt: skip
    at: Share = 0
    left: Share = 0
    height: Share | None = None
    long: Share | None = None
    faces: Literal["forward", "back", "left", "right"] = "forward"
    """Where somebody who sat on the chair would look: its back is on the other side. A chair in front of a standing
    person who holds its back faces forward."""
    between: tuple[str, ...] = ()
    low: Share = 0
    """What the thing stands on."""


def _prop(found: Any) -> Any:
    """`mat`, or `chair: {at: 0.4}`."""
    if isinstance(found, str):
        return {"what": found}
    if isinstance(found, dict) and len(found) == 1 and "what" not in found:
        ((what, rest),) = found.items()
        return {"what": what, **(rest or {})}
    return found


OneProp = Annotated[Prop, BeforeValidator(_prop)]


class Drawn(_Closed):
    """The figure of one movement."""

    view: Literal["side", "front", "back", "above", "slant", "slant back", "slant above", "front above"] = "side"
    props: tuple[OneProp, ...] = ()
    poses: Annotated[tuple[Pose, ...], Field(min_length=1, max_length=3)]
    close: Literal["head", "trunk", "forearm", "forearms", "legs", "foot"] | None = None
    """Only this is drawn, larger: head and shoulders, all above the hips, one forearm and hand or both, all below the
    waist, one shin and foot (the right ones, or those of the leading side). Things are drawn whole."""
    lead: Literal["left", "right", "both"] | None = None
    """The side that is hatched; without it the right one of a movement with sides, and both of any other."""
    free: bool = False
    """Stands free: the centre of mass must be over the feet."""
