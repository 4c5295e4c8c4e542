"""The practice chat stopped and started again: it goes on where it was, in the middle of an answer too."""

from __future__ import annotations

import asyncio
import sys
from pathlib import Path

from tests.acceptance.driver import practice

CLIENT, COACH = 2001, 1001


async def test_killed_between_two_taps_it_goes_on_with_the_second(tmp_path: Path) -> None:
    async with practice(tmp_path) as (chat, process):
        await chat.post("clock", days=2)
        now = (await chat.get("clock"))["now"]
        day = (await chat.from_bot(CLIENT))[-1]
        await chat.tap(CLIENT, day, "Done, some pain")
        before = await chat.messages(CLIENT)
        process.kill()
        await process.wait()
    async with practice(tmp_path) as (chat, process):
        assert (await chat.get("clock"))["now"] == now
        assert await chat.messages(CLIENT) == before
        await chat.tap(CLIENT, await chat.again(CLIENT, day), "4")
        assert (await chat.again(CLIENT, day)).text.startswith("Noted: done, pain 4.")
        await chat.post("clock", next="morning")
        asked = [said.text for said in await chat.from_bot(CLIENT, after=day.id)]
        assert len([text for text in asked if "How is it now?" in text]) == 1
        assert len([m for m in await chat.messages(COACH) if "has joined" in m.text]) == 1


async def test_the_calendar_only_goes_forward_and_names_what_it_needs(tmp_path: Path) -> None:
    async with practice(tmp_path) as (chat, _process):
        assert await chat.status_of("clock", to="2001-01-01T07:00:00Z") == 400
        assert await chat.status_of("clock", to="2030-01-01T07:00:00") == 400
        assert await chat.status_of("clock", days="many") == 400
        assert await chat.status_of("tap", chat=CLIENT, message=999_999, button="x") == 404
        assert await chat.status_of("say", chat="x", text="y") == 400


async def test_a_port_that_is_taken_is_said_and_is_wrong_use(tmp_path: Path) -> None:
    server = await asyncio.start_server(lambda _r, w: w.close(), "127.0.0.1", 0)
    port = server.sockets[0].getsockname()[1]
    process = await asyncio.create_subprocess_exec(
        *(sys.executable, "-m", "bot.cli", "practice", "--no-open", "--port", str(port), "--data", str(tmp_path)),
        stderr=asyncio.subprocess.PIPE,
    )
    _out, err = await process.communicate()
    server.close()
    assert process.returncode == 2
    assert f"port {port} is taken" in err.decode()
