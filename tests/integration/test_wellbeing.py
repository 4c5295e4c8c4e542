"""Figures, the ping and what doctor says: all is well is said only while it is, and nobody is named."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from datetime import datetime, timedelta
from pathlib import Path

import aiohttp
import pytest
from aiohttp import web as aiohttp_web
from aiohttp.test_utils import TestServer
from prometheus_client.parser import text_string_to_metric_families
from sqlalchemy.ext.asyncio import AsyncSession

from bot import web
from bot.heartbeat import Heartbeat, UnfitPing, checked
from bot.metrics import Metrics
from bot.ticks import Ticker
from bot.wellbeing import LATE, troubles
from db import due, outbox, watched
from db.delivery import Kind, State
from db.engine import Database
from db.schema import Outbox, Person
from tests.integration.fakes import NOON, SetCalendar
from tests.postgres import free_port

pytestmark = pytest.mark.usefixtures("store")


async def put(session: AsyncSession, kind: Kind, at: datetime = NOON, chat: int = 987654) -> int:
    return await outbox.put(
        session, key=f"{kind}{at}", chat=chat, kind=kind, method="send_message", payload={"text": "Ada"}, now=at
    )


async def names(database: Database, now: datetime, hours: int = 36) -> set[str]:
    async with database.reading() as session:
        return {trouble.name for trouble in await troubles(session, now, hours)}


async def test_nothing_is_wrong_with_what_has_just_begun(database: Database) -> None:
    async def job(session: AsyncSession) -> None:
        session.add(Person(id=1, chat=1, label="A", created_at=NOON))
        for kind in Kind:
            await put(session, kind)
        await due.plan(session, due.DueKind.MORNING, 1, NOON)

    await database.write(job)
    assert await names(database, NOON + LATE - timedelta(seconds=1)) == set()


async def test_what_waits_too_long_is_named(database: Database) -> None:
    async def job(session: AsyncSession) -> None:
        await put(session, Kind.ALERT)
        await put(session, Kind.SESSION)
        await due.plan(session, due.DueKind.MORNING, 1, NOON)

    await database.write(job)
    assert await names(database, NOON + LATE) == {"due", "alerts-wait", "sending"}


async def test_many_sessions_may_wait_while_some_leave(database: Database) -> None:
    async def job(session: AsyncSession) -> None:
        left = await put(session, Kind.SESSION)
        await put(session, Kind.DIGEST)
        row = await session.get_one(Outbox, left)
        row.state, row.sent_at = "sent", NOON + timedelta(minutes=50)

    await database.write(job)
    assert await names(database, NOON + timedelta(minutes=55)) == set()
    assert await names(database, NOON + timedelta(minutes=61)) == {"sending"}


async def test_words_that_are_timed_may_wait(database: Database) -> None:
    await database.write(lambda session: put(session, Kind.TIMER))
    assert await names(database, NOON + timedelta(days=1)) == set()


async def test_a_backup_is_missed_once_there_is_something_to_lose(database: Database) -> None:
    assert await names(database, NOON) == set()
    await database.write(_person)
    assert await names(database, NOON + timedelta(hours=35)) == set()
    assert await names(database, NOON + timedelta(hours=36)) == {"backup"}
    assert await names(database, NOON + timedelta(hours=36), hours=0) == set()
    await database.write(lambda session: watched.note_backup(session, NOON + timedelta(hours=36)))
    assert await names(database, NOON + timedelta(hours=71)) == set()
    assert await names(database, NOON + timedelta(hours=72)) == {"backup"}


async def _person(session: AsyncSession) -> None:
    session.add(Person(id=1, chat=987654, label="Ada", created_at=NOON))


# --- the ping ---------------------------------------------------------------------------------------------------------


class Monitoring:
    """The operator's own monitoring, which counts what it hears."""

    def __init__(self) -> None:
        self.heard = 0
        self.status = 200

    async def answer(self, _request: aiohttp_web.Request) -> aiohttp_web.Response:
        self.heard += 1
        return aiohttp_web.Response(status=self.status)


@asynccontextmanager
async def monitored(database: Database) -> AsyncIterator[tuple[Heartbeat, Monitoring, Ticker, SetCalendar]]:
    monitoring, calendar = Monitoring(), SetCalendar()
    application = aiohttp_web.Application()
    application.router.add_get("/ping/secret", monitoring.answer)
    ticker = Ticker(database, calendar, "easeward_bot")
    async with TestServer(application) as server:
        heart = Heartbeat(
            database,
            ticker,
            calendar=calendar,
            url=str(server.make_url("/ping/secret")),
            backup_hours=36,
            tick_seconds=5,
        )
        yield heart, monitoring, ticker, calendar


