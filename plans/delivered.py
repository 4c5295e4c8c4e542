"""Minutes of holding by week: what the programme asked for in the sessions that came, and what was done of it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from plans.charts.doses import Dose
from plans.checkin import CheckIn, Completion
from plans.dose import HOLDING_KINDS, muscle_seconds
from plans.movements import Muscle
from plans.programme import Day

HALF, LESS = 0.5, 0.25
"""What is counted of a session that was done in part: half and more, or less than half (own choice)."""


@dataclass(frozen=True, slots=True)
class Handed:
    """A session that came: its week from 0, the day as written, as it was handed out, and what was said of it."""

    week: int
    asked: Day
    given: Day
    said: CheckIn


def by_week(handed: Sequence[Handed], muscle: Muscle, weeks: int) -> tuple[Dose, ...]:
    """For each week the minutes for one side of a muscle: asked for at least and at most, and done at least."""
    return tuple(_week([one for one in handed if one.week == week], muscle) for week in range(weeks))


def _week(handed: Sequence[Handed], muscle: Muscle) -> Dose:
    low, high = _minutes((one.asked for one in handed), muscle)
    done = sum(_minutes([one.given], muscle)[0] * share_of(one.said) for one in handed)
    return Dose(done, low, high)


def share_of(said: CheckIn) -> float:
    """How much of a session was surely done, 0-1; nothing when nothing was said."""
    if said.completion is Completion.PART:
        return HALF if said.half is not False else LESS
    return 1.0 if said.completion is Completion.DONE else 0.0


def _minutes(days: Iterable[Day], muscle: Muscle) -> tuple[float, float]:
    """Least and most minutes of holding for one side, the two sides' mean."""
    seconds = [span for (found, _side), span in muscle_seconds(days, HOLDING_KINDS).items() if found is muscle]
    return sum(low for low, _high in seconds) / 120, sum(high for _low, high in seconds) / 120
