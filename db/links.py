"""Links: one-time ones for a coach, an assistant or a hand-over, invitations for clients. Only hashes are stored."""

from __future__ import annotations

import hashlib
import secrets
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from enum import StrEnum

from sqlalchemy import select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Coach, CoachLink, Course, Door, Guesses, Invite, InviteUse, Person, ProgrammeVersion

COACH_LINK_DAYS = 7
INVITE_DAYS = 60

COACH, DOOR, JOIN = "coach-", "door-", "join-"
"""How the tokens of the three kinds of link begin."""


class LinkProblem(StrEnum):
    """Why a link does not open."""

    UNKNOWN = "unknown"
    USED = "used"
    EXPIRED = "expired"
    REVOKED = "revoked"


def _hash(token: str) -> str:
    return hashlib.sha256(token.encode()).hexdigest()


def _token(prefix: str) -> str:
    """A start parameter of 128 random bits: letters, digits, - and _, at most 64 characters."""
    return prefix + secrets.token_urlsafe(16)


async def new_coach_link(session: AsyncSession, now: datetime) -> str:
    """A token by which one person becomes a coach, good for seven days."""
    token = _token(COACH)
    expires = now + timedelta(days=COACH_LINK_DAYS)
    session.add(CoachLink(token_hash=_hash(token), expires_at=expires))
    return token


async def use_coach_link(session: AsyncSession, token: str, person: Person, now: datetime) -> LinkProblem | None:
    """Uses up a coach link for a person, in one statement, so that it opens once."""
    used = await session.execute(
        update(CoachLink)
        .where(CoachLink.token_hash == _hash(token), CoachLink.used_at.is_(None), CoachLink.expires_at > now)
        .values(used_by=person.id, used_at=now)
        .returning(CoachLink.id)
    )
    if used.first() is not None:
        return None
    mine = select(CoachLink.id).where(CoachLink.token_hash == _hash(token), CoachLink.used_by == person.id)
    return LinkProblem.UNKNOWN if await session.scalar(mine) is None else LinkProblem.USED


# --- doors: assistants and hand-overs -----------------------------------------------------------------------------


async def new_door(session: AsyncSession, coach: Coach, now: datetime, *, course: Course | None = None) -> str:
    """A token that opens once, for seven days: it makes an assistant, or takes a course over."""
    token = _token(DOOR)
    expires = now + timedelta(days=COACH_LINK_DAYS)
    course_id = course.id if course is not None else None
    session.add(Door(coach_id=coach.id, course_id=course_id, token_hash=_hash(token), expires_at=expires))
    return token


async def find_door(session: AsyncSession, token: str, now: datetime) -> Door | None:
    """What a token would open; None for one that opens nothing, or no longer."""
    return await session.scalar(
        select(Door).where(Door.token_hash == _hash(token), Door.used_at.is_(None), Door.expires_at > now)
    )


async def use_door(session: AsyncSession, door: Door, person: Person, now: datetime) -> bool:
    """Uses a link up, in one statement; False when somebody was faster."""
    used = await session.execute(
        update(Door)
        .where(Door.id == door.id, Door.used_at.is_(None))
        .values(used_by=person.id, used_at=now)
        .returning(Door.id)
    )
    return used.first() is not None


# --- invitations --------------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Terms:
    """What an invitation says: places, the instant at which it closes, the common first date, and the pace."""

    places: int
    expires_at: datetime
    starts_on: date | None = None
    pace: str | None = None


async def new_invite(
    session: AsyncSession, coach: Coach, version: ProgrammeVersion, terms: Terms, now: datetime
) -> tuple[Invite, str]:
    """An invitation to a published programme, and its token."""
    token = _token(JOIN)
    invite = Invite(
        coach_id=coach.id,
        version_id=version.id,
        token_hash=_hash(token),
        places=terms.places,
        used=0,
        made_at=now,
        expires_at=terms.expires_at,
        starts_on=terms.starts_on,
        pace=terms.pace,
    )
    session.add(invite)
    await session.flush()
    return invite, token


