"""Numbers as coaches write them: "8-10", "about 8", "2 min", "4 kg", "65+". Each keeps its own class once read."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Annotated, Any

from pydantic import BeforeValidator, Field, StringConstraints, WithJsonSchema

from plans.programme import AS_FEELS_GOOD, Load, Own, Span, Training

KILOGRAMS_A_POUND = 0.45359237
"""International avoirdupois pound, exact."""
OLDEST = 99
"""Years; the open end of an age band such as 65+."""
WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
LONGEST_TIME = 3600
"""Seconds of one hold, flow or warm-up."""

# The schema's patterns are the reader's own, so that an editor and the checker agree.
SPAN = r"\s*((about|up to)\s+)?\d{1,4}(\s*[-–]\s*\d{1,4})?(\s+in\s+total)?\s*"
TIME = r"\s*\d{1,4}(\s*[-–]\s*\d{1,4})?\s*(s|sec|seconds|min|minutes)?\s*"
AGES = r"\s*\d{2}\s*([-–]\s*\d{2}|\+)\s*"

_SPAN = re.compile(r"(?:(about|up to)\s+)?(\d{1,4})(?:\s*[-–]\s*(\d{1,4}))?(\s+in\s+total)?")
_TIME = re.compile(r"(\d{1,4})(?:\s*[-–]\s*(\d{1,4}))?\s*(s|sec|seconds|min|minutes)?")
_AGES = re.compile(r"(\d{2})\s*(?:[-–]\s*(\d{2})|\+)")
_WEIGHT = re.compile(r"(\d{1,3}(?:\.\d{1,2})?)\s*(kg|lb)")


def _written(value: Any) -> str | None:
    """A number or a text as text; None for anything else."""
    return str(value).strip().lower() if isinstance(value, int | float | str) and not isinstance(value, bool) else None


def _span(value: Any) -> Any:
    """8, "8-10", "about 8", "up to 12", "as feels good"; "16 in total" counts both sides together."""
    text = _written(value) or ""
    if text == "as feels good":
        return AS_FEELS_GOOD
    found = _SPAN.fullmatch(text)
    if found is None:
        raise ValueError('a number, a range like 8-10, "about 8", "up to 12", "16 in total" or "as feels good"')
    how, low, high = found[1], int(found[2]), int(found[3] or found[2])
    span = _ordered(1 if how == "up to" else low, high, about=how == "about", up_to=how == "up to")
    return replace(span, total=found[4] is not None)


def _seconds(value: Any) -> Any:
    """30, "20-30", "30 s" or "2 min", in seconds."""
    found = _TIME.fullmatch(_written(value) or "")
    if found is None:
        raise ValueError('seconds like 30, a range like 20-30, or minutes like "2 min"')
    unit = 60 if (found[3] or "").startswith("min") else 1
    span = _ordered(int(found[1]) * unit, int(found[2] or found[1]) * unit)
    if span.high > LONGEST_TIME:
        raise ValueError(f"at most {LONGEST_TIME // 60} min")
    return span


def _ordered(low: int, high: int, *, about: bool = False, up_to: bool = False) -> Span:
    if not 1 <= low <= high:
        raise ValueError(f"{low} to {high}: a number of at least 1, the smaller one first")
    return Span(low, high, about, up_to)


def _effort(value: Any) -> Any:
    return _small(value, 10, "1 to 10 of 10, or a range like 5-6")


def _turns(value: Any) -> Any:
    """Sets or rounds: 3, or 2-3 when the last one is only for those who like."""
    return _small(value, 20, "1 to 20, or a range like 2-3")


def _small(value: Any, most: int, otherwise: str) -> Any:
    text = _written(value) or ""
    if not re.fullmatch(r"\d{1,2}(\s*[-–]\s*\d{1,2})?", text) or _span(text).high > most:
        raise ValueError(otherwise)
    return _span(text)


def _ages(value: Any) -> Any:
    """40-70 or 65+, in years."""
    found = _AGES.fullmatch(_written(value) or "")
    if found is None:
        raise ValueError('ages in years, "40-70" or "65+"')
    return _ordered(int(found[1]), int(found[2] or OLDEST))


def _load(value: Any) -> Any:
    """ "4 kg", "10 lb", "as last time", "a little more", or words such as "a light book"."""
    text = str(value).strip() if _written(value) is not None else ""
    found = _WEIGHT.fullmatch(text.lower())
    if found is not None:
        kilograms = float(found[1]) * (KILOGRAMS_A_POUND if found[2] == "lb" else 1)
        return Load(kilograms=kilograms, words=text)
    if not text or re.fullmatch(r"[\d.,]+\s*\w{0,3}", text):
        raise ValueError('a weight with its unit like "4 kg" or "10 lb", "as last time", "a little more", or words')
    own = next((how for how in Own if text.lower().startswith(how)), None)
    return Load(kilograms=None, words=text[:100], own=own)


def _training(value: Any) -> Any:
    """[monday, thursday], or 3 for three days a week of the client's choice."""
    if isinstance(value, int) and not isinstance(value, bool) and 1 <= value <= 7:
        return Training(value)
    if isinstance(value, list) and value and all(day in WEEKDAYS for day in value) and len(set(value)) == len(value):
        return Training(len(value), tuple(sorted(WEEKDAYS.index(day) for day in value)))
    raise ValueError("weekdays such as [monday, thursday], or how many days a week the client chooses, 1 to 7")


