"""`easeward export`: everything that is kept of a coach's clients, as files in a folder of their own."""

from __future__ import annotations

import os
from collections.abc import Callable, Collection
from pathlib import Path

from bot.clocks import SystemCalendar
from bot.exports.records import CAUTION
from bot.flows import exporting
from bot.flows.desk import Desk
from db import people, record
from db.engine import Database

KINDS = {
    "csv": ("courses.csv", "days.csv", "tests.csv", "alerts.csv"),
    "json": ("record.json",),
    "events": ("adverse-events.csv", "adverse-events.json"),
    "fhir": ("fhir/",),
    "calendar": ("calendar/",),
}
"""What can be asked for alone: names of files, or how they begin."""


class NotEmpty(ValueError):
    """The folder has something in it already."""


async def export(
    database: Database, coach: str, folder: Path, client: str | None, only: Collection[str], say: Callable[[str], None]
) -> None:
    """Writes the files of a coach's clients, or of one of them, readable by nobody but this user.

    Raises LookupError for nobody or several of that name or number, for somebody who is no coach, and for a client who
    is not theirs; NotEmpty; OSError.
    """
    if folder.exists() and any(folder.iterdir()):
        raise NotEmpty(f"{folder} is not empty: name a new folder")
    async with database.reading() as session:
        whose = await people.named(session, coach)
        role = await people.coach_of(session, whose)
        if role is None:
            raise LookupError(f"{coach} is no coach")
        one = await people.named(session, client, among=record.clients_of(role.id)) if client is not None else None
        kept = await record.of_coach(session, role.id, one.id if one is not None else None)
        if not kept:
            raise LookupError(f"nobody who is with {coach}{f' and is {client}' if client else ''} has begun a course")
        desk = Desk(session=session, now=SystemCalendar().now(), cause="export", bot_username="")
        found = await exporting.everything(desk, kept)
    wanted = tuple(name for kind in only or KINDS for name in KINDS[kind])
    for name, body in found.items():
        if name == "README.txt" or name.startswith(wanted):
            _write(folder / name, body)
            say(str(folder / name))
    say(CAUTION)


def _write(file: Path, body: bytes) -> None:
    file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    descriptor = os.open(file, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(descriptor, "wb") as out:
        out.write(body)
