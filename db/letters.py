"""What may leave now: messages are leased, one a chat, the most urgent first, and what waits behind them is told."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import (
    ColumnElement,
    Float,
    Integer,
    Select,
    Text,
    and_,
    bindparam,
    exists,
    func,
    or_,
    select,
    text,
    tuple_,
    update,
)
from sqlalchemy.orm import aliased

from db.delivery import CAPTIONED, ENOUGH, LANES, Kind, State
from db.once import Executor
from db.outbox_rows import LEASED, MACHINE_NOW, NO_SYNC, NOW, SENDING, WAITING
from db.schema import ChatPace, Outbox


@dataclass(frozen=True, slots=True)
class Letter:
    """A message in one worker's hands. `message_id` is that of the message it edits, if it edits one.

    `attempts` counts the tries before this one; `captioned` is whether what it edits is a picture.
    """

    id: int
    chat: int
    lane: int
    kind: Kind
    method: str
    payload: dict[str, Any]
    attempts: int
    message_id: int | None
    captioned: bool = False


async def claim(
    session: Executor,
    worker: str,
    *,
    machine_now: float,
    now: datetime,
    lease_seconds: float,
    limit: int,
    lane: int = max(LANES.values()),
) -> list[Letter]:
    """Lease up to `limit` messages up to a lane, one a chat, the most urgent lane first, then the oldest.

    What is late is left alone, and a chat within its pace gets no new message yet. A message in backoff holds up
    its own lane of its chat, until it has failed too often.
    """
    given = {
        "machine_now": machine_now,
        "now": now,
        "most": limit,
        "last": lane,
        "by": worker,
        "until": machine_now + lease_seconds,
    }
    rows = (await session.execute(_CLAIM, given, execution_options=NO_SYNC)).all()
    edited = await _edited(session, [row.edits for row in rows if row.edits is not None])
    letters = [_letter(row, *edited.get(row.edits, (None, False))) for row in rows]
    return sorted(letters, key=lambda letter: (letter.lane, letter.id))


async def _edited(session: Executor, ids: Sequence[int]) -> dict[int, tuple[int | None, bool]]:
    """Of messages that are edited their message id, and whether they are pictures."""
    if not ids:
        return {}
    rows = await session.execute(select(Outbox.id, Outbox.message_id, Outbox.method).where(Outbox.id.in_(ids)))
    return {id_: (message_id, method in CAPTIONED) for id_, message_id, method in rows}


def _letter(row: Any, message_id: int | None, captioned: bool) -> Letter:
    id_, chat, lane, kind, method, payload, attempts, _edits = row
    return Letter(id_, chat, lane, Kind(kind), method, payload, attempts, message_id, captioned)


def _ready() -> Select[int]:
    """What may be sent at `machine_now` and `now`, the most urgent lane first, then the oldest; at most `most`."""
    in_flight = aliased(Outbox)
    paced = exists().where(ChatPace.chat == Outbox.chat, ChatPace.free_at > MACHINE_NOW)
    return (
        select(Outbox.id)
        .where(
            Outbox.state == WAITING,
            Outbox.lane <= bindparam("last", type_=Integer()),
            Outbox.next_at <= MACHINE_NOW,
            or_(Outbox.late_after.is_(None), Outbox.late_after > NOW),
            _has_its_message(Outbox),
            or_(Outbox.kind == Kind.TAP, ~paced),
            ~exists().where(in_flight.chat == Outbox.chat, in_flight.state.in_([LEASED, SENDING])),
            ~_held_up(),
        )
        .order_by(Outbox.lane, Outbox.id)
        .limit(bindparam("most", type_=Integer()))
    )


def _held_up() -> ColumnElement[bool]:
    """Whether something of the same chat goes before: it is ready too, or in backoff in the same lane."""
    ahead = aliased(Outbox)
    ready = and_(ahead.next_at <= MACHINE_NOW, _has_its_message(ahead))
    in_backoff = and_(ahead.next_at > MACHINE_NOW, ahead.lane == Outbox.lane, ahead.attempts < ENOUGH)
    return exists().where(
        ahead.chat == Outbox.chat,
        ahead.state == WAITING,
        tuple_(ahead.lane, ahead.id) < tuple_(Outbox.lane, Outbox.id),
        or_(ready, in_backoff),
    )


def _has_its_message(row: type[Outbox]) -> ColumnElement[bool]:
    edited = aliased(Outbox)
    return or_(row.edits.is_(None), exists().where(edited.id == row.edits, edited.message_id.is_not(None)))


_CLAIM = (
    update(Outbox)
    .where(Outbox.id.in_(_ready().with_for_update(skip_locked=True)))
    .values(
        state=State.LEASED,
        worker=bindparam("by", type_=Text()),
        lease_until=bindparam("until", type_=Float()),
    )
    .returning(
        Outbox.id,
        Outbox.chat,
        Outbox.lane,
        Outbox.kind,
        Outbox.method,
        Outbox.payload,
        Outbox.attempts,
        Outbox.edits,
    )
)
"""Built once: putting so large a statement together costs more than running it."""


@dataclass(frozen=True, slots=True)
class Behind:
    """Whether anything waits, and when by the machine clock the next of it that is in backoff or paced may leave."""

    waits: bool
    next_at: float | None


def _what_is_behind() -> Select[bool, float | None, float | None]:
    waits = exists().where(Outbox.state == WAITING)
    backoff = select(func.min(Outbox.next_at)).where(
        Outbox.state == WAITING, text("next_at > 0"), Outbox.next_at > MACHINE_NOW
    )
    in_chat = exists().where(Outbox.chat == ChatPace.chat, Outbox.state == WAITING)
    paced = select(ChatPace.free_at).where(ChatPace.free_at > MACHINE_NOW, in_chat).order_by(ChatPace.free_at).limit(1)
    return select(waits, backoff.scalar_subquery(), paced.scalar_subquery())


_BEHIND = _what_is_behind()


async def behind(session: Executor, machine_now: float) -> Behind:
    """What still waits to leave."""
    waits, *moments = (await session.execute(_BEHIND, {"machine_now": machine_now})).one()
    return Behind(waits, min((moment for moment in moments if moment is not None), default=None))
