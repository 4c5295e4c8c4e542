"""Which movements went with better mornings: one client's days with a movement beside the same client's other days.

What is compared is the next date's answer: tightness, or pain where more of that is there, 0-10, less is better. Only
sessions done in full count, for of a part nobody knows which movements were done. The slow drift of a course is taken
out, differences are drawn towards none all together (`plans/pooling.py`), and movements that were nearly always done
on the same days stand as one, as nobody can tell them apart. It is a record of what went together, no trial: what else
was on those days, and a movement that only comes when somebody is well, is in it too.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import StrEnum
from itertools import combinations

from plans.adherence import Z95
from plans.checkin import Completion, Place
from plans.ledger import Entry, RowKind
from plans.pooling import Effect, Pooling, dot, without_drift

LEAST_DAYS = 5
"""Days with a movement, and days without it, that are too few to tell when there are fewer (own choice)."""
TOLD_APART = 3
"""Movements that differ on fewer days cannot be told apart (own choice)."""
BESIDE = 0.5
"""Groups whose days correlate by so much and more share what they show (own choice)."""


class Outcome(StrEnum):
    """What is said of the next morning."""

    TIGHTNESS = "tightness"
    PAIN = "pain"


class Went(StrEnum):
    """What movements went with."""

    BETTER = "better mornings"
    WORSE = "worse mornings"
    UNCLEAR = "no clear difference"
    TOO_FEW = "too few days to tell"


@dataclass(frozen=True, slots=True)
class Followed:
    """A session done in full: its date, the keys of its movements as handed out, and the next date's answer, 0-10."""

    on: date
    movements: frozenset[str]
    next: int


@dataclass(frozen=True, slots=True)
class Ranked:
    """Movements that stand as one. Differences are days with them less days without, in points; below 0 is better.

    `plain` is the difference of the means once the drift is out; `change` is what is left of it beside all others,
    from `low` to `high` (95 %). All are None with too few days.
    """

    movements: tuple[str, ...]
    went: Went
    plain: float | None = None
    change: float | None = None
    low: float | None = None
    high: float | None = None
    beside: tuple[str, ...] = ()
    """Movements of other groups that were mostly done on the same days: a difference may be theirs as well."""
    instead: tuple[str, ...] = ()
    """Movements that were mostly done on the other days: one being better may be the other being worse."""


@dataclass(frozen=True, slots=True)
class Ranking:
    """All groups, better mornings first and too few days last."""

    outcome: Outcome
    days: int
    groups: tuple[Ranked, ...]

    def of(self, movement: str) -> Ranked | None:
        """The group that has a movement; None when it was never done in full."""
        return next((group for group in self.groups if movement in group.movements), None)


def followed(
    rows: Iterable[Entry], movements: Callable[[Entry], Collection[str]]
) -> tuple[Outcome, tuple[Followed, ...]]:
    """The sessions of one course whose next date was told of, by what more of them have; tightness when equal.

    `movements` gives the keys of what a row handed out.
    """
    by_date = {row.on: row for row in rows}
    done = [
        (row, by_date[next_])
        for on, row in sorted(by_date.items())
        if row.kind is RowKind.SESSION
        and row.checkin.completion is Completion.DONE
        and (next_ := on + timedelta(days=1)) in by_date
    ]
    found = {
        outcome: tuple(
            Followed(row.on, frozenset(movements(row)), value)
            for row, after in done
            if (value := _said(after, outcome)) is not None
        )
        for outcome in Outcome
    }
    outcome = max(Outcome, key=lambda one: len(found[one]))
    return outcome, found[outcome]


def _said(row: Entry, outcome: Outcome) -> int | None:
    if outcome is Outcome.TIGHTNESS:
        return row.checkin.tightness
    return None if row.checkin.place is Place.ELSEWHERE else row.checkin.pain


def ranking(days: Sequence[Followed], outcome: Outcome = Outcome.TIGHTNESS) -> Ranking:
    """The ranking of everything that was done on these days, whatever their order."""
    ordered = sorted(days, key=lambda day: day.on)
    groups = _groups(ordered)
    columns = [[float(bool(day.movements & set(group))) for day in ordered] for group in groups]
    times = [float((day.on - ordered[0].on).days) for day in ordered]
    rests = [without_drift(column, times) for column in columns]
    told = [index for index, rest in enumerate(rests) if dot(rest, rest) > DRIFT]
    effects: dict[int, Effect] = {}
    if told and len(ordered) >= 2 * LEAST_DAYS:
        pooling = Pooling.of([columns[index] for index in told], [float(day.next) for day in ordered], times)
        effects = dict(zip(told, pooling.effects(), strict=True))
    ranked = [
        _ranked(group, column, effects.get(index), *_company(index, groups, rests))
        for index, (group, column) in enumerate(zip(groups, columns, strict=True))
    ]
    return Ranking(outcome, len(ordered), tuple(sorted(ranked, key=_place)))


DRIFT = 0.5
"""Squares of a column without level and drift: with less of them it is hardly more than a date (own choice)."""


def _groups(days: Sequence[Followed]) -> list[tuple[str, ...]]:
    """Movements by the days that they were done on; those that differ on too few days are joined."""
    done: dict[str, frozenset[int]] = {
        key: frozenset(index for index, day in enumerate(days) if key in day.movements)
        for key in sorted({key for day in days for key in day.movements})
    }
    group_of = {key: key for key in done}
    for first, second in combinations(done, 2):
        if group_of[first] != group_of[second] and len(done[first] ^ done[second]) < TOLD_APART:
            old, new = group_of[second], group_of[first]
            group_of = {key: new if group == old else group for key, group in group_of.items()}
    return [tuple(key for key in done if group_of[key] == group) for group in dict.fromkeys(group_of.values())]


def _company(
    index: int, groups: Sequence[tuple[str, ...]], rests: Sequence[Sequence[float]]
) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """The movements that were mostly done on the same days as a group, and on the other days."""
    alike = [(other, _alike(rests[index], rests[other])) for other in range(len(groups)) if other != index]
    beside = (key for other, how in alike if how >= BESIDE for key in groups[other])
    instead = (key for other, how in alike if how <= -BESIDE for key in groups[other])
    return tuple(beside), tuple(instead)


def _alike(first: Sequence[float], second: Sequence[float]) -> float:
    size = (dot(first, first) * dot(second, second)) ** 0.5
    return dot(first, second) / size if size > DRIFT else 0.0


def _ranked(
    group: tuple[str, ...],
    column: Sequence[float],
    effect: Effect | None,
    beside: tuple[str, ...],
    instead: tuple[str, ...],
) -> Ranked:
    there = round(sum(column))
    others = len(column) - there
    if effect is None or min(there, others) < LEAST_DAYS:
        return Ranked(group, Went.TOO_FEW, beside=beside, instead=instead)
    low, high = effect.change - Z95 * effect.error, effect.change + Z95 * effect.error
    went = Went.BETTER if high < 0 else Went.WORSE if low > 0 else Went.UNCLEAR
    return Ranked(group, went, effect.plain, effect.change, low, high, beside, instead)


def _place(group: Ranked) -> tuple[bool, float, tuple[str, ...]]:
    return group.went is Went.TOO_FEW, group.change or 0.0, group.movements
