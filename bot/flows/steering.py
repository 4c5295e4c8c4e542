"""What a coach does for a client besides the next row: pause, time of day, a message, a note for themselves."""

from __future__ import annotations

from datetime import date, time, timedelta

from sqlalchemy import delete, select

from bot.flows import checkin, day, joining, overruling, places, telling, times
from bot.flows.asking import Asked, close, open_for
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, own_course
from bot.words.message import Button, Message, column
from db import courses, due, outbox
from db.courses import CourseState
from db.schema import Coach, CoachNote, Course, Person
from plans.localtime import local

PAUSES = (3, 7, 14)
"""Days that are offered."""
LONGEST = 1000
"""Characters of a note or a message."""
RUNNING = (CourseState.ACTIVE, CourseState.WAITING)


async def tapped(desk: Desk, person: Person, coach: Coach, course_id: int, what: str, value: str = "") -> None:
    """One button of a client's page. Raises NotAllowed for another one."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    if what == "note":
        open_for(person, Asked.NOTE, course.id)
        await desk.say(person, Message(desk.words(person).say("steering.note", label=client.label)))
    elif what == "forget":
        await _forget_note(desk, person, course, value)
    elif course.state not in RUNNING:
        raise NotAllowed("steering.not_running")
    elif what == "message":
        open_for(person, Asked.MESSAGE, course.id)
        await desk.say(person, Message(desk.words(person).say("steering.message", label=client.label)))
    elif what == "pause":
        await _pause(desk, person, client, course, value)
    elif what == "resume":
        await _resume(desk, person, client, course)
    elif what == "time":
        await _time(desk, person, client, course, value)
    else:
        raise NotAllowed("checkin.not_yours")


# --- pause ------------------------------------------------------------------------------------------------------------


async def _pause(desk: Desk, person: Person, client: Person, course: Course, value: str) -> None:
    """Says what a pause would do, or pauses: for so many days (0: until the coach opens it again).

    Who is ill is away already, until they say that they are well.
    """
    words = desk.words(person)
    _ = words.gettext
    if course.state != CourseState.ACTIVE or course.paused == "ill":
        raise NotAllowed("steering.not_running")
    at = await overruling.standing(desk, course)
    if not value:
        labels = [(_("3 days"), 3), (_("A week"), 7), (_("Two weeks"), 14), (_("Until I open it again"), 0)]
        buttons = [Button(label, f"steer:{course.id}:pause:{days}") for label, days in labels]
        now, _found = await overruling.comes(desk, at, words)
        text = words.say("steering.pause", label=client.label, now=now)
        await desk.say(person, Message(text, column(*buttons, Button(_("Leave it"), f"client:{course.id}"))))
        return
    if not value.isdecimal() or int(value) not in (0, *PAUSES):
        raise NotAllowed("checkin.not_yours")
    course.paused = day.PAUSED_BY_COACH
    course.back_on = _back_on(at, int(value))
    await outbox.withdraw(desk.session, client.chat, "paused")
    until = words.long_date(course.back_on) if course.back_on else None
    undo = Button(_("Take it back"), f"steer:{course.id}:resume")
    text = words.say("steering.paused", label=client.label, until=until)
    await desk.say(person, Message(text, column(undo, _page(desk, person, course))))
    their_words = desk.words(client)
    told = their_words.long_date(course.back_on) if course.back_on else None
    await desk.say(client, Message(their_words.say("day.paused", why=course.paused, until=told)))


def _back_on(at: overruling.Standing, days: int) -> date | None:
    """The date on which sessions come again: so many dates after the next row's."""
    return at.last + timedelta(days=days + 1) if days else None


async def _resume(desk: Desk, person: Person, client: Person, course: Course) -> None:
    """Opens a pause; who is ill says themselves when they are well, and who waits goes on waiting."""
    if course.paused is None or course.paused == "ill":
        raise NotAllowed("steering.not_paused")
    course.paused = course.back_on = None
    await day.plan_next(desk, client, course)
    words, at = desk.words(person), await overruling.standing(desk, course)
    now, _found = await overruling.comes(desk, at, words)
    waits = course.state == CourseState.WAITING
    text = words.say("steering.resumed", label=client.label, now={**now, "kind": "waiting"} if waits else now)
    await desk.say(person, Message(text, column(_page(desk, person, course))))
    if waits:
        await desk.say(client, Message(desk.words(client).say("day.waiting", coach=person.label)))
        return
    when = local(times.next_morning(client, desk.now), times.zone_of(client))
    told = desk.words(client).say(
        "steering.resumed_client", coach=person.label, when=desk.words(client).weekday_and_time(when)
    )
    await desk.say(client, Message(told))


# --- time of day ------------------------------------------------------------------------------------------------------


async def _time(desk: Desk, person: Person, client: Person, course: Course, value: str) -> None:
    words = desk.words(person)
    if value:
        found = places.time_of(f"{value[:2]}:{value[2:]}")
        if found is None:
            raise NotAllowed("checkin.not_yours")
        await _take_time(desk, person, client, course, found)
        return
    open_for(person, Asked.TIME, course.id)
    buttons = [Button(text, f"steer:{course.id}:time:{text.replace(':', '')}") for text in joining.MORNINGS]
    now = (client.morning or times.MORNING).strftime("%H:%M")
    text = words.say("steering.time", label=client.label, now=now, zone=times.zone_of(client))
    await desk.say(person, Message(text, (tuple(buttons[:3]), tuple(buttons[3:]))))


