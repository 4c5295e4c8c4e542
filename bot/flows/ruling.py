"""What a coach decides at once: leave a movement out, let a waiting client go on."""

from __future__ import annotations

from bot.flows import day, deciding, overruling
from bot.flows.asking import Asked, close, open_for, told_by_then
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, own_course
from bot.words.message import ON_PHONE, Button, Message, column
from db import alerts, courses
from db.courses import CourseState
from db.schema import Coach, Course, Overrule, Person
from plans import course as way
from plans import dose
from plans.checkin import Flag
from plans.fitting import Fit, fitted
from plans.overruling import Word
from plans.programme import Programme
from plans.screening import Step

QUICK_NOTES = {
    "spoke": "Spoke with them; fine to go on.",
    "seen": "Seen by a doctor or physiotherapist, who agrees.",
}


async def bar(desk: Desk, person: Person, coach: Coach, course_id: int, value: str) -> None:
    """Leaves a movement out of everything that a client gets, or brings it back; with "list" shows which there are.

    Raises NotAllowed for another number, and for a course that is not running.
    """
    course = await own_course(desk, coach, course_id)
    if course.state not in day.RUNNING:
        raise NotAllowed("steering.not_running")
    client = await desk.session.get_one(Person, course.person_id)
    programme = await desk.next_programme(course, person)
    names = dose.movement_names(*programme.days)
    barred = set(course.barred or ())
    if value != "list":
        if not value.isdecimal() or int(value) >= len(names):
            raise NotAllowed("checkin.not_yours")
        barred ^= {list(names)[int(value)]}
        course.barred = sorted(barred)
        theirs = dose.movement_names(*(await desk.next_programme(course)).days)
        left_out = [name for key, name in theirs.items() if key in barred]
        await desk.say(
            client, Message(desk.words(client).say("coach.barred_client", coach=person.label, names=left_out))
        )
    number = await _next_day(desk, course, programme)
    here = {item.movement.key for _b, item in dose.items(programme.day(number).session)} | barred
    instead = [(names[key], _instead(programme, number, course.level, barred, key)) for key in names if key in here]
    _ = desk.words(person).gettext
    buttons = [
        Button(f"{_('Bring back') if key in barred else _('Leave out')}: {name}"[:ON_PHONE], f"bar:{course.id}:{n}")
        for n, (key, name) in enumerate(names.items())
        if key in here
    ]
    left_out = [name for key, name in names.items() if key in barred]
    text = desk.words(person).say("coach.barred", label=client.label, day=number, names=left_out, instead=instead)
    await desk.say(person, Message(text, column(*buttons)))


async def _next_day(desk: Desk, course: Course, programme: Programme) -> int:
    """The session day that comes next as things stand, else the day in hand."""
    at = await overruling.standing(desk, course)
    coming = await deciding.ahead(desk, course, programme, at.past, at.last)
    return coming.day or min(coming.position.day, len(programme.days))


def _instead(programme: Programme, number: int, level: int, barred: set[str], key: str) -> str:
    """What takes a movement's place on a day when it is left out; empty where nothing does."""
    without, with_it = (
        fitted(programme.day(number), level, Fit(barred=out), programme.catalogue(), programme.ages, programme.muscles)
        for out in (barred | {key}, barred - {key})
    )
    before = {item.movement.key for _b, item in dose.items(with_it.session)}
    found = dose.movement_names(without)
    return ", ".join(name for other, name in found.items() if other not in before)


async def ask_found_out(desk: Desk, person: Person, coach: Coach, course_id: int) -> None:
    """Before a waiting client goes on, the coach says what was found out."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    words = desk.words(person)
    if course.state != CourseState.WAITING:
        await desk.say(person, Message(words.say("coach.not_waiting", label=client.label)))
        return
    grave, told = await _is_grave(desk, course), await alerts.told_so_far(desk.session, course)
    open_for(person, Asked.FOUND_OUT, course.id, told)
    _ = words.gettext
    buttons = [Button(_("Seen by a doctor or physio, who agrees"), f"found:{course.id}:seen:{told}")]
    if not grave:
        buttons.append(Button(_("Spoke with them, fine to go on"), f"found:{course.id}:spoke:{told}"))
    text = words.say("coach.ask_found_out", label=client.label, grave=grave)
    await desk.say(person, Message(text, column(*buttons)))


async def _is_grave(desk: Desk, course: Course) -> bool:
    """Whether an emergency or same-day sign, or a symptom told at joining, stands behind the waiting."""
    opened = await alerts.open_of(desk.session, course)
    levels = {str(alert.facts.get("flag")) for alert in opened}
    causes = {alert.cause for alert in opened}
    told = {step for alert in opened for step in str(alert.facts.get("waits", "")).split()}
    if told & {Step.CHEST, Step.BREATH, Step.FAINT}:
        return True
    return bool(levels & {Flag.EMERGENCY, Flag.SAME_DAY} or causes & {"strain-like", "severe"})


async def let_go(desk: Desk, person: Person, coach: Coach, course_id: int, note: str) -> None:
    """Lets a waiting client go on after what was typed to the open question. Raises NotAllowed."""
    await found_out(desk, person, coach, course_id, note, told_by_then(person))


async def found_out(desk: Desk, person: Person, coach: Coach, course_id: int, note: str, told: int | None) -> None:
    """Lets a waiting client go on, lighter if they had begun, and keeps what was found out. Raises NotAllowed.

    `told` is how much had been told when the coach was asked: after anything newer nobody is let go by it.
    """
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    words = desk.words(person)
    close(person, Asked.FOUND_OUT)
    if course.state != CourseState.WAITING or not note.strip():
        await desk.say(person, Message(words.say("coach.not_waiting", label=client.label)))
        return
    if told != await alerts.told_so_far(desk.session, course):
        await desk.say(person, Message(words.say("coach.cannot_rule")))
        return
    if note == QUICK_NOTES["spoke"] and await _is_grave(desk, course):
        raise NotAllowed("checkin.not_yours")
    past = [entry for _row, entry in await courses.history(desk.session, course)]
    if any(entry.day is not None for entry in past):
        courses.move(course, way.let_go(courses.position_of(course)))
    seen = await courses.last_answer_id(desk.session, course)
    desk.session.add(
        Overrule(course_id=course.id, what=Word.GO_ON, note=note.strip()[:1000], seen_answer_id=seen, at=desk.now)
    )
    await overruling.withdraw(desk, course)
    course.state = CourseState.ACTIVE
    await alerts.close_all(desk.session, course, desk.now)
    text = words.say("coach.goes_on", label=client.label, day=course.day, level=course.level)
    await desk.say(person, Message(text))
    await desk.say(client, Message(desk.words(client).say("coach.goes_on_client", coach=person.label)))
