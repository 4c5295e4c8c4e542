"""From a platform over real HTTP into the inbox, and from there through handlers: once, or said to have failed."""

from __future__ import annotations

import asyncio
import json
import logging
import secrets
from collections.abc import AsyncIterator, Awaitable, Callable, Mapping
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot, Update
from telegram.error import InvalidToken
from telegram.ext import ApplicationHandlerStop, CallbackContext, CommandHandler, MessageHandler, filters

from bot.clocks import SystemMachine
from bot.receiving import (
    LARGEST_DOCUMENT,
    EndedTheProcess,
    InboxWorker,
    NotHandled,
    Poller,
    QuietApplication,
    add_handlers,
    built,
    dispatch,
)
from bot.sending import TokenRefused
from db import inbox, outbox
from db.engine import Database
from db.schema import Inbox, Note, Outbox
from db.writer import current_session
from tests.integration.fakes import (
    NOON,
    TOKEN,
    FakePlatform,
    SetCalendar,
    SetMachine,
    bot_at,
    database_in,
    platform_running,
    until,
)

AnyContext = CallbackContext[Any, Any, Any, Any]

pytestmark = pytest.mark.usefixtures("store")


def said(update_id: int, text: str = "done", chat: int = 7) -> dict[str, Any]:
    message: dict[str, Any] = {
        "message_id": update_id,
        "date": 1,
        "chat": {"id": chat, "type": "private", "first_name": "Ada"},
        "from": {"id": chat, "is_bot": False, "first_name": "Ada", "last_name": "Quill"},
        "text": text,
    }
    if text.startswith("/"):
        message["entities"] = [{"type": "bot_command", "offset": 0, "length": len(text)}]
    return {"update_id": update_id, "message": message}


def carrying(update_id: int, file_id: str = "F", size: int | None = None) -> dict[str, Any]:
    update = said(update_id)
    del update["message"]["text"]
    document = {"file_id": file_id, "file_unique_id": "u", "file_name": "week.yaml"}
    update["message"]["document"] = document if size is None else document | {"file_size": size}
    return update


async def counted(session: AsyncSession, update: Mapping[str, Any]) -> None:
    """An effect with an answer: counts the update and puts a row into the outbox."""
    update_id = update["update_id"]
    note = await session.get(Note, "effects") or Note(name="effects", value={"of": []})
    note.value = {"of": [*note.value["of"], update_id]}
    session.add(note)
    await outbox.put(
        session,
        key=f"answer:{update_id}",
        chat=7,
        kind="answer",
        method="send_message",
        payload={"text": "noted"},
        now=NOON,
    )
    await session.flush()


@dataclass
class Road:
    """A database, a platform, and the way in between them. `misbehave` decides what happens after an effect."""

    database: Database
    platform: FakePlatform
    bot: Bot
    url: str
    handled: list[tuple[int, bytes | None, datetime]] = field(default_factory=list)
    payloads: list[dict[str, Any]] = field(default_factory=list)
    told: list[tuple[int, int]] = field(default_factory=list)
    misbehave: Callable[[int], Awaitable[None]] | None = None

    async def store(self, *updates: dict[str, Any]) -> None:
        await self.database.write(lambda session: inbox.store(session, updates, NOON))

    async def handle(
        self, session: AsyncSession, update: Mapping[str, Any], document: bytes | None, stored_at: datetime
    ) -> None:
        await counted(session, update)
        self.handled.append((update["update_id"], document, stored_at))
        self.payloads.append(dict(update))
        if self.misbehave is not None:
            await self.misbehave(update["update_id"])

    async def on_failed(self, session: AsyncSession, chat: int, update_id: int) -> None:
        self.told.append((chat, update_id))

    def worker(self, **more: Any) -> InboxWorker:
        arguments: dict[str, Any] = {
            "handle": self.handle,
            "on_failed": self.on_failed,
            "machine": SystemMachine(),
            "worker": f"w-{secrets.token_hex(4)}",
        }
        return InboxWorker(self.database, self.bot, **(arguments | more))

    @asynccontextmanager
    async def working(self, **more: Any) -> AsyncIterator[InboxWorker]:
        worker = self.worker(**more)
        task = asyncio.create_task(worker.run())
        try:
            yield worker
        finally:
            worker.stop()
            await task

    @asynccontextmanager
    async def polling(self) -> AsyncIterator[asyncio.Task[None]]:
        task = asyncio.create_task(Poller(self.database, self.bot, calendar=SetCalendar(), poll_timeout=0).run())
        try:
            yield task
        finally:
            task.cancel()
            await asyncio.gather(task, return_exceptions=True)

    async def states(self) -> dict[int, str]:
        async with self.database.reading() as session:
            rows = await session.execute(select(Inbox.update_id, Inbox.state))
            return {update_id: state for update_id, state in rows}

    async def is_state(self, update_id: int, state: str) -> bool:
        return (await self.states()).get(update_id) == state

    async def effects(self) -> list[int]:
        async with self.database.reading() as session:
            note = await session.get(Note, "effects")
            return [] if note is None else list(note.value["of"])

    async def answers(self) -> list[str]:
        async with self.database.reading() as session:
            return list(await session.scalars(select(Outbox.key).order_by(Outbox.id)))

    async def inbox_row(self, update_id: int) -> Inbox:
        async with self.database.reading() as session:
            return await session.get_one(Inbox, update_id)


