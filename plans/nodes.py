"""YAML 1.2 text as plain data that remembers the line and column of everything in it."""

from __future__ import annotations

from collections.abc import Mapping
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
    NodeEvent,
    ScalarEvent,
)
from ruamel.yaml.nodes import MappingNode, Node, ScalarNode, SequenceNode
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
        _refuse_cleverness(text)
        root = YAML(pure=True).compose(StringIO(text))
    except MarkedYAMLError as error:
        mark = error.problem_mark or error.context_mark
        line, column = (mark.line + 1, mark.column + 1) if mark is not None else (1, 1)
        found = str(error.problem or "text that is no YAML").removeprefix("found ")
        raise SyntaxProblem(line, column, found, "YAML 1.2") from error
    except ReaderError as error:
        raise SyntaxProblem(*_spot_at(text, error.position), "a character that is not text", "YAML 1.2") from error
    except (YAMLError, ValueError, RecursionError, AttributeError, AssertionError, IndexError, TypeError) as error:
        raise SyntaxProblem(1, 1, f"text that is no YAML ({type(error).__name__})", "YAML 1.2") from error
    if root is None:
        raise SyntaxProblem(1, 1, "an empty file", "a programme")
    walk = _Walk()
    data = walk.plain(root, ())
    return Located(data, walk.spots, walk.keys, tuple(walk.twice))


def _spot_at(text: str, position: int) -> Spot:
    before = text[:position]
    return before.count("\n") + 1, position - before.rfind("\n")


def _refuse_cleverness(text: str) -> None:
    documents = depth = 0
    for count, event in enumerate(YAML(pure=True).parse(StringIO(text)), start=1):
        spot = (event.start_mark.line + 1, event.start_mark.column + 1)
        if count > MOST:
            raise SyntaxProblem(*spot, f"more than {MOST:,} values", "a programme of at most 400 days")
        if isinstance(event, DocumentStartEvent):
            documents += 1
            if event.version is not None or event.tags:
                raise SyntaxProblem(*spot, "a YAML directive (%)", "none: a programme is plain YAML 1.2")
            if documents > 1:
                raise SyntaxProblem(*spot, "a second document (---)", "one programme a file")
        if isinstance(event, AliasEvent):
            raise SyntaxProblem(*spot, f"an alias (*{event.anchor})", "none: write as-day to repeat a day")
        if isinstance(event, NodeEvent) and event.anchor is not None:
            raise SyntaxProblem(*spot, f"an anchor (&{event.anchor})", "none: write as-day to repeat a day")
        if isinstance(event, ScalarEvent | CollectionStartEvent) and event.tag is not None:
            raise SyntaxProblem(*spot, f"a tag ({event.tag})", "none")
        depth += isinstance(event, CollectionStartEvent) - isinstance(event, CollectionEndEvent)
        if depth > DEEPEST:
            raise SyntaxProblem(*spot, f"lists in lists, {depth} deep", f"at most {DEEPEST} deep")


class _Walk:
    def __init__(self) -> None:
        self.spots: dict[Path, Spot] = {}
        self.keys: dict[Path, Spot] = {}
        self.twice: list[tuple[Path, Spot]] = []

    def plain(self, node: Node, path: Path) -> Any:
        self.spots[path] = _spot(node)
        if isinstance(node, MappingNode):
            return self._mapping(node, path)
        if isinstance(node, SequenceNode):
            return [self.plain(child, (*path, index)) for index, child in enumerate(node.value)]
        return _scalar(node)

    def _mapping(self, node: MappingNode, path: Path) -> dict[str, Any]:
        found: dict[str, Any] = {}
        for key_node, value_node in node.value:
            key = str(key_node.value) if isinstance(key_node, ScalarNode) else "?"
            if key in found:
                self.twice.append(((*path, key), _spot(key_node)))
                continue
            self.keys[(*path, key)] = _spot(key_node)
            found[key] = self.plain(value_node, (*path, key))
        return found


def _spot(node: Node) -> Spot:
    return node.start_mark.line + 1, node.start_mark.column + 1


def _scalar(node: Node) -> Any:
    text, kind = str(node.value), str(node.tag).rpartition(":")[2]
    if kind == "null":
        return None
    if kind == "bool":
        return text.lower() == "true"
    if kind == "int":
        return int(text) if text.lstrip("+-").isdigit() and len(text) < 12 else text
    if kind == "float":
        try:
            return float(text)
        except ValueError:
            return text
    return text
