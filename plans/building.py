"""From a checked file to plain days: repeated days written out, what changes over the weeks looked up for each day."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from typing import Any, TypeVar

from plans.allowed import near
from plans.changing import Changing
from plans.movements import Described, Movement, Variation, library
from plans.nodes import Path
from plans.programme import (
    ONCE,
    WEEK,
    Around,
    Block,
    Day,
    Dose,
    Item,
    LastHold,
    Link,
    Load,
    MeasureTask,
    Programme,
    Session,
)
from plans.written import (
    MOST_DAYS,
    WrittenAround,
    WrittenBlock,
    WrittenDay,
    WrittenItem,
    WrittenLastHold,
    WrittenLink,
    WrittenMeanwhile,
    WrittenProgramme,
    WrittenSession,
)

T = TypeVar("T")
Report = Callable[[Path, str, str, "str | None", str], None]
"""Takes a problem: where, what was found, what is allowed, a likely spelling, its code."""


@dataclass(frozen=True, slots=True)
class _Entry:
    """One day of the programme: what was written for it, and the session that it has with the place of that."""

    written: WrittenDay
    place: Path
    session: WrittenSession | None
    session_place: Path = ()


def build(written: WrittenProgramme, digest: str, report: Report) -> Programme:
    """The programme of a file. What does not hang together is reported; the result is only good without a report."""
    return _Builder(written, report).programme(digest)


class _Builder:
    def __init__(self, written: WrittenProgramme, report: Report) -> None:
        self._written = written
        self._report = report
        self._own = {key: own.keyed(key) for key, own in written.movements.items()}
        self._movements = library().with_own(self._own.values())
        self._week = written.training_days.count if written.training_days else WEEK
        self._sessions: dict[Path, Session] = {}

    def programme(self, digest: str) -> Programme:
        written = self._written
        self._check_neighbours()
        self._check_figures()
        self._check_measures()
        entries = self._entries()
        self._check_unused(entries)
        return Programme(
            title=written.title,
            goal=written.goal,
            who_for=written.who_for,
            setting=written.setting,
            led_by=written.led_by,
            language=written.language,
            muscles=written.muscles,
            ages=written.ages,
            days=tuple(self._day(number, entry) for number, entry in enumerate(entries, start=1)),
            digest=digest,
            cautions=written.cautions,
            equipment=written.equipment,
            measures=written.measures,
            pace=written.pace,
            training=written.training_days,
            company=written.company,
            supervised=written.supervised,
            motivation=written.motivation,
            besides=written.besides,
            settings=written.settings.plain(),
            movements=tuple(self._own.values()),
            texts=written.texts,
        )

    # --- days that repeat others --------------------------------------------------------------------------------

    def _entries(self) -> list[_Entry]:
        found: list[_Entry] = []
        for index, day in enumerate(self._written.days):
            place: Path = ("days", index)
            for _again in range(day.times):
                if len(found) >= MOST_DAYS:
                    self._report(place, f"more than {MOST_DAYS} days", f"at most {MOST_DAYS} days", None, "too-long")
                    return found
                found += self._repeated(day, place, found) if day.as_days else [self._entry(day, place, found)]
        return found[:MOST_DAYS]

    def _repeated(self, day: WrittenDay, place: Path, before: list[_Entry]) -> list[_Entry]:
        """Earlier days once more, as they are but for their measures."""
        first, last = (int(number) for number in re.split(r"\s*[-–]\s*", str(day.as_days)))
        if not 1 <= first <= last <= len(before):
            allowed = f"earlier days, the smaller number first; before it there are {_days(len(before))}"
            self._report((*place, "as-days"), str(day.as_days), allowed, None, "as-days")
            return []
        bare = (replace_measure(entry) for entry in before[first - 1 : last])
        return [entry for entry in bare if entry is not None]

    def _entry(self, day: WrittenDay, place: Path, before: list[_Entry]) -> _Entry:
        if day.as_day is not None:
            earlier = before[day.as_day - 1] if day.as_day <= len(before) else None
            if earlier is None or earlier.session is None:
                allowed = "the number of an earlier day that has a session"
                self._report((*place, "as-day"), str(day.as_day), allowed, None, "as-day")
                return _Entry(day, place, None)
            return _Entry(day, place, earlier.session, earlier.session_place)
        if isinstance(day.session, str):
            known = self._written.sessions
            if day.session not in known:
                allowed = f"one of the sessions of this file: {', '.join(known)}" if known else "a session"
                spelling = near(day.session, list(known))
                self._report((*place, "session"), repr(day.session), allowed, spelling, "unknown-session")
                return _Entry(day, place, None)
            return _Entry(day, place, known[day.session], ("sessions", day.session))
        return _Entry(day, place, day.session, (*place, "session"))

    def _day(self, number: int, entry: _Entry) -> Day:
        day, test = entry.written, entry.written.measure
        return Day(
            number=number,
            title=day.title,
            text=day.rest if day.rest is not None else day.text,
            session=self._session(entry.session, entry.session_place, number) if entry.session else None,
            measure=MeasureTask(test.which, test.trials, test.warm_up, test.photo) if test is not None else None,
            caution=day.caution,
            link=_link(day.link),
        )

    # --- what a session is on a day -----------------------------------------------------------------------------

    def _session(self, written: WrittenSession, place: Path, day: int) -> Session:
        blocks = [
            built
            for index, block in enumerate(written.blocks)
            if block.is_there(day, self._week)
            and (built := self._block(block, (*place, "blocks", index), day)) is not None
        ]
        if not blocks:
            self._report((*place, "blocks"), f"nothing for day {day}", "an item for every day", None, "empty-day")
        return Session(tuple(blocks), written.focus, _around(written.warm_up), _around(written.cool_down))

    def _block(self, written: WrittenBlock, place: Path, day: int) -> Block | None:
        there = [(i, item) for i, item in enumerate(written.items) if item.is_there(day, self._week)]
        if not there:
            return None
        rounds, time = written.rounds, written.time
        return Block(
            items=tuple(self._item(item, (*place, "items", i), day) for i, item in there),
            rounds=self._at(rounds, day, ONCE),
            time=self._at(time, day),
            rest=self._at(written.rest, day, 0),
            change=written.change,
            title=written.title,
            optional=written.optional,
        )

    def _at(self, value: Changing[Any] | None, day: int, otherwise: Any = None) -> Any:
        """What a changing value is on a day; before its first one it is not there yet."""
        if value is None:
            return otherwise
        try:
            return value.at(day, self._week)
        except LookupError:
            return otherwise

    def _item(self, written: WrittenItem, place: Path, day: int) -> Item:
        def at(value: Changing[Any] | None, otherwise: Any = None) -> Any:
            return self._at(value, day, otherwise)

        movement = self._movement_on(written, place, day)
        load: Load | None = at(written.load)
        hold = at(written.hold)
        dose = Dose(
            reps=at(written.reps),
            hold=None if isinstance(hold, tuple) else hold,
            holds=hold if isinstance(hold, tuple) else (),
            squeeze=at(written.squeeze),
            contract=at(written.contract),
            relax=at(written.relax),
            last_hold=_last_hold(at(written.last_hold)),
            flow=at(written.flow),
            steps=at(written.steps),
            breaths=at(written.breaths),
        )
        if (lacking := _lacking(dose)) is not None:
            self._report(place, f"on day {day} {lacking[0]}", lacking[1], None, "no-dose")
        return Item(
            movement=movement,
            dose=dose,
            sets=at(written.sets, ONCE),
            side=written.side,
            meanwhile=self._meanwhile(written, movement, place),
            rest=at(written.rest, 0),
            effort=at(written.effort),
            stop=at(written.stop),
            build_up=written.build_up,
            load=replace(load, held=written.held) if load is not None else None,
            variation=self._variation(at(written.variation), movement, written, place),
            stance=at(written.stance),
            grip=at(written.grip),
            cue=at(written.cue),
            equipment=written.equipment,
            link=_link(written.link),
            practice=written.practice,
            optional=written.optional,
        )

    def _movement_on(self, written: WrittenItem, place: Path, day: int) -> Movement:
        try:
            key = written.movement.at(day, self._week)
        except LookupError as missing:
            allowed = "a movement from the first day on that has the item; or say from when the item is there"
            self._report((*place, "movement"), f"nothing for day {day}: {missing}", allowed, None, "too-late")
            key = next(written.movement.values())[1]
        return self._movement(key, (*place, "movement", *_words(written.movement, key)))

    def _movement(self, key: str, place: Path) -> Movement:
        found = self._movements.get(key)
        if found is None:
            known = sorted(self._movements)
            allowed = "a movement of the library or of this file"
            self._report(place, repr(key), allowed, near(key, known), "unknown-movement")
            return self._movements[known[0]]
        return found

    def _meanwhile(self, written: WrittenItem, movement: Movement, place: Path) -> Movement | None:
        other = written.other_side
        if isinstance(other, WrittenMeanwhile):
            return self._movement(other.movement, (*place, "other-side", "movement"))
        return movement if other is not None else None

    def _variation(self, name: str | None, movement: Movement, written: WrittenItem, place: Path) -> Variation | None:
        if name is None or written.variation is None:
            return None
        names = {variation.name.lower(): variation for variation in movement.variations}
        if name.lower() not in names:
            there = ", ".join(variation.name for variation in movement.variations)
            allowed = (
                f"a variation of {movement.name}: {there}" if there else f"none: {movement.name} has no variations"
            )
            spot = (*place, "variation", *_words(written.variation, name))
            self._report(
                spot,
                repr(name),
                f"{allowed}; or say it with stance or grip",
                near(name, list(names)),
                "unknown-variation",
            )
            return None
        return names[name.lower()]

    # --- what must hang together ----------------------------------------------------------------------------------

    def _check_measures(self) -> None:
        for index, day in enumerate(self._written.days):
            if day.measure and self._written.measures and day.measure.which not in self._written.measures:
                allowed = f"one of the measures of this file: {', '.join(self._written.measures)}"
                self._report(
                    ("days", index, "measure", "which"), repr(day.measure.which), allowed, None, "other-measure"
                )

    def _check_unused(self, entries: list[_Entry]) -> None:
        """A session that no day has was probably forgotten, or its name misspelt."""
        used = {entry.session_place for entry in entries}
        for name in self._written.sessions:
            if ("sessions", name) not in used:
                allowed = "a session that a day names"
                self._report(("sessions", name), f"{name!r}, which no day has", allowed, None, "unused-session")

    def _check_neighbours(self) -> None:
        known = sorted(self._movements)
        for key, own in self._written.movements.items():
            for word in ("easier", "harder"):
                neighbour = getattr(own, word)
                if neighbour is None:
                    continue
                place: Path = ("movements", key, word)
                if neighbour not in self._movements:
                    allowed = "a movement of the library or of this file"
                    self._report(place, repr(neighbour), allowed, near(neighbour, known), "unknown-movement")
                elif _comes_round(key, word, self._movements):
                    allowed = f"a chain that ends: nothing is {word} than itself"
                    self._report(place, f"a way back to {key!r}", allowed, None, "comes-round")

    def _check_figures(self) -> None:
        """A pose that no body takes; what draws is only loaded for a file that has poses."""
        drawn = {key: (own, own.figure) for key, own in self._own.items() if own.figure is not None}
        if not drawn:
            return
        from plans.figures.body import ImpossiblePose
        from plans.figures.library import frames

        for key, (own, figure) in drawn.items():
            try:
                frames(key, figure, own)
            except ImpossiblePose as impossible:
                allowed = "poses that a body can take"
                self._report(
                    ("movements", key, "figure"),
                    str(impossible).removeprefix(f"{key}, "),
                    allowed,
                    None,
                    "impossible-pose",
                )


def replace_measure(entry: _Entry) -> _Entry | None:
    """A day to be repeated, without its measure; None when it was only that."""
    if entry.written.measure is None:
        return entry
    if entry.session is None:
        return None
    return replace(entry, written=entry.written.model_copy(update={"measure": None}))


def _days(count: int) -> str:
    return "none" if count == 0 else f"1 to {count}" if count > 1 else "1"


def _words(value: Changing[Any], wanted: Any) -> tuple[str, ...]:
    """The words under which a value of a changing one stands in the file."""
    return next((words for words, written in value.values() if written == wanted), ())


def _comes_round(key: str, word: str, movements: Mapping[str, Described]) -> bool:
    """Whether a chain of ever easier, or ever harder, movements leads back to its beginning."""
    seen, at = {key}, getattr(movements[key], word)
    while at in movements and at not in seen:
        seen.add(at)
        at = getattr(movements[at], word)
    return bool(at == key)


def _lacking(dose: Dose) -> tuple[str, str] | None:
    """What a dose lacks on a day once everything that changes has been looked up, and what is right instead."""
    if not any((dose.reps, dose.hold, dose.holds, dose.contract, dose.flow, dose.steps, dose.breaths)):
        return "no dose", "one of reps, hold, contract, flow, steps or breaths; or say from when the item is there"
    if (dose.contract is None) != (dose.relax is None):
        return "only one of contract and relax", "both from the same time on"
    if dose.reps is None and (dose.last_hold is not None or dose.squeeze is not None):
        return "last-hold or squeeze, and no reps", "reps from the same time on"
    return None


def _around(written: str | WrittenAround | None) -> Around | None:
    if isinstance(written, WrittenAround):
        return Around(written.text, written.time.high)
    return Around(written) if written is not None else None


def _last_hold(written: int | WrittenLastHold | None) -> LastHold | None:
    if isinstance(written, WrittenLastHold):
        return LastHold(written.seconds, written.equipment, written.effort, written.cue)
    return LastHold(written) if written is not None else None


def _link(written: str | WrittenLink | None) -> Link | None:
    if isinstance(written, WrittenLink):
        return Link(written.to, written.start)
    return Link(written) if written is not None else None
