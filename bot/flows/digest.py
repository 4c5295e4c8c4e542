"""The coach's week: whom to look at first and why, then everybody together, with a chart, a page and a table."""

from __future__ import annotations

from datetime import timedelta

from pydantic import TypeAdapter

from bot.flows import digest_files, digest_said, joining, people, times, weeks
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, own_version
from bot.flows.weeks import Digest
from bot.words import Words
from bot.words.message import ON_PHONE, Button, Message, Picture, Rows, column, shortened
from db.courses import CourseState
from db.delivery import Kind
from db.schema import Coach, Person
from plans import needs
from plans.charts.digest import Digest as Chart

FIRST = 10
"""Clients who are named first; of more only the number is said. Our own choice."""
REASONS = 2
"""Of one client in a message; the page has all."""
SMALL = 12
"""In a group of up to so many, everybody else has a line too. Our own choice."""
LATE = timedelta(days=1)
"""A digest that could not be sent for so long waits for /digest. Our own choice."""


async def weekly(desk: Desk, coach_id: int) -> None:
    """Sends the digest of the seven dates before this one, its page and its table, and plans the next one."""
    coach = await desk.session.get_one(Coach, coach_id)
    person = await desk.session.get_one(Person, coach.person_id)
    await joining.plan_digest(desk, person, coach)
    today = times.today(person, desk.now)
    found = await weeks.read(desk, person, coach, today - timedelta(days=1))
    key, late = f"digest:{person.id}:{today}", desk.now + LATE
    for number, message in enumerate(_messages(desk, person, found)):
        await desk.send(person, message, key=f"{key}:{number}", kind=Kind.DIGEST, late_after=late)
    if found.clients:
        for file in (digest_files.page(desk, person, found), digest_files.table(desk, person, found)):
            await desk.document(person, *file, key=f"{key}:{file.name}", kind=Kind.DIGEST, late_after=late)


async def plan(desk: Desk, coach_id: int) -> None:
    """Plans a coach's next digest once more."""
    coach = await desk.session.get_one(Coach, coach_id)
    await joining.plan_digest(desk, await desk.session.get_one(Person, coach.person_id), coach)


async def now(desk: Desk, person: Person, coach: Coach) -> None:
    """/digest: the seven dates up to this one, at any time."""
    for message in _messages(desk, person, await _running(desk, person, coach)):
        await desk.say(person, message)


async def tapped(desk: Desk, person: Person, coach: Coach, what: str, value: str) -> None:
    """One button under the digest. Raises NotAllowed for another one, or for somebody else's version."""
    if what == "people":
        await people.show(desk, person, coach)
    elif what == "table":
        await desk.document(person, *digest_files.table(desk, person, await _running(desk, person, coach)))
    elif what == "page":
        await _page(desk, person, coach, value)
    elif what == "when":
        await _when(desk, person, coach, value)
    else:
        raise NotAllowed("checkin.not_yours")


async def _running(desk: Desk, person: Person, coach: Coach) -> Digest:
    return await weeks.read(desk, person, coach, times.today(person, desk.now))


# --- messages -------------------------------------------------------------------------------------------------------


def _messages(desk: Desk, person: Person, found: Digest) -> list[Message]:
    """Whom first; then all together with the chart, below it where the words are too many for a caption."""
    words = desk.words(person)
    dates = digest_said.dates(words, found.first, found.last)
    first = _first(words, found, dates)
    if not found.clients:
        return [first]
    text, chart = digest_said.together(words, found), _chart(words, found)
    whole = Message(text, _buttons(words), chart)
    if whole.picture_digest is not None:
        return [first, whole]
    return [first, Message(words.say("digest.chart", **dates), picture=chart), Message(text, _buttons(words))]


def _first(words: Words, found: Digest, dates: dict[str, str]) -> Message:
    shown = found.needing[:FIRST]
    active = [seen for seen in found.clients if seen.course.state in (CourseState.ACTIVE, CourseState.WAITING)]
    others = [seen for seen in active if not seen.needs] if len(active) <= SMALL else []
    text = words.say(
        "digest.first",
        **dates,
        count=len(found.there),
        needing=[{"label": seen.label, "needs": needs.named(seen.needs, REASONS)} for seen in shown],
        more=len(found.needing) - len(shown),
        others=[{"label": seen.label, "week": seen.week.week} for seen in others],
    )
    buttons = [Button(seen.label[:ON_PHONE], f"client:{seen.course.id}") for seen in shown]
    return Message(text, tuple(tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2)))


def _chart(words: Words, found: Digest) -> Picture:
    chart = digest_said.chart(words, found)
    return Picture("digest", TypeAdapter(Chart).dump_python(chart, mode="json"), personal=True)


def _buttons(words: Words) -> Rows:
    _ = words.gettext
    return (
        (Button(_("All people"), "digest:people"), Button(_("When it comes"), "digest:when")),
        (Button(_("As a page"), "digest:page"), Button(_("As a table"), "digest:table")),
    )


# --- page, hour -----------------------------------------------------------------------------------------------------


async def _page(desk: Desk, person: Person, coach: Coach, value: str) -> None:
    """The page of everybody ("0") or of one version; without a value it is asked where there are several."""
    words = desk.words(person)
    found = await _running(desk, person, coach)
    titles = {seen.course.version_id: seen.programme for seen in found.clients}
    if not value and len(titles) > 1:
        buttons = [Button(words.gettext("Everybody"), "digest:page:0")]
        buttons += [
            Button(f"{shortened(programme.title, 30)} {programme.digest[:6]}"[:ON_PHONE], f"digest:page:{version}")
            for version, programme in titles.items()
        ]
        await desk.say(person, Message(words.say("digest.which_page"), column(*buttons[:9])))
        return
    if value not in ("", "0"):
        if not value.isdecimal() or len(value) > 15:
            raise NotAllowed("checkin.not_yours")
        found = found.of((await own_version(desk, coach, int(value))).id)
    await desk.document(person, *digest_files.page(desk, person, found))


HOURS = ("07:00", "09:00", "12:00", "17:00", "19:00", "21:00")


async def _when(desk: Desk, person: Person, coach: Coach, value: str) -> None:
    """Shows when the digest comes; `value` is another weekday ("0" is Monday) or another hour ("1700") from now on."""
    if value in ("0", "1", "2", "3", "4", "5", "6"):
        coach.digest_weekday = int(value)
    elif value in (hour.replace(":", "") for hour in HOURS):
        coach.digest_at = coach.digest_at.replace(hour=int(value[:2]), minute=int(value[2:]))
    elif value:
        raise NotAllowed("checkin.not_yours")
    if value:
        await joining.plan_digest(desk, person, coach)
    words = desk.words(person)
    weekdays = digest_said.weekdays(words)
    days = [Button(name[:3], f"digest:when:{n}") for n, name in enumerate(weekdays)]
    hours = [Button(hour, f"digest:when:{hour.replace(':', '')}") for hour in HOURS]
    text = words.say(
        "digest.when",
        weekday=weekdays[coach.digest_weekday],
        time=coach.digest_at.strftime("%H:%M"),
        zone=times.zone_of(person),
    )
    await desk.say(person, Message(text, (tuple(days[:4]), tuple(days[4:]), tuple(hours[:3]), tuple(hours[3:]))))
