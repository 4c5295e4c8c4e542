"""A programme file as it is written: the shapes that are checked, field by field, before anything is built."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import BeforeValidator, Discriminator, Field, Tag, WithJsonSchema, model_validator

from plans.changing import MOMENT, Changing, Moment
from plans.equipment import Equipment
from plans.measures import MEASURES
from plans.movements import Closed, Described, Key, Link, Muscle, Text
from plans.programme import ONCE, WARM_UP, BuildUp, Sides, Span
from plans.rules import Settings
from plans.spoken import Ages, AnySpan, Effort, Rest, Seconds, Short, StartTime, TrainingDays, Turns, Weight

MOST_DAYS = 400
LANGUAGE, AS_DAYS = r"^[a-z]{2}$", r"^\d{1,3}\s*[-–]\s*\d{1,3}$"


def _moment(value: Any) -> Moment:
    return value if isinstance(value, Moment) else Moment.read(str(value))


def _mapping_or_plain(value: Any) -> str:
    return "plain" if isinstance(value, str | int | float | None) else "mapping"


def _list_or_plain(value: Any) -> str:
    return "list" if isinstance(value, list | tuple) else "plain"


def _no_rest() -> Changing[int]:
    return Changing.always(0)


def _once() -> Changing[Span]:
    return Changing.always(ONCE)


EITHER = Discriminator(_mapping_or_plain)
When = Annotated[Moment, BeforeValidator(_moment), WithJsonSchema({"type": "string", "pattern": MOMENT})]
DayNumber = Annotated[int, Field(strict=True, ge=1, le=MOST_DAYS)]
LanguageTag = Annotated[str, Field(pattern=LANGUAGE)]
Trials = Annotated[int, Field(strict=True, ge=1, le=10)]


class WrittenLastHold(Closed):
    """The last repetition, held, with equipment, effort and cue of its own."""

    seconds: Short
    equipment: tuple[Equipment, ...] = ()
    effort: Effort | None = None
    cue: Text | None = None


class WrittenMeanwhile(Closed):
    """What the other side holds while this one works."""

    movement: Key


class WrittenLink(Closed):
    """The coach's own recording and where in it to begin."""

    to: Link
    start: StartTime | None = Field(None, description="Minutes and seconds, such as 12:30.")


class WrittenAround(Closed):
    """A warm-up or cool-down with its time."""

    text: Text
    time: Seconds = Field(default_factory=lambda: Span(WARM_UP, WARM_UP), description='Such as "3 min".')


LastHold = Annotated[Annotated[Short, Tag("plain")] | Annotated[WrittenLastHold, Tag("mapping")], EITHER]
Meanwhile = Annotated[Annotated[Literal["held"], Tag("plain")] | Annotated[WrittenMeanwhile, Tag("mapping")], EITHER]
Recording = Annotated[Annotated[Link, Tag("plain")] | Annotated[WrittenLink, Tag("mapping")], EITHER]
AroundIt = Annotated[Annotated[Text, Tag("plain")] | Annotated[WrittenAround, Tag("mapping")], EITHER]
Hold = Annotated[
    Annotated[Seconds, Tag("plain")] | Annotated[tuple[Short, ...], Field(min_length=2, max_length=20), Tag("list")],
    Discriminator(_list_or_plain),
]


class Timed(Closed):
    """What may stand in a session only from, or until, some week or day of the programme."""

    from_: When | None = Field(None, alias="from", description='From when on it is there: "week 3" or "day 15".')
    until: When | None = Field(None, description='Until when it is there, that week or day included: "week 2".')
    optional: bool = Field(False, strict=True, description="Only if the client likes.")

    def is_there(self, day: int, week: int) -> bool:
        """Whether it belongs to a day, when a week has so many days."""
        begun = self.from_ is None or self.from_.first(week) <= day
        return begun and (self.until is None or day <= self.until.last(week))


