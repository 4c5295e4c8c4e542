"""A coach's page and terms, assistants with rights, absences with a stand-in, and clients who go to another coach."""

from __future__ import annotations

import re
from collections.abc import AsyncIterator
from datetime import time
from pathlib import Path

import pytest
from sqlalchemy import select

from bot.commands import COMMANDS
from bot.flows import telling
from bot.flows.desk import Desk
from bot.flows.drafts import Draft
from bot.flows.rights import NotAllowed
from bot.words import words
from bot.words.own_data import page
from db import erasure
from db.helpers import Right
from db.own_data import own_data
from db.schema import (
    Absence,
    Alert,
    Coach,
    Consent,
    Course,
    HandOver,
    Helper,
    LedgerRow,
    Outbox,
    Person,
    ProgrammeVersion,
)
from tests.integration.coaching import CLIENT, COACH, HELPER, Practice, practice_in

pytestmark = pytest.mark.usefixtures("store")

OTHER, NEW = 20, 21
"""Another coach's chat, and somebody without a part."""


@pytest.fixture
async def practice(tmp_path: Path) -> AsyncIterator[Practice]:
    async with practice_in(tmp_path) as found:
        await found.opens(hears=False)
        await found.meets(OTHER, NEW)

        async def another(desk: Desk) -> None:
            desk.session.add(Coach(person_id=OTHER, created_at=desk.now))

        await found.at_desk(another)
        yield found


async def commanded(practice: Practice, person: int, command: str) -> str:
    """What a command is answered with."""

    async def job(desk: Desk) -> None:
        await COMMANDS[command](desk, await desk.session.get_one(Person, person), "")

    await practice.at_desk(job)
    return (await practice.put_so_far(person))[-1]


async def token_in(practice: Practice, chat: int) -> str:
    """The token in the newest words to a chat."""
    found = re.search(r"start=([\w-]+)", (await practice.put_so_far(chat))[-1])
    assert found is not None
    return found[1]


# --- the page -------------------------------------------------------------------------------------------------------


async def test_a_page_is_filled_by_taps_and_lines_and_read_before_joining(practice: Practice) -> None:
    for tapped, said in (
        ("training", "Sports school, three years"),
        ("terms", "Pay by the month."),
        ("hours", "17:00-20:00"),
    ):
        await practice.tapped(COACH, f"coach:{tapped}")
        await practice.types(COACH, said)
    page = (await practice.put_so_far(COACH))[-1]
    for part in ("Sports school, three years", "Pay by the month.", "version 1", "Hours for answers: 17:00 - 20:00"):
        assert part in page
    await practice.tapped(COACH, f"draft:{Draft(1).data}:make")
    await practice.opens_link(NEW, await token_in(practice, COACH))
    about, agreement = (await practice.put_so_far(NEW))[-2:]
    assert "Pay by the month." in about
    assert "you also accept the terms of Coach above, version 1" in agreement


async def test_terms_are_agreed_to_in_the_version_that_was_shown(practice: Practice) -> None:
    await practice.tapped(COACH, "coach:terms")
    await practice.types(COACH, "One.")
    await practice.tapped(COACH, f"draft:{Draft(1).data}:make")
    await practice.opens_link(NEW, await token_in(practice, COACH))
    first = await practice.button(NEW, "I agree")
    await practice.tapped(COACH, "coach:terms")
    await practice.types(COACH, "Two.")
    await practice.tapped(NEW, first)
    about, agreement = (await practice.put_so_far(NEW))[-2:]
    assert "Two." in about
    assert "version 2" in agreement
    await practice.agrees(NEW)
    async with practice.database.reading() as session:
        agreed = list(await session.scalars(select(Consent.text_version).where(Consent.person_id == NEW)))
    assert "coach-1-terms-2" in agreed
    assert "coach-1-terms-1" not in agreed


@pytest.mark.parametrize(
    ("typed", "hours"),
    [
        ("17:00-20:00", (time(17), time(20))),
        ("from 22:00 to 2:00", (time(22), time(2))),
        ("Tue and Thu 17:00-20:00", (time(17), time(20))),
        ("none", None),
        ("late", "asked"),
    ],
)
async def test_answering_hours_are_two_times_or_none(practice: Practice, typed: str, hours: object) -> None:
    await practice.tapped(COACH, "coach:hours")
    await practice.types(COACH, typed)
    async with practice.database.reading() as session:
        coach = await session.get_one(Coach, 1)
        person = await session.get_one(Person, COACH)
    found = (coach.answers_from, coach.answers_until) if coach.answers_from else None
    assert coach.answers_on == ([1, 3] if typed.startswith("Tue") else None)
    assert found == (None if hours == "asked" else hours)
    assert (person.asking is not None) is (hours == "asked")


