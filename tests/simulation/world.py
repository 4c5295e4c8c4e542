"""One simulated world: a coach, clients, a platform, the real program, and what goes wrong, all from one seed."""

from __future__ import annotations

import asyncio
import gc
import hashlib
import heapq
import random
import warnings
from collections import Counter, deque
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy.exc import SAWarning

from bot.practice.platform import Platform
from bot.practice.store import Store
from bot.practice.world import FIRST_UPDATE
from db import links, migrate
from db.erasure import erase
from db.people import by_chat
from db.writer import WriterClosed
from tests.simulation import digests
from tests.simulation.checks import Checks
from tests.simulation.clocks import SimCalendar, SimMachine
from tests.simulation.coaches import Coach
from tests.simulation.errors import errors_heard, where
from tests.simulation.faults import Faults, Rates
from tests.simulation.lives import TOKEN, Died, Mortal, Painter, Process
from tests.simulation.loop import StillLoop, run
from tests.simulation.network import Network
from tests.simulation.people import HABITS, SHARES, Client, Habit
from tests.simulation.phones import Phone
from tests.simulation.record import Record, instant
from tests.simulation.samples import PROGRAMMES, programme_of, stage
from tests.simulation.troubles import Troubles
from tests.simulation.watch import Watch

COACH, FIRST_CLIENT = 1001, 2001
TRACE = 60
"""Steps that are kept for whoever looks into a failure."""
WOKEN = 0.1
"""Of idle times: so many are passed as by a host that stood still, and everybody looks at once when they are over."""
NEVER = datetime.max.replace(tzinfo=UTC)
STALLED = 30_000
"""So many steps without any progress are a standstill; a long outage with its tries again takes some thousand."""


@dataclass(frozen=True, slots=True)
class Plan:
    """What is simulated: everything else follows from the seed."""

    seed: int
    days: int = 28
    clients: int = 6
    shared: bool | None = None
    """Whether two processes serve at once; drawn when None."""
    rates: Rates = field(default_factory=Rates)
    programme: str | None = None
    """A sample's name; drawn when None."""
    habit: str | None = None
    """Of all clients; drawn for each when None."""


@dataclass(slots=True)
class Found:
    """What came of a world."""

    seed: int
    broken: list[tuple[str, str]] = field(default_factory=list)
    trace: list[str] = field(default_factory=list)
    faults: Counter[str] = field(default_factory=Counter)
    counts: Counter[str] = field(default_factory=Counter)
    digest: str = ""
    """Of everything that was said, in order: equal for equal seeds."""

    def report(self) -> str:
        """What broke, and how it came to that."""
        broken = [f"  {name}: {what}" for name, what in self.broken]
        return "\n".join([f"seed {self.seed}:", *broken, *(f"    {line}" for line in self.trace)])


class Stop(Exception):
    """Something broke; the world ends here."""


