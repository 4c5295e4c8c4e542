"""From the outbox to the chat: every message is marked before and after its request, both marks fenced."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Awaitable, Callable, Mapping, Sequence
from typing import Any

from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot, InlineKeyboardMarkup, LinkPreviewOptions, Message
from telegram.error import BadRequest, Forbidden, InvalidToken, NetworkError, RetryAfter, TelegramError, TimedOut

from bot.budget import Budget
from bot.clocks import Calendar, Machine
from bot.pulling import POLL_SECONDS, Puller
from bot.transport import NeverConnected
from db import outbox
from db.delivery import Failure, Kind, Reason, State
from db.engine import Database
from db.outbox import Letter, Mark, OnUnreachable

log = logging.getLogger(__name__)

LEASE_SECONDS = 60.0
"""Longer than any request may take, so that a living worker keeps what it leased."""


class TokenRefused(RuntimeError):
    """The platform does not know the bot's token; nothing can be sent until it is mended."""


class Sender(Puller[Letter]):
    """Drains the outbox: the most urgent lane first, one message a chat at a time, within the budget."""

    def __init__(
        self,
        database: Database,
        bot: Bot,
        *,
        calendar: Calendar,
        machine: Machine,
        worker: str,
        on_unreachable: OnUnreachable,
        per_second: int = 30,
        concurrency: int = 16,
        chat_pace: float = 1.0,
    ) -> None:
        super().__init__(database, topic=outbox.TOPIC, concurrency=concurrency)
        self._bot = bot
        self._calendar = calendar
        self._machine = machine
        self._worker = worker
        self._on_unreachable = on_unreachable
        self._budget = Budget(per_second)
        self._chat_pace = chat_pace
        self._last_sent: dict[int, float] = {}

    async def begin(self) -> None:
        """What was being sent when an earlier process died is dealt with like a lost answer."""
        now, machine_now = self._calendar.now(), self._machine.now()
        count = await self.database.write(
            lambda session: outbox.recover(session, machine_now=machine_now, now=now, all_but=self._worker)
        )
        if count:
            log.warning("sending-recovered", extra={"count": count})

    async def finish(self) -> None:
        """Gives back what was leased and never begun."""
        await self.database.write(lambda session: outbox.release(session, self._worker))

    async def claim(self, limit: int) -> Sequence[Letter]:
        """As many due messages as budget and concurrency allow."""
        machine_now = self._machine.now()
        granted = self._budget.take(limit, machine_now)
        if not granted:
            return []
        paced = self._paced(machine_now)
        now = self._calendar.now()

        async def job(session: AsyncSession) -> list[Letter]:
            return await outbox.claim(
                session,
                self._worker,
                machine_now=machine_now,
                now=now,
                lease_seconds=LEASE_SECONDS,
                limit=granted,
                paced=paced,
            )

        letters = await self.database.write(job)
        self._budget.give_back(granted - len(letters))
        return letters

    def _paced(self, now: float) -> list[int]:
        """Chats that had a message less than the pace ago."""
        if not self._chat_pace:
            return []
        self._last_sent = {chat: at for chat, at in self._last_sent.items() if now - at < self._chat_pace}
        return list(self._last_sent)

    async def idle_seconds(self) -> float:
        """Until the budget, a paced chat or a message in backoff is ready, five seconds at most."""
        now = self._machine.now()
        waits = [POLL_SECONDS, self._budget.wait(now) or POLL_SECONDS]
        waits += [at + self._chat_pace - now for at in self._last_sent.values()]
        async with self.database.reading() as session:
            due = await outbox.next_due(session, now)
        if due is not None:
            waits.append(due - now)
        return max(0.01, min(waits))

    async def work(self, row: Letter) -> None:
        """Sends one message. Its outcome is written down even when the worker is being cancelled."""
        mark = Mark(row.id, self._worker, State.SENDING, self._calendar.now())
        if not await self.database.merged(outbox.apply_marks, mark):
            return
        outcome = asyncio.ensure_future(self._send(row))
        try:
            await asyncio.shield(outcome)
        except asyncio.CancelledError:
            outcome.cancel()
            await asyncio.gather(outcome, return_exceptions=True)
            raise

    async def _send(self, letter: Letter) -> None:
        try:
            message_id = await self._request(letter)
        except TelegramError as error:
            await self._failed(letter, failure_of(error))
        except (KeyError, TypeError, ValueError) as error:
            await self._failed(letter, Failure(Reason.BROKEN, type(error).__name__))
        else:
            if letter.kind is not Kind.TAP:
                self._last_sent[letter.chat] = self._machine.now()
            sent = Mark(letter.id, self._worker, State.SENT, self._calendar.now(), message_id)
            if not await self.database.merged(outbox.apply_marks, sent):
                log.warning("sent-after-lease", extra={"outbox": letter.id})

    async def _request(self, letter: Letter) -> int | None:
        result = await _METHODS[letter.method](self._bot, letter)
        return result.message_id if isinstance(result, Message) else None

    async def _failed(self, letter: Letter, failure: Failure) -> None:
        now, machine_now = self._calendar.now(), self._machine.now()
        if failure.reason is Reason.TOO_MANY:
            self._budget.complain(failure.retry_after, machine_now)

        async def job(session: AsyncSession) -> None:
            following = await outbox.failed(
                session,
                letter,
                self._worker,
                failure,
                machine_now=machine_now,
                now=now,
                on_unreachable=self._on_unreachable,
            )
            state = following.state if following else "lease-lost"
            log.info("send-failed", extra={"outbox": letter.id, "reason": str(failure.reason), "state": str(state)})

        await self.database.write(job)
        if failure.reason is Reason.TOKEN_REFUSED:
            raise TokenRefused("the platform refuses the token: check EASEWARD_TOKEN")


