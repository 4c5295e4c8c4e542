"""What a restore means for people: each coach hears what may be missing, and no digest comes a second time."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import joining, times
from bot.flows.desk import Desk
from bot.words.message import Message
from db import alerts, due
from db.courses import OPEN
from db.delivery import Kind
from db.restoring import Restored
from db.schema import Coach, Course, Due, Person
from plans import localtime


async def tell_coaches(session: AsyncSession, done: Restored, now: datetime) -> None:
    """Tells each coach with clients until when the data goes and whose alerts are open; overdue digests are let go."""
    desk = Desk(session=session, now=now, cause=f"restored:{now.isoformat()}", bot_username="")
    for coach, person in (await session.execute(select(Coach, Person).join(Person))).all():
        await _let_digest_go(desk, coach, person)
        courses = list(await session.scalars(select(Course).where(Course.coach_id == coach.id, Course.state.in_(OPEN))))
        if not courses or done.newest is None:
            continue
        until = localtime.local(done.newest, times.zone_of(person))
        words = desk.words(person)
        text = words.say("coach.restored", until=words.moment(until), labels=await _open(desk, courses))
        await desk.send(person, Message(text), key=f"{desk.cause}:{coach.id}", kind=Kind.ALERT)


async def _open(desk: Desk, courses: list[Course]) -> list[str]:
    labels = []
    for course in courses:
        if await alerts.open_of(desk.session, course):
            labels.append((await desk.session.get_one(Person, course.person_id)).label)
    return labels


async def _let_digest_go(desk: Desk, coach: Coach, person: Person) -> None:
    overdue = await desk.session.scalar(
        select(Due.id).where(Due.kind == due.DueKind.DIGEST, Due.subject == coach.id, Due.at <= desk.now)
    )
    if overdue is not None:
        await joining.plan_digest(desk, person, coach)
