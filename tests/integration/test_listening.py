"""What is typed beside something else: beside a morning's answer, a request, an open question, a command."""

from __future__ import annotations

from collections.abc import AsyncIterator, Awaitable, Callable
from datetime import timedelta
from pathlib import Path

import pytest

from bot.flows import day
from bot.flows.desk import Desk
from db.schema import Course, LedgerRow, Person
from plans.checkin import CheckIn, Completion
from tests.integration.coaching import CLIENT, Practice, first_day_in
from tests.integration.updates import handled, message, offline

pytestmark = pytest.mark.usefixtures("store")


@pytest.fixture
async def practice(tmp_path: Path) -> AsyncIterator[Practice]:
    """A client on their first day, of which nothing was said yet."""
    async with first_day_in(tmp_path) as found:
        yield found


async def asked_on_the_second_day(practice: Practice, first: str) -> None:
    await practice.types(CLIENT, first)
    await practice.tick(hours=24)
    assert (await practice.ledger())[-1].kind == "asking"


async def last_words(practice: Practice, chat: int = CLIENT) -> str:
    return (await practice.put_so_far(chat))[-1]


# --- beside a morning's answer ----------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("words", "pain", "morning"),
    [
        ("settled but pain 6 in my knee", 6, "settled"),
        ("the same, pain 7", 7, "same"),
        ("better, pain 6", 6, "settled"),
    ],
)
async def test_a_worse_pain_beside_a_mornings_answer_counts_before_it(
    practice: Practice, words: str, pain: int, morning: str
) -> None:
    await asked_on_the_second_day(practice, "done, pain 4")
    await practice.types(CLIENT, words)
    assert (await practice.said()).pain == pain
    newest = (await practice.ledger())[-1]
    assert (newest.kind, newest.morning) == ("rest", morning)
    assert "excessive" in await practice.told_at_once()


async def test_a_pain_that_rose_after_the_answer_was_judged_is_a_date_off_too(practice: Practice) -> None:
    await asked_on_the_second_day(practice, "done, pain 4")
    await practice.types(CLIENT, "worse")
    await practice.tick(hours=24)
    assert [row.kind for row in await practice.ledger()] == ["session", "rest", "asking"]
    await practice.types(CLIENT, "settled but pain 6")
    assert (await practice.ledger())[-1].kind == "rest"
    assert "excessive" in await practice.told_at_once()


@pytest.mark.parametrize(
    ("words", "morning"), [("worse, still 4", "worse"), ("the same, 4", "same"), ("worse, 2", "worse")]
)
async def test_a_number_that_is_no_worse_leaves_a_mornings_answer_heard(
    practice: Practice, words: str, morning: str
) -> None:
    await asked_on_the_second_day(practice, "done, pain 4")
    await practice.types(CLIENT, words)
    newest = (await practice.ledger())[-1]
    assert newest.morning == morning
    assert newest.kind != "asking"
    assert (await practice.said()).pain == 4
    assert ("morning-after" in await practice.told_at_once()) is (morning == "worse")


@pytest.mark.parametrize("words", ["2", "pain is 2 now", "7", "pain 7"])
async def test_a_number_alone_does_not_say_how_it_is_now(practice: Practice, words: str) -> None:
    await asked_on_the_second_day(practice, "done, pain 7")
    before = len(await practice.put_so_far(CLIENT))
    await practice.types(CLIENT, words)
    assert (await practice.said()).pain == 7
    assert (await practice.ledger())[-1].kind == "asking"
    [asked] = (await practice.rows(CLIENT))[before:]
    assert "How is it now?" in asked.payload["text"]
    assert len(asked.payload["reply_markup"]["inline_keyboard"]) == 3


@pytest.mark.parametrize(("words", "kind"), [("5", "asking"), ("pain 5", "asking"), ("7", "rest"), ("pain 7", "rest")])
async def test_a_greater_number_raises_the_pain(practice: Practice, words: str, kind: str) -> None:
    await asked_on_the_second_day(practice, "done, pain 4")
    await practice.types(CLIENT, words)
    assert (await practice.said()).pain == int(words[-1])
    assert (await practice.ledger())[-1].kind == kind


async def test_worse_is_heard_while_the_number_is_asked_for(practice: Practice) -> None:
    await asked_on_the_second_day(practice, "done")
    await practice.types(CLIENT, "worse")
    newest = (await practice.ledger())[-1]
    assert (newest.kind, newest.morning) == ("asking", "worse")
    assert "morning-after" in await practice.told_at_once()
    assert "how much did it hurt" in await last_words(practice)
    await practice.types(CLIENT, "2")
    assert (await practice.ledger())[-1].kind == "rest"


async def test_worse_is_heard_beside_a_request(practice: Practice) -> None:
    await asked_on_the_second_day(practice, "done, pain 4")
    await practice.types(CLIENT, "it is worse, I need a break for a few days")
    assert (await practice.ledger())[-1].morning == "worse"
    assert "morning-after" in await practice.told_at_once()
    assert (await practice.course_of(CLIENT)).paused == "away"


