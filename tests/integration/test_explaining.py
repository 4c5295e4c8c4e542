"""Why a date is what it is: votes stored with their evidence, and the rules asked once more."""

from __future__ import annotations

from collections.abc import AsyncIterator
from datetime import UTC, date, datetime
from pathlib import Path

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.cli.explaining import explain, in_words
from db import courses
from db.schema import LedgerRow
from plans.checkin import CheckIn, Completion
from tests.integration.fakes import database_in
from tests.integration.test_time import Client

pytestmark = pytest.mark.usefixtures("store")


@pytest.fixture
async def client(tmp_path: Path) -> AsyncIterator[Client]:
    async with database_in(tmp_path) as database:
        found = Client(database)
        await found.joins("UTC")
        yield found


async def answers(client: Client, on: date, said: CheckIn) -> None:
    async def job(session: AsyncSession) -> None:
        row = await session.scalar(select(LedgerRow).where(LedgerRow.local_date == on))
        assert row is not None
        stored = await courses.checkin_row(session, row, client.calendar.now())
        courses.write_checkin(stored, said, client.calendar.now())

    await client.database.write(job)


async def test_a_date_is_explained_by_its_votes_and_the_rules_say_the_same_again(client: Client) -> None:
    await client.ticks_at(datetime(2026, 5, 4, 7, tzinfo=UTC))
    await answers(client, date(2026, 5, 4), CheckIn(Completion.PART, pain=1, half=False, why=None))
    await client.ticks_at(datetime(2026, 5, 5, 7, tzinfo=UTC))
    found = await explain(client.database, "2", date(2026, 5, 5))
    assert (found["kind"], found["day"], found["verdict"]) == ("session", 1, "repeat")
    assert found["seen"]["checkin"] == {"completion": "part", "pain": 1, "half": False}
    assert found["replay"]["verdict"] == found["verdict"]
    assert found["replay"]["votes"] == [vote["rule"] for vote in found["votes"]]
    words = in_words(found)
    assert words.startswith("2026-05-05: session, day 1 at level 0\ndecided: repeat, ")
    assert words.endswith("the rules of today say: repeat")


async def test_a_first_day_has_nothing_to_judge(client: Client) -> None:
    await client.ticks_at(datetime(2026, 5, 4, 7, tzinfo=UTC))
    found = await explain(client.database, "P2", date(2026, 5, 4))
    assert (found["reason"], found["votes"], found["replay"]) == ("start", [], None)
    assert in_words(found) == "2026-05-04: session, day 1 at level 0\ndecided: nothing to judge, start"


async def test_nobody_and_no_row_are_named(client: Client) -> None:
    with pytest.raises(LookupError, match="nobody with the chat number or name 'P9'"):
        await explain(client.database, "P9", date(2026, 5, 4))
    with pytest.raises(LookupError, match="P2 has no row on 2026-05-04"):
        await explain(client.database, "P2", date(2026, 5, 4))
