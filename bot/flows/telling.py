"""What reaches the coach: alerts at once, the rest on one morning list."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from sqlalchemy import select

from bot.flows import times
from bot.flows.desk import Desk
from bot.words.facts import facts
from bot.words.message import Button, Message, column, joined
from db import alerts, courses, due, outbox
from db.courses import CourseState
from db.delivery import LANES, Kind, State
from db.schema import Alert, Coach, Course, LedgerRow, Person
from plans.checkin import CheckIn
from plans.rules import Tell, Verdict, Vote

QUOTED = 300
"""Characters of a client's own words that an alert repeats."""


async def coach_person(desk: Desk, course: Course) -> Person:
    """The coach of a course, as a person with a chat."""
    coach = await desk.session.get_one(Coach, course.coach_id)
    return await desk.session.get_one(Person, coach.person_id)


async def tell(
    desk: Desk,
    course: Course,
    votes: Iterable[Vote],
    *,
    row: LedgerRow | None,
    said: CheckIn | None = None,
    quote: str | None = None,
) -> None:
    """Raises an alert for each vote that the coach is to hear of."""
    for vote in votes:
        if vote.tell is not None:
            await tell_of(
                desk,
                course,
                cause=vote.rule,
                at_once=vote.tell is Tell.NOW,
                facts=vote.facts,
                row=row,
                said=said,
                quote=quote,
                waits=vote.verdict is Verdict.REFER,
            )


async def tell_of(
    desk: Desk,
    course: Course,
    *,
    cause: str,
    at_once: bool,
    row: LedgerRow | None = None,
    facts: Mapping[str, int | float | str | bool] | None = None,
    said: CheckIn | None = None,
    quote: str | None = None,
    waits: bool = False,
) -> None:
    """Opens or joins one alert; tells the coach now, or plans it for the morning list."""
    alert, now = await alerts.raise_alert(
        desk.session, course, cause=cause, at_once=at_once, facts=facts or {}, row=row, now=desk.now
    )
    coach = await coach_person(desk, course)
    if now:
        await _send(desk, course, coach, alert, row=row, said=said, quote=quote, waits=waits)
    elif not alert.at_once and alert.told_at is None:
        await _plan_list(desk, course, coach)


async def _send(
    desk: Desk,
    course: Course,
    coach: Person,
    alert: Alert,
    *,
    row: LedgerRow | None,
    said: CheckIn | None,
    quote: str | None,
    waits: bool,
    call: int = 1,
) -> None:
    client = await desk.session.get_one(Person, course.person_id)
    words = desk.words(coach)
    text = words.say(
        "coach.alert",
        label=client.label,
        cause=alert.cause,
        facts=alert.facts,
        said=facts(said, gettext=words.gettext) if said else "",
        words=(quote or "")[:QUOTED],
        day=row.day if row else None,
    )
    after = words.say("coach.alert_waits") if waits else None
    buttons = [Button(words.gettext("Open their page"), f"client:{course.id}")]
    if waits:
        buttons.insert(0, Button(words.gettext("Let go on"), f"go:{course.id}"))
    key = f"alert:{alert.id}:{'now' if alert.at_once else 'list'}:{call}"
    await desk.send(coach, Message(joined(text, after), column(*buttons)), key=key, kind=Kind.ALERT)
    alert.told_at = desk.now


async def tell_again(desk: Desk, coach: Person) -> None:
    """What a coach was to hear of at once while they could not be reached, now that they are heard of again."""
    found = await desk.session.execute(
        select(Alert, Course)
        .join(Course, Course.id == Alert.course_id)
        .join(Coach, Coach.id == Course.coach_id)
        .where(Coach.person_id == coach.id, Alert.at_once, Alert.closed_at.is_(None))
        .order_by(Alert.id)
    )
    for alert, course in found.all():
        calls = await outbox.states_of(desk.session, f"alert:{alert.id}:now:")
        if calls and set(calls) <= {State.REFUSED}:
            waits = course.state == CourseState.WAITING
            row = await desk.session.get(LedgerRow, alert.ledger_id) if alert.ledger_id is not None else None
            await _send(desk, course, coach, alert, row=row, said=None, quote=None, waits=waits, call=len(calls) + 1)


async def _plan_list(desk: Desk, course: Course, coach: Person) -> None:
    await due.plan_by(desk.session, due.DueKind.LIST, course.coach_id, times.next_morning(coach, desk.now))


async def plan_list(desk: Desk, coach_id: int) -> None:
    """Plans a coach's morning list once more."""
    coach = await desk.session.get_one(Coach, coach_id)
    person = await desk.session.get_one(Person, coach.person_id)
    await due.plan(desk.session, due.DueKind.LIST, coach_id, times.next_morning(person, desk.now))


async def morning_list(desk: Desk, coach_id: int) -> None:
    """Sends one list of everything that could wait until the coach's morning."""
    coach = await desk.session.get_one(Coach, coach_id)
    person = await desk.session.get_one(Person, coach.person_id)
    waiting = await alerts.for_list(desk.session, coach_id)
    await due.cancel(desk.session, due.DueKind.LIST, coach_id)
    if not waiting:
        return
    items = []
    for alert, course in waiting:
        client = await desk.session.get_one(Person, course.person_id)
        items.append({"label": client.label, "cause": alert.cause, "facts": alert.facts})
        alert.told_at = desk.now
    text = desk.words(person).say("coach.list", items=items)
    key = f"list:{person.id}:{times.today(person, desk.now)}"
    await desk.send(person, Message(text), key=key, kind=Kind.ALERT, lane=LANES[Kind.DIGEST])


async def note(desk: Desk, course: Course, text: str) -> Person:
    """Passes a client's own words to the coach; returns the coach."""
    client = await desk.session.get_one(Person, course.person_id)
    coach = await coach_person(desk, course)
    body = desk.words(coach).say("coach.note_from", label=client.label, text=text[:3500])
    await desk.say(coach, Message(body))
    return coach


async def unreachable(desk: Desk, client: Person) -> None:
    """A client has blocked the bot: their coach hears of it with the morning list."""
    await outbox.withdraw(desk.session, client.chat, "unreachable")
    course = await courses.open_course(desk.session, client)
    if course is not None:
        await tell_of(desk, course, cause="unreachable", at_once=False)
