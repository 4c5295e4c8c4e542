"""Troubles on demand: what the bot sees, and whether its request took effect."""

from __future__ import annotations

import aiohttp
import pytest
from telegram import Bot

from bot.practice.faults import Fault, Trouble
from bot.transport import AiohttpRequest, AnswerLost
from tests.integration.practice.places import ANN, TOKEN, Place


def texts(here: Place) -> list[str]:
    """What the bot has said to Ann."""
    return [message["text"] for _change, message in here.platform.messages(ANN, after=1)]


async def test_a_lost_request_has_no_effect_and_a_lost_answer_has_one(here: Place) -> None:
    here.faults.plan("sendMessage", Fault(Trouble.LOSE_REQUEST))
    here.faults.plan("sendMessage", Fault(Trouble.LOSE_ANSWER))
    with pytest.raises(aiohttp.ServerDisconnectedError):
        await here.call("sendMessage", chat_id=ANN, text="one")
    assert texts(here) == []
    with pytest.raises(aiohttp.ServerDisconnectedError):
        await here.call("sendMessage", chat_id=ANN, text="two")
    assert texts(here) == ["two"]
    assert (await here.call("sendMessage", chat_id=ANN, text="three"))[0] == 200
    assert texts(here) == ["two", "three"]


async def test_our_own_transport_sees_a_lost_answer_as_one(here: Place) -> None:
    here.faults.plan("sendMessage", Fault(Trouble.LOSE_ANSWER))
    bot = Bot(TOKEN, base_url=f"{here.address}/bot", request=AiohttpRequest(), get_updates_request=AiohttpRequest())
    async with bot:
        with pytest.raises(AnswerLost):
            await bot.send_message(ANN, "one")
        assert texts(here) == ["one"]


async def test_server_errors_and_floods_are_answered_before_anything_happens(here: Place) -> None:
    here.faults.plan("sendmessage", Fault(Trouble.SERVER_ERROR))
    here.faults.plan("sendMessage", Fault(Trouble.TOO_MANY, times=2, seconds=7))
    status, body = await here.call("sendMessage", chat_id=ANN, text="one")
    assert (status, body["description"]) == (502, "Bad Gateway")
    assert here.faults.left() == {"sendmessage": 2}
    for _time in range(2):
        status, body = await here.call("sendMessage", chat_id=ANN, text="one")
        assert (status, body["parameters"]) == (429, {"retry_after": 7})
    assert texts(here) == []
    assert (await here.call("sendMessage", chat_id=ANN, text="one"))[0] == 200


async def test_a_slow_answer_comes_late_and_other_methods_are_not_slowed(here: Place) -> None:
    here.faults.plan("sendMessage", Fault(Trouble.SLOW, seconds=30))
    with pytest.raises(TimeoutError):
        async with here.http.post(
            f"{here.address}/bot{TOKEN}/sendMessage", timeout=aiohttp.ClientTimeout(total=0.2)
        ) as answer:
            raise AssertionError(f"answered {answer.status}")
    assert (await here.call("getMe"))[0] == 200


async def test_a_file_can_be_lost_on_its_way(here: Place) -> None:
    here.platform.send_document(ANN, "a.yaml", b"x")
    _change, message = here.platform.messages(ANN)[-1]
    file = await here.result("getFile", file_id=message["document"]["file_id"])
    here.faults.plan("file", Fault(Trouble.SERVER_ERROR))
    address = f"{here.address}/file/bot{TOKEN}/{file['file_path']}"
    async with here.http.get(address) as answer:
        assert answer.status == 502
    async with here.http.get(address) as answer:
        assert await answer.read() == b"x"


async def test_troubles_can_be_asked_for_over_http_where_they_are_allowed(here: Place) -> None:
    assert await here.post("fault", method="sendMessage", what="too-many", times=1, seconds=3) == (200, {})
    status, body = await here.call("sendMessage", chat_id=ANN, text="one")
    assert (status, body["parameters"]) == (429, {"retry_after": 3})


async def test_a_trouble_for_messages_is_for_whatever_the_bot_says_next(here: Place) -> None:
    await here.post("fault", method="messages", what="server-error", times=2)
    assert (await here.call("getMe"))[0] == 200
    assert (await here.call("sendChatAction", chat_id=ANN, action="typing"))[0] == 200
    assert await here.get("faults") == (200, {"messages": 2})
    assert (await here.call("sendMessage", chat_id=ANN, text="one"))[0] == 502
    assert (await here.call("editMessageText", chat_id=ANN, message_id=1, text="one"))[0] == 502
    assert (await here.call("sendMessage", chat_id=ANN, text="one"))[0] == 200
    assert await here.get("faults") == (200, {})


async def test_a_trouble_for_one_method_goes_before_one_for_all_messages(here: Place) -> None:
    here.faults.plan("messages", Fault(Trouble.TOO_MANY))
    here.faults.plan("sendMessage", Fault(Trouble.SERVER_ERROR))
    assert (await here.call("sendMessage", chat_id=ANN, text="one"))[0] == 502
    assert (await here.call("sendMessage", chat_id=ANN, text="one"))[0] == 429
