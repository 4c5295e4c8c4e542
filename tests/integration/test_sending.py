"""From the outbox to a platform over real HTTP, with the faults that really happen."""

from __future__ import annotations

import asyncio
import base64
import json
import secrets
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot

from bot.clocks import SystemMachine
from bot.sending import LEASE_SECONDS, Sender, TokenRefused
from db import letters, marks, outbox
from db.attachments import attach, attach_recipe, found, remember_upload
from db.delivery import REPEATED, Kind, State
from db.engine import Database
from db.marks import Mark
from db.schema import Attachment, Outbox, Person
from tests.integration.fakes import (
    NOON,
    FakePlatform,
    SetCalendar,
    SetMachine,
    bot_at,
    database_in,
    platform_running,
    until,
)

pytestmark = pytest.mark.usefixtures("store")


@dataclass
class Road:
    """A database, a platform, and senders between them."""

    database: Database
    platform: FakePlatform
    bot: Bot
    calendar: SetCalendar = field(default_factory=SetCalendar)
    unreachable: list[int] = field(default_factory=list)

    async def put(self, key: str, kind: Kind = Kind.ANSWER, chat: int = 7, **more: Any) -> int:
        arguments: dict[str, Any] = {"method": "send_message", "payload": {"text": key}, "now": NOON} | more
        return await self.database.write(
            lambda session: outbox.put(session, key=key, chat=chat, kind=kind, **arguments)
        )

    def sender(self, **settings: Any) -> Sender:
        arguments: dict[str, Any] = {
            "calendar": self.calendar,
            "machine": SystemMachine(),
            "worker": f"w-{secrets.token_hex(4)}",
            "chat_pace": 0.0,
            "per_second": 1000,
            "on_unreachable": self._told,
        }
        return Sender(self.database, self.bot, **(arguments | settings))

    async def _told(self, session: AsyncSession, chat: int) -> None:
        self.unreachable.append(chat)

    @asynccontextmanager
    async def sending(self, **settings: Any) -> AsyncIterator[Sender]:
        """A sender at work during the block; it must not fail."""
        sender = self.sender(**settings)
        task = asyncio.create_task(sender.run())
        try:
            yield sender
        finally:
            sender.stop()
            await task

    async def row(self, id_: int) -> Outbox:
        async with self.database.reading() as session:
            return await session.get_one(Outbox, id_)

    async def is_in(self, id_: int, *states: str) -> bool:
        return (await self.row(id_)).state in states

    async def states(self) -> dict[str, int]:
        async with self.database.reading() as session:
            return await outbox.counts(session)

    async def all_final(self) -> bool:
        return not await self.still_open()

    async def still_open(self) -> list[str]:
        async with self.database.reading() as session:
            return await outbox.open_work(session)


@pytest.fixture
async def road(tmp_path: Path) -> AsyncIterator[Road]:
    platform = FakePlatform()
    async with (
        platform_running(platform) as url,
        bot_at(url, read_timeout=5.0) as bot,
        database_in(tmp_path) as database,
    ):
        yield Road(database, platform, bot)


async def test_what_was_put_arrives_once_and_keeps_its_message_id(road: Road) -> None:
    id_ = await road.put("hello")
    async with road.sending():
        await until(lambda: road.is_in(id_, "sent"))
    row = await road.row(id_)
    assert (row.message_id, row.sent_at, row.attempts) == (5001, NOON, 1)
    assert road.platform.texts() == ["hello"]


async def test_a_commit_wakes_an_idle_sender(road: Road) -> None:
    async with road.sending():
        await asyncio.sleep(0.2)
        start = asyncio.get_running_loop().time()
        await road.put("x")
        await until(lambda: road.platform.texts() == ["x"])
        assert asyncio.get_running_loop().time() - start < 2.0  # it would look by itself after five seconds


