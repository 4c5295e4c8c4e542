"""A sender's question for work: what the budget grants it, and the messages that it may send now, in one change."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlalchemy.ext.asyncio import AsyncConnection

from db import letters, pace, tidying
from db.budget import Budget, Log
from db.delivery import LANES, Kind
from db.letters import Behind, Letter

URGENT = LANES[Kind.ANSWER]
"""The last of the lanes for which a part of the budget is kept: alerts, and what answers somebody."""

LAST = max(LANES.values())


@dataclass(frozen=True, slots=True)
class Ask:
    """Up to `limit` messages for `worker`, whose `log` says what it has sent; `most` is the rate that is set.

    `tidy`: look for late messages and dead workers' leases too.
    """

    worker: str
    most: int
    limit: int
    log: Log
    lease_seconds: float
    machine_now: float
    now: datetime
    tidy: bool


@dataclass(frozen=True, slots=True)
class Got:
    """What came of it: the budget as it now stands, the messages, and what waits behind them.

    `over` is how many messages were skipped as late or taken back from dead workers; `behind` is None when the grant
    was used up: there may be more for the next one, which is worth asking for when `keep` more are left.
    """

    budget: Budget
    letters: Sequence[Letter]
    over: int
    behind: Behind | None
    keep: int


async def claims(connection: AsyncConnection, asks: Sequence[Ask]) -> list[Got]:
    """Answers questions one after another; to be merged by the writer."""
    return [await _claim(connection, ask) for ask in asks]


async def _claim(connection: AsyncConnection, ask: Ask) -> Got:
    budget = await pace.locked(connection, ask.most)
    before = budget.as_json()
    granted = budget.take(ask.limit, ask.worker, ask.log, now=ask.machine_now)
    plain = budget.plain(granted, ask.machine_now)
    most, lane = (plain, LAST) if plain else (granted, URGENT)
    found = await _letters(connection, ask, most, lane)
    over = await tidying.tidy(connection, machine_now=ask.machine_now, now=ask.now) if ask.tidy else 0
    if over:
        found += await _letters(connection, ask, most - len(found), lane)
    budget.settle(ask.worker, granted - len(found))
    if budget.as_json() != before:
        await pace.keep(connection, budget)
    used_up = len(found) == most
    behind = None if used_up or lane == URGENT else await letters.behind(connection, ask.machine_now)
    urgent_wait = used_up and (not found or found[-1].lane <= URGENT)
    return Got(budget, found, over, behind, 0 if urgent_wait else budget.reserve)


async def _letters(connection: AsyncConnection, ask: Ask, most: int, lane: int) -> list[Letter]:
    if not most:
        return []
    return await letters.claim(
        connection,
        ask.worker,
        machine_now=ask.machine_now,
        now=ask.now,
        lease_seconds=ask.lease_seconds,
        limit=most,
        lane=lane,
    )
