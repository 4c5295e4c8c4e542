"""Rights as a table (`tests/rights.py`): every role tries everything that there is, and nothing is left out of it."""

from __future__ import annotations

import ast
import re
from collections.abc import AsyncIterator, Awaitable, Callable
from dataclasses import replace
from fnmatch import fnmatchcase
from pathlib import Path
from typing import Any

import pytest
import pytest_asyncio
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession
from telegram.ext import CommandHandler

import bot
from bot import commands, taps
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.handlers import handlers
from db import schema
from db.engine import Database
from tests import rights
from tests.integration.browsers import ONE_LOOP
from tests.integration.fakes import database_in
from tests.integration.updates import BOT, handled, message, offline
from tests.rights import NOW, Role

OURS = ("outbox", "attachment", "due", "note")
"""Tables of what is said and when; whoever may not do something is told so."""


REFUSED = ("coach.not_a_coach", "coaching.not_your_part", "checkin.not_yours")


class Undone(Exception):
    """Ends a try; nothing of it stays."""


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def house(tmp_path_factory: pytest.TempPathFactory) -> AsyncIterator[Database]:
    """One practice for all tries: nothing of any of them stays."""
    async with database_in(tmp_path_factory.mktemp("rights")) as database:
        await database.write(rights.scene)
        yield database


Act = Callable[[Desk, schema.Person], Awaitable[object]]


async def tried(house: Database, role: Role, act: Act, data: str = "") -> tuple[bool, list[str]]:
    """Whether a role may do something, and in which tables it changed what is not theirs."""
    found: list[tuple[bool, list[str]]] = []

    async def job(session: AsyncSession) -> None:
        await rights.ready(session, data)
        before = await others(session, role)
        person = await session.get_one(schema.Person, role)
        desk = Desk(session=session, now=NOW, cause="try", bot_username="bot", update_id=1, said_at=NOW)
        desk.installation = replace(desk.installation, under_18=True)
        desk.tapped = 1
        may = True
        try:
            async with session.begin_nested():
                await act(desk, person)
        except NotAllowed as refused:
            may = refused.words not in REFUSED
        session.expire_all()
        after = await others(session, role)
        found.append((may, [name for name in before if before[name] != after[name]]))
        raise Undone

    with pytest.raises(Undone):
        await house.write(job)
    return found[0]


async def others(session: AsyncSession, role: Role) -> dict[str, list[tuple[Any, ...]]]:
    """Every row of what is not the role's own, by table."""
    mine = set(await session.scalars(select(schema.Course.id).where(schema.Course.person_id == role)))
    found = {}
    for table in schema.Base.metadata.sorted_tables:
        if table.name in OURS:
            continue
        rows = (await session.execute(select(table).order_by(*table.primary_key))).mappings()
        found[table.name] = [tuple(row.values()) for row in rows if not _is_own(table.name, row, role, mine)]
    return found


def _is_own(table: str, row: Any, role: Role, mine: set[int]) -> bool:
    if table == "person":
        return bool(row["id"] == role)
    return row.get("person_id") == role or row.get("course_id") in mine


def tapping(data: str) -> Act:
    async def act(desk: Desk, person: schema.Person) -> object:
        return await taps.tap(desk, person, data)

    return act


@ONE_LOOP
@pytest.mark.parametrize("data", rights.TAPS)
async def test_a_button_does_what_it_says_for_those_who_may_and_nothing_for_anybody_else(
    house: Database, data: str
) -> None:
    tries = {role: await tried(house, role, tapping(data), data) for role in Role}
    assert {role for role, (may, _changed) in tries.items() if may} == rights.TAPS[data]
    assert {role: changed for role, (may, changed) in tries.items() if changed and not may} == {}


