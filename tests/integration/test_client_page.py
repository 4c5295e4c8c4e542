"""A client's page and what a coach does from it: shown beforehand, told afterwards, taken back, applied once."""

from __future__ import annotations

from datetime import timedelta

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import clients, day, deciding, listening, overruling, ruling, steering
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import words
from bot.words.own_data import page
from db import courses
from db.courses import CourseState
from db.engine import Database
from db.erasure import erase
from db.own_data import own_data
from db.schema import Alert, CheckInRow, Coach, CoachNote, Course, LedgerRow, Overrule, Person
from plans.ledger import RowKind
from plans.rules import Verdict
from tests.integration.desks import (
    COACH,
    NOW,
    TODAY,
    answer_in,
    buttons_of,
    client_in,
    coach_in,
    desk_of,
    text_of,
    told,
    version_in,
    writing,
)
from tests.texts import HEAD, NEW, REST, SESSION

pytestmark = pytest.mark.usefixtures("store")

KIM = 11
DONE = {"completion": "done", "pain": 0}
HARD = {"completion": "part", "pain": 0, "why": "too-hard", "half": True}
HURT = {"completion": "done", "pain": 6, "kind": "other"}
TOMORROW = TODAY + timedelta(days=1)
MORNING = NOW + timedelta(days=1)


class Room:
    """A coach and one client, and what the coach taps."""

    def __init__(self, session: AsyncSession, person: Person, coach: Coach, client: Person, course: Course) -> None:
        self.session, self.person, self.coach, self.client, self.course = session, person, coach, client, course
        self.count = 0

    def desk(self) -> Desk:
        self.count += 1
        return desk_of(self.session, f"test:{self.count}")

    async def taps(self, what: str, number: str = "", seen: str = "") -> str:
        await overruling.tapped(self.desk(), self.person, self.coach, self.course.id, what, number, seen)
        return await self.last()

    async def sure(self, what: str, number: str = "") -> str:
        """Taps, is shown what it does, and says yes."""
        await self.taps(what, number)
        data = (await self.buttons())["Yes, do this"].split(":")
        return await self.taps(*data[2:])

    async def last(self, chat: int = COACH) -> str:
        return text_of((await told(self.session, chat))[-1])

    async def buttons(self) -> dict[str, str]:
        return buttons_of((await told(self.session, COACH))[-1])

    async def morning(self, days: int = 1) -> LedgerRow:
        """Makes the row of a date to come, as the tick does."""
        on = TODAY + timedelta(days=days)
        desk = desk_of(self.session, f"due:{days}", now=NOW + timedelta(days=days))
        await day.make(desk, self.client, self.course, on, by_itself=True)
        row = await courses.row_on(self.session, self.course, on)
        assert row is not None
        return row


async def room(session: AsyncSession, *said: dict[str, object], on: int = 2, level: int = 0) -> Room:
    person, coach = await coach_in(session)
    version = await version_in(session, coach)
    client, course = await client_in(session, version, "Kim", chat=KIM, day=on, level=level, said=list(said))
    return Room(session, person, coach, client, course)


async def test_the_page_says_where_they_stand_why_and_in_whose_words(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, HARD, level=1)
        await answer_in(session, here.course, None, {"words": "left knee <b>grumbles</b>", "note": "can we talk?"})
        session.add(Alert(course_id=here.course.id, cause="stuck", at_once=False, facts={"tries": 3}, opened_at=NOW))
        await session.flush()
        await steering.type_note(here.desk(), here.person, here.coach, here.course.id, "had a bad week at work")
        await clients.client_page(here.desk(), here.person, here.coach, here.course.id)
        page, buttons = await here.last(), await here.buttons()
    assert page.startswith("<b>Kim</b>: day 2, ease level 1\nTest hips, 8 days")
    assert "Next: Wednesday 13 May off, then day 2, lightest." in page
    assert "Why: they said it was too hard." in page
    assert "the same day 3 times, not passed" in page
    assert '12 May: "left knee &lt;b&gt;grumbles&lt;/b&gt;"' in page
    assert '"can we talk?"' in page
    assert "12 May: had a bad week at work" in page
    assert {"Repeat the day", "Ease the day", "A level fuller", "A day off", "Another day", "Pause", "Message"} <= set(
        buttons
    )


