"""Whether a coming day is heavier than what a client last did clean, both compared as written."""

from __future__ import annotations

from collections.abc import Collection, Mapping

from plans.dose import items, work_seconds
from plans.movements import harder_than, library
from plans.programme import Day, Load

MUCH_MORE = 1.5
"""Half as much again is heavier."""


def movements_of(day: Day) -> frozenset[str]:
    """The keys of a day's movements."""
    return frozenset(item.movement.key for _block, item in items(day.session))


def is_heavier(day: Day, clean: Day | None, known: Collection[str]) -> bool:
    """Whether a day has a movement not in `known`, more load, a harder neighbour, or half as much dose again.

    `clean` is the day last done clean; without one there is nothing to be heavier than.
    """
    if clean is None:
        return False
    return (
        not movements_of(day) <= set(known)
        or _more_load(day, clean)
        or _harder_neighbour(day, clean)
        or _much_more(work_seconds(day), work_seconds(clean))
    )


def _loads(day: Day) -> Mapping[str, list[Load]]:
    found: dict[str, list[Load]] = {}
    for _block, item in items(day.session):
        found.setdefault(item.movement.key, [])
        if item.load is not None:
            found[item.movement.key].append(item.load)
    return found


def _more_load(day: Day, clean: Day) -> bool:
    before = _loads(clean)
    for key, loads in _loads(day).items():
        if key not in before:
            continue
        if loads and not before[key]:
            return True
        heaviest = max((load.kilograms or 0 for load in loads), default=0)
        if heaviest > max((load.kilograms or 0 for load in before[key]), default=0):
            return True
    return False


def _harder_neighbour(day: Day, clean: Day) -> bool:
    new = movements_of(day) - movements_of(clean)
    return any(harder in new for key in movements_of(clean) for harder in harder_than(key, library()))


def _much_more(now: Mapping[str, int], before: Mapping[str, int]) -> bool:
    whole = sum(before.values())
    if whole and sum(now.values()) >= MUCH_MORE * whole:
        return True
    return any(now[key] >= MUCH_MORE * before[key] for key in now.keys() & before.keys() if before[key])
