"""What is due, and what the running installation keeps of itself."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import Index, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.schema.base import Base


class Due(Base):
    """Something that is due at an instant of the calendar clock: a morning, a nudge, a digest."""

    __tablename__ = "due"
    __table_args__ = (
        UniqueConstraint("kind", "subject"),
        Index("ix_due_at", "at"),
        Index("ix_due_zone_data", "zone_data", "at"),
    )

    id: Mapped[int] = mapped_column(primary_key=True)
    kind: Mapped[str]
    """morning (subject: person), nudge (ledger row), digest and morning-list (coach): see db/due.py."""
    subject: Mapped[int]
    at: Mapped[datetime]
    zone_data: Mapped[str]
    """The release of the zone data that `at` was computed with; another one may give another instant."""


class Lease(Base):
    """What only one process does at a time, who does it, and until when by the machine clock."""

    __tablename__ = "lease"

    name: Mapped[str] = mapped_column(primary_key=True)
    holder: Mapped[str]
    until: Mapped[float]


class Erasure(Base):
    """That a person was erased. It names nobody: it finds them again only in an older copy of this database."""

    __tablename__ = "erasure"

    id: Mapped[int] = mapped_column(primary_key=True)
    person_id: Mapped[int]
    person_made_at: Mapped[datetime]
    """When that person's row was made: a number can be given again, the two together are one person."""
    erased_at: Mapped[datetime]


class Note(Base):
    """Small facts of the running installation: the last confirmed update, the send budget, the zone data's version."""

    __tablename__ = "note"

    name: Mapped[str] = mapped_column(primary_key=True)
    value: Mapped[dict[str, Any]]
