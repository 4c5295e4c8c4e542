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
    rf"|\b(?:on|in|using|by) {_THE} (?:(?:{_LOW})?{_TEN}(?: point)? scale|{_LOW}{_TEN}(?: thing| system| range)?)"
    rf"|\bout of (?:{_THE} )?(?:possible|maximum|max|total|full|perfect) {_TEN}"
)
_UNITS = r"mins?\b|minutes|seconds|hours|sets|reps|rounds|days|weeks|times|stretch|exercis|moves|am\b|pm\b"
_BARE = rf"(?![\d.,]*\d| ?(?:/|x\b|h\b|of\b|out of|{_UNITS}))"
"""After a number: nothing that it counts."""
_BEFORE = re.compile(rf"(?<![\d/.-])\b({_RATING}),? ?\(?(?:{_SCALE})\)?")
_AFTER = re.compile(
    rf"(?:{_SCALE}|\(?(?<![\d.-])(?<!from )\b{_LOW}{_TEN}\)? ?[:=](?= ))\)?([^0-9.!?]{{0,40}}?)(?<![\d-])"
    rf"(?<!session )(?<!day )(?<!set )(?<!round )(?<!exercise )\b({_RATING}){_BARE}"
)
_FIRST = re.compile(
    rf", ?(?:{_SCALE}),?((?: (?:it was|it is|it's|its|i'd say|id say|i say|was|is|pain|pain was|about|around|a|:|=))*)"
    rf" ({_RATING})(?![\d.,]*\d){_BARE}"
)
"""The scale after a comma and the number right behind it: a number before the comma is another one."""
_END = r"(?: pain| possible| imaginable| ever)*(?:\)|(?=[,.;!]|$)| (?=i\b|it |today|mine|my |this|then))"
_MOST = r"(?:max|maximum|most|highest|top)"
_WORST = rf"(?:the |my |a |your )?(?:worst|hospital|unbearable|agony|extreme|{_MOST})"
_TOP = re.compile(
    rf"(?:\(|\b(?:if|where|with) )(?:a )?{_TEN} ?(?:is|being|means|as|was|would be|=|equals) {_WORST}{_END}"
    rf"|(?:^|(?<=[,.;]) ?)(?:a )?{_TEN} ?(?:(?:being|means|=|equals) {_WORST}|is (?:the )?{_MOST}){_END}"
)
"""What only tells where the scale ends; "10 is the worst" alone may be the pain."""
_SMALLER = re.compile(
    rf"(?<![\d.:-])\b([0-9]|[0-9][.,]\d|zero|two|three|four|five|six|seven|eight|nine)\b(?!:| ?-|[.,]\d){_BARE}"
)


def with_scale_named_last(plain: str) -> str:
    """A normalised text with "N out of 10" for every rating that stands before or after the words of its scale.

    What tells of the scale's end only goes, where a smaller number stands beside it.

    >>> with_scale_named_last("pain on a scale of 1-10: 3. done")
    'pain : 3 out of 10. done'
    >>> with_scale_named_last("if ten is the worst i say 3")
    'i say 3 out of 10'
    """
    if "scale" not in plain and "10" not in plain and "ten" not in plain:
        return plain
    smaller = _SMALLER.findall(_TOP.sub(" ", plain)) if _TOP.search(plain) else []
    if smaller:
        plain = _TOP.sub(" ", plain)
    if len(smaller) == 1:
        plain = _SMALLER.sub(lambda found: f"{_figure(found[1])} out of 10", plain)
    plain = _FIRST.sub(lambda found: f",{found[1]} {_figure(found[2])} out of 10", plain)
    plain = _BEFORE.sub(lambda found: f"{_figure(found[1])} out of 10", plain)
    return " ".join(_AFTER.sub(lambda found: f"{found[1]} {_figure(found[2])} out of 10", plain).split())


def _figure(rating: str) -> str:
    return rating.replace("zero", "0")
