"""The way in: updates that are stored before the platform is told so, each handled exactly once.

A chat's updates are handled one after another, many chats at once.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import datetime, timedelta
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
    literal_column,
    or_,
    select,
    update,
)
from sqlalchemy.ext.asyncio import AsyncSession
from sqlalchemy.orm import aliased

from db.leads import died
from db.once import insert_or_change, insert_unless_there
from db.schema import Inbox, Note
from db.writer import announce

TOPIC = "inbox"
"""What is announced to the writer's listeners when an update was stored or is to be tried again."""

TRIES = 3
"""How often the handling of an update may raise an error before it counts as failed. Our own choice."""

BEGUN = 10
"""How often an update is taken in hand when each time the process ends before it is handled. Our own choice."""

RETRY_SECONDS = 1.0
"""Pause before the second try, doubled before the third. Our own choice."""

OFFSET_LASTS = timedelta(days=6)
"""After a week without an update the platform may start its numbers anew, and it keeps updates for one day:
an older number says nothing any more (Bot API, `Update.update_id`, from memory)."""

DROPPED = frozenset(
    {
        "last_name",
        "username",
        "active_usernames",
        "phone_number",
        "author_signature",
        "contact",
        "venue",
        "vcard",
        "bio",
        "forward_origin",
        "external_reply",
        "passport_data",
        "users_shared",
        "chat_shared",
    }
)
"""Fields of an update that are never kept, at any depth: they say who or where somebody is."""

LEFT_OUT = "document_left_out"
"""In an update's payload: why its file could not be kept beside it."""

_OPEN: tuple[ColumnElement[str], ...] = (literal_column("'waiting'"), literal_column("'leased'"))
_LAST_UPDATE = "last_update"


@dataclass(frozen=True, slots=True)
class Claimed:
    """An update in one worker's hands. `tries` counts this one."""

    update_id: int
    chat: int
    payload: dict[str, Any]
    document: bytes | None
    tries: int
    stored_at: datetime


async def store(session: AsyncSession, updates: Sequence[Mapping[str, Any]], now: datetime) -> int:
    """Keep updates without what identifies people, repeated ones left out; returns how many were new."""
    if not updates:
        return 0
    rows = [_row(update, now) for update in updates]
    statement = insert_unless_there(session, Inbox, rows).returning(Inbox.update_id)
    stored = len((await session.execute(statement)).all())
    announce(TOPIC)
    return stored


async def store_fetched(session: AsyncSession, updates: Sequence[Mapping[str, Any]], now: datetime) -> int:
    """Keep updates that were asked for; the next question, from `next_offset`, tells the platform so."""
    stored = await store(session, updates, now)
    if updates:
        await session.execute(insert_or_change(session, Note, "name", name=_LAST_UPDATE, value=_last(updates, now)))
    return stored


def is_update(found: Mapping[str, Any]) -> bool:
    """Whether something has an update's number, so that it can be told from others and handled, or fail, by itself.

    >>> is_update({"update_id": 7}), is_update({"update_id": "7"}), is_update({})
    (True, False, False)
    """
    number = found.get("update_id")
    return isinstance(number, int) and not isinstance(number, bool) and 0 <= number < 2**63


async def next_offset(session: AsyncSession, now: datetime) -> int | None:
    """The number from which the platform is asked for more; None asks for everything unconfirmed."""
    note = await session.get(Note, _LAST_UPDATE)
    if note is None or now - datetime.fromisoformat(note.value["at"]) > OFFSET_LASTS:
        return None
    return int(note.value["update_id"]) + 1


async def claim(
    session: AsyncSession, worker: str, *, machine_now: float, lease_seconds: float, limit: int
) -> list[Claimed]:
    """Lease up to `limit` updates: of each chat the lowest open one, if none of that chat is leased."""
    given = {"machine_now": machine_now, "most": limit, "by": worker, "until": machine_now + lease_seconds}
    rows = (await session.execute(_CLAIM, given, execution_options=_NO_SYNC)).all()
    return sorted((Claimed(*row) for row in rows), key=lambda claimed: claimed.update_id)


