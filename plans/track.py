"""Where a course stands, and which row a verdict gives it on a date: a programme with its calendar, prepared once."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from functools import cache, lru_cache
from typing import NamedTuple

from plans.heavier import Heaviness, heaviness
from plans.ledger import RowKind
from plans.pace import Pace
from plans.past import Past
from plans.programme import WEEK, Programme
from plans.rules import Tell, Verdict, Vote

LIGHTEST = 2
SESSION, REST = RowKind.SESSION, RowKind.REST


class Position(NamedTuple):
    """Where a course stands: the day in hand (from 1), its ease level, and following rest days already taken."""

    day: int = 1
    level: int = 0
    rests_taken: int = 0


class Row(NamedTuple):
    """The next row, and where the course stands then. No `kind` means that the course is finished."""

    kind: RowKind | None
    position: Position
    day: int | None = None
    prescribed: bool = False


def lighter(position: Position) -> Position:
    """The same day, one level lighter."""
    return position._replace(level=min(position.level + 1, LIGHTEST))


def passed(position: Position) -> Position:
    """The day after the one in hand, past the rest days that were taken."""
    return Position(position.day + 1 + position.rests_taken, position.level)


class Lapse(NamedTuple):
    """Dates missed, eight and more, and the first day held in the one or two weeks before."""

    missed: int
    first_held: int | None


def lapse_of(past: Past, today: date) -> Lapse | None:
    """The lapse that ends today; None when fewer dates were missed."""
    missed = past.gap(today)
    return None if missed < 8 else Lapse(missed, past.first_held(7 if missed < 14 else 14))


@dataclass(frozen=True, slots=True, eq=False)
class Way:
    """How a verdict gets its row on one sort of date. It is equal to itself only, which makes it a fast key."""

    kinds: tuple[RowKind, ...]
    """What each day of the programme is, from the first."""
    heaviness: Heaviness
    together: bool
    trains: bool
    beside_a_day_off: bool

    def kind_of(self, day: int) -> RowKind:
        """What a day of the programme is, from 1."""
        return self.kinds[day - 1]

    def after_lapse(self, position: Position, lapse: Lapse | None) -> tuple[Position, Vote | None]:
        """The position after a lapse, and the lapse as a vote. Never forward; in a group only lighter.

        Bands are this program's own choice, from studies of time off: little is lost in a week, much in a month.
        """
        if lapse is None:
            return position, None
        missed = lapse.missed
        back = 1 if missed > 28 else min(lapse.first_held or 1, position.day)
        level = 0 if missed > 28 else position.level if missed < 14 else LIGHTEST
        if self.together:
            back, level = position.day, LIGHTEST if missed >= 14 else min(position.level + 1, LIGHTEST)
        tell = None if missed < 14 else Tell.LIST
        stays = (back, level) == (position.day, position.level) and missed <= 28
        moved = position if stays else Position(back, level)
        return moved, Vote("lapse", Verdict.REPEAT, tell, {"gap": missed, "back": back, "level": level})

    def hand_out(self, position: Position) -> Row:
        """The row for the day in hand; past the last day there is none, the course is finished."""
        number = position.day
        if number > len(self.kinds):
            return Row(None, position)
        if not self.trains:
            return Row(RowKind.OFF, position)
        if self._is_taken(number):
            return self.hand_out(Position(number + 1, position.level))
        return Row(self.kind_of(number), position, number)

    def _is_taken(self, number: int) -> bool:
        """A rest day beside a date without training is taken already; a group keeps its dates."""
        return self.beside_a_day_off and not self.together and self.kind_of(number) is REST

    def _rest_day_coming(self, position: Position) -> int | None:
        """The number of the rest day that follows the day in hand and is not taken yet."""
        number = position.day + 1 + position.rests_taken
        return number if number <= len(self.kinds) and self.kind_of(number) is REST else None

    def _stay(self, position: Position, *, done: bool, date_off: bool = False) -> Row:
        """The same day again: after the rest day that comes next when the session was done, or after a date off."""
        rest = self._rest_day_coming(position) if done else None
        if rest is not None:
            position = position._replace(rests_taken=position.rests_taken + 1)
            if not self._is_taken(rest):
                return Row(REST, position, rest, prescribed=True)
        return Row(REST, position, prescribed=True) if date_off else self.hand_out(position)

    def row(self, position: Position, verdict: Verdict, *, heavier: bool, done: bool) -> Row:
        """The row that a verdict gives. `done`: the session was done, at least in part."""
        if verdict is Verdict.REFER:
            return Row(RowKind.WAITING, position)
        if self.together:
            return self._with_the_group(position, verdict, heavier=heavier)
        if verdict is Verdict.REST:
            return self._stay(lighter(position), done=done, date_off=True)
        if verdict is Verdict.EASE:
            return self._stay(lighter(position), done=done)
        if verdict is Verdict.REPEAT:
            return self._stay(position, done=done)
        return self._advance(position, heavier=heavier, done=done)

    def climbs_first(self, position: Position, verdict: Verdict, *, heavier: bool) -> bool:
        """Whether an eased course climbs one level before it goes on, as the next session day is heavier."""
        return verdict is Verdict.ADVANCE and heavier and position.level > 0 and not self.together

    def _advance(self, position: Position, *, heavier: bool, done: bool) -> Row:
        """The next day; an eased course climbs one level with it, or first."""
        climbed = position._replace(level=max(position.level - 1, 0))
        if self.climbs_first(position, Verdict.ADVANCE, heavier=heavier):
            return self._stay(climbed, done=done)
        return self.hand_out(passed(climbed))

    def _with_the_group(self, position: Position, verdict: Verdict, *, heavier: bool) -> Row:
        """The group's day at this client's level: lighter where it would be a step too far."""
        if verdict is Verdict.REST:
            return Row(REST, lighter(position), prescribed=True)
        if verdict is Verdict.EASE or (verdict is Verdict.REPEAT and heavier):
            position = lighter(position)
        elif verdict is Verdict.ADVANCE and not heavier:
            position = position._replace(level=max(position.level - 1, 0))
        return self.hand_out(position)


class Track(NamedTuple):
    """A programme at a pace, for everybody who goes through it so. `week` is the way of each weekday, Monday first."""

    pace: Pace
    week: tuple[Way, ...]


def track_of(programme: Programme, pace: Pace) -> Track:
    """The track of a course."""
    return Track(pace, _week(programme, pace.weekdays, pace.together))


@lru_cache(maxsize=64)
def _week(programme: Programme, weekdays: tuple[int, ...] | None, together: bool) -> tuple[Way, ...]:
    """What each weekday is, Monday first; weekdays of one sort share their way."""
    pace, heavier = Pace(date.min, weekdays), heaviness(programme)
    kinds = tuple(RowKind(day.kind) for day in programme.days)

    @cache
    def way(trains: bool, beside_a_day_off: bool) -> Way:
        return Way(kinds, heavier, together, trains, beside_a_day_off)

    return tuple(way(pace.trains(weekday), pace.is_beside_a_day_off(weekday)) for weekday in range(WEEK))
