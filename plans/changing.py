"""Values that change over the weeks, written once.

`{week 1: 2, week 3: 3}` is two, from week 3 on three; `{start: 30, each-week: 5, at-most: 60}` grows steadily.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from typing import Any, Generic, TypeVar, cast, get_args

from pydantic import GetCoreSchemaHandler
from pydantic_core import core_schema

from plans.programme import Load, Span
from plans.spoken import KILOGRAMS_A_POUND

T = TypeVar("T")
MOMENT = r"^(week|day) [1-9]\d{0,2}$"
_MOMENT = re.compile(MOMENT)
GROWTH = frozenset({"start", "each-week", "at-most"})


@dataclass(frozen=True, slots=True)
class Moment:
    """A week or a day of a programme, both counted from 1."""

    unit: str
    number: int

    @classmethod
    def read(cls, text: str) -> Moment:
        """ "week 3" or "day 15". Raises ValueError."""
        if not _MOMENT.match(text):
            raise ValueError('a time such as "week 3" or "day 15"')
        unit, _space, number = text.partition(" ")
        return cls(unit, int(number))

    def first(self, week: int) -> int:
        """Its first day, when a week has so many days of the programme."""
        return self.number if self.unit == "day" else (self.number - 1) * week + 1

    def last(self, week: int) -> int:
        """Its last day."""
        return self.number if self.unit == "day" else self.number * week

    def __str__(self) -> str:
        return f"{self.unit} {self.number}"


@dataclass(frozen=True, slots=True)
class Growth(Generic[T]):
    """What a value gains each week, and where it stays."""

    each: T
    most: T | None


class Changing(Generic[T]):
    """A value for each day: from each moment on another one, or a steady growth, or simply always the same.

    No dataclass, because pydantic would read it as one instead of by the shapes below.
    """

    __slots__ = ("growth", "steps")

    def __init__(self, steps: tuple[tuple[Moment | None, T], ...], growth: Growth[T] | None = None) -> None:
        self.steps = steps
        self.growth = growth

    @classmethod
    def always(cls, value: T) -> Changing[T]:
        """The same value on every day."""
        return cls(((None, value),))

    def at(self, day: int, week: int) -> T:
        """The value on a day, when a week has so many days. Raises LookupError for a day before the first step."""
        if self.growth is not None:
            return cast(T, _grown(self.steps[0][1], (day - 1) // week, self.growth))
        found = sorted(((moment.first(week) if moment else 0, index) for index, (moment, _v) in enumerate(self.steps)))
        begun = [index for first, index in found if first <= day]
        if not begun:
            raise LookupError(f"it begins with {self.steps[found[0][1]][0]}")
        return self.steps[begun[-1]][1]

    def values(self) -> Iterator[tuple[tuple[str, ...], T]]:
        """Every written value, with the words under which it stands."""
        if self.growth is not None:
            yield ("start",), self.steps[0][1]
        else:
            yield from (((str(moment),) if moment else (), value) for moment, value in self.steps)

    @classmethod
    def __get_pydantic_core_schema__(cls, source: Any, handler: GetCoreSchemaHandler) -> core_schema.CoreSchema:
        (inner,) = get_args(source)
        plain = handler.generate_schema(inner)
        steps = core_schema.dict_schema(
            keys_schema=core_schema.str_schema(pattern=MOMENT), values_schema=plain, min_length=1, max_length=60
        )
        fields = {
            "start": core_schema.typed_dict_field(plain, required=True),
            "each-week": core_schema.typed_dict_field(plain, required=True),
            "at-most": core_schema.typed_dict_field(plain, required=False),
        }
        growth = core_schema.typed_dict_schema(fields, extra_behavior="forbid")
        after = core_schema.no_info_after_validator_function
        has_words = "mapping" in plain.get("choices", ())

        def which(value: Any) -> str:
            words = set(value) if isinstance(value, dict) else set()
            if words & GROWTH:
                return "growth"
            timed = any(str(word).lower().startswith(("week", "day")) for word in words)
            return "steps" if timed or (isinstance(value, dict) and not has_words) else "plain"

        return core_schema.tagged_union_schema(
            {
                "plain": after(cls.always, plain),
                "steps": after(_stepped, steps),
                "growth": after(_growing, growth),
            },
            which,
        )


def _stepped(written: dict[str, Any]) -> Changing[Any]:
    return Changing(tuple((Moment.read(text), value) for text, value in written.items()))


def _growing(written: dict[str, Any]) -> Changing[Any]:
    """Raises ValueError for words, which do not grow, and for weights without a number."""
    parts = [written["start"], written["each-week"], *([written["at-most"]] if "at-most" in written else [])]
    for part in parts:
        if not isinstance(part, Span | int | Load) or (isinstance(part, Load) and part.kilograms is None):
            raise ValueError("numbers: only what has a number can grow each week")
    return Changing(((None, written["start"]),), Growth(written["each-week"], written.get("at-most")))


def _grown(start: Any, weeks: int, growth: Growth[Any]) -> Any:
    """A number, span or weight after so many weeks of growth; it never grows past the most."""
    if isinstance(start, Span):
        gain, most = growth.each.high * weeks, growth.most.high if growth.most else None
        low, high = (end + gain if most is None else max(end, min(end + gain, most)) for end in (start.low, start.high))
        return replace(start, low=low, high=high)
    if isinstance(start, Load):
        kilograms = (start.kilograms or 0) + weeks * growth.each.kilograms
        if growth.most is not None and kilograms >= growth.most.kilograms:
            return growth.most
        return start if weeks == 0 else Load(kilograms, _weight(kilograms, start.words or ""))
    return (
        start + weeks * growth.each
        if growth.most is None
        else max(start, min(start + weeks * growth.each, growth.most))
    )


def _weight(kilograms: float, like: str) -> str:
    """A weight in words, in the unit of another one."""
    if like.lower().endswith("lb"):
        return f"{kilograms / KILOGRAMS_A_POUND:g} lb"
    return f"{kilograms:g} kg"
