"""All that is kept of one person, as plain values with a schema: what they may read and take with them."""

from __future__ import annotations

from calendar import day_abbr
from collections.abc import Sequence
from datetime import date, datetime
from typing import Any

from pydantic import BaseModel, ConfigDict, Field
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from db import courses, helpers
from db.helpers import Right
from db.schema import (
    Absence,
    Alert,
    Answer,
    Coach,
    CoachNote,
    CoachTerms,
    Consent,
    Course,
    GroupLetter,
    GroupMessage,
    Invite,
    InviteUse,
    LedgerRow,
    MeasureRow,
    Overrule,
    Person,
    PhotoRow,
    ProgrammeVersion,
)
from plans.ledger import Entry
from plans.measures import MEASURES


class _Plain(BaseModel):
    model_config = ConfigDict(frozen=True)


class Agreement(_Plain):
    """A text that was agreed to."""

    text_version: str
    language: str
    given_at: datetime
    withdrawn_at: datetime | None


class Said(_Plain):
    """What was said of one day, as it stands after corrections."""

    completion: str | None = Field(description="done, part or none")
    pain: int | None = Field(description="0 to 10")
    kind: str | None
    place: str | None
    area: str | None
    side: str | None
    why: str | None
    half: bool | None = Field(description="of a session done in part: whether it was half or more")
    sore: bool
    tightness: int | None = Field(description="0 loose to 10 very tight")
    flag: str | None = Field(description="a warning sign: clinician, same-day or emergency")
    flag_state: str | None
    odd: bool


class LedgerDay(_Plain):
    """One date of a course: what it brought, why, and what was said of it."""

    date: date
    zone: str
    kind: str
    programme_day: int | None
    level: int = Field(description="0 as written, 1 lighter, 2 lightest")
    without: list[str] = Field(description="things that were not at hand")
    minutes: int | None = Field(description="to which the session was cut")
    morning: str | None = Field(description="the answer to how it was in the morning")
    verdict: str | None
    reason: str | None
    votes: list[dict[str, Any]]
    said: Said | None


class Test(_Plain):
    """One test of flexibility, of one side where it has sides."""

    measure: str
    side: str | None
    tries: list[float] = Field(description="in `unit`")
    value: float | None
    unit: str
    after_a_warm_up: bool | None
    at: datetime


class CoachWord(_Plain):
    """What the coach decided for a day, and what they noted with it."""

    what: str
    day: int | None = Field(description="the day of the programme that a move led to")
    note: str | None
    at: datetime


class NoteOfCoach(_Plain):
    """What the coach noted of the client for themselves."""

    text: str
    at: datetime


class Told(_Plain):
    """Something of which the coach was told."""

    cause: str
    facts: dict[str, Any]
    report: dict[str, Any] = Field(description="the client's words, and what was decided")
    opened_at: datetime
    seen_at: datetime | None
    closed_at: datetime | None


class CourseData(_Plain):
    """One course."""

    programme: str
    coach: str
    state: str
    day: int
    level: int
    starts_on: date | None
    ended_at: datetime | None
    screening: dict[str, str]
    left_out: list[str]
    at_hand: dict[str, bool | None]
    liked_best: list[str] = Field(description="movements")
    guardian: str | None = Field(description="who has agreed for somebody under 18, and when, as the coach wrote it")
    training_weekdays: list[int] = Field(description="chosen by the client; Monday is 0")
    days: list[LedgerDay]
    tests: list[Test]
    photos_taken_at: list[datetime] = Field(description="the photos are with the chat platform, here is only their id")
    coach_decided: list[CoachWord]
    coach_noted: list[NoteOfCoach]
    coach_wrote_to_all: list[NoteOfCoach] = Field(description="messages that the coach sent to many at once")
    coach_was_told: list[Told]


class Opened(_Plain):
    """An invitation that was opened."""

    programme: str
    opened_at: datetime
    joined_at: datetime | None


