"""The weeks of a coach's clients, read at once: each client with what is to be said of them, and all together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cached_property

from bot.flows import times
from bot.flows.desk import Desk
from db import bodies, weeks
from db.courses import OPEN, CourseState
from db.schema import Coach, Course, MeasureRow, Person
from plans import needs, weekly
from plans.comparing import WEEK
from plans.localtime import local
from plans.measures import MEASURES, Change, Measure, compare
from plans.needs import Need, Standing, Told
from plans.programme import Programme
from plans.weekly import ClientWeek, GroupWeek, Handed


@dataclass(frozen=True, slots=True)
class Tested:
    """A test of this week, and what it is worth beside the first one; None for the first one itself."""

    measure: Measure
    side: str | None
    first: float
    value: float
    change: Change | None


@dataclass(frozen=True, slots=True)
class Seen:
    """One client as the digest sees them."""

    client: weeks.Client
    programme: Programme
    week: ClientWeek
    tests: tuple[Tested, ...]
    needs: tuple[Need, ...]

    @property
    def label(self) -> str:
        """The client's first name."""
        return self.client.person.label

    @property
    def course(self) -> Course:
        """The client's course."""
        return self.client.course


@dataclass(frozen=True)
class Digest:
    """All clients of a coach in the week that ends on a date, and those whose course ended in the eight weeks to it."""

    last: date
    clients: Sequence[Seen]

    @cached_property
    def group(self) -> GroupWeek:
        """All of them together."""
        return weekly.group_week([seen.week for seen in self.clients], [seen.week for seen in self.there], self.last)

    @cached_property
    def there(self) -> list[Seen]:
        """Those who are on their course, or whose course ended in this week."""
        return [seen for seen in self.clients if seen.course.state in OPEN or _ended(seen.client, self.last)]

    @cached_property
    def needing(self) -> list[Seen]:
        """Those who need their coach, whom first."""
        found = (seen for seen in self.clients if seen.needs)
        return sorted(found, key=lambda seen: (needs.first(seen.needs), seen.label.lower()))

    @property
    def first(self) -> date:
        """The first date of the week."""
        return self.last - WEEK + timedelta(days=1)

    def ended(self, state: CourseState) -> list[Seen]:
        """Whose course came to such an end in this week."""
        return [seen for seen in self.clients if seen.course.state == state and _ended(seen.client, self.last)]

    def of(self, version_id: int) -> Digest:
        """Only those on one version of a programme."""
        return Digest(self.last, [seen for seen in self.clients if seen.course.version_id == version_id])


async def read(desk: Desk, person: Person, coach: Coach, last: date) -> Digest:
    """The week that ends on a date of the coach's."""
    since = weekly.first_date(last)
    found = await weeks.of_coach(
        desk.session, coach.id, since=since, ended_since=times.at(person, since, times.MORNING)
    )
    seconds = {}
    programmes = {}
    for client in found.clients:
        version = client.course.version_id
        if version not in programmes:
            programmes[version] = await desk.programme(client.course)
            seconds[version] = weekly.seconds_of(programmes[version])
    kept_up = {client.course.after_id for client in found.clients}
    seen = (
        _seen(desk, client, last, programmes[client.course.version_id], seconds[client.course.version_id])
        for client in found.clients
    )
    return Digest(last, [replace(one, needs=()) if one.course.id in kept_up else one for one in seen])


def _seen(desk: Desk, client: weeks.Client, last: date, programme: Programme, seconds: weekly.Seconds) -> Seen:
    person, heard = client.person, client.person.heard_at
    week = weekly.client_week(
        [Handed(row.entry, row.verdict, row.lacks, row.minutes) for row in client.rows],
        last,
        today=times.today(person, desk.now),
        heard_on=local(heard, times.zone_of(person)).date() if heard else None,
        fit=bodies.lasting_fit(client.course),
        seconds=seconds,
    )
    tests = tuple(_tested(client, last))
    return Seen(client, programme, week, tests, _needs(client, week, tests, last))


def _tested(client: weeks.Client, last: date) -> Iterator[Tested]:
    firsts: dict[tuple[str, str | None], MeasureRow] = {}
    for row in client.tests:
        first = firsts.setdefault((row.measure, row.side), row)
        if last - WEEK < local(row.at, times.zone_of(client.person)).date() <= last:
            measure, value, before = MEASURES[row.measure], row.value or 0.0, first.value or 0.0
            yield Tested(measure, row.side, before, value, None if first is row else compare(measure, before, value))


def _needs(client: weeks.Client, week: ClientWeek, tests: Sequence[Tested], last: date) -> tuple[Need, ...]:
    course, person = client.course, client.person
    finished = course.state == CourseState.FINISHED
    if course.state == CourseState.STOPPED or (finished and not _ended(client, last)):
        return ()
    zone = times.zone_of(person)
    return needs.needs(
        Standing(
            waiting=course.state == CourseState.WAITING,
            finished=finished,
            reachable=person.unreachable_since is None,
            silent=0 if finished or course.paused else week.silent,
            told=[
                Told(one.cause, one.facts, one.at_once, local(one.opened_at, zone).date() > last - WEEK)
                for one in client.alerts
            ],
            pain=week.pain,
            tightness=week.tightness,
            completion=weekly.own_completion(week, last),
            worse=[test.measure.name for test in tests if test.change is Change.LOSS],
        )
    )


def _ended(client: weeks.Client, last: date) -> bool:
    """Whether a course that is over ended in the week, or after it; a clock that moved back took no session away."""
    ended = client.course.ended_at
    if ended is None:
        return False
    dates = [local(ended, times.zone_of(client.person)).date(), *(row.entry.on for row in client.rows[-1:])]
    return max(dates) > last - WEEK
