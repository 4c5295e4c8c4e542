"""The one composition root: everything is opened, wired and closed here, and nowhere else."""

from __future__ import annotations

import asyncio
import logging
import signal
from collections.abc import AsyncIterator, Callable, Mapping
from contextlib import asynccontextmanager
from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from functools import partial
from typing import Any
from urllib.parse import urlsplit

from pydantic import SecretStr
from sqlalchemy.ext.asyncio import AsyncSession
from telegram import BotCommand
from telegram.error import InvalidToken, TelegramError

from bot import failing, heartbeat, web, webhook
from bot.alive import alive, worker_name
from bot.clocks import Calendar, Machine, PlatformClock, SystemCalendar, SystemMachine
from bot.commands import menu
from bot.ending import LAST_SECONDS, cancelled, end_in, finished
from bot.handlers import STORED, Stored, handlers
from bot.heartbeat import Heartbeat
from bot.lead import Lead
from bot.logs import set_up_logs
from bot.metrics import Metrics
from bot.receiving import ALLOWED_UPDATES, InboxWorker, Poller, QuietApplication, add_handlers, built, dispatch
from bot.rehearser import Rehearser
from bot.sending import Sender, TokenRefused
from bot.settings import Settings
from bot.ticks import Ticker, ticking
from bot.transport import AiohttpRequest, TooMany
from bot.words import LOCALES
from db import migrate
from db.engine import Database, answers, opened, serving_lock
from db.trouble import steadily

log = logging.getLogger(__name__)


STEER_SECONDS = 60.0
"""How often the machine clock is set by the database's, where several workers share one. Our own choice."""


class Role(StrEnum):
    """What a serving process does. One of those that take updates leads: it ticks, and asks for updates."""

    ALL = "all"
    UPDATES = "updates"
    SENDER = "sender"


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
async def running(
    settings: Settings, *, calendar: Calendar, machine: SystemMachine, role: Role = Role.ALL
) -> AsyncIterator[Running]:
    """Everything that `serve` does, while the block runs. Raises CannotServe before it begins."""
    token = token_of(settings)
    if settings.webhook_url and role is not Role.SENDER:
        webhook.checked(settings.webhook_url, _shown(settings.webhook_secret), settings.web_port)
    if settings.ping_url is not None:
        heartbeat.checked(settings.ping_url.get_secret_value())
    await steadily(lambda: answers(settings.database_url))
    async with serving_lock(settings.database_url):
        await steadily(lambda: migrate.upgrade(settings.database_url))
        async with opened(settings.database_url) as database:
            await _share_clock(database, machine)
            application = built(token, settings.api_url)
            username = await _meet_platform(application)
            add_handlers(application, handlers(username, settings.installation))
            house = _House(settings, database, application, username, calendar, machine, Metrics())
            try:
                async with house.loops(role) as program:
                    yield program
            finally:
                await application.shutdown()


def token_of(settings: Settings) -> str:
    """The bot's token. Raises CannotServe."""
    if settings.token is None:
        raise CannotServe("there is no token: set EASEWARD_TOKEN or EASEWARD_TOKEN_FILE")
    return settings.token.get_secret_value()


def refused() -> CannotServe:
    """What is to be said when the platform does not know the token."""
    return CannotServe("the platform refuses the token: check EASEWARD_TOKEN")


def _shown(secret: SecretStr | None) -> str | None:
    return None if secret is None else secret.get_secret_value()


async def _share_clock(database: Database, machine: SystemMachine) -> None:
    """Leases and pauses are in the time of the database, where several hosts share it."""
    epoch = await steadily(database.epoch)
    if epoch is not None:
        machine.steer(epoch)


async def _meet_platform(application: QuietApplication) -> str:
    """Asks the platform who the bot is; waits for a platform that does not answer yet."""
    pause = 0.5
    while True:
        try:
            await application.initialize()
            return str(application.bot.username)
        except InvalidToken:
            raise refused() from None
        except TelegramError as error:
            pause = await _rest("platform-not-reached", error, pause)


