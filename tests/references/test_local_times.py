"""Local mornings against expected instants and against a second, independent reader of the zone data.

The table was computed with IANA tz data release 2026f and is this project's own; the rules for gaps and repeated
times are RFC 5545 3.3.5 and PEP 495 (fold=0). The second reader is python-dateutil's, on the same data files.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, time
from importlib.resources import files
from pathlib import Path

import pytest
from dateutil import tz

from plans.localtime import data_version, instant

TABLE = Path(__file__).with_name("local-times.tsv")
CASES = [
    line.split("\t") for line in TABLE.read_text(encoding="utf-8").splitlines() if line and not line.startswith("#")
]


def _local(text: str) -> tuple[date, time]:
    day, at = text.split()
    return date.fromisoformat(day), time.fromisoformat(at)


@pytest.mark.parametrize(("zone", "local", "expected", "why"), CASES)
def test_a_local_morning_falls_at_the_expected_instant(zone: str, local: str, expected: str, why: str) -> None:
    day, at = _local(local)
    found = instant(day, at, zone)
    assert (f"{found:%Y-%m-%dT%H:%MZ}" if found else "no-such-day") == expected, why


@pytest.mark.parametrize(("zone", "local", "expected", "why"), CASES)
def test_a_second_reader_of_the_data_agrees(zone: str, local: str, expected: str, why: str) -> None:
    day, at = _local(local)
    with files("tzdata").joinpath("zoneinfo", *zone.split("/")).open("rb") as data:
        second = tz.tzfile(data, filename=zone)
    wall = datetime.combine(day, at, tzinfo=second)
    found = tz.resolve_imaginary(wall).astimezone(UTC)
    local_again = found.astimezone(second)
    if expected == "no-such-day":
        assert local_again.date() != day, why
    else:
        assert f"{found:%Y-%m-%dT%H:%MZ}" == expected, why


def test_the_table_is_as_new_as_the_data() -> None:
    assert data_version() >= "2026f"
    assert len(CASES) >= 45
