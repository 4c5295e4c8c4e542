"""`easeward serve` killed in the middle of its work: nothing is lost, and each update counts once."""

from __future__ import annotations

import asyncio
import json
import signal
from importlib.resources import files
from pathlib import Path

import pytest

from tests.acceptance.serving import House, house, people_joined, stopped

SAMPLE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
COACH, CLIENTS = 900, list(range(101, 111))
KILLS, UPDATES = 20, 200
BUSY = (
    "SELECT (SELECT count(*) FROM inbox WHERE state = 'leased'), "
    "(SELECT count(*) FROM outbox WHERE state IN ('leased', 'sending'))"
)


async def kill_at_work(place: House) -> tuple[int, int]:
    """Starts the bot, stops it at a moment at which rows are leased or being sent, and kills it there."""
    process = await place.serve()
    async with asyncio.timeout(60):
        while True:
            process.send_signal(signal.SIGSTOP)
            [(inbox, outbox)] = place.ask(BUSY) or [(0, 0)]
            if inbox or outbox:
                process.kill()
                await process.wait()
                return int(str(inbox)), int(str(outbox))
            process.send_signal(signal.SIGCONT)
            await asyncio.sleep(0.02)


@pytest.mark.timeout(600)
async def test_twenty_kills_lose_nothing_and_count_nothing_twice(tmp_path: Path) -> None:
    async with house(tmp_path) as place:
        process = await place.serve()
        await people_joined(place, coach=COACH, clients=CLIENTS, sample=SAMPLE)
        assert await stopped(process) == 0
        before = place.ask("SELECT count(*) FROM answer")[0][0]
        for n in range(UPDATES):
            chat = CLIENTS[n % len(CLIENTS)]
            await place.chat.post("say", chat=chat, text=f"Where can I buy the mat called number{n:03}?")
        await place.chat.post("fault", method="sendMessage", what="slow", times=100_000, seconds=0.02)

        fell = [await kill_at_work(place) for _ in range(KILLS)]
        assert all(inbox + outbox > 0 for inbox, outbox in fell)

        process = await place.serve()
        await place.until("SELECT count(*) FROM inbox WHERE state IN ('waiting', 'leased')", 0)
        await place.until(f"SELECT count(*) = {before} + {UPDATES} FROM answer", 1)
        await place.until("SELECT count(*) FROM outbox WHERE state IN ('waiting', 'leased', 'sending')", 0, seconds=120)
        assert await stopped(process) == 0

        notes = [str(row[0]) for row in place.ask("SELECT value FROM answer WHERE field = 'note' ORDER BY id")]
        numbers = sorted(int(note.partition("number")[2][:3]) for note in notes)
        assert numbers == list(range(UPDATES))
        assert place.ask("SELECT count(*) FROM inbox WHERE state != 'handled'")[0][0] == 0
        for chat in CLIENTS:
            mine = [
                note
                for note, who in place.ask(
                    "SELECT a.value, p.chat FROM answer a JOIN person p ON p.id = a.person_id "
                    "WHERE a.field = 'note' ORDER BY a.id"
                )
                if who == chat
            ]
            assert mine == sorted(mine, key=str), "one chat's updates are handled in their order"
            replies = [m for m in await place.chat.from_bot(chat) if "passed this on" in m.text]
            assert len(replies) >= UPDATES // len(CLIENTS)
        told = [m.text for m in await place.chat.from_bot(COACH) if "number" in m.text]
        assert {text.partition("number")[2][:3] for text in told} == {f"{n:03}" for n in range(UPDATES)}


async def test_the_log_has_no_token_and_no_words_of_a_person(tmp_path: Path) -> None:
    async with house(tmp_path) as place:
        process = await place.serve()
        await people_joined(place, coach=COACH, clients=CLIENTS[:1], sample=SAMPLE)
        await place.chat.post("fault", method="sendMessage", what="lose-answer", times=1)
        await place.chat.post("say", chat=CLIENTS[0], text="secretword hurts 4 in my hamstring today")
        await place.chat.post("tap", chat=CLIENTS[0], message=1, button="c:1:all", forged=True)
        await asyncio.sleep(2)
        assert await stopped(process) == 0
        assert "practice" not in place.log.replace("easeward_practice_bot", "")
        assert "secretword" not in place.log
        assert "Client" not in place.log
        for line in place.log.splitlines():
            assert set(json.loads(line)) >= {"at", "level", "action"}


async def test_a_second_serve_is_refused_and_says_why(tmp_path: Path) -> None:
    async with house(tmp_path) as place:
        process = await place.serve()
        await place.until("SELECT count(*) >= 0 FROM person", 1)
        await asyncio.sleep(0.5)
        code, out = await place.run("serve")
        assert code == 1
        assert str(process.pid) in out
        assert await stopped(process) == 0
