"""Every limit of the table: one request at it and one over it.

Source of the numbers: the Bot API's reference, version 10.1; of the words: answers of the platform as bot writers
report them.
"""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Mapping
from datetime import timedelta
from typing import Any

import pytest

from bot.practice.limits import LIMITS
from tests.integration.practice.places import ANN, Place, png

Answer = tuple[int, dict[str, Any]]
Request = Callable[[Place, int], Awaitable[Answer]]


async def _send(here: Place, **fields: Any) -> Answer:
    return await here.call("sendMessage", chat_id=ANN, **fields)


async def _text(here: Place, count: int) -> Answer:
    return await _send(here, text="é" * count)


async def _text_of_wide_characters(here: Place, count: int) -> Answer:
    """A character outside the first 65,536 is two units; an odd one is made up by a plain letter."""
    return await _send(here, text="\U0001f9d8" * (count // 2) + "a" * (count % 2))


async def _text_in_markup(here: Place, count: int) -> Answer:
    return await _send(here, text=f"<b>{'&amp;' * count}</b>", parse_mode="HTML")


async def _caption(here: Place, count: int) -> Answer:
    return await here.upload("sendPhoto", "photo", png(4, 4), chat_id=str(ANN), caption="a" * count)


async def _caption_of_a_document(here: Place, count: int) -> Answer:
    fields = {"chat_id": str(ANN), "caption": f"<i>{'a' * count}</i>", "parse_mode": "HTML"}
    return await here.upload("sendDocument", "document", b"x", **fields)


async def _callback_data(here: Place, count: int) -> Answer:
    rows = [[{"text": "Go", "callback_data": "é" * (count // 2) + "a" * (count % 2)}]]
    return await _send(here, text="x", reply_markup={"inline_keyboard": rows})


async def _row(here: Place, count: int) -> Answer:
    row = [{"text": str(n), "callback_data": str(n)} for n in range(count)]
    return await _send(here, text="x", reply_markup={"inline_keyboard": [row]})


async def _buttons(here: Place, count: int) -> Answer:
    rows = [[{"text": str(n), "callback_data": str(n)}] for n in range(count)]
    return await _send(here, text="x", reply_markup={"inline_keyboard": rows})


async def _tap_answer(here: Place, count: int) -> Answer:
    tap = here.platform.forge_tap(ANN, 1, "x")
    return await here.call("answerCallbackQuery", callback_query_id=tap, text="a" * count)


async def _command_name(here: Place, count: int) -> Answer:
    return await here.call("setMyCommands", commands=[{"command": "a" * count, "description": "x"}])


async def _command_description(here: Place, count: int) -> Answer:
    return await here.call("setMyCommands", commands=[{"command": "a", "description": "x" * count}])


async def _commands(here: Place, count: int) -> Answer:
    commands = [{"command": f"c{n}", "description": "x"} for n in range(count)]
    return await here.call("setMyCommands", commands=commands)


async def _start_parameter(here: Place, count: int) -> Answer:
    return await here.post("open", chat=ANN, start="A" * count)


async def _webhook_secret(here: Place, count: int) -> Answer:
    return await here.call("setWebhook", url="http://127.0.0.1:9/", secret_token="a" * count)


async def _photo(here: Place, count: int) -> Answer:
    body = png(4, 4, size=count) if count else b""
    return await here.upload("sendPhoto", "photo", body, chat_id=str(ANN))


async def _photo_sides(here: Place, count: int) -> Answer:
    return await here.upload("sendPhoto", "photo", png(count // 2, -(-count // 2)), chat_id=str(ANN))


async def _photo_shape(here: Place, count: int) -> Answer:
    return await here.upload("sendPhoto", "photo", png(2 * count, 2), chat_id=str(ANN))


async def _album(here: Place, count: int) -> Answer:
    here.platform.send_photo(ANN, png(4, 4))
    kept = here.platform.messages(ANN)[-1][1]["photo"][-1]["file_id"]
    return await here.call("sendMediaGroup", chat_id=ANN, media=[{"type": "photo", "media": kept}] * count)


async def _document(here: Place, count: int) -> Answer:
    return await here.upload("sendDocument", "document", bytes(count), chat_id=str(ANN))


async def _fetched_file(here: Place, count: int) -> Answer:
    message = here.platform.send_document(ANN, "a.bin", bytes(count)) if count else 0
    ((_change, body),) = here.platform.messages(ANN, after=message - 1)
    return await here.call("getFile", file_id=body["document"]["file_id"])


async def _deleted_after(here: Place, hours: int) -> Answer:
    message = await here.result("sendMessage", chat_id=ANN, text="x")
    here.calendar.put(here.calendar.now() + timedelta(hours=hours - 1, seconds=1))
    return await here.call("deleteMessage", chat_id=ANN, message_id=message["message_id"])


REFUSED: Mapping[str, tuple[Request, ...]] = {
    "text": (_text, _text_of_wide_characters, _text_in_markup),
    "caption": (_caption, _caption_of_a_document),
    "callback data": (_callback_data,),
    "buttons in a row": (_row,),
    "buttons": (_buttons,),
    "tap answer": (_tap_answer,),
    "command name": (_command_name,),
    "command description": (_command_description,),
    "commands": (_commands,),
    "start parameter": (_start_parameter,),
    "webhook secret": (_webhook_secret,),
    "photo": (_photo,),
    "photo sides": (_photo_sides,),
    "photo shape": (_photo_shape,),
    "album": (_album,),
    "document": (_document,),
    "file to fetch": (_fetched_file,),
    "hours until deleting": (_deleted_after,),
}
CASES = [
    pytest.param(name, request_, id=f"{name}:{request_.__name__}") for name in REFUSED for request_ in REFUSED[name]
]

WORDS: Mapping[str, tuple[int, str]] = {
    "text": (400, "Bad Request: message is too long"),
    "caption": (400, "Bad Request: message caption is too long"),
    "callback data": (400, "Bad Request: BUTTON_DATA_INVALID"),
    "buttons in a row": (400, "Bad Request: too many buttons in a row"),
    "buttons": (400, "Bad Request: reply markup is too long"),
    "tap answer": (400, "Bad Request: MESSAGE_TOO_LONG"),
    "command name": (400, "Bad Request: BOT_COMMAND_INVALID"),
    "command description": (400, "Bad Request: BOT_COMMAND_DESCRIPTION_INVALID"),
    "commands": (400, "Bad Request: BOT_COMMANDS_TOO_MUCH"),
    "webhook secret": (400, "Bad Request: secret token is too long"),
    "photo": (
        400,
        "Bad Request: file of size 10485761 bytes is too big for a photo; the maximum size is 10485760 bytes",
    ),
    "photo sides": (400, "Bad Request: PHOTO_INVALID_DIMENSIONS"),
    "photo shape": (400, "Bad Request: PHOTO_INVALID_DIMENSIONS"),
    "album": (400, "Bad Request: too many files in the album"),
    "document": (413, "Request Entity Too Large"),
    "file to fetch": (400, "Bad Request: file is too big"),
    "hours until deleting": (400, "Bad Request: message can't be deleted for everyone"),
}

HIGHEST: Mapping[str, int] = {
    "text": 4096,
    "caption": 1024,
    "callback data": 64,
    "buttons in a row": 8,
    "buttons": 100,
    "tap answer": 200,
    "command name": 32,
    "command description": 256,
    "commands": 100,
    "start parameter": 64,
    "webhook secret": 256,
    "photo": 10 * 1024 * 1024,
    "photo sides": 10_000,
    "photo shape": 20,
    "album": 10,
    "document": 50 * 1024 * 1024,
    "file to fetch": 20 * 1024 * 1024,
    "hours until deleting": 48,
}


def test_every_limit_of_the_table_is_tried_here() -> None:
    nearest = {"updates at once", "long poll", "webhook connections"}
    assert set(LIMITS) == set(HIGHEST) | nearest
    assert {name: LIMITS[name].high for name in HIGHEST} == HIGHEST
    assert set(REFUSED) == set(HIGHEST)


@pytest.mark.parametrize(("name", "send"), CASES)
async def test_what_is_just_at_the_limit_is_taken(here: Place, name: str, send: Request) -> None:
    status, body = await send(here, HIGHEST[name])
    assert status == 200, body


@pytest.mark.parametrize(("name", "send"), CASES)
async def test_what_is_one_over_the_limit_is_refused_in_the_platforms_words(
    here: Place, name: str, send: Request
) -> None:
    status, body = await send(here, HIGHEST[name] + 1)
    if name == "start parameter":
        assert (status, body) == (400, {"error": "Bad Request: start parameter is too long"})
    else:
        code, words = WORDS[name]
        assert status == code
        assert body == {"ok": False, "error_code": code, "description": words}


@pytest.mark.parametrize(
    ("send", "words"),
    [
        (_text, "message text is empty"),
        (_callback_data, "BUTTON_DATA_INVALID"),
        (_command_name, "BOT_COMMAND_INVALID"),
        (_command_description, "BOT_COMMAND_DESCRIPTION_INVALID"),
        (_photo, "file must be non-empty"),
        (_document, "file must be non-empty"),
        (_album, "too few files in the album"),
    ],
)
async def test_what_may_not_be_empty_is_refused_when_it_is(here: Place, send: Request, words: str) -> None:
    status, body = await send(here, 0)
    assert (status, body["description"]) == (400, f"Bad Request: {words}")


async def test_at_most_a_hundred_updates_come_at_once_whatever_was_asked_for(here: Place) -> None:
    for number in range(101):
        here.platform.say(ANN, str(number))
    assert len(await here.result("getUpdates", limit=101)) == 100
    assert len(await here.result("getUpdates", limit=100)) == 100
    assert len(await here.result("getUpdates", limit=0)) == 1


async def test_more_webhook_connections_than_there_may_be_are_as_many_as_there_may_be(here: Place) -> None:
    await here.result("setWebhook", url="http://127.0.0.1:9/", max_connections=101)
    assert (await here.result("getWebhookInfo"))["max_connections"] == 100


def test_a_long_poll_waits_fifty_seconds_at_most() -> None:
    assert [LIMITS["long poll"].nearest(seconds) for seconds in (-1, 0, 50, 51)] == [0, 0, 50, 50]
