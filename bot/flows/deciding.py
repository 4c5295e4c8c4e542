"""What a course's next date brings: the rules' decision with the coach's word and the course's calendar."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from sqlalchemy import select

from bot.flows import bodies, telling
from bot.flows.desk import Desk
from db import courses
from db.schema import Course, LedgerRow, Overrule
from plans import course as way
from plans.course import Decision, Overruling
from plans.fitting import things
from plans.ledger import Entry, RowKind
from plans.pace import Pace, pace_of
from plans.programme import Programme
from plans.rules import Settings, Verdict


async def ahead(desk: Desk, course: Course, programme: Programme, past: list[Entry], day: date) -> Decision:
    """What the next training date after `day` brings as things stand; nothing is applied."""
    overruling = await pending(desk, course)
    return way.decide(
        programme,
        courses.position_of(course),
        past,
        pace_on(programme, course, day).next_training(day),
        settings=settings_of(programme),
        usual=bodies.usual_of(course),
        pace=pace_on(programme, course, day),
        overruling=_as_overruling(overruling, await courses.last_answer_id(desk.session, course)),
        ask=False,
    )


def pace_on(programme: Programme, course: Course, day: date) -> Pace:
    """The calendar of a course; one that has no start yet would start on `day`."""
    chosen = tuple(course.weekdays) if course.weekdays else None
    pace = pace_of(programme, course.group_start or course.starts_on or day, chosen)
    return pace if course.pace is None else replace(pace, together=course.pace == "together")


def settings_of(programme: Programme) -> Settings:
    """A programme's cut-offs; it can only make the rules stricter."""
    asked = programme.settings
    return Settings(clean=asked.pain_clean, acceptable=asked.pain_acceptable, severe=asked.pain_severe)


async def pending(desk: Desk, course: Course) -> Overrule | None:
    """The coach's newest word that has not been applied yet."""
    return await desk.session.scalar(
        select(Overrule)
        .where(Overrule.course_id == course.id, Overrule.applied_on.is_(None))
        .order_by(Overrule.id.desc())
        .limit(1)
    )


def _as_overruling(found: Overrule | None, last_answer: int | None) -> Overruling | None:
    if found is None:
        return None
    verdict = {"repeat": Verdict.REPEAT, "ease": Verdict.EASE}.get(found.what)
    return Overruling(verdict, newer=(last_answer or 0) > (found.seen_answer_id or 0))


async def decide(desk: Desk, course: Course, programme: Programme, past: list[Entry], day: date) -> Decision:
    """Decides a date's row and uses up the coach's word, unless the row is still a question."""
    found = await pending(desk, course)
    overruling = _as_overruling(found, await courses.last_answer_id(desk.session, course))
    decision = way.decide(
        programme,
        courses.position_of(course),
        past,
        day,
        settings=settings_of(programme),
        usual=bodies.usual_of(course),
        pace=pace_on(programme, course, day),
        overruling=overruling,
    )
    if found is not None and decision.kind is not RowKind.ASKING:
        found.applied_on = day
        if overruling and overruling.newer and overruling.verdict and decision.reason != "coach":
            await telling.tell_of(desk, course, cause="newer-evidence", at_once=False)
    return decision


def lacking(programme: Programme, course: Course, row: LedgerRow) -> list[str] | None:
    """Names of things that a row's session needs and its client has said not to have."""
    if row.kind != RowKind.SESSION or row.day is None:
        return None
    return [t.name for t in things(programme.day(row.day)) if (course.at_hand or {}).get(t.name) is False] or None
