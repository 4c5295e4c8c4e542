"""What came of a programme version over all its clients: in a message, as a page and as a table."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from markupsafe import Markup
from pydantic import TypeAdapter

from bot.flows.desk import Desk
from bot.flows.rights import own_version
from bot.words import Words, reported
from bot.words.changes import changes
from bot.words.csv_file import Cell, csv_file
from bot.words.message import Message, Picture
from bot.words.programmes import programme_in
from db import bodies, programmes, weeks
from db.courses import CourseState
from db.schema import Coach, MeasureRow, Person, ProgrammeVersion
from plans.charts.staying import Staying
from plans.group_error import GroupError, Tries, group_errors
from plans.programme import Programme
from plans.programme_report import Client, Count, End, ProgrammeReport, report

ENDS = {CourseState.FINISHED: End.FINISHED, CourseState.STOPPED: End.LEFT}


@dataclass(frozen=True, slots=True)
class Came:
    """What came of one version: the report, and the error of its tests in this group."""

    programme: Programme
    report: ProgrammeReport
    errors: Sequence[GroupError]


async def show(desk: Desk, person: Person, coach: Coach, version_id: int) -> None:
    """Sends the report of a version, what changed from the one before, its page and its table.

    Raises NotAllowed for somebody else's version.
    """
    version = await own_version(desk, coach, version_id)
    words = desk.words(person)
    came = await _came(desk, version)
    older = await _before(desk, coach, version)
    before = await _came(desk, older) if older is not None else None
    changed = changes(before.programme, came.programme) if before is not None else []
    told = reported.Told(came.programme, came.report, came.errors, before.report if before else None, changed)
    for message in _messages(words, told):
        await desk.say(person, message)
    if came.report.begun:
        name = f"programme-{came.programme.digest[:6]}"
        title = came.programme.title
        page = reported.page(words, told).encode()
        await desk.document(person, f"{name}.html", page, words.say("reporting.page_caption", title=title))
        table = csv_file(COLUMNS, _lines(came))
        await desk.document(person, f"{name}.csv", table, words.say("reporting.table_caption", title=title))


async def _came(desk: Desk, version: ProgrammeVersion) -> Came:
    programme = programme_in(version)
    found = await weeks.of_version(desk.session, version.id)
    clients = [
        Client(
            [row.entry for row in client.rows],
            ENDS.get(CourseState(client.course.state), End.ON),
            bodies.lasting_fit(client.course),
        )
        for client in found.clients
    ]
    errors = group_errors(tries for client in found.clients for tries in _first_tries(client.tests))
    return Came(programme, report(programme, clients), errors)


def _first_tries(tests: Sequence[MeasureRow]) -> Iterator[Tries]:
    """The first test of each measure and side."""
    firsts: dict[tuple[str, str | None], MeasureRow] = {}
    for test in tests:
        firsts.setdefault((test.measure, test.side), test)
    return (Tries(test.measure, test.side, test.tries) for test in firsts.values())


async def _before(desk: Desk, coach: Coach, version: ProgrammeVersion) -> ProgrammeVersion | None:
    """The version before: the newest older one that is published and has the same title."""
    found = await programmes.of_coach(desk.session, coach)
    older = (one for one in found if one.id < version.id and one.published_at is not None)
    return next((one for one in older if one.title == version.title), None)


def _messages(words: Words, told: reported.Told) -> list[Message]:
    text = reported.text(words, told)
    if not told.report.begun:
        return [Message(text)]
    chart = reported.chart(words, told)
    picture = Picture("staying", TypeAdapter(Staying).dump_python(chart, mode="json"), personal=True)
    whole = Message(text, picture=picture)
    if whole.picture_digest is not None:
        return [whole]
    caption: Markup = words.say("reporting.chart", title=told.programme.title)
    return [Message(caption, picture=picture), Message(text)]


COLUMNS = ("part", "of", "figure", "count", "clients", "share", "low", "high", "small")


def _lines(came: Came) -> Iterator[tuple[Cell, ...]]:
    """One line a figure: of the whole, each day, each movement, the curve's steps, each test."""
    found = came.report
    for name in ("begun", "finished", "still_on", "left", "fell_silent"):
        yield "whole", "", name, *_counted(Count(getattr(found, name), found.begun))
    for day in found.days:
        yield "day", str(day.day), "had", day.had, "", "", "", "", ""
        yield "day", str(day.day), "still_on", *_counted(Count(day.still_on, day.had))
        for name in reported.OF_DAY:
            yield "day", str(day.day), name, *_counted(getattr(day, name))
    for movement in found.movements:
        for name in reported.OF_MOVEMENT:
            yield "movement", movement.movement, name, *_counted(getattr(movement, name))
    for step in found.staying.steps:
        shares = (round(value, 4) for value in (step.share, step.low, step.high))
        yield "staying", str(step.time), "gets_past", step.left, step.there, *shares, found.is_small
    for error in came.errors:
        of = " ".join(filter(None, (error.measure, error.side)))
        if error.found is not None:
            yield "test", of, "error", round(error.found.error, 3), error.people, "", "", "", False
            yield "test", of, "smallest_change", round(error.found.smallest_change, 3), error.people, "", "", "", False
        else:
            yield "test", of, "error", "", error.people, "", "", "", True


def _counted(count: Count) -> tuple[Cell, ...]:
    low, high = count.interval
    share = None if count.share is None else round(count.share, 4)
    return count.count, count.of, share, round(low, 4), round(high, 4), count.is_small
