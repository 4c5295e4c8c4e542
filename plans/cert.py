"""The exercise reporting template (CERT): what a reader must be told to repeat a programme, and who tells it here.

Slade et al. 2016, Br J Sports Med 50:1428; sixteen items, in our own words.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from plans.programme import Programme

BOT = "the bot"
FILE = "the programme"


@dataclass(frozen=True, slots=True)
class Item:
    """One item: its number, what it asks for, and the answer with who gives it; None is not answered."""

    number: str
    asks: str
    answer: str | None
    by: str


def answers(programme: Programme) -> tuple[Item, ...]:
    """All items with what the programme and the bot together say."""
    return tuple(Item(number, asks, answer(programme), by) for number, asks, by, answer in _ITEMS)


def missing(programme: Programme) -> tuple[Item, ...]:
    """The items that nobody answers yet."""
    return tuple(item for item in answers(programme) if item.answer is None)


def _always(text: str) -> Callable[[Programme], str]:
    return lambda _programme: text


def _equipment(programme: Programme) -> str:
    return ", ".join(str(thing) for thing in programme.equipment) or "none"


def _described(programme: Programme) -> str:
    done = {item.movement.key for day in programme.days if day.session for b in day.session.blocks for item in b.items}
    return f"{len(done)} movements, each with how to do it and common faults"


def _progress(programme: Programme) -> str:
    sessions = sum(1 for day in programme.days if day.session is not None)
    return f"day by day: {sessions} sessions, each written out with its dose"


_ITEMS: tuple[tuple[str, str, str, Callable[[Programme], str | None]], ...] = (
    ("1", "the equipment", FILE, _equipment),
    ("2", "who leads, and with what training", FILE, lambda p: p.led_by),
    ("3", "alone or in a group (company)", FILE, lambda p: p.company),
    ("4", "whether somebody watches (supervised)", FILE, lambda p: p.supervised),
    ("5", "how it is measured who keeps to it", BOT, _always("each session's answer is counted; a weekly digest")),
    ("6", "what helps to keep it up (motivation)", FILE, lambda p: p.motivation),
    ("7a", "the rule for going on", BOT, _always("pain, soreness and completion decide, by a published table")),
    ("7b", "how it gets harder", FILE, _progress),
    ("8", "each movement so that it can be repeated", FILE, _described),
    ("9", "what is done at home", FILE, lambda p: p.setting),
    ("10", "what belongs to it and is no exercise (besides)", FILE, lambda p: p.besides),
    ("11", "harm: what kind, how often", BOT, _always("every pain report is kept and reaches the coach")),
    ("12", "where it is done", FILE, lambda p: p.setting),
    ("13", "the dose in full", FILE, _progress),
    ("14a", "the same for all or for each one", BOT, _always("one programme, adapted to each client")),
    ("14b", "how it is adapted", BOT, _always("repeat, lighter version, rest or the coach's word, by the same table")),
    (
        "15",
        "how the starting level is found",
        BOT,
        _always("health questions and a first test; everybody begins on day 1"),
    ),
    ("16a", "how it is checked that it is done as planned", BOT, _always("completion of each session, asked daily")),
    ("16b", "how far it was done as planned", BOT, _always("sessions done of those due, with both bounds")),
)
