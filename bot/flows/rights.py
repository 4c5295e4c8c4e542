"""Who may do what: refused acts end here, with words for the person and nothing changed."""

from __future__ import annotations

from datetime import date

from bot.flows import times
from bot.flows.desk import Desk
from db import courses, helpers, people
from db.helpers import STAND_IN, Right
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


async def may(desk: Desk, person: Person, coach: Coach, right: Right) -> bool:
    """Whether somebody may do something for a coach: the coach, an assistant with that right, or the stand-in."""
    if coach.person_id == person.id:
        return True
    helper = await helpers.helper(desk.session, coach.id, person)
    if helper is None:
        return False
    return bool(getattr(helper, right)) or (right in STAND_IN and await stands_in(desk, person, coach))


async def stands_in(desk: Desk, person: Person, coach: Coach) -> bool:
    """Whether somebody stands in for a coach today."""
    away = await helpers.absence_on(desk.session, coach, await coachs_today(desk, coach))
    return away is not None and away.stand_in_id == person.id


async def coachs_today(desk: Desk, coach: Coach) -> date:
    """The date on a coach's clock."""
    return times.today(await desk.session.get_one(Person, coach.person_id), desk.now)


async def acting_for(desk: Desk, person: Person, right: Right) -> Coach:
    """The coach for whom somebody's command is: themselves, or the first one whom they help with that right.

    Raises NotAllowed for whoever has none.
    """
    coach = await people.coach_of(desk.session, person)
    if coach is not None:
        return coach
    helped = [coach for _helper, coach in await helpers.helped_by(desk.session, person)]
    for coach in helped:
        if await may(desk, person, coach, right):
            return coach
    raise NotAllowed("coaching.not_your_part" if helped else "coach.not_a_coach")


async def coach_named(desk: Desk, person: Person, coach_id: int, right: Right) -> Coach:
    """The coach of this number, for whom this person may do that. Raises NotAllowed for anybody else."""
    return await _if_allowed(desk, person, await desk.session.get(Coach, coach_id), right)


async def coach_of_course(desk: Desk, person: Person, course_id: int, right: Right) -> Coach:
    """The coach of a course, for whom this person may do that. Raises NotAllowed for anybody else."""
    course = await desk.session.get(Course, course_id)
    coach = await desk.session.get(Coach, course.coach_id) if course is not None else None
    return await _if_allowed(desk, person, coach, right)


async def coach_of_version(desk: Desk, person: Person, version_id: int, right: Right) -> Coach:
    """The coach of a programme version, for whom this person may do that. Raises NotAllowed for anybody else."""
    version = await desk.session.get(ProgrammeVersion, version_id)
    coach = await desk.session.get(Coach, version.coach_id) if version is not None else None
    return await _if_allowed(desk, person, coach, right)


async def _if_allowed(desk: Desk, person: Person, coach: Coach | None, right: Right) -> Coach:
    if coach is not None and await may(desk, person, coach, right):
        return coach
    own = await people.coach_of(desk.session, person)
    helped = await helpers.helped_by(desk.session, person)
    raise NotAllowed("checkin.not_yours" if own is not None or helped else "coach.not_a_coach")


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
