"""Telling everybody who waits that something may have changed."""

from __future__ import annotations

import asyncio
from collections.abc import Iterator
from contextlib import contextmanager


class News:
    """Wakes whoever listens."""

    def __init__(self) -> None:
        self._listeners: set[asyncio.Event] = set()

    def tell(self) -> None:
        """Sets every listener's event."""
        for event in self._listeners:
            event.set()

    @contextmanager
    def heard(self) -> Iterator[asyncio.Event]:
        """An event that is set by every telling while the block runs; whoever reads it clears it."""
        event = asyncio.Event()
        self._listeners.add(event)
        try:
            yield event
        finally:
            self._listeners.discard(event)


async def woken(event: asyncio.Event, seconds: float) -> bool:
    """Waits for an event and clears it; False when nothing came in time."""
    try:
        await asyncio.wait_for(event.wait(), seconds)
    except TimeoutError:
        return False
    event.clear()
    return True