class Terms(_Plain):
    """One version of a coach's own terms."""

    number: int
    text: str
    at: datetime


class Away(_Plain):
    """Dates on which a coach is away."""

    first_on: date
    last_on: date
    stand_in: str | None


class Coaching(_Plain):
    """What somebody has said of themselves as a coach, and who helps them."""

    training: str | None
    answering_hours: str | None
    terms: list[Terms]
    assistants: list[str]
    away: list[Away]


class Helps(_Plain):
    """A coach who is helped, and the rights for that."""

    coach: str
    rights: list[str]


class AnswerGiven(_Plain):
    """One answer as it came."""

    at: datetime
    field: str
    value: str


class OwnData(_Plain):
    """Everything that is kept of one person."""

    first_name: str
    chat: int
    language: str
    units: str
    city_zone: str | None
    morning: str | None = Field(description="local time of the session, HH:MM")
    known_since: datetime
    last_heard: datetime | None
    agreements: list[Agreement]
    courses: list[CourseData]
    answers: list[AnswerGiven]
    invitations: list[Opened]
    coaching: Coaching | None
    helps: list[Helps]


async def own_data(session: AsyncSession, person: Person) -> OwnData:
    """Reads everything that is kept of a person."""
    consents = await _all(session, select(Consent).where(Consent.person_id == person.id).order_by(Consent.id))
    answers = await _all(session, select(Answer).where(Answer.person_id == person.id).order_by(Answer.id))
    own = await _all(session, select(Course).where(Course.person_id == person.id).order_by(Course.id))
    return OwnData(
        first_name=person.label,
        chat=person.chat,
        language=person.language,
        units=person.units,
        city_zone=person.zone,
        morning=person.morning.strftime("%H:%M") if person.morning else None,
        known_since=person.created_at,
        last_heard=person.heard_at,
        agreements=[
            Agreement(
                text_version=one.text_version,
                language=one.language,
                given_at=one.given_at,
                withdrawn_at=one.withdrawn_at,
            )
            for one in consents
        ],
        courses=[await _course(session, one) for one in own],
        answers=[AnswerGiven(at=one.at, field=one.field, value=one.value) for one in answers],
        invitations=await _invitations(session, person),
        coaching=await _coaching(session, person),
        helps=await _helps(session, person),
    )


async def _invitations(session: AsyncSession, person: Person) -> list[Opened]:
    query = (
        select(InviteUse, ProgrammeVersion.title)
        .join(Invite, Invite.id == InviteUse.invite_id)
        .join(ProgrammeVersion, ProgrammeVersion.id == Invite.version_id)
        .where(InviteUse.person_id == person.id)
        .order_by(InviteUse.id)
    )
    return [
        Opened(programme=title, opened_at=use.opened_at, joined_at=use.joined_at)
        for use, title in await session.execute(query)
    ]


async def _coaching(session: AsyncSession, person: Person) -> Coaching | None:
    coach = await session.scalar(select(Coach).where(Coach.person_id == person.id))
    if coach is None:
        return None
    terms = await _all(session, select(CoachTerms).where(CoachTerms.coach_id == coach.id).order_by(CoachTerms.number))
    away = await session.execute(
        select(Absence, Person.label)
        .outerjoin(Person, Person.id == Absence.stand_in_id)
        .where(Absence.coach_id == coach.id)
        .order_by(Absence.id)
    )
    hours = f"{coach.answers_from:%H:%M}-{coach.answers_until:%H:%M}" if coach.answers_from else None
    if hours and coach.answers_on:
        hours += f" ({', '.join(day_abbr[day] for day in coach.answers_on)})"
    return Coaching(
        training=coach.training,
        answering_hours=hours,
        terms=[Terms(number=one.number, text=one.text, at=one.at) for one in terms],
        assistants=[who.label for _helper, who in await helpers.of_coach(session, coach)],
        away=[Away(first_on=one.first_on, last_on=one.last_on, stand_in=label) for one, label in away],
    )


