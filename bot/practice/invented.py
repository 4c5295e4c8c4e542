"""The people of an invented group: who they are, when they come and go, and what each answers.

Their bodies are the rehearsal's (`plans/simulated.py`); their names are made of syllables, and how they use the chat is
this program's own invention, so that a coach's lists have somebody in every state. Nothing here knows the chat: what is
open goes in, what they do comes out. The same number gives the same group.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import cycle, islice

from bot.practice.manners import PLAIN, Act, Asked, Say
from plans.checkin import CheckIn, Completion, Morning, Place
from plans.measures import MEASURES
from plans.simulated import Asked as Load
from plans.simulated import Body, Nature, natures

DATES = 43
"""Six weeks and the Monday on which the coach's digest tells of the last one."""
MOST = 300
"""People in one group: so many names there are."""
SEED = 1
FIRST_CHAT = 3001
ROWING, WALKING, PLAYING = "rowing-club.yaml", "hill-walkers.yaml", "pit-musicians.yaml"
TOGETHER_FROM = 21
"""The date, counted from the first, on which those who walk begin together."""
CITIES = ("Lisbon", "Lisbon", "Berlin", "Athens", "Lisbon", "New York")
_BEGINNINGS = ("Ba", "Do", "Fe", "Gi", "Ha", "Je", "Ka", "Li", "Mo", "Ne", "Pa", "Ro", "Su", "Te", "Wi")
_ENDINGS = ("brin", "lo", "mar", "ruk", "ven", "dal", "si", "tho", "nek", "pola", "gur", "fi", "rast", "wen", "zo")
_MIDDLES = ("", "na")


class Turn(StrEnum):
    """Something that happens to one of them on their way."""

    NONE = "none"
    SILENT = "silent"
    BLOCKS = "blocks"
    STOPS = "stops"
    HALF_JOINED = "half joined"
    AWAY = "away"
    ILL = "ill"
    ASKS = "asks"
    GRAVE = "grave"
    SORE = "sore"


_TURNS = (
    *(Turn.NONE, Turn.ASKS, Turn.NONE, Turn.SILENT, Turn.NONE, Turn.NONE, Turn.GRAVE, Turn.NONE, Turn.NONE, Turn.AWAY),
    *(Turn.NONE, Turn.HALF_JOINED, Turn.NONE, Turn.NONE, Turn.SORE, Turn.STOPS, Turn.NONE, Turn.ASKS, Turn.NONE),
    *(Turn.ILL, Turn.NONE, Turn.BLOCKS, Turn.NONE, Turn.NONE, Turn.SILENT, Turn.NONE, Turn.ASKS, Turn.NONE),
    *(Turn.NONE, Turn.NONE),
)
"""Of every thirty."""
WORDS = {
    Turn.STOPS: "stop",
    Turn.AWAY: "/away 5",
    Turn.ILL: "not today, ill",
    Turn.ASKS: "which mat should I buy for this?",
    Turn.GRAVE: "tingling in my left foot since yesterday, still there",
    Turn.SORE: "pain 6 in the back of both legs",
}
"""What they type then."""
_WHEN = {Turn.GRAVE: DATES - 1, Turn.SORE: DATES - 2, Turn.AWAY: DATES - 2, Turn.ILL: DATES - 2, Turn.ASKS: DATES - 1}
"""On which date; anybody else some weeks after the beginning."""


@dataclass(frozen=True, slots=True)
class Member:
    """One of the group. Dates are counted from the group's first, 0."""

    chat: int
    name: str
    programme: str
    """The sample that they follow."""
    nature: Nature
    city: str
    joins_on: int
    turn: Turn
    turns_on: int
    late: float
    """How often they answer in the evening only."""
    language: str = "en"
    """As their program tells the bot when they come."""


def group(count: int, seed: int = SEED) -> list[Member]:
    """So many people. Raises ValueError for fewer than 1 or more than there are names.

    >>> [(one.name, one.programme) for one in group(3)]
    [('Babrin', 'rowing-club.yaml'), ('Dolo', 'rowing-club.yaml'), ('Femar', 'rowing-club.yaml')]
    """
    if not 1 <= count <= MOST:
        raise ValueError(f"a group has 1 to {MOST} people, not {count}")
    rng = random.Random(seed)
    return [
        _member(number, nature, turn, rng)
        for number, (nature, turn) in enumerate(zip(natures(count, rng), islice(cycle(_TURNS), count), strict=True))
    ]


def _member(number: int, nature: Nature, turn: Turn, rng: random.Random) -> Member:
    programme = (ROWING, ROWING, ROWING, WALKING, ROWING, ROWING, PLAYING, ROWING, WALKING, ROWING)[number % 10]
    joins = {WALKING: TOGETHER_FROM - rng.randint(1, 4), PLAYING: 0}.get(programme, rng.choice((0, 0, 7, 14, 21, 28)))
    if turn is Turn.HALF_JOINED:
        joins = DATES - 3
    elif turn in _WHEN and programme == ROWING:
        joins = 21
    elif number < 3:
        joins = 0
    turns_on = _WHEN.get(turn, min(DATES - 5, max(joins, TOGETHER_FROM) + rng.randint(8, 16)))
    return Member(
        FIRST_CHAT + number,
        name_of(number),
        programme,
        nature,
        CITIES[number % len(CITIES)],
        joins,
        turn,
        turns_on,
        rng.choice((0.1, 0.3, 0.8)),
    )


