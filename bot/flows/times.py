"""When things are due in somebody's own day."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta

from db.schema import Person
from plans import localtime

MIDNIGHT = time(0)
MORNING = time(7)
NUDGE = time(19)
QUIET = time(21)
"""Nudges do not leave after this time."""
LATE = time(14)
"""A session that could not be sent by then waits for /today."""


def zone_of(person: Person) -> str:
    """The person's zone; UTC until they have said one."""
    return person.zone or "UTC"


def today(person: Person, now: datetime) -> date:
    """The date on this person's clock."""
    return localtime.local(now, zone_of(person)).date()


def at(person: Person, day: date, hour: time) -> datetime:
    """The instant of a local date and time; for a date that the zone skips, that of the next one it has."""
    found = localtime.instant(day, hour, zone_of(person))
    return found if found is not None else at(person, day + timedelta(days=1), hour)


def morning_on(person: Person, day: date) -> datetime:
    """The instant of this person's morning message."""
    return at(person, day, person.morning or MORNING)


def next_morning(person: Person, now: datetime) -> datetime:
    """The first morning of this person's that lies ahead."""
    day = today(person, now)
    first = morning_on(person, day)
    return first if first > now else morning_on(person, day + timedelta(days=1))


def too_late(person: Person, day: date) -> datetime:
    """From when on that date's morning message is no longer sent by itself."""
    afternoon = at(person, day, LATE)
    return max(afternoon, morning_on(person, day) + timedelta(hours=2))


def next_weekday(person: Person, weekday: int, hour: time, now: datetime) -> datetime:
    """The next local weekday (0 is Monday) at an hour that lies ahead."""
    day = today(person, now)
    day += timedelta(days=(weekday - day.weekday()) % 7)
    found = at(person, day, hour)
    return found if found > now else at(person, day + timedelta(days=7), hour)
