"""What remains after a course: three short days a week of movements that the client has done, liked and borne well.

Three days a week keep what was gained, one does not (Reid & Kim 2014, NZ J Physiother). Movements, holds and
repetitions are those of the programme's last day that had them, as this client was handed them; loads are left out.
Only the number of sets is new: enough for the dose under which the checker refuses a programme, for every muscle of
the programme that an allowed movement works.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, field, replace
from math import ceil

from plans import dose
from plans.fitting import Fit, fitted
from plans.lint import ENOUGH_A_WEEK, LEAST_A_WEEK, MUCH_A_SESSION, SHORTEST_HOLD
from plans.movements import MovementKind, Muscle, easier_than
from plans.programme import Around, Block, Day, Dose, Item, Programme, Session, Sides, Span
from plans.ranking import Ranked, Ranking, Went

A_WEEK, WEEKS = 3, 4
"""Days a week (Reid & Kim 2014), and weeks that are written out (own choice); it can be begun again."""
LEAST, MOST = 10, 15
"""Minutes of a day with its warm-up (own choice). The least dose comes before them; less where little is left."""
WANTED = 60
"""Seconds of a movement in a session, for each side (ACSM position stand, Garber et al. 2011)."""
NEEDED, ENOUGH = ceil(LEAST_A_WEEK / A_WEEK), ceil(ENOUGH_A_WEEK / A_WEEK)
"""Seconds of a muscle in a session, for each side: under the first the checker refuses, under the second it warns."""
USUAL_SETS, MOST_SETS = 5, 20
"""Sets of a movement to use the time, and to reach the least dose (own choice)."""
WARM_UP = "Walk on the spot for two minutes and move every joint that you will use."


@dataclass(frozen=True, slots=True)
class Upkeep:
    """What is done three times a week, for those muscles of the programme that an allowed movement works."""

    session: Session
    muscles: tuple[Muscle, ...]

    @property
    def minutes(self) -> int:
        """From start to end."""
        return dose.minutes(Day(1, session=self.session))[1]

    @property
    def movements(self) -> tuple[str, ...]:
        """The keys of its movements in order."""
        return tuple(item.movement.key for _block, item in dose.items(self.session))


def upkeep(
    programme: Programme,
    *,
    level: int = 0,
    fit: Fit | None = None,
    ranking: Ranking | None = None,
    favourites: Collection[str] = (),
    warm_up: str = WARM_UP,
) -> Upkeep:
    """The upkeep of a client of this programme, who ends it at an ease level (0-2).

    Each muscle of the programme gets its best movement: a favourite before what went with better mornings, that before
    the rest, and what is held before what is moved. Then more come in as the time allows. What went with worse
    mornings is taken only where there is nothing else. Raises ValueError when no allowed movement works any muscle of
    the programme, or for another level.
    """
    choices = _choices(programme, level, fit or Fit(), ranking, favourites)
    plan = _Plan(choices, warm_up)
    kept = tuple(muscle for muscle in programme.muscles if plan.cover(muscle))
    if not kept:
        raise ValueError(f"{programme.title}: no movement is left for {', '.join(programme.muscles)}")
    plan.shorten(kept)
    plan.fill(kept)
    return Upkeep(plan.session(), kept)


@dataclass(frozen=True, slots=True, eq=False)
class _Choice:
    """A movement that may be taken: one set of it, its place in the programme, and how much speaks for it."""

    item: Item
    place: int
    often: int
    """Days of the programme that have it."""
    seconds: int
    """Of one set for each side."""
    muscles: frozenset[Muscle]
    worse: bool
    favourite: bool
    better: bool
    change: float

    @property
    def held(self) -> bool:
        """Whether it keeps a muscle long."""
        return dose.kind_of(self.item) in dose.HOLDING_KINDS

    @property
    def speaks(self) -> bool:
        """Whether the client likes it, or it went with better mornings."""
        return not self.worse and (self.favourite or self.better)

    @property
    def sets(self) -> int:
        """How many sets make it worth doing."""
        return min(MOST_SETS, ceil(WANTED / self.seconds))

    @property
    def rank(self) -> tuple[bool, bool, bool, bool, float, int, int]:
        """Sorts, the best first; of the rest what is better known."""
        return self.worse, not self.favourite, not self.better, not self.held, self.change, -self.often, self.place


def _choices(
    programme: Programme, level: int, fit: Fit, ranking: Ranking | None, favourites: Collection[str]
) -> tuple[_Choice, ...]:
    """Every movement that the client's own days have, from the last day that has it; the best first."""
    catalogue = programme.catalogue()
    lasting = replace(fit, spares=None, lacks=(), minutes=None)
    items: dict[str, Item] = {}
    often: Counter[str] = Counter()
    for day in programme.days:
        own = fitted(day, level, lasting, catalogue, programme.ages, programme.muscles)
        there = {item.movement.key: item for _block, item in dose.items(own.session) if not item.practice}
        items |= there
        often.update(there.keys())
    liked = {key: [key, *easier_than(key, catalogue)] for key in favourites}
    wanted = {next((near for near in chain if near in items), None) for chain in liked.values()}
    found = (
        _choice(_one_set(item), place, often[key], ranking.of(key) if ranking else None, favourite=key in wanted)
        for place, (key, item) in enumerate(items.items())
    )
    return tuple(sorted((one for one in found if one.seconds and _is_held_enough(one.item)), key=lambda one: one.rank))


