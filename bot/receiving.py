"""From the chat to the inbox, and from the inbox to the use cases: stored before it is acknowledged, handled once."""

from __future__ import annotations

import asyncio
import json
import logging
from collections.abc import Awaitable, Callable, Coroutine, Mapping, Sequence
from contextvars import ContextVar
from datetime import datetime
from typing import Any, TypeVar
from urllib.parse import urlencode

from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot, Update
from telegram.error import Conflict, InvalidToken, TelegramError
from telegram.ext import Application, ApplicationBuilder, BaseHandler

from bot.clocks import Calendar, Machine
from bot.metrics import Metrics
from bot.pulling import POLL_SECONDS, Puller
from bot.sending import TokenRefused
from bot.transport import AiohttpRequest, TooMany
from db import inbox
from db.engine import Database
from db.inbox import LEFT_OUT, Behind, Claimed, LeaseLost
from db.trouble import steadily
from db.writer import Job

T = TypeVar("T")

log = logging.getLogger(__name__)

LEASE_SECONDS = 60.0
LONGEST_PAUSE = 30.0
POLL_TIMEOUT = 25
"""Seconds that the platform holds an empty answer back."""
ALLOWED_UPDATES = ("message", "edited_message", "callback_query", "my_chat_member")
LARGEST_DOCUMENT = 5 * 2**20
"""Bytes; a programme file is far smaller, and says so itself when it is not."""

Transport = Callable[..., AiohttpRequest]
"""Makes a way to the platform; it is given what `AiohttpRequest` is given."""

Handle = Callable[[AsyncSession, Mapping[str, Any], bytes | None, datetime], Awaitable[None]]
"""Handles one update inside the write: session, update, document, the moment at which it was stored."""

OnFailed = Callable[[AsyncSession, int, int], Awaitable[None]]
"""Told in a write of its own, with chat and update, that an update failed for good."""


class Poller:
    """Asks the platform for updates; the next question, which acknowledges them, comes after they are committed.

    The chat library would read each update first, and end at one that it cannot read; here that is the handling's
    trouble, with that one update alone.
    """

    def __init__(
        self,
        database: Database,
        bot: Bot,
        *,
        calendar: Calendar,
        poll_timeout: int = POLL_TIMEOUT,
        transport: Transport = AiohttpRequest,
    ) -> None:
        self._database = database
        self._transport = transport
        self._address = f"{bot.base_url}/getUpdates"
        self._calendar = calendar
        self._clock = bot.request.clock if isinstance(bot.request, AiohttpRequest) else None
        self._poll_timeout = poll_timeout

    async def run(self) -> None:
        """Polls until cancelled; errors on the way pause it, a refused token ends it."""
        timeout = self._poll_timeout + 15.0
        async with self._transport(connections=1, read_timeout=timeout, clock=self._clock) as request:
            pause = 1.0
            while True:
                try:
                    await self._once(request)
                    pause = 1.0
                except InvalidToken as error:
                    raise TokenRefused("the platform refuses the token: check EASEWARD_TOKEN") from error
                except TooMany as error:
                    await asyncio.sleep(error.seconds)
                except TelegramError as error:
                    action = "polling-conflict" if isinstance(error, Conflict) else "polling-failed"
                    log.warning(action, extra={"error": type(error).__name__, "pause": pause})
                    await asyncio.sleep(pause)
                    pause = min(LONGEST_PAUSE, pause * 2)

    async def _once(self, request: AiohttpRequest) -> None:
        offset = await steadily(self._next_offset)
        asked = {"timeout": self._poll_timeout, "allowed_updates": json.dumps(ALLOWED_UPDATES)}
        if offset is not None:
            asked["offset"] = offset
        found: Any = await request.post(f"{self._address}?{urlencode(asked)}")
        if not isinstance(found, list):
            raise TelegramError("the platform's answer is no list of updates")
        updates = [update for update in found if isinstance(update, dict) and inbox.is_update(update)]
        if updates:
            now = self._calendar.now()
            await steadily(lambda: self._database.write(lambda session: inbox.store_fetched(session, updates, now)))
            log.debug("updates-stored", extra={"count": len(updates)})

    async def _next_offset(self) -> int | None:
        async with self._database.reading() as session:
            return await inbox.next_offset(session, self._calendar.now())


