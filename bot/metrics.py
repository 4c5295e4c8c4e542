"""Figures for whoever watches, in Prometheus' text format: what happened here, and how the queues stand now.

Labels are kinds, outcomes, reasons and lanes; never a person, a chat or a coach.
"""

from __future__ import annotations

from datetime import datetime

from prometheus_client import CollectorRegistry, Counter, Gauge, Histogram, ProcessCollector, generate_latest
from sqlalchemy.exc import SQLAlchemyError

from bot.clocks import Calendar
from bot.wellbeing import IN_THE_DATABASE, troubles
from db import watched
from db.delivery import Failure, Kind, Reason, State
from db.engine import Database
from plans.localtime import data_not_before

CONTENT_TYPE = "text/plain; version=0.0.4; charset=utf-8"

SECONDS = (0.1, 0.25, 0.5, 1, 2, 5, 10, 30, 60, 300, 1800)
"""Bounds of the histograms."""


class Metrics:
    """Counts what one process does, and asks the database how things stand when somebody looks."""

    def __init__(self) -> None:
        self.registry = CollectorRegistry()
        self.ended = self._counter("messages", "Messages that came to an end, or wait for another try", "kind", "state")
        self.failed = self._counter("failed_tries", "Tries that failed, by reason", "reason")
        self.too_many = self._counter("too_many", "Answers of the platform that it wants fewer requests (429)")
        self.skipped = self._counter("tidied", "Messages skipped as late, or taken back from dead workers")
        self.handled = self._counter("updates", "Updates by what came of them: handled, again, failed", "outcome")
        self.alert_seconds = self._histogram("alert_seconds", "From the making of an alert to its arrival")
        self.tick_seconds = self._histogram("tick_seconds", "How long a tick took")
        self._waiting = self._gauge("waiting_messages", "Messages that wait to leave", "lane")
        self._oldest = self._gauge("oldest_message_seconds", "Age of the oldest message that waits to leave", "lane")
        self._in_hand = self._gauge("messages_in_hand", "Messages that workers have in hand")
        self._updates = self._gauge("open_updates", "Updates that are not handled yet")
        self._oldest_update = self._gauge("oldest_update_seconds", "Age of the oldest update that is not handled yet")
        self._lag = self._gauge("due_lag_seconds", "How long the first thing that is due has been due")
        self._unseen = self._gauge("unseen_alerts", "Alerts that nobody has seen yet")
        self._oldest_alert = self._gauge("oldest_unseen_alert_seconds", "Age of the oldest alert nobody has seen yet")
        self._backup = self._gauge("backup_age_seconds", "Age of the last backup; NaN when there was none")
        self._zone_data = self._gauge("zone_data_age_days", "Age of the zone data at most, in days")
        self._database_up = self._gauge("database_up", "1 while the database answers")
        self._trouble = self._gauge("trouble", "1 while something is not well, by what it is", "what")
        self.rate = self._gauge("rate_allowed", "Messages a second that the budget allows at present")
        ProcessCollector(registry=self.registry)

    def _counter(self, name: str, what: str, *labels: str) -> Counter:
        return Counter(f"easeward_{name}", what, labels, registry=self.registry)

    def _gauge(self, name: str, what: str, *labels: str) -> Gauge:
        return Gauge(f"easeward_{name}", what, labels, registry=self.registry)

    def _histogram(self, name: str, what: str) -> Histogram:
        return Histogram(f"easeward_{name}", what, buckets=SECONDS, registry=self.registry)

    def left(self, kind: Kind, state: State) -> None:
        """A message came to an end, or waits for another try."""
        self.ended.labels(str(kind), str(state)).inc()

    def tried(self, failure: Failure) -> None:
        """A try failed."""
        self.failed.labels(str(failure.reason)).inc()
        if failure.reason is Reason.TOO_MANY:
            self.too_many.inc()

    async def text(self, database: Database, calendar: Calendar, backup_hours: int) -> bytes:
        """All figures as they stand; without the database, those of this process."""
        now = calendar.now()
        try:
            await self._look(database, now, backup_hours)
            self._database_up.set(1)
        except (SQLAlchemyError, OSError):
            self._database_up.set(0)
        return generate_latest(self.registry)

    async def _look(self, database: Database, now: datetime, backup_hours: int) -> None:
        async with database.reading() as session:
            lanes = await watched.lanes(session)
            in_hand, updates = await watched.in_hand(session), await watched.updates(session)
            due, unseen = await watched.due_since(session, now), await watched.unseen_alerts(session)
            backup, found = await watched.last_backup(session), await troubles(session, now, backup_hours)
        for lane, kind in watched.LANE_NAMES.items():
            queue = lanes.get(lane, watched.Queue(0, None))
            self._waiting.labels(str(kind)).set(queue.count)
            self._oldest.labels(str(kind)).set(queue.age(now))
        self._in_hand.set(in_hand)
        self._updates.set(updates.count)
        self._oldest_update.set(updates.age(now))
        self._lag.set(watched.Queue(1, due).age(now))
        self._unseen.set(unseen.count)
        self._oldest_alert.set(unseen.age(now))
        self._backup.set(float("nan") if backup is None else (now - backup).total_seconds())
        self._zone_data.set((now.date() - data_not_before()).days)
        names = {trouble.name for trouble in found}
        for name in IN_THE_DATABASE:
            self._trouble.labels(name).set(name in names)
