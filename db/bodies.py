"""What a course's record says of its client's body, as the rules and the days need it, and the day that fits it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from db.schema import Course, LedgerRow
from plans.cautions import Caution
from plans.checkin import Area, CheckIn, Place
from plans.fitting import Fit, fitted
from plans.ledger import Entry
from plans.limits import barred_by
from plans.programme import Day, Programme
from plans.screening import screened

NO_FIT = Fit()
Pairs = Sequence[tuple[LedgerRow, Entry]]
"""A course's rows, oldest first, each beside what the rules see of it; the last is the one to show."""


def usual_of(course: Course) -> int:
    """The usual pain that the rules allow for, 0-4."""
    return screened(course.screened or {}).usual


def lasting_fit(course: Course) -> Fit:
    """What every day of a client must allow for, whatever the date."""
    found = screened(course.screened or {})
    return Fit(barred=tuple(course.barred or ()), older=found.older, loose=found.loose)


def bar(course: Course, programme: Programme, caution: Caution) -> None:
    """Leaves out from now on whatever of a programme asks for what a client has said they cannot give."""
    _bar(course, barred_by(programme, [caution], loose=screened(course.screened or {}).loose))


def bar_what_is_new(course: Course, before: Programme, after: Programme) -> None:
    """The same for what another version brings; what stood in the one before stays as its coach left it."""
    found = screened(course.screened or {})
    known = barred_by(before, found.limits, loose=found.loose)
    _bar(course, [key for key in barred_by(after, found.limits, loose=found.loose) if key not in known])


def _bar(course: Course, keys: Sequence[str]) -> None:
    if keys:
        course.barred = sorted({*(course.barred or ()), *keys})


def fit_of(course: Course, row: LedgerRow, pairs: Pairs) -> Fit:
    """What a row's day must allow for; `pairs` are the rows up to it."""
    return replace(
        lasting_fit(course), spares=area_that_hurts(pairs), lacks=tuple(row.lacks or ()), minutes=row.minutes
    )


def area_that_hurts(pairs: Pairs) -> Area | None:
    """Where a client's newest answer says that it hurts, when that is not where the programme works."""
    said = next((entry.checkin for _row, entry in reversed(pairs) if entry.checkin != CheckIn()), CheckIn())
    return said.area if said.place is Place.ELSEWHERE and said.pain != 0 else None


def handed_out(programme: Programme, row: LedgerRow, fit: Fit) -> Day:
    """The day of a row as its client gets it: eased, and as it fits them. Raises ValueError for a row without one."""
    if row.day is None:
        raise ValueError(f"ledger row {row.id} of kind {row.kind} has no day")
    return fitted(programme.day(row.day), row.level, fit, programme.catalogue(), programme.ages, programme.muscles)