class WrittenItem(Timed):
    """One movement with its dose."""

    movement: Changing[Key]
    variation: Changing[Text] | None = Field(None, description="The name of one of the movement's variations.")
    stance: Changing[Text] | None = Field(None, description='How to stand or sit here, such as "feet closer".')
    grip: Changing[Text] | None = Field(None, description='How to hold on here, such as "hands wider".')
    sets: Changing[Turns] = Field(default_factory=_once)
    reps: Changing[AnySpan] | None = Field(
        None, description='A number, "8-10", "about 8", "up to 12", "16 in total" or "as feels good".'
    )
    hold: Changing[Hold] | None = Field(
        None, description="Seconds of stretch in every repetition; [10, 20, 30] for repetitions that build up."
    )
    squeeze: Changing[Short] | None = Field(None, description="Seconds of squeezing in every repetition.")
    contract: Changing[Short] | None = Field(None, description="Seconds of tension before each relaxing stretch.")
    relax: Changing[Short] | None = Field(None, description="Seconds of stretch after each tension.")
    last_hold: Changing[LastHold] | None = Field(
        None, alias="last-hold", description="Seconds held on the last repetition, or these with what it needs."
    )
    flow: Changing[Seconds] | None = Field(None, description="Seconds of moving without counting.")
    steps: Changing[AnySpan] | None = None
    breaths: Changing[AnySpan] | None = Field(None, description="Slow breaths.")
    side: Sides = Sides.BOTH
    other_side: Meanwhile | None = Field(
        None, alias="other-side", description='"held" while this side works, or the movement that it holds.'
    )
    build_up: BuildUp | None = Field(
        None, alias="build-up", description="What grows a little from repetition to repetition."
    )
    rest: Changing[Rest] = Field(default_factory=_no_rest, description="Seconds between sets.")
    effort: Changing[Effort] | None = Field(None, description="Stretch feeling from 1 to 10, such as 5-6.")
    stop: Changing[Text] | None = Field(None, description='Where to stop, such as "before the back rounds".')
    load: Changing[Weight] | None = None
    held: Text | None = Field(None, description="Where the load is held.")
    cue: Changing[Text] | None = None
    equipment: tuple[Equipment, ...] = Field((), description="What is needed here beside the movement's own.")
    link: Recording | None = None
    practice: bool = Field(False, strict=True, description="Practice that does not count as dose.")

    @model_validator(mode="after")
    def _has_a_dose(self) -> WrittenItem:
        if not any((self.reps, self.hold, self.contract, self.flow, self.steps, self.breaths)):
            raise ValueError("no dose: one of reps, hold, contract, flow, steps or breaths is needed")
        if (self.contract is None) != (self.relax is None):
            raise ValueError("contract and relax go together")
        if self.last_hold is not None and self.reps is None:
            raise ValueError("last-hold needs reps: it is held on the last of them")
        if self.squeeze is not None and self.reps is None:
            raise ValueError("squeeze needs reps: it is held in every one of them")
        return self

    @model_validator(mode="after")
    def _hangs_together(self) -> WrittenItem:
        listed = self.hold is not None and any(isinstance(value, tuple) for _words, value in self.hold.values())
        if listed and self.reps is not None:
            raise ValueError("a list of holds has one for each repetition: leave out reps")
        both = self.side in (Sides.EACH, Sides.ALTERNATE)
        counted = [
            value for field in (self.reps, self.steps, self.breaths) if field for _words, value in field.values()
        ]
        if any(span.total for span in counted) and not both:
            raise ValueError("in total counts both sides together: side must be each or alternate")
        if self.other_side is not None and self.side is Sides.BOTH:
            raise ValueError("other-side needs a side that works: side must be each, alternate, left or right")
        if self.held is not None and self.load is None:
            raise ValueError("held says where a load is held: load is missing")
        return self


class WrittenBlock(Timed):
    """Items done one after the other, and again for each round."""

    title: Text | None = None
    rounds: Changing[Turns] | None = Field(None, description="How often; 2-3 when the last round is for who likes.")
    time: Changing[Seconds] | None = Field(None, description="As many rounds as fit into this time.")
    rest: Changing[Rest] = Field(default_factory=_no_rest, description="Seconds between rounds.")
    change: Rest | None = Field(None, description="Seconds from one item or side to the next; 15 when not said.")
    items: tuple[WrittenItem, ...] = Field(min_length=1, max_length=30)

    @model_validator(mode="after")
    def _is_counted_once(self) -> WrittenBlock:
        if self.rounds is not None and self.time is not None:
            raise ValueError("rounds and time cannot both say how often")
        return self


class WrittenSession(Closed):
    """What is done on a session day."""

    focus: Text | None = None
    warm_up: AroundIt | None = Field(None, alias="warm-up")
    blocks: tuple[WrittenBlock, ...] = Field(min_length=1, max_length=20)
    cool_down: AroundIt | None = Field(None, alias="cool-down")


Session = Annotated[Annotated[Key, Tag("plain")] | Annotated[WrittenSession, Tag("mapping")], EITHER]


class WrittenMeasure(Closed):
    """A test."""

    which: Literal[
        "fingertip-to-floor",
        "sit-and-reach",
        "chair-sit-and-reach",
        "straight-leg-raise",
        "active-knee-extension",
        "knee-to-wall",
        "back-scratch",
    ]
    trials: Trials = 3
    warm_up: Text | None = Field(None, alias="warm-up")
    photo: bool = Field(False, strict=True, description="Whether a photo is invited.")