@pytest.fixture
async def road(tmp_path: Path) -> AsyncIterator[Road]:
    platform = FakePlatform()
    async with (
        platform_running(platform) as url,
        bot_at(url, read_timeout=5.0) as bot,
        database_in(tmp_path) as database,
    ):
        yield Road(database, platform, bot, url)


async def fails(update_id: int) -> None:
    raise ValueError("the client's words")


# --- from the platform to the inbox -----------------------------------------------------------------------------------


async def test_an_update_is_stored_before_the_question_that_confirms_it(road: Road) -> None:
    road.platform.updates = [said(41), said(42)]
    async with road.polling():
        await until(lambda: 43 in road.platform.offsets)
        assert await road.states() == {41: "waiting", 42: "waiting"}
    assert road.platform.offsets[0] is None


async def test_what_was_stored_but_never_confirmed_comes_again_and_counts_once(road: Road) -> None:
    await road.store(said(41))
    road.platform.updates = [said(41), said(42)]
    async with road.polling(), road.working():
        await until(lambda: road.is_state(42, "handled"))
    assert road.platform.offsets[0] is None
    assert await road.effects() == [41, 42]


async def test_nothing_is_confirmed_that_could_not_be_stored(road: Road, monkeypatch: pytest.MonkeyPatch) -> None:
    store, tries = inbox.store_fetched, []

    async def full(session: AsyncSession, *more: Any) -> int:
        tries.append(more)
        if len(tries) < 3:
            raise OSError("disk full")
        assert road.platform.offsets == [None]
        return await store(session, *more)

    monkeypatch.setattr(inbox, "store_fetched", full)
    road.platform.updates = [said(41)]
    async with road.polling():
        await until(lambda: 42 in road.platform.offsets)
    assert len(tries) == 3


@pytest.mark.parametrize("status", [409, 500])
async def test_another_poller_or_an_error_pauses_the_questions_and_is_logged(
    road: Road, status: int, caplog: pytest.LogCaptureFixture
) -> None:
    road.platform.next_up = [(status, "no")]
    road.platform.updates = [said(41)]
    async with road.polling():
        await until(lambda: road.is_state(41, "waiting"))
    actions = [record.message for record in caplog.records if record.name == "bot.receiving"]
    assert actions == ["polling-conflict" if status == 409 else "polling-failed"]


async def test_a_refused_token_ends_the_polling(road: Road) -> None:
    road.platform.next_up = [(401, "Unauthorized")]
    async with road.polling() as task:
        await asyncio.wait([task], timeout=5)
        assert isinstance(task.exception(), TokenRefused)


async def test_a_surname_never_reaches_the_database(road: Road) -> None:
    road.platform.updates = [said(41)]
    async with road.polling():
        await until(lambda: road.is_state(41, "waiting"))
    kept = json.dumps((await road.inbox_row(41)).payload)
    assert "Ada" in kept
    assert "Quill" not in kept


# --- from the inbox to the use cases ----------------------------------------------------------------------------------


async def test_an_updates_effect_its_answer_and_its_mark_are_there_together(road: Road) -> None:
    await road.store(said(1))
    async with road.working():
        await until(lambda: road.is_state(1, "handled"))
    assert await road.effects() == [1]
    assert await road.answers() == ["answer:1"]
    assert road.handled == [(1, None, NOON)]
    assert (await road.inbox_row(1)).payload is None


async def test_a_process_that_died_between_storing_and_handling_loses_nothing(road: Road) -> None:
    await road.store(said(1), said(2))
    dead = road.worker(machine=SetMachine(0.0))
    assert [row.update_id for row in await dead.claim(5)] == [1]
    async with road.working():
        await until(lambda: road.is_state(2, "handled"))
    assert await road.effects() == [1, 2]


