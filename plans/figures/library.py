"""The poses of the library's movements, and the figure of a movement: its poses side by side, in one scale."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Protocol

from pydantic import TypeAdapter, ValidationError
from ruamel.yaml import YAML

from plans.entries import entries
from plans.figures.body import SIDES, Body, ImpossiblePose, centre_of_mass
from plans.figures.drawing import Camera, Shape, bounds_of, figure, thing
from plans.figures.posing import posed
from plans.figures.written import Drawn
from plans.movements import Muscle


class Figures(Mapping[str, Drawn]):
    """What is written of every movement's figure, by key, each read from its text when it is first asked for."""

    def __init__(self, texts: Mapping[str, str]) -> None:
        self._texts = texts
        self._read: dict[str, Drawn] = {}

    def __getitem__(self, key: str) -> Drawn:
        if key not in self._read:
            self._read |= read(self._texts[key], name="the library's poses")
        return self._read[key]

    def __iter__(self) -> Iterator[str]:
        return iter(self._texts)

    def __contains__(self, key: object) -> bool:
        return key in self._texts

    def __len__(self) -> int:
        return len(self._texts)


@cache
def drawn() -> Figures:
    """The figures of the library's movements."""
    return Figures(entries("poses"))


def read(text: str, *, name: str = "poses") -> dict[str, Drawn]:
    """A text of poses. Raises ImpossiblePose, naming movement, field and what was found."""
    written = YAML(typ="safe", pure=True).load(text) or {}
    found = {}
    for key, value in written.items():
        try:
            found[key] = TypeAdapter(Drawn).validate_python(value)
        except ValidationError as errors:
            first = errors.errors()[0]
            where = ".".join(str(part) for part in first["loc"])
            raise ImpossiblePose(f"{name}, {key}, {where}: {first['msg']}, found {first['input']!r}") from None
    return found


@dataclass(frozen=True, slots=True)
class Frame:
    """One pose as shapes, with what is said under it."""

    shapes: tuple[Shape, ...]
    say: str | None
    body: Body


class Worked(Protocol):
    """What a figure needs to know of a movement: whether it has sides, and what it is for."""

    @property
    def sides(self) -> bool: ...

    @property
    def main(self) -> tuple[Muscle, ...]: ...


def frames(key: str, how: Drawn, movement: Worked) -> list[Frame]:
    """The poses of a movement as shapes. Raises ImpossiblePose, naming movement and pose."""
    found = bodies(key, how)
    return [
        Frame(shapes_of(body, how, movement, working=number == len(found)), pose.say, body)
        for number, (pose, body) in enumerate(zip(how.poses, found, strict=True), 1)
    ]


def bodies(key: str, how: Drawn) -> list[Body]:
    """The bodies of a movement's poses. Raises ImpossiblePose, naming movement and pose."""
    found = []
    for number, pose in enumerate(how.poses, 1):
        try:
            body = posed(pose, how.props).body
            if how.free:
                _check_balance(body)
        except ImpossiblePose as error:
            raise ImpossiblePose(f"{key}, pose {number}: {error}") from None
        found.append(body)
    return found


def shapes_of(body: Body, how: Drawn, movement: Worked, *, working: bool) -> tuple[Shape, ...]:
    """A body with its things as it is seen, the farthest first; when it is working, the working part is hatched."""
    camera = Camera.of(how.view)
    lead = how.lead or ("right" if movement.sides else "both")
    muscles: tuple[Muscle, ...] = movement.main if working else ()
    things = [shape for prop in how.props for shape in thing(prop, body, camera)]
    return tuple(sorted([*things, *figure(body, camera, muscles, lead)], key=lambda shape: shape.depth))


ON_FEET = 0.04
"""Of body height: how far the centre of mass may be beyond the feet."""


def _check_balance(body: Body) -> None:
    both = [body[f"{side} foot"] for side in SIDES]
    feet = [foot for foot in both if min(foot.begin[2], foot.end[2]) < 0.03]
    if not feet:
        return
    ends = [point[0] for foot in feet for point in (foot.begin, foot.end)]
    at = centre_of_mass(body)[0]
    if not min(ends) - ON_FEET <= at <= max(ends) + ON_FEET:
        raise ImpossiblePose(
            f"falls over: the centre of mass is at {at:.2f}, the feet reach from {min(ends):.2f} to {max(ends):.2f}"
        )


def bounds(found: list[Frame]) -> tuple[float, float, float, float]:
    """The bounds of all poses together, so that they share one frame."""
    return bounds_of(shape for frame in found for shape in frame.shapes)
