"""What must hold of the record after every step, and at the end of every day."""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Iterator
from datetime import date, timedelta
from typing import Any

from bot.clocks import Calendar, Machine
from plans import localtime
from tests.simulation.record import Record, instant, stored
from tests.simulation.watch import Broken

LONG = 600.0
"""Seconds after the end of a lease."""
REFERS = frozenset(("red-flag", "strain-like", "severe"))


class Checks:
    """The invariants over the record; each is told apart by its name."""

    def __init__(
        self, record: Record, calendar: Calendar, machine: Machine, broken: Broken, *, together: bool = False
    ) -> None:
        self._record = record
        self._calendar = calendar
        self._machine = machine
        self._broken = broken
        self._together = together
        """Whether days follow the group's dates, however far that is."""
        self._made_since: defaultdict[int, int] = defaultdict(lambda: 1)
        """By course: rows made or filled since it last moved forward."""
        self.forgotten: set[int] = set()
        """Updates of people who were erased: whether they were handled is forgotten too."""
        self.rows_made = 0
        self.alerts_due = 0

    # --- after every step ---------------------------------------------------------------------------------------------

    def step(self) -> None:
        """What the last step wrote."""
        said: list[Any] = []
        mornings: list[Any] = []
        for row in self._record.news():
            what = row["what"]
            if what in ("made", "filled"):
                self._made_since[row["subject"]] += 1
                self.rows_made += 1
            elif what == "moved":
                self._moved(row)
            elif what == "said":
                said.append(row)
            elif what == "morning" and row["b"] == "worse":
                mornings.append(row)
            elif what == "state" and (row["a"], row["b"]) == ("waiting", "active"):
                self._let_go(row["subject"])
            elif what == "forgot" and self._record.one("SELECT 1 FROM person WHERE chat = ?", row["a"]) is None:
                self.forgotten.add(row["subject"])
            elif what == "sending":
                self._to_whom(row["a"], row["b"], row["c"])
        for row in said:
            self._pain_is_told(row)
        for row in mornings:
            self._alert_of(row["subject"], ("morning-after",), f"a worse morning on row {row['a']}")

    def _let_go(self, course: int) -> None:
        """A coach who lets somebody go on has dealt with what was open."""
        kept = "SELECT cause FROM alert WHERE course_id = ? AND closed_at IS NULL AND at_once"
        since = "SELECT max(closed_at) FROM alert WHERE course_id = ?"
        if self._record.value(since, course) is None and self._record.one(kept, course) is not None:
            self._broken("only the coach lets go on", f"course {course} goes on, and its alerts are open")
        newest = self._record.value("SELECT max(opened_at) FROM alert WHERE course_id = ? AND at_once", course)
        closed = self._record.value(since, course)
        if (
            newest is not None
            and closed is not None
            and closed < newest
            and self._record.value("SELECT state FROM course WHERE id = ?", course) == "active"
        ):
            self._broken(
                "only the coach lets go on", f"course {course} goes on, and an alert is newer than the coach's word"
            )

    def _to_whom(self, key: str, kind: str, whose: str | None) -> None:
        """Whom a message goes to that nobody asked for just now, as it stood when it was marked as leaving."""
        if whose is None:
            self._broken("nothing after erasure", f"{key} leaves for nobody")
            return
        unreachable, state, replaced = json.loads(whose)
        if state is None:
            self._broken("nothing after stop", f"{key} leaves, and the course is over")
        elif state == "waiting":
            self._broken("nothing handed out while waiting", f"{key} leaves, and the course is waiting")
        if replaced:
            self._broken("one session a date", f"{key} leaves, and its row has another message since")
        if unreachable is not None:
            self._broken("nothing after a block", f"{key} leaves, blocked since {unreachable}")

    def _moved(self, row: Any) -> None:
        course, was, now, rests = row["subject"], row["a"], row["b"], row["c"]
        if now < was:
            return
        if not self._made_since[course]:
            self._broken("a verdict moves once", f"course {course} went from day {was} to {now} without a new row")
        self._made_since[course] = 0
        if self._together or self._was_moved(course, now):
            return
        if now > was + 1 + rests + 1:  # a rest day beside a day off is passed over
            self._broken("a verdict moves once", f"course {course} went from day {was} to {now}")

    def _was_moved(self, course: int, day: int) -> bool:
        """Whether the coach's word for the newest date of a course led there."""
        moves = "SELECT max(applied_on) FROM overrule WHERE course_id = ? AND day = ?"
        newest = self._record.value("SELECT max(local_date) FROM ledger WHERE course_id = ?", course)
        return newest is not None and bool(self._record.value(moves, course, day) == newest)

    def _pain_is_told(self, row: Any) -> None:
        """What an answer calls for anew, by the table of the rules, must stand in an alert."""
        before, now = (set(_causes(*json.loads(said))) if said else set() for said in (row["a"], row["b"]))
        fresh = sorted(now - before)
        if fresh:
            course = self._record.value("SELECT course_id FROM ledger WHERE id = ?", row["subject"])
            what = f"check-in of row {row['subject']}: {row['b']} after {row['a']}"
            self._alert_of(course, tuple(fresh), what, row["c"])
            self._is_stopped(course, REFERS.intersection(fresh), what)

    def _is_stopped(self, course: int, causes: frozenset[str], what: str) -> None:
        """What refers stops the course until the coach has dealt with it."""
        open_still = self._record.rows("SELECT cause FROM alert WHERE course_id = ? AND closed_at IS NULL", course)
        state = self._record.value("SELECT state FROM course WHERE id = ?", course)
        if state == "active" and causes & {row["cause"] for row in open_still}:
            self._broken("pain stops the course", f"{what}: course {course} goes on")

    def _alert_of(self, course: int, causes: tuple[str, ...], what: str, since: str = "") -> None:
        self.alerts_due += 1
        state = self._record.value("SELECT state FROM course WHERE id = ?", course)
        if state not in ("active", "waiting"):
            return
        marks = ", ".join("?" * len(causes))
        found = self._record.rows(
            f"SELECT id, at_once, told_at FROM alert WHERE course_id = ? AND cause IN ({marks}) "
            "AND (closed_at IS NULL OR closed_at >= ?)",
            course,
            *causes,
            since,
        )
        if not any(alert["at_once"] for alert in found):
            self._broken("pain is told", f"{what}: no alert at once of {causes} for course {course}")

    # --- once a day ---------------------------------------------------------------------------------------------------

    def day(self, given: int, waiting: set[int], first: int, *, steady: bool) -> None:
        """Updates up to number `given` were given to the bot, and those in `waiting` are not confirmed yet.

        `steady`: the program has lived for an hour, and the calendar did not jump.
        """
        self._updates(given, waiting, first)
        self._mornings(steady)
        self._messages(steady)
        self._alerts()
        self._trails()
        if steady:
            self._in_flight()

    def _in_flight(self) -> None:
        """No worker holds anything longer than its lease."""
        for row in self._record.rows(
            "SELECT key, state FROM outbox WHERE state IN ('leased', 'sending') AND lease_until < ?",
            self._machine.now() - LONG,
        ):
            self._broken("nobody sends forever", f"{row['key']} is {row['state']} since its lease ended")

    def _updates(self, given: int, waiting: set[int], first: int) -> None:
        kept = {row["update_id"]: row for row in self._record.rows("SELECT update_id, state FROM inbox")}
        effects = self._record.rows("SELECT update_id, count(*) AS n FROM sim_effect GROUP BY update_id HAVING n > 1")
        for row in effects:
            if row["update_id"] in self.forgotten:
                continue
            self._broken("each answer counts once", f"update {row['update_id']} had {row['n']} effects")
        for row in self._record.rows(
            "SELECT i.update_id, i.state, (SELECT count(*) FROM sim_effect e WHERE e.update_id = i.update_id) AS n "
            "FROM inbox i WHERE (i.state = 'handled') != (n = 1)"
        ):
            if row["update_id"] not in self.forgotten:
                what = f"update {row['update_id']} is {row['state']}, {row['n']} effects"
                self._broken("each answer counts once", what)
        for number in range(first, given + 1):
            if number not in waiting and number not in kept and number not in self.forgotten:
                self._broken("no answer is lost", f"update {number} was confirmed and is not kept")

    def end(self) -> None:
        """After a time without trouble everything is done."""
        for row in self._record.rows("SELECT key, state FROM outbox WHERE state IN ('leased', 'sending')"):
            self._broken("nobody sends forever", f"{row['key']} is {row['state']}")
        for row in self._record.rows("SELECT update_id, state FROM inbox WHERE state IN ('leased', 'waiting')"):
            self._broken("nobody handles forever", f"update {row['update_id']} is {row['state']}")

    def _mornings(self, steady: bool) -> None:
        """Whoever has a running course has a morning planned, and no date between two rows is missing."""
        for row in self._record.rows(
            "SELECT c.id, c.state, c.starts_on, p.id AS person, p.zone, d.at, "
            "(SELECT max(local_date) FROM ledger l WHERE l.course_id = c.id) AS last "
            "FROM course c JOIN person p ON p.id = c.person_id "
            "LEFT JOIN due d ON d.kind = 'morning' AND d.subject = p.id WHERE c.state IN ('active', 'waiting')"
        ):
            if row["at"] is None:
                self._broken("a morning is always planned", f"course {row['id']} ({row['state']}) has none")
                continue
            behind = self._calendar.now() - instant(row["at"])
            if steady and behind > timedelta(hours=1):
                self._broken("a morning is always planned", f"course {row['id']} is {behind} behind")
            ahead = instant(row["at"]) - self._calendar.now()
            last = date.fromisoformat(row["last"]) if row["last"] else None
            started = date.fromisoformat(row["starts_on"]) if row["starts_on"] else None
            today = localtime.local(self._calendar.now(), row["zone"] or "UTC").date()
            latest = max(day for day in (last, started, today) if day is not None)
            if ahead > timedelta(days=3) + (latest - today):
                self._broken("a morning is always planned", f"course {row['id']}: the next only in {ahead}")
        for row in self._record.rows(
            "SELECT a.course_id, a.local_date, a.zone, min(b.local_date) AS next FROM ledger a JOIN ledger b "
            "ON b.course_id = a.course_id AND b.local_date > a.local_date GROUP BY a.id "
            "HAVING julianday(next) - julianday(a.local_date) > 1.5"
        ):
            day = date.fromisoformat(row["local_date"])
            if localtime.date_exists(day + timedelta(days=1), row["zone"]):
                self._broken(
                    "each date has its row", f"course {row['course_id']}: none after {day}, then {row['next']}"
                )

    def _messages(self, steady: bool) -> None:
        """Each row that brings something by itself has a message that was sent, skipped by name, or is unknown."""
        late = self._calendar.now() - timedelta(hours=1)
        for row in (
            self._record.rows(
                "SELECT key, state, late_after FROM outbox WHERE state = 'waiting' AND late_after < ?", stored(late)
            )
            if steady
            else ()
        ):
            self._broken("nothing waits when it is late", f"{row['key']}, late since {row['late_after']}")
        for row in self._record.rows(
            "SELECT key, state FROM outbox WHERE state IN ('skipped', 'refused') AND why IS NULL"
        ):
            self._broken("a skip has a name", f"{row['key']} is {row['state']}")
        for row in self._record.rows(
            "SELECT l.id, l.kind, l.local_date, l.course_id FROM ledger l JOIN course c ON c.id = l.course_id "
            "WHERE l.kind IN ('session', 'measure', 'asking') AND l.outbox_id IS NULL AND NOT l.withheld "
            "AND c.state IN ('active', 'waiting')"
        ):
            self._broken("each due session has its message", f"row {row['id']} ({row['kind']} of {row['local_date']})")

    def _alerts(self) -> None:
        """Each alert that is to be told at once was called, or is on its way, unless its coach cannot be reached.

        One answer makes one call with all its reasons: one for another alert of the course, since, is one for it too.
        """
        for row in self._record.rows(
            "SELECT a.id, a.cause FROM alert a JOIN course c ON c.id = a.course_id JOIN coach k ON k.id = c.coach_id "
            "JOIN person p ON p.id = k.person_id WHERE a.at_once AND a.closed_at IS NULL "
            "AND p.unreachable_since IS NULL AND NOT EXISTS (SELECT 1 FROM alert_call t "
            "JOIN alert b ON b.id = t.alert_id JOIN outbox o ON o.id = t.outbox_id "
            "WHERE b.course_id = a.course_id AND o.made_at >= a.opened_at "
            "AND o.state IN ('sent', 'waiting', 'leased', 'sending'))"
        ):
            self._broken("an alert reaches the coach", f"alert {row['id']} ({row['cause']}) was not sent")
        for row in self._record.rows(
            "SELECT a.id, a.cause FROM alert a JOIN course c ON c.id = a.course_id WHERE NOT a.at_once "
            "AND a.told_at IS NULL AND a.closed_at IS NULL AND NOT EXISTS "
            "(SELECT 1 FROM due d WHERE d.kind = 'list' AND d.subject = c.coach_id)"
        ):
            self._broken("the morning list comes", f"alert {row['id']} ({row['cause']}) is on no list")

    def _trails(self) -> None:
        """A check-in is what its last answers say."""
        for field in ("completion", "pain", "kind", "flag_state"):
            for row in self._record.rows(
                f"SELECT c.ledger_id, c.{field} AS kept, (SELECT a.value FROM answer a WHERE a.ledger_id = c.ledger_id "
                f"AND a.field = ? ORDER BY a.id DESC LIMIT 1) AS said FROM checkin c "
                f"WHERE coalesce(CAST(kept AS TEXT), 'None') != coalesce(said, 'None')",
                field,
            ):
                self._broken(
                    "a check-in is its answers", f"row {row['ledger_id']}: {field} {row['kept']}, {row['said']}"
                )


def _causes(pain: int | None, kind: str | None, flag_state: str | None, place: str | None) -> Iterator[str]:
    """Which alerts an answer calls for, by the table of the rules (severity alone; the rules themselves not asked)."""
    if flag_state == "confirmed":
        yield "red-flag"
    if kind == "pop" or (kind == "sharp" and (pain or 0) >= 3):
        yield "strain-like"
    if pain is not None and pain >= 8:
        yield "severe"
    elif pain is not None and pain >= 6:
        yield "excessive"
