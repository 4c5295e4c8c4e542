"""What nobody sends any more: late messages, edits of nothing, and what dead or stopping workers had in hand."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, Select, Text, and_, bindparam, exists, or_, select
from sqlalchemy.ext.asyncio import AsyncSession
from sqlalchemy.orm import aliased
from sqlalchemy.sql.dml import ReturningUpdate

from db.delivery import FINAL, Failure, Kind, Reason, State, after_failure
from db.leads import died
from db.once import Executor
from db.outbox import TOPIC, following_columns, unless_withdrawn
from db.outbox_rows import IN_FLIGHT, IS_LEASED, IS_SENDING, MACHINE_NOW, NOW, WAITING, change, changing, count
from db.schema import Outbox
from db.writer import announce


async def tidy(session: Executor, *, machine_now: float, now: datetime) -> int:
    """Skip what is late or has nothing left to edit, and recover what dead workers had; returns how many."""
    late, orphans, dead = (await session.execute(_UNTIDY, {"machine_now": machine_now, "now": now})).one()
    skipped = await count(session, _SKIP_LATE, now=now) if late else 0
    skipped += await count(session, _SKIP_ORPHANS) if orphans else 0
    return skipped + (await recover(session, machine_now=machine_now, now=now) if dead else 0)


def _is_orphan() -> ColumnElement[bool]:
    """An edit of a message that never got a message id and never will."""
    edited = aliased(Outbox)
    gone = exists().where(edited.id == Outbox.edits, edited.message_id.is_(None), edited.state.in_(sorted(FINAL)))
    return and_(Outbox.state == WAITING, Outbox.edits.is_not(None), gone)


_LATE = and_(Outbox.state == WAITING, Outbox.late_after.is_not(None), Outbox.late_after <= NOW)
_SKIP_LATE = changing(_LATE, state=State.SKIPPED, why="late", payload={})
_SKIP_ORPHANS = changing(_is_orphan(), state=State.SKIPPED, why="nothing-to-edit", payload={})
"""Built once: putting statements together costs more than running them."""


async def release(session: AsyncSession, worker: str) -> int:
    """Give back what `worker` leased and never began to send; returns how many."""
    mine = and_(IS_LEASED, Outbox.worker == worker)
    freed = await change(session, mine, state=State.WAITING, worker=None, lease_until=None)
    if freed:
        announce(TOPIC)
    return freed


async def recover(session: Executor, *, machine_now: float, now: datetime, all_but: str | None = None) -> int:
    """Deal with what a dead worker was sending, as with a lost answer, and free what it had leased; returns how many.

    Dead is whose lease is over or who gives no signs of life; with `all_but`, at the start of the only process,
    everyone but that worker.
    """
    dead = _OVER if all_but is None else _ALL_BUT
    given: dict[str, Any] = {"machine_now": machine_now} if all_but is None else {"but": all_but}
    rows = (await session.execute(dead.lost, given)).all()
    for id_, kind, attempts, payload, why in rows:
        worker_lost = Failure(Reason.ANSWER_LOST, "WorkerLost")
        following = after_failure(worker_lost, kind=Kind(kind), attempts=attempts, marked_up=False)
        following = unless_withdrawn(following, why)
        await change(session, Outbox.id == id_, **following_columns(following, payload, machine_now, now))
    freed = await count(session, dead.free, **given)
    if rows or freed:
        announce(TOPIC)
    return len(rows) + freed


@dataclass(frozen=True, slots=True)
class _Dead:
    """What is asked of messages that dead workers had: which were being sent, and to set free what was not."""

    lost: Select[tuple[int, str, int, dict[str, Any], str | None]]
    free: ReturningUpdate[tuple[int]]


def _dead(dead: ColumnElement[bool]) -> _Dead:
    lost = select(Outbox.id, Outbox.kind, Outbox.attempts, Outbox.payload, Outbox.why).where(IS_SENDING, dead)
    leased = and_(IS_LEASED, dead)
    free = changing(leased, state=State.WAITING, worker=None, lease_until=None)
    return _Dead(lost.with_for_update(skip_locked=True), free)


_IS_OVER = or_(Outbox.lease_until <= MACHINE_NOW, died(Outbox.worker, MACHINE_NOW))
_OVER = _dead(_IS_OVER)
_ALL_BUT = _dead(Outbox.worker != bindparam("but", type_=Text()))
_UNTIDY = select(exists().where(_LATE), exists().where(_is_orphan()), exists().where(IN_FLIGHT, _IS_OVER))
"""Whether there is anything to tidy: asked far more often than there is."""
