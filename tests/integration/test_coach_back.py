"""A coach who had blocked the bot hears, on coming back, what they were to hear of at once."""

from __future__ import annotations

from collections.abc import AsyncIterator
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select, update
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import telling
from bot.flows.desk import Desk
from bot.receiving import QuietApplication
from db import alerts
from db.engine import Database
from db.schema import Coach, Course, Outbox, Person, ProgrammeVersion
from tests.integration.fakes import database_in
from tests.integration.test_handlers import NOW, application, handle, message

__all__ = ["application"]

pytestmark = pytest.mark.usefixtures("store")
CHAT = 5


@pytest.fixture
async def database(tmp_path: Path) -> AsyncIterator[Database]:
    async with database_in(tmp_path) as found:
        await found.write(_scene)
        yield found


async def _scene(session: AsyncSession) -> None:
    """An alert that the platform has refused, as its coach had blocked the bot."""
    session.add_all([Person(id=n, chat=chat, label="P", created_at=NOW) for n, chat in ((1, CHAT), (2, 6))])
    await session.flush()
    session.add(Coach(id=1, person_id=1, created_at=NOW))
    await session.flush()
    session.add(ProgrammeVersion(id=1, coach_id=1, digest="d", title="T", source="", stored_at=NOW))
    await session.flush()
    course = Course(person_id=2, coach_id=1, version_id=1, state="waiting", created_at=NOW)
    session.add(course)
    await session.flush()
    desk = Desk(session=session, now=NOW, cause="pain", bot_username="b")
    await telling.tell_of(desk, course, cause="severe", at_once=True, facts={"pain": 9}, decided="waits")
    await session.execute(update(Outbox).values(state="refused"))
    await session.execute(update(Person).where(Person.id == 1).values(unreachable_since=NOW))


async def waiting(database: Database) -> list[Any]:
    async with database.reading() as session:
        rows = await session.scalars(select(Outbox).where(Outbox.kind == "alert", Outbox.state == "waiting"))
        return list(rows)


async def test_the_alert_comes_again_with_its_way_on(database: Database, application: QuietApplication) -> None:
    await handle(database, application, message(1, text="/help"))
    (alert,) = await waiting(database)
    assert alert.chat == CHAT
    assert "pain 9" in alert.payload["text"]
    assert "Let go on" in str(alert.payload)


async def test_it_comes_once(database: Database, application: QuietApplication) -> None:
    await handle(database, application, message(1, text="/help"))
    await handle(database, application, message(2, text="/help"))
    assert len(await waiting(database)) == 1


async def test_what_has_been_dealt_with_meanwhile_does_not_come(
    database: Database, application: QuietApplication
) -> None:
    async def closed(session: AsyncSession) -> None:
        await alerts.close_all(session, (await session.scalars(select(Course))).one(), NOW)

    await database.write(closed)
    await handle(database, application, message(1, text="/help"))
    assert await waiting(database) == []
