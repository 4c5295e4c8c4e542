"""A programme as the rest of the program sees it: plain frozen values, every movement resolved."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from enum import StrEnum

from plans.equipment import Thing
from plans.movements import Library, Movement, Muscle, Variation, library
from plans.rules import Settings

WEEK = 7
"""Days of a week when no training days are named."""
WARM_UP = 120
"""Seconds of a warm-up or a cool-down that is written without its time (own choice)."""


Say = Callable[[str], str]
"""Says a text in a reader's language."""


def as_written(text: str) -> str:
    """A text as it is."""
    return text


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


ONCE = Span(1, 1)


class Own(StrEnum):
    """A client's own weight as it was last time, or a little more or less than that."""

    SAME = "as last time"
    MORE = "a little more"
    LESS = "a little less"


@dataclass(frozen=True, slots=True)
class Load:
    """A weight in kilograms, or in words when no number was written; `held` says where.

    `own` is set when the words speak of the client's own weight of last time.
    """

    kilograms: float | None
    words: str | None
    held: str | None = None
    own: Own | None = None


class BuildUp(StrEnum):
    """What grows from repetition to repetition within a set."""

    RANGE = "range"
    SPEED = "speed"
    EFFORT = "effort"


@dataclass(frozen=True, slots=True)
class LastHold:
    """The last repetition, held for `seconds`, with equipment, effort and cue of its own."""

    seconds: int
    equipment: tuple[Thing, ...] = ()
    effort: Span | None = None
    cue: str | None = None


@dataclass(frozen=True, slots=True)
class Dose:
    """What is to be done with a movement. Seconds unless said otherwise; None is not prescribed."""

    reps: Span | None = None
    hold: Span | None = None
    holds: tuple[int, ...] = ()
    """Holds of the repetitions in turn, when they build up within the set; there is no `hold` and no `reps` then."""
    squeeze: int | None = None
    contract: int | None = None
    relax: int | None = None
    last_hold: LastHold | None = None
    flow: Span | None = None
    steps: Span | None = None
    breaths: Span | None = None


@dataclass(frozen=True, slots=True)
class Link:
    """The coach's own recording, and where in it to begin, as mm:ss or h:mm:ss."""

    address: str
    start: str | None = None


@dataclass(frozen=True, slots=True)
class Item:
    """One movement of a block with its dose. `rest` is seconds between sets, `effort` 0-10 as stretch feeling."""

    movement: Movement
    dose: Dose
    sets: Span = ONCE
    side: Sides = Sides.BOTH
    meanwhile: Movement | None = None
    """What the other side holds while this one works."""
    rest: int = 0
    effort: Span | None = None
    stop: str | None = None
    """Where to stop, such as "before the back rounds"."""
    build_up: BuildUp | None = None
    load: Load | None = None
    variation: Variation | None = None
    stance: str | None = None
    grip: str | None = None
    cue: str | None = None
    equipment: tuple[Thing, ...] = ()
    """What is needed here beside the movement's own equipment."""
    link: Link | None = None
    practice: bool = False
    """Practice that does not count as dose."""
    optional: bool = False
    """Only if the client likes."""

    @property
    def main(self) -> tuple[Muscle, ...]:
        """The muscle groups that it is for, in the variation that is asked for."""
        return (self.variation.main if self.variation else ()) or self.movement.main

    @property
    def things(self) -> tuple[Thing, ...]:
        """All equipment that it needs."""
        last = self.dose.last_hold.equipment if self.dose.last_hold else ()
        other = self.meanwhile.equipment if self.meanwhile else ()
        return tuple(dict.fromkeys((*self.movement.equipment, *other, *self.equipment, *last)))


@dataclass(frozen=True, slots=True)
class Block:
    """Items done one after the other, for `rounds`, or for as many rounds as fit into `time` seconds.

    `rest` is seconds between rounds, `change` seconds from one item or side to the next.
    """

    items: tuple[Item, ...]
    rounds: Span = ONCE
    time: Span | None = None
    rest: int = 0
    change: int | None = None
    title: str | None = None
    optional: bool = False


@dataclass(frozen=True, slots=True)
class Around:
    """A warm-up or cool-down in words, with the seconds it takes."""

    text: str
    seconds: int = WARM_UP


@dataclass(frozen=True, slots=True)
class Session:
    """What is done on a session day."""

    blocks: tuple[Block, ...]
    focus: str | None = None
    warm_up: Around | None = None
    cool_down: Around | None = None


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
    caution: str | None = None
    link: Link | None = None

    @property
    def kind(self) -> str:
        """session, measure (a test alone) or rest."""
        if self.session is not None:
            return "session"
        return "measure" if self.measure is not None else "rest"


@dataclass(frozen=True, slots=True)
class Training:
    """Sessions on so many days a week: on these weekdays (Monday is 0), or on days that the client chooses."""

    count: int
    weekdays: tuple[int, ...] = ()


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
    equipment: tuple[Thing, ...] = ()
    measures: tuple[str, ...] = ()
    ages: Span | None = None
    """Years of age that it is written for; None is any adult."""
    pace: str = "own"
    training: Training | None = None
    """None: a day for every date."""
    company: str | None = None
    """alone, with a partner or in a group."""
    supervised: str | None = None
    """Who watches, and when; None is not said."""
    motivation: str | None = None
    besides: str | None = None
    """What belongs to the programme and is no exercise."""
    movements: tuple[Movement, ...] = ()
    """The coach's own movements."""
    settings: Settings = field(default_factory=Settings)
    texts: Mapping[str, Mapping[str, str]] = field(default_factory=dict)
    """Its own texts in other languages: by language, each by the text as it is written."""
    say: Say = field(default=as_written, compare=False, repr=False)
    """How the library's texts and the names of things are said in the language that it was put into."""

    def __hash__(self) -> int:
        return hash(self.digest)

    @property
    def week(self) -> int:
        """How many of its days a client gets in a week."""
        return self.training.count if self.training else WEEK

    def day(self, number: int) -> Day:
        """The day of a number from 1. Raises LookupError for a number that the programme does not have."""
        if not 1 <= number <= len(self.days):
            raise LookupError(f"day {number}: {self.title} has days 1 to {len(self.days)}")
        return self.days[number - 1]

    def catalogue(self) -> Library:
        """The library with the coach's own movements, which win where a key is the same."""
        said = library() if self.say is as_written else library().said_by(self.say)
        return said.with_own(self.movements)