class World:
    """The simulated world, and what its people need of it."""

    def __init__(self, plan: Plan, folder: Path, loop: StillLoop, found: Found) -> None:
        self._plan, self._loop, self.found = plan, loop, found
        self._rng = random.Random(plan.seed)
        self._file = folder / "easeward.sqlite"
        self.calendar, self.machine = SimCalendar(loop), SimMachine(loop)
        store = Store(None)
        self.platform = Platform(TOKEN, calendar=self.calendar, machine=self.machine, store=store)
        self.faults = Faults(plan.rates, random.Random(self._rng.random()))
        found.faults = self.faults.injected
        self.record = Record(self._file)
        self.watch = Watch(self.record, self.calendar, self.broken, self._arrives)
        self.network = Network(self.platform, self.faults, self.watch, random.Random(self._rng.random()))
        self.shared = self._rng.random() < 0.5 if plan.shared is None else plan.shared
        self._pace = self._rng.choice((0.0, 1.0))
        self._events: list[tuple[datetime, int, Callable[[], Any]]] = []
        self._numbers = 0
        self._births = 0
        self._idle = False
        self.steady_since = self.calendar.now()
        self._turn = asyncio.Lock()
        self._processes: list[Process] = []
        self._troubles = Troubles(self, self._own())
        self._trace: deque[str] = deque(maxlen=TRACE)
        self._digest = hashlib.sha256()
        drawn = self._rng.choice(PROGRAMMES)
        self.programme = plan.programme or drawn
        together = programme_of(self.programme).pace == "together"
        self.checks = Checks(self.record, self.calendar, self.machine, self.broken, together=together)
        self.coach = Coach(self, Phone(self.platform, COACH, "Coach"), self.programme, self._own())
        self.clients = {
            chat: Client(
                self, Phone(self.platform, chat, f"Client {chat}"), self._habit(),
                stage(self.programme), self._own(),
            )
            for chat in range(FIRST_CLIENT, FIRST_CLIENT + plan.clients)
        }  # fmt: skip

    def _own(self) -> random.Random:
        """Chances of somebody's own, so that one more draw here changes nothing there."""
        return random.Random(self._rng.random())

    def _habit(self) -> Habit:
        drawn = self._own().choices(HABITS, SHARES)[0]
        return next((habit for habit in HABITS if habit.name == self._plan.habit), drawn)

    # --- what people ask of the world ---------------------------------------------------------------------------------

    def later(self, after: timedelta, act: Callable[[], Any]) -> None:
        self._numbers += 1
        heapq.heappush(self._events, (self.calendar.now() + after, self._numbers, act))

    def link(self) -> str | None:
        if self.coach.link is None:
            return None
        places = self.record.one("SELECT sum(places - used) AS free, max(expires_at) AS until FROM invite")
        if places is None or not places["free"] or instant(places["until"]) < self.calendar.now() + timedelta(days=1):
            self.coach.invites()
            return None
        return self.coach.link

    def row(self, ledger: int) -> tuple[int | None, int]:
        found = self.record.one("SELECT day, level FROM ledger WHERE id = ?", ledger)
        return (found["day"], found["level"]) if found else (None, 0)

    def erase(self, chat: int) -> None:
        self.later(timedelta(0), lambda: self._erase(chat))

    async def _erase(self, chat: int) -> None:
        process = self.somebody()
        if process is None:
            return

        async def job(session: Any) -> None:
            person = await by_chat(session, chat)
            if person is None:
                return
            gone = self.record.rows("SELECT update_id FROM inbox WHERE chat = ?", chat)
            self.checks.forgotten |= {row["update_id"] for row in gone}
            await erase(session, person, self.calendar.now())

        self.note(f"erases {chat}")
        await self._inside(process, process.database.write(job))

    def count(self, fault: str) -> None:
        self.faults.count(fault)

    def broken(self, name: str, what: str) -> None:
        """An invariant does not hold."""
        self.found.broken.append((name, what))
        self.note(f"BROKEN {name}: {what}")

    def note(self, line: str) -> None:
        """One line of the trace."""
        text = f"{self.calendar.now():%m-%d %H:%M:%S} {self._loop.time():.1f} {line}"
        self._trace.append(text)
        self._digest.update(text.encode())

    def _arrives(self, chat: int, body: Any, changed: bool) -> None:
        who = self.coach if chat == COACH else self.clients[chat]
        seen = who.phone.shows(body)
        self.note(f"{chat} {'sees' if changed else 'gets'} {seen.id}: {seen.text[:40]!r}")
        self.found.counts["messages"] += 1
        who.hears(seen)

    # --- processes ----------------------------------------------------------------------------------------------------

    def _begin(self) -> None:
        if not self._processes:
            self.steady_since = self.calendar.now()
        self._births += 1
        mortal = Mortal(f"worker-{self._births}")
        process = Process(
            mortal,
            self._file,
            self.network.transport(mortal),
            calendar=self.calendar,
            machine=self.machine,
            turn=self._turn,
            shared=self.shared,
            painter=Painter(lambda: self.faults.happens("not drawn", self._plan.rates.not_drawn)),
            breaks=lambda: self.faults.happens("handler broke", self._plan.rates.handler),
            pace=self._pace,
        )
        self.note(f"{mortal.name} begins")
        self._processes.append(process)
        process.begin()

    async def _bury(self) -> bool:
        """Ends who died and plans the next life; whether anybody did."""
        dead = [process for process in self._processes if process.mortal.dead]
        for process in dead:
            self._processes.remove(process)
            self.note(f"{process.mortal.name} died at: {process.mortal.died_at}")
            for error in process.ended:
                self.broken("the program goes on", f"a loop ended by itself: {error!r}")
            await process.end()
            down = self._rng.choice((0.0, 0.0, 1.0, 60.0, 3600.0 * self._rng.random() * 4))
            self.later(timedelta(seconds=down), self._begin)
        return bool(dead)

    def seconds(self) -> float:
        """Of the loop."""
        return self._loop.time()

    def somebody(self) -> Process | None:
        """One of the living processes."""
        return self._rng.choice(self._processes) if self._processes else None

    async def _inside(self, process: Process, work: Any) -> None:
        """Does something in a process, which may die of it."""
        task = process.spawn(work)
        while not task.done():
            await self._loop.quiet()
            if not task.done():
                if await self._bury():
                    break
                self._loop.advance(self._loop.until_timer() or 1.0)
        error = task.exception() if task.done() and not task.cancelled() else None
        if error is not None and not isinstance(error, Died) and not process.mortal.dead:
            raise error

    # --- time ---------------------------------------------------------------------------------------------------------

    async def _settle(self, until: datetime) -> None:
        """Lets everything be done that can be done before `until`."""
        for _ in range(STALLED):
            await self._loop.quiet()
            if await self._bury():
                continue
            wait = self._open_for()
            self._idle = wait is None
            if wait is None:
                return
            step = wait if wait > 5 else self._loop.until_timer() or 0.01
            if self.calendar.now() + timedelta(seconds=step) >= until:
                return
            self._loop.advance(max(step, 0.001))
        self.broken("everything is done some time", f"nothing moves: {self._hanging()}")

    def _open_for(self) -> float | None:
        """Seconds until open work can go on, 0 for now; None when nothing is open."""
        if not self._processes:
            return None
        now = self.machine.now()
        if self.platform.store.unconfirmed():
            held = self.network.held_until - self._loop.time()
            return max(0.0, held)
        waits = [
            (row[0] or 0.0) - now if row[1] == "waiting" else 0.0
            for query in (
                "SELECT next_at, state FROM outbox WHERE state IN ('waiting', 'leased', 'sending')",
                "SELECT lease_until, state FROM inbox WHERE state IN ('waiting', 'leased')",
            )
            for row in self.record.rows(query)
        ]
        return max(0.0, min(waits)) if waits else None

    def _hanging(self) -> list[str]:
        return [
            *(f"{r['key']} {r['state']}" for r in self.record.rows(
                "SELECT key, state FROM outbox WHERE state IN ('waiting', 'leased', 'sending') LIMIT 5")),
            *(f"update {r['update_id']} {r['state']}" for r in self.record.rows(
                "SELECT update_id, state FROM inbox WHERE state IN ('waiting', 'leased') LIMIT 5")),
            f"{self.platform.store.unconfirmed()} unconfirmed",
        ]  # fmt: skip

    def _next(self) -> datetime:
        """When the next thing happens: somebody acts, or something is due."""
        moments = [self._events[0][0]] if self._events else []
        due = self.record.value("SELECT min(at) FROM due")
        if due is not None and self._processes:
            moments.append(instant(due) + timedelta(seconds=self._plan.seed % 7))
        return max(min(moments), self.calendar.now()) if moments else NEVER

    async def lives(self, until: datetime) -> None:
        """Everything that happens before `until`."""
        stalled = 0
        await self._settle(min(until, self._next()))
        while (moment := self._next()) < until:
            stalled = stalled + 1 if moment <= self.calendar.now() else 0
            if stalled > STALLED:
                self.broken("everything is done some time", f"time stands still: {self._hanging()}")
                return
            self._pass((moment - self.calendar.now()).total_seconds())
            await self._one(moment)
            await self._settle(min(until, self._next()))
            self.checks.step()
            if self.found.broken:
                raise Stop
        self._pass((until - self.calendar.now()).total_seconds())
        await self._loop.quiet()  # what became ready on the way is done before anybody looks

    def _pass(self, seconds: float) -> None:
        """Lets time pass. While nothing is open nobody is woken, save now and then; signs of life are renewed."""
        if not self._idle or self._rng.random() < WOKEN:
            self._loop.advance(seconds)
            return
        self._loop.pass_over(seconds)
        if self.shared:
            for process in self._processes:
                name = process.mortal.name
                self.record.change(
                    "UPDATE lease SET until = until + ? WHERE holder = ? AND until > ?",
                    seconds,
                    name,
                    self.machine.now() - seconds,
                )

    async def _one(self, moment: datetime) -> None:
        if self._events and self._events[0][0] <= moment:
            _at, _number, act = heapq.heappop(self._events)
            done = act()
            if asyncio.iscoroutine(done):
                await done
            return
        process = self.somebody()
        if process is not None:
            self._maybe_dies(process, self._plan.rates.crash_in_tick)
            await self._inside(process, process.ticker.tick())

    def _maybe_dies(self, process: Process, share: float) -> None:
        if process.mortal.fuse is None and self.faults.happens("death", share):
            process.mortal.fuse = self._rng.choice((1, 2, 3, 5, 8, 13, 30, 60, 150, 400))

    # --- the story ----------------------------------------------------------------------------------------------------

    async def story(self) -> None:
        """Begins, lives through the days, and ends when all is quiet again."""
        await self._prologue()
        self.faults.quiet = False
        for chat in self.clients:
            self.later(timedelta(hours=self._rng.uniform(0, 24)), self.clients[chat].joins)
        for day in range(self._plan.days):
            self._troubles.of_the_day()
            await self.lives(self.calendar.now() + timedelta(days=1))
            self._count_day()
            self._bring_back()
            if day % 7 == 6:
                await self._compare_digest()
            self._look()
        await self._epilogue()

    async def _prologue(self) -> None:
        self._begin()
        if self.shared:
            self._begin()
        await self._loop.quiet()
        token: list[str] = []

        async def job(session: Any) -> None:
            token.append(await links.new_coach_link(session, self.calendar.now()))

        process = self._processes[0]
        await self._inside(process, process.database.write(job))
        self.coach.begins(token[0])
        await self.lives(self.calendar.now() + timedelta(minutes=10))
        self._look()
        if self.coach.link is None:
            seen = [message.text for message in self.coach.phone.messages.values()]
            raise RuntimeError(f"the coach has no link: {seen}")

    async def _epilogue(self) -> None:
        """Nothing goes wrong any more: what is open must be done."""
        self.faults.quiet = True
        self.network.held_until = self.network.down_until = 0.0
        for process in self._processes:
            process.mortal.fuse = None
        await self.lives(self.calendar.now() + timedelta(hours=30))
        await self._compare_digest()
        self.checks.end()
        self._look()

    async def _compare_digest(self) -> None:
        process = self.somebody()
        if process is None:
            return

        async def job(session: Any) -> None:
            now = self.calendar.now()
            self.found.counts["digest weeks"] += await digests.compare(session, self.record, now, self.broken)

        await self._inside(process, process.database.write(job))

    def _look(self) -> None:
        waiting = {update["update_id"] for update in self.platform.store.updates(10_000)}
        given = FIRST_UPDATE + int(self.platform.store.fact("update") or 0)
        steady = bool(self._processes) and self.calendar.now() - self.steady_since > timedelta(hours=1)
        self.checks.day(given, waiting, FIRST_UPDATE + 1, steady=steady)
        if self.found.broken:
            raise Stop

    def _bring_back(self) -> None:
        """Whoever has no course, as it is finished or they have left, may begin anew."""
        for chat, client in self.clients.items():
            running = (
                "SELECT 1 FROM course c JOIN person p ON p.id = c.person_id WHERE p.chat = ? AND c.ended_at IS NULL"
            )
            if self.record.one(running, chat) is None and self._rng.random() < 0.4:
                self.later(timedelta(hours=self._rng.uniform(0, 20)), client.joins)

    def _count_day(self) -> None:
        running = self.record.value("SELECT count(*) FROM course WHERE state IN ('active', 'waiting')")
        self.found.counts["client-days"] += running
        self.found.counts["days"] += 1


