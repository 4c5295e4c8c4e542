"""The question "how is it now?", answered in time, a day late, and when nothing waits for it any more."""

from __future__ import annotations

from collections.abc import AsyncIterator
from datetime import date
from itertools import pairwise
from pathlib import Path

import pytest
from sqlalchemy import select

from bot.flows import day
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from db import courses, due
from db.schema import Alert, Course, LedgerRow, Overrule, Person
from tests.integration.coaching import CLIENT, COACH, Practice, first_day_in
from tests.integration.desks import buttons_of

pytestmark = pytest.mark.usefixtures("store")


@pytest.fixture
async def practice(tmp_path: Path) -> AsyncIterator[Practice]:
    """A client who was sore at 5 on the first day, and is asked on the second and the third morning."""
    async with first_day_in(tmp_path) as found:
        await found.types(CLIENT, "done, pain 5")
        await found.tick(hours=24)
        await found.tick(hours=24)
        assert [row.kind for row in await found.ledger()] == ["session", "asking", "asking"]
        yield found


async def causes(practice: Practice) -> set[tuple[str, bool]]:
    async with practice.database.reading() as session:
        return {(alert.cause, alert.at_once) for alert in await session.scalars(select(Alert))}


async def tap(practice: Practice, row: LedgerRow, answer: str) -> None:
    await practice.tapped(CLIENT, f"m:{row.id}:{answer}")


@pytest.mark.parametrize("answer", ["settled", "same"])
async def test_under_yesterdays_question_it_answers_the_one_that_is_open(practice: Practice, answer: str) -> None:
    [_first, old, new] = await practice.ledger()
    await tap(practice, old, answer)
    [_first, old, new] = await practice.ledger()
    assert (old.kind, old.morning) == ("asking", None)
    assert (new.kind, new.morning) == ("session", answer)
    assert "Noted" in (await practice.put_so_far(CLIENT))[-2]


async def test_worse_under_yesterdays_question_is_a_worse_morning_today(practice: Practice) -> None:
    await tap(practice, (await practice.ledger())[1], "worse")
    assert (await practice.ledger())[2].kind == "rest"
    assert ("morning-after", True) in await causes(practice)


async def test_an_old_morning_that_was_worse_reaches_the_coach_and_changes_no_day(practice: Practice) -> None:
    [_first, old, new] = await practice.ledger()
    await tap(practice, new, "settled")
    before = await practice.ledger()
    assert ("morning-after", True) not in await causes(practice)
    await tap(practice, old, "worse")
    after = await practice.ledger()
    assert [(row.kind, row.day, row.level) for row in after] == [(row.kind, row.day, row.level) for row in before]
    assert after[1].morning == "worse"
    assert ("morning-after", True) in await causes(practice)
    assert "It counts, and today stays as it is" in (await practice.put_so_far(CLIENT))[-1]


async def test_an_old_morning_that_had_settled_hands_out_nothing_again(practice: Practice) -> None:
    [_first, old, new] = await practice.ledger()
    await tap(practice, new, "same")
    before = len(await practice.put_so_far(CLIENT))
    await tap(practice, old, "settled")
    assert (await practice.ledger())[1].kind == "asking"
    assert not any("Day" in text for text in (await practice.put_so_far(CLIENT))[before:])
    assert ("morning-after", True) not in await causes(practice)


async def test_who_asks_for_today_before_the_mornings_of_days_gone_by_were_made_leaves_no_date_out(
    practice: Practice,
) -> None:
    await tap(practice, (await practice.ledger())[2], "settled")
    practice.calendar.forward(days=3)
    await practice.at_desk(_todays)
    found = [row.local_date for row in await practice.ledger()]
    assert [(later - earlier).days for earlier, later in pairwise(found)] == [1] * 5
    assert len(found) == 6
    await practice.tick(seconds=1)
    assert len(await practice.ledger()) == 6


async def _todays(desk: Desk) -> None:
    await day.today(desk, await desk.session.get_one(Person, CLIENT))


# --- an earlier course ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("was_open", [True, False], ids=["left open by an earlier version", "closed"])
async def test_well_again_under_a_course_that_is_over_leaves_the_new_ones_mornings(
    practice: Practice, was_open: bool
) -> None:
    await practice.types(CLIENT, "pause")
    assert (await practice.course_of(CLIENT)).paused == "away"
    await practice.tapped(CLIENT, "stop:yes:1")
    old = await practice.course_of(CLIENT)
    assert (old.state, old.paused) == ("stopped", None)

    async def begins_anew(desk: Desk) -> None:
        (await desk.session.get_one(Course, old.id)).paused = "away" if was_open else None
        new = Course(person_id=CLIENT, coach_id=1, version_id=1, state="active", starts_on=date(2026, 5, 7))
        new.created_at = desk.now
        desk.session.add(new)
        await desk.session.flush()
        await day.plan_morning(desk, CLIENT)

    await practice.at_desk(begins_anew)
    with pytest.raises(NotAllowed):
        await practice.tapped(CLIENT, f"well:{old.id}")
    planned = await practice.at_desk(lambda desk: due.planned(desk.session, due.DueKind.MORNING, CLIENT))
    assert planned is not None


