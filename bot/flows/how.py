"""How a movement is done: its words, its film or the coach's own recording, for whoever asks."""

from __future__ import annotations

from collections.abc import Sequence
from importlib.util import find_spec

from markupsafe import Markup

from bot.flows import recordings, times
from bot.flows.desk import Desk
from bot.flows.naming import MOST, named
from bot.flows.rights import NotAllowed
from bot.words.cards import film_picture
from bot.words.message import ON_PHONE, Button, Message, column
from bot.words.muscles import muscle_words
from db import bodies, courses
from db.schema import Person
from plans.cautions import caution_words
from plans.dose import items
from plans.ledger import RowKind
from plans.movements import Library, Movement, library
from plans.programme import Item

FILM = "mp4" if find_spec("av") else "gif"
"""An MP4 is smaller; its encoder may not be installed."""


async def asked(desk: Desk, person: Person, wanted: str) -> None:
    """Shows the movement that is meant, or offers those that may be: today's ones when nothing is named."""
    words = desk.words(person)
    if not wanted.strip():
        today = [item.movement for item in await _todays(desk, person)]
        await desk.say(person, _offer(words.say("how.today"), today) if today else Message(words.say("how.which")))
        return
    found = named(wanted, await _known(desk, person))
    if not found:
        await desk.say(person, Message(words.say("how.nothing", wanted=wanted.strip()[:60])))
    elif len(found) == 1:
        await _show(desk, person, found[0])
    else:
        await desk.say(person, _offer(words.say("how.several"), found))


async def tapped(desk: Desk, person: Person, key: str) -> None:
    """Shows the movement of a button. Raises NotAllowed for a key that no movement has."""
    known = await _known(desk, person)
    if key not in known:
        raise NotAllowed("checkin.not_yours")
    await _show(desk, person, known[key])


async def _known(desk: Desk, person: Person) -> Library:
    """All movements: the library, and those of the person's own programme."""
    course = await courses.open_course(desk.session, person)
    if course is None:
        return library().said_by(desk.words(person).gettext)
    return (await desk.programme(course)).catalogue()


async def _todays(desk: Desk, person: Person) -> Sequence[Item]:
    """What today's session asks of somebody, as it was handed out; nothing on a day without one."""
    course = await courses.open_course(desk.session, person)
    if course is None:
        return []
    row = await courses.row_on(desk.session, course, times.today(person, desk.now))
    if row is None or row.day is None or row.kind not in (RowKind.SESSION, RowKind.MEASURE):
        return []
    pairs = [(r, e) for r, e in await courses.history(desk.session, course) if r.local_date <= row.local_date]
    day = bodies.handed_out(await desk.programme(course), row, bodies.fit_of(course, row, pairs))
    return [item for _block, item in items(day.session)]


def _offer(text: Markup, found: Sequence[Movement]) -> Message:
    names = {movement.key: movement.name[:ON_PHONE] for movement in found}
    return Message(text, column(*(Button(name, f"how:{key}") for key, name in list(names.items())[:MOST])))


async def _show(desk: Desk, person: Person, movement: Movement) -> None:
    words = desk.words(person)
    link = next((item.link for item in await _todays(desk, person) if item.movement.key == movement.key), None)
    text = words.say(
        "how.movement",
        name=movement.name,
        how=movement.how,
        cues=movement.cues,
        faults=movement.faults,
        care=[*movement.care, *(words.gettext(caution_words()[caution].text) for caution in movement.cautions)],
        felt=muscle_words(movement.main, gettext=words.gettext),
        link=link.address if link else movement.link,
        caution=words.say("day.caution"),
    )
    easier = (await _known(desk, person)).get(movement.easier or "")
    label = words.gettext("Easier: {name}").format(name=easier.name) if easier else ""
    rows = column(Button(label[:ON_PHONE], f"how:{easier.key}")) if easier else ()
    message = Message(text, rows, film_picture(movement, FILM))
    own = await recordings.shown_to(desk, person, movement.key)
    if own is not None and message.is_caption:
        await desk.recording(person, message, own.kind, own.file_id)
    else:
        await desk.say(person, message)
