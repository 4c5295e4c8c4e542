"""A programme's report from real rows: it agrees with the ledger, says what changed, and is only on one's own."""

from __future__ import annotations

import csv
import re
from collections import defaultdict
from io import StringIO
from typing import Any

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import programmes, reporting
from bot.flows.rights import NotAllowed
from bot.painter import paint
from db.engine import Database
from db.schema import Course, ProgrammeVersion
from tests.grouped import LIVES, Life, coach_with, live, version_of
from tests.integration.test_digests import OTHER, ROWING, SHORT, does, file_of, ledger, plain, sent, table_of

pytestmark = pytest.mark.usefixtures("store")

CROWD = (*LIVES, Life("Ida"), Life("Jon", stops=9), Life("Kai", silent_from=4), Life("Liv", misses=0.5))
DATES = 45
GONE = {"Gus", "Jon", "Kai"}
"""Two have stopped, the third has not answered for four weeks."""
NEWER = ROWING.replace("hold: 30, side: each, effort: 4-5}", "hold: 40, side: each, effort: 4-5}")


async def crowd(database: Database) -> int:
    async def job(session: AsyncSession) -> int:
        version = await coach_with(session, ROWING)
        await live(session, version, CROWD, dates=DATES)
        return version.id

    return int(await database.write(job))


async def reported(database: Database, version: int) -> list[dict[str, Any]]:
    await does(database, lambda desk, person, coach: reporting.show(desk, person, coach, version))
    return await sent(database)


def figure(lines: list[dict[str, str]], part: str, of: str, name: str) -> tuple[int, int]:
    (line,) = (one for one in lines if (one["part"], one["of"], one["figure"]) == (part, of, name))
    return int(line["count"]), int(line["clients"])


def without_the_last_silence(rows: list[dict[str, Any]], gone: set[str]) -> list[dict[str, Any]]:
    """The sessions, of those who are gone up to the first that they never answered."""
    found = []
    for label in {row["label"] for row in rows}:
        mine = sorted(
            (r for r in rows if r["label"] == label and r["kind"] == "session"), key=lambda r: r["local_date"]
        )
        heard = max((at for at, row in enumerate(mine) if row["completion"] is not None), default=-1)
        found += mine[: heard + 2] if label in gone else mine
    return found


async def test_the_report_agrees_with_the_ledger(database: Database) -> None:
    text, page, table = await reported(database, await crowd(database))
    lines = table_of(table)
    had: defaultdict[int, defaultdict[str, list[dict[str, Any]]]] = defaultdict(lambda: defaultdict(list))
    rows = without_the_last_silence(await ledger(database), GONE)
    for row in rows:
        had[row["day"]][row["label"]].append(row)
    furthest = {name: max(row["day"] for row in rows if row["label"] == name) for name in {r["label"] for r in rows}}
    assert figure(lines, "whole", "", "begun") == (len(CROWD), len(CROWD))
    through = {"Ada", "Bea", "Hal", "Ida", '=HYPERLINK("x")', *GONE}
    for day in (2, 3, 5):
        past = {name: mine for name, mine in had[day].items() if furthest[name] > day or name in through}
        again = sum(len({row["local_date"] for row in mine}) > 1 for mine in past.values())
        done = sum(any(row["completion"] == "done" for row in mine) for mine in past.values())
        eased = sum(any(row["level"] for row in mine) for mine in past.values())
        pains = [[row["pain"] for row in mine if row["pain"] is not None] for mine in past.values()]
        hurt = sum(max(mine, default=0) >= 3 for mine in pains)
        assert figure(lines, "day", str(day), "repeated") == (again, len(past)), day
        assert figure(lines, "day", str(day), "done") == (done, len(past)), day
        assert figure(lines, "day", str(day), "eased") == (eased, len(past)), day
        assert figure(lines, "day", str(day), "hurt") == (hurt, sum(1 for mine in pains if mine)), day
        assert f'<td data-name="Again">{again}/{len(past)} ' in file_of(page)
    assert figure(lines, "whole", "", "left")[0] == len(GONE)
    assert sum(int(line["count"]) for line in lines if line["figure"] == "left_there") == len(GONE)
    assert sum(int(line["count"]) for line in lines if line["part"] == "staying") == len(GONE)
    begun = f"{len(CROWD)} began: {figure(lines, 'whole', '', 'finished')[0]} finished"
    assert begun in plain(text)
    assert begun in file_of(page)


