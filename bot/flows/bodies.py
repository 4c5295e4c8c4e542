"""What a course's record says of its client's body, as the rules and the days need it."""

from __future__ import annotations

from dataclasses import replace

from bot.flows.showing import Pairs, area_that_hurts
from db.schema import Course, LedgerRow
from plans.fitting import Fit
from plans.screening import screened


def usual_of(course: Course) -> int:
    """The usual pain that the rules allow for, 0-4."""
    return screened(course.screened or {}).usual


def lasting_fit(course: Course) -> Fit:
    """What every day of a client must allow for, whatever the date."""
    found = screened(course.screened or {})
    return Fit(barred=tuple(course.barred or ()), older=found.older, loose=found.loose)


def fit_of(course: Course, row: LedgerRow, pairs: Pairs) -> Fit:
    """What a row's day must allow for; `pairs` are the rows up to it."""
    return replace(
        lasting_fit(course), spares=area_that_hurts(pairs), lacks=tuple(row.lacks or ()), minutes=row.minutes
    )
