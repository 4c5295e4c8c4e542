"""The way out: what must leave is a row first, written together with its cause, once by its key."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Mapping
from datetime import datetime
from typing import Any

from sqlalchemy import (
    Integer,
    and_,
    bindparam,
    func,
    select,
    update,
)
from sqlalchemy.ext.asyncio import AsyncSession

from db.delivery import (
    FINAL,
    LANES,
    Failure,
    Kind,
    Next,
    Reason,
    State,
    after_failure,
    changed,
    is_pictured,
)
from db.letters import Letter
from db.once import insert_unless_there
from db.outbox_rows import IN_FLIGHT, IS_LEASED, IS_SENDING, NO_SYNC, WAITING, change
from db.schema import Outbox, Person
from db.writer import announce

TOPIC = "outbox"
"""What is announced to the writer's listeners when there may be something to send."""

METHODS = frozenset(
    {
        "send_message",
        "send_photo",
        "send_document",
        "send_animation",
        "send_video",
        "send_media_group",
        "edit_message_text",
        "edit_message_caption",
        "edit_message_media",
        "edit_message_reply_markup",
        "answer_callback_query",
    }
)
"""What a row may ask of the platform, in python-telegram-bot's spelling."""

OnUnreachable = Callable[[AsyncSession, int], Awaitable[None]]
"""Called with the session and the chat in the write that found the chat unreachable."""


async def put(
    session: AsyncSession,
    *,
    key: str,
    chat: int,
    kind: Kind | str,
    method: str,
    payload: Mapping[str, Any],
    now: datetime,
    late_after: datetime | None = None,
    edits: int | None = None,
    lane: int | None = None,
    not_before: float = 0.0,
    skipped: str | None = None,
) -> int:
    """Let a message leave once for `key`; returns its row's id, the earlier one's if the key is there.

    `late_after` is when it is no longer worth sending; `edits` is the row whose message it edits, and then the payload
    needs no message id; `not_before` is seconds of the machine clock; `skipped` is why it does not leave at all.
    Raises `ValueError` for a kind or method that nobody could send.
    """
    _check(method, payload, edits)
    row = {
        "key": key,
        "chat": chat,
        "kind": Kind(kind),
        "lane": LANES[Kind(kind)] if lane is None else lane,
        "method": method,
        "payload": dict(payload) if skipped is None else {},
        "edits": edits,
        "state": State.WAITING if skipped is None else State.SKIPPED,
        "why": skipped,
        "attempts": 0,
        "next_at": not_before,
        "late_after": late_after,
        "made_at": now,
    }
    announce(TOPIC)
    made = await session.scalar(insert_unless_there(session, Outbox, [row]).returning(Outbox.id))
    return made or (await session.scalars(select(Outbox.id).where(Outbox.key == key))).one()


async def by_key(session: AsyncSession, key: str) -> int | None:
    """The row of a message by its key; None when it was never put."""
    return await session.scalar(select(Outbox.id).where(Outbox.key == key))


async def drop(session: AsyncSession, chat: int, kind: Kind) -> None:
    """Lets go of what of a kind still waits to leave to a chat."""
    waiting = and_(Outbox.chat == chat, Outbox.state == WAITING, Outbox.kind == kind)
    await session.execute(
        update(Outbox).where(waiting).values(state=State.SKIPPED, why="moved-on", payload={}),
        execution_options=NO_SYNC,
    )


async def withdraw(session: AsyncSession, chat: int, why: str, *, row: int | None = None) -> int:
    """Skip what comes to a chat by itself and has not begun to leave, or of that one row; returns how many.

    What is leaving just now may arrive; if it does not, it is not tried again.
    """
    by_itself = and_(Outbox.chat == chat, Outbox.kind.in_([Kind.SESSION, Kind.NUDGE, Kind.TIMER]))
    mine = by_itself if row is None else and_(by_itself, Outbox.id == row)
    skip: dict[str, Any] = {"state": State.SKIPPED, "why": why, "payload": {}, "worker": None, "lease_until": None}
    count = await change(session, and_(Outbox.state == WAITING, mine), **skip)
    await change(session, and_(IS_SENDING, mine), why=why)
    return count + await change(session, and_(IS_LEASED, mine), **skip)


