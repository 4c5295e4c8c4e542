"""All three samples lived through in all languages, from the link to the upkeep plan; at the end everything that tells
of it agrees, row for row: the ledger, the coach's digest, the exports, and what is left after an erasure."""

from __future__ import annotations

import csv
import io
import json
import random
import re
from collections import Counter
from collections.abc import AsyncIterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from itertools import product
from typing import Any

import pytest
import pytest_asyncio
from sqlalchemy import select

from bot import grouping
from bot.app import Running
from bot.exports import tables
from bot.flows import digest_files, weeks
from bot.flows.desk import Desk
from bot.grouping import World
from bot.practice.invented import PLAYING, ROWING, WALKING, Member, Turn
from bot.practice.platform import Platform
from bot.practice.showing import shown_all
from bot.practising import COACH, PracticeMover, practice_running
from bot.words import LOCALES, words
from db import erasure, record
from db.courses import CourseState
from db.schema import Coach, Course, LedgerRow, Person, ProgrammeVersion
from plans.reading import read_programme
from plans.simulated import natures
from tests.integration.browsers import ONE_LOOP

pytestmark = [pytest.mark.timeout(900), ONE_LOOP]

FIRST = datetime(2027, 1, 4, tzinfo=UTC)
MOST = 80
"""Dates by which everybody is through, with days that come again."""
ENGLISH = re.compile(r"\b(the|your|you|with|today|then|rest|day)\b", re.IGNORECASE)
"""Words that no Spanish or German sentence has."""


@dataclass
class Lived:
    """A practice after all courses."""

    program: Running
    platform: Platform
    mover: PracticeMover
    members: list[Member]


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def lived(tmp_path_factory: pytest.TempPathFactory) -> AsyncIterator[Lived]:
    patch = pytest.MonkeyPatch()
    patch.setattr(grouping, "TOGETHER_FROM", 2)
    found: list[Lived] = []

    async def scene(program: Running, platform: Platform, mover: PracticeMover) -> None:
        members = [_member(n, *who) for n, who in enumerate(product((ROWING, PLAYING, WALKING), LOCALES))]
        world = World(program.database, platform, mover, members, FIRST, looks_until=MOST)
        await world.begins()
        for date in range(MOST):
            await world.lives(date)
            if await _all_over(program, len(members)):
                break
        found.append(Lived(program, platform, mover, members))

    folder = tmp_path_factory.mktemp("courses")
    async with practice_running(folder, port=0, scene=scene, starts=FIRST + timedelta(hours=4)):
        yield found[0]
    patch.undo()


def _member(number: int, programme: str, language: str) -> Member:
    steady = natures(1, random.Random(1))[0]
    name = f"{language.title()} {programme.partition('-')[0]}"
    return Member(3001 + number, name, programme, steady, "Lisbon", 0, Turn.NONE, 0, 0.3, language)


async def _all_over(program: Running, count: int) -> bool:
    async with program.database.reading() as session:
        states = (await session.scalars(select(Course.state))).all()
    return states.count(CourseState.FINISHED) >= count


async def test_everybody_came_through_in_their_own_language(lived: Lived) -> None:
    async with lived.program.database.reading() as session:
        people = {one.chat: one for one in await session.scalars(select(Person))}
        courses = (await session.scalars(select(Course))).all()
    assert [people[one.chat].language for one in lived.members] == [one.language for one in lived.members]
    assert [course.state for course in courses] == [CourseState.FINISHED] * len(lived.members)
    for one in lived.members:
        texts = [m["text"] for m in _messages(lived, one.chat) if m["from"] == "bot"]
        assert len(texts) > 40
        strange = [text for text in texts if ENGLISH.search(text)]
        assert (one.language == "en") == bool(strange), strange[:5]


async def test_the_coach_lets_an_upkeep_plan_run_for_each(lived: Lived) -> None:
    async with lived.program.database.reading() as session:
        courses = [course.id for course in (await session.scalars(select(Course).order_by(Course.id))).all()]
    for course in courses[: len(lived.members)]:
        newest = lived.platform.chats()[0]["last"]
        lived.platform.forge_tap(COACH, newest, f"upkeep:{course}:run")
        await lived.mover.settle()
    async with lived.program.database.reading() as session:
        upkeeps = (await session.scalars(select(Course).where(Course.after_id.is_not(None)))).all()
        sources = {c.person_id: (await session.get_one(ProgrammeVersion, c.version_id)).source for c in upkeeps}
    assert len(upkeeps) == len(lived.members)
    for source in sources.values():
        programme = read_programme(source)
        assert {"es", "de"} <= programme.texts.keys()
        assert programme.training is not None
        assert programme.training.count == 3
    await lived.mover.move(lived.mover.now() + timedelta(days=3))
    for one in lived.members:
        title = words(one.language).gettext("{title}: upkeep").partition(":")[2].strip()
        assert title
        texts = [m["text"] for m in _messages(lived, one.chat)[-8:] if m["from"] == "bot"]
        assert any("1" in text for text in texts)


async def test_ledger_digest_and_exports_agree_to_the_row(lived: Lived) -> None:
    async with lived.program.database.reading() as session:
        coach = (await session.scalars(select(Coach))).one()
        own = await session.get_one(Person, coach.person_id)
        rows = (await session.scalars(select(LedgerRow))).all()
        kept = await record.of_coach(session, coach.id)
        desk = Desk(session=session, now=lived.mover.now(), cause="look", bot_username="b")
        found = await weeks.read(desk, own, coach, lived.mover.now().date())
        table = digest_files.table(desk, own, found)
    ledger = {(row.course_id, row.local_date.isoformat(), str(row.kind)) for row in rows}
    exported = list(csv.DictReader(io.StringIO(tables.tables(kept)["days.csv"].decode("utf-8-sig"))))
    assert {(int(one["course"]), one["date"], one["row"]) for one in exported} == ledger
    assert len(exported) == len(rows)
    told = list(csv.DictReader(io.StringIO(table.body.decode("utf-8-sig"))))
    first = min(one["date"] for one in told)
    assert {(one["course"], one["date"]) for one in told} == {
        (one["course"], one["date"]) for one in exported if first <= one["date"] <= found.last.isoformat()
    }
    by_client = Counter(one["client"] for one in exported)
    assert len(by_client) == len(lived.members)


async def test_who_is_erased_is_gone_from_all_of_them_and_nobody_else_is(lived: Lived) -> None:
    async with lived.program.database.reading() as session:
        coach = (await session.scalars(select(Coach))).one()
        before = await record.of_coach(session, coach.id)
    gone = lived.members[4]

    async def erase(session: Any) -> None:
        person = await session.scalar(select(Person).where(Person.chat == gone.chat))
        await erasure.erase(session, person, lived.mover.now())

    await lived.program.database.write(erase)
    async with lived.program.database.reading() as session:
        after = await record.of_coach(session, coach.id)
        rows = (await session.scalars(select(LedgerRow))).all()
    left = [one for one in before if one.person.label != gone.name]
    assert _days(after) == _days(left)
    assert len(rows) == sum(len(one.rows) for one in after)
    assert gone.name not in json.dumps([one.decode() for one in tables.tables(after).values()])


def _days(kept: list[Any]) -> bytes:
    return tables.tables(kept)["days.csv"]


def _messages(lived: Lived, chat: int) -> list[dict[str, Any]]:
    return shown_all(lived.platform, chat, lived.platform.messages(chat))
