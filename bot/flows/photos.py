"""A photo beside a test, for whoever wants one: agreed to apart, kept by the platform, here only its id."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import delete, select

from bot.flows import times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.message import Button, Message, column
from db import courses, people
from db.schema import Course, Person, PhotoRow
from plans.localtime import local

TERMS = "photo-2026-11"
"""The version of the text that is agreed to before a photo is kept."""


async def offer(desk: Desk, person: Person, course: Course) -> None:
    """After a first test offers a photo; after a later one asks for the second, if there is a first."""
    agreed = await people.has_agreed(desk.session, person, TERMS)
    if agreed and await taken(desk, course):
        await desk.say(person, Message(desk.words(person).say("photos.after")))
    elif not agreed and not await people.was_asked(desk.session, person, TERMS):
        await people.decline(desk.session, person, text_version=TERMS, now=desk.now)
        await ask(desk, person)


async def ask(desk: Desk, person: Person) -> None:
    """Says what becomes of a photo, and asks whether one may be kept."""
    words = desk.words(person)
    _ = words.gettext
    rows = column(Button(_("Yes, keep my photo"), "photo:yes"), Button(_("No photo"), "photo:no"))
    await desk.say(person, Message(words.say("photos.offer"), rows))


async def tapped(desk: Desk, person: Person, what: str) -> None:
    """The answer to the offer, or that all photos go. Raises NotAllowed for anything else."""
    words = desk.words(person)
    if what == "yes":
        if not await people.has_agreed(desk.session, person, TERMS):
            await people.agree(desk.session, person, text_version=TERMS, now=desk.now)
        await desk.say(person, Message(words.say("photos.send")))
    elif what == "no":
        await people.decline(desk.session, person, text_version=TERMS, now=desk.now)
        await desk.say(person, Message(words.say("photos.declined")))
    elif what == "forget":
        await forget(desk, person)
        await desk.say(person, Message(words.say("photos.forgotten")))
    else:
        raise NotAllowed("checkin.not_yours")


async def arrived(desk: Desk, person: Person, file_id: str) -> None:
    """A photo that the person sends: kept by its id if they have agreed, to the coach too; else the offer comes."""
    words = desk.words(person)
    course = await courses.newest_course(desk.session, person)
    if course is None or course.invite_id is not None:
        await desk.say(person, Message(words.say("photos.no_course")))
    elif not await people.has_agreed(desk.session, person, TERMS):
        await desk.say(person, Message(words.say("photos.not_kept")))
        await ask(desk, person)
    else:
        desk.session.add(PhotoRow(course_id=course.id, file_id=file_id, at=desk.now))
        await desk.session.flush()
        kept = await taken(desk, course)
        await desk.say(person, Message(words.say("photos.kept", first=len(kept) == 1)))
        if len(kept) > 1:
            await show(desk, person, person, course)


async def taken(desk: Desk, course: Course) -> Sequence[PhotoRow]:
    """The photos of a course, oldest first."""
    return (
        await desk.session.scalars(select(PhotoRow).where(PhotoRow.course_id == course.id).order_by(PhotoRow.id))
    ).all()


async def show(desk: Desk, to: Person, client: Person, course: Course) -> None:
    """Sends the first and the last photo side by side, each with its date; a single one alone."""
    found = await taken(desk, course)
    if not found:
        await desk.say(to, Message(desk.words(to).say("photos.nothing")))
        return
    words = desk.words(to)
    shown = [found[0], found[-1]] if len(found) > 1 else [found[0]]
    dates = [words.short_date(local(photo.at, times.zone_of(client)).date()) for photo in shown]
    await desk.photos(to, [(photo.file_id, date) for photo, date in zip(shown, dates, strict=True)])


async def forget(desk: Desk, person: Person) -> None:
    """Takes the agreement to photos back, and lets go of every id."""
    mine = select(Course.id).where(Course.person_id == person.id)
    await desk.session.execute(delete(PhotoRow).where(PhotoRow.course_id.in_(mine)))
    await people.withdraw(desk.session, person, desk.now, text_version=TERMS)
