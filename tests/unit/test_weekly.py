"""A client's week from their rows, counted by hand."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plans.checkin import Area, CheckIn, Completion, Place
from plans.fitting import Fit
from plans.ledger import Entry, RowKind
from plans.rules import Verdict
from plans.weekly import ClientWeek, Handed, client_week, group_week, own_completion, seconds_of
from tests.samples import programme, session

LAST = date(2026, 3, 29)
DONE, LEFT = CheckIn(Completion.DONE, 0, tightness=2), CheckIn(Completion.NONE)
TWO = programme(session(), session(3))


def handed(back: int, said: CheckIn = DONE, level: int = 0) -> Handed:
    entry = Entry(LAST - timedelta(days=back), RowKind.SESSION, day=1, level=level, checkin=said)
    return Handed(entry, Verdict.ADVANCE)


def week(
    *rows: Handed, today: date = LAST + timedelta(days=1), barred: tuple[str, ...] = (), heard: date | None = None
) -> ClientWeek:
    ordered, fit = sorted(rows, key=lambda row: row.entry.on), Fit(barred=barred)
    return client_week(ordered, LAST, today=today, heard_on=heard, fit=fit, seconds=seconds_of(TWO))


def test_four_weeks_stand_side_by_side_and_older_rows_are_no_part_of_them() -> None:
    found = week(handed(0), handed(6, LEFT), handed(7), handed(27), handed(28), handed(56))
    assert [(one.due, one.done) for one in found.weeks] == [(1, 1), (0, 0), (1, 1), (2, 1)]
    assert len(found.sessions) == 5
    assert found.followed == (Verdict.ADVANCE,) * 2


def test_a_session_of_today_that_is_not_answered_is_still_open() -> None:
    assert week(handed(0, CheckIn()), handed(1), today=LAST).week.due == 1
    assert week(handed(0, CheckIn(pain=0)), handed(1), today=LAST).week.due == 2
    closed = week(handed(0, CheckIn()), handed(1))
    assert (closed.week.due, closed.week.silent, closed.silent) == (2, 1, 1)


def test_a_word_of_any_kind_ends_the_silence() -> None:
    rows = [handed(back, CheckIn()) for back in range(4)]
    assert week(*rows).silent == 4
    assert week(*rows, heard=LAST - timedelta(days=2)).silent == 2


def test_the_dose_is_what_was_asked_and_what_was_handed_out_of_it() -> None:
    """Two rounds: 8 sways of 4 s, and 30 s for each side."""
    whole = 2 * (8 * 4 + 2 * 30)
    as_written, eased = week(handed(0)).sessions[0], week(handed(0, level=2)).sessions[0]
    assert (as_written.asked, as_written.given) == (whole, whole)
    assert (eased.asked, eased.given < whole) == (whole, True)
    barred = week(handed(0), barred=("sway",)).sessions[0]
    assert (barred.asked, barred.given) == (whole, 2 * 2 * 30)


def test_what_hurts_elsewhere_takes_from_the_dose_until_it_is_said_to_be_gone() -> None:
    knee = CheckIn(Completion.DONE, 3, place=Place.ELSEWHERE, area=Area.THIGH)
    given = [one.given for one in week(handed(3), handed(2, knee), handed(1, CheckIn()), handed(0)).sessions]
    assert given[0] == given[3] > given[1] == given[2]


def test_a_group_is_its_clients_together() -> None:
    one, other = week(handed(0), handed(1, LEFT)), week(handed(0, CheckIn()), handed(8))
    group = group_week([one, other], [one], LAST)
    assert (group.week.due, group.week.done, group.week.silent, group.week.pains) == (3, 1, 1, (0,))
    assert group.followed == {Verdict.ADVANCE: 3}
    assert sum(group.pain.values()) == 1
    rate = group.comparison.completion.week
    assert rate.sessions == 3
    assert [rate.least, rate.most] == pytest.approx([1 / 3, 2 / 3])
    assert own_completion(one, LAST).week.sessions == 2
