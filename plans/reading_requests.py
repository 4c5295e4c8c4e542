"""What a client asks for, and their answer to "how is it now?"."""

from __future__ import annotations

from plans.checkin import Morning
from plans.scopes import Said

_ORDER = ("quit-programme", "health-changed", "change-time", "pause", "lighter", "shorter", "today")


def request_in(reply: Said) -> str | None:
    """The request of a reply, or None. "Stop" and "help" only count when they are the whole thought."""
    for concept in _ORDER:
        if reply.at(concept):
            return concept
    for concept in ("stop", "help"):
        plainly = any(len(reply.units[i].text.split()) > 2 or i == 0 for i in reply.at(concept))
        if reply.at(concept) and (len(reply.units) <= 4 or (concept == "stop" and plainly)):
            return concept
    if _asks(reply):
        return "question"
    return "thanks" if reply.at("thanks") else None


def _asks(reply: Said) -> bool:
    return (
        bool(reply.at("question"))
        or reply.concept(0) == "asks"
        or (reply.units[:1] != () and reply.units[0].text == "should i")
    )


def morning_in(reply: Said) -> Morning | None:
    """Settled, the same or worse; "a bit better" and "still" are the same."""
    if any(not reply.negated[i] for i in reply.at("worse", "hurts-more")):
        return Morning.WORSE
    if reply.at("same", "bit-better") or (reply.at("lasts") and reply.at("sore", "pain", "dull")):
        return Morning.SAME
    return Morning.SETTLED if reply.at("settled", "gone") and not reply.at("lasts") else None
