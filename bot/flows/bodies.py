"""What a course's record says of its client's body, as the rules and the days need it."""

from __future__ import annotations

from bot.flows.showing import Pairs, area_that_hurts
from db.schema import Course, LedgerRow
from plans.fitting import Fit
from plans.screening import screened


def usual_of(course: Course) -> int:
    """The usual pain that the rules allow for, 0-4."""
    return screened(course.screened or {}).usual


def fit_of(course: Course, row: LedgerRow, pairs: Pairs) -> Fit:
    """What a row's day must allow for; `pairs` are the rows up to it."""
    found = screened(course.screened or {})
    return Fit(
        barred=tuple(course.barred or ()),
        older=found.older,
        loose=found.loose,
        spares=area_that_hurts(pairs),
        lacks=tuple(row.lacks or ()),
        minutes=row.minutes,
    )
