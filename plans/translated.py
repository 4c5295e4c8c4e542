"""A programme's texts in another language: every text that people read, looked up one by one."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass, replace
from typing import Any, TypeVar

from plans.equipment import Thing
from plans.movements import Movement
from plans.programme import Load, Programme, Say

T = TypeVar("T")

_SAID = frozenset(
    [
        "title",
        "goal",
        "who_for",
        "setting",
        "led_by",
        "supervised",
        "motivation",
        "besides",
        "text",
        "focus",
        "warm_up",
        "caution",
        "stop",
        "stance",
        "grip",
        "cue",
        "words",
        "held",
        "name",
        "how",
    ]
)
"""Fields whose texts people read; other texts are keys, addresses, and words of the programme language."""
_KEPT = frozenset(("say", "texts"))


def said(value: T, say: Say) -> T:
    """A part of a programme with every text that people read as `say` has it; facts and keys stay as they are.

    What a movement needs keeps its name, which is its key in clients' answers; `Programme.say` says it.
    """
    seen: dict[int, Any] = {}

    def other(part: Any) -> Any:
        if id(part) not in seen:
            seen[id(part)] = put(part)
        return seen[id(part)]

    def put(part: Any) -> Any:
        if isinstance(part, Movement):
            return part.said_by(say)
        if isinstance(part, tuple):
            return tuple(other(one) for one in part)
        if isinstance(part, Load) and part.kilograms is not None:
            return replace(part, held=part.held and say(part.held))
        if is_dataclass(part) and not isinstance(part, type):
            return replace(part, **dict(fields_of(part)))
        return part

    def fields_of(part: Any) -> Iterator[tuple[str, Any]]:
        for one in fields(part):
            inner = getattr(part, one.name)
            if one.name == "variation" and inner is not None:
                yield one.name, inner.said_by(say)
            elif one.name == "cautions":
                yield one.name, tuple(map(say, inner))
            elif one.name == "equipment":
                yield one.name, tuple(_say_thing(thing, say) for thing in inner)
            elif one.name in _SAID and isinstance(inner, str):
                yield one.name, say(inner)
            elif (one.name not in _KEPT and isinstance(inner, tuple | Movement)) or is_dataclass(inner):
                yield one.name, other(inner)

    found: T = other(value)
    return found


def translated(programme: Programme, say: Say) -> Programme:
    """The programme as `say` has it; `say` also says its library's texts when one is looked up, and names of things."""
    return replace(said(programme, say), say=say)


def in_language(programme: Programme, language: str, of_library: Say) -> Programme:
    """The programme for a reader of a language, with its own texts where it has them; `of_library` says the others."""
    own: Mapping[str, str] = programme.texts.get(language, {})
    return translated(programme, lambda text: own.get(text) or of_library(text))


def every_text(programme: Programme) -> tuple[str, ...]:
    """Every text that a programme's clients may read, once each, its library's too."""
    found = Noted()
    translated(programme, found)
    for movement in programme.movements:
        movement.said_by(found)
    for movement in _movements(programme):
        for thing in movement.equipment:
            _say_thing(thing, found)
    return tuple(found.texts)


def own_texts(programme: Programme) -> tuple[str, ...]:
    """Every text of a programme that its clients may read and that is not the library's, once each."""
    own, of_library = {movement.key for movement in programme.movements}, Noted()
    for movement in _movements(programme):
        if movement.key not in own:
            movement.said_by(of_library)
            for thing in movement.equipment:
                _say_thing(thing, of_library)
    return tuple(text for text in every_text(programme) if text not in of_library.texts)


def _movements(programme: Programme) -> Iterator[Movement]:
    for item in (item for day in programme.days if day.session for block in day.session.blocks for item in block.items):
        yield item.movement
        if item.meanwhile is not None:
            yield item.meanwhile
    yield from programme.movements


def _say_thing(thing: Thing, say: Say) -> Thing:
    return Thing(say(thing.name), tuple(map(say, thing.instead)))


class Noted:
    """Says texts as they are, and keeps each."""

    def __init__(self) -> None:
        self.texts: dict[str, None] = {}

    def __call__(self, text: str) -> str:
        self.texts[text] = None
        return text


def untranslated(programme: Programme, language: str) -> tuple[str, ...]:
    """Its own texts that it does not have in a language; none for the one that it is written in."""
    if language == programme.language:
        return ()
    known = programme.texts.get(language, {})
    return tuple(text for text in own_texts(programme) if text not in known)
