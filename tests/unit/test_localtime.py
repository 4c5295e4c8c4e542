"""Zones by name: what is not known is named with its neighbours, what is naive is refused."""

from __future__ import annotations

import re
import time as host
from collections.abc import Iterator
from datetime import UTC, date, datetime, time
from importlib.resources import files
from pathlib import Path

import pytest

from plans import localtime
from plans.localtime import UnknownZone, data_not_before, data_version, instant, local, zone


def test_an_unknown_zone_is_named_with_those_near_it() -> None:
    with pytest.raises(
        UnknownZone,
        match=r"^'Europe/Lisbn' is no IANA zone name; near it: Europe/Lisbon, [A-Z][A-Za-z_/]+, [A-Z][A-Za-z_/]+$",
    ) as wrong:
        zone("Europe/Lisbn")
    assert (wrong.value.name, wrong.value.near[0], len(wrong.value.near)) == ("Europe/Lisbn", "Europe/Lisbon", 3)


def test_a_name_like_no_zone_gets_the_form_of_one() -> None:
    with pytest.raises(UnknownZone, match=r"name; write it like Europe/Lisbon$") as wrong:
        zone("🏔")
    assert wrong.value.near == ()


def test_the_zone_data_is_no_older_than_the_date_that_its_leap_seconds_give_in_words() -> None:
    table = files("tzdata").joinpath("zoneinfo", "leapseconds").read_text(encoding="ascii")
    written = re.search(r"#updated \d+ \((\d{4}-\d\d-\d\d) ", table)
    assert written is not None
    first_of_its_year = date.fromisoformat(f"{data_version()[:4]}-01-01")
    assert data_not_before() == max(date.fromisoformat(written[1]), first_of_its_year)


@pytest.mark.parametrize("table", ["# no word of when\n", "#updated 1 (1970-01-01 00:00:01 UTC)\n"])
def test_zone_data_without_a_date_of_its_own_is_no_older_than_the_year_of_its_release(
    table: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "zoneinfo").mkdir()
    (tmp_path / "zoneinfo" / "leapseconds").write_text(table, encoding="ascii")
    monkeypatch.setattr(localtime, "files", lambda _package: tmp_path)
    monkeypatch.setattr(localtime, "data_version", lambda: "2031b")
    assert data_not_before.__wrapped__() == date(2031, 1, 1)


def test_a_date_that_a_zone_skips_has_no_instant() -> None:
    assert instant(date(2011, 12, 30), time(7), "Pacific/Apia") is None


@pytest.fixture
def host_in_auckland(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    """A host whose own zone is far from that of any client."""
    monkeypatch.setenv("TZ", "Pacific/Auckland")
    host.tzset()
    yield
    monkeypatch.undo()
    host.tzset()


@pytest.mark.usefixtures("host_in_auckland")
def test_the_zone_of_the_host_has_no_say() -> None:
    found = instant(date(2026, 7, 2), time(7), "Europe/Lisbon")
    assert found is not None
    assert found.isoformat() == "2026-07-02T06:00:00+00:00"


def test_of_a_time_that_comes_twice_the_first_is_meant_whichever_was_said() -> None:
    """London, 25 October 2026: 01:30 comes in summer time first (RFC 5545, 3.3.5)."""
    twice = [instant(date(2026, 10, 25), time(1, 30, fold=fold), "Europe/London") for fold in (0, 1)]
    assert twice == [datetime(2026, 10, 25, 0, 30, tzinfo=UTC)] * 2


def test_a_moment_without_a_zone_is_refused() -> None:
    with pytest.raises(ValueError, match="a moment must be aware"):
        local(datetime(2026, 3, 2, 7), "Europe/Lisbon")  # noqa: DTZ001
    assert local(datetime(2026, 7, 2, 6, tzinfo=UTC), "Europe/Lisbon").hour == 7
