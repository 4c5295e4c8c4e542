"""The coach's side: programmes in, invitations out, people, and the word that overrules a rule."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from sqlalchemy import select

from bot import writing
from bot.flows import progress, showing, telling
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.facts import facts
from bot.words.message import ON_PHONE, Button, Message, Rows, column
from db import alerts, courses, links, programmes
from db.courses import CourseState
from db.schema import Coach, Course, LedgerRow, Overrule, Person, ProgrammeVersion
from plans import course as way
from plans import dose
from plans.checkin import CheckIn, Flag
from plans.ledger import Entry, RowKind
from plans.programme import Programme
from plans.reading import ProgrammeErrors, read_programme
from plans.screening import Step

SHOWN = 12
"""Problems or findings in one message; the rest is counted."""
PLACES = (1, 10)
QUICK_NOTES = {
    "spoke": "Spoke with them; fine to go on.",
    "seen": "Seen by a doctor or physiotherapist, who agrees.",
}


async def receive_file(desk: Desk, person: Person, coach: Coach, name: str, body: bytes | None) -> None:
    """A document from a coach: read, checked, reported on, and kept when it can be published."""
    words = desk.words(person)
    if body is None:
        await desk.say(person, Message(words.say("coach.file_missing")))
        return
    try:
        source = body.decode("utf-8-sig")
    except UnicodeDecodeError:
        await desk.say(person, Message(words.say("coach.file_not_text", name=name)))
        return
    try:
        programme = read_programme(source, name=name)
    except ProgrammeErrors as errors:
        shown = [str(problem)[:250] for problem in errors.problems[:SHOWN]]
        more = len(errors.problems) - len(shown)
        text = words.say("coach.bad_file", count=len(errors.problems), problems=shown, more=more)
        await desk.say(person, Message(text))
        return
    await _report(desk, person, coach, programme, source)


async def _report(desk: Desk, person: Person, coach: Coach, programme: Programme, source: str) -> None:
    words = desk.words(person)
    report = writing.judged(programme)
    findings = [str(finding)[:250] for finding in (*report.errors, *report.warnings, *report.notes)]
    lengths = [dose.minutes(day) for day in programme.days if day.kind == "session"]
    text = words.say(
        "coach.report",
        title=programme.title,
        sessions=len(lengths),
        rests=sum(1 for day in programme.days if day.kind == "rest"),
        measures=sum(1 for day in programme.days if day.measure is not None),
        low=min((low for low, _high in lengths), default=0),
        high=max((high for _low, high in lengths), default=0),
        findings=findings[:SHOWN],
        more=max(0, len(findings) - SHOWN),
        ok=report.ok,
    )
    rows: Rows = ()
    if report.ok:
        version = await programmes.store(desk.session, coach, programme, source, desk.now)
        rows = column(Button(words.gettext("Publish"), f"publish:{version.id}"))
    await desk.say(person, Message(text, rows))


async def publish(desk: Desk, person: Person, coach: Coach, version_id: int) -> None:
    """Publishes a version, once and for good. Raises NotAllowed for somebody else's."""
    version = await _own_version(desk, coach, version_id)
    version.published_at = version.published_at or desk.now
    words = desk.words(person)
    text = words.say("coach.published", title=version.title)
    await desk.say(person, Message(text, _invite_buttons(desk, person, [version])))


def _invite_buttons(desk: Desk, person: Person, versions: Sequence[ProgrammeVersion]) -> Rows:
    _ = desk.words(person).gettext
    rows: list[tuple[Button, ...]] = []
    for version in versions:
        if len(versions) > 1:
            one, many = f"{version.title[:20]}: 1", f"{version.title[:20]}: 10"
        else:
            one, many = _("Invite one client"), _("Invite a group of ten")
        rows.append((Button(one, f"invite:{version.id}:1"), Button(many, f"invite:{version.id}:10")))
    return tuple(rows)