async def _show_menus(application: QuietApplication) -> None:
    """Sets the menu in each language, while others work already; the source language's is everybody else's too."""
    pause = 0.5
    for language in LOCALES:
        commands, code = (
            [BotCommand(name, text) for name, text in menu(language)],
            None if language == "en" else language,
        )
        while True:
            try:
                await application.bot.set_my_commands(commands, language_code=code)
                break
            except TelegramError as error:
                pause = await _rest("platform-not-reached", error, pause)


async def _rest(action: str, error: TelegramError, pause: float) -> float:
    log.warning(action, extra={"error": type(error).__name__, "pause": pause})
    await asyncio.sleep(error.seconds if isinstance(error, TooMany) else pause)
    return min(30.0, pause * 2)


@dataclass(frozen=True, slots=True)
class _House:
    """What the loops of this process have in common."""

    settings: Settings
    database: Database
    application: QuietApplication
    username: str
    calendar: Calendar
    machine: SystemMachine
    metrics: Metrics

    @asynccontextmanager
    async def loops(self, role: Role) -> AsyncIterator[Running]:
        """The loops of a role, while the block runs."""
        worker = worker_name()
        async with alive(self.database, self.machine, worker), self._working(role, worker) as program:
            yield program

    @asynccontextmanager
    async def _working(self, role: Role, worker: str) -> AsyncIterator[Running]:
        hooks = failing.Hooks(self.calendar, self.username, self.settings.installation)
        request = self.application.bot.request
        real = isinstance(self.calendar, SystemCalendar) and isinstance(request, AiohttpRequest)
        clock = request.clock if real else None
        ticker = Ticker(
            self.database,
            self.calendar,
            self.username,
            clock=clock,
            installation=self.settings.installation,
            metrics=self.metrics,
        )
        failed = asyncio.get_running_loop().create_future()
        sender = self._sender(worker, hooks) if role is not Role.UPDATES else None
        inbox = self._inbox(worker, hooks) if role is not Role.SENDER else None
        lead = self._lead(worker, ticker, clock) if role is not Role.SENDER else None
        rehearser = self._rehearser(worker) if role is not Role.SENDER else None
        tasks = {
            name: asyncio.create_task(loop.run())
            for name, loop in (
                ("lead", lead),
                ("inbox", inbox),
                ("rehearser", rehearser),
                ("sender", sender),
                ("clock", _Steering(self)),
            )
            if loop is not None
        }
        for task in tasks.values():
            task.add_done_callback(lambda done: _pass_on(done, failed))
        post = self._webhook() if role is not Role.SENDER else {}
        try:
            figures = partial(self.metrics.text, self.database, self.calendar, self.settings.backup_hours)
            async with web.serving(self.settings.web_host, self.settings.web_port, self.database, post, figures):
                tasks["menus"] = asyncio.create_task(_show_menus(self.application))
                tasks["menus"].add_done_callback(lambda done: _pass_on(done, failed))
                yield Running(self.database, ticker, self.username, failed)
        finally:
            ticker.stop()
            loops = {"inbox": inbox, "sender": sender}
            pulling = {name: [(loop, tasks.pop(name))] for name, loop in loops.items() if loop is not None}
            await finished(pulling.get("inbox", []), pulling.get("sender", []), tasks.values())
            failed.cancel()

    def _sender(self, worker: str, hooks: failing.Hooks) -> Sender:
        return Sender(
            self.database,
            self.application.bot,
            calendar=self.calendar,
            machine=self.machine,
            worker=worker,
            on_unreachable=hooks.unreachable,
            per_second=max(1, int(self.settings.messages_per_second)),
            chat_pace=self.settings.chat_pace,
            metrics=self.metrics,
        )

    def _inbox(self, worker: str, hooks: failing.Hooks) -> InboxWorker:
        return InboxWorker(
            self.database,
            self.application.bot,
            handle=_handling(self.application, self.machine),
            on_failed=hooks.update_failed,
            machine=self.machine,
            worker=worker,
            metrics=self.metrics,
        )

    def _rehearser(self, worker: str) -> Rehearser:
        return Rehearser(
            self.database,
            calendar=self.calendar,
            machine=self.machine,
            worker=worker,
            bot_username=self.username,
        )

    def _lead(self, worker: str, ticker: Ticker, clock: PlatformClock | None) -> Lead:
        async def duties() -> None:
            await self._choose_way_in()
            async with ticking(ticker, seconds=self.settings.tick_seconds), self._heard(ticker, clock):
                if self.settings.webhook_url:
                    await asyncio.Event().wait()
                await Poller(self.database, self.application.bot, calendar=self.calendar).run()

        return Lead(self.database, machine=self.machine, worker=worker, duties=duties)

    @asynccontextmanager
    async def _heard(self, ticker: Ticker, clock: PlatformClock | None) -> AsyncIterator[None]:
        """Tells the operator's monitoring that all is well, if an address is set for it, while the block runs."""
        url = _shown(self.settings.ping_url)
        if not url:
            yield
            return
        heartbeat = Heartbeat(
            self.database,
            ticker,
            calendar=self.calendar,
            url=url,
            backup_hours=self.settings.backup_hours,
            tick_seconds=self.settings.tick_seconds,
            clock=clock,
        )
        task = asyncio.create_task(heartbeat.run())
        try:
            yield
        finally:
            await cancelled([task], until=asyncio.get_running_loop().time() + 1)

    async def _choose_way_in(self) -> None:
        """Tells the platform where to bring updates, or that they are asked for; waits until it has heard it."""
        pause, bot, url = 0.5, self.application.bot, self.settings.webhook_url
        secret = _shown(self.settings.webhook_secret)
        while True:
            try:
                if url:
                    await bot.set_webhook(url, secret_token=secret, allowed_updates=ALLOWED_UPDATES)
                else:
                    await bot.delete_webhook()
                return
            except TelegramError as error:
                pause = await _rest("way-in-not-set", error, pause)

    def _webhook(self) -> web.Post:
        secret = _shown(self.settings.webhook_secret)
        if not self.settings.webhook_url or secret is None:
            return {}
        return {urlsplit(self.settings.webhook_url).path: webhook.receiving(self.database, self.calendar, secret)}


