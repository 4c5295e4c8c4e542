"""What whoever watches the installation may know: how much waits and for how long. Numbers only, nobody's ids."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from sqlalchemy import func, literal_column, select
from sqlalchemy.ext.asyncio import AsyncSession

from db import due
from db.delivery import Kind
from db.once import insert_or_change
from db.schema import Alert, Inbox, Note, Outbox, Person

_BACKUP = "backup"
_WAITING = Outbox.state == literal_column("'waiting'")
_IN_HAND = Outbox.state.in_([literal_column("'leased'"), literal_column("'sending'")])
_OPEN_UPDATE = Inbox.state.in_([literal_column("'waiting'"), literal_column("'leased'")])
"""Words as in the partial indexes, so that only what is open is read."""

LATEST = 200
"""So many of the newest sent messages are looked at for when the last one left. Our own choice."""


@dataclass(frozen=True, slots=True)
class Queue:
    """What waits: how many, and since when the oldest; None when nothing waits."""

    count: int
    since: datetime | None

    def age(self, now: datetime) -> float:
        """Seconds that the oldest has waited; 0 when nothing waits."""
        return 0.0 if self.since is None else max(0.0, (now - self.since).total_seconds())


async def lanes(session: AsyncSession) -> dict[int, Queue]:
    """The messages that wait to leave, by lane."""
    oldest = select(Outbox.lane, func.count(), func.min(Outbox.id)).where(_WAITING).group_by(Outbox.lane)
    rows = (await session.execute(oldest)).all()
    made = await session.execute(select(Outbox.id, Outbox.made_at).where(Outbox.id.in_([id_ for _, _, id_ in rows])))
    since: dict[int, datetime] = {id_: at for id_, at in made}
    return {lane: Queue(count, since.get(id_)) for lane, count, id_ in rows}


async def in_hand(session: AsyncSession) -> int:
    """How many messages workers have in hand."""
    return await session.scalar(select(func.count()).select_from(Outbox).where(_IN_HAND)) or 0


async def updates(session: AsyncSession) -> Queue:
    """The updates that are not handled yet."""
    found = select(func.count(), func.min(Inbox.stored_at)).where(_OPEN_UPDATE)
    count, since = (await session.execute(found)).one()
    return Queue(count, since)


async def due_since(session: AsyncSession, now: datetime) -> datetime | None:
    """Since when the first thing has been due that has not been done; None when nothing is."""
    first = await due.next_instant(session)
    return first if first is not None and first <= now else None


async def unseen_alerts(session: AsyncSession) -> Queue:
    """The alerts that are called until somebody has seen them."""
    found = select(func.count(), func.min(Alert.opened_at)).where(
        Alert.closed_at.is_(None), Alert.at_once.is_(True), Alert.seen_at.is_(None)
    )
    count, since = (await session.execute(found)).one()
    return Queue(count, since)


async def last_left(session: AsyncSession) -> datetime | None:
    """When, as far as the newest messages tell, a message last left."""
    newest = select(Outbox.sent_at).where(Outbox.sent_at.is_not(None)).order_by(Outbox.id.desc()).limit(LATEST)
    found: datetime | None = await session.scalar(select(func.max(newest.subquery().c.sent_at)))
    return found


async def seconds_on_the_way(session: AsyncSession, id_: int) -> float | None:
    """Seconds from the making of a message to its arrival; None when it has not arrived."""
    found = (await session.execute(select(Outbox.made_at, Outbox.sent_at).where(Outbox.id == id_))).one_or_none()
    return None if found is None or found.sent_at is None else (found.sent_at - found.made_at).total_seconds()


async def note_backup(session: AsyncSession, now: datetime) -> None:
    """Remembers that a backup was made and compared."""
    await session.execute(insert_or_change(session, Note, "name", name=_BACKUP, value={"at": now.isoformat()}))


async def last_backup(session: AsyncSession) -> datetime | None:
    """When the last backup of this database was made; None when there was none."""
    note = await session.get(Note, _BACKUP)
    return None if note is None else datetime.fromisoformat(note.value["at"])


async def first_person_at(session: AsyncSession) -> datetime | None:
    """When the first person who is still here came."""
    return await session.scalar(select(Person.created_at).order_by(Person.id).limit(1))


LANE_NAMES = {0: Kind.ALERT, 1: Kind.ANSWER, 2: Kind.SESSION, 3: Kind.NUDGE, 4: Kind.DIGEST, 5: Kind.TIMER}
"""What a lane is mostly for: its name for whoever watches."""
