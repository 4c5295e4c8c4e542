"""Equipment: a thing that a movement needs, with what will do in its place."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Annotated, Any

from pydantic import BeforeValidator, WithJsonSchema

EVERYWHERE = ("wall", "floor", "door frame", "bed")
"""What every home has; it needs no line in a programme."""
LONGEST, MOST = 120, 8
"""Characters of a name; stand-ins of one thing."""

_SMALL = frozenset({"a", "an", "and", "the", "with", "that", "for", "its", "of", "to", "in", "on", "your"})


@dataclass(frozen=True, slots=True)
class Thing:
    """One piece of equipment by its plain name, and its stand-ins, best first."""

    name: str
    instead: tuple[str, ...] = ()

    def __str__(self) -> str:
        """The thing as a client reads it.

        >>> str(Thing("strap", ("towel", "belt")))
        'strap (or towel, belt)'
        """
        return f"{self.name} (or {', '.join(self.instead)})" if self.instead else self.name


def _words(name: str) -> frozenset[str]:
    """The words of a name that tell things apart, without a plural's s."""
    return frozenset(word.removesuffix("s") for word in re.findall(r"[^\W\d_]+", name.lower())) - _SMALL


def is_at_hand(needed: Thing, declared: Iterable[Thing]) -> bool:
    """Whether a thing or a stand-in of it is among what a programme asks for; extra words in a name do not matter.

    >>> is_at_hand(Thing("chair"), [Thing("chairs that cannot slide")])
    True
    >>> is_at_hand(Thing("strap", ("towel",)), [Thing("belt")])
    False
    """
    names = [*EVERYWHERE, *(name for thing in declared for name in (thing.name, *thing.instead))]
    have = [_words(name) for name in names]
    return any(_words(wanted) <= words for wanted in (needed.name, *needed.instead) for words in have)


def _thing(value: Any) -> Any:
    """`strap`, or `strap: [towel, belt]` for a thing with its stand-ins."""
    if isinstance(value, Thing):
        return value
    parts: list[Any] = [value]
    if isinstance(value, dict) and len(value) == 1:
        ((name, instead),) = value.items()
        if not isinstance(instead, str | list) or not instead:
            raise ValueError("stand-ins as a list, such as strap: [towel, belt]")
        parts = [name, *([instead] if isinstance(instead, str) else instead)]
    if len(parts) > MOST or not all(isinstance(part, str) and 0 < len(part.strip()) <= LONGEST for part in parts):
        raise ValueError(f"a thing such as mat, or one with at most {MOST - 1} stand-ins such as strap: [towel, belt]")
    name, *others = (part.strip() for part in parts)
    return Thing(name, tuple(others))


_NAME = {"type": "string", "minLength": 1, "maxLength": LONGEST}
Equipment = Annotated[
    Thing,
    BeforeValidator(_thing),
    WithJsonSchema(
        {
            "description": "A thing such as mat, or one with its stand-ins such as strap: [towel, belt].",
            "anyOf": [
                _NAME,
                {
                    "type": "object",
                    "minProperties": 1,
                    "maxProperties": 1,
                    "additionalProperties": {
                        "anyOf": [_NAME, {"type": "array", "items": _NAME, "minItems": 1, "maxItems": MOST - 1}]
                    },
                },
            ],
        }
    ),
]
