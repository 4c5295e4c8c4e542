"""The one composition root: everything is opened, wired and closed here, and nowhere else."""

from __future__ import annotations

import asyncio
import logging
import os
import signal
import socket
from collections.abc import AsyncIterator, Callable, Mapping
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy.ext.asyncio import AsyncSession
from telegram import BotCommand
from telegram.error import InvalidToken, TelegramError

from bot import web
from bot.clocks import Calendar, Machine, SystemCalendar, SystemMachine
from bot.flows import failing
from bot.handlers import MENU, STORED, Stored, handlers
from bot.logs import set_up_logs
from bot.receiving import InboxWorker, Poller, QuietApplication, add_handlers, built, dispatch
from bot.sending import Sender, TokenRefused
from bot.settings import Settings
from bot.ticks import Ticker, ticking
from db import links
from db import migrate as migrations
from db.engine import Database, opened, serving_lock

log = logging.getLogger(__name__)


class CannotServe(RuntimeError):
    """Something that running needs is missing or refused; the message says what to do."""


@dataclass(frozen=True, slots=True)
class Running:
    """The running program, for whoever stands around it."""

    database: Database
    ticker: Ticker
    bot_username: str
    failed: asyncio.Future[None]
    """Ends with an error when a loop has died; never ends well by itself."""

    async def until(self, stop: asyncio.Event) -> None:
        """Waits for a wish to stop. Raises CannotServe when the token is refused, else what a loop died of."""
        stopping: asyncio.Future[Any] = asyncio.ensure_future(stop.wait())
        await asyncio.wait([stopping, self.failed], return_when=asyncio.FIRST_COMPLETED)
        stopping.cancel()
        if self.failed.done():
            try:
                self.failed.result()
            except TokenRefused as error:
                raise CannotServe(str(error)) from None


@asynccontextmanager
async def running(settings: Settings, *, calendar: Calendar, machine: Machine) -> AsyncIterator[Running]:
    """Everything that `serve` does, while the block runs. Raises CannotServe before it begins."""
    if settings.token is None:
        raise CannotServe("there is no token: set EASEWARD_TOKEN or EASEWARD_TOKEN_FILE")
    with serving_lock(settings.database_url):
        await migrations.upgrade(settings.database_url)
        async with opened(settings.database_url) as database:
            application = built(settings.token.get_secret_value(), settings.api_url)
            username = await _meet_platform(application, settings)
            add_handlers(application, handlers(username))
            try:
                async with _loops(settings, database, application, username, calendar, machine) as program:
                    yield program
            finally:
                await application.shutdown()


async def _meet_platform(application: QuietApplication, settings: Settings) -> str:
    """Asks the platform who the bot is and sets its menu; waits for a platform that does not answer yet."""
    pause = 0.5
    while True:
        try:
            await application.initialize()
            await application.bot.set_my_commands([BotCommand(name, text) for name, text in MENU])
            return str(application.bot.username)
        except InvalidToken:
            raise CannotServe("the platform refuses the token: check EASEWARD_TOKEN") from None
        except TelegramError as error:
            log.warning("platform-not-reached", extra={"error": type(error).__name__, "pause": pause})
            await asyncio.sleep(pause)
            pause = min(30.0, pause * 2)


@asynccontextmanager
async def _loops(
    settings: Settings,
    database: Database,
    application: QuietApplication,
    username: str,
    calendar: Calendar,
    machine: Machine,
) -> AsyncIterator[Running]:
    worker = f"{socket.gethostname()}:{os.getpid()}"
    hooks = failing.Hooks(calendar, username)
    sender = Sender(
        database,
        application.bot,
        calendar=calendar,
        machine=machine,
        worker=worker,
        on_unreachable=hooks.unreachable,
        per_second=max(1, int(settings.messages_per_second)),
        chat_pace=settings.chat_pace,
    )
    inbox = InboxWorker(
        database,
        application.bot,
        handle=_handling(application),
        on_failed=hooks.update_failed,
        machine=machine,
        worker=worker,
    )
    poller = Poller(database, application.bot, calendar=calendar)
    ticker = Ticker(database, calendar, username)
    tasks = [asyncio.create_task(loop.run()) for loop in (sender, inbox, poller)]
    failed = asyncio.get_running_loop().create_future()
    for task in tasks:
        task.add_done_callback(lambda done: _pass_on(done, failed))
    try:
        async with ticking(ticker, seconds=settings.tick_seconds), web.health(settings.health_port, database):
            yield Running(database, ticker, username, failed)
    finally:
        tasks[2].cancel()
        inbox.stop()
        await asyncio.wait([tasks[1]], timeout=5)
        sender.stop()
        await asyncio.wait([tasks[0]], timeout=5)
        for task in tasks:
            task.cancel()
        await asyncio.gather(*tasks, return_exceptions=True)
        failed.cancel()


def _pass_on(done: asyncio.Task[None], failed: asyncio.Future[None]) -> None:
    if not done.cancelled() and done.exception() is not None and not failed.done():
        failed.set_exception(done.exception() or RuntimeError("a loop ended"))


def _handling(application: QuietApplication) -> Callable[..., Any]:
    async def handle(
        session: AsyncSession, update: Mapping[str, Any], document: bytes | None, stored_at: datetime
    ) -> None:
        token = STORED.set(Stored(stored_at, document))
        try:
            await dispatch(application, update)
        finally:
            STORED.reset(token)

    return handle


# --- the commands that need all of it ------------------------------------------------------------


async def serve(settings: Settings) -> None:
    """Runs until a signal asks to stop, or a loop dies."""
    set_up_logs(settings.log_level)
    stop = asyncio.Event()
    loop = asyncio.get_running_loop()
    for name in (signal.SIGINT, signal.SIGTERM):
        loop.add_signal_handler(name, stop.set)
    async with running(settings, calendar=SystemCalendar(), machine=SystemMachine()) as program:
        log.info("serving", extra={"bot": program.bot_username})
        await program.until(stop)
    log.info("stopped")


async def migrate(settings: Settings, say: Callable[[str], None]) -> None:
    """Brings the database to this program's tables, alone with it."""
    with serving_lock(settings.database_url):
        say(f"the tables are at version {await migrations.upgrade(settings.database_url)}")


async def invite_coach(settings: Settings, say: Callable[[str], None]) -> None:
    """Prints a one-time link for a coach."""
    if settings.token is None:
        raise CannotServe("there is no token: set EASEWARD_TOKEN or EASEWARD_TOKEN_FILE")
    await migrations.upgrade(settings.database_url)
    application = built(settings.token.get_secret_value(), settings.api_url)
    try:
        await application.bot.initialize()
        username = application.bot.username
    except InvalidToken:
        raise CannotServe("the platform refuses the token: check EASEWARD_TOKEN") from None
    except TelegramError as error:
        raise CannotServe(f"the platform does not answer at {settings.api_url}: {type(error).__name__}") from None
    finally:
        await application.bot.shutdown()
    now = SystemCalendar().now()
    async with opened(settings.database_url) as database:
        token = await database.write(lambda session: links.new_coach_link(session, now))
    say(f"https://t.me/{username}?start={token}")
    say(f"It opens once, within {links.COACH_LINK_DAYS} days.")
