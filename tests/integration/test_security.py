"""What is told of attempts that are refused, and what an attacker at the doors gets."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

import aiohttp
import pytest
from aiohttp import web as aiohttp_web
from aiohttp.test_utils import TestServer
from telegram.error import TelegramError

from bot import web, webhook
from bot.transport import AiohttpRequest
from bot.webhook import HEADER
from db import inbox, links
from db.engine import Database
from tests.fuzzing import CLIENT, NOW, STRANGER, Update, handled, people
from tests.integration.fakes import SetCalendar
from tests.integration.practice.places import Place, place
from tests.integration.updates import offline
from tests.postgres import free_port

SECRET = "a-secret-of-enough-letters"


def said(chat: int, text: str) -> Update:
    person = {"id": chat, "is_bot": False, "first_name": "P"}
    message = {"message_id": 1, "date": int(NOW.timestamp()), "chat": {"id": chat, "type": "private"}, "from": person}
    command = [{"type": "bot_command", "offset": 0, "length": len(text.split()[0])}]
    return {"update_id": 7, "message": message | {"text": text, "entities": command}}


async def actions(database: Database, caplog: pytest.LogCaptureFixture, *updates: Update) -> list[str]:
    caplog.set_level("INFO", "bot")
    app = offline()
    for update in updates:
        await handled(database, app, update, None)
    return [record.message for record in caplog.records]


async def test_whoever_tries_what_they_may_not_is_logged_by_number(
    database: Database, caplog: pytest.LogCaptureFixture
) -> None:
    await database.write(people)
    assert await actions(database, caplog, said(CLIENT, "/invite"), said(STRANGER, "/digest")) == ["not-allowed"] * 2
    assert [vars(record)["chat"] for record in caplog.records] == [CLIENT, STRANGER]


async def test_links_that_open_and_links_that_do_not_are_logged_without_their_token(
    database: Database, caplog: pytest.LogCaptureFixture
) -> None:
    await database.write(people)
    token = await database.write(lambda session: links.new_coach_link(session, NOW))
    tries = (said(STRANGER, "/start coach-wrong"), said(STRANGER, f"/start {token}"), said(CLIENT, f"/start {token}"))
    assert await actions(database, caplog, *tries) == ["link-refused", "link-opened", "link-refused"]
    assert token not in caplog.text


# --- at the web server's door -----------------------------------------------------------------------------------------


@asynccontextmanager
async def door(database: Database) -> AsyncIterator[int]:
    port = free_port()
    post = {"/in": webhook.receiving(database, SetCalendar(), SECRET)}
    async with web.serving("127.0.0.1", port, database, post):
        yield port


async def raw(port: int, request: bytes) -> bytes:
    reader, writer = await asyncio.open_connection("127.0.0.1", port)
    writer.write(request)
    await writer.drain()
    answer = await asyncio.wait_for(reader.read(), 10)
    writer.close()
    return answer


async def test_a_request_whose_end_is_told_in_two_ways_is_no_second_request(database: Database) -> None:
    head = f"POST /in HTTP/1.1\r\nHost: x\r\n{HEADER}: wrong\r\nConnection: close\r\n".encode()
    async with door(database) as port:
        hidden = b"0\r\n\r\nGET /livez HTTP/1.1\r\nHost: x\r\n\r\n"
        answer = await raw(port, head + b"Content-Length: 5\r\nTransfer-Encoding: chunked\r\n\r\n" + hidden)
        assert answer.count(b"HTTP/1.") == 1
        assert answer.split()[1] == b"400"
        twice = head + b"Content-Length: 2\r\nContent-Length: 5\r\n\r\n{}"
        assert (await raw(port, twice)).split()[1] == b"400"


async def test_an_error_inside_says_nothing_of_what_is_inside(
    database: Database, monkeypatch: pytest.MonkeyPatch
) -> None:
    async def broken(*_anything: object) -> int:
        raise ValueError("Ada's knee")

    monkeypatch.setattr(inbox, "store", broken)
    async with door(database) as port, aiohttp.ClientSession() as http:
        url = f"http://127.0.0.1:{port}/in"
        async with http.post(url, json={"update_id": 1}, headers={HEADER: SECRET}) as answer:
            assert answer.status == 500
            text = await answer.text()
    assert "Ada" not in text
    assert "Traceback" not in text
    assert "ValueError" not in text


async def test_a_redirect_is_not_followed() -> None:
    heard: list[str] = []

    async def answer(request: aiohttp_web.Request) -> aiohttp_web.Response:
        heard.append(request.path)
        return aiohttp_web.Response(status=302, headers={"Location": "/elsewhere"})

    application = aiohttp_web.Application()
    application.router.add_route("*", "/{anywhere}", answer)
    async with TestServer(application) as server, AiohttpRequest() as request:
        with pytest.raises(TelegramError):
            await request.post(str(server.make_url("/here")))
    assert heard == ["/here"]


# --- at the practice chat's door --------------------------------------------------------------------------------------


@pytest.fixture
async def here() -> AsyncIterator[Place]:
    async with place() as found:
        yield found


@pytest.mark.parametrize(
    "headers",
    [
        {"Origin": "https://evil.example.org"},
        {"Origin": "null"},
        {"Host": "evil.example.org"},
        {"Host": "evil.example.org", "Origin": "http://evil.example.org"},
        {"Host": "127.0.0.1.evil.example.org"},
    ],
)
async def test_another_sites_page_cannot_speak_in_the_practice_chat(here: Place, headers: dict[str, str]) -> None:
    async with here.http.post(f"{here.address}/practice/say", json={"chat": 5, "text": "x"}, headers=headers) as answer:
        assert answer.status == 403
    async with here.http.get(f"{here.address}/practice/messages?chat=5", headers=headers) as answer:
        assert answer.status == 403


async def test_the_practice_page_itself_can(here: Place) -> None:
    for origin in (here.address, None):
        headers = {"Origin": origin} if origin else {}
        body = {"chat": 5, "text": "x"}
        async with here.http.post(f"{here.address}/practice/say", json=body, headers=headers) as answer:
            assert answer.status == 200
            assert answer.headers["X-Content-Type-Options"] == "nosniff"
            assert "frame-ancestors 'none'" in answer.headers["Content-Security-Policy"]
