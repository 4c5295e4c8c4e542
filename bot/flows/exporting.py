"""Files of what is kept: for a coach of one client or of everybody, for clients of themselves."""

from __future__ import annotations

from bot.exports import fhir, records, tables
from bot.exports.files import Files, adverse_events, files, packed
from bot.flows import planned
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, own_course
from bot.words import Words
from bot.words.message import Button, Message, column
from db import record
from db.courses import CourseState
from db.record import Kept
from db.schema import Coach, Course, Person


async def of_client(desk: Desk, person: Person, coach: Coach, course_id: int, what: str) -> None:
    """One button for the files of a client: what there is, or one of them. Raises NotAllowed for another one."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    words = desk.words(person)
    if what == "menu":
        await desk.say(person, _menu(words, client, course))
        return
    if what == "plan":
        await _plan(desk, person, client, course, coach)
        return
    kept = await record.of_coach(desk.session, coach.id, client.id)
    if what not in _OF_ONE:
        raise NotAllowed("checkin.not_yours")
    await _send(desk, person, _of_one(what, client, kept, desk), f"exporting.{what}", coach, client.label)


_OF_ONE = ("tables", "record", "events", "fhir")


def _menu(words: Words, client: Person, course: Course) -> Message:
    _ = words.gettext
    labels = {
        "tables": _("Tables (CSV)"),
        "record": _("Record (JSON)"),
        "events": _("Adverse events"),
        "fhir": _("For a clinic (FHIR)"),
        "plan": _("Dates ahead (calendar)"),
    }
    if course.state != CourseState.ACTIVE:
        del labels["plan"]
    buttons = [Button(label, f"export:{course.id}:{what}") for what, label in labels.items()]
    return Message(words.say("exporting.of_client", label=client.label), column(*buttons))


def _of_one(what: str, client: Person, kept: list[Kept], desk: Desk) -> Files:
    if not kept:
        return {}
    if what == "tables":
        return tables.tables(kept)
    if what == "record":
        return {"record.json": records.as_json(records.record(kept, desk.now))}
    if what == "events":
        return adverse_events(kept, desk.now)
    return {"fhir.json": fhir.as_json(fhir.bundle(client, kept, desk.now))}


async def of_everybody(desk: Desk, person: Person, coach: Coach, what: str) -> None:
    """One button for the files of all clients of a coach. Raises NotAllowed for another one."""
    words = desk.words(person)
    _ = words.gettext
    if what == "menu":
        labels = {"events": _("Adverse events"), "all": _("All of it (ZIP)")}
        rows = column(*(Button(label, f"exports:{which}:{coach.id}") for which, label in labels.items()))
        await desk.say(person, Message(words.say("exporting.of_everybody"), rows))
        return
    if what not in ("events", "all"):
        raise NotAllowed("checkin.not_yours")
    kept = await record.of_coach(desk.session, coach.id)
    if what == "events":
        found = adverse_events(kept, desk.now) if kept else {}
    else:
        found = {"easeward-records.zip": packed(await everything(desk, kept))} if kept else {}
    await _send(desk, person, found, f"exporting.{what}", coach, None)


async def everything(desk: Desk, kept: list[Kept]) -> Files:
    """Every file of these courses, the calendars too."""
    found = files(kept, desk.now)
    for one in kept:
        plan = await planned.plan_file(desk, one.person, one.course, [entry for _row, entry, _at in one.rows])
        if plan is not None:
            found[f"calendar/{one.course.id}.ics"] = plan
    return found


async def own(desk: Desk, person: Person, what: str) -> None:
    """A client's own record, whoever coaches them, as FHIR or as tables."""
    kept = await record.of_person(desk.session, person.id)
    await _send(desk, person, _of_one(what, person, kept, desk), f"exporting.own_{what}", None, None)


async def own_plan(desk: Desk, person: Person, course: Course) -> None:
    """The dates ahead of a client's own course."""
    await _plan(desk, person, person, course, None)


async def _plan(desk: Desk, person: Person, client: Person, course: Course, coach: Coach | None) -> None:
    found = await planned.plan_file(desk, client, course)
    if found is None:
        await desk.say(person, Message(desk.words(person).say("exporting.no_plan")))
        return
    said = "exporting.own_plan" if coach is None else "exporting.plan"
    await _send(desk, person, {"easeward-plan.ics": found}, said, coach, client.label)


async def _send(desk: Desk, person: Person, found: Files, said: str, coach: Coach | None, label: str | None) -> None:
    """Sends files, words under the last one; a file of a coach's has a key by which an erasure finds it."""
    words = desk.words(person)
    if not found:
        await desk.say(person, Message(words.say("exporting.nothing")))
        return
    caption = words.say(said, label=label)
    for number, (name, body) in enumerate(found.items(), 1):
        key = f"{record.key_of(coach)}{desk.cause}:{name}" if coach is not None else None
        await desk.document(
            person, name, body, caption if number == len(found) else words.say("exporting.part"), key=key
        )
