"""Who may do what: refused acts end here, with words for the person and nothing changed."""

from __future__ import annotations

from bot.flows.desk import Desk
from db import courses, people
from db.schema import Coach, Course, Person, ProgrammeVersion


class NotAllowed(Exception):
    """An act that this person may not do, or no longer; `words` names the message that says so."""

    def __init__(self, words: str) -> None:
        super().__init__(words)
        self.words = words


async def coach_only(desk: Desk, person: Person) -> Coach:
    """The person's coach role. Raises NotAllowed for whoever has none."""
    coach = await people.coach_of(desk.session, person)
    if coach is None:
        raise NotAllowed("coach.not_a_coach")
    return coach


async def own_course(desk: Desk, coach: Coach, course_id: int) -> Course:
    """A course of this coach's. Raises NotAllowed for any other."""
    course = await courses.locked(desk.session, course_id)
    if course is None or course.coach_id != coach.id:
        raise NotAllowed("checkin.not_yours")
    return course


async def own_version(desk: Desk, coach: Coach, version_id: int) -> ProgrammeVersion:
    """A programme version of this coach's. Raises NotAllowed for any other."""
    version = await desk.session.get(ProgrammeVersion, version_id)
    if version is None or version.coach_id != coach.id:
        raise NotAllowed("checkin.not_yours")
    return version
