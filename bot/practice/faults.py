"""Trouble on demand: lost requests, lost answers, server errors, slow answers."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum

MESSAGES = "messages"
"""Stands for every method that sends or changes a message: the trouble is for whichever comes first."""
_MESSAGES = ("send", "editmessage")


class Trouble(StrEnum):
    """What goes wrong with a request."""

    LOSE_REQUEST = "lose-request"
    """The connection breaks before anything happens."""
    LOSE_ANSWER = "lose-answer"
    """The request takes effect, then the connection breaks."""
    SERVER_ERROR = "server-error"
    SLOW = "slow"
    TOO_MANY = "too-many"


@dataclass(slots=True)
class Fault:
    """A trouble for the next requests of a method. `seconds` is how slow, or how long to wait after too many."""

    what: Trouble
    times: int = 1
    seconds: float = 1.0


class Faults:
    """Which troubles are to come."""

    def __init__(self) -> None:
        self._coming: dict[str, list[Fault]] = {}

    def plan(self, method: str, fault: Fault) -> None:
        """Plans a trouble for the next requests of a method, after those planned before."""
        self._coming.setdefault(method.lower(), []).append(fault)

    def take(self, method: str) -> Fault | None:
        """The trouble of this request, used up once; one for the method goes before one for all messages."""
        found = self._taken(method.lower())
        speaks = method.lower().startswith(_MESSAGES) and method.lower() != "sendchataction"
        return self._taken(MESSAGES) if found is None and speaks else found

    def _taken(self, method: str) -> Fault | None:
        coming = self._coming.get(method, [])
        while coming and coming[0].times <= 0:
            coming.pop(0)
        if not coming:
            return None
        coming[0].times -= 1
        return coming[0]

    def left(self) -> Mapping[str, int]:
        """How many troubles are still to come, by method."""
        return {method: sum(f.times for f in faults) for method, faults in self._coming.items()}
