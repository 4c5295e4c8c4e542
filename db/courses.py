"""Courses and their ledger: one row a course and local date, and what was said about it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields
from datetime import date, datetime
from enum import StrEnum

from sqlalchemy import ColumnElement, delete, exists, func, or_, select
from sqlalchemy.ext.asyncio import AsyncSession

from db.due import DueKind
from db.schema import (
    Alert,
    AlertCall,
    Answer,
    CheckInRow,
    CoachNote,
    Course,
    Due,
    LedgerRow,
    MeasureRow,
    Outbox,
    Person,
    PhotoRow,
)
from plans.checkin import CheckIn, Morning, as_kept
from plans.course import Decision, Position
from plans.ledger import Entry, RowKind


class CourseState(StrEnum):
    """Where a course is in its life."""

    JOINING = "joining"
    ACTIVE = "active"
    WAITING = "waiting"
    FINISHED = "finished"
    STOPPED = "stopped"


OPEN = (CourseState.JOINING, CourseState.ACTIVE, CourseState.WAITING)


async def open_course(session: AsyncSession, person: Person) -> Course | None:
    """The person's one course that is not over, its row locked for the use case that follows."""
    return await session.scalar(
        select(Course).where(Course.person_id == person.id, Course.state.in_(OPEN)).with_for_update()
    )


async def newest_course(session: AsyncSession, person: Person) -> Course | None:
    """The person's open course, else the last one they had."""
    return await session.scalar(select(Course).where(Course.person_id == person.id).order_by(Course.id.desc()).limit(1))


async def with_earlier(session: AsyncSession, course: Course) -> list[int]:
    """The ids of a course and of those that it keeps up, the newest first."""
    ids, before = [course.id], course.after_id
    while before is not None:
        ids.append(before)
        before = await session.scalar(select(Course.after_id).where(Course.id == before))
    return ids


async def locked(session: AsyncSession, course_id: int) -> Course | None:
    """A course by its id, its row locked for the use case that follows."""
    return await session.get(Course, course_id, with_for_update=True)


async def drop(session: AsyncSession, course: Course) -> None:
    """Deletes a course that has not begun, with what its coach was told and noted of it meanwhile, as of a block."""
    told = select(Alert.id).where(Alert.course_id == course.id)
    await session.execute(delete(Due).where(Due.kind == DueKind.CALL, Due.subject.in_(told)))
    await session.execute(delete(AlertCall).where(AlertCall.alert_id.in_(told)))
    for table in (Alert, CoachNote, PhotoRow):
        await session.execute(delete(table).where(table.course_id == course.id))
    await session.delete(course)
    await session.flush()


def position_of(course: Course) -> Position:
    """Where the course stands."""
    return Position(course.day, course.level, course.rests_taken)


def move(course: Course, position: Position) -> None:
    """Puts the course where a decision says it stands."""
    course.day, course.level, course.rests_taken = position.day, position.level, position.rests_taken


async def row_on(session: AsyncSession, course: Course, day: date) -> LedgerRow | None:
    """The course's row of one local date."""
    return await session.scalar(select(LedgerRow).where(LedgerRow.course_id == course.id, LedgerRow.local_date == day))


async def has_row_of_any_course(session: AsyncSession, person: Person, day: date) -> bool:
    """Whether the person has had a row on a local date, of this course or an earlier one: one date, one row."""
    found = select(LedgerRow.id).where(LedgerRow.person_id == person.id, LedgerRow.local_date == day)
    return await session.scalar(found) is not None


async def last_row(session: AsyncSession, course: Course) -> LedgerRow | None:
    """The course's newest row."""
    return await session.scalar(
        select(LedgerRow).where(LedgerRow.course_id == course.id).order_by(LedgerRow.local_date.desc()).limit(1)
    )


async def make_row(
    session: AsyncSession, course: Course, decision: Decision, *, day: date, zone: str, now: datetime
) -> LedgerRow:
    """Makes the row of one date and moves the course; a second row for the date is refused by the table itself."""
    row = LedgerRow(
        course_id=course.id,
        person_id=course.person_id,
        version_id=course.version_id,
        local_date=day,
        zone=zone,
        made_at=now,
        kind="",
        level=0,
    )
    session.add(row)
    fill_row(row, course, decision)
    await session.flush()
    return row


def fill_row(row: LedgerRow, course: Course, decision: Decision) -> None:
    """Writes a decision into its row and moves the course accordingly."""
    if decision.kind is None:
        raise ValueError("a finished course has no row")
    row.kind = decision.kind
    row.day = decision.day
    row.level = decision.position.level
    row.prescribed = decision.prescribed
    row.decision = decision.as_json() | {"question": decision.question}
    move(course, decision.position)


async def checkin_row(session: AsyncSession, row: LedgerRow, now: datetime) -> CheckInRow:
    """What was said about a row, made empty on the first word."""
    found = await session.scalar(select(CheckInRow).where(CheckInRow.ledger_id == row.id))
    if found is None:
        found = CheckInRow(ledger_id=row.id, sore=False, odd=False, updated_at=now)
        session.add(found)
        await session.flush()
    return found