async def test_a_failing_handler_leaves_neither_effect_nor_answer_and_succeeds_the_next_time(road: Road) -> None:
    tries: list[int] = []

    async def once(update_id: int) -> None:
        tries.append(update_id)
        assert await road.effects() == []
        if len(tries) == 1:
            raise ValueError("no")

    road.misbehave = once
    await road.store(said(1))
    async with road.working():
        await until(lambda: road.is_state(1, "handled"))
    assert tries == [1, 1]
    assert await road.effects() == [1]
    assert await road.answers() == ["answer:1"]


async def test_three_failures_are_the_end_of_it_and_somebody_is_told(
    road: Road, caplog: pytest.LogCaptureFixture
) -> None:
    road.misbehave = fails
    await road.store(said(1))
    async with road.working():
        await until(lambda: road.is_state(1, "failed"))
    assert road.told == [(7, 1)]
    assert len(road.handled) == 3
    assert await road.effects() == []
    assert (await road.inbox_row(1)).failure == "ValueError"
    assert not any("words" in record.getMessage() for record in caplog.records)


async def test_a_failed_update_does_not_hold_up_its_chat_for_ever(road: Road) -> None:
    async def first_only(update_id: int) -> None:
        if update_id == 1:
            raise ValueError("no")

    road.misbehave = first_only
    await road.store(said(1), said(2))
    async with road.working():
        await until(lambda: road.is_state(2, "handled"))
    assert await road.states() == {1: "failed", 2: "handled"}


async def test_an_update_is_failed_even_when_telling_fails(road: Road, caplog: pytest.LogCaptureFixture) -> None:
    async def cannot_tell(session: AsyncSession, chat: int, update_id: int) -> None:
        raise LookupError("no coach")

    road.misbehave = fails
    await road.store(said(1), said(2, chat=8))
    async with road.working(on_failed=cannot_tell):
        await until(lambda: road.is_state(1, "failed"))
        await until(lambda: road.is_state(2, "failed"))
    assert "telling-failed" in [record.message for record in caplog.records]


async def test_an_update_that_ended_the_process_ten_times_is_not_begun_again(road: Road) -> None:
    await road.store(said(1))
    for n in range(inbox.BEGUN):
        dead = road.worker(machine=SetMachine(100.0 * n))
        await dead.begin()
        assert len(await dead.claim(1)) == 1
    async with road.working():
        await until(lambda: road.is_state(1, "failed"))
    assert road.handled == []
    assert (await road.inbox_row(1)).failure == EndedTheProcess.__name__
    assert road.told == [(7, 1)]


async def test_a_worker_whose_lease_was_taken_leaves_no_effect(road: Road) -> None:
    await road.store(said(1))
    slow, quick = road.worker(machine=SetMachine(0.0)), road.worker()
    (row,) = await slow.claim(1)
    await quick.begin()
    (again,) = await quick.claim(1)
    await slow.work(row)
    assert await road.effects() == []
    await quick.work(again)
    assert await road.effects() == [1]


async def test_many_chats_are_handled_in_their_own_order(road: Road) -> None:
    await road.store(*(said(n, chat=n % 5 + 1) for n in range(1, 101)))
    async with road.working():
        await until(lambda: len(road.handled) == 100, seconds=30)
    order = [update_id for update_id, _, _ in road.handled]
    assert sorted(order) == list(range(1, 101))
    for chat in range(5):
        mine = [update_id for update_id in order if update_id % 5 == chat]
        assert mine == sorted(mine)


# --- documents --------------------------------------------------------------------------------------------------------


async def test_a_document_is_fetched_before_the_write_and_forgotten_after_it(road: Road) -> None:
    road.platform.files["F"] = b"title: x"
    await road.store(carrying(1))
    async with road.working():
        await until(lambda: road.is_state(1, "handled"))
    assert road.handled == [(1, b"title: x", NOON)]
    assert (await road.inbox_row(1)).document is None


@pytest.mark.parametrize("told_size", [LARGEST_DOCUMENT + 1, None])
async def test_a_document_that_is_too_large_is_left_out_and_the_handler_is_told(
    road: Road, told_size: int | None
) -> None:
    road.platform.files["F"] = bytes(LARGEST_DOCUMENT + 1)
    await road.store(carrying(1, size=told_size))
    async with road.working():
        await until(lambda: road.is_state(1, "handled"))
    assert road.handled[0][1] is None
    assert road.payloads[0]["document_left_out"] == "too-large"


async def test_a_document_that_cannot_be_fetched_is_left_out_and_the_handler_is_told(road: Road) -> None:
    await road.store(carrying(1, file_id="missing"))
    async with road.working():
        await until(lambda: road.is_state(1, "handled"))
    assert road.payloads[0]["document_left_out"] == "not-fetched"


