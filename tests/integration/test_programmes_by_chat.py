"""Programmes by chat: looked at day by day, compared, rehearsed, and clients moved over to a new version."""

from __future__ import annotations

import base64
from datetime import timedelta
from importlib.resources import files

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import clients, day, inviting, moving, previewing, programmes, showing
from bot.flows.rights import NotAllowed
from bot.rehearser import Rehearser
from bot.words import words
from db import courses, rehearsals
from db.courses import CourseState
from db.engine import Database
from db.schema import Coach, Course, LedgerRow, Person, Rehearsal
from plans.ledger import RowKind
from plans.reading import read_programme
from tests.integration.desks import (
    COACH,
    NOW,
    SOURCE,
    TODAY,
    buttons_of,
    client_in,
    coach_in,
    desk_of,
    text_of,
    told,
    version_in,
    writing,
)
from tests.integration.fakes import SetCalendar, SetMachine
from tests.texts import HEAD, REST, session

pytestmark = pytest.mark.usefixtures("store")

DONE = {"completion": "done", "pain": 0}
SHORT = HEAD + "".join([session(), session(), REST, session()])


async def last(session_: AsyncSession) -> dict[str, object]:
    return (await told(session_, COACH))[-1]


async def test_a_file_comes_back_with_what_can_be_done_and_a_second_one_with_what_changed(database: Database) -> None:
    async with writing(database) as here:
        person, coach = await coach_in(here)
        await programmes.receive_file(desk_of(here), person, coach, "a.yaml", SHORT.encode())
        first = buttons_of(await last(here))
        assert list(first) == ["Look at a day", "Rehearse it", "Publish"]
        await programmes.publish(desk_of(here, "test:2"), person, coach, int(first["Publish"].split(":")[1]))
        await programmes.receive_file(desk_of(here, "test:3"), person, coach, "b.yaml", SOURCE.encode())
        second = buttons_of(await last(here))
        assert "What changed" in second
        await previewing.tapped(desk_of(here, "test:4"), person, coach, *_of(second["What changed"]))
        text = text_of(await last(here))
        assert "what changed since version" in text
        assert "days 5-8" in text


def _of(data: str) -> tuple[int, str, str]:
    _verb, number, what, *more = data.split(":")
    return int(number), what, more[0] if more else ""


async def test_of_equal_titles_the_list_names_the_newest_and_only_that_is_offered(database: Database) -> None:
    async with writing(database) as here:
        person, coach = await coach_in(here)
        old, new = await version_in(here, coach), await version_in(here, coach, SHORT)
        other = await version_in(here, coach, SOURCE.replace("title: ", "title: Other ", 1))
        desk = desk_of(here)
        await programmes.list_programmes(desk, person, coach)
        assert text_of(await last(here)).splitlines()[1:] == [
            f"{other.title} · {other.digest[:6]} · 12 May · published",
            f"{new.title} · {new.digest[:6]} · 12 May, the newest · published",
            f"{old.title} · {old.digest[:6]} · 12 May, an earlier one · published",
        ]
        await inviting.choose_invite(desk, person, coach)
        offered = {data.split(":")[1] for data in buttons_of(await last(here)).values()}
        assert offered == {str(other.id), str(new.id)}
        await programmes.look(desk, person, coach, old.id)
        looked = [payload for payload in await told(here, COACH) if f"report:{old.id}" in str(payload)][-1]
        assert f"invite:{old.id}:1" in buttons_of(looked).values()


async def test_a_preview_is_the_clients_message_and_picture_with_buttons_that_do_nothing(database: Database) -> None:
    async with writing(database) as here:
        person, coach = await coach_in(here)
        source = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
        version = await version_in(here, coach, source)
        await previewing.tapped(desk_of(here), person, coach, version.id, "page", "1")
        assert list(buttons_of(await last(here)))[:28] == [str(n) for n in range(1, 29)]
        await previewing.tapped(desk_of(here, "test:2"), person, coach, version.id, "day", "2")
        shown = await last(here)
        exact = showing.preview(words("en"), read_programme(source), 2)
        payload = exact.payload()
        assert text_of(shown) == f"<i>Preview of {version.title}, day 2, as a client gets it:</i>\n\n{text_of(payload)}"
        assert exact.picture is not None
        assert shown["photo"]["attachment"] == exact.picture.digest  # type: ignore[index]
        labels = buttons_of(shown)
        assert labels["All done, no pain"] == f"preview:{version.id}:button"
        assert labels["Day 3"] == f"preview:{version.id}:day:3"
        with pytest.raises(NotAllowed, match="only_shown"):
            await previewing.tapped(desk_of(here, "test:3"), person, coach, version.id, "button")
        with pytest.raises(NotAllowed):
            await previewing.tapped(desk_of(here, "test:3"), person, coach, version.id, "day", "99")


