"""From a programme file's text to a Programme, or to everything that is wrong with it, each at its place."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import asdict, dataclass
from typing import Any, get_args

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails

from plans.allowed import allowed, near
from plans.building import build
from plans.changing import GROWTH
from plans.movements import Described
from plans.nodes import Located, Path, SyntaxProblem, read_nodes
from plans.programme import Programme
from plans.written import WrittenProgramme, WrittenSession

CUT_BY_COMMA = 'quotes round a text that has a comma between { and }, such as text: "Slowly, and breathe."'


@dataclass(frozen=True, slots=True)
class Problem:
    """One thing that is wrong: where (line and column from 1), what was found, what is allowed, a likely spelling."""

    file: str
    line: int
    column: int
    path: str
    found: str
    allowed: str
    suggestion: str | None
    code: str

    def __str__(self) -> str:
        where = f"{self.path}: " if self.path else ""
        hint = f"; did you mean {self.suggestion}?" if self.suggestion else ""
        return f"{self.file}:{self.line}:{self.column}: {where}found {self.found}, allowed: {self.allowed}{hint}"

    def as_json(self) -> dict[str, object]:
        """The problem as documented JSON."""
        return asdict(self)


class ProgrammeErrors(ValueError):
    """A file that is no programme; `problems` has all that is wrong, in the order of the file."""

    def __init__(self, problems: tuple[Problem, ...]) -> None:
        super().__init__("\n".join(str(problem) for problem in problems))
        self.problems = problems


def read_programme(text: str, *, name: str = "programme.yaml") -> Programme:
    """Reads and checks a programme file. Raises ProgrammeErrors: a syntax error alone, else all errors at once.

    What does not hang together, such as the name of a movement that does not exist, comes once every line is written
    as it should be.
    """
    try:
        located = read_nodes(text)
    except SyntaxProblem as wrong:
        problem = Problem(name, wrong.line, wrong.column, "", wrong.found, wrong.allowed, None, "syntax")
        raise ProgrammeErrors((problem,)) from wrong
    page = _Page(name, located)
    page.find_words_twice()
    built: Programme | None = None
    try:
        written = WrittenProgramme.model_validate(located.data)
    except ValidationError as wrong:
        page.take(wrong.errors(include_url=False))
    else:
        built = build(written, hashlib.sha256(text.encode()).hexdigest(), page.report)
    if page.problems or built is None:
        raise ProgrammeErrors(page.in_order())
    return built


class _Page:
    """A file with what is wrong on it."""

    def __init__(self, name: str, located: Located) -> None:
        self._name = name
        self._located = located
        self._first_days = _first_days(located.data)
        self.problems: dict[tuple[Path, str, str], Problem] = {}

    def in_order(self) -> tuple[Problem, ...]:
        """All problems in the order of the file."""
        return tuple(sorted(self.problems.values(), key=lambda p: (p.line, p.column, p.path, p.found)))

    def report(
        self, path: Path, found: str, right: str, suggestion: str | None, code: str, *, key: bool = False
    ) -> None:
        """Takes a problem, once for each place; `key`: it is about the word there, not about what it says."""
        there = self._known_part(path)
        spots = self._located.keys if key and there in self._located.keys else self._located.spots
        line, column = spots.get(there, (1, 1))
        shown = in_words(path[:-1] if key else path, first_days=self._first_days)
        problem = Problem(self._name, line, column, shown, found, right, suggestion, code)
        about = right if code == "value_error" else ""
        self.problems.setdefault((there, code, about), problem)

    def find_words_twice(self) -> None:
        """Reports every word that stands twice in one mapping."""
        for path, (line, column) in self._located.twice:
            shown = in_words(path[:-1], first_days=self._first_days)
            found = f"{path[-1]!r} a second time"
            problem = Problem(self._name, line, column, shown, found, "each word once", None, "twice")
            self.problems[(*path, line, column), "twice", ""] = problem

    def take(self, errors: Sequence[ErrorDetails]) -> None:
        """Takes everything that the shapes do not allow."""
        for error in _first_causes(errors):
            path = self._known_part(error["loc"])
            if error["type"] == "extra_forbidden":
                if " " in str(path[-1]) and error.get("input") is None:
                    self.report(path, f"the words {path[-1]!r}", CUT_BY_COMMA, None, "cut-by-comma", key=True)
                    continue
                words = self._words_at(path[:-1])
                rule = f"one of {', '.join(words)}" if words else "no further word here"
                spelling = near(str(path[-1]), words)
                self.report(path, f"the word {path[-1]!r}", rule, spelling, "unknown-word", key=True)
            elif error["loc"] and error["loc"][-1] == "[key]":
                self.report(path, f"the word {path[-1]!r}", *allowed(error), "unknown-word", key=True)
            elif error["type"] == "missing":
                missing = str(error["loc"][-1])
                self.report(path, f"no {missing!r}", f"{missing!r} is needed", None, "missing")
            else:
                self.report(path, _shown(error.get("input")), *allowed(error), str(error["type"]))

    def _known_part(self, loc: tuple[int | str, ...]) -> Path:
        """The longest part of a location that stands in the file; pydantic adds words of its own."""
        path: Path = ()
        for step in loc:
            if (*path, step) in self._located.spots:
                path = (*path, step)
        return path

    def _words_at(self, path: Path) -> list[str]:
        """The words that may stand in the mapping at a path."""
        there = {key[-1] for key in self._located.keys if key[:-1] == path}
        if there & GROWTH:
            return sorted(GROWTH, reverse=True)
        model: Any = WrittenProgramme
        for step in path:
            if not isinstance(step, int) and model is not None:
                model = _model_at(model, step)
        return [] if model is None else [field.alias or name for name, field in model.model_fields.items()]


def _first_days(data: Any) -> list[int]:
    """For each entry of a file's days the number of its first day; an entry may stand for several."""
    entries = data.get("days") if isinstance(data, dict) else None
    numbers, following = [], 1
    for entry in entries if isinstance(entries, list) else ():
        numbers.append(following)
        following += _length(entry)
    return numbers


