"""Every zone of the IANA data, around every change of its offset, against a second reader of the same files.

The second reader is this file's own. The tzdata package ships "slim" files, whose changes after the last listed one
follow from the POSIX TZ line at their end, and python-dateutil does not read that line; so the files are read here
by the format's description, RFC 8536 (now RFC 9636), sections 3.1 to 3.3, on whole seconds, with no zoneinfo and no
datetime arithmetic. The rules for gaps and repeated times are RFC 5545 3.3.5 and PEP 495 (fold=0).
"""

from __future__ import annotations

import re
import struct
from bisect import bisect_right
from calendar import monthrange
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from functools import cache
from importlib.resources import files
from importlib.resources.abc import Traversable
from typing import NamedTuple

from plans.localtime import date_exists, instant, local, zone_names

FIRST_YEAR, LAST_YEAR = 2026, 2031
RULES_UNTIL = 2040
"""The last year for which the line at the end of a file is worked out."""

HOUR, DAY = 3600, 86400
FARTHEST = 26 * HOUR
"""No offset is larger, on either side (RFC 8536, 3.2)."""

MORNING = time(7)
TIMES = (time(0), time(1, 30), time(2, 30), time(3), MORNING, time(23, 30))
AROUND = 2
"""So many dates before and after a change are asked for."""

Ask = Callable[[date, time, str], datetime | None]


class Change(NamedTuple):
    """From the second `at` (of UTC, since 1970) on, the offset is `after`, and it was `before`."""

    at: int
    before: int
    after: int


class Reading(NamedTuple):
    """The second a local date and time means, and the second the clocks of the zone then show."""

    at: int
    shown: int


class Case(NamedTuple):
    """A local date and time, and what the second reader makes of it: None for a date the zone skips."""

    day: date
    at: time
    expected: Reading | None


def wall(day: date, at: time) -> int:
    """The seconds from the start of 1970 to a date and time, both on the same clock."""
    return (day.toordinal() - date(1970, 1, 1).toordinal()) * DAY + at.hour * HOUR + at.minute * 60 + at.second


