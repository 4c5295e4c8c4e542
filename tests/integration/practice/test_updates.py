"""How updates are fetched, confirmed, held back and delivered."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from typing import Any

import pytest
from aiohttp import web
from aiohttp.test_utils import TestServer
from telegram import Bot
from telegram.error import Conflict

from tests.integration.practice.places import ANN, BEN, Place

SECRET = "a-Secret_1"


async def test_an_update_comes_again_until_a_higher_offset_confirms_it(bot: Bot, here: Place) -> None:
    for text in ("one", "two", "three"):
        here.platform.say(ANN, text)
    first = await bot.get_updates()
    assert [update.update_id for update in await bot.get_updates()] == [update.update_id for update in first]
    assert [update.update_id - first[0].update_id for update in first] == [0, 1, 2]
    rest = await bot.get_updates(offset=first[1].update_id)
    assert [u.message.text for u in rest if u.message] == ["two", "three"]
    assert here.platform.unconfirmed() == ["2 updates are not fetched yet"]
    assert await bot.get_updates(offset=first[2].update_id + 1) == ()
    assert here.platform.unconfirmed() == []


async def test_a_negative_offset_keeps_only_the_last_ones(bot: Bot, here: Place) -> None:
    for text in ("one", "two", "three"):
        here.platform.say(ANN, text)
    assert [u.message.text for u in await bot.get_updates(offset=-2) if u.message] == ["two", "three"]
    assert [u.message.text for u in await bot.get_updates() if u.message] == ["two", "three"]


async def test_a_long_poll_answers_as_soon_as_somebody_speaks(here: Place) -> None:
    waiting = asyncio.create_task(here.result("getUpdates", timeout=30))
    await asyncio.sleep(0.05)
    assert not waiting.done()
    here.platform.say(BEN, "Hello", first_name="Ben")
    (update,) = await asyncio.wait_for(waiting, 2)
    assert update["message"]["from"] == {"id": BEN, "is_bot": False, "first_name": "Ben", "language_code": "en"}


async def test_a_long_poll_in_which_nobody_speaks_ends_empty(here: Place) -> None:
    assert await here.result("getUpdates", timeout=1) == []


async def test_a_second_poller_ends_the_first(bot: Bot, here: Place) -> None:
    first = asyncio.create_task(bot.get_updates(timeout=30))
    await asyncio.sleep(0.05)
    second = asyncio.create_task(here.result("getUpdates", timeout=30))
    with pytest.raises(Conflict, match="terminated by other getUpdates request; make sure that only one bot"):
        await asyncio.wait_for(first, 2)
    here.platform.say(ANN, "Still there?")
    assert len(await asyncio.wait_for(second, 2)) == 1


async def test_updates_that_were_not_asked_for_are_not_kept(bot: Bot, here: Place) -> None:
    await bot.get_updates(allowed_updates=["message"])
    here.platform.block(ANN, True)
    here.platform.block(ANN, False)
    here.platform.say(ANN, "Back")
    (update,) = await bot.get_updates()
    assert update.message is not None
    await bot.get_updates(offset=update.update_id + 1, allowed_updates=[])
    here.platform.block(ANN, True)
    assert len(await bot.get_updates()) == 1


# --- webhooks -----------------------------------------------------------------------------------------------------


@dataclass(slots=True)
class Ear:
    """A webhook that remembers what it was told, and fails as often as it is told to."""

    address: str = ""
    failures: int = 0
    heard: list[tuple[str | None, dict[str, Any]]] = field(default_factory=list)
    tries: int = 0
    at_once: int = 0
    most_at_once: int = 0

    async def hear(self, request: web.Request) -> web.Response:
        self.tries += 1
        self.at_once += 1
        self.most_at_once = max(self.most_at_once, self.at_once)
        await asyncio.sleep(0.01)
        self.at_once -= 1
        if self.failures:
            self.failures -= 1
            return web.Response(status=503)
        self.heard.append((request.headers.get("X-Telegram-Bot-Api-Secret-Token"), await request.json()))
        return web.Response()

    @property
    def texts(self) -> list[str]:
        return [update["message"]["text"] for _secret, update in self.heard]


@asynccontextmanager
async def ear() -> AsyncIterator[Ear]:
    found = Ear()
    app = web.Application()
    app.router.add_post("/hook", found.hear)
    async with TestServer(app) as server:
        found.address = str(server.make_url("/hook"))
        yield found


async def until(seconds: float, done: Any) -> None:
    async with asyncio.timeout(seconds):
        while not done():
            await asyncio.sleep(0.01)


async def test_a_webhook_is_told_of_every_update_in_order_one_after_another_with_the_secret(
    bot: Bot, here: Place
) -> None:
    async with ear() as hook:
        here.platform.say(ANN, "before")
        await bot.set_webhook(hook.address, secret_token=SECRET)
        for number in range(5):
            here.platform.say(ANN, str(number))
        await until(5, lambda: len(hook.heard) == 6)
        assert hook.texts == ["before", "0", "1", "2", "3", "4"]
        assert {secret for secret, _update in hook.heard} == {SECRET}
        assert hook.most_at_once == 1
        await until(5, lambda: not here.platform.unconfirmed())


async def test_an_update_that_a_webhook_refused_is_told_again_before_the_next(bot: Bot, here: Place) -> None:
    async with ear() as hook:
        hook.failures = 2
        await bot.set_webhook(hook.address)
        here.platform.say(ANN, "one")
        here.platform.say(ANN, "two")
        await until(2, lambda: hook.tries == 1)
        await asyncio.sleep(0.1)
        info = await bot.get_webhook_info()
        assert (info.url, info.pending_update_count) == (hook.address, 2)
        assert info.last_error_message == "Wrong response from the webhook: 503 Service Unavailable"
        await until(10, lambda: len(hook.heard) == 2)
        assert (hook.texts, hook.tries) == (["one", "two"], 4)
        assert {secret for secret, _update in hook.heard} == {None}


async def test_a_webhook_that_nobody_answers_is_tried_again_when_it_does(bot: Bot, here: Place) -> None:
    async with ear() as hook:
        address = hook.address
    await bot.set_webhook(address)
    here.platform.say(ANN, "one")
    async with asyncio.timeout(5):
        while (info := await bot.get_webhook_info()).last_error_message is None:
            await asyncio.sleep(0.02)
    assert info.last_error_message == "Connection refused"
    async with ear() as hook:
        await bot.set_webhook(hook.address)
        await until(5, lambda: hook.texts == ["one"])


async def test_with_a_webhook_nobody_can_poll_and_without_it_one_can_again(bot: Bot, here: Place) -> None:
    polling = asyncio.create_task(here.call("getUpdates", timeout=30))
    await asyncio.sleep(0.05)
    await bot.set_webhook("http://127.0.0.1:9/")
    status, body = await asyncio.wait_for(polling, 2)
    assert (status, body["description"]) == (409, "Conflict: terminated by setWebhook request")
    with pytest.raises(Conflict, match="can't use getUpdates method while webhook is active"):
        await bot.get_updates()
    here.platform.say(ANN, "one")
    await bot.delete_webhook()
    assert (await bot.get_webhook_info()).url == ""
    assert len(await bot.get_updates()) == 1


async def test_waiting_updates_can_be_dropped_when_a_webhook_goes(bot: Bot, here: Place) -> None:
    here.platform.say(ANN, "one")
    await bot.delete_webhook(drop_pending_updates=True)
    assert await bot.get_updates() == ()


@pytest.mark.parametrize(
    ("fields", "words"),
    [
        ({"url": "ftp://127.0.0.1/"}, "bad webhook: URL is invalid"),
        ({"url": "http://127.0.0.1/", "secret_token": "no spaces"}, "secret token contains unallowed characters"),
        ({"url": "http://127.0.0.1/", "allowed_updates": "message"}, "can't parse allowed_updates"),
    ],
)
async def test_a_webhook_that_makes_no_sense_is_refused(here: Place, fields: dict[str, str], words: str) -> None:
    status, body = await here.call("setWebhook", **fields)
    assert status == 400
    assert words in body["description"]
    assert (await here.result("getWebhookInfo"))["url"] == ""
