"""Which clients need their coach first, and why: one client's reasons, the most urgent first."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from enum import IntEnum

from plans.comparing import Figure
from plans.silence import SHORT
from plans.trends import Direction, Trend


class Why(IntEnum):
    """Why a client needs a look; an earlier one is more urgent."""

    WAITING = 0
    """Nothing is sent until the coach lets go on."""
    ALERT = 1
    """Something that the coach was told at once, and that is still open."""
    UNREACHABLE = 2
    """Messages do not arrive."""
    PAIN_RISES = 3
    SILENT = 4
    """No word for three mornings or more."""
    LISTED = 5
    """Something of the morning list of this week that is still open."""
    TEST_WORSE = 6
    """A new test is worse than the first by more than its error."""
    LESS_DONE = 7
    """Surely less done in four weeks than in the four before."""
    TIGHTNESS_RISES = 8
    FINISHED = 9
    """Through with the programme: what is kept up?"""

    @property
    def word(self) -> str:
        """The reason's name in lower case, with hyphens."""
        return self.name.lower().replace("_", "-")


Facts = Mapping[str, int | float | str | bool]


@dataclass(frozen=True, slots=True)
class Need:
    """One reason with its numbers; of two alike the one with the greater `weight` comes first."""

    why: Why
    facts: Facts = field(default_factory=dict)
    weight: float = 0.0


@dataclass(frozen=True, slots=True)
class Told:
    """An open alert: its cause and numbers, whether it was told at once, and whether it is of this week."""

    cause: str
    facts: Facts
    at_once: bool
    new: bool


@dataclass(frozen=True, slots=True)
class Standing:
    """What is known of one client. `worse` are the names of new tests that are worse than their error."""

    waiting: bool
    finished: bool
    """In this week."""
    reachable: bool
    silent: int
    told: Sequence[Told]
    pain: Trend
    tightness: Trend
    completion: Figure
    worse: Sequence[str] = ()


MUCH = 0.5
"""Points in four weeks below which a rise is no reason to look (own choice)."""
SAID_ANYWAY = frozenset({"silent", "unreachable"})
"""Causes of alerts that are reasons of their own here."""


def needs(client: Standing) -> tuple[Need, ...]:
    """Everything for which a client needs a look, the most urgent first; nothing for most."""
    return tuple(sorted(_needs(client), key=lambda need: (need.why, -need.weight)))


def named(needs: Sequence[Need], most: int) -> list[Need]:
    """The first reasons, one of each kind: what stands behind waiting and what was told at once is mostly one event."""
    found: dict[Why, Need] = {}
    for need in needs:
        found.setdefault(Why.WAITING if need.why is Why.ALERT else need.why, need)
    return list(found.values())[:most]


def first(needs: Sequence[Need]) -> tuple[int, float, int]:
    """Sorts clients who need something: by their most urgent reason, its weight, and how many they have."""
    return needs[0].why, -needs[0].weight, -len(needs)


def _needs(client: Standing) -> Iterator[Need]:
    told = sorted(
        (one for one in client.told if one.cause not in SAID_ANYWAY), key=lambda one: (not one.at_once, -_pain(one))
    )
    if client.waiting:
        yield Need(Why.WAITING, _facts(told[0]) if told else {})
        told = told[1:]
    for one in told:
        if one.at_once or one.new:
            yield Need(Why.ALERT if one.at_once else Why.LISTED, _facts(one), _pain(one))
    if client.finished:
        yield Need(Why.FINISHED)
    if not client.reachable:
        yield Need(Why.UNREACHABLE)
    elif client.silent >= SHORT and not client.waiting:
        yield Need(Why.SILENT, {"mornings": client.silent}, client.silent)
    yield from (Need(Why.TEST_WORSE, {"test": name}) for name in client.worse)
    yield from _changes(client)


def _changes(client: Standing) -> Iterator[Need]:
    if client.completion.month_step.surely < 0:
        rate, before = client.completion.month, client.completion.before
        facts = {"now": round(100 * rate.most), "before": round(100 * before.least)}
        yield Need(Why.LESS_DONE, facts, before.least - rate.most)
    for why, trend in ((Why.PAIN_RISES, client.pain), (Why.TIGHTNESS_RISES, client.tightness)):
        if trend.direction is Direction.RISING and trend.change is not None and trend.change >= MUCH:
            yield Need(why, {"change": round(trend.change, 1), "answers": trend.answers}, trend.change)


def _facts(one: Told) -> Facts:
    return {"cause": one.cause, **one.facts}


def _pain(one: Told) -> float:
    """The pain in an alert's numbers; a red flag is above all of them."""
    pain = one.facts.get("pain")
    return 11.0 if "flag" in one.cause else float(pain) if isinstance(pain, int) else 0.0
