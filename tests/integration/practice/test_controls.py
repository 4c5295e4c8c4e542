"""People's side over HTTP: what they do, what they see, and what is wrong with a request."""

from __future__ import annotations

import asyncio
import base64
from datetime import datetime, timedelta
from typing import Any

import pytest

from bot.practice.clock import Unsettled
from tests.integration.practice.places import ANN, BEN, START, Place, StepByStep, place, png

ROWS = {
    "inline_keyboard": [
        [{"text": "All done", "callback_data": "d:1"}, {"text": "Not today", "callback_data": "n:1"}],
        [{"text": "Recording", "url": "https://example.org/clip"}],
    ]
}


async def test_somebody_unknown_who_speaks_is_a_new_person(here: Place) -> None:
    assert await here.post("say", chat=BEN, text="Hello", first_name="Ben") == (200, {"id": 2})
    assert await here.post("say", chat=103, text="Hello") == (200, {"id": 3})
    assert await here.get("chats") == (
        200,
        [
            {"id": ANN, "name": "Ann", "blocked": False, "last": 1},
            {"id": BEN, "name": "Ben", "blocked": False, "last": 2},
            {"id": 103, "name": "Person 103", "blocked": False, "last": 3},
        ],
    )


async def test_a_message_is_shown_plain_and_as_safe_html_with_its_buttons(here: Place) -> None:
    text = '<b>3 &lt; 4</b> \U0001f9d8 <a href="https://example.org/?a=1&amp;b=2">here</a>'
    await here.result("sendMessage", chat_id=ANN, text=text, parse_mode="HTML", reply_markup=ROWS)
    status, (message,) = await here.get("messages", chat=ANN, after=1)
    assert status == 200
    assert {name: message[name] for name in ("id", "from", "text", "at", "edited")} == {
        "id": 2,
        "from": "bot",
        "text": "3 < 4 \U0001f9d8 here",
        "at": "2026-03-02T07:00:00Z",
        "edited": 0,
    }
    assert message["html"] == (
        '<b>3 &lt; 4</b> \U0001f9d8 <a href="https://example.org/?a=1&amp;b=2" rel="noreferrer">here</a>'
    )
    assert message["buttons"] == [
        [{"label": "All done", "data": "d:1"}, {"label": "Not today", "data": "n:1"}],
        [{"label": "Recording", "data": None, "url": "https://example.org/clip"}],
    ]


async def test_what_a_person_types_is_never_markup(here: Place) -> None:
    await here.post("say", chat=ANN, text="<script>alert(1)</script> & <b>x</b>")
    _status, (message,) = await here.get("messages", chat=ANN, after=1)
    assert message["from"] == "client"
    assert message["html"] == "&lt;script&gt;alert(1)&lt;/script&gt; &amp; &lt;b&gt;x&lt;/b&gt;"


async def test_a_changed_message_counts_its_changes_and_is_found_by_its_change_number(here: Place) -> None:
    sent = await here.result("sendMessage", chat_id=ANN, text="one")
    _status, before = await here.get("messages", chat=ANN)
    newest = max(message["change"] for message in before)
    assert await here.get("messages", chat=ANN, since=newest) == (200, [])
    for text in ("two", "three"):
        await here.result("editMessageText", chat_id=ANN, message_id=sent["message_id"], text=text)
    _status, (changed,) = await here.get("messages", chat=ANN, since=newest)
    assert (changed["id"], changed["text"], changed["edited"]) == (sent["message_id"], "three", 2)


@pytest.mark.parametrize("button", ["d:1", "All done"])
async def test_a_button_is_tapped_by_its_data_or_its_label(here: Place, button: str) -> None:
    sent = await here.result("sendMessage", chat_id=ANN, text="x", reply_markup=ROWS)
    status, body = await here.post("tap", chat=ANN, message=sent["message_id"], button=button)
    assert status == 200
    (update,) = await here.result("getUpdates")
    assert update["callback_query"]["data"] == "d:1"
    assert await here.get("answer", tap=body["tap"]) == (200, {"text": None})
    await here.result("answerCallbackQuery", callback_query_id=body["tap"], text="Noted")
    assert await here.get("answer", tap=body["tap"]) == (200, {"text": "Noted"})


async def test_a_forged_tap_carries_what_no_button_has(here: Place) -> None:
    await here.post("tap", chat=ANN, message=1, button="x:9", forged=True)
    (update,) = await here.result("getUpdates")
    assert update["callback_query"]["data"] == "x:9"


async def test_a_programme_file_goes_into_the_chat_and_out_again(here: Place) -> None:
    text = "title: Hüften\n"
    await here.post("document", chat=ANN, name="../hips.yaml", text=text, caption="New one")
    (update,) = await here.result("getUpdates")
    document = update["message"]["document"]
    assert (document["file_name"], update["message"]["caption"]) == ("hips.yaml", "New one")
    async with here.bot() as bot:
        file = await bot.get_file(document["file_id"])
        assert bytes(await file.download_as_bytearray()) == text.encode()
    _status, (message,) = await here.get("messages", chat=ANN, after=1)
    assert message["text"] == "New one"
    assert (message["document"]["name"], message["document"]["size"]) == ("hips.yaml", len(text.encode()))
    async with here.http.get(here.address + message["document"]["url"]) as answer:
        assert await answer.read() == text.encode()


