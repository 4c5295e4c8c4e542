"""Less today: a session cut to some minutes, or its lighter version."""

from __future__ import annotations

from dataclasses import replace

from bot.flows import checkin, times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import Words
from bot.words.message import Button, Message, column
from db import bodies, courses
from db.courses import CourseState
from db.schema import Course, LedgerRow, Person
from plans import track
from plans.dose import minutes
from plans.ledger import RowKind

MOST = 60
"""Minutes: no session is longer."""


async def shorter(desk: Desk, person: Person, wanted: str) -> None:
    """Offers to cut today's session, or cuts it to the minutes that are named. Raises NotAllowed without a session."""
    course, row = await _todays(desk, person)
    if wanted.strip():
        desk.typed = True
        await _cut(desk, person, course, row, wanted.split()[0])
        return
    whole = replace(bodies.fit_of(course, row, await courses.history(desk.session, course)), minutes=None)
    full = minutes(bodies.handed_out(await desk.programme(course), row, whole))[1]
    await desk.say(person, _how_short(desk.words(person), row.id, full))


async def lighter(desk: Desk, person: Person) -> None:
    """Brings the lighter version of today's session. Raises NotAllowed without a session, and for the lightest one.

    The course stands a level lighter from then on, and climbs again as after any easing.
    """
    course, row = await _todays(desk, person)
    position = track.lighter(courses.position_of(course))
    if position.level <= row.level:
        raise NotAllowed("day.lightest")
    row.level = position.level
    courses.move(course, position)
    await checkin.note(desk, person, row, [("level", str(row.level))])
    desk.typed = True
    await checkin.show_again(desk, person, course, row)


async def _todays(desk: Desk, person: Person) -> tuple[Course, LedgerRow]:
    """Today's session that is not over. Raises NotAllowed when there is none."""
    course = await courses.open_course(desk.session, person)
    row = await courses.row_on(desk.session, course, times.today(person, desk.now)) if course is not None else None
    if course is None or row is None or not await _is_open(desk, course, row):
        raise NotAllowed("day.not_shorter")
    return course, row


async def tapped(desk: Desk, person: Person, row_id: int, wanted: str) -> None:
    """Cuts the session of a row. Raises NotAllowed for somebody else's, and for one that is over."""
    row, course = await checkin.own(desk, person, row_id)
    if not await _is_open(desk, course, row):
        raise NotAllowed("day.not_shorter")
    desk.typed = True
    await _cut(desk, person, course, row, wanted)


async def _is_open(desk: Desk, course: Course, row: LedgerRow) -> bool:
    said = await courses.said_of(desk.session, row)
    return course.state == CourseState.ACTIVE and row.kind == RowKind.SESSION and said.completion is None


async def _cut(desk: Desk, person: Person, course: Course, row: LedgerRow, wanted: str) -> None:
    if not wanted.isdecimal() or not 1 <= int(wanted) <= MOST:
        raise NotAllowed("day.how_many")
    row.minutes = int(wanted)
    await checkin.note(desk, person, row, [("minutes", wanted)])
    await checkin.show_again(desk, person, course, row)


def _how_short(words: Words, row: int, full: int) -> Message:
    """The lengths that a session can be cut to, in minutes; `full` is what it takes."""
    label = words.gettext("{minutes} minutes")
    lengths = [minutes for minutes in OFFERED if minutes < full]
    if not lengths:
        return Message(words.say("day.short_already", full=full))
    rows = column(*(Button(label.format(minutes=minutes), f"short:{row}:{minutes}") for minutes in lengths))
    return Message(words.say("day.how_short", full=full), rows)


OFFERED = (5, 10, 15, 20)
"""Minutes that are offered."""
