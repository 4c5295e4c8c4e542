"""A coach's page: what clients read of them before they join. Reached from /settings, filled by buttons and lines."""

from __future__ import annotations

import re
from dataclasses import dataclass

from markupsafe import Markup

from bot.flows import absences, answering, assistants, times
from bot.flows.asking import Asked, close, open_for
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, coach_only
from bot.words.message import Button, Message, Rows
from db import coaches
from db.schema import Coach, Course, Person

LONGEST_TRAINING, LONGEST_TERMS = 300, 1500
"""Letters; terms stand in one message with the rest of the page."""
HOURS = ("08:00-12:00", "12:00-17:00", "17:00-20:00")
NONE = re.compile(r"\W*(none|nothing|no)\W*", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class About:
    """What clients read of a coach; `number` is the version of the terms."""

    name: str
    training: str
    hours: str
    terms: str
    number: int

    @property
    def is_empty(self) -> bool:
        """Whether there is nothing but the name."""
        return not (self.training or self.hours or self.terms)


async def about(desk: Desk, reader: Person, coach: Coach) -> About:
    """What clients read of a coach as it stands; hours on another clock than the reader's say which."""
    person = await desk.session.get_one(Person, coach.person_id)
    terms = await coaches.terms_of(desk.session, coach)
    return About(
        person.label,
        coach.training or "",
        hours_of(desk, coach, person, reader),
        terms.text if terms is not None else "",
        terms.number if terms is not None else 0,
    )


def hours_of(desk: Desk, coach: Coach, own: Person, reader: Person) -> str:
    """A coach's answering hours; empty where they have set none. `own` is the coach as a person."""
    found = answering.of(coach)
    if found is None:
        return ""
    hours = answering.said(found, desk.words(reader))
    elsewhere = times.zone_of(own) != times.zone_of(reader)
    return f"{hours} ({times.zone_of(own).rpartition('/')[2].replace('_', ' ')})" if elsewhere else hours


async def about_words(desk: Desk, reader: Person, coach: Coach) -> Markup:
    """The same in words."""
    return desk.words(reader).say("coaching.about", p=await about(desk, reader, coach))


async def show(desk: Desk, person: Person, coach: Coach) -> None:
    """The page, and a button for each part of it."""
    words = desk.words(person)
    _ = words.gettext
    rows: Rows = (
        (Button(_("Name"), "coach:name"), Button(_("Training"), "coach:training")),
        (Button(_("Answering hours"), "coach:hours"), Button(_("Own terms"), "coach:terms")),
        (Button(_("Assistants"), "coach:assistants"), Button(_("I am away"), "coach:away")),
    )
    await desk.say(person, Message(words.say("coaching.page", about=await about_words(desk, person, coach)), rows))


async def tapped(desk: Desk, person: Person, words: list[str]) -> None:
    """One button of a coach's own. Raises NotAllowed for anybody else, and for another button."""
    coach = await coach_only(desk, person)
    what, rest = words[0], words[1:]
    asks = {"name": Asked.NAME, "training": Asked.TRAINING, "terms": Asked.OWN_TERMS}
    if what == "page":
        await show(desk, person, coach)
    elif what in asks:
        open_for(person, asks[what])
        await desk.say(person, Message(desk.words(person).say(f"coaching.ask_{what}")))
    elif what == "hours" and not rest:
        open_for(person, Asked.HOURS)
        buttons = tuple((Button(text, f"coach:hours:{text.replace(':', '')}"),) for text in HOURS)
        none = (Button(desk.words(person).gettext("At any time"), "coach:hours:any"),)
        await desk.say(person, Message(desk.words(person).say("coaching.ask_hours"), (*buttons, none)))
    elif what == "hours":
        await _take_hours(desk, person, coach, rest[0])
    elif what in assistants.BUTTONS:
        await assistants.tapped(desk, person, coach, what, rest)
    elif what in absences.BUTTONS:
        await absences.tapped(desk, person, coach, what, rest)
    else:
        raise NotAllowed("checkin.not_yours")


async def for_client(desk: Desk, reader: Person, course: Course) -> None:
    """A client reads once more what their coach says."""
    coach = await desk.session.get_one(Coach, course.coach_id)
    await desk.say(reader, Message(await about_words(desk, reader, coach)))


async def _take_hours(desk: Desk, person: Person, coach: Coach, text: str) -> None:
    read = answering.read(text, person.language)
    if read is None and text != "any":
        await desk.say(person, Message(desk.words(person).say("coaching.hours_unread")))
        return
    answering.take(coach, read)
    close(person, Asked.HOURS)
    await show(desk, person, coach)


async def typed(desk: Desk, person: Person, asked: Asked, text: str) -> None:
    """A typed line for the part of the page that asks for it. Raises NotAllowed for who is no coach."""
    coach = await coach_only(desk, person)
    if asked is Asked.HOURS:
        await _take_hours(desk, person, coach, "any" if NONE.fullmatch(text) else text)
        return
    most = LONGEST_TRAINING if asked is Asked.TRAINING else LONGEST_TERMS
    said = "" if NONE.fullmatch(text) else text.strip()
    if len(said) > most:
        await desk.say(person, Message(desk.words(person).say("coaching.too_long", most=most)))
        return
    if asked is Asked.TRAINING:
        coach.training = said or None
    else:
        await coaches.set_terms(desk.session, coach, said, desk.now)
    close(person, asked)
    await show(desk, person, coach)
