"""Movements: what a coach can put into a day, each with how to do it, its muscles, and easier and harder neighbours."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from enum import StrEnum
from functools import cache
from typing import Annotated

from pydantic import BaseModel, ConfigDict, Field, StringConstraints
from ruamel.yaml import YAML

from plans.cautions import Caution
from plans.entries import entries
from plans.equipment import Equipment
from plans.figures.written import Drawn

Text = Annotated[str, StringConstraints(strip_whitespace=True, min_length=1, max_length=600)]
KEY, LINK = r"^[a-z][a-z0-9-]{0,59}$", r"^https://\S+$"
Key = Annotated[str, StringConstraints(pattern=KEY)]
Link = Annotated[str, StringConstraints(pattern=LINK, max_length=300)]


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
    FEET = "feet"


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

    model_config = ConfigDict(
        extra="forbid", frozen=True, populate_by_name=True, hide_input_in_errors=True, defer_build=True
    )


class Variation(Closed):
    """Another stance or grip: other muscles, not harder. `main` is what it is for when that differs."""

    name: Text
    how: Text
    main: tuple[Muscle, ...] = ()

    def said_by(self, say: Callable[[str], str]) -> Variation:
        """The variation with its texts as `say` has them."""
        return self.model_copy(update={"name": say(self.name), "how": say(self.how)})


class Described(Closed):
    """What is written about a movement, in the library or in a coach's own file."""

    name: Text
    how: Text
    cues: tuple[Text, ...] = ()
    faults: tuple[Text, ...] = Field((), description="Common faults.")
    main: tuple[Muscle, ...] = Field(min_length=1, description="Muscle groups that it is for.")
    also: tuple[Muscle, ...] = ()
    other_side: tuple[Muscle, ...] = Field(
        (), alias="other-side", description="Muscle groups that it is for on the side that does not lead."
    )
    kind: MovementKind
    sides: bool = Field(False, description="Whether it is done on one side at a time.")
    equipment: tuple[Equipment, ...] = ()
    easier: Key | None = None
    harder: Key | None = None
    variations: tuple[Variation, ...] = ()
    cautions: tuple[Caution, ...] = ()
    care: tuple[Text, ...] = Field((), description="What to watch in this movement, in your own words.")
    tempo: Text | None = None
    rep_seconds: Annotated[int, Field(strict=True, ge=1, le=60)] | None = Field(
        None, alias="rep-seconds", description="Seconds that one repetition takes; without it four."
    )
    link: Link | None = None
    figure: Drawn | None = Field(None, description="Its poses, drawn on the client's picture.")

    def keyed(self, key: str) -> Movement:
        """The movement under its key, its short name in programme files."""
        about = {name: getattr(self, name) for name in Described.model_fields}
        return Movement(key=key, standing=_STANDING.search(self.how) is not None, **about)


_STANDING = re.compile(r"\b(Stand|De pie|[Pp]onte de pie|Párate|Stell dich|Steh|Im Stand|Im Stehen)\b")
"""How a standing movement begins in words: "Stand side-on to a wall …"."""


class Movement(Described):
    """One movement with its key."""

    key: Key
    standing: bool = False
    """Whether it is done on one's feet, as it is written."""

    def said_by(self, say: Callable[[str], str]) -> Movement:
        """The movement with its texts as `say` has them."""
        texts: dict[str, object] = {"name": say(self.name), "how": say(self.how)}
        texts["tempo"] = self.tempo and say(self.tempo)
        texts["variations"] = tuple(one.said_by(say) for one in self.variations)
        texts |= {name: tuple(map(say, getattr(self, name))) for name in ("cues", "faults", "care")}
        return self.model_copy(update=texts)


_NAME = re.compile(r"^  name: (.+)$", re.MULTILINE)


class Library(Mapping[str, Movement]):
    """Movements by key, each read from its text when it is first asked for: a programme needs a few of many."""

    def __init__(self, texts: Mapping[str, str], written: dict[str, Movement] | None = None) -> None:
        self._texts = texts
        self._written = {} if written is None else written
        """As they stand in their texts; read once for every language."""
        self._said: dict[str, Movement] = {}
        self._own: dict[str, Movement] = {}
        self._say: Callable[[str], str] | None = None

    def said_by(self, say: Callable[[str], str]) -> Library:
        """The library in other words; a coach's own movements stay as they are."""
        other = Library(self._texts, self._written)
        other._own, other._say = self._own, say
        return other

    def with_own(self, movements: Iterable[Movement]) -> Library:
        """The library with a coach's own movements, which win where a key is the same."""
        wider = Library(self._texts, self._written)
        wider._said, wider._say = self._said, self._say
        wider._own = self._own | {movement.key: movement for movement in movements}
        return wider

    def names(self) -> dict[str, str]:
        """The name of each movement by its key; only the coach's own and those asked for before are read whole."""
        found = {key: line[1].strip("\"' ") for key, text in self._texts.items() if (line := _NAME.search(text))}
        if self._say is not None:
            found = {key: self._say(name) for key, name in found.items()}
        return found | {key: movement.name for key, movement in self._own.items()}

    def __getitem__(self, key: str) -> Movement:
        if key in self._own:
            return self._own[key]
        if self._say is None:
            return self._as_written(key)
        if key not in self._said:
            self._said[key] = self._as_written(key).said_by(self._say)
        return self._said[key]

    def _as_written(self, key: str) -> Movement:
        if key not in self._written:
            entries = YAML(typ="safe", pure=True).load(self._texts[key])
            self._written[key] = Described(**entries[key]).keyed(key)
        return self._written[key]

    def __iter__(self) -> Iterator[str]:
        return iter({**self._texts, **self._own})

    def __contains__(self, key: object) -> bool:
        return key in self._own or key in self._texts

    def __len__(self) -> int:
        return len(self._own.keys() | self._texts.keys())


@cache
def library() -> Library:
    """All movements of the library by key."""
    return Library(entries("movements"))


def harder_than(key: str, movements: Mapping[str, Movement]) -> Iterator[str]:
    """The movements up the chain from one, nearest first; a chain never comes round."""
    return _chain(key, movements, lambda movement: movement.harder)


def easier_than(key: str, movements: Mapping[str, Movement]) -> Iterator[str]:
    """The movements down the chain from one, nearest first."""
    return _chain(key, movements, lambda movement: movement.easier)


def _chain(key: str, movements: Mapping[str, Movement], after: Callable[[Movement], str | None]) -> Iterator[str]:
    seen = {key}
    following = after(movements[key]) if key in movements else None
    while following is not None and following in movements and following not in seen:
        yield following
        seen.add(following)
        following = after(movements[following])
