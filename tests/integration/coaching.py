"""A coach, a client and an assistant with a running course, a set calendar, and a platform that can be blocked."""

from __future__ import annotations

import asyncio
import secrets
from collections.abc import AsyncIterator, Awaitable, Callable, Iterator, Sequence
from contextlib import asynccontextmanager
from dataclasses import dataclass, field
from datetime import UTC, date, datetime, time
from importlib.resources import files
from itertools import count
from pathlib import Path
from typing import Any, TypeVar

from aiohttp import web
from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession
from telegram import Bot

from bot.clocks import Machine, SystemMachine
from bot.failing import Hooks
from bot.flows import day, joining, listening
from bot.flows.desk import Desk
from bot.flows.installation import DEFAULTS, Installation
from bot.sending import Sender
from bot.taps import tap
from bot.ticks import Ticker
from db import copying, courses, outbox
from db.engine import Database
from db.schema import Alert, Coach, Course, Helper, LedgerRow, Outbox, Person, ProgrammeVersion
from plans.checkin import CheckIn
from tests.integration.fakes import Call, FakePlatform, SetCalendar, bot_at, database_in, platform_running, refusal

T = TypeVar("T")
SAMPLE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
START = datetime(2026, 5, 4, 8, 0, tzinfo=UTC)
COACH, CLIENT, HELPER = 1, 2, 3
"""Numbers of the people, and of their chats."""


class Blockable(FakePlatform):
    """A platform on which chats can block the bot."""

    def __init__(self) -> None:
        super().__init__()
        self.blocked: set[int] = set()

    def _outcome(self, call: Call, number: int, request: web.Request) -> web.Response:
        if int(call.fields.get("chat_id", 0)) in self.blocked:
            return refusal(403, "Forbidden: bot was blocked by the user", {})
        return super()._outcome(call, number, request)

    def seen_by(self, chat: int) -> list[str]:
        """The texts that have arrived in a chat."""
        return [c.text for c in self.arrived if c.fields.get("chat_id") == str(chat) and chat not in self.blocked]