class InboxWorker(Puller[Claimed]):
    """Handles stored updates: each chat in order, many chats at once, effect and "handled" in one commit."""

    def __init__(
        self,
        database: Database,
        bot: Bot,
        *,
        handle: Handle,
        on_failed: OnFailed,
        machine: Machine,
        worker: str,
        concurrency: int = 16,
        metrics: Metrics | None = None,
    ) -> None:
        super().__init__(database, topics=(inbox.TOPIC,), concurrency=concurrency)
        self._bot = bot
        self._handle = handle
        self._on_failed = on_failed
        self._machine = machine
        self._worker = worker
        self._outcomes = (metrics or Metrics()).handled
        self._behind: Behind | None = None

    async def begin(self) -> None:
        """Where only one process serves, frees what an earlier one had leased."""
        if self.database.alone:
            await self._write(lambda session: inbox.release_others(session, self._worker))

    async def finish(self) -> None:
        """Gives back what was leased and not handled, for other workers."""
        if not self.database.alone:
            await self.database.write(lambda session: inbox.release(session, self._worker))

    async def idle_seconds(self) -> float:
        """Until the next update that failed may be tried again, five seconds at most."""
        if self._behind is None or self._behind.next_at is None:
            return POLL_SECONDS
        return max(0.01, min(POLL_SECONDS, self._behind.next_at - self._machine.now()))

    async def claim(self, limit: int) -> Sequence[Claimed]:
        """The next open update of as many chats."""
        now = self._machine.now()
        found, self._behind = await self.database.write(lambda session: self._claimed(session, limit, now))
        self.more_behind = self._behind is None or self._behind.waits
        return found

    async def _claimed(self, session: AsyncSession, limit: int, now: float) -> tuple[list[Claimed], Behind | None]:
        """Updates to handle, and what waits behind them if these are all that may be handled now."""
        if not self.database.alone:
            await inbox.recover(session, now)
        found = await inbox.claim(session, self._worker, machine_now=now, lease_seconds=LEASE_SECONDS, limit=limit)
        return found, await inbox.behind(session) if len(found) < limit else None

    async def work(self, row: Claimed) -> None:
        """Fetches the file that an update carries, then handles it in one write."""
        try:
            if row.tries > inbox.BEGUN:
                raise EndedTheProcess(f"update {row.update_id} was begun {inbox.BEGUN} times and never ended")
            carrying = await self._with_document(row)
            await self._write(lambda session: self._job(session, carrying))
            self._outcomes.labels("handled").inc()
        except LeaseLost:
            log.warning("update-lease-lost", extra={"update": row.update_id})
        except Exception as error:
            log.exception("update-failed", extra={"update": row.update_id, "tries": row.tries})
            await self._after(row, type(error).__name__)

    async def _job(self, session: AsyncSession, row: Claimed) -> None:
        await self._handle(session, row.payload, row.document, row.stored_at)
        await session.flush()
        if not await inbox.handled(session, row.update_id, self._worker):
            raise LeaseLost(f"update {row.update_id} was taken over by another worker")

    async def _after(self, row: Claimed, failure: str) -> None:
        """Another try, or the end of it and telling so; when telling fails too, the end alone is written."""
        try:
            await self._write(lambda session: self._record(session, row, failure, tell=True))
        except LeaseLost:
            log.warning("update-lease-lost", extra={"update": row.update_id})
        except Exception:
            log.exception("telling-failed", extra={"update": row.update_id})
            await self._write(lambda session: self._record(session, row, failure, tell=False))

    async def _write(self, job: Job[T]) -> T:
        return await steadily(lambda: self.database.write(job))

    async def _record(self, session: AsyncSession, row: Claimed, failure: str, *, tell: bool) -> None:
        now = self._machine.now()
        failed = await inbox.retry_or_fail(session, row.update_id, self._worker, failure=failure, machine_now=now)
        self._outcomes.labels("failed" if failed else "again").inc()
        if failed and tell:
            await self._on_failed(session, row.chat, row.update_id)

    async def _with_document(self, row: Claimed) -> Claimed:
        message = row.payload.get("message") or {}
        document = message.get("document") if "animation" not in message else None
        if document is None or row.document is not None or LEFT_OUT in row.payload:
            return row
        carrying = inbox.with_document(row, *await self._fetched(row, document))
        if not await self._write(lambda session: inbox.keep_document(session, carrying, self._worker)):
            raise LeaseLost(f"update {row.update_id} was taken over by another worker")
        return carrying

    async def _fetched(self, row: Claimed, document: Mapping[str, Any]) -> tuple[bytes | None, str | None]:
        """The file's bytes, or the reason why it is left out: "too-large" or "not-fetched"."""
        if (document.get("file_size") or 0) > LARGEST_DOCUMENT:
            return None, "too-large"
        try:
            file = await self._bot.get_file(document["file_id"])
            body = bytes(await file.download_as_bytearray())
        except TelegramError as error:
            log.warning("document-not-fetched", extra={"update": row.update_id, "error": type(error).__name__})
            return None, "not-fetched"
        return (None, "too-large") if len(body) > LARGEST_DOCUMENT else (body, None)


