"""The one question that a person has opened themselves: what they type next answers it."""

from __future__ import annotations

from enum import StrEnum

from db.schema import Person


class Asked(StrEnum):
    """What a typed line is waited for."""

    ZONE = "zone"
    MORNING = "morning"
    NAME = "name"
    FOUND_OUT = "found-out"
    INVITATION = "invitation"
    GUARDIAN = "guardian"
    TRAINING = "training"
    HOURS = "hours"
    OWN_TERMS = "own-terms"
    ABSENCE = "absence"


def open_for(person: Person, asked: Asked, of: int | None = None) -> None:
    """Waits for a line; `of` is the number of what it is about."""
    person.asking = asked if of is None else f"{asked}:{of}"


def waits_for(person: Person) -> Asked | None:
    """What is waited for; None for nothing."""
    return None if person.asking is None else Asked(person.asking.partition(":")[0])


def about(person: Person) -> int:
    """The number of what the open question is about. Raises ValueError when it is about nothing."""
    return int((person.asking or "").partition(":")[2])


def close(person: Person, asked: Asked) -> None:
    """Waits for it no longer; another question stays open."""
    if waits_for(person) is asked:
        person.asking = None