async def _helps(session: AsyncSession, person: Person) -> list[Helps]:
    found = []
    for helper, coach in await helpers.helped_by(session, person):
        label = (await session.get_one(Person, coach.person_id)).label
        found.append(Helps(coach=label, rights=[str(right) for right in Right if getattr(helper, right)]))
    return found


async def _all(session: AsyncSession, query: Any) -> Sequence[Any]:
    return (await session.scalars(query)).all()


async def _course(session: AsyncSession, course: Course) -> CourseData:
    version = await session.get_one(ProgrammeVersion, course.version_id)
    coach = await session.get_one(Person, (await session.get_one(Coach, course.coach_id)).person_id)
    tests = await _all(session, _of(MeasureRow, course))
    photos = await _all(session, _of(PhotoRow, course))
    overrules = await _all(session, _of(Overrule, course))
    alerts = await _all(session, _of(Alert, course))
    notes = await _all(session, _of(CoachNote, course))
    to_all = await _all(
        session,
        select(GroupMessage)
        .join(GroupLetter, GroupLetter.message_id == GroupMessage.id)
        .where(GroupLetter.course_id == course.id, GroupLetter.left_at.is_not(None))
        .order_by(GroupMessage.id),
    )
    return CourseData(
        programme=version.title,
        coach=coach.label,
        state=course.state,
        day=course.day,
        level=course.level,
        starts_on=course.starts_on,
        ended_at=course.ended_at,
        screening=course.screened or {},
        left_out=course.barred or [],
        at_hand=course.at_hand or {},
        liked_best=course.favourites or [],
        guardian=await _guardian(session, course),
        training_weekdays=course.weekdays or [],
        days=[day_of(row, entry) for row, entry in await courses.history(session, course)],
        tests=[test_of(test) for test in tests],
        photos_taken_at=[photo.at for photo in photos],
        coach_decided=[CoachWord(what=one.what, day=one.day, note=one.note, at=one.at) for one in overrules],
        coach_wrote_to_all=[NoteOfCoach(text=one.text or "", at=one.sent_at or one.made_at) for one in to_all],
        coach_noted=[NoteOfCoach(text=one.text, at=one.at) for one in notes],
        coach_was_told=[told_of(one) for one in alerts],
    )


async def _guardian(session: AsyncSession, course: Course) -> str | None:
    invite = await session.get(Invite, course.joined_by) if course.joined_by is not None else None
    return f"{invite.guardian}, {invite.guardian_on}" if invite is not None and invite.guardian else None


def _of(table: Any, course: Course) -> Any:
    return select(table).where(table.course_id == course.id).order_by(table.id)


def day_of(row: LedgerRow, entry: Entry) -> LedgerDay:
    """One row of a course's ledger with what was said of it."""
    decision = row.decision or {}
    values = {name: getattr(entry.checkin, name) for name in Said.model_fields}
    said = {name: str(value) if isinstance(value, str) else value for name, value in values.items()}
    return LedgerDay(
        date=row.local_date,
        zone=row.zone,
        kind=row.kind,
        programme_day=row.day,
        level=row.level,
        without=row.lacks or [],
        minutes=row.minutes,
        morning=row.morning,
        verdict=decision.get("verdict"),
        reason=decision.get("reason"),
        votes=list(decision.get("votes") or ()),
        said=Said(**said) if any(value not in (None, False) for value in values.values()) else None,
    )


def told_of(alert: Alert) -> Told:
    """One alert as it stands."""
    return Told(
        cause=alert.cause,
        facts=alert.facts,
        report=alert.report or {},
        opened_at=alert.opened_at,
        seen_at=alert.seen_at,
        closed_at=alert.closed_at,
    )


def test_of(test: MeasureRow) -> Test:
    """One test as it stands."""
    return Test(
        measure=test.measure,
        side=test.side,
        tries=test.tries,
        value=test.value,
        unit=MEASURES[test.measure].unit,
        after_a_warm_up=test.warm,
        at=test.at,
    )