@dataclass
class Practice:
    """The coach's practice: what happens in it, and what arrives."""

    database: Database
    platform: Blockable
    bot: Bot
    installation: Installation = DEFAULTS
    calendar: SetCalendar = field(default_factory=lambda: SetCalendar(START))
    updates: Iterator[int] = field(default_factory=lambda: count(1))
    """Numbers of updates; what somebody says is kept under one."""

    async def opens(self, *, hears: bool = True) -> None:
        """Coach 1, client 2 on their first day, assistant 3."""

        async def job(session: AsyncSession) -> None:
            made: dict[str, Any] = {"created_at": START}
            names = ((COACH, "Coach"), (CLIENT, "Kim"), (HELPER, "Help"))
            session.add_all(
                [Person(id=n, chat=n, label=name, zone="UTC", morning=time(7), **made) for n, name in names]
            )
            await session.flush()
            session.add(Coach(id=1, person_id=COACH, **made))
            await session.flush()
            session.add(Helper(coach_id=1, person_id=HELPER, sees=True, hears=hears, added_at=START))
            session.add(
                ProgrammeVersion(
                    id=1, coach_id=1, digest="d", title="Rowing", source=SAMPLE, stored_at=START, published_at=START
                )
            )
            await session.flush()
            session.add(
                Course(
                    id=1, person_id=CLIENT, coach_id=1, version_id=1, state="active", starts_on=date(2026, 5, 4), **made
                )
            )
            await session.flush()
            row = LedgerRow(id=1, course_id=1, person_id=CLIENT, local_date=date(2026, 5, 4), zone="UTC", level=0)
            row.kind, row.day, row.made_at = "session", 1, START
            session.add(row)
            await session.flush()
            await copying._continue_numbers(await session.connection())

        await self.database.write(job)

    async def at_desk(self, job: Callable[[Desk], Awaitable[T]]) -> T:
        """Does something at a desk of its own."""
        cause = f"test:{secrets.token_hex(4)}"

        async def write(session: AsyncSession) -> T:
            now, update = self.calendar.now(), next(self.updates)
            desk = Desk(session, now, cause, "easeward_bot", update, said_at=now, installation=self.installation)
            return await job(desk)

        return await self.database.write(write)

    async def tapped(self, person: int, data: str) -> str | None:
        """What a tap shows for a moment."""

        async def job(desk: Desk) -> str | None:
            return await tap(desk, await desk.session.get_one(Person, person), data)

        return await self.at_desk(job)

    async def types(self, person: int, text: str) -> None:
        """Somebody types something."""

        async def job(desk: Desk) -> None:
            await listening.heard(desk, await desk.session.get_one(Person, person), text)

        await self.at_desk(job)

    async def meets(self, *chats: int) -> None:
        """People who write for the first time."""

        async def job(desk: Desk) -> None:
            desk.session.add_all([Person(id=n, chat=n, label=f"P{n}", created_at=desk.now) for n in chats])

        await self.at_desk(job)

    async def opens_link(self, person: int, token: str) -> str:
        """What somebody is told who opens a link."""

        async def job(desk: Desk) -> None:
            await joining.open_link(desk, await desk.session.get_one(Person, person), token)

        await self.at_desk(job)
        return (await self.put_so_far(person))[-1]

    async def button(self, chat: int, label: str) -> str:
        """The data of a button that a chat was sent last."""
        for row in reversed(await self.rows(chat)):
            for line in (row.payload.get("reply_markup") or {}).get("inline_keyboard", ()):
                for one in line:
                    if one["text"] == label:
                        return str(one["callback_data"])
        raise AssertionError(f"no button {label!r} in chat {chat}")

    async def agrees(self, person: int) -> None:
        """Somebody taps the yes of the agreement that they were shown last."""
        await self.tapped(person, await self.button(person, "I agree"))

    async def course_of(self, person: int) -> Course:
        """The newest course of somebody."""
        async with self.database.reading() as session:
            found = await session.scalar(
                select(Course).where(Course.person_id == person).order_by(Course.id.desc()).limit(1)
            )
            assert found is not None
            return found

    async def has_course(self, person: int) -> bool:
        """Whether somebody has any course."""
        async with self.database.reading() as session:
            return await session.scalar(select(Course.id).where(Course.person_id == person).limit(1)) is not None

    async def tick(self, **later: float) -> None:
        """Moves the calendar and does what is due."""
        self.calendar.forward(**later)
        await Ticker(self.database, self.calendar, "easeward_bot", installation=self.installation).tick()

    def sender(self, machine: Machine | None = None) -> Sender:
        """A sender; `machine` is its clock."""
        return Sender(
            self.database,
            self.bot,
            calendar=self.calendar,
            machine=machine or SystemMachine(),
            worker=f"w-{secrets.token_hex(4)}",
            chat_pace=0.0,
            per_second=1000,
            on_unreachable=Hooks(self.calendar, "easeward_bot", self.installation).unreachable,
        )

    @asynccontextmanager
    async def sending(self, machine: Machine | None = None) -> AsyncIterator[Sender]:
        """A sender at work during the block."""
        sender = self.sender(machine)
        task = asyncio.create_task(sender.run())
        try:
            yield sender
        finally:
            sender.stop()
            await task

    async def all_left(self) -> bool:
        """Whether nothing waits to be sent."""
        async with self.database.reading() as session:
            return not await outbox.open_work(session)

    async def rows(self, chat: int) -> Sequence[Outbox]:
        """What was put for a chat."""
        async with self.database.reading() as session:
            return (await session.scalars(select(Outbox).where(Outbox.chat == chat).order_by(Outbox.id))).all()

    async def put_so_far(self, chat: int) -> list[str]:
        """The texts of messages to a chat that have not left."""
        return [str(row.payload.get("text", row.payload.get("caption", ""))) for row in await self.rows(chat)]

    async def ledger(self) -> Sequence[LedgerRow]:
        """All rows of all courses by date."""
        async with self.database.reading() as session:
            return (await session.scalars(select(LedgerRow).order_by(LedgerRow.local_date))).all()

    async def said(self, row: int = 0) -> CheckIn:
        """What was said of one row of the ledger, counted from 0."""
        found = (await self.ledger())[row]
        async with self.database.reading() as session:
            return await courses.said_of(session, found)

    async def told_at_once(self) -> list[str]:
        """Of what the coach was told at once, oldest first."""
        async with self.database.reading() as session:
            found = await session.scalars(select(Alert).where(Alert.at_once).order_by(Alert.id))
            return [alert.cause for alert in found]

    async def alert(self) -> Alert:
        """The newest alert."""
        async with self.database.reading() as session:
            found = await session.scalar(select(Alert).order_by(Alert.id.desc()).limit(1))
            assert found is not None
            return found


@asynccontextmanager
async def practice_in(folder: Path) -> AsyncIterator[Practice]:
    """An empty practice where the test keeps its databases."""
    platform = Blockable()
    async with (
        platform_running(platform) as url,
        bot_at(url, read_timeout=5.0) as bot,
        database_in(folder) as database,
    ):
        yield Practice(database, platform, bot)


@asynccontextmanager
async def first_day_in(folder: Path) -> AsyncIterator[Practice]:
    """A practice whose client is on their first day, of which nothing was said yet."""
    async with practice_in(folder) as found:
        await found.opens(hears=False)
        await found.at_desk(lambda desk: day.plan_morning(desk, CLIENT))
        yield found
