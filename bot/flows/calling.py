"""Calls for what cannot wait: the coach at once and once more, then whoever stands by them, until somebody has seen it.

An alert's `report` holds what else a call must say: `said` (the check-in), `words` (quotes), `day`, `since` (a date)
and `decided` (waits, held, rests, asked, or nothing).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date, datetime, timedelta

from bot.flows import answering, rights, times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import Words
from bot.words.checkin import area_words
from bot.words.facts import facts
from bot.words.message import Button, Message, column
from db import alerts, courses, due, helpers, people
from db.courses import CourseState
from db.delivery import Kind
from db.due import DueKind
from db.helpers import Right
from db.schema import Alert, Coach, Course, Person
from plans import localtime
from plans.checkin import CheckIn, Place

STANDING_BY = 3
"""The rung of the ladder from which on others than the coach are called."""
DAILY = timedelta(hours=24)
"""So often everybody is called once all have been. Our own choice."""


async def call(desk: Desk, course: Course, alert: Alert) -> None:
    """The first call: the coach, the stand-in while the coach is away, and others if the coach cannot be reached."""
    await _ring(desk, course, alert)


async def more(desk: Desk, course: Course) -> None:
    """What has joined a client's alerts that nobody has seen yet stands in the messages that are there."""
    along = await alerts.along(desk.session, course)
    for alert in await alerts.called(desk.session, course):
        await _show(desk, course, alert, along)


async def _show(desk: Desk, course: Course, alert: Alert, along: Sequence[Alert]) -> None:
    """All messages of an alert as it stands now, but those of who may not hear of this client any more."""
    coach = await desk.session.get_one(Coach, course.coach_id)
    for made, person in await alerts.calls_of(desk.session, alert):
        if await rights.may(desk, person, coach, Right.HEAR):
            await desk.edit(person, await _message(desk, course, alert, along, person), made.outbox_id)


async def again(desk: Desk, alert_id: int) -> None:
    """The next call for an alert that nobody has seen, and when the one after it is due."""
    await due.cancel(desk.session, DueKind.CALL, alert_id)
    alert = await desk.session.get(Alert, alert_id)
    if alert is None:
        return
    course = await courses.locked(desk.session, alert.course_id)
    await desk.session.refresh(alert)
    if course is not None and alert.seen_at is None and alert.closed_at is None:
        await _ring(desk, course, alert)


async def keep_instant(desk: Desk, alert_id: int) -> None:
    """New zone data: a call counts from the one before, whatever the clock says."""


async def lost(desk: Desk, person: Person) -> None:
    """A coach's chat refuses messages: what they have not seen goes to others now."""
    await _all_again(desk, person)


async def returned(desk: Desk, person: Person) -> None:
    """A coach can be reached again: what nobody has seen is called now, lists come once more in the morning."""
    await _all_again(desk, person)
    coach = await people.coach_of(desk.session, person)
    if coach is not None and await alerts.list_again(desk.session, coach.id):
        await due.plan_by(desk.session, DueKind.LIST, coach.id, times.next_morning(person, desk.now))


async def _all_again(desk: Desk, person: Person) -> None:
    coach = await people.coach_of(desk.session, person)
    for number in await alerts.called_of(desk.session, coach) if coach is not None else ():
        await again(desk, number)


async def _ring(desk: Desk, course: Course, alert: Alert) -> None:
    """Takes the next rung of the ladder and calls everybody on it."""
    coach = await desk.session.get_one(Coach, course.coach_id)
    own = await desk.session.get_one(Person, coach.person_id)
    alert.rung += 1
    called = [own, *await _in_place_of(desk, coach, own)]
    if alert.rung >= STANDING_BY or own.unreachable_since is not None:
        called += await helpers.hearing(desk.session, coach)
    along = [one for one in await alerts.along(desk.session, course) if one.id != alert.id]
    for person in dict.fromkeys(called):
        message = await _message(desk, course, alert, along, person)
        number = await alerts.next_number(desk.session, alert)
        row = await desk.send(person, message, key=f"alert:{alert.id}:{number}", kind=Kind.ALERT)
        await alerts.note_call(desk.session, alert, person, row, desk.now)
    alert.told_at = desk.now
    await due.plan(desk.session, DueKind.CALL, alert.id, _next_call(desk, coach, own, alert))


async def _in_place_of(desk: Desk, coach: Coach, own: Person) -> list[Person]:
    """The stand-in, while the coach is away."""
    away = await helpers.absence_on(desk.session, coach, times.today(own, desk.now))
    if away is None or away.stand_in_id is None:
        return []
    return [await desk.session.get_one(Person, away.stand_in_id)]


def _next_call(desk: Desk, coach: Coach, own: Person, alert: Alert) -> datetime:
    """When the next call is due; only a red flag comes in the coach's quiet hours."""
    wait = desk.installation.red_flag_again if alert.red else desk.installation.alert_again
    at = desk.now + (wait if alert.rung < STANDING_BY else DAILY)
    return at if alert.red else answering.awake(coach, own, at)


# --- seen ---------------------------------------------------------------------------------------------------------


