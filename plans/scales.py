"""A rating that names its scale, in one form: "on a scale of 1 to 10: 3" as "3 out of 10"."""

from __future__ import annotations

import re

_ONE = r"(?:\d{1,2}(?:[.,]\d+)?|zero|two|three|four|five|six|seven|eight|nine|ten|one(?=[.,;!]|$))"
_RATING = rf"{_ONE}(?: ?(?:-|to|or) ?{_ONE})?"
_LOW = r"(?:zero|one|nil|[01]) ?(?:-|to|till|until|up to|and) ?"
_TEN = r"(?:10|ten)\b"
_SCALE = (
    r"(?:(?:on|in|by|using|from|with) )?(?:(?:a|the|your|my|our|this|that) )?(?:pain )?scale,? ?"
    rf"(?:(?:of|from|between|out of|up to|to|going from|going to) (?:{_LOW})?{_TEN}|\(?:? ?{_LOW}{_TEN})"
    rf"|\b(?:on|in|using) (?:a|the|your|my|our) (?:{_LOW})?{_TEN}(?: point)? scale"
)
_BEFORE = re.compile(rf"(?<![\d/.-])\b({_RATING}),? ?\(?(?:{_SCALE})\)?")
_AFTER = re.compile(
    rf"(?:{_SCALE}|\(?(?<![\d.-])(?<!from )\b{_LOW}{_TEN}\)? ?[:=](?= ))\)?([^0-9.!?]{{0,40}}?)(?<![\d-])"
    rf"(?<!session )(?<!day )(?<!set )(?<!round )(?<!exercise )\b({_RATING})"
    r"(?![\d.,]*\d| ?(?:/|x\b|h\b|mins?\b|minutes|seconds|hours|sets|reps|rounds|days|weeks|times|of\b|am\b|pm\b))"
)


def with_scale_named_last(plain: str) -> str:
    """A normalised text with "N out of 10" for every rating that stands before or after the words of its scale.

    >>> with_scale_named_last("pain on a scale of 1-10: 3. done")
    'pain : 3 out of 10. done'
    """
    if "scale" not in plain and "10" not in plain and "ten" not in plain:
        return plain
    plain = _BEFORE.sub(r"\1 out of 10", plain)
    return " ".join(_AFTER.sub(r"\1 \2 out of 10", plain).split())
