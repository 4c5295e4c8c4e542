"""What cannot be used gets a clear answer and changes nothing: files, replies, buttons, strangers."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from tests.acceptance.driver import Practice
from tests.texts import HEAD, REST, TEST, session

COACH, CLIENT, STRANGER = 1001, 2001, 3333
GOOD = HEAD + session(6) * 5 + REST * 2
REACH = "            - {movement: reach, hold: 30, side: each}\n"


pytestmark = pytest.mark.asyncio(loop_scope="module")


def facts(folder: Path) -> list[list[tuple[object, ...]]]:
    """Everything that an answer could have changed."""
    queries = (
        "SELECT id, published_at FROM programme_version",
        "SELECT ledger_id, completion, pain, kind, flag FROM checkin",
        "SELECT id, state, day, level FROM course",
        "SELECT id, kind, day, level, morning FROM ledger",
        "SELECT id, cause FROM alert",
        "SELECT id FROM coach",
        "SELECT id FROM overrule",
        "SELECT state FROM inbox WHERE state != 'handled'",
    )
    with sqlite3.connect(f"file:{folder / 'easeward.sqlite'}?mode=ro", uri=True) as database:
        return [database.execute(query).fetchall() for query in queries]


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("title: [", "1 problem"),
        (GOOD.replace("movement: reach", "movement: raech"), "did you mean reach?"),
        (GOOD.replace("hold: 30", "hold: -30"), "day 1, block 1, item 2, hold: found -30"),
        ("x" * 5_500_000, "larger than"),
        ("y" * 1_500_000, "characters"),
        (GOOD.replace("goal: Move with less effort.", "goal: *a"), "Not publishable"),
        (GOOD.replace("goal:", "title: Again\ngoal:"), "a second time"),
        (HEAD + TEST, "cannot be published"),
        ("\x00\x01", "Not publishable"),
        (GOOD.replace(REACH, REACH.replace("hold", f"cue: {'slow ' * 80}, hold") * 9), "longer than the 4096"),
    ],
    ids=["broken", "movement", "hold", "5 MB", "1.5 MB", "alias", "twice", "no session", "binary", "long"],
)
async def test_a_file_that_cannot_be_published_is_explained(
    chat: Practice, folder: Path, text: str, answer: str
) -> None:
    before = facts(folder)
    last = max(m.id for m in await chat.messages(COACH))
    await chat.post("document", chat=COACH, name="p.yaml", text=text)
    await chat.settled()
    said = await chat.from_bot(COACH, after=last)
    assert answer in said[-1].text
    assert said[-1].buttons == ()
    assert facts(folder) == before


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("11/10", "not on the scale"),
        ("pain -1", "not on the scale"),
        ("x" * 4096, "could not read"),
        ("🏔", "could not read"),
        ("<b>bold</b> & <script>alert(1)</script>", "passed this on"),
        ("Is this mat thick enough?", "passed this on"),
    ],
    ids=["eleven", "minus", "long", "emoji", "html", "question"],
)
async def test_a_reply_that_says_nothing_is_asked_back_or_passed_on(
    chat: Practice, folder: Path, text: str, answer: str
) -> None:
    before = facts(folder)
    said = await chat.say(CLIENT, text)
    assert answer in said[-1].text
    assert facts(folder) == before


@pytest.mark.parametrize(
    "data",
    [
        "c:1:all",
        "c:999:all",
        "c:1:pain:99",
        "c:x:all",
        "c",
        "nonsense",
        "m:1:settled",
        "go:1",
        "rule:1:ease",
        "client:1",
        "publish:1",
        "invite:1:10",
        "found:1:spoke",
        "join:1:agree",
        "zone:Mars/Olympus",
        "time:9999",
        "c:1:flag:no",
    ],
)
async def test_a_forged_button_of_a_stranger_changes_nothing(chat: Practice, folder: Path, data: str) -> None:
    hello = (await chat.say(STRANGER, "/start"))[-1]
    assert "You need a coach's link" in hello.text
    before = facts(folder)
    tap = (await chat.post("tap", chat=STRANGER, message=hello.id, button=data, forged=True))["tap"]
    await chat.settled()
    answer = (await chat.get(f"answer?tap={tap}"))["text"]
    assert "Nothing was changed" in answer
    assert facts(folder) == before


async def test_a_client_cannot_act_as_a_coach_and_wrong_values_are_refused(chat: Practice, folder: Path) -> None:
    (mine,) = [m for m in await chat.from_bot(CLIENT) if m.text.startswith("Day 1")]
    before = facts(folder)
    for data in ("go:1", "rule:1:repeat", "publish:1", "c:1:pain:11", "c:1:kind:blue", "c:1:flag:no", "m:1:worse"):
        await chat.post("tap", chat=CLIENT, message=mine.id, button=data, forged=True)
    await chat.settled()
    for command in ("/people", "/digest", "/invite", "/programmes"):
        assert "Only a coach" in (await chat.say(CLIENT, command))[-1].text
    assert facts(folder) == before


async def test_a_double_tap_counts_once_and_links_that_do_not_open_say_so(chat: Practice, folder: Path) -> None:
    (mine,) = [m for m in await chat.from_bot(CLIENT) if m.text.startswith("Day 1")]
    with sqlite3.connect(f"file:{folder / 'easeward.sqlite'}?mode=ro", uri=True) as database:
        assert database.execute("SELECT count(*) FROM answer WHERE field != 'note'").fetchall() == [(0,)]
    for _ in range(3):
        await chat.post("tap", chat=CLIENT, message=mine.id, button="All done, no pain")
    await chat.settled()
    with sqlite3.connect(f"file:{folder / 'easeward.sqlite'}?mode=ro", uri=True) as database:
        assert database.execute(
            "SELECT field, count(*) FROM answer WHERE field != 'note' GROUP BY field ORDER BY field"
        ).fetchall() == [
            ("completion", 1),
            ("pain", 1),
        ]
    for token in ("join-nothing", "coach-nothing", "x" * 64):
        assert "not known here" in (await chat.say(STRANGER, f"/start {token}"))[-1].text
