"""A programme file as it is written: the shapes that are checked, field by field, before anything is built."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Annotated, Any, Literal

from pydantic import BeforeValidator, Field, model_validator

from plans.measures import MEASURES
from plans.movements import Closed, Described, Key, Muscle, Text
from plans.programme import AS_FEELS_GOOD, Load, RuleSettings, Sides, Span
from plans.rules import Settings

KILOGRAMS_A_POUND = 0.45359237
"""International avoirdupois pound, exact."""
OLDEST = 99
"""Years; the open end of an age band such as 65+."""

_SPAN = re.compile(r"^(?:(about|up to)\s+)?(\d{1,4})(?:\s*[-–]\s*(\d{1,4}))?(\s+in\s+total)?$")
_TIME = re.compile(r"^(\d{1,4})(?:\s*[-–]\s*(\d{1,4}))?\s*(s|sec|seconds|min|minutes)?$")
_AGES = re.compile(r"^(\d{2})\s*(?:[-–]\s*(\d{2})|\+)$")
_WEIGHT = re.compile(r"^(\d{1,3}(?:\.\d{1,2})?)\s*(kg|lb)$")


def _span(value: Any) -> Any:
    """8, "8-10", "about 8", "up to 12", "as feels good"; "16 in total" counts both sides together."""
    if isinstance(value, Span | bool):
        return value
    text = str(value).strip().lower()
    if text == "as feels good":
        return AS_FEELS_GOOD
    found = _SPAN.match(text)
    if found is None:
        raise ValueError('a number, a range like 8-10, "about 8", "up to 12", "16 in total" or "as feels good"')
    how, low, high = found[1], int(found[2]), int(found[3] or found[2])
    span = _ordered(1 if how == "up to" else low, high, about=how == "about", up_to=how == "up to")
    return replace(span, total=found[4] is not None)


def _seconds(value: Any) -> Any:
    """30, "20-30", "30 s" or "2 min", in seconds."""
    if isinstance(value, Span | bool):
        return value
    found = _TIME.match(str(value).strip().lower())
    if found is None:
        raise ValueError('seconds like 30, a range like 20-30, or minutes like "2 min"')
    unit = 60 if (found[3] or "").startswith("min") else 1
    return _ordered(int(found[1]) * unit, int(found[2] or found[1]) * unit)


def _ordered(low: int, high: int, *, about: bool = False, up_to: bool = False) -> Span:
    if not 1 <= low <= high:
        raise ValueError(f"{low} to {high}: a number of at least 1, the smaller one first")
    return Span(low, high, about, up_to)


def _effort(value: Any) -> Any:
    if isinstance(value, Span):
        return value
    span = _span(value)
    if not isinstance(span, Span) or span.high > 10 or span.about:
        raise ValueError("1 to 10 of 10, or a range like 5-6")
    return span


def _ages(value: Any) -> Any:
    """40-70 or 65+, in years."""
    if isinstance(value, Span | bool):
        return value
    found = _AGES.match(str(value).strip())
    if found is None:
        raise ValueError('ages in years, "40-70" or "65+"')
    return _ordered(int(found[1]), int(found[2] or OLDEST))


def _load(value: Any) -> Any:
    """ "4 kg", "10 lb", or words such as "a light book"."""
    if isinstance(value, Load):
        return value
    text = str(value).strip()
    found = _WEIGHT.match(text.lower())
    if found is not None:
        kilograms = float(found[1]) * (KILOGRAMS_A_POUND if found[2] == "lb" else 1)
        return Load(kilograms=kilograms, words=text)
    if re.match(r"^[\d.,]+\s*\w{0,3}$", text):
        raise ValueError('a weight with its unit like "4 kg" or "10 lb", or words')
    return Load(kilograms=None, words=text[:100])


# A validated value keeps its own class, so that what is built needs no second reading.
AnySpan = Annotated[Span, BeforeValidator(_span)]
Seconds = Annotated[Span, BeforeValidator(_seconds)]
Effort = Annotated[Span, BeforeValidator(_effort)]
Ages = Annotated[Span, BeforeValidator(_ages)]
Weight = Annotated[Load, BeforeValidator(_load)]
Sets = Annotated[int, Field(strict=True, ge=1, le=20)]
Rest = Annotated[int, Field(strict=True, ge=0, le=600)]
Short = Annotated[int, Field(strict=True, ge=1, le=300)]


class WrittenItem(Closed):
    """One movement with its dose."""

    movement: Key
    sets: Sets = 1
    reps: AnySpan | None = Field(
        None, description='A number, "8-10", "about 8", "up to 12", "16 in total" or "as feels good".'
    )
    hold: Seconds | None = Field(None, description="Seconds of stretch in every repetition.")
    contract: Short | None = Field(None, description="Seconds of tension before each relaxing stretch.")
    relax: Short | None = Field(None, description="Seconds of stretch after each tension.")
    last_hold: Short | None = Field(None, alias="last-hold", description="Seconds held on the last repetition.")
    flow: Seconds | None = Field(None, description="Seconds of moving without counting.")
    steps: AnySpan | None = None
    breaths: AnySpan | None = None
    side: Sides = Sides.BOTH
    rest: Rest = 0
    effort: Effort | None = Field(None, description="Stretch feeling from 1 to 10, such as 5-6.")
    load: Weight | None = None
    held: Text | None = Field(None, description="Where the load is held.")
    cue: Text | None = None
    practice: bool = False

    @model_validator(mode="after")
    def _has_a_dose(self) -> WrittenItem:
        if not any((self.reps, self.hold, self.contract, self.flow, self.steps, self.breaths)):
            raise ValueError("no dose: one of reps, hold, contract, flow, steps or breaths is needed")
        if (self.contract is None) != (self.relax is None):
            raise ValueError("contract and relax go together")
        if self.last_hold is not None and self.reps is None:
            raise ValueError("last-hold needs reps: it is held on the last of them")
        counted = [span for span in (self.reps, self.steps, self.breaths) if span is not None]
        if any(span.total for span in counted) and self.side not in (Sides.EACH, Sides.ALTERNATE):
            raise ValueError("in total counts both sides together: side must be each or alternate")
        if self.held is not None and self.load is None:
            raise ValueError("held says where a load is held: load is missing")
        return self


class WrittenBlock(Closed):
    """Items done one after the other, and again for each round."""

    rounds: Sets = 1
    rest: Rest = Field(0, description="Seconds between rounds.")
    items: tuple[WrittenItem, ...] = Field(min_length=1, max_length=30)


class WrittenSession(Closed):
    """What is done on a session day."""

    focus: Text | None = None
    warm_up: Text | None = Field(None, alias="warm-up")
    blocks: tuple[WrittenBlock, ...] = Field(min_length=1, max_length=20)


class WrittenMeasure(Closed):
    """A test."""

    which: Literal["fingertip-to-floor", "sit-and-reach", "knee-to-wall", "back-scratch"]
    trials: Annotated[int, Field(strict=True, ge=1, le=10)] = 3
    warm_up: Text | None = Field(None, alias="warm-up")
    photo: bool = False


class WrittenDay(Closed):
    """One day: a session, a measure or both, the session of another day, or rest."""

    title: Text | None = None
    text: Text | None = None
    session: WrittenSession | None = None
    as_day: Annotated[int, Field(strict=True, ge=1)] | None = Field(None, alias="as-day")
    measure: WrittenMeasure | None = None
    rest: Text | None = Field(None, description="A rest day's text, a gentle idea.")
    link: Annotated[str, Field(pattern=r"^https://\S+$", max_length=300)] | None = None

    @model_validator(mode="after")
    def _is_one_thing(self) -> WrittenDay:
        given = [
            n for n, v in (("session", self.session), ("as-day", self.as_day), ("rest", self.rest)) if v is not None
        ]
        if len(given) > 1:
            raise ValueError(f"{' and '.join(given)} cannot be the same day")
        if not given and self.measure is None:
            raise ValueError("nothing to do: one of session, as-day, measure or rest is needed")
        if self.rest is not None and self.measure is not None:
            raise ValueError("rest and measure cannot be the same day")
        return self


class WrittenSettings(Closed):
    """Cut-offs on the 0-10 pain scale; they can only be made stricter than the defaults."""

    pain_clean: Annotated[int, Field(strict=True, ge=0, le=2)] = Field(2, alias="pain-clean")
    pain_acceptable: Annotated[int, Field(strict=True, ge=2, le=5)] = Field(5, alias="pain-acceptable")
    pain_severe: Annotated[int, Field(strict=True, ge=4, le=8)] = Field(8, alias="pain-severe")

    @model_validator(mode="after")
    def _keeps_the_hard_bounds(self) -> WrittenSettings:
        Settings(clean=self.pain_clean, acceptable=self.pain_acceptable, severe=self.pain_severe)
        return self

    def plain(self) -> RuleSettings:
        """The same as plain values."""
        return RuleSettings(self.pain_clean, self.pain_acceptable, self.pain_severe)


class WrittenProgramme(Closed):
    """A whole file."""

    title: Text
    goal: Text
    who_for: Text = Field(alias="for", description="Who the programme is for.")
    ages: Ages | None = Field(None, description="Ages in years that it is written for, 40-70 or 65+.")
    setting: Text
    led_by: Text = Field(alias="led-by", description="Who leads it, and with what training.")
    language: Annotated[str, Field(pattern=r"^[a-z]{2}$")] = "en"
    cautions: tuple[Text, ...] = ()
    muscles: tuple[Muscle, ...] = Field(min_length=1, description="The muscle groups it is meant to lengthen.")
    equipment: tuple[Text, ...] = ()
    measures: tuple[str, ...] = ()
    pace: Literal["own"] = Field("own", description="own: days follow the client.")
    settings: WrittenSettings = WrittenSettings()
    movements: dict[Key, Described] = Field(default_factory=dict, description="The coach's own movements.")
    days: tuple[WrittenDay, ...] = Field(min_length=1, max_length=400)

    @model_validator(mode="after")
    def _measures_are_known(self) -> WrittenProgramme:
        unknown = [name for name in self.measures if name not in MEASURES]
        if unknown:
            raise ValueError(f"measures: {unknown[0]!r} is not known; there are {', '.join(MEASURES)}")
        return self
