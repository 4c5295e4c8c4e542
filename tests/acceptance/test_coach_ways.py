"""A second coach in the same installation: a client goes over to them with a yes; and somebody under 18 joins."""

from __future__ import annotations

import asyncio
import os
import re
import sys
from pathlib import Path

import pytest

from tests.acceptance.driver import Practice, Said, practice
from tests.acceptance.people import COACH, link

OTHER, CLIENT, YOUNG, ALONE = 1002, 2001, 4001, 4002


async def coach_link(folder: Path, chat: Practice) -> str:
    """What `easeward invite-coach` prints."""
    process = await asyncio.create_subprocess_exec(
        sys.executable,
        "-m",
        "bot.cli",
        "invite-coach",
        stdout=asyncio.subprocess.PIPE,
        env={
            **os.environ,
            "EASEWARD_TOKEN": "1000:practice",
            "EASEWARD_API_URL": chat.address,
            "EASEWARD_DATABASE_URL": f"sqlite+aiosqlite:///{folder / 'easeward.sqlite'}",
        },
    )
    printed, _nothing = await process.communicate()
    return start_in(printed.decode())


def start_in(text: str) -> str:
    found = re.search(r"start=([\w-]+)", text)
    assert found is not None, text
    return found[1]


async def page_of(chat: Practice, name: str) -> Said:
    """A client's page."""
    (found,) = await chat.say(COACH, f"/people {name}")
    return (await chat.tap(COACH, found, found.buttons[0][0]))[-1]


async def test_a_client_goes_to_another_coach_only_with_their_own_yes(tmp_path: Path) -> None:
    async with practice(tmp_path) as (chat, _process):
        token = await coach_link(tmp_path, chat)
        assert (
            "You are a coach here now" in (await chat.say(OTHER, f"/start {token}", first_name="Other coach"))[0].text
        )
        assert "not known here" in (await chat.say(4003, f"/start {token}"))[0].text, "the link opens once"
        await chat.say(OTHER, "Berlin")
        offer = (await chat.tap(COACH, await page_of(chat, "Demo"), "Hand over"))[-1]
        before = await chat.from_bot(CLIENT)
        assert "is asked now" in (await chat.say(OTHER, f"/start {start_in(offer.text)}"))[0].text
        asked = (await chat.from_bot(CLIENT))[-1]
        assert asked.id not in [said.id for said in before]
        assert "Demo coach sees nothing more" in asked.text
        assert "Nobody has joined yet" in (await chat.say(OTHER, "/people"))[-1].text, "not before the yes"
        await chat.tap(CLIENT, asked, "Yes")
        assert "Demo client" in (await chat.say(OTHER, "/people"))[-1].text
        assert "Nobody has joined yet" in (await chat.say(COACH, "/people"))[-1].text
        await chat.say(CLIENT, "which mat should I buy for this?")
        assert "Demo client writes" in (await chat.from_bot(OTHER))[-1].text


async def test_under_18_only_where_the_coach_wrote_a_guardians_consent_down(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("EASEWARD_MINORS", "true")
    async with practice(tmp_path) as (chat, _process):
        without = await link(chat)
        token = await link(chat)
        invitation = (await chat.from_bot(COACH))[-1]
        await chat.tap(COACH, invitation, "For somebody under 18")
        kept = (await chat.say(COACH, "mother, Ana, 2026-01-20"))[-1]
        assert "Whoever joins by it may be under 18." in kept.text
        offer = (await chat.say(YOUNG, f"/start {token}", first_name="Young"))[-1]
        assert "Which city" in (await chat.screened(YOUNG, offer, age="Under 18"))[-1].text
        offer = (await chat.say(ALONE, f"/start {without}", first_name="Alone"))[-1]
        asked = (await chat.tap(ALONE, offer, "I agree"))[-1]
        assert "this one has none" in (await chat.tap(ALONE, asked, "Under 18"))[-1].text
