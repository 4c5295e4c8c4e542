"""A coach who is away: from which day to which, and who stands in; without anybody, invitations close meanwhile."""

from __future__ import annotations

from datetime import date, timedelta

from markupsafe import Markup
from sqlalchemy import select

from bot.flows import drafts, times
from bot.flows.asking import Asked, close, open_for
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, coach_only
from bot.words.message import ON_PHONE, Button, Message, column
from db import due, helpers
from db.courses import OPEN
from db.delivery import Kind
from db.due import DueKind
from db.schema import Absence, Coach, Course, Person

BUTTONS = frozenset({"away", "leave", "back"})


async def tapped(desk: Desk, person: Person, coach: Coach, what: str, rest: list[str]) -> None:
    """One button about being away, tapped by the coach. Raises NotAllowed for another one."""
    if what == "back":
        await _back(desk, person, coach)
    elif what == "leave":
        await _leave(desk, person, coach, rest)
    elif len(rest) == 2:
        first, last = (_day(text) for text in rest)
        await _ask_stand_in(desk, person, coach, first, last)
    else:
        await _show(desk, person, coach)


def _day(text: str) -> date:
    try:
        return date.fromisoformat(text)
    except ValueError as error:
        raise NotAllowed("checkin.not_yours") from error


async def _show(desk: Desk, person: Person, coach: Coach) -> None:
    """What is planned, with the way back; or the question for dates."""
    today, words = times.today(person, desk.now), desk.words(person)
    _ = words.gettext
    planned = await helpers.absence_to_come(desk.session, coach, today)
    if planned is not None:
        button = Button(_("I am back") if planned.first_on <= today else _("I stay here"), "coach:back")
        await desk.say(person, Message(await _planned_words(desk, person, planned), column(button)))
        return
    open_for(person, Asked.ABSENCE)
    tomorrow = today + timedelta(days=1)
    weeks = ((_("A week from tomorrow"), 6), (_("Two weeks from tomorrow"), 13))
    buttons = [Button(label, f"coach:away:{tomorrow}:{tomorrow + timedelta(days=days)}") for label, days in weeks]
    await desk.say(person, Message(words.say("coaching.ask_away"), column(*buttons)))


async def _planned_words(desk: Desk, person: Person, planned: Absence) -> Markup:
    words = desk.words(person)
    stand_in = await desk.session.get(Person, planned.stand_in_id) if planned.stand_in_id is not None else None
    first, last = (drafts.day(words, on) for on in (planned.first_on, planned.last_on))
    return words.say("coaching.away", first=first, last=last, name=stand_in.label if stand_in is not None else "")


async def typed(desk: Desk, person: Person, text: str) -> None:
    """Two typed days. Raises NotAllowed for who is no coach."""
    coach = await coach_only(desk, person)
    days = [drafts.date_in(found[0]) for found in drafts.DATE.finditer(text)]
    if len(days) != 2 or days[0] is None or days[1] is None or not _fits(desk, person, days[0], days[1]):
        await desk.say(person, Message(desk.words(person).say("coaching.away_unread")))
        return
    close(person, Asked.ABSENCE)
    await _ask_stand_in(desk, person, coach, days[0], days[1])


def _fits(desk: Desk, person: Person, first: date, last: date) -> bool:
    today = times.today(person, desk.now)
    return today <= first <= last <= today + drafts.AHEAD


async def _ask_stand_in(desk: Desk, person: Person, coach: Coach, first: date, last: date) -> None:
    words = desk.words(person)
    if not _fits(desk, person, first, last):
        await desk.say(person, Message(words.say("coaching.away_unread")))
        return
    found = await helpers.of_coach(desk.session, coach)
    data = f"coach:leave:{first}:{last}"
    buttons = [Button(who.label[:ON_PHONE], f"{data}:{helper.id}") for helper, who in found]
    buttons.append(Button(words.gettext("Nobody"), f"{data}:0"))
    days = {"first": drafts.day(words, first), "last": drafts.day(words, last)}
    await desk.say(person, Message(words.say("coaching.ask_stand_in", anybody=bool(found), **days), column(*buttons)))


