"""Time that does not behave: new zone data, jumping clocks, people who travel, hosts with old data or a wrong clock."""

from __future__ import annotations

import asyncio
import os
import random
import shutil
import subprocess
import sys
from collections.abc import AsyncIterator
from datetime import UTC, date, datetime, time, timedelta
from email.utils import format_datetime
from importlib.resources import files
from pathlib import Path

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.cli import examination
from bot.clocks import PlatformClock
from bot.flows import day, joining
from bot.flows.desk import Desk
from bot.ticks import Ticker
from db import due, tidying
from db.due import DueKind
from db.engine import Database
from db.schema import Coach, Course, Due, LedgerRow, Outbox, Person, ProgrammeVersion
from plans import localtime
from tests.integration.fakes import SetCalendar, database_in

pytestmark = pytest.mark.usefixtures("store")

SAMPLE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
START = date(2026, 5, 4)


class Client:
    """One client of one course, the ticks, and a calendar that is set."""

    def __init__(self, database: Database) -> None:
        self.database = database
        self.calendar = SetCalendar(datetime(2026, 5, 3, 12, tzinfo=UTC))
        self.ticker = Ticker(database, self.calendar, "easeward_bot")

    async def joins(self, zone: str = "Europe/Lisbon") -> None:
        async def job(session: AsyncSession) -> None:
            made = {"created_at": self.calendar.now()}
            session.add_all([Person(id=n, chat=n, label=f"P{n}", zone=zone, morning=time(7), **made) for n in (1, 2)])
            await session.flush()
            session.add(Coach(id=1, person_id=1, **made))
            await session.flush()
            version = ProgrammeVersion(
                id=1, coach_id=1, digest="d", title="Rowing", source=SAMPLE, stored_at=self.calendar.now()
            )
            session.add(version)
            await session.flush()
            session.add(Course(id=1, person_id=2, coach_id=1, version_id=1, state="active", starts_on=START, **made))
            await due.plan(session, DueKind.MORNING, 2, await self._first(zone))

        await self.database.write(job)

    async def _first(self, zone: str) -> datetime:
        found = localtime.instant(START, time(7), zone)
        assert found is not None
        return found

    async def ticks_at(self, moment: datetime) -> None:
        self.calendar.at = moment
        await self.ticker.tick()
        await self.database.write(self._late_is_skipped)

    async def _late_is_skipped(self, session: AsyncSession) -> None:
        await tidying.tidy(session, machine_now=0.0, now=self.calendar.now())

    async def moves_to(self, zone: str) -> None:
        async def job(session: AsyncSession) -> None:
            desk = Desk(session=session, now=self.calendar.now(), cause=f"move:{self.calendar.now()}", bot_username="b")
            await joining.take_zone(desk, await session.get_one(Person, 2), zone)

        await self.database.write(job)

    async def dates(self) -> list[date]:
        async with self.database.reading() as session:
            return list(await session.scalars(select(LedgerRow.local_date).order_by(LedgerRow.id)))

    async def sessions(self) -> dict[str, str]:
        """What became of each morning's message, by its date."""
        async with self.database.reading() as session:
            rows = await session.execute(select(Outbox.key, Outbox.state).where(Outbox.kind == "session"))
            return {key.rpartition(":")[2]: state for key, state in rows}

    async def last_words(self) -> str:
        async with self.database.reading() as session:
            found = await session.scalar(
                select(Outbox.payload).where(Outbox.chat == 2).order_by(Outbox.id.desc()).limit(1)
            )
            return str((found or {}).get("text", ""))

    async def planned(self) -> datetime | None:
        async with self.database.reading() as session:
            return await due.planned(session, DueKind.MORNING, 2)


@pytest.fixture
async def client(tmp_path: Path) -> AsyncIterator[Client]:
    async with database_in(tmp_path) as database:
        yield Client(database)


# --- new zone data ----------------------------------------------------------------------------------------------------


async def plan_by_old_data(client: Client, at: datetime, monkeypatch: pytest.MonkeyPatch) -> None:
    """The morning as an older release of the zone data gave it."""
    with monkeypatch.context() as older:
        older.setattr("db.due.data_version", lambda: "2019a")
        await client.database.write(lambda session: due.plan(session, DueKind.MORNING, 2, at))


