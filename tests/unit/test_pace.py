"""Training weekdays, and a group that goes through a programme date by date."""

from __future__ import annotations

from datetime import date, timedelta

import pytest

from plans.checkin import CheckIn, Completion, Morning, Why
from plans.course import Decision, Position, decide
from plans.ledger import Entry, Question, RowKind
from plans.pace import Pace, pace_of
from plans.programme import Programme
from plans.reading import read_programme
from plans.rules import Settings, Verdict
from tests.samples import HEAD, NEW, REST, TEST, programme, session

MONDAY = date(2026, 5, 4)
CLEAN = CheckIn(Completion.DONE, pain=0)
PLAN = programme(session(), session(), REST, session(), NEW, TEST)
TWICE = Pace(MONDAY, (0, 3))


def on(after: int) -> date:
    return MONDAY + timedelta(days=after)


def ask(
    pace: Pace, position: Position, *past: Entry, after: int, plan: Programme = PLAN, show: bool = False
) -> Decision:
    return decide(plan, position, past, on(after), settings=Settings(), pace=pace, ask=not show)


def row(after: int, day: int, said: CheckIn = CLEAN, *, level: int = 0, kind: RowKind = RowKind.SESSION) -> Entry:
    return Entry(on(after), kind, day, level, checkin=said)


def off(after: int, morning: Morning | None = None) -> Entry:
    return Entry(on(after), RowKind.OFF, morning=morning)


# --- the calendar -----------------------------------------------------------------------------------------------------


def test_a_calendar_knows_its_training_dates() -> None:
    assert [TWICE.trains_on(on(n)) for n in range(8)] == [True, False, False, True, False, False, False, True]
    assert TWICE.next_training(on(0)) == on(3)
    assert TWICE.next_training(on(3)) == on(7)
    assert Pace(MONDAY).next_training(on(0)) == on(1)


@pytest.mark.parametrize("after", range(40))
def test_the_groups_day_counts_training_dates(after: int) -> None:
    assert Pace(MONDAY).group_day(on(after)) == after + 1
    for start in (MONDAY, on(1), on(4)):
        pace = Pace(start, (0, 3))
        counted = sum(pace.trains_on(start + timedelta(days=n)) for n in range(after + 1))
        assert pace.group_day(start + timedelta(days=after)) == max(1, counted)


@pytest.mark.parametrize(
    ("line", "chosen", "weekdays"),
    [
        ("", None, None),
        ("training-days: [thursday, monday]\n", (1, 2), (0, 3)),
        ("training-days: 2\n", None, (0, 3)),
        ("training-days: 2\n", (1, 4), (1, 4)),
        ("training-days: 3\n", (1, 4), (0, 2, 4)),
    ],
)
def test_weekdays_are_the_programmes_or_the_clients(
    line: str, chosen: tuple[int, ...] | None, weekdays: tuple[int, ...] | None
) -> None:
    read = read_programme(HEAD.replace("muscles:", f"{line}muscles:") + session())
    assert pace_of(read, MONDAY, chosen) == Pace(MONDAY, weekdays)


# --- training weekdays ------------------------------------------------------------------------------------------------


def test_a_date_without_training_hands_nothing_out_and_the_next_one_goes_on() -> None:
    assert ask(TWICE, Position(), after=0).kind is RowKind.SESSION
    between = ask(TWICE, Position(1), row(0, 1), after=1)
    assert (between.kind, between.day, between.reason) == (RowKind.OFF, None, "off")
    onward = ask(TWICE, Position(1), row(0, 1), off(1), off(2), after=3)
    assert (onward.kind, onward.day, onward.verdict) == (RowKind.SESSION, 2, Verdict.ADVANCE)