# --- assistants -----------------------------------------------------------------------------------------------------


async def test_an_assistant_comes_by_a_link_that_opens_once_and_may_only_see(practice: Practice) -> None:
    await practice.tapped(COACH, "coach:add")
    token = await token_in(practice, COACH)
    assert "for somebody else" in await practice.opens_link(COACH, token)
    await practice.opens_link(NEW, token)
    assert "New helps you now" not in (await practice.put_so_far(COACH))[-1]
    async with practice.database.reading() as session:
        helper = await session.scalar(select(Helper).where(Helper.person_id == NEW))
    assert helper is not None
    assert (helper.sees, helper.rules, helper.publishes, helper.hears) == (True, False, False, False)
    assert "not known here" in await practice.opens_link(OTHER, token)


DOES = {Right.SEE: "client:1", Right.RULE: "rule:1:ease", Right.PUBLISH: "invite:1:1"}


@pytest.mark.parametrize("right", DOES)
async def test_each_right_opens_its_own_door_and_no_other(practice: Practice, right: Right) -> None:
    await practice.tapped(COACH, f"coach:right:1:{Right.SEE}")
    for wanted in DOES.values():
        with pytest.raises(NotAllowed):
            await practice.tapped(HELPER, wanted)
    await practice.tapped(COACH, f"coach:right:1:{right}")
    for other, data in DOES.items():
        if other is right:
            await practice.tapped(HELPER, data)
        else:
            with pytest.raises(NotAllowed):
                await practice.tapped(HELPER, data)


@pytest.mark.parametrize("number", ["9" * 30, "x", ""])
async def test_an_assistant_of_no_number_is_refused(practice: Practice, number: str) -> None:
    with pytest.raises(NotAllowed):
        await practice.tapped(COACH, f"coach:assistant:{number}")


async def test_an_assistant_finds_people_by_the_same_command_and_can_leave(practice: Practice) -> None:
    assert "Kim" in await commanded(practice, HELPER, "people")
    assert "You help Coach." in await commanded(practice, HELPER, "help")
    await practice.tapped(HELPER, "helping:stop:1")
    with pytest.raises(NotAllowed):
        await commanded(practice, HELPER, "people")
    with pytest.raises(NotAllowed):
        await practice.tapped(HELPER, "client:1")
    assert "does not help you any more" in (await practice.put_so_far(COACH))[-1]


async def test_an_erased_assistant_leaves_nothing_behind(practice: Practice) -> None:
    await practice.tapped(COACH, "coach:leave:2026-05-04:2026-05-05:1")

    async def erased(desk: Desk) -> None:
        await erasure.erase(desk.session, await desk.session.get_one(Person, HELPER), desk.now)

    await practice.at_desk(erased)
    async with practice.database.reading() as session:
        assert (await session.scalars(select(Helper))).all() == []
        (away,) = await session.scalars(select(Absence))
    assert away.stand_in_id is None


async def test_a_coach_who_helps_another_finds_those_people_apart_from_their_own(practice: Practice) -> None:
    await practice.tapped(COACH, "coach:add")
    await practice.opens_link(OTHER, await token_in(practice, COACH))
    assert "Nobody has joined yet" in await commanded(practice, OTHER, "people")
    await practice.tapped(OTHER, "helping:people:2")
    assert "Kim" in (await practice.put_so_far(OTHER))[-1]
    await practice.tapped(OTHER, "client:1")


# --- away -----------------------------------------------------------------------------------------------------------


async def told_away(practice: Practice, chat: int) -> list[str]:
    return [text for text in await practice.put_so_far(chat) if "is away until" in text]


async def test_with_a_stand_in_clients_are_told_once_who_it_is_and_the_stand_in_may_act(practice: Practice) -> None:
    await practice.tapped(COACH, "coach:away")
    await practice.types(COACH, "2026-05-05 to 2026-05-08")
    await practice.tapped(COACH, "coach:leave:2026-05-05:2026-05-08:1")
    with pytest.raises(NotAllowed):
        await practice.tapped(HELPER, "rule:1:ease")
    await practice.tick(days=1)
    await practice.tick(days=1)
    (text,) = await told_away(practice, CLIENT)
    assert "Coach is away until Fri 8 May. Help looks after you on these days" in text
    await practice.tapped(HELPER, "rule:1:ease")
    await practice.types(CLIENT, "which mat should I buy for this")
    assert "passed this on to Help" in (await practice.put_so_far(CLIENT))[-1]
    assert "Kim writes" in (await practice.put_so_far(HELPER))[-1]
    await practice.tick(days=4)
    with pytest.raises(NotAllowed):
        await practice.tapped(HELPER, "rule:1:ease")


