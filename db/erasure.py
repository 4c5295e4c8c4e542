"""Forgetting a person for good, also when an older copy of the database comes back."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import ColumnElement, delete, or_, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db import record
from db.courses import CourseState
from db.due import DueKind
from db.schema import (
    Absence,
    Alert,
    AlertCall,
    Answer,
    ChatPace,
    CheckInRow,
    Coach,
    CoachLink,
    CoachNote,
    CoachTerms,
    Consent,
    Course,
    Door,
    Due,
    Erasure,
    GroupLetter,
    GroupMessage,
    Guesses,
    HandOver,
    Helper,
    Inbox,
    Invite,
    InviteUse,
    LedgerRow,
    MeasureRow,
    Outbox,
    Overrule,
    Person,
    PhotoRow,
    ProgrammeVersion,
    Recording,
    Rehearsal,
)

RUNNING = (CourseState.ACTIVE, CourseState.WAITING)


class StillCoach(ValueError):
    """Somebody whose clients' courses are running cannot be erased before these are handed over."""


async def erase(session: AsyncSession, person: Person, now: datetime, *, but_update: int | None = None) -> None:
    """Deletes everything that is known of a person and keeps only that they were erased.

    `but_update` is the update that asked for it, which is still being handled. Of a coach the courses that are over or
    have not begun go too, with what their clients said in them. Raises `StillCoach`.
    """
    coach = await session.scalar(select(Coach.id).where(Coach.person_id == person.id))
    running = select(Course.id).where(
        Course.coach_id == coach, Course.state.in_(RUNNING), Course.person_id != person.id
    )
    if coach is not None and await session.scalar(running.limit(1)):
        raise StillCoach("a coach with clients is not erased: hand them over first")
    await note(session, person.id, person.created_at, now)
    await _forget_records(session, person)
    await _forget_courses(session, Course.person_id == person.id)
    if coach is not None:
        await _forget_courses(session, Course.coach_id == coach)
    for table, whose in (
        (Due, Due.kind.in_([DueKind.MORNING, DueKind.THINGS, DueKind.RETEST]) & (Due.subject == person.id)),
        (AlertCall, AlertCall.person_id == person.id),
        (InviteUse, InviteUse.person_id == person.id),
        (Guesses, Guesses.chat == person.chat),
        (Helper, Helper.person_id == person.id),
        (Rehearsal, Rehearsal.person_id == person.id),
        (Answer, Answer.person_id == person.id),
        (Consent, Consent.person_id == person.id),
        (Inbox, (Inbox.chat == person.chat) & (Inbox.update_id != (but_update or 0))),
        (ChatPace, ChatPace.chat == person.chat),
    ):
        await session.execute(delete(table).where(whose))
    for named, column in (
        (CoachLink, CoachLink.used_by),
        (Door, Door.used_by),
        (Alert, Alert.seen_by),
        (Absence, Absence.stand_in_id),
    ):
        await session.execute(update(named).where(column == person.id).values({column: None}))
    await _forget_messages(session, Outbox.chat == person.chat)
    if coach is not None:
        copies = GroupLetter.message_id.in_(select(GroupMessage.id).where(GroupMessage.coach_id == coach))
        await session.execute(delete(GroupLetter).where(copies))
        for owned in (Recording, GroupMessage):
            await session.execute(delete(owned).where(owned.coach_id == coach))
        await _forget_coach(session, coach)
        await session.execute(delete(Due).where(Due.kind.in_([DueKind.DIGEST, DueKind.LIST]), Due.subject == coach))
        await session.execute(delete(Coach).where(Coach.id == coach))
    await session.execute(delete(Person).where(Person.id == person.id))


async def _forget_records(session: AsyncSession, person: Person) -> None:
    """Files of a coach's that the person's record may be in, as long as they have not left."""
    whose = select(Course.coach_id).where(Course.person_id == person.id).distinct()
    for coach in await session.scalars(select(Coach).where(Coach.id.in_(whose))):
        on_its_way = Outbox.key.startswith(record.key_of(coach), autoescape=True) & (Outbox.state != "sent")
        await _forget_messages(session, on_its_way)


