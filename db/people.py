"""People and their agreement: who is behind a chat, and what they said yes to."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import Select, or_, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Coach, Consent, Person

HEARD_ANEW = timedelta(hours=1)
"""So often at most it is written down that somebody speaks. Our own choice."""


async def by_chat(session: AsyncSession, chat: int) -> Person | None:
    """The person of a chat, if this chat has spoken before."""
    return await session.scalar(select(Person).where(Person.chat == chat))


async def named(session: AsyncSession, name: str, *, among: Select[int] | None = None) -> Person:
    """The one person of a chat number or first name, among those of some ids where these are given.

    Raises LookupError when there is nobody, or more than one.
    """
    number = int(name) if name.lstrip("-").isdecimal() else None
    query = select(Person).where(or_(Person.chat == number, Person.label == name))
    if among is not None:
        query = query.where(Person.id.in_(among))
    found = (await session.scalars(query)).all()
    if len(found) != 1:
        how = "nobody" if not found else f"{len(found)} people"
        raise LookupError(f"{how} with the chat number or name {name!r}; a chat number is always one")
    return found[0]


@dataclass(frozen=True, slots=True)
class Spoken:
    """What the platform says of a chat when it speaks for the first time: a first name, a language, its units."""

    label: str
    language: str = "en"
    units: str = "metric"


async def known(session: AsyncSession, chat: int, spoken: Spoken, *, now: datetime) -> Person:
    """The person of a chat, made on the first contact; a chat that speaks is reachable again."""
    person = await by_chat(session, chat)
    if person is None:
        person = Person(chat=chat, label=spoken.label, language=spoken.language, units=spoken.units, created_at=now)
        session.add(person)
        await session.flush()
    person.unreachable_since = None
    if person.heard_at is None or now - person.heard_at >= HEARD_ANEW:
        person.heard_at = now
    return person


async def mark_unreachable(session: AsyncSession, chat: int, now: datetime) -> Person | None:
    """Notes that a chat refuses messages; returns the person when this is news."""
    person = await by_chat(session, chat)
    if person is None or person.unreachable_since is not None:
        return None
    person.unreachable_since = now
    return person


async def agree(session: AsyncSession, person: Person, *, text_version: str, now: datetime) -> None:
    """Stores an explicit agreement: which text, in which language, when."""
    session.add(Consent(person_id=person.id, text_version=text_version, language=person.language, given_at=now))


async def has_agreed(session: AsyncSession, person: Person, text_version: str) -> bool:
    """Whether the person's agreement to this text stands."""
    found = await session.scalar(
        select(Consent.id).where(
            Consent.person_id == person.id,
            Consent.text_version == text_version,
            Consent.withdrawn_at.is_(None),
        )
    )
    return found is not None


async def was_asked(session: AsyncSession, person: Person, text_version: str) -> bool:
    """Whether the person has ever said yes or no to this text."""
    found = select(Consent.id).where(Consent.person_id == person.id, Consent.text_version == text_version).limit(1)
    return await session.scalar(found) is not None


async def decline(session: AsyncSession, person: Person, *, text_version: str, now: datetime) -> None:
    """Remembers a no, as an agreement that does not stand, so that nobody asks again."""
    await withdraw(session, person, now, text_version=text_version)
    if not await was_asked(session, person, text_version):
        said = Consent(person_id=person.id, text_version=text_version, language=person.language, given_at=now)
        said.withdrawn_at = now
        session.add(said)


async def withdraw(session: AsyncSession, person: Person, now: datetime, *, text_version: str | None = None) -> None:
    """Takes back every standing agreement of a person, or that to one text."""
    standing = update(Consent).where(Consent.person_id == person.id, Consent.withdrawn_at.is_(None))
    if text_version is not None:
        standing = standing.where(Consent.text_version == text_version)
    await session.execute(standing.values(withdrawn_at=now))


async def coach_of(session: AsyncSession, person: Person) -> Coach | None:
    """The person's coach role, if they have one."""
    return await session.scalar(select(Coach).where(Coach.person_id == person.id))


async def make_coach(session: AsyncSession, person: Person, now: datetime) -> Coach:
    """Gives a person the coach role; giving it twice changes nothing."""
    coach = await coach_of(session, person)
    if coach is None:
        coach = Coach(person_id=person.id, created_at=now, digest_weekday=0)
        session.add(coach)
        await session.flush()
    return coach