async def test_every_reason_is_told_with_its_numbers(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, HURT)
        await here.morning()
        await clients.every_reason(here.desk(), here.person, here.coach, here.course.id)
        assert "Tue 12 May day 2: went on" in await here.last()
        assert "Wed 13 May asked first" in await here.last()


async def test_the_picture_shows_the_dates_on_which_a_client_waited(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, DONE)
        row = (await session.scalars(select(LedgerRow).order_by(LedgerRow.id.desc()))).first()
        assert row is not None
        row.kind = "waiting"
        here.course.state = CourseState.WAITING
        await session.flush()
        await clients.client_page(here.desk(), here.person, here.coach, here.course.id)
        picture = next(payload["photo"]["recipe"] for payload in await told(session, COACH) if "photo" in payload)
        assert [day["verdict"] for day in picture["of"]["days"]] == [Verdict.ADVANCE, Verdict.REFER]


async def test_a_reason_is_said_once_with_the_verdict_that_it_led_to(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, HARD)
        await here.morning()
        await clients.every_reason(here.desk(), here.person, here.coach, here.course.id)
        assert (await here.last()).splitlines()[-1] == "Wed 13 May day 3, rest: lighter (they said it was too hard)"


async def test_a_line_of_the_page_says_that_a_day_came_again_and_that_it_was_done_then(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, {"completion": "none", "why": "time"})
        row = await here.morning()
        session.add(CheckInRow(ledger_id=row.id, sore=False, odd=False, updated_at=NOW, **DONE))
        await session.flush()
        await clients.client_page(here.desk(), here.person, here.coach, here.course.id)
        assert (await here.last()).splitlines()[-1] == "Wed 13 May day 2 (not done before): done, no pain"


