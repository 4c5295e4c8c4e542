"""How much a day is: seconds of work for each muscle, side and kind, and minutes from start to end.

Every amount is a range, lowest and highest: a coach may write one ("8-10", "2-3 rounds", "if you like"). Seconds for a
repetition, a step, a breath and a change of position are this program's own choice unless the movement says its own;
everything else is what the coach wrote.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping
from math import ceil

from plans.movements import MovementKind, Muscle
from plans.programme import Block, Day, Dose, Item, Session, Sides, Span

SECONDS_A_REP = 4
SECONDS_A_STEP = 2
SECONDS_A_BREATH = 5
CHANGE = 15
"""Seconds to get into an item or to its other side."""

HOLDING_KINDS = frozenset({MovementKind.STATIC, MovementKind.CONTRACT_RELAX, MovementKind.LOADED, MovementKind.ACTIVE})
"""Kinds that keep a muscle long; moving and control work pass through and are shown apart."""

Range = tuple[int, int]
"""Seconds, lowest and highest."""
SideOf = str
"""left or right."""
LEFT, RIGHT = "left", "right"
BOTH = (LEFT, RIGHT)
ByKind = Mapping[tuple[Muscle, SideOf, MovementKind], Range]


def _ends(span: Span | None) -> Range:
    """Both ends, for one side: a number that counts both sides together is halved, in favour of the range."""
    if span is None:
        return 0, 0
    return (span.low // 2, ceil(span.high / 2)) if span.total else (span.low, span.high)


def _times(first: Range, second: Range) -> Range:
    return first[0] * second[0], first[1] * second[1]


def _plus(first: Range, second: Range) -> Range:
    return first[0] + second[0], first[1] + second[1]


def once(dose: Dose, *, rep_seconds: int | None = None) -> Range:
    """Seconds of one set on one side, lowest and highest; a repetition takes `rep_seconds`, 4 when not said."""
    reps = _ends(dose.reps) if dose.reps else (1, 1)
    hold = _ends(dose.hold)
    squeezes = (dose.squeeze or 0) + (dose.contract or 0) + (dose.relax or 0)
    moving = (rep_seconds or SECONDS_A_REP) if dose.reps and not dose.hold and dose.contract is None else 0
    low, high = ((reps[end] * (hold[end] + squeezes + moving)) for end in (0, 1))
    extra = sum(dose.holds) + (dose.last_hold.seconds if dose.last_hold else 0)
    flow, steps, breaths = _ends(dose.flow), _ends(dose.steps), _ends(dose.breaths)
    more = [flow[end] + steps[end] * SECONDS_A_STEP + breaths[end] * SECONDS_A_BREATH + extra for end in (0, 1)]
    return low + more[0], high + more[1]


def set_seconds(item: Item) -> Range:
    """Seconds of one set of an item on one side."""
    return once(item.dose, rep_seconds=item.movement.rep_seconds)


def kind_of(item: Item) -> MovementKind:
    """How an item works: by contract and relax, with a load, or as its movement does."""
    if item.dose.contract is not None:
        return MovementKind.CONTRACT_RELAX
    return MovementKind.LOADED if item.load is not None else item.movement.kind


def stretch_once(item: Item) -> Mapping[MovementKind, Range]:
    """Seconds of stretch in one set on one side, by kind; of contract and relax only the relaxing ones count."""
    dose, kind = item.dose, kind_of(item)
    reps = _ends(dose.reps) if dose.reps else (1, 1)
    last = dose.last_hold.seconds if dose.last_hold else 0
    if dose.contract is not None:
        work = _times(reps, (dose.relax or 0, dose.relax or 0))
    elif dose.hold is not None:
        work = _times(reps, _ends(dose.hold))
    elif dose.holds:
        work = (sum(dose.holds), sum(dose.holds))
    else:
        whole = set_seconds(item)
        work = whole[0] - last, whole[1] - last
    held = kind if kind in HOLDING_KINDS else MovementKind.STATIC
    found = {kind: work}
    found[held] = _plus(found.get(held, (0, 0)), (last, last))
    return {key: seconds for key, seconds in found.items() if seconds[1]}


def sides_worked(item: Item) -> tuple[SideOf, ...]:
    """The sides that an item works on."""
    if item.side is Sides.LEFT:
        return (LEFT,)
    return (RIGHT,) if item.side is Sides.RIGHT else BOTH


def _turns(item: Item) -> int:
    """How often an item's set is done after the other: once for each side that has its own turn."""
    return 2 if item.side in (Sides.EACH, Sides.ALTERNATE) else 1


