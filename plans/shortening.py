"""A day cut to the minutes that somebody has: what matters least for the programme's muscles goes first."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator
from dataclasses import replace

from plans.checkin import CheckIn, Completion, Why
from plans.dose import minutes, session_seconds
from plans.movements import MovementKind, Muscle
from plans.programme import ONCE, Block, Day, Item, Session, Span

LEAST_TIME = 60
"""Seconds: a block that is done by time is not cut below them. Our own choice."""


def shortened(day: Day, most: int, targets: Collection[Muscle]) -> Day:
    """The day in at most so many minutes where that can be: the warm-up stays, and so does at least one item.

    First goes what is only for those who like, then items for other muscles, the last one first; then rounds and sets
    beyond one, then time, then items for the target muscles, the last one first. Nothing becomes longer or heavier.
    """
    for cut in (_optional, _others, _rounds, _sets, _time, _last):
        while day.session is not None and minutes(day)[1] > most:
            less = cut(day.session, targets)
            if less is None:
                break
            day = replace(day, session=less)
    return day


def counted(said: CheckIn, whole: Day, short: Day) -> CheckIn:
    """What is said of a shortened day: all of it done is a part of the day, left off for time, half of it or less."""
    if said.completion is not Completion.DONE or short == whole:
        return said
    half = 2 * session_seconds(short)[1] >= session_seconds(whole)[1]
    return replace(said, completion=Completion.PART, why=Why.TIME, half=half)


def _optional(session: Session, _targets: Collection[Muscle]) -> Session | None:
    blocks = [block for block in session.blocks if not block.optional]
    blocks = [replace(block, items=tuple(item for item in block.items if not item.optional)) for block in blocks]
    kept = tuple(block for block in blocks if block.items)
    return replace(session, blocks=kept) if kept and kept != session.blocks else None


def _others(session: Session, targets: Collection[Muscle]) -> Session | None:
    return _without_last(session, [item for item in _items(session) if not _works(item, targets)])


def _last(session: Session, _targets: Collection[Muscle]) -> Session | None:
    return _without_last(session, list(_items(session)))


def _works(item: Item, targets: Collection[Muscle]) -> bool:
    """Whether an item lengthens a target muscle; control work for it comes after that."""
    return bool(set(item.movement.main) & set(targets)) and item.movement.kind is not MovementKind.CONTROL


def _items(session: Session) -> Iterator[Item]:
    for block in session.blocks:
        yield from block.items


def _without_last(session: Session, some: list[Item]) -> Session | None:
    """The session without the last of some of its items; None when there is none or it is the only one left."""
    if not some or sum(len(block.items) for block in session.blocks) == 1:
        return None
    blocks = []
    for block in session.blocks:
        items = tuple(item for item in block.items if item is not some[-1])
        if items:
            blocks.append(replace(block, items=items))
    return replace(session, blocks=tuple(blocks))


def _rounds(session: Session, _targets: Collection[Muscle]) -> Session | None:
    most = max((block.rounds.high for block in session.blocks if block.time is None), default=1)
    return None if most == 1 else _changed(session, lambda b: b.time is None and b.rounds.high == most, _fewer_rounds)


def _fewer_rounds(block: Block) -> Block:
    return replace(block, rounds=_one_less(block.rounds))


def _sets(session: Session, _targets: Collection[Muscle]) -> Session | None:
    most = max((item.sets.high for item in _items(session)), default=1)
    if most == 1:
        return None

    def fewer(block: Block) -> Block:
        items = (replace(i, sets=_one_less(i.sets)) if i.sets.high == most else i for i in block.items)
        return replace(block, items=tuple(items))

    return _changed(session, lambda block: any(item.sets.high == most for item in block.items), fewer)


def _time(session: Session, _targets: Collection[Muscle]) -> Session | None:
    def less(block: Block) -> Block:
        time = block.time or ONCE
        low, high = (max(LEAST_TIME, seconds - LEAST_TIME) for seconds in (time.low, time.high))
        return replace(block, time=Span(min(low, time.low), min(high, time.high)))

    return _changed(session, lambda block: block.time is not None and block.time.high > LEAST_TIME, less)


def _changed(session: Session, wanted: Callable[[Block], bool], change: Callable[[Block], Block]) -> Session | None:
    """The session with a change to the last block that is wanted; None without one."""
    for index in reversed(range(len(session.blocks))):
        if wanted(session.blocks[index]):
            blocks = list(session.blocks)
            blocks[index] = change(blocks[index])
            return replace(session, blocks=tuple(blocks))
    return None


def _one_less(span: Span) -> Span:
    return Span(max(1, span.low - 1), max(1, span.high - 1))