async def test_a_morning_that_new_zone_data_moves_later_does_not_come_early(
    client: Client, monkeypatch: pytest.MonkeyPatch
) -> None:
    await client.joins()
    right = datetime(2026, 5, 4, 6, tzinfo=UTC)
    await plan_by_old_data(client, right - timedelta(hours=1), monkeypatch)
    await client.ticks_at(right - timedelta(minutes=30))
    assert await client.dates() == []
    assert await client.planned() == right
    await client.ticks_at(right)
    assert await client.dates() == [START]


async def test_a_morning_that_new_zone_data_moves_earlier_comes_at_once(
    client: Client, monkeypatch: pytest.MonkeyPatch
) -> None:
    await client.joins()
    right = datetime(2026, 5, 4, 6, tzinfo=UTC)
    await plan_by_old_data(client, right + timedelta(hours=1), monkeypatch)
    await client.ticks_at(right + timedelta(minutes=1))
    assert await client.sessions() == {"2026-05-04": "waiting"}


async def test_all_that_was_planned_by_old_data_is_computed_anew_and_one_that_fails_holds_up_no_other(
    client: Client, monkeypatch: pytest.MonkeyPatch
) -> None:
    await client.joins()
    await plan_by_old_data(client, datetime(2026, 6, 1, tzinfo=UTC), monkeypatch)

    async def more(session: AsyncSession) -> None:
        for kind, subject in ((DueKind.DIGEST, 1), (DueKind.LIST, 1), (DueKind.MORNING, 404), (DueKind.NUDGE, 404)):
            session.add(Due(kind=kind, subject=subject, at=datetime(2026, 6, 1, tzinfo=UTC), zone_data="2019a"))

    await client.database.write(more)
    await client.ticks_at(datetime(2026, 5, 3, 13, tzinfo=UTC))
    async with client.database.reading() as session:
        rows = (await session.scalars(select(Due))).all()
    assert {row.zone_data for row in rows} == {localtime.data_version()}
    assert {row.kind: row.at for row in rows if row.subject != 404} == {
        "morning": datetime(2026, 5, 4, 6, tzinfo=UTC),
        "digest": datetime(2026, 5, 4, 16, tzinfo=UTC),
        "list": datetime(2026, 5, 4, 6, tzinfo=UTC),
    }


# --- clocks that jump -------------------------------------------------------------------------------------------------


async def test_a_clock_that_jumps_ahead_makes_each_date_once_and_sends_only_the_present_one(client: Client) -> None:
    await client.joins()
    await client.ticks_at(datetime(2026, 5, 4, 6, tzinfo=UTC))
    await client.ticks_at(datetime(2026, 5, 7, 6, 30, tzinfo=UTC))
    assert await client.dates() == [START + timedelta(days=n) for n in range(4)]
    assert await client.sessions() == {
        "2026-05-04": "skipped",
        "2026-05-05": "skipped",
        "2026-05-06": "skipped",
        "2026-05-07": "waiting",
    }


async def test_a_clock_that_jumps_back_sends_nothing_a_second_time(client: Client) -> None:
    await client.joins()
    for number in (4, 5, 4, 3, 4, 5, 6):
        await client.ticks_at(datetime(2026, 5, number, 6, 30, tzinfo=UTC))
    assert await client.dates() == [START + timedelta(days=n) for n in range(3)]
    assert sorted(await client.sessions()) == ["2026-05-04", "2026-05-05", "2026-05-06"]


async def test_with_a_clock_that_is_known_to_be_wrong_nothing_is_sent(
    client: Client, caplog: pytest.LogCaptureFixture
) -> None:
    await client.joins()
    clock = PlatformClock()
    clock.heard(format_datetime(datetime.now(UTC) - timedelta(days=2), usegmt=True))
    ticker = Ticker(client.database, client.calendar, "b", clock=clock)
    client.calendar.at = datetime(2026, 5, 6, 12, tzinfo=UTC)
    await ticker.tick()
    assert await client.dates() == []
    assert [record.message for record in caplog.records if record.name == "bot.ticks"] == ["clock-wrong"]


@pytest.mark.parametrize("heard", [None, "nonsense", "Wed, 21 Oct 2015 07:28:00"])
def test_a_platform_that_says_no_time_is_not_believed_to_say_one(heard: str | None) -> None:
    clock = PlatformClock()
    clock.heard(heard)
    assert clock.off_by() is None


