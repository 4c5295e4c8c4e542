"""Free text: read by the closed grammar, led to the question it answers, asked back or passed on; nothing is eaten."""

from __future__ import annotations

import re
from dataclasses import replace

from bot.flows import (
    absences,
    assistants,
    checkin,
    coach_page,
    day,
    groups,
    health,
    inviting,
    joining,
    leaving,
    measuring,
    overruling,
    places,
    recordings,
    ruling,
    settings,
    showing,
    steering,
    telling,
    times,
)
from bot.flows.asking import OF_A_COACH, Asked, about, close, open_for, waits_for
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, coach_of_course, coach_only
from bot.words.message import Message, joined
from db import bodies, courses, people
from db.courses import CourseState
from db.helpers import Right
from db.schema import Coach, Course, LedgerRow, Person
from plans.asked_number import only_number
from plans.checkin import CheckIn, Completion
from plans.fitting import missed, things
from plans.glossing import in_english
from plans.ledger import Question, RowKind
from plans.localtime import local
from plans.questions import open_question
from plans.redflags import find_flag
from plans.replies import Reply, read_reply
from plans.screening import next_step
from plans.talk import Ask, merged, next_ask

WELL = re.compile(r"\b(well|fit|fine|healthy) again\b|^\W*(i am|i'm|im) back\b|^\W*go on\W*$", re.IGNORECASE)
"""Ends a pause. Only whole words of this kind do; anything else said while ill is read as always."""

WORD = re.compile(r"[^\W\d_]{2,}")


async def heard(desk: Desk, person: Person, text: str) -> None:
    """One typed message from anybody."""
    desk.typed = True
    course = await courses.open_course(desk.session, person)
    setting = waits_for(person) is not None and waits_for(person) not in OF_A_COACH
    flagged = (
        setting
        and waits_for(person) is not Asked.REPLY
        and course is not None
        and course.state != CourseState.JOINING
        and find_flag(text, language=person.language) is not None
    )
    if not flagged and await _answers_own_question(desk, person, text):
        return
    if course is not None and course.state == CourseState.JOINING:
        await _while_joining(desk, person, course, text)
    elif course is not None:
        await _client_says(desk, person, course, text)
    elif await _after_the_end(desk, person, text):
        return
    elif await people.coach_of(desk.session, person) is not None:
        await desk.say(person, Message(desk.words(person).say("coach.help")))
    elif (helps := await assistants.help_words(desk, person)) is not None:
        await desk.say(person, helps)
    else:
        await desk.say(person, Message(desk.words(person).say("joining.stranger")))


async def _after_the_end(desk: Desk, person: Person, text: str) -> bool:
    """Words of somebody whose course is over: a test's number, a warning sign, or a note for their coach."""
    course = await courses.newest_course(desk.session, person)
    if course is None or course.state != CourseState.FINISHED:
        return False
    if await measuring.typed(desk, person, course, text):
        return True
    flag = find_flag(text, language=person.language)
    if flag is not None:
        await health.flagged_outside_a_course(desk, person, course, flag.level, text)
        return True
    await _pass_on(desk, person, course, text)
    return True


async def _answers_own_question(desk: Desk, person: Person, text: str) -> bool:
    """Whether an open question has taken the words; one that this person may not answer any more is closed."""
    try:
        return await _answered(desk, person, text)
    except NotAllowed as refused:
        person.asking = None
        await desk.say(person, Message(desk.words(person).say(refused.words)))
        return True


async def _answered(desk: Desk, person: Person, text: str) -> bool:
    match waits_for(person):
        case Asked.ZONE:
            await joining.type_zone(desk, person, text)
        case Asked.MORNING:
            await joining.type_morning(desk, person, text)
        case Asked.NAME:
            await settings.type_name(desk, person, text)
        case Asked.REPLY:
            return await _answers_the_coach(desk, person, text)
        case Asked.INVITATION:
            await inviting.typed(desk, person, text)
        case Asked.GUARDIAN:
            await inviting.type_guardian(desk, person, text)
        case Asked.TRAINING | Asked.HOURS | Asked.OWN_TERMS as asked:
            await coach_page.typed(desk, person, asked, text)
        case Asked.ABSENCE:
            await absences.typed(desk, person, text)
        case None:
            return False
        case of_a_coach:
            coach = await _coach_typing(desk, person, of_a_coach)
            await _TYPED_BY_A_COACH[of_a_coach](desk, person, coach, about(person), text)
    return True