def _schema(pattern: str, description: str, *, whole: bool = True) -> WithJsonSchema:
    choices: list[dict[str, object]] = [{"type": "string", "pattern": f"^({pattern})$"}]
    if whole:
        choices.insert(0, {"type": "integer", "minimum": 1, "maximum": 9999})
    return WithJsonSchema({"anyOf": choices, "description": description})


_INSENSITIVE = "".join(f"[{letter}{letter.upper()}]" if letter.isalpha() else letter for letter in "as feels good")
AnySpan = Annotated[
    Span,
    BeforeValidator(_span),
    _schema(
        rf"{SPAN.replace('about', '[aA]bout').replace('up to', '[uU]p to')}|\s*{_INSENSITIVE}\s*",
        'A number, "8-10", "about 8", "up to 12", "16 in total" or "as feels good".',
    ),
]
Seconds = Annotated[
    Span, BeforeValidator(_seconds), _schema(TIME, 'Seconds like 30, a range like 20-30, or minutes like "2 min".')
]
Effort = Annotated[
    Span, BeforeValidator(_effort), _schema(r"\s*\d{1,2}(\s*[-–]\s*\d{1,2})?\s*", "1 to 10, or a range like 5-6.")
]
Turns = Annotated[
    Span, BeforeValidator(_turns), _schema(r"\s*\d{1,2}(\s*[-–]\s*\d{1,2})?\s*", "1 to 20, or a range like 2-3.")
]
Ages = Annotated[Span, BeforeValidator(_ages), _schema(AGES, "Ages in years, 40-70 or 65+.", whole=False)]
Weight = Annotated[
    Load,
    BeforeValidator(_load),
    WithJsonSchema(
        {
            "type": "string",
            "minLength": 1,
            "description": '"4 kg", "10 lb", "as last time", "a little more", or words such as "a light book".',
        }
    ),
]
TrainingDays = Annotated[
    Training,
    BeforeValidator(_training),
    WithJsonSchema(
        {
            "description": "Weekdays such as [monday, thursday], or how many days a week the client chooses.",
            "anyOf": [
                {"type": "integer", "minimum": 1, "maximum": 7},
                {"type": "array", "items": {"enum": list(WEEKDAYS)}, "minItems": 1, "uniqueItems": True},
            ],
        }
    ),
]
START = r"^(\d{1,2}:)?\d{1,2}:\d{2}$"
StartTime = Annotated[str, StringConstraints(pattern=START)]
Rest = Annotated[int, Field(strict=True, ge=0, le=600)]
Short = Annotated[int, Field(strict=True, ge=1, le=300)]
