"""A second reader: every reply is read once more, only so that what two readings disagree on is asked.

Nothing that it reads is ever noted. It is a small network (`network.py`) that has learnt from the labelled replies
(`python -m tests.bench.learning`) and knows none of the grammar's rules, so it seldom errs where they err.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache

from plans.checkin import Completion, Flag, Kind, Place, Side, Why
from plans.wording import Unit

Answer = str | int | bool | None

FIELDS: Mapping[str, tuple[Answer, ...]] = {
    "completion": (None, *Completion),
    "pain": (None, *range(11)),
    "why": (None, *Why),
    "red_flag": (None, *Flag),
    "sore": (False, True),
    "unsure": (False, True),
    "side": (None, *Side),
    "kind": (None, *Kind),
    "place": (None, *Place),
}
"""What is read, and the answers to each in the order of their odds."""


@dataclass(frozen=True, slots=True)
class SecondReading:
    """How likely each answer to each field is, as natural logarithms."""

    odds: Mapping[str, tuple[float, ...]]

    def unlikely(self, field: str, answer: Answer) -> float:
        """How unlikely an answer is: minus the natural logarithm of its likelihood, 0 for a certain one."""
        return -self.odds[field][FIELDS[field].index(answer)]

    def flag(self) -> tuple[Flag, float]:
        """The likeliest level of a red flag, and how much likelier it is than that there is none."""
        none, *levels = self.odds["red_flag"]
        most = max(levels)
        return list(Flag)[levels.index(most)], most - none


@lru_cache(maxsize=512)
def second_reading(told: tuple[str, ...]) -> SecondReading:
    """Read the words of a reply of any length again.

    >>> second_reading(("did", "all", "of", "it", ",", "no", "pain")).unlikely("completion", Completion.DONE) < 0.1
    True
    """
    from plans.network import network, odds_of  # NumPy takes 11 MiB and is loaded with the first words that are read

    return SecondReading(odds_of(network(), told, FIELDS))


def words_of(units: Iterable[Unit]) -> tuple[str, ...]:
    """The words as the second reader has them: spelling mended, numbers and marks as words of their own."""
    return tuple(word for unit in units for word in unit.text.split())
