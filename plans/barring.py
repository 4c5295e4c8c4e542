"""A day without the movements that a client must leave out: a neighbour takes their place, or nobody does."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import replace

from plans.movements import Movement, easier_than
from plans.programme import Block, Day, Item


def without(day: Day, barred: Collection[str], movements: Mapping[str, Movement]) -> Day:
    """The day with the nearest easier neighbour in the place of each barred movement; one without any is left out.

    What a coach wrote about a movement goes with it, its load too. A session of which nothing remains becomes none.
    """
    if day.session is None or not barred:
        return day
    blocks = [block for old in day.session.blocks if (block := _block(old, barred, movements)).items]
    return replace(day, session=replace(day.session, blocks=tuple(blocks)) if blocks else None)


def _block(block: Block, barred: Collection[str], movements: Mapping[str, Movement]) -> Block:
    items = (_item(item, barred, movements) for item in block.items)
    return replace(block, items=tuple(item for item in items if item is not None))


def _item(item: Item, barred: Collection[str], movements: Mapping[str, Movement]) -> Item | None:
    if item.meanwhile is not None and item.meanwhile.key in barred:
        item = replace(item, meanwhile=None)
    if item.movement.key not in barred:
        return item
    found = next((key for key in easier_than(item.movement.key, movements) if key not in barred), None)
    if found is None or movements[found].sides is not item.movement.sides:
        return None
    return replace(
        item,
        movement=movements[found],
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
