"""Some days away: nothing is sent, and on a date that was said the sessions come again by themselves."""

from __future__ import annotations

import re
from datetime import date, timedelta

from bot.flows import pauses, times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import Words
from bot.words.message import Button, Message, column
from db import courses
from db.courses import CourseState
from db.schema import Course, Person
from plans.glossing import in_english

LONGEST = 90
"""Days. Our own choice: after so long a course starts anew anyway."""


async def asked(desk: Desk, person: Person, wanted: str) -> None:
    """Asks for how long, or notes the days or the date that are named. Raises NotAllowed without a running course."""
    course = await courses.open_course(desk.session, person)
    if course is None or course.state != CourseState.ACTIVE:
        raise NotAllowed("day.not_away")
    if not wanted.strip():
        await desk.say(person, _how_long(desk.words(person), course.id))
        return
    today = times.today(person, desk.now)
    back_on = back(in_english(wanted, person.language), today)
    if back_on is None:
        raise NotAllowed("day.how_many_days")
    await pauses.pause(desk, person, course, back_on)


async def tapped(desk: Desk, person: Person, course: Course, wanted: str) -> None:
    """Notes the days of a button. Raises NotAllowed for a course that does not run, and for another number."""
    back_on = back(wanted, times.today(person, desk.now))
    if course.state != CourseState.ACTIVE or back_on is None:
        raise NotAllowed("day.not_away")
    await pauses.pause(desk, person, course, back_on)


OFFERED = (3, 7, 14)
"""Days that are offered to somebody who will be away."""


def _how_long(words: Words, course: int) -> Message:
    """How long somebody will be away."""
    _ = words.gettext
    labels = (_("3 days"), _("A week"), _("Two weeks"))
    days = (Button(label, f"away:{course}:{n}") for label, n in zip(labels, OFFERED, strict=True))
    return Message(words.say("day.how_long"), column(*days, Button(_("Until I come back"), f"pause:{course}")))


_DAYS = re.compile(r"(?:for )?(\d{1,3})(?: ?(days?|d|weeks?|w))?", re.IGNORECASE)
_DATE = re.compile(r"(?:until )?(\d{4}-\d{2}-\d{2})", re.IGNORECASE)


def back(wanted: str, today: date) -> date | None:
    """The date on which somebody goes on: days or weeks from today, or the date itself; None for anything else.

    >>> [back(words, date(2026, 3, 2)) for words in ("7", "1 week", "until 2026-03-09")]
    [datetime.date(2026, 3, 9), datetime.date(2026, 3, 9), datetime.date(2026, 3, 9)]
    >>> back("until 15 March", date(2026, 3, 2)) is None
    True
    """
    plain = " ".join(wanted.split())
    if days := _DAYS.fullmatch(plain):
        found = today + timedelta(days=int(days[1]) * (7 if (days[2] or "").startswith("w") else 1))
    elif day_named := _DATE.fullmatch(plain):
        try:
            found = date.fromisoformat(day_named[1])
        except ValueError:
            return None
    else:
        return None
    return found if 1 <= (found - today).days <= LONGEST else None
