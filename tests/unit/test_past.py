"""What the rules remember of the rows before: soreness, weeks, tightness, tries."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plans.checkin import CheckIn, Completion, Flag, FlagState, Kind, Morning, Place
from plans.ledger import Entry, RowKind
from plans.past import Past
from plans.rules import Lingering, Settings

START = date(2026, 5, 4)


def row(after: int, pain: int | None = 0, *, day: int = 1, level: int = 0, voted: str = "", **said: object) -> Entry:
    """A session row, done with so much pain."""
    checkin = CheckIn(**{"completion": Completion.DONE, "pain": pain} | said)  # type: ignore[arg-type]
    voting = frozenset(voted.split())
    return Entry(START + timedelta(days=after), RowKind.SESSION, day, level, checkin=checkin, voted=voting)


def past(*rows: Entry, usual: int = 0) -> Past:
    return Past.of(rows, Settings(), usual)


def on(after: int) -> date:
    return START + timedelta(days=after)


# --- soreness that lingers (Cheung et al. 2003, Sports Med 33:145: it peaks at 24-72 h, gone by day 5-7) --------------


@pytest.mark.parametrize(
    ("pains", "expected"),
    [
        ([2, 2, 1, 1, 0], Lingering.NO),
        ([2, 2, 2, 2, 2, 2], Lingering.NO),
        ([2, 2, 2, 2, 2, 2, 2], Lingering.NOTED),
        ([3, 3, 3, 3, 3, 3, 3], Lingering.REST),
        ([2, 3, 2, 4], Lingering.NO),
        ([2, 3, 2, 5], Lingering.REST),
        ([3, 5, 5], Lingering.NO),
        ([1, 1, 1, 3], Lingering.REST),
        ([2, 2, 2, 0, 2, 2, 2], Lingering.NO),
    ],
)
def test_pain_that_rises_late_or_stays_seven_dates_lingers(pains: list[int], expected: Lingering) -> None:
    assert past(*(row(after, pain) for after, pain in enumerate(pains))).lingering() is expected


def test_what_lingers_is_said_once_until_it_is_gone() -> None:
    rows = [row(after, 3) for after in range(7)]
    assert past(*rows).lingering() is Lingering.REST
    assert past(*rows, row(7, 3, voted="sore-too-long")).lingering() is Lingering.NO
    noted = [row(after, 2) for after in range(7)]
    assert past(*noted, row(7, 2, voted="sore-noted")).lingering() is Lingering.NO
    assert past(*noted, row(7, 5, voted="sore-noted")).lingering() is Lingering.REST
    gone = [row(7, 3, voted="sore-too-long"), row(8, 0), *(row(after, 3) for after in range(9, 16))]
    assert past(*rows, *gone).lingering() is Lingering.REST


def test_soreness_in_words_counts_and_the_usual_pain_and_other_places_do_not() -> None:
    assert past(*(row(after, None, sore=True) for after in range(7))).lingering() is Lingering.NOTED
    assert past(*(row(after, 2) for after in range(7)), usual=2).lingering() is Lingering.NO
    elsewhere = [row(after, 4, place=Place.ELSEWHERE) for after in range(7)]
    assert past(*elsewhere).lingering() is Lingering.NO


# --- week on week -----------------------------------------------------------------------------------------------------


def test_two_weeks_are_compared_by_their_means_of_three_answers_and_more() -> None:
    rows = [row(0, 1), row(2, 2), row(4, 3), row(7, 4), row(9, 4), row(13, 5)]
    before, now = past(*rows).weeks(on(14)) or (0, 0)
    assert (before, round(now, 2)) == (2, 4.33)
    assert past(*rows[1:]).weeks(on(14)) is None
    assert past(*rows[:-1]).weeks(on(14)) is None


def test_weeks_are_compared_once_a_week_and_the_usual_pain_counts_as_two() -> None:
    rows = [row(after, 4) for after in range(14)]
    assert past(*rows).weeks(on(14)) == (4, 4)
    assert past(*rows, usual=3).weeks(on(14)) is None, "the usual pain is no pain"
    fired = [*rows[:-3], row(11, 4, voted="week-on-week"), *rows[-2:]]
    assert past(*fired).weeks(on(14)) is None
    assert past(*fired).weeks(on(18)) == (4, 4)


# --- tightness, tries, nerve signs ------------------------------------------------------------------------------------


def test_tightness_is_compared_with_the_median_of_five_earlier_answers() -> None:
    usual = [row(after, tightness=value) for after, value in enumerate([2, 3, 3, 4, 9])]
    assert past(*usual, row(5, tightness=7)).over_tightness == 4
    assert past(*usual[1:], row(5, tightness=7)).over_tightness == 0
    assert past(*usual, row(5)).over_tightness == 0
    assert past(*usual, row(5, tightness=7, voted="tight")).over_tightness == 0


def test_tries_count_what_was_done_before_on_the_same_day() -> None:
    missed = row(1, None, completion=None)
    assert past(row(0, 4), row(1, 4), row(2, 4)).earlier_tries == 2
    assert past(row(0, 4), missed, row(2, 4)).earlier_tries == 1
    assert past(row(0, 4), row(1, 4), row(2, 4, day=2)).earlier_tries == 0
    assert past(row(0, 4, level=1), row(1, 4, level=1), row(2, 4, level=0)).earlier_tries == 0, "a climb has passed"
    assert past(row(0, 4), row(1, 4, level=1), row(2, 4, level=1)).earlier_tries == 2
    assert past(row(0, 4), row(1, 4), row(2, 4), row(3, 4, voted="stuck")).earlier_tries == 0
    rest = Entry(on(1), RowKind.REST, 2, prescribed=True)
    assert past(row(0, 4), rest, row(2, 4)).earlier_tries == 1


def test_soreness_of_the_first_week_is_no_try() -> None:
    assert past(*(row(after, 2, kind=Kind.DULL_BOTH) for after in range(3))).earlier_tries == 0
    late = [row(0), *(row(after, 2, kind=Kind.DULL_BOTH) for after in (7, 8, 9))]
    assert past(*late).earlier_tries == 3


def test_the_lightest_version_counts_as_long_as_it_is_not_clean() -> None:
    light = [row(after, 4, level=2) for after in range(3)]
    assert past(*light).light_tries == 3
    assert past(*light[:2], row(2, 0, level=2)).light_tries == 0
    assert past(*light[:2], row(2, 4, day=2, level=2)).light_tries == 1


def test_nerve_signs_that_went_away_are_remembered() -> None:
    signs = row(0, 1, kind=Kind.NERVE, flag=Flag.CLINICIAN, flag_state=FlagState.DENIED)
    assert not past(signs).nerve_before
    assert not past(signs, Entry(on(1), RowKind.ASKING, morning=Morning.SETTLED)).nerve_before
    assert past(signs, row(1)).nerve_before


# --- what was there before --------------------------------------------------------------------------------------------


def test_clean_and_held_days_of_two_weeks_are_remembered() -> None:
    found = past(row(0, day=1), row(1, 4, day=2), row(10, day=3), row(14, day=4))
    assert found.clean == [(on(10), 3), (on(14), 4)]
    assert found.known == {1, 2, 3, 4}
    assert (found.first_held(7), found.first_held(14)) == (3, 2)


def test_no_more_of_the_held_days_is_kept_than_is_asked_for() -> None:
    found = past(*(row(n, day=n + 1) for n in range(40)))
    assert (len(found.held), found.first_held(7), found.first_held(14)) == (14, 34, 27)


def test_the_source_of_a_mornings_question_is_the_last_session_or_report() -> None:
    asking = Entry(on(1), RowKind.ASKING, morning=Morning.SAME)
    found = past(row(0, 4), asking)
    assert found.source == row(0, 4)
    assert (found.mornings, found.asked_on, found.last) == ([(on(1), Morning.SAME)], [on(1)], row(0, 4))
    waiting = Entry(on(2), RowKind.WAITING)
    assert past(row(0, 4), asking, waiting).source is None