def test_a_rest_day_beside_a_day_off_is_taken_already() -> None:
    onward = ask(TWICE, Position(2), row(0, 1), off(1), off(2), row(3, 2), off(4), off(5), off(6), after=7)
    assert (onward.kind, onward.day) == (RowKind.SESSION, 4)
    short = CheckIn(Completion.PART, pain=0, why=Why.TIME, half=False)
    again = ask(TWICE, Position(2), row(3, 2, short), off(4), off(5), off(6), after=7)
    assert (again.kind, again.day, again.position.rests_taken) == (RowKind.SESSION, 2, 1)
    daily = ask(Pace(MONDAY), Position(2), row(0, 1), row(1, 2), after=2)
    assert (daily.kind, daily.day) == (RowKind.REST, 3)


def test_a_missed_date_is_a_miss_only_on_a_training_date() -> None:
    found = ask(TWICE, Position(1), row(0, 1, CheckIn()), off(1), off(2), after=3)
    assert (found.kind, found.day, found.reason) == (RowKind.SESSION, 1, "not-done")


def test_pain_is_asked_about_on_a_day_off_and_a_settled_one_counts_on_the_next_training_date() -> None:
    sore = row(0, 1, CheckIn(Completion.DONE, pain=4))
    assert ask(TWICE, Position(1), sore, after=1).question is Question.MORNING
    answered = Entry(on(1), RowKind.ASKING, morning=Morning.SETTLED)
    assert ask(TWICE, Position(1), sore, answered, after=1).kind is RowKind.OFF
    onward = ask(TWICE, Position(1), sore, off(1, Morning.SETTLED), off(2), after=3)
    assert (onward.kind, onward.day, onward.verdict) == (RowKind.SESSION, 2, Verdict.ADVANCE)


def test_a_worse_morning_on_a_day_off_is_told_at_once_and_twice_running_waits() -> None:
    sore = row(0, 1, CheckIn(Completion.DONE, pain=4))
    worse = ask(TWICE, Position(1), sore, Entry(on(1), RowKind.ASKING, morning=Morning.WORSE), after=1)
    assert (worse.kind, [vote.rule for vote in worse.votes]) == (RowKind.OFF, ["morning-after"])
    again = Entry(on(2), RowKind.ASKING, morning=Morning.WORSE)
    assert ask(TWICE, Position(1), sore, off(1, Morning.WORSE), again, after=2).kind is RowKind.WAITING


def test_on_a_day_off_a_course_keeps_its_place_and_what_refers_waits_at_once() -> None:
    between = ask(TWICE, Position(4, 1), row(0, 4, level=1), after=1)
    assert (between.kind, between.position, between.verdict) == (RowKind.OFF, Position(4, 1), None)
    severe = ask(TWICE, Position(4, 1), row(0, 4, CheckIn(Completion.DONE, pain=9), level=1), after=1, show=True)
    assert (severe.kind, severe.day, severe.position) == (RowKind.WAITING, None, Position(4, 1))
    assert (severe.verdict, severe.reason, severe.facts) == (Verdict.REFER, "severe", {"pain": 9})
    assert severe.heavier, "day 5 has a new movement"
    assert severe.seen is not None
    assert severe.seen.checkin.pain == 9


def test_worse_again_counts_though_it_had_settled_on_a_day_off() -> None:
    sore = row(0, 1, CheckIn(Completion.DONE, pain=4))
    past = [off(1, Morning.SETTLED), off(2), Entry(on(3), RowKind.ASKING, morning=Morning.WORSE)]
    found = ask(TWICE, Position(1), sore, *past, after=3)
    assert (found.kind, found.verdict, found.reason) == (RowKind.REST, Verdict.REST, "morning-after")


def test_pain_of_six_on_a_day_off_changes_nothing_before_the_next_training_date() -> None:
    bad = row(0, 1, CheckIn(Completion.DONE, pain=6))
    between = ask(TWICE, Position(1), bad, after=1, show=True)
    assert (between.kind, between.verdict, between.votes) == (RowKind.OFF, None, ())
    settled = [off(1, Morning.SETTLED), off(2)]
    assert ask(TWICE, Position(1), bad, *settled, after=3, show=True).kind is RowKind.REST


