"""`easeward practice`: the whole program on one machine, with a local chat platform and a calendar that is moved."""

from __future__ import annotations

import asyncio
import re
import signal
import webbrowser
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from datetime import UTC, datetime, time, timedelta
from pathlib import Path

from pydantic import SecretStr

from bot.app import Running, running
from bot.clocks import SystemMachine
from bot.logs import set_up_logs
from bot.practice import trying
from bot.practice.clock import StandingCalendar, Unsettled
from bot.practice.controls import controls
from bot.practice.faults import Faults
from bot.practice.platform import Platform
from bot.practice.server import application, listening
from bot.practice.store import Store
from bot.settings import Settings
from db import due, links, rehearsals
from db.engine import Database
from db.settled import open_work
from plans import localtime

TOKEN = "1000:practice"
COACH, CLIENT = 1001, 2001
COACH_NAME, CLIENT_NAME = "Demo coach", "Demo client"
CITY, ZONE, MORNING = "Lisbon", "Europe/Lisbon", time(7)
PATIENCE = 30.0
"""Seconds that a move waits for everything to be handled and sent."""
A_LOOK = 0.005
"""Seconds between two looks at what hangs, for each of these; a look takes time from the work."""


class PortTaken(RuntimeError):
    """The port is used by something else."""


class PracticeMover:
    """Moves the standing calendar through every instant at which something is due, waiting each time."""

    def __init__(self, calendar: StandingCalendar, platform: Platform) -> None:
        self._calendar = calendar
        self._platform = platform
        self._program: Running | None = None

    def attend(self, program: Running) -> None:
        """From now on the moves are this program's."""
        self._program = program

    def now(self) -> datetime:
        return self._calendar.now()

    async def move(self, target: datetime) -> None:
        program = self._running()
        if target < self._calendar.now():
            raise ValueError(f"{target.isoformat()} is in the past: the calendar only goes forward")
        async with program.ticker.lock:
            await self.settle()
            while (coming := await self._next_due()) is not None and coming <= target:
                await self._stop_at(max(coming, self._calendar.now()))
            await self._stop_at(target)
        self._platform.messages_news.tell()

    async def next_morning(self) -> datetime:
        async with self._running().database.reading() as session:
            found = await due.next_of(session, due.DueKind.MORNING)
        if found is None or found <= self._calendar.now():
            return self._calendar.now() + timedelta(days=1)
        return found

    async def settle(self) -> None:
        """Waits until every update is handled and every message is sent. Raises Unsettled."""
        machine = SystemMachine()
        until = machine.now() + PATIENCE
        while True:
            hanging = await self._hanging()
            if not hanging:
                return
            if machine.now() > until:
                raise Unsettled(hanging)
            await asyncio.sleep(A_LOOK * len(hanging))

    def database(self) -> Database:
        """The program's database. Raises Unsettled while it is still starting."""
        return self._running().database

    async def _stop_at(self, moment: datetime) -> None:
        self._calendar.put(moment)
        await self._running().ticker.do_due(moment)
        await self.settle()

    async def _hanging(self) -> list[str]:
        """The first that is found: most looks come while an update is on its way, and cost nothing then."""
        unfetched = self._platform.unconfirmed()
        if unfetched:
            return unfetched
        async with self._running().database.reading() as session:
            return await open_work(session) or await rehearsals.open_work(session)

    async def _next_due(self) -> datetime | None:
        async with self._running().database.reading() as session:
            return await due.next_instant(session)

    def _running(self) -> Running:
        if self._program is None:
            raise Unsettled(["the bot, which is still starting"])
        return self._program


SetsTheScene = Callable[[Running, Platform, PracticeMover], Awaitable[None]]


def _first_morning(now: datetime) -> datetime:
    """The demo client's next morning, where a fresh calendar starts."""
    day = localtime.local(now, ZONE).date()
    found = localtime.instant(day, MORNING, ZONE)
    if found is None or found < now:
        found = localtime.instant(day + timedelta(days=1), MORNING, ZONE)
    if found is None:
        raise ValueError(f"{ZONE} skips the day after {day}")
    return found