async def type_time(desk: Desk, person: Person, coach: Coach, course_id: int, text: str) -> None:
    """A typed time of day for a client's session. Raises NotAllowed for a course that is not running any more."""
    course = await own_course(desk, coach, course_id)
    if course.state not in RUNNING:
        raise NotAllowed("steering.not_running")
    found = places.time_of(text)
    if found is None:
        await desk.say(person, Message(desk.words(person).say("joining.morning_unknown")))
        return
    await _take_time(desk, person, await desk.session.get_one(Person, course.person_id), course, found)


async def _take_time(desk: Desk, person: Person, client: Person, course: Course, at: time) -> None:
    before = (client.morning or times.MORNING).strftime("%H:%M")
    client.morning = at
    close(person, Asked.TIME)
    await day.plan_next(desk, client, course)
    words, now = desk.words(person), at.strftime("%H:%M")
    coming = await due.planned(desk.session, due.DueKind.MORNING, client.id)
    when = local(coming, times.zone_of(client)) if coming is not None else None
    text = words.say("steering.timed", label=client.label, now=now, when=words.weekday_and_time(when) if when else None)
    undo = Button(words.gettext("Take it back"), f"steer:{course.id}:time:{before.replace(':', '')}")
    await desk.say(person, Message(text, column(undo, _page(desk, person, course))))
    await desk.say(client, Message(desk.words(client).say("steering.timed_client", coach=person.label, now=now)))


# --- words ------------------------------------------------------------------------------------------------------------


async def type_message(desk: Desk, person: Person, coach: Coach, course_id: int, text: str) -> None:
    """Sends a coach's words to a client, under the coach's name, with a way to answer."""
    course = await own_course(desk, coach, course_id)
    client, words = await desk.session.get_one(Person, course.person_id), desk.words(person)
    close(person, Asked.MESSAGE)
    if course.state not in RUNNING or len(text) > LONGEST:
        key = "steering.too_long" if len(text) > LONGEST else "steering.not_running"
        await desk.say(person, Message(words.say(key, most=LONGEST)))
        return
    await say_to(desk, client, course.id, person.label, text)
    gone = client.unreachable_since is not None
    sent = words.say("steering.sent", label=client.label, unreachable=gone)
    await desk.say(person, Message(sent, column(_page(desk, person, course))))


async def say_to(desk: Desk, client: Person, course_id: int, coach: str, text: str) -> None:
    """A coach's words as a client gets them."""
    words = desk.words(client)
    answer = Button(words.gettext("Answer"), f"reply:{course_id}")
    await desk.say(client, Message(words.say("steering.from_coach", coach=coach, text=text), column(answer)))


async def ask_reply(desk: Desk, client: Person, course: Course) -> None:
    """Waits for a client's answer to their coach. Raises NotAllowed where the coach hears no more of them."""
    if not await is_heard_by_the_coach(desk, client, course.id):
        raise NotAllowed("checkin.not_yours")
    coach = await telling.coach_person(desk, course)
    open_for(client, Asked.REPLY, course.id)
    await desk.say(client, Message(desk.words(client).say("steering.reply", coach=coach.label)))


async def is_heard_by_the_coach(desk: Desk, client: Person, course_id: int) -> bool:
    """Whether a client still answers the coach of a course: their open or else last one, unless they stopped it."""
    open_one = await courses.open_course(desk.session, client)
    course = open_one or await courses.newest_course(desk.session, client)
    return course is not None and course.id == course_id and course.state != CourseState.STOPPED


async def type_reply(desk: Desk, client: Person, course_id: int, text: str, *, keep: bool) -> None:
    """Passes a client's answer on to the coach as a note; it is kept as one unless it is heard as a check-in too."""
    course = await courses.locked(desk.session, course_id)
    close(client, Asked.REPLY)
    if course is None or course.person_id != client.id:
        raise LookupError(f"course {course_id} is not of person {client.id}")
    coach = await telling.note(desk, course, text)
    if keep:
        await checkin.note(desk, client, None, [("note", text[:4096])])
    await desk.say(client, Message(desk.words(client).say("steering.replied", coach=coach.label)))


async def type_note(desk: Desk, person: Person, coach: Coach, course_id: int, text: str) -> None:
    """Keeps what a coach notes of a client for themselves."""
    course = await own_course(desk, coach, course_id)
    client, words = await desk.session.get_one(Person, course.person_id), desk.words(person)
    close(person, Asked.NOTE)
    row = CoachNote(course_id=course.id, text=text.strip()[:LONGEST], at=desk.now)
    desk.session.add(row)
    await desk.session.flush()
    undo = Button(words.gettext("Delete this note"), f"steer:{course.id}:forget:{row.id}")
    text_ = words.say("steering.noted", label=client.label)
    await desk.say(person, Message(text_, column(undo, _page(desk, person, course))))


async def notes_of(desk: Desk, course: Course) -> list[CoachNote]:
    """A coach's notes of a client, the newest first."""
    found = select(CoachNote).where(CoachNote.course_id == course.id).order_by(CoachNote.id.desc())
    return list(await desk.session.scalars(found))


async def _forget_note(desk: Desk, person: Person, course: Course, value: str) -> None:
    if not value.isdecimal() or len(value) > 15:
        raise NotAllowed("checkin.not_yours")
    gone = delete(CoachNote).where(CoachNote.id == int(value), CoachNote.course_id == course.id)
    await desk.session.execute(gone)
    await desk.say(person, Message(desk.words(person).say("steering.forgotten")))


def _page(desk: Desk, person: Person, course: Course) -> Button:
    return Button(desk.words(person).gettext("Their page"), f"client:{course.id}")