def _choice(item: Item, place: int, often: int, ranked: Ranked | None, *, favourite: bool) -> _Choice:
    seconds = dose.muscle_seconds([_day([item])], tuple(MovementKind))
    both = {muscle: min(seconds.get((muscle, side), (0, 0))[0] for side in dose.BOTH) for muscle, _side in seconds}
    least = min((value for value in both.values() if value), default=0)
    went = ranked.went if ranked else Went.TOO_FEW
    return _Choice(
        item=item,
        place=place,
        often=often,
        seconds=least,
        muscles=frozenset(muscle for muscle, value in both.items() if value),
        worse=went is Went.WORSE,
        favourite=favourite,
        better=went is Went.BETTER,
        change=(ranked.change if ranked else None) or 0.0,
    )


def _day(items: Sequence[Item]) -> Day:
    return Day(1, session=Session((Block(tuple(items)),)))


def _one_set(item: Item) -> Item:
    """One set of an item in plain numbers, on both sides alike, without a load and with nothing held meanwhile."""
    one_sided = item.movement.sides or item.side is not Sides.BOTH
    return replace(
        item,
        dose=_plain(item.dose),
        sets=Span(1, 1),
        side=Sides.EACH if one_sided else Sides.BOTH,
        meanwhile=None,
        rest=0,
        build_up=None,
        load=None,
        optional=False,
    )


def _plain(found: Dose) -> Dose:
    """The lower end of every number, for one side; the middle where up to a number was asked for."""
    return replace(
        found,
        reps=_number(found.reps),
        hold=_number(found.hold),
        flow=_number(found.flow),
        steps=_number(found.steps),
        breaths=_number(found.breaths),
    )


