"""Being led through a session: one step after the other in one message, with the time of a hold in words."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from markupsafe import Markup

from bot.flows import checkin, day
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import Words
from bot.words.checkin import first_buttons
from bot.words.doses import item_line, named
from bot.words.measured import side_words
from bot.words.message import ON_PHONE, Button, Message, Rows
from db import bodies, courses, outbox
from db.courses import CourseState
from db.delivery import Kind
from db.schema import Course, LedgerRow, Person
from plans.ledger import RowKind
from plans.steps import Step, steps_of
from plans.units import in_units

EVERY = 10
"""Seconds between two words about the time of a hold. Our own choice: the platform allows about one change a second."""
READY = 5
"""Seconds to get into a hold or to its other side, before its time runs. Our own choice."""


async def tapped(desk: Desk, person: Person, row_id: int, what: str) -> None:
    """Begins, goes on, goes back, times a hold, or ends.

    Raises NotAllowed for a session that is over, for an older one, and in a pause.
    """
    row, course = await checkin.own(desk, person, row_id)
    if row.kind != RowKind.SESSION or course.state != CourseState.ACTIVE or row.day is None:
        raise NotAllowed("day.not_shorter")
    newest = await courses.last_row(desk.session, course)
    if course.paused is not None or newest is None or newest.id != row.id:
        raise NotAllowed("day.not_shorter")
    steps = await _steps(desk, person, course, row)
    if not steps:
        raise NotAllowed("day.not_shorter")
    await outbox.drop(desk.session, person.chat, Kind.TIMER)
    number = min(row.step or 0, len(steps) - 1)
    if what == "begin":
        row.step = 0
        row.step_outbox_id = await desk.say(person, _message(desk.words(person), row.id, steps, 0))
    elif row.step is None:
        raise NotAllowed("checkin.not_yours")
    elif what == "hold":
        await _time(desk, person, row, steps, number)
    elif what == "next" and number + 1 == len(steps):
        await _end(desk, person, row)
    elif what in ("next", "back"):
        row.step = number + 1 if what == "next" else max(0, number - 1)
        await _show(desk, person, row, _message(desk.words(person), row.id, steps, row.step))
    elif what == "end":
        await _end(desk, person, row)
    else:
        raise NotAllowed("checkin.not_yours")


async def _steps(desk: Desk, person: Person, course: Course, row: LedgerRow) -> Sequence[Step]:
    """The steps of a row's session as it was handed out."""
    pairs = [(r, e) for r, e in await courses.history(desk.session, course) if r.local_date <= row.local_date]
    whole = bodies.handed_out(await desk.programme_of(course, row), row, bodies.fit_of(course, row, pairs))
    return steps_of(in_units(whole, desk.words(person).units))


async def _show(desk: Desk, person: Person, row: LedgerRow, message: Message) -> None:
    if row.step_outbox_id is None:
        raise LookupError(f"ledger row {row.id} has a step and no message that shows it")
    await desk.edit(person, message, row.step_outbox_id)


async def _end(desk: Desk, person: Person, row: LedgerRow) -> None:
    """The steps are over: the buttons by which the session is answered come again, if it is not answered yet."""
    words = desk.words(person)
    await _show(desk, person, row, Message(words.say("leading.over")))
    row.step = None
    if (await courses.said_of(desk.session, row)).completion is None:
        asked = Message(words.say("leading.how_was_it"), first_buttons(words, row.id))
        await day.put(desk, person, row, asked)


# --- in words -----------------------------------------------------------------------------------------------------


def _message(words: Words, row: int, steps: Sequence[Step], number: int, time: Markup | None = None) -> Message:
    step = steps[number]
    text = words.say(
        "leading.step",
        number=number + 1,
        of=len(steps),
        name=named(step.item) if step.item else None,
        dose=item_line(step.item, gettext=words.gettext).partition(": ")[2] if step.item else None,
        how=step.item.movement.how if step.item and step.round == step.set == 1 else None,
        words=step.words,
        step=step,
        time=time,
        then=_next_name(steps, number),
    )
    return Message(text, _buttons(words, row, steps, number))


def _next_name(steps: Sequence[Step], number: int) -> str | None:
    """What comes after a step, when it is something else."""
    if number + 1 == len(steps):
        return None
    after = steps[number + 1]
    return named(after.item) if after.item and after.item != steps[number].item else None


def _buttons(words: Words, row: int, steps: Sequence[Step], number: int) -> Rows:
    _ = words.gettext
    step = steps[number]
    rows: list[tuple[Button, ...]] = []
    if step.holds:
        seconds = step.holds[0][1]
        rows.append((Button(_("Time the hold: {seconds} s").format(seconds=seconds), f"lead:{row}:hold"),))
    ahead = Button(_("Next") if number + 1 < len(steps) else _("That was the last one"), f"lead:{row}:next")
    rows.append((Button(_("Back"), f"lead:{row}:back"), ahead) if number else (ahead,))
    if step.item:
        rows.append((Button(_("How it is done")[:ON_PHONE], f"how:{step.item.movement.key}"),))
    rows.append((Button(_("End here"), f"lead:{row}:end"),))
    return tuple(rows)


# --- time ---------------------------------------------------------------------------------------------------------


async def _time(desk: Desk, person: Person, row: LedgerRow, steps: Sequence[Step], number: int) -> None:
    """Lets the words about a hold's time leave one after the other, each at its second."""
    words = desk.words(person)
    if not steps[number].holds:
        raise NotAllowed("checkin.not_yours")
    if row.step_outbox_id is None:
        raise LookupError(f"ledger row {row.id} has a step and no message that shows it")
    for after, said in _said_of_time(words, steps[number]):
        message = _message(words, row.id, steps, number, said)
        await desk.edit(person, message, row.step_outbox_id, after=after)


def _said_of_time(words: Words, step: Step) -> Iterator[tuple[float, Markup]]:
    """What is said of a step's holds, each with the seconds after which it is said."""
    at = 0.0
    for turn, (side, seconds) in enumerate(step.holds, 1):
        named_side = side_words(side, gettext=words.gettext)
        many = {"turn": turn, "turns": len(step.holds)}
        yield at, words.say("leading.ready", side=named_side, seconds=seconds, **many)
        at += READY
        for gone in range(0, seconds, EVERY):
            yield at + gone, words.say("leading.left", side=named_side, seconds=seconds - gone, **many)
        at += seconds
    yield at, words.say("leading.time")
