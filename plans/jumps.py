"""Steps that come out of nowhere: a load, a harder movement, or half as much again, before the body knows it."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from plans import dose
from plans.findings import Finding, Grade
from plans.movements import Movement, MovementKind, Muscle, easier_than
from plans.programme import Day, Programme

MUCH_MORE = 1.5
"""Half as much again at once (own choice)."""
LEAST_STEP = 60
"""Seconds: a smaller step is never one too far."""
REMEMBERED = 14
"""Days of the programme within which a body remembers how much it did (own choice)."""
STEADY = "Steps that a client can answer for one at a time (common practice; the size is our own choice)"


def jumps(programme: Programme) -> Iterator[Finding]:
    """Every step of a programme that its earlier days do not lead up to."""
    way = _Way(programme.catalogue())
    for day in programme.days:
        if day.session is not None:
            yield from way.loads(day)
            yield from way.movements(day)
            yield from way.amounts(day, programme.muscles)
            way.take(day)


class _Way:
    """What a client has done before a day: movements, their loads, and seconds for each muscle."""

    def __init__(self, catalogue: Mapping[str, Movement]) -> None:
        self._catalogue = catalogue
        self._done: dict[str, Movement] = {}
        self._heaviest: dict[str, float] = {}
        self._seconds: list[tuple[int, Mapping[tuple[Muscle, str], dose.Range]]] = []

    def take(self, day: Day) -> None:
        """Remembers a day as done."""
        for _block, item in dose.items(day.session):
            self._done[item.movement.key] = item.movement
            if item.load is not None and item.load.kilograms is not None:
                key = item.movement.key
                self._heaviest[key] = max(self._heaviest.get(key, 0), item.load.kilograms)
        self._seconds.append((day.number, dose.muscle_seconds([day], dose.HOLDING_KINDS)))

    def loads(self, day: Day) -> Iterator[Finding]:
        """A weight that is much more than the heaviest one before."""
        for _block, item in dose.items(day.session):
            load, before = item.load, self._heaviest.get(item.movement.key)
            if load is None or load.kilograms is None or before is None:
                continue
            if load.kilograms > MUCH_MORE * before:
                what = f"{item.movement.name}: {load.words} after at most {before:g} kg"
                yield Finding(Grade.WARNING, "load-jump", (day.number,), what, STEADY)

    def movements(self, day: Day) -> Iterator[Finding]:
        """A loaded or end-range movement without an easier one earlier, or one that leaves out a rung of its chain."""
        for _block, item in dose.items(day.session):
            movement = item.movement
            if movement.key in self._done or item.practice:
                continue
            chain = list(easier_than(movement.key, self._catalogue))
            known = [rung for rung, key in enumerate(chain) if key in self._done]
            loaded = dose.kind_of(item) is MovementKind.LOADED
            if known and known[0] > 0:
                what = f"{movement.name} comes before {self._catalogue[chain[0]].name}, the step to it"
                yield Finding(Grade.WARNING, "harder-jump", (day.number,), what, STEADY)
            elif not known and (loaded or self._is_end_range(movement)) and not self._is_led_up_to(movement):
                how = "with a load" if loaded else "to the end of its range"
                what = f"{movement.name} {how}, and nothing easier for it on an earlier day"
                yield Finding(Grade.WARNING, "nothing-easier-before", (day.number,), what, STEADY)

    def _is_end_range(self, movement: Movement) -> bool:
        """The last of a chain of at least three."""
        return movement.harder is None and len(list(easier_than(movement.key, self._catalogue))) > 1

    def _is_led_up_to(self, movement: Movement) -> bool:
        """A movement without an easier neighbour: anything unloaded for the same muscles will do."""
        if movement.easier is not None:
            return False
        return any(
            old.kind is not MovementKind.LOADED and set(old.main) & set(movement.main) for old in self._done.values()
        )

    def amounts(self, day: Day, muscles: tuple[Muscle, ...]) -> Iterator[Finding]:
        """Much more for a muscle than on any day that the body remembers."""
        lately = [seconds for number, seconds in self._seconds if day.number - number <= REMEMBERED]
        now = dose.muscle_seconds([day], dose.HOLDING_KINDS)
        for muscle in muscles:
            before = max((_most(seconds, muscle) for seconds in lately), default=0)
            most = _most(now, muscle)
            if before and most >= MUCH_MORE * before and most - before >= LEAST_STEP:
                what = f"{muscle} are held {most} s, after at most {before} s on a day of the two weeks before"
                yield Finding(Grade.WARNING, "dose-jump", (day.number,), what, STEADY)


def _most(seconds: Mapping[tuple[Muscle, str], dose.Range], muscle: Muscle) -> int:
    return max(seconds.get((muscle, side), (0, 0))[1] for side in dose.BOTH)
