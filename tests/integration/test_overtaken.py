"""Buttons and open questions that something newer has overtaken: they change nothing any more."""

from __future__ import annotations

from collections.abc import AsyncIterator, Callable
from datetime import date
from pathlib import Path

import pytest
from sqlalchemy import select

from bot.flows.desk import TERMS, Desk
from bot.flows.rights import NotAllowed
from db import courses, people
from db.schema import CheckInRow, Course, Helper, LedgerRow, Outbox, Person
from plans.checkin import CheckIn
from tests.integration.coaching import CLIENT, COACH, HELPER, Practice, first_day_in
from tests.integration.desks import buttons_of

pytestmark = pytest.mark.usefixtures("store")

FLAG = "chest pain and cannot breathe"


@pytest.fixture
async def practice(tmp_path: Path) -> AsyncIterator[Practice]:
    async with first_day_in(tmp_path) as found:
        yield found


async def state(practice: Practice) -> tuple[str, str | None]:
    course = await practice.course_of(CLIENT)
    return course.state, course.paused


async def said(practice: Practice, row: int = 1) -> CheckIn:
    async with practice.database.reading() as session:
        return await courses.said_of(session, await session.get_one(LedgerRow, row))


async def buttons(practice: Practice, chat: int) -> dict[str, str]:
    """The buttons of the newest message to a chat, by their words."""
    return buttons_of((await practice.rows(chat))[-1].payload)


async def changed(practice: Practice, change: Callable[[Course], None]) -> None:
    """Changes the client's first course as something earlier would have."""

    async def job(desk: Desk) -> None:
        change(await desk.session.get_one(Course, 1))

    await practice.at_desk(job)


async def another_course(practice: Practice, state: str = "active") -> int:
    """A later course of the client's."""

    async def job(desk: Desk) -> int:
        course = Course(person_id=CLIENT, coach_id=1, version_id=1, state=state, starts_on=date(2026, 5, 5))
        course.created_at = desk.now
        desk.session.add(course)
        await desk.session.flush()
        return course.id

    return await practice.at_desk(job)


def is_over(course: Course) -> None:
    course.state = "finished"


# --- an answer that is taken back -------------------------------------------------------------------------------------


async def test_an_answer_that_referred_stays_when_the_coach_has_let_go(practice: Practice) -> None:
    await practice.types(CLIENT, "done, pain 2")
    await practice.types(CLIENT, "it is pain 9 now")
    await practice.tapped(COACH, "go:1")
    await practice.types(COACH, "seen by physio")
    assert await state(practice) == ("active", None)
    with pytest.raises(NotAllowed):
        await practice.tapped(CLIENT, "c:1:fix")
    assert (await said(practice)).pain == 9


@pytest.mark.parametrize(
    ("before", "paused"),
    [
        (("c:1:none", "c:1:why:ill"), None),
        (("c:1:all", "away:1:7"), "away"),
        (("c:1:all", "pause:1"), "away"),
    ],
)
async def test_an_answer_that_is_taken_back_ends_no_pause_but_that_of_being_ill(
    practice: Practice, before: tuple[str, ...], paused: str | None
) -> None:
    for data in (*before, "c:1:fix"):
        await practice.tapped(CLIENT, data)
    assert await state(practice) == ("active", paused)
    assert await said(practice) == CheckIn()


# --- upkeep -----------------------------------------------------------------------------------------------------------


async def _is_upkeep(practice: Practice) -> None:
    """The client's first course becomes one that keeps up an earlier one."""

    async def job(desk: Desk) -> None:
        client = await desk.session.get_one(Person, CLIENT)
        await people.agree(desk.session, client, text_version=TERMS, now=desk.now)
        earlier = Course(id=100, person_id=CLIENT, coach_id=1, version_id=1, state="finished", created_at=desk.now)
        desk.session.add(earlier)
        await desk.session.flush()
        (await desk.session.get_one(Course, 1)).after_id = earlier.id

    await practice.at_desk(job)


async def test_what_was_ended_while_it_waited_offers_nothing_and_is_not_begun_again(practice: Practice) -> None:
    await _is_upkeep(practice)
    await practice.types(CLIENT, FLAG)
    await practice.tapped(COACH, "rule:1:finish")
    before = len(await practice.rows(CLIENT))
    await practice.tapped(COACH, (await buttons(practice, COACH))["Yes, end it"])
    async with practice.database.reading() as session:
        assert (await session.get_one(Course, 1)).state == "finished"
    assert [buttons_of(row.payload) for row in (await practice.rows(CLIENT))[before:] if buttons_of(row.payload)] == []
    assert all("upkeep" not in data for data in (await buttons(practice, COACH)).values())
    with pytest.raises(NotAllowed):
        await practice.tapped(CLIENT, "upkeep:1:again")
    async with practice.database.reading() as session:
        assert (await session.scalars(select(Course.id).order_by(Course.id))).all() == [1, 100]


