"""The weekly digest beside the ledger: its counts must be what a plain statement over the same rows gives."""

from __future__ import annotations

from datetime import datetime, timedelta

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import times, weeks
from bot.flows.desk import Desk
from db.schema import Coach, Person
from plans.weekly import ends
from tests.simulation.record import Record
from tests.simulation.watch import Broken

COUNTED = """
SELECT count(*) AS due, total(c.completion = 'done') AS done, total(c.completion = 'part') AS part,
  total(c.completion = 'none') AS left_out, total(c.completion IS NULL) AS silent,
  total(c.completion IS NOT NULL OR c.pain IS NOT NULL) AS answered, total(c.pain) AS pains
FROM ledger l LEFT JOIN checkin c ON c.ledger_id = l.id LEFT JOIN outbox o ON o.id = l.outbox_id
WHERE l.course_id = ? AND l.kind = 'session' AND l.local_date BETWEEN ? AND ?
  AND (o.state = 'sent' OR l.withheld OR c.completion IS NOT NULL)
  AND (l.local_date < ? OR c.completion IS NOT NULL OR c.pain IS NOT NULL)
"""
"""One course's week; what is still open on the client's own date is no part of it."""


async def compare(session: AsyncSession, record: Record, now: datetime, broken: Broken) -> int:
    """Compares every week of every client that the coach's digest of yesterday has; returns how many there were."""
    coach = await session.scalar(select(Coach))
    if coach is None:
        return 0
    person = await session.get_one(Person, coach.person_id)
    last = times.today(person, now) - timedelta(days=1)
    digest = await weeks.read(Desk(session, now, "compared", "easeward_bot"), person, coach, last)
    looked = 0
    for seen in digest.clients:
        today = times.today(seen.client.person, now)
        for end, week in zip(ends(last), seen.week.weeks, strict=True):
            given = (seen.course.id, end - timedelta(days=6), end, today)
            row = record.one(COUNTED, *(str(value) for value in given))
            counts = (week.due, week.done, week.part, week.left_out, week.silent, week.answered, sum(week.pains))
            looked += 1
            if row is None or tuple(row) != counts:
                found = None if row is None else tuple(row)
                broken("the digest is the ledger", f"course {seen.course.id}, week to {end}: {counts}, not {found}")
    total = sum(seen.week.week.due for seen in digest.there)
    if digest.group.week.due != total:
        broken("the digest is the ledger", f"the group has {digest.group.week.due} sessions, its people {total}")
    return looked
