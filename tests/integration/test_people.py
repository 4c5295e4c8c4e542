"""The list of a coach's people: who comes first and why, filters, pages, names, and what it costs."""

from __future__ import annotations

from datetime import timedelta
from pathlib import Path

import pytest
from sqlalchemy import event
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import people
from bot.flows.rights import NotAllowed
from db.courses import CourseState
from db.engine import Database
from db.schema import Alert, Coach, Person
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
from tests.integration.fakes import database_in

pytestmark = pytest.mark.usefixtures("store")

DONE = {"completion": "done", "pain": 0}
HURT = {"completion": "done", "pain": 5, "kind": "dull-one"}


async def some_people(session: AsyncSession) -> tuple[Person, Coach]:
    person, coach = await coach_in(session)
    first = await version_in(session, coach)
    second = await version_in(session, coach, SOURCE.replace("title: ", "title: Other ", 1))
    await client_in(session, first, "Fine", chat=11, day=3, said=[DONE])
    await client_in(session, second, "Hurting", chat=12, said=[HURT])
    _p, waiting = await client_in(session, first, "Waits", chat=13, state=CourseState.WAITING, said=[DONE])
    await client_in(session, first, "Silent", chat=14, said=[DONE, {}, {}, {}, {}])
    await client_in(session, second, "Joins", chat=15, state=CourseState.JOINING)
    blocked, _c = await client_in(session, first, "Blocked", chat=16, said=[DONE])
    blocked.unreachable_since = NOW
    _p, away = await client_in(session, first, "Away", chat=17, said=[DONE])
    away.paused = "away"
    _p, worse = await client_in(session, first, "Worse", chat=18, said=[DONE])
    for course, cause, facts in ((waiting, "severe", {"pain": 9}), (worse, "excessive", {"pain": 6})):
        session.add(Alert(course_id=course.id, cause=cause, at_once=True, facts=facts, events=1, opened_at=NOW))
    await client_in(session, first, "Gone", chat=19, state=CourseState.STOPPED, said=[DONE])
    await session.flush()
    return person, coach


async def test_who_needs_a_look_comes_first_and_every_line_says_why(database: Database) -> None:
    async with writing(database) as session:
        person, coach = await some_people(session)
        await people.show(desk_of(session), person, coach)
        (payload,) = await told(session, COACH)
    lines = text_of(payload).splitlines()
    assert lines == [
        "<b>Your people</b>: 8 · need a look: 5",
        "<b>Waits</b>: waits for you, pain 9 of 10 · day 1 · Tue done, no pain",
        "<b>Worse</b>: pain 6 of 10 · day 1 · Tue done, no pain",
        "<b>Hurting</b>: it hurt · day 1 · Tue done, pain 5 (dull, one side)",
        "<b>Blocked</b>: has blocked the bot · day 1 · Tue done, no pain",
        "<b>Silent</b>: no answer for 4 days · day 1 · Fri done, no pain",
        "",
        "<b>Fine</b>: going well · day 3 · Tue done, no pain",
        "<b>Joins</b>: still joining, since 12 May",
        "<b>Away</b>: away · day 1 · Tue done, no pain",
    ]
    labels = list(buttons_of(payload))
    assert labels[:8] == ["Waits", "Worse", "Hurting", "Blocked", "Silent", "Fine", "Joins", "Away"]
    assert {"[Everybody 8]", "Need a look 5", "Waiting 1", "Going 5", "Joining 1", "Paused 1"} <= set(labels)
    assert "Every programme" in str(labels)


async def test_what_was_said_longer_ago_than_a_week_is_told_with_its_date(database: Database) -> None:
    async with writing(database) as session:
        person, coach = await coach_in(session)
        await client_in(session, await version_in(session, coach), "Long", chat=11, said=[DONE, *[{}] * 9])
        await people.show(desk_of(session), person, coach)
        (payload,) = await told(session, COACH)
    assert text_of(payload).splitlines()[1] == "<b>Long</b>: no answer for 9 days · day 1 · 3 May done, no pain"


