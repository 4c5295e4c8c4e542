"""The ledger as the rules see it: one row a local date."""

from __future__ import annotations

from datetime import date
from enum import StrEnum
from typing import NamedTuple

from plans.checkin import CheckIn, Morning


class RowKind(StrEnum):
    """What a ledger row holds."""

    SESSION = "session"
    REST = "rest"
    MEASURE = "measure"
    ASKING = "asking"
    WAITING = "waiting"
    AWAY = "away"
    OFF = "off"
    """No training on this date."""


class Question(StrEnum):
    """What must be known before a date's day is handed out."""

    FLAG = "flag"
    PAIN = "pain"
    MORNING = "morning"


class Entry(NamedTuple):
    """One ledger row as the rules see it. `prescribed`: a date off that a verdict gave, or a rest day taken early."""

    on: date
    kind: RowKind
    day: int | None = None
    level: int = 0
    prescribed: bool = False
    delivered: bool = True
    """Its message arrived, or none was sent because the client had been silent for long."""
    checkin: CheckIn = CheckIn()
    morning: Morning | None = None
    recorded: bool = False
    """A measure was recorded on this date."""
    voted: frozenset[str] = frozenset()
    """The rules that had a say when this row was made."""
