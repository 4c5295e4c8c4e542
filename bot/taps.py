"""What a tap on a button does: whose button it is, by the first word of its data."""

from __future__ import annotations

from collections.abc import Mapping

from bot.buttons import Tap
from bot.client_taps import OF_CLIENTS
from bot.coach_taps import OF_COACHES
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from db.schema import Person

TAPS: Mapping[str, Tap] = {**OF_CLIENTS, **OF_COACHES}

ONCE = frozenset(
    {"join", "screen", "begin", "zone", "time", "stop", "found", "well", "today", "pause", "short", "away"}
    | {"photo", "have", "mine", "liked", "listed", "draft", "revoke", "hand"}
)
"""Questions whose buttons go away with the answer."""


async def tap(desk: Desk, person: Person, data: str) -> str | None:
    """Leads a button's data to its use case; data that no button of ours has is refused like an old button's."""
    verb, *words = data.split(":")
    act = TAPS.get(verb)
    if act is None or not words:
        raise NotAllowed("checkin.not_yours")
    async with desk.session.begin_nested():
        return await act(desk, person, words)