async def test_a_warning_sign_is_the_last_thing_that_was_said(database: Database) -> None:
    async with writing(database) as session:
        person, coach = await coach_in(session)
        version = await version_in(session, coach)
        _p, waits = await client_in(
            session, version, "Waits", chat=11, state=CourseState.WAITING, said=[DONE, {"kind": "nerve"}]
        )
        facts = {"flag": "clinician"}
        session.add(Alert(course_id=waits.id, cause="red-flag", at_once=True, facts=facts, events=1, opened_at=NOW))
        await session.flush()
        await people.show(desk_of(session), person, coach)
        (payload,) = await told(session, COACH)
    line = text_of(payload).splitlines()[1]
    assert line.startswith("<b>Waits</b>: waits for you, a red flag (to be seen by a doctor or physio) · day 1")
    assert line.endswith("Tue numb, tingling or shooting")


async def test_filters_by_state_and_programme_change_the_same_message(database: Database) -> None:
    async with writing(database) as session:
        person, coach = await some_people(session)
        await people.show(desk_of(session), person, coach)
        buttons = buttons_of((await told(session, COACH))[0])
        desk = desk_of(session, "test:2")
        desk.tapped = 77
        await people.turn(desk, person, coach, buttons["Paused 1"].split(":")[1:])
        other = next(data for label, data in buttons.items() if label.startswith("Other"))
        await people.turn(desk, person, coach, other.split(":")[1:])
        paused, second = (await told(session, COACH))[1:]
    assert paused["message_id"] == second["message_id"] == 77
    assert [line.split(":")[0] for line in text_of(paused).splitlines()[1:]] == ["<b>Away</b>"]
    assert [line.split(":")[0] for line in text_of(second).splitlines()[1:]] == ["<b>Hurting</b>", "", "<b>Joins</b>"]


async def test_a_name_is_found_by_its_beginning_by_a_part_and_by_a_slip(database: Database) -> None:
    async with writing(database) as session:
        person, coach = await some_people(session)
        for n, name in enumerate(("wa", "ilen", "Blokced", "Nobody")):
            await people.show(desk_of(session, f"test:{n}"), person, coach, name)
        found = [text_of(payload).split(":")[0] for payload in await told(session, COACH)]
    assert found[:3] == ["<b>Waits</b>", "<b>Silent</b>", "<b>Blocked</b>"]
    assert found[3].startswith("None of your people")


@pytest.mark.parametrize("data", [["1"], ["x", "all", "0"], ["1", "odd", "0"], ["1", "all", "-1"], []])
async def test_a_button_that_is_none_of_ours_is_refused(database: Database, data: list[str]) -> None:
    async with writing(database) as session:
        person, coach = await coach_in(session)
        with pytest.raises(NotAllowed):
            await people.turn(desk_of(session), person, coach, data)


async def many(session: AsyncSession, count: int) -> tuple[Person, Coach]:
    person, coach = await coach_in(session)
    version = await version_in(session, coach)
    for n in range(count):
        said = [DONE if n % 3 else {}] * 2
        await client_in(session, version, f"Client {n:03}", chat=100 + n, said=said, last=TODAY - timedelta(days=n % 2))
    return person, coach


async def statements(database: Database, count: int) -> tuple[int, str, list[str]]:
    """How many statements /people takes with so many clients, what it says, and its buttons."""
    async with writing(database) as session:
        person, coach = await many(session, count)
        await session.flush()
        seen: list[str] = []
        engine = (await session.connection()).sync_connection.engine  # type: ignore[union-attr]
        note = lambda _c, _cursor, statement, *_more: seen.append(statement)  # noqa: E731
        event.listen(engine, "before_cursor_execute", note)
        try:
            await people.show(desk_of(session), person, coach)
        finally:
            event.remove(engine, "before_cursor_execute", note)
        payload = (await told(session, COACH))[0]
    return len(seen), text_of(payload), list(buttons_of(payload))


async def test_the_list_takes_as_many_statements_for_five_as_for_three_hundred(
    database: Database, tmp_path: Path
) -> None:
    few, small, _labels = await statements(database, 5)
    (tmp_path / "more").mkdir()
    async with database_in(tmp_path / "more") as other:
        many_, large, labels = await statements(other, 300)
    assert few == many_ <= 6
    assert "page 1 of 30" in large
    assert "Next" in labels
    assert "Back" not in labels
    assert len(large) < 1500
    assert "page" not in small