async def practise(*, port: int, folder: Path, open_page: bool, say: Callable[[str], None]) -> None:
    """Runs until it is stopped. Raises PortTaken."""
    set_up_logs("WARNING")
    stop = asyncio.Event()
    for name in (signal.SIGINT, signal.SIGTERM):
        asyncio.get_running_loop().add_signal_handler(name, stop.set)
    async with practice_running(folder, port=port) as (address, program):
        say(f"The practice chat is ready: {address}")
        if open_page:
            webbrowser.open(address)
        await program.until(stop)


@asynccontextmanager
async def practice_running(
    folder: Path, *, port: int, scene: SetsTheScene | None = None, starts: datetime | None = None
) -> AsyncIterator[tuple[str, Running]]:
    """Server, bot and people while the block runs; gives the page's address. Raises PortTaken.

    In a folder without chats the calendar begins at `starts` and `scene` says who is there: without them the demo
    people's next morning, and the demo people.
    """
    store = Store(folder / "chats.sqlite")
    calendar = StandingCalendar(store, starts or _first_morning(datetime.now(UTC)))
    platform = Platform(TOKEN, calendar=calendar, machine=SystemMachine(), store=store)
    mover = PracticeMover(calendar, platform)
    faults = Faults()
    app = application(platform, faults=faults)
    controls(app, platform, mover, faults, trying.routes(platform, mover))
    try:
        async with _served(app, port) as address:
            settings = Settings(
                token=SecretStr(TOKEN),
                api_url=address,
                database_url=f"sqlite+aiosqlite:///{folder / 'easeward.sqlite'}",
                messages_per_second=1000,
                chat_pace=0,
                tick_seconds=1,
            )
            async with running(settings, calendar=calendar, machine=SystemMachine()) as program:
                mover.attend(program)
                if not platform.chats():
                    await (scene or _set_the_scene)(program, platform, mover)
                yield address, program
    finally:
        store.close()


@asynccontextmanager
async def _served(app: object, port: int) -> AsyncIterator[str]:
    try:
        async with listening(app, "127.0.0.1", port) as address:  # type: ignore[arg-type]
            yield address
    except OSError as error:
        if error.errno not in (98, 48, 10048):
            raise
        raise PortTaken(f"port {port} is taken: choose another with --port") from error


# --- the demo people ------------------------------------------------------------


async def _set_the_scene(program: Running, platform: Platform, mover: PracticeMover) -> None:
    """A coach who publishes the sample and a client who joins it, by the same words and taps as anybody's."""
    now = mover.now()
    token = await program.database.write(lambda session: links.new_coach_link(session, now))
    scene = Scene(platform, mover)
    await scene.say(COACH, f"/start {token}", COACH_NAME)
    await scene.say(COACH, CITY)
    platform.send_document(COACH, trying.SAMPLES[0], trying.sample(trying.SAMPLES[0]).encode())
    await mover.settle()
    await scene.tap(COACH, "Publish")
    await scene.tap(COACH, "Invite one client")
    link = scene.link(COACH)
    await scene.say(CLIENT, f"/start {link}", CLIENT_NAME)
    for label in ("I agree", "18 to 64", *["None of these"] * 3, "Yes", "0"):
        await scene.tap(CLIENT, label)
    await scene.say(CLIENT, CITY)
    await scene.tap(CLIENT, f"{MORNING:%H:%M}")
    await scene.tap(CLIENT, "Begin today")


class Scene:
    """Somebody types or taps, and everything that follows is waited for."""

    def __init__(self, platform: Platform, mover: PracticeMover) -> None:
        self._platform = platform
        self._mover = mover

    async def say(self, chat: int, text: str, first_name: str | None = None) -> None:
        self._platform.say(chat, text, first_name=first_name)
        await self._mover.settle()

    async def tap(self, chat: int, label: str) -> None:
        """Taps the newest button of that label."""
        messages = [message for _change, message in self._platform.messages(chat)]
        for message in reversed(messages):
            rows = (message.get("reply_markup") or {}).get("inline_keyboard", [])
            if any(button["text"] == label for row in rows for button in row):
                self._platform.tap(chat, message["message_id"], label)
                await self._mover.settle()
                return
        raise LookupError(f"no button {label!r} in the chat of {chat}: {messages[-1].get('text')}")

    def link(self, chat: int) -> str:
        """The token of the newest link in a chat."""
        for _change, message in reversed(self._platform.messages(chat)):
            found = re.search(r"\?start=([\w-]+)", message.get("text") or message.get("caption", ""))
            if found is not None:
                return found[1]
        raise LookupError(f"no link in the chat of {chat}")
