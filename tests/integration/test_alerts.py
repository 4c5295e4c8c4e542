"""Alerts: told with all that is needed, called until somebody has seen them, and never lost."""

from __future__ import annotations

from collections.abc import AsyncIterator
from datetime import UTC, date, datetime, time
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select

from bot.cli import examination
from bot.clocks import SystemMachine
from bot.flows import answering, calling, telling
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from db import courses, due, erasure
from db.due import DueKind
from db.schema import Absence, Alert, AlertCall, Coach, Course, Due, Helper, LedgerRow, Person
from plans.checkin import CheckIn, Kind, Place, Side
from plans.rules import Tell, Verdict, Vote
from tests.integration.coaching import CLIENT, COACH, HELPER, Practice, practice_in
from tests.integration.fakes import until

pytestmark = pytest.mark.usefixtures("store")
SHARP = CheckIn(pain=3, kind=Kind.SHARP, place=Place.HERE, side=Side.LEFT)


@pytest.fixture
async def practice(tmp_path: Path) -> AsyncIterator[Practice]:
    async with practice_in(tmp_path) as found:
        await found.opens()
        yield found


async def flag(practice: Practice, *, quote: str = "my leg went", level: str = "same-day", red: bool = True) -> Alert:
    """The client tells of something red, or of pain of six."""

    async def job(desk: Desk) -> None:
        course = await desk.session.get_one(Course, 1)
        course.state = "waiting" if red else "active"
        await telling.tell_of(
            desk,
            course,
            cause="red-flag" if red else "excessive",
            at_once=True,
            facts={"flag": level} if red else {"pain": 6},
            row=await desk.session.get_one(LedgerRow, 1),
            said=SHARP,
            quote=quote,
            red=red,
            decided="waits" if red else "rests",
        )

    await practice.at_desk(job)
    return await practice.alert()


async def call_at(practice: Practice, alert: Alert) -> datetime | None:
    async with practice.database.reading() as session:
        return await due.planned(session, DueKind.CALL, alert.id)


# --- what it says ---------------------------------------------------------------------------------------------------


async def test_a_call_says_everything_that_is_needed_to_act(practice: Practice) -> None:
    await flag(practice)
    (text,) = await practice.put_so_far(COACH)
    for part in (
        "Kim needs a look",
        "a red flag (to be seen today) · day 1",
        "pain 3 (sharp or sudden), where we stretch, left",
        '"my leg went"',
        "Told on Mon 4 May, 08:00.",
        "It has hurt since Mon 4 May.",
        "Nothing is sent to them until you let them go on.",
    ):
        assert part in text, text
    assert len(text) <= 500


async def test_the_longest_call_is_no_longer_than_a_message_may_be(practice: Practice) -> None:
    await flag(practice, quote="w" * 4000)
    (text,) = await practice.put_so_far(COACH)
    assert len(text) <= 500, len(text)


def test_since_when_it_hurts_goes_back_to_the_last_clean_day() -> None:
    days = [date(2026, 5, day) for day in range(1, 6)]
    said = [CheckIn(pain=4), CheckIn(pain=0), CheckIn(pain=2), CheckIn(), CheckIn(pain=5)]
    assert calling.hurts_since(zip(days, said, strict=True), 0) == date(2026, 5, 3)
    assert calling.hurts_since(zip(days[:2], said[:2], strict=True), 0) is None
    assert calling.hurts_since(zip(days, said, strict=True), 2) == date(2026, 5, 5)


# --- one open alert a cause -----------------------------------------------------------------------------------------


async def test_more_of_the_same_joins_the_open_alert_and_changes_its_message(practice: Practice) -> None:
    await flag(practice)
    alert = await flag(practice, quote="and now my foot")
    assert alert.events == 2
    first, changed = await practice.put_so_far(COACH)
    assert "my leg went" in first
    assert '"my leg went"' in changed
    assert '"and now my foot"' in changed
    assert "Told 2 times so far." in changed
    async with practice.database.reading() as session:
        assert len((await session.scalars(select(Alert))).all()) == 1


@pytest.mark.parametrize("graver", [True, False])
async def test_what_is_graver_or_comes_after_seen_is_called_anew(practice: Practice, graver: bool) -> None:
    alert = await flag(practice)
    if not graver:
        await practice.tapped(COACH, f"seen:{alert.id}")
    before = len(await practice.put_so_far(COACH))
    alert = await flag(practice, quote="my chest", level="emergency" if graver else "same-day")
    assert (alert.seen_at, alert.rung) == (None, 1)
    assert "Kim needs a look" in (await practice.put_so_far(COACH))[before]
    assert await call_at(practice, alert) is not None


