"""YAML 1.2 text as plain data that remembers the line and column of everything in it."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from io import StringIO
from typing import Any

from ruamel.yaml import YAML
from ruamel.yaml.error import MarkedYAMLError, YAMLError
from ruamel.yaml.events import (
    AliasEvent,
    CollectionEndEvent,
    CollectionStartEvent,
    DocumentStartEvent,
    Event,
    MappingEndEvent,
    MappingStartEvent,
    NodeEvent,
    ScalarEvent,
    SequenceEndEvent,
    StreamEndEvent,
)
from ruamel.yaml.reader import ReaderError

LONGEST = 1_000_000
"""Characters of a programme file; a year's programme has about a fifth of that."""
MOST = 60_000
"""Values and lists in a file; a year of days that are all written out has about half of that."""
DEEPEST = 20

Path = tuple[str | int, ...]
Spot = tuple[int, int]
"""Line and column, both from 1."""


@dataclass(frozen=True, slots=True)
class SyntaxProblem(Exception):
    """A text that is no plain YAML document."""

    line: int
    column: int
    found: str
    allowed: str


@dataclass(frozen=True, slots=True)
class Located:
    """Plain data, where each of its values and keys stands, and keys that were given twice."""

    data: Any
    spots: Mapping[Path, Spot]
    keys: Mapping[Path, Spot]
    twice: tuple[tuple[Path, Spot], ...] = field(default=())


def read_nodes(text: str) -> Located:
    """Reads one YAML document without directives, anchors, aliases or tags. Raises SyntaxProblem."""
    if len(text) > LONGEST:
        raise SyntaxProblem(1, 1, f"a file of {len(text):,} characters", f"at most {LONGEST:,}")
    try:
        walk = _Walk(YAML(pure=True).parse(StringIO(text)))
        data = walk.document()
    except MarkedYAMLError as error:
        mark = error.problem_mark or error.context_mark
        line, column = (mark.line + 1, mark.column + 1) if mark is not None else (1, 1)
        found = str(error.problem or "text that is no YAML").removeprefix("found ")
        raise SyntaxProblem(line, column, found, "YAML 1.2") from error
    except ReaderError as error:
        raise SyntaxProblem(*_spot_at(text, error.position), "a character that is not text", "YAML 1.2") from error
    except (YAMLError, ValueError, RecursionError, AttributeError, AssertionError, IndexError, TypeError) as error:
        raise SyntaxProblem(1, 1, f"text that is no YAML ({type(error).__name__})", "YAML 1.2") from error
    return Located(data, walk.spots, walk.keys, tuple(walk.twice))


def _spot_at(text: str, position: int) -> Spot:
    before = text[:position]
    return before.count("\n") + 1, position - before.rfind("\n")


class _Walk:
    """Reads the events of a document once, and refuses whatever is not plain data."""

    def __init__(self, events: Iterator[Event]) -> None:
        self._events = events
        self._count = self._depth = 0
        self.spots: dict[Path, Spot] = {}
        self.keys: dict[Path, Spot] = {}
        self.twice: list[tuple[Path, Spot]] = []

    def document(self) -> Any:
        """The data of the one document that is there."""
        event = next(self._events)
        while not isinstance(event, DocumentStartEvent):
            if isinstance(event, StreamEndEvent):
                raise SyntaxProblem(1, 1, "an empty file", "a programme")
            event = next(self._events)
        if event.version is not None or event.tags:
            raise SyntaxProblem(*_spot(event), "a YAML directive (%)", "none: a programme is plain YAML 1.2")
        data = self._value(self._next(), ())
        for event in self._events:
            if isinstance(event, DocumentStartEvent):
                raise SyntaxProblem(*_spot(event), "a second document (---)", "one programme a file")
        return data

    def _next(self) -> Event:
        event = next(self._events)
        self._count += 1
        if self._count > MOST:
            raise SyntaxProblem(*_spot(event), f"more than {MOST:,} values", "a programme of at most 400 days")
        if isinstance(event, AliasEvent):
            raise SyntaxProblem(*_spot(event), f"an alias (*{event.anchor})", "none: write as-day to repeat a day")
        if isinstance(event, NodeEvent) and event.anchor is not None:
            raise SyntaxProblem(*_spot(event), f"an anchor (&{event.anchor})", "none: write as-day to repeat a day")
        if isinstance(event, ScalarEvent | CollectionStartEvent) and event.tag is not None:
            raise SyntaxProblem(*_spot(event), f"a tag ({event.tag})", "none")
        return event

    def _value(self, event: Event, path: Path) -> Any:
        self.spots[path] = _spot(event)
        if isinstance(event, ScalarEvent):
            return _scalar(event.value) if event.implicit[0] else event.value
        self._depth += 1
        if self._depth > DEEPEST:
            raise SyntaxProblem(*_spot(event), f"lists in lists, {self._depth} deep", f"at most {DEEPEST} deep")
        data = self._mapping(path) if isinstance(event, MappingStartEvent) else self._list(path)
        self._depth -= 1
        return data

    def _list(self, path: Path) -> list[Any]:
        found: list[Any] = []
        while not isinstance(event := self._next(), SequenceEndEvent):
            found.append(self._value(event, (*path, len(found))))
        return found

    def _mapping(self, path: Path) -> dict[str, Any]:
        found: dict[str, Any] = {}
        while not isinstance(event := self._next(), MappingEndEvent):
            spot = _spot(event)
            if not isinstance(event, ScalarEvent):
                raise SyntaxProblem(*spot, "a list or mapping in the place of a word", "a word before the colon")
            key = str(event.value)
            if key in found:
                self.twice.append(((*path, key), spot))
                self._skip()
                continue
            self.keys[(*path, key)] = spot
            found[key] = self._value(self._next(), (*path, key))
        return found

    def _skip(self) -> None:
        """Passes over a value, so that what is said first stands."""
        deep = 0
        while True:
            event = self._next()
            deep += isinstance(event, CollectionStartEvent) - isinstance(event, CollectionEndEvent)
            if deep == 0:
                return


def _spot(event: Event) -> Spot:
    return event.start_mark.line + 1, event.start_mark.column + 1


_NULL = frozenset({"", "~", "null", "Null", "NULL"})
_BOOL = {"true": True, "True": True, "TRUE": True, "false": False, "False": False, "FALSE": False}
_INT = re.compile(r"[-+]?[0-9]{1,12}")
_FLOAT = re.compile(r"[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?")


def _scalar(text: str) -> Any:
    """A plain scalar by the core schema of YAML 1.2.2, section 10.3.2; other notations of numbers stay text.

    >>> [_scalar(text) for text in ("12", "7:00", "no", "true", "")]
    [12, '7:00', 'no', True, None]
    """
    if text in _NULL:
        return None
    if text in _BOOL:
        return _BOOL[text]
    if _INT.fullmatch(text):
        return int(text)
    return float(text) if _FLOAT.fullmatch(text) else text
