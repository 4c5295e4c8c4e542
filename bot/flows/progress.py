"""How a course has gone so far: in words, and as a chart."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from typing import Any

from pydantic import TypeAdapter

from bot.flows import times
from bot.flows.desk import Desk
from bot.words import Words
from bot.words.charts import fortnight_words, progress_words
from bot.words.measured import side_words
from bot.words.message import Message, Picture
from db import bodies, courses, measures
from db.schema import Course, LedgerRow, MeasureRow, Person
from plans.adherence import week_of
from plans.charts.days import Day, Did, Line
from plans.charts.fortnight import DATES, Fortnight
from plans.charts.measured import Measured, Result
from plans.charts.progress import Progress
from plans.checkin import CheckIn, Completion
from plans.ledger import Entry, RowKind
from plans.localtime import local
from plans.measures import ALONE, MEASURES, at_another_time, compare
from plans.programme import Programme
from plans.rules import Verdict
from plans.units import value_in

Pairs = Sequence[tuple[LedgerRow, Entry]]

_DID = {Completion.DONE: Did.DONE, Completion.PART: Did.PART, Completion.NONE: Did.LEFT_OUT}
_VERDICTS = {verdict.word: verdict for verdict in Verdict}


async def show(desk: Desk, person: Person) -> None:
    """Sends the progress of the person's course."""
    course = await courses.newest_course(desk.session, person)
    words = desk.words(person)
    pairs = await courses.history(desk.session, course) if course is not None else []
    if course is None or not pairs:
        await desk.say(person, Message(words.say("day.no_progress")))
        return
    await desk.say(person, await message(desk, person, course, pairs))


async def message(desk: Desk, person: Person, course: Course, pairs: Pairs) -> Message:
    """A course so far: where it stands, how much was done, pain, tests beside their error, and the chart of it."""
    words, today = desk.words(person), times.today(person, desk.now)
    programme = await desk.programme(course)
    taken = await _by_side(desk, course)
    week = week_of(entry for _row, entry in pairs)
    text = words.say(
        "day.progress",
        title=programme.title,
        day=course.day,
        of=len(programme.days),
        done=week.done,
        part=week.part,
        due=week.due,
        recent=[entry.checkin.pain for _row, entry in pairs[-14:] if entry.checkin.pain is not None],
        tests=[_compared(words, rows) for rows in taken],
    )
    note = words.gettext("Day {day} of {all}").format(day=course.day, all=len(programme.days))
    chart = Progress(
        days=tuple(_day(pairs, number) for number in range(len(pairs))),
        lines=_lines(words, programme, course),
        measures=tuple(_measured(words, person, rows) for rows in taken),
        words=progress_words(words, programme.title, note, _dates(pairs, today)),
    )
    return Message(text, picture=_picture("progress", Progress, chart))


def fortnight(words: Words, programme: Programme, course: Course, pairs: Pairs, label: str) -> Picture:
    """The last two weeks of a client at a glance, for the coach."""
    recent = range(max(0, len(pairs) - DATES), len(pairs))
    note = words.gettext("Day {day} of {all}").format(day=course.day, all=len(programme.days))
    chart = Fortnight(
        days=tuple(_day(pairs, number) for number in recent),
        lines=_lines(words, programme, course),
        words=fortnight_words(words, label, note),
    )
    return _picture("fortnight", Fortnight, chart)


def _picture(kind: str, shape: type[Any], chart: Any) -> Picture:
    return Picture(kind, TypeAdapter(shape).dump_python(chart, mode="json"), personal=True)


def _dates(pairs: Pairs, today: date) -> list[date]:
    first = pairs[0][0].local_date - timedelta(days=7)
    return [first + timedelta(days=n) for n in range((today - first).days + 8)]


