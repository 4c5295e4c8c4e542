"""Simulated clients: invented bodies and habits, written down so that anybody can disagree with them.

None of this is evidence. A body has a load that it is used to, and a movement that it does not know asks more of it. A
session far above makes it sore, most on the next day, and soreness fades by about half day after day (Cheung et al.
2003, Sports Med 33:145: it peaks at 24-72 h and is gone by day 5-7). People miss sessions and leave answers out about
as often as studies of such programmes and diaries found (Bailey 2020, Br J Sports Med 54:326; Wrzus & Neubauer 2023).
The kinds of clients and all other numbers are this program's own.
"""

from __future__ import annotations

import random
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache

from plans.checkin import CheckIn, Completion, Kind, Morning, Place, Why

SETTLED_BELOW = 1.0
"""Points of soreness that somebody calls settled."""
WORSE_BY = 0.8
"""Points more than yesterday that somebody calls worse."""
WORTH_SAYING = 1.5
"""Points of soreness below which nobody says a word before the session."""
SPEAKS_UP = 0.6
"""How often somebody who is sore in the morning says so before the session."""
UNKNOWN = (1.8, 1.4, 1.15, 1.0)
"""How much more a movement asks of a body the first, second and third time, and from then on."""
KNOWN = len(UNKNOWN) - 1
ADAPTS, FORGETS = 0.18, 0.012
"""How much of a done load becomes habit, and how much of the habit a date without training takes."""
DELAYED = 0.75
"""The share of a session's soreness that comes on the next day."""


@dataclass(frozen=True, slots=True)
class Nature:
    """One kind of client. Rates are for one session; loads are in shares of what the body is used to."""

    name: str
    share: float
    """Of a mixed group."""
    misses: float
    cuts_short: float
    answers: float
    """The pain number in the evening; one in three of the others never comes."""
    margin: float = 1.3
    """A load up to so many times the habit makes nothing sore."""
    tender: float = 3.0
    """Points of soreness for a load at twice the margin."""
    fades: float = 0.5
    """What is left of a soreness on the next day."""
    usual: int = 0
    """What the area always feels like."""
    adds: float = 1.0
    """How much of the asked load is done."""
    hurts: float = 0.0012
    """Rate of something sharp."""
    tight: float = 3.0


NATURES = (
    Nature("steady", 0.32, misses=0.12, cuts_short=0.03, answers=0.93),
    Nature("stiff", 0.16, misses=0.15, cuts_short=0.05, answers=0.9, margin=1.15, tender=3.5, tight=6),
    Nature("eager", 0.14, misses=0.04, cuts_short=0.01, answers=0.95, adds=1.25),
    Nature("busy", 0.16, misses=0.4, cuts_short=0.15, answers=0.8),
    Nature("sore-prone", 0.1, misses=0.15, cuts_short=0.05, answers=0.9, margin=1.0, tender=4.5, fades=0.6),
    Nature("always a bit sore", 0.09, misses=0.15, cuts_short=0.05, answers=0.9, usual=3),
    Nature("hurt", 0.03, misses=0.15, cuts_short=0.05, answers=0.9, hurts=0.025),
)


def natures(count: int, rng: random.Random) -> list[Nature]:
    """So many clients of all kinds by their shares, in a random order."""
    found = [nature for nature in NATURES for _ in range(round(nature.share * count))]
    while len(found) < count:
        found.append(NATURES[0])
    del found[count:]
    rng.shuffle(found)
    return found


@dataclass(frozen=True, slots=True)
class Asked:
    """What a session asks: seconds of work for each of its movements by key, and of all together."""

    parts: tuple[tuple[str, int], ...]
    movements: frozenset[str]
    work: float

    @classmethod
    def of(cls, work: Mapping[str, int]) -> Asked:
        """The same from seconds by key."""
        return cls(tuple(work.items()), frozenset(work), float(sum(work.values())))


_SILENT, _LEFT_OUT = CheckIn(), CheckIn(Completion.NONE, why=Why.TIME)
_SHARP, _DULL = Kind.SHARP, Kind.DULL_BOTH


@cache
def _said(short: bool, half: bool, pain: int | None, kind: Kind | None, tightness: int | None) -> CheckIn:
    return CheckIn(
        completion=Completion.PART if short else Completion.DONE,
        pain=pain,
        kind=kind,
        place=Place.HERE if kind else None,
        why=Why.TIME if short else None,
        half=half if short else None,
        tightness=tightness,
    )


@cache
def _reported(pain: int) -> CheckIn:
    return CheckIn(pain=pain, kind=Kind.DULL_BOTH, place=Place.HERE, odd=True)


