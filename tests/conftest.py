"""Fixtures of all tests: `store` runs a test once on each kind of database."""

from __future__ import annotations

from collections.abc import AsyncIterator, Iterator

import pytest
from hypothesis import settings

from tests.postgres import Server, serving
from tests.stores import Databases, Files, Place, kept_in

settings.register_profile("untimed", deadline=None)
settings.load_profile("untimed")


@pytest.fixture(scope="session")
def postgres() -> Iterator[Server]:
    """The tests' own PostgreSQL server, started when the first test asks for it."""
    with serving() as server:
        yield server


@pytest.fixture(params=["sqlite", "postgresql"])
async def store(request: pytest.FixtureRequest) -> AsyncIterator[Place]:
    """The kind of database that a test's databases are kept in; the test runs once on each."""
    place = Files() if request.param == "sqlite" else Databases(request.getfixturevalue("postgres"))
    async with kept_in(place) as here:
        yield here


@pytest.fixture
def grammar_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    """Replies are read without a second reader, who is taught anew from time to time."""
    monkeypatch.setattr("plans.redflags.suspected", lambda reply: None)
    monkeypatch.setattr("plans.redflags.speaks_against", lambda reply, level: False)
    monkeypatch.setattr("plans.replies.doubt_in", lambda *read: None)
