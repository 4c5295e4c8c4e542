"""Zones by name: what is not known is named with its neighbours, what is naive is refused."""

from __future__ import annotations

from datetime import UTC, date, datetime, time

import pytest

from plans.localtime import UnknownZone, instant, local, zone


def test_an_unknown_zone_is_named_with_those_near_it() -> None:
    with pytest.raises(UnknownZone, match="'Europe/Lisbn' is no IANA zone name; near it: Europe/Lisbon") as wrong:
        zone("Europe/Lisbn")
    assert (wrong.value.name, wrong.value.near[0]) == ("Europe/Lisbn", "Europe/Lisbon")


def test_a_name_like_no_zone_gets_the_form_of_one() -> None:
    with pytest.raises(UnknownZone, match="write it like Europe/Lisbon") as wrong:
        zone("🏔")
    assert wrong.value.near == ()


def test_a_date_that_a_zone_skips_has_no_instant() -> None:
    assert instant(date(2011, 12, 30), time(7), "Pacific/Apia") is None


def test_a_moment_without_a_zone_is_refused() -> None:
    with pytest.raises(ValueError, match="a moment must be aware"):
        local(datetime(2026, 3, 2, 7), "Europe/Lisbon")  # noqa: DTZ001
    assert local(datetime(2026, 7, 2, 6, tzinfo=UTC), "Europe/Lisbon").hour == 7