async def test_a_word_is_shown_before_it_counts_and_again_after(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        before = await here.taps("ease")
        assert "As it stands, Kim gets: Wednesday 13 May day 2." in before
        assert "With your word: Wednesday 13 May day 1, lighter." in before
        assert (await session.scalars(select(Overrule))).all() == []
        after = await here.sure("ease")
        assert after == "Noted. Kim gets: Wednesday 13 May day 1, lighter."
        row = await here.morning()
        assert (row.day, row.level) == (1, 1)
        assert "because your coach decided so" in await here.last(KIM)


async def test_what_comes_anyway_is_said_so(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, HARD, on=1)
        assert "it comes anyway" in await here.taps("ease")


async def test_a_word_against_the_last_answer_is_named_as_that(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, HURT, on=1)
        assert "calls for less" in await here.taps("repeat")
        assert "calls for less" in await here.taps("move", "4")
        assert "calls for less" not in await here.taps("rest")


async def test_forward_says_what_is_new_or_heavier(database: Database) -> None:
    async with writing(database) as session:
        person, coach = await coach_in(session)
        version = await version_in(session, coach, HEAD + SESSION.format(rounds=1) + REST + NEW)
        client, course = await client_in(session, version, "Kim", chat=KIM, said=[DONE])
        here = Room(session, person, coach, client, course)
        text = await here.taps("move", "3")
        assert "With your word: Wednesday 13 May day 3." in text
        assert "New to them: Loaded fold." in text
        assert "Half as much work again, or more." in text
        assert "New to them" not in await here.taps("move", "1")


async def test_a_day_is_typed_and_one_that_is_not_there_is_asked_again(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        assert "Now it is day 1 of 8" in await here.taps("move")
        await listening.heard(here.desk(), here.person, "99")
        assert "days 1 to 8" in await here.last()
        await listening.heard(here.desk(), here.person, "day 5")
        assert "With your word: Wednesday 13 May day 5." in await here.last()
        assert here.person.asking is None


async def test_a_word_is_taken_back_until_its_row_is_made_and_not_after(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        await here.sure("rest")
        undo = int((await here.buttons())["Take it back"].split(":")[1])
        await overruling.undo(here.desk(), here.person, here.coach, undo)
        assert await here.last() == "Taken back. Kim gets: Wednesday 13 May day 2."
        with pytest.raises(NotAllowed):
            await overruling.undo(here.desk(), here.person, here.coach, undo)
        await here.sure("rest")
        again = int((await here.buttons())["Take it back"].split(":")[1])
        assert (await here.morning()).kind == RowKind.REST
        with pytest.raises(NotAllowed):
            await overruling.undo(here.desk(), here.person, here.coach, again)


async def test_the_last_word_counts_and_none_is_applied_twice(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        await here.sure("ease")
        await here.sure("repeat")
        first = await here.morning()
        assert (first.day, first.level) == (1, 0), "the second word took the place of the first"
        session.add(CheckInRow(ledger_id=first.id, sore=False, odd=False, updated_at=NOW, **DONE))
        await session.flush()
        second = await here.morning(2)
        assert (second.day, second.level) == (2, 0)
        words = (await session.scalars(select(Overrule).order_by(Overrule.id))).all()
    assert [word.withdrawn_at is not None for word in words] == [True, False]
    assert [word.applied_on for word in words] == [None, TOMORROW]


async def test_what_was_said_after_the_coach_looked_wins_when_it_is_graver_and_the_coach_hears(
    database: Database,
) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1, level=1)
        await here.taps("repeat")
        yes = (await here.buttons())["Yes, do this"].split(":")
        row = await courses.last_row(session, here.course)
        said = await session.scalar(select(CheckInRow))
        assert said is not None
        said.completion, said.why, said.half = "part", "too-hard", True
        await answer_in(session, here.course, row, HARD)
        await here.taps(*yes[2:])
        made = await here.morning()
        assert (made.day, made.level) == (1, 2)
        alert = await session.scalar(select(Alert))
        assert alert is not None
        assert alert.cause == "newer-evidence"


async def test_no_word_reaches_a_client_who_waits_and_letting_go_keeps_none_from_before(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=2)
        await here.sure("move", "8")
        here.course.state = CourseState.WAITING
        for word in ("repeat", "ease", "climb", "rest", "move"):
            with pytest.raises(NotAllowed):
                await here.taps(word, "1" if word == "move" else "")
        assert (await here.morning()).kind == RowKind.WAITING
        await ruling.found_out(here.desk(), here.person, here.coach, here.course.id, "All settled.", told=0)
        made = await here.morning(2)
        assert (made.kind, made.day, made.level) == (RowKind.SESSION, 2, 1)
        assert await deciding.pending(here.desk(), here.course) is None


async def test_a_word_on_top_of_letting_go_eases_further(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, {"completion": "done", "pain": 9}, on=2)
        here.course.state = CourseState.WAITING
        await ruling.found_out(here.desk(), here.person, here.coach, here.course.id, "Seen by a physio.", told=0)
        assert "no level to climb" not in await here.sure("ease")
        made = await here.morning()
        assert (made.kind, made.day, made.level) == (RowKind.SESSION, 2, 2)


async def test_nobody_on_the_full_version_can_climb(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        assert "no level to climb" in await here.taps("climb")


async def test_a_course_that_the_coach_ends_is_over_in_the_morning_and_can_be_kept_until_then(
    database: Database,
) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        assert "They are told in the morning" in await here.taps("finish")
        await here.sure("finish")
        assert here.course.state == CourseState.ACTIVE
        desk = desk_of(session, "due:1", now=MORNING)
        await day.make(desk, here.client, here.course, TOMORROW, by_itself=True)
        assert str(here.course.state) == "finished"
        texts = [text_of(payload) for payload in await told(session, KIM)]
    assert any("Robin has ended your course here." in text for text in texts)


async def test_a_waiting_course_is_ended_at_once_after_a_yes(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        here.course.state = CourseState.WAITING
        assert (await here.taps("finish")).startswith("End the course of Kim now?")
        assert here.course.state == CourseState.WAITING
        yes = (await here.buttons())["Yes, end it"]
        await here.taps(*yes.split(":")[2:])
        assert str(here.course.state) == "finished"


async def steers(here: Room, what: str, value: str = "") -> str:
    await steering.tapped(here.desk(), here.person, here.coach, here.course.id, what, value)
    return await here.last()


async def test_a_pause_by_the_coach_is_told_at_once_and_only_the_coach_ends_it(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        assert "As it stands, Kim gets: Wednesday 13 May day 2." in await steers(here, "pause")
        assert "paused until Saturday 16 May" in await steers(here, "pause", "3")
        assert "Your coach has paused your course. Nothing is sent until Saturday 16 May" in await here.last(KIM)
        assert (await here.morning()).kind == RowKind.AWAY
        await listening.heard(desk_of(session, "client:1"), here.client, "go on")
        assert here.course.paused == "coach"
        alert = await session.scalar(select(Alert))
        assert alert is not None
        assert alert.cause == "asks-to-go-on"
        assert "Open again. Kim gets: Thursday 14 May day 1." in await steers(here, "resume")
        assert "Robin has opened your course again." in await here.last(KIM)
        assert here.course.paused is None
        made = await here.morning(2)
        assert (made.kind, made.day) == (RowKind.SESSION, 1)


async def test_who_is_ill_says_themselves_when_they_are_well(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        here.course.paused = "ill"
        with pytest.raises(NotAllowed):
            await steers(here, "resume")


async def test_the_time_is_changed_by_a_tap_or_typed_and_both_are_told(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        assert "gets the session at 07:00" in await steers(here, "time")
        await listening.heard(here.desk(), here.person, "6.45")
        assert "at 06:45, the next one on Wednesday 06:45" in await here.last()
        assert "Robin has set your session to 06:45" in await here.last(KIM)
        back = (await here.buttons())["Take it back"].split(":")
        assert "at 07:00" in await steers(here, *back[2:])


async def test_a_time_for_a_course_that_has_ended_is_asked_for_no_longer(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        await steers(here, "time")
        here.course.state = CourseState.STOPPED
        await listening.heard(here.desk(), here.person, "6.45")
        assert "Their course is not running" in await here.last()
        assert here.person.asking is None


async def test_a_message_goes_out_with_the_coachs_name_and_its_answer_comes_back(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        await steers(here, "message")
        await listening.heard(here.desk(), here.person, "How is the <knee>?")
        assert await here.last(KIM) == "<b>Robin writes</b>\nHow is the &lt;knee&gt;?"
        assert here.person.asking is None
        await steering.ask_reply(desk_of(session, "client:1"), here.client, here.course)
        await listening.heard(desk_of(session, "client:2", update=501), here.client, "done and fine")
        assert await here.last() == "<b>Kim writes</b>\ndone and fine"
        assert (await own_data(session, here.client)).answers[-1].value == "done and fine"


async def test_a_warning_sign_in_an_answer_to_the_coach_is_heard_as_one(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        await steering.ask_reply(desk_of(session, "client:1"), here.client, here.course)
        await listening.heard(desk_of(session, "client:2", update=501), here.client, "chest pain since this morning")
        state = (await courses.said_of(session, (await courses.last_row(session, here.course)) or LedgerRow())).flag
    assert state is not None


async def test_before_a_movement_is_left_out_it_is_said_what_takes_its_place(database: Database) -> None:
    async with writing(database) as session:
        person, coach = await coach_in(session)
        far = session_with("far-reach")
        version = await version_in(session, coach, HEAD + far + far)
        client, course = await client_in(session, version, "Kim", chat=KIM, said=[DONE])
        here = Room(session, person, coach, client, course)
        await ruling.bar(here.desk(), person, coach, course.id, "list")
        text = await here.last()
        assert "Day 2 comes next." in text
        assert "• Sway: nothing\n• Far reach: Long reach" in text
        await ruling.bar(here.desk(), person, coach, course.id, "1")
        assert "Left out for Kim: Far reach." in await here.last()
        assert "Left out from now on: Far reach." in await here.last(KIM)


def session_with(movement: str) -> str:
    return SESSION.format(rounds=2).replace("movement: reach", f"movement: {movement}")


@pytest.mark.parametrize(("words_", "pain"), [("pain 7 in the knee", 7), ("pain 1, fine", None), ("done, pain 2", 2)])
async def test_pain_in_an_answer_to_the_coach_counts_for_the_rules_too(
    database: Database, words_: str, pain: int | None
) -> None:
    async with writing(database) as session:
        here = await room(session, {}, on=1)
        await steering.ask_reply(desk_of(session, "client:1"), here.client, here.course)
        await listening.heard(desk_of(session, "client:2", update=501), here.client, words_)
        assert any(text_of(p) == f"<b>Kim writes</b>\n{words_}" for p in await told(session, COACH))
        row = await courses.last_row(session, here.course)
        assert row is not None
        assert (await courses.said_of(session, row)).pain == pain


async def test_stop_always_works(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        await steering.ask_reply(desk_of(session, "client:1"), here.client, here.course)
        await listening.heard(desk_of(session, "client:2", update=501), here.client, "stop")
        assert (await here.last(KIM)).startswith("Stop the course?")


async def test_turning_to_something_else_ends_what_was_to_be_typed(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        await steers(here, "message")
        await clients.client_page(here.desk(), here.person, here.coach, here.course.id)
        assert here.person.asking is None


async def test_a_note_is_never_sent_is_in_the_clients_own_data_and_goes_with_them(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        await steers(here, "note")
        await listening.heard(here.desk(), here.person, "careful with the left side")
        assert await told(session, KIM) == []
        (course,) = (await own_data(session, here.client)).courses
        assert [note.text for note in course.coach_noted] == ["careful with the left side"]
        assert "noted: careful with the left side" in page(await own_data(session, here.client), words("en"))
        await erase(session, here.client, NOW)
        assert (await session.scalars(select(CoachNote))).all() == []


async def test_a_note_can_be_deleted(database: Database) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        await steering.type_note(here.desk(), here.person, here.coach, here.course.id, "x")
        await steers(here, *(await here.buttons())["Delete this note"].split(":")[2:])
        assert (await session.scalars(select(CoachNote))).all() == []


@pytest.mark.parametrize("what", ["repeat", "ease", "climb", "rest", "move", "finish", "go-on", "odd"])
async def test_another_coach_has_no_word(database: Database, what: str) -> None:
    async with writing(database) as session:
        here = await room(session, DONE, on=1)
        person, other = await coach_in(session, chat=2)
        with pytest.raises(NotAllowed):
            await overruling.tapped(here.desk(), person, other, here.course.id, what, "1", "1")
        for other_thing in ("pause", "resume", "time", "message", "note", "forget"):
            with pytest.raises(NotAllowed):
                await steering.tapped(here.desk(), person, other, here.course.id, other_thing, "3")
        for typed in (steering.type_message, steering.type_note, steering.type_time, overruling.type_day):
            with pytest.raises(NotAllowed):
                await typed(here.desk(), person, other, here.course.id, "07:00")
        with pytest.raises(NotAllowed):
            await clients.client_page(here.desk(), person, other, here.course.id)
        with pytest.raises(NotAllowed):
            await clients.every_reason(here.desk(), person, other, here.course.id)
        assert (await session.scalars(select(Overrule))).all() == []
        assert await told(session, KIM) == []
