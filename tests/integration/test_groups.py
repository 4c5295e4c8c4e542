"""One message to many clients: to whom it goes, seen before, sent once, quiet at night, answers one by one."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import groups, listening
from bot.flows.desk import Desk
from bot.flows.people import Filter
from bot.flows.rights import NotAllowed
from db import due
from db.courses import CourseState
from db.engine import Database
from db.erasure import erase
from db.own_data import own_data
from db.schema import Coach, Course, Due, GroupLetter, GroupMessage, Outbox, Person
from tests.integration.desks import (
    COACH,
    NOW,
    buttons_of,
    client_in,
    coach_in,
    desk_of,
    text_of,
    told,
    version_in,
    writing,
)

pytestmark = pytest.mark.usefixtures("store")

DONE = {"completion": "done", "pain": 0}
FINE, PAUSED, STOPPED, BLOCKED, JOINING, WAITING, EAST = range(11, 18)


class Group:
    """A coach with people in every state, one of them where it is night already."""

    def __init__(self, session: AsyncSession, person: Person, coach: Coach) -> None:
        self.session, self.person, self.coach = session, person, coach
        self.count = 0

    def desk(self, now: datetime = NOW) -> Desk:
        self.count += 1
        return desk_of(self.session, f"test:{self.count}", now=now)

    async def last(self, chat: int = COACH) -> str:
        return text_of((await told(self.session, chat))[-1])

    async def says(self, text: str, wanted: Filter) -> int:
        """Writes to everybody of a filter; returns the message's number."""
        await groups.begin(self.desk(), self.person, self.coach, wanted)
        await listening.heard(self.desk(), self.person, text)
        newest = await self.session.scalar(select(GroupMessage.id).order_by(GroupMessage.id.desc()).limit(1))
        assert newest is not None
        return newest

    async def taps(self, number: int, what: str, now: datetime = NOW) -> str:
        await groups.tapped(self.desk(now), self.person, self.coach, number, what)
        return await self.last()


async def group_in(session: AsyncSession) -> Group:
    person, coach = await coach_in(session)
    version = await version_in(session, coach)
    await client_in(session, version, "Fine", chat=FINE, said=[DONE])
    _p, paused = await client_in(session, version, "Paused", chat=PAUSED, said=[DONE])
    paused.paused = "ill"
    await client_in(session, version, "Stopped", chat=STOPPED, state=CourseState.STOPPED, said=[DONE])
    blocked, _c = await client_in(session, version, "Blocked", chat=BLOCKED, said=[DONE])
    blocked.unreachable_since = NOW
    await client_in(session, version, "Joining", chat=JOINING, state=CourseState.JOINING)
    await client_in(session, version, "Waiting", chat=WAITING, state=CourseState.WAITING, said=[DONE])
    east, _c = await client_in(session, version, "East", chat=EAST, said=[DONE])
    east.zone = "Pacific/Tongatapu"
    await session.flush()
    return Group(session, person, coach)


async def test_a_message_is_seen_with_its_head_count_before_anything_leaves(database: Database) -> None:
    async with writing(database) as session:
        group = await group_in(session)
        number = await group.says("No session in the hall on <Friday>.", Filter())
        shown, before = (await told(session, COACH))[-2:]
        assert text_of(shown) == "<b>Robin writes</b>\nNo session in the hall on &lt;Friday&gt;."
        assert "to 3 clients. 3 are left out" in text_of(before)
        assert list(buttons_of(before)) == ["Send to 3", "Write it anew", "Leave it"]
        for chat in (FINE, PAUSED, STOPPED, BLOCKED, JOINING, WAITING, EAST):
            assert await told(session, chat) == []
        assert group.person.asking is None
        assert buttons_of(before)["Send to 3"] == f"group:{number}:send"