def _day(pairs: Pairs, number: int) -> Day:
    """One date of the chart; what followed from it stands in the row after it, and waiting on the date itself."""
    row, entry = pairs[number]
    said = entry.checkin
    after = pairs[number + 1][0].decision if number + 1 < len(pairs) else None
    verdict = _VERDICTS.get(str((after or {}).get("verdict"))) if said != CheckIn() else None
    verdict = Verdict.REFER if entry.kind is RowKind.WAITING else verdict
    return Day(row.local_date, _did(entry), pain=said.pain, after=said.tightness, verdict=verdict)


def _did(entry: Entry) -> Did | None:
    if entry.checkin.completion is not None:
        return _DID[entry.checkin.completion]
    if entry.recorded:
        return Did.MEASURED
    if entry.kind in (RowKind.REST, RowKind.OFF):
        return Did.REST
    return Did.SILENT if entry.kind is RowKind.SESSION and entry.delivered else None


def _lines(words: Words, programme: Programme, course: Course) -> tuple[Line, ...]:
    """Across the pain: from where a day is repeated, and the client's usual pain."""
    usual, settings = bodies.usual_of(course), programme.settings
    found = [Line(settings.clean + 0.5, words.gettext("above: the day comes again"))]
    if usual:
        found.append(Line(usual, words.gettext("your usual pain")))
    return tuple(found)


async def results(desk: Desk, words: Words, course: Course) -> dict[str, object]:
    """What came of a course: sessions done of those that came, and each test beside the first."""
    week = week_of(entry for _row, entry in await courses.history(desk.session, course))
    tests_taken = [_compared(words, rows) for rows in await _by_side(desk, course)]
    return {"done": week.done, "due": week.due, "tests": tests_taken}


async def _by_side(desk: Desk, course: Course) -> list[list[MeasureRow]]:
    """The course's tests, those of one measure and side together, oldest first."""
    found: dict[tuple[str, str | None], list[MeasureRow]] = {}
    for row in await measures.taken(desk.session, course):
        found.setdefault((row.measure, row.side), []).append(row)
    return list(found.values())


def _name(words: Words, row: MeasureRow) -> str:
    side = side_words(row.side, gettext=words.gettext)
    name = words.gettext(MEASURES[row.measure].name)
    return f"{name}, {side[:1].lower()}{side[1:]}" if side else name


def _value(words: Words, row: MeasureRow) -> float:
    return value_in(row.value or 0.0, MEASURES[row.measure].unit, words.units)


def _compared(words: Words, rows: Sequence[MeasureRow]) -> dict[str, object]:
    measure = MEASURES[rows[0].measure]
    change = compare(measure, rows[0].value or 0.0, rows[-1].value or 0.0) if len(rows) > 1 else None
    return {
        "name": _name(words, rows[0]),
        "unit": words.unit(measure.unit),
        "first": words.number(_value(words, rows[0])),
        "last": words.number(_value(words, rows[-1])),
        "change": change,
        "error": words.number(value_in(ALONE * measure.mdc, measure.unit, words.units)),
    }


async def tests_said(desk: Desk, course: Course, words: Words) -> list[dict[str, object]]:
    """The tests of a course, first and last beside the error of the test, for words."""
    return [_compared(words, rows) for rows in await _by_side(desk, course)]


def _measured(words: Words, person: Person, rows: Sequence[MeasureRow]) -> Measured:
    measure = MEASURES[rows[0].measure]
    results = tuple(
        Result(
            local(row.at, times.zone_of(person)).date(),
            _value(words, row),
            words.number(_value(words, row)),
            _apart(words, person, rows[0], row),
        )
        for row in rows
    )
    band = words.gettext("within the error of the test")
    error = value_in(ALONE * measure.mdc, measure.unit, words.units)
    return Measured(_name(words, rows[0]), words.unit(measure.unit), results, results[0].value, error, band)


def _apart(words: Words, person: Person, first: MeasureRow, row: MeasureRow) -> str:
    """What was otherwise than at the first test, in few words; empty where nothing was."""
    if first.warm is True and row.warm is False:
        return words.gettext("without a warm-up")
    then, now = (local(test.at, times.zone_of(person)).time() for test in (first, row))
    return words.gettext("at another time of day") if at_another_time(then, now) else ""
