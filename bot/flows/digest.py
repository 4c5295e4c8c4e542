"""The coach's week: who did what, whose answers are missing, who hurt, and what the rules made of it."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from datetime import date, timedelta

from pydantic import TypeAdapter

from bot.flows import joining, times
from bot.flows.clients import Client, clients_of
from bot.flows.desk import Desk
from bot.words import Words
from bot.words.charts import digest_words
from bot.words.message import Message, Picture
from db.courses import CourseState
from db.delivery import Kind
from db.schema import Coach, LedgerRow, Person
from plans.adherence import Week, week_of, wilson
from plans.charts.days import Line
from plans.charts.digest import Digest, Pain, Share
from plans.charts.digest import Week as Bars
from plans.ledger import Entry
from plans.rules import Verdict

MOVES = {"repeat": "repeated", "ease": "eased", "rest": "rested", "refer": "referred"}


WEEKS = 4
"""Weeks on the chart: one alone proves little."""
WANTED = 80.0
"""Percent of sessions done that many programmes are held to (Bailey 2020, Br J Sports Med 54:326)."""

LATE = timedelta(days=1)
"""A digest that could not be sent for so long waits for /digest. Our own choice."""


async def weekly(desk: Desk, coach_id: int) -> None:
    """Sends the digest of the last seven dates and plans the next one."""
    coach = await desk.session.get_one(Coach, coach_id)
    person = await desk.session.get_one(Person, coach.person_id)
    await joining.plan_digest(desk, person, coach)
    key = f"digest:{person.id}:{times.today(person, desk.now)}"
    for number, message in enumerate(await _messages(desk, person, coach)):
        late = desk.now + LATE
        await desk.send(person, message, key=f"{key}:{number}", kind=Kind.DIGEST, late_after=late)


async def plan(desk: Desk, coach_id: int) -> None:
    """Plans a coach's next digest once more."""
    coach = await desk.session.get_one(Coach, coach_id)
    await joining.plan_digest(desk, await desk.session.get_one(Person, coach.person_id), coach)


async def now(desk: Desk, person: Person, coach: Coach) -> None:
    """/digest: the same at any time."""
    for message in await _messages(desk, person, coach):
        await desk.say(person, message)


async def _messages(desk: Desk, person: Person, coach: Coach) -> list[Message]:
    """The week in words with its chart; where the words are too many for a caption, the chart with its own first."""
    last = times.today(person, desk.now)
    first = last - timedelta(days=6)
    clients = await clients_of(desk, coach)
    lines, weeks = [], []
    for client in clients:
        rows = [(row, entry) for row, entry in client.rows if first <= row.local_date <= last]
        if rows:
            week = week_of(entry for _row, entry in rows)
            weeks.append(week)
            lines.append(_line(client, week, rows))
    words = desk.words(person)
    when = {"first": f"{first:%a %d %b}", "last": f"{last:%a %d %b}"}
    text = words.say("digest.week", group=_group(weeks), clients=lines, **when)
    if not weeks:
        return [Message(text)]
    chart = _chart(words, clients, last)
    whole = Message(text, picture=chart)
    if whole.picture_digest is not None:
        return [whole]
    return [Message(words.say("digest.chart", **when), picture=chart), Message(text)]


def _chart(words: Words, clients: Sequence[Client], last: date) -> Picture:
    """The last weeks of all clients together, each of seven dates that end on the digest's weekday."""
    ends = [last - timedelta(days=7 * back) for back in reversed(range(WEEKS))]
    weeks = [_week_of_all(clients, end) for end in ends]
    rows = [
        row for client in clients for row, _entry in client.rows if last - timedelta(days=6) <= row.local_date <= last
    ]
    counts = Counter(str((row.decision or {}).get("verdict")) for row in rows)
    title, note = words.gettext("Your group"), words.gettext("the last four weeks")
    chart = Digest(
        weeks=tuple(_bar(words, end, week) for end, week in zip(ends, weeks, strict=True)),
        wanted=Line(WANTED, words.gettext("80 %, a usual mark")),
        followed={verdict: counts[verdict.word] for verdict in Verdict if counts[verdict.word]},
        words=digest_words(words, title, note),
    )
    return Picture("digest", TypeAdapter(Digest).dump_python(chart, mode="json"), personal=True)


def _week_of_all(clients: Sequence[Client], end: date) -> Week:
    first = end - timedelta(days=6)
    return week_of(entry for client in clients for row, entry in client.rows if first <= row.local_date <= end)


def _bar(words: Words, end: date, week: Week) -> Bars:
    """One week of the chart."""
    low, high = week.completion
    pains = sorted(week.pains)
    middle = Pain(quantile(pains, 0.25), quantile(pains, 0.5), quantile(pains, 0.75)) if pains else None
    return Bars(
        words.short_date(end - timedelta(days=6)),
        Share(low, high, f"{week.done}/{week.due}") if week.due else None,
        Share(week.response, week.response, f"{week.answered}/{week.due}") if week.due else None,
        middle,
    )


def quantile(numbers: Sequence[int], share: float) -> float:
    """A quantile of sorted numbers, between neighbours in proportion (Hyndman & Fan 1996, type 7).

    >>> [quantile([0, 2, 3, 9], share) for share in (0.25, 0.5, 0.75)]
    [1.5, 2.5, 4.5]
    """
    place = share * (len(numbers) - 1)
    low = int(place)
    high = min(low + 1, len(numbers) - 1)
    return numbers[low] + (numbers[high] - numbers[low]) * (place - low)


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


def _line(client: Client, week: Week, rows: Sequence[tuple[LedgerRow, Entry]]) -> dict[str, object]:
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
