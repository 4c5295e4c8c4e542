"""What the tests of the two roads share: a database in a folder, clocks that are set, a small platform."""

from __future__ import annotations

import asyncio
import json
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from aiohttp import web
from aiohttp.test_utils import TestServer
from telegram import Bot

from bot.transport import AiohttpRequest
from db.engine import Database, opened
from tests.stores import here

NOON = datetime(2026, 3, 2, 12, 0, tzinfo=UTC)


@asynccontextmanager
async def database_in(folder: Path) -> AsyncIterator[Database]:
    """A database with all its tables in `folder`; opened again, it is the same one."""
    async with opened(await here().url(folder)) as database:
        yield database


async def plan(database: Database, statement: Any) -> list[str]:
    """The steps by which the database would answer; PostgreSQL is told that reading whole tables is dear."""
    async with database.reading() as session:
        connection = await session.connection()
        sql = statement.compile(connection.sync_connection, compile_kwargs={"literal_binds": True})
        if database.alone:
            return [line[-1] for line in await connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {sql}")]
        for way in ("seqscan", "bitmapscan", "sort"):
            await connection.exec_driver_sql(f"SET LOCAL enable_{way} = off")
        return [line[0] for line in await connection.exec_driver_sql(f"EXPLAIN {sql}")]


class SetCalendar:
    """A calendar clock that stands where it was set."""

    def __init__(self, at: datetime = NOON) -> None:
        self.at = at

    def now(self) -> datetime:
        return self.at

    def forward(self, **kwargs: float) -> None:
        self.at += timedelta(**kwargs)


class SetMachine:
    """A machine clock that stands where it was set."""

    def __init__(self, at: float = 1_000.0) -> None:
        self.at = at

    def now(self) -> float:
        return self.at


TOKEN = "100:abc-secret"


@dataclass(frozen=True, slots=True)
class Call:
    """One request as the platform saw it; a file stands there as its bytes."""

    method: str
    fields: dict[str, Any]

    @property
    def text(self) -> str:
        return str(self.fields.get("text", ""))


@dataclass(slots=True)
class FakePlatform:
    """A chat platform with memory: what arrived, what waits to be fetched, and what goes wrong next.

    `next_up` holds, for the coming requests in order, what happens: "ok"; "drop" (arrived, the connection is cut
    before the answer); a status with its description, perhaps with parameters.
    """

    arrived: list[Call] = field(default_factory=list)
    updates: list[dict[str, Any]] = field(default_factory=list)
    files: dict[str, bytes] = field(default_factory=dict)
    next_up: list[str | tuple[int, str] | tuple[int, str, dict[str, Any]]] = field(default_factory=list)
    hold: asyncio.Event | None = None
    """While set to an event, every request but a question for updates waits for it after it has arrived."""
    offsets: list[int | None] = field(default_factory=list)
    open: int = 0
    most_open: int = 0

    def texts(self) -> list[str]:
        return [call.text for call in self.arrived]

    async def answer(self, request: web.Request) -> web.Response:
        if request.match_info["token"] != TOKEN:
            return refusal(401, "Unauthorized", {})
        method = request.match_info["method"]
        fields = dict(request.query) | await fields_of(request)
        if method == "getUpdates":
            return await self._get_updates(fields, request)
        if method in ("getMe", "getFile"):
            return accepted(self._about(method, fields))
        return await self._take(Call(method, fields), request)

    async def download(self, request: web.Request) -> web.Response:
        return web.Response(body=self.files[request.match_info["path"]])

    async def _take(self, call: Call, request: web.Request) -> web.Response:
        self.arrived.append(call)
        number = len(self.arrived)
        self.open += 1
        self.most_open = max(self.most_open, self.open)
        try:
            if self.hold is not None:
                await self.hold.wait()
        finally:
            self.open -= 1
        return self._outcome(call, number, request)

    def _outcome(self, call: Call, number: int, request: web.Request) -> web.Response:
        happens = self.next_up.pop(0) if self.next_up else "ok"
        if isinstance(happens, tuple):
            return refusal(happens[0], happens[1], happens[2] if len(happens) == 3 else {})
        if happens == "drop":
            cut(request)
        return accepted(True if call.method == "answerCallbackQuery" else message(call, number))

    async def _get_updates(self, fields: dict[str, Any], request: web.Request) -> web.Response:
        offset = int(fields["offset"]) if "offset" in fields else None
        self.offsets.append(offset)
        if self.next_up and isinstance(self.next_up[0], tuple):
            happens = self.next_up.pop(0)
            return refusal(int(happens[0]), str(happens[1]), {})
        if offset is not None:
            known = [update for update in self.updates if isinstance(update, dict) and "update_id" in update]
            self.updates = [update for update in known if update["update_id"] >= offset]
        if not self.updates:
            await asyncio.sleep(0.02)
        return accepted(self.updates[:100])

    def _about(self, method: str, fields: dict[str, Any]) -> dict[str, Any]:
        if method == "getMe":
            return {"id": 100, "is_bot": True, "first_name": "Easeward", "username": "easeward_bot"}
        body = self.files.get(fields["file_id"], b"")
        return {
            "file_id": fields["file_id"],
            "file_unique_id": "u",
            "file_size": len(body),
            "file_path": fields["file_id"],
        }


async def fields_of(request: web.Request) -> dict[str, Any]:
    """The fields of a form or of a multipart body."""
    found: dict[str, Any] = {}
    if request.content_type == "application/json":
        sent = await request.json()
        return {name: value if isinstance(value, str) else json.dumps(value) for name, value in sent.items()}
    for name, value in (await request.post()).items():
        found[name] = value.file.read() if isinstance(value, web.FileField) else value
    return found


def accepted(result: Any) -> web.Response:
    return web.json_response({"ok": True, "result": result})


def refusal(status: int, description: str, parameters: dict[str, Any]) -> web.Response:
    body = {"ok": False, "error_code": status, "description": description, "parameters": parameters}
    return web.json_response(body, status=status)


def cut(request: web.Request) -> None:
    """Closes the connection without an answer."""
    if request.transport is not None:
        request.transport.abort()


def message(call: Call, number: int) -> dict[str, Any]:
    chat = {"id": int(call.fields["chat_id"]), "type": "private", "first_name": "Ada"}
    sent = {"message_id": int(call.fields.get("message_id", 5000 + number)), "date": 1, "chat": chat, "text": call.text}
    if call.method == "sendPhoto":
        sent["photo"] = [{"file_id": f"F{number}", "file_unique_id": "u", "width": 1, "height": 1}]
    if call.method == "sendDocument":
        sent["document"] = {"file_id": f"D{number}", "file_unique_id": "u"}
    return sent


@asynccontextmanager
async def platform_running(platform: FakePlatform) -> AsyncIterator[str]:
    """The platform on a local port; yields its address."""
    application = web.Application(client_max_size=30 * 2**20)
    application.router.add_post("/bot{token}/{method}", platform.answer)
    application.router.add_get("/file/bot{token}/{path}", platform.download)
    server = TestServer(application)
    await server.start_server(access_log=None)
    try:
        yield str(server.make_url("")).rstrip("/")
    finally:
        if platform.hold is not None:
            platform.hold.set()
        await server.close()


@asynccontextmanager
async def bot_at(url: str, **timeouts: float) -> AsyncIterator[Bot]:
    """The chat library's bot on our transport, talking to `url`."""
    bot = Bot(
        TOKEN,
        base_url=f"{url}/bot",
        base_file_url=f"{url}/file/bot",
        request=AiohttpRequest(**timeouts),  # type: ignore[arg-type]
        get_updates_request=AiohttpRequest(connections=2),
    )
    async with bot:
        yield bot


async def until(condition: Callable[[], Awaitable[bool] | bool], seconds: float = 10.0) -> None:
    """Waits until `condition` is true, and fails when it is not in time."""
    async with asyncio.timeout(seconds):
        while True:
            found = condition()
            if found if isinstance(found, bool) else await found:
                return
            await asyncio.sleep(0.01)
