"""Upkeep: what remains after a course, looked at and let run by the coach; and one retest eight weeks later."""

from __future__ import annotations

from datetime import timedelta

from bot.flows import day, evening, finishing, telling, times
from bot.flows.desk import TERMS, Desk
from bot.flows.rights import NotAllowed, coach_only, own_course
from bot.words import LOCALES, words
from bot.words.doses import Gettext, session_lines
from bot.words.message import Button, Message, column
from bot.words.programmes import programme_in
from db import alerts, courses, due, people, programmes
from db.courses import CourseState
from db.delivery import Kind
from db.schema import Coach, Course, Person, ProgrammeVersion
from plans.programme import Day
from plans.reading import read_programme
from plans.translated import said
from plans.upkeep import Upkeep, upkeep
from plans.upkeep_file import Wording, upkeep_text


async def tapped(desk: Desk, person: Person, course_id: int, what: str) -> None:
    """One button about an upkeep plan: the coach looks at it and lets it run, the client begins it again."""
    if what == "again":
        await _again(desk, person, course_id)
        return
    coach = await coach_only(desk, person)
    course = await own_course(desk, coach, course_id)
    if what == "look":
        await _look(desk, person, course)
    elif what == "run":
        await _run(desk, person, coach, course)
    else:
        raise NotAllowed("checkin.not_yours")


async def _plan(desk: Desk, course: Course) -> Upkeep | None:
    """The upkeep of a course as things stand, as its programme is written; None when no movement is left for it."""
    past = await finishing.past_of(desk, course)
    try:
        return upkeep(
            programme_in(await desk.session.get_one(ProgrammeVersion, course.version_id)),
            level=course.level,
            fit=past.fit,
            ranking=past.ranking(),
            favourites=tuple(course.favourites or ()),
        )
    except ValueError:
        return None


async def _look(desk: Desk, person: Person, course: Course) -> None:
    client = await desk.session.get_one(Person, course.person_id)
    words, plan = desk.words(person), await _plan(desk, course)
    if plan is None:
        await desk.say(person, Message(words.say("ending.no_upkeep", label=client.label)))
        return
    programme = await desk.programme_for(person, course)
    lines = session_lines(Day(1, session=said(plan.session, programme.say)), gettext=words.gettext)
    names = programme.catalogue().names()
    liked = [names[key] for key in course.favourites or ()]
    text = words.say("ending.plan", label=client.label, minutes=plan.minutes, lines=lines, liked=liked)
    run = Button(words.gettext("Let it run from tomorrow"), f"upkeep:{course.id}:run")
    await desk.say(person, Message(text, column(run)))


async def _run(desk: Desk, person: Person, coach: Coach, course: Course) -> None:
    """Makes the plan a programme of this coach's and begins it with the client's next morning. Raises NotAllowed."""
    client = await desk.session.get_one(Person, course.person_id)
    plan = await _plan(desk, course)
    if course.state != CourseState.FINISHED or plan is None:
        raise NotAllowed("checkin.not_yours")
    source = await _as_file(desk, course, plan)
    version = await programmes.store(desk.session, coach, read_programme(source), source, desk.now, upkeep=True)
    version.published_at = version.published_at or desk.now
    if not await _begin(desk, client, course, version):
        await desk.say(person, Message(desk.words(person).say("ending.not_now", label=client.label)))
        return
    await desk.say(person, Message(desk.words(person).say("ending.runs", label=client.label)))
    text = desk.words(client).say("ending.begins", coach=person.label, minutes=plan.minutes)
    await desk.say(client, Message(text))