async def test_all_methods_reach_the_platform_with_typed_arguments(road: Road) -> None:
    keyboard = {"inline_keyboard": [[{"text": "All done, no pain", "callback_data": "d:1:done"}]]}
    first = await road.put("s", payload={"text": "Day 1", "reply_markup": keyboard})
    await road.put("e", Kind.EDIT, method="edit_message_text", edits=first, payload={"text": "Day 1, noted"})
    await road.put("m", Kind.EDIT, method="edit_message_reply_markup", payload={"message_id": 44, "reply_markup": None})
    await road.put("t", Kind.TAP, method="answer_callback_query", payload={"callback_query_id": "q", "text": "ok"})
    async with road.sending():
        await until(road.all_final)
    methods = [call.method for call in road.platform.arrived]
    assert methods == ["sendMessage", "editMessageText", "editMessageReplyMarkup", "answerCallbackQuery"]
    sent, edit, markup, tap = (call.fields for call in road.platform.arrived)
    assert '"callback_data":"d:1:done"' in sent["reply_markup"].replace(": ", ":")
    assert (edit["message_id"], edit["text"]) == ("5001", "Day 1, noted")
    assert markup["message_id"] == "44"
    assert "chat_id" not in tap
    assert await road.states() == {"sent": 4}


async def test_a_picture_is_uploaded_once_and_then_named_by_its_id(road: Road) -> None:
    picture = await road.database.write(lambda session: attach(session, b"\x89PNG", "day.png"))
    for n in (1, 2):
        await road.put(f"p{n}", Kind.SESSION, method="send_photo", payload={"photo": picture, "caption": "Day"})
    async with road.sending():
        await until(road.all_final)
    first, second = (call.fields for call in road.platform.arrived)
    assert b"\x89PNG" in first.values()
    assert second["photo"] == "F1"
    async with road.database.reading() as session:
        assert (await found(session, picture["attachment"])).file_ids == {"100/photo": "F1"}


CARD = {"kind": "card", "of": {"title": "Day 1", "length": "", "parts": ["First: walk."], "caution": "Stop at pain."}}


async def put_drawn(road: Road, key: str, recipe: dict[str, Any], digest: str = "d1", **more: Any) -> int:
    picture = await road.database.write(lambda session: attach_recipe(session, digest, recipe, "card.png"))
    payload = {"photo": picture, "caption": f"<b>{key}</b>", "parse_mode": "HTML"}
    arguments: dict[str, Any] = {"kind": Kind.SESSION, "method": "send_photo", "payload": payload} | more
    return await road.put(key, **arguments)


async def test_a_picture_is_drawn_when_it_leaves_and_uploaded_once(road: Road) -> None:
    for n in (1, 2):
        await put_drawn(road, f"p{n}", CARD)
    async with road.sending():
        await until(road.all_final)
    first, second = (call.fields for call in road.platform.arrived)
    assert any(isinstance(value, bytes) and value.startswith(b"\x89PNG") for value in first.values())
    assert second["photo"] == "F1"


async def test_a_picture_that_cannot_be_drawn_leaves_its_words_to_go_alone(road: Road) -> None:
    first = await put_drawn(road, "Day 1", {"kind": "poem", "of": {}})
    await put_drawn(road, "Day 1, lighter", CARD, "d2", kind=Kind.EDIT, method="edit_message_media", edits=first)
    async with road.sending():
        await until(road.all_final)
    assert [call.method for call in road.platform.arrived] == ["sendMessage", "editMessageText"]
    assert road.platform.texts() == ["<b>Day 1</b>", "<b>Day 1, lighter</b>"]
    assert (await road.row(first)).method == "send_message"


async def test_new_words_do_not_stand_under_an_old_picture(road: Road) -> None:
    first = await put_drawn(road, "Day 1", CARD)
    changed = await put_drawn(
        road, "Lighter", {"kind": "poem", "of": {}}, "d2", kind=Kind.EDIT, method="edit_message_media", edits=first
    )
    async with road.sending():
        await until(lambda: road.is_in(first, "sent"))
        await road.database.write(lambda session: _soon(session, changed))
        await until(road.all_final)
    assert [call.method for call in road.platform.arrived] == ["sendPhoto", "sendMessage"]
    assert road.platform.texts()[-1] == "<b>Lighter</b>"


