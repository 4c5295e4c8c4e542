"""The program broken on purpose in one small way each, to see that the simulation notices: an invariant that never
fails holds nothing."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Mapping
from contextlib import AbstractContextManager
from dataclasses import dataclass, replace
from datetime import date, time, timedelta
from pathlib import Path
from typing import Any
from unittest.mock import patch

from bot.flows import calling, checkin, day, leaving, telling, times
from bot.sending import Sender
from db import courses, delivery, inbox, outbox, tidying
from db.courses import CourseState
from db.delivery import Kind, Next, Reason, State
from db.letters import Letter
from plans import weekly
from tests.simulation.faults import NONE, Rates, Trouble
from tests.simulation.world import Plan, simulate

Broken = AbstractContextManager[Any]


@dataclass(frozen=True, slots=True)
class Mutant:
    """One way to break the program, what it breaks, and under which troubles that shows."""

    breaks: Callable[[], Broken]
    invariants: frozenset[str]
    rates: Rates = NONE
    days: int = 8
    habit: str | None = None


def _put(place: Any, name: str, other: Any) -> Callable[[], Broken]:
    """Another function in the place of one; it is given the real one first."""
    real = getattr(place, name)

    def instead(*given: Any, **named: Any) -> Any:
        return other(real, *given, **named)

    return lambda: patch.object(place, name, instead)


async def _nothing(_real: Any, *_given: Any, **_named: Any) -> Any:
    return 0


# --- delivery -------------------------------------------------------------------------------------------------------


def _again(real: Callable[..., Next], failure: Any, *, kind: Kind, attempts: int, **more: Any) -> Next:
    """A session whose answer was lost is sent again."""
    if failure.reason is Reason.ANSWER_LOST and kind is Kind.SESSION:
        return Next(State.WAITING, why="again", pause=1.0)
    return real(failure, kind=kind, attempts=attempts, **more)


async def _unmarked(_real: Any, sender: Sender, letter: Letter) -> bool:
    """A message leaves without having been marked."""
    return True


async def _unskipped(real: Callable[..., Awaitable[int]], session: Any, **named: Any) -> int:
    """What is to be skipped is sent all the same."""
    return await real(session, **(named | {"skipped": None}))


async def _unnoticed(_real: Any, session: Any, update_id: int, worker: str) -> bool:
    """An update is handled and not marked as handled."""
    return True


async def _some_lost(real: Callable[..., Awaitable[int]], session: Any, updates: Any, now: Any) -> int:
    """Some updates are not stored, and the platform is told that they are."""
    return await real(session, [one for one in updates if one["update_id"] % 10 != 7], now)


def _silently(_real: Any, payload: Any) -> Any:
    """A repeated alert says nothing of it."""
    return dict(payload)


# --- the ledger -----------------------------------------------------------------------------------------------------


def _twice(real: Callable[..., None], row: Any, course: Any, decision: Any) -> None:
    """A verdict that advances takes two days more."""
    before = course.day
    real(row, course, decision)
    if course.day > before:
        course.day += 3


async def _at_once(
    real: Callable[..., Awaitable[None]], desk: Any, person: Any, course: Any, *rest: Any, **named: Any
) -> None:
    """An answer moves the course when it comes, besides when the next row is made."""
    await real(desk, person, course, *rest, **named)
    course.day += 1


async def _a_date_less(real: Callable[..., Awaitable[date]], desk: Any, person: Any, course: Any) -> date:
    """Fridays get no row."""
    found = await real(desk, person, course)
    return found + timedelta(days=1) if found.weekday() == 4 else found


async def _goes_on(
    real: Callable[..., Awaitable[None]], desk: Any, person: Any, course: Any, *rest: Any, **named: Any
) -> None:
    """The next morning lets a waiting course go on."""
    if course.state == CourseState.WAITING:
        course.state = CourseState.ACTIVE
    await real(desk, person, course, *rest, **named)


async def _unstopped(real: Callable[..., Awaitable[None]], desk: Any, person: Any, course: Any, *rest: Any) -> None:
    """Whoever is referred keeps the course running."""
    await real(desk, person, course, *rest)
    course.state = CourseState.ACTIVE


async def _still_due(real: Callable[..., Awaitable[None]], desk: Any, person: Any, course: Any) -> None:
    """Who stops keeps a running course."""
    running = course.state in courses.OPEN
    await real(desk, person, course)
    if running and course.starts_on is not None:
        desk.session.add(_waiting_session(person, desk.now))


def _of_those_who_speak(real: Callable[..., Any], rows: Any) -> Any:
    """Sessions without an answer are counted as if they had not come."""
    return real([row for row in rows if row.checkin.completion is not None])


def _waiting_session(person: Any, now: Any) -> Any:
    from db.schema import Outbox

    return Outbox(key=f"session:{person.id}:{now.date()}:late", chat=person.chat, lane=2, kind="session", made_at=now,
                  method="send_message", payload={"text": "Day"}, state="waiting", attempts=0, next_at=0.0)  # fmt: skip


LOSING = replace(NONE, requests={Trouble.LOST: 0.4})
DYING = replace(NONE, crash=6.0)
CAREFUL = frozenset(("everything is done some time", "nothing fails", "the program goes on"))
"""What may break first when nothing goes on."""

MUTANTS: Mapping[str, Mutant] = {
    "a lost session is sent again": Mutant(
        _put(outbox, "after_failure", _again), frozenset({"one session a date", "never sent twice"}), LOSING
    ),
    "nothing is marked before it leaves": Mutant(
        _put(Sender, "_may_leave", _unmarked), frozenset({"marked before it leaves"})
    ),
    "a block is forgotten": Mutant(
        _put(outbox, "put", _unskipped), frozenset({"nothing after a block"}), days=10, habit="leaving"
    ),
    "handled is not written down": Mutant(
        _put(inbox, "handled", _unnoticed), frozenset({"each answer counts once"}) | CAREFUL
    ),
    "some updates are dropped": Mutant(_put(inbox, "store", _some_lost), frozenset({"no answer is lost"})),
    "a repeated alert does not say so": Mutant(
        _put(delivery, "as_repeat", _silently), frozenset({"a repeated alert says so"}), LOSING, habit="in pain"
    ),
    "dead workers' messages stay": Mutant(
        _put(tidying, "recover", _nothing), frozenset({"nobody sends forever"}) | CAREFUL, DYING
    ),
    "nudges come at night": Mutant(
        lambda: patch.multiple(times, NUDGE=time(23), QUIET=time(23, 59)),
        frozenset({"no nudge in quiet hours"}),
        habit="quiet",
    ),
    "a session waits behind a stop": Mutant(
        _put(leaving, "stop", _still_due), frozenset({"nothing after stop"}), days=18, habit="leaving"
    ),
    "a verdict moves too far": Mutant(_put(courses, "fill_row", _twice), frozenset({"a verdict moves once"})),
    "an answer moves at once": Mutant(_put(checkin, "change", _at_once), frozenset({"a verdict moves once"})),
    "a date is left out": Mutant(_put(day, "_next_date", _a_date_less), frozenset({"each date has its row"})),
    "no morning is planned": Mutant(_put(day, "plan_next", _nothing), frozenset({"a morning is always planned"})),
    "waiting ends by itself": Mutant(
        _put(day, "make", _goes_on), frozenset({"only the coach lets go on"}), habit="in pain"
    ),
    "a referral stops nothing": Mutant(
        _put(checkin, "refer", _unstopped), frozenset({"pain stops the course"}), habit="in pain"
    ),
    "pain is kept from the coach": Mutant(
        _put(telling, "tell", _nothing), frozenset({"pain is told"}), habit="in pain"
    ),
    "an alert is not sent": Mutant(
        _put(calling, "call", _nothing), frozenset({"an alert reaches the coach"}), habit="in pain"
    ),
    "a digest leaves out who is silent": Mutant(
        _put(weekly, "week_of", _of_those_who_speak), frozenset({"the digest is the ledger"}), habit="quiet"
    ),
    "answers are not kept": Mutant(_put(courses, "note_answer", _nothing), frozenset({"a check-in is its answers"})),
}
"""By what is wrong with it."""

SEEDS = 4
"""So many worlds at most until what is broken shows."""


def is_seen(mutant: Mutant, seed: int, folder: Path) -> bool:
    """Whether a world of the broken program breaks the invariants that it must break."""
    plan = Plan(
        seed,
        days=mutant.days,
        clients=3,
        shared=False,
        rates=mutant.rates,
        programme="rowing-club",
        habit=mutant.habit,
    )
    with mutant.breaks():
        found = simulate(plan, folder)
    return bool({invariant for invariant, _what in found.broken} & mutant.invariants)
