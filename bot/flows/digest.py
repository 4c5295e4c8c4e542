"""The coach's week: who did what, whose answers are missing, who hurt, and what the rules made of it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from datetime import timedelta

from bot.flows import coaching, joining, times
from bot.flows.desk import Desk
from bot.words.message import Message
from db.courses import CourseState
from db.delivery import Kind
from db.schema import Coach, LedgerRow, Person
from plans.adherence import Week, week_of, wilson
from plans.ledger import Entry

MOVES = {"repeat": "repeated", "ease": "eased", "rest": "rested", "refer": "referred"}


LATE = timedelta(days=1)
"""A digest that could not be sent for so long waits for /digest. Our own choice."""


async def weekly(desk: Desk, coach_id: int) -> None:
    """Sends the digest of the last seven dates and plans the next one."""
    coach = await desk.session.get_one(Coach, coach_id)
    person = await desk.session.get_one(Person, coach.person_id)
    await joining.plan_digest(desk, person, coach)
    key = f"digest:{person.id}:{times.today(person, desk.now)}"
    late = desk.now + LATE
    await desk.send(person, await _message(desk, person, coach), key=key, kind=Kind.DIGEST, late_after=late)


async def plan(desk: Desk, coach_id: int) -> None:
    """Plans a coach's next digest once more."""
    coach = await desk.session.get_one(Coach, coach_id)
    await joining.plan_digest(desk, await desk.session.get_one(Person, coach.person_id), coach)


async def now(desk: Desk, person: Person, coach: Coach) -> None:
    """/digest: the same at any time."""
    await desk.say(person, await _message(desk, person, coach))


async def _message(desk: Desk, person: Person, coach: Coach) -> Message:
    last = times.today(person, desk.now)
    first = last - timedelta(days=6)
    clients = await coaching.clients_of(desk, coach)
    lines, weeks = [], []
    for client in clients:
        rows = [(row, entry) for row, entry in client.rows if first <= row.local_date <= last]
        if rows:
            week = week_of(entry for _row, entry in rows)
            weeks.append(week)
            lines.append(_line(client, week, rows))
    text = desk.words(person).say(
        "digest.week", first=f"{first:%a %d %b}", last=f"{last:%a %d %b}", group=_group(weeks), clients=lines
    )
    return Message(text)


def _group(weeks: Sequence[Week]) -> dict[str, object]:
    done, due = sum(week.done for week in weeks), sum(week.due for week in weeks)
    low, high = wilson(done, due)
    return {
        "done": done,
        "due": due,
        "low": round(100 * low),
        "high": round(100 * high),
        "answered": sum(week.answered for week in weeks),
    }


def _line(client: coaching.Client, week: Week, rows: Sequence[tuple[LedgerRow, Entry]]) -> dict[str, object]:
    low, high = week.completion
    verdicts = Counter(str((row.decision or {}).get("verdict")) for row, _entry in rows)
    state = client.course.state
    return {
        "label": client.person.label,
        "done": week.done,
        "due": week.due,
        "silent": week.silent,
        "low": round(100 * low),
        "high": round(100 * high),
        "worst": max(week.pains, default=None),
        "moves": ", ".join(f"{verdicts[word]} {said}" for word, said in MOVES.items() if verdicts[word]),
        "note": state if state in (CourseState.WAITING, CourseState.FINISHED) else "",
    }
