"""All files of an export by their names: what a coach gets of everybody, in a folder or packed together."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime
from io import BytesIO
from itertools import groupby
from zipfile import ZIP_DEFLATED, ZipFile

from bot.exports import adverse, fhir, records, tables
from db.record import Kept

Files = dict[str, bytes]

ABOUT = """\
What is in here
===============

Health data of people who are named by their first names. Keep it where only
you can read it, send it to nobody who need not have it, and delete it when
you are done. Who has had their data deleted since it was made is still in it.

courses.csv          one row a course: programme, state, where it stands
days.csv             one row a date: what was handed out, what was answered,
                     in own words too, what was decided and why
tests.csv            one row a test of one side, with every try
alerts.csv           one row an alert: cause, when it was told, seen, closed
record.json          all of it with health answers, the coach's decisions and
                     notes, beside the JSON Schema that describes it
adverse-events.*     what happened, in which session, what was done, what
                     came of it; as a table, and as JSON with its schema
fhir/*.json          one HL7 FHIR R4B bundle a client
calendar/*.ics       the dates ahead of each running course, if all goes well

Numbers in file names are the client's (FHIR) or the course's (calendar).
Not in here: surnames, chat numbers, photos, messages, consent texts.
Pain is what clients say, tests are measured by themselves. An adverse event
is what the rules took for more than soreness; nobody has examined it.
"""


def files(kept: Sequence[Kept], made_at: datetime) -> Files:
    """Every file but the calendars."""
    return {
        "README.txt": ABOUT.encode(),
        **tables.tables(kept),
        "record.json": records.as_json(records.record(kept, made_at)),
        **adverse_events(kept, made_at),
        **dict(bundles(kept, made_at)),
    }


def adverse_events(kept: Sequence[Kept], made_at: datetime) -> Files:
    """The list of adverse events as a table and as JSON."""
    found = adverse.adverse_events(kept, made_at)
    return {"adverse-events.csv": adverse.table(found), "adverse-events.json": records.as_json(found)}


def bundles(kept: Sequence[Kept], made_at: datetime) -> Iterator[tuple[str, bytes]]:
    """One FHIR bundle for each client."""
    for number, theirs in groupby(sorted(kept, key=lambda one: one.person.id), key=lambda one: one.person.id):
        courses = list(theirs)
        yield f"fhir/{number}.json", fhir.as_json(fhir.bundle(courses[0].person, courses, made_at))


def packed(found: Files) -> bytes:
    """The files as one ZIP archive."""
    out = BytesIO()
    with ZipFile(out, "w", ZIP_DEFLATED) as archive:
        for name, body in found.items():
            archive.writestr(name, body)
    return out.getvalue()
