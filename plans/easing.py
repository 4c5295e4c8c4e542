"""A day made lighter: fewer rounds, shorter holds or fewer repetitions, easier neighbours, no load. Never more."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace

from plans.movements import Movement
from plans.programme import Block, Day, Dose, Item, LastHold, Session, Span

HOLD_FLOOR = 10
"""Seconds: shorter holds do little (ACSM position stand, Garber et al. 2011: holds of 10-30 s)."""

OLDER, OLDER_HOLD_FLOOR = 65, 30
"""From this age on no hold goes under so many seconds (Feland et al. 2001, Phys Ther 81:1110)."""

STEP = 5
"""Seconds: eased times are whole steps, as people count them."""

SHARE = {1: 0.75, 2: 0.5}
"""What is left of holds, repetitions and time at each ease level (own choice)."""


def hold_floor(ages: Span | None) -> int:
    """Seconds under which no hold is eased, for the ages that a programme is written for."""
    return OLDER_HOLD_FLOOR if ages is not None and ages.low >= OLDER else HOLD_FLOOR


def eased(day: Day, level: int, library: Mapping[str, Movement], *, hold_floor: int = HOLD_FLOOR) -> Day:
    """The day at an ease level: 0 as written, 1 lighter, 2 lightest. Measures and rest days stay as they are.

    It never raises seconds, repetitions, load or rounds, and level 2 is never more than level 1. Raises ValueError
    for another level.
    """
    if level not in (0, 1, 2):
        raise ValueError(f"ease level {level}: it must be 0, 1 or 2")
    if level == 0 or day.session is None:
        return day
    return replace(day, session=_session(day.session, level, library, hold_floor))


def _session(session: Session, level: int, library: Mapping[str, Movement], floor: int) -> Session:
    """What is only for those who like is left out, unless nothing else is there."""
    wanted = tuple(block for block in session.blocks if not block.optional) or session.blocks
    return replace(session, blocks=tuple(_block(block, level, library, floor) for block in wanted))


def _block(block: Block, level: int, library: Mapping[str, Movement], floor: int) -> Block:
    wanted = tuple(item for item in block.items if not item.optional) or block.items
    return replace(
        block,
        rounds=_turns(block.rounds, level),
        time=_less(block.time, SHARE[level], floor, step=STEP),
        items=tuple(_item(item, level, library, floor) for item in wanted),
    )


def _turns(turns: Span, level: int) -> Span:
    """Sets or rounds: the lower end, one fewer for each level."""
    fewer = max(1, turns.low - level)
    return Span(fewer, fewer)


def _item(item: Item, level: int, library: Mapping[str, Movement], floor: int) -> Item:
    """What a coach says about a movement is about that one and goes with it; repetitions do not build up."""
    movement = _easier(item.movement, level, library)
    same = movement.key == item.movement.key
    return replace(
        item,
        movement=movement,
        meanwhile=_easier(item.meanwhile, level, library) if item.meanwhile else None,
        cue=item.cue if same else None,
        stop=item.stop if same else None,
        variation=item.variation if same else None,
        stance=item.stance if same else None,
        grip=item.grip if same else None,
        link=item.link if same else None,
        sets=_turns(item.sets, level),
        dose=_dose(item.dose, SHARE[level], floor),
        build_up=None,
        load=None,
    )


def _easier(movement: Movement, level: int, library: Mapping[str, Movement]) -> Movement:
    """One step down its chain at level 1, two at level 2, as far as the chain goes."""
    for _step in range(level):
        if movement.easier is None or movement.easier not in library:
            break
        movement = library[movement.easier]
    return movement


def _dose(dose: Dose, share: float, floor: int) -> Dose:
    return Dose(
        reps=_less(dose.reps, share, 1),
        hold=_less(dose.hold, share, floor, step=STEP),
        holds=tuple(held for hold in dose.holds if (held := _fewer(hold, share, floor, step=STEP)) is not None),
        squeeze=dose.squeeze,
        contract=dose.contract,
        relax=_fewer(dose.relax, share, floor, step=STEP),
        last_hold=_last_hold(dose.last_hold, share, floor),
        flow=_less(dose.flow, share, floor, step=STEP),
        steps=_less(dose.steps, share, 1),
        breaths=_less(dose.breaths, share, 1),
    )


def _last_hold(last: LastHold | None, share: float, floor: int) -> LastHold | None:
    seconds = _fewer(last.seconds if last else None, share, floor, step=STEP)
    return None if last is None or seconds is None else replace(last, seconds=seconds)


def _fewer(value: int | None, share: float, floor: int, *, step: int = 1) -> int | None:
    """A share of a number in whole steps, no less than the floor, but never more than it was."""
    return None if value is None else min(value, max(floor, int(value * share) // step * step))


def _less(span: Span | None, share: float, floor: int, *, step: int = 1) -> Span | None:
    low = _fewer(span.low if span else None, share, floor, step=step)
    high = _fewer(span.high if span else None, share, floor, step=step)
    return None if span is None or low is None or high is None else replace(span, low=low, high=high)