async def _own_version(desk: Desk, coach: Coach, version_id: int) -> ProgrammeVersion:
    version = await desk.session.get(ProgrammeVersion, version_id)
    if version is None or version.coach_id != coach.id:
        raise NotAllowed("checkin.not_yours")
    return version


async def invite(desk: Desk, person: Person, coach: Coach, version_id: int, places: int) -> None:
    """Makes an invitation link. Raises NotAllowed for a version that is not the coach's or not published."""
    version = await _own_version(desk, coach, version_id)
    if version.published_at is None or places not in PLACES:
        raise NotAllowed("checkin.not_yours")
    token = await links.new_invite(desk.session, coach, version, places=places, now=desk.now)
    until = (desk.now + timedelta(days=links.INVITE_DAYS)).date().isoformat()
    link = f"https://t.me/{desk.bot_username}?start={token}"
    text = desk.words(person).say("coach.invitation", title=version.title, link=link, places=places, until=until)
    await desk.say(person, Message(text))


async def choose_invite(desk: Desk, person: Person, coach: Coach) -> None:
    """/invite: which published programme, for how many."""
    published = [v for v in await programmes.of_coach(desk.session, coach) if v.published_at is not None]
    words = desk.words(person)
    if not published:
        await desk.say(person, Message(words.say("coach.nothing_published")))
        return
    text = words.say("coach.programmes", items=[_as_item(v) for v in published])
    await desk.say(person, Message(text, _invite_buttons(desk, person, published[:8])))


async def list_programmes(desk: Desk, person: Person, coach: Coach) -> None:
    """/programmes: every version, with a publish button where that is still to do."""
    found = await programmes.of_coach(desk.session, coach)
    words = desk.words(person)
    if not found:
        await desk.say(person, Message(words.say("coach.nothing_published")))
        return
    buttons = [
        Button(f"{words.gettext('Publish')} {v.title[:20]} {v.digest[:6]}", f"publish:{v.id}")
        for v in found
        if v.published_at is None
    ]
    text = words.say("coach.programmes", items=[_as_item(v) for v in found])
    await desk.say(person, Message(text, column(*buttons[:8])))


def _as_item(version: ProgrammeVersion) -> dict[str, object]:
    return {
        "title": version.title,
        "digest": version.digest[:6],
        "published": version.published_at is not None,
    }


# --- people ---------------------------------------------------------------------------------------------------------


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


async def own_course(desk: Desk, coach: Coach, course_id: int) -> Course:
    """A course of this coach's. Raises NotAllowed for any other."""
    course = await courses.locked(desk.session, course_id)
    if course is None or course.coach_id != coach.id:
        raise NotAllowed("checkin.not_yours")
    return course


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
    await desk.say(person, Message(text, _actions(desk, person, course)))


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


