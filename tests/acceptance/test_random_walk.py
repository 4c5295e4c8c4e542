"""People who tap and type anything, in any order: no update fails, nothing is refused, dates stay single."""

from __future__ import annotations

import random
import sqlite3
from pathlib import Path

import pytest

from tests.acceptance.driver import Practice, practice
from tests.acceptance.people import COACH, Client

WORDS = [
    "done",
    "done 3",
    "no pain",
    "pain 7",
    "sore both sides",
    "not today, ill",
    "well again",
    "stop",
    "thanks",
    "part of it, no time",
    "7",
    "12 cm",
    "0",
    "-3",
    "tingling in my foot",
    "it is worse",
    "settled",
    "what now?",
    "last year I had a pop",
    "/today",
    "/help",
    "/settings",
    "sharp pain 2",
    "😀",
]


async def step(chat: Practice, chance: random.Random, clients: list[Client]) -> None:
    """One thing that somebody does."""
    client, dice = chance.choice(clients), chance.random()
    if dice < 0.12:
        await chat.post("clock", next="morning")
    elif dice < 0.6:
        who = COACH if dice < 0.18 else client.number
        said = [m for m in await chat.from_bot(who) if m.buttons][-4:]
        if said:
            under = chance.choice(said)
            _label, data = chance.choice(under.buttons)
            await tap(chat, who, under.id, data)
    else:
        await chat.post("say", chat=client.number, text=chance.choice(WORDS))


async def tap(chat: Practice, who: int, message: int, button: str) -> None:
    """A button that an edit has taken away meanwhile cannot be tapped."""
    try:
        await chat.post("tap", chat=who, message=message, button=button)
    except AssertionError as refused:
        if "there is no button" not in str(refused):
            raise


@pytest.mark.parametrize("seed", [4, 11])
async def test_nothing_that_people_do_breaks_the_talk(tmp_path: Path, seed: int) -> None:
    chance = random.Random(seed)
    async with practice(tmp_path) as (chat, _process):
        clients = [await Client.joins(chat, f"Walker {n}") for n in range(4)]
        for _ in range(160):
            await step(chat, chance, clients)
        await chat.settled()
        with sqlite3.connect(f"file:{tmp_path / 'easeward.sqlite'}?mode=ro", uri=True) as database:

            def rows(query: str) -> list[tuple[object, ...]]:
                return database.execute(query).fetchall()

            assert rows("SELECT update_id, failure FROM inbox WHERE state != 'handled'") == []
            assert rows("SELECT key, state, why FROM outbox WHERE state != 'sent'") == []
            assert rows("SELECT person_id FROM ledger GROUP BY person_id, local_date HAVING count(*) > 1") == []
            assert rows("SELECT id FROM due WHERE at < (SELECT max(made_at) FROM ledger)") == []
