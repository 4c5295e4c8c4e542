"""Centimetres or inches, kilograms or pounds: what a person reads and types; everything is kept in metric units."""

from __future__ import annotations

from dataclasses import replace
from enum import StrEnum

from plans.programme import Block, Day, Load

CM_AN_INCH = 2.54
KG_A_POUND = 0.45359237
"""Exact by definition (international yard and pound, 1959)."""
INCHES = "inches"
INCH_COUNTRIES = frozenset({"US"})
"""Regions whose people measure themselves in inches; elsewhere it is centimetres (CLDR, measurementSystem "US")."""


class Units(StrEnum):
    """A person's units."""

    METRIC = "metric"
    INCH = "inch"


def units_of(tag: str) -> Units:
    """The units that go with a language tag of the chat; metric when it names no region.

    >>> units_of("en-US"), units_of("en")
    (<Units.INCH: 'inch'>, <Units.METRIC: 'metric'>)
    """
    region = tag.replace("_", "-").rpartition("-")[2].upper()
    return Units.INCH if region in INCH_COUNTRIES else Units.METRIC


def unit_in(unit: str, units: Units) -> str:
    """What a measure's unit is called for somebody: cm or inches; degrees stay degrees."""
    return INCHES if unit == "cm" and units is Units.INCH else unit


def value_in(value: float, unit: str, units: Units) -> float:
    """A kept value in a person's units, to a tenth.

    >>> value_in(12.7, "cm", Units.INCH)
    5.0
    """
    return round(value / CM_AN_INCH if unit_in(unit, units) == INCHES else value, 1)


def in_units(day: Day, units: Units) -> Day:
    """The day with its weights in a person's units, pounds to a whole one; weights in words stay as they are."""
    if units is Units.METRIC or day.session is None:
        return day
    blocks = tuple(_block(block) for block in day.session.blocks)
    return replace(day, session=replace(day.session, blocks=blocks))


def _block(block: Block) -> Block:
    return replace(block, items=tuple(replace(item, load=_load(item.load)) for item in block.items))


def _load(load: Load | None) -> Load | None:
    if load is None or load.kilograms is None or load.own is not None:
        return load
    return replace(load, words=f"{load.kilograms / KG_A_POUND:.0f} lb")


def kept(value: float, typed: str) -> float:
    """A typed value in the unit that it is kept in."""
    return round(value * CM_AN_INCH, 2) if typed == INCHES else value
