"""Things beside a body: of what boxes and rods they are made, and where a hand touches them."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from itertools import pairwise

from plans.figures.angles import ImpossiblePose
from plans.figures.body import Body
from plans.figures.landmarks import Spot, landmark
from plans.figures.space import Point, add, between, sub, times, unit
from plans.figures.written import Prop

SEAT, CHAIR_BACK = 0.255, 0.50
"""Heights of a chair's seat and of the top of its back, of body height (43 and 85 cm for 170)."""
HEIGHTS = {"table": 0.43, "step": 0.11, "block": 0.09, "bed": 0.30, "bench": 0.26, "rail": 0.55, "chair": SEAT}
ROLLS = {"towel": 0.06, "cushion": 0.07, "ball": 0.04}
"""Heights of things, of body height (own choice, from household sizes and a body of 170 cm)."""
LONGS = {
    "mat": 1.15,
    "table": 0.42,
    "bench": 0.55,
    "bed": 1.15,
    "step": 0.24,
    "block": 0.12,
    "wall": 0.44,
    "rail": 0.20,
}
"""From end to end: forward, of a wall to the sides."""


@dataclass(frozen=True, slots=True)
class Box:
    """A box in space, its sides along the axes, from its lowest to its highest corner."""

    low: Point
    high: Point


@dataclass(frozen=True, slots=True)
class Rod:
    """A round bar, `half` of its thickness all along; a ball where it begins and ends at one place."""

    begin: Point
    end: Point
    half: float
    is_held: bool = False


def solids(prop: Prop, body: Body) -> list[Box | Rod]:
    """The boxes and rods of a thing; one that is held hangs between hands, feet and other spots of the body."""
    return list(_held(prop, body) if prop.between else _MADE[prop.what](prop))


def _box(prop: Prop, low: float, high: float, long: float, deep: float) -> Box:
    x, y = prop.at, prop.left
    return Box((x - long / 2, y - deep, low), (x + long / 2, y + deep, high))


def _mat(prop: Prop) -> Iterator[Box | Rod]:
    yield _box(prop, -0.012, 0.0, prop.long or LONGS["mat"], 0.19)


_BEHIND = {"forward": (-1.0, 0.0), "back": (1.0, 0.0), "left": (0.0, -1.0), "right": (0.0, 1.0)}
_HALF_SEAT, _SLANT = 0.12, 0.015
"""Half of a seat's breadth, and how far the top of a chair's back is behind its foot."""


def _back_of(prop: Prop, height: float) -> Point:
    """The middle of a chair's back at a height."""
    x, y = _BEHIND[prop.faces]
    far = _HALF_SEAT + _SLANT * (height - SEAT) / (CHAIR_BACK - SEAT)
    return (prop.at + x * far, prop.left + y * far, prop.low + height)


def _chair(prop: Prop) -> Iterator[Box | Rod]:
    yield _box(prop, prop.low + SEAT - 0.03, prop.low + SEAT, 2 * _HALF_SEAT, _HALF_SEAT)
    for x in (prop.at - 0.11, prop.at + 0.11):
        for y in (prop.left - 0.11, prop.left + 0.11):
            yield Rod((x, y, prop.low), (x, y, prop.low + SEAT - 0.035), 0.008)
    low, high = _back_of(prop, SEAT), _back_of(prop, CHAIR_BACK)
    across = (0.0, 0.11, 0.0) if prop.faces in ("forward", "back") else (0.11, 0.0, 0.0)
    for way in (-1.0, 1.0):
        yield Rod(add(low, times(across, way)), add(high, times(across, way)), 0.008)
    yield Rod(sub(high, across), add(high, across), 0.011)


def _wall(prop: Prop) -> Iterator[Box | Rod]:
    x = prop.at if prop.at >= 0 else prop.at - 0.04
    half = (prop.long or LONGS["wall"]) / 2
    yield Box((x, prop.left - half, 0.0), (x + 0.04, prop.left + half, prop.height or 1.12))


def _slab(prop: Prop) -> Iterator[Box | Rod]:
    """Table, bench, bed: a top on legs."""
    high, long = _height(prop), prop.long or LONGS[prop.what]
    yield _box(prop, high - 0.05, high, long, 0.20)
    for x in (prop.at - long / 2 + 0.02, prop.at + long / 2 - 0.02):
        for y in (prop.left - 0.17, prop.left + 0.17):
            yield Rod((x, y, 0.0), (x, y, high - 0.06), 0.010)