async def _soon(session: AsyncSession, row: int) -> None:
    """As if it had been tried often."""
    (await session.get_one(Outbox, row)).attempts = 9


async def test_two_marks_at_once_begin_a_message_once(road: Road) -> None:
    id_ = await road.put("x")
    arguments: dict[str, Any] = {"machine_now": 1e12, "now": NOON, "lease_seconds": 60.0, "limit": 5}
    await road.database.write(lambda session: letters.claim(session, "w", **arguments))
    mark = Mark(id_, "w", State.SENDING, NOON)
    held = await asyncio.gather(*(road.database.merged(marks.apply_marks, mark) for _ in range(2)))
    assert sorted(held) == [False, True]


async def test_a_pictures_words_and_picture_are_changed_in_their_own_ways(road: Road) -> None:
    first = await put_drawn(road, "Day 1", CARD)
    text = {"text": "Noted", "parse_mode": "HTML", "link_preview_options": {"is_disabled": True}}
    await road.put("noted", Kind.EDIT, method="edit_message_text", edits=first, payload=text)
    await put_drawn(road, "Lighter", CARD, "d2", kind=Kind.EDIT, method="edit_message_media", edits=first)
    async with road.sending():
        await until(road.all_final)
    _sent, noted, lighter = road.platform.arrived
    assert (noted.method, noted.fields["caption"], "text" in noted.fields) == ("editMessageCaption", "Noted", False)
    assert lighter.method == "editMessageMedia"
    media = json.loads(lighter.fields["media"])
    assert media == {"type": "photo", "media": "attach://photo", "caption": "<b>Lighter</b>", "parse_mode": "HTML"}
    assert any(isinstance(value, bytes) for value in lighter.fields.values())


async def test_a_file_that_the_platform_has_forgotten_is_uploaded_again(road: Road) -> None:
    picture = await road.database.write(lambda session: attach(session, b"\x89PNG", "day.png"))
    digest = picture["attachment"]
    await road.database.write(lambda session: remember_upload(session, digest, "100/photo", "old"))
    road.platform.next_up = [(400, "Bad Request: wrong file identifier/HTTP URL specified")]
    id_ = await road.put("p", Kind.SESSION, method="send_photo", payload={"photo": picture, "caption": "Day"})
    async with road.sending():
        await until(road.all_final)
    assert (await road.row(id_)).state == "sent"
    assert b"\x89PNG" in road.platform.arrived[-1].fields.values()
    async with road.database.reading() as session:
        assert (await found(session, digest)).file_ids == {"100/photo": "F2"}


async def test_a_picture_that_the_platform_refuses_goes_in_words(road: Road) -> None:
    picture = await road.database.write(lambda session: attach(session, b"\x89PNG", "day.png"))
    road.platform.next_up = [(400, "Bad Request: PHOTO_INVALID_DIMENSIONS")] * 2
    payload = {"photo": picture, "caption": "<b>Day</b>", "parse_mode": "HTML"}
    await road.put("p", Kind.SESSION, method="send_photo", payload=payload)
    async with road.sending():
        await until(road.all_final)
    assert road.platform.texts()[-1] == "Day"
    assert road.platform.arrived[-1].method == "sendMessage"


async def test_what_is_on_a_personal_picture_is_kept_with_its_message_and_goes_with_it(road: Road) -> None:
    photo = {"recipe": CARD, "digest": "mine", "filename": "progress.png"}
    id_ = await road.put("p", method="send_photo", payload={"photo": photo, "caption": "Your course"})
    async with road.sending():
        await until(road.all_final)
    assert any(isinstance(v, bytes) and v.startswith(b"\x89PNG") for v in road.platform.arrived[0].fields.values())
    row = await road.row(id_)
    assert (row.state, row.payload) == ("sent", {})
    async with road.database.reading() as session:
        assert (await session.scalars(select(Attachment))).all() == []


async def test_a_personal_file_travels_in_its_payload(road: Road) -> None:
    document = {"base64": base64.b64encode(b"a,b\n").decode(), "filename": "week.csv"}
    await road.put("d", method="send_document", payload={"document": document})
    async with road.sending():
        await until(road.all_final)
    assert b"a,b\n" in road.platform.arrived[0].fields.values()


