"""What a course's next date brings: the rules' decision with the coach's word and the course's calendar."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date

from sqlalchemy import select, update

from bot.flows import telling
from bot.flows.desk import Desk
from db import bodies, courses
from db.schema import Course, LedgerRow, Overrule
from plans import course as way
from plans.ahead import Coming
from plans.ahead import ahead as ahead_of
from plans.course import Decision, Overruling, Position, Word
from plans.fitting import things
from plans.ledger import Entry, RowKind
from plans.pace import Pace, pace_of
from plans.programme import Programme


async def ahead(desk: Desk, course: Course, programme: Programme, past: list[Entry], day: date) -> Decision:
    """What the next training date after `day` brings as things stand; nothing is applied."""
    return what_if(course, programme, past, day, await word_of(desk, course))


def what_if(
    course: Course, programme: Programme, past: list[Entry], day: date, overruling: Overruling | None
) -> Decision:
    """What the next training date after `day` would bring with a coach's word, or without one.

    `programme` is the version of that row; a shorter one holds the course to its last day, as bot/flows/moving.py does.
    """
    pace = pace_on(programme, course, day)
    position = courses.position_of(course)
    if course.next_version_id is not None and position.day > len(programme.days):
        position = Position(len(programme.days), position.level)
        overruling = overruling or Overruling(Word.MOVE, day=position.day)
    return way.decide(
        programme,
        position,
        _within(programme, past),
        pace.next_training(day),
        settings=programme.settings,
        usual=bodies.usual_of(course),
        pace=pace,
        overruling=overruling,
        ask=False,
    )


def plan_ahead(
    course: Course, programme: Programme, past: list[Entry], first: date, dates: int, overruling: Overruling | None
) -> list[Coming]:
    """What so many dates from `first` bring if every session goes well; nothing is applied."""
    found = ahead_of(
        programme,
        courses.position_of(course),
        _within(programme, past),
        first,
        dates,
        settings=programme.settings,
        usual=bodies.usual_of(course),
        pace=pace_on(programme, course, first),
        overruling=overruling,
    )
    return list(found)


def _within(programme: Programme, past: list[Entry]) -> list[Entry]:
    """The past with days of a longer version, which the course has left, held to this one's length."""
    most = len(programme.days)
    return [entry if entry.day is None or entry.day <= most else entry._replace(day=most) for entry in past]


def pace_on(programme: Programme, course: Course, day: date) -> Pace:
    """The calendar of a course; one that has no start yet would start on `day`."""
    chosen = tuple(course.weekdays) if course.weekdays else None
    pace = pace_of(programme, course.group_start or course.starts_on or day, chosen)
    return pace if course.pace is None else replace(pace, together=course.pace == "together")


async def pending(desk: Desk, course: Course) -> Overrule | None:
    """The coach's word that has not been applied yet; letting go on is none that could be taken back."""
    found = await _pending(desk, course)
    return found[0] if found and found[0].what != Word.GO_ON else None


async def word_of(desk: Desk, course: Course) -> Overruling | None:
    """What the coach has said for the next row, and whether the client has answered since; None for nothing."""
    return _as_overruling(await _pending(desk, course), await courses.last_answer_id(desk.session, course))


async def _pending(desk: Desk, course: Course) -> Sequence[Overrule]:
    """The coach's words that have not been applied yet, the newest first."""
    found = await desk.session.scalars(
        select(Overrule)
        .where(Overrule.course_id == course.id, Overrule.applied_on.is_(None), Overrule.withdrawn_at.is_(None))
        .order_by(Overrule.id.desc())
    )
    return found.all()


def _as_overruling(found: Sequence[Overrule], last_answer: int | None) -> Overruling | None:
    if not found:
        return None
    newest = found[0]
    newer = (last_answer or 0) > (newest.seen_answer_id or 0)
    return Overruling(Word(newest.what), newer, newest.day, let_go=any(one.what == Word.GO_ON for one in found))


async def decide(
    desk: Desk, course: Course, programme: Programme, past: list[Entry], day: date, *, heed: bool = True
) -> Decision:
    """Decides a date's row and uses up the coach's word, unless the row is still a question or has no training.

    Without `heed` the coach's word is left for the next row.
    """
    found = await _pending(desk, course) if heed else ()
    decision = way.decide(
        programme,
        courses.position_of(course),
        _within(programme, past),
        day,
        settings=programme.settings,
        usual=bodies.usual_of(course),
        pace=pace_on(programme, course, day),
        overruling=_as_overruling(found, await courses.last_answer_id(desk.session, course)),
    )
    if found and decision.kind not in (RowKind.ASKING, RowKind.OFF):
        ids = [one.id for one in found]
        await desk.session.execute(update(Overrule).where(Overrule.id.in_(ids)).values(applied_on=day))
        if decision.heeded is False:
            await telling.tell_of(desk, course, cause="newer-evidence", at_once=False)
    return decision


def lacking(programme: Programme, course: Course, row: LedgerRow) -> list[str] | None:
    """Names of things that a row's session needs and its client has said not to have."""
    if row.kind != RowKind.SESSION or row.day is None:
        return None
    return [t.name for t in things(programme.day(row.day)) if (course.at_hand or {}).get(t.name) is False] or None
