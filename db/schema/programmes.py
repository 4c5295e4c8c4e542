"""A coach's programmes, their recordings and rehearsals, and what they write to many."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.schema.base import Base


class ProgrammeVersion(Base):
    """A programme file as its coach sent it. Content-addressed; once published it never changes."""

    __tablename__ = "programme_version"
    __table_args__ = (UniqueConstraint("coach_id", "digest"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"))
    digest: Mapped[str]
    """SHA-256 of the file, hexadecimal."""
    title: Mapped[str]
    source: Mapped[str]
    stored_at: Mapped[datetime]
    published_at: Mapped[datetime | None]
    upkeep: Mapped[bool] = mapped_column(default=False)
    """Made for one client's upkeep: no file of the coach's, and nobody is invited to it."""


class Recording(Base):
    """A coach's own video or photo of a movement, for their clients; the platform keeps it, here is only its id."""

    __tablename__ = "recording"
    __table_args__ = (UniqueConstraint("coach_id", "movement"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"))
    movement: Mapped[str | None]
    """The movement's key; none until the coach has said which it is."""
    kind: Mapped[str]
    """video, animation, photo."""
    file_id: Mapped[str]
    at: Mapped[datetime]


class Rehearsal(Base):
    """A rehearsal that a coach has asked for in the chat; the row goes when they have been told what came of it."""

    __tablename__ = "rehearsal"

    id: Mapped[int] = mapped_column(primary_key=True)
    version_id: Mapped[int] = mapped_column(ForeignKey("programme_version.id"))
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"))
    tries: Mapped[int] = mapped_column(default=0)
    worker: Mapped[str | None]
    lease_until: Mapped[float] = mapped_column(default=0.0)
    """Machine clock, seconds: until then it is in a worker's hands."""
    asked_at: Mapped[datetime]


class GroupMessage(Base):
    """What a coach writes to many of their clients at once; nothing leaves before they have seen it and said yes."""

    __tablename__ = "group_message"

    id: Mapped[int] = mapped_column(primary_key=True)
    coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"), index=True)
    state: Mapped[str]
    programme: Mapped[int]
    """To whom it goes: see `bot.flows.people.Filter`."""
    text: Mapped[str | None]
    made_at: Mapped[datetime]
    sent_at: Mapped[datetime | None]


class GroupLetter(Base):
    """One client's copy of a message to many."""

    __tablename__ = "group_letter"
    __table_args__ = (UniqueConstraint("message_id", "course_id"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    message_id: Mapped[int] = mapped_column(ForeignKey("group_message.id"))
    course_id: Mapped[int] = mapped_column(ForeignKey("course.id"), index=True)
    left_at: Mapped[datetime | None]
    """When it was given to the outbox; none while it waits for the client's morning, or if it was held back."""