async def test_the_error_of_the_test_comes_from_the_groups_own_tries(database: Database) -> None:
    text, _page, table = await reported(database, await crowd(database))
    assert re.search(r"fingertip to floor: error here 0\.\d cm, least real change \d\.\d cm \(12 people", plain(text))
    (error,) = (line for line in table_of(table) if line["part"] == "test" and line["figure"] == "error")
    assert 0.2 < float(error["count"]) < 0.7, "tries are spread over 0, 0.5 and 1 cm by chance"


async def test_few_people_are_said_to_be_few(database: Database) -> None:
    async def job(session: AsyncSession) -> int:
        version = await coach_with(session, SHORT)
        await live(session, version, LIVES[:3], dates=12)
        return version.id

    text, page, table = await reported(database, int(await database.write(job)))
    assert "Small numbers" in plain(text)
    assert "3 people took it again, its error here needs 10" in plain(text)
    assert "few" in file_of(page)
    assert {line["small"] for line in table_of(table) if line["part"] == "day" and line["figure"] == "done"} == {"yes"}
    assert paint(text["photo"]["recipe"]).startswith(b"\x89PNG")


async def test_beside_it_stands_what_changed_from_the_version_before(database: Database) -> None:
    first = await crowd(database)

    async def job(session: AsyncSession) -> int:
        version = await version_of(session, 1, NEWER)
        await live(session, version, [Life("Mia"), Life("Ned")], dates=12, first=900)
        return version.id

    second = int(await database.write(job))
    text, page, _table = await reported(database, second)
    assert "Beside the version before" in plain(text)
    assert f"{len(CROWD)} began" in plain(text)
    assert re.search(r"• days? [\d, -]+: .*30 s.*-> .*40 s", plain(text))
    assert "40 s" in file_of(page)
    assert "Beside the version before" not in plain((await reported(database, first))[3])


async def test_nobody_yet_is_said_plainly_and_sends_no_files(database: Database) -> None:
    async def job(session: AsyncSession) -> int:
        return (await coach_with(session, SHORT)).id

    (only,) = await reported(database, int(await database.write(job)))
    assert "Nobody has begun yet." in plain(only)


async def test_a_barred_movement_is_counted_and_a_strange_title_stays_harmless(database: Database) -> None:
    source = SHORT.replace("title: Test hips", "title: =cmd <script>")

    async def job(session: AsyncSession) -> int:
        version = await coach_with(session, source)
        await live(session, version, LIVES[:2], dates=6)
        course = await session.scalar(select(Course).order_by(Course.id).limit(1))
        assert course is not None
        course.barred = ["sway"]
        return version.id

    _text, page, table = await reported(database, int(await database.write(job)))
    assert figure(table_of(table), "movement", "sway", "barred") == (1, 2)
    assert figure(table_of(table), "movement", "sway", "kept") == (1, 2)
    assert not re.search(r"<script|https?:|src=|url\((?!#)", file_of(page))
    assert all(
        not cell.startswith(("=", "+", "-", "@")) for row in csv.reader(StringIO(file_of(table))) for cell in row
    )


async def test_only_a_coachs_own_versions_have_a_button_and_a_report(database: Database) -> None:
    async def job(session: AsyncSession) -> int:
        await coach_with(session, SHORT)
        theirs = await coach_with(session, OTHER, number=2)
        draft = ProgrammeVersion(coach_id=1, digest="d" * 64, title="Draft", source=OTHER, stored_at=theirs.stored_at)
        session.add(draft)
        await session.flush()
        return theirs.id

    theirs = int(await database.write(job))
    await does(database, programmes.list_programmes)
    (listed,) = await sent(database)
    labels = [row[0]["text"] for row in listed["reply_markup"]["inline_keyboard"]]
    assert [label.split()[0] for label in labels] == ["Publish", "Look", "Look", "Your"]
    await does(database, lambda desk, person, coach: programmes.look(desk, person, coach, 1))
    buttons = [row[0]["callback_data"] for row in (await sent(database))[-1]["reply_markup"]["inline_keyboard"]]
    assert "report:1" in buttons
    with pytest.raises(NotAllowed):
        await reported(database, theirs)
