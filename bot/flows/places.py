"""From a typed city to a zone, and from typed words to a time of day."""

from __future__ import annotations

import re
from datetime import time

import tzfpy
from rapidfuzz import fuzz, process

from plans.localtime import zone_names

_TIME = re.compile(r"^\s*(\d{1,2})(?:[:.h]\s?(\d{2}))?\s*(am|pm)?\s*$", re.IGNORECASE)


def zones_like(text: str, *, limit: int = 4) -> list[str]:
    """Zone names whose city is what was typed, the likeliest first; empty when nothing is near.

    >>> zones_like("lisbon")
    ['Europe/Lisbon']
    """
    if text.strip() in zone_names():
        return [text.strip()]
    wanted = re.sub(r"[^a-z]+", " ", text.lower()).strip()
    cities = {name: name.rpartition("/")[2].replace("_", " ").replace("-", " ").lower() for name in _places()}
    same = [name for name, city in cities.items() if city == wanted]
    if same or not wanted:
        return same[:limit]
    near = process.extract(wanted, cities, scorer=fuzz.ratio, limit=limit, score_cutoff=75)
    return [name for _city, _score, name in near]


def zone_at(latitude: float, longitude: float) -> str | None:
    """The zone of a place in degrees north and east; None where there is none of ours, as at sea.

    >>> zone_at(38.72, -9.14)
    'Europe/Lisbon'
    """
    found = tzfpy.get_tz(longitude, latitude)
    return found if found in zone_names() and not found.startswith("Etc/") else None


def _places() -> list[str]:
    """Zones named after a place of a region; offsets and old aliases without a region are no places."""
    regions = (
        "Africa/",
        "America/",
        "Antarctica/",
        "Asia/",
        "Atlantic/",
        "Australia/",
        "Europe/",
        "Indian/",
        "Pacific/",
    )
    return sorted(name for name in zone_names() if name.startswith(regions))


def time_of(text: str) -> time | None:
    """A typed time of day, or None when it is none.

    >>> time_of("7:15"), time_of("6 am"), time_of("25:00")
    (datetime.time(7, 15), datetime.time(6, 0), None)
    """
    found = _TIME.match(text)
    if found is None:
        return None
    hour, minute = int(found[1]), int(found[2] or 0)
    half = (found[3] or "").lower()
    if half and not 1 <= hour <= 12:
        return None
    hour = hour % 12 + 12 if half == "pm" else hour % 12 if half == "am" else hour
    return time(hour, minute) if hour < 24 and minute < 60 else None