def simulate(plan: Plan, folder: Path) -> Found:
    """One world from its beginning to its end, or to what breaks; `folder` is empty."""
    found = Found(plan.seed)
    asyncio.run(migrate.upgrade(f"sqlite:///{folder / 'easeward.sqlite'}"))

    async def main(loop: StillLoop) -> None:
        world = World(plan, folder, loop, found)
        with errors_heard(world.broken):
            try:
                await world.story()
            except Stop:
                pass
            except Exception as error:
                world.broken("the simulation goes on", f"{error!r} {where(error)}")
            for process in world._processes:
                await process.end()
            await world.network.end()
        world.record.close()
        found.counts["rows"] = world.checks.rows_made
        found.counts["alerts due"] = world.checks.alerts_due
        found.counts["updates"] = int(world.platform.store.fact("update") or 0)
        found.trace, found.digest = list(world._trace), world._digest.hexdigest()

    def problem(error: BaseException) -> None:
        if not isinstance(error, Died | WriterClosed | asyncio.CancelledError):
            found.broken.append(("nothing fails", f"nobody waited for {error!r} {where(error)}"))

    with warnings.catch_warnings():
        warnings.simplefilter("ignore", SAWarning)  # the connections of the dead were never given back
        run(main, problem)
        gc.collect()
    return found
