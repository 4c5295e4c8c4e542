"""A coach's digest from real rows: it agrees with the ledger to the row, in few statements, and only on one's own."""

from __future__ import annotations

import base64
import csv
import re
from collections import Counter
from collections.abc import Awaitable, Callable, Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime, time, timedelta
from html import unescape
from importlib.resources import files
from io import StringIO
from itertools import count
from typing import Any

import pytest
from sqlalchemy import event, select, text
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import digest, weeks
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.painter import paint
from db import due
from db.courses import CourseState
from db.engine import Database
from db.schema import Coach, Course, Outbox, Person
from tests.grouped import LIVES, START, Life, coach_with, live, version_of
from tests.texts import HEAD, REST, TEST, session

pytestmark = pytest.mark.usefixtures("store")

ROWING = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
SHORT = HEAD + TEST + session() * 30
OTHER = HEAD.replace("Test hips", "Other hips") + session() * 30 + REST
DATES = 29
NOW = datetime(2026, 3, 31, 16, tzinfo=UTC)
LAST = date(2026, 3, 30)
"""The date before NOW, a Monday: 29 dates after the start."""
CAUSES = count()
WEEK = [LAST - timedelta(days=back) for back in range(7)]


async def group(database: Database, source: str = ROWING, lives: tuple[Life, ...] = LIVES, dates: int = DATES) -> None:
    async def job(session: AsyncSession) -> None:
        await live(session, await coach_with(session, source), lives, dates=dates)

    await database.write(job)


async def does(database: Database, act: Callable[[Desk, Person, Coach], Awaitable[Any]], coach: int = 1) -> Any:
    """An act of a coach's at NOW, committed."""

    async def job(session: AsyncSession) -> Any:
        desk = Desk(session=session, now=NOW, cause=f"act:{next(CAUSES)}", bot_username="b")
        return await act(desk, await session.get_one(Person, coach), await session.get_one(Coach, coach))

    return await database.write(job)


async def sent(database: Database, chat: int = 1) -> list[dict[str, Any]]:
    async with database.reading() as session:
        rows = await session.scalars(select(Outbox.payload).where(Outbox.chat == chat).order_by(Outbox.id))
        return list(rows)


def plain(payload: dict[str, Any]) -> str:
    return unescape(re.sub("<[^>]+>", "", payload.get("text") or payload["caption"]))


def file_of(payload: dict[str, Any]) -> str:
    return base64.b64decode(payload["document"]["base64"]).decode("utf-8-sig")


def table_of(payload: dict[str, Any]) -> list[dict[str, str]]:
    return list(csv.DictReader(StringIO(file_of(payload), newline="")))


async def ledger(database: Database) -> list[dict[str, Any]]:
    """All rows beside what was said, by a statement of its own."""
    statement = """
        SELECT person.label, ledger.local_date, ledger.kind, ledger.day, ledger.level, ledger.morning,
               checkin.completion, checkin.pain, checkin.tightness
        FROM ledger JOIN person ON person.id = ledger.person_id LEFT JOIN checkin ON checkin.ledger_id = ledger.id
    """
    async with database.reading() as session:
        rows = (await session.execute(text(statement))).mappings().all()
    return [dict(row) | {"local_date": date.fromisoformat(str(row["local_date"]))} for row in rows]


async def weekly(desk: Desk, _person: Person, coach: Coach) -> None:
    await digest.weekly(desk, coach.id)


async def test_the_weekly_digest_agrees_with_the_ledger_to_the_row(database: Database) -> None:
    await group(database)
    rows = await ledger(database)
    await does(database, weekly)
    first, together, page, table = await sent(database)
    sessions = [row for row in rows if row["local_date"] in WEEK and row["kind"] == "session"]
    said = Counter(row["completion"] for row in sessions)
    assert len(sessions) > 20
    assert f"{said['done']} of {len(sessions)} done" in plain(together)
    assert f"{said[None]} unanswered" in plain(together)
    low, high = said["done"], said["done"] + said[None]
    assert f"Done: {round(100 * low / len(sessions))}–{round(100 * high / len(sessions))}\xa0%" in plain(together)
    assert f"{said['done']}/{len(sessions)}" in file_of(page)
    assert plain(first).startswith("Week of Tue 24 Mar to Mon 30 Mar")

    def key(row: dict[str, Any]) -> tuple[str, ...]:
        values = (row[name] for name in ("kind", "day", "level", "completion", "pain", "tightness", "morning"))
        return (row["label"], str(row["local_date"]), *("" if value is None else str(value) for value in values))

    names = ("client", "date", "row", "day", "ease_level", "done", "pain", "tightness", "next_morning")
    shown = [tuple(line[name].removeprefix("'=") or "" for name in names) for line in table_of(table)]
    wanted = [key(row) for row in rows if LAST - timedelta(days=28) < row["local_date"] <= LAST]
    assert sorted(shown) == sorted((label.removeprefix("="), *rest) for label, *rest in wanted)


