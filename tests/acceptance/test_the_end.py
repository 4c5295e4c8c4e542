"""The end of a course: what changed, favourites, the coach's look at an upkeep plan, upkeep, a retest weeks later."""

from __future__ import annotations

import re

import pytest

from tests.acceptance.driver import Practice, Said
from tests.acceptance.people import COACH, NEXT, Client

pytestmark = pytest.mark.asyncio(loop_scope="module")

SHORT = """\
title: A short one
goal: Reach the floor.
for: Anybody in a test.
setting: At home.
led-by: Somebody who knows.
muscles: [hamstrings]
equipment: [strap: [towel]]
measures: [fingertip-to-floor]
sessions:
  legs:
    warm-up: Walk.
    blocks:
      - rounds: 3
        items:
          - {movement: supine-hamstring-strap, hold: 30, side: each}
          - {movement: doorway-hamstring, hold: 30, side: each}
          - {movement: cat-cow, reps: 8}
days:
  - {measure: {which: fingertip-to-floor, trials: 1}, session: legs}
  - {session: legs, times: 5}
  - {title: The test again, measure: {which: fingertip-to-floor, trials: 1}}
"""


WITHOUT_RETEST = SHORT.replace("times: 5", "times: 8").partition("  - {title: The test again")[0]
"""Nine days, a test on the first one only."""


async def joins_the_short_one(chat: Practice, name: str, text: str = SHORT) -> Client:
    before = max(m.id for m in await chat.messages(COACH))
    await chat.post("document", chat=COACH, name="short.yaml", text=text)
    await chat.settled()
    report = (await chat.from_bot(COACH, after=before))[-1]
    published = (await chat.tap(COACH, report, "Publish"))[-1]
    found = re.search(r"start=([\w-]+)", (await chat.tap(COACH, published, "Invite one client"))[-1].text)
    assert found is not None
    number = next(NEXT)
    offer = (await chat.say(number, f"/start {found[1]}", first_name=name))[-1]
    await chat.screened(number, offer)
    times = (await chat.say(number, "Lisbon"))[-1]
    asked = (await chat.tap(number, times, "07:00"))[-1]
    return Client(chat, number, (await chat.tap(number, asked, "Begin today"))[-1])


async def test_a_course_ends_with_what_changed_and_goes_over_into_upkeep(chat: Practice) -> None:
    client = await joins_the_short_one(chat, "Endwell")
    assert "12 cm" in (await client.says("12")).text
    for _ in range(6):
        await client.tap("All done, no pain")
        await _next_day(client)
    assert client.day.text.startswith("Day 7: The test again")
    result = await client.says("3")
    assert "a real gain" in result.text
    before = result.id
    told_before = max(m.id for m in await chat.messages(COACH))
    await chat.post("clock", days=1)
    end = await chat.from_bot(client.number, after=before)
    assert "You have reached the end of the programme" in end[0].text
    assert "12 cm at the start, 3 cm now. A real gain" in end[1].text
    assert end[1].photo is not None
    liked = await _likes_two(chat, client.number, end[2])
    assert "says what comes next" in liked.text

    report = next(m for m in await chat.from_bot(COACH, after=told_before) if "Endwell has reached the end" in m.text)
    assert "Sessions done: 6 of 6." in report.text
    assert "fingertip to floor: 12 to 3 cm. A real gain." in report.text
    assert "Too few days to tell: 3 movements." in report.text
    plan = (await chat.tap(COACH, report, "Look at an upkeep plan"))[-1]
    assert "three days a week" in plan.text
    assert "Liked best: " in plan.text
    assert "begins on their next training day" in (await chat.tap(COACH, plan, "Let it run from tomorrow"))[-1].text
    told = (await chat.messages(client.number))[-1]
    assert "three days a week" in told.text
    listed = (await chat.say(COACH, "/programmes"))[-1]
    assert "upkeep" not in listed.text, "nobody else is invited to it"
    again = (await chat.tap(COACH, plan, "Let it run from tomorrow"))[-1]
    assert "Nothing was changed" in again.text

    sessions = 0
    for _ in range(7):
        if await _next_day(client):
            sessions += 1
            await client.tap("All done, no pain")
    assert sessions == 3
    await client.says("/measure")
    said = await client.says("2")
    assert "At the start it was 12 cm" in said.text, "compared with the first test of the course that it keeps up"


async def _likes_two(chat: Practice, number: int, question: Said) -> Said:
    more = (await chat.tap(number, question, question.buttons[0][0]))[-1]
    assert "another one" in more.text
    assert question.buttons[0] not in more.buttons
    return (await chat.tap(number, more, more.buttons[0][0]))[-1]


async def _next_day(client: Client) -> bool:
    """Goes to the next date, and to its message if it brings a day; other words are passed over."""
    before = max(m.id for m in await client.chat.messages(client.number))
    await client.chat.post("clock", days=1)
    said = await client.chat.from_bot(client.number, after=before)
    days = [message for message in said if message.text.startswith("Day ")]
    client.day = days[0] if days else client.day
    return bool(days)


async def test_after_the_end_a_warning_sign_is_heard_and_words_reach_the_coach(chat: Practice) -> None:
    client = await joins_the_short_one(chat, "Afterwards", WITHOUT_RETEST)
    await client.says("12")
    for _ in range(9):
        before = max(m.id for m in await chat.messages(client.number))
        await client.tap("All done, no pain")
        await _next_day(client)
    end = await chat.from_bot(client.number, after=before)
    assert any("reached the end" in m.text for m in end)
    offer = next(m for m in end if "Take the test once more" in m.text)
    await chat.tap(client.number, offer, "fingertip to floor")
    assert "At the start it was 12 cm" in (await client.says("11")).text
    assert "passed this on" in (await client.says("Thank you, may I begin the next programme soon?")).text
    said = await client.says("I cannot feel anything between my legs")
    assert "local emergency number" in said.text
    assert any("Afterwards needs a look" in m.text for m in await chat.from_bot(COACH))
    before = max(m.id for m in await chat.messages(client.number))
    await chat.post("clock", days=56)
    offers = [m for m in await chat.from_bot(client.number, after=before) if "Eight weeks have passed" in m.text]
    assert len(offers) == 1
    assert "The test: fingertip to floor" in (await chat.tap(client.number, offers[0], "Take the test"))[-1].text
    assert "At the start it was 12 cm" in (await client.says("10")).text
