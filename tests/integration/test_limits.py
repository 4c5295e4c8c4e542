"""What a client's body cannot give: asked at joining, left out of every day, told to the coach, who may change it."""

from __future__ import annotations

import html
from collections.abc import AsyncIterator
from importlib.resources import files
from pathlib import Path

import pytest

from bot.flows import moving
from bot.flows.desk import Desk
from bot.flows.drafts import Draft
from db.schema import Course, Person, ProgrammeVersion
from plans.cautions import Caution
from plans.dose import items
from plans.limits import barred_by
from plans.reading import read_programme
from tests.integration.coaching import CLIENT, COACH, SAMPLE, START, Practice, practice_in

pytestmark = pytest.mark.usefixtures("store")

NEW = 20
PLAN = read_programme(SAMPLE)
KNEELING = barred_by(PLAN, [Caution.KNEELING])
HERE = {item.movement.key: item.movement.name for day in PLAN.days for _block, item in items(day.session)}


@pytest.fixture
async def practice(tmp_path: Path) -> AsyncIterator[Practice]:
    async with practice_in(tmp_path) as found:
        await found.opens()
        await found.meets(NEW)
        yield found


async def joins(practice: Practice, *yes: str) -> int:
    """Somebody joins who says yes to these of the programme's cautions; the number of their course."""
    await practice.tapped(COACH, f"draft:{Draft(1).data}:make")
    token = (await practice.put_so_far(COACH))[-1].partition("start=")[2].split()[0]
    await practice.opens_link(NEW, token)
    course = (await practice.course_of(NEW)).id
    await practice.agrees(NEW)
    for answer in ("age:adult", "inside:none", "outside:none"):
        await practice.tapped(NEW, f"screen:{course}:{answer}")
    assert "kneeling hurts" in (await practice.put_so_far(NEW))[-1]
    await practice.tapped(NEW, f"screen:{course}:limits:{'something' if yes else 'none'}")
    for caution in Caution if yes else ():
        await practice.tapped(NEW, f"screen:{course}:{caution}:{'yes' if caution in yes else 'no'}")
    for data in (f"screen:{course}:active:yes", f"screen:{course}:usual:0", "zone:UTC", "time:0700"):
        await practice.tapped(NEW, data)
    await practice.tapped(NEW, f"begin:{course}:today")
    return course


async def test_who_cannot_kneel_gets_no_kneeling_and_is_told_so(practice: Practice) -> None:
    await joins(practice, "kneeling")
    assert (await practice.course_of(NEW)).barred == KNEELING
    texts = [html.unescape(text) for text in await practice.put_so_far(NEW)]
    told = next(text for text in texts if text.startswith("Left out for you"))
    assert all(HERE[key] in told for key in KNEELING if key in HERE)
    first = next(text for text in texts if "Day 1:" in text)
    assert not [HERE[key] for key in KNEELING if key in HERE and HERE[key] in first]
    plain = [item.movement.key for _block, item in items(PLAN.day(1).session)]
    assert set(plain) & set(KNEELING), "the day has kneeling for everybody else"


async def test_the_coach_hears_of_it_on_the_morning_list_and_can_bring_a_movement_back(practice: Practice) -> None:
    course = await joins(practice, "kneeling")
    await practice.tick(days=1)
    told = await practice.put_so_far(COACH)
    assert any("told of at joining: kneeling hurts, or a knee operation" in text for text in told)
    key = next(key for key in HERE if key in KNEELING)
    await practice.tapped(COACH, f"bar:{course}:{list(HERE).index(key)}")
    assert key not in ((await practice.course_of(NEW)).barred or ())


async def test_nothing_of_the_list_leaves_everything_as_it_is(practice: Practice) -> None:
    await joins(practice)
    course = await practice.course_of(NEW)
    assert (course.barred, (course.screened or {})["limits"], course.state) == (None, "none", "active")
    assert not [text for text in await practice.put_so_far(NEW) if text.startswith("Left out for you")]


async def test_a_nerve_sign_on_the_list_waits_for_the_coach(practice: Practice) -> None:
    await joins(practice, "fold-with-leg-symptoms")
    assert (await practice.course_of(NEW)).state == "waiting"
    alert = await practice.alert()
    assert (alert.cause, alert.at_once, alert.facts["waits"]) == ("screening", True, "fold-with-leg-symptoms")
    assert "runs down a leg" in (await practice.put_so_far(COACH))[-1]


async def test_what_a_new_version_brings_is_left_out_too_and_what_was_brought_back_stays(practice: Practice) -> None:
    course = await joins(practice, "kneeling")
    back = next(key for key in HERE if key in KNEELING)
    await practice.tapped(COACH, f"bar:{course}:{list(HERE).index(back)}")
    own = "movements:\n  knee-walk: {name: Knee walk, how: Walk on the knees., main: [quadriceps], kind: dynamic, "
    own += "cautions: [kneeling]}\n"
    use = "            - {movement: knee-walk, reps: 8}\n"
    assert "\nmovements:" not in SAMPLE
    place = SAMPLE.index("        - items:\n") + len("        - items:\n")
    text = SAMPLE[:place] + use + SAMPLE[place:]
    text = text.replace("\ndays:\n", f"\n{own}days:\n", 1)

    async def move(desk: Desk) -> None:
        made = ProgrammeVersion(id=2, coach_id=1, digest="e", title="Rowing", source=text)
        made.stored_at = made.published_at = START
        desk.session.add(made)
        await desk.session.flush()
        theirs = await desk.session.get_one(Course, course)
        theirs.next_version_id = 2
        await moving.at_the_boundary(desk, await desk.session.get_one(Person, NEW), theirs)

    await practice.at_desk(move)
    barred = (await practice.course_of(NEW)).barred or ()
    assert "knee-walk" in barred
    assert back not in barred
    assert (await practice.course_of(CLIENT)).barred is None


async def test_a_link_to_another_programme_asks_for_its_own_movements(practice: Practice) -> None:
    await practice.tapped(COACH, f"draft:{Draft(1).data}:make")
    first = (await practice.put_so_far(COACH))[-1].partition("start=")[2].split()[0]
    await practice.opens_link(NEW, first)
    course = (await practice.course_of(NEW)).id
    await practice.agrees(NEW)
    for answer in ("age:adult", "inside:none", "outside:none", "limits:none"):
        await practice.tapped(NEW, f"screen:{course}:{answer}")

    async def another(desk: Desk) -> None:
        source = files("plans.library").joinpath("pit-musicians.yaml").read_text(encoding="utf-8")
        made = ProgrammeVersion(id=2, coach_id=1, digest="e", title="Shoulders", source=source)
        made.stored_at = made.published_at = START
        desk.session.add(made)

    await practice.at_desk(another)
    await practice.tapped(COACH, f"draft:{Draft(2).data}:make")
    second = (await practice.put_so_far(COACH))[-1].partition("start=")[2].split()[0]
    await practice.opens_link(NEW, second)
    await practice.agrees(NEW)
    assert "a neck injury" in (await practice.put_so_far(NEW))[-1]


async def test_whoever_begins_with_a_question_open_is_asked_it(practice: Practice) -> None:
    course = await joins(practice)

    async def earlier(desk: Desk) -> None:
        theirs = await desk.session.get_one(Course, course)
        theirs.state, theirs.starts_on = "joining", None
        theirs.screened = {step: said for step, said in (theirs.screened or {}).items() if step != "limits"}

    await practice.at_desk(earlier)
    await practice.tapped(NEW, f"begin:{course}:tomorrow")
    assert "not for every body" in (await practice.put_so_far(NEW))[-1]
