"""The end of a course: what changed, before and after, what the client liked best, and what the coach makes of it."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import timedelta

from bot.flows import photos, progress, telling, times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.ending import found_out
from bot.words.message import ON_PHONE, Button, Message, Rows, column
from db import bodies, courses, due, measures
from db.courses import CourseState
from db.schema import Course, Person
from plans.checkin import Completion
from plans.dose import items
from plans.fitting import Fit
from plans.ledger import Entry, RowKind
from plans.measures import MEASURES
from plans.movements import Movement
from plans.ranking import Ranking, followed, ranking

LIKED = 2
"""Movements that a client may name."""
OFFERED = 8
"""Movements that are offered, those that were done most."""
FRESH = timedelta(days=7)
"""A test this old still says where somebody stands at the end (own choice)."""
RETEST = timedelta(weeks=8)
"""After the end a test is offered once more (own choice)."""


@dataclass(frozen=True, slots=True)
class Past:
    """A course's rows, and of each that brought a session the movements as they were handed out."""

    rows: tuple[Entry, ...]
    handed: dict[Entry, dict[str, Movement]]
    fit: Fit

    @property
    def done_most(self) -> dict[str, Movement]:
        """The movements that were done most often in full and are not barred, by key, most often first."""
        count: Counter[str] = Counter()
        known: dict[str, Movement] = {}
        for row, movements in self.handed.items():
            if row.checkin.completion is Completion.DONE:
                known |= movements
                count.update(movements.keys())
        kept = [key for key, _times in count.most_common() if key not in self.fit.barred]
        return {key: known[key] for key in kept}

    def ranking(self) -> Ranking:
        """Which movements went with better mornings."""
        outcome, days = followed(self.rows, lambda row: self.handed.get(row, {}))
        return ranking(days, outcome)


async def past_of(desk: Desk, course: Course) -> Past:
    """What a course has been."""
    pairs = await courses.history(desk.session, course)
    handed = {}
    for number, (row, entry) in enumerate(pairs):
        if entry.kind is RowKind.SESSION and row.day is not None:
            programme = await desk.programme_of(course, row)
            day = bodies.handed_out(programme, row, bodies.fit_of(course, row, pairs[: number + 1]))
            handed[entry] = {item.movement.key: item.movement for _block, item in items(day.session)}
    return Past(tuple(entry for _row, entry in pairs), handed, bodies.lasting_fit(course))


async def finish(desk: Desk, person: Person, course: Course, *, ended_by: Person | None = None) -> None:
    """Ends a course that has no day left, or that its coach ends: says what came of it, and what can follow.

    Nothing follows for somebody who waits for their coach.
    """
    waited = course.state == CourseState.WAITING
    course.state, course.paused, course.back_on = CourseState.FINISHED, None, None
    course.ended_at = desk.now
    await due.cancel(desk.session, due.DueKind.MORNING, person.id)
    words = desk.words(person)
    reached = words.say("ending.reached", upkeep=course.after_id is not None)
    await desk.say(person, Message(words.say("ruling.ended_client", coach=ended_by.label) if ended_by else reached))
    await progress.show(desk, person)
    if len(await photos.taken(desk, course)) > 1:
        await photos.show(desk, person, person, course)
    past = await past_of(desk, course)
    if not waited:
        await _offer(desk, person, course, past)
    if ended_by:
        coach = await telling.coach_person(desk, course)
        await desk.say(coach, Message(desk.words(coach).say("ruling.ended", label=person.label)))
    await _tell_coach(desk, person, course, past, offers=not waited and course.after_id is None)


async def _offer(desk: Desk, person: Person, course: Course, past: Past) -> None:
    """What a client can do after a course: a test, upkeep once more or what they liked best, a test in eight weeks."""
    words, programme = desk.words(person), await desk.programme(course)
    await _offer_test(desk, person, course)
    if course.after_id is not None:
        again = Button(words.gettext("Four more weeks"), f"upkeep:{course.id}:again")
        await desk.say(person, Message(words.say("ending.again"), column(again)))
    elif past.done_most:
        await desk.say(person, Message(words.say("ending.liked"), _liked_buttons(desk, person, course, past)))
    if course.after_id is None and programme.measures:
        at = times.morning_on(person, times.today(person, desk.now) + RETEST)
        await due.plan(desk.session, due.DueKind.RETEST, person.id, at)


async def _offer_test(desk: Desk, person: Person, course: Course) -> None:
    """Offers each of the programme's tests that was not taken in the last days of the course."""
    recent = {t.measure for t in await measures.taken(desk.session, course) if desk.now - t.at <= FRESH}
    missing = [MEASURES[key] for key in (await desk.programme(course)).measures if key not in recent]
    if missing:
        buttons = (
            Button(desk.words(person).gettext(measure.name), f"measure:{measure.key}:how") for measure in missing
        )
        await desk.say(person, Message(desk.words(person).say("ending.test"), column(*buttons)))


def _liked_buttons(desk: Desk, person: Person, course: Course, past: Past) -> Rows:
    liked = course.favourites or []
    offered = [movement for key, movement in past.done_most.items() if key not in liked][:OFFERED]
    buttons = [Button(movement.name[:ON_PHONE], f"liked:{course.id}:{movement.key}") for movement in offered]
    return column(*buttons, Button(desk.words(person).gettext("No more"), f"liked:{course.id}:-"))


async def liked(desk: Desk, person: Person, course_id: int, key: str) -> None:
    """Notes a movement that the client liked; after two, or when that is all, says thanks. Raises NotAllowed."""
    course = await courses.locked(desk.session, course_id)
    if course is None or course.person_id != person.id or course.state != CourseState.FINISHED:
        raise NotAllowed("checkin.not_yours")
    words, past = desk.words(person), await past_of(desk, course)
    if key != "-":
        if key not in past.done_most:
            raise NotAllowed("checkin.not_yours")
        course.favourites = [*dict.fromkeys((*(course.favourites or ()), key))][:LIKED]
        if len(course.favourites) < LIKED:
            text = words.say("ending.one_more", name=past.done_most[key].name)
            await desk.say(person, Message(text, _liked_buttons(desk, person, course, past)))
            return
    coach = await telling.coach_person(desk, course)
    await desk.say(person, Message(words.say("ending.thanks", coach=coach.label)))


async def _tell_coach(desk: Desk, person: Person, course: Course, past: Past, *, offers: bool) -> None:
    """What came of it, which movements went with better mornings, and what can follow if upkeep is offered."""
    coach = await telling.coach_person(desk, course)
    words, programme = desk.words(coach), await desk.programme(course)
    names = {movement.key: movement.name for movement in programme.catalogue().values()}
    results = await progress.results(desk, words, course)
    text = words.say(
        "ending.to_coach",
        label=person.label,
        title=programme.title,
        results=results,
        found=found_out(words, past.ranking(), names),
        upkeep=course.after_id is not None,
    )
    _ = words.gettext
    buttons = [Button(_("Open their page"), f"client:{course.id}")]
    if offers:
        buttons.insert(0, Button(_("Look at an upkeep plan"), f"upkeep:{course.id}:look"))
    await desk.say(coach, Message(text, column(*buttons)))
