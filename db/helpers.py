"""Who stands by a coach: assistants with their rights, and the stand-in of an absence."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from enum import StrEnum

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Absence, Coach, Helper, Person


class Right(StrEnum):
    """What an assistant may do; the value is the column that says so."""

    SEE = "sees"
    """People and their pages."""
    RULE = "rules"
    """Decide for clients."""
    PUBLISH = "publishes"
    """Programmes and invitations."""
    HEAR = "hears"
    """Alerts that the coach has not seen."""


STAND_IN = frozenset({Right.SEE, Right.RULE, Right.HEAR})
"""What a stand-in may do while the coach is away."""


async def of_coach(session: AsyncSession, coach: Coach) -> Sequence[tuple[Helper, Person]]:
    """A coach's assistants, in the order in which they came."""
    query = select(Helper, Person).join(Person, Person.id == Helper.person_id).where(Helper.coach_id == coach.id)
    return [(helper, person) for helper, person in await session.execute(query.order_by(Helper.id))]


async def helped_by(session: AsyncSession, person: Person) -> Sequence[tuple[Helper, Coach]]:
    """The coaches whom a person helps."""
    query = select(Helper, Coach).join(Coach, Coach.id == Helper.coach_id).where(Helper.person_id == person.id)
    return [(helper, coach) for helper, coach in await session.execute(query.order_by(Helper.id))]


async def helper(session: AsyncSession, coach_id: int, person: Person) -> Helper | None:
    """What makes a person this coach's assistant."""
    return await session.scalar(select(Helper).where(Helper.coach_id == coach_id, Helper.person_id == person.id))


async def hearing(session: AsyncSession, coach: Coach) -> Sequence[Person]:
    """The assistants who receive alerts."""
    return [person for one, person in await of_coach(session, coach) if one.hears]


async def absence_on(session: AsyncSession, coach: Coach, day: date) -> Absence | None:
    """The absence that a date of the coach's clock lies in."""
    return await session.scalar(
        select(Absence)
        .where(Absence.coach_id == coach.id, Absence.first_on <= day, Absence.last_on >= day)
        .order_by(Absence.id.desc())
        .limit(1)
    )


async def absence_to_come(session: AsyncSession, coach: Coach, day: date) -> Absence | None:
    """The absence that lasts or lies ahead on a date of the coach's clock."""
    return await session.scalar(
        select(Absence)
        .where(Absence.coach_id == coach.id, Absence.last_on >= day)
        .order_by(Absence.first_on, Absence.id)
        .limit(1)
    )
