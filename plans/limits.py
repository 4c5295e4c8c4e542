"""What a programme's movements ask of a body that not every body can give, and which of them an answer bars."""

from __future__ import annotations

from collections.abc import Collection, Iterator

from plans.cautions import Caution
from plans.dose import items
from plans.movements import Movement, MovementKind, easier_than
from plans.programme import Programme

OF_EVERYBODY = frozenset((Caution.OSTEOPOROSIS, Caution.JOINT_REPLACEMENT, Caution.PREGNANCY, Caution.LOOSE_JOINTS))
"""Cautions that everybody is asked about before any programme: see `plans.screening`."""


def asked_of(programme: Programme) -> tuple[Caution, ...]:
    """The cautions to ask a client of this programme about, easier versions too, in the order of `Caution`."""
    found = {caution for movement in _reached(programme, loose=False) for caution in movement.cautions}
    return tuple(caution for caution in Caution if caution in found - OF_EVERYBODY)


def barred_by(programme: Programme, cautions: Collection[Caution], *, loose: bool = False) -> list[str]:
    """Keys of the movements with one of `cautions`, among all that a client can meet in a programme, sorted.

    That is what its sessions have and what may come in its place; `loose` is known hypermobility, see `plans.fitting`.
    """
    return sorted(
        {movement.key for movement in _reached(programme, loose=loose) if set(movement.cautions) & {*cautions}}
    )


def _met(programme: Programme) -> Iterator[Movement]:
    for day in programme.days:
        for _block, item in items(day.session):
            yield item.movement
            if item.meanwhile is not None:
                yield item.meanwhile


def _reached(programme: Programme, *, loose: bool) -> Iterator[Movement]:
    catalogue = programme.catalogue()
    for movement in _met(programme):
        yield movement
        yield from (catalogue[key] for key in easier_than(movement.key, catalogue))
    if loose:
        yield from (movement for movement in catalogue.values() if movement.kind is MovementKind.CONTROL)
