"""Runs `easeward practice` as a process and plays people in it through its documented JSON."""

from __future__ import annotations

import asyncio
import io
import json
import os
import re
import sys
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import aiohttp

from tests.foreign.environment import WHERE, check_calls

READY_SECONDS = 60
CALLS = "calls.jsonl"
"""The file beside the practice data in which every request to the platform is written down."""


@dataclass(frozen=True, slots=True)
class Said:
    """One message as a person sees it."""

    id: int
    sender: str
    text: str
    buttons: tuple[tuple[str, str], ...]
    photo: str | None = None
    """Where the practice chat has the picture on it."""

    def button(self, label: str) -> str:
        """The data of the button with this label. Raises LookupError when it is not there."""
        for text, data in self.buttons:
            if text == label:
                return data
        raise LookupError(f"no button {label!r} among {[text for text, _ in self.buttons]} under {self.text[:80]!r}")


class Practice:
    """The practice chat, seen from outside."""

    def __init__(self, address: str, http: aiohttp.ClientSession) -> None:
        self.address = address
        self._http = http

    async def post(self, path: str, /, **body: object) -> dict[str, Any]:
        """One documented POST; an error answer is an AssertionError with its words."""
        sent, kind = io.BytesIO(json.dumps(body).encode()), {"Content-Type": "application/json"}
        async with self._http.post(f"{self.address}/practice/{path}", data=sent, headers=kind) as answer:
            found = await answer.json()
            if answer.status != 200:
                raise AssertionError(f"{path} {body}: {answer.status} {found}")
            return dict(found or {})

    async def status_of(self, path: str, /, **body: object) -> int:
        """The status of one POST."""
        async with self._http.post(f"{self.address}/practice/{path}", json=body) as answer:
            return answer.status

    async def messages(self, chat: int, *, after: int = 0) -> list[Said]:
        """A chat's messages with an id above `after`, as they stand now."""
        async with self._http.get(
            f"{self.address}/practice/messages", params={"chat": str(chat), "after": str(after)}
        ) as answer:
            if answer.status == 404:
                return []
            rows = await answer.json()
        return [
            Said(
                row["id"],
                row["from"],
                row["text"],
                tuple((button["label"], button["data"]) for line in row["buttons"] or [] for button in line),
                (row.get("photo") or {}).get("file"),
            )
            for row in rows
        ]

    async def from_bot(self, chat: int, *, after: int = 0) -> list[Said]:
        """What the bot has said in a chat."""
        return [said for said in await self.messages(chat, after=after) if said.sender == "bot"]

    async def settled(self) -> None:
        """Waits until everything that was said is handled and answered, by moving the calendar nowhere."""
        now = (await self.get("clock"))["now"]
        await self.post("clock", to=now)

    async def get(self, what: str) -> dict[str, Any]:
        """One documented GET."""
        async with self._http.get(f"{self.address}/practice/{what}") as answer:
            return dict(await answer.json())

    async def get_list(self, what: str) -> list[dict[str, Any]]:
        """One documented GET that gives a list."""
        async with self._http.get(f"{self.address}/practice/{what}") as answer:
            return list(await answer.json())

    async def file(self, file: str) -> bytes:
        """The bytes of a file that somebody sent."""
        async with self._http.get(f"{self.address}/practice/files", params={"file": file}) as answer:
            return await answer.read()

    async def say(self, chat: int, text: str, **more: object) -> list[Said]:
        """Says something and returns what the bot then said."""
        before = await self._last(chat)
        await self.post("say", chat=chat, text=text, **more)
        await self.settled()
        return await self.from_bot(chat, after=before)

    async def tap(self, chat: int, said: Said, label: str) -> list[Said]:
        """Taps a button by its label and returns new words of the bot; a changed message is seen by `again`."""
        before = await self._last(chat)
        await self.post("tap", chat=chat, message=said.id, button=said.button(label))
        await self.settled()
        return await self.from_bot(chat, after=before)

    async def screened(self, chat: int, offer: Said, *, age: str = "18 to 64", usual: int = 0) -> list[Said]:
        """Agrees to what an invitation says and answers every question about health with the plainest answer."""
        said = [offer]
        for label in ("I agree", age, "None of these", "None of these"):
            said = await self.tap(chat, said[-1], label)
        if "None of these" in [label for label, _data in said[-1].buttons]:
            said = await self.tap(chat, said[-1], "None of these")
        for label in ("Yes", str(usual)):
            said = await self.tap(chat, said[-1], label)
        return said

    async def again(self, chat: int, said: Said) -> Said:
        """A message as it stands now."""
        return next(m for m in await self.messages(chat) if m.id == said.id)

    async def _last(self, chat: int) -> int:
        return max((said.id for said in await self.messages(chat)), default=0)


@asynccontextmanager
async def practice(folder: Path, *, port: int = 0) -> AsyncIterator[tuple[Practice, asyncio.subprocess.Process]]:
    """The practice chat as a process of its own on a free port, ended in the end.

    What the bot asked and was answered must then be as the platform's description has it.
    """
    process = await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "tests.foreign.recorded",
        "practice",
        "--port",
        str(port),
        "--no-open",
        "--data",
        str(folder),
        stdout=asyncio.subprocess.PIPE,
        env={**os.environ, "PYTHONUNBUFFERED": "1", WHERE: str(folder / CALLS)},
    )
    try:
        address = await asyncio.wait_for(_address(process), READY_SECONDS)
        async with aiohttp.ClientSession() as http:
            yield Practice(address, http), process
    finally:
        if process.returncode is None:
            process.terminate()
        await asyncio.wait_for(process.wait(), 20)
    await asyncio.to_thread(check_calls, folder / CALLS)


async def _address(process: asyncio.subprocess.Process) -> str:
    if process.stdout is None:
        raise RuntimeError("the process has no output to read")
    seen = ""
    while True:
        line = (await process.stdout.readline()).decode()
        if not line:
            raise RuntimeError(f"the practice chat ended before it was ready; it said: {seen}")
        seen += line
        found = re.search(r"http://127\.0\.0\.1:\d+", line)
        if found is not None:
            return found[0]
