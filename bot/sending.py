"""From the outbox to the chat: every message is marked before and after its request, both marks fenced."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import Mapping, Sequence
from typing import Any, TypeVar

from sqlalchemy.exc import IntegrityError
from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot

from bot.calls import (
    Accepted,
    Call,
    File,
    attachment_of,
    call_of,
    file_field,
    file_id_of,
    message_id_of,
    outcome_of,
    recipe_of,
)
from bot.clocks import Calendar, Machine
from bot.metrics import Metrics
from bot.painting import NotDrawn, Painting
from bot.pulling import POLL_SECONDS, Puller
from bot.transport import AiohttpRequest, AnswerLost, NeverConnected
from db import marks, outbox, pace, tidying, watched
from db.attachments import forget_upload, found, remember_upload
from db.budget import Budget, Log, budget_of
from db.claims import Ask, claims
from db.delivery import Failure, Kind, Reason, State
from db.engine import Database
from db.letters import Behind, Letter
from db.marks import Mark
from db.outbox import OnUnreachable
from db.schema import Attachment
from db.trouble import steadily
from db.writer import Job

T = TypeVar("T")

log = logging.getLogger(__name__)

LEASE_SECONDS = 60.0
"""Longer than any request may take, so that a living worker keeps what it leased."""

DRAWING_SECONDS = 30.0
"""For so long at most a message waits for its picture: well within the lease."""

TIDY_SECONDS = 1.0
"""How often at most late messages and dead workers' leases are looked for. Our own choice."""

