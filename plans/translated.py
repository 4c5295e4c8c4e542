"""A programme's texts in another language: every text that people read, looked up one by one."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import fields, is_dataclass, replace
from typing import Any

from plans.movements import Movement
from plans.programme import Load, Programme, Say

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
_KEPT = frozenset(("equipment", "instead", "say", "texts"))
"""Things keep their names, by which a programme and a client's answer know them; `Programme.say` says them."""


def translated(programme: Programme, say: Say) -> Programme:
    """The programme with every text that people read as `say` has it; facts and keys stay as they are.

    `say` also says the library's texts, whenever one is looked up, and the names of things.
    """
    seen: dict[int, Any] = {}

    def other(value: Any) -> Any:
        if id(value) not in seen:
            seen[id(value)] = _put(value)
        return seen[id(value)]

    def _put(value: Any) -> Any:
        if isinstance(value, Movement):
            return value.said_by(say)
        if isinstance(value, tuple):
            return tuple(other(part) for part in value)
        if isinstance(value, Load) and value.kilograms is not None:
            return replace(value, held=value.held and say(value.held))
        if is_dataclass(value) and not isinstance(value, type):
            return replace(value, **dict(_parts(value)))
        return value

    def _parts(value: Any) -> Iterator[tuple[str, Any]]:
        for one in fields(value):
            part = getattr(value, one.name)
            if one.name == "variation" and part is not None:
                yield one.name, part.model_copy(update={"name": say(part.name), "how": say(part.how)})
            elif one.name == "cautions":
                yield one.name, tuple(say(text) for text in part)
            elif one.name in _SAID and isinstance(part, str):
                yield one.name, say(part)
            elif one.name not in _KEPT and (
                isinstance(part, tuple) or is_dataclass(part) or isinstance(part, Movement)
            ):
                yield one.name, other(part)

    said: Programme = other(programme)
    return replace(said, say=say)


def in_language(programme: Programme, language: str, of_library: Say) -> Programme:
    """The programme for a reader of a language, with its own texts where it has them; `of_library` says the others."""
    own: Mapping[str, str] = programme.texts.get(language, {})
    return translated(programme, lambda text: own.get(text) or of_library(text))


def own_texts(programme: Programme) -> tuple[str, ...]:
    """Every text of a programme that its clients may read and that is not the library's, once each."""
    own = {movement.key for movement in programme.movements}
    found, of_library = _Noted(), _Noted()
    translated(programme, found)
    for item in (item for day in programme.days if day.session for block in day.session.blocks for item in block.items):
        for movement in (item.movement, item.meanwhile):
            if movement is not None and movement.key not in own:
                movement.said_by(of_library)
    names = [name for thing in programme.equipment for name in (thing.name, *thing.instead)]
    return tuple(dict.fromkeys(text for text in (*found.texts, *names) if text not in of_library.texts))


class _Noted:
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
