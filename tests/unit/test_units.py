"""Somebody's own units: everything is kept in centimetres and kilograms and said in inches and pounds."""

from __future__ import annotations

import pytest

from plans.programme import Day
from plans.units import Units, in_units, kept, unit_in, units_of, value_in
from tests.samples import REST, programme


def loads(day: Day) -> list[str | None]:
    found = [item.load for block in day.session.blocks for item in block.items] if day.session else []
    return [load.words if load is not None else None for load in found]


@pytest.mark.parametrize(
    ("tag", "units"),
    [
        ("en-US", Units.INCH),
        ("es_us", Units.INCH),
        ("en", Units.METRIC),
        ("en-GB", Units.METRIC),
        ("us", Units.INCH),
        ("de_DE", Units.METRIC),
    ],
)
def test_the_region_of_a_language_tag_says_the_units(tag: str, units: Units) -> None:
    assert units_of(tag) is units


def test_only_centimetres_become_inches() -> None:
    assert (unit_in("cm", Units.INCH), unit_in("degrees", Units.INCH), unit_in("cm", Units.METRIC)) == (
        "inches",
        "degrees",
        "cm",
    )
    assert (value_in(30.48, "cm", Units.INCH), value_in(90, "degrees", Units.INCH)) == (12.0, 90)


def test_what_is_typed_in_inches_is_kept_in_centimetres() -> None:
    assert (kept(4, "inches"), kept(4, "cm")) == (10.16, 4)


def test_weights_are_said_in_whole_pounds_and_words_stay_words() -> None:
    items = "{movement: fold, reps: 5, load: %s}"
    each = ", ".join(items % load for load in ("2 kg", "10 lb", "a light book", "as last time"))
    day = programme(f"  - session: {{blocks: [{{items: [{{movement: sway, reps: 8}}, {each}]}}]}}\n").day(1)
    assert loads(in_units(day, Units.INCH)) == [None, "4 lb", "10 lb", "a light book", "as last time"]
    assert in_units(day, Units.METRIC) is day


def test_a_day_without_a_session_has_no_weights() -> None:
    day = programme(REST).day(1)
    assert in_units(day, Units.INCH) is day
