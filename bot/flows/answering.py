"""A coach's answering hours: on which weekdays, from when to when; read from a line, said, and waited for."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, time, timedelta

from babel.dates import get_day_names

from bot.flows import places, times
from bot.words import Words
from db.schema import Coach, Person
from plans import localtime

OPEN, SHUT = time(7), time(21)
"""Hours in which a call that is no red flag may come to a coach who has set none. Our own choice."""
WEEK = range(7)


@dataclass(frozen=True, slots=True)
class Hours:
    """Two times of day on a coach's own clock, the second after midnight if it is the earlier; Monday is 0."""

    opens: time
    shuts: time
    days: tuple[int, ...] | None = None
    """None: every day."""


def of(coach: Coach) -> Hours | None:
    """The hours that a coach has set."""
    if coach.answers_from is None or coach.answers_until is None:
        return None
    return Hours(coach.answers_from, coach.answers_until, tuple(coach.answers_on) if coach.answers_on else None)


def take(coach: Coach, hours: Hours | None) -> None:
    """Sets a coach's hours, or that they have none."""
    coach.answers_from, coach.answers_until = (hours.opens, hours.shuts) if hours else (None, None)
    coach.answers_on = list(hours.days) if hours and hours.days else None


def said(hours: Hours, words: Words) -> str:
    """The hours in words: "Mon - Fri, 17:00 - 20:00"."""
    clock = f"{hours.opens:%H:%M} - {hours.shuts:%H:%M}"
    if hours.days is None:
        return clock
    names = get_day_names("abbreviated", locale=words.language)
    first, last = hours.days[0], hours.days[-1]
    if len(hours.days) > 2 and hours.days == tuple(range(first, last + 1)):
        return f"{names[first]} - {names[last]}, {clock}"
    return f"{', '.join(names[day] for day in hours.days)}, {clock}"


# --- read -----------------------------------------------------------------------------------------------------------


def read(text: str, language: str = "en") -> Hours | None:
    """Two times of day and perhaps weekdays, in English or in the coach's language; None for anything else.

    >>> read("1700-2000")
    Hours(opens=datetime.time(17, 0), shuts=datetime.time(20, 0), days=None)
    >>> read("Mon-Wed, Fri 8:30 to 12:00").days, read("8:30 to 8:30")
    ((0, 1, 2, 4), None)
    """
    if re.fullmatch(r"\d{4}-\d{4}", text, re.ASCII):
        text = f"{text[:2]}:{text[2:4]}-{text[5:7]}:{text[7:]}"
    found = [places.time_of(part) for part in re.findall(r"\d{1,2}[:.h]\d{2}", text)]
    if len(found) != 2 or found[0] is None or found[1] is None or found[0] == found[1]:
        return None
    return Hours(found[0], found[1], _days(text, language))


def _days(text: str, language: str) -> tuple[int, ...] | None:
    """The weekdays that a line names; None for none of them, and for all."""
    names = _names(language)
    marks = re.findall(r"[^\W_]+|[-–]", text.lower())
    found: set[int] = set()
    before: int | None = None
    through = False
    for mark in marks:
        day = next((number for name, number in names if _means(mark, name)), None)
        if day is None:
            through = before is not None and mark in _THROUGH
            before = before if through else None
        else:
            found |= (
                {(before + n) % 7 for n in range((day - before) % 7 + 1)} if through and before is not None else {day}
            )
            before, through = day, False
    return tuple(sorted(found)) if 0 < len(found) < len(WEEK) else None


_THROUGH = ("-", "–", "to", "until", "through", "bis", "a", "al", "hasta")


def _names(language: str) -> Sequence[tuple[str, int]]:
    """The weekdays in the language and in English, Monday is 0."""
    spoken = (language, "en")
    return [(str(name).lower(), n) for one in spoken for n, name in get_day_names("wide", locale=one).items()]


def _means(mark: str, name: str) -> bool:
    """Whether a word is a weekday's beginning of two letters and more, or begins like it: "we", "wed", "wednesdays"."""
    return len(mark) > 1 and (name.startswith(mark) or mark.startswith(name[:3]))


# --- waited for -----------------------------------------------------------------------------------------------------


def awake(coach: Coach, own: Person, at: datetime) -> datetime:
    """The first moment from `at` on that lies in a coach's answering hours. `own` is the coach as a person."""
    hours = of(coach) or Hours(OPEN, SHUT)
    today = localtime.local(at, times.zone_of(own)).date()
    for ahead in range(-1, len(WEEK) + 1):
        day = today + timedelta(days=ahead)
        if hours.days is not None and day.weekday() not in hours.days:
            continue
        opens = times.at(own, day, hours.opens)
        shuts = times.at(own, day + timedelta(days=hours.shuts < hours.opens), hours.shuts)
        if at < shuts:
            return max(at, opens)
    return at