# --- seen, and not seen ---------------------------------------------------------------------------------------------


async def test_seen_stops_the_calls_and_says_everywhere_who_it_was(practice: Practice) -> None:
    alert = await flag(practice)
    await practice.tick(minutes=60)
    await practice.tick(minutes=60)
    assert len(await practice.put_so_far(HELPER)) == 1
    assert await practice.tapped(HELPER, f"seen:{alert.id}") == "Seen by Help, Mon 4 May, 10:00."
    assert await call_at(practice, alert) is None
    for chat in (COACH, HELPER):
        assert "Seen by Help" in (await practice.put_so_far(chat))[-1]
    assert await practice.tapped(COACH, f"seen:{alert.id}") == "Seen by Help, Mon 4 May, 10:00."
    assert (await practice.alert()).closed_at is None, "the client still waits"
    await practice.tick(days=3)
    assert not any("needs a look" in text for text in (await practice.put_so_far(COACH))[6:])


async def test_what_nobody_waits_for_is_done_with_when_seen(practice: Practice) -> None:
    alert = await flag(practice, red=False)
    await practice.tapped(COACH, f"seen:{alert.id}")
    assert (await practice.alert()).closed_at is not None


@pytest.mark.parametrize("person", [CLIENT, HELPER])
async def test_only_who_hears_the_coachs_alerts_can_see_them_off(practice: Practice, person: int) -> None:
    alert = await flag(practice)

    async def deaf(desk: Desk) -> None:
        (helper,) = await desk.session.scalars(select(Helper))
        helper.hears = False

    await practice.at_desk(deaf)
    with pytest.raises(NotAllowed):
        await practice.tapped(person, f"seen:{alert.id}")
    assert (await practice.alert()).seen_at is None


async def test_an_assistant_who_was_removed_hears_nothing_new(practice: Practice) -> None:
    await flag(practice)
    for _ in range(2):
        await practice.tick(hours=1)
    assert len(await practice.rows(HELPER)) == 1
    await practice.tapped(COACH, "coach:remove:1")
    before = len(await practice.rows(HELPER))
    await flag(practice, quote="and it is secret")
    assert len(await practice.rows(HELPER)) == before
    assert "and it is secret" in (await practice.put_so_far(COACH))[-1]


async def test_the_ladder_goes_coach_coach_again_assistant_and_then_daily(practice: Practice) -> None:
    await flag(practice)
    await practice.tick(minutes=59)
    assert (len(await practice.put_so_far(COACH)), len(await practice.put_so_far(HELPER))) == (1, 0)
    await practice.tick(minutes=1)
    assert "Called again: Kim needs a look" in (await practice.put_so_far(COACH))[-1]
    assert await practice.put_so_far(HELPER) == []
    await practice.tick(minutes=60)
    (text,) = await practice.put_so_far(HELPER)
    assert "Coach has not seen this yet. Please look in their place." in text
    for day in range(1, 4):
        await practice.tick(days=1)
        assert len(await practice.put_so_far(HELPER)) == 1 + day


async def test_other_alerts_are_called_again_after_four_hours_and_never_at_night(practice: Practice) -> None:
    alert = await flag(practice, red=False)
    assert await call_at(practice, alert) == datetime(2026, 5, 4, 12, tzinfo=UTC)
    practice.calendar.at = datetime(2026, 5, 4, 18, tzinfo=UTC)
    await practice.tick()
    assert await call_at(practice, alert) == datetime(2026, 5, 5, 7, tzinfo=UTC), "not at ten in the evening"


@pytest.mark.parametrize(
    ("hours", "at", "comes"),
    [
        (None, datetime(2026, 5, 4, 23, tzinfo=UTC), datetime(2026, 5, 5, 7, tzinfo=UTC)),
        (None, datetime(2026, 5, 4, 3, tzinfo=UTC), datetime(2026, 5, 4, 7, tzinfo=UTC)),
        ((time(10), time(12)), datetime(2026, 5, 4, 13, tzinfo=UTC), datetime(2026, 5, 5, 10, tzinfo=UTC)),
        ((time(22), time(2)), datetime(2026, 5, 4, 1, tzinfo=UTC), datetime(2026, 5, 4, 1, tzinfo=UTC)),
        ((time(22), time(2)), datetime(2026, 5, 4, 12, tzinfo=UTC), datetime(2026, 5, 4, 22, tzinfo=UTC)),
        ((time(17), time(20), 0, 2), datetime(2026, 5, 4, 21, tzinfo=UTC), datetime(2026, 5, 6, 17, tzinfo=UTC)),
        ((time(17), time(20), 0), datetime(2026, 5, 5, 18, tzinfo=UTC), datetime(2026, 5, 11, 17, tzinfo=UTC)),
        ((time(22), time(2), 0), datetime(2026, 5, 5, 1, tzinfo=UTC), datetime(2026, 5, 5, 1, tzinfo=UTC)),
        ((time(22), time(2), 1), datetime(2026, 5, 5, 1, tzinfo=UTC), datetime(2026, 5, 5, 22, tzinfo=UTC)),
    ],
)
def test_the_next_answering_hour(hours: tuple[Any, ...] | None, at: datetime, comes: datetime) -> None:
    """Monday is 4 May."""
    opens, shuts, *days = hours or (None, None)
    coach = Coach(id=1, person_id=1, answers_from=opens, answers_until=shuts, answers_on=days or None)
    assert answering.awake(coach, Person(id=1, zone="UTC"), at) == comes