@pytest.mark.parametrize(
    ("method", "payload"),
    [
        ("send_photo", {"photo": {"attachment": "00", "filename": "x"}}),
        ("send_document", {"document": {"filename": "x"}}),
    ],
)
async def test_a_payload_that_no_call_can_be_made_of_is_refused_alone(
    road: Road, method: str, payload: dict[str, Any]
) -> None:
    bad = await road.put("bad", method=method, payload=payload)
    await road.put("good")
    async with road.sending():
        await until(road.all_final)
    assert (await road.row(bad)).state == "refused"
    assert road.platform.texts() == ["good"]


async def test_a_chats_order_is_kept_and_many_chats_leave_at_once(road: Road) -> None:
    road.platform.hold = asyncio.Event()
    for n in range(40):
        await road.put(f"{n % 8}:{n:02}", chat=n % 8)
    async with road.sending():
        await until(lambda: road.platform.open == 8)
        road.platform.hold.set()
        await until(road.all_final)
    assert road.platform.most_open == 8
    for chat in range(8):
        mine = [text for text in road.platform.texts() if text.startswith(f"{chat}:")]
        assert mine == sorted(mine)
        assert len(mine) == 5


async def test_an_alert_overtakes_what_waits(road: Road) -> None:
    for n in range(3):
        await road.put(f"digest {n}", Kind.DIGEST, chat=n)
    await road.put("alert", Kind.ALERT, chat=9)
    async with road.sending(concurrency=1):
        await until(road.all_final)
    assert road.platform.texts()[0] == "alert"


async def test_never_more_than_the_budget_in_any_second(road: Road) -> None:
    clock = asyncio.get_running_loop().time
    for n in range(25):
        await road.put(f"{n}", chat=n)
    moments: list[float] = []
    async with road.sending(per_second=10):
        while len(moments) < 25:
            moments += [clock()] * (len(road.platform.arrived) - len(moments))
            await asyncio.sleep(0.01)
    assert max(sum(1 for other in moments if start <= other < start + 0.9) for start in moments) <= 10


async def test_an_alert_leaves_at_once_when_the_sessions_have_used_up_their_part_of_the_budget(road: Road) -> None:
    machine = SetMachine()
    sender = road.sender(machine=machine, per_second=20)
    for n in range(40):
        await road.put(f"session {n}", Kind.SESSION, chat=n)
    assert len(await sender.claim(64)) == 18
    assert await sender.claim(64) == []
    assert sender.more_behind
    assert await sender.idle_seconds() == pytest.approx(1.0)
    await road.put("alert", Kind.ALERT, chat=99)
    assert [letter.chat for letter in await sender.claim(64)] == [99]


async def test_a_second_of_the_budget_begins_when_a_request_leaves(road: Road) -> None:
    machine = SetMachine()
    sender = road.sender(machine=machine, per_second=1)
    await road.put("first", chat=1)
    await road.put("second", chat=2)
    [first] = await sender.claim(5)
    machine.at += 0.5
    await sender.work(first)
    machine.at += 0.75
    assert await sender.claim(5) == []
    machine.at += 0.25
    assert [letter.chat for letter in await sender.claim(5)] == [2]


async def test_a_chat_gets_no_second_message_within_its_pace(road: Road) -> None:
    clock = asyncio.get_running_loop().time
    await road.put("first")
    await road.put("second")
    async with road.sending(chat_pace=0.5):
        await until(lambda: len(road.platform.arrived) == 1)
        start = clock()
        await until(lambda: len(road.platform.arrived) == 2)
        assert 0.3 < clock() - start < 3.0