async def test_whoever_needs_the_coach_stands_first_with_the_reason(database: Database) -> None:
    await group(database, lives=(*LIVES, Life("Pia", stops=25)))
    await does(database, weekly)
    first, together, *_files = await sent(database)
    lines = [line for line in plain(first).splitlines() if re.match(r"\d+\. ", line)]
    assert lines[0].startswith("1. Eva: waits for you: strain-like: sharp or sudden, pain 6")
    assert any("Dag: no word on 6 mornings in a row" in line for line in lines)
    assert not any("Gus" in line for line in lines), "who has stopped needs nothing"
    assert first["reply_markup"]["inline_keyboard"][0][0]["text"] == "Eva"
    assert "Dag (6 of 6)" in plain(together)
    assert "Finished: Ada, Hal" in plain(together)
    assert "Stopped: Pia" in plain(together), "Gus has stopped before this week"


async def test_a_clock_that_moved_back_since_takes_nobody_from_their_last_week(database: Database) -> None:
    await group(database, lives=(Life("Ada"), Life("Ida", stops=23)))

    async def stopped_far_in_the_west(session: AsyncSession) -> None:
        person = (await session.scalars(select(Person).where(Person.label == "Ida"))).one()
        course = (await session.scalars(select(Course).where(Course.person_id == person.id))).one()
        person.zone, course.ended_at = "America/Los_Angeles", datetime(2026, 3, 24, 5, tzinfo=UTC)

    await database.write(stopped_far_in_the_west)

    async def read(desk: Desk, person: Person, coach: Coach) -> weeks.Digest:
        return await weeks.read(desk, person, coach, LAST)

    digest = await does(database, read)
    assert [(seen.label, seen.week.week.due) for seen in digest.there] == [("Ada", 5), ("Ida", 1)]
    assert digest.group.week.due == 6
    assert [seen.label for seen in digest.ended(CourseState.STOPPED)] == ["Ida"]


async def test_the_chart_shows_the_same_weeks(database: Database) -> None:
    await group(database)
    await does(database, weekly)
    together = (await sent(database))[1]
    weeks_shown = together["photo"]["recipe"]["of"]["weeks"]
    for at, one in enumerate(weeks_shown):
        end = LAST - timedelta(days=7 * (3 - at))
        rows = [row for row in await ledger(database) if end - timedelta(days=7) < row["local_date"] <= end]
        sessions = [row for row in rows if row["kind"] == "session"]
        assert one["completion"]["said"] == f"{sum(r['completion'] == 'done' for r in sessions)}/{len(sessions)}"
    assert paint(together["photo"]["recipe"]).startswith(b"\x89PNG")


async def test_no_cell_of_the_table_and_nothing_on_the_page_can_do_anything(database: Database) -> None:
    await group(database, SHORT, (Life('=HYPERLINK("x")'), Life("<script>alert(1)</script>")), 8)
    await does(database, lambda desk, person, coach: digest.tapped(desk, person, coach, "table", ""))
    await does(database, lambda desk, person, coach: digest.tapped(desk, person, coach, "page", ""))
    table, page = await sent(database)
    cells = [cell for line in table_of(table) for cell in line.values()]
    assert '\'=HYPERLINK("x")' in cells
    assert not [cell for cell in cells if cell[:1] in tuple("=+-@\t\r")]
    html = file_of(page)
    assert "&lt;script&gt;" in html
    assert not re.search(r"<script|https?:|src=|url\((?!#)|@import|<link", html)
    assert html.count("<svg") == 1


@contextmanager
def counting(database: Database) -> Iterator[list[str]]:
    """The statements that are executed meanwhile."""
    found: list[str] = []

    def note(_connection: Any, _cursor: Any, statement: str, *_more: Any) -> None:
        found.append(statement)

    event.listen(database.engine.sync_engine, "before_cursor_execute", note)
    yield found
    event.remove(database.engine.sync_engine, "before_cursor_execute", note)


