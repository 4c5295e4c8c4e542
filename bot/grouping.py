"""`easeward practice --group N`: an invented coach and group live six weeks in the practice chat, as fast as can be.

Everything goes the way of real people: the calendar is moved through what is due, they tap and type, the bot answers.
It is done in a folder beside the one that is asked for, which takes its place when it is whole.
"""

from __future__ import annotations

import random
import shutil
import time
from collections.abc import Callable, Mapping, Sequence
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy import select

from bot.app import Running
from bot.flows.drafts import Draft
from bot.logs import set_up_logs
from bot.practice.invented import (
    DATES,
    PLAYING,
    ROWING,
    SEED,
    TOGETHER_FROM,
    WALKING,
    Life,
    Member,
    Row,
    Turn,
    by_programme,
    group,
)
from bot.practice.manners import CITY, Act, Say, Tap, asked, city_is_asked
from bot.practice.platform import Platform
from bot.practice.showing import shown_all
from bot.practice.store import Store
from bot.practice.trying import sample
from bot.practising import COACH, COACH_NAME, PracticeMover, Scene, practice_running, practise
from db import links, measures
from db.engine import Database
from db.schema import Course, LedgerRow, Person, ProgrammeVersion
from plans.ledger import RowKind
from plans.reading import read_programme
from plans.rehearsal import Stage

FACT = "group"
"""Where the chats' file says how many people live in it."""
BEGINNING, NOON, EVENING = timedelta(hours=4), timedelta(hours=11), timedelta(hours=19)
"""After midnight UTC: when the first date begins, and when people answer. The coach looks after both."""
COACHS_LOOK = timedelta(hours=8)
"""When it ends: the coach's morning list has come."""
MOST_ACTS = 16
UNSEEN = 2
"""What came on so many last dates the coach has not looked at: that is what there is to see."""
LETS_GO_AFTER = (1, 4)
"""Dates after which the coach lets a waiting client go on."""
_WITH_DAY = (RowKind.SESSION, RowKind.MEASURE)


class OtherPeople(RuntimeError):
    """The folder holds something else than the group that is asked for."""


async def practise_group(*, port: int, folder: Path, open_page: bool, count: int, say: Callable[[str], None]) -> None:
    """As `practise`, with a group of so many people. Raises OtherPeople, PortTaken."""
    set_up_logs("WARNING")
    await lived(folder, count, datetime.now(UTC), say)
    await practise(port=port, folder=folder, open_page=open_page, say=say)


async def lived(folder: Path, count: int, now: datetime, say: Callable[[str], None], *, dates: int = DATES) -> None:
    """Makes sure that a group of so many people lives in the folder. Raises OtherPeople."""
    known = folder / "chats.sqlite"
    if known.exists():
        there = _lives_in(known)
        if there != str(count):
            found = f"a group of {there}" if there else "no group"
            raise OtherPeople(f"{folder} holds {found}: choose another folder with --data")
        return
    making = folder.with_name(f"{folder.name}.loading")
    shutil.rmtree(making, ignore_errors=True)
    say(f"{count} invented people live six weeks. This is done once and kept in {folder}")
    await _live(making, count, now, say, dates)
    folder.parent.mkdir(parents=True, exist_ok=True)
    making.rename(folder)


def _lives_in(file: Path) -> str | None:
    with Store(file) as store:
        return store.fact(FACT)


async def _live(folder: Path, count: int, now: datetime, say: Callable[[str], None], dates: int) -> None:
    begun = time.monotonic()
    first = _first_midnight(now, dates)

    async def scene(program: Running, platform: Platform, mover: PracticeMover) -> None:
        world = World(program.database, platform, mover, group(count), first, looks_until=dates - UNSEEN)
        await world.begins()
        for date in range(dates):
            await world.lives(date)
            if date % 7 == 6:
                say(f"  week {date // 7 + 1} of {dates // 7}, after {time.monotonic() - begun:.0f} s")
        await mover.move(first + timedelta(days=dates) + COACHS_LOOK)
        platform.store.keep(FACT, str(count))

    async with practice_running(folder, port=0, scene=scene, starts=first + BEGINNING):
        pass


def _first_midnight(now: datetime, dates: int) -> datetime:
    """The midnight (UTC) from which so many dates end on a Monday that is today or comes next."""
    today = now.replace(hour=0, minute=0, second=0, microsecond=0)
    return today + timedelta(days=-today.weekday() % 7 + 1 - dates)


