"""What reaches the coach: alerts at once, the rest on one morning list."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import asdict
from typing import Any

from bot.flows import calling, times
from bot.flows.desk import Desk
from bot.words.message import Button, Message, column
from db import alerts, bodies, courses, due, helpers, outbox
from db.alerts import News
from db.delivery import LANES, Kind
from db.schema import Alert, Coach, Course, LedgerRow, Person
from plans.checkin import CheckIn, Morning
from plans.rules import Tell, Verdict, Vote

KEPT = 1000
"""Characters of a client's own words that stay with an alert."""
LISTED = 40
"""Lines of a morning list: more do not fit into one message."""


async def coach_person(desk: Desk, course: Course) -> Person:
    """The coach of a course, as a person with a chat."""
    coach = await desk.session.get_one(Coach, course.coach_id)
    return await desk.session.get_one(Person, coach.person_id)


async def looks_after(desk: Desk, course: Course) -> Person:
    """Who looks after a course today: its coach, or the stand-in while the coach is away."""
    coach = await desk.session.get_one(Coach, course.coach_id)
    person = await desk.session.get_one(Person, coach.person_id)
    return (await standing_in(desk, coach)) or person


async def standing_in(desk: Desk, coach: Coach) -> Person | None:
    """The stand-in of a coach who is away today."""
    person = await desk.session.get_one(Person, coach.person_id)
    away = await helpers.absence_on(desk.session, coach, times.today(person, desk.now))
    return await desk.session.get_one(Person, away.stand_in_id) if away and away.stand_in_id else None


async def tell(
    desk: Desk,
    course: Course,
    votes: Iterable[Vote],
    *,
    row: LedgerRow | None,
    said: CheckIn | None = None,
    quote: str | None = None,
) -> None:
    """Raises an alert for each vote that the coach is to hear of; one call stands for all that one answer raises."""
    told = sorted((vote for vote in votes if vote.tell is not None), key=lambda vote: vote.verdict or 0, reverse=True)
    raised = []
    for vote in told:
        decided = {Verdict.REFER: "waits", Verdict.REST: "rests"}.get(vote.verdict, "") if vote.verdict else ""
        at_once, red = vote.tell is Tell.NOW, vote.verdict is Verdict.REFER
        report = await _report(desk, course, row, said, quote, decided) if at_once else {}
        raised.append(
            await alerts.raise_alert(
                desk.session,
                course,
                cause=vote.rule,
                at_once=at_once,
                red=red,
                facts=vote.facts,
                report=report,
                row=row,
                now=desk.now,
            )
        )
    await _act(desk, course, raised)


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
    red: bool = False,
    decided: str = "",
) -> None:
    """Opens or joins one alert; calls the coach now, or plans it for the morning list.

    `red` is a red flag; `decided` is what was decided for the client already: see bot/flows/calling.py.
    """
    report = await _report(desk, course, row, said, quote, decided) if at_once else {}
    raised = await alerts.raise_alert(
        desk.session,
        course,
        cause=cause,
        at_once=at_once,
        red=red,
        facts=facts or {},
        report=report,
        row=row,
        now=desk.now,
    )
    await _act(desk, course, [raised])


async def _act(desk: Desk, course: Course, raised: Sequence[tuple[Alert, News]]) -> None:
    """Calls for the gravest of what is new, the first; what is left goes along with it or stands on the list."""
    news = {what for _alert, what in raised}
    new = [alert for alert, what in raised if what is News.CALL]
    for alert in new:
        alert.told_at = desk.now
    await desk.session.flush()
    if new:
        await calling.call(desk, course, new[0])
    if News.MORE in news:
        await calling.more(desk, course)
    if News.LIST in news:
        await _plan_list(desk, course, await coach_person(desk, course))


async def _report(
    desk: Desk, course: Course, row: LedgerRow | None, said: CheckIn | None, quote: str | None, decided: str
) -> dict[str, Any]:
    """What a call must say beside cause and facts."""
    pairs = [(r, entry) for r, entry in await courses.history(desk.session, course) if row and r.id <= row.id]
    if said is None and pairs:
        said = next((entry.checkin for _row, entry in reversed(pairs) if entry.checkin != CheckIn()), None)
    if quote is None and pairs:
        quote = await courses.last_words(desk.session, [r for r, _entry in pairs[-2:]])
    usual = bodies.usual_of(course)
    told = [(r.local_date, said if said and row and r.id == row.id else entry.checkin) for r, entry in pairs]
    since = calling.hurts_since(told, usual)
    return {
        "said": {name: value for name, value in asdict(said).items() if value not in (None, False)} if said else None,
        "words": [quote[:KEPT]] if quote else [],
        "day": row.day if row else None,
        "since": since.isoformat() if since else None,
        "decided": decided,
    }


async def _plan_list(desk: Desk, course: Course, coach: Person) -> None:
    await due.plan_by(desk.session, due.DueKind.LIST, course.coach_id, times.next_morning(coach, desk.now))


async def plan_list(desk: Desk, coach_id: int) -> None:
    """Plans a coach's morning list once more."""
    coach = await desk.session.get_one(Coach, coach_id)
    person = await desk.session.get_one(Person, coach.person_id)
    await due.plan(desk.session, due.DueKind.LIST, coach_id, times.next_morning(person, desk.now))


async def morning_list(desk: Desk, coach_id: int) -> None:
    """Sends one list of everything that could wait until the coach's morning, to the stand-in too.

    While the coach cannot be reached it goes to the assistants who get alerts.
    """
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
    upto = max(alert.id for alert, _course in waiting)
    stand_in = await standing_in(desk, coach)
    readers = [person] if stand_in is None else [person, stand_in]
    if person.unreachable_since is not None:
        readers += await helpers.hearing(desk.session, coach)
    for reader in dict.fromkeys(readers):
        words = desk.words(reader)
        of = person.label if reader.id != person.id else ""
        text = words.say("alerts.list", items=items[:LISTED], more=len(items[LISTED:]), coach=of)
        key = f"list:{coach.person_id}:{reader.id}:{times.today(person, desk.now)}"
        rows = column(Button(words.gettext("Seen"), f"listed:{coach.id}:{upto}"))
        await desk.send(reader, Message(text, rows), key=key, kind=Kind.ALERT, lane=LANES[Kind.DIGEST])


async def note(desk: Desk, course: Course, text: str) -> Person:
    """Passes a client's own words to the coach, and to the stand-in; returns who looks after the client."""
    client = await desk.session.get_one(Person, course.person_id)
    coach, reader = await coach_person(desk, course), await looks_after(desk, course)
    for one in dict.fromkeys((coach, reader)):
        body = desk.words(one).say("coach.note_from", label=client.label, text=text[:3500])
        await desk.say(one, Message(body))
    return reader


async def unreachable(desk: Desk, client: Person) -> None:
    """A client has blocked the bot: their coach hears of it with the morning list."""
    await outbox.withdraw(desk.session, client.chat, "unreachable")
    course = await courses.open_course(desk.session, client)
    if course is not None:
        await tell_of(desk, course, cause="unreachable", at_once=False)


async def tell_of_worse(desk: Desk, course: Course, row: LedgerRow) -> None:
    """A morning that is worse, where no decision says so: the coach hears at once."""
    facts = {"morning": str(Morning.WORSE)}
    await tell_of(desk, course, cause="morning-after", at_once=True, row=row, facts=facts)
