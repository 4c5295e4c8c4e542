"""Simulated clients at their telephones: what they read, what they answer, and when."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import dataclass
from datetime import timedelta
from typing import Protocol

from plans.checkin import CheckIn, Completion, Kind, Morning, Place
from plans.rehearsal import Stage
from plans.simulated import NATURES, Body
from tests.simulation.phones import Phone, Seen

Act = Callable[[], None]


class Around(Protocol):
    """What a client needs of the world."""

    def later(self, after: timedelta, act: Act) -> None:
        """Does something after so much time by the calendar."""

    def link(self) -> str | None:
        """A coach's invitation that still has places."""

    def row(self, ledger: int) -> tuple[int | None, int]:
        """Day and ease level of a ledger row."""

    def erase(self, chat: int) -> None:
        """Erases somebody for good."""

    def count(self, fault: str) -> None:
        """Counts something that people do and that a program must bear."""


@dataclass(frozen=True, slots=True)
class Habit:
    """How somebody uses their telephone; shares of cases."""

    name: str
    answers: float = 0.95
    late: float = 0.05
    """Answers a day or more late."""
    words: float = 0.1
    """Answers in words instead of taps."""
    corrects: float = 0.03
    twice: float = 0.02
    """Taps twice."""
    stray: float = 0.0
    """Does something of no use, once for each message."""
    pain: float = 0.01
    """Reports something grave."""
    leaves: float = 0.002
    """Stops, blocks or is erased, once for each message."""
    travels: float = 0.01


HABITS = (
    Habit("tidy"),
    Habit("chaotic", answers=0.8, late=0.2, words=0.25, corrects=0.15, twice=0.15, stray=0.25, pain=0.05, leaves=0.01,
          travels=0.05),
    Habit("in pain", pain=0.2, words=0.3),
    Habit("quiet", answers=0.15, leaves=0.004),
    Habit("leaving", leaves=0.08),
)  # fmt: skip
SHARES = (5, 2, 2, 1, 0)
"""How many of each there are; who only comes and goes is for single questions."""

GRAVE = (
    "sharp pain 6 in my left knee",
    "heard a pop in my calf",
    "pain 9",
    "tingling in my foot, still there",
    "I cannot feel my leg",
    "chest pain",
    "numb toes, gone now",
    "pain 7 both sides",
    "my calf is swollen and warm",
    "unbearable",
)
WORDS = (
    "done", "done 3", "no pain", "pain 7", "sore both sides", "not today, ill", "well again", "thanks",
    "part of it, no time", "7", "12 cm", "0", "-3", "it is worse", "settled", "what now?", "no strap here",
    "last year I had a pop", "/today", "/help", "/settings", "sharp pain 2", "I am pregnant", "see you", "/progress",
    "/shorter", "/shorter 10", "/lighter", "/away", "/away 3", "/measure", "/how", "/privacy", "go on", "too hard",
)  # fmt: skip
CITIES = ("Lisbon", "New York", "Auckland", "Honolulu", "Kathmandu", "Apia", "London", "Tokyo", "Sao Paulo")


