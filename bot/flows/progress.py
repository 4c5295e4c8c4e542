"""How a course has gone so far: in words, and as a chart."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta
from typing import Any

from pydantic import TypeAdapter

from bot.flows import bodies, day, times
from bot.flows.desk import Desk
from bot.flows.measuring import at_another_time, taken
from bot.words import Words
from bot.words.charts import fortnight_words, progress_words
from bot.words.message import Message, Picture
from db import courses
from db.schema import Course, LedgerRow, MeasureRow, Person
from plans.adherence import week_of
from plans.charts.days import Day, Did, Line
from plans.charts.fortnight import DATES, Fortnight
from plans.charts.measured import Measured, Result
from plans.charts.progress import Progress
from plans.checkin import CheckIn, Completion
from plans.ledger import Entry, RowKind
from plans.localtime import local
from plans.measures import ALONE, MEASURES, Measure, compare
from plans.programme import Programme
from plans.rules import Verdict

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
    tests = await _tests(desk, course)
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
        tests=[_compared(words, MEASURES[key], rows) for key, rows in tests.items()],
    )
    note = words.gettext("Day {day} of {all}").format(day=course.day, all=len(programme.days))
    chart = Progress(
        days=tuple(_day(pairs, number) for number in range(len(pairs))),
        lines=_lines(words, programme, course),
        measures=tuple(_measured(words, person, MEASURES[key], rows) for key, rows in tests.items()),
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
    """One date of the chart; what followed from it stands in the row after it."""
    row, entry = pairs[number]
    said = entry.checkin
    after = pairs[number + 1][0].decision if number + 1 < len(pairs) else None
    verdict = _VERDICTS.get(str((after or {}).get("verdict"))) if said != CheckIn() else None
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
    usual, settings = bodies.usual_of(course), day.settings_of(programme)
    found = [Line(settings.clean + 0.5, words.gettext("above: the day comes again"))]
    if usual:
        found.append(Line(usual, words.gettext("your usual pain")))
    return tuple(found)


async def _tests(desk: Desk, course: Course) -> dict[str, list[MeasureRow]]:
    """The course's tests by measure, oldest first."""
    found: dict[str, list[MeasureRow]] = {}
    for row in await taken(desk, course):
        found.setdefault(row.measure, []).append(row)
    return found


def _compared(words: Words, measure: Measure, rows: Sequence[MeasureRow]) -> dict[str, object]:
    first, last = rows[0].value, rows[-1].value
    change = compare(measure, first, last) if len(rows) > 1 else None
    return {"name": measure.name, "unit": measure.unit, "first": f"{first:g}", "last": f"{last:g}", "change": change}


def _measured(words: Words, person: Person, measure: Measure, rows: Sequence[MeasureRow]) -> Measured:
    other = words.gettext("at another time of day")
    tests = tuple(
        Result(
            local(row.at, times.zone_of(person)).date(),
            row.value,
            f"{row.value:g}",
            other if at_another_time(person, rows[0], row) else "",
        )
        for row in rows
    )
    band = words.gettext("within the error of the test")
    return Measured(measure.name, measure.unit, tests, rows[0].value, ALONE * measure.mdc, band)
