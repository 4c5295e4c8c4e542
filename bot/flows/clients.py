"""The people of a coach: who needs a look first, and the page of one of them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from sqlalchemy import select

from bot.flows import photos, progress, showing
from bot.flows.desk import Desk
from bot.flows.rights import own_course
from bot.words.facts import facts
from bot.words.message import Button, Message, Rows, column
from db import alerts, courses
from db.courses import CourseState
from db.schema import Coach, Course, LedgerRow, Person, ProgrammeVersion
from plans.checkin import CheckIn
from plans.ledger import Entry, RowKind


@dataclass(frozen=True, slots=True)
class Client:
    """One client in a coach's list; whoever needs a look comes first."""

    course: Course
    person: Person
    rows: Sequence[tuple[LedgerRow, Entry]]
    alerts: int

    @property
    def urgency(self) -> tuple[int, str]:
        """Sorts: waiting, then open alerts, then not reachable, then by name."""
        rank = 0 if self.course.state == CourseState.WAITING else 1 if self.alerts else 2
        return (rank if self.person.unreachable_since is None else min(rank, 1), self.person.label.lower())


async def clients_of(desk: Desk, coach: Coach) -> list[Client]:
    """A coach's clients whose course has begun or is over, whoever needs a look first."""
    found = await desk.session.execute(
        select(Course, Person)
        .join(Person, Person.id == Course.person_id)
        .where(Course.coach_id == coach.id, Course.state != CourseState.STOPPED)
    )
    clients = [
        Client(
            course,
            person,
            await courses.history(desk.session, course),
            len(await alerts.open_of(desk.session, course)),
        )
        for course, person in found
    ]
    return sorted(clients, key=lambda client: client.urgency)


async def people_list(desk: Desk, person: Person, coach: Coach) -> None:
    """/people: one line each and a button to each page."""
    clients = await clients_of(desk, coach)
    words = desk.words(person)
    items = [_state(client) | {"last": _last_said(desk, person, client)} for client in clients]
    buttons = [Button(client.person.label[:30], f"client:{client.course.id}") for client in clients[:24]]
    rows = tuple(tuple(buttons[i : i + 2]) for i in range(0, len(buttons), 2))
    await desk.say(person, Message(words.say("coach.people", items=items), rows))


def _state(client: Client) -> dict[str, object]:
    return {
        "label": client.person.label,
        "state": client.course.state,
        "day": client.course.day,
        "level": client.course.level,
        "paused": client.course.paused is not None,
        "unreachable": client.person.unreachable_since is not None,
    }


def _last_said(desk: Desk, person: Person, client: Client) -> str:
    said = next((entry for _row, entry in reversed(client.rows) if entry.checkin != CheckIn()), None)
    if said is None:
        return ""
    return f"{said.on:%a} {facts(said.checkin, gettext=desk.words(person).gettext)}"


async def client_page(desk: Desk, person: Person, coach: Coach, course_id: int) -> None:
    """Where a client stands and why, the last two weeks, and what the coach may do."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    pairs = await courses.history(desk.session, course)
    opened = await alerts.open_of(desk.session, course)
    words = desk.words(person)
    version = await desk.session.get_one(ProgrammeVersion, course.version_id)
    if pairs:
        two_weeks = progress.fortnight(words, await desk.programme(course), course, pairs, client.label)
        await desk.say(person, Message(words.say("coach.two_weeks", label=client.label), picture=two_weeks))
    text = words.say(
        "coach.client",
        c=_state(Client(course, client, pairs, len(opened))) | {"title": version.title},
        rows=[_row_line(desk, person, row, entry) for row, entry in pairs[-14:]],
        alerts=opened,
    )
    actions = _actions(desk, person, course)
    if course.state in (CourseState.ACTIVE, CourseState.WAITING) and coach.person_id == person.id:
        actions = (*actions, (Button(words.gettext("Hand over"), f"handover:{course.id}"),))
    if await photos.taken(desk, course):
        actions = (*actions, (Button(words.gettext("Photos"), f"photos:{course.id}"),))
    await desk.say(person, Message(text, actions))


async def show_photos(desk: Desk, person: Person, coach: Coach, course_id: int) -> None:
    """A client's first and last photo side by side."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    await photos.show(desk, person, client, course)


def _row_line(desk: Desk, person: Person, row: LedgerRow, entry: Entry) -> dict[str, object]:
    words = desk.words(person)
    reason = (row.decision or {}).get("reason")
    what = f"{entry.kind}" if row.day is None else f"{entry.kind} {row.day}"
    level = f" ({row.level})" if row.level and entry.kind is RowKind.SESSION else ""
    said = facts(entry.checkin, gettext=words.gettext)
    morning = words.gettext("in the morning {answer}").format(answer=entry.morning) if entry.morning else ""
    return {
        "date": f"{row.local_date:%a %d %b}",
        "what": what + level,
        "said": ", ".join(part for part in (morning, said) if part),
        "why": words.say("reasons.because", reason=reason, f=showing.facts_of(row.decision)) if reason else "",
    }


def _actions(desk: Desk, person: Person, course: Course) -> Rows:
    _ = desk.words(person).gettext
    dose = Button(_("Dose by week"), f"doses:{course.id}")
    if course.state == CourseState.WAITING:
        return column(Button(_("Let go on"), f"go:{course.id}"), dose)
    if course.state == CourseState.ACTIVE:
        return (
            (
                Button(_("Repeat the day"), f"rule:{course.id}:repeat"),
                Button(_("Ease the day"), f"rule:{course.id}:ease"),
            ),
            (Button(_("Leave a movement out"), f"bar:{course.id}:list"), dose),
        )
    return column(dose)
