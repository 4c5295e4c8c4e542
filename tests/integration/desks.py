"""A coach with clients in a database, for tests of use cases: rows are put there as the ticks and taps would."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Sequence
from contextlib import asynccontextmanager
from datetime import UTC, date, datetime, time, timedelta
from typing import Any

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows.desk import Desk
from db.courses import CourseState
from db.engine import Database
from db.schema import Answer, CheckInRow, Coach, Course, LedgerRow, Outbox, Person, ProgrammeVersion
from plans.reading import read_programme
from tests.texts import HEAD, REST, session

NOW = datetime(2026, 5, 12, 8, 0, tzinfo=UTC)
TODAY = NOW.date()
SOURCE = HEAD + "".join([session(), session(), REST, session(), session(), session(), session(), session()])
COACH = 1
"""The coach's chat."""


@asynccontextmanager
async def writing(database: Database) -> AsyncIterator[AsyncSession]:
    """One write that lasts as long as the block; an error in the block undoes it."""
    loop = asyncio.get_running_loop()
    begun: asyncio.Future[AsyncSession] = loop.create_future()
    over: asyncio.Future[None] = loop.create_future()

    async def job(session: AsyncSession) -> None:
        begun.set_result(session)
        await over

    task = asyncio.create_task(database.write(job))
    session = await begun
    try:
        yield session
    except BaseException as error:
        over.set_exception(error)
        await asyncio.wait([task])
        task.exception()
        raise
    over.set_result(None)
    await task


def desk_of(session: AsyncSession, cause: str = "test:1", *, now: datetime = NOW, update: int | None = None) -> Desk:
    return Desk(session=session, now=now, cause=cause, bot_username="bot", update_id=update)


async def coach_in(session: AsyncSession, chat: int = COACH) -> tuple[Person, Coach]:
    person = Person(chat=chat, label="Robin", language="en", units="metric", zone="UTC", created_at=NOW)
    session.add(person)
    await session.flush()
    coach = Coach(person_id=person.id, digest_weekday=0, created_at=NOW)
    session.add(coach)
    await session.flush()
    return person, coach


async def version_in(session: AsyncSession, coach: Coach, source: str = SOURCE) -> ProgrammeVersion:
    programme = read_programme(source)
    version = ProgrammeVersion(
        coach_id=coach.id,
        digest=programme.digest,
        title=programme.title,
        source=source,
        stored_at=NOW,
        published_at=NOW,
    )
    session.add(version)
    await session.flush()
    return version


async def client_in(
    session: AsyncSession,
    version: ProgrammeVersion,
    label: str,
    *,
    chat: int,
    day: int = 1,
    level: int = 0,
    state: str = CourseState.ACTIVE,
    said: Sequence[dict[str, Any]] = (),
    last: date = TODAY,
) -> tuple[Person, Course]:
    """A client with one session row for each answer, the last one on the date `last`; `{}` is no answer."""
    person = Person(chat=chat, label=label, language="en", units="metric", zone="UTC", morning=time(7), created_at=NOW)
    session.add(person)
    await session.flush()
    starts = last - timedelta(days=max(0, len(said) - 1))
    course = Course(person_id=person.id, coach_id=version.coach_id, version_id=version.id, state=state, day=day)
    course.level, course.rests_taken, course.starts_on, course.created_at = level, 0, starts, NOW
    session.add(course)
    await session.flush()
    for n, facts in enumerate(said):
        await row_in(session, course, starts + timedelta(days=n), facts)
    return person, course


async def row_in(session: AsyncSession, course: Course, on: date, facts: dict[str, Any]) -> LedgerRow:
    """One session row of the course's day with its delivered message and what was said of it."""
    message = Outbox(key=f"{course.id}:{on}", chat=0, lane=2, kind="session", method="send_message", payload={})
    message.state, message.made_at = "sent", NOW
    session.add(message)
    await session.flush()
    row = LedgerRow(course_id=course.id, person_id=course.person_id, local_date=on, zone="UTC", kind="session")
    row.day, row.level, row.made_at, row.outbox_id = course.day, course.level, NOW, message.id
    row.decision = {"reason": "clean", "verdict": "advance", "votes": []}
    session.add(row)
    await session.flush()
    if facts:
        session.add(CheckInRow(ledger_id=row.id, sore=False, odd=False, updated_at=NOW, **facts))
        await answer_in(session, course, row, facts)
    return row


async def answer_in(session: AsyncSession, course: Course, row: LedgerRow | None, facts: dict[str, Any]) -> None:
    """The trail of an answer."""
    count = len((await session.scalars(select(Answer.id))).all())
    for n, (name, value) in enumerate(facts.items()):
        answer = Answer(update_id=9000 + count, n=n, person_id=course.person_id, field=name, value=str(value), at=NOW)
        answer.ledger_id = row.id if row else None
        session.add(answer)
    await session.flush()


async def told(session: AsyncSession, chat: int) -> list[dict[str, Any]]:
    """The payloads that wait to leave for a chat, oldest first."""
    rows = await session.scalars(
        select(Outbox).where(Outbox.chat == chat, Outbox.state == "waiting").order_by(Outbox.id)
    )
    return [row.payload for row in rows]


def text_of(payload: dict[str, Any]) -> str:
    return str(payload.get("text") or payload.get("caption") or "")


def buttons_of(payload: dict[str, Any]) -> dict[str, str]:
    """Labels with what a tap sends back."""
    rows = payload.get("reply_markup", {}).get("inline_keyboard", [])
    return {button["text"]: button["callback_data"] for row in rows for button in row}
