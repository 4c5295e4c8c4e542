"""Links that open a door: a one-time link for a coach, an invitation for clients. Only hashes are stored."""

from __future__ import annotations

import hashlib
import secrets
from datetime import datetime, timedelta
from enum import StrEnum

from sqlalchemy import select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Coach, CoachLink, Invite, Person, ProgrammeVersion

COACH_LINK_DAYS = 7
INVITE_DAYS = 60


class LinkProblem(StrEnum):
    """Why a link does not open."""

    UNKNOWN = "unknown"
    USED = "used"
    EXPIRED = "expired"


def _hash(token: str) -> str:
    return hashlib.sha256(token.encode()).hexdigest()


def _token(prefix: str) -> str:
    """A start parameter of 128 random bits: letters, digits, - and _, at most 64 characters."""
    return prefix + secrets.token_urlsafe(16)


async def new_coach_link(session: AsyncSession, now: datetime) -> str:
    """A token by which one person becomes a coach, good for seven days."""
    token = _token("coach-")
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
    link = await session.scalar(select(CoachLink).where(CoachLink.token_hash == _hash(token)))
    if link is None:
        return LinkProblem.UNKNOWN
    return LinkProblem.USED if link.used_at is not None else LinkProblem.EXPIRED


async def new_invite(
    session: AsyncSession, coach: Coach, version: ProgrammeVersion, *, places: int, now: datetime
) -> str:
    """A token by which up to `places` clients join a published programme, good for sixty days."""
    token = _token("join-")
    session.add(
        Invite(
            coach_id=coach.id,
            version_id=version.id,
            token_hash=_hash(token),
            places=places,
            used=0,
            expires_at=now + timedelta(days=INVITE_DAYS),
        )
    )
    return token


async def find_invite(session: AsyncSession, token: str, now: datetime) -> Invite | LinkProblem:
    """The invitation behind a token, or why it does not open."""
    invite = await session.scalar(select(Invite).where(Invite.token_hash == _hash(token)))
    if invite is None:
        return LinkProblem.UNKNOWN
    if invite.expires_at <= now:
        return LinkProblem.EXPIRED
    return LinkProblem.USED if invite.used >= invite.places else invite


async def take_place(session: AsyncSession, invite_id: int) -> bool:
    """Takes one place of an invitation, in one statement; False when none is left."""
    taken = await session.execute(
        update(Invite)
        .where(Invite.id == invite_id, Invite.used < Invite.places)
        .values(used=Invite.used + 1)
        .returning(Invite.id)
    )
    return taken.first() is not None
