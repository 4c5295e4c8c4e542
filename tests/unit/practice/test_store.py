"""What the local platform keeps: all or nothing, and files of an earlier version are brought up to date."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from bot.practice.store import File, Store


def _one_name_missing(store: Store) -> None:
    with store.together():
        store.put_chat(1, "Ann", False)
        store.put_message(1, {"message_id": store.count("message")})
        store.put_chat(2, None, False)  # type: ignore[arg-type]


def test_calls_made_together_are_kept_or_undone_together(tmp_path: Path) -> None:
    with Store(tmp_path / "chats.sqlite") as store:
        with pytest.raises(sqlite3.IntegrityError):
            _one_name_missing(store)
        assert (store.chats(), store.message(1, 1)) == ([], None)
        with store.together():
            store.put_chat(1, "Ann", False)
    with Store(tmp_path / "chats.sqlite") as again:
        assert again.chat(1) == {"id": 1, "first_name": "Ann", "blocked": False}


def test_a_counter_never_gives_a_number_twice_even_after_closing(tmp_path: Path) -> None:
    with Store(tmp_path / "chats.sqlite") as store:
        first = [store.count("update") for _ in range(3)]
    with Store(tmp_path / "chats.sqlite") as store:
        assert [*first, store.count("update"), store.count("message")] == [1, 2, 3, 4, 1]


def test_a_file_from_before_edits_and_photos_is_brought_up_to_date(tmp_path: Path) -> None:
    path = tmp_path / "chats.sqlite"
    old = sqlite3.connect(path)
    old.executescript(
        "CREATE TABLE chat (id INTEGER PRIMARY KEY, first_name TEXT NOT NULL, blocked INTEGER NOT NULL);"
        "CREATE TABLE message (id INTEGER PRIMARY KEY, chat INTEGER NOT NULL, change INTEGER NOT NULL, body TEXT);"
        "CREATE TABLE tap (id TEXT PRIMARY KEY, chat INTEGER NOT NULL, answer TEXT);"
        "CREATE TABLE file (id TEXT PRIMARY KEY, name TEXT NOT NULL, body BLOB NOT NULL);"
        "INSERT INTO message VALUES (1, 7, 1, '{\"message_id\": 1}');"
        "INSERT INTO file VALUES ('f', 'a.yaml', x'78');"
    )
    old.close()
    for _time in range(2):
        with Store(path) as store:
            assert store.messages(7, 0, 0) == [(1, {"message_id": 1})]
            assert store.edits(7) == {}
            assert store.file("f") == File("f", "document", "a.yaml", b"x")


def test_a_file_from_a_newer_version_is_refused_by_name(tmp_path: Path) -> None:
    path = tmp_path / "chats.sqlite"
    newer = sqlite3.connect(path)
    newer.execute("PRAGMA user_version=99")
    newer.close()
    with pytest.raises(ValueError, match=r"chats\.sqlite was written by a newer version"):
        Store(path)


def test_every_commit_reaches_the_disk(tmp_path: Path) -> None:
    with Store(tmp_path / "chats.sqlite") as store:
        settings = [store._db.execute(f"PRAGMA {name}").fetchone()[0] for name in ("journal_mode", "synchronous")]
    assert settings == ["wal", 2]