class Client:
    """Somebody with a body, a habit and a telephone."""

    def __init__(self, around: Around, phone: Phone, habit: Habit, stage: Stage, rng: random.Random) -> None:
        self._around = around
        self.phone = phone
        self.habit = habit
        self._stage = stage
        self._rng = rng
        self._body = Body(rng.choice(NATURES), rng, stage.first)
        self._plans: dict[int, CheckIn] = {}
        self._mornings: dict[int, Morning | None] = {}
        self._date = 0
        self.erased = False

    def joins(self) -> None:
        """Opens a link, if there is one."""
        link = self._around.link()
        if link is None:
            self._around.later(timedelta(hours=6), self.joins)
        else:
            self.phone.says(f"/start {link}")

    def hears(self, message: Seen) -> None:
        """A message came or was changed; what follows comes after a while."""
        if self._chance(self.habit.leaves):
            self._later(1, 600, self._leaves)
        if self._chance(self.habit.stray):
            self._later(1, 900, self._strays)
        if self._chance(self.habit.travels / 4):
            self._later(10, 900, self._travels)
        if self._chance(self.habit.late):
            self._later(18 * 60, 60 * 60, lambda: self._reads(message.id))
        else:
            self._later(0.1, 90, lambda: self._reads(message.id))

    def _chance(self, share: float) -> bool:
        return self._rng.random() < share

    def _later(self, low: float, high: float, act: Act) -> None:
        """After some minutes."""
        self._around.later(timedelta(minutes=self._rng.uniform(low, high)), act)

    # --- reading and answering ----------------------------------------------------------------------------------------

    def _reads(self, number: int) -> None:
        message = self.phone.messages.get(number)
        if message is None or self.phone.blocked:
            return
        if "Which city" in message.text:
            self.phone.says(self._rng.choice(CITIES[:2] if self.habit.name == "tidy" else CITIES))
            return
        data = self._choice(message)
        if data is None:
            return
        self.phone.taps(message, data)
        if self._chance(self.habit.twice):
            self._around.count("tapped twice")
            self.phone.taps(message, data)

    def _choice(self, message: Seen) -> str | None:
        """Which of a message's buttons is tapped; None for none of them."""
        for beginning, choose in (
            ("join:", self._joins), ("screen:", self._screened), ("zone:", self._any), ("time:", self._any),
            ("begin:", self._any), ("m:", self._morning), ("well:", self._comes_back), ("today:", self._any),
            ("c:", self._checkin),
        ):  # fmt: skip
            offered = message.offers(beginning)
            if offered:
                return choose(offered)
        return None

    def _any(self, offered: list[str]) -> str | None:
        return self._rng.choice(offered)

    def _joins(self, offered: list[str]) -> str | None:
        return offered[0] if self._chance(0.97) else offered[-1]

    def _screened(self, offered: list[str]) -> str | None:
        by_value = {data.rpartition(":")[2]: data for data in offered}
        if self._chance(0.03):
            return self._rng.choice(offered)
        for value in ("adult", "none", str(self._body.nature.usual)):
            if value in by_value:
                return by_value[value]
        return by_value.get("yes" if offered[0].split(":")[2] == "active" else "no", offered[0])

    def _comes_back(self, offered: list[str]) -> str | None:
        self._later(60 * 24, 60 * 24 * 6, lambda: self.phone.says("well again"))
        return None

    def _morning(self, offered: list[str]) -> str | None:
        row = int(offered[0].split(":")[1])
        if row not in self._mornings:
            self._sleeps()
            self._mornings[row] = self._body.says_this_morning() if not self._chance(self.habit.pain) else Morning.WORSE
        said = self._mornings[row]
        return next((data for data in offered if data.endswith(f":{said}")), None) if said else None

    def _checkin(self, offered: list[str]) -> str | None:
        row, actions = int(offered[0].split(":")[1]), {data.split(":")[2] for data in offered}
        plan = self._plan(row)
        if "all" in actions or "some" in actions:
            return self._first(row, plan)
        for ask in ("flag", "half", "why", "kind", "place", "area", "pain", "tight"):
            if ask in actions:
                return self._answer(row, ask, plan, offered)
        if "fix" in actions and self._chance(self.habit.corrects):
            self._plans.pop(row, None)
            return f"c:{row}:fix"
        return None

    def _first(self, row: int, plan: CheckIn) -> str | None:
        if plan == CheckIn():
            return None
        if self._chance(self.habit.pain):
            if self._chance(0.5):
                self.phone.says(self._rng.choice(GRAVE))
                return None
            return f"c:{row}:odd"
        if self._chance(self.habit.words):
            self.phone.says(_in_words(plan))
            return None
        if plan.completion is Completion.DONE:
            return f"c:{row}:all" if plan.pain == 0 else f"c:{row}:some"
        return f"c:{row}:part" if plan.completion is Completion.PART else f"c:{row}:none"

    def _answer(self, row: int, ask: str, plan: CheckIn, offered: list[str]) -> str | None:
        """The answer to one question; somebody in pain answers at random, and gravely."""
        these = [data for data in offered if data.startswith(f"c:{row}:{ask}:")]
        wanted = {
            "half": "yes" if plan.half else "no", "why": plan.why, "kind": plan.kind, "pain": plan.pain,
            "place": "here-both" if plan.place is Place.HERE else None, "tight": plan.tightness,
        }.get(ask)  # fmt: skip
        found = next((data for data in these if data.endswith(f":{wanted}")), None) if wanted is not None else None
        if ask == "tight":
            return found
        if found is None or self._chance(self.habit.pain):
            return self._rng.choice(these) if these and not (ask == "pain" and self._chance(0.3)) else None
        return found

    def _plan(self, row: int) -> CheckIn:
        """What is going to be said of a row, drawn once."""
        if row not in self._plans:
            self._sleeps()
            day, level = self._around.row(row)
            asked = self._stage.asked.get((day or 1, level)) or self._stage.asked[1, 0]
            drawn = self._body.trains(asked, self._date)
            self._plans[row] = drawn if self._chance(self.habit.answers) else CheckIn()
        return self._plans[row]

    def _sleeps(self) -> None:
        self._date += 1
        self._body.sleeps()

    # --- of no use ----------------------------------------------------------------------------------------------------

    def _strays(self) -> None:
        """A tap on anything, a word about anything."""
        seen = [message for message in self.phone.newest() if message.buttons]
        if seen and self._chance(0.6):
            message = self._rng.choice(seen[:12])
            self._around.count("old button tapped")
            self.phone.taps(message, self._rng.choice(message.buttons)[1])
        else:
            self.phone.says(self._rng.choice(WORDS))

    def _travels(self) -> None:
        self._around.count("zone changed")
        self.phone.says("/settings")
        self._later(0.5, 3, lambda: self._taps_newest("settings:"))
        self._later(4, 6, lambda: self.phone.says(self._rng.choice((*CITIES, "7:15", "5 am", "23:30"))))

    def _taps_newest(self, beginning: str) -> None:
        for message in self.phone.newest():
            offered = message.offers(beginning)
            if offered:
                self.phone.taps(message, self._rng.choice(offered))
                return

    def _leaves(self) -> None:
        """Stops, or blocks; most come back."""
        way = self._rng.random()
        if way < 0.4:
            self.phone.says("stop")
            self._later(0.5, 30, lambda: self._taps_newest("stop:"))
            self._later(60 * 24, 60 * 24 * 5, self.joins)
        elif way < 0.85 and not self.phone.blocked:
            self._around.count("blocked")
            self.phone.blocks(True)
            self._later(10, 60 * 24 * 4, self._unblocks)
        elif way >= 0.85:
            self._around.erase(self.phone.chat)
            self._later(60 * 24, 60 * 24 * 3, self.joins)

    def _unblocks(self) -> None:
        if self.phone.blocked:
            self.phone.blocks(False)
            if self._chance(0.5):
                self._later(1, 600, lambda: self.phone.says("/today"))


def _in_words(said: CheckIn) -> str:
    """A check-in as somebody types it."""
    if said.completion is Completion.NONE:
        return "not today, no time"
    first = "done" if said.completion is Completion.DONE else "part of it, no time, half or more"
    sharp = "sharp " if said.kind is Kind.SHARP else ""
    return first if said.pain is None else f"{first}, {sharp}pain {said.pain}"
