"""A strict client that others wrote plays the bot: it reads every answer of the local platform by its own shapes."""

from __future__ import annotations

import asyncio
import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest

from tests.acceptance.driver import Said
from tests.acceptance.serving import TOKEN, House, house
from tests.foreign.environment import HERE, check_calls, foreign_python
from tests.postgres import free_port

ANN, COACH = 101, 900
USED = {
    *("getMe", "getChat", "getFile", "setMyCommands", "getMyCommands", "sendMessage", "sendPhoto", "sendAnimation"),
    *("sendVideo", "sendDocument", "sendMediaGroup", "sendChatAction", "editMessageText", "editMessageCaption"),
    *("editMessageMedia", "editMessageReplyMarkup", "deleteMessage", "answerCallbackQuery", "deleteWebhook"),
}
"""All methods of the local platform but those by which updates come."""
DOT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg=="
"""A picture of one point, as base64."""


@dataclass(slots=True)
class Foreign:
    """The foreign bot and people who chat with it."""

    place: House
    process: asyncio.subprocess.Process

    async def hears(self, chat: int, path: str, **body: object) -> Said:
        """A person does something; what the bot then says first."""
        before = max((said.id for said in await self.place.chat.messages(chat)), default=0)
        mine = (await self.place.chat.post(path, chat=chat, **body)).get("id", before)
        return (await self._until(chat, max(before, mine), 1))[0]

    async def hears_at_last(self, chat: int, words: str, path: str, /, **body: object) -> None:
        """A person does something; waits until the bot's last words are these."""
        await self.place.chat.post(path, chat=chat, **body)
        async with asyncio.timeout(20):
            while (await self.place.chat.from_bot(chat))[-1].text != words:
                await asyncio.sleep(0.02)

    async def taps(self, chat: int, said: Said, label: str, *, brings: int = 0) -> list[Said]:
        """A tap, answered; what it brings, so many messages, else the same message as it stands then."""
        tap = (await self.place.chat.post("tap", chat=chat, message=said.id, button=label))["tap"]
        async with asyncio.timeout(20):
            while (await self.place.chat.get(f"answer?tap={tap}"))["text"] is None:
                await asyncio.sleep(0.02)
        return await self._until(chat, said.id, brings) if brings else [await self.place.chat.again(chat, said)]

    async def ends(self) -> dict[str, Any]:
        """Stops the bot; what it found."""
        self.process.terminate()
        out, _ = await asyncio.wait_for(self.process.communicate(), 20)
        return dict(json.loads(out))

    async def _until(self, chat: int, after: int, count: int) -> list[Said]:
        async with asyncio.timeout(20):
            while len(said := await self.place.chat.from_bot(chat, after=after)) < count:
                await asyncio.sleep(0.02)
        return said


async def begun(place: House, *words: str) -> Foreign:
    """The foreign bot, as soon as it listens."""
    process = await asyncio.create_subprocess_exec(
        *(str(foreign_python()), str(HERE / "bot.py"), place.chat.address, TOKEN, *words),
        stdout=asyncio.subprocess.PIPE,
    )
    assert process.stdout is not None
    assert (await asyncio.wait_for(process.stdout.readline(), 60)) == b"ready\n"
    return Foreign(place, process)


async def played(foreign: Foreign) -> None:
    """The main talk, from the link to the block."""
    about = await foreign.hears(ANN, "open", start="abc_DEF-1", first_name="Ann")
    assert about.text == "Before we begin\nYour coach sees your answers & your tests.\nMore"
    assert (await foreign.taps(ANN, about, "I agree"))[0].text == "Which city do you live in?"
    times = await foreign.hears(ANN, "say", text="Lisbon")
    day = (await foreign.taps(ANN, times, "07:00", brings=1))[-1]
    assert (day.text, day.photo is not None) == ("Day 1\n1. Long reach: 30 s each side", True)
    rows = (await foreign.taps(ANN, day, "Some pain"))[0].buttons
    assert [text for text, _data in rows] == [str(n) for n in range(1, 11)]
    assert (await foreign.taps(ANN, await foreign.place.chat.again(ANN, day), "4"))[0].text == "Tomorrow is day 2."
    again = await foreign.hears(ANN, "say", text="/today")
    assert again.photo == day.photo, "the second time it goes by its id"
    shown = await foreign.taps(ANN, again, "How", brings=5)
    assert [said.text for said in shown[:2]] == ["There, back", "As I do it"]
    await foreign.taps(ANN, again, "Lead me")
    assert (await foreign.hears(ANN, "say", text="a <note> & more")).text == "Noted: a <note> & more"
    note = [said for said in await foreign.place.chat.messages(ANN) if said.sender != "bot"][-1]
    assert (await foreign.hears(ANN, "edit", message=note.id, text="another")).text == "Changed."
    await foreign.hears(ANN, "location", latitude=38.72, longitude=-9.14)
    await foreign.hears(ANN, "photo", base64=DOT)
    await foreign.hears(ANN, "video", name="a.mp4", base64="AAAA")
    report = await foreign.hears(
        COACH, "document", name="mine.yaml", text="title: Mine", caption="look", first_name="C"
    )
    assert [text for text, _data in report.buttons] == ["Publish"]
    await foreign.hears_at_last(ANN, "Nothing is kept any more.", "say", text="/mine")
    await foreign.place.chat.post("block", chat=ANN, on=True)
    await foreign.hears_at_last(COACH, "Noted: the last word", "say", text="the last word")


@pytest.mark.parametrize("told", [False, True], ids=["asks", "is told"])
async def test_a_strict_client_of_others_finds_nothing_wrong_with_the_platform(tmp_path: Path, told: bool) -> None:
    async with house(tmp_path) as place:
        foreign = await begun(place, *(("--webhook", str(free_port())) if told else ()))
        try:
            await played(foreign)
            found = await foreign.ends()
        finally:
            if foreign.process.returncode is None:
                foreign.process.kill()
                await foreign.process.wait()
    assert found["flaws"] == []
    assert set(found["methods"]) == USED | ({"setWebhook", "getWebhookInfo"} if told else {"getUpdates"})
    assert found["people"][0] == "start abc_DEF-1 Ann en"
    assert "file mine.yaml 11 11 look" in found["people"]
    assert found["people"][-2:] == ["was member is kicked", "says the last word"]


def test_a_recording_with_something_wrong_is_not_passed_over(tmp_path: Path) -> None:
    person = {"id": ANN, "is_bot": False, "first_name": "Ann", "shoe_size": 41}
    message = {"message_id": 1, "date": "1772434800", "chat": {"id": ANN}, "from": person}
    calls = [
        {"method": "sendMessage", "params": {"text": "x", "colour": "red"}, "answer": {"ok": True, "result": message}},
        {"method": "getUpdates", "params": {}, "answer": {"ok": True, "result": [{"update_id": 1, "message": 5}]}},
        {
            "method": "deleteMessage",
            "params": {"chat_id": ANN, "message_id": 1},
            "answer": {"ok": True, "result": True},
        },
    ]
    recording = tmp_path / "calls.jsonl"
    recording.write_text("\n".join(json.dumps(call) for call in calls), encoding="utf-8")
    with pytest.raises(AssertionError) as refused:
        check_calls(recording)
    found = str(refused.value)
    assert "sendMessage asked: .chat_id" in found
    assert "sendMessage answered: .result.chat.type" in found
    assert "getUpdates answered: .result[0].message" in found
    assert "deleteMessage" not in found