class WrittenDay(Closed):
    """One day, or several in a row: a session, a measure or both, the session of another day, or rest."""

    title: Text | None = None
    text: Text | None = None
    session: Session | None = Field(None, description="A session, or the name of one of the sessions of this file.")
    as_day: DayNumber | None = Field(None, alias="as-day", description="The session of an earlier day again.")
    as_days: Annotated[str, Field(pattern=AS_DAYS)] | None = Field(
        None, alias="as-days", description="Several earlier days again, such as 1-7, without their measures."
    )
    measure: WrittenMeasure | None = None
    rest: Text | None = Field(None, description="A rest day's text, a gentle idea.")
    times: Annotated[int, Field(strict=True, ge=1, le=MOST_DAYS)] = Field(1, description="So many days in a row.")
    caution: Text | None = Field(None, description="What to take care of on this day.")
    link: Recording | None = Field(None, description="Your own recording of this day.")

    @model_validator(mode="after")
    def _is_one_thing(self) -> WrittenDay:
        kinds = {"session": self.session, "as-day": self.as_day, "as-days": self.as_days, "rest": self.rest}
        given = [name for name, value in kinds.items() if value is not None]
        if len(given) > 1:
            raise ValueError(f"{' and '.join(given)} cannot be the same day")
        if not given and self.measure is None:
            raise ValueError("nothing to do: one of session, as-day, as-days, measure or rest is needed")
        if self.measure is not None and (self.rest is not None or self.as_days is not None):
            raise ValueError(f"{given[0]} and measure cannot be the same day")
        if self.measure is not None and self.times > 1:
            raise ValueError("a measure is taken on one day: leave out times")
        return self


class WrittenSettings(Closed):
    """Cut-offs on the 0-10 pain scale; they can only be made stricter than the defaults."""

    pain_clean: Annotated[int, Field(strict=True, ge=0, le=2)] = Field(2, alias="pain-clean")
    pain_acceptable: Annotated[int, Field(strict=True, ge=2, le=5)] = Field(5, alias="pain-acceptable")
    pain_severe: Annotated[int, Field(strict=True, ge=4, le=8)] = Field(8, alias="pain-severe")

    @model_validator(mode="after")
    def _keeps_the_hard_bounds(self) -> WrittenSettings:
        self.plain()
        return self

    def plain(self) -> Settings:
        """The same for the rules. Raises ValueError for what would loosen them."""
        return Settings(clean=self.pain_clean, acceptable=self.pain_acceptable, severe=self.pain_severe)


class WrittenProgramme(Closed):
    """A whole programme file."""

    title: Text
    goal: Text
    who_for: Text = Field(alias="for", description="Who the programme is for.")
    ages: Ages | None = Field(None, description="Ages in years that it is written for, 40-70 or 65+.")
    setting: Text = Field(description="Where it is done.")
    company: Literal["alone", "with a partner", "in a group"] | None = Field(None, description="In whose company.")
    supervised: Text | None = Field(None, description='Who watches, and when; "no" when nobody does.')
    led_by: Text = Field(alias="led-by", description="Who leads it, and with what training.")
    motivation: Text | None = Field(None, description="What helps to keep it up.")
    besides: Text | None = Field(None, description="What belongs to it and is no exercise.")
    language: LanguageTag = "en"
    cautions: tuple[Text, ...] = ()
    muscles: tuple[Muscle, ...] = Field(min_length=1, description="The muscle groups it is meant to lengthen.")
    equipment: tuple[Equipment, ...] = Field((), description="What a client needs, each with what will do instead.")
    measures: tuple[str, ...] = Field((), description="The tests that its days take.")
    training_days: TrainingDays | None = Field(None, alias="training-days", description="On which days of a week.")
    pace: Literal["own", "together"] = Field(
        "own", description="own: days follow the client. together: dates follow the group."
    )
    settings: WrittenSettings = WrittenSettings()
    movements: dict[Key, Described] = Field(default_factory=dict, description="The coach's own movements.")
    sessions: dict[Key, WrittenSession] = Field(
        default_factory=dict,
        description="Sessions that days name; what changes in them over the weeks is written here.",
    )
    days: tuple[WrittenDay, ...] = Field(min_length=1, max_length=MOST_DAYS)
    texts: dict[LanguageTag, dict[Text, Text]] = Field(
        default_factory=dict, description="This file's own texts in other languages, each under the text itself."
    )

    @model_validator(mode="after")
    def _a_group_has_its_days(self) -> WrittenProgramme:
        if self.pace == "together" and self.training_days is not None and not self.training_days.weekdays:
            raise ValueError("pace together needs training-days that are named, such as [monday, thursday]")
        return self

    @model_validator(mode="after")
    def _measures_are_known(self) -> WrittenProgramme:
        unknown = [name for name in self.measures if name not in MEASURES]
        if unknown:
            raise ValueError(f"measures: {unknown[0]!r} is not known; there are {', '.join(MEASURES)}")
        return self
