"""Invitations and other links: what they open, for whom, how often, and what somebody learns who guesses."""

from __future__ import annotations

import re
from collections.abc import AsyncIterator
from datetime import date
from pathlib import Path

import pytest
from sqlalchemy import select, update

from bot.flows.desk import Desk
from bot.flows.drafts import Draft
from bot.flows.installation import Installation
from bot.flows.rights import NotAllowed
from db import links
from db.schema import Absence, Course, Helper, Invite, InviteUse, LedgerRow, MeasureRow
from tests.integration.coaching import CLIENT, COACH, HELPER, Practice, practice_in

pytestmark = pytest.mark.usefixtures("store")

NEW, OTHER = 10, 11
"""Chats of people who have no course."""


@pytest.fixture
async def practice(tmp_path: Path) -> AsyncIterator[Practice]:
    async with practice_in(tmp_path) as found:
        await found.opens()
        await found.meets(NEW, OTHER)
        yield found


async def link(practice: Practice, draft: Draft | None = None) -> str:
    """The token of a new invitation."""
    await practice.tapped(COACH, f"draft:{(draft or Draft(1)).data}:make")
    found = re.search(r"start=([\w-]+)", (await practice.put_so_far(COACH))[-1])
    assert found is not None
    return found[1]


async def joins(practice: Practice, chat: int, token: str, *, age: str = "adult") -> None:
    """Agrees, answers everything, and gives city and time."""
    await practice.opens_link(chat, token)
    course = (await practice.course_of(chat)).id
    answers = {"age": age, "inside": "none", "outside": "none", "limits": "none", "active": "yes", "usual": "0"}
    await practice.agrees(chat)
    for data in (f"screen:{course}:{step}:{value}" for step, value in answers.items()):
        await practice.tapped(chat, data)
        if not await practice.has_course(chat):
            return
    await practice.tapped(chat, "zone:UTC")
    await practice.tapped(chat, "time:0700")


# --- what a link says -----------------------------------------------------------------------------------------------


async def test_a_link_comes_as_words_and_as_a_picture_for_the_painter(practice: Practice) -> None:
    token = await link(practice, Draft(1, 12, date(2026, 5, 11), date(2026, 5, 9), "together"))
    row = (await practice.rows(COACH))[-1]
    assert row.method == "send_photo"
    recipe = row.payload["photo"]["recipe"]
    assert recipe["kind"] == "code"
    assert recipe["of"]["link"] == f"https://t.me/easeward_bot?start={token}"
    text = row.payload["caption"]
    for part in ("12 places", "open until Sat 9 May", "begins on Mon 11 May", "everybody on the same day", token):
        assert part in text


async def test_only_the_hash_of_a_token_is_kept(practice: Practice) -> None:
    token = await link(practice)
    async with practice.database.reading() as session:
        (invite,) = await session.scalars(select(Invite))
    assert token not in "".join(str(value) for value in vars(invite).values())


async def test_a_draft_is_put_together_by_taps_and_typed_lines(practice: Practice) -> None:
    await practice.tapped(COACH, f"draft:{Draft(1).data}:start")
    await practice.types(COACH, "yesterday")
    assert "I need a day from today on" in (await practice.put_so_far(COACH))[-1]
    await practice.types(COACH, "2026-05-18")
    assert "begins on Mon 18 May" in (await practice.put_so_far(COACH))[-1]


async def test_a_group_that_goes_together_needs_its_first_day(practice: Practice) -> None:
    await practice.tapped(COACH, f"draft:{Draft(1, 10, pace='together').data}:make")
    assert "needs the day on which it begins" in (await practice.put_so_far(COACH))[-1]
    async with practice.database.reading() as session:
        assert (await session.scalars(select(Invite))).all() == []


async def test_a_draft_whose_dates_have_passed_is_shown_without_them(practice: Practice) -> None:
    practice.calendar.forward(days=60)
    await practice.tapped(COACH, f"draft:{Draft(1, 10, date(2026, 5, 11), date(2026, 5, 20)).data}:make")
    assert await practice.button(COACH, "Make the link") == f"draft:{Draft(1, 10).data}:make"
    async with practice.database.reading() as session:
        assert (await session.scalars(select(Invite))).all() == []