async def test_without_one_clients_are_told_once_that_nobody_may_read(practice: Practice) -> None:
    await practice.tapped(COACH, "coach:leave:2026-05-05:2026-05-08:0")
    for _ in range(3):
        await practice.tick(days=1)
    (text,) = await told_away(practice, CLIENT)
    assert "What you write may not be read before then." in text


async def test_who_comes_back_early_says_so_to_those_who_were_told(practice: Practice) -> None:
    await practice.tapped(COACH, "coach:leave:2026-05-05:2026-05-08:0")
    await practice.tick(days=1)
    await practice.tapped(COACH, "coach:back")
    assert "Coach is back" in (await practice.put_so_far(CLIENT))[-1]
    await practice.tapped(COACH, f"draft:{Draft(1).data}:make")
    token = await token_in(practice, COACH)
    await practice.tick(days=1)
    assert "invites you" in await practice.opens_link(NEW, token)


async def test_who_does_not_leave_after_all_tells_nobody(practice: Practice) -> None:
    await practice.tapped(COACH, "coach:leave:2026-05-06:2026-05-08:0")
    await practice.tapped(COACH, "coach:back")
    await practice.tick(days=3)
    assert await told_away(practice, CLIENT) == []


@pytest.mark.parametrize("days", ["2026-05-03:2026-05-08", "2026-05-08:2026-05-06", "x:y", "2026-05-06:2028-05-06"])
async def test_days_that_cannot_be_are_refused(practice: Practice, days: str) -> None:
    with pytest.raises(NotAllowed):
        await practice.tapped(COACH, f"coach:leave:{days}:0")


async def test_who_joins_meanwhile_is_told_too_and_nobody_does_without_a_stand_in(practice: Practice) -> None:
    await practice.tapped(COACH, f"draft:{Draft(1, 5).data}:make")
    token = await token_in(practice, COACH)
    await practice.opens_link(NEW, token)
    await practice.tapped(COACH, "coach:leave:2026-05-05:2026-05-08:0")
    await practice.tick(days=1)
    course = (await practice.course_of(NEW)).id
    await practice.agrees(NEW)
    assert "Coach is away until 8 May" in (await practice.put_so_far(NEW))[-1]
    await practice.tapped(COACH, "coach:back")
    await practice.tapped(COACH, "coach:leave:2026-05-05:2026-05-08:1")
    await practice.tick(hours=1)
    answers = {"age": "adult", "inside": "none", "outside": "none", "limits": "none", "active": "yes", "usual": "0"}
    await practice.agrees(NEW)
    for data in (f"screen:{course}:{step}:{value}" for step, value in answers.items()):
        await practice.tapped(NEW, data)
    for data in ("zone:UTC", "time:0700", f"begin:{course}:tomorrow"):
        await practice.tapped(NEW, data)
    told = await told_away(practice, NEW)
    assert len([text for text in told if "Help looks after you" in text]) == 1


# --- to another coach -----------------------------------------------------------------------------------------------


async def handed(practice: Practice, answer: str) -> None:
    """The coach offers the client, the other coach opens the link, the client answers."""
    await practice.tapped(COACH, "handover:1")
    token = await token_in(practice, COACH)
    for chat in (NEW, COACH):
        assert "Only another coach" in await practice.opens_link(chat, token)
    await practice.opens_link(OTHER, token)
    assert "P20" in (await practice.put_so_far(CLIENT))[-1]
    with pytest.raises(NotAllowed):
        await practice.tapped(OTHER, "hand:1:0:yes")
    with pytest.raises(NotAllowed):
        await practice.tapped(OTHER, "client:1")
    await practice.tapped(CLIENT, f"hand:1:0:{answer}")


async def test_with_a_yes_the_client_and_the_programme_go_over_and_the_old_coach_sees_nothing(
    practice: Practice,
) -> None:
    async def alert(desk: Desk) -> None:
        course = await desk.session.get_one(Course, 1)
        await telling.tell_of(desk, course, cause="excessive", at_once=True, facts={"pain": 6})

    await practice.at_desk(alert)
    await handed(practice, "yes")
    async with practice.database.reading() as session:
        course = await session.get_one(Course, 1)
        version = await session.get_one(ProgrammeVersion, course.version_id)
        agreed = list(await session.scalars(select(Consent.text_version).where(Consent.person_id == CLIENT)))
    assert (course.coach_id, version.coach_id, version.digest) == (2, 2, "d")
    assert "hand-over-to-coach-2" in agreed
    await practice.tapped(OTHER, "client:1")
    with pytest.raises(NotAllowed):
        await practice.tapped(COACH, "client:1")
    await practice.tick(hours=5)
    assert any("Kim needs a look" in text for text in await practice.put_so_far(OTHER)), "open alerts go along"


