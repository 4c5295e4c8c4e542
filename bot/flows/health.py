"""Questions about age and health: before a course begins, and again when somebody says that they have changed."""

from __future__ import annotations

from bot.flows import day, telling
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.checkin import numbers
from bot.words.message import Button, Message, column
from db import alerts
from db.courses import CourseState
from db.schema import Course, Person
from plans.checkin import Flag
from plans.screening import (
    ADULT,
    HEALTH,
    LISTS,
    NO,
    NONE,
    OLDER,
    SOMETHING,
    YES,
    YOUNG,
    Step,
    answered,
    next_step,
    screened,
)


def question(desk: Desk, person: Person, course: Course, step: Step) -> Message:
    """One question of the screening and its answers."""
    words = desk.words(person)
    _ = words.gettext
    prefix = f"screen:{course.id}:{step}"
    text = words.say("health.question", step=str(step))
    if step is Step.USUAL:
        return Message(text, numbers(prefix, 0))
    if step is Step.AGE:
        ages = ((_("18 to 64"), ADULT), (_("65 or over"), OLDER), (_("Under 18"), YOUNG))
        return Message(text, column(*(Button(label, f"{prefix}:{value}") for label, value in ages)))
    if step in LISTS:
        none, something = (
            Button(_("None of these"), f"{prefix}:{NONE}"),
            Button(_("Something"), f"{prefix}:{SOMETHING}"),
        )
        return Message(text, column(none, something))
    return Message(text, ((Button(_("Yes"), f"{prefix}:{YES}"), Button(_("No"), f"{prefix}:{NO}")),))


async def answer(course: Course, step: str, value: str) -> bool:
    """Keeps one answer; False when the question is not the one that is open. Raises NotAllowed for a strange one."""
    said = course.screened or {}
    if next_step(said) != step:
        return False
    try:
        course.screened = answered(said, step, value)
    except ValueError as error:
        raise NotAllowed("checkin.not_yours") from error
    return True


async def flagged_outside_a_course(desk: Desk, person: Person, course: Course, level: Flag, text: str) -> None:
    """A warning sign in words before a course has begun or after its end: what to do, and the coach is told at once.

    Before the agreement nothing is passed on.
    """
    agreed = course.invite_id is None
    if agreed:
        facts: dict[str, int | float | str | bool] = {"flag": level}
        await telling.tell_of(
            desk, course, cause="red-flag", at_once=True, red=True, facts=facts, quote=text, decided="waits"
        )
    await desk.say(person, Message(desk.words(person).say("checkin.caution", level=str(level), told=agreed)))


async def must_wait(desk: Desk, course: Course) -> bool:
    """Whether the coach's word comes before the first session: for an answer, or for words that were a warning sign."""
    waits = screened(course.screened or {}).waits
    return bool(waits) or any(alert.red for alert in await alerts.open_of(desk.session, course))


async def has_changed(desk: Desk, person: Person, course: Course, text: str | None) -> None:
    """A pregnancy, an operation, a diagnosis: the course waits for the coach, the health questions are asked again."""
    course.screened = {step: said for step, said in (course.screened or {}).items() if step not in HEALTH}
    newest = await day.hold(desk, person, course)
    await telling.tell_of(desk, course, cause="health-changed", at_once=True, row=newest, quote=text, decided="held")
    await desk.say(person, Message(desk.words(person).say("health.changed")))
    await ask_on(desk, person, course)


async def go_on(desk: Desk, person: Person, course: Course) -> None:
    """After an answer of a running course: one that calls for the coach's word makes it wait at once."""
    if course.state == CourseState.ACTIVE and screened(course.screened or {}).waits:
        await day.hold(desk, person, course)
        if next_step(course.screened or {}) is not None:
            await tell_coach(desk, course)
    await ask_on(desk, person, course)


async def ask_on(desk: Desk, person: Person, course: Course) -> None:
    """Asks the client of a running course the next question; after the last the coach has the answers."""
    step = next_step(course.screened or {})
    if step is not None:
        await desk.say(person, question(desk, person, course, step))
        return
    await tell_coach(desk, course)
    if course.state == CourseState.ACTIVE:
        await desk.say(person, Message(desk.words(person).say("checkin.thanks")))
        return
    coach = await telling.coach_person(desk, course)
    await desk.say(person, Message(desk.words(person).say("joining.waits", coach=coach.label)))


async def tell_coach(desk: Desk, course: Course) -> None:
    """What was answered with yes: at once where the coach's word comes first, else with the morning list."""
    found = screened(course.screened or {})
    if found.waits or course.state == CourseState.WAITING:
        facts: dict[str, int | float | str | bool] = {"waits": " ".join(found.waits), "usual": _usual(course)}
        await telling.tell_of(desk, course, cause="screening", at_once=True, facts=facts, decided="held")
    if found.noted:
        facts = {"noted": " ".join(found.noted)}
        await telling.tell_of(desk, course, cause="screening-noted", at_once=False, facts=facts)


def _usual(course: Course) -> int:
    return int((course.screened or {}).get(Step.USUAL, 0))