class World:
    """A coach and a group in the practice chat, one date after the other."""

    def __init__(
        self,
        database: Database,
        platform: Platform,
        mover: PracticeMover,
        members: Sequence[Member],
        first: datetime,
        *,
        looks_until: int,
    ) -> None:
        self._database, self._platform, self._mover = database, platform, mover
        self._first = first
        self._members = members
        self._lives = {one.chat: Life(one) for one in members}
        self._stages = {name: Stage(read_programme(sample(name))) for name in (ROWING, WALKING, PLAYING)}
        self._links: dict[str, str] = {}
        self._seen: dict[int, int] = {}
        """For each chat the last message of the day before."""
        self._scene = Scene(platform, mover)
        self._coach = _CoachActs(platform, mover, random.Random(SEED), until=looks_until)

    # --- beginning ----------------------------------------------------------------------------------------------------

    async def begins(self) -> None:
        """A coach publishes the samples and makes a link to each for as many as will come."""
        token = await self._database.write(lambda session: links.new_coach_link(session, self._mover.now()))
        await self._scene.say(COACH, f"/start {token}", COACH_NAME)
        await self._scene.say(COACH, CITY)
        for name, some in by_programme(self._members).items():
            if some:
                await self._publishes(name, len(some))

    async def _publishes(self, name: str, places: int) -> None:
        self._platform.send_document(COACH, name, sample(name).encode())
        await self._mover.settle()
        await self._scene.tap(COACH, "Publish")
        async with self._database.reading() as session:
            version = await session.scalar(select(ProgrammeVersion.id).order_by(ProgrammeVersion.id.desc()).limit(1))
        if version is None:
            raise LookupError(f"{name} was not published")
        starts = (self._first + timedelta(days=TOGETHER_FROM)).date() if name == WALKING else None
        newest = self._platform.chats()[0]["last"]
        self._platform.forge_tap(COACH, newest, f"draft:{Draft(version, places, starts).data}:make")
        await self._mover.settle()
        self._links[name] = self._scene.link(COACH)

    # --- one date -----------------------------------------------------------------------------------------------------

    async def lives(self, date: int) -> None:
        """Everything of one date: who comes, the morning's messages, answers at noon and in the evening."""
        midnight = self._first + timedelta(days=date)
        for life in self._lives.values():
            life.wakes(date)
        early, late = self._here(date, late=False), self._here(date, late=True)
        await self._mover.move(midnight + NOON)
        await self._come(date)
        await self._act(early)
        await self._coach.looks(date)
        await self._mover.move(midnight + EVENING)
        await self._act([*early, *late])
        await self._leave(date)
        await self._coach.looks(date)
        self._seen = {chat["id"]: chat["last"] for chat in self._platform.chats()}

    def _here(self, date: int, *, late: bool) -> list[Life]:
        return [life for life in self._lives.values() if life.member.joins_on <= date and life.is_late is late]

    async def _come(self, date: int) -> None:
        for one in self._members:
            if one.joins_on == date:
                self._platform.say(
                    one.chat, f"/start {self._links[one.programme]}", first_name=one.name, language=one.language
                )
        await self._mover.settle()

    async def _leave(self, date: int) -> None:
        for one in self._members:
            if one.turn is Turn.BLOCKS and one.turns_on == date:
                self._platform.block(one.chat, True)
        await self._mover.settle()

    async def _act(self, lives: Sequence[Life]) -> None:
        """Rounds in which everybody does one thing, until nobody has anything to do."""
        acting = list(lives)
        for _round in range(MOST_ACTS):
            acts = [(life, await self._next(life)) for life in acting]
            acting = [life for life, act in acts if act is not None]
            for life, act in acts:
                if act is not None:
                    self._does(life.member.chat, act)
            if not acting:
                return
            await self._mover.settle()

    async def _next(self, life: Life) -> Act | None:
        chat = life.member.chat
        found = self._platform.messages(chat, after=self._seen.get(chat, 0))
        messages = shown_all(self._platform, chat, found)
        if city_is_asked(messages):
            return Say(life.member.city)
        row = await self._row(life.member)
        if row is not None and row.test is not None:
            return life.tries(row.test)
        question = asked(messages)
        if question is None:
            return life.says()
        if question.name == "session" and (said := life.says()) is not None:
            return said
        return life.answers(question, row)

    async def _row(self, member: Member) -> Row | None:
        async with self._database.reading() as session:
            person = select(Person.id).where(Person.chat == member.chat).scalar_subquery()
            newest = select(LedgerRow).where(LedgerRow.person_id == person).order_by(LedgerRow.local_date.desc())
            row = await session.scalar(newest.limit(1))
            if row is None:
                return None
            stage = self._stages[member.programme]
            task = stage.programme.day(row.day).measure if row.day is not None and row.kind in _WITH_DAY else None
            if task is not None:
                course = await session.get_one(Course, row.course_id)
                if row.day in await measures.days_tested(session, course, task.measure):
                    task = None
        load = stage.asked.get((row.day or 0, row.level)) if row.kind == RowKind.SESSION else None
        return Row(row.id, load, task.measure if task is not None else None)

    def _does(self, chat: int, act: Act) -> None:
        if isinstance(act, Tap):
            self._platform.tap(chat, act.message, act.data)
        else:
            self._platform.say(chat, act.text)


class _CoachActs:
    """What the invented coach does: sees alerts and lists, and lets those go on who wait, save at the very end."""

    def __init__(self, platform: Platform, mover: PracticeMover, rng: random.Random, *, until: int) -> None:
        self._platform, self._mover, self._rng, self._until = platform, mover, rng, until
        self._seen = 0
        self._lets_go: dict[str, int] = {}
        """The data of a button that lets somebody go on, and the date of the tap."""

    async def looks(self, date: int) -> None:
        """Everything that has come since the last look."""
        if date >= self._until:
            return
        for message in self._new():
            for data in _offered(message):
                verb = data.partition(":")[0]
                if verb in ("seen", "listed"):
                    self._platform.tap(COACH, message["id"], data)
                elif verb == "go":
                    self._lets_go.setdefault(data, date + self._rng.randint(*LETS_GO_AFTER))
        await self._mover.settle()
        for data in [data for data, on in self._lets_go.items() if on <= date]:
            del self._lets_go[data]
            await self._lets(data)

    async def _lets(self, data: str) -> None:
        self._platform.forge_tap(COACH, self._seen, data)
        await self._mover.settle()
        for message in self._new():
            found = [each for each in _offered(message) if each.startswith("found:")]
            if found:
                self._platform.tap(COACH, message["id"], found[0])
        await self._mover.settle()

    def _new(self) -> list[dict[str, Any]]:
        found = shown_all(self._platform, COACH, self._platform.messages(COACH, after=self._seen))
        self._seen = max((message["id"] for message in found), default=self._seen)
        return found


def _offered(message: Mapping[str, Any]) -> list[str]:
    return [button["data"] for row in message["buttons"] for button in row if button["data"]]
