"""Updates that the platform brings: stored before it is told so, and from nobody else."""

from __future__ import annotations

import asyncio
import io
import json
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

import aiohttp
import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot import web, webhook
from bot.webhook import HEADER, LARGEST_UPDATE, UnfitWebhook
from db import inbox
from db.engine import Database
from db.schema import Inbox
from tests.integration.fakes import SetCalendar, database_in
from tests.postgres import free_port

SECRET = "a-secret-of-enough-letters"

pytestmark = pytest.mark.usefixtures("store")


def said(number: int) -> dict[str, Any]:
    person = {"id": 7, "is_bot": False, "first_name": "Ada", "last_name": "Quill"}
    return {"update_id": number, "message": {"chat": {"id": 7}, "from": person, "text": "done"}}


@asynccontextmanager
async def door(folder: Path) -> AsyncIterator[tuple[Database, str, aiohttp.ClientSession]]:
    """A database, the address at which updates come in, and somebody who brings them."""
    port = free_port()
    async with database_in(folder) as database:
        post = {"/in/updates": webhook.receiving(database, SetCalendar(), SECRET)}
        async with web.serving("127.0.0.1", port, database, post), aiohttp.ClientSession() as http:
            yield database, f"http://127.0.0.1:{port}/in/updates", http


async def stored(database: Database) -> list[int]:
    async with database.reading() as session:
        return sorted(await session.scalars(select(Inbox.update_id)))


async def test_an_update_is_there_before_the_platform_is_told_so_and_counts_once(tmp_path: Path) -> None:
    async with door(tmp_path) as (database, url, http):
        for _ in range(2):
            async with http.post(url, json=said(41), headers={HEADER: SECRET}) as answer:
                assert answer.status == 200
            assert await stored(database) == [41]
        async with database.reading() as session:
            assert "Quill" not in json.dumps((await session.get_one(Inbox, 41)).payload)


@pytest.mark.parametrize("headers", [{}, {HEADER: ""}, {HEADER: SECRET[:-1]}, {HEADER: SECRET + "x"}, {HEADER: "é"}])
async def test_without_the_secret_nothing_is_taken(tmp_path: Path, headers: dict[str, str]) -> None:
    async with door(tmp_path) as (database, url, http):
        async with http.post(url, json=said(41), headers=headers) as answer:
            assert answer.status == 401
        assert await stored(database) == []


async def test_a_secret_that_is_no_text_is_refused_like_any_other(tmp_path: Path) -> None:
    async with door(tmp_path) as (database, url, _http):
        host, port = url.split("/")[2].split(":")
        reader, writer = await asyncio.open_connection(host, int(port))
        head = f"POST /in/updates HTTP/1.1\r\nHost: x\r\n{HEADER}: ".encode() + b"\xff\xfe"
        writer.write(head + b"\r\nContent-Length: 2\r\nConnection: close\r\n\r\n{}")
        assert b" 401 " in await reader.readline()
        writer.close()
        assert await stored(database) == []


@pytest.mark.parametrize(
    ("body", "status"),
    [
        (b"", 400),
        (b"not json", 400),
        (b"[" * 100_000, 400),
        (b"[]", 400),
        (b'{"update_id": "41"}', 400),
        (b'{"update_id": -1}', 400),
        (b'{"update_id": 99999999999999999999}', 400),
        (b"\xff\xfe", 400),
        (b"x" * (LARGEST_UPDATE + 1), 413),
    ],
)
async def test_what_is_no_update_is_refused(tmp_path: Path, body: bytes, status: int) -> None:
    async with door(tmp_path) as (database, url, http):
        async with http.post(url, data=io.BytesIO(body), headers={HEADER: SECRET}) as answer:
            assert answer.status == status
        assert await stored(database) == []


@pytest.mark.parametrize("odd", [{"message": "text"}, {"message": {"chat": "7"}}, {"message": {"chat": {"id": "x"}}}])
async def test_an_update_of_an_odd_shape_is_kept_for_the_handling_to_fail_alone(tmp_path: Path, odd: Any) -> None:
    async with door(tmp_path) as (database, url, http):
        async with http.post(url, json={"update_id": 41} | odd, headers={HEADER: SECRET}) as answer:
            assert answer.status == 200
        assert await stored(database) == [41]


async def test_the_platform_is_asked_to_bring_it_again_when_it_cannot_be_stored(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    async def full(session: AsyncSession, *_more: Any) -> int:
        raise OSError("disk full")

    async with door(tmp_path) as (database, url, http):
        with monkeypatch.context() as broken:
            broken.setattr(inbox, "store", full)
            async with http.post(url, json=said(41), headers={HEADER: SECRET}) as answer:
                assert answer.status == 503
        async with http.post(url, json=said(41), headers={HEADER: SECRET}) as answer:
            assert answer.status == 200
        assert await stored(database) == [41]


@pytest.mark.parametrize(
    ("url", "secret", "port", "words"),
    [
        ("https://bot.example.org/in", None, 8000, "EASEWARD_WEBHOOK_SECRET"),
        ("https://bot.example.org/in", "", 8000, "EASEWARD_WEBHOOK_SECRET"),
        ("https://bot.example.org/in", "short", 8000, "16 to 256"),
        ("https://bot.example.org/in", "with a space and more", 8000, "16 to 256"),
        ("https://bot.example.org/in", SECRET, None, "EASEWARD_WEB_PORT"),
        ("bot.example.org/in", SECRET, 8000, "no address with a path"),
        ("https://bot.example.org", SECRET, 8000, "no address with a path"),
    ],
)
def test_settings_that_would_let_anybody_in_are_refused(
    url: str, secret: str | None, port: int | None, words: str
) -> None:
    with pytest.raises(UnfitWebhook, match=words):
        webhook.checked(url, secret, port)
    webhook.checked("https://bot.example.org/in", SECRET, 8000)


async def test_whoever_watches_sees_whether_it_is_alive_and_ready(tmp_path: Path) -> None:
    async with door(tmp_path) as (_database, url, http):
        for path in ("livez", "readyz"):
            async with http.get(url.replace("in/updates", path)) as answer:
                assert answer.status == 200
