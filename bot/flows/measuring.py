"""Tests, guided: warm-up, side by side, try by try; then the result beside the first one and the error of the test."""

from __future__ import annotations

from collections.abc import Sequence

from markupsafe import Markup

from bot.flows import checkin, photos, times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import Words
from bot.words.cards import picture_of_test
from bot.words.measured import side_words, ways_in
from bot.words.message import Button, Message, Rows, column, joined
from db import courses, measures
from db.courses import CourseState
from db.schema import Course, LedgerRow, MeasureRow, Person
from plans.checkin import CheckIn
from plans.glossing import in_english
from plans.ledger import RowKind
from plans.localtime import local
from plans.measures import MEASURES, Measure, at_another_time, compare, plausible
from plans.programme import MeasureTask
from plans.talk import Ask, next_ask
from plans.tries import Try, tries_in
from plans.units import Units, kept, unit_in, value_in


async def asked(desk: Desk, person: Person) -> None:
    """Explains the programme's test and how to begin; of several it asks which. Raises NotAllowed."""
    course = await _course(desk, person)
    keys = (await desk.programme(course)).measures or tuple(sorted({t.measure for t in await _taken(desk, course)}))
    if not keys:
        raise NotAllowed("measuring.not_now")
    if len(keys) == 1:
        await explain(desk, person, keys[0])
        return
    buttons = (Button(desk.words(person).gettext(MEASURES[key].name), f"measure:{key}:how") for key in keys)
    await desk.say(person, Message(desk.words(person).say("measuring.which"), column(*buttons)))


async def tapped(desk: Desk, person: Person, key: str, what: str) -> None:
    """What a button under a test does: how, warm, cold, enough, back. Raises NotAllowed for anything else."""
    course = await _course(desk, person)
    if key not in MEASURES:
        raise NotAllowed("checkin.not_yours")
    if what == "how":
        await explain(desk, person, key)
    elif what in ("warm", "cold"):
        opened = [test for test in await _open_today(desk, person, course) if test.measure == key]
        if not opened or any(test.tries for test in opened):
            await _begin(desk, person, course, MEASURES[key], warm=None)
        for test in await measures.open_ones(desk.session, course):
            test.warm = what == "warm"
        await _ask(desk, person, course)
    elif what in ("enough", "back"):
        await (_enough if what == "enough" else _take_back)(desk, person, course, key)
    else:
        raise NotAllowed("checkin.not_yours")


async def explain(desk: Desk, person: Person, key: str) -> None:
    """How a test is done, and the two ways to begin it; a number that is typed at once begins it too."""
    course = await _course(desk, person)
    measure, words = MEASURES[key], desk.words(person)
    task = await _task_of(desk, course, key)
    await _begin(desk, person, course, measure, warm=None)
    trials = task.trials + measure.practice
    text = words.say(
        "measuring.how",
        name=words.gettext(measure.name),
        how=words.gettext(measure.how),
        warm_up=task.warm_up,
        trials=trials,
    )
    picture = picture_of_test(measure, task.trials, words.units, gettext=words.gettext)
    await desk.say(person, Message(text, ways_in(key, gettext=words.gettext), picture))


async def typed(desk: Desk, person: Person, course: Course, text: str) -> bool:
    """Takes typed numbers as tries of the test that is open today, or of the one that the day asks for.

    False for anything else. While a pain number is open a bare number is that one; with its unit it is a test's.
    """
    unit = unit_in("cm", Units(person.units))
    found = tries_in(text, unit) or tries_in(in_english(text, person.language), unit)
    with_unit = any(letter.isalpha() for letter in text)
    if not found or (not with_unit and await _asks_for_pain(desk, course)):
        return False
    return await _tried(desk, person, course, found, plainly=with_unit)


async def number(desk: Desk, person: Person, course: Course, value: float) -> bool:
    """Takes a number that was said among other words as a try, as `typed` does."""
    one = Try(kept(value, unit_in("cm", Units(person.units))))
    return await _tried(desk, person, course, (one,), plainly=False)


