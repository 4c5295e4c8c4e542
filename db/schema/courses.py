"""A client's way through a programme: what each date has, what was said of it, tests, and what the coach said."""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.schema.base import NEVER_AGAIN, Base, partial


class Course(Base):
    """A client's way through one programme version."""

    __tablename__ = "course"
    __table_args__ = (
        partial(
            "uq_course_one_open_a_client", "person_id", where="state IN ('joining', 'active', 'waiting')", unique=True
        ),
        NEVER_AGAIN,
    )

    id: Mapped[int] = mapped_column(primary_key=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"))
    coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"), index=True)
    version_id: Mapped[int] = mapped_column(ForeignKey("programme_version.id"))
    next_version_id: Mapped[int | None] = mapped_column(ForeignKey("programme_version.id"))
    """The version that the coach moves this client to when the next row is made."""
    invite_id: Mapped[int | None] = mapped_column(ForeignKey("invite.id"))
    """The invitation that is still to be agreed to."""
    joined_by: Mapped[int | None] = mapped_column(ForeignKey("invite.id"))
    """The invitation by which the client has joined."""
    state: Mapped[str]
    """joining, active, waiting (for the coach), finished, stopped."""
    day: Mapped[int] = mapped_column(default=1)
    """Number of the programme day in hand, from 1."""
    level: Mapped[int] = mapped_column(default=0)
    """Ease level: 0 as written, 1 lighter, 2 lightest."""
    rests_taken: Mapped[int] = mapped_column(default=0)
    """How many of the rest days that follow the day in hand are already taken."""
    starts_on: Mapped[date | None]
    group_start: Mapped[date | None]
    """The date from which a group counts its days, when that is not the date on which this client begins."""
    pace: Mapped[str | None]
    """own or together, as the invitation said; None: as the programme says."""
    screened: Mapped[dict[str, str] | None] = mapped_column(JSON)
    """What was answered about age and health: see `plans.screening`."""
    paused: Mapped[str | None]
    """Why an active course sends nothing for now: ill, away, coach (who paused it)."""
    back_on: Mapped[date | None]
    """From which date on an away client's sessions come by themselves again."""
    barred: Mapped[list[str] | None] = mapped_column(JSON)
    """Keys of movements that this client leaves out."""
    at_hand: Mapped[dict[str, bool | None] | None] = mapped_column(JSON)
    """By the name of a thing: whether this client has it or something in its place; None when only asked."""
    favourites: Mapped[list[str] | None] = mapped_column(JSON)
    """Keys of the movements that the client liked best, asked at the end."""
    after_id: Mapped[int | None] = mapped_column(ForeignKey("course.id"))
    """The course that this one keeps up; tests are compared with its first ones."""
    weekdays: Mapped[list[int] | None] = mapped_column(JSON)
    """The training weekdays that this client chose, where the programme lets them; Monday is 0."""
    created_at: Mapped[datetime]
    ended_at: Mapped[datetime | None]


class LedgerRow(Base):
    """What one course gets on one local date, and what was decided to get there."""

    __tablename__ = "ledger"
    __table_args__ = (
        UniqueConstraint("person_id", "local_date"),
        UniqueConstraint("course_id", "local_date"),
        NEVER_AGAIN,
    )

    id: Mapped[int] = mapped_column(primary_key=True)
    course_id: Mapped[int] = mapped_column(ForeignKey("course.id"))
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"))
    local_date: Mapped[date]
    zone: Mapped[str]
    kind: Mapped[str]
    """session, rest, measure, asking, waiting, away."""
    day: Mapped[int | None]
    version_id: Mapped[int | None] = mapped_column(ForeignKey("programme_version.id"))
    """Of whose programme version `day` is."""
    level: Mapped[int]
    prescribed: Mapped[bool] = mapped_column(default=False)
    """A date off that a verdict gave, or a rest day taken before its turn."""
    lacks: Mapped[list[str] | None] = mapped_column(JSON)
    """Names of things that the client has not at hand on this date."""
    minutes: Mapped[int | None]
    """What the client has today, when that is less than the session takes."""
    step: Mapped[int | None]
    """How far the client has been led through the session: the number of the step shown, from 0."""
    step_outbox_id: Mapped[int | None] = mapped_column(ForeignKey("outbox.id"))
    """The message that shows the step."""
    morning: Mapped[str | None]
    """The answer to this date's morning question: settled, same, worse."""
    decision: Mapped[dict[str, Any] | None]
    """The votes and the verdict that made this row: see `plans.course.Decision.as_json`."""
    outbox_id: Mapped[int | None] = mapped_column(ForeignKey("outbox.id"))
    """The message that shows this row and carries its buttons."""
    withheld: Mapped[bool] = mapped_column(default=False)
    """The client had been silent for long, and nothing was sent."""
    picture: Mapped[str | None]
    """The digest of the picture on that message."""
    made_at: Mapped[datetime]


class CheckInRow(Base):
    """What a client said about one ledger row, as it stands after corrections."""

    __tablename__ = "checkin"

    id: Mapped[int] = mapped_column(primary_key=True)
    ledger_id: Mapped[int] = mapped_column(ForeignKey("ledger.id"), unique=True)
    completion: Mapped[str | None]
    pain: Mapped[int | None]
    kind: Mapped[str | None]
    place: Mapped[str | None]
    area: Mapped[str | None]
    """What part of the body hurts when it is elsewhere."""
    side: Mapped[str | None]
    why: Mapped[str | None]
    half: Mapped[bool | None]
    sore: Mapped[bool] = mapped_column(default=False)
    tightness: Mapped[int | None]
    flag: Mapped[str | None]
    flag_state: Mapped[str | None]
    odd: Mapped[bool] = mapped_column(default=False)
    """The client said "sore, pain or something odd": kind, place and number are asked, whatever else is known."""
    updated_at: Mapped[datetime]


class Answer(Base):
    """Each answer as it came, never changed: the trail behind a check-in."""

    __tablename__ = "answer"
    __table_args__ = (UniqueConstraint("update_id", "n"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    update_id: Mapped[int] = mapped_column()
    n: Mapped[int]
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)
    ledger_id: Mapped[int | None] = mapped_column(ForeignKey("ledger.id"), index=True)
    field: Mapped[str]
    value: Mapped[str]
    at: Mapped[datetime]


class MeasureRow(Base):
    """One test of one side, taken by the client themselves. It has no value until its last try is in."""

    __tablename__ = "measure"

    id: Mapped[int] = mapped_column(primary_key=True)
    course_id: Mapped[int] = mapped_column(ForeignKey("course.id"), index=True)
    ledger_id: Mapped[int | None] = mapped_column(ForeignKey("ledger.id"))
    """The day that asked for it; none for a test that the client took besides."""
    measure: Mapped[str]
    side: Mapped[str | None]
    """left, right, or None for a test that has no sides."""
    tries: Mapped[list[float]] = mapped_column(JSON)
    """In the measure's own unit, cm or degrees, in the order in which they came."""
    wanted: Mapped[int]
    """How many tries there are to be."""
    warm: Mapped[bool | None]
    """Whether it came after a warm-up; None when that was not said."""
    value: Mapped[float | None]
    """What the tries come to, in the measure's unit."""
    begun_at: Mapped[datetime]
    """The same for all sides of one test."""
    at: Mapped[datetime]
    """When the last try was in; until then as `begun_at`."""


class PhotoRow(Base):
    """A photo that a client added to a test: the platform keeps it, here is only its id there."""

    __tablename__ = "photo"

    id: Mapped[int] = mapped_column(primary_key=True)
    course_id: Mapped[int] = mapped_column(ForeignKey("course.id"), index=True)
    file_id: Mapped[str]
    at: Mapped[datetime]


class Overrule(Base):
    """What a coach decided for a client's next row, or that a waiting client may go on."""

    __tablename__ = "overrule"

    id: Mapped[int] = mapped_column(primary_key=True)
    course_id: Mapped[int] = mapped_column(ForeignKey("course.id"), index=True)
    what: Mapped[str]
    """See `plans.overruling.Word`."""
    day: Mapped[int | None]
    """The day of the programme that a move leads to."""
    note: Mapped[str | None]
    seen_answer_id: Mapped[int | None] = mapped_column(ForeignKey("answer.id"))
    """The last answer the coach had seen: newer, more cautious evidence wins."""
    at: Mapped[datetime]
    applied_on: Mapped[date | None]
    withdrawn_at: Mapped[datetime | None]
    """When the coach took it back or said something else in its place."""


class CoachNote(Base):
    """What a coach noted of a client for themselves; it is part of the client's own data."""

    __tablename__ = "coach_note"

    id: Mapped[int] = mapped_column(primary_key=True)
    course_id: Mapped[int] = mapped_column(ForeignKey("course.id"), index=True)
    text: Mapped[str]
    at: Mapped[datetime]