# --- together ---------------------------------------------------------------------------------------------------------

GROUP = Pace(MONDAY, None, together=True)


def test_in_a_group_the_date_decides_the_day_whatever_was_done() -> None:
    assert ask(GROUP, Position(), after=0).day == 1
    missed = ask(GROUP, Position(1), row(0, 1, CheckIn()), after=1)
    assert (missed.kind, missed.day, missed.position.level) == (RowKind.SESSION, 2, 0)
    assert ask(GROUP, Position(2), row(0, 1), row(1, 2), after=2).kind is RowKind.REST
    late = ask(GROUP, Position(3), row(0, 1), row(1, 2), row(2, 3, kind=RowKind.REST), after=3)
    assert (late.kind, late.day) == (RowKind.SESSION, 4)


def test_a_repeat_in_a_group_is_lighter_only_before_a_heavier_day() -> None:
    sore = CheckIn(Completion.DONE, pain=4)
    past = [row(0, 1), row(1, 2), row(2, 3, kind=RowKind.REST), row(3, 4, sore)]
    settled = Entry(on(4), RowKind.ASKING, morning=Morning.SETTLED)
    heavier = ask(GROUP, Position(4), *past, settled, after=4)
    assert (heavier.verdict, heavier.day, heavier.position.level) == (Verdict.REPEAT, 5, 1)
    short = CheckIn(Completion.PART, pain=0, why=Why.TIME, half=False)
    same = ask(GROUP, Position(1), row(0, 1, short), after=1)
    assert (same.verdict, same.day, same.position.level) == (Verdict.REPEAT, 2, 0)


def test_rest_in_a_group_is_that_date_off_and_then_a_level_lighter() -> None:
    bad = row(0, 1, CheckIn(Completion.DONE, pain=6))
    rest = ask(GROUP, Position(1), bad, after=1, show=True)
    assert (rest.kind, rest.position.level) == (RowKind.REST, 1)
    prescribed = Entry(on(1), RowKind.REST, prescribed=True)
    after = ask(GROUP, rest.position, bad, prescribed, after=3, show=True)
    assert (after.kind, after.day, after.position.level) == (RowKind.SESSION, 4, 1)


def test_after_waiting_a_client_comes_back_to_the_group_at_the_lightest_level() -> None:
    waited = [row(0, 1, CheckIn(Completion.DONE, pain=9)), Entry(on(1), RowKind.WAITING)]
    back = ask(GROUP, Position(1, 1), *waited, after=3)
    assert (back.kind, back.day, back.position.level) == (RowKind.SESSION, 4, 2)


def test_on_a_date_off_a_group_looks_ahead_to_its_next_day() -> None:
    group = Pace(MONDAY, (0, 3), together=True)
    missed = ask(group, Position(1), row(0, 1, CheckIn()), after=1)
    assert (missed.kind, missed.reason) == (RowKind.OFF, "off")
    held = [row(0, 1), row(3, 2), row(7, 3, kind=RowKind.REST), row(10, 4)]
    assert ask(group, Position(4), *held, after=11).heavier, "day 5 has a new movement"


def test_a_measured_test_day_leaves_a_group_on_its_date() -> None:
    plan = programme(session(), TEST, session())
    measured = row(1, 2, kind=RowKind.MEASURE)._replace(recorded=True)
    for result, reason in ((measured, "measured"), (measured._replace(recorded=False), "group")):
        found = ask(GROUP, Position(2), row(0, 1), result, after=2, plan=plan)
        assert (found.kind, found.day, found.position.day, found.reason) == (RowKind.SESSION, 3, 3, reason)


def test_a_group_ends_on_its_date() -> None:
    assert ask(GROUP, Position(6), row(5, 6, kind=RowKind.MEASURE), after=6).kind is None
