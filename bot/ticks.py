"""The one thing that happens by itself: a tick finds what is due and does it, in order. APScheduler only ticks."""

from __future__ import annotations

import asyncio
import logging
from collections.abc import AsyncIterator, Sequence
from contextlib import asynccontextmanager
from datetime import UTC, datetime, timedelta

from apscheduler.schedulers.asyncio import AsyncIOScheduler
from sqlalchemy.ext.asyncio import AsyncSession

from bot.clocks import WRONG_SECONDS, Calendar, PlatformClock
from bot.flows.desk import Desk
from bot.flows.installation import DEFAULTS, Installation
from bot.flows.ticking import PLANNED, WHEN_DUE
from bot.metrics import Metrics
from db import due
from db.engine import Database
from db.schema import Due
from db.trouble import passing

log = logging.getLogger(__name__)

BATCH = 200
TOGETHER = 4
"""So many are done at once: on SQLite an alert waits for their transaction at each of its five steps. Own choice."""
PLANNED_A_TICK = 2000
"""So many instants are computed anew before what is due is done, when the zone data has changed. Our own choice."""

AGAIN = timedelta(minutes=5)
"""After an error the same thing is tried again so much later, by the calendar."""


class Ticker:
    """Does what is due. One tick at a time; a failing one is put off and never holds up the others."""

    def __init__(
        self,
        database: Database,
        calendar: Calendar,
        bot_username: str,
        *,
        clock: PlatformClock | None = None,
        installation: Installation = DEFAULTS,
        metrics: Metrics | None = None,
    ) -> None:
        """With `clock` nothing is done by itself while the calendar is known to be wrong."""
        self._clock = clock
        self._database = database
        self._calendar = calendar
        self._bot_username = bot_username
        self._installation = installation
        self.lock = asyncio.Lock()
        """Held during a tick, and by whoever moves the calendar."""
        self.ended_at: float | None = None
        """When, by the loop's clock in seconds, a tick last came to its end; None before the first."""
        self._stopping = False
        self._took = (metrics or Metrics()).tick_seconds

    def stop(self) -> None:
        """Begin nothing more: a tick that is under way ends with the batch that it is at."""
        self._stopping = True

    async def tick(self) -> None:
        """Does everything that is due by the calendar; while the database is away, nothing."""
        off = self._clock.off_by() if self._clock is not None else None
        if off is not None and abs(off) > WRONG_SECONDS:
            log.error("clock-wrong", extra={"pause": round(off)})
            return
        async with self.lock:
            try:
                with self._took.time():
                    await self.do_due(self._calendar.now())
                self.ended_at = asyncio.get_running_loop().time()
            except Exception as error:
                if not passing(error):
                    raise
                log.warning("tick-put-off", extra={"error": type(error).__name__})

    async def do_due(self, now: datetime) -> None:
        """Does everything that is due by `now`; the caller holds the lock."""
        await self._plan_again(now)
        while not self._stopping:
            async with self._database.reading() as session:
                found = [(row.id, row.kind, row.subject) for row in await due.due_by(session, now, limit=BATCH)]
            if not found:
                return
            for start in range(0, len(found), TOGETHER):
                if self._stopping:
                    return
                await self._do_all(found[start : start + TOGETHER], now)

    async def _do_all(self, found: Sequence[tuple[int, str, int]], now: datetime) -> None:
        done = await asyncio.gather(
            *(self._do(row, kind, subject, now) for row, kind, subject in found), return_exceptions=True
        )
        for outcome in done:
            if isinstance(outcome, BaseException):
                raise outcome

    async def _do(self, row: int, kind: str, subject: int, now: datetime) -> None:
        try:
            await self._database.write(lambda session: self._use_case(session, row, now))
        except Exception as error:
            if passing(error):
                raise
            log.exception("tick-failed", extra={"kind": kind, "subject": subject})
            await self._database.write(lambda session: due.plan(session, due.DueKind(kind), subject, now + AGAIN))

    async def _use_case(self, session: AsyncSession, row: int, now: datetime) -> None:
        found = await session.get(Due, row, with_for_update=True)
        if found is None or found.at > now:
            return
        desk = self._desk(session, f"due:{found.kind}:{found.subject}:{found.at.isoformat()}", now)
        await WHEN_DUE[found.kind](desk, found.subject)

    def _desk(self, session: AsyncSession, cause: str, now: datetime) -> Desk:
        return Desk(
            session=session, now=now, cause=cause, bot_username=self._bot_username, installation=self._installation
        )

    async def _plan_again(self, now: datetime) -> None:
        """Computes anew what was planned with another release of the zone data, the soonest first, some a tick."""
        async with self._database.reading() as session:
            found = [row.id for row in await due.by_other_zone_data(session, limit=PLANNED_A_TICK)]
        for start in range(0, len(found), BATCH):
            if self._stopping:
                return
            await asyncio.gather(*(self._plan_or_leave(row, now) for row in found[start : start + BATCH]))
        if found:
            log.info("planned-by-new-zone-data", extra={"count": len(found)})

    async def _plan_or_leave(self, row: int, now: datetime) -> None:
        try:
            await self._database.write(lambda session: self._plan_one(session, row, now))
        except Exception as error:
            if passing(error):
                raise
            log.exception("planning-failed", extra={"subject": row})
            await self._database.write(lambda session: due.leave_as_is(session, row))

    async def _plan_one(self, session: AsyncSession, row: int, now: datetime) -> None:
        found = await session.get(Due, row, with_for_update=True)
        if found is None:
            return
        await PLANNED[found.kind](self._desk(session, f"zone-data:{row}", now), found.subject)
        await due.leave_as_is(session, row)


@asynccontextmanager
async def ticking(ticker: Ticker, *, seconds: float) -> AsyncIterator[None]:
    """Ticks at once and then every so many seconds of real time while the block runs."""
    scheduler = AsyncIOScheduler(timezone="UTC")
    scheduler.add_job(
        ticker.tick,
        "interval",
        seconds=seconds,
        next_run_time=datetime.now(UTC),
        max_instances=1,
        coalesce=True,
        misfire_grace_time=None,
    )
    scheduler.start()
    try:
        yield
    finally:
        scheduler.pause()
        async with ticker.lock:  # a tick that has begun or waits comes first: a shutdown would break it off
            scheduler.shutdown(wait=False)