def failure_of(error: TelegramError) -> Failure:
    """What an error of the platform or of the way to it means for a message."""
    name = type(error).__name__
    if isinstance(error, RetryAfter):
        pause = error.retry_after
        seconds = pause if isinstance(pause, int | float) else pause.total_seconds()
        return Failure(Reason.TOO_MANY, name, float(seconds))
    if isinstance(error, Forbidden):
        return Failure(Reason.BLOCKED, name)
    if isinstance(error, InvalidToken):
        return Failure(Reason.TOKEN_REFUSED, name)
    if isinstance(error, BadRequest):
        return Failure(_bad_request(str(error).lower()), name)
    if isinstance(error, NeverConnected):
        return Failure(Reason.NEVER_CONNECTED, name)
    if isinstance(error, TimedOut):
        return Failure(Reason.ANSWER_LOST, name)
    return Failure(Reason.SERVER_ERROR if isinstance(error, NetworkError) else Reason.BROKEN, name)


def _bad_request(text: str) -> Reason:
    if "message is not modified" in text:
        return Reason.NOT_MODIFIED
    if "query is too old" in text or "query id is invalid" in text:
        return Reason.QUERY_TOO_OLD
    if "chat not found" in text:
        return Reason.BLOCKED
    return Reason.BAD_REQUEST


# --- from a stored payload to the library's call ----------------------------------------------------------------------


def _typed(payload: Mapping[str, Any]) -> dict[str, Any]:
    """A payload with the library's own types in it; what only the outbox reads is left out."""
    found = {key: value for key, value in payload.items() if key not in ("again", "message_id")}
    if found.get("reply_markup") is not None:
        found["reply_markup"] = InlineKeyboardMarkup.de_json(found["reply_markup"], None)
    if found.get("link_preview_options") is not None:
        found["link_preview_options"] = LinkPreviewOptions.de_json(found["link_preview_options"], None)
    return found


def _edited(letter: Letter) -> int:
    found = letter.message_id if letter.message_id is not None else letter.payload.get("message_id")
    if found is None:
        raise ValueError(f"message {letter.id} edits a message that has no id")
    return int(found)


async def _send_message(bot: Bot, letter: Letter) -> Message:
    return await bot.send_message(letter.chat, **_typed(letter.payload))


async def _edit_text(bot: Bot, letter: Letter) -> Message | bool:
    payload = _typed(letter.payload)
    return await bot.edit_message_text(chat_id=letter.chat, message_id=_edited(letter), **payload)


async def _edit_markup(bot: Bot, letter: Letter) -> Message | bool:
    payload = _typed(letter.payload)
    return await bot.edit_message_reply_markup(chat_id=letter.chat, message_id=_edited(letter), **payload)


async def _answer_tap(bot: Bot, letter: Letter) -> bool:
    return await bot.answer_callback_query(**letter.payload)


Call = Callable[[Bot, Letter], Awaitable[Message | bool]]

_METHODS: Mapping[str, Call] = {
    "send_message": _send_message,
    "edit_message_text": _edit_text,
    "edit_message_reply_markup": _edit_markup,
    "answer_callback_query": _answer_tap,
}
"""How each method that the outbox may hold is called."""
