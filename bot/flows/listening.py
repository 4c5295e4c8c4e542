"""Free text: read by the closed grammar, led to the question it answers, asked back or passed on; nothing is eaten."""

from __future__ import annotations

import re

from bot.flows import (
    absences,
    assistants,
    checkin,
    coach_page,
    day,
    groups,
    health,
    hearing,
    inviting,
    joining,
    leaving,
    measuring,
    overruling,
    pauses,
    places,
    recordings,
    ruling,
    settings,
    steering,
)
from bot.flows.asking import OF_A_COACH, Asked, about, close, open_for, waits_for
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, coach_of_course, coach_only
from bot.words.message import Message
from db import courses, people
from db.courses import CourseState
from db.helpers import Right
from db.schema import Coach, Course, LedgerRow, Person
from plans.checkin import Flag
from plans.fitting import missed, things
from plans.glossing import in_english
from plans.ledger import RowKind
from plans.redflags import find_flag
from plans.replies import Reply, read_reply
from plans.talk import HURTS

WELL = re.compile(r"\b(well|fit|fine|healthy) again\b|^\W*(i am|i'm|im) back\b|^\W*go on\W*$", re.IGNORECASE)
"""Ends a pause. Only whole words of this kind do; anything else said while ill is read as always."""


async def heard(desk: Desk, person: Person, text: str) -> None:
    """One typed message from anybody."""
    desk.typed = True
    course = await courses.open_course(desk.session, person)
    setting = waits_for(person) is not None and waits_for(person) not in OF_A_COACH
    reported = (
        setting
        and waits_for(person) is not Asked.REPLY
        and course is not None
        and course.state != CourseState.JOINING
        and _is_report(text, person.language)
    )
    if not reported and await _answers_own_question(desk, person, text):
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
    elif (level := sign_in(text, person.language)) is not None:
        await desk.say(person, Message(desk.words(person).say("checkin.caution", level=str(level), told=False)))
    else:
        await desk.say(person, Message(desk.words(person).say("joining.stranger")))


def sign_in(text: str, language: str) -> Flag | None:
    """How soon a warning sign in words must be seen, also one that hangs on a number; None without one."""
    flag = find_flag(text, language=language)
    return read_reply(text, language=language).red_flag or (None if flag is None else flag.level)


def _is_report(text: str, language: str) -> bool:
    """Whether words are for the rules, whatever was asked: a warning sign, a pain that holds a day back, a check-in.

    A check-in is words that answer both questions of the day.
    """
    reply = read_reply(text, language=language)
    says_all = reply.completion is not None and reply.pain is not None
    return says_all or (reply.pain or 0) >= HURTS or sign_in(text, language) is not None


async def _after_the_end(desk: Desk, person: Person, text: str) -> bool:
    """Words of somebody whose course is over: a test's number, a warning sign, or a note for their coach."""
    course = await courses.newest_course(desk.session, person)
    if course is None or course.state != CourseState.FINISHED:
        return False
    if await measuring.typed(desk, person, course, text):
        return True
    level = sign_in(text, person.language)
    if level is not None:
        await health.flagged_outside_a_course(desk, person, course, level, text)
        return True
    await hearing.pass_on(desk, person, course, text)
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
    is_no_checkin = not _is_report(text, person.language)
    await steering.type_reply(desk, person, about(person), text, keep=is_no_checkin)
    return is_no_checkin


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
    level = sign_in(text, person.language)
    if level is not None and not places.zones_like(text[:80]):
        await health.flagged_outside_a_course(desk, person, course, level, text)
    if read_reply(text, language=person.language).request == "stop":
        await leaving.ask(desk, person)
    elif course.invite_id is not None or await health.next_question(desk, course) is not None:
        await joining.ask_next(desk, person, course)
    elif person.zone is None:
        await joining.type_zone(desk, person, text)
    elif person.morning is None:
        await joining.type_morning(desk, person, text)
    else:
        await joining.ask_next(desk, person, course)


async def _client_says(desk: Desk, person: Person, course: Course, text: str) -> None:
    reply = read_reply(text, language=person.language)
    row = await hearing.row_meant(desk, person, course)
    if reply.request == "stop":
        await hearing.hear_pain_beside(desk, person, course, row, reply, text)
        await leaving.ask(desk, person)
        if reply.red_flag is None:
            return
    if course.paused is not None and reply.red_flag is None and WELL.search(in_english(text, person.language)):
        if not await hearing.hear_pain_beside(desk, person, course, row, reply, text):
            await pauses.well_again(desk, person, course)
        return
    if course.state != CourseState.JOINING and await measuring.typed(desk, person, course, text):
        return
    if row is None:
        await _before_the_first_day(desk, person, course, reply, text)
        return
    if await _lacks_a_thing(desk, person, course, row, reply, text):
        return
    if await _is_a_plain_request(desk, person, course, row, reply, text):
        return
    if await hearing.is_an_open_number(desk, person, course, row, reply, text):
        return
    if await hearing.is_not_today_while_asked(desk, person, course, row, reply):
        return
    await hearing.take(desk, person, course, row, reply, text)


async def _before_the_first_day(desk: Desk, person: Person, course: Course, reply: Reply, text: str) -> None:
    """Words before a course has any row: with a warning sign it waits for the coach before it begins."""
    level = sign_in(text, person.language)
    if level is not None:
        course.state = CourseState.WAITING
        await health.flagged_outside_a_course(desk, person, course, level, text)
        return
    is_served = await _is_a_plain_request(desk, person, course, None, reply, text)
    if not is_served or hearing.hurts(reply):
        await hearing.pass_on(desk, person, course, text)


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
    await hearing.hear_pain_beside(desk, person, course, row, reply, text)
    if row.kind == RowKind.SESSION:
        await checkin.do_without(desk, person, course, row, thing.name)
    return True


SERVED = frozenset({"help", "today", "change-time", "health-changed", "quit-programme", "pause", "thanks"})
"""Requests that are served here; any other is passed on to the coach."""


async def _is_a_plain_request(
    desk: Desk, person: Person, course: Course, row: LedgerRow | None, reply: Reply, text: str
) -> bool:
    """Serves a request; a pain beside it is heard first."""
    words = desk.words(person)
    is_report = reply.completion is not None or hearing.hurts(reply)
    if reply.request is None or reply.red_flag is not None or (is_report and reply.request in ("thanks", "today")):
        return False
    if reply.request not in SERVED and reply.completion is not None:
        return False
    if await hearing.hear_pain_beside(desk, person, course, row, reply, text):
        return True
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
        await pauses.pause(desk, person, course)
    elif reply.request == "thanks":
        await desk.say(person, Message(words.say("checkin.welcome")))
    elif reply.completion is None:
        await hearing.pass_on(desk, person, course, text)
    else:
        return False
    return True
