"""Whether a coming day is heavier than what a client last did clean, both compared as written.

Sessions often take turns, so each movement is compared with the last clean day that had it, and the whole day with the
fullest of the recent clean days.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

from plans.dose import items, work_seconds
from plans.movements import Movement, harder_than, library
from plans.programme import Day, Load, Own, Programme

MUCH_MORE = 1.5
"""Half as much again is heavier."""


def movements_of(day: Day) -> frozenset[str]:
    """The keys of a day's movements."""
    return frozenset(item.movement.key for _block, item in items(day.session))


@dataclass(frozen=True, slots=True)
class _Facts:
    """What is compared of a day: its movements, their loads, and the seconds of work for each."""

    movements: Mapping[str, Movement]
    loads: Mapping[str, list[Load | None]]
    work: Mapping[str, int]

    @property
    def whole(self) -> int:
        """Seconds of work of all movements."""
        return sum(self.work.values())


def _facts_of(day: Day) -> _Facts:
    loads: dict[str, list[Load | None]] = {}
    for _block, item in items(day.session):
        loads.setdefault(item.movement.key, []).append(item.load)
    moves = {item.movement.key: item.movement for _block, item in items(day.session)}
    return _Facts(moves, loads, work_seconds(day))


def is_heavier(day: Day, clean: Sequence[Day], known: Collection[str]) -> bool:
    """Whether a day has a movement not in `known`, more load, a harder neighbour, or half as much dose again.

    `clean` are the days lately done clean, oldest first; without one there is nothing to be heavier than.
    """
    if not clean:
        return False
    return not movements_of(day) <= set(known) or _is_more(_facts_of(day), [_facts_of(old) for old in clean])


def _is_more(now: _Facts, clean: Sequence[_Facts]) -> bool:
    return _more_load(now, clean) or _harder_neighbour(now, clean) or _much_more(now, clean)


def _more_load(now: _Facts, clean: Sequence[_Facts]) -> bool:
    before: dict[str, list[Load | None]] = {}
    for old in clean:
        before.update(old.loads)
    return any(
        load is not None and _is_more_than(load, before.get(key, []))
        for key, loads in now.loads.items()
        for load in loads
    )


def _is_more_than(load: Load, before: Sequence[Load | None]) -> bool:
    """Kilograms are compared; words that were not used before may mean more, so they count as more."""
    if load.kilograms is not None:
        weighed = [old.kilograms for old in before if old is not None and old.kilograms is not None]
        return load.kilograms > max(weighed, default=0)
    if load.own is not None:
        return load.own is Own.MORE
    words = (load.words or "").lower()
    return words not in {(old.words or "").lower() for old in before if old is not None}


def _harder_neighbour(now: _Facts, clean: Sequence[_Facts]) -> bool:
    done: dict[str, Movement] = {}
    for old in clean:
        done.update(old.movements)
    new = now.movements.keys() - done.keys()
    if not new:
        return False
    every = library().with_own([*done.values(), *now.movements.values()])
    return any(harder in new for key in done for harder in harder_than(key, every))


def _much_more(now: _Facts, clean: Sequence[_Facts]) -> bool:
    before: dict[str, int] = {}
    fullest = 0
    for old in clean:
        before.update(old.work)
        fullest = max(fullest, old.whole)
    if fullest and now.whole >= MUCH_MORE * fullest:
        return True
    return any(now.work[key] >= MUCH_MORE * before[key] for key in now.work.keys() & before.keys() if before[key])


class Heaviness:
    """One programme's answer to "is the next session day heavier?", each part of it worked out once."""

    def __init__(self, programme: Programme) -> None:
        self._facts = {day.number: _facts_of(day) for day in programme.days}
        self._next = {
            number: next((day.number for day in programme.days[number:] if day.kind == "session"), None)
            for number in range(len(programme.days) + 1)
        }
        self._new: dict[tuple[int, frozenset[int], int], bool] = {}
        self._more: dict[tuple[int, tuple[int, ...]], bool] = {}

    def next_is_heavier(self, day: int, clean: tuple[int, ...], known: frozenset[int]) -> bool:
        """Whether the session day after `day` is heavier than the days `clean`, oldest first; `known` were done."""
        coming = self._next.get(day)
        if coming is None:
            return False
        clean = clean or (day,)
        new = self._new.get((coming, known, clean[-1]))
        if new is None:
            new = self._new[coming, known, clean[-1]] = self._has_new(coming, {*known, clean[-1]})
        if new:
            return True
        more = self._more.get((coming, clean))
        if more is None:
            compared = [self._facts[number] for number in clean]
            more = self._more[coming, clean] = _is_more(self._facts[coming], compared)
        return more

    def _has_new(self, coming: int, known: Collection[int]) -> bool:
        """Whether a day has a movement that none of the known days had; what was done clean was done."""
        return not self._facts[coming].movements.keys() <= {key for day in known for key in self._facts[day].movements}


@lru_cache(maxsize=64)
def heaviness(programme: Programme) -> Heaviness:
    """The programme's heavier days, kept as long as it is in use."""
    return Heaviness(programme)