async def test_a_handful_of_statements_whatever_the_number_of_clients(database: Database) -> None:
    async def job(session: AsyncSession) -> None:
        version = await coach_with(session, SHORT)
        await live(session, version, [Life(f"P{n}") for n in range(2)], dates=4)
        other = await coach_with(session, SHORT, number=2)
        await live(session, other, [Life(f"Q{n}") for n in range(14)], dates=4, first=300)
        await live(session, await version_of(session, 2, OTHER), [Life("R")], dates=4, first=400)

    await database.write(job)
    counts = []
    for number, people in ((1, 2), (2, 15)):
        async with database.reading() as session:
            desk = Desk(session=session, now=NOW, cause="x", bot_username="b")
            person, coach = await session.get_one(Person, number), await session.get_one(Coach, number)
            with counting(database) as statements:
                found = await weeks.read(desk, person, coach, LAST)
            assert len(found.clients) == people
            counts.append(len([one for one in statements if "SELECT" in one]))
    assert counts == [5, 5]


async def test_of_many_who_need_something_ten_are_named_and_the_rest_counted(database: Database) -> None:
    lives = tuple(Life(f"P{n:02}", silent_from=0) for n in range(14))
    await group(database, OTHER, lives)
    await does(database, digest.now)
    first, together = await sent(database)
    named = [line for line in plain(first).splitlines() if re.match(r"\d+\. ", line)]
    assert len(named) == 10
    assert "and 4 more of 14 people" in plain(first)
    assert "and 6 more" in plain(together)
    assert [b["text"] for b in together["reply_markup"]["inline_keyboard"][0]] == ["All people", "When it comes"]


async def test_the_running_week_ends_today_and_leaves_out_what_is_still_open(database: Database) -> None:
    await group(database, SHORT, (Life("Pat", misses=0),), 30)
    await database.write(lambda session: session.execute(text("DELETE FROM checkin WHERE ledger_id IN "
        "(SELECT id FROM ledger WHERE local_date = '2026-03-31')")))  # fmt: skip
    await does(database, digest.now)
    first, together = await sent(database)
    assert plain(first).startswith("Week of Wed 25 Mar to Tue 31 Mar")
    assert "6 of 6 done" in plain(together)


async def test_a_coach_without_clients_is_told_how_to_get_some(database: Database) -> None:
    async def job(session: AsyncSession) -> None:
        await coach_with(session, SHORT)

    await database.write(job)
    await does(database, weekly)
    (only,) = await sent(database)
    assert "/invite makes a link" in plain(only)


async def test_a_coach_sees_only_their_own_clients_and_pages(database: Database) -> None:
    async def job(session: AsyncSession) -> int:
        await live(session, await coach_with(session, SHORT), [Life("Mine")], dates=8)
        other = await coach_with(session, OTHER, number=2)
        await live(session, other, [Life("Theirs")], dates=8, first=300)
        return other.id

    theirs = await database.write(job)
    await does(database, digest.now)
    await does(database, lambda desk, person, coach: digest.tapped(desk, person, coach, "page", "0"))
    assert "Theirs" not in str([plain(one) for one in await sent(database)]) + file_of((await sent(database))[-1])
    for what, value in (("page", str(theirs)), ("page", "x"), ("when", "7"), ("when", "1701"), ("nothing", "")):
        with pytest.raises(NotAllowed):
            await does(database, lambda desk, p, c, what=what, value=value: digest.tapped(desk, p, c, what, value))  # type: ignore[misc]


async def test_with_several_programmes_it_is_asked_for_whom_the_page_is(database: Database) -> None:
    async def job(session: AsyncSession) -> int:
        await live(session, await coach_with(session, SHORT), [Life("Ann")], dates=8)
        version = await version_of(session, 1, OTHER)
        await live(session, version, [Life("Bob")], dates=8, first=300)
        return version.id

    number = await database.write(job)
    await does(database, lambda desk, person, coach: digest.tapped(desk, person, coach, "page", ""))
    (asked,) = await sent(database)
    assert [row[0]["text"][:10] for row in asked["reply_markup"]["inline_keyboard"]] == [
        "Everybody",
        "Test hips ",
        "Other hips",
    ]
    await does(database, lambda desk, person, coach: digest.tapped(desk, person, coach, "page", str(number)))
    page = file_of((await sent(database))[-1])
    assert "Bob" in page
    assert "Ann" not in page


async def test_the_coach_chooses_day_and_hour(database: Database) -> None:
    await group(database, SHORT, (Life("Pat"),), 3)
    for value in ("4", "0900"):
        await does(database, lambda desk, person, coach, value=value: digest.tapped(desk, person, coach, "when", value))  # type: ignore[misc]
    assert "on Friday at 09:00 (Europe/Lisbon)" in plain((await sent(database))[-1])
    async with database.reading() as session:
        planned = await due.planned(session, due.DueKind.DIGEST, 1)
    assert planned == datetime.combine(date(2026, 4, 3), time(8), tzinfo=UTC), "nine in Lisbon's summer"
    assert START.weekday() == 0
