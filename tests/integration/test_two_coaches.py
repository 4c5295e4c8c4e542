"""One client and two coaches, one after the other: neither hears or sees what was for the other."""

from __future__ import annotations

from collections.abc import AsyncIterator, Awaitable, Callable
from datetime import date, timedelta
from pathlib import Path

import pytest
from sqlalchemy import select

from bot.flows import day, listening, photos
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from db import links, people
from db.courses import CourseState
from db.schema import Alert, Coach, CoachNote, Course, Helper, Person, PhotoRow, ProgrammeVersion
from tests.integration.coaching import CLIENT, COACH, SAMPLE, START, Practice, practice_in

pytestmark = pytest.mark.usefixtures("store")

OTHER = 20
"""The other coach's chat; their number as a coach is 2, as is that of their programme."""
CHEST = "I have had chest pain and cannot breathe since yesterday"


@pytest.fixture
async def practice(tmp_path: Path) -> AsyncIterator[Practice]:
    async with practice_in(tmp_path) as found:
        await found.opens(hears=False)
        await found.meets(OTHER)

        async def another(desk: Desk) -> None:
            desk.session.add(Coach(person_id=OTHER, created_at=START))
            await desk.session.flush()
            version = ProgrammeVersion(coach_id=2, digest="e", title="Other", source=SAMPLE, stored_at=START)
            version.published_at = START
            desk.session.add(version)

        await found.at_desk(another)
        yield found


async def says(practice: Practice, person: int, text: str) -> None:
    """Somebody types something, a minute after all that was before."""
    practice.calendar.forward(minutes=1)
    number = int((practice.calendar.now() - START).total_seconds())

    async def job(desk: Desk) -> None:
        desk.update_id = number
        await listening.heard(desk, await desk.session.get_one(Person, person), text)

    await practice.at_desk(job)


async def goes_over(practice: Practice, state: CourseState = CourseState.ACTIVE) -> Course:
    """The client stops, and has a course of the other coach's a minute later."""
    await practice.tapped(CLIENT, f"stop:yes:{(await practice.course_of(CLIENT)).id}")
    practice.calendar.forward(minutes=1)
    today = practice.calendar.now().date()
    starts = today if state == CourseState.ACTIVE else None

    async def job(desk: Desk) -> None:
        desk.session.add(
            Course(person_id=CLIENT, coach_id=2, version_id=2, state=state, starts_on=starts, created_at=desk.now)
        )
        await desk.session.flush()
        if starts is not None:
            await day.plan_morning(desk, CLIENT)

    await practice.at_desk(job)
    return await practice.course_of(CLIENT)


async def is_over(practice: Practice) -> None:
    """The first course is finished."""

    async def job(desk: Desk) -> None:
        course = await desk.session.get_one(Course, 1)
        course.state, course.ended_at = CourseState.FINISHED, desk.now

    await practice.at_desk(job)


async def link_of(practice: Practice, coach: int, places: int = 1) -> str:
    """The token of a new invitation of one of the two."""

    async def job(desk: Desk) -> str:
        version = await desk.session.get_one(ProgrammeVersion, coach)
        terms = links.Terms(places, desk.now + timedelta(days=9))
        own = await desk.session.get_one(Coach, coach)
        return (await links.new_invite(desk.session, own, version, terms, desk.now))[1]

    return await practice.at_desk(job)


async def heard_since(practice: Practice, chat: int, happens: Callable[[], Awaitable[object]]) -> list[str]:
    """What is put for a chat by something that happens."""
    before = len(await practice.rows(chat))
    await happens()
    return (await practice.put_so_far(chat))[before:]


# --- words ----------------------------------------------------------------------------------------------------------


async def test_the_page_has_only_words_of_its_own_course(practice: Practice) -> None:
    await says(practice, CLIENT, "done, pain 1, the left one grumbles")
    await says(practice, CLIENT, "could you tell me a joke for my first coach")
    course = await goes_over(practice)
    await says(practice, CLIENT, "could you tell me a joke for my second coach")
    for coach, number, own, foreign in (
        (COACH, 1, ("grumbles", "first coach"), ("second coach",)),
        (OTHER, course.id, ("second coach",), ("grumbles", "first coach")),
    ):
        await practice.tapped(coach, f"client:{number}")
        page = (await practice.put_so_far(coach))[-1]
        assert all(text in page for text in own)
        assert not any(text in page for text in foreign)


