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
from plans.checkin import CheckIn, Completion, Flag, Morning
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
        and _matters(text, person.language)
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
    elif (level := sign_in(text, person.language)) is not None:
        await desk.say(person, Message(desk.words(person).say("checkin.caution", level=str(level), told=False)))
    else:
        await desk.say(person, Message(desk.words(person).say("joining.stranger")))


def sign_in(text: str, language: str) -> Flag | None:
    """How soon a warning sign in words must be seen, also one that hangs on a number; None without one."""
    flag = find_flag(text, language=language)
    return read_reply(text, language=language).red_flag or (None if flag is None else flag.level)


def _matters(text: str, language: str) -> bool:
    """Whether words that answer something else hold a warning sign, or a pain that holds a day back."""
    return sign_in(text, language) is not None or (read_reply(text, language=language).pain or 0) >= HURTS


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
    is_no_checkin = not _matters(text, person.language) and not _says_all(reply)
    await steering.type_reply(desk, person, about(person), text, keep=is_no_checkin)
    return is_no_checkin


def _says_all(reply: Reply) -> bool:
    """Whether words answer both questions of the day, so that they are a check-in whatever was asked."""
    return reply.completion is not None and reply.pain is not None


HURTS = 3
"""Pain from which words that answer or ask something else count for the rules too: from there they hold a day back."""

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
    row = await _row_meant(desk, person, course)
    if reply.request == "stop":
        await _hear_pain_beside(desk, person, course, row, reply, text)
        await leaving.ask(desk, person)
        if reply.red_flag is None:
            return
    if course.paused is not None and reply.red_flag is None and WELL.search(in_english(text, person.language)):
        if not await _hear_pain_beside(desk, person, course, row, reply, text):
            await day.well_again(desk, person, course)
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
    if await _is_an_open_number(desk, person, course, row, reply, text):
        return
    if await _is_not_today_while_asked(desk, person, course, row, reply):
        return
    await _take(desk, person, course, row, reply, text)


async def _before_the_first_day(desk: Desk, person: Person, course: Course, reply: Reply, text: str) -> None:
    """Words before a course has any row: with a warning sign it waits for the coach before it begins."""
    level = sign_in(text, person.language)
    if level is not None:
        course.state = CourseState.WAITING
        await health.flagged_outside_a_course(desk, person, course, level, text)
        return
    is_served = await _is_a_plain_request(desk, person, course, None, reply, text)
    if not is_served or _hurts(reply):
        await _pass_on(desk, person, course, text)


async def _row_meant(desk: Desk, person: Person, course: Course) -> LedgerRow | None:
    """The row that words are about: that of the date on which they were sent, or what a morning question asks about."""
    pairs = await courses.history(desk.session, course)
    if not pairs:
        return None
    sent_on = local(desk.said_at or desk.now, times.zone_of(person)).date()
    earlier = [row for row, _entry in pairs if row.local_date <= sent_on]
    if earlier and sent_on < pairs[-1][0].local_date:
        return earlier[-1]
    return showing.source_of(pairs, bodies.usual_of(course))[0] if pairs[-1][0].kind == RowKind.ASKING else pairs[-1][0]


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
    await _hear_pain_beside(desk, person, course, row, reply, text)
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
    is_report = reply.completion is not None or _hurts(reply)
    if reply.request is None or reply.red_flag is not None or (is_report and reply.request in ("thanks", "today")):
        return False
    if reply.request not in SERVED and reply.completion is not None:
        return False
    if await _hear_pain_beside(desk, person, course, row, reply, text):
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
        await day.pause(desk, person, course)
    elif reply.request == "thanks":
        await desk.say(person, Message(words.say("checkin.welcome")))
    elif reply.completion is None:
        await _pass_on(desk, person, course, text)
    else:
        return False
    return True


def _hurts(reply: Reply) -> bool:
    return (reply.pain or 0) >= HURTS or reply.kind is not None


async def _hear_pain_beside(
    desk: Desk, person: Person, course: Course, row: LedgerRow | None, reply: Reply, text: str
) -> bool:
    """Hears a pain that matters beside a request like any other report; True when the course waits from now on."""
    matters = _hurts(reply) or reply.morning is Morning.WORSE
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
        spoken = checkin.Spoken(row, before, after, merged(CheckIn(), reply, None), text)
        await checkin.take_morning(desk, person, course, asking, reply.morning, spoken)
        return True
    await checkin.change(desk, person, course, row, before, after, quote=text)
    return after != before


async def _risen(desk: Desk, course: Course, before: CheckIn, after: CheckIn) -> CheckIn:
    """What was said, with a pain that only rises while "how is it now?" is open."""
    if before.pain is None or after.pain is None or await _asks_how_now(desk, course) is None:
        return after
    return replace(after, pain=max(before.pain, after.pain))


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


async def _take(desk: Desk, person: Person, course: Course, row: LedgerRow, reply: Reply, text: str) -> None:
    """Words about a session or a body: into the check-in, and on to the question that is open."""
    words = desk.words(person)
    if reply.error is not None:
        await desk.say(person, Message(words.say("checkin.off_scale", found=text[:60])))
        return
    if await _hear(desk, person, course, row, reply, text):
        return
    if reply == Reply() or not _says_something(reply):
        await _not_read(desk, person, course, text)
        return
    await _ask_again(desk, person, course, row)


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
        await _pass_on(desk, person, course, text)
    else:
        await desk.say(person, Message(desk.words(person).say("checkin.not_understood")))


async def _pass_on(desk: Desk, person: Person, course: Course, text: str) -> None:
    reader = await telling.note(desk, course, text)
    coach = await desk.session.get_one(Coach, course.coach_id)
    hours = coach_page.hours_of(desk, coach, reader, person) if reader.id == coach.person_id else ""
    await checkin.note(desk, person, None, [("note", text[:4096])])
    await desk.say(person, Message(desk.words(person).say("checkin.passed_on", coach=reader.label, hours=hours)))