async def _coach_typing(desk: Desk, person: Person, asked: Asked) -> Coach:
    """The coach for whom somebody types an answer. Raises NotAllowed for whoever may not."""
    if asked in (Asked.GROUP, Asked.MOVEMENT):
        return await coach_only(desk, person)
    return await coach_of_course(desk, person, about(person), Right.RULE)


async def _answers_the_coach(desk: Desk, person: Person, text: str) -> bool:
    """Passes words on to the coach; those that the rules must know of, or that stop, are heard as always besides.

    Where that coach hears no more of the client, nothing is passed on and all is heard as always.
    """
    reply = read_reply(text, language=person.language)
    if reply.request == "stop" or not await steering.is_heard_by_the_coach(desk, person, about(person)):
        close(person, Asked.REPLY)
        return False
    is_no_checkin = reply.red_flag is None and (reply.pain or 0) < HURTS and not _says_all(reply)
    await steering.type_reply(desk, person, about(person), text, keep=is_no_checkin)
    return is_no_checkin


def _says_all(reply: Reply) -> bool:
    """Whether words answer both questions of the day, so that they are a check-in whatever was asked."""
    return reply.completion is not None and reply.pain is not None


HURTS = 3
"""Pain from which an answer to the coach counts for the rules too: from there they hold a day back."""

_TYPED_BY_A_COACH = {
    Asked.FOUND_OUT: ruling.let_go,
    Asked.DAY: overruling.type_day,
    Asked.TIME: steering.type_time,
    Asked.NOTE: steering.type_note,
    Asked.MESSAGE: steering.type_message,
    Asked.GROUP: groups.typed,
    Asked.MOVEMENT: recordings.type_movement,
}


async def _while_joining(desk: Desk, person: Person, course: Course, text: str) -> None:
    flag = find_flag(text, language=person.language)
    if flag is not None and not places.zones_like(text[:80]):
        await health.flagged_outside_a_course(desk, person, course, flag.level, text)
    if read_reply(text, language=person.language).request == "stop":
        await leaving.ask(desk, person)
    elif not _is_past_health(course):
        await joining.ask_next(desk, person, course)
    elif person.zone is None:
        await joining.type_zone(desk, person, text)
    elif person.morning is None:
        await joining.type_morning(desk, person, text)
    else:
        await joining.ask_next(desk, person, course)


def _is_past_health(course: Course) -> bool:
    return course.invite_id is None and next_step(course.screened or {}) is None


async def _client_says(desk: Desk, person: Person, course: Course, text: str) -> None:
    reply = read_reply(text, language=person.language)
    if reply.request == "stop":
        await leaving.ask(desk, person)
        if reply.red_flag is None:
            return
    if course.paused is not None and reply.red_flag is None and WELL.search(in_english(text, person.language)):
        await day.well_again(desk, person, course)
        return
    if course.state != CourseState.JOINING and await measuring.typed(desk, person, course, text):
        return
    row = await _row_meant(desk, person, course)
    if row is None:
        await _pass_on(desk, person, course, text)
        return
    if await _lacks_a_thing(desk, person, course, row, reply, text):
        return
    if await _is_a_plain_request(desk, person, course, reply, text):
        return
    if await _is_an_open_number(desk, person, course, row, reply, text):
        return
    if await _is_not_today_while_asked(desk, person, course, row, reply):
        return
    await _take(desk, person, course, row, reply, text)


async def _row_meant(desk: Desk, person: Person, course: Course) -> LedgerRow | None:
    """The row that words are about: that of the date on which they were sent, or what a morning question asks about."""
    pairs = await courses.history(desk.session, course)
    if not pairs:
        return None
    sent_on = local(desk.said_at or desk.now, times.zone_of(person)).date()
    earlier = [row for row, _entry in pairs if row.local_date <= sent_on]
    if earlier and sent_on < pairs[-1][0].local_date:
        return earlier[-1]
    return showing.source_of(pairs)[0] if pairs[-1][0].kind == RowKind.ASKING else pairs[-1][0]


async def _lacks_a_thing(desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply, text: str) -> bool:
    """ "No strap here": today's session is changed, when it needs one and is not done yet."""
    if row.kind != RowKind.SESSION or row.day is None or reply.completion is not None or reply.red_flag is not None:
        return False
    if (await courses.said_of(desk.session, row)).completion is not None:
        return False
    programme = await desk.programme_of(course, row)
    thing = missed(text, things(programme.day(row.day)), language=person.language, say=programme.say)
    if thing is None:
        return False
    await checkin.do_without(desk, person, course, row, thing.name)
    return True