@pytest.mark.parametrize("state", [CourseState.ACTIVE, CourseState.JOINING])
async def test_an_answer_left_open_is_closed_with_its_course(practice: Practice, state: CourseState) -> None:
    await practice.tapped(CLIENT, "reply:1")
    course = await goes_over(practice, state)
    for left_open in (False, True):
        if left_open:

            async def opened(desk: Desk) -> None:
                (await desk.session.get_one(Person, CLIENT)).asking = "reply:1"

            await practice.at_desk(opened)
        told = await heard_since(practice, COACH, lambda: says(practice, CLIENT, "only for my new coach"))
        assert told == []
    async with practice.database.reading() as session:
        assert (await session.get_one(Person, CLIENT)).asking is None
    with pytest.raises(NotAllowed):
        await practice.tapped(CLIENT, "reply:1")
    assert course.coach_id == 2


async def test_a_line_is_read_as_always_after_the_coach_who_was_to_hear_it_is_erased(practice: Practice) -> None:
    await is_over(practice)
    await practice.tapped(CLIENT, "reply:1")
    await practice.tapped(COACH, "mine:yes")
    told = await heard_since(practice, CLIENT, lambda: says(practice, CLIENT, "hello"))
    assert len(told) == 1
    assert "link" in told[0]


async def test_words_of_a_coach_about_a_client_who_is_gone_are_no_words_to_their_own_coach(practice: Practice) -> None:
    async def is_coached(desk: Desk) -> None:
        course = Course(person_id=COACH, coach_id=2, version_id=2, state="active", starts_on=date(2026, 5, 4))
        course.created_at = START
        desk.session.add(course)
        await desk.session.flush()
        await day.plan_morning(desk, COACH)

    await practice.at_desk(is_coached)
    await practice.tick(seconds=1)
    await practice.tapped(COACH, "steer:1:message")
    await practice.tapped(CLIENT, "mine:yes")
    told = await heard_since(practice, OTHER, lambda: says(practice, COACH, "Kim, your result worries me"))
    assert told == []
    assert "not for you" in (await practice.put_so_far(COACH))[-1]
    async with practice.database.reading() as session:
        assert (await session.get_one(Person, COACH)).asking is None


# --- joining --------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("coach", [1, 2])
async def test_a_yes_is_to_the_agreement_that_it_stands_under(practice: Practice, coach: int) -> None:
    await is_over(practice)
    await practice.opens_link(CLIENT, await link_of(practice, 1))
    old = await practice.button(CLIENT, "I agree")
    await practice.opens_link(CLIENT, await link_of(practice, coach))
    if coach == 1:
        await practice.tapped(CLIENT, old)
    else:
        with pytest.raises(NotAllowed):
            await practice.tapped(CLIENT, old)
    course = await practice.course_of(CLIENT)
    assert (course.coach_id, course.invite_id) == (coach, 2), "not agreed to yet"
    await practice.agrees(CLIENT)
    course = await practice.course_of(CLIENT)
    assert (course.coach_id, course.invite_id, course.joined_by) == (coach, None, 2)


async def test_what_was_told_while_joining_one_coach_is_not_told_to_another(practice: Practice) -> None:
    await is_over(practice)
    await practice.opens_link(CLIENT, await link_of(practice, 1))
    await practice.agrees(CLIENT)
    await practice.tapped(CLIENT, f"screen:{(await practice.course_of(CLIENT)).id}:age:older")
    assert await heard_since(practice, COACH, lambda: says(practice, CLIENT, CHEST))
    await practice.opens_link(CLIENT, await link_of(practice, 2))
    course = await practice.course_of(CLIENT)
    assert (course.coach_id, course.screened) == (2, None)
    assert await heard_since(practice, OTHER, lambda: practice.tick(hours=2)) == []
    async with practice.database.reading() as session:
        assert (await session.scalars(select(Alert))).all() == []