def with_document(claimed: Claimed, document: bytes | None, left_out: str | None) -> Claimed:
    """The update with its file, or with a note under `LEFT_OUT` why there is none."""
    noted = claimed.payload if left_out is None else claimed.payload | {LEFT_OUT: left_out}
    return replace(claimed, document=document, payload=noted)


async def keep_document(session: AsyncSession, claimed: Claimed, worker: str) -> bool:
    """Keep what `with_document` made of an update; False if the worker's lease was lost meanwhile."""
    return await _change(session, claimed.update_id, worker, document=claimed.document, payload=claimed.payload)


async def handled(session: AsyncSession, update_id: int, worker: str) -> bool:
    """Mark an update as handled and forget what it said; False if the worker's lease was lost meanwhile."""
    return await _change(session, update_id, worker, state="handled", payload=None, document=None)


async def retry_or_fail(
    session: AsyncSession, update_id: int, worker: str, *, failure: str, machine_now: float
) -> bool:
    """Let an update wait for another try, or after three mark it failed; returns whether it has failed.

    `failure` is the exception's class name. Raises `LeaseLost` if the worker no longer holds the update.
    """
    row = await session.scalar(select(Inbox).where(*_held(update_id, worker)))
    if row is None:
        raise LeaseLost(f"update {update_id} is no longer leased to {worker}")
    row.failure, row.worker = failure, None
    row.failures += 1
    if row.failures >= TRIES or row.tries > BEGUN:
        row.state, row.document, row.lease_until = "failed", None, None
        return True
    row.state, row.lease_until = "waiting", machine_now + RETRY_SECONDS * 2 ** (row.failures - 1)
    announce(TOPIC)
    return False


class LeaseLost(RuntimeError):
    """Another worker has taken over what this one was working on; whatever it did is undone."""


async def release_others(session: AsyncSession, worker: str) -> int:
    """At the start of the only process: give free what anyone but `worker` had leased; returns how many."""
    return await _release(session, Inbox.worker != worker)


async def release(session: AsyncSession, worker: str) -> int:
    """Give free what `worker` had leased and will not handle; returns how many."""
    return await _release(session, Inbox.worker == worker)


async def _release(session: AsyncSession, whose: ColumnElement[bool]) -> int:
    statement = (
        update(Inbox)
        .where(Inbox.state.in_(_OPEN), Inbox.state == "leased", whose)
        .values(state="waiting", worker=None, lease_until=None)
        .returning(Inbox.update_id)
    )
    freed = len((await session.execute(statement, execution_options=_NO_SYNC)).all())
    if freed:
        announce(TOPIC)
    return freed


async def recover(session: AsyncSession, machine_now: float) -> int:
    """Give free what workers had leased that give no signs of life any more; returns how many."""
    return await _release(session, died(Inbox.worker, machine_now))


@dataclass(frozen=True, slots=True)
class Behind:
    """Whether anything waits, and when by the machine clock the next of it that has failed may be tried again."""

    waits: bool
    next_at: float | None


_WAITING = and_(Inbox.state.in_(_OPEN), Inbox.state == "waiting")
_BEHIND = select(exists().where(_WAITING), select(func.min(Inbox.lease_until)).where(_WAITING).scalar_subquery())


async def behind(session: AsyncSession) -> Behind:
    """What still waits to be handled."""
    return Behind(*(await session.execute(_BEHIND)).one())


async def counts(session: AsyncSession) -> dict[str, int]:
    """How many updates are in each state."""
    rows = await session.execute(select(Inbox.state, func.count()).group_by(Inbox.state))
    return {state: count for state, count in rows}


async def open_work(session: AsyncSession, limit: int = 20) -> list[str]:
    """The updates that are not handled yet, in words, at most `limit` of them."""
    rows = await session.execute(
        select(Inbox.update_id, Inbox.state, Inbox.tries)
        .where(Inbox.state.in_(_OPEN))
        .order_by(Inbox.update_id)
        .limit(limit)
    )
    return [f"update {update_id} is {state} after {tries} tries" for update_id, state, tries in rows]


_NO_SYNC = {"synchronize_session": False}


