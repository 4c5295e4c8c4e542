"""The way out: what must leave is a row first, written together with its cause, once by its key."""

from __future__ import annotations

import json
from collections.abc import Awaitable, Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import (
    ColumnElement,
    Float,
    Integer,
    Select,
    Text,
    TextClause,
    and_,
    bindparam,
    exists,
    func,
    literal_column,
    or_,
    select,
    text,
    tuple_,
    update,
)
from sqlalchemy.ext.asyncio import AsyncConnection, AsyncSession
from sqlalchemy.orm import aliased
from sqlalchemy.sql.dml import ReturningUpdate

from db.delivery import (
    CAPTIONED,
    ENOUGH,
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
from db.direct import as_text, fetched
from db.leads import died
from db.once import Executor, insert_unless_there, on_sqlite
from db.schema import ChatPace, Instant, Outbox, Person
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

_WAITING: ColumnElement[str] = literal_column("'waiting'")
_LEASED: ColumnElement[str] = literal_column("'leased'")
_SENDING: ColumnElement[str] = literal_column("'sending'")
_NO_SYNC = {"synchronize_session": False}


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


@dataclass(frozen=True, slots=True)
class Mark:
    """One step of a message on its way: `SENDING` before the request, `SENT` after the answer, `WAITING` given back.

    `free_at` is when, by the machine clock, the chat may get its next message; 0 for at once.
    """

    id: int
    worker: str
    to: State
    at: datetime
    message_id: int | None = None
    chat: int = 0
    free_at: float = 0.0


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
    waiting = and_(Outbox.chat == chat, Outbox.state == _WAITING, Outbox.kind == kind)
    await session.execute(
        update(Outbox).where(waiting).values(state=State.SKIPPED, why="moved-on", payload={}),
        execution_options=_NO_SYNC,
    )


async def withdraw(session: AsyncSession, chat: int, why: str, *, row: int | None = None) -> int:
    """Skip what comes to a chat by itself and has not begun to leave, or of that one row; returns how many.

    What is leaving just now may arrive; if it does not, it is not tried again.
    """
    by_itself = and_(Outbox.chat == chat, Outbox.kind.in_([Kind.SESSION, Kind.NUDGE, Kind.TIMER]))
    mine = by_itself if row is None else and_(by_itself, Outbox.id == row)
    in_hand = and_(Outbox.state.in_([_LEASED, _SENDING]), Outbox.state == _LEASED)
    leaving = and_(Outbox.state.in_([_LEASED, _SENDING]), Outbox.state == _SENDING)
    skip: dict[str, Any] = {"state": State.SKIPPED, "why": why, "payload": {}, "worker": None, "lease_until": None}
    count = await _set(session, and_(Outbox.state == _WAITING, mine), **skip)
    await _set(session, and_(leaving, mine), why=why)
    return count + await _set(session, and_(in_hand, mine), **skip)


def _check(method: str, payload: Mapping[str, Any], edits: int | None) -> None:
    if method not in METHODS:
        raise ValueError(f"{method!r} cannot be sent; there are {', '.join(sorted(METHODS))}")
    if method.startswith("edit_") != (edits is not None or "message_id" in payload):
        raise ValueError(f"{method!r}: an edit, and nothing else, names a row to edit or a message_id")


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
    rows = (await session.execute(_CLAIM, given, execution_options=_NO_SYNC)).all()
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


_MACHINE_NOW = bindparam("machine_now", type_=Float())
_NOW = bindparam("now", type_=Instant())


def _ready() -> Select[int]:
    """What may be sent at `machine_now` and `now`, the most urgent lane first, then the oldest; at most `most`."""
    in_flight = aliased(Outbox)
    paced = exists().where(ChatPace.chat == Outbox.chat, ChatPace.free_at > _MACHINE_NOW)
    return (
        select(Outbox.id)
        .where(
            Outbox.state == _WAITING,
            Outbox.lane <= bindparam("last", type_=Integer()),
            Outbox.next_at <= _MACHINE_NOW,
            or_(Outbox.late_after.is_(None), Outbox.late_after > _NOW),
            _has_its_message(Outbox),
            or_(Outbox.kind == Kind.TAP, ~paced),
            ~exists().where(in_flight.chat == Outbox.chat, in_flight.state.in_([_LEASED, _SENDING])),
            ~_held_up(),
        )
        .order_by(Outbox.lane, Outbox.id)
        .limit(bindparam("most", type_=Integer()))
    )


def _held_up() -> ColumnElement[bool]:
    """Whether something of the same chat goes before: it is ready too, or in backoff in the same lane."""
    ahead = aliased(Outbox)
    ready = and_(ahead.next_at <= _MACHINE_NOW, _has_its_message(ahead))
    in_backoff = and_(ahead.next_at > _MACHINE_NOW, ahead.lane == Outbox.lane, ahead.attempts < ENOUGH)
    return exists().where(
        ahead.chat == Outbox.chat,
        ahead.state == _WAITING,
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


async def tidy(session: Executor, *, machine_now: float, now: datetime) -> int:
    """Skip what is late or has nothing left to edit, and recover what dead workers had; returns how many."""
    late, orphans, dead = (await session.execute(_UNTIDY, {"machine_now": machine_now, "now": now})).one()
    skipped = await _count(session, _SKIP_LATE, now=now) if late else 0
    skipped += await _count(session, _SKIP_ORPHANS) if orphans else 0
    return skipped + (await recover(session, machine_now=machine_now, now=now) if dead else 0)


def _changing(where: ColumnElement[bool], **values: Any) -> ReturningUpdate[tuple[int]]:
    return update(Outbox).where(where).values(**values).returning(Outbox.id)


def _is_orphan() -> ColumnElement[bool]:
    """An edit of a message that never got a message id and never will."""
    edited = aliased(Outbox)
    gone = exists().where(edited.id == Outbox.edits, edited.message_id.is_(None), edited.state.in_(sorted(FINAL)))
    return and_(Outbox.state == _WAITING, Outbox.edits.is_not(None), gone)


_LATE = and_(Outbox.state == _WAITING, Outbox.late_after.is_not(None), Outbox.late_after <= _NOW)
_SKIP_LATE = _changing(_LATE, state=State.SKIPPED, why="late", payload={})
_SKIP_ORPHANS = _changing(_is_orphan(), state=State.SKIPPED, why="nothing-to-edit", payload={})
"""Built once, as `_CLAIM` is."""


async def _count(session: Executor, statement: ReturningUpdate[tuple[int]], **given: Any) -> int:
    return len((await session.execute(statement, given, execution_options=_NO_SYNC)).all())


async def apply_marks(connection: AsyncConnection, marks: Sequence[Mark]) -> list[bool]:
    """Apply many marks at once, one UPDATE for each state and worker; says whose fence held.

    A SENT mark that took hold earlier holds again, because its commit may have been lost from sight.
    """
    held: set[tuple[int, State]] = set()
    for to, worker in sorted({(mark.to, mark.worker) for mark in marks}):
        alike = [mark for mark in marks if (mark.to, mark.worker) == (to, worker)]
        found = await _apply_alike(connection, to, worker, alike)
        held |= {(id_, to) for id_ in found}
        if to is State.SENT:
            await _pace(connection, [mark for mark in alike if mark.free_at and mark.id in found])
    return [_takes(held, mark) for mark in marks]


def _takes(held: set[tuple[int, State]], mark: Mark) -> bool:
    """Whether a mark took hold; a message begins to be sent once only, whoever marks it twice at once."""
    key = (mark.id, mark.to)
    found = key in held
    if mark.to is State.SENDING:
        held.discard(key)
    return found


async def _apply_alike(connection: AsyncConnection, to: State, worker: str, marks: Sequence[Mark]) -> set[int]:
    at = max(mark.at for mark in marks)
    if on_sqlite(connection):
        given = {"rows": json.dumps([[mark.id, mark.message_id] for mark in marks]), "worker": worker}
        if to is State.SENT:
            given["at"] = as_text(at)
        return {row[0] for row in await fetched(connection, _MARKS[to, "sqlite"].text, given)}
    values: dict[str, Any] = {
        "ids": [mark.id for mark in marks],
        "messages": [mark.message_id for mark in marks],
        "worker": worker,
    }
    if to is State.SENT:
        values["at"] = at
    return set((await connection.execute(_MARKS[to, "postgresql"], values)).scalars())


_MARK = {
    State.SENDING: "SET state = 'sending', attempts = attempts + 1, why = NULL {rows} AND state = 'leased'",
    State.SENT: "SET state = 'sent', lease_until = NULL, why = NULL, payload = '{{}}', message_id = mark.message, "
    "sent_at = :at {rows} AND state IN ('sending', 'sent')",
    State.WAITING: "SET state = 'waiting', worker = NULL, lease_until = NULL {rows} AND state = 'leased'",
}
_ROWS = {
    "sqlite": "FROM (SELECT json_extract(value, '$[0]') AS id, json_extract(value, '$[1]') AS message "
    "FROM json_each(:rows)) AS mark WHERE outbox.id = mark.id AND worker = :worker",
    "postgresql": "FROM unnest(CAST(:ids AS bigint[]), CAST(:messages AS bigint[])) AS mark(id, message) "
    "WHERE outbox.id = mark.id AND worker = :worker",
}


def _mark_statement(to: State, dialect: str) -> TextClause:
    found = text(f"UPDATE outbox {_MARK[to].format(rows=_ROWS[dialect])} RETURNING outbox.id")
    return found.bindparams(bindparam("at", type_=Instant())) if to is State.SENT else found


_MARKS = {(to, dialect): _mark_statement(to, dialect) for to in _MARK for dialect in _ROWS}
"""One statement for any number of rows, so that it is prepared once."""


async def _pace(connection: AsyncConnection, marks: Sequence[Mark]) -> None:
    free_at = {mark.chat: mark.free_at for mark in sorted(marks, key=lambda mark: mark.chat)}
    if not free_at:
        return
    if on_sqlite(connection):
        await fetched(connection, _PACE["sqlite"].text, {"rows": json.dumps(list(free_at.items()))})
    else:
        await connection.execute(_PACE["postgresql"], {"chats": list(free_at), "moments": list(free_at.values())})


_LATER = "ON CONFLICT (chat) DO UPDATE SET free_at = excluded.free_at"
_PACE = {
    "sqlite": text(
        "INSERT INTO chat_pace (chat, free_at) SELECT json_extract(value, '$[0]'), json_extract(value, '$[1]') "
        f"FROM json_each(:rows) WHERE true {_LATER}"
    ),
    "postgresql": text(
        "INSERT INTO chat_pace (chat, free_at) "
        f"SELECT * FROM unnest(CAST(:chats AS bigint[]), CAST(:moments AS float[])) {_LATER}"
    ),
}


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
    held = and_(Outbox.id == letter.id, Outbox.state.in_([_LEASED, _SENDING]), Outbox.worker == worker)
    if following.state is State.WAITING:
        following = _unless_withdrawn(following, await session.scalar(_WITHDRAWN, {"letter": letter.id}))
    columns = _columns(following, letter.payload, machine_now, now)
    if following.in_words:
        columns |= {"method": "send_message", "edits": None}
    if otherwise is not None and following.state is State.WAITING and failure.reason in _NOT_THAT_FILE:
        columns |= {"method": otherwise["method"], "payload": otherwise["payload"]}
    if not await _set(session, held, **columns):
        return None
    if following.unreachable:
        await _now_unreachable(session, letter.chat, now, on_unreachable)
    announce(TOPIC)
    return following


_WITHDRAWN = select(Outbox.why).where(Outbox.id == bindparam("letter", type_=Integer()), Outbox.state == _SENDING)
"""Why a message is not wanted any more that was leaving when it was withdrawn."""


def _unless_withdrawn(following: Next, why: str | None) -> Next:
    return following if why is None or following.state is not State.WAITING else Next(State.SKIPPED, why=why)


def _columns(following: Next, payload: Mapping[str, Any], machine_now: float, now: datetime) -> dict[str, Any]:
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


async def release(session: AsyncSession, worker: str) -> int:
    """Give back what `worker` leased and never began to send; returns how many."""
    mine = and_(Outbox.state.in_([_LEASED, _SENDING]), Outbox.state == _LEASED, Outbox.worker == worker)
    freed = await _set(session, mine, state=State.WAITING, worker=None, lease_until=None)
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
        following = _unless_withdrawn(following, why)
        await _set(session, Outbox.id == id_, **_columns(following, payload, machine_now, now))
    freed = await _count(session, dead.free, **given)
    if rows or freed:
        announce(TOPIC)
    return len(rows) + freed


@dataclass(frozen=True, slots=True)
class _Dead:
    """What is asked of messages that dead workers had: which were being sent, and to set free what was not."""

    lost: Select[tuple[int, str, int, dict[str, Any], str | None]]
    free: ReturningUpdate[tuple[int]]


def _dead(dead: ColumnElement[bool]) -> _Dead:
    in_flight = Outbox.state.in_([_LEASED, _SENDING])
    lost = select(Outbox.id, Outbox.kind, Outbox.attempts, Outbox.payload, Outbox.why).where(
        in_flight, Outbox.state == _SENDING, dead
    )
    leased = and_(in_flight, Outbox.state == _LEASED, dead)
    free = _changing(leased, state=State.WAITING, worker=None, lease_until=None)
    return _Dead(lost.with_for_update(skip_locked=True), free)


_OVER = _dead(or_(Outbox.lease_until <= _MACHINE_NOW, died(Outbox.worker, _MACHINE_NOW)))
_UNTIDY = select(
    exists().where(_LATE),
    exists().where(_is_orphan()),
    exists().where(
        Outbox.state.in_([_LEASED, _SENDING]),
        or_(Outbox.lease_until <= _MACHINE_NOW, died(Outbox.worker, _MACHINE_NOW)),
    ),
)
"""Whether there is anything to tidy: asked far more often than there is."""
_ALL_BUT = _dead(Outbox.worker != bindparam("but", type_=Text()))


@dataclass(frozen=True, slots=True)
class Behind:
    """Whether anything waits, and when by the machine clock the next of it that is in backoff or paced may leave."""

    waits: bool
    next_at: float | None


def _what_is_behind() -> Select[bool, float | None, float | None]:
    waits = exists().where(Outbox.state == _WAITING)
    backoff = select(func.min(Outbox.next_at)).where(
        Outbox.state == _WAITING, text("next_at > 0"), Outbox.next_at > _MACHINE_NOW
    )
    in_chat = exists().where(Outbox.chat == ChatPace.chat, Outbox.state == _WAITING)
    paced = select(ChatPace.free_at).where(ChatPace.free_at > _MACHINE_NOW, in_chat).order_by(ChatPace.free_at).limit(1)
    return select(waits, backoff.scalar_subquery(), paced.scalar_subquery())


_BEHIND = _what_is_behind()


async def behind(session: Executor, machine_now: float) -> Behind:
    """What still waits to leave."""
    waits, *moments = (await session.execute(_BEHIND, {"machine_now": machine_now})).one()
    return Behind(waits, min((moment for moment in moments if moment is not None), default=None))


async def counts(session: AsyncSession) -> dict[str, int]:
    """How many messages are in each state."""
    rows = await session.execute(select(Outbox.state, func.count()).group_by(Outbox.state))
    return {state: count for state, count in rows}


async def open_work(session: AsyncSession, limit: int = 20) -> list[str]:
    """The messages that are still on their way, in words, at most `limit`; a timer's words are not waited for."""
    columns = select(Outbox.id, Outbox.kind, Outbox.state, Outbox.attempts)
    flying = columns.where(Outbox.state.in_([_LEASED, _SENDING])).order_by(Outbox.chat).limit(limit)
    waiting = (
        columns.where(Outbox.state == _WAITING, Outbox.kind != Kind.TIMER).order_by(Outbox.lane, Outbox.id).limit(limit)
    )
    rows = [*(await session.execute(flying)), *(await session.execute(waiting))]
    return [f"message {id_} ({kind}) is {state} after {tries} tries" for id_, kind, state, tries in rows][:limit]


async def _set(session: Executor, where: ColumnElement[bool], **values: Any) -> int:
    return await _count(session, _changing(where, **values))
