"""How well a test repeats itself in a group, from its own tries: reliability, standard error, smallest change.

Two-way analysis of variance, people by tries, after Shrout & Fleiss 1979 (Psychol Bull 86:420): ICC(2,1) is agreement,
where a try that is better for everybody counts as error; ICC(3,1) is consistency, where it does not. The standard error
of measurement is the root of the error's mean square, which is what stays when people and tries are taken out.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import sqrt

from plans.measures import mdc95


@dataclass(frozen=True, slots=True)
class Repeatability:
    """What a group's repeated tries say of a test; `error` and `smallest_change` are in the test's unit."""

    people: int
    tries: int
    agreement: float
    """ICC(2,1)."""
    consistency: float
    """ICC(3,1)."""
    error: float
    """Standard error of measurement."""

    @property
    def smallest_change(self) -> float:
        """The smallest change that is more than this error gives (95 %)."""
        return mdc95(self.error)


def repeatability(rows: Sequence[Sequence[float]]) -> Repeatability:
    """From one row a person, each with the same number of tries, in the test's unit.

    Raises ValueError for fewer than two people or tries, for rows of unequal length, and when nobody differs.
    """
    people, tries = len(rows), len(rows[0]) if rows else 0
    if people < 2 or tries < 2 or any(len(row) != tries for row in rows):
        raise ValueError(f"{people} people with {tries} tries: two of each are needed, and as many tries from each")
    whole = sum(map(sum, rows)) / (people * tries)
    between = tries * sum((sum(row) / tries - whole) ** 2 for row in rows) / (people - 1)
    columns = [sum(row[n] for row in rows) / people for n in range(tries)]
    trial = people * sum((column - whole) ** 2 for column in columns) / (tries - 1)
    total = sum((value - whole) ** 2 for row in rows for value in row)
    rest = (total - between * (people - 1) - trial * (tries - 1)) / ((people - 1) * (tries - 1))
    rest = max(0.0, rest)
    if between + rest <= 0:
        raise ValueError("nobody differs from anybody: reliability cannot be told")
    agreement = (between - rest) / (between + (tries - 1) * rest + tries * (trial - rest) / people)
    consistency = (between - rest) / (between + (tries - 1) * rest)
    return Repeatability(people, tries, agreement, consistency, sqrt(rest))
