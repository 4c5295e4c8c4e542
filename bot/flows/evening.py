"""The evening: how a session went that nothing was said of, or whether a thing that tomorrow needs is at hand.

One message an evening at most, and none in quiet hours.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from bot.flows import deciding, times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.checkin import first_buttons
from bot.words.message import Button, Message, column
from db import courses, due, outbox
from db.courses import CourseState
from db.delivery import Kind
from db.schema import Course, LedgerRow, Person
from plans.equipment import Thing
from plans.fitting import things
from plans.ledger import RowKind
from plans.programme import Programme
from plans.talk import is_begun

NO_NUDGE = 3
"""Dates from the start without a question how the session went."""


async def plan_nudge(desk: Desk, person: Person, course: Course, row: LedgerRow) -> None:
    """Plans the question how a session went for its evening, from the fourth date of a course on."""
    at = times.at(person, row.local_date, times.NUDGE)
    if row.kind == RowKind.SESSION and _is_late_enough(course, row) and at > desk.now:
        await due.plan(desk.session, due.DueKind.NUDGE, row.id, at)


def _is_late_enough(course: Course, row: LedgerRow) -> bool:
    started = course.starts_on or row.local_date
    return (row.local_date - started).days >= NO_NUDGE


NUDGED = "n"
"""The first word of the data of a nudge's buttons: what follows from a tap is shown there."""


def _nudge_key(row: LedgerRow) -> str:
    return f"nudge:{row.person_id}:{row.local_date}"


async def carried_on(desk: Desk, row: LedgerRow) -> None:
    """From a tap under a nudge on it is the nudge that shows its row."""
    found = await outbox.by_key(desk.session, _nudge_key(row))
    if found is not None and found != row.outbox_id:
        row.outbox_id, row.picture = found, None


async def replan_nudge(desk: Desk, row_id: int) -> None:
    """Plans the evening's nudge of a row once more."""
    row = await desk.session.get_one(LedgerRow, row_id)
    person = await desk.session.get_one(Person, row.person_id)
    await due.plan(desk.session, due.DueKind.NUDGE, row_id, times.at(person, row.local_date, times.NUDGE))


async def nudge(desk: Desk, row_id: int) -> None:
    """Asks once in the evening after a session that nothing was said of."""
    await due.cancel(desk.session, due.DueKind.NUDGE, row_id)
    row = await desk.session.get_one(LedgerRow, row_id)
    course = await courses.locked(desk.session, row.course_id)
    person = await desk.session.get_one(Person, row.person_id)
    said = await courses.said_of(desk.session, row)
    arrived = await courses.was_delivered(desk.session, row)
    if person.unreachable_since is not None:
        return
    if course is None or not arrived or course.state != CourseState.ACTIVE or course.paused or is_begun(said):
        return
    words = desk.words(person)
    await desk.send(
        person,
        Message(words.say("day.nudge"), first_buttons(words, row.id, verb=NUDGED)),
        key=_nudge_key(row),
        kind=Kind.NUDGE,
        late_after=times.at(person, row.local_date, times.QUIET),
    )


# --- things ---------------------------------------------------------------------------------------------------------


async def plan_things(desk: Desk, person: Person, course: Course) -> None:
    """Plans the question for this evening, if the programme needs anything that was not asked about."""
    programme = await desk.programme(course)
    at = times.at(person, times.today(person, desk.now), times.NUDGE)
    if at > desk.now and any(_unknown(course, planned_things) for planned_things in map(things, programme.days)):
        await due.plan(desk.session, due.DueKind.THINGS, person.id, at)


async def replan_things(desk: Desk, person_id: int) -> None:
    """Plans a person's question once more, by their clock."""
    person = await desk.session.get_one(Person, person_id)
    today = times.today(person, desk.now)
    at = times.at(person, today, times.NUDGE)
    later = at if at > desk.now else times.at(person, today + timedelta(days=1), times.NUDGE)
    await due.plan(desk.session, due.DueKind.THINGS, person_id, later)


