"""A programme at a glance, counted by hand."""

from __future__ import annotations

from plans.movements import Muscle
from plans.overview import day_seconds, overview
from tests.samples import REST, programme, session


def test_a_week_says_its_days_sessions_and_seconds_by_side_and_kind() -> None:
    (week,) = overview(programme(session(), REST, session(3)))
    assert (week.days, week.sessions, week.rounds) == ((1, 2, 3), 2, 3)
    # 30 s a side and round, two rounds and then three; eight sways of four seconds move both sides at once.
    assert week.held(Muscle.HAMSTRINGS, "left") == (150, 150)
    assert week.moved(Muscle.HAMSTRINGS, "right") == (160, 160)
    assert week.held(Muscle.CALVES, "left") == (0, 0)


def test_a_week_as_json_has_whole_ranges_for_every_kind() -> None:
    (week,) = overview(
        programme(session(), "  - session: {blocks: [{items: [{movement: fold, reps: 5, load: 2 kg}]}]}\n")
    )
    found = week.as_json()
    assert (found["days"], found["sessions"], found["loads"]) == ([1, 2], 2, {"Loaded fold": 2.0})
    both = {"dynamic": [64, 64], "loaded": [20, 20], "static": [60, 60]}
    assert found["seconds"] == {"hamstrings": {"left": both, "right": both}}


def test_a_days_seconds_are_those_of_one_side_of_one_muscle() -> None:
    day = programme(session()).day(1)
    assert {kind.value: seconds for kind, seconds in day_seconds(day, Muscle.HAMSTRINGS, "left").items()} == {
        "dynamic": (64, 64),
        "static": (60, 60),
    }
    assert day_seconds(day, Muscle.NECK, "left") == {}