async def test_days_beyond_four_weeks_are_on_a_second_page(database: Database) -> None:
    async with writing(database) as here:
        person, coach = await coach_in(here)
        version = await version_in(here, coach, HEAD + session() * 30)
        await previewing.tapped(desk_of(here), person, coach, version.id, "page", "2")
        assert list(buttons_of(await last(here))) == ["29", "30", "Back"]


async def test_a_rehearsal_is_done_outside_of_any_write_and_told_with_its_picture(database: Database) -> None:
    async with writing(database) as here:
        person, coach = await coach_in(here)
        version = await version_in(here, coach)
        for n in range(2):
            await previewing.tapped(desk_of(here, f"test:{n}"), person, coach, version.id, "rehearse")
    machine = SetMachine()
    worker = Rehearser(database, calendar=SetCalendar(NOW), machine=machine, worker="w", bot_username="bot")
    (asked,) = await worker.claim(5)
    assert list(await worker.claim(5)) == [], "it is in somebody's hands"
    await worker.work(asked)
    async with writing(database) as here:
        payload = await last(here)
        assert (await here.scalars(select(Rehearsal))).all() == []
    assert text_of(payload).startswith("<b>Test hips</b>, rehearsed by 200 invented clients. This is no evidence.")
    assert "Half are through within" in text_of(payload)
    assert base64.b64decode(payload["photo"]["base64"]).startswith(b"\x89PNG")  # type: ignore[index]


async def test_a_rehearsal_whose_process_died_is_taken_up_again_and_given_up_after_three(database: Database) -> None:
    async with writing(database) as here:
        person, coach = await coach_in(here)
        version = await version_in(here, coach)
        await rehearsals.ask(here, version, person, NOW)
    machine = SetMachine()
    worker = Rehearser(database, calendar=SetCalendar(NOW), machine=machine, worker="w", bot_username="bot")
    for n in range(1, 5):
        (asked,) = await worker.claim(1)
        assert asked.tries == n
        machine.at += 10_000
    await worker.work(asked)
    async with writing(database) as here:
        assert "could not be rehearsed" in text_of(await last(here))


# --- a new version ----------------------------------------------------------------------------------------------------


class Moving:
    """Three clients on an earlier version, and the new one."""

    def __init__(self, here: AsyncSession, person: Person, coach: Coach) -> None:
        self.here, self.person, self.coach = here, person, coach
        self.count = 0

    async def set_out(self, source: str = SHORT) -> None:
        self.old = await version_in(self.here, self.coach)
        self.kim, self.course = await client_in(self.here, self.old, "Kim", chat=11, day=8, said=[DONE])
        _p, self.waits = await client_in(
            self.here, self.old, "Waits", chat=12, day=2, state=CourseState.WAITING, said=[DONE]
        )
        self.lee, self.other = await client_in(self.here, self.old, "Lee", chat=13, day=1, said=[DONE])
        self.new = await version_in(self.here, self.coach, source)

    async def taps(self, what: str, number: int = 0) -> dict[str, object]:
        self.count += 1
        desk = desk_of(self.here, f"test:{self.count}")
        await moving.tapped(desk, self.person, self.coach, self.new.id, what, number)
        return (await told(self.here, COACH))[-1]

    async def morning(self, client: Person, course: Course, days: int = 1) -> LedgerRow:
        desk = desk_of(self.here, f"due:{course.id}:{days}", now=NOW + timedelta(days=days))
        await day.make(desk, client, course, TODAY + timedelta(days=days), by_itself=True)
        row = await courses.row_on(self.here, course, TODAY + timedelta(days=days))
        assert row is not None
        return row


