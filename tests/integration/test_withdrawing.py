"""A session that still waits to leave, and what happens meanwhile: stop, pain, a pause, a block, /today, an erasure."""

from __future__ import annotations

from collections.abc import AsyncIterator, Awaitable, Callable
from datetime import UTC, date, datetime, time
from pathlib import Path

import pytest
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.flows import day, evening, joining, leaving, listening, pauses, steering, telling, upkeeping
from bot.flows.desk import TERMS, Desk
from db import erasure, people
from db.engine import Database
from db.schema import Alert, Coach, Course, Due, Invite, LedgerRow, Outbox, Person, ProgrammeVersion
from tests.integration.fakes import database_in
from tests.samples import HEAD, session

pytestmark = pytest.mark.usefixtures("store")

TODAY = date(2026, 5, 4)
NOW = datetime(2026, 5, 4, 6, 0, tzinfo=UTC)


@pytest.fixture
async def database(tmp_path: Path) -> AsyncIterator[Database]:
    async with database_in(tmp_path) as found:
        await found.write(_scene)
        await do(found, lambda desk, _client: day.morning(desk, 2))
        yield found


async def _scene(session_: AsyncSession) -> None:
    """A coach, and a client whose first morning it is."""
    for n in (1, 2):
        session_.add(Person(id=n, chat=n, label=f"P{n}", zone="UTC", morning=time(6), created_at=NOW))
    await session_.flush()
    session_.add(Coach(id=1, person_id=1, created_at=NOW))
    await session_.flush()
    source = HEAD + session() * 3
    session_.add(ProgrammeVersion(id=1, coach_id=1, digest="d", title="Small", source=source, stored_at=NOW))
    await session_.flush()
    await _course(session_, 2)


async def _course(session_: AsyncSession, person: int) -> Course:
    made = Course(person_id=person, coach_id=1, version_id=1, state="active", starts_on=TODAY, created_at=NOW)
    session_.add(made)
    await session_.flush()
    return made


async def do(database: Database, use_case: Callable[[Desk, Person], Awaitable[None]]) -> None:
    async def job(session_: AsyncSession) -> None:
        desk = Desk(session=session_, now=NOW, cause=use_case.__qualname__ + str(id(use_case)), bot_username="b")
        await use_case(desk, await session_.get_one(Person, 2))

    await database.write(job)


async def sessions(database: Database) -> list[tuple[str, str | None]]:
    async with database.reading() as session_:
        rows = await session_.execute(select(Outbox.state, Outbox.why).where(Outbox.kind == "session"))
        return [(state, why) for state, why in rows]


async def test_the_morning_waits_to_leave(database: Database) -> None:
    assert await sessions(database) == [("waiting", None)]


async def stops(desk: Desk, client: Person) -> None:
    await leaving.stop(desk, client, await desk.session.get_one(Course, 1))


async def test_after_stop_it_does_not_leave(database: Database) -> None:
    await do(database, stops)
    assert await sessions(database) == [("skipped", "stopped")]


async def test_after_a_report_that_refers_it_does_not_leave(database: Database) -> None:
    await do(database, lambda desk, client: listening.heard(desk, client, "I heard a pop in my calf"))
    assert await sessions(database) == [("skipped", "waiting")]


async def test_after_a_health_change_it_does_not_leave(database: Database) -> None:
    await do(database, lambda desk, client: listening.heard(desk, client, "I am pregnant"))
    assert await sessions(database) == [("skipped", "waiting")]


async def test_after_a_block_it_does_not_leave(database: Database) -> None:
    await do(database, telling.unreachable)
    assert await sessions(database) == [("skipped", "unreachable")]


async def _needs_a_strap_and_has_a_test(desk: Desk) -> None:
    version = await desk.session.get_one(ProgrammeVersion, 1)
    version.source = version.source.replace("reach, hold", "supine-hamstring-strap, hold")
    version.source = version.source.replace("days:", "measures: [fingertip-to-floor]\ndays:", 1)
    await desk.session.flush()


@pytest.mark.parametrize("asks", [evening.ask_for_things, upkeeping.offer_retest])
@pytest.mark.parametrize("blocked", [False, True])
async def test_whoever_has_blocked_the_bot_is_asked_nothing_by_itself(
    database: Database, asks: Callable[[Desk, int], Awaitable[None]], blocked: bool
) -> None:
    async def needs_a_strap(desk: Desk, client: Person) -> None:
        client.zone = "Pacific/Tongatapu"  # where it is 19:00
        client.unreachable_since = NOW if blocked else None
        await people.agree(desk.session, client, text_version=TERMS, now=NOW)
        await _needs_a_strap_and_has_a_test(desk)
        await asks(desk, client.id)

    await do(database, needs_a_strap)
    async with database.reading() as session_:
        nudges = (await session_.scalars(select(Outbox.id).where(Outbox.kind == "nudge"))).all()
    assert len(nudges) == (0 if blocked else 1)