async def test_a_restart_does_not_end_a_pause_that_the_platform_asked_for(road: Road) -> None:
    machine = SetMachine()
    road.platform.next_up = [(429, "Too Many Requests", {"retry_after": 30})]
    refused = await road.put("first", chat=1)
    async with road.sending(machine=machine):
        await until(lambda: road.is_in(refused, State.WAITING) if road.platform.arrived else False)
    await road.put("second", chat=2)
    later = road.sender(machine=machine)
    await later.begin()
    machine.at += 29.0
    assert await later.claim(5) == []
    machine.at += 1.0
    assert sorted(letter.chat for letter in await later.claim(5)) == [1, 2]


async def test_too_many_pauses_everybody_and_loses_nothing(road: Road) -> None:
    road.platform.next_up = [(429, "Too Many Requests", {"retry_after": 1})]
    await road.put("first")
    async with road.sending(concurrency=1):
        await until(lambda: len(road.platform.arrived) == 1)
        await until(lambda: road.is_in(1, "waiting"))
        await road.put("other", chat=8)
        await asyncio.sleep(0.5)
        assert len(road.platform.arrived) == 1
        await until(road.all_final)
    assert sorted(road.platform.texts()) == ["first", "first", "other"]


@pytest.mark.parametrize("kind", [Kind.SESSION, Kind.ANSWER])
async def test_an_error_of_the_platform_is_tried_again_after_a_pause(road: Road, kind: Kind) -> None:
    road.platform.next_up = [(502, "Bad Gateway")]
    id_ = await road.put("x", kind)
    async with road.sending():
        await until(lambda: road.is_in(id_, "sent"))
    assert road.platform.texts() == ["x", "x"]
    assert (await road.row(id_)).attempts == 2


async def test_what_cannot_be_sent_before_it_is_late_is_skipped(road: Road) -> None:
    road.platform.next_up = [(502, "Bad Gateway")]
    id_ = await road.put("s", Kind.SESSION, late_after=NOON + timedelta(hours=1))
    async with road.sending():
        await until(lambda: len(road.platform.arrived) == 1)
        road.calendar.forward(hours=2)
        await until(lambda: road.is_in(id_, "skipped"))
    assert (await road.row(id_)).why == "late"
    assert len(road.platform.arrived) == 1


async def test_while_the_platform_is_away_everything_waits_and_then_arrives_once(tmp_path: Path) -> None:
    platform = FakePlatform()
    async with platform_running(platform) as url:
        pass
    async with database_in(tmp_path) as database, bot_at_once(url) as bot:
        road = Road(database, platform, bot)
        id_ = await road.put("s", Kind.SESSION)
        async with road.sending():
            await until(lambda: tried(road, id_))
            assert await road.is_in(id_, "waiting", "leased", "sending")
    assert platform.arrived == []


@asynccontextmanager
async def bot_at_once(url: str) -> AsyncIterator[Bot]:
    """A bot that does not ask who it is first, for a platform that is away."""
    from bot.transport import AiohttpRequest
    from tests.integration.fakes import TOKEN

    async with AiohttpRequest() as request:
        yield Bot(TOKEN, base_url=f"{url}/bot", request=request)


async def tried(road: Road, id_: int) -> bool:
    row = await road.row(id_)
    return row.attempts > 0 and row.why == "NeverConnected"


@pytest.mark.parametrize(
    ("kind", "state", "texts"),
    [
        (Kind.SESSION, "unknown", ["x"]),
        (Kind.DIGEST, "unknown", ["x"]),
        (Kind.ANSWER, "sent", ["x", "x"]),
        (Kind.ALERT, "sent", ["x", f"{REPEATED}\n\nx"]),
    ],
)
async def test_after_a_lost_answer_each_kind_goes_its_own_way(
    road: Road, kind: Kind, state: str, texts: list[str]
) -> None:
    road.platform.next_up = ["drop"]
    id_ = await road.put("x", kind)
    async with road.sending():
        await until(lambda: road.is_in(id_, "sent", "unknown"))
    assert (await road.row(id_)).state == state
    assert road.platform.texts() == texts