async def test_quiet_hours_never_silence_a_red_flag(practice: Practice) -> None:
    practice.calendar.at = datetime(2026, 5, 4, 23, 30, tzinfo=UTC)
    alert = await flag(practice)
    assert len(await practice.put_so_far(COACH)) == 1
    assert await call_at(practice, alert) == datetime(2026, 5, 5, 0, 30, tzinfo=UTC)


async def test_while_the_coach_is_away_the_stand_in_is_called_at_once(practice: Practice) -> None:
    async def away(desk: Desk) -> None:
        dates = {"first_on": date(2026, 5, 4), "last_on": date(2026, 5, 8)}
        desk.session.add(Absence(coach_id=1, stand_in_id=HELPER, **dates))

    await practice.at_desk(away)
    await flag(practice)
    (text,) = await practice.put_so_far(HELPER)
    assert "You look after them for Coach." in text
    assert len(await practice.put_so_far(COACH)) == 1


# --- the morning list -----------------------------------------------------------------------------------------------


async def listed(practice: Practice) -> None:
    async def job(desk: Desk) -> None:
        await telling.tell_of(desk, await desk.session.get_one(Course, 1), cause="pause", at_once=False)

    await practice.at_desk(job)


async def test_everything_else_waits_for_one_list_and_comes_back_when_it_happens_again(practice: Practice) -> None:
    await listed(practice)
    assert await practice.put_so_far(COACH) == []
    await practice.tick(hours=23)
    (text,) = await practice.put_so_far(COACH)
    assert "Kim: asked for a pause" in text
    await listed(practice)
    await practice.tick(days=1)
    assert len(await practice.put_so_far(COACH)) == 2
    await practice.tapped(COACH, f"listed:1:{(await practice.alert()).id}")
    assert (await practice.alert()).closed_at is not None


class LongAfter(SystemMachine):
    """The machine clock when every lease of a dead process is over."""

    def now(self) -> float:
        return super().now() + 1000


async def test_words_typed_before_the_tap_that_raised_it_stand_in_the_call(practice: Practice) -> None:
    async def typed(desk: Desk) -> None:
        row = await desk.session.get_one(LedgerRow, 1)
        person = await desk.session.get_one(Person, CLIENT)
        said = [("words", "my knee feels funny")]
        await courses.note_answer(desk.session, update_id=1, person=person, row=row, said=said, now=desk.now)

    async def tapped(desk: Desk) -> None:
        course = await desk.session.get_one(Course, 1)
        row = await desk.session.get_one(LedgerRow, 1)
        await telling.tell_of(desk, course, cause="excessive", at_once=True, facts={"pain": 6}, row=row, said=SHARP)

    await practice.at_desk(typed)
    await practice.at_desk(tapped)
    assert '"my knee feels funny"' in (await practice.put_so_far(COACH))[-1]


async def test_an_erased_client_leaves_no_alert_and_nothing_due(practice: Practice) -> None:
    await flag(practice)

    async def erased(desk: Desk) -> None:
        await erasure.erase(desk.session, await desk.session.get_one(Person, CLIENT), desk.now)

    await practice.at_desk(erased)
    async with practice.database.reading() as session:
        for table in (Alert, AlertCall, Due):
            assert (await session.scalars(select(table))).all() == []


# --- never lost -----------------------------------------------------------------------------------------------------


async def test_a_platform_that_fails_only_delays_a_call(practice: Practice) -> None:
    practice.platform.next_up = [(500, "Internal Server Error"), "drop"]
    alert = await flag(practice)
    async with practice.sending():
        await until(practice.all_left, 30)
    texts = practice.platform.seen_by(COACH)
    assert len(texts) == 3
    assert "Sent again" in texts[-1]
    assert await call_at(practice, alert) is not None, "until somebody has seen it, the next call stays due"


