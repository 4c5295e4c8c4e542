"""What the local platform knows, in a small SQLite file of its own: what was acknowledged survives a kill."""

from __future__ import annotations

import hashlib
import json
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Self

_STEPS = (
    """
CREATE TABLE IF NOT EXISTS chat (id INTEGER PRIMARY KEY, first_name TEXT NOT NULL, blocked INTEGER NOT NULL);
CREATE TABLE IF NOT EXISTS message (id INTEGER PRIMARY KEY, chat INTEGER NOT NULL, change INTEGER NOT NULL,
    body TEXT NOT NULL);
CREATE INDEX IF NOT EXISTS message_chat ON message (chat, id);
CREATE TABLE IF NOT EXISTS waiting (update_id INTEGER PRIMARY KEY, body TEXT NOT NULL);
CREATE TABLE IF NOT EXISTS tap (id TEXT PRIMARY KEY, chat INTEGER NOT NULL, answer TEXT);
CREATE TABLE IF NOT EXISTS file (id TEXT PRIMARY KEY, name TEXT NOT NULL, body BLOB NOT NULL);
CREATE TABLE IF NOT EXISTS fact (name TEXT PRIMARY KEY, value TEXT NOT NULL);
""",
    """
ALTER TABLE message ADD COLUMN edits INTEGER NOT NULL DEFAULT 0;
ALTER TABLE tap ADD COLUMN made REAL NOT NULL DEFAULT 0;
ALTER TABLE file ADD COLUMN kind TEXT NOT NULL DEFAULT 'document';
""",
)
"""What brings a file up to date; a file knows how many of them it has had."""


@dataclass(frozen=True, slots=True)
class File:
    """A file that somebody sent: its id, whether it went as a document or as a photo, its name and bytes."""

    id: str
    kind: str
    name: str
    body: bytes

    @property
    def unique_id(self) -> str:
        """The same for the same bytes."""
        return hashlib.sha256(self.body).hexdigest()[:16]