async def moving_in(here: AsyncSession, source: str = SHORT) -> Moving:
    found = Moving(here, *await coach_in(here))
    await found.set_out(source)
    return found


async def test_after_publishing_a_new_version_clients_are_moved_at_the_boundary_and_told(database: Database) -> None:
    async with writing(database) as here:
        scene = await moving_in(here)
        await programmes.publish(desk_of(here, "p"), scene.person, scene.coach, scene.new.id)
        offer = await last(here)
        assert "2 clients are on an earlier version" in text_of(offer)
        assert not any("Waits" in label for label in buttons_of(offer)), "who waits is not moved"
        await scene.taps("one", scene.course.id)
        assert scene.course.version_id == scene.old.id, "not before the next row is made"
        row = await scene.morning(scene.kim, scene.course)
        assert (scene.course.version_id, row.version_id) == (scene.new.id, scene.new.id)
        assert (row.kind, row.day, row.level) == (RowKind.SESSION, 4, 0), "held to the last day"
        texts = [text_of(payload) for payload in await told(here, 11)]
        assert any("From today you go by it. It is shorter: you are on its last day, day 4." in text for text in texts)
        assert scene.other.version_id == scene.old.id


async def test_all_can_go_over_and_the_coach_can_change_their_mind(database: Database) -> None:
    async with writing(database) as here:
        scene = await moving_in(here)
        assert "2 of them go over" in text_of(await scene.taps("all"))
        assert scene.course.next_version_id == scene.other.next_version_id == scene.new.id
        assert scene.waits.next_version_id is None
        assert "0 of them go over" in text_of(await scene.taps("none"))
        await scene.morning(scene.lee, scene.other)
        assert scene.other.version_id == scene.old.id
        with pytest.raises(NotAllowed):
            await scene.taps("one", scene.waits.id)


async def test_what_comes_is_shown_as_the_new_version_has_it_while_a_client_is_to_go_over(database: Database) -> None:
    async with writing(database) as here:
        scene = await moving_in(here)
        await scene.taps("one", scene.course.id)
        desk = desk_of(here, "page")
        await clients.client_page(desk, scene.person, scene.coach, scene.course.id)
        page = text_of((await told(here, COACH))[-1])
        assert "Next: Wednesday 13 May day 4. Why: you decided so." in page
        assert "Goes over to the newer version with the next day." in page
        row = await scene.morning(scene.kim, scene.course)
        assert (row.kind, row.day) == (RowKind.SESSION, 4)


async def test_who_came_to_wait_meanwhile_goes_over_only_when_let_go_on(database: Database) -> None:
    async with writing(database) as here:
        scene = await moving_in(here)
        await scene.taps("all")
        scene.course.state = CourseState.WAITING
        assert (await scene.morning(scene.kim, scene.course)).kind == RowKind.WAITING
        assert scene.course.version_id == scene.old.id
        scene.course.state = CourseState.ACTIVE
        await scene.morning(scene.kim, scene.course, 2)
        assert scene.course.version_id == scene.new.id


async def test_an_older_row_keeps_the_day_of_its_own_version(database: Database) -> None:
    async with writing(database) as here:
        scene = await moving_in(here)
        before = await courses.last_row(here, scene.course)
        assert before is not None
        before.version_id = scene.old.id
        await scene.taps("all")
        await scene.morning(scene.kim, scene.course)
        desk = desk_of(here, "x")
        assert len((await desk.programme_of(scene.course, before)).days) == 8
        assert len((await desk.programme(scene.course)).days) == 4


async def test_another_coach_sees_and_moves_nothing(database: Database) -> None:
    async with writing(database) as here:
        scene = await moving_in(here)
        scene.person, scene.coach = await coach_in(here, chat=2)
        for what in ("all", "none", "one", "page"):
            with pytest.raises(NotAllowed):
                await scene.taps(what, scene.course.id)
        for what in ("page", "day", "changed", "rehearse"):
            with pytest.raises(NotAllowed):
                await previewing.tapped(desk_of(here, "y"), scene.person, scene.coach, scene.new.id, what, "1")
        with pytest.raises(NotAllowed):
            await programmes.look(desk_of(here, "y"), scene.person, scene.coach, scene.new.id)
