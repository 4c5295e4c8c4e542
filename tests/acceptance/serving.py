"""`easeward serve` and the local platform as two processes of their own, on the real clock."""

from __future__ import annotations

import asyncio
import os
import re
import signal
import sqlite3
import sys
from collections.abc import AsyncIterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import asynccontextmanager
from dataclasses import dataclass
from pathlib import Path

import aiohttp
import asyncpg

from tests.acceptance.driver import Practice
from tests.stores import here

TOKEN = "1000:practice"


@dataclass(slots=True)
class House:
    """The platform's address, the folder that the processes keep their data in, and the bot's database."""

    chat: Practice
    folder: Path
    url: str

    @property
    def environment(self) -> dict[str, str]:
        """The settings by which `serve` finds platform and database."""
        return {
            **os.environ,
            "EASEWARD_TOKEN": TOKEN,
            "EASEWARD_API_URL": self.chat.address,
            "EASEWARD_DATABASE_URL": self.url,
            "EASEWARD_MESSAGES_PER_SECOND": "1000",
            "EASEWARD_CHAT_PACE": "0",
            "EASEWARD_TICK_SECONDS": "1",
        }

    async def serve(self, role: str = "all", **settings: str) -> asyncio.subprocess.Process:
        """Starts the bot; `settings` go before those that all share."""
        environment = self.environment | {f"EASEWARD_{name.upper()}": value for name, value in settings.items()}
        with (self.folder / "serve.log").open("ab") as log:
            return await asyncio.create_subprocess_exec(
                sys.executable, "-m", "bot.cli", "serve", "--role", role, env=environment, stdout=log, stderr=log
            )

    async def run(self, *words: str) -> tuple[int, str]:
        """Runs another command to its end: exit code and output."""
        process = await asyncio.create_subprocess_exec(
            sys.executable,
            "-m",
            "bot.cli",
            *words,
            env=self.environment,
            stdout=asyncio.subprocess.PIPE,
            stderr=asyncio.subprocess.STDOUT,
        )
        out, _ = await process.communicate()
        return process.returncode or 0, out.decode()

    def ask(self, query: str) -> list[tuple[object, ...]]:
        """Looks into the bot's database from outside."""
        if self.url.startswith("postgresql"):
            with ThreadPoolExecutor(1) as beside:
                return beside.submit(asyncio.run, self._ask_server(query)).result()
        file = Path(self.url.removeprefix("sqlite:///"))
        if not file.exists():
            return []
        with sqlite3.connect(f"file:{file}?mode=ro", uri=True, timeout=10) as database:
            try:
                return database.execute(query).fetchall()
            except sqlite3.OperationalError as error:
                if "no such table" in str(error):
                    return []
                raise

    async def _ask_server(self, query: str) -> list[tuple[object, ...]]:
        connection = await asyncpg.connect(self.url)
        try:
            return [tuple(row) for row in await connection.fetch(query)]
        except asyncpg.UndefinedTableError:
            return []
        finally:
            await connection.close()

    async def until(self, query: str, wanted: object, *, seconds: float = 60) -> None:
        """Waits until the first cell of a query is what is wanted."""
        async with asyncio.timeout(seconds):
            while not (rows := self.ask(query)) or rows[0][0] != wanted:
                await asyncio.sleep(0.05)

    @property
    def log(self) -> str:
        """What the bot has logged."""
        return (self.folder / "serve.log").read_text(encoding="utf-8")


@asynccontextmanager
async def house(folder: Path) -> AsyncIterator[House]:
    """The platform alone, with faults allowed, and an empty database where the test keeps its databases."""
    url = await here().url(folder, tables=False)
    process = await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "bot.practice",
        "--token",
        TOKEN,
        "--data",
        str(folder / "platform"),
        "--faults",
        stdout=asyncio.subprocess.PIPE,
    )
    try:
        if process.stdout is None:
            raise RuntimeError("the platform has no output to read")
        line = (await asyncio.wait_for(process.stdout.readline(), 30)).decode().strip()
        async with aiohttp.ClientSession() as http:
            yield House(Practice(line, http), folder, url)
    finally:
        process.terminate()
        await process.wait()


async def stopped(process: asyncio.subprocess.Process) -> int:
    """Asks a process to stop and returns its exit code."""
    if process.returncode is None:
        process.send_signal(signal.SIGTERM)
    return await asyncio.wait_for(process.wait(), 20)


async def answered(house: House, chat: int, text: str, *, name: str = "X", seconds: float = 20) -> str:
    """Says something and waits for the bot's next words in that chat."""
    before = max((said.id for said in await house.chat.messages(chat)), default=0)
    await house.chat.post("say", chat=chat, text=text, first_name=name)
    async with asyncio.timeout(seconds):
        while not (said := await house.chat.from_bot(chat, after=before)):
            await asyncio.sleep(0.05)
    return said[-1].text


async def tapped(house: House, chat: int, label: str, *, seconds: float = 20) -> str:
    """Taps the newest button of that label and waits for the bot's next words."""
    said = await house.chat.messages(chat)
    under = next(m for m in reversed(said) if label in [text for text, _data in m.buttons])
    await house.chat.post("tap", chat=chat, message=under.id, button=label)
    async with asyncio.timeout(seconds):
        while not (new := await house.chat.from_bot(chat, after=said[-1].id)):
            await asyncio.sleep(0.05)
    return new[-1].text


async def people_joined(house: House, *, coach: int, clients: list[int], sample: str) -> None:
    """A coach with a published programme, and clients who have begun it today; the bot must be serving."""
    _code, out = await house.run("invite-coach")
    found = re.search(r"start=([\w-]+)", out)
    if found is None:
        raise RuntimeError(f"no link in: {out}")
    await answered(house, coach, f"/start {found[1]}", name="Coach")
    await answered(house, coach, "UTC")
    await house.chat.post("document", chat=coach, name="sample.yaml", text=sample)
    await house.until("SELECT count(*) FROM programme_version", 1)
    await asyncio.sleep(0.3)
    await tapped(house, coach, "Publish")
    text = await tapped(house, coach, "Invite a group of ten")
    token = re.search(r"start=([\w-]+)", text)
    if token is None:
        raise RuntimeError(f"no link in: {text}")
    for chat in clients:
        await answered(house, chat, f"/start {token[1]}", name=f"Client {chat}")
        for label in ("I agree", "18 to 64", *["None of these"] * 3, "Yes", "0"):
            await tapped(house, chat, label)
        await answered(house, chat, "Lisbon")
        await tapped(house, chat, "07:00")
        await tapped(house, chat, "Begin today")