async def _again(desk: Desk, person: Person, course_id: int) -> None:
    """The same upkeep once more, by the client's own wish; the coach hears of it. Raises NotAllowed."""
    course = await courses.locked(desk.session, course_id)
    if course is None or course.person_id != person.id or course.after_id is None:
        raise NotAllowed("checkin.not_yours")
    if await courses.open_course(desk.session, person) is not None:
        raise NotAllowed("joining.already")
    version = await desk.session.get_one(ProgrammeVersion, course.version_id)
    if course.state != CourseState.FINISHED or not await _begin(desk, person, course, version):
        raise NotAllowed("checkin.not_yours")
    await desk.say(person, Message(desk.words(person).say("ending.again_begins")))
    await telling.tell_of(desk, course, cause="upkeep-again", at_once=False)


async def _as_file(desk: Desk, course: Course, plan: Upkeep) -> str:
    """The plan as a programme file, in the programme's own language and with texts in ours."""
    version = await desk.session.get_one(ProgrammeVersion, course.version_id)
    return upkeep_text(programme_in(version), plan, barred=course.barred or (), wordings=_wordings())


def _wordings() -> dict[str, Wording]:
    """The words that an upkeep brings, by language."""
    return {language: _wording(words(language).gettext) for language in LOCALES}


def _wording(_: Gettext) -> Wording:
    return Wording(
        title=_("{title}: upkeep"),
        goal=_("Keep what was reached. {goal}"),
        focus=_("what to keep up"),
        motivation=_("Three short mornings a week, of movements that you know."),
    )


async def _begin(desk: Desk, client: Person, before: Course, version: ProgrammeVersion) -> bool:
    """Begins a course after another one on the client's next date.

    False when they have had another one since, have left, or a warning sign of theirs is open that nobody has dealt
    with, or was when that course was ended.
    """
    agreed = await people.has_agreed(desk.session, client, TERMS)
    flagged = any(alert.red for alert in await alerts.open_of(desk.session, before))
    newest = await courses.newest_course(desk.session, client)
    superseded = newest is None or newest.id != before.id
    if not agreed or flagged or superseded or await alerts.ended_open(desk.session, before):
        return False
    course = Course(person_id=client.id, coach_id=before.coach_id, version_id=version.id, state=CourseState.ACTIVE)
    course.day, course.level, course.rests_taken, course.created_at = 1, 0, 0, desk.now
    course.starts_on = times.today(client, desk.now) + timedelta(days=1)
    course.screened, course.barred, course.at_hand = before.screened, before.barred, before.at_hand
    course.after_id = before.id
    desk.session.add(course)
    await desk.session.flush()
    await day.plan_next(desk, client, course)
    await evening.plan_things(desk, client, course)
    return True


async def offer_retest(desk: Desk, person_id: int) -> None:
    """Eight weeks after the end: offers the test once more to whoever has not left."""
    await due.cancel(desk.session, due.DueKind.RETEST, person_id)
    person = await desk.session.get_one(Person, person_id)
    course = await courses.newest_course(desk.session, person)
    if course is None or person.unreachable_since is not None:
        return
    if not await people.has_agreed(desk.session, person, TERMS):
        return
    morning = times.morning_on(person, times.today(person, desk.now))
    if desk.now < morning:  # it is late, and night here
        await due.plan(desk.session, due.DueKind.RETEST, person_id, morning)
        return
    measures = (await desk.programme(course)).measures
    if not measures or course.state not in (CourseState.ACTIVE, CourseState.FINISHED) or course.paused is not None:
        return
    test = Button(desk.words(person).gettext("Take the test"), f"measure:{measures[0]}:how")
    await desk.send(
        person,
        Message(desk.words(person).say("ending.retest"), column(test)),
        key=f"retest:{person.id}:{times.today(person, desk.now)}",
        kind=Kind.NUDGE,
        late_after=times.too_late(person, times.today(person, desk.now)),
    )


async def plan_retest(desk: Desk, person_id: int) -> None:
    """Plans that offer once more, for the person's own morning of the same date."""
    person = await desk.session.get_one(Person, person_id)
    planned = await due.planned(desk.session, due.DueKind.RETEST, person_id)
    if planned is not None:
        await due.plan(
            desk.session, due.DueKind.RETEST, person_id, times.morning_on(person, times.today(person, planned))
        )
