"""Somebody's own day: cities, times, mornings."""

from __future__ import annotations

from datetime import UTC, date, datetime, time

import pytest

from bot.flows import places, times
from db.schema import Person


def person(zone: str | None = "Europe/Lisbon", morning: time | None = time(7)) -> Person:
    return Person(chat=1, label="X", language="en", zone=zone, morning=morning)


@pytest.mark.parametrize(
    ("typed", "first"),
    [
        ("Lisbon", "Europe/Lisbon"),
        ("lisbonn", "Europe/Lisbon"),
        ("new york", "America/New_York"),
        ("Europe/Paris", "Europe/Paris"),
        ("Ho Chi Minh", "Asia/Ho_Chi_Minh"),
    ],
)
def test_a_typed_city_finds_its_zone(typed: str, first: str) -> None:
    assert places.zones_like(typed)[0] == first


@pytest.mark.parametrize("typed", ["", "12", "qqqqqq", "🏔"])
def test_what_is_no_city_finds_nothing(typed: str) -> None:
    assert places.zones_like(typed) == []


@pytest.mark.parametrize(
    ("typed", "found"),
    [
        ("7:15", time(7, 15)),
        ("7", time(7)),
        ("06.30", time(6, 30)),
        ("12 am", time(0)),
        ("12pm", time(12)),
        ("24:00", None),
        ("7:61", None),
        ("seven", None),
        ("13 pm", None),
    ],
)
def test_a_typed_time_is_read_or_refused(typed: str, found: time | None) -> None:
    assert places.time_of(typed) == found


def test_the_next_morning_lies_ahead() -> None:
    before, after = datetime(2026, 5, 4, 5, 59, tzinfo=UTC), datetime(2026, 5, 4, 6, 0, tzinfo=UTC)
    assert times.next_morning(person(), before) == datetime(2026, 5, 4, 6, 0, tzinfo=UTC)
    assert times.next_morning(person(), after) == datetime(2026, 5, 5, 6, 0, tzinfo=UTC)


def test_a_date_that_the_zone_skips_falls_on_the_next_one() -> None:
    apia = person("Pacific/Apia")
    assert times.at(apia, date(2011, 12, 30), time(7)) == times.at(apia, date(2011, 12, 31), time(7))


def test_a_session_is_late_in_the_early_afternoon_but_never_within_two_hours() -> None:
    assert times.too_late(person(), date(2026, 5, 4)) == datetime(2026, 5, 4, 13, 0, tzinfo=UTC)
    late = person(morning=time(18))
    assert times.too_late(late, date(2026, 5, 4)) == datetime(2026, 5, 4, 19, 0, tzinfo=UTC)


def test_a_weekly_instant_is_the_next_one_of_its_weekday() -> None:
    monday = datetime(2026, 5, 4, 16, 0, tzinfo=UTC)
    assert times.next_weekday(person(), 0, time(17), monday) == datetime(2026, 5, 11, 16, 0, tzinfo=UTC)
    assert times.next_weekday(person(), 0, time(17), monday.replace(hour=15)) == monday