async def ask_for_things(desk: Desk, person_id: int) -> None:
    """Asks about the first thing that tomorrow needs and that was never asked about; one message an evening at most."""
    await due.cancel(desk.session, due.DueKind.THINGS, person_id)
    person = await desk.session.get_one(Person, person_id)
    course = await courses.open_course(desk.session, person)
    if course is None or course.state != CourseState.ACTIVE or course.paused is not None:
        return
    if person.unreachable_since is not None:
        return
    today = times.today(person, desk.now)
    if desk.now < times.at(person, today, times.NUDGE):  # yesterday's evening was missed: this one's is asked
        await plan_things(desk, person, course)
        return
    if desk.now >= times.at(person, today, times.QUIET):
        return
    row = await courses.row_on(desk.session, course, times.today(person, desk.now))
    if row is not None and await _is_for_the_nudge(desk, course, row):
        return
    wanted = _unknown(course, await _tomorrow(desk, person, course, await desk.next_programme(course)))
    if wanted:
        course.at_hand = {**(course.at_hand or {}), wanted[0].name: None}
        await desk.send(
            person,
            await _question(desk, person, course, wanted[0]),
            key=f"things:{person.id}:{times.today(person, desk.now)}",
            kind=Kind.NUDGE,
            late_after=times.at(person, times.today(person, desk.now), times.QUIET),
        )


async def _is_for_the_nudge(desk: Desk, course: Course, row: LedgerRow) -> bool:
    """Whether this evening's one message is the question how the session went."""
    silent = row.kind == RowKind.SESSION and not is_begun(await courses.said_of(desk.session, row))
    return silent and _is_late_enough(course, row)


async def _tomorrow(desk: Desk, person: Person, course: Course, programme: Programme) -> Sequence[Thing]:
    """What the next date's session needs, as things stand; nothing when that date brings no session."""
    pairs = await courses.history(desk.session, course)
    if not pairs:
        tomorrow = times.today(person, desk.now) + timedelta(days=1)
        return things(programme.day(course.day)) if course.starts_on == tomorrow else ()
    last = pairs[-1][0].local_date
    follows = await deciding.ahead(desk, course, programme, [entry for _row, entry in pairs], last)
    next_date = deciding.pace_on(programme, course, last).next_training(last)
    is_session = follows.kind is RowKind.SESSION and follows.day is not None and (next_date - last).days == 1
    return things(programme.day(follows.day)) if is_session and follows.day is not None else ()


def _unknown(course: Course, needed: Sequence[Thing]) -> list[Thing]:
    return [thing for thing in needed if thing.name not in (course.at_hand or {})]


async def _question(desk: Desk, person: Person, course: Course, thing: Thing) -> Message:
    words, say = desk.words(person), (await desk.programme(course)).say
    _ = words.gettext
    answers = ((_("Yes"), True), (_("No"), False))
    rows = column(*(Button(label, data(course.id, has, thing.name)) for label, has in answers))
    return Message(words.say("day.have", thing=say(thing.name), instead=list(map(say, thing.instead))), rows)


def data(course: int, has: bool, thing: str) -> str:
    """The data of a button that says whether a thing is at hand; a long name is cut, and found by how it begins."""
    return f"have:{course}:{'yes' if has else 'no'}:{thing}".encode()[:64].decode(errors="ignore")


async def tapped(desk: Desk, person: Person, course: Course, answer: str, name: str) -> None:
    """Whether a thing is at hand; days that come leave it out if not. Raises NotAllowed for a thing nobody needs."""
    programme = await desk.programme(course)
    known = {thing.name: thing for planned in programme.days for thing in things(planned)}
    thing = next((known[key] for key in known if key == name or (name and key.startswith(name))), None)
    if thing is None or answer not in ("yes", "no"):
        raise NotAllowed("checkin.not_yours")
    course.at_hand = {**(course.at_hand or {}), thing.name: answer == "yes"}
    words = desk.words(person)
    wanted = _unknown(course, await _tomorrow(desk, person, course, await desk.next_programme(course)))
    if wanted:
        course.at_hand = {**course.at_hand, wanted[0].name: None}
        await desk.say(person, await _question(desk, person, course, wanted[0]))
    else:
        await desk.say(
            person, Message(words.say("day.have_noted", has=answer == "yes", thing=programme.say(thing.name)))
        )
