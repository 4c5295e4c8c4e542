"""What the simulation sees of the database from outside: a connection of its own, and a trail that triggers keep."""

from __future__ import annotations

import sqlite3
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

TRAIL = """
CREATE TABLE sim_effect (update_id INTEGER NOT NULL);
CREATE TABLE sim_trail (id INTEGER PRIMARY KEY, what TEXT, subject INTEGER, a, b, c);
CREATE TRIGGER sim_moved AFTER UPDATE OF day ON course WHEN old.day IS NOT new.day BEGIN
  INSERT INTO sim_trail (what, subject, a, b, c) VALUES ('moved', new.id, old.day, new.day, old.rests_taken); END;
CREATE TRIGGER sim_made AFTER INSERT ON ledger BEGIN
  INSERT INTO sim_trail (what, subject, a, b) VALUES ('made', new.course_id, new.id, new.kind); END;
CREATE TRIGGER sim_filled AFTER UPDATE OF decision ON ledger WHEN old.decision IS NOT new.decision BEGIN
  INSERT INTO sim_trail (what, subject, a, b) VALUES ('filled', new.course_id, new.id, new.kind); END;
CREATE TRIGGER sim_morning AFTER UPDATE OF morning ON ledger WHEN old.morning IS NOT new.morning BEGIN
  INSERT INTO sim_trail (what, subject, a, b) VALUES ('morning', new.course_id, new.id, new.morning); END;
CREATE TRIGGER sim_said AFTER INSERT ON checkin BEGIN
  INSERT INTO sim_trail (what, subject, b, c)
  VALUES ('said', new.ledger_id, json_array(new.pain, new.kind, new.flag_state, new.place), new.updated_at); END;
CREATE TRIGGER sim_said_again AFTER UPDATE ON checkin BEGIN
  INSERT INTO sim_trail (what, subject, a, b, c)
  VALUES ('said', new.ledger_id, json_array(old.pain, old.kind, old.flag_state, old.place),
    json_array(new.pain, new.kind, new.flag_state, new.place), new.updated_at); END;
CREATE TRIGGER sim_state AFTER UPDATE OF state ON course WHEN old.state IS NOT new.state BEGIN
  INSERT INTO sim_trail (what, subject, a, b) VALUES ('state', new.id, old.state, new.state); END;
CREATE TRIGGER sim_forgot AFTER DELETE ON inbox BEGIN
  INSERT INTO sim_trail (what, subject, a) VALUES ('forgot', old.update_id, old.chat); END;
CREATE TRIGGER sim_sending AFTER UPDATE OF state ON outbox WHEN new.state = 'sending' AND old.state != 'sending'
  AND new.kind IN ('session', 'nudge') BEGIN
  INSERT INTO sim_trail (what, subject, a, b, c) SELECT 'sending', new.id, new.key, new.kind,
    (SELECT json_array(p.unreachable_since, (SELECT c.state FROM course c WHERE c.person_id = p.id
      AND c.state IN ('active', 'waiting')), new.kind = 'session' AND (SELECT l.outbox_id FROM ledger l
      WHERE l.person_id = p.id AND new.key = 'session:' || p.id || ':' || l.local_date) IS NOT new.id)
      FROM person p WHERE p.chat = new.chat); END;
"""


class Record:
    """The database as it stands, read at once and without a transaction of the program's."""

    def __init__(self, file: Path) -> None:
        self._db = sqlite3.connect(file, isolation_level=None)
        self._db.row_factory = sqlite3.Row
        self._db.execute("PRAGMA synchronous = OFF")
        self._db.executescript(TRAIL)
        self._seen = 0

    def close(self) -> None:
        """Lets go of the file."""
        self._db.close()

    def rows(self, query: str, *values: Any) -> list[sqlite3.Row]:
        """All rows of a query."""
        return self._db.execute(query, values).fetchall()

    def one(self, query: str, *values: Any) -> sqlite3.Row | None:
        """The first row of a query."""
        row: sqlite3.Row | None = self._db.execute(query, values).fetchone()
        return row

    def value(self, query: str, *values: Any) -> Any:
        """The first value of a query's first row; None when there is no row."""
        row = self.one(query, *values)
        return row[0] if row else None

    def change(self, statement: str, *values: Any) -> None:
        """Changes the database as somebody else's program might."""
        self._db.execute(statement, values)

    def news(self) -> list[sqlite3.Row]:
        """What the triggers wrote since the last time."""
        found = self.rows("SELECT * FROM sim_trail WHERE id > ? ORDER BY id", self._seen)
        if found:
            self._seen = found[-1]["id"]
        return found


def instant(text: str) -> datetime:
    """An instant as SQLite holds it."""
    return datetime.fromisoformat(text).replace(tzinfo=UTC)


def stored(moment: datetime) -> str:
    """The same the other way."""
    return moment.astimezone(UTC).replace(tzinfo=None).isoformat(" ", "microseconds")
