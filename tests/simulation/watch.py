"""Every message that arrives, judged at the moment it arrives."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import datetime, time
from typing import Any

from bot.clocks import Calendar
from plans import localtime
from tests.simulation.record import Record

Broken = Callable[[str, str], None]
"""Told of an invariant that does not hold, by its name, and of what was seen."""

NUDGES_FROM, NUDGES_TO = time(18, 59), time(21, 1)


@dataclass(frozen=True, slots=True)
class Request:
    """A request that left, and the outbox row that was being sent to that chat then."""

    chat: int
    method: str
    row: str
    """Of the outbox, with its key: numbers are given again after an erasure."""
    kind: str
    key: str
    attempt: int


class Watch:
    """Counts arrivals for each outbox row, and looks at whom they reach and when."""

    def __init__(self, record: Record, calendar: Calendar, broken: Broken, arrives: Callable[..., None]) -> None:
        self._record = record
        self._calendar = calendar
        self._broken = broken
        self._arrives = arrives
        self.arrivals: Counter[str] = Counter()
        self.lost: Counter[str] = Counter()
        self.as_new: Counter[str] = Counter()
        self.sessions: Counter[tuple[int, str]] = Counter()
        self.repeats: Counter[str] = Counter()

    def leaves(self, method: str, params: Mapping[str, Any]) -> Request | None:
        """Which row a request is for. Nothing leaves that is not marked as leaving."""
        if "chat_id" not in params:
            return None
        chat = int(params["chat_id"])
        row = self._record.one(
            "SELECT id, kind, key, attempts, made_at FROM outbox WHERE chat = ? AND state = 'sending'", chat
        )
        if row is None:
            self._broken("marked before it leaves", f"{method} to {chat} left, and no row is marked as sending")
            return None
        request = Request(
            chat, method, f"{row['id']} {row['key']} {row['made_at']}", row["kind"], row["key"], row["attempts"]
        )
        return request

    def left(self, request: Request | None) -> None:
        """When a request leaves."""
        if request is not None and request.kind == "nudge":
            zone = self._record.value("SELECT zone FROM person WHERE chat = ?", request.chat)
            self._not_at_night(request, zone or "UTC", self._calendar.now())

    def arrived(self, request: Request | None, params: Mapping[str, Any], result: Any, *, lost: bool) -> None:
        """Counts what arrived. Only a lost answer excuses a second time."""
        if request is None:
            return
        self.arrivals[request.row] += 1
        if request.kind == "alert":
            self._as_new(request, params)
        if self.arrivals[request.row] > 1:
            self._again(request, params)
        if lost:
            self.lost[request.row] += 1
        if request.key.startswith("session:"):
            one = (request.chat, request.key)
            self.sessions[one] += 1
            if self.sessions[one] > 1:
                self._broken("one session a date", f"{request.key} arrived {self.sessions[one]} times")
        if isinstance(result, Mapping):
            self._arrives(request.chat, result, request.method.startswith("edit"))

    def _again(self, request: Request, params: Mapping[str, Any]) -> None:
        self.repeats[request.kind] += 1
        if request.kind in ("session", "nudge", "digest"):
            self._broken("never sent twice", f"{request.key} arrived {self.arrivals[request.row]} times")

    def _as_new(self, request: Request, params: Mapping[str, Any]) -> None:
        """Of an alert that comes more than once, all but one say that it may have come before."""
        if "Sent again" not in str(params.get("text", params.get("caption", ""))):
            self.as_new[request.row] += 1
            if self.as_new[request.row] > 1:
                self._broken("a repeated alert says so", f"{request.key} came twice as if it were new")

    def _not_at_night(self, request: Request, zone: str, now: datetime) -> None:
        at = localtime.local(now, zone).time()
        if not NUDGES_FROM <= at <= NUDGES_TO:
            self._broken("no nudge in quiet hours", f"{request.key} leaves at {at:%H:%M} in {zone}")