@dataclass(frozen=True, slots=True)
class _Steering:
    """Keeps the machine clock with the one that all workers share."""

    house: _House

    async def run(self) -> None:
        while True:
            await asyncio.sleep(STEER_SECONDS)
            await _share_clock(self.house.database, self.house.machine)


def _pass_on(done: asyncio.Task[None], failed: asyncio.Future[None]) -> None:
    if not done.cancelled() and done.exception() is not None and not failed.done():
        failed.set_exception(done.exception() or RuntimeError("a loop ended"))


def _handling(application: QuietApplication, machine: Machine) -> Callable[..., Any]:
    async def handle(
        session: AsyncSession, update: Mapping[str, Any], document: bytes | None, stored_at: datetime
    ) -> None:
        token = STORED.set(Stored(stored_at, document, machine.now()))
        try:
            await dispatch(application, update)
        finally:
            STORED.reset(token)

    return handle


async def serve(settings: Settings, role: Role) -> None:
    """Runs until a signal asks to stop, or a loop dies."""
    set_up_logs(settings.log_level)
    stop = asyncio.Event()
    loop = asyncio.get_running_loop()
    for name in (signal.SIGINT, signal.SIGTERM):
        loop.add_signal_handler(name, stop.set)
    async with running(settings, calendar=SystemCalendar(), machine=SystemMachine(), role=role) as program:
        log.info("serving", extra={"bot": program.bot_username, "kind": str(role)})
        await program.until(stop)
        end_in(LAST_SECONDS)
    log.info("stopped")
