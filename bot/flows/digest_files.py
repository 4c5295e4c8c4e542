"""The digest to keep: as a page to print, and as a table with one row for each client and date."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from datetime import date
from typing import NamedTuple

from markupsafe import Markup

from bot.flows import digest_said, times
from bot.flows.desk import Desk
from bot.flows.weeks import Digest, Seen
from bot.words.csv_file import ANSWERED, Cell, answered, csv_file
from db.schema import MeasureRow, Person
from db.weeks import Lived
from plans.comparing import MONTH
from plans.localtime import local


class File(NamedTuple):
    """A file to send, with what stands below it."""

    name: str
    body: bytes
    caption: Markup


def page(desk: Desk, person: Person, found: Digest) -> File:
    """The digest as one page that needs nothing else, the chart inside."""
    words = desk.words(person)
    caption = words.say("digest.page_caption", **digest_said.dates(words, found.first, found.last))
    return File(f"week-{found.last}.html", digest_said.page(words, found).encode(), caption)


def table(desk: Desk, person: Person, found: Digest) -> File:
    """Every row of the last four weeks."""
    words = desk.words(person)
    first = found.last - MONTH
    rows = sorted(
        (line for seen in found.clients for line in _lines(seen, first, found.last)),
        key=lambda line: (str(line[1]).lower(), line[4], line[0]),
    )
    dates = digest_said.dates(
        words, min((date.fromisoformat(str(line[0])) for line in rows), default=found.first), found.last
    )
    return File(f"weeks-{found.last}.csv", csv_file(COLUMNS, rows), words.say("digest.table_caption", **dates))


COLUMNS = (
    "date",
    "client",
    "programme",
    "version",
    "course",
    "course_state",
    "row",
    "day",
    "ease_level",
    "delivered",
    *ANSWERED,
    "next_morning",
    "verdict",
    "reason",
    "tests",
)


def _lines(seen: Seen, after: date, last: date) -> Iterator[tuple[Cell, ...]]:
    tests = defaultdict(list)
    for test in seen.client.tests:
        tests[local(test.at, times.zone_of(seen.client.person)).date()].append(test)
    for row in seen.client.rows:
        if after < row.entry.on <= last:
            yield _line(seen, row, tests[row.entry.on])


def _line(seen: Seen, row: Lived, tests: list[MeasureRow]) -> tuple[Cell, ...]:
    entry, said, course = row.entry, row.entry.checkin, seen.course
    return (
        entry.on.isoformat(),
        seen.label,
        seen.programme.title,
        seen.programme.digest[:6],
        course.id,
        course.state,
        entry.kind,
        entry.day,
        entry.level,
        entry.delivered,
        *answered(said),
        entry.morning,
        row.verdict.word if row.verdict is not None else None,
        row.reason,
        "; ".join(" ".join(filter(None, (test.measure, test.side, f"{test.value:g}"))) for test in tests),
    )
