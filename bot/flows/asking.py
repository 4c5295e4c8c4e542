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
    DAY = "day"
    """(course) the day that a coach moves a client to"""
    TIME = "time"
    """(course) the time of a client's session"""
    NOTE = "note"
    """(course) a coach's note for themselves"""
    MESSAGE = "message"
    """(course) a coach's message to a client"""
    GROUP = "group"
    """(message to many) its words"""
    MOVEMENT = "movement"
    """(recording) which movement it shows"""
    REPLY = "reply"
    """(course) a client's answer to it"""
    INVITATION = "invitation"
    GUARDIAN = "guardian"
    TRAINING = "training"
    HOURS = "hours"
    OWN_TERMS = "own-terms"
    ABSENCE = "absence"


def open_for(person: Person, asked: Asked, of: int | None = None, told: int | None = None) -> None:
    """Waits for a line; `of` is the number of what it is about, `told` how much had been told of it by then."""
    person.asking = ":".join([asked, *(str(number) for number in (of, told) if number is not None)])


def waits_for(person: Person) -> Asked | None:
    """What is waited for; None for nothing."""
    return None if person.asking is None else Asked(person.asking.partition(":")[0])


def about(person: Person) -> int:
    """The number of what the open question is about. Raises ValueError when it is about nothing."""
    return int((person.asking or "").partition(":")[2].partition(":")[0])


def told_by_then(person: Person) -> int | None:
    """How much had been told of what the open question is about when it was asked; None where that was not kept."""
    kept = (person.asking or "").split(":")[2:]
    return int(kept[0]) if kept else None


OF_A_COACH = frozenset({Asked.FOUND_OUT, Asked.DAY, Asked.TIME, Asked.NOTE, Asked.MESSAGE, Asked.GROUP, Asked.MOVEMENT})
"""What only a coach is asked; anything else that they turn to ends it."""


def turn_away(person: Person) -> None:
    """Waits no longer for what a coach was asked."""
    if waits_for(person) in OF_A_COACH:
        person.asking = None


def close(person: Person, asked: Asked) -> None:
    """Waits for it no longer; another question stays open."""
    if waits_for(person) is asked:
        person.asking = None