@pytest.mark.parametrize("later", [False, True])
async def test_upkeep_follows_the_newest_course_only(practice: Practice, later: bool) -> None:
    async def is_agreed(desk: Desk) -> None:
        client = await desk.session.get_one(Person, CLIENT)
        await people.agree(desk.session, client, text_version=TERMS, now=desk.now)
        desk.session.add(CheckInRow(ledger_id=1, completion="done", pain=0, sore=False, odd=False, updated_at=desk.now))

    await practice.at_desk(is_agreed)
    await changed(practice, is_over)
    newest = await another_course(practice, "finished") if later else 1
    await practice.tapped(COACH, "upkeep:1:run")
    assert ((await practice.course_of(CLIENT)).id == newest) is later


# --- what was found out -----------------------------------------------------------------------------------------------


async def _may_rule(desk: Desk) -> None:
    helper = await desk.session.scalar(select(Helper))
    assert helper is not None
    helper.rules = True


@pytest.mark.parametrize("again", [FLAG, "pain 10, sharp"])
@pytest.mark.parametrize("typed", [False, True])
async def test_what_was_found_out_lets_no_later_incident_go(practice: Practice, typed: bool, again: str) -> None:
    await practice.at_desk(_may_rule)
    await practice.types(CLIENT, "pain 9, sharp")
    await practice.tapped(COACH, "go:1")
    old = (await buttons(practice, COACH))["Seen by a doctor or physio, who agrees"]
    await practice.tapped(HELPER, "go:1")
    await practice.tapped(HELPER, (await buttons(practice, HELPER))["Seen by a doctor or physio, who agrees"])
    assert await state(practice) == ("active", None)
    await practice.tick(hours=24)
    await practice.types(CLIENT, again)
    await (practice.types(COACH, "oh dear") if typed else practice.tapped(COACH, old))
    assert await state(practice) == ("waiting", None)
    assert 'only "let go on" changes that' in (await practice.put_so_far(COACH))[-1]
    await practice.tapped(COACH, "go:1")
    await practice.types(COACH, "seen by physio")
    assert await state(practice) == ("active", None)


async def test_what_was_found_out_before_it_grew_worse_lets_nobody_go(practice: Practice) -> None:
    await practice.types(CLIENT, "pain 9, sharp")
    await practice.tapped(COACH, "go:1")
    await practice.types(CLIENT, "pain 10, sharp")
    await practice.types(COACH, "spoke with them")
    assert await state(practice) == ("waiting", None)


# --- the end ----------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("yes", ["Yes, do this", "Yes, end it"])
async def test_a_yes_to_the_end_counts_for_what_was_seen(practice: Practice, yes: str) -> None:
    if yes == "Yes, end it":
        await practice.tapped(CLIENT, "pause:1")
    await practice.tapped(COACH, "rule:1:finish")
    old = (await buttons(practice, COACH))[yes]
    await practice.types(CLIENT, FLAG)
    await practice.tapped(COACH, old)
    assert (await practice.course_of(CLIENT)).state == "waiting"
    await practice.tapped(COACH, (await buttons(practice, COACH))["Yes, end it"])
    assert (await practice.course_of(CLIENT)).state == "finished"


async def test_a_yes_to_the_end_of_a_waiting_course_is_asked_anew_when_it_goes_on(practice: Practice) -> None:
    await practice.types(CLIENT, "pain 9, sharp")
    await practice.tapped(COACH, "rule:1:finish")
    old = (await buttons(practice, COACH))["Yes, end it"]
    await practice.tapped(COACH, "go:1")
    await practice.types(COACH, "seen by physio")
    await practice.tapped(COACH, old)
    assert "Yes, do this" in await buttons(practice, COACH)
    assert await state(practice) == ("active", None)


async def test_an_old_yes_stops_no_newer_course(practice: Practice) -> None:
    await practice.types(CLIENT, "stop")
    old = (await buttons(practice, CLIENT))["Yes, stop"]
    await changed(practice, is_over)
    await another_course(practice)
    await practice.tapped(CLIENT, old)
    with pytest.raises(NotAllowed):
        await practice.tapped(CLIENT, "stop:yes")
    assert await state(practice) == ("active", None)
    assert (await practice.put_so_far(CLIENT))[-1].startswith("You have no course")


# --- being led --------------------------------------------------------------------------------------------------------


async def test_nobody_is_led_in_a_pause(practice: Practice) -> None:
    await practice.tapped(COACH, "steer:1:pause:7")
    with pytest.raises(NotAllowed):
        await practice.tapped(CLIENT, "lead:1:begin")


async def test_nobody_is_led_through_a_day_that_is_not_the_newest(practice: Practice) -> None:
    await practice.types(CLIENT, "done, pain 7")
    await practice.tick(hours=24)
    with pytest.raises(NotAllowed):
        await practice.tapped(CLIENT, "lead:1:begin")


