"""What would have been right in a coach's words, for everything that the shapes of a file do not allow."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from pydantic_core import ErrorDetails
from rapidfuzz import process

from plans.changing import MOMENT
from plans.movements import KEY, LINK
from plans.spoken import START
from plans.written import AS_DAYS, LANGUAGE

_PATTERNS = {
    MOMENT: 'a time such as "week 3" or "day 15"',
    KEY: "a short name of small letters, digits and hyphens, such as long-reach",
    LINK: "an address that begins with https://",
    LANGUAGE: "the two letters of a language, such as en",
    START: "minutes and seconds, such as 12:30",
    AS_DAYS: "a range of earlier days, such as 1-7",
}
_TEXTS = {
    "bool_type": "true or false",
    "bool_parsing": "true or false",
    "int_type": "a whole number",
    "int_parsing": "a whole number",
    "int_from_float": "a whole number",
    "string_type": 'text; put a number in quotes, such as "90"',
    "string_too_short": "at least one letter",
    "string_too_long": "at most {max_length} characters",
    "greater_than_equal": "at least {ge}",
    "less_than_equal": "at most {le}",
    "too_short": "at least {min_length} of them",
    "too_long": "at most {max_length} of them",
    "tuple_type": "a list, such as [one, another]",
    "list_type": "a list, such as [one, another]",
    "dict_type": "words with what they say, such as title: Morning",
    "model_type": "words with what they say, such as title: Morning",
    "model_attributes_type": "words with what they say, such as title: Morning",
}


def near(word: str, choices: list[str]) -> str | None:
    """The choice that a word was probably meant to be."""
    found = process.extractOne(word, choices, score_cutoff=70)
    return str(found[0]) if found else None


def allowed(error: ErrorDetails) -> tuple[str, str | None]:
    """What would be right in the place of what was found, and a likely spelling."""
    context: Mapping[str, Any] = error.get("ctx") or {}
    if "expected" in context:
        choices = [word.strip().strip("'") for word in str(context["expected"]).replace(" or ", ", ").split(",")]
        return _one_of(choices), near(str(error.get("input")), choices)
    if context.get("pattern") in _PATTERNS:
        return _PATTERNS[context["pattern"]], None
    if error["type"] in _TEXTS:
        return _TEXTS[error["type"]].format(**context), None
    message = error["msg"].removeprefix("Value error, ").removeprefix("Assertion failed, ")
    return message[:1].lower() + message[1:], None


def _one_of(choices: list[str]) -> str:
    return f"{', '.join(choices[:-1])} or {choices[-1]}" if len(choices) > 1 else choices[0]
