"""A rating that names its scale, in one form: "on a scale of 1 to 10: 3" as "3 out of 10"."""

from __future__ import annotations

import re

_ONE = r"(?:\d{1,2}(?:[.,]\d+)?|zero|two|three|four|five|six|seven|eight|nine|ten|one(?=[.,;!]|$))"
_RATING = rf"{_ONE}(?: ?(?:-|to|or) ?{_ONE})?"
_LOW = r"(?:zero|one|nil|[01]) ?(?:-|to|till|until|up to|and) ?"
_TEN = r"(?:10|ten)\b"
_THE = r"(?:a|the|your|my|our|this|that)"
_SCALE = (
    rf"(?:(?:on|in|by|using|from|with) )?(?:{_THE} )?(?:pain )?scale,? ?"
    rf"(?:(?:of|from|between|out of|up to|to|going from|going to) (?:{_LOW})?{_TEN}|\(?:? ?{_LOW}{_TEN})"
    rf"|\b(?:on|in|using|by) {_THE} (?:(?:{_LOW})?{_TEN}(?: point)? scale|{_LOW}{_TEN}(?: thing| system| range| rating)?)"
    rf"|\bout of (?:{_THE} )?(?:possible|maximum|max|total|full|perfect) {_TEN}"
)
_BEFORE = re.compile(rf"(?<![\d/.-])\b({_RATING}),? ?\(?(?:{_SCALE})\)?")
_AFTER = re.compile(
    rf"(?:{_SCALE}|\(?(?<![\d.-])(?<!from )\b{_LOW}{_TEN}\)? ?[:=](?= ))\)?([^0-9.!?]{{0,40}}?)(?<![\d-])"
    rf"(?<!session )(?<!day )(?<!set )(?<!round )(?<!exercise )\b({_RATING})"
    r"(?![\d.,]*\d| ?(?:/|x\b|h\b|mins?\b|minutes|seconds|hours|sets|reps|rounds|days|weeks|times|of\b|am\b|pm\b))"
)
_TOP = re.compile(
    rf"(?:\(|^|(?<=[,.;]) ?|\b(?:if|where|when|with|and) )(?:a )?{_TEN} ?(?:is|being|means|as|was|would be|=|equals) "
    r"(?:the |my |a |your )?(?:worst|max|maximum|most|highest|hospital|unbearable|agony|top|extreme)"
    r"(?: pain| possible| imaginable| ever)*(?:\)|(?=[,.;!]|$)| (?=i\b|it |today|mine|my |this|then))"
)
_SMALLER = re.compile(r"(?<![\d.])[0-9](?![\d.:])|\b(?:zero|two|three|four|five|six|seven|eight|nine)\b")


def with_scale_named_last(plain: str) -> str:
    """A normalised text with "N out of 10" for every rating that stands before or after the words of its scale.

    What tells of the scale's end only goes, where a smaller number stands beside it.

    >>> with_scale_named_last("pain on a scale of 1-10: 3. done")
    'pain : 3 out of 10. done'
    >>> with_scale_named_last("if ten is the worst i say 3")
    'i say 3'
    """
    if "scale" not in plain and "10" not in plain and "ten" not in plain:
        return plain
    if _TOP.search(plain) and _SMALLER.search(_TOP.sub("", plain)):
        plain = _TOP.sub(" ", plain)
    plain = _BEFORE.sub(lambda found: f"{_figure(found[1])} out of 10", plain)
    return " ".join(_AFTER.sub(lambda found: f"{found[1]} {_figure(found[2])} out of 10", plain).split())


def _figure(rating: str) -> str:
    return rating.replace("zero", "0")