def name_of(number: int) -> str:
    """A name that nobody has, of 300.

    >>> len({name_of(number) for number in range(MOST)})
    300
    """
    shift, place = divmod(number, len(_BEGINNINGS))
    middle, shift = divmod(shift, len(_ENDINGS))
    return _BEGINNINGS[place] + _MIDDLES[middle] + _ENDINGS[(place + shift) % len(_ENDINGS)]


# --- living -----------------------------------------------------------------------------------------------------------

_FIRST_TESTS = {"fingertip-to-floor": 14.0, "sit-and-reach": 18.0, "knee-to-wall": 7.0, "back-scratch": -6.0}


@dataclass(frozen=True, slots=True)
class Row:
    """What a client got on their newest date."""

    id: int
    load: Load | None
    """What its session asks; None on other days."""
    test: str | None
    """The test that is asked for and not taken yet."""


class Life:
    """One of the group on their way: what they feel and what they do next."""

    def __init__(self, member: Member, seed: int = SEED) -> None:
        self.member = member
        self._rng = random.Random(f"{seed}:{member.chat}")
        self._body = Body(member.nature, self._rng, 900.0)
        self._reach = self._rng.uniform(0.7, 1.3)
        self._grows = self._rng.uniform(0.0, 0.12)
        self._date = -1
        self._row: int | None = None
        self._said = CheckIn()
        self._morning: Morning | None = None
        self.is_late = False
        """Whether today's answer comes in the evening."""
        self.spoke = False
        """Whether what happens to them has been said."""

    def wakes(self, date: int) -> None:
        """Another date begins."""
        if date < self.member.joins_on:
            return
        self._date = date
        self._body.sleeps()
        self._row = None
        self._morning = self._body.says_this_morning()
        self.is_late = self._rng.random() < self.member.late

    @property
    def is_silent(self) -> bool:
        """Whether they answer nothing any more."""
        member = self.member
        return member.turn in (Turn.SILENT, Turn.BLOCKS) and self._date >= member.turns_on

    def says(self) -> Say | None:
        """What they type of themselves today, once."""
        member = self.member
        if self.spoke or member.turn not in WORDS or self._date != member.turns_on:
            return None
        self.spoke = True
        return Say(WORDS[member.turn])

    def answers(self, question: Asked, row: Row | None) -> Act | None:
        """What they answer to an open question; None for nothing."""
        if self.is_silent or (self.member.turn is Turn.HALF_JOINED and question.name == "screen-active"):
            return None
        if question.name in ("session", *_OF_A_SESSION) and row is not None:
            return self._of_a_session(question, row)
        if question.name == "morning":
            return question.tap(self._morning) if self._morning is not None else None
        plain = {"screen-usual": str(self.member.nature.usual)}.get(question.name, PLAIN.get(question.name, ""))
        return question.tap(plain)

    def tries(self, test: str) -> Say | None:
        """Three tries of a test, better with time for most; None for somebody who answers nothing."""
        if self.is_silent or self.member.turn is Turn.HALF_JOINED:
            return None
        found = MEASURES[test]
        start = _FIRST_TESTS.get(test, (found.low + found.high) / 2)
        towards = -1 if found.lower_is_better else 1
        value = start * self._reach + towards * found.mdc * self._grows * max(0, self._date - self.member.joins_on)
        some = [min(found.high, max(found.low, value + self._rng.gauss(0, found.mdc / 6))) for _ in range(3)]
        return Say(", ".join(f"{one:.0f}" for one in some))

    def _of_a_session(self, question: Asked, row: Row) -> Act | None:
        if row.id != self._row:
            self._row = row.id
            self._said = self._body.trains(row.load, self._date) if row.load is not None else CheckIn()
        said = self._said
        wanted = _VALUES[question.name](said)
        if wanted is None or wanted not in question.buttons:
            return None if question.name in _MAY_STAY_OPEN else question.tap(PLAIN.get(question.name, ""))
        return question.tap(wanted)


def _first(said: CheckIn) -> str | None:
    if said.completion is Completion.DONE:
        return "all" if said.pain == 0 else "some"
    return {Completion.PART: "part", Completion.NONE: "none"}.get(said.completion) if said.completion else None


def _place(said: CheckIn) -> str | None:
    return "here-both" if said.place is Place.HERE else None


_VALUES: Mapping[str, Callable[[CheckIn], str | None]] = {
    "session": _first,
    "pain": lambda said: None if said.pain is None else str(said.pain),
    "half": lambda said: "yes" if said.half else "no",
    "why": lambda said: said.why,
    "kind": lambda said: said.kind,
    "place": _place,
    "area": lambda said: None,
    "flag": lambda said: "no",
    "tight": lambda said: None if said.tightness is None else str(said.tightness),
}
_OF_A_SESSION = tuple(name for name in _VALUES if name != "session")
_MAY_STAY_OPEN = ("session", "pain", "tight")


def by_programme(members: Sequence[Member]) -> dict[str, list[Member]]:
    """Who follows which sample, in the order of the samples that are followed."""
    return {name: [one for one in members if one.programme == name] for name in (ROWING, WALKING, PLAYING)}
