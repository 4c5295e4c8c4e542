"""What a client's words say of a session or their body: into the check-in, to the open question, to the coach."""

from __future__ import annotations

import re
from dataclasses import replace

from bot.flows import checkin, coach_page, day, measuring, mornings, showing, telling, times
from bot.flows.desk import Desk
from bot.words.checkin import ask
from bot.words.message import Message, joined
from db import bodies, courses
from db.courses import CourseState
from db.schema import Coach, Course, LedgerRow, Person
from plans.asked_number import only_number
from plans.checkin import CheckIn, Completion, Morning
from plans.glossing import in_english
from plans.ledger import Question, RowKind
from plans.localtime import local
from plans.questions import open_question
from plans.redflags import find_flag
from plans.replies import Reply
from plans.talk import HURTS, Ask, merged, next_ask

WORD = re.compile(r"[^\W\d_]{2,}")


async def row_meant(desk: Desk, person: Person, course: Course) -> LedgerRow | None:
    """The row that words are about: that of the date on which they were sent, or what a morning question asks about."""
    pairs = await courses.history(desk.session, course)
    if not pairs:
        return None
    sent_on = local(desk.said_at or desk.now, times.zone_of(person)).date()
    earlier = [row for row, _entry in pairs if row.local_date <= sent_on]
    if earlier and sent_on < pairs[-1][0].local_date:
        return earlier[-1]
    return showing.source_of(pairs, bodies.usual_of(course))[0] if pairs[-1][0].kind == RowKind.ASKING else pairs[-1][0]


def hurts(reply: Reply) -> bool:
    return (reply.pain or 0) >= HURTS or reply.kind is not None


async def hear_pain_beside(
    desk: Desk, person: Person, course: Course, row: LedgerRow | None, reply: Reply, text: str
) -> bool:
    """Hears a pain that matters beside a request like any other report; True when the course waits from now on."""
    matters = hurts(reply) or reply.morning is Morning.WORSE
    if row is None or reply.red_flag is not None or not matters:
        return False
    went_on = course.state != CourseState.WAITING
    await _hear(desk, person, course, row, reply, text)
    return went_on and course.state == CourseState.WAITING


async def _hear(desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply, text: str) -> bool:
    """Takes words into the check-in, and as the answer to a morning's question; False when they say nothing new."""
    before = await courses.said_of(desk.session, row)
    after = await _risen(desk, course, before, merged(before, reply, find_flag(text, language=person.language)))
    asking = await _takes_morning(desk, course, reply)
    if reply.morning is not None and asking is not None:
        spoken = mornings.Spoken(row, before, after, merged(CheckIn(), reply, None), text)
        await mornings.take(desk, person, course, asking, reply.morning, spoken)
        return True
    await checkin.change(desk, person, course, row, before, after, quote=text)
    return after != before


async def _risen(desk: Desk, course: Course, before: CheckIn, after: CheckIn) -> CheckIn:
    """What was said, with a pain that only rises while "how is it now?" is open."""
    if before.pain is None or after.pain is None or await _asks_how_now(desk, course) is None:
        return after
    return replace(after, pain=max(before.pain, after.pain))


async def is_not_today_while_asked(desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply) -> bool:
    """ "Not today" while a question about the session before is open: it changes nothing of that session."""
    newest = await courses.last_row(desk.session, course)
    if newest is None or newest.kind != RowKind.ASKING or newest.id == row.id:
        return False
    said = await courses.said_of(desk.session, row)
    only_that = merged(CheckIn(), reply, None) == CheckIn(completion=Completion.NONE, why=reply.why)
    if said.completion is None or reply.completion is not Completion.NONE or not only_that:
        return False
    question = await day.message_of(desk, person, course, newest)
    text = joined(desk.words(person).say("day.not_today_then"), question.text)
    await day.put(desk, person, newest, replace(question, text=text))
    return True


