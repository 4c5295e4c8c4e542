"""Movements: what a coach can put into a day, each with how to do it, its muscles, and easier and harder neighbours."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from enum import StrEnum
from functools import cache
from importlib.resources import files
from types import MappingProxyType
from typing import Annotated, Any

from pydantic import BaseModel, ConfigDict, Field, StringConstraints
from ruamel.yaml import YAML

Text = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=600)]
Key = Annotated[str, StringConstraints(pattern=r"^[a-z][a-z0-9-]{1,59}$")]


class Muscle(StrEnum):
    """Muscle groups as coaches name them."""

    HIP_FLEXORS = "hip-flexors"
    HIP_ROTATORS = "hip-rotators"
    GLUTES = "glutes"
    HAMSTRINGS = "hamstrings"
    QUADRICEPS = "quadriceps"
    ADDUCTORS = "adductors"
    CALVES = "calves"
    ANKLES = "ankles"
    LOWER_BACK = "lower-back"
    UPPER_BACK = "upper-back"
    SIDE_TRUNK = "side-trunk"
    ABDOMEN = "abdomen"
    CHEST = "chest"
    SHOULDERS = "shoulders"
    LATS = "lats"
    NECK = "neck"
    FOREARMS = "forearms"


class MovementKind(StrEnum):
    """How a movement works: the trade's own kinds."""

    STATIC = "static"
    DYNAMIC = "dynamic"
    ACTIVE = "active"
    CONTRACT_RELAX = "contract-relax"
    LOADED = "loaded"
    CONTROL = "control"


class Closed(BaseModel):
    """A model that refuses words it does not know, and does not change once read."""

    model_config = ConfigDict(extra="forbid", frozen=True, populate_by_name=True, hide_input_in_errors=True)


class Variation(Closed):
    """Another stance or grip: other muscles, not harder."""

    name: Text
    how: Text


class Described(Closed):
    """What is written about a movement, in the library or in a coach's own file."""

    name: Text
    how: Text
    cues: tuple[Text, ...] = ()
    faults: tuple[Text, ...] = Field((), description="Common faults.")
    main: tuple[Muscle, ...] = Field(min_length=1, description="Muscle groups that it is for.")
    also: tuple[Muscle, ...] = ()
    kind: MovementKind
    sides: bool = Field(False, description="Whether it is done on one side at a time.")
    equipment: tuple[Text, ...] = ()
    easier: Key | None = None
    harder: Key | None = None
    variations: tuple[Variation, ...] = ()
    cautions: tuple[Text, ...] = ()
    tempo: Text | None = None

    def keyed(self, key: str) -> Movement:
        """The movement under its key, its short name in programme files."""
        return Movement(key=key, **{name: getattr(self, name) for name in Described.model_fields})


class Movement(Described):
    """One movement with its key."""

    key: Key


@cache
def library() -> Mapping[str, Movement]:
    """All movements of the library by key, read once on first use."""
    return MappingProxyType(dict(_read()))


def _read() -> Iterator[tuple[str, Movement]]:
    folder = files("plans.library").joinpath("movements")
    reader = YAML(typ="safe", pure=True)
    for file in sorted(folder.iterdir(), key=lambda entry: entry.name):
        if file.name.endswith(".yaml"):
            entries: dict[str, dict[str, Any]] = reader.load(file.read_text(encoding="utf-8"))
            for key, entry in entries.items():
                yield key, Movement(key=key, **entry)


def harder_than(key: str, movements: Mapping[str, Movement]) -> Iterator[str]:
    """The movements up the chain from one, nearest first; a chain never comes round."""
    seen = {key}
    following = movements[key].harder if key in movements else None
    while following is not None and following in movements and following not in seen:
        yield following
        seen.add(following)
        following = movements[following].harder
