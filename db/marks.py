"""Steps of messages on their way, many at once, each fenced: only the worker that holds a message moves it."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import TextClause, bindparam, text
from sqlalchemy.ext.asyncio import AsyncConnection

from db.delivery import State
from db.direct import as_text, fetched
from db.once import on_sqlite
from db.schema import Instant


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