AHEAD = 3
"""Messages in hand for each request that may be open, so that claims and marks come in groups. Our own choice."""


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
        concurrency: int = 64,
        chat_pace: float = 1.0,
        painting: Painting | None = None,
        metrics: Metrics | None = None,
    ) -> None:
        topics = (outbox.TOPIC, pace.TOPIC)
        super().__init__(database, topics=topics, concurrency=AHEAD * concurrency, least=concurrency)
        if not isinstance(bot.request, AiohttpRequest):
            raise TypeError(f"the sender needs our own transport, not {type(bot.request).__name__}")
        self._bot = bot
        self._transport = bot.request
        self._calendar = calendar
        self._machine = machine
        self._worker = worker
        self._on_unreachable = on_unreachable
        self._per_second = per_second
        self._budget = budget_of(None, per_second)
        """The budget of all workers as it was seen last."""
        self._log = Log()
        self._requests = asyncio.Semaphore(concurrency)
        self._chat_pace = chat_pace
        self._painting = painting or Painting()
        self._metrics = metrics or Metrics()
        self._tidied_at = float("-inf")
        self._behind: Behind | None = None
        self._keep = 0

    async def begin(self) -> None:
        """Where only one process serves, what an earlier one was sending is dealt with like a lost answer."""
        now, machine_now = self._calendar.now(), self._machine.now()
        all_but = self._worker if self.database.alone else None
        count = await self._write(
            lambda session: tidying.recover(session, machine_now=machine_now, now=now, all_but=all_but)
        )
        if count:
            log.warning("sending-recovered", extra={"count": count})

    async def finish(self) -> None:
        """Gives back what was leased and never begun."""
        await self._painting.close()
        await self.database.write(lambda session: tidying.release(session, self._worker))

    async def claim(self, limit: int) -> Sequence[Letter]:
        """As many due messages as budget and concurrency allow."""
        now = self._machine.now()
        self._log.forget(now)
        ask = Ask(
            worker=self._worker,
            most=self._per_second,
            limit=limit,
            log=self._log,
            lease_seconds=LEASE_SECONDS,
            machine_now=now,
            now=self._calendar.now(),
            tidy=now - self._tidied_at >= TIDY_SECONDS,
        )
        try:
            got = await self.database.merged(claims, ask)
        except IntegrityError:
            log.info("claim-again")  # another worker has just taken a message of the same chat
            self.wake()
            return []
        self._budget = got.budget
        self._metrics.skipped.inc(got.over)
        self._metrics.rate.set(got.budget.per_second)
        self._tidied_at = now if ask.tidy else self._tidied_at
        self._behind, self._keep = got.behind, got.keep
        self.more_behind = got.behind is None or got.behind.waits
        self._log.grant([letter.id for letter in got.letters], now)
        return got.letters

    async def idle_seconds(self) -> float:
        """Until the budget, a paced chat or a message in backoff is ready, five seconds at most."""
        now = self._machine.now()
        if self._behind is None:
            return max(0.01, min(POLL_SECONDS, self._budget.wait(now, self._keep)))
        if self._behind.next_at is None:
            return POLL_SECONDS
        return max(0.01, min(POLL_SECONDS, self._behind.next_at - now))

    async def work(self, row: Letter) -> None:
        """Sends one message. Its outcome is written down even when the worker is being cancelled."""
        try:
            call = call_of(row, await self._file(row))
        except TimeoutError:
            await self._give_back(row)
            return
        except NotDrawn as error:
            log.error("not-drawn", extra={"outbox": row.id, "error": type(error).__name__})
            self._log.drop(row.id)
            await self._failed(row, Failure(Reason.NOT_DRAWN, "NotDrawn"))
            return
        except (AttributeError, LookupError, TypeError, ValueError) as error:
            self._log.drop(row.id)
            await self._failed(row, Failure(Reason.BROKEN, type(error).__name__))
            return
        async with self._requests:
            outcome = await self._request(row, call) if await self._may_leave(row) else None
        if isinstance(outcome, Accepted):
            await self._sent(row, call, outcome.result)
        elif outcome is not None:
            await self._failed(row, outcome)

    async def _may_leave(self, letter: Letter) -> bool:
        """Marks a message as being sent; False if its lease was lost or it had to be given back."""
        if self._must_wait(letter):
            await self._give_back(letter)
            return False
        if await self._mark(letter, State.SENDING):
            self._log.leaves(letter.id, self._machine.now())
            return True
        self._log.drop(letter.id)
        log.warning("lease-lost", extra={"outbox": letter.id})
        return False

    async def _give_back(self, letter: Letter) -> None:
        """Lets another turn have a message that was not begun."""
        self._log.drop(letter.id)
        await self._mark(letter, State.WAITING)
        self.wake()

    def _must_wait(self, letter: Letter) -> bool:
        """Whether the sender is to stop, the platform has asked for a pause meanwhile, or the grant is too old."""
        now = self._machine.now()
        return self.stopping or now < self._budget.paused_until or self._log.too_late(letter.id, now)

    async def _request(self, letter: Letter, call: Call) -> Accepted | Failure:
        try:
            status, body = await self._transport.call(f"{self._bot.base_url}/{call.method}", call.fields, call.upload)
            return outcome_of(status, body)
        except asyncio.CancelledError:
            await self._failed(letter, Failure(Reason.ANSWER_LOST, "Stopped"))
            raise
        except NeverConnected as error:
            return Failure(Reason.NEVER_CONNECTED, type(error).__name__)
        except AnswerLost as error:
            return Failure(Reason.ANSWER_LOST, type(error).__name__)
        except Exception as error:
            return Failure(Reason.BROKEN, type(error).__name__)

    async def _sent(self, letter: Letter, call: Call, result: Any) -> None:
        paced = self._chat_pace and letter.kind is not Kind.TAP
        free_at = self._machine.now() + self._chat_pace if paced else 0.0
        digest, file_id = attachment_of(letter), file_id_of(result)
        if call.upload is not None and digest is not None and file_id is not None:
            way = self._way(letter)
            await self._write(lambda session: remember_upload(session, digest, way, file_id))
        if not await self._mark(letter, State.SENT, message_id_of(result), free_at):
            log.warning("sent-after-lease", extra={"outbox": letter.id})
            return
        self._metrics.left(letter.kind, State.SENT)
        if letter.kind is Kind.ALERT:
            await self._note_alert(letter.id)

    async def _note_alert(self, id_: int) -> None:
        async def look() -> float | None:
            async with self.database.reading() as session:
                return await watched.seconds_on_the_way(session, id_)

        if (seconds := await steadily(look)) is not None:
            self._metrics.alert_seconds.observe(seconds)

    async def _mark(self, letter: Letter, to: State, message_id: int | None = None, free_at: float = 0.0) -> bool:
        mark = Mark(letter.id, self._worker, to, self._calendar.now(), message_id, letter.chat, free_at)
        return await steadily(lambda: self.database.merged(marks.apply_marks, mark))

    async def _write(self, job: Job[T]) -> T:
        return await steadily(lambda: self.database.write(job))

    async def _file(self, letter: Letter) -> File | None:
        """The file of a message. Raises NotDrawn, and TimeoutError when its picture is not there in time."""
        own = recipe_of(letter)
        if own is not None:
            return File(await self._drawn(*own), None)
        digest = attachment_of(letter)
        if digest is None:
            return None
        row = await steadily(lambda: self._attachment(digest))
        file_id, body = row.file_ids.get(self._way(letter)), row.body
        if file_id is None and body is None and row.recipe is not None:
            body = await self._drawn(digest, row.recipe)
        return File(body, file_id)

    async def _attachment(self, digest: str) -> Attachment:
        async with self.database.reading() as session:
            return await found(session, digest)

    async def _drawn(self, digest: str, recipe: Mapping[str, Any]) -> bytes:
        async with asyncio.timeout(DRAWING_SECONDS):
            return await self._painting.picture(digest, recipe)

    def _way(self, letter: Letter) -> str:
        """Another bot, or another kind of message, does not know a file by the same id."""
        return f"{self._bot.token.partition(':')[0]}/{file_field(letter)}"

    async def _failed(self, letter: Letter, failure: Failure) -> None:
        changed = await self._write(lambda session: self._noted(session, letter, failure))
        self._budget = changed if changed is not None else self._budget
        self._metrics.tried(failure)
        if failure.reason is Reason.TOKEN_REFUSED:
            raise TokenRefused("the platform refuses the token: check EASEWARD_TOKEN")

    async def _noted(self, session: AsyncSession, letter: Letter, failure: Failure) -> Budget | None:
        """Writes down what follows from a failed try; the budget, if it has changed by it."""
        now, machine_now = self._calendar.now(), self._machine.now()
        budget = None
        digest = attachment_of(letter)
        if failure.reason is Reason.FILE_FORGOTTEN and digest is not None:
            await forget_upload(session, digest, self._way(letter))
        if failure.reason is Reason.TOO_MANY:
            budget = await pace.complain(session, self._per_second, failure.retry_after, machine_now)
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
        if following is not None:
            self._metrics.left(letter.kind, following.state)
        log.info("send-failed", extra={"outbox": letter.id, "reason": str(failure.reason), "state": str(state)})
        return budget
