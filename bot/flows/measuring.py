"""Tests: the day's own one, and one at any time by /measure; each beside the first and the error of the test."""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import timedelta

from markupsafe import Markup
from sqlalchemy import select

from bot.flows import checkin, times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import Words
from bot.words.cards import picture_of_test
from bot.words.message import Button, Message, column, joined
from db import courses
from db.courses import CourseState
from db.schema import Course, LedgerRow, MeasureRow, Person
from plans.ledger import RowKind
from plans.localtime import local
from plans.measures import MEASURES, Measure, compare, plausible
from plans.replies import read_reply
from plans.talk import Ask, next_ask

ANOTHER_TIME = timedelta(hours=3)
"""From so much on a test is at another time of day than the first one: stiffness changes over a day (own choice)."""
ASKED = "measure:"
"""How a person's open question begins while the number of a test is awaited."""
TRIALS = 3


async def asked(desk: Desk, person: Person, wanted: str) -> None:
    """Explains the programme's test and waits for its number; of several it asks which. Raises NotAllowed."""
    course = await _course(desk, person)
    keys = (await desk.programme(course)).measures or tuple(sorted({row.measure for row in await taken(desk, course)}))
    if not keys:
        raise NotAllowed("measuring.not_now")
    if len(keys) == 1:
        await tapped(desk, person, keys[0])
        return
    buttons = (Button(MEASURES[key].name, f"measure:{key}") for key in keys)
    await desk.say(person, Message(desk.words(person).say("measuring.which"), column(*buttons)))


async def tapped(desk: Desk, person: Person, key: str) -> None:
    """Explains a test and waits for its number. Raises NotAllowed without a course, and for another test."""
    await _course(desk, person)
    if key not in MEASURES:
        raise NotAllowed("checkin.not_yours")
    measure, words = MEASURES[key], desk.words(person)
    person.asking = f"{ASKED}{key}"
    text = words.say("measuring.how", name=measure.name, how=measure.how, unit=measure.unit, trials=TRIALS)
    await desk.say(person, Message(text, picture=picture_of_test(measure, TRIALS, gettext=words.gettext)))


def forget(person: Person) -> None:
    """Waits for no number any more: something else has come between."""
    if (person.asking or "").startswith(ASKED):
        person.asking = None


async def typed(desk: Desk, person: Person, text: str) -> bool:
    """Takes the number that /measure waits for; False, and nothing is waited for any more, for anything else.

    While a pain number is open a bare number is that one; with its unit it is a test's.
    """
    measure = MEASURES[(person.asking or "").removeprefix(ASKED)]
    reply = read_reply(text, language=person.language)
    course = await courses.open_course(desk.session, person)
    pain = course is not None and not WITH_UNIT.search(text) and await _asks_for_pain(desk, course)
    if reply.number is None or reply.red_flag is not None or course is None or pain:
        person.asking = None
        return False
    row = await courses.row_on(desk.session, course, times.today(person, desk.now))
    task = await _task(desk, course, row) if row is not None else None
    row = row if task == measure.key else None
    if await _note(desk, person, course, row, measure, reply.number):
        person.asking = None
    return True


WITH_UNIT = re.compile(r"[a-z]", re.IGNORECASE)


async def _asks_for_pain(desk: Desk, course: Course) -> bool:
    newest = await courses.last_row(desk.session, course)
    if newest is None:
        return False
    return newest.kind == RowKind.ASKING or next_ask(await courses.said_of(desk.session, newest)) is Ask.PAIN


async def _task(desk: Desk, course: Course, row: LedgerRow) -> str | None:
    """The test that a row asks for and has not got; None for a row without one."""
    programme = await desk.programme(course)
    task = programme.day(row.day).measure if row.day is not None and row.kind != RowKind.REST else None
    if task is None or any(r.ledger_id == row.id and r.measure == task.measure for r in await taken(desk, course)):
        return None
    return task.measure


async def of_the_day(desk: Desk, person: Person, course: Course, row: LedgerRow, value: float) -> bool:
    """Takes a typed number as the day's test; False when no test is open on this row."""
    key = await _task(desk, course, row)
    if key is None:
        return False
    await _note(desk, person, course, row, MEASURES[key], value)
    return True


async def taken(desk: Desk, course: Course) -> Sequence[MeasureRow]:
    """All tests of a course, oldest first."""
    query = select(MeasureRow).where(MeasureRow.course_id == course.id).order_by(MeasureRow.id)
    return (await desk.session.scalars(query)).all()


async def _course(desk: Desk, person: Person) -> Course:
    course = await courses.open_course(desk.session, person)
    if course is None or course.state not in (CourseState.ACTIVE, CourseState.WAITING):
        raise NotAllowed("measuring.not_now")
    return course


async def _note(
    desk: Desk, person: Person, course: Course, row: LedgerRow | None, measure: Measure, value: float
) -> bool:
    """Keeps a value that can be, and says what it is worth; False when it cannot be."""
    words = desk.words(person)
    if not plausible(measure, value):
        limits = {"low": measure.low, "high": measure.high, "unit": measure.unit}
        await desk.say(person, Message(words.say("checkin.implausible", value=value, **limits)))
        return False
    first = next((r for r in await taken(desk, course) if r.measure == measure.key), None)
    made = MeasureRow(
        course_id=course.id,
        ledger_id=row.id if row is not None else None,
        measure=measure.key,
        value=value,
        at=desk.now,
    )
    desk.session.add(made)
    await desk.session.flush()
    await checkin.note(desk, person, row, [("measure", f"{measure.key} {value:g}")])
    said = words.say("checkin.measured", value=f"{value:g}", unit=measure.unit)
    await desk.say(person, Message(joined(said, _worth(words, person, measure, first, made) if first else None)))
    return True


def _worth(words: Words, person: Person, measure: Measure, first: MeasureRow, last: MeasureRow) -> Markup:
    """What a test says beside the first one, and what was otherwise then."""
    return words.say(
        "checkin.compared",
        change=compare(measure, first.value, last.value),
        before=f"{first.value:g}",
        after=f"{last.value:g}",
        unit=measure.unit,
        apart=at_another_time(person, first, last),
    )


def at_another_time(person: Person, first: MeasureRow, last: MeasureRow) -> bool:
    """Whether a test was taken at another time of day than the first one, on this person's clock."""
    then, now = (local(row.at, times.zone_of(person)) for row in (first, last))
    apart = abs((then.hour - now.hour) * 60 + then.minute - now.minute)
    return timedelta(minutes=min(apart, 24 * 60 - apart)) >= ANOTHER_TIME
