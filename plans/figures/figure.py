"""The solids of a posed body: trunk, head and limbs, each as it is seen, and the working part hatched on them."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from math import radians, sqrt, tan

from plans.figures.angles import SIDES
from plans.figures.body import KNUCKLES, SPINE, Body, Part, sign_of
from plans.figures.camera import Camera
from plans.figures.painting import Bar, Solid
from plans.figures.proportions import THICK, WIDE
from plans.figures.shapes import Shape, one
from plans.figures.space import (
    Point,
    add,
    between,
    dot,
    forward_of,
    inverse,
    left_of,
    length,
    sub,
    times,
    turned,
    up_of,
)
from plans.figures.working import hatches
from plans.movements import Muscle

TAPER = {"thigh": (0.052, 0.034), "shank": (0.036, 0.022), "upper arm": (0.030, 0.023), "forearm": (0.024, 0.017)}
"""Half of a limb's thickness where it begins and ends."""
CLOSE: Mapping[str, float] = {"head": 2.2, "trunk": 1.6, "forearm": 3.2, "forearms": 2.4, "legs": 1.6, "foot": 2.6}
"""How many times larger a part of the body is drawn alone."""

_TRUNK = ("pelvis", *SPINE)
_LIMBS = ("upper arm", "forearm", "hand", "thigh", "shank", "foot")
_JOINED = {"upper arm": "forearm", "forearm": "hand", "thigh": "shank", "shank": "foot"}
_NEARER = {"upper arm": 0.03, "forearm": 0.03, "hand": 0.045, "thigh": 0.02, "shank": 0.02, "foot": 0.02}
"""Of body height: what limbs count nearer than the trunk at the same depth, so that they are seen."""


def figure(
    body: Body, camera: Camera, working: Iterable[Muscle] = (), lead: str = "both", close: str | None = None
) -> list[Solid]:
    """The solids of a body, or of that part of it which is drawn alone; working muscles of the leading side hatched."""
    marks = hatches(body, camera, working, lead)
    shown = _shown(close, lead if lead in SIDES else "right") if close else None
    solids = [*_trunk(body, camera, marks, close), *_head(body, camera, marks)]
    for side in SIDES:
        if shown is None or any(name.startswith(side) for name in shown):
            solids += _limbs(body, camera, side, marks)
    return [solid for solid in solids if shown is None or solid.name in shown]


def _shown(close: str, side: str) -> set[str]:
    arms, legs = ({f"{one} {part}" for one in SIDES for part in parts} for parts in (_LIMBS[:3], _LIMBS[3:]))
    return {
        "head": {"trunk", "neck", "head"},
        "trunk": {"trunk", "neck", "head", *arms},
        "forearm": {f"{side} forearm", f"{side} hand"},
        "forearms": {f"{one} {part}" for one in SIDES for part in ("forearm", "hand")},
        "legs": {"trunk", *legs},
        "foot": {f"{side} shank", f"{side} foot"},
    }[close]


def _breadth(camera: Camera, part: Part, half_wide: float, half_deep: float) -> float:
    """Half of a flat part's thickness as it is seen, across its own length."""
    (ax, ay), (bx, by) = camera.seen(part.begin), camera.seen(part.end)
    dx, dy = bx - ax, by - ay
    far = sqrt(dx * dx + dy * dy)
    x, y = (-dy / far, -dx / far) if far > 1e-6 else (1.0, 0.0)
    across = add(times(camera.right, x), times(camera.up, y))
    wide, deep = dot(across, left_of(part.frame)), dot(across, forward_of(part.frame))
    return sqrt((half_wide * wide) ** 2 + (half_deep * deep) ** 2)


def _trunk(body: Body, camera: Camera, marks: Mapping[str, list[Shape]], close: str | None) -> Iterator[Solid]:
    """The trunk in one: hips, waist and chest, one rounded bar after the other, and a yoke to the shoulders."""
    slim = 0.8 if close == "head" else 1.0
    wide = [WIDE[name.split()[0]] * (0.86 if name == "lumbar 2" else slim) for name in _TRUNK]
    radii = [_breadth(camera, body[name], w, THICK[name.split()[0]]) for name, w in zip(_TRUNK, wide, strict=True)]
    radii[-1] *= 0.92
    ends = [*radii[1:], radii[-1] * 0.80]
    bars = [
        Bar.of(camera, body[name].begin, body[name].end, (begin, end), "trunk")
        for name, begin, end in zip(_TRUNK, radii, ends, strict=True)
    ]
    bars = {"head": bars[3:], "trunk": bars[1:], "legs": bars[:2]}.get(close or "", bars)
    if close != "legs":
        bars += _shoulders(body, camera, close)
    shapes = [one((bar.shape for bar in bars), kind) for kind in ("outline", "trunk")]
    whole = bars if close else [*bars[: len(_TRUNK) : 2], *bars[len(_TRUNK) :]]  # enough to know what is before it
    yield Solid("trunk", [*shapes, *marks.get("trunk", ()), *_blades(body, camera)], whole)