async def _is_a_plain_request(desk: Desk, person: Person, course: Course, reply: Reply, text: str) -> bool:
    words = desk.words(person)
    if reply.red_flag is not None or (reply.completion is not None and reply.request in ("thanks", "today")):
        return False
    if reply.request == "help":
        await desk.say(person, Message(words.say("client.help")))
    elif reply.request == "today":
        await day.today(desk, person)
    elif reply.request == "change-time":
        open_for(person, Asked.MORNING)
        await desk.say(person, joining.morning_question(desk, person))
    elif reply.request == "health-changed" and course.state in (CourseState.ACTIVE, CourseState.WAITING):
        await health.has_changed(desk, person, course, text)
    elif reply.request == "quit-programme":
        await leaving.ask(desk, person)
    elif reply.request == "pause" and course.state == CourseState.ACTIVE:
        await day.pause(desk, person, course)
    elif reply.request == "thanks":
        await desk.say(person, Message(words.say("checkin.welcome")))
    elif reply.request is not None and reply.completion is None:
        await _pass_on(desk, person, course, text)
    else:
        return False
    return True


async def _is_not_today_while_asked(desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply) -> bool:
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


async def _is_an_open_number(
    desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply, text: str
) -> bool:
    """A bare number answers the number question that is open, or is the day's test.

    While pain is asked for, the only number of a short answer is it, whatever words stand around it.
    """
    said = await courses.said_of(desk.session, row)
    newest = await courses.last_row(desk.session, course)
    asked_pain = next_ask(said) is Ask.PAIN or (newest is not None and newest.kind == RowKind.ASKING)
    if asked_pain and merged(said, reply, find_flag(text, language=person.language)) == said and reply.error is None:
        lone = only_number(in_english(text, person.language))
        reply = reply if reply.number is not None or lone is None else replace(reply, number=lone)
    if reply.number is None or reply.completion is not None:
        return False
    if asked_pain:
        if reply.number != int(reply.number) or not 0 <= reply.number <= 10:
            await desk.say(person, Message(desk.words(person).say("checkin.off_scale", found=f"{reply.number:g}")))
        else:
            await checkin.change(desk, person, course, row, said, _with_pain(said, int(reply.number)))
        return True
    return await measuring.number(desk, person, course, reply.number)


def _with_pain(said: CheckIn, pain: int) -> CheckIn:
    return merged(said, Reply(pain=pain), None)


async def _take(desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply, text: str) -> None:
    """Words about a session or a body: into the check-in, and on to the question that is open."""
    words = desk.words(person)
    if reply.error is not None:
        await desk.say(person, Message(words.say("checkin.off_scale", found=text[:60])))
        return
    newest = await courses.last_row(desk.session, course)
    if newest is not None and reply.morning is not None and await _asks_how_now(desk, course, newest, reply):
        await checkin.take_morning(desk, person, course, newest, reply.morning)
        return
    before = await courses.said_of(desk.session, row)
    after = merged(before, reply, find_flag(text, language=person.language))
    if after != before:
        await checkin.change(desk, person, course, row, before, after, quote=text)
        return
    if reply == Reply() or not _says_something(reply):
        await _not_read(desk, person, course, text)
        return
    await desk.say(person, await day.message_of(desk, person, course, row))


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


async def _asks_how_now(desk: Desk, course: Course, newest: LedgerRow, reply: Reply) -> bool:
    """Whether "how is it now?" is open and nothing graver was said."""
    if newest.kind != RowKind.ASKING or reply.red_flag is not None:
        return False
    entries = [entry for _row, entry in await courses.history(desk.session, course)]
    return open_question(entries, asked_on=newest.local_date, usual=bodies.usual_of(course)) is Question.MORNING


async def _not_read(desk: Desk, person: Person, course: Course, text: str) -> None:
    """Words that are no answer go to the coach as a note; what has no words is asked back."""
    if len(WORD.findall(text)) >= 2:
        await _pass_on(desk, person, course, text)
    else:
        await desk.say(person, Message(desk.words(person).say("checkin.not_understood")))


async def _pass_on(desk: Desk, person: Person, course: Course, text: str) -> None:
    reader = await telling.note(desk, course, text)
    coach = await desk.session.get_one(Coach, course.coach_id)
    hours = coach_page.hours_of(desk, coach, reader, person) if reader.id == coach.person_id else ""
    await checkin.note(desk, person, None, [("note", text[:4096])])
    await desk.say(person, Message(desk.words(person).say("checkin.passed_on", coach=reader.label, hours=hours)))
