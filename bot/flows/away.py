"""Some days away: nothing is sent, and on a date that was said the sessions come again by themselves."""

from __future__ import annotations

from datetime import date, timedelta

from bot.flows import day, showing, times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from db import courses
from db.courses import CourseState
from db.schema import Course, Person

LONGEST = 90
"""Days. Our own choice: after so long a course starts anew anyway."""


async def asked(desk: Desk, person: Person, wanted: str) -> None:
    """Asks for how long, or notes the days or the date that are named. Raises NotAllowed without a running course."""
    course = await courses.open_course(desk.session, person)
    if course is None or course.state != CourseState.ACTIVE:
        raise NotAllowed("day.not_away")
    if not wanted.strip():
        await desk.say(person, showing.how_long(desk.words(person), course.id))
        return
    today = times.today(person, desk.now)
    back_on = back(wanted, today)
    if back_on is None:
        raise NotAllowed("day.how_many_days")
    await day.pause(desk, person, course, back_on)


async def tapped(desk: Desk, person: Person, course: Course, wanted: str) -> None:
    """Notes the days of a button. Raises NotAllowed for a course that does not run, and for another number."""
    back_on = back(wanted, times.today(person, desk.now))
    if course.state != CourseState.ACTIVE or back_on is None:
        raise NotAllowed("day.not_away")
    await day.pause(desk, person, course, back_on)


def back(wanted: str, today: date) -> date | None:
    """The date on which somebody goes on: "10" days from today, or the date itself; None for anything else.

    >>> back("until 2026-03-09", date(2026, 3, 2)), back("7 days", date(2026, 3, 2))
    (datetime.date(2026, 3, 9), datetime.date(2026, 3, 9))
    """
    for word in wanted.split():
        if word.isascii() and word.isdigit() and len(word) <= 3:
            found = today + timedelta(days=int(word))
        else:
            try:
                found = date.fromisoformat(word)
            except ValueError:
                continue
        return found if 1 <= (found - today).days <= LONGEST else None
    return None
