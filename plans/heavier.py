"""Whether a coming day is heavier than what a client last did clean, both compared as written.

Sessions often take turns, so each movement is compared with the last clean day that had it, and the whole day with the
fullest of the recent clean days.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from functools import lru_cache

from plans.dose import items, work_seconds
from plans.movements import harder_than, library
from plans.programme import Day, Load, Own, Programme

MUCH_MORE = 1.5
"""Half as much again is heavier."""


def movements_of(day: Day) -> frozenset[str]:
    """The keys of a day's movements."""
    return frozenset(item.movement.key for _block, item in items(day.session))


def is_heavier(day: Day, clean: Sequence[Day], known: Collection[str]) -> bool:
    """Whether a day has a movement not in `known`, more load, a harder neighbour, or half as much dose again.

    `clean` are the days lately done clean, oldest first; without one there is nothing to be heavier than.
    """
    if not clean:
        return False
    return (
        not movements_of(day) <= set(known)
        or _more_load(day, clean)
        or _harder_neighbour(day, clean)
        or _much_more(day, clean)
    )


def _loads(day: Day) -> Mapping[str, list[Load | None]]:
    found: dict[str, list[Load | None]] = {}
    for _block, item in items(day.session):
        found.setdefault(item.movement.key, []).append(item.load)
    return found


def _more_load(day: Day, clean: Sequence[Day]) -> bool:
    before: dict[str, list[Load | None]] = {}
    for old in clean:
        before.update(_loads(old))
    return any(
        load is not None and _is_more(load, before.get(key, [])) for key, loads in _loads(day).items() for load in loads
    )


def _is_more(load: Load, before: Sequence[Load | None]) -> bool:
    """Kilograms are compared; words that were not used before may mean more, so they count as more."""
    if load.kilograms is not None:
        weighed = [old.kilograms for old in before if old is not None and old.kilograms is not None]
        return load.kilograms > max(weighed, default=0)
    if load.own is not None:
        return load.own is Own.MORE
    words = (load.words or "").lower()
    return words not in {(old.words or "").lower() for old in before if old is not None}


def _harder_neighbour(day: Day, clean: Sequence[Day]) -> bool:
    every = library().with_own(item.movement for each in (day, *clean) for _block, item in items(each.session))
    done = frozenset[str]().union(*(movements_of(old) for old in clean))
    new = movements_of(day) - done
    return any(harder in new for key in done for harder in harder_than(key, every))


def _much_more(day: Day, clean: Sequence[Day]) -> bool:
    now = work_seconds(day)
    before: dict[str, int] = {}
    fullest = 0
    for old in clean:
        work = work_seconds(old)
        before.update(work)
        fullest = max(fullest, sum(work.values()))
    if fullest and sum(now.values()) >= MUCH_MORE * fullest:
        return True
    return any(now[key] >= MUCH_MORE * before[key] for key in now.keys() & before.keys() if before[key])


class Heaviness:
    """One programme's answer to "is the next session day heavier?", each worked out once."""

    def __init__(self, programme: Programme) -> None:
        self._programme = programme
        self._moves = {day.number: movements_of(day) for day in programme.days}
        self._next = {
            number: next((day.number for day in programme.days[number:] if day.kind == "session"), None)
            for number in range(len(programme.days) + 1)
        }
        self._known: dict[tuple[int, tuple[int, ...], frozenset[int]], bool] = {}

    def next_is_heavier(self, day: int, clean: tuple[int, ...], known: frozenset[int]) -> bool:
        """Whether the session day after `day` is heavier than the days `clean`, oldest first; `known` were done."""
        coming = self._next.get(day)
        if coming is None:
            return False
        key = (coming, clean or (day,), known)
        found = self._known.get(key)
        if found is None:
            found = self._known[key] = self._work_out(*key)
        return found

    def _work_out(self, coming: int, clean: tuple[int, ...], known: frozenset[int]) -> bool:
        days = [self._programme.day(number) for number in clean]
        moves = frozenset[str]().union(*(self._moves[number] for number in (*known, *clean)))
        return is_heavier(self._programme.day(coming), days, moves)


@lru_cache(maxsize=64)
def heaviness(programme: Programme) -> Heaviness:
    """The programme's heavier days, kept as long as it is in use."""
    return Heaviness(programme)