async def seen(desk: Desk, person: Person, alert_id: int) -> str:
    """Somebody has seen an alert: nobody is called any more, and all messages say who it was. Raises NotAllowed."""
    alert = await desk.session.get(Alert, alert_id)
    if alert is None:
        raise NotAllowed("checkin.not_yours")
    await rights.coach_of_course(desk, person, alert.course_id, Right.HEAR)
    course = await courses.locked(desk.session, alert.course_id)
    await desk.session.refresh(alert)
    if course is None:
        raise NotAllowed("checkin.not_yours")
    if alert.seen_at is None:
        along = await alerts.along(desk.session, course)
        for one in (alert, *along):
            one.seen_at, one.seen_by = desk.now, person.id
            if course.state != CourseState.WAITING:
                one.closed_at = one.closed_at or desk.now
        await due.cancel(desk.session, DueKind.CALL, alert.id)
        await _show(desk, course, alert, along)
    return str(await _seen_words(desk, alert, person))


async def seen_list(desk: Desk, person: Person, coach_id: int, upto: int) -> None:
    """Somebody has seen the morning list: what was on it is done with. Raises NotAllowed."""
    coach = await desk.session.get(Coach, coach_id)
    if coach is None or not await rights.may(desk, person, coach, Right.HEAR):
        raise NotAllowed("checkin.not_yours")
    await alerts.close_list(desk.session, coach.id, upto, desk.now)
    await desk.say(person, Message(desk.words(person).say("alerts.list_closed")))


async def _seen_words(desk: Desk, alert: Alert, reader: Person) -> str:
    if alert.seen_at is None:
        return ""
    by = await desk.session.get(Person, alert.seen_by) if alert.seen_by is not None else None
    when = _moment(desk.words(reader), reader, alert.seen_at)
    return str(desk.words(reader).say("alerts.seen_by", name=by.label if by is not None else "?", when=when))


# --- what a call says ---------------------------------------------------------------------------------------------


async def _message(desk: Desk, course: Course, alert: Alert, along: Sequence[Alert], reader: Person) -> Message:
    client = await desk.session.get_one(Person, course.person_id)
    coach = await desk.session.get_one(Coach, course.coach_id)
    own = await desk.session.get_one(Person, coach.person_id)
    report, words = alert.report or {}, desk.words(reader)
    since = report.get("since")
    told = {
        "label": client.label,
        "causes": [(one.cause, one.facts) for one in (alert, *along)],
        "day": report.get("day"),
        "said": _said(CheckIn(**report["said"]), words) if report.get("said") else "",
        "words": _fitting(_quotes(alert, *along)),
        "when": _moment(words, reader, alert.opened_at),
        "since": words.weekday_and_date(date.fromisoformat(since)) if since else "",
        "events": alert.events,
        "decided": report.get("decided", ""),
        "second": alert.rung > 1,
        "coach": own.label if reader.id != own.id else "",
        "stands_in": await rights.stands_in(desk, reader, coach),
        "seen": await _seen_words(desk, alert, reader),
    }
    return Message(words.say("alerts.alert", a=told), column(*await _buttons(desk, course, coach, alert, reader)))


async def _buttons(desk: Desk, course: Course, coach: Coach, alert: Alert, reader: Person) -> list[Button]:
    _ = desk.words(reader).gettext
    found = [] if alert.seen_at is not None else [Button(_("Seen"), f"seen:{alert.id}")]
    waits = course.state == CourseState.WAITING or (alert.report or {}).get("decided") in ("waits", "held")
    if waits and await rights.may(desk, reader, coach, Right.RULE):
        found.append(Button(_("Let go on"), f"go:{course.id}"))
    if await rights.may(desk, reader, coach, Right.SEE):
        found.append(Button(_("Open their page"), f"client:{course.id}"))
    return found


QUOTED = 200
"""Letters of a client's own words in one call; all of them stand on the client's page. Our own choice."""


def _quotes(*told: Alert) -> list[str]:
    """The client's words in what a call stands for, each once, the newest last."""
    quotes = dict.fromkeys(quote for one in told for quote in (one.report or {}).get("words", ()))
    return list(quotes)[-alerts.QUOTES :]


def _fitting(quotes: list[str]) -> list[str]:
    """The quotes with an equal share of the room each."""
    room = QUOTED // max(1, len(quotes))
    return [quote if len(quote) <= room else f"{quote[: room - 1]}…" for quote in quotes]


def _said(said: CheckIn, words: Words) -> str:
    """What was said, with the place."""
    return ", ".join(part for part in (facts(said, gettext=words.gettext), _where(said, words)) if part)


def _where(said: CheckIn, words: Words) -> str:
    _ = words.gettext
    sides = {"left": _("left"), "right": _("right"), "both": _("both sides")}
    place = {Place.HERE: _("where we stretch"), Place.ELSEWHERE: area_words(said.area, words)}
    parts = (place.get(said.place) if said.place else None, sides.get(said.side) if said.side else None)
    return ", ".join(part for part in parts if part)


def _moment(words: Words, reader: Person, at: datetime) -> str:
    """An instant on the reader's clock."""
    return words.moment(localtime.local(at, times.zone_of(reader)))


def hurts_since(said: Iterable[tuple[date, CheckIn]], usual: int) -> date | None:
    """From which date on it has hurt without a day that was clean; None when it does not hurt. Oldest first."""
    since = None
    for on, one in said:
        hurts = (one.pain or 0) > usual or one.sore or one.kind is not None
        if hurts:
            since = since or on
        elif one.pain is not None:
            since = None
    return since