async def test_a_no_drops_what_has_come_to_a_course_that_has_not_begun(practice: Practice) -> None:
    async def agreed(desk: Desk) -> None:
        person = await desk.session.get_one(Person, CLIENT)
        await people.agree(desk.session, person, text_version=photos.TERMS, now=desk.now)

    async def photo(desk: Desk) -> None:
        await photos.arrived(desk, await desk.session.get_one(Person, CLIENT), "F")

    async def kept() -> int:
        async with practice.database.reading() as session:
            return len((await session.scalars(select(PhotoRow))).all())

    await is_over(practice)
    await practice.at_desk(agreed)
    await practice.opens_link(CLIENT, await link_of(practice, 2))
    course = (await practice.course_of(CLIENT)).id
    await practice.at_desk(photo)
    assert await kept() == 0, "nobody has agreed to this coach yet"
    await practice.tapped(OTHER, f"steer:{course}:note")
    await practice.types(OTHER, "knows Ann")
    await practice.agrees(CLIENT)
    await practice.at_desk(photo)
    assert await kept() == 1
    await practice.tapped(CLIENT, f"join:{course}:no")
    assert (await practice.course_of(CLIENT)).id == 1
    assert await kept() == 0
    async with practice.database.reading() as session:
        assert (await session.scalars(select(CoachNote))).all() == []


async def test_who_has_only_opened_a_link_keeps_no_coach_from_leaving(practice: Practice) -> None:
    await is_over(practice)
    await practice.opens_link(CLIENT, await link_of(practice, 1))
    await practice.tapped(COACH, "mine:yes")
    assert not await practice.has_course(CLIENT)
    async with practice.database.reading() as session:
        assert await session.get(Coach, 1) is None


# --- handed over ----------------------------------------------------------------------------------------------------


async def handed_over(practice: Practice) -> None:
    await practice.tapped(COACH, "handover:1")
    token = (await practice.put_so_far(COACH))[-1].split("start=")[1].split()[0].split("<")[0].split('"')[0]
    await practice.opens_link(OTHER, token)
    await practice.tapped(CLIENT, "hand:1:0:yes")


async def test_what_joins_an_alert_after_a_hand_over_is_not_for_the_former_coach(practice: Practice) -> None:
    await says(practice, CLIENT, "pain 9, sharp, in my hip")
    await handed_over(practice)
    assert await heard_since(practice, COACH, lambda: says(practice, CLIENT, "pain 10 and it is secret")) == []


@pytest.mark.parametrize("since", ["handed over", "paused"])
async def test_a_copy_for_the_morning_does_not_come_after(practice: Practice, since: str) -> None:
    practice.calendar.forward(hours=14)
    await practice.tapped(COACH, "group:1:new:all:0")
    await practice.types(COACH, "See you all at my studio")
    await practice.tapped(COACH, "group:1:send")
    if since == "paused":
        await practice.tapped(CLIENT, "pause:1")
    else:
        await handed_over(practice)
    told = await heard_since(practice, CLIENT, lambda: practice.tick(hours=10))
    assert not any("studio" in text for text in told)


# --- who helps the other coach --------------------------------------------------------------------------------------


async def test_buttons_under_another_coachs_people_are_about_those(practice: Practice) -> None:
    async def helps(desk: Desk) -> None:
        desk.session.add(Person(id=11, chat=11, label="Zoe", zone="UTC", created_at=START))
        await desk.session.flush()
        course = Course(person_id=11, coach_id=2, version_id=2, state="active", starts_on=date(2026, 5, 4))
        course.created_at = START
        desk.session.add_all([course, Helper(coach_id=2, person_id=COACH, sees=True, added_at=START)])

    await practice.at_desk(helps)
    await practice.tapped(COACH, "helping:people:2")
    with pytest.raises(AssertionError, match="no button"):
        await practice.button(COACH, "Write to these")
    with pytest.raises(NotAllowed):
        await practice.tapped(COACH, "group:2:new:all:0")
    files = await practice.button(COACH, "Files")
    assert files == "exports:menu:2"
    await practice.tapped(COACH, files)
    assert await practice.button(COACH, "All of it (ZIP)") == "exports:all:2"
    await practice.tapped(COACH, "people:1:going:0:2")
    assert "Zoe" in (await practice.put_so_far(COACH))[-1]
    assert "Kim" not in (await practice.put_so_far(COACH))[-1]
