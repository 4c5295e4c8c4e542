"""Files out of the practice chat: a client's own, a coach's of one and of all, and the command line beside it."""

from __future__ import annotations

import asyncio
import csv
import json
import os
import sys
from datetime import datetime
from io import BytesIO, StringIO
from pathlib import Path
from zipfile import ZipFile

import pytest
from fhir.resources.R4B.bundle import Bundle
from icalendar import Calendar

from tests.acceptance.driver import Practice, Said
from tests.acceptance.people import COACH, Client
from tests.fhir_rules import complaints

pytestmark = pytest.mark.asyncio(loop_scope="module")


async def got(chat: Practice, person: int, under: Said, label: str) -> dict[str, bytes]:
    """The files that come after a tap, by their names."""
    before = max(said.id for said in await chat.messages(person))
    await chat.tap(person, under, label)
    rows = await chat.get_list(f"messages?chat={person}&after={before}")
    sent = [row["document"] for row in rows if row.get("document")]
    return {one["name"]: await chat.file(one["file"]) for one in sent}


async def test_what_hurt_leaves_in_every_form_and_only_to_whom_it_belongs(chat: Practice, folder: Path) -> None:
    client = await Client.joins(chat, "Filed")
    await client.says("done, pain 8")
    mine = (await chat.say(client.number, "/mine"))[-1]
    own = await got(chat, client.number, mine, "For a clinic (FHIR)")
    bundle = json.loads(own["fhir.json"])
    Bundle.model_validate(bundle)
    assert complaints(bundle) == []
    kinds = [entry["resource"]["resourceType"] for entry in bundle["entry"]]
    assert {"Patient", "CarePlan", "Observation", "AdverseEvent"} == set(kinds)

    people = (await chat.say(COACH, "/people Filed"))[-1]
    page = (await chat.tap(COACH, people, "Filed"))[-1]
    menu = (await chat.tap(COACH, page, "Files"))[-1]
    assert "health data" in menu.text
    events = await got(chat, COACH, menu, "Adverse events")
    (line,) = csv.DictReader(StringIO(events["adverse-events.csv"].decode("utf-8-sig"), newline=""))
    assert (line["client"], line["pain"], line["verdict"], line["outcome"]) == ("Filed", "8", "refer", "waiting")
    assert line["coach_told_at"]
    assert line["own_words"] == "done, pain 8"
    assert set(await got(chat, COACH, menu, "Tables (CSV)")) == {"courses.csv", "days.csv", "tests.csv", "alerts.csv"}

    stranger = await Client.joins(chat, "Other")
    data = menu.button("Adverse events")
    before = max(said.id for said in await chat.messages(stranger.number))
    tap = await chat.post("tap", chat=stranger.number, message=stranger.day.id, button=data, forged=True)
    await chat.settled()
    assert (await chat.get(f"answer?tap={tap['tap']}"))["text"] == "Only a coach can do this. Nothing was changed."
    assert await chat.from_bot(stranger.number, after=before) == []

    everybody = (await chat.tap(COACH, (await chat.say(COACH, "/people"))[-1], "Files"))[-1]
    (packed,) = (await got(chat, COACH, everybody, "All of it (ZIP)")).values()
    with ZipFile(BytesIO(packed)) as archive:
        names = set(archive.namelist())
    assert await written(folder, str(COACH)) >= {name for name in names if not name.startswith("calendar/")}


async def test_a_client_takes_the_dates_ahead_into_a_calendar(chat: Practice) -> None:
    client = await Client.joins(chat, "Dated")
    settings = (await chat.say(client.number, "/settings"))[-1]
    (body,) = (await got(chat, client.number, settings, "Calendar file")).values()
    starts = [event.decoded("dtstart") for event in Calendar.from_ical(body).walk("VEVENT")]
    timed = [start for start in starts if isinstance(start, datetime)]
    assert len(starts) == 14
    assert {start.strftime("%H:%M %Z") for start in timed} <= {"07:00 WET", "07:00 WEST"}
    assert b"Dated" not in body


async def written(folder: Path, coach: str) -> set[str]:
    """The names of what the command line writes of a coach's clients, beside the running bot."""
    target = folder / "out"
    process = await asyncio.create_subprocess_exec(
        *(sys.executable, "-m", "bot.cli", "export", coach, str(target)),
        env={**os.environ, "EASEWARD_DATABASE_URL": f"sqlite:///{folder / 'easeward.sqlite'}"},
        stdout=asyncio.subprocess.PIPE,
        stderr=asyncio.subprocess.STDOUT,
    )
    out, _ = await process.communicate()
    assert process.returncode == 0, out.decode()
    return {str(file.relative_to(target)) for file in target.rglob("*") if file.is_file()}