# --- a movement, a pause, and who waits -------------------------------------------------------------------------------


async def test_nothing_is_left_out_of_a_course_that_was_stopped(practice: Practice) -> None:
    await practice.tapped(CLIENT, "stop:yes:1")
    before = len(await practice.rows(CLIENT))
    with pytest.raises(NotAllowed):
        await practice.tapped(COACH, "bar:1:0")
    assert len(await practice.rows(CLIENT)) == before


async def test_who_is_ill_is_not_paused_for_some_days(practice: Practice) -> None:
    await practice.tapped(CLIENT, "c:1:none")
    await practice.tapped(CLIENT, "c:1:why:ill")
    with pytest.raises(NotAllowed):
        await practice.tapped(COACH, "steer:1:pause:3")
    course = await practice.course_of(CLIENT)
    assert (course.paused, course.back_on) == ("ill", None)


@pytest.mark.parametrize(
    ("begins", "ends"),
    [((COACH, "steer:1:pause:7"), (COACH, "steer:1:resume")), ((CLIENT, "pause:1"), (CLIENT, "well:1"))],
    ids=["coach", "client"],
)
async def test_after_a_pause_nothing_is_promised_to_who_waits(
    practice: Practice, begins: tuple[int, str], ends: tuple[int, str]
) -> None:
    await practice.tapped(*begins)
    await practice.types(CLIENT, FLAG)
    await practice.tapped(*ends)
    assert await state(practice) == ("waiting", None)
    assert (await practice.put_so_far(CLIENT))[-1].startswith("Nothing is sent until Coach has looked at this.")
    if ends[0] == COACH:
        assert "Kim gets: nothing, they wait for you." in (await practice.put_so_far(COACH))[-1]


# --- health that has changed ------------------------------------------------------------------------------------------

HEALTHY = {"age": "adult", "inside": "none", "outside": "none", "active": "yes", "usual": "0"}


async def _let_go_before_the_answers(practice: Practice) -> None:
    await changed(practice, lambda course: setattr(course, "screened", HEALTHY))
    await practice.types(CLIENT, "I am pregnant")
    await practice.tapped(COACH, "go:1")
    await practice.tapped(COACH, (await buttons(practice, COACH))["Spoke with them, fine to go on"])
    assert await state(practice) == ("active", None)
    await practice.tick(hours=24)


async def test_a_yes_about_health_after_letting_go_makes_the_course_wait_at_once(practice: Practice) -> None:
    await _let_go_before_the_answers(practice)
    for answer in ("inside:something", "chest:yes"):
        await practice.tapped(CLIENT, f"screen:1:{answer}")
    assert await state(practice) == ("waiting", None)
    alert = await practice.alert()
    assert (alert.cause, alert.at_once, alert.facts["waits"]) == ("screening", True, "chest")
    async with practice.database.reading() as session:
        newest = (await session.scalars(select(LedgerRow).order_by(LedgerRow.id.desc()))).first()
        assert newest is not None
        assert newest.kind == "waiting"
        assert (await session.scalars(select(Outbox.state).where(Outbox.kind == "session"))).all() == ["skipped"]
    await practice.tapped(COACH, "go:1")
    assert "Spoke with them, fine to go on" not in await buttons(practice, COACH)


async def test_without_a_yes_the_course_goes_on(practice: Practice) -> None:
    await _let_go_before_the_answers(practice)
    for answer in ("inside:none", "outside:none"):
        await practice.tapped(CLIENT, f"screen:1:{answer}")
    assert (await practice.course_of(CLIENT)).screened == HEALTHY
    assert await state(practice) == ("active", None)


@pytest.mark.parametrize(
    ("earlier", "then", "kind"),
    [
        ("pain 1", "I am pregnant", "waiting"),
        ("done, pain 1", "I am pregnant", "session"),
        ("measure", "I am pregnant", "waiting"),
        ("measure", "I heard a pop in my calf", "waiting"),
    ],
)
async def test_nothing_that_is_not_done_stays_handed_out_to_who_waits(
    practice: Practice, earlier: str, then: str, kind: str
) -> None:
    async def is_a_test_day(desk: Desk) -> None:
        (await desk.session.get_one(LedgerRow, 1)).kind = "measure"

    if earlier == "measure":
        await practice.at_desk(is_a_test_day)
    else:
        await practice.types(CLIENT, earlier)
    await practice.types(CLIENT, then)
    async with practice.database.reading() as session:
        assert (await session.get_one(LedgerRow, 1)).kind == kind


async def test_before_anything_was_said_of_things_at_hand_the_settings_are_shown(practice: Practice) -> None:
    await practice.tapped(CLIENT, "settings:things")
    assert (await practice.put_so_far(CLIENT))[-1].startswith("You are Kim.")
