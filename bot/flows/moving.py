"""From one version of a programme to the next: the coach chooses whom to move, and it happens at a day's boundary."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from sqlalchemy import select

from bot.flows import deciding
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, own_version
from bot.words.message import Button, Message, Rows
from db import bodies, courses
from db.courses import CourseState
from db.schema import Coach, Course, Overrule, Person, ProgrammeVersion
from plans.course import Position, Word

A_PAGE = 10
"""Clients on one page."""


@dataclass(frozen=True, slots=True)
class Mover:
    """A client who could go over to a version, or is to go."""

    course: Course
    label: str
    goes: bool


async def at_the_boundary(desk: Desk, client: Person, course: Course) -> bool:
    """Takes a course to the version that its coach chose, as its next row is made; the client is told.

    The day in hand stays by its number, held to the new length. False when there is nothing to do.
    """
    if course.next_version_id is None or course.state != CourseState.ACTIVE:
        return False
    before = await desk.programme(course)
    course.version_id, course.next_version_id = course.next_version_id, None
    await desk.session.flush()
    programme = await desk.programme(course)
    bodies.bar_what_is_new(course, before, programme)
    count = len(programme.days)
    last = count if course.day > count else None
    if last is not None:
        await _hold(desk, course, last)
    text = desk.words(client).say("moving.moved_client", title=programme.title, last=last)
    await desk.say(client, Message(text))
    return True


async def _hold(desk: Desk, course: Course, length: int) -> None:
    """Leads to the last day of a shorter version; any answer of the client's that asks for more care acts on it."""
    courses.move(course, Position(length, course.level))
    if await deciding.pending(desk, course) is None:
        desk.session.add(Overrule(course_id=course.id, what=Word.MOVE, day=length, at=desk.now))
    await desk.session.flush()


async def movers(desk: Desk, version: ProgrammeVersion) -> list[Mover]:
    """Clients of other versions with the same title, by name; who waits for the coach is not among them."""
    found = await desk.session.execute(
        select(Course, Person.label)
        .join(Person, Person.id == Course.person_id)
        .join(ProgrammeVersion, ProgrammeVersion.id == Course.version_id)
        .where(
            Course.coach_id == version.coach_id,
            Course.state == CourseState.ACTIVE,
            Course.version_id != version.id,
            ProgrammeVersion.title == version.title,
        )
        .order_by(Person.label, Course.id)
    )
    return [Mover(course, label, course.next_version_id == version.id) for course, label in found]


async def offer(desk: Desk, person: Person, version: ProgrammeVersion) -> None:
    """After publishing: says who is on an earlier version, if anybody is."""
    found = await movers(desk, version)
    if found:
        await desk.say(person, _message(desk, person, version, found, 1))


async def tapped(desk: Desk, person: Person, coach: Coach, version_id: int, what: str, number: int) -> None:
    """Moves all, none, or one over, or shows another page, in the same message. Raises NotAllowed.

    `what` is all, none, one (`number`: the course) or page.
    """
    version = await own_version(desk, coach, version_id)
    if version.published_at is None:
        raise NotAllowed("checkin.not_yours")
    found = await movers(desk, version)
    page = 1
    if what in ("all", "none"):
        for mover in found:
            _let(mover.course, version, goes=what == "all")
    elif what == "one":
        place = next((n for n, mover in enumerate(found) if mover.course.id == number), None)
        if place is None:
            raise NotAllowed("checkin.not_yours")
        _let(found[place].course, version, goes=not found[place].goes)
        page = place // A_PAGE + 1
    elif what == "page":
        page = number
    else:
        raise NotAllowed("checkin.not_yours")
    await desk.session.flush()
    await desk.change_tapped(person, _message(desk, person, version, await movers(desk, version), page))


def _let(course: Course, version: ProgrammeVersion, *, goes: bool) -> None:
    if goes:
        course.next_version_id = version.id
    elif course.next_version_id == version.id:
        course.next_version_id = None


def _message(desk: Desk, person: Person, version: ProgrammeVersion, found: Sequence[Mover], page: int) -> Message:
    words = desk.words(person)
    _ = words.gettext
    pages = max(1, -(-len(found) // A_PAGE))
    page = min(max(page, 1), pages)
    shown = found[(page - 1) * A_PAGE : page * A_PAGE]
    going = sum(mover.goes for mover in found)
    text = words.say("moving.offer", title=version.title, count=len(found), going=going)
    stays, goes = _("stays"), _("goes over")
    each = tuple(
        (Button(f"{m.label[:20]}: {goes if m.goes else stays}", f"over:{version.id}:one:{m.course.id}"),) for m in shown
    )
    whole = (
        Button(_("Move all {count}").format(count=len(found)), f"over:{version.id}:all:0"),
        Button(_("Move none"), f"over:{version.id}:none:0"),
    )
    back = [Button(_("Back"), f"over:{version.id}:page:{page - 1}")] if page > 1 else []
    following = [Button(_("Next"), f"over:{version.id}:page:{page + 1}")] if page < pages else []
    turning: Rows = ((*back, *following),) if back or following else ()
    return Message(text, (whole, *each, *turning) if found else ())