async def open_invite(session: AsyncSession, token: str, person: Person, now: datetime) -> Invite | LinkProblem:
    """The invitation behind a token, noted as opened by a person; or why it does not open.

    Whoever has never opened it learns nothing: what is unknown, over, taken back or full is all the same to them.
    """
    invite = await session.scalar(select(Invite).where(Invite.token_hash == _hash(token)))
    if invite is None:
        return LinkProblem.UNKNOWN
    held = await use_of(session, invite.id, person)
    problem = _problem(invite, now)
    if problem is not None:
        return problem if held is not None else LinkProblem.UNKNOWN
    if held is None:
        session.add(InviteUse(invite_id=invite.id, person_id=person.id, opened_at=now))
        await session.flush()
    return invite


def _problem(invite: Invite, now: datetime) -> LinkProblem | None:
    if invite.revoked_at is not None:
        return LinkProblem.REVOKED
    if invite.expires_at <= now:
        return LinkProblem.EXPIRED
    return LinkProblem.USED if invite.used >= invite.places else None


async def use_of(session: AsyncSession, invite_id: int, person: Person) -> InviteUse | None:
    """What a person has done with an invitation."""
    return await session.scalar(
        select(InviteUse).where(InviteUse.invite_id == invite_id, InviteUse.person_id == person.id)
    )


async def take_place(session: AsyncSession, invite_id: int, person: Person, now: datetime) -> bool:
    """Takes one place of an invitation, in one statement; False when none is left or it is over."""
    taken = await session.execute(
        update(Invite)
        .where(
            Invite.id == invite_id, Invite.used < Invite.places, Invite.revoked_at.is_(None), Invite.expires_at > now
        )
        .values(used=Invite.used + 1)
        .returning(Invite.id)
    )
    if taken.first() is None:
        return False
    use = await use_of(session, invite_id, person)
    if use is not None:
        use.joined_at = now
    return True


async def open_invites(session: AsyncSession, coach: Coach, now: datetime) -> Sequence[tuple[Invite, ProgrammeVersion]]:
    """A coach's invitations that still open, the newest first."""
    found = await session.execute(
        select(Invite, ProgrammeVersion)
        .join(ProgrammeVersion, ProgrammeVersion.id == Invite.version_id)
        .where(
            Invite.coach_id == coach.id,
            Invite.revoked_at.is_(None),
            Invite.expires_at > now,
            Invite.used < Invite.places,
        )
        .order_by(Invite.id.desc())
    )
    return [(invite, version) for invite, version in found]


async def used_by(session: AsyncSession, invites: Sequence[Invite]) -> Mapping[int, Sequence[tuple[InviteUse, Person]]]:
    """By invitation: who has opened it, in that order."""
    ids = [invite.id for invite in invites]
    found = await session.execute(
        select(InviteUse, Person)
        .join(Person, Person.id == InviteUse.person_id)
        .where(InviteUse.invite_id.in_(ids))
        .order_by(InviteUse.id)
    )
    uses: dict[int, list[tuple[InviteUse, Person]]] = {number: [] for number in ids}
    for use, person in found:
        uses[use.invite_id].append((use, person))
    return uses


# --- guessing -----------------------------------------------------------------------------------------------------

GUESSES = 5
"""So many links that open nothing may a chat try in an hour; then none is looked at. Our own choice: a token has 128
bits, so this only keeps the database from work."""
GUESSING = timedelta(hours=1)


async def guesses_too_much(session: AsyncSession, chat: int, now: datetime) -> bool:
    """Whether a chat has tried too many links that open nothing."""
    found = await session.get(Guesses, chat)
    return found is not None and now - found.since < GUESSING and found.count >= GUESSES


async def note_guess(session: AsyncSession, chat: int, now: datetime) -> None:
    """Counts a link that opened nothing."""
    found = await session.get(Guesses, chat, with_for_update=True)
    if found is None:
        session.add(Guesses(chat=chat, since=now, count=1))
    elif now - found.since >= GUESSING:
        found.since, found.count = now, 1
    else:
        found.count += 1
    await session.flush()
