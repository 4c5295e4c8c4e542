"""`easeward practice --group`: invented people who have lived some time, kept for the next start."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest
from sqlalchemy import func, select

from bot import grouping
from bot.practising import COACH, practice_running
from db.engine import opened
from db.schema import Alert, Answer, Course, LedgerRow
from tests.acceptance.driver import practice

NOW = datetime(2026, 5, 6, 15, 0, tzinfo=UTC)
DATES = 4


async def test_people_have_lived_their_days_and_the_next_start_is_the_same_chat(tmp_path: Path) -> None:
    said: list[str] = []
    folder = tmp_path / "group"
    await grouping.lived(folder, 5, NOW, said.append, dates=DATES)
    async with opened(f"sqlite+aiosqlite:///{folder / 'easeward.sqlite'}") as database, database.reading() as session:
        begun = (await session.scalars(select(Course).where(Course.starts_on.is_not(None)))).all()
        rows = (await session.scalars(select(LedgerRow))).all()
        answers = await session.scalar(select(func.count()).select_from(Answer))
        failed = await session.scalar(select(func.count()).where(Alert.cause == "message-failed"))
    assert len(begun) >= 2
    assert max(row.local_date for row in rows) == datetime(2026, 5, 12, tzinfo=UTC).date()
    assert answers is not None
    assert answers > len(rows)
    assert failed == 0
    assert len(said) == 1

    await grouping.lived(folder, 5, NOW, said.append, dates=DATES)
    assert len(said) == 1, "what is there is not lived again"
    async with practice(folder) as (chat, _process):
        assert [one["name"] for one in await chat.get_list("chats")][:2] == ["Demo coach", "Babrin"]
        assert (await chat.get("clock"))["now"] == "2026-05-12T08:00:00Z"
        assert "Your people" in (await chat.say(COACH, "/people"))[-1].text


async def test_a_folder_with_other_people_is_left_alone(tmp_path: Path) -> None:
    async with practice_running(tmp_path, port=0):
        pass
    with pytest.raises(grouping.OtherPeople, match="holds no group"):
        await grouping.lived(tmp_path, 5, NOW, print, dates=DATES)
