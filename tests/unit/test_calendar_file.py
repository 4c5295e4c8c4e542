"""The calendar file as RFC 5545 has it, read by the icalendar package, by dateutil's reader of zones, and by hand."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, time, timedelta
from io import StringIO

import pytest
from dateutil.tz import tzical
from hypothesis import given
from hypothesis import settings as hypothesis_settings
from hypothesis import strategies as st
from icalendar import Calendar

from bot.exports.calendar import Dated, calendar
from plans.localtime import instant

MADE = datetime(2026, 3, 20, 12, tzinfo=UTC)
DAYS = [date(2026, 3, 22) + timedelta(days=n) for n in range(16)]
"""On these dates clocks change in Europe, go back by half an hour in Lord Howe Island, and forward again in Morocco."""
ZONES = [
    "UTC",
    "Europe/Lisbon",
    "America/New_York",
    "Australia/Lord_Howe",
    "Africa/Casablanca",
    "Asia/Kathmandu",
    "America/Sao_Paulo",
    "Europe/Dublin",
    "Pacific/Apia",
]


def dated(days: list[date], **more: object) -> list[Dated]:
    values = {"summary": "Hips. Day 1", "about": "20 minutes", "minutes": 20} | more
    return [Dated(f"name-{on}", on=on, **values) for on in days]  # type: ignore[arg-type]


def made(zone: str, at: time, days: list[date]) -> bytes:
    return calendar("Hips", zone, at, dated(days), MADE)


def starts(body: bytes) -> list[str]:
    return re.findall(r"^DTSTART[^:\r]*:(\d{8}T\d{6}Z?)\r$", body.decode(), re.MULTILINE)


def events(body: bytes) -> list[str]:
    return re.findall(r"BEGIN:VEVENT\r\n(.*?)END:VEVENT\r\n", body.decode(), re.DOTALL)


@pytest.mark.parametrize("zone", ZONES)
@pytest.mark.parametrize("at", [time(7), time(1, 30), time(2, 15), time(23, 45)])
def test_a_session_begins_at_the_instant_of_its_local_morning(zone: str, at: time) -> None:
    """Read by the icalendar package: local time and zone name, by the zone data that everybody has."""
    for event, on in zip(Calendar.from_ical(made(zone, at, DAYS)).walk("VEVENT"), DAYS, strict=True):
        assert event.decoded("dtstart").astimezone(UTC) == instant(on, at, zone)


@pytest.mark.parametrize("zone", ZONES[1:])
def test_the_zone_in_the_file_alone_gives_the_same_instants(zone: str) -> None:
    """Read by dateutil's reader of VTIMEZONE, which knows nothing but the file. Times in a gap are apart."""
    body, at = made(zone, time(7), DAYS), time(7)
    clock = tzical(StringIO(re.sub(r"BEGIN:VEVENT.*END:VEVENT\r\n", "", body.decode(), flags=re.DOTALL))).get(zone)
    assert clock is not None
    for on in DAYS:
        assert datetime.combine(on, at, tzinfo=clock).astimezone(UTC) == instant(on, at, zone)


def test_a_time_in_a_gap_and_one_that_comes_twice_are_written_as_they_are() -> None:
    """RFC 5545, 3.3.5: the offset before the gap, the first of two, as this program reads them itself."""
    gap = made("Europe/Lisbon", time(1, 30), [date(2026, 3, 29)])
    assert starts(gap)[-1] == "20260329T013000"
    assert instant(date(2026, 3, 29), time(1, 30), "Europe/Lisbon") == datetime(2026, 3, 29, 1, 30, tzinfo=UTC)
    twice = made("Europe/Lisbon", time(1, 30), [date(2026, 10, 25)])
    (event,) = Calendar.from_ical(twice).walk("VEVENT")
    assert event.decoded("dtstart").astimezone(UTC) == datetime(2026, 10, 25, 0, 30, tzinfo=UTC)


def test_a_date_that_the_zone_skips_is_left_out() -> None:
    days = [date(2011, 12, 29), date(2011, 12, 30), date(2011, 12, 31)]
    assert [one[:8] for one in starts(made("Pacific/Apia", time(7), days))[-2:]] == ["20111229", "20111231"]
    assert len(events(made("Pacific/Apia", time(7), days))) == 2


def test_lines_end_and_fold_as_the_standard_says() -> None:
    long = "Ümläute; Kommas, und \\ Striche\nund noch eine Zeile " * 9
    body = calendar(long, "Europe/Lisbon", time(7), dated(DAYS[:2], summary=long, about=long), MADE)
    assert body.endswith(b"END:VCALENDAR\r\n")
    lines = body.split(b"\r\n")
    assert all(len(line) <= 75 for line in lines)
    assert not any(b"\n" in line or b"\r" in line for line in lines)
    for line in lines:
        line.decode()  # no letter is cut in two
    whole = re.sub(r"\r\n[ \t]", "", body.decode())
    escaped = long.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n")
    assert f"SUMMARY:{escaped}\r\n" in whole


@hypothesis_settings(max_examples=60)
@given(st.text(st.characters(exclude_categories=["Cs", "Cc"], include_characters="\n"), max_size=200))
def test_any_words_come_back_as_they_were(words: str) -> None:
    body = calendar(words, "Europe/Lisbon", time(7), dated(DAYS[:1], summary=words, about=words), MADE)
    (event,) = Calendar.from_ical(body).walk("VEVENT")
    assert (str(event["summary"]), str(event["description"])) == (words, words)
    assert len(events(body)) == 1


def test_each_event_has_what_the_standard_requires_once() -> None:
    """RFC 5545, 3.6 and 3.6.1: PRODID and VERSION; UID, DTSTAMP in UTC, and DTSTART beside METHOD."""
    body = calendar("Hips", "Europe/Lisbon", time(7), [*dated(DAYS[:3]), *dated(DAYS[3:4], minutes=None)], MADE)
    head = body.decode().partition("BEGIN:VTIMEZONE")[0]
    for line in ("VERSION:2.0", "PRODID:", "METHOD:PUBLISH"):
        assert head.count(line) == 1
    for event in events(body):
        for name in ("UID", "DTSTAMP", "DTSTART", "SUMMARY"):
            assert len(re.findall(rf"^{name}[:;]", event, re.MULTILINE)) == 1
        assert "DTSTAMP:20260320T120000Z\r\n" in event
        assert "CLASS:PRIVATE\r\n" in event
    assert len({*re.findall(r"^UID:(.*)\r$", body.decode(), re.MULTILINE)}) == 4


def test_a_rest_day_is_a_date_that_blocks_no_time() -> None:
    (event,) = events(calendar("Hips", "Europe/Lisbon", time(7), dated(DAYS[:1], minutes=None), MADE))
    assert "DTSTART;VALUE=DATE:20260322\r\n" in event
    assert "TRANSP:TRANSPARENT\r\n" in event
    assert "DURATION" not in event


def test_a_session_lasts_as_long_as_it_takes() -> None:
    (event,) = Calendar.from_ical(made("Europe/Lisbon", time(7), DAYS[:1])).walk("VEVENT")
    assert event.decoded("duration") == timedelta(minutes=20)
    assert event["dtstart"].params["TZID"] == "Europe/Lisbon"


def test_where_clocks_are_utc_there_is_no_zone_to_describe() -> None:
    body = made("UTC", time(7), DAYS[:1])
    assert starts(body) == ["20260322T070000Z"]
    assert b"VTIMEZONE" not in body