def _check(method: str, payload: Mapping[str, Any], edits: int | None) -> None:
    if method not in METHODS:
        raise ValueError(f"{method!r} cannot be sent; there are {', '.join(sorted(METHODS))}")
    if method.startswith("edit_") != (edits is not None or "message_id" in payload):
        raise ValueError(f"{method!r}: an edit, and nothing else, names a row to edit or a message_id")


_NOT_THAT_FILE = (Reason.FILE_FORGOTTEN, Reason.BAD_REQUEST)
"""Why a message with a file of somebody's own is sent as it stands under `otherwise`."""


async def failed(
    session: AsyncSession,
    letter: Letter,
    worker: str,
    failure: Failure,
    *,
    machine_now: float,
    now: datetime,
    on_unreachable: OnUnreachable,
) -> Next | None:
    """Note a failed try and what follows from it; None, and nothing is changed, if the lease was lost."""
    following = after_failure(
        failure,
        kind=letter.kind,
        attempts=letter.attempts + 1,
        marked_up="parse_mode" in letter.payload,
        pictured=is_pictured(letter.method, letter.payload),
    )
    otherwise = letter.payload.get("otherwise")
    if otherwise is not None and failure.reason in _NOT_THAT_FILE:
        following = Next(State.WAITING, why=failure.name)
    held = and_(Outbox.id == letter.id, IN_FLIGHT, Outbox.worker == worker)
    if following.state is State.WAITING:
        following = unless_withdrawn(following, await session.scalar(_WITHDRAWN, {"letter": letter.id}))
    columns = following_columns(following, letter.payload, machine_now, now)
    if following.in_words:
        columns |= {"method": "send_message", "edits": None}
    if otherwise is not None and following.state is State.WAITING and failure.reason in _NOT_THAT_FILE:
        columns |= {"method": otherwise["method"], "payload": otherwise["payload"]}
    if not await change(session, held, **columns):
        return None
    if following.unreachable:
        await _now_unreachable(session, letter.chat, now, on_unreachable)
    announce(TOPIC)
    return following


_WITHDRAWN = select(Outbox.why).where(Outbox.id == bindparam("letter", type_=Integer()), IS_SENDING)
"""Why a message is not wanted any more that was leaving when it was withdrawn."""


def unless_withdrawn(following: Next, why: str | None) -> Next:
    return following if why is None or following.state is not State.WAITING else Next(State.SKIPPED, why=why)


def following_columns(following: Next, payload: Mapping[str, Any], machine_now: float, now: datetime) -> dict[str, Any]:
    return {
        "state": following.state,
        "why": following.why,
        "payload": {} if following.state in FINAL else changed(payload, following),
        "next_at": machine_now + following.pause if following.pause else 0.0,
        "worker": None,
        "lease_until": None,
        "sent_at": now if following.state is State.SENT else None,
    }


async def _now_unreachable(session: AsyncSession, chat: int, now: datetime, on_unreachable: OnUnreachable) -> None:
    statement = (
        update(Person)
        .where(Person.chat == chat, Person.unreachable_since.is_(None))
        .values(unreachable_since=now)
        .returning(Person.id)
    )
    if (await session.execute(statement)).first() is not None:
        await on_unreachable(session, chat)


async def counts(session: AsyncSession) -> dict[str, int]:
    """How many messages are in each state."""
    rows = await session.execute(select(Outbox.state, func.count()).group_by(Outbox.state))
    return {state: count for state, count in rows}


async def open_work(session: AsyncSession, limit: int = 20) -> list[str]:
    """The messages that are still on their way, in words, at most `limit`; a timer's words are not waited for."""
    columns = select(Outbox.id, Outbox.kind, Outbox.state, Outbox.attempts)
    flying = columns.where(IN_FLIGHT).order_by(Outbox.chat).limit(limit)
    waiting = (
        columns.where(Outbox.state == WAITING, Outbox.kind != Kind.TIMER).order_by(Outbox.lane, Outbox.id).limit(limit)
    )
    rows = [*(await session.execute(flying)), *(await session.execute(waiting))]
    return [f"message {id_} ({kind}) is {state} after {tries} tries" for id_, kind, state, tries in rows][:limit]