class EndedTheProcess(RuntimeError):
    """Handling an update has ended the process each time; it is not begun again."""


# --- the chat library, driven by hand ---------------------------------------------------------------------------------


class NotHandled(RuntimeError):
    """No handler ran for an update: there is none, or its context could not be built."""


_RAN: ContextVar[list[bool]] = ContextVar("ran")


class QuietApplication(Application[Any, Any, Any, Any, Any, Any]):
    """An Application whose handlers' exceptions come out instead of being logged."""

    async def initialize(self) -> None:
        """Asks who the bot is. Raises InvalidToken, all closed, in words of its own: the library's quote the token."""
        try:
            await super().initialize()
            return
        except InvalidToken:
            refused = InvalidToken("the platform refuses the token")
        await self.bot.shutdown()
        raise refused

    async def process_error(self, update: object, error: Exception, *args: Any, **more: Any) -> bool:
        """Raises the handler's exception, so that its transaction is undone."""
        raise error


def built(token: str, api_url: str, transport: Transport = AiohttpRequest) -> QuietApplication:
    """The chat library's application on our transport, without its own receiving loop and without handlers."""
    application = (
        ApplicationBuilder()
        .application_class(QuietApplication)
        .token(token)
        .base_url(f"{api_url.rstrip('/')}/bot")
        .base_file_url(f"{api_url.rstrip('/')}/file/bot")
        .request(transport())
        .get_updates_request(transport(connections=1))
        .updater(None)
        .job_queue(None)
        .build()
    )
    if not isinstance(application, QuietApplication):
        raise TypeError(f"the library built a {type(application).__name__}")
    return application


def add_handlers(application: QuietApplication, handlers: Sequence[BaseHandler[Any, Any, Any]]) -> None:
    """Adds handlers in the order in which they are asked; each counts when it runs."""
    for handler in handlers:
        handler.callback = _counted(handler.callback)
        application.add_handler(handler)


def _counted(callback: Callable[..., Coroutine[Any, Any, None]]) -> Callable[..., Coroutine[Any, Any, None]]:
    async def run(update: Any, context: Any) -> None:
        _RAN.get().append(True)
        await callback(update, context)

    return run


async def dispatch(application: QuietApplication, update: Mapping[str, Any]) -> None:
    """Runs the one handler that an update has, in this task. Raises what it raises, or NotHandled."""
    parsed = Update.de_json(dict(update), application.bot)
    ran: list[bool] = []
    token = _RAN.set(ran)
    try:
        await application.process_update(parsed)
    finally:
        _RAN.reset(token)
    if not ran:
        raise NotHandled(f"update {update.get('update_id')} had no handler that ran")