def _free() -> Select[int]:
    """The updates that may be taken in hand at `machine_now`, the oldest first; at most `most`."""
    machine_now = bindparam("machine_now", type_=Float())
    other = aliased(Inbox)
    ahead = exists().where(
        other.chat == Inbox.chat,
        other.state.in_(_OPEN),
        or_(
            other.update_id < Inbox.update_id,
            and_(other.update_id != Inbox.update_id, other.state == "leased", other.lease_until > machine_now),
        ),
    )
    free = or_(Inbox.lease_until.is_(None), Inbox.lease_until <= machine_now)
    found = select(Inbox.update_id).where(Inbox.state.in_(_OPEN), free, ~ahead)
    return found.order_by(Inbox.update_id).limit(bindparam("most", type_=Integer()))


_CLAIM = (
    update(Inbox)
    .where(Inbox.update_id.in_(_free().with_for_update(skip_locked=True)))
    .values(
        state="leased",
        worker=bindparam("by", type_=Text()),
        lease_until=bindparam("until", type_=Float()),
        tries=Inbox.tries + 1,
    )
    .returning(Inbox.update_id, Inbox.chat, Inbox.payload, Inbox.document, Inbox.tries, Inbox.stored_at)
)
"""Built once: putting so large a statement together costs more than running it."""


def _held(update_id: int, worker: str) -> tuple[ColumnElement[bool], ...]:
    return (Inbox.update_id == update_id, Inbox.state == "leased", Inbox.worker == worker)


async def _change(session: AsyncSession, update_id: int, worker: str, **values: Any) -> bool:
    statement = update(Inbox).where(*_held(update_id, worker)).values(**values).returning(Inbox.update_id)
    return (await session.execute(statement, execution_options=_NO_SYNC)).first() is not None


def _row(update: Mapping[str, Any], now: datetime) -> dict[str, Any]:
    return {
        "update_id": update["update_id"],
        "chat": chat_of(update),
        "payload": without_identity(update),
        "state": "waiting",
        "tries": 0,
        "failures": 0,
        "stored_at": now,
    }


def _last(updates: Sequence[Mapping[str, Any]], now: datetime) -> dict[str, Any]:
    return {"update_id": updates[-1]["update_id"], "at": now.isoformat()}


def without_identity(value: Any) -> Any:
    """A copy of an update without last names, user names, numbers and contacts, at any depth.

    What is no number in JSON (RFC 8259, section 6) is left out: not every database keeps it.

    A shared place stays to about a kilometre, which is enough for its clock, until the update is handled.

    >>> without_identity({"from": {"id": 7, "first_name": "Ada", "last_name": "B", "language_code": "en"}})
    {'from': {'id': 7, 'first_name': 'Ada', 'language_code': 'en'}}
    """
    if isinstance(value, Mapping):
        return {
            key: _roughly(inner) if key == "location" else without_identity(inner)
            for key, inner in value.items()
            if key not in DROPPED
        }
    if isinstance(value, list | tuple):
        return [without_identity(inner) for inner in value]
    return None if isinstance(value, float) and not math.isfinite(value) else value


def _roughly(place: Any) -> dict[str, float] | None:
    """A place to a hundredth of a degree; None for what is none."""
    try:
        found = {name: round(float(place[name]), 2) for name in ("latitude", "longitude")}
    except (TypeError, KeyError, ValueError, OverflowError):
        return None
    return found if all(map(math.isfinite, found.values())) else None


def chat_of(update: Mapping[str, Any]) -> int:
    """The chat that an update belongs to; 0 if it belongs to none or cannot be read.

    >>> chat_of({"update_id": 1, "message": {"chat": {"id": 7}}}), chat_of({"update_id": 2, "poll": {}})
    (7, 0)
    """
    for content in update.values():
        if isinstance(content, Mapping):
            message = content.get("message")
            holder = message if isinstance(message, Mapping) else content
            for one in (holder.get("chat"), content.get("from")):
                found = one.get("id") if isinstance(one, Mapping) else None
                if isinstance(found, int) and abs(found) < 2**63:
                    return found
            return 0
    return 0