@ONE_LOOP
@pytest.mark.parametrize("name", rights.COMMANDS)
async def test_a_command_answers_those_who_may_and_changes_nothing_of_anybody_elses(house: Database, name: str) -> None:
    async def act(desk: Desk, person: schema.Person) -> None:
        await commands.COMMANDS[name](desk, person, "")

    tries = {role: await tried(house, role, act) for role in Role}
    assert {role for role, (may, _changed) in tries.items() if may} == rights.COMMANDS[name]
    assert {role: changed for role, (_may, changed) in tries.items() if changed} == {}


_FILE = {"file_id": "a", "file_unique_id": "b"}
_SIDES = {"width": 1, "height": 1}
CONTENT: dict[str, dict[str, Any]] = {
    "document": {"document": {**_FILE, "file_name": "new.yaml"}},
    "film": {"video": {**_FILE, **_SIDES, "duration": 1}, "caption": "long reach"},
    "photo": {"photo": [{**_FILE, **_SIDES}], "caption": "long reach"},
    "location": {"location": {"latitude": 38.7, "longitude": -9.1}},
    "text": {"text": "hello"},
    "anything_else": {"dice": {"emoji": "x", "value": 1}},
    "not_private": {"text": "/people"},
}


def update_of(name: str, role: Role) -> dict[str, Any]:
    """Somebody sends what a handler is for."""
    if name == "not_private":
        return message(1, NOW, chat=-5, sender=role, kind="group", **CONTENT[name])
    if name != "membership":
        return message(1, NOW, chat=role, sender=role, **CONTENT[name])
    here = message(1, NOW, chat=role, sender=role)["message"]
    us = {"user": BOT, "status": "member"}
    gone = {"user": BOT, "status": "kicked", "until_date": 0}
    change = {"chat": here["chat"], "from": here["from"], "date": here["date"]}
    return {"update_id": 1, "my_chat_member": {**change, "old_chat_member": us, "new_chat_member": gone}}


@ONE_LOOP
@pytest.mark.parametrize("name", rights.SENT)
async def test_what_somebody_sends_changes_only_what_the_table_says(house: Database, name: str) -> None:
    application = offline()

    async def tries(role: Role) -> list[str]:
        async def act(_desk: Desk, _person: schema.Person) -> None:
            file = rights.SOURCE.replace("Test hips", "New hips").encode()
            await handled(application, update_of(name, role), NOW, file if name == "document" else None)

        return (await tried(house, role, act))[1]

    who, tables = rights.SENT[name]
    changed = {role: frozenset(found) for role in Role if (found := await tries(role))}
    assert changed == dict.fromkeys(who, tables)


# --- nothing is left out --------------------------------------------------------------------------------------------


def test_every_command_is_in_the_table() -> None:
    assert set(rights.COMMANDS) == set(commands.COMMANDS)


def test_every_handler_is_in_the_table() -> None:
    found = {one.callback.__name__ for one in handlers("bot") if not isinstance(one, CommandHandler)}
    assert found == set(rights.SENT) | {"tapped"}


def test_every_first_word_of_a_button_is_in_the_table() -> None:
    assert {data.partition(":")[0] for data in rights.TAPS} == set(taps.TAPS)


def written() -> set[str]:
    """The data of all buttons as they are written in the program, a star for each value that is put in.

    What looks like it and is none: the key of a message about an absence.
    """
    found = set()
    for file in sorted(Path(bot.__file__).parent.rglob("*.py")):
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
            if isinstance(node, ast.JoinedStr):
                parts = [part.value if isinstance(part, ast.Constant) else "*" for part in node.values]
                found.add("".join(map(str, parts)))
            elif isinstance(node, ast.Constant) and isinstance(node.value, str):
                found.add(node.value)
    data = re.compile(rf"({'|'.join(taps.TAPS)}):[\w*:.-]*[^:\s]")
    return {text for text in found if data.fullmatch(text)} - {"away:*:*:*:*"}


@pytest.mark.parametrize("pattern", sorted(written()))
def test_every_button_that_is_written_anywhere_is_in_the_table(pattern: str) -> None:
    assert any(fnmatchcase(data, pattern) or fnmatchcase(data, f"{pattern}:*") for data in rights.TAPS)
