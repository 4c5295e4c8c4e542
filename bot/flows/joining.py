"""Joining: from a link to the first morning. What is asked next is the first thing that the record lacks."""

from __future__ import annotations

import logging
from datetime import date, time, timedelta

from markupsafe import Markup

from bot.flows import (
    absences,
    assistants,
    coach_page,
    day,
    evening,
    handing_over,
    health,
    places,
    starting,
    telling,
    times,
)
from bot.flows.asking import Asked, close, open_for
from bot.flows.desk import TERMS, Desk
from bot.words import OWN_NAMES, Words
from bot.words.message import Button, Message, column, joined
from bot.words.programmes import programme_in
from db import coaches, courses, due, links, people
from db.courses import CourseState
from db.links import LinkProblem
from db.schema import Coach, Course, Invite, Person, ProgrammeVersion
from plans import dose, localtime
from plans.screening import OF_MOVEMENTS, Step, screened
from plans.translated import untranslated

log = logging.getLogger(__name__)

MORNINGS = ("06:00", "06:30", "07:00", "07:30", "08:00", "09:00")


async def open_link(desk: Desk, person: Person, token: str) -> None:
    """/start with a token: a coach's one-time link, or an invitation."""
    if await links.guesses_too_much(desk.session, person.chat, desk.now):
        log.warning("link-refused", extra={"chat": person.chat, "update": desk.update_id})
        await desk.say(person, Message(desk.words(person).say("inviting.too_many")))
    elif token.startswith(links.COACH):
        await _become_coach(desk, person, token)
    elif token.startswith(links.DOOR):
        await _open_door(desk, person, token)
    else:
        await _be_invited(desk, person, token)


async def _open_door(desk: Desk, person: Person, token: str) -> None:
    """A coach's one-time link: for an assistant, or for the coach who takes a client over."""
    door = await links.find_door(desk.session, token, desk.now)
    if door is None:
        await _does_not_open(desk, person, LinkProblem.UNKNOWN)
        return
    log.info("link-opened", extra={"chat": person.chat, "update": desk.update_id})
    if door.course_id is not None:
        await handing_over.opened(desk, person, door)
    else:
        await assistants.come(desk, person, door)


async def _does_not_open(desk: Desk, person: Person, problem: LinkProblem) -> None:
    """Says so in the same words whatever the link was, unless this chat has held it; and counts a guess."""
    log.info("link-refused", extra={"chat": person.chat, "update": desk.update_id})
    if problem is LinkProblem.UNKNOWN:
        await links.note_guess(desk.session, person.chat, desk.now)
    await desk.say(person, Message(desk.words(person).say("joining.link_problem", problem=problem)))


async def _become_coach(desk: Desk, person: Person, token: str) -> None:
    words = desk.words(person)
    problem = await links.use_coach_link(desk.session, token, person, desk.now)
    if problem is not None:
        await _does_not_open(desk, person, problem)
        return
    log.info("link-opened", extra={"chat": person.chat, "update": desk.update_id})
    coach = await people.make_coach(desk.session, person, desk.now)
    await plan_digest(desk, person, coach)
    await desk.say(person, Message(words.say("coach.welcome", name=person.label)))
    if person.zone is None:
        open_for(person, Asked.ZONE)
        await desk.say(person, Message(words.say("coach.zone")))


async def plan_digest(desk: Desk, person: Person, coach: Coach) -> None:
    """Plans the coach's next weekly digest at their own hour."""
    at = times.next_weekday(person, coach.digest_weekday, coach.digest_at, desk.now)
    await due.plan(desk.session, due.DueKind.DIGEST, coach.id, at)


