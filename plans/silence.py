"""How much a morning says to somebody who does not answer: less and less, and in the end nothing until they speak.

Bounds from the design of this program (own choice): a reminder that is ignored every day only teaches to ignore it.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from enum import StrEnum

from plans.checkin import CheckIn
from plans.ledger import Entry, RowKind

SHORT, WEEKLY, STILL = 3, 7, 28
"""Unanswered mornings after which a morning is one line, comes once a week, and comes no more."""

_ASKED = frozenset((RowKind.SESSION, RowKind.MEASURE, RowKind.ASKING))


class Voice(StrEnum):
    """What a morning says."""

    WHOLE = "whole"
    """The day as it is."""
    LINE = "line"
    """One line, and a way to see the day."""
    OFFER = "offer"
    """The same once a week, and a pause instead."""
    NOTHING = "nothing"


def silent_mornings(past: Sequence[Entry], heard_on: date | None) -> int:
    """How many mornings at the end of `past` asked and got no answer; `heard_on` is the date of the last word.

    A word of any kind on a date ends the silence, as does an answer that came later for an older date.
    """
    count = 0
    for entry in reversed(past):
        if heard_on is not None and entry.on <= heard_on:
            break
        if entry.checkin != CheckIn() or entry.morning is not None or entry.recorded:
            break
        count += entry.kind in _ASKED and entry.delivered
    return count


def voice(silent: int, kind: RowKind) -> Voice:
    """What the morning after so many unanswered ones says of a row of this kind.

    >>> [str(voice(n, RowKind.SESSION)) for n in (2, 3, 7, 8, 14, 28)]
    ['whole', 'line', 'offer', 'nothing', 'offer', 'nothing']
    """
    if silent < SHORT:
        return Voice.WHOLE
    if silent >= STILL or kind not in _ASKED:
        return Voice.NOTHING
    if silent < WEEKLY:
        return Voice.LINE
    return Voice.OFFER if silent % WEEKLY == 0 else Voice.NOTHING
