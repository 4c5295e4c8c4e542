"""The ledger as the rules see it: one row a local date, and what can be read from the rows so far."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta
from enum import StrEnum

from plans.checkin import CheckIn, Completion, FlagState, Morning
from plans.heavier import is_heavier, movements_of
from plans.programme import Day, Programme
from plans.rules import Settings, counts_as_done, hurts_on

REMEMBERED = 14
"""Dates within which a body remembers what it did clean (own choice)."""


class RowKind(StrEnum):
    """What a ledger row holds."""

    SESSION = "session"
    REST = "rest"
    MEASURE = "measure"
    ASKING = "asking"
    WAITING = "waiting"
    AWAY = "away"


class Question(StrEnum):
    """What must be known before a date's day is handed out."""

    FLAG = "flag"
    PAIN = "pain"
    MORNING = "morning"


@dataclass(frozen=True, slots=True)
class Entry:
    """One ledger row as the rules see it. `prescribed`: a date off that a verdict gave, or a rest day taken early."""

    on: date
    kind: RowKind
    day: int | None = None
    level: int = 0
    prescribed: bool = False
    delivered: bool = True
    checkin: CheckIn = field(default_factory=CheckIn)
    morning: Morning | None = None
    recorded: bool = False
    """A measure was recorded on this date."""


def last_effective(history: Sequence[Entry]) -> Entry | None:
    """The last row that handed something out; an unanswered question handed out nothing."""
    return next((entry for entry in reversed(history) if entry.kind is not RowKind.ASKING), None)


def since_source(history: Sequence[Entry]) -> tuple[Entry | None, Sequence[Entry]]:
    """The row whose answer the next morning is about, and the rows after it."""
    for index in range(len(history) - 1, -1, -1):
        entry = history[index]
        if entry.kind is RowKind.WAITING:
            return None, ()
        said = entry.checkin
        if entry.kind is RowKind.SESSION or said.odd or hurts_on(said) or said.flag is not None:
            return entry, history[index + 1 :]
    return None, ()


def _mornings(after: Sequence[Entry]) -> list[Morning]:
    return [entry.morning for entry in after if entry.morning is not None]


def open_question(history: Sequence[Entry], *, asked_on: date | None = None) -> Question | None:
    """What must be asked before the next row is handed out; `asked_on` is the date whose morning it would be.

    An unsure flag comes first, then what is missing of a report (asked on one morning only), then "how is it now?".
    """
    source, after = since_source(history)
    if source is None:
        return None
    if source.checkin.flag_state is FlagState.UNSURE:
        return Question.FLAG
    asked_before = any(entry.kind is RowKind.ASKING and entry.on != asked_on for entry in after)
    if _is_unfinished(source) and not asked_before:
        return Question.PAIN
    answers = _mornings(after)
    if hurts_on(source.checkin) and Morning.SETTLED not in answers and not _answered_on(after, asked_on):
        return Question.MORNING
    return None


def _is_unfinished(entry: Entry) -> bool:
    """Done without a pain number, or "something odd" without its kind or number."""
    said = entry.checkin
    if said.odd and (said.kind is None or said.pain is None):
        return True
    return was_done(entry) and said.pain is None


def _answered_on(after: Sequence[Entry], day: date | None) -> bool:
    return any(entry.on == day and entry.morning is not None for entry in after)


def was_done(entry: Entry) -> bool:
    """Whether a session of this row was done, at least in part."""
    return entry.kind is RowKind.SESSION and entry.checkin.completion in (Completion.DONE, Completion.PART)


def _clean(entry: Entry, settings: Settings) -> bool:
    return (
        entry.kind is RowKind.SESSION
        and counts_as_done(entry.checkin)
        and entry.checkin.pain is not None
        and entry.checkin.pain <= settings.clean
    )


def _next_session_day(programme: Programme, after: int) -> Day | None:
    return next((day for day in programme.days[after:] if day.kind == "session"), None)


def known_movements(programme: Programme, history: Collection[Entry]) -> frozenset[str]:
    """The movements that a client has done at least part of a session with."""
    held = {entry.day for entry in history if was_done(entry) and entry.day is not None}
    return frozenset().union(*(movements_of(programme.day(day)) for day in held))


def next_is_heavier(programme: Programme, history: Sequence[Entry], day: int, settings: Settings) -> bool:
    """Whether the session day that follows `day` is heavier than what this client last did clean."""
    coming = _next_session_day(programme, day)
    if coming is None:
        return False
    known = known_movements(programme, history)
    clean = [programme.day(number) for number in _lately_clean(history, settings)] or [programme.day(day)]
    return is_heavier(coming, clean, known.union(*(movements_of(old) for old in clean)))


def _lately_clean(history: Sequence[Entry], settings: Settings) -> list[int]:
    """The days done clean in the two weeks up to the last one, oldest first."""
    found = [(entry.on, entry.day) for entry in history if _clean(entry, settings) and entry.day is not None]
    return [day for on, day in found if on > found[-1][0] - timedelta(days=REMEMBERED)]


def gap(history: Sequence[Entry], today: date) -> int:
    """Dates since the last done session or the start (yesterday is 0), less rest, measure and prescribed rest days."""
    if not history:
        return 0
    last = next((entry.on for entry in reversed(history) if was_done(entry)), history[0].on)
    passed = sum(1 for e in history if last < e.on < today and e.kind in (RowKind.REST, RowKind.MEASURE))
    return (today - last).days - 1 - passed


def first_held(history: Sequence[Entry], dates: int) -> int | None:
    """The first session day held in the given number of dates up to the last done session."""
    last = next((entry.on for entry in reversed(history) if was_done(entry)), None)
    if last is None:
        return None
    held = [e.day for e in history if was_done(e) and last - timedelta(days=dates - 1) <= e.on <= last and e.day]
    return min(held, default=None)