async def _be_invited(desk: Desk, person: Person, token: str) -> None:
    words = desk.words(person)
    invite = await links.open_invite(desk.session, token, person, desk.now)
    if not isinstance(invite, Invite):
        await _does_not_open(desk, person, invite)
        return
    log.info("link-opened", extra={"chat": person.chat, "update": desk.update_id})
    if await _is_closed(desk, person, await desk.session.get_one(Coach, invite.coach_id)):
        return
    course = await courses.open_course(desk.session, person)
    if course is not None and course.state != CourseState.JOINING:
        await desk.say(person, Message(words.say("joining.already")))
        return
    if course is not None and course.coach_id != invite.coach_id:
        await courses.drop(desk.session, course)
        course = None
    if course is None:
        course = Course(person_id=person.id, coach_id=0, version_id=0, state=CourseState.JOINING, day=1, level=0)
        course.rests_taken, course.created_at = 0, desk.now
        desk.session.add(course)
    if course.version_id != invite.version_id and course.screened:
        asked = {step: said for step, said in course.screened.items() if step not in (Step.LIMITS, *OF_MOVEMENTS)}
        course.screened, course.barred = asked, None
    course.coach_id, course.version_id, course.invite_id = invite.coach_id, invite.version_id, invite.id
    await desk.session.flush()
    await ask_next(desk, person, course)


async def _is_closed(desk: Desk, person: Person, coach: Coach) -> bool:
    """Says so when a coach is away and nobody stands in: nobody joins meanwhile."""
    closed = await starting.closed_until(desk, coach)
    if closed is None:
        return False
    own = await desk.session.get_one(Person, coach.person_id)
    words = desk.words(person)
    text = words.say("inviting.coach_away", coach=own.label, until=words.short_date(closed))
    await desk.say(person, Message(text))
    return True


async def ask_next(desk: Desk, person: Person, course: Course) -> None:
    """Asks the first thing that is missing before the course can begin."""
    words = desk.words(person)
    _ = words.gettext
    if course.starts_on is not None:
        return
    if not await people.has_agreed(desk.session, person, TERMS) or course.invite_id is not None:
        await _ask_to_agree(desk, person, course)
    elif (step := await health.next_question(desk, course)) is not None:
        await health.ask(desk, person, course, step)
    elif person.zone is None:
        await desk.say(person, Message(words.say("joining.zone")))
    elif person.morning is None:
        await desk.say(person, morning_question(desk, person))
    else:
        await desk.say(person, await _last_question(desk, person, course))


async def _last_question(desk: Desk, person: Person, course: Course) -> Message:
    """When to begin; a group's common date is only said."""
    words = desk.words(person)
    _ = words.gettext
    at = (person.morning or times.MORNING).strftime("%H:%M")
    fixed = await starting.fixed_start(desk, person, course)
    if fixed is not None:
        button = Button(_("I will be there"), f"begin:{course.id}:then")
        return Message(words.say("inviting.begin_on", day=words.long_date(fixed), time=at), column(button))
    buttons = column(
        Button(_("Begin today"), f"begin:{course.id}:today"),
        Button(_("Begin tomorrow"), f"begin:{course.id}:tomorrow"),
    )
    return Message(words.say("joining.begin", time=at), buttons)


async def _ask_to_agree(desk: Desk, person: Person, course: Course) -> None:
    """What the coach says of themselves, then the agreement."""
    coach = await desk.session.get_one(Coach, course.coach_id)
    page = await coach_page.about(desk, person, coach)
    if not page.is_empty:
        await desk.say(person, Message(desk.words(person).say("coaching.about", p=page)))
    await desk.say(person, await _agreement(desk, person, course, page.number))


async def _agreement(desk: Desk, person: Person, course: Course, number: int) -> Message:
    words = desk.words(person)
    programme = await desk.programme(course)
    coach = await telling.coach_person(desk, course)
    lengths = [dose.minutes(d) for d in programme.days if d.kind == "session"]
    text = words.say(
        "joining.agreement",
        coach=coach.label,
        title=programme.title,
        dates=len(programme.days),
        low=min((low for low, _high in lengths), default=0),
        high=max((high for _low, high in lengths), default=0),
    )
    _ = words.gettext
    buttons = column(
        Button(_("I agree"), f"join:{course.id}:agree:{number}:{course.invite_id}"),
        Button(_("No, thank you"), f"join:{course.id}:no"),
    )
    others = (Button(name, f"settings:language:{key}") for key, name in OWN_NAMES.items() if key != words.language)
    terms = words.say("coaching.with_terms", coach=coach.label, number=number) if number else None
    return Message(joined(text, await _other_language(desk, words, course), terms), (*buttons, tuple(others)))