async def test_a_block_is_told_once_and_other_chats_go_on(road: Road) -> None:
    async def join(session: AsyncSession) -> None:
        session.add(Person(chat=7, label="Ada", created_at=NOON))

    await road.database.write(join)
    road.platform.next_up = [(403, "Forbidden: bot was blocked by the user")] * 2
    await road.put("a")
    await road.put("b")
    async with road.sending():
        await until(road.all_final)
        await road.put("c", chat=8)
        await until(road.all_final)
    assert road.unreachable == [7]
    assert await road.states() == {"refused": 2, "sent": 1}


@pytest.mark.parametrize(
    "description",
    ["Bad Request: message is not modified", "Bad Request: query is too old and response timeout expired"],
)
async def test_an_edit_that_changes_nothing_and_a_late_tap_are_done(road: Road, description: str) -> None:
    road.platform.next_up = [(400, description)]
    id_ = await road.put("x")
    async with road.sending():
        await until(lambda: road.is_in(id_, "sent"))
    assert len(road.platform.arrived) == 1


async def test_markup_that_the_platform_cannot_read_is_sent_as_plain_text(road: Road) -> None:
    road.platform.next_up = [(400, "Bad Request: can't parse entities")]
    id_ = await road.put("x", payload={"text": "<b>Day 1", "parse_mode": "HTML"})
    async with road.sending():
        await until(lambda: road.is_in(id_, "sent"))
    assert road.platform.texts() == ["<b>Day 1", "Day 1"]
    assert "parse_mode" not in road.platform.arrived[1].fields


async def test_a_refused_token_stops_the_sender_and_keeps_the_message(road: Road) -> None:
    road.platform.next_up = [(401, "Unauthorized")]
    id_ = await road.put("x")
    with pytest.raises(TokenRefused, match="EASEWARD_TOKEN"):
        await asyncio.wait_for(road.sender().run(), 10)
    assert await road.is_in(id_, "waiting")


async def test_a_stop_lets_what_is_under_way_finish_and_gives_the_rest_back(road: Road) -> None:
    road.platform.hold = asyncio.Event()
    await road.put("a")
    await road.put("b")
    sender = road.sender()
    task = asyncio.create_task(sender.run())
    await until(lambda: road.platform.open == 1)
    sender.stop()
    road.platform.hold.set()
    await task
    assert await road.states() == {"sent": 1, "waiting": 1}


@pytest.mark.parametrize(("kind", "state"), [(Kind.SESSION, "unknown"), (Kind.ANSWER, "waiting")])
async def test_a_cancelled_sender_writes_down_what_it_does_not_know(road: Road, kind: Kind, state: str) -> None:
    road.platform.hold = asyncio.Event()
    id_ = await road.put("x", kind)
    task = asyncio.create_task(road.sender().run())
    await until(lambda: road.platform.open == 1)
    task.cancel()
    await asyncio.gather(task, return_exceptions=True)
    assert (await road.row(id_)).state == state


async def test_a_process_that_died_before_the_request_loses_nothing(road: Road) -> None:
    id_ = await road.put("s", Kind.SESSION)
    await road.database.write(lambda session: claimed_by_dead(session))
    async with road.sending(machine=SetMachine(1.0)):
        await until(lambda: road.is_in(id_, "sent"))
    assert road.platform.texts() == ["s"]


@pytest.mark.parametrize(("kind", "state", "arrivals"), [(Kind.SESSION, "unknown", 0), (Kind.TAP, "sent", 1)])
async def test_a_process_that_died_during_the_request_sends_again_only_what_may_come_twice(
    road: Road, kind: Kind, state: str, arrivals: int
) -> None:
    more: dict[str, Any] = (
        {"method": "answer_callback_query", "payload": {"callback_query_id": "q"}} if kind is Kind.TAP else {}
    )
    id_ = await road.put("x", kind, **more)
    await road.database.write(lambda session: claimed_by_dead(session))
    assert await road.database.merged(marks.apply_marks, Mark(id_, "w", State.SENDING, NOON))
    async with road.sending():
        await until(lambda: road.is_in(id_, state))
    assert len(road.platform.arrived) == arrivals


async def claimed_by_dead(session: AsyncSession) -> None:
    """Leases everything as a process of the same name did that is gone now."""
    lasting = 1e9 if session.get_bind().dialect.name == "sqlite" else 0.0  # beside others only a lease's end counts
    await letters.claim(session, "w", machine_now=1.0, now=NOON, lease_seconds=lasting, limit=10)