async def _tried(desk: Desk, person: Person, course: Course, found: Sequence[Try], *, plainly: bool) -> bool:
    """Takes tries; without a unit they begin the day's test only before its session is answered."""
    opened = await _open_today(desk, person, course)
    if not opened:
        row = await courses.row_on(desk.session, course, times.today(person, desk.now))
        task = await _task_of_day(desk, course, row) if row is not None else None
        if row is None or task is None or not (plainly or await courses.said_of(desk.session, row) == CheckIn()):
            return False
        await _begin(desk, person, course, MEASURES[task.measure], warm=None)
        opened = await _open_today(desk, person, course)
    await _take(desk, person, course, opened, found)
    return True


async def _asks_for_pain(desk: Desk, course: Course) -> bool:
    newest = await courses.last_row(desk.session, course)
    if newest is None:
        return False
    return newest.kind == RowKind.ASKING or next_ask(await courses.said_of(desk.session, newest)) is Ask.PAIN


# --- one test -----------------------------------------------------------------------------------------------------


async def _course(desk: Desk, person: Person) -> Course:
    """The course that a test belongs to, which may be over. Raises NotAllowed for whoever has none."""
    course = await courses.newest_course(desk.session, person)
    if course is None or course.state not in (CourseState.ACTIVE, CourseState.WAITING, CourseState.FINISHED):
        raise NotAllowed("measuring.not_now")
    return course


async def _taken(desk: Desk, course: Course) -> Sequence[MeasureRow]:
    return await measures.taken(desk.session, course)


async def _open_today(desk: Desk, person: Person, course: Course) -> Sequence[MeasureRow]:
    """The sides of the open test; one that was begun on an earlier date is closed with what it has."""
    opened = await measures.open_ones(desk.session, course)
    today = times.today(person, desk.now)
    if any(local(test.begun_at, times.zone_of(person)).date() < today for test in opened):
        await measures.close(desk.session, course, desk.now)
        return []
    return opened


async def _task_of(desk: Desk, course: Course, key: str) -> MeasureTask:
    """How the programme takes a test: as on the first of its days that asks for it."""
    days = (await desk.programme(course)).days
    found = next((day.measure for day in days if day.measure is not None and day.measure.measure == key), None)
    return found or MeasureTask(key)


async def _task_of_day(desk: Desk, course: Course, row: LedgerRow) -> MeasureTask | None:
    """The test that a row asks for; None for a row without one, and for a day whose test has been taken before."""
    programme = await desk.programme_of(course, row)
    task = programme.day(row.day).measure if row.day is not None and row.kind != RowKind.REST else None
    if task is None or row.day in await measures.days_tested(desk.session, course, task.measure):
        return None
    return task


async def _begin(desk: Desk, person: Person, course: Course, measure: Measure, *, warm: bool | None) -> None:
    row = await courses.row_on(desk.session, course, times.today(person, desk.now))
    task = await _task_of_day(desk, course, row) if row is not None else None
    row = row if task is not None and task.measure == measure.key else None
    tries = (await _task_of(desk, course, measure.key)).trials + measure.practice
    await measures.begin(desk.session, course, measure, tries=tries, warm=warm, row=row, now=desk.now)


async def _ask(desk: Desk, person: Person, course: Course, noted: Markup | None = None) -> None:
    """Asks for the next try, or says what the test came to."""
    opened = await measures.open_ones(desk.session, course)
    if not opened:
        raise LookupError(f"course {course.id} has no open test")
    test, words = opened[0], desk.words(person)
    measure = MEASURES[test.measure]
    done = len(test.tries)
    text = words.say(
        "measuring.try",
        side=side_words(test.side, gettext=words.gettext),
        number=done + 1,
        of=test.wanted,
        practice=done < measure.practice,
        unit=words.unit(measure.unit),
    )
    rows: Rows = ()
    if done:
        _ = words.gettext
        rows = column(
            Button(_("That is enough"), f"measure:{test.measure}:enough"),
            Button(_("Take the last number back"), f"measure:{test.measure}:back"),
        )
    await desk.say(person, Message(joined(noted, text), rows))