async def test_a_picture_goes_both_ways(here: Place) -> None:
    picture = png(30, 40)
    await here.post("photo", chat=ANN, base64=base64.b64encode(picture).decode(), caption="Today")
    (update,) = await here.result("getUpdates")
    assert update["message"]["photo"][-1]["width"] == 30
    await here.upload("sendPhoto", "photo", picture, chat_id=str(ANN))
    _status, shown = await here.get("messages", chat=ANN, after=1)
    assert [(message["from"], message["photo"]["height"]) for message in shown] == [("client", 40), ("bot", 40)]
    async with here.http.get(here.address + shown[1]["photo"]["url"]) as answer:
        assert (answer.content_type, await answer.read()) == ("image/png", picture)


async def test_a_page_that_somebody_sends_is_only_saved_never_opened_here(here: Place) -> None:
    await here.post("document", chat=ANN, name="x.html", text="<script>alert(1)</script>")
    _status, (message,) = await here.get("messages", chat=ANN, after=1)
    async with here.http.get(here.address + message["document"]["url"]) as answer:
        assert answer.content_type == "application/octet-stream"
        assert answer.headers["X-Content-Type-Options"] == "nosniff"


async def test_opening_the_bots_link_says_start_with_its_parameter(here: Place) -> None:
    await here.post("open", chat=BEN, start="abc_DEF-1", first_name="Ben")
    (update,) = await here.result("getUpdates")
    assert update["message"]["text"] == "/start abc_DEF-1"
    assert update["message"]["entities"] == [{"type": "bot_command", "offset": 0, "length": 6}]


async def test_who_has_blocked_the_bot_cannot_write_to_it(here: Place) -> None:
    assert await here.post("block", chat=ANN, on=True) == (200, {})
    status, body = await here.post("say", chat=ANN, text="Hello?")
    assert (status, body["error"]) == (
        400,
        f"chat {ANN} has blocked the bot: take that back before anything is sent",
    )
    _status, chats = await here.get("chats")
    assert chats[0]["blocked"]
    await here.post("block", chat=ANN, on=False)
    assert (await here.post("say", chat=ANN, text="Hello"))[0] == 200


async def test_waiting_for_a_message_ends_with_it_and_not_with_somebody_elses(here: Place) -> None:
    waiting = asyncio.create_task(here.get("messages", chat=ANN, after=1, wait=20))
    await asyncio.sleep(0.05)
    here.platform.say(BEN, "Hello")
    await asyncio.sleep(0.05)
    assert not waiting.done()
    await here.result("sendMessage", chat_id=ANN, text="There")
    _status, (message,) = await asyncio.wait_for(waiting, 2)
    assert message["text"] == "There"


async def test_waiting_in_vain_ends_empty(here: Place) -> None:
    assert await here.get("messages", chat=ANN, after=1, wait="0.05") == (200, [])


async def test_every_change_is_an_event(here: Place) -> None:
    async with here.http.get(f"{here.address}/practice/events") as stream:
        assert stream.content_type == "text/event-stream"
        assert await asyncio.wait_for(stream.content.readuntil(b"\n\n"), 2) == b"data: {}\n\n"
        waiting = asyncio.create_task(stream.content.readuntil(b"\n\n"))
        await asyncio.sleep(0.05)
        assert not waiting.done()
        here.platform.say(ANN, "x")
        assert await asyncio.wait_for(waiting, 2) == b"data: {}\n\n"


# --- the calendar -------------------------------------------------------------------------------------------------


async def test_the_calendar_moves_to_an_instant_to_the_next_morning_and_by_days(here: Place) -> None:
    assert await here.get("clock") == (200, {"now": "2026-03-02T07:00:00Z"})
    assert await here.post("clock", to="2026-03-02T20:30+01:00") == (200, {"now": "2026-03-02T19:30:00Z"})
    assert await here.post("clock", next="morning") == (200, {"now": "2026-03-03T07:00:00Z"})
    assert await here.post("clock", days=7) == (200, {"now": "2026-03-10T07:00:00Z"})
    assert await here.post("clock", to="2026-03-10T07:00Z") == (200, {"now": "2026-03-10T07:00:00Z"})
    await here.post("say", chat=ANN, text="Good morning")
    _status, (message,) = await here.get("messages", chat=ANN, after=1)
    assert message["at"] == "2026-03-10T07:00:00Z"


async def test_a_move_that_hangs_names_what_hangs() -> None:
    class Hanging(StepByStep):
        async def move(self, target: datetime) -> None:
            raise Unsettled(["1 update is not handled", "2 messages are due"])

    async with place() as around, place(mover=Hanging(around.calendar)) as here:
        assert await here.post("clock", days=1) == (
            503,
            {"error": "still open: 1 update is not handled, 2 messages are due"},
        )


