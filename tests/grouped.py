"""An invented group that lives some weeks under the real rules, written by the stores as the bot would write it."""

from __future__ import annotations

import random
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from functools import cache

from sqlalchemy import update
from sqlalchemy.ext.asyncio import AsyncSession

from db import alerts, courses, measures, outbox
from db.courses import CourseState
from db.schema import Coach, Course, LedgerRow, Outbox, Person, ProgrammeVersion
from plans import course as way
from plans.checkin import CheckIn, Completion, Kind, Morning, Why
from plans.course import Decision
from plans.ledger import Entry, Question, RowKind
from plans.measures import MEASURES
from plans.pace import pace_of
from plans.programme import Programme
from plans.reading import read_programme
from plans.rules import Tell

START = date(2026, 3, 2)
"""A Monday."""
READ = cache(read_programme)


@dataclass(frozen=True, slots=True)
class Life:
    """One invented client: from which date on they answer no more or stop, and how much hurts."""

    name: str
    misses: float = 0.1
    pain: int = 1
    rises: float = 0.0
    """Points of pain a week."""
    silent_from: int | None = None
    stops: int | None = None
    sharp_on: int | None = None
    better: float = 8.0
    """By so many centimetres the second test is better."""


LIVES = (
    Life("Ada"),
    Life("Bea", misses=0.35),
    Life("Cem", rises=1.0),
    Life("Dag", silent_from=22),
    Life("Eva", sharp_on=25),
    Life("=HYPERLINK(\"x\")", better=-9),
    Life("Gus", stops=12),
    Life("Hal", misses=0.02, pain=0),
)  # fmt: skip
LESS = (CheckIn(), CheckIn(Completion.NONE, why=Why.TIME), CheckIn(Completion.PART, 1, half=True))
"""What is said on a day that is not done."""


async def coach_with(session: AsyncSession, source: str, number: int = 1) -> ProgrammeVersion:
    """A coach in Lisbon whose chat is their number, with one published version of a programme file."""
    made = datetime(2026, 2, 20, 9, tzinfo=UTC)
    person = Person(id=number, chat=number, label=f"Coach {number}", zone="Europe/Lisbon", created_at=made)
    session.add(person)
    await session.flush()
    session.add(Coach(id=number, person_id=number, created_at=made))
    await session.flush()
    return await version_of(session, number, source)


async def version_of(session: AsyncSession, coach: int, source: str) -> ProgrammeVersion:
    """One more published version of a coach's."""
    made, programme = datetime(2026, 2, 20, 9, tzinfo=UTC), READ(source)
    version = ProgrammeVersion(coach_id=coach, digest=programme.digest, title=programme.title, source=source)
    version.stored_at = version.published_at = made
    session.add(version)
    await session.flush()
    return version


async def live(
    session: AsyncSession,
    version: ProgrammeVersion,
    lives: Sequence[Life] = LIVES,
    *,
    dates: int = 28,
    first: int = 100,
) -> None:
    """Each life as a client of its own, numbered from `first`, for so many dates."""
    for number, life in enumerate(lives):
        await _Living(session, version, life, first + number).lives(dates)


