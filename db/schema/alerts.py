"""What a coach must know, and whom it was told."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.schema.base import NEVER_AGAIN, Base, partial


class Alert(Base):
    """Something a coach must know. One open alert a client and cause; later events join it."""

    __tablename__ = "alert"
    __table_args__ = (
        partial("uq_alert_one_open_a_cause", "course_id", "cause", where="closed_at IS NULL", unique=True),
        NEVER_AGAIN,
    )

    id: Mapped[int] = mapped_column(primary_key=True)
    course_id: Mapped[int] = mapped_column(ForeignKey("course.id"))
    ledger_id: Mapped[int | None] = mapped_column(ForeignKey("ledger.id"))
    cause: Mapped[str]
    at_once: Mapped[bool]
    """False: for the coach's next morning list."""
    facts: Mapped[dict[str, Any]]
    report: Mapped[dict[str, Any] | None]
    """What else whoever is called must know: see bot/flows/calling.py."""
    red: Mapped[bool] = mapped_column(default=False)
    """A red flag: the second call comes sooner, and at any hour."""
    events: Mapped[int] = mapped_column(default=1)
    opened_at: Mapped[datetime]
    told_at: Mapped[datetime | None]
    rung: Mapped[int] = mapped_column(default=0)
    """How far up the ladder it was called: 1 the coach, 2 the coach again, 3 whoever stands by them."""
    seen_at: Mapped[datetime | None]
    seen_by: Mapped[int | None] = mapped_column(ForeignKey("person.id"))
    closed_at: Mapped[datetime | None]


class AlertCall(Base):
    """One call for an alert: whom it went to, and the message."""

    __tablename__ = "alert_call"
    __table_args__ = (UniqueConstraint("alert_id", "number"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    alert_id: Mapped[int] = mapped_column(ForeignKey("alert.id"))
    number: Mapped[int]
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)
    outbox_id: Mapped[int] = mapped_column(ForeignKey("outbox.id"))
    at: Mapped[datetime]
