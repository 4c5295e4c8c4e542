"""The tables. "Once" is a unique constraint; an instant is UTC; a local date is a date beside its zone."""

from __future__ import annotations

from datetime import UTC, date, datetime, time
from typing import Any

from sqlalchemy import (
    JSON,
    BigInteger,
    Date,
    Dialect,
    ForeignKey,
    Index,
    Integer,
    LargeBinary,
    MetaData,
    Text,
    Time,
    TypeDecorator,
    UniqueConstraint,
    text,
)
from sqlalchemy import DateTime as SqlDateTime
from sqlalchemy.orm import DeclarativeBase, Mapped, mapped_column


class Instant(TypeDecorator[datetime]):
    """An aware UTC datetime. A naive one is refused; SQLite, which keeps no offset, gets UTC and gives UTC back."""

    impl = SqlDateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError(f"{value!r} has no zone: an instant must be aware")
        return value.astimezone(UTC)

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


class Base(DeclarativeBase):
    """All tables, with names for every constraint so that a migration can speak of them."""

    metadata = MetaData(
        naming_convention={
            "ix": "ix_%(table_name)s_%(column_0_N_name)s",
            "uq": "uq_%(table_name)s_%(column_0_N_name)s",
            "ck": "ck_%(table_name)s_%(constraint_name)s",
            "fk": "fk_%(table_name)s_%(column_0_N_name)s_%(referred_table_name)s",
            "pk": "pk_%(table_name)s",
        }
    )
    type_annotation_map = {  # noqa: RUF012 - SQLAlchemy's own way
        datetime: Instant(),
        date: Date(),
        time: Time(),
        str: Text(),
        bytes: LargeBinary(),
        int: BigInteger().with_variant(Integer(), "sqlite"),
        dict[str, Any]: JSON(none_as_null=True),
        list[Any]: JSON(none_as_null=True),
    }


def _partial(name: str, *columns: str, where: str, unique: bool = False) -> Index:
    """An index of some rows only; a query uses it when it repeats `where` word for word."""
    return Index(name, *columns, unique=unique, sqlite_where=text(where), postgresql_where=text(where))


NEVER_AGAIN = {"sqlite_autoincrement": True}
"""Of a table whose numbers stand in buttons, keys and workers' hands: an erased row's number is not given again."""


# --- people ---------------------------------------------------------------------------------------------------------


class Person(Base):
    """One chat with the bot: a client, a coach, or both."""

    __tablename__ = "person"
    __table_args__ = NEVER_AGAIN

    id: Mapped[int] = mapped_column(primary_key=True)
    chat: Mapped[int] = mapped_column(unique=True)
    label: Mapped[str]
    """The first name as the platform gave it or as the person changed it; nothing else of a name is kept."""
    language: Mapped[str] = mapped_column(default="en")
    units: Mapped[str] = mapped_column(default="metric")
    """metric or inch."""
    zone: Mapped[str | None]
    morning: Mapped[time | None]
    """Local time of the morning message."""
    asking: Mapped[str | None]
    """A question this person opened themselves and has not answered: see bot/flows/asking.py."""
    unreachable_since: Mapped[datetime | None]
    heard_at: Mapped[datetime | None]
    """When something was last heard of this person, to the hour."""
    created_at: Mapped[datetime]


class Consent(Base):
    """An agreement that a person gave, and when they took it back."""

    __tablename__ = "consent"

    id: Mapped[int] = mapped_column(primary_key=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)
    text_version: Mapped[str]
    language: Mapped[str]
    given_at: Mapped[datetime]
    withdrawn_at: Mapped[datetime | None]


class Coach(Base):
    """A person who may publish programmes and sees their own clients."""

    __tablename__ = "coach"

    id: Mapped[int] = mapped_column(primary_key=True)
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), unique=True)
    digest_weekday: Mapped[int] = mapped_column(default=0)
    """0 is Monday."""
    digest_at: Mapped[time] = mapped_column(default=time(17))
    """Local time of the weekly digest."""
    training: Mapped[str | None]
    """What this coach has learnt, in their own words, as clients read it."""
    answers_from: Mapped[time | None]
    """Local time from which this coach reads and answers; None, with `answers_until`, for no hours of their own."""
    answers_until: Mapped[time | None]
    answers_on: Mapped[list[int] | None] = mapped_column(JSON)
    """Weekdays of these hours, Monday is 0; None for every day."""
    created_at: Mapped[datetime]


