"""A day as one client's body and home allow it: eased, and without what does not fit them just now.

In the place of a movement that does not fit comes the nearest easier neighbour that does, for very loose joints also a
control movement for the same muscles; where there is none it is left out.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, replace

from plans import easing
from plans.areas import loads
from plans.cautions import Caution
from plans.checkin import Area
from plans.equipment import EVERYWHERE, Thing
from plans.glossing import in_english
from plans.movements import Movement, MovementKind, Muscle, easier_than
from plans.programme import Block, Day, Item, Say, Span, as_written
from plans.shortening import shortened

SOFT = ("mat", "cushion")
"""Things for which a carpet or a folded blanket will always do."""


@dataclass(frozen=True, slots=True)
class Fit:
    """What one client's day must allow for.

    `barred` are keys of movements that are left out from now on; `older` is 65 and over; `loose` is known
    hypermobility; `spares` is an area that hurts just now though the programme does not work there; `lacks` are names
    of things that are not at hand today; `minutes` are what the client has today.
    """

    barred: Collection[str] = ()
    older: bool = False
    loose: bool = False
    spares: Area | None = None
    lacks: Collection[str] = ()
    minutes: int | None = None

    def suits(self, movement: Movement) -> bool:
        """Whether a movement can stay."""
        if movement.key in self.barred or (self.loose and Caution.LOOSE_JOINTS in movement.cautions):
            return False
        if self.spares is not None and loads(movement, self.spares):
            return False
        return not any(thing.name in self.lacks for thing in movement.equipment)


def fitted(
    day: Day,
    level: int,
    fit: Fit,
    movements: Mapping[str, Movement],
    ages: Span | None = None,
    targets: Collection[Muscle] = (),
) -> Day:
    """The day at an ease level (0-2) as `fit` allows it; `ages` and `targets` (muscles) are the programme's.

    What a coach wrote about a movement that goes goes with it, its load too. A session of which nothing remains
    becomes none. Raises ValueError for another level.
    """
    floor = easing.OLDER_HOLD_FLOOR if fit.older else easing.hold_floor(ages)
    eased = easing.eased(day, level, movements, hold_floor=floor)
    if eased.session is None:
        return eased
    blocks = [block for old in eased.session.blocks if (block := _block(old, fit, movements)).items]
    if tuple(blocks) != eased.session.blocks:
        eased = replace(eased, session=replace(eased.session, blocks=tuple(blocks)) if blocks else None)
    return eased if fit.minutes is None else shortened(eased, fit.minutes, targets)


def _block(block: Block, fit: Fit, movements: Mapping[str, Movement]) -> Block:
    items = (_item(item, fit, movements) for item in block.items)
    return replace(block, items=tuple(item for item in items if item is not None))


def _item(item: Item, fit: Fit, movements: Mapping[str, Movement]) -> Item | None:
    if item.meanwhile is not None and not fit.suits(item.meanwhile):
        item = replace(item, meanwhile=None)
    if fit.suits(item.movement):
        return item
    found = next(
        (other for other in _instead(item.movement, fit, movements) if _takes(other, item) and fit.suits(other)), None
    )
    if found is None:
        return None
    return replace(
        item,
        movement=found,
        meanwhile=None,
        cue=None,
        stop=None,
        variation=None,
        stance=None,
        grip=None,
        link=None,
        load=None,
        build_up=None,
    )


def _takes(movement: Movement, item: Item) -> bool:
    """Whether a movement can be done in the doses of an item: sides are counted the same way."""
    return movement.sides is item.movement.sides


def _instead(movement: Movement, fit: Fit, movements: Mapping[str, Movement]) -> Iterator[Movement]:
    for key in easier_than(movement.key, movements):
        yield movements[key]
    if fit.loose:
        for other in movements.values():
            if other.kind is MovementKind.CONTROL and set(other.main) & set(movement.main):
                yield other


def things(day: Day) -> tuple[Thing, ...]:
    """What a day's session needs that not every home has, each once, in the order of the session."""
    found: dict[str, Thing] = {}
    for block in day.session.blocks if day.session else ():
        for item in block.items:
            for thing in item.movement.equipment:
                if thing.name not in (*EVERYWHERE, *SOFT) and not set(thing.instead) & set(EVERYWHERE):
                    found.setdefault(thing.name, thing)
    return tuple(found.values())


_WITHOUT = re.compile(r"\b(no|without|not|forgot|lost|broke|missing|havent|dont)\b|n['’]t\b", re.IGNORECASE)


def missed(text: str, needed: Collection[Thing], *, language: str = "en", say: Say = as_written) -> Thing | None:
    """The thing that a short text says is not at hand: "no strap here today". None when it names none.

    `say` has the things' names in the text's language.

    >>> missed("I have no strap with me", [Thing("strap", ("towel",))])
    Thing(name='strap', instead=('towel',))
    """
    if len(text) > LONGEST or _WITHOUT.search(in_english(text, language)) is None:
        return None
    words = set(re.findall(r"[^\W\d_]+", text.lower()))
    return next((thing for thing in needed if _names(thing, language, say) & words), None)


def _names(thing: Thing, language: str, say: Say) -> set[str]:
    """The words of a thing's name by which it is known: in English the last one."""
    name = say(thing.name).lower().split()
    return set(name[-1:]) if language == "en" else {word for word in name if len(word) > SHORT}


SHORT = 3
"""Letters of words such as articles."""


LONGEST = 80
"""Characters of a text that is read as being about a thing."""


def stands(day: Day) -> bool:
    """Whether a session has a standing movement, for which older people keep a hand on something firm."""
    return any(
        Caution.ONE_LEG_BALANCE in item.movement.cautions or item.movement.standing
        for block in (day.session.blocks if day.session else ())
        for item in block.items
    )
