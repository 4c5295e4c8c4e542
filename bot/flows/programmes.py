"""Programmes by chat: a file comes in, is checked and reported on, and is published by its coach."""

from __future__ import annotations

from bot.flows import inviting, moving, previewing
from bot.flows.desk import Desk
from bot.flows.rights import own_version
from bot.words.judging import judged
from bot.words.message import Button, Message, Rows, column, shortened
from db import programmes
from db.schema import Coach, Person
from plans import dose
from plans.programme import Programme
from plans.reading import ProgrammeErrors, read_programme

SHOWN = 12
"""Problems or findings in one message; the rest is counted."""


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
    report = judged(programme)
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
        publish = column(Button(words.gettext("Publish"), f"publish:{version.id}"))
        rows = (*await previewing.buttons(desk, person, version), *publish)
    await desk.say(person, Message(text, rows))


async def publish(desk: Desk, person: Person, coach: Coach, version_id: int) -> None:
    """Publishes a version, once and for good. Raises NotAllowed for somebody else's."""
    version = await own_version(desk, coach, version_id)
    version.published_at = version.published_at or desk.now
    words = desk.words(person)
    text = words.say("coach.published", title=version.title)
    await desk.say(person, Message(text, inviting.invite_buttons(desk, person, [version])))
    await moving.offer(desk, person, version)


async def list_programmes(desk: Desk, person: Person, coach: Coach) -> None:
    """/programmes: every version, with a publish button where that is still to do."""
    found = await programmes.of_coach(desk.session, coach)
    words = desk.words(person)
    if not found:
        await desk.say(person, Message(words.say("coach.nothing_published")))
        return
    buttons = [
        Button(f"{words.gettext('Publish')} {shortened(v.title, 20)} {v.digest[:6]}", f"publish:{v.id}")
        for v in found
        if v.published_at is None
    ]
    text = words.say("coach.programmes", items=inviting.items_of(words, found))
    looks = [
        Button(f"{words.gettext('Look at')} {shortened(v.title, 20)} {v.digest[:6]}", f"programme:{v.id}")
        for v in found
    ]
    films = Button(words.gettext("Your own recordings"), "film:0:list")
    await desk.say(person, Message(text, column(*buttons[:8], *looks[:8], films)))


async def look(desk: Desk, person: Person, coach: Coach, version_id: int) -> None:
    """What can be done with one version: looked at, rehearsed, compared, published, clients moved over to it."""
    version = await own_version(desk, coach, version_id)
    words = desk.words(person)
    rows = await previewing.buttons(desk, person, version)
    if version.published_at is None:
        rows = (*rows, *column(Button(words.gettext("Publish"), f"publish:{version.id}")))
    else:
        report = column(Button(words.gettext("Report"), f"report:{version.id}"))
        rows = (*rows, *report, *inviting.invite_buttons(desk, person, [version]))
    await desk.say(person, Message(words.say("coach.programmes", items=inviting.items_of(words, [version])), rows))
    if version.published_at is not None:
        await moving.offer(desk, person, version)
