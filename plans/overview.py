"""A programme at a glance: for each week its days, minutes, rounds, loads, and seconds for each target muscle."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from plans import dose
from plans.lint import weeks
from plans.movements import MovementKind, Muscle
from plans.programme import Day, Programme


@dataclass(frozen=True, slots=True)
class Week:
    """One week: its day numbers, how many are sessions, and ranges of what they bring."""

    days: tuple[int, ...]
    sessions: int
    minutes: dose.Range
    """Of one session, shortest and longest."""
    rounds: int
    """The most that any of its blocks is done."""
    loads: Mapping[str, float]
    """For each movement by name the heaviest weight in kilograms."""
    seconds: dose.ByKind
    """For each target muscle, side and kind."""

    def held(self, muscle: Muscle, side: str) -> dose.Range:
        """Seconds for one side of a muscle of all kinds that keep it long."""
        return self._of(muscle, side, dose.HOLDING_KINDS)

    def moved(self, muscle: Muscle, side: str) -> dose.Range:
        """Seconds for one side of a muscle of moving and control work."""
        return self._of(muscle, side, frozenset(MovementKind) - dose.HOLDING_KINDS)

    def _of(self, muscle: Muscle, side: str, kinds: Collection[MovementKind]) -> dose.Range:
        found = [
            seconds for (m, s, kind), seconds in self.seconds.items() if (m, s) == (muscle, side) and kind in kinds
        ]
        return sum(low for low, _high in found), sum(high for _low, high in found)

    def as_json(self) -> dict[str, object]:
        """The week as documented JSON."""
        muscles: dict[str, dict[str, dict[str, list[int]]]] = {}
        for (muscle, side, kind), seconds in sorted(self.seconds.items()):
            muscles.setdefault(muscle, {}).setdefault(side, {})[kind] = list(seconds)
        return {
            "days": list(self.days),
            "sessions": self.sessions,
            "minutes": list(self.minutes),
            "rounds": self.rounds,
            "loads": dict(self.loads),
            "seconds": muscles,
        }


def overview(programme: Programme) -> list[Week]:
    """The weeks of a programme."""
    return [_week(days, programme.muscles) for days in weeks(programme)]


def day_seconds(day: Day, muscle: Muscle, side: str) -> Mapping[MovementKind, dose.Range]:
    """Seconds of each kind for one side of a muscle in a day."""
    return {kind: seconds for (m, s, kind), seconds in dose.by_kind(day).items() if (m, s) == (muscle, side)}


def _week(days: Sequence[Day], muscles: Sequence[Muscle]) -> Week:
    sessions = [day for day in days if day.session is not None]
    lengths = [dose.minutes(day) for day in sessions]
    total: dict[tuple[Muscle, str, MovementKind], dose.Range] = {}
    loads: dict[str, float] = {}
    rounds = 0
    for day in sessions:
        for key, (low, high) in dose.by_kind(day).items():
            if key[0] in muscles:
                before = total.get(key, (0, 0))
                total[key] = before[0] + low, before[1] + high
        for block, item in dose.items(day.session):
            rounds = max(rounds, dose.rounds_of(block)[1])
            if item.load is not None and item.load.kilograms is not None:
                loads[item.movement.name] = max(loads.get(item.movement.name, 0), item.load.kilograms)
    shortest = min((low for low, _high in lengths), default=0)
    longest = max((high for _low, high in lengths), default=0)
    return Week(tuple(day.number for day in days), len(sessions), (shortest, longest), rounds, loads, total)
