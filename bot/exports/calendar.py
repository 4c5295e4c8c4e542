"""A client's dates ahead as an iCalendar file (RFC 5545): when each session comes, by the client's own clock.

A date has one name (UID) in every export, so that a newer file takes the older one's place in a calendar. Nobody is
named in it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from importlib.metadata import version
from typing import TYPE_CHECKING

from plans.localtime import date_exists, zone

if TYPE_CHECKING:
    from icalendar import Event, Timezone


@dataclass(frozen=True, slots=True)
class Dated:
    """One date of the plan: its name, what it is in words, and minutes; None for a date of rest."""

    name: str
    on: date
    summary: str
    about: str
    minutes: int | None


def calendar(title: str, zone_name: str, at: time, dates: Sequence[Dated], made_at: datetime) -> bytes:
    """The file. Sessions begin at `at` on the zone's clocks; a date that the zone skips is left out.

    A time that the clocks jump over is read with the offset before the jump, and of one that comes twice the first is
    meant: RFC 5545, 3.3.5, says the same as `plans.localtime`.
    """
    from icalendar import Calendar, vText  # loaded when a calendar is asked for, which is seldom

    here = [one for one in dates if date_exists(one.on, zone_name)]
    found = Calendar()
    found.add("prodid", f"-//Easeward//easeward {version('easeward')}//EN")
    found.add("version", "2.0")
    found.add("calscale", "GREGORIAN")
    found.add("method", "PUBLISH")
    found.add("x-wr-calname", vText(title))
    if here and zone_name != "UTC":
        found.add_component(_zone(zone_name, here))
    for one in here:
        found.add_component(_event(one, zone_name, at, made_at))
    return bytes(found.to_ical())


def _zone(name: str, dates: Sequence[Dated]) -> Timezone:
    """The zone's clocks from before the first date until after the last, by the program's own zone data."""
    from icalendar import Timezone

    first, last = min(one.on for one in dates), max(one.on for one in dates)
    return Timezone.from_tzinfo(
        zone(name), name, first_date=first - timedelta(days=2), last_date=last + timedelta(days=2)
    )


def _event(one: Dated, zone_name: str, at: time, made_at: datetime) -> Event:
    from icalendar import Event

    found = Event()
    found.add("uid", one.name)
    found.add("dtstamp", made_at.astimezone(UTC))
    found.add("summary", one.summary)
    found.add("description", one.about)
    found.add("class", "PRIVATE")
    if one.minutes is None:
        found.add("dtstart", one.on)
        found.add("transp", "TRANSPARENT")
    else:
        found.add("dtstart", _start(one.on, at, zone_name))
        found.add("duration", timedelta(minutes=one.minutes))
    return found


def _start(on: date, at: time, zone_name: str) -> datetime:
    local = datetime.combine(on, at.replace(tzinfo=None, fold=0))
    return local.replace(tzinfo=UTC if zone_name == "UTC" else zone(zone_name))
