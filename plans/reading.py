"""From a programme file's text to a Programme, or to everything that is wrong with it, each at its place."""

from __future__ import annotations

import hashlib
from collections.abc import Iterator, Mapping
from dataclasses import asdict, dataclass
from typing import Any, get_args

from pydantic import BaseModel, ValidationError
from pydantic_core import ErrorDetails
from rapidfuzz import process

from plans.movements import Described, Movement, library
from plans.nodes import Located, Path, SyntaxProblem, read_nodes
from plans.programme import Block, Day, Dose, Item, Load, MeasureTask, Programme, Session
from plans.written import WrittenDay, WrittenItem, WrittenProgramme, WrittenSession


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
    """Reads and checks a programme file. Raises ProgrammeErrors: a syntax error alone, else all errors at once."""
    try:
        located = read_nodes(text)
    except SyntaxProblem as wrong:
        problem = Problem(name, wrong.line, wrong.column, "", wrong.found, wrong.allowed, None, "syntax")
        raise ProgrammeErrors((problem,)) from wrong
    problems = list(_keys_twice(located, name))
    written: WrittenProgramme | None = None
    try:
        written = WrittenProgramme.model_validate(located.data)
    except ValidationError as wrong:
        problems += [_schema_problem(error, located, name) for error in _first_causes(wrong.errors())]
    if written is not None:
        problems += _reference_problems(written, located, name)
    if problems or written is None:
        raise ProgrammeErrors(tuple(sorted(set(problems), key=lambda p: (p.line, p.column, p.path, p.found))))
    return _built(written, hashlib.sha256(text.encode()).hexdigest())


# --- problems -------------------------------------------------------------------------------------------------------


def _keys_twice(located: Located, name: str) -> Iterator[Problem]:
    for path, (line, column) in located.twice:
        yield Problem(
            name, line, column, in_words(path[:-1]), f"{path[-1]!r} a second time", "each word once", None, "twice"
        )


def _first_causes(errors: list[ErrorDetails]) -> list[ErrorDetails]:
    """Without "too short" for a list that is only short of entries that are wrong themselves."""
    places = [error["loc"] for error in errors]

    def is_echo(error: ErrorDetails) -> bool:
        loc = error["loc"]
        return error["type"] == "too_short" and any(len(p) > len(loc) and p[: len(loc)] == loc for p in places)

    return [error for error in errors if not is_echo(error)]


def _schema_problem(error: ErrorDetails, located: Located, name: str) -> Problem:
    path = _known_part(error["loc"], located)
    unknown_key = error["type"] == "extra_forbidden"
    line, column = _spot_of(path, located, key=unknown_key)
    if unknown_key:
        allowed = _words_of(path[:-1])
        found, suggestion = f"the word {path[-1]!r}", _near(str(path[-1]), allowed)
        rule = f"one of {', '.join(allowed)}" if allowed else "no further word here"
        return Problem(name, line, column, in_words(path[:-1]), found, rule, suggestion, "unknown-word")
    if error["type"] == "missing":
        missing = str(error["loc"][-1])
        return Problem(name, line, column, in_words(path), f"no {missing!r}", f"{missing!r} is needed", None, "missing")
    found, (allowed_text, suggestion) = _shown(error.get("input")), _allowed(error)
    return Problem(name, line, column, in_words(path), found, allowed_text, suggestion, str(error["type"]))


def _known_part(loc: tuple[int | str, ...], located: Located) -> Path:
    """The longest part of a location that stands in the file; pydantic adds words of its own."""
    path: Path = ()
    for step in loc:
        if (*path, step) in located.spots:
            path = (*path, step)
    return path


def _spot_of(path: Path, located: Located, *, key: bool = False) -> tuple[int, int]:
    if key and path in located.keys:
        return located.keys[path]
    return located.spots.get(path, (1, 1))


def _allowed(error: ErrorDetails) -> tuple[str, str | None]:
    context = error.get("ctx") or {}
    if "expected" in context:
        choices = [word.strip().strip("'") for word in str(context["expected"]).replace(" or ", ", ").split(",")]
        return str(context["expected"]), _near(str(error.get("input")), choices)
    message = error["msg"].removeprefix("Value error, ").removeprefix("Assertion failed, ")
    return message[:1].lower() + message[1:], None


def _shown(value: Any) -> str:
    if isinstance(value, dict):
        return "a mapping of " + ", ".join(list(map(str, value))[:4])
    if isinstance(value, list):
        return f"a list of {len(value)}"
    return repr(value) if not isinstance(value, str) or len(value) < 60 else repr(value[:57] + "...")


def _near(word: str, choices: list[str]) -> str | None:
    found = process.extractOne(word, choices, score_cutoff=70)
    return str(found[0]) if found else None


def _words_of(path: Path) -> list[str]:
    """The words that may stand in the mapping at a path."""
    model: Any = WrittenProgramme
    for step in path:
        if isinstance(step, int) or model is None:
            continue
        model = _model_at(model, step)
    if model is None:
        return []
    return [field.alias or name for name, field in model.model_fields.items()]


def _model_at(model: type[BaseModel], step: str) -> type[BaseModel] | None:
    for name, field in model.model_fields.items():
        if step in (name, field.alias):
            return _model_in(field.annotation)
    return model if model is Described else None


