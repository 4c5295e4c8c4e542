"""Programme versions: stored as sent, published once, never changed."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Coach, Course, LedgerRow, ProgrammeVersion
from plans.programme import Programme


async def store(
    session: AsyncSession, coach: Coach, programme: Programme, source: str, now: datetime, *, upkeep: bool = False
) -> ProgrammeVersion:
    """Keeps a valid programme file; the same content again is the same version. `upkeep`: made for one client."""
    found = await session.scalar(
        select(ProgrammeVersion).where(
            ProgrammeVersion.coach_id == coach.id, ProgrammeVersion.digest == programme.digest
        )
    )
    if found is not None:
        return found
    version = ProgrammeVersion(
        coach_id=coach.id, digest=programme.digest, title=programme.title, source=source, stored_at=now
    )
    version.upkeep = upkeep
    session.add(version)
    await session.flush()
    return version


async def copied(session: AsyncSession, version: ProgrammeVersion, coach: Coach) -> ProgrammeVersion:
    """The same version among another coach's, where a client of it goes over to them."""
    query = select(ProgrammeVersion).where(ProgrammeVersion.coach_id == coach.id)
    found = await session.scalar(query.where(ProgrammeVersion.digest == version.digest))
    if found is None:
        found = ProgrammeVersion(
            coach_id=coach.id,
            digest=version.digest,
            title=version.title,
            source=version.source,
            stored_at=version.stored_at,
            published_at=version.published_at,
            upkeep=version.upkeep,
        )
        session.add(found)
        await session.flush()
    return found


async def take_along(session: AsyncSession, course: Course, coach: Coach) -> None:
    """Gives another coach every version that a course is of, or was of on one of its dates."""
    past = select(LedgerRow.version_id).where(LedgerRow.course_id == course.id, LedgerRow.version_id.is_not(None))
    for number in {course.version_id, *(await session.scalars(past.distinct()))}:
        new = await copied(session, await session.get_one(ProgrammeVersion, number), coach)
        rows = update(LedgerRow).where(LedgerRow.course_id == course.id, LedgerRow.version_id == number)
        await session.execute(rows.values(version_id=new.id))
        if course.version_id == number:
            course.version_id = new.id
    course.next_version_id = None
    await session.flush()


async def of_coach(session: AsyncSession, coach: Coach) -> Sequence[ProgrammeVersion]:
    """The versions of a coach's own files, newest first."""
    found = await session.scalars(
        select(ProgrammeVersion)
        .where(ProgrammeVersion.coach_id == coach.id, ProgrammeVersion.upkeep.is_(False))
        .order_by(ProgrammeVersion.id.desc())
    )
    return found.all()