def _blades(body: Body, camera: Camera) -> Iterator[Shape]:
    """The shoulder blades, seen from behind: they go where the shoulders go."""
    top = body["thorax 3"]
    if dot(forward_of(top.frame), camera.near) > -0.35:
        return
    for side in SIDES:
        off = turned(inverse(top.frame), sub(body[f"{side} upper arm"].begin, top.end))
        left = sign_of(side) * (abs(off[1]) - 0.055 + min(0.0, off[0]) * 0.5)
        at = (times(up_of(top.frame), off[2] - along) for along in (0.012, 0.072))
        a, b = (add(top.at(1.0, forward=-0.055, left=left), down) for down in at)
        yield Bar.of(camera, a, b, (0.026, 0.012), "blade").shape


def _shoulders(body: Body, camera: Camera, close: str | None) -> Iterator[Bar]:
    """From the collar to both shoulders; of head and shoulders alone also where the arms begin."""
    collar = body["thorax 3"].at(0.85)
    for side in SIDES:
        arm = body[f"{side} upper arm"]
        yield Bar.of(camera, between(collar, arm.begin, 0.2), arm.begin, (0.036, 0.030), "trunk")
        if close == "head":
            yield Bar.of(camera, arm.begin, arm.at(0.45), (0.030, 0.028), "trunk")


def _head(body: Body, camera: Camera, marks: Mapping[str, list[Shape]]) -> Iterator[Solid]:
    neck = Bar.of(camera, body["neck"].begin, body["neck"].end, (0.031, 0.029), "near")
    yield Solid("neck", [neck.shape, *marks.get("neck", ())], [neck], nearer=0.01)
    head = body["head"]
    face = Bar.of(camera, head.at(0.34, forward=0.012), head.at(0.60, forward=0.006), (0.044, 0.052), "head")
    hair = Bar.of(camera, head.at(0.50, forward=-0.012), head.at(0.66, forward=-0.008), (0.052, 0.056), "hair")
    up, forward = up_of(head.frame), forward_of(head.frame)
    facing = dot(forward, camera.near)
    parts = [hair.shape, face.shape] if dot(up, camera.near) - facing < 0.55 else [face.shape, hair.shape]
    kind = "nose" if facing > 0.75 else "head"
    nose = Bar.of(camera, head.at(0.50, forward=0.045), head.at(0.43, forward=0.063), (0.013, 0.010), kind).shape
    parts.insert(2 if facing > 0.2 and parts[1] is face.shape else 0, nose)
    if parts[-1] is not hair.shape:
        parts += _eyes(head, camera)
    yield Solid("head", parts, [hair, face], nearer=0.02)


def _eyes(head: Part, camera: Camera) -> Iterator[Shape]:
    """Both eyes, as far as they are on the near side of the face."""
    for left in (-0.024, 0.024):
        at = head.at(0.60, forward=0.050, left=left)
        if dot(sub(at, head.at(0.60)), camera.near) > 0.017:
            yield Bar.of(camera, at, at, (0.006, 0.006), "eye").shape


_Made = tuple[Sequence[Shape], Sequence[Bar]]
"""What is drawn of a limb, and the bars of which it is made."""


def _limbs(body: Body, camera: Camera, side: str, marks: Mapping[str, list[Shape]]) -> Iterator[Solid]:
    kind = "far" if _is_far(body, camera, side) else "near"
    made: dict[str, _Made] = {}
    for name, halves in TAPER.items():
        bar = Bar.of(camera, body[f"{side} {name}"].begin, body[f"{side} {name}"].end, halves, kind)
        made[name] = [bar.shape], [bar]
    made["foot"], made["hand"] = _foot(body, camera, side, kind), _hand(body, camera, side, kind)
    joined: dict[str, dict[str, int]] = {name: {} for name in _LIMBS}
    for upper, lower in _JOINED.items():
        if lower != "foot" or not _is_short(made["foot"][1][1], camera):  # else the line shows that there is a foot
            joined[upper][f"{side} {lower}"], joined[lower][f"{side} {upper}"] = 1, 0
    for name in _LIMBS:
        shapes, bars = made[name]
        whole = f"{side} {name}"
        yield Solid(whole, [*shapes, *marks.get(whole, ())], bars, nearer=_NEARER[name], joined=joined[name])


