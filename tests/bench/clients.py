"""Clients in the middle of a course for benches, all alike, written by a few statements; and their taps.

One client's morning goes through the real tick; everybody else is a copy of that one under other numbers. Each has
fifteen days behind them, answered clean. `P` and the number of the chat is a client's name.
"""

from __future__ import annotations

import random
from collections.abc import Sequence
from datetime import UTC, datetime, timedelta
from importlib.resources import files
from typing import Any

from sqlalchemy import insert, select, text, update
from sqlalchemy.ext.asyncio import AsyncSession

from bot.clocks import SystemCalendar
from bot.ticks import Ticker
from db import due
from db.engine import Database
from db.schema import Base, CheckInRow, Coach, Course, Due, LedgerRow, Outbox, Person, ProgrammeVersion
from plans.localtime import data_version
from plans.programme import Programme
from plans.reading import read_programme

FIRST_CHAT = 5_000_000
FIRST_COACH_CHAT = 9_000_000
DAYS_BEHIND = 15
CHUNK = 1000
SOURCE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")

Rows = list[dict[str, Any]]


class Town:
    """A database with clients: first those who have today's session, then those whose morning is due now."""

    def __init__(self, database: Database, *, coaches: int = 1) -> None:
        self._database = database
        self._coaches = coaches
        self._programme = read_programme(SOURCE)
        self._now = datetime.now(UTC)

    async def fill(self, clients: int, *, waking: int = 0) -> None:
        """So many clients who have today's session before them, and so many whose morning is due."""
        await self._database.write(self._coaches_and_first)
        await Ticker(self._database, SystemCalendar(), "bench_bot").tick()
        await self._database.write(lambda session: self._copies(session, clients, waking))

    async def _coaches_and_first(self, session: AsyncSession) -> None:
        of_coaches = range(1, self._coaches + 1)
        await _put(session, Person, [self._person(n, FIRST_COACH_CHAT + n) for n in of_coaches])
        await _put(session, Coach, [{"id": n, "person_id": n, "created_at": self._now} for n in of_coaches])
        versions = [
            {
                "id": n,
                "coach_id": n,
                "digest": self._programme.digest,
                "title": "R",
                "source": SOURCE,
                "stored_at": self._now,
            }
            for n in of_coaches
        ]
        await _put(session, ProgrammeVersion, versions)
        await self._put_clients(session, [0])
        await due.plan(session, due.DueKind.MORNING, self._id(0), self._now - timedelta(minutes=1))

    async def _copies(self, session: AsyncSession, clients: int, waking: int) -> None:
        row = (await session.scalars(select(LedgerRow).where(LedgerRow.outbox_id.is_not(None)))).one()
        sent = {"state": "sent", "message_id": 1, "sent_at": self._now, "payload": {}}
        await session.execute(update(Outbox).where(Outbox.id == row.outbox_id).values(sent))
        letter = await session.get_one(Outbox, row.outbox_id, populate_existing=True)
        course = await session.get_one(Course, row.course_id)
        given = {"day": course.day, "level": course.level, "rests_taken": course.rests_taken}
        others = range(1, clients)
        await self._put_clients(session, range(1, clients + waking))
        await session.execute(update(Course).where(Course.id <= self._id(clients - 1)).values(given))
        letters = [_like(letter, id=_later(n), key=f"copy:{n}", chat=FIRST_CHAT + n) for n in others if row.outbox_id]
        await _put(session, Outbox, letters)
        rows = [
            _like(row, id=_later(n), course_id=self._id(n), person_id=self._id(n), outbox_id=_later(n)) for n in others
        ]
        await _put(session, LedgerRow, rows)
        await session.execute(update(LedgerRow).where(LedgerRow.id == row.id).values(id=_later(0)))
        tomorrow, before = self._now + timedelta(hours=23), self._now - timedelta(minutes=1)
        planned = [
            {
                "kind": due.DueKind.MORNING.value,
                "subject": self._id(n),
                "at": tomorrow if n < clients else before,
                "zone_data": data_version(),
            }
            for n in range(1, clients + waking)
        ]
        await _put(session, Due, planned)
        await _numbers_go_on(session)

    async def _put_clients(self, session: AsyncSession, some: Sequence[int]) -> None:
        """Clients with their courses and the days behind them."""
        await _put(session, Person, [self._person(self._id(n), FIRST_CHAT + n) for n in some])
        begun = self._now.date() - timedelta(days=DAYS_BEHIND)
        courses = [
            {
                "id": self._id(n),
                "person_id": self._id(n),
                "coach_id": n % self._coaches + 1,
                "version_id": n % self._coaches + 1,
                "state": "active",
                "day": DAYS_BEHIND,
                "starts_on": begun,
                "created_at": self._now,
            }
            for n in some
        ]
        await _put(session, Course, courses)
        behind = [_day(self._programme, self._now, self._id(n), number) for n in some for number in range(DAYS_BEHIND)]
        await _put(session, LedgerRow, behind)
        said = [
            {
                "ledger_id": row["id"],
                "completion": "done",
                "pain": 0,
                "sore": False,
                "odd": False,
                "updated_at": row["made_at"],
            }
            for row in behind
            if row["kind"] == "session"
        ]
        await _put(session, CheckInRow, said)

    def _person(self, id_: int, chat: int) -> dict[str, Any]:
        morning = (self._now - timedelta(minutes=1)).time()
        return {
            "id": id_,
            "chat": chat,
            "label": f"P{chat}",
            "zone": "UTC",
            "morning": morning,
            "created_at": self._now,
        }

    def _id(self, client: int) -> int:
        return self._coaches + 1 + client


