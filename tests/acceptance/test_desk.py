"""The coach's desk, played through the practice chat: the page of a client, programmes, recordings, many at once."""

from __future__ import annotations

import asyncio
import base64
import re
from importlib.resources import files

import pytest

from tests.acceptance.driver import Practice, Said
from tests.acceptance.people import COACH, Client

pytestmark = pytest.mark.asyncio(loop_scope="module")

ROWING = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")


async def page_of(chat: Practice, name: str) -> Said:
    """The page of a client, found by name."""
    people = (await chat.say(COACH, f"/people {name}"))[-1]
    return (await chat.tap(COACH, people, name))[-1]


async def test_a_day_is_chosen_taken_back_chosen_again_and_told_by_the_day_itself(chat: Practice) -> None:
    client = await Client.joins(chat, "Moved")
    await client.tap("All done, no pain")
    page = await page_of(chat, "Moved")
    assert "Next: " in page.text
    asked = (await chat.tap(COACH, page, "Another day"))[-1]
    assert "Now it is day 1 of" in asked.text
    before = (await chat.say(COACH, "6"))[-1]
    assert "day 6" in before.text
    done = (await chat.tap(COACH, before, "Yes, do this"))[-1]
    assert re.fullmatch(r"Noted\. Moved gets: .* day 6\.", done.text)
    undone = (await chat.tap(COACH, done, "Take it back"))[-1]
    assert undone.text.startswith("Taken back. Moved gets")
    before = (await chat.tap(COACH, await page_of(chat, "Moved"), "A day off"))[-1]
    await chat.tap(COACH, before, "Yes, do this")
    morning = await client.next_morning()
    assert "Rest first, because your coach decided so." in morning.text


async def test_a_message_its_answer_a_note_and_a_pause(chat: Practice) -> None:
    client = await Client.joins(chat, "Spoken")
    page = await page_of(chat, "Spoken")
    await chat.tap(COACH, page, "Message")
    sent = (await chat.say(COACH, "How is the back?"))[-1]
    assert sent.text == "Sent to Spoken. Their answer comes here."
    got = (await chat.from_bot(client.number))[-1]
    assert got.text.endswith("writes\nHow is the back?")
    await chat.tap(client.number, got, "Answer")
    assert "Passed on" in (await client.says("much better, done with the heat pack")).text
    assert any(m.text == "Spoken writes\nmuch better, done with the heat pack" for m in await chat.from_bot(COACH))
    await chat.tap(COACH, page, "Note for myself")
    await chat.say(COACH, "uses a heat pack")
    again = await page_of(chat, "Spoken")
    assert "uses a heat pack" in again.text
    assert '"much better, done with the heat pack"' in again.text
    pause = (await chat.tap(COACH, again, "Pause"))[-1]
    paused = (await chat.tap(COACH, pause, "Until I open it again"))[-1]
    assert "paused until you open it again" in paused.text
    assert "Your coach has paused your course." in (await chat.from_bot(client.number))[-1].text
    assert "Your coach has paused your course." in (await client.says("go on")).text
    await chat.tap(COACH, await page_of(chat, "Spoken"), "Open again")
    assert "has opened your course again" in (await chat.from_bot(client.number))[-1].text


async def test_people_are_filtered_in_the_same_message(chat: Practice) -> None:
    await Client.joins(chat, "Listed")
    people = (await chat.say(COACH, "/people"))[-1]
    label = next(label for label, _data in people.buttons if label.startswith("Going "))
    await chat.tap(COACH, people, label)
    assert any(text == f"[{label}]" for text, _data in (await chat.again(COACH, people)).buttons)


async def test_a_new_version_is_looked_at_rehearsed_published_and_clients_go_over(chat: Practice) -> None:
    client = await Client.joins(chat, "Over")
    await client.tap("All done, no pain")
    source = ROWING.replace("goal: ", "goal: Anew. ", 1)
    before = max(m.id for m in await chat.messages(COACH))
    await chat.post("document", chat=COACH, name="new.yaml", text=source)
    await chat.settled()
    report = (await chat.from_bot(COACH, after=before))[-1]
    changed = (await chat.tap(COACH, report, "What changed"))[-1]
    assert "Anew." in changed.text
    days = (await chat.tap(COACH, report, "Look at a day"))[-1]
    shown = (await chat.tap(COACH, days, "2"))[-1]
    assert shown.photo is not None
    assert shown.text.startswith("Preview of ")
    tap = (await chat.post("tap", chat=COACH, message=shown.id, button="All done, no pain"))["tap"]
    await chat.settled()
    assert "This is a preview" in (await chat.get(f"answer?tap={tap}"))["text"]
    rehearsed = await chat.tap(COACH, report, "Rehearse it")
    for _ in range(200):
        if rehearsed[-1].photo is not None:
            break
        await asyncio.sleep(0.1)
        rehearsed = await chat.from_bot(COACH, after=shown.id)
    assert "rehearsed by 200 invented clients" in rehearsed[-1].text
    offer = (await chat.tap(COACH, report, "Publish"))[-1]
    assert "on an earlier version" in offer.text
    await chat.tap(COACH, offer, "Move all " + re.findall(r"(\d+) clients? (?:is|are) on", offer.text)[0])
    await chat.post("clock", next="morning")
    texts = [m.text for m in await chat.from_bot(client.number)]
    assert any("From today you go by it" in text for text in texts), texts[-3:]
    assert (await client.says("/today")).text.startswith("Day 2")


async def test_a_video_takes_the_drawings_place(chat: Practice) -> None:
    client = await Client.joins(chat, "Filmed")
    before = max(m.id for m in await chat.messages(COACH))
    film = base64.b64encode(b"\x00\x00\x00\x18ftypmp42").decode()
    await chat.post("video", chat=COACH, base64=film, caption="hip hinge drill")
    await chat.settled()
    kept = (await chat.from_bot(COACH, after=before))[-1]
    assert "Your clients now see this for Hip hinge with a stick" in kept.text
    seen = (await chat.say(client.number, "/how hip hinge drill"))[-1]
    raw = (await chat.get_list(f"messages?chat={client.number}&after={seen.id - 1}"))[0]
    assert await chat.file(raw["film"]["file"]) == b"\x00\x00\x00\x18ftypmp42"
    await chat.tap(COACH, kept, "Forget it again")
    drawn = (await chat.say(client.number, "/how hip hinge drill"))[-1]
    raw = (await chat.get_list(f"messages?chat={client.number}&after={drawn.id - 1}"))[0]
    assert raw["film"]["file"] != ""
    assert len(await chat.file(raw["film"]["file"])) > 1000


async def test_many_are_written_to_after_a_look(chat: Practice) -> None:
    client = await Client.joins(chat, "Many")
    people = (await chat.say(COACH, "/people"))[-1]
    asked = (await chat.tap(COACH, people, "Write to these"))[-1]
    assert asked.text.startswith("Type your message to ")
    shown, before = (await chat.say(COACH, "The hall is closed on Friday."))[-2:]
    assert shown.text.endswith("writes\nThe hall is closed on Friday.")
    label = next(label for label, _data in before.buttons if label.startswith("Send to"))
    assert "On its way to" in (await chat.tap(COACH, before, label))[-1].text
    await chat.settled()
    await chat.post("clock", next="morning")
    texts = [m.text for m in await chat.from_bot(client.number)]
    assert any(text.endswith("writes\nThe hall is closed on Friday.") for text in texts)