class Store:
    """Chats, messages, unconfirmed updates, taps, files and a few facts.

    Every call is one durable transaction, several calls inside `together` are one: what it returned from is on the
    disk. Without a file all of it is in memory.
    """

    def __init__(self, file: Path | None) -> None:
        if file is not None:
            file.parent.mkdir(parents=True, exist_ok=True)
        self._db = sqlite3.connect(file if file is not None else ":memory:", isolation_level=None)
        self._db.execute("PRAGMA journal_mode=WAL")
        self._db.execute("PRAGMA synchronous=FULL")
        with self.together():
            self._bring_up_to_date(file)

    def _bring_up_to_date(self, file: Path | None) -> None:
        done = int(self._db.execute("PRAGMA user_version").fetchone()[0])
        if done > len(_STEPS):
            raise ValueError(f"{file} was written by a newer version of this program: use that, or another folder")
        for step in _STEPS[done:]:
            for statement in step.strip().removesuffix(";").split(";"):
                self._db.execute(statement)
        self._db.execute(f"PRAGMA user_version={len(_STEPS)}")

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_problem: object) -> None:
        self.close()

    def close(self) -> None:
        """Closes the file."""
        self._db.close()

    @contextmanager
    def together(self) -> Iterator[None]:
        """Makes the calls inside one transaction: all of them or none."""
        if self._db.in_transaction:
            yield
            return
        self._db.execute("BEGIN IMMEDIATE")
        try:
            yield
        except BaseException:
            self._db.execute("ROLLBACK")
            raise
        self._db.execute("COMMIT")

    # --- chats ------------------------------------------------------------------------------------------------------

    def chat(self, chat: int) -> dict[str, Any] | None:
        """A chat's id, first_name and blocked, if it exists."""
        row = self._db.execute("SELECT id, first_name, blocked FROM chat WHERE id = ?", (chat,)).fetchone()
        return {"id": row[0], "first_name": row[1], "blocked": bool(row[2])} if row else None

    def chats(self) -> list[dict[str, Any]]:
        """All chats by their ids, each with its last message's id."""
        rows = self._db.execute(
            "SELECT c.id, c.first_name, c.blocked, (SELECT max(m.id) FROM message m WHERE m.chat = c.id) "
            "FROM chat c ORDER BY c.id"
        )
        return [{"id": r[0], "first_name": r[1], "blocked": bool(r[2]), "last": r[3] or 0} for r in rows]

    def put_chat(self, chat: int, first_name: str, blocked: bool) -> None:
        """Makes or changes a chat."""
        self._db.execute(
            "INSERT INTO chat VALUES (?, ?, ?) ON CONFLICT (id) DO UPDATE SET first_name = ?2, blocked = ?3",
            (chat, first_name, int(blocked)),
        )

    # --- messages ---------------------------------------------------------------------------------------------------

    def put_message(self, chat: int, body: dict[str, Any]) -> None:
        """Stores a message under its message_id, gives it the next change number and counts how often it changed."""
        with self.together():
            self._db.execute(
                "INSERT INTO message (id, chat, change, body) VALUES (?, ?, ?, ?) "
                "ON CONFLICT (id) DO UPDATE SET change = ?3, body = ?4, edits = edits + 1",
                (body["message_id"], chat, self.count("change"), json.dumps(body)),
            )

    def delete_message(self, chat: int, message_id: int) -> None:
        """Forgets a message."""
        self._db.execute("DELETE FROM message WHERE id = ? AND chat = ?", (message_id, chat))

    def edits(self, chat: int) -> dict[int, int]:
        """How often each changed message of a chat has changed."""
        return dict(self._db.execute("SELECT id, edits FROM message WHERE chat = ? AND edits > 0", (chat,)))

    def message(self, chat: int, message_id: int) -> dict[str, Any] | None:
        """One message of a chat."""
        row = self._db.execute("SELECT body FROM message WHERE id = ? AND chat = ?", (message_id, chat)).fetchone()
        return dict(json.loads(row[0])) if row else None

    def messages(self, chat: int, after: int, since: int) -> list[tuple[int, dict[str, Any]]]:
        """Messages with an id above `after` and a change number above `since`, oldest first, with change numbers."""
        rows = self._db.execute(
            "SELECT change, body FROM message WHERE chat = ? AND id > ? AND change > ? ORDER BY id",
            (chat, after, since),
        )
        return [(row[0], json.loads(row[1])) for row in rows]

    # --- updates, taps, files, facts ----------------------------------------------------------------------------------

    def put_update(self, update: dict[str, Any]) -> None:
        """Keeps an update until it is confirmed."""
        self._db.execute("INSERT INTO waiting VALUES (?, ?)", (update["update_id"], json.dumps(update)))

    def updates(self, limit: int) -> list[dict[str, Any]]:
        """The oldest unconfirmed updates."""
        rows = self._db.execute("SELECT body FROM waiting ORDER BY update_id LIMIT ?", (limit,))
        return [json.loads(row[0]) for row in rows]

    def confirm(self, below: int) -> None:
        """Forgets every update below a number."""
        self._db.execute("DELETE FROM waiting WHERE update_id < ?", (below,))

    def keep_last(self, number: int) -> None:
        """Forgets every update but the last ones."""
        self._db.execute(
            "DELETE FROM waiting WHERE update_id NOT IN "
            "(SELECT update_id FROM waiting ORDER BY update_id DESC LIMIT ?)",
            (number,),
        )

    def unconfirmed(self) -> int:
        """How many updates wait."""
        return int(self._db.execute("SELECT count(*) FROM waiting").fetchone()[0])

    def put_tap(self, tap: str, chat: int, made: float) -> None:
        """Notes a tap that waits for its answer, with the machine's time in seconds."""
        self._db.execute("INSERT INTO tap (id, chat, made) VALUES (?, ?, ?)", (tap, chat, made))

    def answer_tap(self, tap: str, text: str, made_since: float) -> bool:
        """Answers a tap; False when there is none of that id that is young enough."""
        done = self._db.execute("UPDATE tap SET answer = ? WHERE id = ? AND made >= ?", (text, tap, made_since))
        return done.rowcount > 0

    def tap_answer(self, tap: str) -> tuple[bool, str | None]:
        """Whether a tap exists, and its answer when it has one."""
        row = self._db.execute("SELECT answer FROM tap WHERE id = ?", (tap,)).fetchone()
        return row is not None, row[0] if row else None

    def put_file(self, file: File) -> None:
        """Keeps a file."""
        self._db.execute(
            "INSERT INTO file (id, kind, name, body) VALUES (?, ?, ?, ?)", (file.id, file.kind, file.name, file.body)
        )

    def file(self, file: str) -> File | None:
        """A file by its id."""
        row = self._db.execute("SELECT id, kind, name, body FROM file WHERE id = ?", (file,)).fetchone()
        return File(*row) if row else None

    def count(self, name: str, start: int = 0) -> int:
        """The next number of a counter."""
        row = self._db.execute(
            "INSERT INTO fact VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = CAST(value AS INTEGER) + 1 "
            "RETURNING value",
            (name, str(start + 1)),
        ).fetchone()
        return int(row[0])

    def fact(self, name: str) -> str | None:
        """A fact that was kept."""
        row = self._db.execute("SELECT value FROM fact WHERE name = ?", (name,)).fetchone()
        return str(row[0]) if row else None

    def keep(self, name: str, value: str) -> None:
        """Keeps a fact."""
        self._db.execute("INSERT INTO fact VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET value = ?2", (name, value))
