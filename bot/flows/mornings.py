"""The answer to "how is it now?": in time, about an older morning, and with more said beside it."""

from __future__ import annotations

from dataclasses import dataclass

from bot.flows import checkin, day, telling
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.checkin import caution
from bot.words.message import Message
from db import bodies, courses
from db.courses import CourseState
from db.schema import Course, LedgerRow, Person
from plans.checkin import CheckIn, Morning
from plans.ledger import RowKind
from plans.rules import Verdict, Vote


async def answered(desk: Desk, person: Person, row_id: int, value: str) -> str:
    """The answer to "how is it now?"; it fills the row that waited for it. Raises NotAllowed.

    Under an older morning's question it answers the one that is open now; when none is, it changes no day any more.
    """
    row, course = await checkin.own(desk, person, row_id)
    if row.kind != RowKind.ASKING or row.morning is not None or value not in set(Morning):
        raise NotAllowed("checkin.not_yours")
    said, newest = Morning(value), await courses.last_row(desk.session, course)
    if newest is None or newest.id == row.id:
        await take(desk, person, course, row, said)
        return ""
    if newest.kind == RowKind.ASKING and newest.morning is None:
        await _say_noted(desk, person, row, said)
        await take(desk, person, course, newest, said)
    else:
        await _take_late(desk, person, course, row, said)
    return ""


async def _take_late(desk: Desk, person: Person, course: Course, row: LedgerRow, said: Morning) -> None:
    """Stores the answer about a morning that is over; the coach hears at once that it was worse."""
    row.morning = said
    await checkin.note(desk, person, row, [("morning", said)])
    await _say_noted(desk, person, row, said)
    if said is Morning.WORSE:
        await telling.tell_of_worse(desk, course, row)
    words = desk.words(person)
    await desk.say(person, Message(words.say("checkin.late", day=words.weekday(row.local_date))))


async def _say_noted(desk: Desk, person: Person, row: LedgerRow, said: Morning) -> None:
    """Puts the answer in the place of a morning's question."""
    if row.outbox_id is not None:
        await desk.edit(person, Message(desk.words(person).say("checkin.morning_noted", answer=said)), row.outbox_id)


@dataclass(frozen=True, slots=True)
class Spoken:
    """What was said beside a morning's answer: of which row, what was known of it before and is after, and the words.

    `now` is what these words say alone.
    """

    row: LedgerRow
    before: CheckIn
    after: CheckIn
    now: CheckIn
    quote: str


async def take(
    desk: Desk, person: Person, course: Course, row: LedgerRow, said: Morning, spoken: Spoken | None = None
) -> None:
    """Stores a morning's answer, and what was said beside it, and hands out the day that follows from both."""
    row.morning = said
    await checkin.note(desk, person, row, [("morning", said)])
    await _say_noted(desk, person, row, said)
    held: list[Vote] = []
    if spoken is not None:
        held = await _hear_beside(desk, person, course, spoken)
        if any(vote.verdict is Verdict.REFER for vote in held):
            await checkin.refer(desk, person, course, spoken.after)
            return
    await day.fill(desk, person, course, row, held_by=held)
    if said is Morning.WORSE and row.kind == RowKind.ASKING:
        await telling.tell_of_worse(desk, course, row)
    if course.state == CourseState.WAITING:
        await desk.say(person, caution(desk.words(person), CheckIn()))


async def _hear_beside(desk: Desk, person: Person, course: Course, spoken: Spoken) -> list[Vote]:
    """Stores what was said beside a morning's answer; returns its new votes, and what rests by these words alone."""
    after, fresh = await checkin.in_time(desk, course, spoken.row, spoken.after), list[Vote]()
    if after != spoken.before:
        fresh = await checkin.hear(desk, person, course, spoken.row, spoken.before, after, spoken.quote)
    settings = (await desk.programme(course)).settings
    alone = checkin.acting_votes(spoken.now, settings, nerve_before=False, usual=bodies.usual_of(course))
    return fresh + [vote for vote in alone if vote.verdict is Verdict.REST and vote not in fresh]