def _is_far(body: Body, camera: Camera, side: str) -> bool:
    other = "left" if side == "right" else "right"
    return camera.depth(body[f"{side} thigh"].begin) < camera.depth(body[f"{other} thigh"].begin) - 0.04


def _foot(body: Body, camera: Camera, side: str, kind: str) -> _Made:
    """The instep from the ankle to the ball, and the sole."""
    foot, ankle = body[f"{side} foot"], body[f"{side} shank"].end
    up, forward = up_of(foot.frame), forward_of(foot.frame)
    ball, toes = add(foot.at(0.66), times(up, 0.018)), add(foot.end, times(up, 0.013))
    heel = add(foot.begin, add(times(up, 0.020), times(forward, 0.018)))
    bars = [
        Bar.of(camera, ankle, ball, (0.022, 0.017), kind),
        Bar.of(camera, heel, toes, (0.019, 0.012), kind),
    ]
    shapes = [one((bar.shape for bar in bars), "outline"), one((bar.shape for bar in bars), f"{kind} bare")]
    return shapes, bars


def _is_short(bar: Bar, camera: Camera) -> bool:
    """Whether a bar points to the eye or away from it."""
    return abs(dot(sub(bar.end, bar.begin), camera.near)) > 0.8 * length(sub(bar.end, bar.begin))


# --- hands ----------------------------------------------------------------------------------------------------------


def _palm(hand: Part) -> Part:
    return Part(hand.begin, hand.at(KNUCKLES), hand.frame)


def _flat(part: Part, camera: Camera, wide: tuple[float, float], deep: float, kind: str) -> Bar:
    """A flat part as it is seen: half of its breadth at its ends, and half of its thickness."""
    halves = _breadth(camera, part, wide[0], deep), _breadth(camera, part, wide[1], deep)
    return Bar.of(camera, part.begin, part.end, halves, kind)


def _hand(body: Body, camera: Camera, side: str, kind: str) -> _Made:
    """Palm, fingers and thumb; when they are large enough, each finger by itself."""
    hand, thumb = body[f"{side} hand"], body[f"{side} thumb"]
    palm = _flat(_palm(hand), camera, (0.022, 0.020), 0.012, kind)
    bars = [palm, *_fingers(body, camera, side, kind)]
    bars.append(Bar.of(camera, thumb.begin, thumb.end, (0.010, 0.007), kind))
    bars.sort(key=lambda bar: bar.shape.depth)
    light = dot(forward_of(hand.frame), camera.near)
    shapes = [one((bar.shape for bar in bars), "outline")] if camera.zoom == 1 else []
    for bar in bars:
        shapes.append(bar.shape if camera.zoom > 1 else bar.shape._replace(kind=f"{kind} bare"))
        if bar is palm and light > 0.35:
            a, b = hand.at(0.18), hand.at(0.42)
            shapes.append(Bar.of(camera, a, b, (0.014 * light, 0.016 * light), "palm").shape)
    return shapes, [palm, *(bar for bar in bars if bar is not palm)] if camera.zoom > 1 else [palm]


def _fingers(body: Body, camera: Camera, side: str, kind: str) -> Iterator[Bar]:
    parts = [body[f"{side} {name}"] for name in ("fingers", "tips")]
    if camera.zoom == 1 and not any(part.fan for part in parts):
        for part in parts:
            yield _flat(part, camera, (0.018, 0.015), 0.009, kind)
        return
    for finger in (-1.5, -0.5, 0.5, 1.5):
        along = 0.0
        for part in parts:
            far = length(sub(part.end, part.begin))
            a = add(part.begin, _aside(part, finger, along))
            b = add(part.end, _aside(part, finger, along + far))
            yield Bar.of(camera, a, b, (0.0065, 0.0055), kind)
            along += far


def _aside(part: Part, finger: float, along: float) -> Point:
    """How far a finger is beside the middle of all, so far from its root; fanned fingers go apart."""
    return times(left_of(part.frame), finger * (0.0105 + tan(radians(part.fan / 3)) * along))
