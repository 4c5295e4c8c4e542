"""A client goes to another coach of the installation: by a one-time link, and only with the client's own yes."""

from __future__ import annotations

from bot.flows import coach_page, telling
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, own_course
from bot.words.message import Button, Message
from db import coaches, courses, links, people, programmes
from db.courses import CourseState
from db.schema import Coach, Course, Door, HandOver, Person, ProgrammeVersion

RUNNING = (CourseState.ACTIVE, CourseState.WAITING)


async def offer(desk: Desk, person: Person, coach: Coach, course_id: int) -> None:
    """A link for the coach who is to take a client over. Raises NotAllowed for a course that is not running."""
    course = await own_course(desk, coach, course_id)
    if course.state not in RUNNING:
        raise NotAllowed("checkin.not_yours")
    client = await desk.session.get_one(Person, course.person_id)
    token = await links.new_door(desk.session, coach, desk.now, course=course)
    link = f"https://t.me/{desk.bot_username}?start={token}"
    await desk.say(person, Message(desk.words(person).say("coaching.hand_over_link", label=client.label, link=link)))


async def opened(desk: Desk, person: Person, door: Door) -> None:
    """Another coach has opened the link: the client is asked."""
    words = desk.words(person)
    new = await people.coach_of(desk.session, person)
    if new is None or new.id == door.coach_id:
        await desk.say(person, Message(words.say("coaching.hand_over_coach_only")))
        return
    course = await courses.locked(desk.session, door.course_id) if door.course_id is not None else None
    if course is None or course.coach_id != door.coach_id or course.state not in RUNNING:
        await desk.say(person, Message(words.say("coaching.hand_over_past")))
        return
    if not await links.use_door(desk.session, door, person, desk.now):
        raise NotAllowed("checkin.not_yours")
    hand = HandOver(
        course_id=course.id, from_coach_id=course.coach_id, to_coach_id=new.id, asked_at=desk.now, answer=None
    )
    desk.session.add(hand)
    await desk.session.flush()
    client = await desk.session.get_one(Person, course.person_id)
    old = await telling.coach_person(desk, course)
    title = (await desk.session.get_one(ProgrammeVersion, course.version_id)).title
    await desk.say(person, Message(words.say("coaching.hand_over_asked", label=client.label, title=title)))
    text = desk.words(old).say("coaching.hand_over_taken", label=client.label, coach=person.label)
    await desk.say(old, Message(text))
    await _ask(desk, client, hand, new, old, person)


async def _ask(desk: Desk, client: Person, hand: HandOver, new: Coach, old: Person, taker: Person) -> None:
    words = desk.words(client)
    page = await coach_page.about(desk, client, new)
    about = "" if page.is_empty else words.say("coaching.about", p=page)
    text = words.say("coaching.hand_over_ask", old=old.label, new=taker.label, about=about, number=page.number)
    data = f"hand:{hand.id}:{page.number}"
    rows = ((Button(words.gettext("Yes"), f"{data}:yes"), Button(words.gettext("No, stay"), f"{data}:no")),)
    await desk.say(client, Message(text, rows))


async def answered(desk: Desk, person: Person, hand_id: int, number: int, value: str) -> None:
    """The client's yes or no. Raises NotAllowed for anybody else, and for another word."""
    hand = await desk.session.get(HandOver, hand_id)
    course = await courses.locked(desk.session, hand.course_id) if hand is not None else None
    if hand is None or course is None or course.person_id != person.id or value not in ("yes", "no"):
        raise NotAllowed("checkin.not_yours")
    words = desk.words(person)
    if hand.answer is not None or course.coach_id != hand.from_coach_id or course.state not in RUNNING:
        await desk.say(person, Message(words.say("coaching.hand_over_past")))
        return
    old = await telling.coach_person(desk, course)
    new = await desk.session.get_one(Coach, hand.to_coach_id)
    taker = await desk.session.get_one(Person, new.person_id)
    terms = await coaches.terms_of(desk.session, new)
    if value == "yes" and (terms.number if terms is not None else 0) != number:
        await _ask(desk, person, hand, new, old, taker)
        return
    hand.answer, hand.answered_at = value, desk.now
    if value == "no":
        await desk.say(person, Message(words.say("coaching.hand_over_stays", old=old.label)))
        for one in (old, taker):
            await desk.say(one, Message(desk.words(one).say("coaching.hand_over_no", label=person.label)))
        return
    await _move(desk, person, course, new, number)
    await desk.say(person, Message(words.say("coaching.hand_over_done", new=taker.label)))
    for one in (old, taker):
        text = desk.words(one).say("coaching.hand_over_yes", label=person.label, new=taker.label)
        await desk.say(one, Message(text))


async def _move(desk: Desk, person: Person, course: Course, new: Coach, number: int) -> None:
    """The course goes over with its programme version, its open alerts and everything that is kept of it."""
    await programmes.take_along(desk.session, course, new)
    course.coach_id = new.id
    await people.agree(desk.session, person, text_version=f"hand-over-to-coach-{new.id}", now=desk.now)
    if number:
        agreed = coaches.text_version(new.id, number)
        await people.agree(desk.session, person, text_version=agreed, now=desk.now)
    await desk.session.flush()
    await telling.plan_list(desk, new.id)
