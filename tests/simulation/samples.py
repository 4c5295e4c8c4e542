"""The sample programmes, read once."""

from __future__ import annotations

from functools import cache
from importlib.resources import files

from plans.programme import Programme
from plans.reading import read_programme
from plans.rehearsal import Stage

PROGRAMMES = ("rowing-club", "hill-walkers", "pit-musicians")


@cache
def programme_of(name: str) -> Programme:
    """A sample programme."""
    return read_programme(files("plans.library").joinpath(f"{name}.yaml").read_text(encoding="utf-8"))


@cache
def stage(name: str) -> Stage:
    """A sample programme as bodies feel it."""
    return Stage(programme_of(name))
