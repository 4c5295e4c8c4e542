"""What coaches say of themselves: their terms in every version, and what a client agrees to with one of them."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Coach, CoachTerms


async def terms_of(session: AsyncSession, coach: Coach) -> CoachTerms | None:
    """A coach's own terms as they stand; None where there are none."""
    found = await session.scalar(
        select(CoachTerms).where(CoachTerms.coach_id == coach.id).order_by(CoachTerms.number.desc()).limit(1)
    )
    return found if found is not None and found.text else None


async def set_terms(session: AsyncSession, coach: Coach, text: str, now: datetime) -> None:
    """A new version of a coach's terms; the same text again is none."""
    last = await session.scalar(
        select(CoachTerms).where(CoachTerms.coach_id == coach.id).order_by(CoachTerms.number.desc()).limit(1)
    )
    if (last.text if last is not None else "") != text:
        number = last.number + 1 if last is not None else 1
        session.add(CoachTerms(coach_id=coach.id, number=number, text=text, at=now))
        await session.flush()


def text_version(coach_id: int, number: int) -> str:
    """What a consent to a coach's terms is kept under.

    >>> text_version(3, 2)
    'coach-3-terms-2'
    """
    return f"coach-{coach_id}-terms-{number}"