class _Living:
    def __init__(self, session: AsyncSession, version: ProgrammeVersion, life: Life, number: int) -> None:
        self.session, self.version, self.life, self.number = session, version, life, number
        self.programme: Programme = READ(version.source)
        self.rng = random.Random(f"{life.name}:{number}")
        self.past: list[Entry] = []
        self.waited = 0

    async def lives(self, dates: int) -> None:
        made = _at(START - timedelta(days=1), 12)
        self.person = Person(
            id=self.number,
            chat=self.number,
            label=self.life.name,
            zone="Europe/Lisbon",
            morning=time(7),
            created_at=made,
        )
        self.session.add(self.person)
        await self.session.flush()
        self.course = Course(
            person_id=self.number,
            coach_id=self.version.coach_id,
            version_id=self.version.id,
            state=CourseState.ACTIVE,
            starts_on=START,
            created_at=made,
        )
        self.session.add(self.course)
        await self.session.flush()
        for at in range(dates):
            if await self._day(at, START + timedelta(days=at)):
                break
        await self.session.flush()

    async def _day(self, at: int, on: date) -> bool:
        """One date; true when the course is over."""
        if at == self.life.stops:
            await self._ends(CourseState.STOPPED, on)
            return True
        waiting = self.course.state == CourseState.WAITING
        if waiting:
            await self._row(Decision(RowKind.WAITING, courses.position_of(self.course)), on, CheckIn(), None)
            return False
        decision = self._decide(on)
        morning = None
        if decision.question is Question.MORNING and not self._is_silent(at):
            morning = self.rng.choice((Morning.SETTLED, Morning.SETTLED, Morning.SAME))
            asked = Entry(on, RowKind.ASKING, morning=morning)
            decision = self._decide(on, asked)
        if decision.kind is None:
            await self._ends(CourseState.FINISHED, on)
            return True
        said = self._says(at) if decision.kind is RowKind.SESSION else CheckIn()
        await self._row(decision, on, said, morning)
        if decision.kind is RowKind.WAITING:
            self.course.state = CourseState.WAITING
        return False

    def _decide(self, on: date, *asked: Entry) -> Decision:
        return way.decide(
            self.programme,
            courses.position_of(self.course),
            [*self.past, *asked],
            on,
            settings=self.programme.settings,
            pace=pace_of(self.programme, START),
        )

    def _is_silent(self, at: int) -> bool:
        return self.life.silent_from is not None and at >= self.life.silent_from

    def _says(self, at: int) -> CheckIn:
        if self._is_silent(at):
            return CheckIn()
        if at == self.life.sharp_on:
            return CheckIn(Completion.PART, pain=6, kind=Kind.SHARP, why=Why.PAIN)
        chance = self.rng.random()
        if chance < self.life.misses:
            return self.rng.choice(
                (CheckIn(), CheckIn(Completion.NONE, why=Why.TIME), CheckIn(Completion.PART, 1, half=True))
            )
        pain = self.life.pain + round(self.life.rises * at / 7 + self.rng.random() - 0.5)
        return CheckIn(Completion.DONE, pain=max(0, min(5, pain)), tightness=max(0, min(10, 4 - at // 10)))

    async def _row(self, decision: Decision, on: date, said: CheckIn, morning: Morning | None) -> None:
        now = _at(on, 7)
        row = await courses.make_row(self.session, self.course, decision, day=on, zone="Europe/Lisbon", now=now)
        row.morning = morning
        row.outbox_id = await self._sent(row, now)
        if said != CheckIn():
            courses.write_checkin(await courses.checkin_row(self.session, row, _at(on, 8)), said, _at(on, 8))
            self.person.heard_at = _at(on, 8)
        recorded = await self._tests(row, on)
        for vote in decision.votes:
            if vote.tell is not None:
                await alerts.raise_alert(
                    self.session,
                    self.course,
                    cause=vote.rule,
                    at_once=vote.tell is Tell.NOW,
                    red=False,
                    facts=vote.facts,
                    report={},
                    row=row,
                    now=now,
                )
        await self.session.flush()
        self.past.append(
            Entry(
                on,
                RowKind(row.kind),
                row.day,
                row.level,
                row.prescribed,
                checkin=said,
                morning=morning,
                recorded=recorded,
                voted=frozenset(vote.rule for vote in decision.votes),
            )
        )

    async def _sent(self, row: LedgerRow, now: datetime) -> int:
        number = await outbox.put(
            self.session,
            key=f"session:{row.id}",
            chat=self.number,
            kind="session",
            method="send_message",
            payload={"text": "x"},
            now=now,
        )
        await self.session.execute(
            update(Outbox).where(Outbox.id == number).values(state="sent", payload={}, sent_at=now)
        )
        return number

    async def _tests(self, row: LedgerRow, on: date) -> bool:
        """The day's test, three tries; whether there was one."""
        day = None if row.day is None or row.kind not in ("session", "measure") else self.programme.day(row.day)
        if day is None or day.measure is None or any(entry.recorded and entry.day == row.day for entry in self.past):
            return False
        base = 20 + self.rng.randint(-8, 8) - (self.life.better if row.day != 1 else 0)
        await measures.begin(
            self.session, self.course, MEASURES[day.measure.measure], tries=3, warm=True, row=row, now=_at(on, 9)
        )
        for test in await measures.open_ones(self.session, self.course):
            measures.add(test, [base + self.rng.choice((0, 0.5, 1)) for _ in range(3)], _at(on, 9))
        await self.session.flush()
        return True

    async def _ends(self, state: CourseState, on: date) -> None:
        self.course.state = state
        self.course.ended_at = _at(on, 7)


def _at(on: date, hour: int) -> datetime:
    return datetime.combine(on, time(hour), tzinfo=UTC)