async def test_a_process_that_dies_while_sending_leaves_the_call_to_the_next(practice: Practice) -> None:
    alert = await flag(practice)
    dead = practice.sender()
    (letter,) = await dead.claim(10)
    assert await dead._may_leave(letter)
    async with practice.sending(LongAfter()):
        await until(practice.all_left, 30)
    assert any("Kim needs a look" in text for text in practice.platform.seen_by(COACH))
    assert await call_at(practice, alert) is not None


async def test_a_coach_who_has_blocked_the_bot_is_told_of_by_doctor_and_the_assistant_gets_the_call(
    practice: Practice,
) -> None:
    practice.platform.blocked.add(COACH)
    alert = await flag(practice)
    async with practice.sending():
        await until(lambda: bool(practice.platform.seen_by(HELPER)))
    (text,) = practice.platform.seen_by(HELPER)
    assert "Kim needs a look" in text
    assert (await practice.alert()).seen_at is None
    assert await call_at(practice, alert) is not None
    async with practice.database.reading() as session:
        found = await examination.alerts_of(session)
    assert not found.fine
    assert "coach 1 has blocked the bot, an assistant hears" in found.found


async def test_the_next_alert_of_a_blocked_coach_goes_to_the_assistant_at_once(practice: Practice) -> None:
    async def blocked(desk: Desk) -> None:
        (await desk.session.get_one(Person, COACH)).unreachable_since = desk.now

    await practice.at_desk(blocked)
    await flag(practice)
    assert len(await practice.put_so_far(HELPER)) == 1


async def test_a_coach_who_comes_back_is_called_at_once(practice: Practice) -> None:
    await flag(practice)

    async def back(desk: Desk) -> None:
        await calling.returned(desk, await desk.session.get_one(Person, COACH))

    await practice.at_desk(back)
    assert "Called again" in (await practice.put_so_far(COACH))[-1]


# --- one call for one answer ----------------------------------------------------------------------------------------


async def say_sharp_pop(practice: Practice) -> None:
    """One answer that two rules refer for."""

    async def job(desk: Desk) -> None:
        course = await desk.session.get_one(Course, 1)
        course.state = "waiting"
        votes = [
            Vote("excessive", Verdict.REST, Tell.NOW, {"pain": 6}),
            Vote("red-flag", Verdict.REFER, Tell.NOW, {"flag": "same-day"}),
            Vote("strain-like", Verdict.REFER, Tell.NOW, {"kind": "pop", "pain": 6}),
        ]
        await telling.tell(desk, course, votes, row=await desk.session.get_one(LedgerRow, 1), said=SHARP)

    await practice.at_desk(job)


async def test_one_answer_is_one_call_that_names_all_its_reasons(practice: Practice) -> None:
    await say_sharp_pop(practice)
    (text,) = await practice.put_so_far(COACH)
    assert "a red flag (to be seen today); strain-like: a pop, bruise or swelling, pain 6; pain 6 of 10 · day 1" in text
    async with practice.database.reading() as session:
        ids = list(await session.scalars(select(Alert.id).order_by(Alert.id)))
        assert len(ids) == 3
        called = [await due.planned(session, DueKind.CALL, number) for number in ids]
    assert [at is not None for at in called] == [True, False, False]
    await practice.tapped(COACH, f"seen:{ids[0]}")
    assert "strain-like" in (await practice.put_so_far(COACH))[-1]
    async with practice.database.reading() as session:
        assert all([seen is not None for seen in await session.scalars(select(Alert.seen_at))])


async def test_what_went_along_is_called_itself_when_it_comes_again_after_seen(practice: Practice) -> None:
    await say_sharp_pop(practice)
    await practice.tapped(COACH, "seen:1")
    before = len(await practice.put_so_far(COACH))
    await flag(practice, level="emergency")
    assert "Kim needs a look" in (await practice.put_so_far(COACH))[before]


async def test_a_list_that_a_blocked_coach_did_not_get_goes_to_the_assistant_and_comes_once_more(
    practice: Practice,
) -> None:
    async def blocked(desk: Desk) -> None:
        (await desk.session.get_one(Person, COACH)).unreachable_since = desk.now

    async def back(desk: Desk) -> None:
        coach = await desk.session.get_one(Person, COACH)
        coach.unreachable_since = None
        await calling.returned(desk, coach)

    await listed(practice)
    await practice.at_desk(blocked)
    await practice.tick(days=1)
    (text,) = await practice.put_so_far(HELPER)
    assert "This morning's list of Coach" in text
    await practice.at_desk(back)
    await practice.tick(days=1)
    assert len(await practice.put_so_far(COACH)) == 2
    assert len(await practice.put_so_far(HELPER)) == 1
