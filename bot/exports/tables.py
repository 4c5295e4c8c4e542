"""The record as tables (CSV): courses, days with what was said and decided, tests, alerts. One row each."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime

from bot.words.csv_file import ANSWERED, Cell, answered, csv_file
from db.record import Kept
from plans.measures import MEASURES

WHOSE = ("client_number", "client", "course", "programme", "version")
COURSES = (*WHOSE, "state", "paused", "day", "ease_level", "starts_on", "ended_at", "left_out")
DAYS = (
    *WHOSE,
    "date",
    "zone",
    "row",
    "day",
    "ease_level",
    "delivered",
    "without",
    "minutes",
    *ANSWERED,
    "answered_at",
    "own_words",
    "next_morning",
    "verdict",
    "reason",
    "votes",
)
TESTS = (*WHOSE, "at", "measure", "side", "value", "unit", "tries", "after_a_warm_up")
ALERTS = (*WHOSE, "cause", "red", "at_once", "events", "facts", "own_words", "decided", "opened_at", "told_at",
          "seen_at", "closed_at")  # fmt: skip


def tables(kept: Sequence[Kept]) -> dict[str, bytes]:
    """Each table by the name of its file."""
    return {
        "courses.csv": csv_file(COURSES, (_course(one) for one in kept)),
        "days.csv": csv_file(DAYS, (row for one in kept for row in _days(one))),
        "tests.csv": csv_file(
            TESTS,
            (
                (
                    *_whose(one),
                    _instant(test.at),
                    test.measure,
                    test.side,
                    test.value,
                    MEASURES[test.measure].unit,
                    "; ".join(f"{value:g}" for value in test.tries),
                    test.warm,
                )
                for one in kept
                for test in one.tests
            ),
        ),
        "alerts.csv": csv_file(ALERTS, (row for one in kept for row in _alerts(one))),
    }


def _whose(kept: Kept) -> tuple[Cell, ...]:
    return kept.person.id, kept.person.label, kept.course.id, kept.version.title, kept.version.digest[:6]


def _course(kept: Kept) -> tuple[Cell, ...]:
    course = kept.course
    begins = course.starts_on.isoformat() if course.starts_on else None
    left_out = "; ".join(course.barred or ())
    return (
        *_whose(kept),
        course.state,
        course.paused,
        course.day,
        course.level,
        begins,
        _instant(course.ended_at),
        left_out,
    )


def _days(kept: Kept) -> Iterator[tuple[Cell, ...]]:
    for row, entry, at in kept.rows:
        said, decision = entry.checkin, row.decision or {}
        words = [one.value for one in kept.words if one.ledger_id == row.id and one.field == "words"]
        votes = (f"{vote['rule']}: {vote['verdict'] or 'told'}" for vote in decision.get("votes") or ())
        yield (
            *_whose(kept),
            entry.on.isoformat(),
            row.zone,
            entry.kind,
            entry.day,
            entry.level,
            entry.delivered,
            "; ".join(row.lacks or ()),
            row.minutes,
            *answered(said),
            _instant(at),
            " | ".join(words),
            entry.morning,
            decision.get("verdict"),
            decision.get("reason"),
            "; ".join(votes),
        )


def _alerts(kept: Kept) -> Iterator[tuple[Cell, ...]]:
    for alert in kept.alerts:
        report = alert.report or {}
        yield (
            *_whose(kept),
            alert.cause,
            alert.red,
            alert.at_once,
            alert.events,
            "; ".join(f"{name} {value}" for name, value in alert.facts.items()),
            " | ".join(report.get("words") or ()),
            report.get("decided"),
            _instant(alert.opened_at),
            _instant(alert.told_at),
            _instant(alert.seen_at),
            _instant(alert.closed_at),
        )


def _instant(moment: datetime | None) -> str | None:
    return moment.isoformat() if moment is not None else None
