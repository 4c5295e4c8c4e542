"""The three sample programmes: whole, sound, with a real way up, and one new thing at a time."""

from __future__ import annotations

from dataclasses import replace
from importlib.resources import files

import pytest

from bot.words.judging import judged
from plans.cert import missing
from plans.dose import items, minutes
from plans.easing import eased, hold_floor
from plans.heavier import is_heavier, movements_of
from plans.lint import check
from plans.movements import library
from plans.programme import Day, Programme
from tests.samples import sample

LENGTHS = {"rowing-club": 28, "hill-walkers": 29, "pit-musicians": 42}


SAMPLES = {name: sample(name) for name in LENGTHS}
every = pytest.mark.parametrize("sample", SAMPLES.values(), ids=SAMPLES)


def sessions(programme: Programme) -> list[Day]:
    return [day for day in programme.days if day.session is not None]


def new_movements(programme: Programme) -> dict[int, int]:
    """How many movements a session day brings that no day before had, after the first three."""
    known: set[str] = set()
    found: dict[int, int] = {}
    for order, day in enumerate(sessions(programme)):
        if order >= 3 and (fresh := movements_of(day) - known):
            found[day.number] = len(fresh)
        known |= movements_of(day)
    return found


def heavier_days(programme: Programme) -> list[int]:
    """Days heavier than the session day before them, for a client who did everything before clean."""
    found, known, clean = list[int](), set[str](), list[Day]()
    for day in sessions(programme):
        if is_heavier(day, clean, known):
            found.append(day.number)
        clean.append(day)
        known |= movements_of(day)
    return found


def test_these_are_all_samples_of_the_library() -> None:
    names = {file.name.removesuffix(".yaml") for file in files("plans.library").iterdir() if ".yaml" in file.name}
    assert names - {"cautions"} == set(LENGTHS)


@every
def test_the_checker_has_nothing_to_say_and_nothing_is_left_unsaid(sample: Programme) -> None:
    assert [str(finding) for finding in judged(sample).findings] == []
    assert missing(sample) == ()


@every
def test_a_sample_begins_and_ends_with_the_same_test_and_rests_once_a_week(sample: Programme) -> None:
    tested = [day for day in sample.days if day.measure is not None]
    assert (tested[0].number, tested[-1].number) == (1, len(sample.days))
    assert tested[0].measure == tested[-1].measure
    assert sample.measures == (tested[0].measure.measure,)  # type: ignore[union-attr]
    weeks = [sample.days[start : start + 7] for start in range(0, len(sample.days) // 7 * 7, 7)]
    assert all(sum(1 for day in week if day.session is None) >= 1 for week in weeks)


def test_the_lengths_and_paces_are_these() -> None:
    assert {name: len(one.days) for name, one in SAMPLES.items()} == LENGTHS
    assert {name: one.pace for name, one in SAMPLES.items()} == {
        "rowing-club": "own",
        "hill-walkers": "together",
        "pit-musicians": "own",
    }


@every
def test_a_day_brings_one_new_movement_at_most_and_there_are_some(sample: Programme) -> None:
    found = new_movements(sample)
    assert len(found) >= 3
    assert set(found.values()) == {1}


@every
def test_there_is_a_way_up_and_not_every_day_is_a_step(sample: Programme) -> None:
    steps = heavier_days(sample)
    assert 3 <= len(steps) <= len(sessions(sample)) / 3


@every
def test_days_have_titles_texts_that_fit_a_phone_and_a_quarter_of_an_hour(sample: Programme) -> None:
    assert all(day.title for day in sample.days)
    assert max(len(day.text or "") for day in sample.days) <= 160
    assert max(len(list(items(day.session))) for day in sample.days) <= 8
    assert all(8 <= minutes(day)[0] <= minutes(day)[1] <= 20 for day in sessions(sample))


@every
@pytest.mark.parametrize("level", [1, 2])
def test_lighter_versions_need_nothing_that_is_not_on_the_list(sample: Programme, level: int) -> None:
    floor = hold_floor(sample.ages)
    days = tuple(eased(day, level, library(), hold_floor=floor) for day in sample.days)
    found = check(replace(sample, days=days)).findings
    assert [str(finding) for finding in found if finding.code == "equipment"] == []
