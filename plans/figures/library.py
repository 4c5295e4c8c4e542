"""The poses of the library's movements, and the figure of a movement: its poses side by side, in one scale."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Protocol

from pydantic import TypeAdapter, ValidationError
from ruamel.yaml import YAML

from plans.entries import entries
from plans.figures.body import Body, ImpossiblePose
from plans.figures.drawing import Shape, bounds_of, picture
from plans.figures.ground import check_balance
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


@dataclass(frozen=True, slots=True)
class _Works:
    """What a figure needs to know of a movement, as values."""

    sides: bool
    main: tuple[Muscle, ...]


def frames(key: str, how: Drawn, movement: Worked) -> list[Frame]:
    """The poses of a movement as shapes. Raises ImpossiblePose, naming movement and pose."""
    if how is drawn().get(key):
        return list(_of_library(key, _Works(movement.sides, movement.main)))
    return _frames(key, how, movement)


@lru_cache(maxsize=256)
def _of_library(key: str, works: _Works) -> tuple[Frame, ...]:
    """A movement of the library looks the same each time: a morning draws the same few for many people."""
    return tuple(_frames(key, drawn()[key], works))


def _frames(key: str, how: Drawn, movement: Worked) -> list[Frame]:
    found = bodies(key, how)
    seen = _seen(found, how, movement)
    return seen if how.close is None else _seen(found, how, movement, lower=-bounds(seen)[3])


def _seen(found: list[Body], how: Drawn, movement: Worked, *, lower: float = 0.0) -> list[Frame]:
    """The frames of some bodies. What is drawn alone and larger is let down to the floor line in a second round."""
    return [
        Frame(shapes_of(body, how, movement, working=body is found[-1], lower=lower), pose.say, body)
        for pose, body in zip(how.poses, found, strict=True)
    ]


def bodies(key: str, how: Drawn) -> list[Body]:
    """The bodies of a movement's poses. Raises ImpossiblePose, naming movement and pose."""
    found = []
    for number, pose in enumerate(how.poses, 1):
        try:
            body = posed(pose, how.props).body
            if how.free:
                check_balance(body)
        except ImpossiblePose as error:
            raise ImpossiblePose(f"{key}, pose {number}: {error}") from None
        found.append(body)
    return found


def shapes_of(body: Body, how: Drawn, movement: Worked, *, working: bool, lower: float = 0.0) -> tuple[Shape, ...]:
    """A body with its things as it is seen, the farthest first; when it is working, the working part is hatched."""
    lead = how.lead or ("right" if movement.sides else "both")
    return tuple(picture(body, how, movement.main if working else (), lead, lower=lower))


def bounds(found: list[Frame]) -> tuple[float, float, float, float]:
    """The bounds of all poses together, so that they share one frame."""
    return bounds_of(shape for frame in found for shape in frame.shapes)
