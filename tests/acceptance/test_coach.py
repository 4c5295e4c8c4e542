"""The coach's side, played through the practice chat: a page, an assistant, invitations, alerts, being away."""

from __future__ import annotations

import re
from datetime import datetime, timedelta

import pytest

from tests.acceptance.driver import Practice, Said
from tests.acceptance.people import COACH, NEXT, Client

pytestmark = pytest.mark.asyncio(loop_scope="module")


def token_in(said: Said) -> str:
    found = re.search(r"start=([\w-]+)", said.text)
    assert found is not None
    return found[1]


async def page(chat: Practice) -> Said:
    return (await chat.tap(COACH, (await chat.say(COACH, "/settings"))[-1], "My page as coach"))[-1]


async def fill(chat: Practice, button: str, line: str) -> Said:
    await chat.tap(COACH, await page(chat), button)
    return (await chat.say(COACH, line))[-1]


async def assistant(chat: Practice, *rights: str) -> int:
    """Somebody who has opened the coach's link and may do this."""
    said = (await chat.tap(COACH, await page(chat), "Assistants"))[-1]
    said = (await chat.tap(COACH, said, "Add an assistant"))[-1]
    number = next(NEXT)
    before = said.id
    await chat.say(number, f"/start {token_in(said)}", first_name=f"Helper{number}")
    await chat.say(number, "Lisbon")
    for right in rights:
        switch = (await chat.from_bot(COACH, after=before))[-1]
        before = switch.id
        await chat.tap(COACH, switch, f"{right}: off")
    return number


async def later(chat: Practice, **more: float) -> None:
    now = datetime.fromisoformat((await chat.get("clock"))["now"])
    await chat.post("clock", to=(now + timedelta(**more)).isoformat())


async def test_a_page_an_invitation_and_a_group_that_begins_together(chat: Practice) -> None:
    await fill(chat, "Training", "Sports school, three years.")
    said = await fill(chat, "Own terms", "Pay at the month's end.")
    assert "version 1" in said.text
    menu = (await chat.say(COACH, "/invite"))[-1]
    draft = (await chat.tap(COACH, menu, "More choices"))[-1]
    draft = (await chat.tap(COACH, draft, "All on the same day"))[-1]
    ask = (await chat.tap(COACH, draft, "Places"))[-1]
    draft = (await chat.tap(COACH, ask, "10"))[-1]
    assert "needs the day on which it begins" in draft.text
    ask = (await chat.tap(COACH, draft, "First day"))[-1]
    day = ask.buttons[0][0]
    draft = (await chat.tap(COACH, ask, day))[-1]
    made = (await chat.tap(COACH, draft, "Make the link"))[-1]
    assert made.photo is not None
    assert f"begins on {day}" in made.text
    assert (await chat.file(made.photo)).startswith(b"\x89PNG")

    number = next(NEXT)
    about, offer = (await chat.say(number, f"/start {token_in(made)}", first_name="Joiner"))[-2:]
    assert "Sports school" in about.text
    assert "Pay at the month's end." in about.text
    assert "accept the terms" in offer.text
    await chat.screened(number, offer)
    times = (await chat.say(number, "Lisbon"))[-1]
    begins = (await chat.tap(number, times, "07:00"))[-1]
    assert "Your group begins on" in begins.text
    said = (await chat.tap(number, begins, "I will be there"))[-1]
    assert "Your first session comes on" in said.text
    menu = (await chat.say(COACH, "/invite"))[-1]
    opened = (await chat.tap(COACH, menu, "Open invitations"))[-1]
    assert "Joined: Joiner" in opened.text
    gone = (await chat.tap(COACH, opened, "Take back 1"))[-1]
    assert "Whoever has joined stays" in gone.text
    stranger = next(NEXT)
    assert "not known here" in (await chat.say(stranger, f"/start {token_in(made)}"))[-1].text
    for _ in range(4):
        await chat.say(stranger, "/start join-guess")
    assert "Too many links" in (await chat.say(stranger, "/start join-guess"))[-1].text
    await fill(chat, "Own terms", "none")


async def test_a_red_flag_is_called_until_somebody_has_seen_it(chat: Practice) -> None:
    helper = await assistant(chat, "Gets alerts", "Decides for clients")
    client = await Client.joins(chat, "Redflag")
    before = (await chat.messages(COACH))[-1].id
    await client.says("I heard a pop in my left hamstring and it is swelling")
    (call,) = [m for m in await chat.from_bot(COACH, after=before) if "Redflag needs a look" in m.text]
    assert '"I heard a pop in my left hamstring and it is swelling"' in call.text
    assert "Nothing is sent to them until you let them go on." in call.text
    await later(chat, minutes=61)
    second = (await chat.from_bot(COACH, after=call.id))[-1]
    assert "Called again: Redflag needs a look" in second.text
    assert not any("Redflag" in m.text for m in await chat.from_bot(helper))
    await later(chat, minutes=61)
    theirs = next(m for m in await chat.from_bot(helper) if "Redflag needs a look" in m.text)
    assert "has not seen this yet" in theirs.text
    await chat.tap(helper, theirs, "Seen")
    for number, message in ((COACH, call), (COACH, second), (helper, theirs)):
        shown = await chat.again(number, message)
        assert f"Seen by Helper{helper}" in shown.text
        assert "Seen" not in [label for label, _data in shown.buttons]
    before = (await chat.messages(COACH))[-1].id
    await later(chat, hours=30)
    assert not any("Redflag needs a look" in m.text for m in await chat.from_bot(COACH, after=before))
    asked = (await chat.tap(helper, await chat.again(helper, theirs), "Let go on"))[-1]
    said = (await chat.tap(helper, asked, "Seen by a doctor or physio, who agrees"))[-1]
    assert said.text.startswith("Redflag goes on")


async def test_a_coach_who_has_blocked_the_bot_is_stood_in_for_at_once(chat: Practice) -> None:
    helper = await assistant(chat, "Gets alerts")
    client = await Client.joins(chat, "Blocked")
    await chat.post("block", chat=COACH, on=True)
    await client.says("sharp pain in my knee, 7")
    await chat.settled()
    assert any("Blocked needs a look" in m.text for m in await chat.from_bot(helper))
    before = (await chat.messages(COACH))[-1].id
    await chat.post("block", chat=COACH, on=False)
    await chat.settled()
    assert any("Blocked needs a look" in m.text for m in await chat.from_bot(COACH, after=before))


async def test_while_the_coach_is_away_somebody_else_looks_after_everybody(chat: Practice) -> None:
    helper = await assistant(chat)
    client = await Client.joins(chat, "Leftalone")
    ask = (await chat.tap(COACH, await page(chat), "I am away"))[-1]
    who = (await chat.tap(COACH, ask, "A week from tomorrow"))[-1]
    said = (await chat.tap(COACH, who, f"Helper{helper}"))[-1]
    assert f"Helper{helper} looks after your people" in said.text
    before = (await chat.messages(client.number))[-1].id
    await chat.post("clock", days=2)
    told = [m.text for m in await chat.from_bot(client.number, after=before) if "is away until" in m.text]
    assert len(told) == 1
    assert f"Helper{helper} looks after you" in told[0]
    assert f"passed this on to Helper{helper}" in (await client.says("which strap is the best one to buy")).text
    await client.says("my foot went numb and it stays numb")
    assert any("Leftalone needs a look" in m.text for m in await chat.from_bot(helper))
    planned = (await chat.tap(COACH, await page(chat), "I am away"))[-1]
    await chat.tap(COACH, planned, "I am back")
    assert "is back and looks after you" in (await chat.from_bot(client.number))[-1].text