def _day(programme: Programme, now: datetime, person: int, number: int) -> dict[str, Any]:
    on = now - timedelta(days=DAYS_BEHIND - number)
    return {
        "id": person * (DAYS_BEHIND + 1) + number,
        "course_id": person,
        "person_id": person,
        "local_date": on.date(),
        "zone": "UTC",
        "kind": "session" if programme.day(number + 1).session is not None else "rest",
        "day": number + 1,
        "version_id": 1,
        "level": 0,
        "prescribed": False,
        "withheld": False,
        "made_at": on,
    }


def _later(client: int) -> int:
    """The number of a client's row of today, and of its message: far from all others."""
    return FIRST_CHAT + client


def _like(row: Base, **other: Any) -> dict[str, Any]:
    return {column.key: getattr(row, column.key) for column in row.__table__.columns} | other


async def _put(session: AsyncSession, table: type[Base], rows: Rows) -> None:
    for start in range(0, len(rows), CHUNK):
        await session.execute(insert(table), rows[start : start + CHUNK])


async def _numbers_go_on(session: AsyncSession) -> None:
    """PostgreSQL's own numbers begin after those that were given."""
    if session.get_bind().dialect.name == "sqlite":
        return
    for table in ("person", "coach", "course", "programme_version", "ledger", "outbox"):
        await session.execute(
            text(f"SELECT setval(pg_get_serial_sequence('{table}', 'id'), (SELECT max(id) FROM {table}))")
        )


def taps(clients: Sequence[int], what: str, per_second: float, *, seed: int) -> list[tuple[float, dict[str, Any]]]:
    """One tap of each client under today's session, at moments that know nothing of one another (seconds from now).

    `what` is the end of the button's data, as "all" or "pain:8".
    """
    rng, at, found = random.Random(seed), 0.0, []
    for client in clients:
        at += rng.expovariate(per_second)
        found.append((at, {"callback_query": _query(client, what)}))
    return found


def _query(client: int, what: str) -> dict[str, Any]:
    chat = FIRST_CHAT + client
    person = {"id": chat, "is_bot": False, "first_name": f"P{chat}", "language_code": "en"}
    bot = {"id": 100, "is_bot": True, "first_name": "Bench", "username": "bench_bot"}
    message = {
        "message_id": 1,
        "date": 1_770_000_000,
        "chat": {"id": chat, "type": "private", "first_name": person["first_name"]},
        "from": bot,
        "text": "Day 16",
    }
    return {
        "id": str(chat),
        "from": person,
        "chat_instance": "1",
        "message": message,
        "data": f"c:{_later(client)}:{what}",
    }