# --- beside a request -------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("words", "served"),
    [
        ("I need a break for a few days, my hamstring hurts 7", "a pause"),
        ("thanks, pain was 7", "no session today"),
        ("what is today's session? pain 7", "no session today"),
        ("my pain is 7, can we move the session to the evening", "When should your session come?"),
        ("stop, it hurts 7", "Stop the course?"),
    ],
)
async def test_a_pain_beside_a_request_is_heard_first(practice: Practice, words: str, served: str) -> None:
    await practice.types(CLIENT, words)
    assert served in await last_words(practice)
    assert (await practice.said()).pain == 7
    assert (await practice.ledger())[-1].kind == "rest"
    assert "excessive" in await practice.told_at_once()


async def test_who_comes_back_with_pain_is_heard_with_it(practice: Practice) -> None:
    await practice.types(CLIENT, "pause")
    await practice.types(CLIENT, "I am back, but it hurts 7")
    assert (await practice.said()).pain == 7
    assert (await practice.course_of(CLIENT)).paused is None
    assert "excessive" in await practice.told_at_once()


async def test_a_missing_thing_and_a_pain_are_both_heard(practice: Practice) -> None:
    await practice.types(CLIENT, "no strap here, pain 7")
    assert (await practice.said()).pain == 7
    assert (await practice.ledger())[-1].kind == "rest"


# --- while a setting is asked for, before a course and after it -------------------------------------------------------


@pytest.mark.parametrize(("words", "state"), [("pain 9", "waiting"), ("sharp pain 4", "waiting"), ("pain 7", "active")])
async def test_a_pain_is_heard_while_a_setting_is_asked_for(practice: Practice, words: str, state: str) -> None:
    await practice.types(CLIENT, "change time")
    await practice.types(CLIENT, words)
    assert (await practice.said()).pain == int(words[-1])
    assert (await practice.course_of(CLIENT)).state == state
    assert await practice.told_at_once()


@pytest.mark.parametrize(
    "asks", [lambda p: p.types(CLIENT, "change time"), lambda p: p.tapped(CLIENT, "settings:name")]
)
async def test_a_check_in_is_no_setting(practice: Practice, asks: Callable[[Practice], Awaitable[object]]) -> None:
    await asks(practice)
    await practice.types(CLIENT, "did my session this evening, 2")
    assert (await practice.said()) == CheckIn(Completion.DONE, pain=2)
    async with practice.database.reading() as session:
        assert (await session.get_one(Person, CLIENT)).label == "Kim"


async def changed(practice: Practice, **columns: object) -> None:
    """Puts the client's course into a state."""
    number = (await practice.course_of(CLIENT)).id

    async def job(desk: Desk) -> None:
        course = await desk.session.get_one(Course, number)
        for name, value in columns.items():
            setattr(course, name, value)

    await practice.at_desk(job)


@pytest.mark.parametrize("state", ["joining", "finished"])
async def test_a_strong_pain_outside_a_course_is_a_warning_sign(practice: Practice, state: str) -> None:
    await changed(practice, state=state)
    await practice.types(CLIENT, "pain 9")
    assert "red-flag" in await practice.told_at_once()


@pytest.mark.parametrize("words", ["pain 9", "I have had chest pain and cannot breathe since yesterday"])
async def test_a_warning_sign_after_stopping_gets_its_words(practice: Practice, words: str) -> None:
    await practice.tapped(CLIENT, "stop:yes:1")
    await practice.types(CLIENT, words)
    assert "Stop" in await last_words(practice)
    assert "link" not in await last_words(practice)
    assert not await practice.told_at_once()


async def begins_tomorrow(practice: Practice) -> None:
    async def job(desk: Desk) -> None:
        await desk.session.delete(await desk.session.get_one(LedgerRow, 1))

    await practice.at_desk(job)
    await changed(practice, starts_on=practice.calendar.now().date() + timedelta(days=1))


@pytest.mark.parametrize(
    "words", ["I have had chest pain and cannot breathe since yesterday", "my leg is numb", "pain 9"]
)
async def test_a_warning_sign_before_the_first_day_holds_the_course(practice: Practice, words: str) -> None:
    await begins_tomorrow(practice)
    await practice.types(CLIENT, words)
    assert (await practice.course_of(CLIENT)).state == "waiting"
    assert "red-flag" in await practice.told_at_once()
    await practice.at_desk(lambda desk: day.plan_morning(desk, CLIENT))
    await practice.tick(hours=24)
    assert [row.kind for row in await practice.ledger()] == ["waiting"]


@pytest.mark.parametrize(
    ("words", "state", "paused"), [("I am pregnant", "waiting", None), ("pause", "active", "away")]
)
async def test_a_request_before_the_first_day_is_served(
    practice: Practice, words: str, state: str, paused: str | None
) -> None:
    await begins_tomorrow(practice)
    await practice.types(CLIENT, words)
    course = await practice.course_of(CLIENT)
    assert (course.state, course.paused) == (state, paused)


@pytest.mark.parametrize("command", ["/lighter my leg is numb", "/shorter 10 my leg is numb", "/lighter pain 9"])
async def test_a_command_with_a_sign_beside_it_is_heard_and_not_served(practice: Practice, command: str) -> None:
    now = practice.calendar.now()
    update = message(77, now, chat=CLIENT, sender=CLIENT, text=command)
    await practice.database.write(lambda _session: handled(offline(), update, now))
    [row] = await practice.ledger()
    assert (row.level, row.minutes) == (0, None)
    assert (await practice.said()).flag is not None or (await practice.said()).pain == 9
