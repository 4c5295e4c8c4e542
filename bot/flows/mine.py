"""/mine: all own data as a page, as JSON with its schema, as tables and for a clinic; or everything deleted."""

from __future__ import annotations

import json
from datetime import timedelta

from sqlalchemy import select

from bot.flows import exporting, telling
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.message import Button, Message, column
from bot.words.own_data import page
from db import courses, due, erasure, people
from db.courses import CourseState
from db.due import DueKind
from db.own_data import OwnData, own_data
from db.schema import Course, Person

TRACES_STAY = timedelta(minutes=10)
"""After so long what carried the last words to somebody who was erased is deleted too. Our own choice."""


async def show(desk: Desk, person: Person) -> None:
    """Says what there is, and offers to send or to delete it."""
    words = desk.words(person)
    _ = words.gettext
    rows = column(
        Button(_("Send me my data"), "mine:send"),
        Button(_("As tables (CSV)"), "mine:tables"),
        Button(_("For a clinic (FHIR)"), "mine:fhir"),
        Button(_("Delete everything"), "mine:delete"),
    )
    await desk.say(person, Message(words.say("mine.what"), rows))


async def tapped(desk: Desk, person: Person, what: str) -> None:
    """One button under /mine. Raises NotAllowed for another one."""
    if what == "send":
        await _send(desk, person)
    elif what in ("tables", "fhir"):
        await exporting.own(desk, person, what)
    elif what == "show":
        await show(desk, person)
    elif what == "delete":
        words = desk.words(person)
        _ = words.gettext
        rows = column(Button(_("Yes, delete everything"), "mine:yes"), Button(_("No, keep it"), "mine:no"))
        await desk.say(person, Message(words.say("mine.ask"), rows))
    elif what == "no":
        await desk.say(person, Message(desk.words(person).say("client.goes_on")))
    elif what == "yes":
        await _erase(desk, person)
    else:
        raise NotAllowed("checkin.not_yours")


async def _send(desk: Desk, person: Person) -> None:
    words = desk.words(person)
    data = await own_data(desk.session, person)
    await desk.document(person, "easeward-my-data.html", page(data, words).encode(), words.say("mine.page"))
    await desk.document(person, "easeward-my-data.json", as_json(data).encode(), words.say("mine.json"))


def as_json(data: OwnData) -> str:
    """The data beside the JSON Schema (2020-12) that describes it."""
    schema = {"$schema": "https://json-schema.org/draft/2020-12/schema"} | OwnData.model_json_schema()
    return json.dumps({"schema": schema, "data": data.model_dump(mode="json")}, ensure_ascii=False, indent=1)


async def _erase(desk: Desk, person: Person) -> None:
    """Deletes everything of a person; their coach hears that they have left, and nothing else stays."""
    words, chat, label = desk.words(person), person.chat, person.label
    course = await courses.open_course(desk.session, person)
    coach = None
    if course is not None and course.state != CourseState.JOINING:
        coach = await telling.coach_person(desk, course)
    await _hand_back(desk, person)
    try:
        await erasure.erase(desk.session, person, desk.now, but_update=desk.update_id)
    except erasure.StillCoach as error:
        raise NotAllowed("mine.still_coach") from error
    if coach is not None and coach.chat != chat:
        await desk.say(coach, Message(desk.words(coach).say("coach.erased", label=label)))
    await desk.say(person, Message(words.say("mine.deleted")))
    await due.plan(desk.session, DueKind.TRACES, chat, desk.now + TRACES_STAY)


async def _hand_back(desk: Desk, person: Person) -> None:
    """Sends the clients of a coach who is erased what is kept of courses that are over: it goes with the coach."""
    own = await people.coach_of(desk.session, person)
    if own is None:
        return
    theirs = select(Person).join(Course, Course.person_id == Person.id).where(Course.coach_id == own.id).distinct()
    for client in await desk.session.scalars(theirs.where(Person.id != person.id)):
        words = desk.words(client)
        await desk.say(client, Message(words.say("mine.coach_leaves", coach=person.label)))
        await _send(desk, client)


async def forget_traces(desk: Desk, chat: int) -> None:
    """Deletes what is left of the way by which somebody's last words came and went."""
    await due.cancel(desk.session, DueKind.TRACES, chat)
    if not await erasure.forget_traces(desk.session, chat):
        await due.plan(desk.session, DueKind.TRACES, chat, desk.now + TRACES_STAY)


async def plan_forgetting(desk: Desk, chat: int) -> None:
    """Plans it once more; no zone has a say in it."""
    await due.plan(desk.session, DueKind.TRACES, chat, desk.now + TRACES_STAY)