async def test_with_a_no_nothing_changes(practice: Practice) -> None:
    await handed(practice, "no")
    assert (await practice.course_of(CLIENT)).coach_id == 1
    await practice.tapped(CLIENT, "hand:1:0:yes")
    assert "not open any more" in (await practice.put_so_far(CLIENT))[-1]
    assert (await practice.course_of(CLIENT)).coach_id == 1


async def test_the_new_coachs_terms_are_accepted_in_the_version_that_was_shown(practice: Practice) -> None:
    await practice.tapped(OTHER, "coach:terms")
    await practice.types(OTHER, "Mine.")
    await practice.tapped(COACH, "handover:1")
    await practice.opens_link(OTHER, await token_in(practice, COACH))
    await practice.tapped(CLIENT, "hand:1:0:yes")
    assert (await practice.course_of(CLIENT)).coach_id == 1, "not the version that stands"
    assert "Mine." in (await practice.put_so_far(CLIENT))[-1]
    await practice.tapped(CLIENT, "hand:1:1:yes")
    async with practice.database.reading() as session:
        agreed = list(await session.scalars(select(Consent.text_version).where(Consent.person_id == CLIENT)))
    assert "coach-2-terms-1" in agreed


async def test_a_coach_whose_clients_have_gone_over_can_be_erased(practice: Practice) -> None:
    await practice.tapped(COACH, f"draft:{Draft(1).data}:make")
    await handed(practice, "yes")

    async def erased(desk: Desk) -> None:
        await erasure.erase(desk.session, await desk.session.get_one(Person, COACH), desk.now)

    await practice.at_desk(erased)
    async with practice.database.reading() as session:
        assert await session.get(Coach, 1) is None
        assert (await session.get_one(Course, 1)).coach_id == 2
        assert (await session.scalars(select(HandOver))).all() == []
        assert (await session.scalars(select(Alert))).all() == []


async def test_a_client_who_went_over_keeps_the_days_of_the_coach_who_is_erased(practice: Practice) -> None:
    async def dated(desk: Desk) -> None:
        (await desk.session.get_one(LedgerRow, 1)).version_id = 1

    await practice.at_desk(dated)
    await handed(practice, "yes")
    await practice.tapped(COACH, "mine:yes")
    async with practice.database.reading() as session:
        assert await session.get(Coach, 1) is None
        row, course = await session.get_one(LedgerRow, 1), await session.get_one(Course, 1)
        version = await session.get_one(ProgrammeVersion, row.version_id)
    assert (row.version_id, version.coach_id, version.digest) == (course.version_id, 2, "d")


async def test_a_coach_whose_courses_are_all_over_can_be_erased_and_the_clients_get_theirs(practice: Practice) -> None:
    with pytest.raises(NotAllowed):
        await practice.tapped(COACH, "mine:yes")
    assert not any("has deleted their data" in text for text in await practice.put_so_far(CLIENT))

    async def over(desk: Desk) -> None:
        (await desk.session.get_one(Course, 1)).state = "finished"

    await practice.at_desk(over)
    await practice.tapped(COACH, "mine:yes")
    async with practice.database.reading() as session:
        assert await session.get(Person, COACH) is None
        assert (await session.scalars(select(Course))).all() == []
        assert (await session.scalars(select(LedgerRow))).all() == []
        assert await session.get(Person, CLIENT) is not None
        kinds = list(await session.scalars(select(Outbox.method).where(Outbox.chat == CLIENT).order_by(Outbox.id)))
    assert kinds[-3:] == ["send_message", "send_document", "send_document"]


# --- own data -------------------------------------------------------------------------------------------------------


async def test_own_data_of_coach_and_assistant_say_what_they_are(practice: Practice) -> None:
    await practice.tapped(COACH, "coach:terms")
    await practice.types(COACH, "Mine & yours.")
    await practice.tapped(COACH, "coach:leave:2026-05-05:2026-05-08:1")
    async with practice.database.reading() as session:
        coach = await own_data(session, await session.get_one(Person, COACH))
        helper = await own_data(session, await session.get_one(Person, HELPER))
        client = await own_data(session, await session.get_one(Person, CLIENT))
    assert coach.coaching is not None
    assert [one.text for one in coach.coaching.terms] == ["Mine & yours."]
    assert [one.stand_in for one in coach.coaching.away] == ["Help"]
    assert [(one.coach, one.rights) for one in helper.helps] == [("Coach", ["sees"])]
    assert (client.coaching, client.helps) == (None, [])
    assert "Mine &amp; yours." in page(coach, words("en"))
