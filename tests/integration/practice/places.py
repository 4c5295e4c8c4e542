"""The practice chat for tests: a server in memory or in a folder, a calendar to set, and requests as they are."""

from __future__ import annotations

import io
import struct
import zlib
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

import aiohttp
from telegram import Bot

from bot.clocks import SystemMachine
from bot.practice.clock import Mover, StandingCalendar
from bot.practice.faults import Faults
from bot.practice.platform import Platform, Rates
from bot.practice.server import PracticeServer
from bot.practice.store import Store

TOKEN = "4321:for-tests"
START = datetime(2026, 3, 2, 7, tzinfo=UTC)
ANN, BEN = 101, 102


@dataclass
class Side:
    """A practice chat at an address, from outside."""

    address: str
    http: aiohttp.ClientSession

    def bot(self) -> Bot:
        """The chat library's own client of it."""
        return Bot(TOKEN, base_url=f"{self.address}/bot", base_file_url=f"{self.address}/file/bot")

    async def post(self, name: str, /, **body: Any) -> tuple[int, Any]:
        """One request of people's side."""
        async with self.http.post(f"{self.address}/practice/{name}", json=body) as answer:
            return answer.status, await answer.json()


@dataclass
class Place(Side):
    """A running practice chat with one person in it."""

    platform: Platform
    calendar: StandingCalendar
    faults: Faults

    async def call(self, method: str, /, token: str = TOKEN, **fields: Any) -> tuple[int, dict[str, Any]]:
        """One request to the Bot API with a JSON body: status and answer."""
        async with self.http.post(f"{self.address}/bot{token}/{method}", json=fields) as answer:
            return answer.status, await answer.json()

    async def result(self, method: str, /, **fields: Any) -> Any:
        """The result of a request that must succeed."""
        status, body = await self.call(method, **fields)
        assert (status, body["ok"]) == (200, True), body
        return body["result"]

    async def upload(self, method: str, name: str, content: bytes, /, **fields: str) -> tuple[int, dict[str, Any]]:
        """One request with a file in it."""
        form = aiohttp.FormData(fields)
        form.add_field(name, io.BytesIO(content), filename="a.bin", content_type="application/octet-stream")
        async with self.http.post(f"{self.address}/bot{TOKEN}/{method}", data=form) as answer:
            return answer.status, await answer.json()

    async def get(self, name: str, /, **query: str | int) -> tuple[int, Any]:
        """One look of people's side."""
        async with self.http.get(f"{self.address}/practice/{name}", params=query) as answer:
            return answer.status, await answer.json()


class StepByStep:
    """A mover with nothing to do on the way; mornings are at seven."""

    def __init__(self, calendar: StandingCalendar) -> None:
        self._calendar = calendar

    def now(self) -> datetime:
        return self._calendar.now()

    async def move(self, target: datetime) -> None:
        self._calendar.put(target)

    async def next_morning(self) -> datetime:
        today = self._calendar.now().replace(hour=7, minute=0, second=0)
        return today if today > self._calendar.now() else today + timedelta(days=1)


@asynccontextmanager
async def place(
    folder: Path | None = None, *, rates: Rates | None = None, mover: Mover | None = None
) -> AsyncIterator[Place]:
    """A practice chat in which Ann has said hello, and the bot has read it."""
    with Store(folder / "chats.sqlite" if folder else None) as store:
        calendar = StandingCalendar(store, START)
        faults = Faults()
        server = PracticeServer(
            TOKEN,
            store=store,
            calendar=calendar,
            machine=SystemMachine(),
            mover=mover or StepByStep(calendar),
            rates=rates,
            faults=faults,
        )
        async with server.listening() as address, aiohttp.ClientSession() as http:
            found = Place(address, http, server.platform, calendar, faults)
            if not found.platform.chats():
                found.platform.say(ANN, "Hello", first_name="Ann")
                await found.result("getUpdates", offset=-1)
                await found.result("getUpdates", offset=2**40)
            yield found


def png(width: int, height: int, *, size: int = 0) -> bytes:
    """A grey picture, filled up with empty bytes behind its end when it shall be of a size."""

    def chunk(kind: bytes, content: bytes) -> bytes:
        return (
            struct.pack(">I", len(content))
            + kind
            + content
            + struct.pack(">I", zlib.crc32(kind + content) & 0xFFFFFFFF)
        )

    rows = zlib.compress((b"\0" + b"\x80" * width) * height)
    head = struct.pack(">IIBBBBB", width, height, 8, 0, 0, 0, 0)
    body = b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", rows) + chunk(b"IEND", b"")
    return body + bytes(max(0, size - len(body)))