def _block(prop: Prop) -> Iterator[Box | Rod]:
    deep = 0.17 if prop.what == "step" else 0.06
    yield _box(prop, prop.low, _height(prop), prop.long or LONGS[prop.what], deep)


def _roll(prop: Prop) -> Iterator[Box | Rod]:
    """A rolled towel across, a cushion along, a ball."""
    half = (prop.height or ROLLS[prop.what]) / 2
    along = {"towel": (0.0, 0.12, 0.0), "cushion": (0.07, 0.0, 0.0), "ball": (0.0, 0.0, 0.0)}[prop.what]
    middle = (prop.at, prop.left, prop.low + half)
    yield Rod(sub(middle, along), add(middle, along), half)


def _rail(prop: Prop) -> Iterator[Box | Rod]:
    high, half = _height(prop), (prop.long or LONGS["rail"]) / 2
    yield Rod((prop.at, prop.left, prop.low), (prop.at, prop.left, high), 0.010)
    yield Rod((prop.at - half, prop.left, high), (prop.at + half, prop.left, high), 0.012)


def _door(prop: Prop) -> Iterator[Box | Rod]:
    yield _box(prop, 0.0, prop.height or 1.15, 0.05, 0.03)


_MADE: Mapping[str, Callable[[Prop], Iterator[Box | Rod]]] = {
    "mat": _mat,
    "chair": _chair,
    "wall": _wall,
    "table": _slab,
    "bench": _slab,
    "bed": _slab,
    "step": _block,
    "block": _block,
    "towel": _roll,
    "cushion": _roll,
    "ball": _roll,
    "rail": _rail,
    "door frame": _door,
}

_HALF_HELD = {"stick": 0.009, "band": 0.006, "strap": 0.005}


def _held(prop: Prop, body: Body) -> Iterator[Box | Rod]:
    """A strap, band, stick or weight, from hand to foot or hand to hand; a stick goes on beyond what holds it."""
    spots = [landmark(body, name) for name in prop.between]
    if prop.what == "weight":
        x, y, z = between(spots[0], spots[-1], 0.5)
        yield Rod((x, y, z - 0.035), (x, y, z + 0.035), 0.034, is_held=True)
        return
    if prop.what == "stick":
        along = times(unit(sub(spots[-1], spots[0])), (prop.long or 0.18) / 2)
        spots = [sub(spots[0], along), add(spots[-1], along)]
    for a, b in pairwise(spots):
        yield Rod(a, b, _HALF_HELD.get(prop.what, 0.005), is_held=True)


# --- where a hand touches them --------------------------------------------------------------------------------------

_UP = (0.0, 0.0, 1.0)


def touched(props: tuple[Prop, ...], words: str, shoulder: Point, *, held_off: float) -> Spot | None:
    """Where a hand under (or before) a shoulder touches a thing or the floor: "table at 0.4", "wall at 0.8"; None for
    words that name neither.

    `held_off` is how far the hand's own middle is from the surface. Raises ImpossiblePose when the thing is not there.
    """
    what, _, at = words.partition(" at ")
    x = float(at) if at else None
    if what == "floor":
        return Spot((x if x is not None else shoulder[0], shoulder[1], held_off), _UP)
    if what == "wall":
        wall = _prop(props, "wall", words)
        looks = -1.0 if wall.at >= shoulder[0] else 1.0
        return Spot((wall.at + looks * held_off, shoulder[1], x if x is not None else 0.8), (looks, 0.0, 0.0))
    if what == "chair back":
        chair = _prop(props, "chair", words)
        back = _back_of(chair, CHAIR_BACK)
        across = back[1] if chair.left or chair.faces in ("left", "right") else shoulder[1]
        return Spot((back[0], across, back[2] + 0.011), _UP)
    if what in ("seat", *HEIGHTS):
        prop = _prop(props, what.replace("seat", "chair"), words)
        return Spot((x if x is not None else prop.at, shoulder[1], _height(prop) + held_off), _UP)
    return None


def _height(prop: Prop) -> float:
    return prop.low + (prop.height if prop.height is not None else HEIGHTS[prop.what])


def _prop(props: tuple[Prop, ...], what: str, wanted: str) -> Prop:
    found = next((prop for prop in props if prop.what == what), None)
    if found is None:
        raise ImpossiblePose(f"a hand is to touch {wanted!r}, but there is no {what} among the props")
    return found