async def test_the_list_says_who_used_what_and_a_link_can_be_taken_back(practice: Practice) -> None:
    token = await link(practice, Draft(1, 3))
    await practice.opens_link(OTHER, token)
    await joins(practice, NEW, token)
    await practice.tapped(COACH, "invites:1")
    text = (await practice.put_so_far(COACH))[-1]
    assert "Joined: P10 · only opened: P11" in text
    await practice.tapped(COACH, "revoke:1")
    await practice.meets(12)
    assert "not known here" in await practice.opens_link(12, token)
    assert "taken back" in await practice.opens_link(OTHER, token), "who has held it may know"
    await practice.agrees(OTHER)
    assert "All places" in (await practice.put_so_far(OTHER))[-1]
    await practice.tapped(COACH, "invites:1")
    assert "No invitation is open" in (await practice.put_so_far(COACH))[-1]


@pytest.mark.parametrize("person", [CLIENT, HELPER, NEW])
@pytest.mark.parametrize("data", [f"draft:{Draft(1).data}:make", "invites:1", "revoke:1", "guardian:1", "invite:1:1"])
async def test_who_may_not_invite_is_refused(practice: Practice, person: int, data: str) -> None:
    await link(practice)
    with pytest.raises(NotAllowed):
        await practice.tapped(person, data)


async def test_an_assistant_with_the_right_invites_for_the_coach(practice: Practice) -> None:
    async def lets(desk: Desk) -> None:
        await desk.session.execute(update(Helper).values(publishes=True))

    await practice.at_desk(lets)
    await practice.tapped(HELPER, "invite:1:10")
    assert "Invitation to <b>Rowing</b>" in (await practice.put_so_far(HELPER))[-1]


# --- guessing -------------------------------------------------------------------------------------------------------


async def test_unknown_over_taken_back_and_full_say_the_same_to_who_never_held_the_link(practice: Practice) -> None:
    full, revoked, over = [await link(practice, Draft(1, 1, last_on=date(2026, 5, 4 + n))) for n in range(3)]
    await joins(practice, OTHER, full)
    await practice.tapped(COACH, "revoke:2")
    practice.calendar.forward(days=4)
    said = {await practice.opens_link(NEW, token) for token in (full, revoked, over, "join-nonsense", "coach-nonsense")}
    assert len(said) == 1


async def test_a_chat_that_guesses_is_heard_again_only_after_an_hour(practice: Practice) -> None:
    right = await link(practice)
    for n in range(links.GUESSES):
        assert "not known here" in await practice.opens_link(NEW, f"join-{n}")
    for token in ("join-again", right, "coach-x", "door-x"):
        assert "Too many links" in await practice.opens_link(NEW, token)
    assert "invites you" in await practice.opens_link(OTHER, right), "others are heard"
    practice.calendar.forward(minutes=61)
    assert "invites you" in await practice.opens_link(NEW, right)


async def test_a_wrong_link_changes_nothing_but_the_count(practice: Practice) -> None:
    await practice.opens_link(NEW, "join-x")
    async with practice.database.reading() as session:
        assert (await session.scalars(select(InviteUse))).all() == []
        assert not await session.scalar(select(Course.id).where(Course.person_id == NEW))


# --- beginning ------------------------------------------------------------------------------------------------------


async def test_a_group_begins_on_its_date_and_who_comes_later_is_on_the_groups_day(practice: Practice) -> None:
    token = await link(practice, Draft(1, 10, date(2026, 5, 11), pace="together"))
    await joins(practice, NEW, token)
    text = (await practice.put_so_far(NEW))[-1]
    assert "Your group begins on Monday 11 May" in text
    course = await practice.course_of(NEW)
    await practice.tapped(NEW, f"begin:{course.id}:today")
    assert (await practice.course_of(NEW)).starts_on == date(2026, 5, 11)
    practice.calendar.forward(days=9)
    await joins(practice, OTHER, token)
    course = await practice.course_of(OTHER)
    await practice.tapped(OTHER, f"begin:{course.id}:today")
    async with practice.database.reading() as session:
        row = await session.scalar(select(LedgerRow).where(LedgerRow.person_id == OTHER))
    assert row is not None
    assert (row.local_date, row.day) == (date(2026, 5, 13), 3)


