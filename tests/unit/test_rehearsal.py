"""Rehearsal: simulated clients under the real rules; the same seed is the same group, and the rules hold their aims."""

from __future__ import annotations

import random
import xml.etree.ElementTree as ET
from importlib.resources import files

import pytest

from bot.rehearsing import in_words, rehearse
from plans.charts.rehearsal import picture
from plans.reading import read_programme
from plans.rehearsal import Journey, Outcome, Stage, client_of, journey, outcome, unadapted
from plans.simulated import NATURES, Asked, Body, natures
from tests.properties import check_step

SOURCE = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
STAGE = Stage(read_programme(SOURCE))


@pytest.fixture(scope="module", name="group")
def _group() -> Outcome:
    return rehearse(SOURCE, 400, 7)


def kind(name: str) -> list[Journey]:
    (nature,) = [nature for nature in NATURES if nature.name == name]
    return [client_of(STAGE, nature, 7, number) for number in range(150)]


def test_the_shares_of_the_kinds_make_a_whole_group() -> None:
    assert sum(nature.share for nature in NATURES) == pytest.approx(1)
    assert len(natures(137, random.Random(1))) == 137
    assert {nature.name for nature in natures(200, random.Random(1))} == {nature.name for nature in NATURES}


def test_the_same_seed_is_the_same_group_and_another_is_not() -> None:
    first, again, other = (rehearse(SOURCE, 40, seed).as_json() for seed in (3, 3, 4))
    assert first == again
    assert first != other


def test_a_large_group_on_all_cores_is_the_same_as_in_one_process() -> None:
    """401 clients go to other processes; each client is the one of its number."""
    counted: list[int] = []
    found = rehearse(SOURCE, 401, 5, step=counted.append)
    kinds = natures(401, random.Random(5))
    alone = outcome(STAGE.programme, [client_of(STAGE, nature, 5, n) for n, nature in enumerate(kinds)])
    assert found == alone
    assert sum(counted) == 401


def test_a_mixed_group_finishes_in_time_and_no_coach_is_left_without_word(group: Outcome) -> None:
    assert group.median is not None
    assert group.median <= 1.3 * group.floor
    assert group.unfinished <= 0.02
    assert group.untold == 0
    assert group.alerts <= 0.6
    assert group.on_worse == 0
    assert 0.75 <= group.done <= 0.88


def test_people_who_are_always_a_little_sore_finish_like_the_others() -> None:
    steady, sore = (outcome(STAGE.programme, kind(name)) for name in ("steady", "always a bit sore"))
    assert steady.median is not None
    assert sore.median is not None
    assert sore.median <= 1.15 * steady.median
    assert sore.unfinished <= 0.02


def test_every_property_holds_at_every_step() -> None:
    for number, nature in enumerate(natures(60, random.Random(2))):
        journey(STAGE, nature, random.Random(number), watch=check_step)


def test_a_client_whom_nothing_lets_finish_is_told_to_the_coach() -> None:
    (nature,) = [nature for nature in NATURES if nature.name == "hurt"]
    stories = [client_of(STAGE, nature, 1, number) for number in range(100)]
    assert [story for story in stories if story.finished is None and not story.alerts and not story.listed] == []
    assert sum(story.alerts for story in stories) > 50


def test_soreness_comes_mostly_overnight_and_is_gone_within_a_week() -> None:
    """Cheung et al. 2003, Sports Med 33:145: it peaks at 24-72 h and is gone by day 5-7."""
    body = Body(NATURES[0], random.Random(1), habit=100)
    body.trains(Asked.of({"new": 2000}), 0)
    course = [body.sore]
    for _night in range(8):
        body.sleeps()
        course.append(body.sore)
    assert course.index(max(course)) in (1, 2, 3)
    assert course[0] < course[1]
    assert course[7] < 0.1 * max(course)


def test_the_words_name_the_days_to_look_at_and_say_that_it_is_invented(group: Outcome) -> None:
    plain = rehearse(SOURCE, 400, 7, adapted=False)
    said = in_words(STAGE.programme, group, plain)
    assert "invented, no evidence" in said.splitlines()[0]
    for day in group.trouble:
        assert f"day {day.day} (" in said
    assert plain.verdicts == dict.fromkeys(plain.verdicts, 0.0)
    assert plain.delivered >= group.delivered


def test_the_days_add_up_to_what_followed(group: Outcome) -> None:
    assert [day.day for day in group.days] == [day.number for day in STAGE.programme.days if day.session is not None]
    judged = {verdict: sum(day.followed[verdict] for day in group.days) for verdict in group.verdicts}
    whole = sum(judged.values())
    for verdict, share in group.verdicts.items():
        assert judged[verdict] / whole == pytest.approx(share, abs=0.02), "rest days are judged beside a day's number"
    assert all(day.given >= 1 for day in group.days)
    assert group.as_json()["days"][0].keys() >= {"day", "title", "given", "followed", "held_up", "pained"}  # type: ignore[index]


def test_the_picture_has_a_bar_a_date_and_a_column_a_day(group: Outcome) -> None:
    plain = rehearse(SOURCE, 400, 7, adapted=False)
    svg = ET.fromstring(picture("Hips & hamstrings", group, plain))
    name = {"svg": "http://www.w3.org/2000/svg"}
    assert len(svg.findall("svg:rect[@class='bar']", name)) == len(set(group.finished))
    rings = svg.findall("svg:circle[@class='pain']", name)
    assert len(rings) == len(group.days) + 1, "one each, and one in the legend"
    said = [text.text or "" for text in svg.findall("svg:text", name)]
    assert {"Hips & hamstrings", "as published: 28, hurting or not"} <= set(said)
    assert any("invented, no evidence" in words for words in said)
    wide = float(svg.attrib["viewBox"].split()[2])
    assert all(0 <= float(rect.attrib["x"]) <= wide for rect in svg.findall("svg:rect", name))


def test_an_empty_group_has_no_outcome() -> None:
    with pytest.raises(ValueError, match="at least one client"):
        outcome(STAGE.programme, [])


def test_as_published_each_day_waits_for_a_date_with_training() -> None:
    plain = read_programme(SOURCE)
    named = Stage(read_programme(SOURCE.replace("days:\n", "training-days: [monday, wednesday, friday]\ndays:\n", 1)))
    every, some = (unadapted(stage, NATURES[0], random.Random(1)) for stage in (Stage(plain), named))
    assert every.dates == len(plain.days)
    assert some.dates > 2 * every.dates
    assert some.due == every.due