async def test_the_ping_is_heard_while_all_is_well_and_stops_when_it_is_not(
    database: Database, caplog: pytest.LogCaptureFixture
) -> None:
    async with monitored(database) as (heart, monitoring, _ticker, calendar):
        assert await heart.beat()
        await database.write(lambda session: put(session, Kind.ALERT))
        assert await heart.beat()
        assert monitoring.heard == 2
        calendar.forward(minutes=11)
        assert not await heart.beat()
        assert not await heart.beat()
        assert monitoring.heard == 2
        assert [record.message for record in caplog.records] == ["not-well"]
        calendar.forward(minutes=-11)
        caplog.set_level("INFO", "bot.heartbeat")
        assert await heart.beat()
        assert caplog.records[-1].message == "well-again"


async def test_ticks_that_do_not_end_stop_the_ping(database: Database) -> None:
    async with monitored(database) as (heart, monitoring, ticker, _calendar):
        await ticker.tick()
        assert await heart.beat()
        ticker.ended_at = asyncio.get_running_loop().time() - 136
        assert [trouble.name for trouble in await heart.look()] == ["ticks"]
        assert not await heart.beat()
        assert monitoring.heard == 1


async def test_monitoring_that_is_away_or_refuses_disturbs_nothing_and_its_address_is_not_logged(
    database: Database, caplog: pytest.LogCaptureFixture
) -> None:
    async with monitored(database) as (heart, monitoring, _ticker, _calendar):
        monitoring.status = 503
        assert await heart.beat()
    assert await heart.beat()
    assert [record.message for record in caplog.records] == ["ping-failed", "ping-failed"]
    assert "secret" not in caplog.text


@pytest.mark.parametrize("url", ["http://monitoring.example.org/x", "ftp://x/y", "https://", "monitoring"])
def test_an_address_that_would_be_read_by_others_is_refused_and_not_quoted(url: str) -> None:
    with pytest.raises(UnfitPing) as refused:
        checked(url)
    assert url not in str(refused.value)
    assert checked("https://monitoring.example.org/x") == "https://monitoring.example.org/x"


# --- figures ----------------------------------------------------------------------------------------------------------


async def test_figures_say_how_much_waits_and_for_how_long_and_name_nobody(database: Database, tmp_path: Path) -> None:
    async def job(session: AsyncSession) -> None:
        await _person(session)
        await put(session, Kind.ALERT)
        await put(session, Kind.SESSION, NOON + timedelta(minutes=1))
        await put(session, Kind.SESSION, NOON + timedelta(minutes=2))
        await due.plan(session, due.DueKind.MORNING, 1, NOON + timedelta(minutes=2))
        await watched.note_backup(session, NOON - timedelta(hours=2))

    await database.write(job)
    metrics, calendar, port = Metrics(), SetCalendar(NOON + timedelta(minutes=3)), free_port()
    metrics.left(Kind.SESSION, State.UNKNOWN)

    async def figures() -> bytes:
        return await metrics.text(database, calendar, 36)

    async with (
        web.serving("127.0.0.1", port, database, {}, figures),
        aiohttp.ClientSession() as http,
        http.get(f"http://127.0.0.1:{port}/metrics") as answer,
    ):
        text = await answer.text()
        assert answer.headers["Content-Type"].startswith("text/plain; version=0.0.4")
    found = {
        (sample.name, *sorted(sample.labels.values())): sample.value
        for family in text_string_to_metric_families(text)
        for sample in family.samples
    }
    assert found["easeward_waiting_messages", "session"] == 2
    assert found["easeward_oldest_message_seconds", "alert"] == 180
    assert found["easeward_oldest_message_seconds", "session"] == 120
    assert found["easeward_due_lag_seconds",] == 60
    assert found["easeward_backup_age_seconds",] == 2 * 3600 + 180
    assert found["easeward_messages_total", "session", "unknown"] == 1
    assert found["easeward_trouble", "backup"] == 0
    assert found["easeward_database_up",] == 1
    assert found["easeward_zone_data_age_days",] < 400
    assert "Ada" not in text
    assert "987654" not in text


async def test_labels_are_kinds_and_outcomes_only() -> None:
    labels = {name for metric in vars(Metrics()).values() for name in getattr(metric, "_labelnames", ())}
    assert labels == {"kind", "state", "reason", "outcome", "lane", "what"}


async def test_figures_of_the_process_are_there_without_the_database() -> None:
    class Away:
        def reading(self) -> object:
            raise OSError("away")

    text = await Metrics().text(Away(), SetCalendar(), 36)  # type: ignore[arg-type]
    assert b"easeward_database_up 0.0" in text


async def test_every_answer_forbids_keeping_framing_and_guessing(database: Database) -> None:
    port = free_port()
    async with web.serving("127.0.0.1", port, database, {}), aiohttp.ClientSession() as http:
        for method, path, status in (("GET", "livez", 200), ("GET", "nowhere", 404), ("TRACE", "livez", 405)):
            async with http.request(method, f"http://127.0.0.1:{port}/{path}") as answer:
                assert answer.status == status
                assert {name: answer.headers[name] for name in web.HEADERS} == web.HEADERS
                assert "charset" in answer.headers["Content-Type"]
