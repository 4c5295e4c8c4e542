"""A programme as the rest of the program sees it: plain frozen values, every movement resolved."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from plans.movements import Movement, Muscle, library


class Sides(StrEnum):
    """Which sides an item is done on. `BOTH` is both at once, as in a squat."""

    BOTH = "both"
    EACH = "each"
    ALTERNATE = "alternate"
    LEFT = "left"
    RIGHT = "right"


@dataclass(frozen=True, slots=True)
class Span:
    """A number or a range of numbers; `about` and `up_to` are how a coach said it. Ends are included.

    `total` counts both sides together; otherwise a number is for each side.
    """

    low: int
    high: int
    about: bool = False
    up_to: bool = False
    total: bool = False


AS_FEELS_GOOD = Span(1, 10, about=True, up_to=True)
"""No number prescribed: as many as feel good. Counted as one to ten, this program's own choice."""


@dataclass(frozen=True, slots=True)
class Load:
    """A weight in kilograms, or in words when no number was written; `held` says where."""

    kilograms: float | None
    words: str | None
    held: str | None = None


@dataclass(frozen=True, slots=True)
class Dose:
    """What is to be done with a movement. Seconds unless said otherwise; None is not prescribed."""

    reps: Span | None = None
    hold: Span | None = None
    contract: int | None = None
    relax: int | None = None
    last_hold: int | None = None
    flow: Span | None = None
    steps: Span | None = None
    breaths: Span | None = None


@dataclass(frozen=True, slots=True)
class Item:
    """One movement of a block with its dose. `rest` is seconds between sets, `effort` 0-10 as stretch feeling."""

    movement: Movement
    dose: Dose
    sets: int = 1
    side: Sides = Sides.BOTH
    rest: int = 0
    effort: Span | None = None
    load: Load | None = None
    cue: str | None = None
    practice: bool = False
    """Practice that does not count as dose."""


@dataclass(frozen=True, slots=True)
class Block:
    """Items done one after the other, `rounds` times; `rest` is seconds between rounds."""

    items: tuple[Item, ...]
    rounds: int = 1
    rest: int = 0


@dataclass(frozen=True, slots=True)
class Session:
    """What is done on a session day."""

    blocks: tuple[Block, ...]
    focus: str | None = None
    warm_up: str | None = None


@dataclass(frozen=True, slots=True)
class MeasureTask:
    """A test on a day: which measure, how many trials, what to do before."""

    measure: str
    trials: int = 3
    warm_up: str | None = None
    photo: bool = False


@dataclass(frozen=True, slots=True)
class Day:
    """One entry of a programme, numbered from 1."""

    number: int
    title: str | None = None
    text: str | None = None
    session: Session | None = None
    measure: MeasureTask | None = None
    link: str | None = None

    @property
    def kind(self) -> str:
        """session, measure (a test alone) or rest."""
        if self.session is not None:
            return "session"
        return "measure" if self.measure is not None else "rest"


@dataclass(frozen=True, slots=True)
class RuleSettings:
    """A programme's own cut-offs on the 0-10 pain scale; they can only make the rules stricter."""

    pain_clean: int = 2
    pain_acceptable: int = 5
    pain_severe: int = 8


@dataclass(frozen=True, slots=True)
class Programme:
    """One version of a programme. `digest` is the SHA-256 of its file in hexadecimal."""

    title: str
    goal: str
    who_for: str
    setting: str
    led_by: str
    language: str
    muscles: tuple[Muscle, ...]
    days: tuple[Day, ...]
    digest: str
    cautions: tuple[str, ...] = ()
    equipment: tuple[str, ...] = ()
    measures: tuple[str, ...] = ()
    ages: Span | None = None
    """Years of age that it is written for; None is any adult."""
    pace: str = "own"
    movements: tuple[Movement, ...] = ()
    """The coach's own movements."""
    settings: RuleSettings = field(default_factory=RuleSettings)

    def day(self, number: int) -> Day:
        """The day of a number from 1. Raises LookupError for a number that the programme does not have."""
        if not 1 <= number <= len(self.days):
            raise LookupError(f"day {number}: {self.title} has days 1 to {len(self.days)}")
        return self.days[number - 1]

    def catalogue(self) -> Mapping[str, Movement]:
        """The library with the coach's own movements, which win where a key is the same."""
        return {**library(), **{movement.key: movement for movement in self.movements}}