async def _forget_courses(session: AsyncSession, whose: ColumnElement[bool]) -> None:
    """Courses with everything that was said and decided in them."""
    courses = select(Course.id).where(whose)
    rows = select(LedgerRow.id).where(LedgerRow.course_id.in_(courses))
    letters = select(GroupLetter.id).where(GroupLetter.course_id.in_(courses))
    alerts = select(Alert.id).where(Alert.course_id.in_(courses))
    answers = select(Answer.id).where(Answer.ledger_id.in_(rows))
    await session.execute(update(Course).where(Course.after_id.in_(courses)).values(after_id=None))
    await session.execute(update(Overrule).where(Overrule.seen_answer_id.in_(answers)).values(seen_answer_id=None))
    for table, of_courses in (
        (Due, (Due.kind == DueKind.NUDGE) & Due.subject.in_(rows)),
        (Due, (Due.kind == DueKind.CALL) & Due.subject.in_(alerts)),
        (Due, (Due.kind == DueKind.LETTER) & Due.subject.in_(letters)),
        (AlertCall, AlertCall.alert_id.in_(alerts)),
        (Alert, Alert.course_id.in_(courses)),
        (HandOver, HandOver.course_id.in_(courses)),
        (Door, Door.course_id.in_(courses)),
        (Overrule, Overrule.course_id.in_(courses)),
        (CoachNote, CoachNote.course_id.in_(courses)),
        (GroupLetter, GroupLetter.course_id.in_(courses)),
        (MeasureRow, MeasureRow.course_id.in_(courses)),
        (PhotoRow, PhotoRow.course_id.in_(courses)),
        (CheckInRow, CheckInRow.ledger_id.in_(rows)),
        (Answer, Answer.ledger_id.in_(rows)),
        (LedgerRow, LedgerRow.course_id.in_(courses)),
        (Course, Course.id.in_(courses)),
    ):
        await session.execute(delete(table).where(of_courses))


async def _forget_coach(session: AsyncSession, coach: int) -> None:
    """What is a coach's own; a course that went over to another coach loses the invitation that it came by."""
    invites = select(Invite.id).where(Invite.coach_id == coach)
    away = select(Absence.id).where(Absence.coach_id == coach)
    await session.execute(update(Course).where(Course.joined_by.in_(invites)).values(joined_by=None))
    await session.execute(delete(InviteUse).where(InviteUse.invite_id.in_(invites)))
    await session.execute(delete(Due).where(Due.kind == DueKind.ABSENCE, Due.subject.in_(away)))
    await session.execute(delete(HandOver).where(or_(HandOver.from_coach_id == coach, HandOver.to_coach_id == coach)))
    for owned in (Invite, Door, Absence, Helper, CoachTerms, ProgrammeVersion):
        await session.execute(delete(owned).where(owned.coach_id == coach))


async def forget_traces(session: AsyncSession, chat: int) -> bool:
    """Deletes what is left of messages to and from the chat of somebody who was erased.

    False while something of it is still on its way. A chat that has spoken again keeps all.
    """
    if await session.scalar(select(Person.id).where(Person.chat == chat)) is not None:
        return True
    on_its_way = select(Outbox.id).where(Outbox.chat == chat, Outbox.state.in_(["waiting", "leased", "sending"]))
    unhandled = select(Inbox.update_id).where(Inbox.chat == chat, Inbox.state.in_(["waiting", "leased"]))
    if await session.scalar(on_its_way.limit(1)) or await session.scalar(unhandled.limit(1)):
        return False
    await _forget_messages(session, Outbox.chat == chat)
    await session.execute(delete(Inbox).where(Inbox.chat == chat))
    await session.execute(delete(ChatPace).where(ChatPace.chat == chat))
    return True


async def _forget_messages(session: AsyncSession, whose: ColumnElement[bool]) -> None:
    mine = select(Outbox.id).where(whose)
    await session.execute(update(Outbox).where(or_(whose, Outbox.edits.in_(mine))).values(edits=None))
    await session.execute(delete(Outbox).where(whose))


async def note(session: AsyncSession, person_id: int, made_at: datetime, now: datetime) -> None:
    """Remembers that a person was erased."""
    session.add(Erasure(person_id=person_id, person_made_at=made_at, erased_at=now))
    await session.flush()


async def erased(session: AsyncSession) -> list[tuple[int, datetime, datetime]]:
    """Who was erased and when, as (number, made at, erased at)."""
    rows = await session.execute(
        select(Erasure.person_id, Erasure.person_made_at, Erasure.erased_at).order_by(Erasure.id)
    )
    return [(person, made_at, at) for person, made_at, at in rows]


async def erase_again(session: AsyncSession, known: Sequence[tuple[int, datetime, datetime]]) -> tuple[int, int]:
    """Erases again whoever an older copy has brought back; returns how many people that were.

    The second number is of coaches who stay, because that copy has clients of theirs who had been handed over since.
    """
    already = {(person, made_at) for person, made_at, _at in await erased(session)}
    count = stay = 0
    for person_id, made_at, at in known:
        if (person_id, made_at) in already:
            continue
        person = await session.get(Person, person_id)
        if person is not None and person.created_at == made_at:
            try:
                await erase(session, person, at)
                count += 1
            except StillCoach:
                stay += 1
        else:
            await note(session, person_id, made_at, at)
    return count, stay