class CoachTerms(Base):
    """A coach's own terms, in each version that there was; an empty text says that there are none any more."""

    __tablename__ = "coach_terms"
    __table_args__ = (UniqueConstraint("coach_id", "number"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"))
    number: Mapped[int]
    """From 1; a client agrees to one number."""
    text: Mapped[str]
    at: Mapped[datetime]


class Helper(Base):
    """Somebody who helps a coach, with the rights that the coach has given."""

    __tablename__ = "helper"
    __table_args__ = (UniqueConstraint("coach_id", "person_id"),)

    id: Mapped[int] = mapped_column(primary_key=True)
    coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"))
    person_id: Mapped[int] = mapped_column(ForeignKey("person.id"), index=True)
    sees: Mapped[bool] = mapped_column(default=True)
    """People and their pages."""
    rules: Mapped[bool] = mapped_column(default=False)
    publishes: Mapped[bool] = mapped_column(default=False)
    """Programmes and invitations."""
    hears: Mapped[bool] = mapped_column(default=False)
    """Alerts that the coach has not seen."""
    added_at: Mapped[datetime]


class Absence(Base):
    """Dates on which a coach is away, and who stands in for them."""

    __tablename__ = "absence"

    id: Mapped[int] = mapped_column(primary_key=True)
    coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"), index=True)
    first_on: Mapped[date]
    last_on: Mapped[date]
    """The last date away; both are dates of the coach's own clock."""
    stand_in_id: Mapped[int | None] = mapped_column(ForeignKey("person.id"))
    told_at: Mapped[datetime | None]
    """When the coach's clients were told."""


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


class HandOver(Base):
    """A course that is to go to another coach, and what its client says to that."""

    __tablename__ = "hand_over"

    id: Mapped[int] = mapped_column(primary_key=True)
    course_id: Mapped[int] = mapped_column(ForeignKey("course.id"), index=True)
    from_coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"))
    to_coach_id: Mapped[int] = mapped_column(ForeignKey("coach.id"))
    asked_at: Mapped[datetime]
    answer: Mapped[str | None]
    """yes or no; None while the client has not said."""
    answered_at: Mapped[datetime | None]


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


# --- programmes and courses -----------------------------------------------------------------------------------------


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


class Course(Base):
    """A client's way through one programme version."""

    __tablename__ = "course"
    __table_args__ = (
        Index(
            "uq_course_one_open_a_client",
            "person_id",
            unique=True,
            sqlite_where=text("state IN ('joining', 'active', 'waiting')"),
            postgresql_where=text("state IN ('joining', 'active', 'waiting')"),
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


class Alert(Base):
    """Something a coach must know. One open alert a client and cause; later events join it."""

    __tablename__ = "alert"
    __table_args__ = (
        Index(
            "uq_alert_one_open_a_cause",
            "course_id",
            "cause",
            unique=True,
            sqlite_where=text("closed_at IS NULL"),
            postgresql_where=text("closed_at IS NULL"),
        ),
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


# --- the way in and the way out -------------------------------------------------------------------------------------


class Inbox(Base):
    """An update that was stored before the platform was told so, and what became of it.

    `machine` times are seconds of the machine clock, not instants of the calendar.
    """

    __tablename__ = "inbox"
    __table_args__ = (
        _partial("ix_inbox_open", "update_id", where="state IN ('waiting', 'leased')"),
        _partial("ix_inbox_open_chat", "chat", "update_id", where="state IN ('waiting', 'leased')"),
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
        _partial("uq_outbox_one_in_flight_a_chat", "chat", where="state IN ('leased', 'sending')", unique=True),
        _partial("ix_outbox_waiting", "lane", "id", where="state = 'waiting'"),
        _partial("ix_outbox_waiting_chat", "chat", "lane", "id", where="state = 'waiting'"),
        _partial("ix_outbox_waiting_edits", "edits", where="state = 'waiting' AND edits IS NOT NULL"),
        _partial("ix_outbox_late", "late_after", where="state = 'waiting' AND late_after IS NOT NULL"),
        _partial("ix_outbox_backoff", "next_at", where="state = 'waiting' AND next_at > 0"),
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


class Note(Base):
    """Small facts of the running installation: the last confirmed update, the send budget, the zone data's version."""

    __tablename__ = "note"

    name: Mapped[str] = mapped_column(primary_key=True)
    value: Mapped[dict[str, Any]]