def _length(entry: Any) -> int:
    """How many days an entry stands for; one for an entry that is wrong itself."""
    if not isinstance(entry, dict):
        return 1
    times = entry.get("times", 1)
    first, _dash, last = str(entry.get("as-days", "1-1")).replace("–", "-").partition("-")
    span = int(last) - int(first) + 1 if first.strip().isdecimal() and last.strip().isdecimal() else 1
    return max(1, span) * (times if isinstance(times, int) and 1 <= times <= 400 else 1)


def _first_causes(errors: Sequence[ErrorDetails]) -> list[ErrorDetails]:
    """Without "too short" for a list that is only short of entries that are wrong themselves."""
    places = [error["loc"] for error in errors]

    def is_echo(error: ErrorDetails) -> bool:
        loc = error["loc"]
        return error["type"] == "too_short" and any(len(p) > len(loc) and p[: len(loc)] == loc for p in places)

    return [error for error in errors if not is_echo(error)]


def _shown(value: Any) -> str:
    if isinstance(value, dict):
        return "a mapping of " + ", ".join(list(map(str, value))[:4]) if value else "an empty mapping"
    if isinstance(value, list):
        return f"a list of {len(value)}"
    if value is None:
        return "nothing"
    return repr(value) if not isinstance(value, str) or len(value) < 60 else repr(value[:57] + "...")


def _model_at(model: type[BaseModel], step: str) -> type[BaseModel] | None:
    for name, field in model.model_fields.items():
        if step in (name, field.alias):
            return _model_in(field.annotation)
    return model if model in (Described, WrittenSession) else None


def _model_in(annotation: Any) -> type[BaseModel] | None:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    return next((found for part in get_args(annotation) if (found := _model_in(part)) is not None), None)


_COUNTED = {"days": "day", "blocks": "block", "items": "item"}
_NAMED = {"movements": "movement", "sessions": "session"}


def in_words(path: Path, *, first_days: Sequence[int] = ()) -> str:
    """A place in a file as a coach would say it; `first_days` has the day on which each entry of days begins.

    >>> in_words(("days", 8, "session", "blocks", 1, "items", 0, "hold"))
    'day 9, block 2, item 1, hold'
    """
    said: list[str] = []
    for index, step in enumerate(path):
        if isinstance(step, int) and said:
            is_day = index == 1 and path[0] == "days" and step < len(first_days)
            said[-1] = f"{_COUNTED.get(said[-1], said[-1])} {first_days[step] if is_day else step + 1}"
        elif index == 1 and path[0] in _NAMED:
            said[-1] = f"{_NAMED[str(path[0])]} {step}"
        elif step != "session" or index + 1 == len(path):
            said.append(str(step))
    return ", ".join(said)