async def test_a_document_is_fetched_once_however_often_its_update_is_tried(road: Road) -> None:
    road.platform.files["F"] = b"title: x"
    tries: list[int] = []

    async def once(update_id: int) -> None:
        tries.append(update_id)
        if len(tries) == 1:
            road.platform.files.clear()
            raise ValueError("no")

    road.misbehave = once
    await road.store(carrying(1))
    async with road.working():
        await until(lambda: road.is_state(1, "handled"))
    assert [document for _, document, _ in road.handled] == [b"title: x"] * 2


# --- the chat library's handlers --------------------------------------------------------------------------------------


@asynccontextmanager
async def application_at(url: str) -> AsyncIterator[QuietApplication]:
    application = built(TOKEN, url)
    await application.initialize()
    try:
        yield application
    finally:
        await application.shutdown()


async def keep(update: Update, context: AnyContext) -> None:
    await counted(current_session(), update.to_dict())


async def call_platform(update: Update, context: AnyContext) -> None:
    await keep(update, context)
    await context.bot.send_message(7, "from inside")


async def stop_here(update: Update, context: AnyContext) -> None:
    await keep(update, context)
    raise ApplicationHandlerStop


async def handled_by(road: Road, application: QuietApplication, update: dict[str, Any]) -> None:
    await road.store(update)

    async def handle(session: AsyncSession, payload: Mapping[str, Any], *_: object) -> None:
        await dispatch(application, payload)

    async with road.working(handle=handle):
        await until(lambda: settled(road, update["update_id"]))


async def settled(road: Road, update_id: int) -> bool:
    return (await road.states())[update_id] in ("handled", "failed")


async def test_a_handler_finds_the_writers_session_and_its_effect_is_committed(road: Road) -> None:
    async with application_at(road.url) as application:
        add_handlers(application, [MessageHandler(filters.TEXT, keep)])
        await handled_by(road, application, said(1))
    assert await road.states() == {1: "handled"}
    assert await road.effects() == [1]


async def test_a_handler_may_stop_the_others_and_has_still_handled(road: Road) -> None:
    async with application_at(road.url) as application:
        add_handlers(application, [MessageHandler(filters.TEXT, stop_here)])
        await handled_by(road, application, said(1))
    assert await road.effects() == [1]


async def test_a_handler_that_calls_the_platform_fails_and_nothing_is_sent_or_kept(road: Road) -> None:
    async with application_at(road.url) as application:
        add_handlers(application, [MessageHandler(filters.TEXT, call_platform)])
        await handled_by(road, application, said(1))
    assert (await road.inbox_row(1)).failure == "CallInsideWrite"
    assert await road.effects() == []
    assert road.platform.arrived == []


async def test_an_update_without_a_handler_fails(road: Road) -> None:
    async with application_at(road.url) as application:
        add_handlers(application, [CommandHandler("start", keep)])
        await handled_by(road, application, said(1, "/nonsense"))
    assert (await road.inbox_row(1)).failure == "NotHandled"


async def test_a_context_that_cannot_be_made_is_a_failure_and_no_silence(
    road: Road, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_: object) -> None:
        raise ValueError("no context")

    monkeypatch.setattr(CallbackContext, "from_update", broken)
    logging.getLogger("telegram").propagate = False
    async with application_at(road.url) as application:
        add_handlers(application, [MessageHandler(filters.TEXT, keep)])
        with pytest.raises(NotHandled):
            await dispatch(application, said(1))


async def test_a_refused_token_is_said_without_quoting_it(road: Road) -> None:
    application = built("100:other-secret", road.url)
    with pytest.raises(InvalidToken) as caught:
        await application.initialize()
    error: BaseException | None = caught.value
    while error is not None:
        assert "secret" not in str(error)
        error = error.__cause__ or error.__context__


async def test_many_workers_keep_each_chat_in_its_order(road: Road) -> None:
    await road.store(*(said(n, chat=n % 5 + 1) for n in range(1, 101)))
    async with road.working(), road.working(), road.working():
        await until(lambda: len(road.handled) >= 100, seconds=30)
    order = [update_id for update_id, _, _ in road.handled]
    assert sorted(order) == list(range(1, 101))
    for chat in range(5):
        mine = [update_id for update_id in order if update_id % 5 == chat]
        assert mine == sorted(mine)


async def test_an_update_that_the_library_cannot_read_ends_neither_the_questions_nor_the_others(road: Road) -> None:
    road.platform.updates = [{"update_id": 41, "message": {"chat": "?"}}, said(42), {"no": "number"}, 7]  # type: ignore[list-item]
    async with road.polling(), road.working():
        await until(lambda: road.is_state(42, "handled"))
