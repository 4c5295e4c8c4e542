"""Whether everything that came in is handled and everything that must leave has left."""

from __future__ import annotations

from sqlalchemy.ext.asyncio import AsyncSession

from db import inbox, outbox


async def open_work(session: AsyncSession) -> list[str]:
    """What hangs, in words: open updates, else messages that wait (in backoff too) or are on their way."""
    return await inbox.open_work(session) or await outbox.open_work(session)
