"""What came of a programme: counted by hand over a few clients."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plans.adherence import wilson
from plans.checkin import CheckIn, Completion, Place
from plans.fitting import Fit
from plans.ledger import Entry, RowKind
from plans.programme_report import Client, Count, DayReport, End, MovementReport, ProgrammeReport, report
from tests.samples import REST, programme, session

FIRST = date(2026, 3, 2)
DONE = CheckIn(completion=Completion.DONE, pain=0)
SORE = CheckIn(completion=Completion.DONE, pain=4)
PART = CheckIn(completion=Completion.PART, pain=1)
NONE = CheckIn(completion=Completion.NONE)
SILENT = CheckIn()

FAR = """\
  - session:
      warm-up: Walk.
      blocks: [{items: [{movement: far-reach, hold: 30, side: each}, {movement: sway, reps: 8, optional: true}]}]
"""
THREE = programme(session(), REST, session(3), FAR)
"""Sessions on days 1, 3 and 4."""


def rows(*days: tuple[int, CheckIn] | tuple[int, CheckIn, int]) -> list[Entry]:
    """A session a date: the day, what was said, the level."""
    return [
        Entry(FIRST + timedelta(days=at), RowKind.SESSION, day=day, level=level[0] if level else 0, checkin=said)
        for at, (day, said, *level) in enumerate(days)
    ]


def day_of(found: ProgrammeReport, number: int) -> DayReport:
    return next(day for day in found.days if day.day == number)


def movement_of(found: ProgrammeReport, key: str) -> MovementReport:
    return next(movement for movement in found.movements if movement.movement == key)


def test_each_client_counts_once_for_a_day_with_the_most_that_they_did() -> None:
    clients = [
        Client(rows((1, NONE), (1, PART), (1, DONE), (3, DONE)), End.FINISHED),
        Client(rows((1, PART), (3, DONE)), End.FINISHED),
        Client(rows((1, NONE), (3, DONE)), End.FINISHED),
        Client(rows((1, SILENT), (3, DONE)), End.FINISHED),
    ]
    first = day_of(report(THREE, clients), 1)
    assert (first.done, first.part, first.left_out, first.silent) == (Count(1, 4),) * 4
    assert first.repeated == Count(1, 4)


def test_who_is_still_on_a_day_is_no_part_of_its_shares_and_not_lost() -> None:
    clients = [
        Client(rows((1, DONE), (3, SORE))),
        Client(rows((1, DONE), (3, DONE), (4, DONE)), End.FINISHED),
    ]
    found = report(THREE, clients)
    third = day_of(found, 3)
    assert (third.had, third.still_on, third.done, third.hurt) == (2, 1, Count(1, 1), Count(0, 1))
    assert (found.still_on, found.left, found.finished) == (1, 0, 1)
    assert found.staying.at(4) is None


def test_who_left_left_at_the_furthest_day_that_they_were_handed() -> None:
    clients = [
        Client(rows((1, DONE), (3, SORE), (3, SORE, 1), (1, SILENT), (1, SILENT)), End.LEFT),
        Client(rows((1, DONE), (3, DONE))),
        Client(rows((1, DONE), (3, DONE), (4, DONE)), End.FINISHED),
    ]
    found = report(THREE, clients)
    assert [day_of(found, day).left_there.count for day in (1, 3, 4)] == [0, 1, 0]
    assert day_of(found, 3).left_there == Count(1, 2)
    assert [(step.time, step.there, step.left) for step in found.staying.steps] == [(3, 3, 1)]


def test_four_weeks_of_silence_are_leaving_at_the_day_that_was_never_answered() -> None:
    silent = Client(rows((1, DONE), *[(3, SILENT)] * 28))
    found = report(THREE, [silent])
    assert (found.left, found.fell_silent, found.still_on) == (1, 1, 0)
    third = day_of(found, 3)
    assert (third.left_there, third.silent, third.repeated) == (Count(1, 1), Count(1, 1), Count(0, 1))
    assert report(THREE, [replace(silent, rows=silent.rows[:-1])]).still_on == 1


def test_a_pause_or_waiting_is_no_silence() -> None:
    away = [Entry(FIRST + timedelta(days=at), RowKind.AWAY) for at in range(1, 60)]
    assert report(THREE, [Client([*rows((1, DONE)), *away])]).still_on == 1


def test_eased_and_hurt_count_whoever_was_at_least_once_and_pain_elsewhere_does_not() -> None:
    elsewhere = CheckIn(completion=Completion.DONE, pain=7, place=Place.ELSEWHERE)
    clients = [
        Client(rows((1, SORE), (1, DONE, 1), (3, DONE)), End.FINISHED),
        Client(rows((1, elsewhere), (3, DONE)), End.FINISHED),
        Client(rows((1, NONE), (3, DONE)), End.FINISHED),
        Client(rows((1, DONE), (3, DONE)), End.FINISHED),
    ]
    first = day_of(report(THREE, clients), 1)
    assert (first.eased, first.hurt) == (Count(1, 4), Count(1, 2))


def test_what_did_not_come_and_who_has_not_begun_are_left_out() -> None:
    lost = Entry(FIRST, RowKind.SESSION, day=1, delivered=False)
    late = Entry(FIRST + timedelta(days=1), RowKind.SESSION, day=1, checkin=DONE)
    found = report(THREE, [Client([lost, late], End.FINISHED), Client([lost]), Client([])])
    assert (found.begun, day_of(found, 1).repeated) == (1, Count(0, 1))


def test_a_movement_is_barred_replaced_gone_or_kept_and_each_client_counts_once() -> None:
    through = rows((1, DONE), (3, DONE), (4, DONE))
    eased = rows((1, DONE), (3, DONE), (4, SORE), (4, DONE, 1))
    clients = [
        Client(through, End.FINISHED),
        Client(eased, End.FINISHED),
        Client(through, End.FINISHED, Fit(barred=["far-reach"], lacks=["mat"])),
        Client(rows((1, DONE), (3, DONE)), End.LEFT),
    ]
    found = report(THREE, clients)
    far, sway = movement_of(found, "far-reach"), movement_of(found, "sway")
    assert (far.barred, far.easier, far.gone, far.kept) == (Count(1, 3), Count(1, 3), Count(0, 3), Count(1, 3))
    assert (sway.barred, sway.easier, sway.gone, sway.kept) == (Count(0, 4), Count(0, 4), Count(1, 4), Count(3, 4))


def test_small_counts_are_said_to_be_small() -> None:
    few, many = ([Client(rows((1, DONE), (3, DONE)), End.FINISHED)] * count for count in (9, 10))
    assert report(THREE, few).is_small
    assert day_of(report(THREE, few), 1).done.is_small
    assert not report(THREE, many).is_small
    assert not day_of(report(THREE, many), 1).done.is_small


def test_shares_have_wilsons_interval_and_none_of_nobody() -> None:
    assert (Count(3, 8).share, Count(3, 8).interval) == (0.375, wilson(3, 8))
    assert (Count(0, 0).share, Count(0, 0).interval) == (None, (0, 1))


def test_nobody_makes_a_report_all_the_same() -> None:
    found = report(THREE, [])
    assert (found.begun, found.staying.people, len(found.days)) == (0, 0, 3)


def test_a_day_that_the_programme_does_not_have_is_refused() -> None:
    with pytest.raises(LookupError, match="day 9"):
        report(THREE, [Client(rows((9, DONE)))])


SAID = st.sampled_from([DONE, SORE, PART, NONE, SILENT])
CLIENTS = st.lists(
    st.builds(
        lambda days, end, barred: Client(rows(*days), end, Fit(barred=barred)),
        st.lists(st.tuples(st.sampled_from([1, 3, 4]), SAID, st.sampled_from([0, 1, 2])), max_size=40),
        st.sampled_from(End),
        st.sets(st.sampled_from(["reach", "far-reach", "sway"])),
    ),
    max_size=8,
)


@given(CLIENTS)
@settings(max_examples=100, deadline=None)
def test_everybody_is_counted_and_nobody_twice(clients: list[Client]) -> None:
    found = report(THREE, clients)
    assert found.begun == found.finished + found.still_on + found.left
    assert sum(day.left_there.count for day in found.days) == found.left
    assert sum(step.left for step in found.staying.steps) == found.left
    assert sum(day.still_on for day in found.days) <= found.still_on
    for day in found.days:
        parts = (day.done, day.part, day.left_out, day.silent)
        assert sum(part.count for part in parts) == day.had - day.still_on
        assert all(part.of == day.had - day.still_on for part in (*parts, day.repeated, day.eased, day.left_there))
    for movement in found.movements:
        fates = (movement.barred, movement.easier, movement.gone, movement.kept)
        assert sum(fate.count for fate in fates) == movement.kept.of <= found.begun
