"""Whatever people can send is handled; whatever no platform would send fails alone; the large run is a bench."""

from __future__ import annotations

import pytest
from sqlalchemy import select

from db.engine import Database
from db.schema import Coach, Person
from tests.fuzzing import CLIENT, COACH, STRANGER, people, read_bodies, run

pytestmark = pytest.mark.usefixtures("store")


async def test_updates_at_random_are_handled_or_fail_alone(database: Database) -> None:
    await database.write(people)
    found, wrong = await run(database, seed=1, count=500)
    assert wrong == []
    assert found["handled"] > 250
    async with database.reading() as session:
        assert set(await session.scalars(select(Person.chat))) >= {COACH, CLIENT, STRANGER}
        assert list(await session.scalars(select(Coach.person_id))) == [9001], "nobody became a coach by accident"


def test_bodies_at_random_are_updates_or_refused() -> None:
    found = read_bodies(seed=1, count=1000)
    assert found["update"] > 100
    assert found["refused"] > 100
