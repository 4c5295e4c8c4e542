"""The one number of a short answer, for when a number has just been asked for."""

from __future__ import annotations

import re

LONGEST = 40
"""Characters of an answer that is read so (own choice)."""

_NUMBER = re.compile(r"(?<![\w.,:/-])(10|[0-9])(?![\w.,:/-]*\d)(?!\w)")
_DIGITS = re.compile(r"\d+")
_OF_SOMETHING_ELSE = re.compile(
    r"\d\s*(?:x|min|minutes?|mins?|s|sec|seconds?|h|hours?|am|pm|times|sets?|rounds?|reps?|days?|weeks?|cm|kg|lb|%|o'?clock)\b"
    r"|\b(?:day|round|set|rep|week|at|number|movement|exercise|step)\s+\d",
    re.IGNORECASE,
)


def only_number(text: str) -> int | None:
    """The whole number from 0 to 10 that a short text has as its only one; None where it may count something else.

    >>> [only_number(text) for text in ("it was a 2", "maybe 3", "2 sets", "at 7", "from 5 to 2", "12", "day 3")]
    [2, 3, None, None, None, None, None]
    """
    if len(text) > LONGEST or len(_DIGITS.findall(text)) != 1 or _OF_SOMETHING_ELSE.search(text):
        return None
    found = _NUMBER.search(text)
    return int(found[1]) if found else None
