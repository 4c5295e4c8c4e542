"""A client's week and a group's, as their coach reads them: counts, rates in three times, trends, silence.

A session that came today and has not been answered is still open, and no part of any figure.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cache
from itertools import chain

from plans import dose, trends
from plans.adherence import Week, week_of
from plans.checkin import Area, CheckIn, Place
from plans.comparing import MONTH, WEEK, Comparison, Due, Figure, compared, completion, due
from plans.fitting import Fit, fitted
from plans.ledger import Entry, RowKind
from plans.programme import Programme
from plans.rules import Verdict
from plans.silence import silent_mornings
from plans.trends import Direction, Trend

REACH = 2 * MONTH
"""How far back the rows go that a digest reads."""
WEEKS = 4
"""Weeks that stand side by side: one alone proves little."""

Seconds = Callable[[int, int, Fit], tuple[float, float]]
"""Seconds of work of a day (its number, a level, what the client's body allows): as written, and as handed out."""


def seconds_of(programme: Programme) -> Seconds:
    """The seconds of a programme's days, each reckoned once for all clients who are alike."""
    catalogue = programme.catalogue()

    @cache
    def written(number: int) -> float:
        return float(sum(dose.work_seconds(programme.day(number)).values()))

    @cache
    def seconds(number: int, level: int, fit: Fit) -> tuple[float, float]:
        day = fitted(programme.day(number), level, fit, catalogue, programme.ages, programme.muscles)
        asked = written(number)
        return asked, min(asked, float(sum(dose.work_seconds(day).values())))

    return seconds


@dataclass(frozen=True, slots=True)
class Handed:
    """One row of a client's, what was decided to get to it, and what it lacked or was cut to on its date."""

    entry: Entry
    verdict: Verdict | None = None
    lacks: tuple[str, ...] = ()
    minutes: int | None = None


@dataclass(frozen=True, slots=True)
class ClientWeek:
    """One client: the week's counts, all sessions of eight weeks, both trends, and the mornings without a word."""

    weeks: tuple[Week, ...]
    """The last four, oldest first."""
    sessions: tuple[Due, ...]
    followed: tuple[Verdict, ...]
    """What was decided for each date of the week."""
    pain: Trend
    tightness: Trend
    silent: int

    @property
    def week(self) -> Week:
        """The last one."""
        return self.weeks[-1]


def client_week(
    rows: Sequence[Handed],
    last: date,
    *,
    today: date,
    heard_on: date | None,
    fit: Fit,
    seconds: Seconds,
) -> ClientWeek:
    """The week that ends on a date, from the rows of eight weeks, oldest first.

    `today` and `heard_on`, the date of the client's last word, are by the client's clock; `fit` is what their days
    lastingly allow for.
    """
    rows = [row for row in rows if last - REACH < row.entry.on <= last]
    entries = [row.entry for row in rows]
    closed = [entry for entry in entries if not _is_open(entry, today)]
    asked = dict(_asked(rows, fit, seconds))
    return ClientWeek(
        weeks=tuple(week_of(_between(closed, end - WEEK, end)) for end in ends(last)),
        sessions=tuple(due(closed, lambda entry: asked[entry.on])),
        followed=tuple(row.verdict for row in rows if row.verdict is not None and row.entry.on > last - WEEK),
        pain=trends.pain(entries, last),
        tightness=trends.tightness(entries, last),
        silent=silent_mornings(closed, heard_on),
    )


def ends(last: date) -> tuple[date, ...]:
    """The last dates of the four weeks that stand side by side, oldest first."""
    return tuple(last - WEEK * back for back in reversed(range(WEEKS)))


def _between(entries: Iterable[Entry], after: date, end: date) -> list[Entry]:
    return [entry for entry in entries if after < entry.on <= end]


def _is_open(entry: Entry, today: date) -> bool:
    """Whether a session may still be done or answered."""
    said = entry.checkin
    return entry.on >= today and entry.kind is RowKind.SESSION and said.completion is None and said.pain is None


def _asked(rows: Iterable[Handed], fit: Fit, seconds: Seconds) -> Iterator[tuple[date, tuple[float, float]]]:
    """For each date with a session its seconds, as written and as handed out."""
    spares: Area | None = None
    for row in rows:
        said = row.entry.checkin
        if said != _NOTHING:
            spares = said.area if said.place is Place.ELSEWHERE and said.pain != 0 else None
        if row.entry.kind is RowKind.SESSION:
            of = fit
            if spares is not None or row.lacks or row.minutes is not None:
                of = replace(fit, spares=spares, lacks=row.lacks, minutes=row.minutes)
            yield row.entry.on, seconds(row.entry.day or 1, row.entry.level, of)


_NOTHING = CheckIn()


@dataclass(frozen=True, slots=True)
class GroupWeek:
    """A group: its weeks and rates, and of how many clients what can be said."""

    comparison: Comparison
    weeks: tuple[Week, ...]
    """The last four, oldest first."""
    followed: Mapping[Verdict, int]
    pain: Mapping[Direction, int]
    tightness: Mapping[Direction, int]

    @property
    def week(self) -> Week:
        """The last one."""
        return self.weeks[-1]


def group_week(clients: Sequence[ClientWeek], there: Sequence[ClientWeek], last: date) -> GroupWeek:
    """All clients together, in the week that ends on a date; trends are of those who are still `there`."""
    return GroupWeek(
        comparison=compared([client.sessions for client in clients], last),
        weeks=tuple(_together([client.weeks[at] for client in clients]) for at in range(WEEKS)),
        followed=Counter(chain.from_iterable(client.followed for client in clients)),
        pain=Counter(client.pain.direction for client in there),
        tightness=Counter(client.tightness.direction for client in there),
    )


def _together(weeks: Sequence[Week]) -> Week:
    return Week(
        due=sum(week.due for week in weeks),
        done=sum(week.done for week in weeks),
        part=sum(week.part for week in weeks),
        left_out=sum(week.left_out for week in weeks),
        silent=sum(week.silent for week in weeks),
        answered=sum(week.answered for week in weeks),
        pains=tuple(chain.from_iterable(week.pains for week in weeks)),
    )


def own_completion(client: ClientWeek, last: date) -> Figure:
    """One client's own completion in its three times."""
    return completion([client.sessions], last)


def first_date(last: date) -> date:
    """The first date whose rows a digest reads."""
    return last - REACH + timedelta(days=1)
