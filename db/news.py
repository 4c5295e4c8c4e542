"""Who is woken by what was committed: a topic's listeners hear of it, whichever process wrote."""

from __future__ import annotations

import asyncio
from collections.abc import Iterable


class News:
    """Topics and the events that wait for them. It carries no content: whoever wakes looks for themselves."""

    def __init__(self) -> None:
        self._listeners: dict[str, list[asyncio.Event]] = {}

    def listen(self, topic: str, event: asyncio.Event) -> None:
        """Set `event` whenever `topic` was announced and committed."""
        self._listeners.setdefault(topic, []).append(event)

    def unlisten(self, topic: str, event: asyncio.Event) -> None:
        """Stop setting `event` for `topic`."""
        self._listeners[topic].remove(event)

    def spread(self, topics: Iterable[str]) -> None:
        """Wake everyone who listens to one of `topics`."""
        for topic in topics:
            for event in self._listeners.get(topic, ()):
                event.set()

    def wake_all(self) -> None:
        """Wake everyone, when it is not known what was missed."""
        self.spread(list(self._listeners))