def _on_the_scale(felt: float) -> int:
    return min(10, round(felt)) if felt > 0 else 0


class Body:
    """One simulated client: what a day does to them, and what they say of it. Loads are seconds of work."""

    __slots__ = (
        "_before",
        "_known",
        "_margin",
        "_pending",
        "_tender",
        "_times",
        "habit",
        "nature",
        "rng",
        "sharp_until",
        "sore",
    )

    def __init__(self, nature: Nature, rng: random.Random, habit: float) -> None:
        self.nature = nature
        self.rng = rng
        spread = rng.uniform(0.85, 1.2)
        self.habit = habit * rng.uniform(0.9, 1.5)
        """Seconds of work that the body is used to."""
        self.sore = 0.0
        self.sharp_until = -1
        """The date, counted from the start, until which something sharp hurts."""
        self._margin = nature.margin * spread
        self._tender = nature.tender / spread
        self._before = self._pending = 0.0
        self._times: dict[str, int] = {}
        self._known: set[str] = set()

    def sleeps(self) -> None:
        """A night: the delayed part of the soreness comes, the rest fades, and habit with it when nothing is done."""
        self._before = self.sore
        self.sore = self.sore * self.nature.fades + self._pending
        self._pending = 0.0
        self.habit *= 1 - FORGETS

    @property
    def is_sorer(self) -> bool:
        """Whether this morning is worse than last evening, whatever is said of it."""
        return self.sore > self._before + WORSE_BY

    def trains(self, session: Asked, date: int) -> CheckIn:
        """A session that was handed out: done or not, and what is said of it."""
        draw, nature = self.rng.random, self.nature
        if draw() < nature.misses:
            return _LEFT_OUT if draw() < 0.5 else _SILENT
        short = draw() < nature.cuts_short
        half = short and draw() < 0.6
        done = self._load(session) * nature.adds * (0.3 if short and not half else 0.6 if short else 1.0)
        hurt = self._is_hurt(done, date)
        pain: int | None = self._pain(hurt)
        kind = _SHARP if hurt else (_DULL if self.sore >= 1 and draw() < 0.7 else None)
        if draw() > nature.answers and draw() < 0.35:
            pain, kind = None, None
        tight: int | None = None
        if draw() < 0.4:
            tight = _on_the_scale(nature.tight + self.sore * 0.5 + self.rng.gauss(0, 1))
        return _said(short, half, pain, kind, tight)

    def _load(self, session: Asked) -> float:
        """Seconds that a session is for this body; what it knows asks less."""
        if session.movements <= self._known:
            return session.work
        load, times = 0.0, self._times
        for movement, seconds in session.parts:
            before = times.get(movement, 0)
            load += seconds * UNKNOWN[before]
            if before < KNOWN:
                times[movement] = before + 1
                if before + 1 == KNOWN:
                    self._known.add(movement)
        return load

    def _is_hurt(self, done: float, date: int) -> bool:
        """What a load does to the body, and whether something sharp is there."""
        excess = done / (self.habit * self._margin) - 1
        if excess > 0:
            comes = self._tender * min(excess, 2.0) * self.rng.uniform(0.6, 1.4)
            self.sore += (1 - DELAYED) * comes
            self._pending += DELAYED * comes
        self.habit += ADAPTS * (done - self.habit) if done > self.habit else 0.03 * (done - self.habit)
        risk = self.nature.hurts * (1 + 4 * max(0.0, excess))
        if date > self.sharp_until and self.rng.random() < risk:
            self.sharp_until = date + self.rng.randint(4, 14)
        return date <= self.sharp_until

    def _pain(self, hurt: bool) -> int:
        felt = self.nature.usual + self.sore + self.rng.gauss(0, 0.6)
        if hurt:
            felt += self.rng.uniform(2.5, 6)
        return _on_the_scale(felt)

    def reports_first(self) -> CheckIn | None:
        """What is said before a session that was handed out; None when there is nothing worth saying."""
        if self.sore < WORTH_SAYING:
            return None
        felt = round(self.nature.usual + self.sore)
        if felt < 3 or felt <= self.nature.usual + 1 or self.rng.random() > SPEAKS_UP:
            return None
        return _reported(min(10, felt))

    def says_this_morning(self) -> Morning | None:
        """The answer to "how is it now?"; None when it stays away."""
        if self.rng.random() > max(0.75, self.nature.answers):
            return None
        if self.sore < SETTLED_BELOW:
            return Morning.SETTLED
        return Morning.WORSE if self.is_sorer else Morning.SAME
