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
BY_ITSELF = ("session", "nudge")


@dataclass(frozen=True, slots=True)
class Request:
    """A request that left, and the outbox row that was being sent to that chat then."""

    chat: int
    method: str
    row: int
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
        self.arrivals: Counter[int] = Counter()
        self.lost: Counter[int] = Counter()
        self.sessions: Counter[tuple[int, str]] = Counter()
        self.repeats: Counter[str] = Counter()

    def leaves(self, process: str, method: str, params: Mapping[str, Any]) -> Request | None:
        """Which row a request is for. Nothing leaves that is not marked as leaving."""
        if "chat_id" not in params:
            return None
        chat = int(params["chat_id"])
        row = self._record.one("SELECT id, kind, key, attempts FROM outbox WHERE chat = ? AND state = 'sending'", chat)
        if row is None:
            self._broken("marked before it leaves", f"{method} to {chat} left, and no row is marked as sending")
            return None
        request = Request(chat, method, row["id"], row["kind"], row["key"], row["attempts"])
        self._to_whom(request)
        return request

    def arrived(self, request: Request | None, params: Mapping[str, Any], result: Any, *, lost: bool) -> None:
        """Counts what arrived. Only a lost answer excuses a second time."""
        if request is None:
            return
        self.arrivals[request.row] += 1
        if self.arrivals[request.row] > 1:
            self._again(request, params)
        if lost:
            self.lost[request.row] += 1
        if request.key.startswith("session:"):
            _kind, person, day = request.key.split(":")
            self.sessions[int(person), day] += 1
            if self.sessions[int(person), day] > 1:
                self._broken("one session a date", f"{request.key} arrived {self.sessions[int(person), day]} times")
        if isinstance(result, Mapping):
            self._arrives(request.chat, result, request.method.startswith("edit"))

    def answer_unread(self, row: int) -> None:
        """The process died before it read the answer for a row."""
        self.lost[row] += 1

    def _again(self, request: Request, params: Mapping[str, Any]) -> None:
        self.repeats[request.kind] += 1
        if request.kind in ("session", "nudge", "digest"):
            self._broken("never sent twice", f"{request.key} arrived {self.arrivals[request.row]} times")
        if request.kind == "alert":
            text = str(params.get("text", params.get("caption", "")))
            if "Sent again" not in text:
                self._broken("a repeated alert says so", f"{request.key}: {text[:80]!r}")

    def _to_whom(self, request: Request) -> None:
        if request.kind not in BY_ITSELF:
            return
        person = self._record.one("SELECT * FROM person WHERE chat = ?", request.chat)
        if person is None:
            self._broken("nothing after erasure", f"{request.key} leaves for nobody")
            return
        course = self._record.one(
            "SELECT state FROM course WHERE person_id = ? AND state IN ('active', 'waiting')", person["id"]
        )
        if course is None:
            self._broken("nothing after stop", f"{request.key} leaves, and its course is over")
        if person["unreachable_since"] is not None:
            self._broken("nothing after a block", f"{request.key} leaves, blocked since {person['unreachable_since']}")
        if request.kind == "session":
            self._not_while_waiting(request, person["id"])
        if request.kind == "nudge":
            self._not_at_night(request, person["zone"] or "UTC", self._calendar.now())

    def _not_while_waiting(self, request: Request, person: int) -> None:
        row = self._record.one(
            "SELECT l.kind, c.state FROM ledger l JOIN course c ON c.id = l.course_id WHERE l.person_id = ? "
            "AND l.local_date = ?",
            person,
            request.key.split(":")[2],
        )
        if row is not None and row["state"] == "waiting":
            self._broken("nothing handed out while waiting", f"{request.key} leaves, the course is waiting")

    def _not_at_night(self, request: Request, zone: str, now: datetime) -> None:
        at = localtime.local(now, zone).time()
        if not NUDGES_FROM <= at <= NUDGES_TO:
            self._broken("no nudge in quiet hours", f"{request.key} leaves at {at:%H:%M} in {zone}")