async def _leave(desk: Desk, person: Person, coach: Coach, rest: list[str]) -> None:
    """Notes an absence, or changes the planned one. Raises NotAllowed for a stand-in who is no assistant."""
    if len(rest) != 3 or not _fits(desk, person, first := _day(rest[0]), last := _day(rest[1])):
        raise NotAllowed("checkin.not_yours")
    by_number = {str(helper.id): who for helper, who in await helpers.of_coach(desk.session, coach)}
    if rest[2] != "0" and rest[2] not in by_number:
        raise NotAllowed("checkin.not_yours")
    stand_in = by_number.get(rest[2])
    close(person, Asked.ABSENCE)
    planned = await helpers.absence_to_come(desk.session, coach, times.today(person, desk.now))
    if planned is None:
        planned = Absence(coach_id=coach.id, first_on=first, last_on=last)
        desk.session.add(planned)
    planned.first_on, planned.last_on = first, last
    planned.stand_in_id = stand_in.id if stand_in is not None else None
    planned.told_at = None
    await desk.session.flush()
    await plan(desk, planned.id)
    await desk.say(person, Message(await _planned_words(desk, person, planned)))
    if stand_in is not None:
        words = desk.words(stand_in)
        days = {"first": drafts.day(words, first), "last": drafts.day(words, last)}
        await desk.say(stand_in, Message(words.say("coaching.stand_in", coach=person.label, **days)))


async def plan(desk: Desk, absence_id: int) -> None:
    """Plans the coach's first morning away, on which clients are told."""
    absence = await desk.session.get(Absence, absence_id)
    if absence is not None and absence.told_at is None:
        coach = await desk.session.get_one(Coach, absence.coach_id)
        own = await desk.session.get_one(Person, coach.person_id)
        await due.plan(desk.session, DueKind.ABSENCE, absence_id, times.morning_on(own, absence.first_on))


async def begins(desk: Desk, absence_id: int) -> None:
    """The first morning of an absence: each client is told once who looks after them, or that nobody reads."""
    await due.cancel(desk.session, DueKind.ABSENCE, absence_id)
    absence = await desk.session.get(Absence, absence_id)
    if absence is None or absence.told_at is not None:
        return
    absence.told_at = desk.now
    coach = await desk.session.get_one(Coach, absence.coach_id)
    own = await desk.session.get_one(Person, coach.person_id)
    stand_in = await desk.session.get(Person, absence.stand_in_id) if absence.stand_in_id is not None else None
    for client in await _clients(desk, coach):
        await _tell(desk, client, absence, own, stand_in)


async def tell_newcomer(desk: Desk, client: Person, course: Course) -> None:
    """Somebody has joined while the coach is away: they are told who looks after them."""
    coach = await desk.session.get_one(Coach, course.coach_id)
    own = await desk.session.get_one(Person, coach.person_id)
    absence = await helpers.absence_on(desk.session, coach, times.today(own, desk.now))
    if absence is not None and absence.told_at is not None and own.id != client.id:
        stand_in = await desk.session.get(Person, absence.stand_in_id) if absence.stand_in_id is not None else None
        await _tell(desk, client, absence, own, stand_in)


async def _tell(desk: Desk, client: Person, absence: Absence, own: Person, stand_in: Person | None) -> None:
    """Tells a client once of an absence as it stands."""
    words = desk.words(client)
    last, name = drafts.day(words, absence.last_on), stand_in.label if stand_in is not None else ""
    text = words.say("coaching.client_away", coach=own.label, last=last, name=name)
    key = f"away:{absence.id}:{absence.first_on}:{client.id}:{absence.stand_in_id or 0}"
    await desk.send(client, Message(text), key=key, kind=Kind.ANSWER)


async def _clients(desk: Desk, coach: Coach) -> list[Person]:
    """Everybody whose course with this coach is open, but the coach."""
    query = select(Person).join(Course, Course.person_id == Person.id)
    mine = query.where(Course.coach_id == coach.id, Course.state.in_(OPEN), Person.id != coach.person_id)
    return list(await desk.session.scalars(mine.order_by(Person.id)))


async def _back(desk: Desk, person: Person, coach: Coach) -> None:
    """The coach is back before the last day, or does not go; clients who were told hear of it."""
    today = times.today(person, desk.now)
    absence = await helpers.absence_to_come(desk.session, coach, today)
    if absence is not None:
        await due.cancel(desk.session, DueKind.ABSENCE, absence.id)
        if absence.told_at is not None:
            for client in await _clients(desk, coach):
                await desk.say(client, Message(desk.words(client).say("coaching.client_back", coach=person.label)))
        if absence.first_on >= today:
            await desk.session.delete(absence)
        else:
            absence.last_on = today - timedelta(days=1)
        await desk.session.flush()
    await desk.say(person, Message(desk.words(person).say("coaching.back")))
