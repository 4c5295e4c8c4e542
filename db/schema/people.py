"""People, what they have agreed to, and the coaches among them with those who help and stand in."""

from __future__ import annotations

from datetime import date, datetime, time

from sqlalchemy import JSON, ForeignKey, UniqueConstraint
from sqlalchemy.orm import Mapped, mapped_column

from db.schema.base import NEVER_AGAIN, Base


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