async def test_the_pace_of_an_invitation_stands_above_the_programmes(practice: Practice) -> None:
    await joins(practice, NEW, await link(practice, Draft(1, pace="own", starts_on=date(2026, 5, 11))))
    course = await practice.course_of(NEW)
    assert (course.pace, course.group_start) == ("own", None)


async def test_a_client_who_waits_for_the_coach_may_take_the_first_test_and_it_counts(practice: Practice) -> None:
    token = await link(practice)
    await practice.opens_link(NEW, token)
    course = (await practice.course_of(NEW)).id
    answers = {"age": "adult", "inside": "none", "outside": "none", "limits": "none", "active": "yes", "usual": "3"}
    await practice.agrees(NEW)
    for data in (f"screen:{course}:{step}:{value}" for step, value in answers.items()):
        await practice.tapped(NEW, data)
    for data in ("zone:UTC", "time:0700", f"begin:{course}:tomorrow"):
        await practice.tapped(NEW, data)
    waits = (await practice.rows(NEW))[-1]
    assert "You can take the first test already now." in waits.payload["text"]
    (button,) = waits.payload["reply_markup"]["inline_keyboard"][0]
    await practice.tapped(NEW, button["callback_data"])
    await practice.types(NEW, "12 12 11")
    await practice.tick(days=1)
    await practice.tapped(COACH, f"found:{course}:spoke:1")
    await practice.tick(days=1)
    async with practice.database.reading() as session:
        row = await session.scalar(select(LedgerRow).where(LedgerRow.person_id == NEW, LedgerRow.day.is_not(None)))
        test = await session.scalar(select(MeasureRow).where(MeasureRow.course_id == course))
        shown = (await practice.put_so_far(NEW))[-1]
    assert row is not None
    assert test is not None
    assert test.ledger_id == row.id
    assert "First the test" not in shown


async def test_while_the_coach_is_away_without_a_stand_in_no_link_opens(practice: Practice) -> None:
    token = await link(practice)

    async def away(desk: Desk) -> None:
        desk.session.add(Absence(coach_id=1, first_on=date(2026, 5, 4), last_on=date(2026, 5, 6)))

    await practice.at_desk(away)
    assert "Coach is away until 6 May" in await practice.opens_link(NEW, token)
    practice.calendar.forward(days=3)
    assert "invites you" in await practice.opens_link(NEW, token)


# --- under 18 -------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("lets", "recorded"), [(False, True), (True, False), (True, True)])
async def test_under_18_needs_the_installation_and_a_guardians_consent(
    practice: Practice, lets: bool, recorded: bool
) -> None:
    token = await link(practice)
    practice.installation = Installation(under_18=True)
    if recorded:
        await practice.tapped(COACH, "guardian:1")
        await practice.types(COACH, "mother, Ana, tomorrow")
        assert "I need a name and a day" in (await practice.put_so_far(COACH))[-1]
        await practice.types(COACH, "mother, Ana, 2026-05-02")
        assert "mother, Ana, Sat 2 May" in (await practice.put_so_far(COACH))[-1]
    practice.installation = Installation(under_18=lets)
    await joins(practice, NEW, token, age="under-18")
    assert await practice.has_course(NEW) is (lets and recorded)


async def test_a_guardians_consent_is_for_one_and_only_where_the_installation_lets(practice: Practice) -> None:
    await link(practice)
    with pytest.raises(NotAllowed):
        await practice.tapped(COACH, "guardian:1")
    practice.installation = Installation(under_18=True)
    await link(practice, Draft(1, 10))
    with pytest.raises(NotAllowed):
        await practice.tapped(COACH, "guardian:2")
