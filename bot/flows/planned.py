"""The dates ahead of a client as far as they are known, as a calendar file."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from bot.exports.calendar import Dated, calendar
from bot.exports.naming import name_of
from bot.flows import deciding, times
from bot.flows.desk import Desk
from bot.words import Words
from bot.words.doses import day_length, day_title
from bot.words.programmes import programme_in
from db import bodies, courses
from db.courses import CourseState
from db.schema import Course, Person, ProgrammeVersion
from plans.ahead import Coming
from plans.dose import items, minutes
from plans.fitting import fitted
from plans.ledger import Entry, RowKind
from plans.programme import Day, Programme

DATES = 14
"""So many dates are looked ahead: answers change what lies further on. Our own choice."""
TEST_MINUTES = 15
"""What a test alone takes. Our own choice."""
_SHOWN = frozenset({RowKind.SESSION, RowKind.MEASURE, RowKind.REST})


async def plan_file(desk: Desk, client: Person, course: Course, past: list[Entry] | None = None) -> bytes | None:
    """The calendar file of a course, in the client's language and by their clock; None when no date is known.

    `past` are the course's rows, if they have been read already.
    """
    programme = await _programme(desk, course)
    rows = [entry for _row, entry in await courses.history(desk.session, course)] if past is None else list(past)
    found = await _coming(desk, client, course, programme, rows)
    words = desk.words(client)
    dated = [_dated(words, client, course, programme, one) for one in found if one.kind in _SHOWN]
    if not dated:
        return None
    at = client.morning or times.MORNING
    return calendar(programme.title, times.zone_of(client), at, dated, desk.now)


async def _programme(desk: Desk, course: Course) -> Programme:
    """The version that the next row will be of."""
    number = course.next_version_id or course.version_id
    return programme_in(await desk.session.get_one(ProgrammeVersion, number))


async def _coming(desk: Desk, client: Person, course: Course, programme: Programme, past: list[Entry]) -> list[Coming]:
    """Today's row if it is made, and the dates after it; nothing of a course whose going on is not known."""
    if course.state != CourseState.ACTIVE or (course.paused is not None and course.back_on is None):
        return []
    today = times.today(client, desk.now)
    made = [Coming(e.on, e.kind, e.day, e.level) for e in past[-1:] if e.on == today and course.paused is None]
    first = max(past[-1].on + timedelta(days=1) if past else (course.starts_on or today), today)
    if course.paused is not None and course.back_on is not None:
        first = max(course.back_on, first)
        past.append(Entry(first - timedelta(days=1), RowKind.AWAY))
    count = DATES - (first - today).days
    word = await deciding.word_of(desk, course)
    ahead = deciding.plan_ahead(course, programme, past, first, count, word)
    return [one for one in (*made, *ahead) if one.day is None or one.day <= len(programme.days)]


def _dated(words: Words, client: Person, course: Course, programme: Programme, one: Coming) -> Dated:
    """One date in words; the name is that of the person's date, whichever day it brings."""
    _ = words.gettext
    name = name_of(client, "date", course.id, one.on.isoformat())
    if one.kind is RowKind.REST or one.day is None:
        about = _("No session. If each answer is a good one; each can change it.")
        return Dated(name, one.on, _("{title}: rest day").format(title=programme.title), about, None)
    day = fitted(
        programme.day(one.day),
        one.level,
        bodies.lasting_fit(course),
        programme.catalogue(),
        programme.ages,
        programme.muscles,
    )
    summary = f"{programme.title}. {day_title(day, gettext=_)}"
    return Dated(name, one.on, summary, "\n".join(_about(words, day, one)), minutes(day)[1] or TEST_MINUTES)


def _about(words: Words, day: Day, one: Coming) -> Iterator[str]:
    _ = words.gettext
    yield from filter(None, (day_length(day, gettext=_),))
    if one.level:
        yield _("a lighter version")
    if day.measure is not None:
        yield _("with a test")
    yield from dict.fromkeys(item.movement.name for _block, item in items(day.session))
    yield _("As it stands if each session goes well; each answer can change it. The session itself comes in the chat.")