def rounds_of(block: Block) -> Range:
    """How often a block is done: its rounds, or as many as fit into its time, at least one; an optional one from 0."""
    if block.time is None:
        rounds = block.rounds.low, block.rounds.high
    else:
        one = [sum(_item_seconds(item, block, end) for item in block.items) + block.rest for end in (0, 1)]
        rounds = max(1, block.time.low // max(1, one[1])), max(1, block.time.high // max(1, one[0]))
    return (0, rounds[1]) if block.optional else rounds


def sets_of(block: Block, item: Item) -> Range:
    """How often an item's set is done in a session, all rounds together."""
    sets = _times(rounds_of(block), (item.sets.low, item.sets.high))
    return (0, sets[1]) if item.optional else sets


def by_kind(day: Day) -> ByKind:
    """Seconds of stretch or work for each main muscle, side and kind in a day; practice does not count."""
    found: dict[tuple[Muscle, SideOf, MovementKind], Range] = defaultdict(lambda: (0, 0))
    for block, item in items(day.session):
        if item.practice:
            continue
        sets = sets_of(block, item)
        for muscle, side, kind, seconds in _shares(item):
            found[muscle, side, kind] = _plus(found[muscle, side, kind], _times(sets, seconds))
    return dict(found)


def _shares(item: Item) -> Iterator[tuple[Muscle, SideOf, MovementKind, Range]]:
    """What one set gives to each muscle: of the leading side, of the other side, and of the side held meanwhile."""
    leading = sides_worked(item)
    others = leading if len(leading) > 1 else tuple(side for side in BOTH if side not in leading)
    passive = () if item.meanwhile is not None else item.movement.other_side
    for kind, seconds in stretch_once(item).items():
        yield from ((muscle, side, kind, seconds) for muscle in item.main for side in leading)
        yield from ((muscle, side, kind, seconds) for muscle in passive for side in others)
    if item.meanwhile is not None:
        held = set_seconds(item)
        yield from ((m, side, MovementKind.STATIC, held) for m in item.meanwhile.main for side in others)


def muscle_seconds(days: Iterable[Day], kinds: Collection[MovementKind]) -> Mapping[tuple[Muscle, SideOf], Range]:
    """Seconds for each main muscle and side over several days, of some kinds together."""
    total: dict[tuple[Muscle, SideOf], Range] = defaultdict(lambda: (0, 0))
    for day in days:
        for (muscle, side, kind), seconds in by_kind(day).items():
            if kind in kinds:
                total[muscle, side] = _plus(total[muscle, side], seconds)
    return dict(total)


def items(session: Session | None) -> Iterable[tuple[Block, Item]]:
    """Every item of a session beside its block."""
    for block in session.blocks if session is not None else ():
        for item in block.items:
            yield block, item


def movement_names(*days: Day) -> dict[str, str]:
    """The movements of the sessions of these days: names by key, in their order."""
    return {item.movement.key: item.movement.name for day in days for _block, item in items(day.session)}


def work_seconds(day: Day) -> Mapping[str, int]:
    """Seconds of work for each movement in a day, all sets, rounds and turns, by the higher ends."""
    found: dict[str, int] = defaultdict(int)
    for block, item in items(day.session):
        found[item.movement.key] += set_seconds(item)[1] * sets_of(block, item)[1] * _turns(item)
    return dict(found)


def minutes(day: Day) -> Range:
    """From start to end with changes and rests, lowest and highest, in whole minutes; (0, 0) without a session."""
    low, high = session_seconds(day)
    return ceil(low / 60), ceil(high / 60)


def session_seconds(day: Day) -> Range:
    """The same in seconds."""
    session = day.session
    if session is None:
        return 0, 0
    around = sum(part.seconds for part in (session.warm_up, session.cool_down) if part is not None)
    low, high = (around + sum(_block_seconds(block, end) for block in session.blocks) for end in (0, 1))
    return low, high


def _block_seconds(block: Block, end: int) -> int:
    rounds = rounds_of(block)[end]
    if rounds == 0:
        return 0
    if block.time is not None:
        return (block.time.low, block.time.high)[end]
    return rounds * sum(_item_seconds(item, block, end) for item in block.items) + (rounds - 1) * block.rest


def _item_seconds(item: Item, block: Block, end: int) -> int:
    if item.optional and end == 0:
        return 0
    turns, sets = _turns(item), (item.sets.low, item.sets.high)[end]
    change = CHANGE if block.change is None else block.change
    return sets * turns * set_seconds(item)[end] + turns * change + (sets - 1) * item.rest
