"""A programme's values: its days by number, its digest, and all movements that it can use."""

from __future__ import annotations

import hashlib

import pytest

from plans.movements import library
from plans.reading import read_programme
from plans.rules import Settings
from tests.samples import HEAD, REST, TEST, programme, session

PLAN = programme(session(), REST, TEST)


def test_days_are_numbered_from_1() -> None:
    assert [PLAN.day(number) for number in (1, 2, 3)] == list(PLAN.days)
    assert [day.number for day in PLAN.days] == [1, 2, 3]


@pytest.mark.parametrize("number", [0, -1, 4])
def test_a_day_that_is_not_there_is_named_with_those_that_are(number: int) -> None:
    with pytest.raises(LookupError, match=f"day {number}: Test hips has days 1 to 3"):
        PLAN.day(number)


def test_a_day_with_a_session_and_a_test_is_a_session_day() -> None:
    both = programme(session().rstrip("\n") + "\n    measure: {which: fingertip-to-floor, trials: 2}\n").day(1)
    assert both.kind == "session"
    assert both.measure is not None
    assert (both.measure.measure, both.measure.trials) == ("fingertip-to-floor", 2)


def test_the_digest_is_of_the_text_and_changes_with_a_comment() -> None:
    text = HEAD + session()
    assert read_programme(text).digest == hashlib.sha256(text.encode()).hexdigest()
    assert read_programme(text + "# later\n").digest != read_programme(text).digest


def test_the_same_text_gives_the_same_programme() -> None:
    assert read_programme(HEAD + session()) == read_programme(HEAD + session())


def test_settings_are_the_usual_ones_until_a_coach_makes_them_stricter() -> None:
    assert PLAN.settings == Settings(2, 5, 8)
    strict = HEAD.replace("muscles:", "settings: {pain-clean: 1, pain-acceptable: 3}\nmuscles:")
    assert read_programme(strict + session()).settings == Settings(1, 3, 8)


def test_a_catalogue_has_the_library_and_the_coachs_own_which_win() -> None:
    own = "  cat-cow: {name: Our cat, how: Round and hollow., main: [lower-back], kind: control}\ndays:"
    plan = read_programme(HEAD.replace("days:", own) + session())
    assert set(library()) | {"reach", "far-reach", "sway", "fold"} == set(plan.catalogue())
    assert plan.catalogue()["cat-cow"].name == "Our cat"
    assert plan.catalogue()["neck-turns"] == library()["neck-turns"]