async def is_an_open_number(
    desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply, text: str
) -> bool:
    """A bare number answers the number question that is open, or is the day's test.

    While pain is asked for, the only number of a short answer is it, whatever words stand around it, unless they say
    how it is this morning.
    """
    said = await courses.said_of(desk.session, row)
    newest = await courses.last_row(desk.session, course)
    asked_pain = next_ask(said) is Ask.PAIN or (newest is not None and newest.kind == RowKind.ASKING)
    nothing_else = reply.morning is None and reply.error is None
    if asked_pain and nothing_else and merged(said, reply, find_flag(text, language=person.language)) == said:
        lone = only_number(in_english(text, person.language))
        reply = reply if reply.number is not None or lone is None else replace(reply, number=lone)
    if reply.number is None or reply.completion is not None:
        return False
    if not asked_pain:
        return await measuring.number(desk, person, course, reply.number)
    if reply.number != int(reply.number) or not 0 <= reply.number <= 10:
        await desk.say(person, Message(desk.words(person).say("checkin.off_scale", found=f"{reply.number:g}")))
        return True
    after = await _risen(desk, course, said, _with_pain(said, int(reply.number)))
    if after == said:
        await _ask_again(desk, person, course, row)
    else:
        await checkin.change(desk, person, course, row, said, after)
    return True


def _with_pain(said: CheckIn, pain: int) -> CheckIn:
    return merged(said, Reply(pain=pain), None)


async def take(desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply, text: str) -> None:
    """Words about a session or a body: into the check-in, and on to the question that is open."""
    words = desk.words(person)
    if reply.error is not None:
        await desk.say(person, Message(words.say("checkin.off_scale", found=text[:60])))
        return
    if await _hear(desk, person, course, row, reply, text):
        await _make_sure_of_pain(desk, person, course, row, reply)
        return
    if reply == Reply() or not _says_something(reply):
        await _not_read(desk, person, course, text)
        return
    await _ask_again(desk, person, course, row)


async def _make_sure_of_pain(desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply) -> None:
    """Asks for a pain that was noted though the words leave it in doubt; see `talk.HURTS`."""
    said = await courses.said_of(desk.session, row)
    noted = reply.pain is not None and said.pain == reply.pain
    if reply.asked_back == Ask.PAIN and noted and course.state == CourseState.ACTIVE and next_ask(said) is None:
        await desk.say(person, Message(*ask(desk.words(person), row.id, Ask.PAIN, said)))


async def _ask_again(desk: Desk, person: Person, course: Course, row: LedgerRow) -> None:
    """Says how a row stands; while "how is it now?" is open it is asked once more."""
    asking = await _asks_how_now(desk, course)
    if asking is None:
        await desk.say(person, await day.message_of(desk, person, course, row))
    else:
        await day.show(desk, person, course, asking)


def _says_something(reply: Reply) -> bool:
    facts = (
        reply.completion,
        reply.pain,
        reply.kind,
        reply.place,
        reply.why,
        reply.tightness,
        reply.red_flag,
    )
    return bool(reply.sore) or any(fact is not None for fact in facts)


async def _asks_how_now(desk: Desk, course: Course) -> LedgerRow | None:
    """The row whose "how is it now?" is open."""
    pairs = await courses.history(desk.session, course)
    if not pairs or pairs[-1][0].kind != RowKind.ASKING:
        return None
    newest, entries = pairs[-1][0], [entry for _row, entry in pairs]
    question = open_question(entries, asked_on=newest.local_date, usual=bodies.usual_of(course))
    return newest if question is Question.MORNING else None


async def _takes_morning(desk: Desk, course: Course, reply: Reply) -> LedgerRow | None:
    """The row whose morning these words answer, unless they say something graver; "worse" does under any question."""
    if reply.morning is None or reply.red_flag is not None:
        return None
    newest = await courses.last_row(desk.session, course)
    if reply.morning is Morning.WORSE and newest is not None and newest.kind == RowKind.ASKING:
        return newest
    return await _asks_how_now(desk, course)


async def _not_read(desk: Desk, person: Person, course: Course, text: str) -> None:
    """Words that are no answer go to the coach as a note; what has no words is asked back."""
    if len(WORD.findall(text)) >= 2:
        await pass_on(desk, person, course, text)
    else:
        await desk.say(person, Message(desk.words(person).say("checkin.not_understood")))


async def pass_on(desk: Desk, person: Person, course: Course, text: str) -> None:
    reader = await telling.note(desk, course, text)
    coach = await desk.session.get_one(Coach, course.coach_id)
    hours = coach_page.hours_of(desk, coach, reader, person) if reader.id == coach.person_id else ""
    await checkin.note(desk, person, None, [("note", text[:4096])])
    await desk.say(person, Message(desk.words(person).say("checkin.passed_on", coach=reader.label, hours=hours)))