async def overrule(desk: Desk, person: Person, coach: Coach, course_id: int, what: str) -> None:
    """Repeats or eases a client's next row; never lifts waiting."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    words = desk.words(person)
    if course.state != CourseState.ACTIVE or what not in ("repeat", "ease"):
        await desk.say(person, Message(words.say("coach.cannot_rule")))
        return
    await _note_overrule(desk, course, what)
    await desk.say(person, Message(words.say("coach.ruled", label=client.label, what=what)))


async def _note_overrule(desk: Desk, course: Course, what: str, note: str | None = None) -> None:
    seen = await courses.last_answer_id(desk.session, course)
    desk.session.add(Overrule(course_id=course.id, what=what, note=note, seen_answer_id=seen, at=desk.now))
    await desk.session.flush()


async def bar(desk: Desk, person: Person, coach: Coach, course_id: int, value: str) -> None:
    """Leaves a movement out of everything that a client gets, or brings it back; with "list" shows which there are.

    Raises NotAllowed for another number.
    """
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    programme = await desk.programme(course)
    names = {item.movement.key: item.movement.name for day in programme.days for _b, item in dose.items(day.session)}
    barred = set(course.barred or ())
    if value != "list":
        if not value.isdecimal() or int(value) >= len(names):
            raise NotAllowed("checkin.not_yours")
        barred ^= {list(names)[int(value)]}
        course.barred = sorted(barred)
        left_out = [name for key, name in names.items() if key in barred]
        await desk.say(
            client, Message(desk.words(client).say("coach.barred_client", coach=person.label, names=left_out))
        )
    number = min(course.day, len(programme.days))
    here = {item.movement.key for _b, item in dose.items(programme.day(number).session)} | barred
    _ = desk.words(person).gettext
    buttons = [
        Button(f"{_('Bring back') if key in barred else _('Leave out')}: {name}"[:ON_PHONE], f"bar:{course.id}:{n}")
        for n, (key, name) in enumerate(names.items())
        if key in here
    ]
    left_out = [name for key, name in names.items() if key in barred]
    text = desk.words(person).say("coach.barred", label=client.label, day=number, names=left_out)
    await desk.say(person, Message(text, column(*buttons)))


async def ask_found_out(desk: Desk, person: Person, coach: Coach, course_id: int) -> None:
    """Before a waiting client goes on, the coach says what was found out."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    words = desk.words(person)
    if course.state != CourseState.WAITING:
        await desk.say(person, Message(words.say("coach.not_waiting", label=client.label)))
        return
    grave = await _is_grave(desk, course)
    person.asking = f"found-out:{course.id}"
    _ = words.gettext
    buttons = [Button(_("Seen by a doctor or physio, who agrees"), f"found:{course.id}:seen")]
    if not grave:
        buttons.append(Button(_("Spoke with them, fine to go on"), f"found:{course.id}:spoke"))
    text = words.say("coach.ask_found_out", label=client.label, grave=grave)
    await desk.say(person, Message(text, column(*buttons)))


async def _is_grave(desk: Desk, course: Course) -> bool:
    """Whether an emergency or same-day sign, or a symptom told at joining, stands behind the waiting."""
    opened = await alerts.open_of(desk.session, course)
    levels = {str(alert.facts.get("flag")) for alert in opened}
    causes = {alert.cause for alert in opened}
    told = {step for alert in opened for step in str(alert.facts.get("waits", "")).split()}
    if told & {Step.CHEST, Step.BREATH, Step.FAINT}:
        return True
    return bool(levels & {Flag.EMERGENCY, Flag.SAME_DAY} or causes & {"strain-like", "severe"})


async def let_go(desk: Desk, person: Person, coach: Coach, course_id: int, note: str) -> None:
    """Lets a waiting client go on, one level lighter, and keeps what was found out. Raises NotAllowed."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    words = desk.words(person)
    person.asking = None
    if course.state != CourseState.WAITING or not note.strip():
        await desk.say(person, Message(words.say("coach.not_waiting", label=client.label)))
        return
    if note == QUICK_NOTES["spoke"] and await _is_grave(desk, course):
        raise NotAllowed("checkin.not_yours")
    past = [entry for _row, entry in await courses.history(desk.session, course)]
    begun = any(entry.day is not None for entry in past)
    if begun:
        courses.move(course, way.let_go(courses.position_of(course)))
        await _note_overrule(desk, course, "go-on", note.strip()[:1000])
    course.state = CourseState.ACTIVE
    await alerts.close_all(desk.session, course, desk.now)
    text = words.say("coach.goes_on", label=client.label, day=course.day, level=course.level)
    await desk.say(person, Message(text))
    await desk.say(client, Message(desk.words(client).say("coach.goes_on_client", coach=person.label)))


async def unreachable(desk: Desk, client: Person) -> None:
    """A client has blocked the bot: their coach hears of it with the morning list."""
    course = await courses.open_course(desk.session, client)
    if course is not None:
        await telling.tell_of(desk, course, cause="unreachable", at_once=False)
