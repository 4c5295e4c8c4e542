"""Four weeks of the sample programme, played for six scripted clients through the practice chat, against a table.

The table of mornings beside this file was worked out by hand from the rules as they are documented. Nothing here
imports the rules.
"""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Awaitable, Callable
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

import pytest

from tests.acceptance.driver import Practice, Said, practice

TABLE = {
    cells[0]: cells[1:]
    for line in Path(__file__).with_name("mornings.tsv").read_text(encoding="utf-8").splitlines()
    if line and not line.startswith("#") and (cells := line.split("\t"))
}
DATES = 28
COACH = 9000
CHATS = {name: 5000 + n for n, name in enumerate(TABLE)}
LEVELS = {"": "", "-": " · lighter", "=": " · lightest"}


QUIET = "quiet"


@dataclass(frozen=True, slots=True)
class Cell:
    """One morning of the table; `answer` is what is answered or asked for before the day is there."""

    kind: str
    day: int | None = None
    level: str = ""
    answer: str | None = None
    why: str | None = None

    @staticmethod
    def read(text: str) -> Cell:
        """A cell as the table's head explains it."""
        asked, _, rest = text.rpartition(">")
        what, _, why = rest.partition("!")
        answer = asked.removeprefix("?") or None
        if what in ("off", "wait", "gone", "end"):
            return Cell(what, answer=answer, why=why or None)
        found = re.fullmatch(r"(R?)(\d+)([-=]?)", what)
        if found is None:
            raise ValueError(f"{text!r} is no cell of the table")
        kind = "rest" if found[1] else "test" if found[2] == "28" else "session"
        return Cell(kind, int(found[2]), found[3], answer, why or None)


def test_the_table_has_a_cell_for_every_morning() -> None:
    assert {name: len(cells) for name, cells in TABLE.items()} == dict.fromkeys(TABLE, DATES)


@pytest.mark.timeout(600)
async def test_four_weeks_follow_the_table(tmp_path: Path) -> None:
    async with practice(tmp_path) as (chat, _process):
        play = Play(chat)
        await play.begin()
        for date in range(DATES):
            for name, cells in TABLE.items():
                await play.morning(name, date, Cell.read(cells[date]))
            await play.evening(date)
            await chat.post("clock", next="morning")
        await play.after_the_last_morning()
    with closing(sqlite3.connect(next(tmp_path.glob("**/easeward.sqlite")))) as file:
        kinds = {row[0] for row in file.execute("SELECT json_extract(recipe, '$.kind') FROM attachment")}
    assert kinds == {"card"}, "what is on a personal picture, such as the digest's, goes with its message"