# --- a test day -------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("pain", "kind"), [(4, "measure"), (6, "rest"), (7, "rest")])
async def test_a_report_before_a_test_turns_it_into_a_date_off_from_six_on(
    practice: Practice, pain: int, kind: str
) -> None:
    newest = (await practice.ledger())[-1]

    async def is_a_test_day(desk: Desk) -> None:
        row = await desk.session.get_one(LedgerRow, newest.id)
        row.kind, row.day, row.morning = "measure", 1, "settled"

    await practice.at_desk(is_a_test_day)
    await practice.tapped(CLIENT, f"c:{newest.id}:odd")
    for answer in ("kind:dull-both", "place:here", f"pain:{pain}"):
        await practice.tapped(CLIENT, f"c:{newest.id}:{answer}")
    row = (await practice.ledger())[-1]
    assert (row.kind, row.day, row.prescribed) == (kind, 1, kind == "rest")


# --- a pause ----------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(("answer", "told"), [("settled", False), ("worse", True)])
async def test_in_a_coachs_pause_the_answer_hands_nothing_out(practice: Practice, answer: str, told: bool) -> None:
    newest = (await practice.ledger())[-1]
    await practice.tapped(1, "steer:1:pause:7")
    await tap(practice, newest, answer)
    row = (await practice.ledger())[-1]
    assert (row.kind, row.morning, row.day) == ("away", answer, None)
    assert "Your coach has paused your course" in (await practice.put_so_far(CLIENT))[-1]
    assert (("morning-after", True) in await causes(practice)) is told


async def test_after_a_pause_a_flag_that_was_left_open_is_asked_of_the_day_that_it_was_said_of(
    practice: Practice,
) -> None:
    newest = (await practice.ledger())[-1]
    await tap(practice, newest, "settled")
    for words in ("done, pain 0", "my foot went numb", "pause"):
        await practice.types(CLIENT, words)
    await practice.tick(hours=24)
    await practice.types(CLIENT, "pain 1")
    await practice.types(CLIENT, "go on")
    await practice.tick(hours=24)
    assert [row.kind for row in await practice.ledger()][-2:] == ["away", "asking"]
    offered = buttons_of((await practice.rows(CLIENT))[-1].payload).values()
    assert any(data.startswith(f"c:{newest.id}:flag:") for data in offered)
    await practice.tapped(CLIENT, f"c:{newest.id}:flag:no")
    async with practice.database.reading() as session:
        assert (await courses.said_of(session, newest)).flag_state == "denied"


# --- let go before the first session ----------------------------------------------------------------------------------


@pytest.fixture
async def let_go(tmp_path: Path) -> AsyncIterator[Practice]:
    """A client whose course waited from its first date, and whom the coach has let go."""
    async with first_day_in(tmp_path) as found:

        async def wait(desk: Desk) -> None:
            row = await desk.session.get_one(LedgerRow, 1)
            row.kind, row.day = "waiting", None
            (await desk.session.get_one(Course, 1)).state = "waiting"

        await found.at_desk(wait)
        await found.tapped(COACH, "go:1")
        await found.types(COACH, "seen by a doctor, fine")
        assert (await found.course_of(CLIENT)).state == "active"
        yield found


async def test_a_worse_morning_after_letting_go_is_told_and_brings_no_session(let_go: Practice) -> None:
    await let_go.types(CLIENT, "done 3")
    await let_go.tick(hours=24)
    [_waiting, asking] = await let_go.ledger()
    assert asking.kind == "asking"
    await tap(let_go, asking, "worse")
    assert (await let_go.ledger())[1].kind == "rest"
    assert ("morning-after", True) in await causes(let_go)


async def test_without_a_report_the_first_day_comes_unchanged_after_letting_go(let_go: Practice) -> None:
    await let_go.tick(hours=24)
    first = (await let_go.ledger())[-1]
    assert (first.kind, first.day, first.level) == ("session", 1, 0)


async def test_what_the_coach_found_out_is_kept_before_the_first_session_too(let_go: Practice) -> None:
    async with let_go.database.reading() as session:
        [word] = await session.scalars(select(Overrule))
    assert (word.what, word.note) == ("go-on", "seen by a doctor, fine")
