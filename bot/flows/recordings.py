"""A coach's own videos and photos of movements, in the place of the drawn figure for their clients."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import delete, select

from bot.flows.asking import Asked, close, open_for
from bot.flows.desk import Desk
from bot.flows.naming import MOST, named
from bot.flows.rights import NotAllowed, coach_only
from bot.words.message import ON_PHONE, Button, Message, Rows, column
from bot.words.programmes import programme_in
from db import courses, people, programmes
from db.schema import Coach, Person, Recording
from plans.dose import items
from plans.movements import Library, Movement, library
from plans.redflags import find_flag

LONGEST_KEY = 40
"""Bytes of a movement's key on a button; a longer one is typed."""


async def arrived(desk: Desk, person: Person, kind: str, file_id: str, caption: str) -> bool:
    """A video, animation or photo: kept if a coach sent it to show a movement, which the caption names.

    False when it is not for here: not a coach's, a warning sign in its words, or a client's photo beside a test.
    """
    coach = await people.coach_of(desk.session, person)
    if coach is None or find_flag(caption, language=person.language) is not None:
        return False
    known = await _known(desk, person, coach)
    found = named(caption, known) if caption.strip() else []
    if kind == "photo" and not found and await courses.open_course(desk.session, person) is not None:
        return False
    await _forget_unnamed(desk, coach)
    row = Recording(coach_id=coach.id, movement=None, kind=kind, file_id=file_id, at=desk.now)
    desk.session.add(row)
    await desk.session.flush()
    if len(found) == 1:
        await _keep(desk, person, row, found[0])
    else:
        open_for(person, Asked.MOVEMENT, row.id)
        await desk.say(person, _which(desk, person, row, found or await _of_newest(desk, coach), 1))
    return True


async def type_movement(desk: Desk, person: Person, coach: Coach, number: int, text: str) -> None:
    """A typed name of the movement that a recording shows."""
    row = await _own(desk, coach, number)
    found = named(text, await _known(desk, person, coach))
    if len(found) == 1:
        await _keep(desk, person, row, found[0])
    elif found:
        await desk.say(person, _which(desk, person, row, found, 1))
    else:
        await desk.say(person, Message(desk.words(person).say("recordings.unknown", wanted=text[:60])))


async def tapped(desk: Desk, person: Person, coach: Coach, number: int, what: str, value: str) -> None:
    """Which movement a recording shows, another page of them, or that it goes. Raises NotAllowed."""
    if what == "list":
        await show_all(desk, person, "")
        return
    row = await _own(desk, coach, number)
    known = await _known(desk, person, coach)
    if what == "is" and value in known:
        await _keep(desk, person, row, known[value])
    elif what == "page" and value.isdecimal() and len(value) < 5:
        message = _which(desk, person, row, await _of_newest(desk, coach), int(value))
        await desk.change_tapped(person, message)
    elif what == "forget":
        name = _name(row, known)
        await desk.session.delete(row)
        close(person, Asked.MOVEMENT)
        await desk.say(person, Message(desk.words(person).say("recordings.forgotten", name=name)))
    else:
        raise NotAllowed("checkin.not_yours")


async def show_all(desk: Desk, person: Person, _rest: str) -> None:
    """Which movements have a recording, each with a button that lets go of it."""
    coach = await coach_only(desk, person)
    words, known = desk.words(person), await _known(desk, person, coach)
    rows = await desk.session.scalars(
        select(Recording).where(Recording.coach_id == coach.id, Recording.movement.is_not(None)).order_by(Recording.id)
    )
    label = words.gettext("Forget: {name}")
    kept = [(row, name) for row in rows if (name := _name(row, known))]
    buttons = [Button(label.format(name=name)[:ON_PHONE], f"film:{row.id}:forget") for row, name in kept[-40:]]
    await desk.say(person, Message(words.say("recordings.all", names=[name for _r, name in kept]), column(*buttons)))


def _name(row: Recording, known: Library) -> str:
    """The name of the movement that a recording shows; empty while that is not said."""
    return known[row.movement].name if row.movement is not None and row.movement in known else ""


async def shown_to(desk: Desk, person: Person, movement: str) -> Recording | None:
    """The recording that somebody sees of a movement: their coach's; a coach without a course sees their own."""
    course = await courses.open_course(desk.session, person)
    own = await people.coach_of(desk.session, person) if course is None else None
    coach = course.coach_id if course is not None else own.id if own is not None else None
    return await desk.session.scalar(
        select(Recording).where(Recording.coach_id == coach, Recording.movement == movement)
    )


async def _keep(desk: Desk, person: Person, row: Recording, movement: Movement) -> None:
    """Lets a recording stand for a movement, in the place of an earlier one."""
    others = (Recording.coach_id == row.coach_id, Recording.movement == movement.key, Recording.id != row.id)
    await desk.session.execute(delete(Recording).where(*others))
    row.movement = movement.key
    await desk.session.flush()
    close(person, Asked.MOVEMENT)
    words = desk.words(person)
    forget = Button(words.gettext("Forget it again"), f"film:{row.id}:forget")
    look = Button(words.gettext("See it as a client"), f"how:{movement.key}"[:64])
    await desk.say(person, Message(words.say("recordings.kept", name=movement.name), column(look, forget)))


async def _forget_unnamed(desk: Desk, coach: Coach) -> None:
    gone = delete(Recording).where(Recording.coach_id == coach.id, Recording.movement.is_(None))
    await desk.session.execute(gone)


async def _own(desk: Desk, coach: Coach, number: int) -> Recording:
    row = await desk.session.get(Recording, number)
    if row is None or row.coach_id != coach.id:
        raise NotAllowed("checkin.not_yours")
    return row


async def _known(desk: Desk, person: Person, coach: Coach) -> Library:
    """All movements that a coach's clients may meet: the library, and those of the newest version of each programme."""
    own: dict[str, Movement] = {}
    titles: set[str] = set()
    for version in await programmes.of_coach(desk.session, coach):
        if version.title not in titles:
            titles.add(version.title)
            catalogue = programme_in(version).catalogue()
            own |= {key: catalogue[key] for key in catalogue.names() if key not in library() and key not in own}
    return library().said_by(desk.words(person).gettext).with_own(own.values())


async def _of_newest(desk: Desk, coach: Coach) -> list[Movement]:
    """The movements of the coach's newest programme, in their order."""
    versions = await programmes.of_coach(desk.session, coach)
    if not versions:
        return []
    programme = programme_in(versions[0])
    found = {item.movement.key: item.movement for day in programme.days for _b, item in items(day.session)}
    return list(found.values())


def _which(desk: Desk, person: Person, row: Recording, found: Sequence[Movement], page: int) -> Message:
    """Which movement it is, as buttons; a name can be typed too."""
    words = desk.words(person)
    short = [movement for movement in found if len(movement.key.encode()) <= LONGEST_KEY]
    pages = max(1, -(-len(short) // MOST))
    page = min(max(page, 1), pages)
    shown = short[(page - 1) * MOST : page * MOST]
    each = column(*(Button(m.name[:ON_PHONE], f"film:{row.id}:is:{m.key}") for m in shown))
    _ = words.gettext
    back = [Button(_("Back"), f"film:{row.id}:page:{page - 1}")] if page > 1 else []
    following = [Button(_("Next"), f"film:{row.id}:page:{page + 1}")] if page < pages else []
    turning: Rows = ((*back, *following),) if back or following else ()
    leave: Rows = ((Button(_("Leave it"), f"film:{row.id}:forget"),),)
    return Message(words.say("recordings.which"), (*each, *turning, *leave))