async def test_it_leaves_once_below_the_sessions_and_not_to_who_is_left_out(database: Database) -> None:
    async with writing(database) as session:
        group = await group_in(session)
        number = await group.says("Hello all.", Filter())
        assert await group.taps(number, "send") == "On its way to 3 clients. One of them gets it in the morning."
        for chat in (FINE, WAITING):
            (payload,) = await told(session, chat)
            assert text_of(payload) == "<b>Robin writes</b>\nHello all."
            assert list(buttons_of(payload)) == ["Answer"]
        for chat in (PAUSED, STOPPED, BLOCKED, JOINING, EAST):
            assert await told(session, chat) == []
        rows = await session.execute(select(Outbox.kind, Outbox.lane).where(Outbox.chat == FINE))
        assert rows.all() == [("nudge", 3)]
        for what in ("send", "anew", "leave"):
            with pytest.raises(NotAllowed):
                await group.taps(number, what)


async def test_at_night_it_waits_for_the_readers_own_morning(database: Database) -> None:
    async with writing(database) as session:
        group = await group_in(session)
        await group.taps(await group.says("Hello all.", Filter()), "send")
        letter = await session.scalar(select(Due).where(Due.kind == due.DueKind.LETTER))
        assert letter is not None
        assert letter.at == datetime(2026, 5, 12, 18, 0, tzinfo=UTC), "07:00 of the 13th on Tonga"
        await groups.in_the_morning(group.desk(letter.at), letter.subject)
        assert await group.last(EAST) == "<b>Robin writes</b>\nHello all."
        assert (await session.scalars(select(Due).where(Due.kind == due.DueKind.LETTER))).all() == []
        await groups.in_the_morning(group.desk(letter.at + timedelta(days=1)), letter.subject)
        assert len(await told(session, EAST)) == 1


async def test_who_has_stopped_by_the_morning_gets_none(database: Database) -> None:
    async with writing(database) as session:
        group = await group_in(session)
        await group.taps(await group.says("Hello all.", Filter()), "send")
        letter = await session.scalar(select(Due).where(Due.kind == due.DueKind.LETTER))
        assert letter is not None
        copy = await session.get_one(GroupLetter, letter.subject)
        course = await session.get_one(Course, copy.course_id)
        course.state = CourseState.STOPPED
        await groups.in_the_morning(group.desk(letter.at), letter.subject)
        assert await told(session, EAST) == []


async def test_a_filter_of_nobody_who_can_be_written_to_says_so(database: Database) -> None:
    async with writing(database) as session:
        group = await group_in(session)
        await groups.begin(group.desk(), group.person, group.coach, Filter("joining"))
        assert (await group.last()).startswith("None of these can be written to")
        await groups.begin(group.desk(), group.person, group.coach, Filter("paused"))
        assert "to 1 client." in await group.last()


async def test_other_words_and_none(database: Database) -> None:
    async with writing(database) as session:
        group = await group_in(session)
        number = await group.says("One.", Filter())
        await group.taps(number, "anew")
        await listening.heard(group.desk(), group.person, "Two.")
        assert text_of((await told(session, COACH))[-2]) == "<b>Robin writes</b>\nTwo."
        await group.taps(number, "leave")
        assert (await session.scalars(select(GroupMessage))).all() == []


async def test_another_coach_sends_nothing(database: Database) -> None:
    async with writing(database) as session:
        group = await group_in(session)
        number = await group.says("One.", Filter())
        group.person, group.coach = await coach_in(session, chat=2)
        for what in ("send", "anew", "leave"):
            with pytest.raises(NotAllowed):
                await group.taps(number, what)
        with pytest.raises(NotAllowed):
            await groups.typed(group.desk(), group.person, group.coach, number, "mine")


async def test_a_copy_is_in_its_readers_own_data_and_goes_with_them(database: Database) -> None:
    async with writing(database) as session:
        group = await group_in(session)
        await group.taps(await group.says("Hello all.", Filter()), "send")
        for chat in (FINE, EAST):
            reader = await session.scalar(select(Person).where(Person.chat == chat))
            assert reader is not None
            (course,) = (await own_data(session, reader)).courses
            assert [one.text for one in course.coach_wrote_to_all] == (["Hello all."] if chat == FINE else [])
            await erase(session, reader, NOW)
        assert len((await session.scalars(select(GroupLetter))).all()) == 1
        assert (await session.scalars(select(Due).where(Due.kind == due.DueKind.LETTER))).all() == []
