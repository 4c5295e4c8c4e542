"""What the platform taught about how fast to send, kept over a restart."""

from __future__ import annotations

from dataclasses import dataclass

from sqlalchemy.ext.asyncio import AsyncSession

from db.schema import Note

_NAME = "budget"


@dataclass(frozen=True, slots=True)
class Pace:
    """Requests a second, and until when, by the machine clock, there are to be none."""

    per_second: int
    paused_until: float


async def keep(session: AsyncSession, pace: Pace) -> None:
    """Remember the pace for the next start."""
    await session.merge(Note(name=_NAME, value={"per_second": pace.per_second, "paused_until": pace.paused_until}))


async def kept(session: AsyncSession) -> Pace | None:
    """The pace at which an earlier process left off; None if the platform never complained."""
    note = await session.get(Note, _NAME)
    return None if note is None else Pace(note.value["per_second"], note.value["paused_until"])