async def test_a_tick_and_a_client_who_asks_at_the_same_moment_make_one_row(client: Client) -> None:
    await client.joins()

    async def asks(number: int) -> None:
        async def job(session: AsyncSession) -> None:
            desk = Desk(session=session, now=client.calendar.now(), cause=f"ask:{number}", bot_username="b")
            await day.today(desk, await session.get_one(Person, 2))

        await client.database.write(job)

    for n in range(12):
        client.calendar.at = datetime(2026, 5, 4, 6, 30, tzinfo=UTC) + timedelta(days=n)
        await asyncio.gather(client.ticker.tick(), asks(2 * n), client.ticker.tick(), asks(2 * n + 1))
    assert await client.dates() == [START + timedelta(days=n) for n in range(12)]


# --- people who travel ------------------------------------------------------------------------------------------------


async def test_whoever_flies_over_the_date_line_hears_which_date_has_no_morning(client: Client) -> None:
    await client.joins("America/Los_Angeles")
    await client.ticks_at(datetime(2026, 5, 4, 14, tzinfo=UTC))
    client.calendar.at = datetime(2026, 5, 5, 12, 30, tzinfo=UTC)  # the 5th, 05:30 there; on Kiritimati the 6th
    await client.moves_to("Pacific/Kiritimati")
    said = await client.last_words()
    assert "Tue 5 May is already over" in said
    assert "Wed 6 May" in said
    await client.ticks_at(datetime(2026, 5, 5, 17, 5, tzinfo=UTC))
    assert await client.dates() == [START, date(2026, 5, 5), date(2026, 5, 6)]
    assert (await client.sessions())["2026-05-05"] == "skipped"


async def test_whoever_flies_back_gets_no_second_session_on_a_date(client: Client) -> None:
    await client.joins("Pacific/Auckland")
    await client.ticks_at(datetime(2026, 5, 3, 19, tzinfo=UTC))  # the 4th, 07:00 there
    client.calendar.at = datetime(2026, 5, 3, 22, tzinfo=UTC)
    await client.moves_to("Pacific/Honolulu")  # there it is noon of the 3rd
    await client.ticks_at(datetime(2026, 5, 4, 17, 30, tzinfo=UTC))  # the 4th, 07:30 there
    assert await client.dates() == [START]
    await client.ticks_at(datetime(2026, 5, 5, 17, tzinfo=UTC))
    assert await client.dates() == [START, date(2026, 5, 5)]


ZONES = ("Pacific/Kiritimati", "Pacific/Auckland", "Asia/Kolkata", "Europe/Lisbon", "America/New_York", "Pacific/Niue")


@pytest.mark.parametrize("seed", range(6))
async def test_however_somebody_travels_each_date_has_one_row_and_one_message_at_most(
    client: Client, seed: int
) -> None:
    chance = random.Random(seed)
    await client.joins(chance.choice(ZONES))
    moment = datetime(2026, 5, 3, 12, tzinfo=UTC)
    for _ in range(30):
        moment += timedelta(hours=chance.choice((1, 3, 7, 12, 25)))
        await client.ticks_at(moment)
        if chance.random() < 0.4:
            await client.moves_to(chance.choice(ZONES))
    dates = await client.dates()
    assert dates == [START + timedelta(days=n) for n in range(len(dates))], "no date twice, none left out"
    assert set(await client.sessions()) <= {str(one) for one in dates}


# --- hosts ------------------------------------------------------------------------------------------------------------


def test_the_programs_own_zone_data_wins_over_a_hosts_that_is_wrong(tmp_path: Path) -> None:
    (tmp_path / "Europe").mkdir()
    shutil.copy(str(files("tzdata").joinpath("zoneinfo", "Asia", "Tokyo")), tmp_path / "Europe" / "Lisbon")
    words = ["when", "2026-07-01", "07:00", "Europe/Lisbon"]
    environment = os.environ | {"PYTHONTZPATH": str(tmp_path)}
    for own in ([sys.executable, "-m", "bot.cli", *words],):
        done = subprocess.run(own, env=environment, capture_output=True, text=True, check=True)
        assert done.stdout.strip() == "2026-07-01T06:00Z"


def test_the_doctor_says_which_zone_data_the_host_has_and_that_it_is_not_used(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "tzdata.zi").write_text("# version 2019c\n# more\n")
    monkeypatch.setattr(examination, "HOST_ZONE_DATA", (tmp_path / "none", tmp_path / "tzdata.zi"))
    assert examination._host_zone_data() == "the host's is 2019c"
    monkeypatch.setattr(examination, "HOST_ZONE_DATA", ())
    assert examination._host_zone_data() == "the host's says no release"
