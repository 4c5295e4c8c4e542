"""Words in a programme that promise what stretching has not been shown to do."""

from __future__ import annotations

import re

_INJURY = r"injur(?:y|ies|ed|ing)\b"
_PAIN = r"(?:pains?|aches?|injur(?:y|ies)|backs?|knees?|shoulders?|sciatica|arthritis)\b"
_BETWEEN = r"(?:(?!(?:if|with|when|after|until|because)\b)\w+ ){0,3}?"
"""Up to three words that do not begin a condition: "avoid it with an injury" promises nothing."""
_CLAIMS = re.compile(
    rf"\b(?:prevent\w*|avoid\w*|stops?|reduc\w+) {_BETWEEN}{_INJURY}"
    rf"|\b(?:protect\w*|safe|free) (?:\w+ ){{0,2}}?(?:from|against|of) (?:\w+ ){{0,2}}?{_INJURY}"
    r"|\binjury[- ](?:prevention|proof\w*|free)\b"
    r"|\b(?:fix\w*|correct(?:s|ing)?|improv\w+|better|perfect|straighten\w*) (?:\w+ ){0,2}?posture\b"
    r"|\bposture[- ]correct\w*"
    rf"|\b(?:cur(?:es?|ing)|heal(?:s|ing)?|treat(?:s|ment)?) {_BETWEEN}{_PAIN}",
    re.IGNORECASE,
)
_DENIED = re.compile(r"\b(?:no|not|never|cannot|nothing|without|\w+n['’]t)\b(?:\W+\w+){0,3}\W*$", re.IGNORECASE)
_BEFORE = 60
"""Characters before a claim in which a denial is looked for."""


def promise(text: str) -> str | None:
    """The first words of a text that promise injury prevention, posture or a cure; a denial is no promise.

    >>> promise("Stretching that prevents injuries.")
    'prevents injuries'
    >>> promise("It does not prevent injuries.")
    """
    for found in _CLAIMS.finditer(text):
        if not _DENIED.search(text[max(0, found.start() - _BEFORE) : found.start()]):
            return found[0]
    return None
