"""Training weekdays and a group that goes together, as a client sees them."""

from __future__ import annotations

import re
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from tests.acceptance.driver import Practice, Said, practice
from tests.texts import HEAD, REST, TEST, session

COACH, CLIENT = 1001, 2777
WEEKDAYS = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")


async def joins(chat: Practice, text: str) -> Said:
    """The coach publishes a file, and a client begins it today; gives the first day's message."""
    await chat.post("document", chat=COACH, name="p.yaml", text=text)
    await chat.settled()
    report = (await chat.from_bot(COACH))[-1]
    published = (await chat.tap(COACH, report, "Publish"))[-1]
    link = (await chat.tap(COACH, published, "Invite one client"))[-1]
    token = re.search(r"start=([\w-]+)", link.text)
    assert token is not None
    offer = (await chat.say(CLIENT, f"/start {token[1]}", first_name="Weekday"))[-1]
    city = (await chat.screened(CLIENT, offer))[-1]
    assert "Which city" in city.text
    times = (await chat.say(CLIENT, "Lisbon"))[-1]
    begin = (await chat.tap(CLIENT, times, "07:00"))[-1]
    return (await chat.tap(CLIENT, begin, "Begin today"))[-1]


async def next_date(chat: Practice) -> list[str]:
    """What a client gets on the next date by itself."""
    last = max(m.id for m in await chat.messages(CLIENT))
    await chat.post("clock", days=1)
    return [said.text for said in await chat.from_bot(CLIENT, after=last)]


async def today(chat: Practice) -> datetime:
    found = await chat.get("clock")
    return datetime.fromisoformat(str(found["now"]))


@pytest.mark.timeout(120)
async def test_a_client_trains_on_the_named_weekdays_and_hears_nothing_between(tmp_path: Path) -> None:
    async with practice(tmp_path) as (chat, _process):
        now = await today(chat)
        then = now + timedelta(days=3)
        days = f"training-days: [{WEEKDAYS[now.weekday()]}, {WEEKDAYS[then.weekday()]}]\n"
        sessions = session(6) * 2 + REST + session(6) * 3
        day = await joins(chat, HEAD.replace("muscles:", f"{days}muscles:") + sessions)
        assert day.text.startswith("Day 1")
        await chat.tap(CLIENT, day, "All done, no pain")
        assert f"{then:%A} is day 2, because it went well." in (await chat.again(CLIENT, day)).text
        assert await next_date(chat) == []
        off = (await chat.say(CLIENT, "/today"))[-1]
        assert off.text == f"No training today. The next day comes on {then:%A}."
        assert await next_date(chat) == []
        (second,) = await next_date(chat)
        assert second.startswith("Day 2")


@pytest.mark.timeout(120)
async def test_in_a_group_the_date_brings_its_day_even_after_a_missed_one(tmp_path: Path) -> None:
    async with practice(tmp_path) as (chat, _process):
        head = HEAD.replace("muscles:", "pace: together\nmuscles:")
        day = await joins(chat, head + session(6) * 2 + REST + session(6) * 3 + TEST)
        assert day.text.startswith("Day 1")
        await chat.tap(CLIENT, day, "Not today")
        (second,) = await next_date(chat)
        assert second.startswith("Day 2")
        (rest,) = await next_date(chat)
        assert "Walk a little." in rest