def _model_in(annotation: Any) -> type[BaseModel] | None:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    return next((found for part in get_args(annotation) if (found := _model_in(part)) is not None), None)


_COUNTED = {"days": "day", "blocks": "block", "items": "item"}


def in_words(path: Path) -> str:
    """A place in a file as a coach would say it.

    >>> in_words(("days", 8, "session", "blocks", 1, "items", 0, "hold"))
    'day 9, block 2, item 1, hold'
    """
    said: list[str] = []
    for step in path:
        if isinstance(step, int) and said:
            said[-1] = f"{_COUNTED.get(said[-1], said[-1])} {step + 1}"
        elif step != "session":
            said.append(str(step))
    return ", ".join(said)


def _reference_problems(written: WrittenProgramme, located: Located, name: str) -> Iterator[Problem]:
    known = sorted({*library(), *written.movements})
    for number, day in enumerate(written.days):
        yield from _bad_repeat(written, number, day, located, name)
        for b, block in enumerate(day.session.blocks if day.session else ()):
            for i, item in enumerate(block.items):
                path: Path = ("days", number, "session", "blocks", b, "items", i, "movement")
                yield from _unknown_movement(item.movement, path, known, located, name)
    for key, own in written.movements.items():
        for word in ("easier", "harder"):
            neighbour = getattr(own, word)
            if neighbour is not None:
                yield from _unknown_movement(neighbour, ("movements", key, word), known, located, name)
                yield from _comes_round(written, key, word, located, name)


def _unknown_movement(key: str, path: Path, known: list[str], located: Located, name: str) -> Iterator[Problem]:
    if key not in known:
        line, column = _spot_of(path, located)
        allowed = "a movement of the library or of this file"
        yield Problem(name, line, column, in_words(path), repr(key), allowed, _near(key, known), "unknown-movement")


def _comes_round(written: WrittenProgramme, key: str, word: str, located: Located, name: str) -> Iterator[Problem]:
    """A chain of ever easier, or ever harder, movements must end."""
    chain: dict[str, Described] = {**library(), **written.movements}
    seen, at = {key}, getattr(chain[key], word)
    while at in chain and at not in seen:
        seen.add(at)
        at = getattr(chain[at], word)
    if at == key:
        path: Path = ("movements", key, word)
        allowed = f"a chain that ends: nothing is {word} than itself"
        yield Problem(
            name, *_spot_of(path, located), in_words(path), f"a way back to {key!r}", allowed, None, "comes-round"
        )


def _bad_repeat(
    written: WrittenProgramme, number: int, day: WrittenDay, located: Located, name: str
) -> Iterator[Problem]:
    if day.as_day is None:
        return
    earlier = day.as_day <= number and written.days[day.as_day - 1].session is not None
    if not earlier:
        path: Path = ("days", number, "as-day")
        line, column = _spot_of(path, located)
        allowed = "the number of an earlier day that has a session of its own"
        yield Problem(name, line, column, in_words(path), str(day.as_day), allowed, None, "as-day")


# --- building -------------------------------------------------------------------------------------------------------


def _built(written: WrittenProgramme, digest: str) -> Programme:
    movements = {**library(), **{key: own.keyed(key) for key, own in written.movements.items()}}
    return Programme(
        title=written.title,
        goal=written.goal,
        who_for=written.who_for,
        setting=written.setting,
        led_by=written.led_by,
        language=written.language,
        muscles=written.muscles,
        ages=written.ages,
        days=tuple(_day(written, number, movements) for number in range(1, len(written.days) + 1)),
        digest=digest,
        cautions=written.cautions,
        equipment=written.equipment,
        measures=written.measures,
        pace=written.pace,
        settings=written.settings.plain(),
        movements=tuple(movements[key] for key in written.movements),
    )


def _day(written: WrittenProgramme, number: int, movements: Mapping[str, Movement]) -> Day:
    day = written.days[number - 1]
    source = written.days[day.as_day - 1].session if day.as_day is not None else day.session
    test = day.measure
    return Day(
        number=number,
        title=day.title,
        text=day.rest if day.rest is not None else day.text,
        session=_session(source, movements) if source is not None else None,
        measure=MeasureTask(test.which, test.trials, test.warm_up, test.photo) if test is not None else None,
        link=day.link,
    )


def _session(written: WrittenSession, movements: Mapping[str, Movement]) -> Session:
    blocks = tuple(
        Block(tuple(_item(item, movements) for item in block.items), block.rounds, block.rest)
        for block in written.blocks
    )
    return Session(blocks, written.focus, written.warm_up)


def _item(written: WrittenItem, movements: Mapping[str, Movement]) -> Item:
    load = written.load
    return Item(
        movement=movements[written.movement],
        dose=Dose(
            reps=written.reps,
            hold=written.hold,
            contract=written.contract,
            relax=written.relax,
            last_hold=written.last_hold,
            flow=written.flow,
            steps=written.steps,
            breaths=written.breaths,
        ),
        sets=written.sets,
        side=written.side,
        rest=written.rest,
        effort=written.effort,
        load=Load(load.kilograms, load.words, written.held) if load is not None else None,
        cue=written.cue,
        practice=written.practice,
    )