def day_of(seconds: int) -> date:
    """The date of a number of seconds, the inverse of wall."""
    return date.fromordinal(date(1970, 1, 1).toordinal() + seconds // DAY)


def time_of(seconds: int) -> time:
    """The time of day of a number of seconds, the inverse of wall."""
    minutes, second = divmod(seconds % DAY, 60)
    return time(minutes // 60, minutes % 60, second)


@dataclass(frozen=True)
class Offsets:
    """A zone as the second reader has it: one offset, then changes in order, each of them a real one."""

    first: int
    changes: tuple[Change, ...]
    moments: tuple[int, ...]

    def at(self, moment: int) -> int:
        """The offset at a second of UTC."""
        i = bisect_right(self.moments, moment)
        return self.changes[i - 1].after if i else self.first

    def stretches(self, around: int) -> Iterator[tuple[int, int | None, int | None]]:
        """The offsets that may be in use when some clock shows `around`, each with its first second and its end."""
        i = bisect_right(self.moments, around - FARTHEST)
        while True:
            start = self.moments[i - 1] if i else None
            end = self.moments[i] if i < len(self.moments) else None
            yield (self.changes[i - 1].after if i else self.first), start, end
            if end is None or end > around + FARTHEST:
                return
            i += 1

    def has(self, day: date) -> bool:
        """Whether the clocks show any part of a date."""
        dawn = wall(day, time(0))
        return any(
            (start is None or start + offset < dawn + DAY) and (end is None or end + offset > dawn)
            for offset, start, end in (*self.stretches(dawn), *self.stretches(dawn + DAY))
        )

    def read(self, day: date, at: time) -> Reading | None:
        """The first time the clocks show a date and time, or by the offset before the gap; None for no such date."""
        if not self.has(day):
            return None
        asked = wall(day, at)
        for offset, start, end in self.stretches(asked):
            moment = asked - offset
            if (start is None or start <= moment) and (end is None or moment < end):
                return Reading(moment, asked)
        for offset, _start, end in self.stretches(asked):
            if end is not None and end + offset <= asked < end + self.at(end):
                return Reading(asked - offset, asked - offset + self.at(asked - offset))
        raise AssertionError(f"{day} {at} is neither shown nor jumped over")


_NAME = r"(?:<[A-Za-z0-9+-]+>|[A-Za-z]{3,})"
_CLOCK = r"[+-]?\d{1,3}(?::\d\d){0,2}"
_TURN = rf"(?:J?\d+|M\d+\.\d\.\d)(?:/{_CLOCK})?"
_LINE = re.compile(rf"{_NAME}({_CLOCK})(?:{_NAME}({_CLOCK})?,({_TURN}),({_TURN}))?")


def _clock(text: str) -> int:
    hours, minutes, seconds = ([*text.lstrip("+-").split(":"), "0", "0"])[:3]
    return (-1 if text.startswith("-") else 1) * (int(hours) * HOUR + int(minutes) * 60 + int(seconds))


def _turn(text: str, year: int) -> int:
    """The clock's seconds at which a rule such as M3.5.0/2 or J60 turns in a year."""
    rule, _slash, at = text.partition("/")
    start = wall(date(year, 1, 1), time(0))
    if rule.startswith("M"):
        month, week, weekday = map(int, rule[1:].split("."))
        offset = (weekday - date(year, month, 1).isoweekday()) % 7
        number = 1 + offset + 7 * (week - 1)
        while number > monthrange(year, month)[1]:
            number -= 7
        start = wall(date(year, month, number), time(0))
    elif rule.startswith("J"):
        number = int(rule[1:])
        start += (number - 1 + (number >= 60 and monthrange(year, 2)[1] == 29)) * DAY
    else:
        start += int(rule) * DAY
    return start + _clock(at or "2")


def _by_line(line: str, first_year: int) -> Iterator[tuple[int, int]]:
    """The changes that the line at the end of a file gives, as the second and the offset from then on."""
    parts = _LINE.fullmatch(line)
    if parts is None:
        raise AssertionError(f"{line!r} is no POSIX TZ line")
    if parts[3] is None:
        return
    standard = -_clock(parts[1])
    summer = -_clock(parts[2]) if parts[2] else standard + HOUR
    turns = []
    for year in range(first_year, RULES_UNTIL + 1):
        turns += [(_turn(parts[3], year) - standard, summer), (_turn(parts[4], year) - summer, standard)]
    yield from sorted(turns)


def parse(data: bytes) -> Offsets:
    """A file of the zone data, of version 2 or newer, read by RFC 8536."""
    header = struct.Struct(">4sc15x6L")
    block = 0
    for size in (4, 8):  # the first block is for old readers and is passed over
        magic, version, utc_marks, standard_marks, leaps, times, types, letters = header.unpack_from(data, block)
        if magic != b"TZif" or version < b"2" or leaps:
            raise AssertionError(f"not a zone file of version 2 without leap seconds: {data[:5]!r}, {leaps}")
        start = block + header.size
        kinds = start + times * size
        table = kinds + times
        block = table + types * 6 + letters + leaps * (size + 4) + standard_marks + utc_marks
    moments = struct.unpack_from(f">{times}q", data, start)
    offsets = [struct.unpack_from(">lBB", data, table + 6 * i)[0] for i in range(types)]
    line = data[block:].decode("ascii")
    if not (line.startswith("\n") and line.endswith("\n")):
        raise AssertionError(f"no line at the end of the file: {line!r}")
    listed = [(at, offsets[kind]) for at, kind in zip(moments, data[kinds : kinds + times], strict=True)]
    first = offsets[0]
    if line.strip():
        last = listed[-1][0] if listed else wall(date(1900, 1, 1), time(0))
        listed += [(at, offset) for at, offset in _by_line(line.strip(), day_of(last).year) if at > last]
    changes: list[Change] = []
    for at, after in listed:
        before = changes[-1].after if changes else first
        if after != before:
            changes.append(Change(at, before, after))
    return Offsets(first, tuple(changes), tuple(change.at for change in changes))


def _zone_files(folder: Traversable, prefix: str = "") -> Iterator[tuple[str, bytes]]:
    for entry in folder.iterdir():
        if entry.is_dir():
            yield from _zone_files(entry, f"{prefix}{entry.name}/")
        elif (data := entry.read_bytes()).startswith(b"TZif"):
            yield prefix + entry.name, data


@cache
def zones() -> tuple[tuple[Offsets, tuple[str, ...]], ...]:
    """All zone files of the data by the second reader, each with every name that has the same contents."""
    names: dict[bytes, list[str]] = {}
    for name, data in sorted(_zone_files(files("tzdata").joinpath("zoneinfo"))):
        names.setdefault(data, []).append(name)
    return tuple((parse(data), tuple(same)) for data, same in names.items())


def changes_in(offsets: Offsets, first_year: int, last_year: int) -> list[Change]:
    """The changes of a zone that fall into some years (of UTC), both included."""
    return [change for change in offsets.changes if first_year <= day_of(change.at).year <= last_year]


def cases_around(offsets: Offsets, change: Change) -> list[Case]:
    """What the second reader makes of the dates and times around a change, one time of day after the other."""
    first = day_of(change.at + change.before)
    last = day_of(change.at + change.after)
    days = [min(first, last) + timedelta(days=i) for i in range(-AROUND, abs((last - first).days) + AROUND + 1)]
    of_change = {time_of(change.at + change.before), time_of(change.at + change.after)}
    return [Case(day, at, offsets.read(day, at)) for at in sorted({*TIMES, *of_change}) for day in days]


def _text(seconds: int | None) -> str:
    return "no such date" if seconds is None else f"{day_of(seconds)} {time_of(seconds)}"


def differences(name: str, cases: Iterable[Case], ask: Ask = instant) -> list[str]:
    """Where the program and the second reader disagree, or where a later date does not come later.

    Cases of one time of day must follow one another, in the order of the dates.
    """
    wrong: list[str] = []
    asked: time | None = None
    latest: int | None = None
    for day, at, expected in cases:
        moment = ask(day, at, name)
        found = None if moment is None else int(moment.timestamp())
        if found != (None if expected is None else expected.at):
            wrong.append(f"{name} {day} {at}: found {_text(found)}, expected {_text(expected and expected.at)} (UTC)")
        if date_exists(day, name) != (expected is not None):
            wrong.append(f"{name} {day} {at}: the date is {'skipped' if expected else 'there'} by the program only")
        if moment is not None and expected is not None:
            shown = local(moment, name)
            if wall(shown.date(), shown.time()) != expected.shown:
                wrong.append(f"{name} {day} {at}: found {shown:%F %T}, expected {_text(expected.shown)} (local)")
        if at != asked:
            asked, latest = at, None
        if found is not None:
            if latest is not None and found <= latest:
                wrong.append(f"{name} {day} {at}: found {_text(found)}, expected later than {_text(latest)} (UTC)")
            latest = found
    return wrong


def _listed(wrong: list[str]) -> str:
    return "\n".join([f"{len(wrong)} differences", *wrong[:20]])


def _second(text: str) -> int:
    return int(datetime.fromisoformat(text).replace(tzinfo=UTC).timestamp())


def test_the_second_reader_finds_the_changes_that_are_known() -> None:
    by_name = {name: offsets for offsets, names in zones() for name in names}
    known: dict[tuple[str, int], list[tuple[str, float, float]]] = {
        ("Europe/London", 2031): [("2031-03-30T01:00", 0, 1), ("2031-10-26T01:00", 1, 0)],
        ("America/New_York", 2026): [("2026-03-08T07:00", -5, -4), ("2026-11-01T06:00", -4, -5)],
        ("Australia/Lord_Howe", 2026): [("2026-04-04T15:00", 11, 10.5), ("2026-10-03T15:30", 10.5, 11)],
        ("America/Nuuk", 2027): [("2027-03-28T01:00", -2, -1), ("2027-10-31T01:00", -1, -2)],
        ("Pacific/Apia", 2011): [
            ("2011-04-02T14:00", -10, -11),
            ("2011-09-24T14:00", -11, -10),
            ("2011-12-30T10:00", -10, 14),
        ],
        ("Asia/Kolkata", 2026): [],
    }
    for (name, year), expected in known.items():
        found = changes_in(by_name[name], year, year)
        assert found == [Change(_second(at), int(a * HOUR), int(b * HOUR)) for at, a, b in expected], name
    for name, day in (
        ("Pacific/Apia", date(2011, 12, 30)),
        ("Pacific/Fakaofo", date(2011, 12, 30)),
        ("Pacific/Kwajalein", date(1993, 8, 21)),
        ("Pacific/Kiritimati", date(1994, 12, 31)),
        ("Pacific/Enderbury", date(1994, 12, 31)),
    ):
        there = [by_name[name].has(day + timedelta(days=i)) for i in (-1, 0, 1)]
        assert there == [True, False, True], name
        assert [date_exists(day + timedelta(days=i), name) for i in (-1, 0, 1)] == there, name


def test_the_program_knows_every_zone_file_by_its_name() -> None:
    assert zone_names() == {name for _offsets, names in zones() for name in names}


def test_every_zone_agrees_with_the_second_reader_in_every_half_year() -> None:
    days = [date(year, month, 1) for year in range(FIRST_YEAR, LAST_YEAR + 1) for month in (1, 7)]
    wrong: list[str] = []
    for offsets, names in zones():
        cases = [Case(day, MORNING, offsets.read(day, MORNING)) for day in days]
        for name in names:
            wrong += differences(name, cases)
    assert not wrong, _listed(wrong)


def test_every_zone_agrees_with_the_second_reader_around_every_change() -> None:
    wrong: list[str] = []
    changes = 0
    for offsets, names in zones():
        for change in changes_in(offsets, FIRST_YEAR, LAST_YEAR):
            cases = cases_around(offsets, change)
            changes += len(names)
            for name in names:
                wrong += differences(name, cases)
    assert not wrong, _listed(wrong)
    assert changes > 1000


def test_a_date_that_is_skipped_around_the_date_line_is_skipped_by_both_readers() -> None:
    wrong: list[str] = []
    skipped: set[tuple[str, date]] = set()
    for offsets, names in zones():
        for change in changes_in(offsets, 1970, FIRST_YEAR - 1):
            if change.after - change.before >= DAY // 2:
                cases = cases_around(offsets, change)
                for name in names:
                    wrong += differences(name, cases)
                    skipped |= {(name, case.day) for case in cases if case.expected is None}
    assert not wrong, _listed(wrong)
    assert {("Pacific/Apia", date(2011, 12, 30)), ("Pacific/Kwajalein", date(1993, 8, 21))} <= skipped


def test_the_check_sees_a_gap_or_a_repeated_time_read_the_other_way() -> None:
    def the_other_way(day: date, at: time, name: str) -> datetime | None:
        found = instant(day, at, name)
        if found is None:
            return None
        shown = local(found, name)
        return shown.replace(hour=at.hour, minute=at.minute, second=at.second, fold=1).astimezone(UTC)

    for name, jumped, repeated in (("Europe/Berlin", "02:30:00", "02:30:00"), ("Asia/Beirut", "00:00:00", "23:30:00")):
        offsets = next(offsets for offsets, names in zones() if name in names)
        spring, autumn = changes_in(offsets, 2026, 2026)
        for change, at in ((spring, jumped), (autumn, repeated)):
            cases = cases_around(offsets, change)
            assert differences(name, cases) == []
            assert any(f" {at}: found" in line for line in differences(name, cases, the_other_way)), (name, at)