async def test_a_worker_that_slept_past_its_lease_sends_nothing_twice(road: Road) -> None:
    machine = SetMachine(0.0)
    id_ = await road.put("s", Kind.SESSION)
    slow = road.sender(machine=machine)
    (letter,) = await slow.claim(1)
    machine.at += LEASE_SECONDS + 1
    quick = road.sender(machine=machine)
    (again,) = await quick.claim(1)
    assert again.id == letter.id == id_
    await asyncio.gather(quick.work(again), slow.work(letter))
    assert road.platform.texts() == ["s"]
    assert await road.is_in(id_, "sent")


async def test_what_another_worker_left_half_sent_is_dealt_with_when_its_lease_is_over(road: Road) -> None:
    machine = SetMachine(0.0)
    answer, session = await road.put("a"), await road.put("s", Kind.SESSION)
    dead, alive = road.sender(machine=machine), road.sender(machine=machine)
    (letter,) = await dead.claim(1)
    assert await road.database.merged(marks.apply_marks, Mark(letter.id, dead._worker, State.SENDING, NOON))
    assert await alive.claim(5) == []
    machine.at += LEASE_SECONDS + 1
    assert [row.id for row in await alive.claim(5)] == [session]
    assert await road.is_in(answer, "waiting")


async def test_two_hundred_messages_under_faults_arrive_as_often_as_their_kind_allows(road: Road) -> None:
    faults: list[Any] = ["ok", "drop", (502, "Bad Gateway")]
    road.platform.next_up = [faults[n % 3] for n in range(90)]
    road.platform.next_up[50] = (429, "Too Many Requests", {"retry_after": 0.2})
    for n in range(200):
        await road.put(f"m{n}", Kind.SESSION if n % 2 else Kind.ANSWER, chat=n % 50)
    async with road.sending():
        await until(road.all_final, seconds=60)
    async with road.database.reading() as session:
        rows = (await session.scalars(select(Outbox))).all()
    assert {row.state for row in rows} == {"sent", "unknown"}
    assert all(row.kind == "session" for row in rows if row.state == "unknown")
    delivered = road.platform.texts()
    assert all(row.key in delivered for row in rows)


async def test_a_pause_that_one_worker_was_told_holds_for_all_of_them(road: Road) -> None:
    clock = asyncio.get_running_loop().time
    road.platform.next_up = [(429, "Too Many Requests", {"retry_after": 1.5})]
    await road.put("first", chat=1)
    async with road.sending(), road.sending():
        await until(lambda: len(road.platform.arrived) == 1)
        told = clock()
        for n in range(20):
            await road.put(f"m{n}", chat=10 + n)
        await until(lambda: len(road.platform.arrived) > 1)
        assert clock() - told > 1.3
        await until(road.all_final)
    assert len(road.platform.arrived) == 22


async def test_many_workers_together_keep_the_budget(road: Road) -> None:
    clock = asyncio.get_running_loop().time
    for n in range(25):
        await road.put(f"{n}", chat=n)
    moments: list[float] = []
    async with road.sending(per_second=10), road.sending(per_second=10), road.sending(per_second=10):
        while len(moments) < 25:
            moments += [clock()] * (len(road.platform.arrived) - len(moments))
            await asyncio.sleep(0.01)
    assert max(sum(1 for other in moments if start <= other < start + 0.9) for start in moments) <= 10


async def test_an_alert_leaves_before_thousands_of_sessions_that_wait(road: Road) -> None:
    for n in range(300):
        await road.put(f"s{n}", Kind.SESSION, chat=n)
    async with road.sending(per_second=60, concurrency=4):
        await until(lambda: len(road.platform.arrived) >= 20)
        at = len(road.platform.arrived)
        await road.put("alert", Kind.ALERT, chat=9000)
        await until(lambda: "alert" in road.platform.texts())
        assert road.platform.texts().index("alert") - at <= 70, "at most what was granted for one second"
