"""The record of a coach's clients, or of one person, as JSON beside its schema."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime
from typing import Any

from pydantic import BaseModel, ConfigDict, Field
from pydantic_core import to_json

from db.own_data import CoachWord, LedgerDay, NoteOfCoach, Told, day_of, test_of, told_of
from db.own_data import Test as TestTaken
from db.record import Kept

CAUTION = "Health data of the people named by their first names. Keep it where only you can read it."
DIALECT = "https://json-schema.org/draft/2020-12/schema"


class Plain(BaseModel):
    """A frozen value of an export."""

    model_config = ConfigDict(frozen=True)


class OwnWords(Plain):
    """What the client typed about one date."""

    date: date
    text: str
    at: datetime


class Answered(LedgerDay):
    """One date of a course, and when it was last answered."""

    answered_at: datetime | None


class CourseRecord(Plain):
    """One course of one client."""

    client: str = Field(description="first name, as the client wants to be called")
    client_number: int = Field(description="the same for all courses of one client")
    course: int
    programme: str
    version: str = Field(description="SHA-256 of the programme file, hexadecimal")
    state: str = Field(description="active, waiting (for the coach), finished, stopped (agreement taken back)")
    paused: str | None
    day: int = Field(description="the programme day in hand, from 1")
    level: int = Field(description="0 as written, 1 lighter, 2 lightest")
    starts_on: date | None
    ended_at: datetime | None
    screening: dict[str, str] = Field(description="what was answered about age and health")
    left_out: list[str] = Field(description="movements")
    days: list[Answered]
    own_words: list[OwnWords]
    tests: list[TestTaken]
    alerts: list[Told]
    coach_decided: list[CoachWord]
    coach_noted: list[NoteOfCoach]


class Record(Plain):
    """All courses that were asked for."""

    holds: str = CAUTION
    made_at: datetime
    courses: list[CourseRecord]


def record(kept: Sequence[Kept], made_at: datetime) -> Record:
    """The record of these courses."""
    return Record(made_at=made_at, courses=[_course(one) for one in kept])


def _course(kept: Kept) -> CourseRecord:
    course, on = kept.course, {row.id: row.local_date for row, _entry, _at in kept.rows}
    return CourseRecord(
        client=kept.person.label,
        client_number=kept.person.id,
        course=course.id,
        programme=kept.version.title,
        version=kept.version.digest,
        state=course.state,
        paused=course.paused,
        day=course.day,
        level=course.level,
        starts_on=course.starts_on,
        ended_at=course.ended_at,
        screening=course.screened or {},
        left_out=course.barred or [],
        days=[Answered(**dict(day_of(row, entry)), answered_at=at) for row, entry, at in kept.rows],
        own_words=[
            OwnWords(date=on[one.ledger_id or 0], text=one.value, at=one.at)
            for one in kept.words
            if one.field == "words"
        ],
        tests=[test_of(test) for test in kept.tests],
        alerts=[told_of(alert) for alert in kept.alerts],
        coach_decided=[CoachWord(what=one.what, day=one.day, note=one.note, at=one.at) for one in kept.overrules],
        coach_noted=[NoteOfCoach(text=one.text, at=one.at) for one in kept.notes],
    )


def schema_of(shape: type[BaseModel]) -> dict[str, Any]:
    """The JSON Schema (2020-12) of a document."""
    return {"$schema": DIALECT, **shape.model_json_schema(mode="serialization")}


def as_json(document: BaseModel) -> bytes:
    """A document beside the schema that describes it."""
    return to_json({"schema": schema_of(type(document)), "data": document}, indent=1)
