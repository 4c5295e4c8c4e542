"""A coach looks at their own programme before anybody gets it: any day as a client would, and what changed."""

from __future__ import annotations

from dataclasses import replace

from markupsafe import Markup
from sqlalchemy import select

from bot.flows import showing
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, own_version
from bot.words.changes import changes
from bot.words.message import Button, Message, Rows, column, joined
from db import rehearsals
from db.schema import Coach, Person, ProgrammeVersion
from plans.programme import Programme
from plans.reading import read_programme

A_PAGE, WIDE = 28, 7
"""Days on one page of buttons, and in a row: a week is a row."""
SHOWN = 25
"""Changes in one message; the rest is counted."""


def ways(words_label: dict[str, str], version: int, *, earlier: bool) -> list[Button]:
    """What can be looked at under a report."""
    found = [
        Button(words_label["days"], f"preview:{version}:page:1"),
        Button(words_label["rehearse"], f"preview:{version}:rehearse"),
    ]
    return [*found, Button(words_label["changed"], f"preview:{version}:changed")] if earlier else found


async def buttons(desk: Desk, person: Person, version: ProgrammeVersion) -> Rows:
    """The buttons under a programme: days, rehearsal, what changed against the version before."""
    _ = desk.words(person).gettext
    labels = {"days": _("Look at a day"), "rehearse": _("Rehearse it"), "changed": _("What changed")}
    return column(*ways(labels, version.id, earlier=await before(desk, version) is not None))


async def before(desk: Desk, version: ProgrammeVersion) -> ProgrammeVersion | None:
    """The version of the same title that was published last before this one, else the one sent last before it."""
    found = await desk.session.scalars(
        select(ProgrammeVersion)
        .where(
            ProgrammeVersion.coach_id == version.coach_id,
            ProgrammeVersion.title == version.title,
            ProgrammeVersion.id < version.id,
        )
        .order_by(ProgrammeVersion.id.desc())
    )
    earlier = found.all()
    return next((one for one in earlier if one.published_at is not None), earlier[0] if earlier else None)


async def tapped(desk: Desk, person: Person, coach: Coach, version_id: int, what: str, number: str = "") -> None:
    """One button under a programme. Raises NotAllowed for somebody else's, and for another button."""
    if what == "button":
        raise NotAllowed("previewing.only_shown")
    version = await own_version(desk, coach, version_id)
    programme = read_programme(version.source)
    if what in ("page", "day") and not (number.isdecimal() and len(number) < 5):
        raise NotAllowed("checkin.not_yours")
    if what == "page":
        await desk.say(person, _days(desk, person, version, programme, int(number)))
    elif what == "day":
        await _show(desk, person, version, programme, int(number))
    elif what == "changed":
        await _changed(desk, person, version, programme)
    elif what == "rehearse":
        await rehearsals.ask(desk.session, version, person, desk.now)
        await desk.say(person, Message(desk.words(person).say("previewing.rehearsing", title=version.title)))
    else:
        raise NotAllowed("checkin.not_yours")


def _days(desk: Desk, person: Person, version: ProgrammeVersion, programme: Programme, page: int) -> Message:
    """A button for each day, four weeks a page."""
    count = len(programme.days)
    pages = -(-count // A_PAGE)
    page = min(max(page, 1), pages)
    first, last = (page - 1) * A_PAGE + 1, min(page * A_PAGE, count)
    days = [Button(str(n), f"preview:{version.id}:day:{n}") for n in range(first, last + 1)]
    rows: Rows = tuple(tuple(days[n : n + WIDE]) for n in range(0, len(days), WIDE))
    _ = desk.words(person).gettext
    back = [Button(_("Back"), f"preview:{version.id}:page:{page - 1}")] if page > 1 else []
    following = [Button(_("Next"), f"preview:{version.id}:page:{page + 1}")] if page < pages else []
    text = desk.words(person).say("previewing.which_day", title=version.title, all=count)
    return Message(text, (*rows, (*back, *following)) if back or following else rows)


async def _show(desk: Desk, person: Person, version: ProgrammeVersion, programme: Programme, number: int) -> None:
    """A day exactly as a client gets it; its buttons only say that this is a preview."""
    words = desk.words(person)
    if not 1 <= number <= len(programme.days):
        raise NotAllowed("checkin.not_yours")
    shown = showing.preview(words, programme, number)
    dead = tuple(tuple(Button(b.label, f"preview:{version.id}:button") for b in row) for row in shown.rows)
    _ = words.gettext
    near = [(_("Day {day}").format(day=n), n) for n in (number - 1, number + 1) if 1 <= n <= len(programme.days)]
    turning = tuple(Button(label, f"preview:{version.id}:day:{n}") for label, n in near)
    mark = words.say("previewing.mark", title=version.title, day=number)
    whole = replace(shown, text=joined(mark, shown.text), rows=(*dead, turning) if turning else dead)
    if shown.picture_digest is not None and whole.picture_digest is None:
        await desk.say(person, Message(mark))
        whole = replace(whole, text=shown.text)
    await desk.say(person, whole)


async def _changed(desk: Desk, person: Person, version: ProgrammeVersion, programme: Programme) -> None:
    """What changed against the version before, in words."""
    earlier = await before(desk, version)
    words = desk.words(person)
    if earlier is None:
        await desk.say(person, Message(words.say("previewing.first", title=version.title)))
        return
    lines = [Markup("{}").format(line[:250]) for line in changes(read_programme(earlier.source), programme)]
    more = max(0, len(lines) - SHOWN)
    text = words.say(
        "previewing.changed", title=version.title, digest=earlier.digest[:6], lines=lines[:SHOWN], more=more
    )
    while len(text) > 4000 and len(lines) > 1:
        lines, more = lines[: len(lines) - 1 if len(lines) <= SHOWN else SHOWN - 1], more + 1
        text = words.say("previewing.changed", title=version.title, digest=earlier.digest[:6], lines=lines, more=more)
    await desk.say(person, Message(text))
