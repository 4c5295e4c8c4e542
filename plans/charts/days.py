"""What a chart knows of one date of a client's course, and lines across a panel."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from plans.rules import Verdict


class Did(StrEnum):
    """What was done on a date; its value is the name of its mark."""

    DONE = "done"
    PART = "part"
    LEFT_OUT = "left-out"
    SILENT = "silent"
    """A session arrived, and nothing was said."""
    REST = "rest"
    MEASURED = "measured"


@dataclass(frozen=True, slots=True)
class Day:
    """One date of a course; None is what is not known or did not happen. Pain and tightness are 0-10.

    `before` and `after` are the tightness before and after the session; `verdict` followed from the date's answers.
    Raises ValueError for a number out of its scale.
    """

    on: date
    did: Did | None = None
    pain: int | None = None
    before: int | None = None
    after: int | None = None
    verdict: Verdict | None = None

    def __post_init__(self) -> None:
        for name in ("pain", "before", "after"):
            value = getattr(self, name)
            if value is not None and not 0 <= value <= 10:
                raise ValueError(f"{name} of {self.on} is {value}; the scale goes from 0 to 10")


@dataclass(frozen=True, slots=True)
class Line:
    """A line across a panel at a value of its axis (pain: 0-10), and what it is, in words."""

    value: float
    words: str
