"""What an invitation says about a course: its first date and pace, whether it is open, and who agreed for a minor."""

from __future__ import annotations

from datetime import date

from bot.flows import times
from bot.flows.desk import Desk
from bot.words.message import Button, Message, column, joined
from db import helpers
from db.schema import Coach, Course, Invite, Person
from plans.programme import Programme


async def take_terms(desk: Desk, course: Course, invite: Invite) -> None:
    """Somebody has agreed: their course goes as the invitation says."""
    course.joined_by, course.pace = invite.id, invite.pace
    together = (invite.pace or (await desk.programme(course)).pace) == "together"
    course.group_start = invite.starts_on if together else None


async def fixed_start(desk: Desk, person: Person, course: Course) -> date | None:
    """The common first date, while it lies ahead on this person's clock; None where they may begin when they like."""
    invite = await desk.session.get(Invite, course.joined_by) if course.joined_by is not None else None
    starts = invite.starts_on if invite is not None else None
    return starts if starts is not None and starts > times.today(person, desk.now) else None


async def guardian_agreed(desk: Desk, course: Course) -> bool:
    """Whether somebody under 18 may go on: the installation lets them, and a guardian's consent is recorded."""
    if not desk.installation.under_18 or course.joined_by is None:
        return False
    invite = await desk.session.get(Invite, course.joined_by)
    return invite is not None and invite.guardian is not None and invite.guardian_on is not None


async def closed_until(desk: Desk, coach: Coach) -> date | None:
    """The last date on which a coach's invitations are closed: away, and nobody stands in."""
    person = await desk.session.get_one(Person, coach.person_id)
    away = await helpers.absence_on(desk.session, coach, times.today(person, desk.now))
    return away.last_on if away is not None and away.stand_in_id is None else None


def waits(desk: Desk, person: Person, coach: Person, programme: Programme) -> Message:
    """The coach's word comes first; the first test may be taken meanwhile."""
    words = desk.words(person)
    text = words.say("joining.waits", coach=coach.label)
    if not programme.measures:
        return Message(text)
    test = Button(words.gettext("Take the first test"), f"measure:{programme.measures[0]}:how")
    return Message(joined(text, words.say("inviting.baseline")), column(test))
