"""The platform as a process of its own: on the real clock, and killed without warning."""

from __future__ import annotations

import asyncio
import signal
import sys
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import aiohttp
import pytest
from telegram import Bot

from bot.practice.clock import StandingCalendar
from bot.practice.store import Store
from tests.integration.practice.places import ANN, START, TOKEN, Side, png


@dataclass
class Alone(Side):
    """The process and its address."""

    process: asyncio.subprocess.Process

    async def kill(self) -> None:
        self.process.send_signal(signal.SIGKILL)
        await self.process.wait()


@asynccontextmanager
async def alone(*words: str) -> AsyncIterator[Alone]:
    process = await asyncio.create_subprocess_exec(
        sys.executable, "-m", "bot.practice", "--token", TOKEN, *words, stdout=asyncio.subprocess.PIPE
    )
    try:
        if process.stdout is None:
            raise RuntimeError("the process has no output to read")
        line = await asyncio.wait_for(process.stdout.readline(), 30)
        async with aiohttp.ClientSession() as http:
            yield Alone(line.decode().strip(), http, process)
    finally:
        if process.returncode is None:
            process.terminate()
        await asyncio.wait_for(process.wait(), 10)


async def test_what_was_acknowledged_survives_a_kill(tmp_path: Path) -> None:
    buttons = {"inline_keyboard": [[{"text": "All done", "callback_data": "d"}]]}
    async with alone("--data", str(tmp_path)) as first, first.bot() as bot:
        await first.post("say", chat=ANN, text="one", first_name="Ann")
        await first.post("say", chat=ANN, text="two")
        (confirmed, waiting) = await bot.get_updates()
        await bot.get_updates(offset=confirmed.update_id + 1)
        sent = await bot.send_photo(ANN, png(30, 40), caption="Day 3", reply_markup=buttons)  # type: ignore[arg-type]
        await bot.edit_message_caption(ANN, sent.message_id, caption="Day 4")
        tapped = await bot.send_message(ANN, "x", reply_markup=buttons)  # type: ignore[arg-type]
        _status, tap = await first.post("tap", chat=ANN, message=tapped.message_id, button="All done")
        await bot.set_my_commands([("today", "Show today's")])
        await first.post("block", chat=ANN, on=True)
        await first.kill()
    async with alone("--data", str(tmp_path)) as second, second.bot() as bot:
        updates = await bot.get_updates()
        assert [u.update_id - confirmed.update_id for u in updates] == [1, 2, 3]
        assert updates[0] == waiting
        assert updates[1].callback_query is not None
        assert updates[2].my_chat_member is not None
        async with second.http.get(f"{second.address}/practice/messages?chat={ANN}") as answer:
            shown = await answer.json()
        assert [(message["text"], message["edited"]) for message in shown] == [
            ("one", 0),
            ("two", 0),
            ("Day 4", 1),
            ("x", 0),
        ]
        file = await bot.get_file(sent.photo[-1].file_id)
        assert bytes(await file.download_as_bytearray()) == png(30, 40)
        assert await bot.answer_callback_query(tap["tap"])
        assert [command.command for command in await bot.get_my_commands()] == ["today"]
        assert (await second.post("say", chat=ANN, text="x"))[0] == 400
        await second.post("block", chat=ANN, on=False)
        assert (await bot.send_message(ANN, "y")).message_id == tapped.message_id + 1


async def test_of_many_messages_none_that_was_answered_is_lost_in_a_kill(tmp_path: Path) -> None:
    answered: list[int] = []

    async def keep_sending(bot: Bot) -> None:
        while True:
            answered.append((await bot.send_message(ANN, "x")).message_id)

    async with alone("--data", str(tmp_path)) as first, first.bot() as bot:
        await first.post("say", chat=ANN, text="Hello")
        sending = asyncio.create_task(keep_sending(bot))
        while len(answered) < 50:
            await asyncio.sleep(0.01)
        await first.kill()
        await asyncio.wait([sending])
        assert sending.exception() is not None
    async with (
        alone("--data", str(tmp_path)) as second,
        second.http.get(f"{second.address}/practice/messages?chat={ANN}") as answer,
    ):
        kept = {message["id"] for message in await answer.json()}
    assert set(answered) <= kept
    assert len(kept - set(answered)) <= 2


async def test_alone_the_clock_is_the_real_one_and_cannot_be_moved() -> None:
    async with alone("--faults", "--rate", "1") as here, here.bot() as bot:
        status, body = await here.post("clock", days=1)
        assert (status, body) == (400, {"error": "the calendar here is the real one: it cannot be moved"})
        async with here.http.get(f"{here.address}/practice/clock") as answer:
            now = datetime.fromisoformat((await answer.json())["now"])
        assert abs(now - datetime.now(UTC)) < timedelta(minutes=1)
        await here.post("say", chat=ANN, text="Hello")
        assert abs((await bot.send_message(ANN, "x")).date - now) < timedelta(minutes=1)
        async with here.http.post(
            f"{here.address}/bot{TOKEN}/sendMessage", json={"chat_id": ANN, "text": "y"}
        ) as answer:
            assert answer.status == 429
        assert (await here.post("fault", method="getMe", what="server-error")) == (200, {})


async def test_without_leave_nothing_can_be_made_to_go_wrong() -> None:
    async with alone() as here, here.http.post(f"{here.address}/practice/fault", json={}) as answer:
        assert answer.status == 404


def test_a_standing_calendar_goes_forward_only_and_stays_where_it_was_put(tmp_path: Path) -> None:
    with Store(tmp_path / "chats.sqlite") as store:
        calendar = StandingCalendar(store, START)
        calendar.put(START + timedelta(days=3))
        with pytest.raises(ValueError, match="the calendar only goes forward"):
            calendar.put(START)
    with Store(tmp_path / "chats.sqlite") as store:
        assert StandingCalendar(store, START).now() == START + timedelta(days=3)
