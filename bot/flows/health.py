"""Questions about age and health: before a course begins, and again when somebody says that they have changed."""

from __future__ import annotations

from markupsafe import escape

from bot.flows import day, telling
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import Words
from bot.words.checkin import numbers
from bot.words.message import Button, Message, Rows, column
from db import alerts, bodies
from db.courses import CourseState
from db.schema import Course, Person
from plans.cautions import Caution, caution_words
from plans.checkin import Flag
from plans.dose import movement_names
from plans.limits import asked_of
from plans.screening import (
    ADULT,
    HEALTH,
    LISTS,
    NO,
    NONE,
    OF_MOVEMENTS,
    OLDER,
    SOMETHING,
    YES,
    YOUNG,
    Step,
    answered,
    next_step,
    screened,
)


async def next_question(desk: Desk, course: Course) -> Step | Caution | None:
    """The question that is still open in a course's record; None when all is answered."""
    return next_step(course.screened or {}, asked_of(await desk.programme(course)))


async def ask(desk: Desk, person: Person, course: Course, step: Step | Caution) -> None:
    """Asks one question of the screening with its answers."""
    words = desk.words(person)
    _ = words.gettext
    if step is Step.LIMITS:
        of = asked_of(await desk.programme(course))
        text = words.say("health.limits", limits=of)
    elif isinstance(step, Caution):
        text = escape(_(caution_words()[step].question))
    else:
        text = words.say("health.question", step=str(step))
    await desk.say(person, Message(text, _answers(words, course, step)))


def _answers(words: Words, course: Course, step: Step | Caution) -> Rows:
    _ = words.gettext
    prefix = f"screen:{course.id}:{step}"
    if step is Step.USUAL:
        return numbers(prefix, 0)
    if step is Step.AGE:
        ages = ((_("18 to 64"), ADULT), (_("65 or over"), OLDER), (_("Under 18"), YOUNG))
        return column(*(Button(label, f"{prefix}:{value}") for label, value in ages))
    if step in (*LISTS, Step.LIMITS):
        return column(
            Button(_("None of these"), f"{prefix}:{NONE}"),
            Button(_("Something"), f"{prefix}:{SOMETHING}"),
        )
    return ((Button(_("Yes"), f"{prefix}:{YES}"), Button(_("No"), f"{prefix}:{NO}")),)


async def answer(desk: Desk, person: Person, course: Course, step: str, value: str) -> bool:
    """Keeps one answer; False when the question is not the one that is open. Raises NotAllowed for a strange one.

    What a body cannot give is left out of its sessions from now on; after the last of these questions that is said.
    """
    if await next_question(desk, course) != step:
        return False
    try:
        course.screened = answered(course.screened or {}, step, value)
    except ValueError as error:
        raise NotAllowed("checkin.not_yours") from error
    if step in OF_MOVEMENTS:
        if value == YES:
            bodies.bar(course, await desk.programme(course), Caution(step))
        await _say_what_is_left_out(desk, person, course)
    return True


async def _say_what_is_left_out(desk: Desk, person: Person, course: Course) -> None:
    if await next_question(desk, course) in OF_MOVEMENTS or not screened(course.screened or {}).limits:
        return
    programme, coach = await desk.programme(course), await telling.coach_person(desk, course)
    names = [name for key, name in movement_names(*programme.days).items() if key in (course.barred or ())]
    if names:
        await desk.say(person, Message(desk.words(person).say("health.left_out", coach=coach.label, names=names)))


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
        if await next_question(desk, course) is not None:
            await tell_coach(desk, course)
    await ask_on(desk, person, course)


async def ask_on(desk: Desk, person: Person, course: Course) -> None:
    """Asks the client of a running course the next question; after the last the coach has the answers."""
    step = await next_question(desk, course)
    if step is not None:
        await ask(desk, person, course, step)
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