# --- what is wrong ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("name", "body", "status", "words"),
    [
        ("say", {"text": "x"}, 400, "chat is None: a whole number is needed"),
        ("say", {"chat": "1", "text": "x"}, 400, "chat is '1': a whole number is needed"),
        ("say", {"chat": True, "text": "x"}, 400, "chat is True: a whole number is needed"),
        ("say", {"chat": 1, "text": ""}, 400, "text is '': a text is needed"),
        ("say", {"chat": 1, "text": " \n"}, 400, "Bad Request: message text is empty"),
        ("say", {"chat": 1, "text": "\ud800"}, 400, "text holds half a character: a text of whole ones is needed"),
        ("say", {"chat": -5, "text": "x"}, 404, "there is no chat -5: private chats have numbers from 1 to 2^52"),
        ("open", {"chat": 1, "start": "a b"}, 400, "Bad Request: start parameter is invalid"),
        ("tap", {"chat": 9, "message": 1, "button": "x"}, 404, "there is no chat 9"),
        ("tap", {"chat": ANN, "message": 7, "button": "x"}, 404, "there is no message 7 in chat 101"),
        (
            "tap",
            {"chat": ANN, "message": 1, "button": "x"},
            404,
            "there is no button 'x' under message 1: there are none",
        ),
        ("document", {"chat": 1, "name": "a.yaml"}, 400, "text is None: a text is needed"),
        ("document", {"chat": 1, "name": "a.yaml", "base64": "%"}, 400, "base64 cannot be read"),
        ("photo", {"chat": 1, "base64": "eA=="}, 400, "Bad Request: IMAGE_PROCESS_FAILED"),
        ("block", {"chat": ANN, "on": "yes"}, 400, "on is 'yes': true or false is needed"),
        ("block", {"chat": 9, "on": True}, 404, "there is no chat 9"),
        ("clock", {}, 400, 'the move is {}: one of to, next ("morning") or days is needed'),
        ("clock", {"days": -1}, 400, "days is -1: a number from 0 to 400 is needed"),
        ("clock", {"to": "tomorrow"}, 400, "to is 'tomorrow': an instant such as 2026-03-02T07:00Z is needed"),
        ("clock", {"to": "2026-03-02T08:00"}, 400, "an instant with its offset is needed"),
        ("clock", {"to": "2026-03-02T06:59Z"}, 400, "the calendar only goes forward"),
        ("clock", {"to": "2036-03-02T06:59Z"}, 400, "more than 400 days ahead"),
        ("fault", {"method": "sendMessage", "what": "flood"}, 400, "what is 'flood': one of lose-request"),
    ],
)
async def test_a_wrong_request_is_told_what_is_wrong(
    here: Place, name: str, body: dict[str, Any], status: int, words: str
) -> None:
    found, answer = await here.post(name, **body)
    assert (found, list(answer)) == (status, ["error"])
    assert words in answer["error"]


@pytest.mark.parametrize(
    ("query", "status", "words"),
    [
        ({}, 400, "chat is None: a number is needed"),
        ({"chat": "ann"}, 400, "chat is 'ann': a number is needed"),
        ({"chat": "inf"}, 400, "chat is 'inf': a number from 0 is needed"),
        ({"chat": 9}, 404, "there is no chat 9"),
        ({"chat": ANN, "after": "-1"}, 400, "after is '-1': a number from 0 is needed"),
    ],
)
async def test_a_wrong_look_is_told_what_is_wrong(
    here: Place, query: dict[str, str | int], status: int, words: str
) -> None:
    found, answer = await here.get("messages", **query)
    assert (found, answer["error"]) == (status, words)


@pytest.mark.parametrize("content", ["", "{", "[]", "\xff"])
async def test_a_body_that_is_no_object_is_refused(here: Place, content: str) -> None:
    async with here.http.post(f"{here.address}/practice/say", data=content.encode("latin-1")) as answer:
        assert answer.status == 400
        assert "send" in (await answer.json())["error"]


async def test_a_file_or_tap_that_is_not_there_is_told_so(here: Place) -> None:
    assert await here.get("files", file="x") == (404, {"error": "there is no file x"})
    assert await here.get("answer", tap="x") == (404, {"error": "there is no tap x"})


async def test_every_route_is_listed_with_its_fields(here: Place) -> None:
    async with here.http.get(f"{here.address}/practice") as answer:
        listed = await answer.json()
    posts = {"say", "edit", "open", "tap", "document", "location", "photo", "video", "block", "clock", "fault"}
    gets = {"messages", "chats", "clock", "answer", "files", "events", "faults"}
    assert {(route["method"], route["path"]) for route in listed} == {
        *(("POST", f"/practice/{name}") for name in posts),
        *(("GET", f"/practice/{name}") for name in gets),
    }
    assert all(route["what"] for route in listed)


def test_the_calendar_of_these_tests_starts_where_they_say() -> None:
    assert START + timedelta(days=1) == datetime.fromisoformat("2026-03-03T07:00Z")
