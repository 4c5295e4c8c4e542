"""From a local date and time in a zone to the instant it means, by this program's own copy of the IANA zone data."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, time
from functools import cache
from importlib.resources import files
from zoneinfo import ZoneInfo

import tzdata
from rapidfuzz import process


class UnknownZone(ValueError):
    """A zone name that the IANA zone data does not know; the message says what was found and what is near it."""

    def __init__(self, name: str) -> None:
        near = [match for match, _score, _i in process.extract(name, sorted(zone_names()), limit=3, score_cutoff=60)]
        hint = f"; near it: {', '.join(near)}" if near else "; write it like Europe/Lisbon"
        super().__init__(f"{name!r} is no IANA zone name{hint}")
        self.name = name
        self.near = tuple(near)


def data_version() -> str:
    """The release of the IANA zone data in use, such as 2026f."""
    return str(tzdata.IANA_VERSION)


@cache
def data_not_before() -> date:
    """A date on which the zone data in use was not yet released; the data is at most as old as that.

    The release is named by its year; the table of leap seconds beside it says when it was last changed.
    """
    table = files("tzdata").joinpath("zoneinfo", "leapseconds").read_text(encoding="ascii")
    changed = re.search(r"^#updated (\d+)", table, re.MULTILINE)
    year = date(int(data_version()[:4]), 1, 1)
    return max(year, datetime.fromtimestamp(int(changed[1]), UTC).date()) if changed else year


@cache
def zone_names() -> frozenset[str]:
    """All zone names of the data, links too."""
    return frozenset(files("tzdata").joinpath("zones").read_text(encoding="ascii").split())


@cache
def zone(name: str) -> ZoneInfo:
    """The zone by its IANA name, read from the program's own data, never from the host's, which may be stale.

    Raises UnknownZone.
    """
    if name not in zone_names():
        raise UnknownZone(name)
    with files("tzdata").joinpath("zoneinfo", *name.split("/")).open("rb") as data:
        return ZoneInfo.from_file(data, key=name)


def date_exists(day: date, zone_name: str) -> bool:
    """Whether the zone has this local date at all; a zone that moves over the date line skips one.

    >>> date_exists(date(2011, 12, 30), "Pacific/Apia")
    False
    """
    noon = datetime.combine(day, time(12), tzinfo=zone(zone_name))
    return noon.astimezone(UTC).astimezone(noon.tzinfo).date() == day


def instant(day: date, at: time, zone_name: str) -> datetime | None:
    """The UTC instant of a local date and time, or None when the zone skips that date.

    A time that the clocks jump over is read with the offset before the jump, and of a time that comes twice the
    first is meant (RFC 5545, 3.3.5; PEP 495, fold=0).

    >>> instant(date(2026, 3, 29), time(1, 30), "Europe/London").isoformat()
    '2026-03-29T01:30:00+00:00'
    """
    if not date_exists(day, zone_name):
        return None
    return datetime.combine(day, at.replace(fold=0, tzinfo=None), tzinfo=zone(zone_name)).astimezone(UTC)


def local(moment: datetime, zone_name: str) -> datetime:
    """The same moment on the clocks of a zone. A naive datetime is refused with ValueError."""
    if moment.tzinfo is None:
        raise ValueError(f"{moment!r} has no zone: a moment must be aware")
    return moment.astimezone(zone(zone_name))
