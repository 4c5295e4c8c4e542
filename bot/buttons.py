"""The data of a button: words with colons between, the first of which names what a tap does."""

from __future__ import annotations

from collections.abc import Awaitable, Callable

from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from db.schema import Person

Tap = Callable[[Desk, Person, list[str]], Awaitable[str | None]]
"""What a tap does, given the words after the first; returns what shows for a moment."""


def number(words: list[str], at: int) -> int:
    """The number in a button's data; data that was never ours may have none. Raises NotAllowed."""
    found = words[at] if at < len(words) else ""
    if not found.isascii() or not found.isdigit() or len(found) > 15:
        raise NotAllowed("checkin.not_yours")
    return int(found)


def word(words: list[str], at: int) -> str:
    """A word in a button's data; empty where it has none."""
    return words[at] if at < len(words) else ""
