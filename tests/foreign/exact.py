"""Holds requests and answers against the client's own shapes: `python exact.py RECORDING` prints what is wrong.

A recording has one JSON object a line: `method`, `params`, and the whole `answer` of the platform. Nothing may be
missing, of another type or unknown, and what was read must be written back as it was.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any

from aiogram import methods
from aiogram.methods import Response
from pydantic import BaseModel, TypeAdapter, ValidationError

METHODS = {
    found.__api_method__.lower(): found
    for name in methods.__all__
    if isinstance(getattr(found := getattr(methods, name), "__api_method__", None), str)
}


def flaws_of_answer(method: str, answer: Mapping[str, Any]) -> Iterator[str]:
    """What is wrong with an answer to a method, each with its place in it."""
    kind = _answer_to(method.lower())
    try:
        read = kind.validate_python(answer)
    except ValidationError as error:
        yield from (f"{_place(each['loc'])}: {each['msg']}" for each in error.errors(include_input=False))
        return
    yield from _unknown(read, "")
    yield from _differences(answer, kind.dump_python(read, mode="json", by_alias=True, exclude_unset=True), "")


@cache
def _answer_to(method: str) -> TypeAdapter[Any]:
    return TypeAdapter(Response[METHODS[method].__returning__])


def flaws_of_request(method: str, params: Mapping[str, Any]) -> Iterator[str]:
    """What is wrong with a request, each with its place in it."""
    kind = METHODS.get(method.lower())
    if kind is None:
        yield "there is no such method"
        return
    files = {value.removeprefix("attach://") for value in _texts(params) if value.startswith("attach://")}
    try:
        read = kind.model_validate({name: _opened(value) for name, value in params.items() if name not in files})
    except ValidationError as error:
        yield from (f"{_place(each['loc'])}: {each['msg']}" for each in error.errors(include_input=False))
        return
    yield from _unknown(read, "")


def _opened(value: Any) -> Any:
    """A field of a form that is JSON, as what it says."""
    if isinstance(value, str) and value[:1] in ("{", "["):
        try:
            return json.loads(value)
        except ValueError:
            return value
    return value


def _texts(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        opened = _opened(value)
        yield from [value] if opened is value else _texts(opened)
    for inner in value.values() if isinstance(value, dict) else value if isinstance(value, list) else ():
        yield from _texts(inner)


def _unknown(value: Any, place: str) -> Iterator[str]:
    """Fields that the shapes do not have, anywhere inside."""
    if isinstance(value, BaseModel):
        yield from (f"{place}.{name}: no such field" for name in value.model_extra or {})
        for name in value.model_fields_set:
            yield from _unknown(getattr(value, name), f"{place}.{name}")
    for at, inner in enumerate(value if isinstance(value, list) else ()):
        yield from _unknown(inner, f"{place}[{at}]")


def _differences(sent: Any, read: Any, place: str) -> Iterator[str]:
    """Where what was read is written back otherwise than it was sent."""
    if isinstance(sent, dict) and isinstance(read, dict):
        for name in sorted(sent.keys() | read.keys()):
            yield from _differences(sent.get(name), read.get(name), f"{place}.{name}")
    elif isinstance(sent, list) and isinstance(read, list) and len(sent) == len(read):
        for at, (one, other) in enumerate(zip(sent, read, strict=True)):
            yield from _differences(one, other, f"{place}[{at}]")
    elif (type(sent), sent) != (type(read), read):
        yield f"{place}: {sent!r} is read as {read!r}"


def _place(steps: tuple[int | str, ...]) -> str:
    return "".join(f"[{step}]" if isinstance(step, int) else f".{step}" for step in steps)


def flaws_in(recording: Path) -> Iterator[str]:
    """Everything that is wrong in a recording, each kind of flaw once."""
    seen = set[str]()
    for line in recording.read_text(encoding="utf-8").splitlines():
        call = json.loads(line)
        name = str(call["method"])
        found = [f"{name} asked: {flaw}" for flaw in flaws_of_request(name, call["params"])]
        found += [f"{name} answered: {flaw}" for flaw in flaws_of_answer(name, call["answer"])]
        yield from (flaw for flaw in found if flaw not in seen)
        seen.update(found)


if __name__ == "__main__":
    found = list(flaws_in(Path(sys.argv[1])))
    print("\n".join(found))
    sys.exit(1 if found else 0)
