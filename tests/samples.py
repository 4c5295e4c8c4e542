"""The sample programmes, and small ones for tests."""

from __future__ import annotations

from functools import cache
from importlib.resources import files

from plans.programme import Programme
from plans.reading import read_programme
from tests.texts import HEAD, NEW, REST, TEST, session

__all__ = ["HEAD", "NEW", "REST", "SAMPLES", "TEST", "programme", "sample", "session"]

SAMPLES = ("rowing-club", "hill-walkers", "pit-musicians")


@cache
def sample(name: str) -> Programme:
    """A sample programme as it is written."""
    return read_programme(files("plans.library").joinpath(f"{name}.yaml").read_text(encoding="utf-8"))


def programme(*days: str) -> Programme:
    """A programme of these days."""
    return read_programme(HEAD + "".join(days))
