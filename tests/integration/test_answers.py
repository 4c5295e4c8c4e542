"""Answers by taps: in steps before the session, under a warning sign, before time away, and about an older day."""

from __future__ import annotations

from collections.abc import AsyncIterator
from datetime import date
from pathlib import Path

import pytest

from bot.flows.desk import Desk
from db import courses
from db.schema import Course
from tests.integration.coaching import CLIENT, Practice, first_day_in

pytestmark = pytest.mark.usefixtures("store")


@pytest.fixture
async def practice(tmp_path: Path) -> AsyncIterator[Practice]:
    """A client on their first day, of which nothing was said yet."""
    async with first_day_in(tmp_path) as found:
        yield found


async def taps(practice: Practice, *answers: str) -> None:
    """Taps under the first day's message."""
    for answer in answers:
        await practice.tapped(CLIENT, f"c:1:{answer}")


async def test_a_pain_typed_between_the_steps_of_a_report_makes_the_day_off(practice: Practice) -> None:
    await taps(practice, "odd", "kind:dull-one")
    await practice.types(CLIENT, "pain 7")
    assert (await practice.ledger())[0].kind == "session"
    await taps(practice, "place:here-left")
    assert (await practice.ledger())[0].kind == "rest"


async def test_under_a_confirmed_sign_no_later_tap_lowers_the_pain(practice: Practice) -> None:
    await practice.types(CLIENT, "sharp pain 7, heard a pop in my calf")
    await taps(practice, "some")
    assert (await practice.said()).pain == 7
    await practice.types(CLIENT, "2")
    assert (await practice.said()).pain == 7


# --- ill, and a sign that is still to be asked back, before time away ----------------------------------------------


@pytest.mark.parametrize("back_on", [None, date(2026, 5, 9)])
async def test_ill_on_an_older_day_pauses_nothing_and_ends_no_pause(practice: Practice, back_on: date | None) -> None:
    await practice.tick(hours=24)
    paused = "away" if back_on else None

    async def goes_away(desk: Desk) -> None:
        course = await desk.session.get_one(Course, 1)
        course.paused, course.back_on = paused, back_on

    await practice.at_desk(goes_away)
    await taps(practice, "none", "why:ill")
    course = await practice.course_of(CLIENT)
    assert (course.paused, course.back_on) == (paused, back_on)


async def test_a_sign_that_is_not_asked_back_before_a_pause_reaches_the_coach_once(practice: Practice) -> None:
    await practice.types(CLIENT, "done, my foot went numb")
    await practice.types(CLIENT, "pause")
    assert await practice.told_at_once() == []
    for _ in range(3):
        await practice.tick(hours=24)
    assert [row.kind for row in await practice.ledger()] == ["session", "away", "away", "away"]
    assert await practice.told_at_once() == ["unsure-flag"]


# --- about an older day -----------------------------------------------------------------------------------------------

TOO_HARD = ("part", "half:yes", "why:too-hard", "pain:2")
NERVE_GONE = ("odd", "kind:nerve", "flag:no", "place:here-left", "pain:2")
PAIN_OF_SEVEN = ("some", "pain:7")


@pytest.mark.parametrize("answers", [TOO_HARD, NERVE_GONE], ids=["too hard", "nerve gone"])
async def test_a_late_answer_that_eases_makes_todays_untouched_session_lighter(
    practice: Practice, answers: tuple[str, ...]
) -> None:
    await practice.tick(hours=24)
    assert [(row.kind, row.level) for row in await practice.ledger()] == [("session", 0), ("session", 0)]
    await taps(practice, *answers)
    newest = (await practice.ledger())[-1]
    assert (newest.kind, newest.level, newest.day) == ("session", 1, 1)
    assert (await practice.course_of(CLIENT)).level == 1


async def test_a_late_answer_leaves_a_session_that_was_answered_as_it_is(practice: Practice) -> None:
    await practice.tick(hours=24)
    await practice.types(CLIENT, "done, pain 0")
    await taps(practice, *TOO_HARD)
    assert [row.level for row in await practice.ledger()] == [0, 0]


@pytest.mark.parametrize("kind", ["session", "measure"])
async def test_a_late_answer_that_rests_makes_today_a_date_off(practice: Practice, kind: str) -> None:
    await practice.tick(hours=24)

    async def is_of_that_kind(desk: Desk) -> None:
        (await courses.last_row(desk.session, await desk.session.get_one(Course, 1))).kind = kind  # type: ignore[union-attr]

    await practice.at_desk(is_of_that_kind)
    await taps(practice, *PAIN_OF_SEVEN)
    assert (await practice.ledger())[-1].kind == "rest"


# --- a pain in doubt ------------------------------------------------------------------------------------------------


async def test_a_pain_in_doubt_counts_until_it_is_answered(practice: Practice, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("plans.replies.doubt_in", lambda *read: "pain")
    await practice.types(CLIENT, "done, pain 5")
    assert (await practice.said()).pain == 5
    assert await practice.button(CLIENT, "2") == "c:1:pain:2"
    await taps(practice, "pain:2")
    assert (await practice.said()).pain == 2