async def _other_language(desk: Desk, words: Words, course: Course) -> Markup | None:
    """Says so when not all of the programme's own texts are there in somebody's language."""
    written = programme_in(await desk.session.get_one(ProgrammeVersion, course.version_id))
    if not untranslated(written, words.language):
        return None
    return words.say("joining.other_language", language=words.language_name(written.language))


def morning_question(desk: Desk, person: Person) -> Message:
    """At what time the session should come; a time can be typed too."""
    buttons = [Button(text, f"time:{text.replace(':', '')}") for text in MORNINGS]
    text = desk.words(person).say("joining.morning", zone=times.zone_of(person))
    return Message(text, (tuple(buttons[:3]), tuple(buttons[3:])))


async def decline(desk: Desk, person: Person, course: Course) -> None:
    """A no to the agreement, also after a yes, as long as the course has not begun."""
    if course.state != CourseState.JOINING:
        return
    if course.invite_id is None:
        await people.withdraw(desk.session, person, desk.now, text_version=TERMS)
    await courses.drop(desk.session, course)
    await desk.say(person, Message(desk.words(person).say("joining.declined")))


async def agree(desk: Desk, person: Person, course: Course, number: int, invite_id: int) -> None:
    """A yes to the agreement, with which a place of the invitation is taken.

    `number` is the version of the coach's terms that was shown, `invite_id` the invitation that it was shown for; what
    is no longer the same is shown again.
    """
    if course.state != CourseState.JOINING or course.invite_id is None:
        return
    coach = await desk.session.get_one(Coach, course.coach_id)
    terms = await coaches.terms_of(desk.session, coach)
    if (terms.number if terms is not None else 0, course.invite_id) != (number, invite_id):
        await _ask_to_agree(desk, person, course)
        return
    if await _is_closed(desk, person, coach):
        return
    if not await links.take_place(desk.session, course.invite_id, person, desk.now):
        await courses.drop(desk.session, course)
        await desk.say(person, Message(desk.words(person).say("joining.no_place")))
        return
    await starting.take_terms(desk, course, await desk.session.get_one(Invite, course.invite_id))
    course.invite_id = None
    await people.agree(desk.session, person, text_version=TERMS, now=desk.now)
    if number:
        agreed = coaches.text_version(coach.id, number)
        await people.agree(desk.session, person, text_version=agreed, now=desk.now)
    await ask_next(desk, person, course)


async def screen(desk: Desk, person: Person, course: Course, step: str, value: str) -> None:
    """One answer about age or health, at joining or when health has changed. Raises NotAllowed for a strange one."""
    if course.state not in courses.OPEN or not await health.answer(desk, person, course, step, value):
        return
    if course.state != CourseState.JOINING:
        await health.go_on(desk, person, course)
    elif screened(course.screened or {}).too_young and not await starting.guardian_agreed(desk, course):
        await courses.drop(desk.session, course)
        await desk.say(person, Message(desk.words(person).say("health.too_young")))
    else:
        await ask_next(desk, person, course)


async def type_zone(desk: Desk, person: Person, text: str) -> None:
    """A typed city: one match is taken, several are offered."""
    words = desk.words(person)
    found = places.zones_like(text[:80])
    if not found:
        await desk.say(person, Message(words.say("joining.zone_unknown", found=text[:80])))
    elif len(found) == 1:
        await take_zone(desk, person, found[0])
    else:
        buttons = column(*(Button(name.replace("_", " "), f"zone:{name}") for name in found))
        await desk.say(person, Message(words.say("joining.zone_choice"), buttons))


