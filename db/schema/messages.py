"""The way in and the way out."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import ForeignKey, Index
from sqlalchemy.orm import Mapped, mapped_column

from db.schema.base import NEVER_AGAIN, Base, partial


class Inbox(Base):
    """An update that was stored before the platform was told so, and what became of it.

    `machine` times are seconds of the machine clock, not instants of the calendar.
    """

    __tablename__ = "inbox"
    __table_args__ = (
        partial("ix_inbox_open", "update_id", where="state IN ('waiting', 'leased')"),
        partial("ix_inbox_open_chat", "chat", "update_id", where="state IN ('waiting', 'leased')"),
    )

    update_id: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    chat: Mapped[int] = mapped_column()
    payload: Mapped[dict[str, Any] | None]
    """The update without names save the first name; emptied when handled."""
    document: Mapped[bytes | None]
    """A file that the update carries, fetched before the update's transaction."""
    state: Mapped[str] = mapped_column(default="waiting")
    """waiting, leased, handled, failed."""
    tries: Mapped[int] = mapped_column(default=0)
    """How often a worker has taken it in hand, whatever became of that."""
    failures: Mapped[int] = mapped_column(default=0)
    """How often its handling has raised an error."""
    worker: Mapped[str | None]
    lease_until: Mapped[float | None]
    """While leased: until when. While waiting for another try: not before."""
    stored_at: Mapped[datetime]
    """Calendar: a tap counts at the moment it was stored."""
    failure: Mapped[str | None]
    """The class name of the last failure, never a person's words."""


class Outbox(Base):
    """A message that must leave, once by its `key`. Lanes: 0 alert, 1 answer, 2 session, 3 nudge, 4 digest, 5 timer."""

    __tablename__ = "outbox"
    __table_args__ = (
        partial("uq_outbox_one_in_flight_a_chat", "chat", where="state IN ('leased', 'sending')", unique=True),
        partial("ix_outbox_waiting", "lane", "id", where="state = 'waiting'"),
        partial("ix_outbox_waiting_chat", "chat", "lane", "id", where="state = 'waiting'"),
        partial("ix_outbox_waiting_edits", "edits", where="state = 'waiting' AND edits IS NOT NULL"),
        partial("ix_outbox_late", "late_after", where="state = 'waiting' AND late_after IS NOT NULL"),
        partial("ix_outbox_backoff", "next_at", where="state = 'waiting' AND next_at > 0"),
        NEVER_AGAIN,
    )

    id: Mapped[int] = mapped_column(primary_key=True)
    key: Mapped[str] = mapped_column(unique=True)
    chat: Mapped[int] = mapped_column()
    lane: Mapped[int]
    kind: Mapped[str]
    """alert, answer, session, nudge, digest, edit, tap (a callback answer), timer: what an unknown outcome leads to."""
    method: Mapped[str]
    """The Bot API method in python-telegram-bot's spelling: send_message, edit_message_text …"""
    payload: Mapped[dict[str, Any]]
    """The method's arguments as JSON, without chat_id; an edit of an outbox row has no message_id either. Emptied when
    the message has left or never will.

    A file is `{"attachment": digest, "filename": …}`, `{"base64": …, "filename": …}`, for a personal picture
    `{"recipe": …, "digest": …, "filename": …}`, or for one that a person sent `{"file_id": …}`. `again` is no
    argument but the line that stands first if an alert has to be repeated; `otherwise` is the method and payload that
    take its place when the platform does not take its file.
    """
    edits: Mapped[int | None] = mapped_column(ForeignKey("outbox.id"))
    """The outbox row whose message this one edits; it waits for that row's message id."""
    state: Mapped[str] = mapped_column(default="waiting")
    """waiting, leased, sending, sent, refused, unknown, skipped."""
    why: Mapped[str | None]
    """Why it was refused or skipped: a rule's name or the platform's error class."""
    late_after: Mapped[datetime | None]
    """Calendar: from then on the message is skipped as late."""
    attempts: Mapped[int] = mapped_column(default=0)
    next_at: Mapped[float] = mapped_column(default=0.0)
    """Machine clock, seconds: not before."""
    worker: Mapped[str | None]
    lease_until: Mapped[float | None]
    message_id: Mapped[int | None]
    made_at: Mapped[datetime]
    sent_at: Mapped[datetime | None]


class ChatPace(Base):
    """When, by the machine clock, a chat may get its next message; one row a chat, whichever worker sends."""

    __tablename__ = "chat_pace"
    __table_args__ = (Index("ix_chat_pace_free_at", "free_at"),)

    chat: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    free_at: Mapped[float]


class Attachment(Base):
    """A file that many messages carry, kept once: the picture of a session. Nothing personal is kept here.

    It has its bytes, or a recipe from which they are made again at any time.
    """

    __tablename__ = "attachment"

    digest: Mapped[str] = mapped_column(primary_key=True)
    """SHA-256 of the file or of its recipe, hexadecimal."""
    body: Mapped[bytes | None]
    recipe: Mapped[dict[str, Any] | None]
    """What is to be drawn: see bot/painter.py."""
    file_ids: Mapped[dict[str, Any]]
    """By bot and method: the platform's id of the file after its first upload."""
