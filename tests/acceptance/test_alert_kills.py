"""A call for a red flag whose process is killed while it leaves: the next process brings it, and keeps calling due."""

from __future__ import annotations

import asyncio
import signal
from importlib.resources import files
from pathlib import Path

import pytest

from tests.acceptance.serving import house, people_joined, stopped

SAMPLE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
COACH, CLIENT = 900, 101
IN_HAND = "SELECT count(*) FROM outbox WHERE kind = 'alert' AND state IN ('leased', 'sending')"


@pytest.mark.timeout(300)
async def test_a_killed_process_loses_no_call(tmp_path: Path) -> None:
    async with house(tmp_path) as place:
        process = await place.serve()
        await people_joined(place, coach=COACH, clients=[CLIENT], sample=SAMPLE)
        await place.chat.post("fault", method="sendMessage", what="slow", times=1000, seconds=2)
        await place.chat.post("say", chat=CLIENT, text="I heard a pop and my hamstring is swelling")
        async with asyncio.timeout(60):
            while (place.ask(IN_HAND) or [(0,)])[0][0] != 1:
                await asyncio.sleep(0.02)
        process.send_signal(signal.SIGKILL)
        await process.wait()

        process = await place.serve()
        await place.until("SELECT count(*) FROM outbox WHERE kind = 'alert' AND state != 'sent'", 0)
        assert any(f"Client {CLIENT} needs a look" in m.text for m in await place.chat.from_bot(COACH))
        assert place.ask("SELECT count(*) FROM due WHERE kind = 'call'")[0][0] == 1
        code, out = await place.run("doctor")
        assert "every alert reaches somebody" in out, (code, out)
        await place.chat.post("block", chat=COACH, on=True)
        await place.until(f"SELECT count(*) FROM person WHERE chat = {COACH} AND unreachable_since IS NOT NULL", 1)
        _code, out = await place.run("doctor")
        assert "has blocked the bot, nobody hears" in out
        assert await stopped(process) == 0