async def said_of(session: AsyncSession, row: LedgerRow) -> CheckIn:
    """What was said about a row, empty when nothing was."""
    return as_checkin(await session.scalar(select(CheckInRow).where(CheckInRow.ledger_id == row.id)))


def as_checkin(row: CheckInRow | None) -> CheckIn:
    """A stored check-in as the rules read it."""
    if row is None:
        return CheckIn()
    return as_kept({field.name: getattr(row, field.name) for field in fields(CheckIn)})


def write_checkin(row: CheckInRow, said: CheckIn, now: datetime) -> None:
    """Writes a check-in back over what was stored."""
    for name in fields(CheckIn):
        setattr(row, name.name, getattr(said, name.name))
    row.updated_at = now


async def history(session: AsyncSession, course: Course) -> list[tuple[LedgerRow, Entry]]:
    """All rows of a course, oldest first, each beside what the rules see of it."""
    found = await histories(session, LedgerRow.course_id == course.id)
    return [(row, entry) for row, entry, _answered_at in found]


async def histories(
    session: AsyncSession, chosen: ColumnElement[bool]
) -> list[tuple[LedgerRow, Entry, datetime | None]]:
    """All rows that are chosen, by course and date, each with what the rules see of it and when it was answered."""
    tests = exists().where(MeasureRow.ledger_id == LedgerRow.id)
    measured = tests.where(MeasureRow.value.is_not(None)) & ~tests.where(MeasureRow.value.is_(None))
    found = await session.execute(
        select(LedgerRow, CheckInRow, Outbox.state, measured)
        .outerjoin(CheckInRow, CheckInRow.ledger_id == LedgerRow.id)
        .outerjoin(Outbox, Outbox.id == LedgerRow.outbox_id)
        .where(chosen)
        .order_by(LedgerRow.course_id, LedgerRow.local_date)
    )
    return [
        (row, _entry(row, said, sent=state == "sent", recorded=recorded), said.updated_at if said else None)
        for row, said, state, recorded in found
    ]


def _entry(row: LedgerRow, said: CheckInRow | None, *, sent: bool, recorded: bool) -> Entry:
    return Entry(
        on=row.local_date,
        kind=RowKind(row.kind),
        day=row.day,
        level=row.level,
        prescribed=row.prescribed,
        delivered=sent or row.withheld,
        checkin=as_checkin(said),
        morning=Morning(row.morning) if row.morning else None,
        recorded=recorded,
        voted=frozenset(vote["rule"] for vote in (row.decision or {}).get("votes", ())),
    )


async def was_delivered(session: AsyncSession, row: LedgerRow) -> bool:
    """Whether the message that shows a row has surely reached its chat."""
    return await session.scalar(select(Outbox.state).where(Outbox.id == row.outbox_id)) == "sent"


async def went_missing(session: AsyncSession, row: LedgerRow) -> bool:
    """Whether the message that shows a row was lost on the way or never left, so that its chat may not have it."""
    state = await session.scalar(select(Outbox.state).where(Outbox.id == row.outbox_id))
    return state in ("unknown", "skipped", "refused")


async def note_answer(
    session: AsyncSession,
    *,
    update_id: int,
    person: Person,
    row: LedgerRow | None,
    said: Sequence[tuple[str, str]],
    now: datetime,
) -> None:
    """Keeps each fact of an answer as it came, after those that the same update has said before."""
    before = await session.scalar(select(func.max(Answer.n)).where(Answer.update_id == update_id))
    for n, (name, value) in enumerate(said, start=0 if before is None else before + 1):
        session.add(
            Answer(
                update_id=update_id,
                n=n,
                person_id=person.id,
                ledger_id=row.id if row else None,
                field=name,
                value=value,
                at=now,
            )
        )
    await session.flush()


async def last_words(session: AsyncSession, rows: Sequence[LedgerRow]) -> str | None:
    """What a client last typed about any of these rows."""
    mine = select(Answer.value).where(Answer.field == "words", Answer.ledger_id.in_([row.id for row in rows]))
    return await session.scalar(mine.order_by(Answer.id.desc()).limit(1))


async def own_words(session: AsyncSession, course: Course, most: int) -> Sequence[Answer]:
    """The newest answers of a course in the client's own words: about its rows, or said while it lasted."""
    rows = select(LedgerRow.id).where(LedgerRow.course_id == course.id)
    while_it_lasted = Answer.ledger_id.is_(None) & (Answer.at >= course.created_at)
    if course.ended_at is not None:
        while_it_lasted &= Answer.at <= course.ended_at
    mine = select(Answer).where(Answer.person_id == course.person_id, Answer.field.in_(("words", "note")))
    of_the_course = mine.where(or_(Answer.ledger_id.in_(rows), while_it_lasted))
    return (await session.scalars(of_the_course.order_by(Answer.id.desc()).limit(most))).all()


async def last_answer_id(session: AsyncSession, course: Course) -> int | None:
    """The newest answer of a course's client, for knowing what a coach had seen; a note is no evidence."""
    said = select(Answer.id).where(Answer.person_id == course.person_id, Answer.field != "note")
    return await session.scalar(said.order_by(Answer.id.desc()).limit(1))
