"""What came of one version of a programme over all who went through it: day by day, movement by movement, who stayed.

Each client counts once for a day, however often they had it. Who is still on a day is no part of its shares yet: they
may still do it, have it again or leave. Who has been silent for four weeks has left, at the day that they never
answered.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from enum import StrEnum
from functools import cache

from plans.adherence import wilson
from plans.checkin import CheckIn, Completion, Place
from plans.dose import items
from plans.fitting import Fit, fitted
from plans.ledger import Entry, RowKind
from plans.movements import Movement, easier_than
from plans.programme import Day, Programme
from plans.silence import STILL, silent_mornings
from plans.survival import Curve, Stay, kaplan_meier

SMALL = 10
"""Shares of fewer clients are small numbers: one more or less changes much (own choice)."""
HURTS = 3
"""From this pain on a session hurt."""


class End(StrEnum):
    """How a course stands."""

    ON = "still on it"
    FINISHED = "finished"
    LEFT = "left"


@dataclass(frozen=True, slots=True)
class Client:
    """One course: its rows, oldest first, how it stands, and what its days lastingly allow for."""

    rows: Sequence[Entry]
    end: End = End.ON
    fit: Fit = field(default_factory=Fit)


@dataclass(frozen=True, slots=True)
class Count:
    """So many of so many clients."""

    count: int
    of: int

    @property
    def share(self) -> float | None:
        """The share, 0-1; None of nobody."""
        return self.count / self.of if self.of else None

    @property
    def interval(self) -> tuple[float, float]:
        """Its 95 % interval (Wilson), 0-1."""
        return wilson(self.count, self.of)

    @property
    def is_small(self) -> bool:
        """Whether it is of too few to say much."""
        return self.of < SMALL


@dataclass(frozen=True, slots=True)
class DayReport:
    """One session day: how many had it and are still on it, and what came of it for all others."""

    day: int
    had: int
    still_on: int
    done: Count
    part: Count
    left_out: Count
    silent: Count
    """Nothing was said about whether it was done; these four add up to all others."""
    repeated: Count
    eased: Count
    hurt: Count
    """By 3 and more, of those who gave a number."""
    left_there: Count


@dataclass(frozen=True, slots=True)
class MovementReport:
    """One movement as written, of the clients who were handed a session that has it; the four add up to them."""

    movement: str
    barred: Count
    easier: Count
    """An easier neighbour took its place at least once."""
    gone: Count
    """Left out at least once otherwise, such as for loose joints or as a thing for those who like."""
    kept: Count
    """Always as written."""


@dataclass(frozen=True, slots=True)
class ProgrammeReport:
    """The whole report; `staying` is the share that gets past each day of the programme."""

    title: str
    digest: str
    begun: int
    finished: int
    still_on: int
    left: int
    """The silent ones included."""
    fell_silent: int
    days: tuple[DayReport, ...]
    movements: tuple[MovementReport, ...]
    staying: Curve
    stays: tuple[int, ...]
    """The furthest day that each of those who have begun was handed."""
    on_days: tuple[int, ...]
    """The same of those who are still on it."""

    @property
    def is_small(self) -> bool:
        """Whether so few have begun that nothing of it says much."""
        return self.begun < SMALL


def report(programme: Programme, clients: Sequence[Client]) -> ProgrammeReport:
    """The report over clients of this version; a course without a session that came has not begun.

    Raises LookupError for a row with a day that the programme does not have.
    """
    ways = [way for client in clients if (way := _Way.of(client)).sessions]
    ends = [way.end for way in ways]
    return ProgrammeReport(
        title=programme.title,
        digest=programme.digest,
        begun=len(ways),
        finished=ends.count(End.FINISHED),
        still_on=ends.count(End.ON),
        left=ends.count(End.LEFT),
        fell_silent=sum(1 for way in ways if way.fell_silent),
        days=tuple(_day(day.number, ways) for day in programme.days if day.session is not None),
        movements=_movements(programme, ways),
        staying=kaplan_meier(Stay(way.furthest, way.end is End.LEFT) for way in ways),
        stays=tuple(sorted(way.furthest for way in ways)),
        on_days=tuple(sorted(way.furthest for way in ways if way.end is End.ON)),
    )


@dataclass(frozen=True, slots=True)
class _Way:
    """One course as the report counts it."""

    sessions: tuple[Entry, ...]
    """Those that came, without the silence at the end of somebody who left, but for its first."""
    end: End
    fit: Fit
    fell_silent: bool

    @classmethod
    def of(cls, client: Client) -> _Way:
        """A course as it is counted; what a client lacks only for a day does not matter."""
        fell_silent = client.end is End.ON and silent_mornings(client.rows, None) >= STILL
        end = End.LEFT if fell_silent else client.end
        came = [
            row for row in client.rows if row.kind is RowKind.SESSION and (row.delivered or row.checkin != _NOTHING)
        ]
        if end is End.LEFT:
            heard = max((at for at, row in enumerate(came) if row.checkin != _NOTHING), default=-1)
            came = came[: heard + 2]
        fit = replace(client.fit, barred=tuple(sorted(client.fit.barred)), spares=None, lacks=(), minutes=None)
        return cls(tuple(came), end, fit, fell_silent)

    @property
    def furthest(self) -> int:
        """The last day of the programme that they were handed."""
        return max(row.day or 0 for row in self.sessions)

    def on(self, day: int) -> list[Entry]:
        """Their sessions of a day of the programme."""
        return [row for row in self.sessions if row.day == day]

    def is_past(self, day: int) -> bool:
        """Whether no more can come of a day: they went on, finished or left there."""
        return self.end is not End.ON or self.furthest > day


_NOTHING = CheckIn()


def _day(day: int, ways: Sequence[_Way]) -> DayReport:
    had = [way for way in ways if way.on(day)]
    past = [way for way in had if way.is_past(day)]
    rows = [way.on(day) for way in past]
    best = [_best(mine) for mine in rows]
    pains = [pains for mine in rows if (pains := [pain for row in mine if (pain := _pain(row)) is not None])]

    def of_all(count: int) -> Count:
        return Count(count, len(past))

    return DayReport(
        day=day,
        had=len(had),
        still_on=len(had) - len(past),
        done=of_all(best.count(Completion.DONE)),
        part=of_all(best.count(Completion.PART)),
        left_out=of_all(best.count(Completion.NONE)),
        silent=of_all(best.count(None)),
        repeated=of_all(sum(1 for mine in rows if len(mine) > 1)),
        eased=of_all(sum(1 for mine in rows if any(row.level for row in mine))),
        hurt=Count(sum(1 for mine in pains if max(mine) >= HURTS), len(pains)),
        left_there=of_all(sum(1 for way in past if way.end is End.LEFT and way.furthest == day)),
    )


def _best(rows: Sequence[Entry]) -> Completion | None:
    """The most that was done of a day, whichever time."""
    said = {row.checkin.completion for row in rows}
    return next((value for value in Completion if value in said), None)


def _pain(row: Entry) -> int | None:
    """The pain where the programme works."""
    return None if row.checkin.place is Place.ELSEWHERE else row.checkin.pain


# --- movements ------------------------------------------------------------------------------------------------------

_Given = Callable[[int, int, Fit], frozenset[str]]
"""The movements of a day at a level as a fit allows it."""


class _Fate(StrEnum):
    BARRED = "barred"
    EASIER = "easier"
    GONE = "gone"
    KEPT = "kept"


def _movements(programme: Programme, ways: Sequence[_Way]) -> tuple[MovementReport, ...]:
    catalogue = programme.catalogue()
    written = {day.number: _keys(day) for day in programme.days}

    @cache
    def given(day: int, level: int, fit: Fit) -> frozenset[str]:
        found = fitted(programme.day(day), level, fit, catalogue, programme.ages, programme.muscles)
        return frozenset(_keys(found))

    of_each = [_fates(way, written, given, catalogue) for way in ways]
    order = dict.fromkeys(key for keys in written.values() for key in keys)
    return tuple(_movement(key, [fates[key] for fates in of_each if key in fates]) for key in order)


def _keys(day: Day) -> tuple[str, ...]:
    return tuple(item.movement.key for _block, item in items(day.session))


def _fates(
    way: _Way, written: Mapping[int, Sequence[str]], given: _Given, catalogue: Mapping[str, Movement]
) -> dict[str, _Fate]:
    """What became of each movement of the days that one client was handed, the furthest from as written."""
    found: dict[str, _Fate] = {}
    for day, level in dict.fromkeys((row.day or 0, row.level) for row in way.sessions):
        there = given(day, level, way.fit)
        for key in written[day]:
            fate = _fate(key, there, way.fit, catalogue)
            found[key] = min(found.get(key, fate), fate, key=_ORDER.index)
    return found


_ORDER = tuple(_Fate)


def _fate(key: str, there: frozenset[str], fit: Fit, catalogue: Mapping[str, Movement]) -> _Fate:
    if key in fit.barred:
        return _Fate.BARRED
    if key in there:
        return _Fate.KEPT
    return _Fate.EASIER if there & set(easier_than(key, catalogue)) else _Fate.GONE


def _movement(key: str, fates: Sequence[_Fate]) -> MovementReport:
    return MovementReport(key, *(Count(fates.count(fate), len(fates)) for fate in _ORDER))