async def share_place(desk: Desk, person: Person, latitude: float, longitude: float) -> None:
    """A shared location: its zone is taken, the place itself is not kept."""
    zone = places.zone_at(latitude, longitude)
    if zone is None:
        await desk.say(person, Message(desk.words(person).say("joining.no_zone_there")))
    else:
        await take_zone(desk, person, zone)


async def take_zone(desk: Desk, person: Person, zone: str) -> None:
    """Takes a zone by its IANA name; it acts from the next date without a row."""
    person.zone = zone
    close(person, Asked.ZONE)
    await _after_setting(desk, person)


async def type_morning(desk: Desk, person: Person, text: str) -> None:
    """A typed time of day."""
    found = places.time_of(text)
    if found is None:
        await desk.say(person, Message(desk.words(person).say("joining.morning_unknown")))
    else:
        await take_morning(desk, person, found)


async def take_morning(desk: Desk, person: Person, at: time) -> None:
    """Takes the local time of the morning message."""
    person.morning = at
    close(person, Asked.MORNING)
    await _after_setting(desk, person)


async def _after_setting(desk: Desk, person: Person) -> None:
    course = await courses.open_course(desk.session, person)
    if course is not None and course.state == CourseState.JOINING:
        await ask_next(desk, person, course)
        return
    coach = await people.coach_of(desk.session, person)
    if coach is not None:
        await plan_digest(desk, person, coach)
        if await due.planned(desk.session, due.DueKind.LIST, coach.id):
            await telling.plan_list(desk, coach.id)
    lost: list[date] = []
    if course is not None:
        lost = await day.after_zone_change(desk, person, course)
    at = (person.morning or times.MORNING).strftime("%H:%M")
    goes_on = course is not None and course.state == CourseState.ACTIVE and course.paused is None
    coming = await due.planned(desk.session, due.DueKind.MORNING, person.id) if goes_on else None
    when = None if coming is None else localtime.local(max(coming, desk.now), times.zone_of(person))
    words = desk.words(person)
    text = words.say(
        "client.changed",
        zone=times.zone_of(person),
        time=at,
        next=words.weekday_and_date(when.date()) if when else None,
        lost=[words.weekday_and_date(one) for one in lost],
    )
    await desk.say(person, Message(text))


async def begin(desk: Desk, person: Person, course: Course, value: str) -> None:
    """Begins today or tomorrow; after "something of this" the coach's word comes first."""
    if course.state != CourseState.JOINING or course.invite_id is not None or None in (person.zone, person.morning):
        return
    if await health.next_question(desk, course) is not None:
        await ask_next(desk, person, course)
        return
    words = desk.words(person)
    today = times.today(person, desk.now)
    at_once = value == "today" and not await courses.has_row_of_any_course(desk.session, person, today)
    fixed = await starting.fixed_start(desk, person, course)
    at_once = at_once and fixed is None
    course.starts_on = fixed or (today if at_once else today + timedelta(days=1))
    course.state = CourseState.ACTIVE
    programme = await desk.programme(course)
    coach = await telling.coach_person(desk, course)
    text = desk.words(coach).say("coach.joined", label=person.label, title=programme.title)
    await desk.say(coach, Message(text))
    await health.tell_coach(desk, course)
    await absences.tell_newcomer(desk, person, course)
    if await health.must_wait(desk, course):
        course.state = CourseState.WAITING
        await desk.say(person, starting.waits(desk, person, coach, programme))
    elif at_once:
        await day.make(desk, person, course, today, by_itself=False)
    else:
        at = (person.morning or times.MORNING).strftime("%H:%M")
        begins = words.say("joining.begins", time=at)
        if fixed is not None:
            begins = words.say("inviting.begins_on", day=words.long_date(fixed), time=at)
        await desk.say(person, Message(begins))
        await evening.plan_things(desk, person, course)
    await day.plan_next(desk, person, course)
