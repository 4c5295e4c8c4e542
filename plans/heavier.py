"""Whether a coming day is heavier than what a client last did clean, both compared as written.

Sessions often take turns, so each movement is compared with the last clean day that had it, and the whole day with the
fullest of the recent clean days.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import NamedTuple

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
    """What is compared of a day: its movements, their loads, the seconds of work for each, and of all together."""

    movements: Mapping[str, Movement]
    loads: Mapping[str, list[Load | None]]
    work: Mapping[str, int]
    whole: int
    is_loaded: bool


def _facts_of(day: Day) -> _Facts:
    loads: dict[str, list[Load | None]] = {}
    for _block, item in items(day.session):
        loads.setdefault(item.movement.key, []).append(item.load)
    moves = {item.movement.key: item.movement for _block, item in items(day.session)}
    work = work_seconds(day)
    is_loaded = any(load is not None for some in loads.values() for load in some)
    return _Facts(moves, loads, work, sum(work.values()), is_loaded)


def is_heavier(day: Day, clean: Sequence[Day], known: Collection[str]) -> bool:
    """Whether a day has a movement not in `known`, more load, a harder neighbour, or half as much dose again.

    `clean` are the days lately done clean, oldest first; without one there is nothing to be heavier than.
    """
    if not clean:
        return False
    return not movements_of(day) <= set(known) or _is_more(_facts_of(day), [_facts_of(old) for old in clean])


def _is_more(now: _Facts, clean: Sequence[_Facts]) -> bool:
    lately = _lately(now, clean)
    return _more_load(now, lately) or _harder_neighbour(now, lately, clean) or _much_more(now, lately, clean)


Lately = Mapping[str, _Facts]
"""For the movements of a day the last of the clean days that had each; new ones are left out."""


def _lately(now: _Facts, clean: Sequence[_Facts]) -> Lately:
    found: dict[str, _Facts] = {}
    missing = set(now.movements)
    for old in reversed(clean):
        if not missing:
            break
        met = missing & old.movements.keys()
        found.update(dict.fromkeys(met, old))
        missing -= met
    return found


def _more_load(now: _Facts, lately: Lately) -> bool:
    if not now.is_loaded:
        return False
    return any(
        load is not None and _is_more_than(load, lately[key].loads[key] if key in lately else [])
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


def _harder_neighbour(now: _Facts, lately: Lately, clean: Sequence[_Facts]) -> bool:
    new = now.movements.keys() - lately.keys()
    if not new:
        return False
    done: dict[str, Movement] = {}
    for old in clean:
        done.update(old.movements)
    every = library().with_own([*done.values(), *now.movements.values()])
    return any(harder in new for key in done for harder in harder_than(key, every))


def _much_more(now: _Facts, lately: Lately, clean: Sequence[_Facts]) -> bool:
    fullest = max([old.whole for old in clean], default=0)
    if fullest and now.whole >= MUCH_MORE * fullest:
        return True
    return any(now.work[key] >= MUCH_MORE * old.work[key] > 0 for key, old in lately.items())


class Heaviness:
    """One programme's answer to "is the next session day heavier?", each part of it worked out once."""

    def __init__(self, programme: Programme) -> None:
        self._facts = {day.number: _facts_of(day) for day in programme.days}
        self._next = {
            number: next((day.number for day in programme.days[number:] if day.kind == "session"), None)
            for number in range(len(programme.days) + 1)
        }
        days: dict[str, set[int]] = {}
        for number, facts in self._facts.items():
            for key in facts.movements:
                days.setdefault(key, set()).add(number)
        self._days_with = {key: frozenset(numbers) for key, numbers in days.items()}
        self._to_be_met = cache(self._meetings)
        self._is_more = lru_cache(maxsize=20_000)(self._compared)
        self._is_heavier = lru_cache(maxsize=20_000)(self._met_or_compared)

    def next_is_heavier(self, day: int, clean: tuple[int, ...], known: frozenset[int]) -> bool:
        """Whether the session day after `day` is heavier than the days `clean`, oldest first, of those `known`."""
        coming = self._next.get(day)
        if coming is None:
            return False
        if not clean:
            clean, known = (day,), known | {day}
        return self._is_heavier(coming, clean, known)

    def _met_or_compared(self, coming: int, clean: tuple[int, ...], known: frozenset[int]) -> bool:
        if any(days.isdisjoint(known) for days in self._to_be_met(coming)):
            return True
        return self._is_more(coming, clean)

    def _meetings(self, coming: int) -> list[frozenset[int]]:
        """For each movement of a day the days that have it; one of each must be known, or the movement is new.

        Days that hold all of another movement's are left out: whoever knows one of these knows one of them.
        """
        having = {self._days_with[key] for key in self._facts[coming].movements}
        return [days for days in having if not any(others < days for others in having)]

    def _compared(self, coming: int, clean: tuple[int, ...]) -> bool:
        return _is_more(self._facts[coming], [self._facts[number] for number in clean])


@lru_cache(maxsize=64)
def heaviness(programme: Programme) -> Heaviness:
    """The programme's heavier days, kept as long as it is in use."""
    return Heaviness(programme)


class More(NamedTuple):
    """What of a day is more than what was last done clean: names of new movements, and what else."""

    new: tuple[str, ...]
    load: bool
    harder: bool
    dose: bool

    @property
    def is_any(self) -> bool:
        """Whether the day is heavier at all."""
        return bool(self.new) or self.load or self.harder or self.dose


def more_of(day: Day, clean: Sequence[Day], known: Collection[str]) -> More:
    """In what a day is heavier, by the same comparison as `is_heavier`; `known` are keys of movements."""
    now, old = _facts_of(day), [_facts_of(one) for one in clean]
    new = tuple(movement.name for key, movement in now.movements.items() if key not in known)
    if not clean:
        return More(new, load=False, harder=False, dose=False)
    lately = _lately(now, old)
    return More(new, _more_load(now, lately), _harder_neighbour(now, lately, old), _much_more(now, lately, old))
