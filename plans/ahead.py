"""The dates that lie ahead of a course if every session goes well: the rules themselves, asked date by date."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from typing import NamedTuple

from plans.checkin import CheckIn, Completion
from plans.course import Overruling, decide
from plans.ledger import Entry, RowKind
from plans.pace import Pace
from plans.programme import Programme
from plans.rules import Settings
from plans.track import Position

WELL = CheckIn(Completion.DONE, pain=0)
"""What is taken for the answer of a date that lies ahead."""


class Coming(NamedTuple):
    """What one date brings: a day of the programme at an ease level; a rest that a verdict gave has no day."""

    on: date
    kind: RowKind
    day: int | None
    level: int


def ahead(
    programme: Programme,
    position: Position,
    past: Sequence[Entry],
    first: date,
    dates: int,
    *,
    settings: Settings,
    usual: int = 0,
    pace: Pace | None = None,
    overruling: Overruling | None = None,
) -> Iterator[Coming]:
    """So many dates from `first`, the first without a row, to the end of the programme at most.

    What the past leaves open is taken to go well; `overruling` acts on the first date with training.
    """
    history = [_well(entry) if entry is past[-1] else entry for entry in past]
    for number in range(dates):
        on = first + timedelta(days=number)
        found = decide(
            programme,
            position,
            history,
            on,
            settings=settings,
            usual=usual,
            pace=pace,
            overruling=overruling,
            ask=False,
        )
        if found.kind is None or found.kind is RowKind.WAITING:
            return
        position = found.position
        overruling = overruling if found.kind is RowKind.OFF else None
        yield Coming(on, found.kind, found.day, position.level)
        history.append(_well(Entry(on, found.kind, found.day, position.level, found.prescribed)))


def _well(entry: Entry) -> Entry:
    """A row as if it had gone well, where nothing was said of it."""
    if entry.kind is RowKind.SESSION and entry.checkin == CheckIn():
        return entry._replace(checkin=WELL, delivered=True)
    return entry._replace(recorded=True) if entry.kind is RowKind.MEASURE else entry