def _number(span: Span | None) -> Span | None:
    if span is None:
        return None
    number = (span.low + span.high) // 2 if span.up_to else span.low
    number = max(1, number // 2 if span.total else number)
    return Span(number, number)


def _is_held_enough(item: Item) -> bool:
    """Whether its holds are not too short to be worth anything."""
    holds = item.dose.holds or ((item.dose.hold.low,) if item.dose.hold else ())
    return not holds or max(holds) >= SHORTEST_HOLD


@dataclass(slots=True)
class _Plan:
    """A session as it grows: how many sets of which choices."""

    choices: tuple[_Choice, ...]
    warm_up: str
    sets: dict[_Choice, int] = field(default_factory=dict)

    def cover(self, muscle: Muscle) -> bool:
        """Takes the best movements for a muscle until its dose is reached; whether it is."""
        before = dict(self.sets)
        for choice in self.choices:
            if self._seconds(muscle) >= NEEDED:
                return True
            if muscle in choice.muscles:
                self.sets.setdefault(choice, choice.sets)
        if self._seconds(muscle) >= NEEDED:
            return True
        self.sets = before
        return False

    def shorten(self, muscles: Sequence[Muscle]) -> None:
        """Fewer sets while it takes too long and the least dose allows it, from what is liked least."""
        while self._minutes(self.sets) > MOST:
            for choice in sorted(self.sets, key=lambda one: one.rank, reverse=True):
                less = self.sets | {choice: self.sets[choice] - 1}
                if all(self._seconds(muscle, less) >= NEEDED for muscle in muscles):
                    self.sets = {one: sets for one, sets in less.items() if sets}
                    break
            else:
                return

    def fill(self, muscles: Sequence[Muscle]) -> None:
        """As the time allows: all that speaks for itself, then enough for each muscle, then up to the least time."""
        for choice in self.choices:
            if choice.speaks and choice not in self.sets:
                self._try(choice, choice.sets)
        for muscle in muscles:
            while self._held(muscle) < ENOUGH and self._more(
                [c for c in self.choices if c.held and muscle in c.muscles]
            ):
                pass
        useful = [choice for choice in self.choices if choice.speaks or choice.muscles & set(muscles)]
        while self._minutes(self.sets) < LEAST and self._more(useful):
            pass

    def _more(self, choices: Sequence[_Choice]) -> bool:
        """Takes one more movement, or one more set of one; whether there was any that fits."""
        new = [choice for choice in choices if choice not in self.sets and not choice.worse]
        fewest = sorted((choice for choice in choices if choice in self.sets), key=lambda one: self.sets[one])
        return any(self._try(choice, choice.sets) for choice in new) or any(
            self._try(choice, self.sets[choice] + 1) for choice in fewest if self.sets[choice] < USUAL_SETS
        )

    def _try(self, choice: _Choice, sets: int) -> bool:
        """Takes so many sets, unless the time is over or a muscle gets more than it has any use for."""
        more = self.sets | {choice: sets}
        fits = self._minutes(more) <= MOST and all(self._seconds(m, more) <= MUCH_A_SESSION for m in choice.muscles)
        if fits:
            self.sets = more
        return fits

    def _held(self, muscle: Muscle) -> int:
        found = dose.muscle_seconds([_day(self._items(self.sets))], dose.HOLDING_KINDS)
        return min(found.get((muscle, side), (0, 0))[0] for side in dose.BOTH)

    def _seconds(self, muscle: Muscle, sets: Mapping[_Choice, int] | None = None) -> int:
        """Seconds of a muscle in a session, for the side that gets less."""
        found = dose.muscle_seconds([_day(self._items(self.sets if sets is None else sets))], tuple(MovementKind))
        return min(found.get((muscle, side), (0, 0))[0] for side in dose.BOTH)

    def _minutes(self, sets: Mapping[_Choice, int]) -> int:
        return dose.minutes(Day(1, session=self._session(sets)))[1]

    def session(self) -> Session:
        """The session, in the order of the programme, what is moved before what is held."""
        return self._session(self.sets)

    def _session(self, sets: Mapping[_Choice, int]) -> Session:
        return Session((Block(tuple(self._items(sets))),), warm_up=Around(self.warm_up))

    def _items(self, sets: Mapping[_Choice, int]) -> list[Item]:
        def place(choice: _Choice) -> tuple[bool, int]:
            return choice.held, choice.place

        return [replace(one.item, sets=Span(sets[one], sets[one])) for one in sorted(sets, key=place) if sets[one]]