@pytest.mark.parametrize(
    ("asks", "kind", "hour"), [(evening.ask_for_things, "things", 23), (upkeeping.offer_retest, "retest", 10)]
)
async def test_what_was_missed_is_not_asked_in_the_night(
    database: Database, asks: Callable[[Desk, int], Awaitable[None]], kind: str, hour: int
) -> None:
    async def it_is_night_there(desk: Desk, client: Person) -> None:
        client.zone = "America/New_York"
        await people.agree(desk.session, client, text_version=TERMS, now=NOW)
        await _needs_a_strap_and_has_a_test(desk)
        await asks(desk, client.id)

    await do(database, it_is_night_there)
    async with database.reading() as session_:
        assert (await session_.scalars(select(Outbox.id).where(Outbox.kind == "nudge"))).all() == []
        at = await session_.scalar(select(Due.at).where(Due.kind == kind))
    assert at == datetime(2026, 5, 4, hour, 0, tzinfo=UTC), "19:00 and 06:00 in New York"


@pytest.mark.parametrize("whose", ["client", "coach"])
async def test_in_a_pause_it_does_not_leave(database: Database, whose: str) -> None:
    async def pausing(desk: Desk, client: Person) -> None:
        coach = await desk.session.get_one(Coach, 1)
        if whose == "coach":
            await steering.tapped(desk, await desk.session.get_one(Person, 1), coach, 1, "pause", "7")
        else:
            await pauses.pause(desk, client, await desk.session.get_one(Course, 1))

    await do(database, pausing)
    assert await sessions(database) == [("skipped", "paused")]


async def test_what_today_shows_takes_its_place(database: Database) -> None:
    await do(database, day.today)
    assert await sessions(database) == [("skipped", "replaced")]
    async with database.reading() as session_:
        shown = (await session_.scalars(select(LedgerRow.outbox_id))).one()
        assert (await session_.get_one(Outbox, shown)).state == "waiting"


async def test_what_is_already_being_sent_may_arrive_and_is_not_tried_again(database: Database) -> None:
    async def marked(session_: AsyncSession) -> None:
        (await session_.scalars(select(Outbox).where(Outbox.kind == "session"))).one().state = "sending"

    await database.write(marked)
    await do(database, stops)
    assert await sessions(database) == [("sending", "stopped")]


async def test_nobody_who_has_blocked_the_bot_is_sent_a_morning_until_they_speak(database: Database) -> None:
    async def again(desk: Desk, client: Person) -> None:
        client.unreachable_since = NOW
        course = await desk.session.get_one(Course, 1)
        await day.make(desk, client, course, date(2026, 5, 5), by_itself=True)

    await do(database, again)
    assert await sessions(database) == [("waiting", None), ("skipped", "unreachable")]


async def test_a_number_is_not_given_again_after_an_erasure(database: Database) -> None:
    """A button that a coach still sees names a course, and a message's key an alert: they must not become another's."""

    async def numbers(session_: AsyncSession, person: int) -> tuple[int, int, int]:
        course = await session_.scalar(select(Course.id).where(Course.person_id == person))
        row = LedgerRow(course_id=course, person_id=person, local_date=date(2026, 6, 1), zone="UTC", kind="rest")
        row.level, row.made_at = 0, NOW
        alert = Alert(course_id=course, cause="severe", at_once=True, facts={}, opened_at=NOW)
        session_.add_all([row, alert])
        await session_.flush()
        return course or 0, row.id, alert.id

    async def erased_and_another(session_: AsyncSession) -> tuple[tuple[int, int, int], tuple[int, int, int]]:
        before = await numbers(session_, 2)
        await erasure.erase(session_, await session_.get_one(Person, 2), NOW)
        another = Person(id=3, chat=3, label="P3", created_at=NOW)
        session_.add(another)
        await session_.flush()
        await _course(session_, another.id)
        return before, await numbers(session_, another.id)

    before, after = await database.write(erased_and_another)
    assert all(now > was for was, now in zip(before, after, strict=True))


async def test_whoever_blocked_the_bot_while_joining_can_still_say_no(database: Database) -> None:
    async def says_no(desk: Desk, _client: Person) -> None:
        joiner = Person(id=3, chat=3, label="P3", created_at=NOW)
        desk.session.add(joiner)
        await desk.session.flush()
        course = await _course(desk.session, 3)
        course.state, course.invite_id = "joining", await _invite(desk.session)
        await telling.unreachable(desk, joiner)
        await joining.decline(desk, joiner, course)

    await do(database, says_no)
    async with database.reading() as session_:
        assert (await session_.scalars(select(Course.person_id))).all() == [2]


async def _invite(session_: AsyncSession) -> int:
    made = Invite(coach_id=1, version_id=1, token_hash="h", places=1, used=0, made_at=NOW, expires_at=NOW)
    session_.add(made)
    await session_.flush()
    return made.id
