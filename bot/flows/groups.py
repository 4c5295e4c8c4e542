"""One message of a coach to many of their clients: seen beforehand with the head count, sent once, quiet at night."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import time

from sqlalchemy import select, update

from bot.flows import people, times
from bot.flows.asking import Asked, close, open_for
from bot.flows.desk import Desk
from bot.flows.people import Filter, Look, Seen
from bot.flows.rights import NotAllowed
from bot.words.message import Button, Message, column
from db import due
from db.courses import CourseState
from db.delivery import Kind
from db.schema import Coach, Course, GroupLetter, GroupMessage, Person
from plans.localtime import local

LONGEST = 1000
"""Characters of a message."""
SILENT = frozenset({Look.JOINING, Look.PAUSED, Look.UNREACHABLE})
"""Who gets none: has not joined yet, was promised that nothing is sent, or cannot be reached."""


def recipients(everybody: Sequence[Seen], wanted: Filter) -> tuple[list[Seen], int]:
    """To whom a message goes, and how many of the filter's people are left out.

    Who is paused gets one only where the coach has chosen the paused.
    """
    found = people.chosen(everybody, wanted)
    left_out = SILENT - {Look.PAUSED} if wanted.state == "paused" else SILENT
    going = [one for one in found if one.look not in left_out and one.listed.person.unreachable_since is None]
    return going, len(found) - len(going)


async def begin(desk: Desk, person: Person, coach: Coach, wanted: Filter) -> None:
    """Asks for the words to everybody whom a filter keeps."""
    going, left_out = recipients(await people.people_of(desk, person, coach), wanted)
    words = desk.words(person)
    if not going:
        await desk.say(person, Message(words.say("groups.nobody")))
        return
    row = GroupMessage(coach_id=coach.id, state=wanted.state, programme=wanted.programme, made_at=desk.now)
    desk.session.add(row)
    await desk.session.flush()
    open_for(person, Asked.GROUP, row.id)
    await desk.say(person, Message(words.say("groups.ask", count=len(going), left_out=left_out)))


async def typed(desk: Desk, person: Person, coach: Coach, number: int, text: str) -> None:
    """Takes the words and shows what would leave, to how many."""
    row = await _own(desk, coach, number)
    words = desk.words(person)
    if len(text) > LONGEST:
        await desk.say(person, Message(words.say("steering.too_long", most=LONGEST)))
        return
    close(person, Asked.GROUP)
    row.text = text
    going, left_out = recipients(await people.people_of(desk, person, coach), _filter(row))
    _ = words.gettext
    buttons = column(
        Button(_("Send to {count}").format(count=len(going)), f"group:{row.id}:send"),
        Button(_("Write it anew"), f"group:{row.id}:anew"),
        Button(_("Leave it"), f"group:{row.id}:leave"),
    )
    await desk.say(person, _letter(desk, person, person.label, text))
    await desk.say(person, Message(words.say("groups.before", count=len(going), left_out=left_out), buttons))


def _letter(desk: Desk, to: Person, coach: str, text: str, course: int | None = None) -> Message:
    """The message as a client gets it; in its preview nobody can answer."""
    words = desk.words(to)
    answer = (Button(words.gettext("Answer"), f"reply:{course}"),) if course is not None else ()
    return Message(words.say("steering.from_coach", coach=coach, text=text), (answer,) if answer else ())


async def tapped(desk: Desk, person: Person, coach: Coach, number: int, what: str) -> None:
    """Sends a message once, asks for other words, or lets it be. Raises NotAllowed."""
    row = await _own(desk, coach, number)
    words = desk.words(person)
    if what == "send":
        await _send(desk, person, coach, row)
    elif what == "anew":
        open_for(person, Asked.GROUP, row.id)
        going, left_out = recipients(await people.people_of(desk, person, coach), _filter(row))
        await desk.say(person, Message(words.say("groups.ask", count=len(going), left_out=left_out)))
    elif what == "leave":
        await desk.session.delete(row)
        await desk.say(person, Message(words.say("client.goes_on")))
    else:
        raise NotAllowed("checkin.not_yours")


async def _own(desk: Desk, coach: Coach, number: int) -> GroupMessage:
    """A message of this coach's that has not left. Raises NotAllowed for any other."""
    row = await desk.session.get(GroupMessage, number)
    if row is None or row.coach_id != coach.id:
        raise NotAllowed("checkin.not_yours")
    if row.sent_at is not None:
        raise NotAllowed("groups.sent_already")
    return row


