"""Links: each is kept as its hash, and opens something once or for so many people."""

from __future__ import annotations

from datetime import date, datetime

from sqlalchemy import ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.schema.base import Base


class CoachLink(Base):
    """A one-time link by which somebody becomes a coach; only its hash is stored."""

    __tablename__ = "coach_link"

    id: Mapped[int] = mapped_column(primary_key=True)
    token_hash: Mapped[str] = mapped_column(unique=True)
    expires_at: Mapped[datetime]
    used_by: Mapped[int | None] = mapped_column(ForeignKey("person.id"))
    used_at: Mapped[datetime | None]


class Door(Base):
    """A one-time link that opens something of a coach's to one person; only its hash is stored."""

    __tablename__ = "door"

    id: Mapped[int] = mapped_column(primary_key=True)
    token_hash: Mapped[str] = mapped_column(unique=True)
    coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"))
    course_id: Mapped[int | None] = mapped_column(ForeignKey("course.id"))
    """The course that is handed over; without one the link makes an assistant."""
    expires_at: Mapped[datetime]
    used_by: Mapped[int | None] = mapped_column(ForeignKey("person.id"))
    used_at: Mapped[datetime | None]


class Invite(Base):
    """A link by which clients join one programme version; only its hash is stored."""

    __tablename__ = "invite"

    id: Mapped[int] = mapped_column(primary_key=True)
    coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"), index=True)
    version_id: Mapped[int] = mapped_column(ForeignKey("programme_version.id"))
    token_hash: Mapped[str] = mapped_column(unique=True)
    places: Mapped[int]
    used: Mapped[int] = mapped_column(default=0)
    made_at: Mapped[datetime]
    expires_at: Mapped[datetime]
    """When the last date to join is over on the coach's clock."""
    revoked_at: Mapped[datetime | None]
    starts_on: Mapped[date | None]
    """The date on which its people begin; None: each when they like."""
    pace: Mapped[str | None]
    """own or together; None: as the programme says."""
    guardian: Mapped[str | None]
    """Who has agreed for somebody under 18, as the coach wrote it down."""
    guardian_on: Mapped[date | None]


class InviteUse(Base):
    """Somebody who has opened an invitation, and whether they took a place."""

    __tablename__ = "invite_use"
    __table_args__ = (UniqueConstraint("invite_id", "person_id"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    invite_id: Mapped[int] = mapped_column(ForeignKey("invite.id"))
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)
    opened_at: Mapped[datetime]
    joined_at: Mapped[datetime | None]


class Guesses(Base):
    """How many links that open nothing a chat has tried lately."""

    __tablename__ = "guesses"

    chat: Mapped[int] = mapped_column(primary_key=True, autoincrement=False)
    since: Mapped[datetime]
    count: Mapped[int]
