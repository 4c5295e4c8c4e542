"""How much a day is: seconds of work for each muscle and side, and minutes from start to end.

Seconds for a repetition, a step, a breath and a change of position are this program's own choice; everything else is
what the coach wrote.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from math import ceil

from plans.movements import MovementKind, Muscle
from plans.programme import Block, Day, Dose, Item, Session, Sides, Span

SECONDS_A_REP = 4
SECONDS_A_STEP = 2
SECONDS_A_BREATH = 5
CHANGE = 15
"""Seconds to get into an item or to its other side."""
WARM_UP = 120
"""Seconds of a warm-up that is written as text."""

STATIC_KINDS = frozenset({MovementKind.STATIC, MovementKind.CONTRACT_RELAX, MovementKind.LOADED, MovementKind.ACTIVE})
"""Kinds whose seconds count as stretching dose; moving and control work is practice around it."""

SideOf = str
"""left or right."""


def _ends(span: Span | None) -> tuple[int, int]:
    """Both ends, for one side: a number that counts both sides together is halved, in favour of the range."""
    if span is None:
        return 0, 0
    return (span.low // 2, ceil(span.high / 2)) if span.total else (span.low, span.high)


def once(dose: Dose) -> tuple[int, int]:
    """Seconds of one set on one side, lowest and highest."""
    reps = _ends(dose.reps) if dose.reps else (1, 1)
    hold = _ends(dose.hold)
    squeeze = (dose.contract or 0) + (dose.relax or 0)
    moving = SECONDS_A_REP if dose.reps and not dose.hold and not squeeze else 0
    low, high = ((reps[end] * (hold[end] + squeeze + moving)) for end in (0, 1))
    extra = dose.last_hold or 0
    flow, steps, breaths = _ends(dose.flow), _ends(dose.steps), _ends(dose.breaths)
    more = [flow[end] + steps[end] * SECONDS_A_STEP + breaths[end] * SECONDS_A_BREATH + extra for end in (0, 1)]
    return low + more[0], high + more[1]


def stretch_once(item: Item) -> int:
    """Seconds of stretch in one set on one side, by the lower ends: what a client surely gets."""
    dose = item.dose
    reps = _ends(dose.reps)[0] if dose.reps else 1
    if dose.contract is not None:
        return reps * (dose.relax or 0) + (dose.last_hold or 0)
    if dose.hold is not None:
        return reps * dose.hold.low + (dose.last_hold or 0)
    return once(dose)[0] if item.movement.kind in STATIC_KINDS else (dose.last_hold or 0)


def sides_worked(item: Item) -> tuple[SideOf, ...]:
    """The sides that an item works on."""
    if item.side is Sides.LEFT:
        return ("left",)
    return ("right",) if item.side is Sides.RIGHT else ("left", "right")


def _turns(item: Item) -> int:
    """How often an item's set is done after the other: once for each side that has its own turn."""
    return 2 if item.side in (Sides.EACH, Sides.ALTERNATE) else 1


def muscle_seconds(day: Day) -> Mapping[tuple[Muscle, SideOf], int]:
    """Seconds of stretch for each main muscle and side in a day; practice and moving work do not count."""
    found: dict[tuple[Muscle, SideOf], int] = defaultdict(int)
    for block, item in items(day.session):
        if item.practice or item.movement.kind not in STATIC_KINDS:
            continue
        for muscle in item.movement.main:
            for side in sides_worked(item):
                found[muscle, side] += stretch_once(item) * item.sets * block.rounds
    return dict(found)


def week_seconds(days: Iterable[Day]) -> Mapping[tuple[Muscle, SideOf], int]:
    """The same, summed over several days."""
    total: dict[tuple[Muscle, SideOf], int] = defaultdict(int)
    for day in days:
        for key, seconds in muscle_seconds(day).items():
            total[key] += seconds
    return dict(total)


def items(session: Session | None) -> Iterable[tuple[Block, Item]]:
    """Every item of a session beside its block."""
    for block in session.blocks if session is not None else ():
        for item in block.items:
            yield block, item


def work_seconds(day: Day) -> Mapping[str, int]:
    """Seconds of work for each movement in a day, all sets, rounds and turns, by the higher ends."""
    found: dict[str, int] = defaultdict(int)
    for block, item in items(day.session):
        found[item.movement.key] += once(item.dose)[1] * item.sets * block.rounds * _turns(item)
    return dict(found)


def minutes(day: Day) -> tuple[int, int]:
    """From start to end with changes and rests, lowest and highest, in whole minutes; (0, 0) without a session."""
    if day.session is None:
        return 0, 0
    warm_up = WARM_UP if day.session.warm_up else 0
    totals = [warm_up + sum(_block_seconds(block, end) for block in day.session.blocks) for end in (0, 1)]
    return ceil(totals[0] / 60), ceil(totals[1] / 60)


def _block_seconds(block: Block, end: int) -> int:
    one = sum(_item_seconds(item, end) for item in block.items)
    return block.rounds * one + (block.rounds - 1) * block.rest


def _item_seconds(item: Item, end: int) -> int:
    turns = _turns(item)
    return item.sets * turns * once(item.dose)[end] + turns * CHANGE + (item.sets - 1) * item.rest
