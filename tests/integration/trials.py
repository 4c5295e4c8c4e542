"""`easeward practice` in this process: the whole program with its demo people, and people's side of it."""

from __future__ import annotations

import io
import json
import shutil
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import aiohttp

from bot.practising import CLIENT, practice_running
from db.engine import Database


@dataclass(slots=True)
class Trial:
    """The practice chat and its bot."""

    address: str
    database: Database
    http: aiohttp.ClientSession

    async def get(self, name: str) -> Any:
        """One look of people's side."""
        async with self.http.get(f"{self.address}/practice/{name}") as answer:
            assert answer.status == 200, await answer.text()
            return await answer.json()

    async def post(self, name: str, /, **body: Any) -> Any:
        """One request of people's side that must succeed."""
        sent, kind = io.BytesIO(json.dumps(body).encode()), {"Content-Type": "application/json"}
        async with self.http.post(f"{self.address}/practice/{name}", data=sent, headers=kind) as answer:
            assert answer.status == 200, await answer.text()
            return await answer.json()

    async def settled(self) -> None:
        """Waits until everything that was said is answered."""
        await self.post("clock", to=(await self.get("clock"))["now"])

    async def lives(self, manner: str, mornings: int, chat: int = CLIENT) -> list[dict[str, Any]]:
        """Answers and goes on to the next morning, some times; returns the dates of the course."""
        for _morning in range(mornings):
            await self.post("act", chat=chat, **{"as": manner})
            await self.post("clock", next="morning")
        return list((await self.get(f"course?chat={chat}"))["rows"])


@asynccontextmanager
async def trial(folder: Path, scene: Path) -> AsyncIterator[Trial]:
    """A practice chat at the demo client's first morning; `scene` keeps that morning, made once, for all others."""
    if not scene.exists():
        async with practice_running(scene, port=0):
            pass
    shutil.copytree(scene, folder, dirs_exist_ok=True)
    async with practice_running(folder, port=0) as (address, program), aiohttp.ClientSession() as http:
        yield Trial(address, program.database, http)
