"""Whether the installation is well: what is looked for, and what to do about each. For `doctor`, ping and figures."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy.ext.asyncio import AsyncSession

from db import watched

LATE = timedelta(minutes=10)
"""What should happen at once and has waited for so long says that something is stuck. Our own choice."""

URGENT = (0, 1)
"""The lanes of alerts and answers: nothing may wait there for long."""
SLOW = (2, 3, 4)
"""The lanes of sessions, nudges and digests: many may wait, but they have to move."""

LOOKED_FOR: Mapping[str, str] = {
    "ticks": "The bot has stopped looking for what is due. Restart the process; its log says which error came last.",
    "due": "Mornings and calls are not made. See that `easeward serve` runs, and what its log says of ticks.",
    "alerts-wait": "Coaches do not get their alerts. See that a process sends, and that the platform answers.",
    "sending": "Messages wait and none leaves. See that a process sends, and that the platform answers.",
    "backup": "A lost disk would lose everything since then. Run `easeward backup FILE` each day.",
    "clock": "The host's clock is wrong, so that nothing is sent by itself. Set it, and let it follow a time server.",
    "database": "The database does not answer. See that it runs, that its disk has room, and its address.",
}
"""By name what may be wrong, what it means and what to do."""


IN_THE_DATABASE = ("due", "alerts-wait", "sending", "backup")
"""Those that the database shows; the others are seen by a process that runs."""


@dataclass(frozen=True, slots=True)
class Trouble:
    """Something that is not well, by its name in `LOOKED_FOR`, and what was found."""

    name: str
    found: str

    @property
    def todo(self) -> str:
        """What it means and what to do."""
        return LOOKED_FOR[self.name]


async def troubles(session: AsyncSession, now: datetime, backup_hours: int) -> list[Trouble]:
    """What the database shows to be stuck or missing; some small questions whatever its size."""
    looked = (await _due(session, now), *await _messages(session, now), await _backup(session, now, backup_hours))
    return [trouble for trouble in looked if trouble is not None]


async def _due(session: AsyncSession, now: datetime) -> Trouble | None:
    since = await watched.due_since(session, now)
    if since is None or now - since < LATE:
        return None
    return Trouble("due", f"something has been due for {_long(now - since)}")


async def _messages(session: AsyncSession, now: datetime) -> list[Trouble | None]:
    lanes = await watched.lanes(session)

    def oldest(of: tuple[int, ...]) -> timedelta:
        return timedelta(seconds=max((lanes[lane].age(now) for lane in of if lane in lanes), default=0.0))

    urgent, slow = oldest(URGENT), oldest(SLOW)
    found: list[Trouble | None] = []
    if urgent >= LATE:
        found.append(Trouble("alerts-wait", f"an alert or answer has waited for {_long(urgent)}"))
    if slow >= LATE:
        last = await watched.last_left(session)
        if last is None or now - last >= LATE:
            found.append(Trouble("sending", f"messages have waited for {_long(slow)} and none has left meanwhile"))
    return found


async def _backup(session: AsyncSession, now: datetime, hours: int) -> Trouble | None:
    if hours == 0:
        return None
    last = await watched.last_backup(session)
    since = last or await watched.first_person_at(session)
    if since is None or now - since < timedelta(hours=hours):
        return None
    return Trouble("backup", f"the last one was made {_long(now - since)} ago" if last else "none was ever made")


def _long(span: timedelta) -> str:
    minutes = int(span.total_seconds() // 60)
    if minutes < 120:
        return f"{minutes} minutes"
    return f"{minutes // 60} hours" if minutes < 72 * 60 else f"{minutes // 1440} days"
