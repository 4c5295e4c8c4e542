"""What `easeward practice` has beside the platform, with the whole program in one process."""

from __future__ import annotations

import re
from collections.abc import AsyncIterator
from datetime import date
from pathlib import Path

import pytest

from bot.cli.explaining import explain
from bot.practice.trying import SAMPLES
from bot.practising import CLIENT, COACH
from tests.integration.trials import Trial, trial


@pytest.fixture
async def here(tmp_path: Path, tmp_path_factory: pytest.TempPathFactory) -> AsyncIterator[Trial]:
    async with trial(tmp_path, tmp_path_factory.getbasetemp() / "first-morning") as found:
        yield found


async def test_a_tidy_client_goes_on_every_day_and_the_course_says_so(here: Trial) -> None:
    rows = await here.lives("tidy", 3)
    assert [(row["day"], row["came"], row["completion"], row["pain"]) for row in rows] == [
        (1, "first", "done", 0),
        (2, "on", "done", 0),
        (3, "on", "done", 1),
        (4, "on", None, None),
    ]
    assert rows[0]["tests"] == ["fingertip to floor 14 cm"]
    assert rows[1]["votes"] == [
        {"rule": "clean", "verdict": "advance", "tell": None, "words": "because it went well", "decided": True}
    ]
    course = await here.get(f"course?chat={CLIENT}")
    assert (course["days"], course["state"]) == (28, "active")
    assert [day["day"] for day in course["ahead"]] == list(range(5, 29))
    assert course["ahead"][-1]["test"] == "fingertip-to-floor"


async def test_a_sore_week_has_lighter_days_a_day_off_and_a_coach_who_knows(here: Trial) -> None:
    rows = await here.lives("sore", 7)
    assert {"first", "on", "lighter", "off"} <= {row["came"] for row in rows}
    off = next(row for row in rows if row["came"] == "off")
    assert [vote["rule"] for vote in off["votes"] if vote["decided"]] == ["excessive"]
    assert off["seen"][0] == "The answer: done, pain 6."
    told = [message["text"] for message in await here.get(f"messages?chat={COACH}")]
    assert any("pain 6 of 10" in text for text in told)


async def test_the_course_and_explain_tell_of_the_same_votes(here: Trial) -> None:
    for row in await here.lives("sore", 4):
        found = await explain(here.database, str(CLIENT), date.fromisoformat(row["date"]))
        assert (found["verdict"], found["reason"]) == (row["verdict"], row["reason"])
        assert [(vote["rule"], vote["verdict"]) for vote in found["votes"]] == [
            (vote["rule"], vote["verdict"]) for vote in row["votes"]
        ]


async def test_a_chaotic_client_breaks_nothing_and_gets_on(here: Trial) -> None:
    rows = await here.lives("chaotic", 8)
    assert len(rows) == 9
    assert max(row["day"] or 0 for row in rows) >= 4
    said = [message["text"] for message in await here.get(f"messages?chat={CLIENT}") if message["from"] == "bot"]
    assert not any("went wrong" in text for text in said)


async def test_a_new_person_joins_by_the_answers_of_a_manner(here: Trial) -> None:
    await here.post("document", chat=COACH, name=SAMPLES[1], text=await _sample(here, SAMPLES[1]))
    await here.settled()
    for label in ("Publish", "Invite one client"):
        messages = await here.get(f"messages?chat={COACH}")
        with_it = [m["id"] for m in messages if any(b["label"] == label for row in m["buttons"] for b in row)]
        await here.post("tap", chat=COACH, message=with_it[-1], button=label)
        await here.settled()
    link = [m["text"] for m in await here.get(f"messages?chat={COACH}") if "?start=" in m["text"]][-1]
    await here.post("open", chat=3001, start=link.split("?start=")[1].split()[0], first_name="Noa (invented)")
    await here.post("act", chat=3001, **{"as": "tidy"})
    course = await here.get("course?chat=3001")
    assert course["programme"] == "Ankles for the hills"
    assert (course["rows"][0]["day"], course["rows"][0]["completion"]) == (1, "done")


async def test_who_has_no_course_has_no_rows(here: Trial) -> None:
    for chat in (COACH, 9999):
        course = await here.get(f"course?chat={chat}")
        assert (course["programme"], course["rows"], course["ahead"]) == (None, [], [])


async def test_a_lost_answer_sends_a_session_once_and_counts_it_as_unknown(here: Trial) -> None:
    await here.post("fault", method="messages", what="lose-answer")
    await here.post("clock", next="morning")
    sent = [m for m in await here.get(f"messages?chat={CLIENT}") if m["text"].startswith("Day 1")]
    assert len(sent) == 2
    assert (await here.get(f"course?chat={CLIENT}"))["letters"]["unknown"] == 1


async def test_what_is_wrong_with_a_wish_is_said(here: Trial) -> None:
    for method, name, body in (("get", "course?chat=x", None), ("post", "act", {"chat": CLIENT, "as": "rude"})):
        async with here.http.request(method, f"{here.address}/practice/{name}", json=body) as answer:
            assert answer.status == 400
            assert "is needed" in (await answer.json())["error"]


async def test_every_route_stands_in_the_developers_tables(here: Trial) -> None:
    text = (Path(__file__).parents[2] / "DEVELOPERS.md").read_text(encoding="utf-8")
    tables = "\n".join(line for line in text.splitlines() if line.startswith("| `"))
    async with here.http.get(f"{here.address}/practice") as answer:
        names = {route["path"].removeprefix("/practice/") for route in await answer.json()}
    assert {"course", "act", "samples", "fault"} <= names
    assert {name for name in names if not re.search(rf"[`/]{name}\b", tables)} == set()


async def test_a_report_before_the_session_counts_as_a_change_on_the_day_itself(here: Trial) -> None:
    await here.post("say", chat=CLIENT, text="sore on both sides, pain 4, dull")
    await here.settled()
    row = (await here.get(f"course?chat={CLIENT}"))["rows"][0]
    assert (row["changed"], row["came"], row["level"]) == (True, "lighter", 1)
    await here.post("clock", next="morning")
    assert [row["changed"] for row in (await here.get(f"course?chat={CLIENT}"))["rows"]] == [True, False]


async def _sample(here: Trial, name: str) -> str:
    return next(str(found["text"]) for found in await here.get("samples") if found["name"] == name)
