"""From the outbox to the chat: every message is marked before and after its request, both marks fenced."""

from __future__ import annotations

import asyncio
import logging
import secrets
from collections.abc import Mapping, Sequence
from typing import Any

from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot, InputFile, Message
from telegram.error import BadRequest, Forbidden, InvalidToken, NetworkError, TelegramError, TimedOut

from bot.budget import Budget
from bot.calls import File, arguments_of, attachment_of, uploaded
from bot.clocks import Calendar, Machine
from bot.pulling import POLL_SECONDS, Puller
from bot.transport import NeverConnected, TooMany
from db import outbox, pace
from db.attachments import found, remember_upload
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
        self._worker = f"{worker}-{secrets.token_hex(4)}"
        """No two lives of a process share a name, so that one never takes the other's leases for its own."""
        self._on_unreachable = on_unreachable
        self._budget = Budget(per_second)
        self._chat_pace = chat_pace
        self._last_sent: dict[int, float] = {}
        self._recovered_at = machine.now()

    async def begin(self) -> None:
        """What was being sent when an earlier process died is dealt with like a lost answer."""
        now, machine_now = self._calendar.now(), self._machine.now()
        count = await self.database.write(
            lambda session: outbox.recover(session, machine_now=machine_now, now=now, all_but=self._worker)
        )
        if count:
            log.warning("sending-recovered", extra={"count": count})
        async with self.database.reading() as session:
            learned = await pace.kept(session)
        if learned is not None:
            self._budget.resume(learned.per_second, learned.paused_until)

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
            if machine_now - self._recovered_at >= LEASE_SECONDS:
                self._recovered_at = machine_now
                await outbox.recover(session, machine_now=machine_now, now=now)
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
        blocked = self._budget.wait(now)
        if blocked:
            return min(POLL_SECONDS, blocked)
        moments = [at + self._chat_pace for at in self._last_sent.values()]
        async with self.database.reading() as session:
            due = await outbox.next_due(session, now)
        moments += [] if due is None else [due]
        return max(0.01, min([POLL_SECONDS, *(moment - now for moment in moments if moment > now)]))

    async def work(self, row: Letter) -> None:
        """Sends one message. Its outcome is written down even when the worker is being cancelled."""
        try:
            arguments = arguments_of(row, await self._file(row))
        except (AttributeError, LookupError, TypeError, ValueError) as error:
            await self._failed(row, Failure(Reason.BROKEN, type(error).__name__))
            return
        if await self._mark(row, State.SENDING):
            self._budget.leaves(self._machine.now())
            await self._request(row, arguments)
        else:
            log.warning("lease-lost", extra={"outbox": row.id})

    async def _request(self, letter: Letter, arguments: Mapping[str, Any]) -> None:
        try:
            result = await getattr(self._bot, letter.method)(**arguments)
        except asyncio.CancelledError:
            await self._failed(letter, Failure(Reason.ANSWER_LOST, "Stopped"))
            raise
        except TelegramError as error:
            await self._failed(letter, failure_of(error))
        except Exception as error:
            await self._failed(letter, Failure(Reason.BROKEN, type(error).__name__))
        else:
            await self._sent(letter, result, fresh=any(isinstance(one, InputFile) for one in arguments.values()))

    async def _sent(self, letter: Letter, result: object, *, fresh: bool) -> None:
        if letter.kind is not Kind.TAP:
            self._last_sent[letter.chat] = self._machine.now()
        message = result if isinstance(result, Message) else None
        if not await self._mark(letter, State.SENT, message.message_id if message else None):
            log.warning("sent-after-lease", extra={"outbox": letter.id})
        upload = uploaded(letter, message) if fresh else None
        if upload is not None:
            digest, file_id = upload
            await self.database.write(lambda session: remember_upload(session, digest, self._way(letter), file_id))

    async def _mark(self, letter: Letter, to: State, message_id: int | None = None) -> bool:
        mark = Mark(letter.id, self._worker, to, self._calendar.now(), message_id)
        return await self.database.merged(outbox.apply_marks, mark)

    async def _file(self, letter: Letter) -> File | None:
        digest = attachment_of(letter)
        if digest is None:
            return None
        async with self.database.reading() as session:
            row = await found(session, digest)
        return File(row.body, row.file_ids.get(self._way(letter)))

    def _way(self, letter: Letter) -> str:
        """Another bot, or another method, does not know a file by the same id."""
        return f"{self._bot.token.partition(':')[0]}/{letter.method}"

    async def _failed(self, letter: Letter, failure: Failure) -> None:
        now, machine_now = self._calendar.now(), self._machine.now()
        if failure.reason is Reason.TOO_MANY:
            self._budget.complain(failure.retry_after, machine_now)

        async def job(session: AsyncSession) -> None:
            if failure.reason is Reason.TOO_MANY:
                await pace.keep(session, pace.Pace(self._budget.per_second, self._budget.paused_until))
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
    """What an error of the platform or of the way to it means for a message.

    The library raises a bare TelegramError for an answer that it cannot read: the message may have arrived.
    """
    name = type(error).__name__
    if isinstance(error, TooMany):
        return Failure(Reason.TOO_MANY, name, error.seconds)
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
    if isinstance(error, NetworkError):
        return Failure(Reason.SERVER_ERROR, name)
    return Failure(Reason.ANSWER_LOST if type(error) is TelegramError else Reason.BROKEN, name)


def _bad_request(text: str) -> Reason:
    if "message is not modified" in text:
        return Reason.NOT_MODIFIED
    if "query is too old" in text or "query id is invalid" in text:
        return Reason.QUERY_TOO_OLD
    if "chat not found" in text:
        return Reason.BLOCKED
    return Reason.BAD_REQUEST