async def _take(desk: Desk, person: Person, course: Course, opened: Sequence[MeasureRow], found: Sequence[Try]) -> None:
    """Adds what was typed to the sides it is for; what cannot be is asked back and nothing of it is kept."""
    words, measure = desk.words(person), MEASURES[opened[0].measure]
    units = words.units
    wrong = next((one for one in found if not plausible(measure, one.value)), None)
    if wrong is not None:
        low, high = (value_in(limit, measure.unit, units) for limit in (measure.low, measure.high))
        value, unit = value_in(wrong.value, measure.unit, units), words.unit(measure.unit)
        text = words.say(
            "measuring.implausible",
            value=words.number(value),
            low=words.number(low),
            high=words.number(high),
            unit=unit,
        )
        await desk.say(person, Message(text))
        return
    for one in found:
        test = next((t for t in opened if t.value is None and one.side in (None, t.side)), None)
        if test is not None:
            measures.add(test, [one.value], desk.now)
    shown = ", ".join(words.number(value_in(one.value, measure.unit, units)) for one in found)
    noted = words.say("measuring.noted", values=shown, unit=words.unit(measure.unit))
    await _go_on(desk, person, course, opened, noted)


async def _go_on(
    desk: Desk, person: Person, course: Course, sides: Sequence[MeasureRow], noted: Markup | None = None
) -> None:
    """The next try; or, when every side has its value, what the test came to."""
    await desk.session.flush()
    if any(test.value is None for test in sides):
        await _ask(desk, person, course, noted)
        return
    await _finished(desk, person, course)


async def _enough(desk: Desk, person: Person, course: Course, key: str) -> None:
    """Ends the side in hand with the tries that it has. Raises NotAllowed when there is none."""
    opened = [test for test in await _open_today(desk, person, course) if test.measure == key]
    if not opened or not opened[0].tries:
        raise NotAllowed("checkin.not_yours")
    measures.add(opened[0], (), desk.now, enough=True)
    await _go_on(desk, person, course, opened)


async def _take_back(desk: Desk, person: Person, course: Course, key: str) -> None:
    """Takes the last number of the side in hand back. Raises NotAllowed when there is none."""
    opened = [test for test in await _open_today(desk, person, course) if test.measure == key]
    if not opened or not opened[0].tries:
        raise NotAllowed("checkin.not_yours")
    opened[0].tries = opened[0].tries[:-1]
    await _ask(desk, person, course)


async def _finished(desk: Desk, person: Person, course: Course) -> None:
    """Says what the sides came to, each beside the first time and the error of the test."""
    taken = await _taken(desk, course)
    last = taken[-1]
    row = await desk.session.get(LedgerRow, last.ledger_id) if last.ledger_id is not None else None
    said, noted = [], []
    for test in [test for test in taken if test.begun_at == last.begun_at and test.measure == last.measure]:
        first = next(t for t in taken if t.measure == test.measure and t.side == test.side)
        noted.append((_field(test), f"{test.measure} {test.value:g}"))
        said.append(result(desk.words(person), first, test))
    await checkin.note(desk, person, row, noted)
    await desk.say(person, Message(joined(*said, labels(desk.words(person), person, taken, last))))
    task = await _task_of(desk, course, last.measure)
    if task.photo:
        await photos.offer(desk, person, course)


def _field(test: MeasureRow) -> str:
    return "measure" if test.side is None else f"measure-{test.side}"


# --- in words -----------------------------------------------------------------------------------------------------


def result(words: Words, first: MeasureRow, last: MeasureRow) -> Markup:
    """What one side's test came to, and what that is worth beside the first one."""
    measure, units = MEASURES[last.measure], words.units
    before, after = (value_in(test.value or 0.0, measure.unit, units) for test in (first, last))
    return words.say(
        "measuring.result",
        name=words.gettext(measure.name),
        side=side_words(last.side, gettext=words.gettext),
        counts=measure.counts if len(last.tries) > measure.practice + 1 else None,
        before=words.number(before),
        after=words.number(after),
        unit=words.unit(measure.unit),
        change=compare(measure, first.value or 0.0, last.value or 0.0) if first.id != last.id else None,
    )


def labels(words: Words, person: Person, taken: Sequence[MeasureRow], last: MeasureRow) -> Markup:
    """What was otherwise than at the first test and can make a difference by itself."""
    first = next(t for t in taken if t.measure == last.measure and t.side == last.side)
    return words.say(
        "measuring.otherwise",
        apart=at_another_time(*(local(test.at, times.zone_of(person)).time() for test in (first, last))),
        cold=first.warm is True and last.warm is False,
        warmed=first.warm is False and last.warm is True,
        tries=len(first.tries) if len(first.tries) != len(last.tries) else None,
    )
