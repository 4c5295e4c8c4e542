"""Adverse events in a course's ledger: what was told that the rules hold to be more than soreness, and what came after.

An event is an answer for which a rule that looks for harm has a vote (`HARM`), a morning on which it was worse, or a
soreness that stayed too long. Soreness up to 2 of 10 and a pain of 3 to 5 that the pain-monitoring model allows
(Thomee 1997; Silbernagel 2007) are none. Where the line runs is this program's own choice.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from plans.checkin import CheckIn, Morning
from plans.ledger import Entry, RowKind
from plans.rules import Evidence, Settings, votes

HARM = frozenset({"red-flag", "unsure-flag", "nerve-signs", "strain-like", "severe", "excessive"})
"""Rules that an answer calls for by itself when it tells of more than soreness."""
WORSE, TOO_LONG = "morning-after", "sore-too-long"


@dataclass(frozen=True, slots=True)
class Event:
    """One event; the numbers are places in the history. `what` names the rules, the first that saw it first."""

    told: int
    """The row to which it was told."""
    session: int | None
    """The newest session handed out up to then."""
    what: tuple[str, ...]
    morning: Morning | None
    """The last answer to "how is it now?" before the next session was handed out."""
    resumed: int | None
    """The next session that was handed out."""


def events(history: Sequence[Entry], settings: Settings, usual: int = 0) -> list[Event]:
    """The events of a course, oldest first; `usual` is the pain that the area always has, 0-4."""
    seen: dict[int, list[str]] = {}
    for place, rule in _seen(history, settings, usual):
        seen.setdefault(place, []).append(rule)
    return [_event(history, place, tuple(dict.fromkeys(seen[place]))) for place in sorted(seen)]


def _seen(history: Sequence[Entry], settings: Settings, usual: int) -> Iterator[tuple[int, str]]:
    answered = None
    for place, entry in enumerate(history):
        if answered is not None and entry.morning is Morning.WORSE:
            yield answered, WORSE
        if answered is not None and TOO_LONG in entry.voted:
            yield answered, TOO_LONG
        if entry.checkin != CheckIn():
            answered = place
            given = votes(Evidence(entry.checkin, usual=usual, settings=settings))
            yield from ((place, vote.rule) for vote in given if vote.rule in HARM)


def _event(history: Sequence[Entry], place: int, what: tuple[str, ...]) -> Event:
    sessions = (n for n in range(place, -1, -1) if history[n].kind is RowKind.SESSION)
    resumed = next((n for n in range(place + 1, len(history)) if history[n].kind is RowKind.SESSION), None)
    after = history[place + 1 : len(history) if resumed is None else resumed + 1]
    mornings = [entry.morning for entry in after if entry.morning is not None]
    return Event(place, next(sessions, None), what, mornings[-1] if mornings else None, resumed)
