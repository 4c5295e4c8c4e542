"""The numbers of a test as people type them: one or several tries, with a unit or a side."""

from __future__ import annotations

import re
from dataclasses import dataclass

from plans.units import INCHES, kept

_NUMBER = r"(?P<sign>[-−–+]|minus |plus )?\s?(?P<number>\d{1,3}(?:[.,]\d{1,2})?)"
_UNIT = r"(?P<unit>cm|centimet(?:er|re)s?|mm|millimet(?:er|re)s?|in|inch(?:es)?|[\"″]|''|deg(?:rees?)?|°)?"
_TRY = re.compile(rf"{_NUMBER}\s?{_UNIT}(?![\w.,]\d|\w)", re.IGNORECASE)
_SIDE = re.compile(r"(left|right|l|r)\b\.?\s?:?", re.IGNORECASE)
_BETWEEN = re.compile(r"(?:\s?(?:[,;!]|[.]$|and\b|then\b))*", re.IGNORECASE)
LONGEST = 80
"""Characters of a text that is read as tries."""


@dataclass(frozen=True, slots=True)
class Try:
    """One try: `value` in centimetres or degrees; `side` left, right, or None when it was not said."""

    value: float
    side: str | None = None


def tries_in(text: str, unit: str) -> tuple[Try, ...]:
    """The tries of a text that says nothing else; none for any other text. `unit` is taken where none is typed.

    >>> [one.value for one in tries_in("12, 11.5 and 11 cm", "cm")]
    [12.0, 11.5, 11.0]
    >>> tries_in("left 5 in, right 6", "inches")
    (Try(value=12.7, side='left'), Try(value=15.24, side='right'))
    >>> tries_in("12 times", "cm")
    ()
    """
    rest, found, side = text.strip(), [], None
    if len(rest) > LONGEST:
        return ()
    while rest:
        if (named := _SIDE.match(rest)) is not None:
            side = "left" if named[1][0] in "lL" else "right"
            rest = _after(rest, named)
        number = _TRY.match(rest)
        if number is None:
            return ()
        found.append(Try(_value(number, unit), side))
        rest = _after(rest, number)
        rest = rest[between.end() :].strip() if (between := _BETWEEN.match(rest)) else rest
    return tuple(found)


def _after(text: str, found: re.Match[str]) -> str:
    return text[found.end() :].strip()


def _value(found: re.Match[str], unit: str) -> float:
    sign = -1 if (found["sign"] or "").strip().lower() in ("-", "−", "–", "minus") else 1
    typed = (found["unit"] or unit).lower()
    number = sign * float(found["number"].replace(",", "."))
    if typed.startswith("m") and typed != "minus":
        return number / 10
    return kept(number, INCHES if typed in ("in", '"', "″", "''") or typed.startswith("inch") else typed)
