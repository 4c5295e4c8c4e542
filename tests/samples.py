"""Small programmes for tests."""

from __future__ import annotations

from plans.programme import Programme
from plans.reading import read_programme
from tests.texts import HEAD, NEW, REST, TEST, session

__all__ = ["HEAD", "NEW", "REST", "TEST", "programme", "session"]


def programme(*days: str) -> Programme:
    """A programme of these days."""
    return read_programme(HEAD + "".join(days))
