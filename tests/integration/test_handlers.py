"""The table of handlers, with the chat library's own application and a real database, without a platform."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime
from functools import partial
from typing import Any

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot

from bot.commands import COMMANDS
from bot.flows import telling
from bot.flows.desk import Desk
from bot.receiving import QuietApplication
from bot.taps import TAPS
from db.engine import Database
from db.schema import Answer, Coach, Course, Outbox, Person, ProgrammeVersion
from tests.integration import updates
from tests.integration.updates import handled, offline

pytestmark = pytest.mark.usefixtures("store")

NOW = datetime(2026, 5, 4, 6, 0, tzinfo=UTC)


@pytest.fixture
def application() -> QuietApplication:
    return offline()


async def handle(database: Database, application: QuietApplication, update: Mapping[str, Any]) -> None:
    async def job(_session: Any) -> None:
        await handled(application, update, NOW)

    await database.write(job)


message = partial(updates.message, now=NOW)


def tapped(data: str) -> dict[str, Any]:
    """A stranger taps a button with this data."""
    return {
        "update_id": 1,
        "callback_query": {
            "id": "7",
            "from": {"id": 5, "is_bot": False, "first_name": "Kim"},
            "chat_instance": "5",
            "data": data,
            "message": message(1, text="x")["message"],
        },
    }


async def said(database: Database) -> list[str]:
    async with database.reading() as session:
        return [str(row.get("text")) for row in await session.scalars(select(Outbox.payload).order_by(Outbox.id))]


@pytest.mark.parametrize("command", COMMANDS)
async def test_every_command_answers_a_stranger_and_changes_nothing(
    database: Database, application: QuietApplication, command: str
) -> None:
    await handle(database, application, message(1, text=f"/{command}"))
    assert len(await said(database)) == 1
    async with database.reading() as session:
        assert (await session.scalars(select(Answer))).all() == []


@pytest.mark.parametrize("verb", TAPS)
@pytest.mark.parametrize("rest", ["1:x:y", "", "x", "999999999999999999", "1:1", "-1:all"])
async def test_every_button_of_a_stranger_is_answered_and_changes_nothing(
    database: Database, application: QuietApplication, verb: str, rest: str
) -> None:
    tap = tapped(f"{verb}:{rest}")
    await handle(database, application, tap)
    async with database.reading() as session:
        methods = list(await session.scalars(select(Outbox.method)))
        person = await session.scalar(select(Person))
    assert methods.count("answer_callback_query") == 1
    assert person is not None
    assert (person.zone, person.asking) in ((None, None), (None, "zone"))


async def test_a_coachs_button_under_anybody_elses_finger_says_so_and_nothing_more(
    database: Database, application: QuietApplication
) -> None:
    tap = tapped("rule:1:ease")
    await handle(database, application, tap)
    async with database.reading() as session:
        (payload,) = await session.scalars(select(Outbox.payload))
    assert payload["text"] == "Only a coach can do this. Nothing was changed."


@pytest.mark.parametrize(
    "content",
    [
        {"text": "hello"},
        {"text": "/nonsense"},
        {"sticker": {"file_id": "a", "file_unique_id": "b", "type": "regular", "width": 1, "height": 1,
                     "is_animated": False, "is_video": False}},
        {"document": {"file_id": "a", "file_unique_id": "b", "file_name": "x.yaml"}},
        {"location": {"latitude": 1.0, "longitude": 2.0}},
        {"video": {"file_id": "a", "file_unique_id": "b", "width": 1, "height": 1, "duration": 1}},
        {"animation": {"file_id": "a", "file_unique_id": "b", "width": 1, "height": 1, "duration": 1},
         "document": {"file_id": "a", "file_unique_id": "b", "file_name": "x.gif"}, "caption": "hip hinge"},
    ],
    ids=["words", "command", "sticker", "document", "location", "video", "animation"],
)  # fmt: skip
async def test_whatever_a_stranger_sends_gets_an_answer(
    database: Database, application: QuietApplication, content: dict[str, Any]
) -> None:
    await handle(database, application, message(1, **content))
    assert len(await said(database)) == 1


async def test_what_is_said_in_a_group_is_left_alone(database: Database, application: QuietApplication) -> None:
    await handle(database, application, message(1, chat=-5, kind="group", text="/people"))
    assert await said(database) == []
    async with database.reading() as session:
        assert (await session.scalars(select(Person))).all() == []


async def test_a_first_name_is_all_that_is_kept_of_a_name(database: Database, application: QuietApplication) -> None:
    update = message(1, text="/start")
    update["message"]["from"] |= {"last_name": "Secret", "username": "secret"}
    await handle(database, application, update)
    async with database.reading() as session:
        (person,) = (await session.scalars(select(Person))).all()
    assert person.label == "Kim"
    assert not any("ecret" in str(value) for value in vars(person).values())


def test_no_call_to_the_platform_is_made_by_a_handler(application: QuietApplication) -> None:
    assert isinstance(application.bot, Bot)
    assert application.updater is None


async def test_an_act_that_is_refused_half_way_is_answered_and_undone(
    database: Database, application: QuietApplication
) -> None:
    """A coach's quick word is not enough after a red flag; by then their open question was closed already."""

    async def scene(session: AsyncSession) -> None:
        session.add_all([Person(id=n, chat=chat, label="P", created_at=NOW) for n, chat in ((1, 5), (2, 6))])
        await session.flush()
        session.add(Coach(id=1, person_id=1, created_at=NOW))
        await session.flush()
        session.add(ProgrammeVersion(id=1, coach_id=1, digest="d", title="T", source="", stored_at=NOW))
        await session.flush()
        course = Course(id=1, person_id=2, coach_id=1, version_id=1, state="waiting", created_at=NOW)
        session.add(course)
        await session.flush()
        desk = Desk(session=session, now=NOW, cause="flag", bot_username="b")
        facts: dict[str, int | float | str | bool] = {"flag": "emergency"}
        await telling.tell_of(desk, course, cause="red-flag", at_once=True, red=True, facts=facts, decided="waits")
        (await session.get_one(Person, 1)).asking = "found-out:1:1"

    await database.write(scene)
    query: dict[str, Any] = {"id": "7", "from": {"id": 5, "is_bot": False, "first_name": "Kim"}}
    query |= {"chat_instance": "5"}
    query |= {"data": "found:1:spoke:1", "message": message(1, text="x")["message"]}
    await handle(database, application, {"update_id": 1, "callback_query": query})
    async with database.reading() as session:
        answers = (await session.scalars(select(Outbox.payload).where(Outbox.kind == "tap"))).all()
        assert [payload["text"] for payload in answers] == [
            "This button is not for you, or too old. Nothing was changed."
        ]
        assert (await session.get_one(Person, 1)).asking == "found-out:1:1"
        assert (await session.get_one(Course, 1)).state == "waiting"