class Play:
    """Six clients and their coach."""

    def __init__(self, chat: Practice) -> None:
        self.chat = chat
        self.seen = dict.fromkeys(CHATS, 0)
        self.alerts: list[str] = []

    async def begin(self) -> None:
        """The coach joins by the practice coach's own link-making; the clients by one group link."""
        link = await self._group_link()
        for name, chat in CHATS.items():
            await self._join(name, chat, link)

    async def _group_link(self) -> str:
        coach = await self._coach_chat()
        (menu,) = await self.chat.say(coach, "/invite")
        (said,) = await self.chat.tap(coach, menu, "Invite a group of ten")
        found = re.search(r"start=([\w-]+)", said.text)
        assert found is not None, said.text
        return found[1]

    async def _coach_chat(self) -> int:
        chats = await self.chat.get_list("chats")
        return next(int(row["id"]) for row in chats if "coach" in row["name"].lower())

    async def _join(self, name: str, chat: int, token: str) -> None:
        (offer,) = await self.chat.say(chat, f"/start {token}", first_name=name.capitalize())
        await self.chat.screened(chat, offer)
        (times,) = await self.chat.say(chat, "Lisbon")
        (begin,) = await self.chat.tap(chat, times, "07:00")
        await self.chat.tap(chat, begin, "Begin today")

    # --- mornings ---------------------------------------------------------------------------------------------------

    async def morning(self, name: str, date: int, cell: Cell) -> None:
        """Compares what came with the table, and lets the client answer."""
        where = f"{name}, date {date + 1}"
        said = await self._new(name)
        if cell.kind in ("wait", "gone"):
            assert said == [], f"{where}: {[m.text for m in said]}"
            return
        message = said[-1]
        if cell.answer == QUIET:
            assert message.text.startswith("Good morning. Today's session waits"), f"{where}: {message.text}"
            message = (await self.chat.tap(CHATS[name], message, "Show today's"))[-1]
        elif cell.answer is not None:
            assert "How is it now?" in message.text, f"{where}: {message.text}"
            assert "Day" not in message.text, where
            message = (await self.chat.tap(CHATS[name], message, cell.answer))[-1]
        self._compare(where, message, cell)
        script = SCRIPTS.get((name, date + 1), done)
        await script(self, name, message, cell)
        await self._new(name)

    def _compare(self, where: str, message: Said, cell: Cell) -> None:
        head = message.text.splitlines()[0]
        if cell.kind == "off":
            assert head == "A day off", f"{where}: {message.text}"
        else:
            assert head.startswith(f"Day {cell.day}:"), f"{where}: {head}"
            assert head.endswith(LEVELS[cell.level]), f"{where}: {head}"
            assert cell.level or " · light" not in head, f"{where}: {head}"
        if cell.why is not None:
            assert cell.why in message.text, f"{where}: {message.text}"
        else:
            assert "because" not in message.text, f"{where}: {message.text}"

    async def _new(self, name: str) -> list[Said]:
        said = await self.chat.from_bot(CHATS[name], after=self.seen[name])
        self.seen[name] = max((m.id for m in said), default=self.seen[name])
        return [m for m in said if "How did today's session go?" not in m.text]

    # --- evenings ---------------------------------------------------------------------------------------------------

    async def evening(self, date: int) -> None:
        """What happens besides the morning answers."""
        if date + 1 == 3:
            await self.chat.post("block", chat=CHATS["blocks"], on=True)
        if date + 1 == 6:
            await self.chat.post("block", chat=CHATS["blocks"], on=False)
        if date + 1 == 8:
            await self._let_go_on()

    async def _let_go_on(self) -> None:
        coach = await self._coach_chat()
        alert = next(m for m in reversed(await self.chat.from_bot(coach)) if "Flag needs a look" in m.text)
        (asked,) = await self.chat.tap(coach, alert, "Let go on")
        assert "by whom they were seen" in asked.text
        assert "Spoke with them, fine to go on" not in [label for label, _data in asked.buttons]
        (told,) = await self.chat.say(coach, "Seen at the hospital, nothing found, cleared to stretch.")
        assert "Flag goes on with day 5" in told.text
        client = await self._new("flag")
        assert "lets you go on" in client[-1].text

    async def after_the_last_morning(self) -> None:
        """On the twenty-ninth morning: the end for whoever is through, and what the coach has been told."""
        assert any("reached the end" in message.text for message in await self._new("clean"))
        nudged = {name: await self._nudges(chat) for name, chat in CHATS.items()}
        assert nudged == dict.fromkeys(CHATS, 0) | {"misses": 3}
        coach = await self._coach_chat()
        told = [m.text for m in await self.chat.from_bot(coach)]
        assert any("Six needs a look" in text and "pain 6 of 10" in text for text in told)
        assert any("Flag needs a look" in text and "red flag (an emergency)" in text for text in told)
        assert any("Blocks: has blocked the bot" in text for text in told)
        assert not any("Clean needs a look" in text or "Misses needs a look" in text for text in told)
        assert any("Clean has reached the end" in text for text in told)
        assert sum(text.startswith("Week of") for text in told) >= 3
        assert any(text.startswith("Week of") and "Misses" in text for text in told)

    async def _nudges(self, chat: int) -> int:
        return sum("How did today's session go?" in m.text for m in await self.chat.from_bot(chat))


Script = Callable[[Play, str, Said, Cell], Awaitable[None]]


async def done(play: Play, name: str, message: Said, cell: Cell) -> None:
    """All done, no pain; the test's number where there is one."""
    if cell.kind in ("rest", "off"):
        return
    if cell.kind == "test" or "fingertip to floor" in message.text:
        (noted,) = await play.chat.say(CHATS[name], "12" if cell.day == 1 else "4 cm")
        assert "Noted" in noted.text
    if cell.kind == "session":
        await play.chat.tap(CHATS[name], message, "All done, no pain")
        after = await play.chat.again(CHATS[name], message)
        assert after.text.startswith("Noted: done, no pain."), after.text
        assert "Tomorrow is" in after.text or "last day" in after.text


async def sore(play: Play, name: str, message: Said, cell: Cell) -> None:
    """In plain words."""
    said = await play.chat.say(CHATS[name], "done, dull soreness on both sides, pain 2")
    assert "In the morning I first ask how it feels." in said[-1].text, said[-1].text


async def six(play: Play, name: str, message: Said, cell: Cell) -> None:
    """By two taps."""
    await play.chat.tap(CHATS[name], message, "Done, some pain")
    asked = await play.chat.again(CHATS[name], message)
    await play.chat.tap(CHATS[name], asked, "6")
    after = await play.chat.again(CHATS[name], message)
    assert "because pain of 6 is too much to work into" in after.text


async def silent(play: Play, name: str, message: Said, cell: Cell) -> None:
    """Nothing."""


async def flag(play: Play, name: str, message: Said, cell: Cell) -> None:
    """A sign that is an emergency, whatever else is said."""
    said = await play.chat.say(CHATS[name], "I have numbness between my legs since the stretch")
    assert any("call your local emergency number now" in m.text for m in said), [m.text for m in said]
    assert any("not a diagnosis" in m.text for m in said)


SCRIPTS: dict[tuple[str, int], Script] = {
    ("sore", 6): sore,
    ("six", 3): six,
    ("misses", 4): silent,
    ("misses", 5): silent,
    ("misses", 6): silent,
    ("flag", 5): flag,
}