def _filter(row: GroupMessage) -> Filter:
    return Filter(row.state, row.programme)


async def _send(desk: Desk, person: Person, coach: Coach, row: GroupMessage) -> None:
    """Lets each copy leave, or plans it for its reader's morning."""
    first = update(GroupMessage).where(GroupMessage.id == row.id, GroupMessage.sent_at.is_(None))
    once = first.values(sent_at=desk.now).returning(GroupMessage.id)
    if row.text is None or await desk.session.scalar(once) is None:
        raise NotAllowed("groups.sent_already")
    going, _left_out = recipients(await people.people_of(desk, person, coach), _filter(row))
    letters = [GroupLetter(message_id=row.id, course_id=one.listed.course.id) for one in going]
    desk.session.add_all(letters)
    await desk.session.flush()
    held = 0
    for letter, one in zip(letters, going, strict=True):
        client = one.listed.person
        if _is_quiet(client, desk):
            held += 1
            await due.plan(desk.session, due.DueKind.LETTER, letter.id, times.next_morning(client, desk.now))
        else:
            await _leave(desk, letter, client, person.label, row.text)
    await desk.say(person, Message(desk.words(person).say("groups.sent", count=len(going), held=held)))


def _is_quiet(client: Person, desk: Desk) -> bool:
    """Whether it is evening or night for somebody: after the nudges' time, or before their own morning."""
    at = local(desk.now, times.zone_of(client)).time()
    morning: time = client.morning or times.MORNING
    return at >= times.QUIET or at < morning


async def _leave(desk: Desk, letter: GroupLetter, client: Person, coach: str, text: str) -> None:
    letter.left_at = desk.now
    key = f"group:{letter.message_id}:{letter.course_id}"
    message = _letter(desk, client, coach, text, letter.course_id)
    await desk.send(client, message, key=key, kind=Kind.NUDGE)


async def in_the_morning(desk: Desk, letter_id: int) -> None:
    """A copy that waited for its reader's morning; who gets no messages of this coach's meanwhile gets none."""
    await due.cancel(desk.session, due.DueKind.LETTER, letter_id)
    found = await _whole(desk, letter_id)
    if found is None:
        return
    letter, message, course, client, coach = found
    runs = course.state not in (CourseState.STOPPED, CourseState.JOINING) and course.coach_id == message.coach_id
    heard = course.paused is None or message.state == "paused"
    if runs and heard and client.unreachable_since is None and letter.left_at is None and message.text is not None:
        await _leave(desk, letter, client, coach.label, message.text)


async def replan(desk: Desk, letter_id: int) -> None:
    """Plans a copy for its reader's morning once more."""
    found = await _whole(desk, letter_id)
    if found is not None:
        await due.plan(desk.session, due.DueKind.LETTER, letter_id, times.next_morning(found[3], desk.now))


async def _whole(desk: Desk, letter_id: int) -> tuple[GroupLetter, GroupMessage, Course, Person, Person] | None:
    """A copy with its message, course, reader and coach."""
    letter = await desk.session.get(GroupLetter, letter_id)
    if letter is None:
        return None
    message = await desk.session.get_one(GroupMessage, letter.message_id)
    course = await desk.session.get_one(Course, letter.course_id)
    client = await desk.session.get_one(Person, course.person_id)
    coach = select(Person).join(Coach, Coach.person_id == Person.id).where(Coach.id == message.coach_id)
    return letter, message, course, client, (await desk.session.scalars(coach)).one()
