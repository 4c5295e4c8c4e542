"""People of the acceptance tests: each joins by a link of the coach and has the first day before them."""

from __future__ import annotations

import re

from tests.acceptance.driver import Practice, Said

COACH = 1001
EVENING = ("Tomorrow's session uses this", "How did today's session go?")
"""How the evening's messages begin."""
NEXT = iter(range(6001, 6100))


async def link(chat: Practice, title: str = "Hips and hamstrings") -> str:
    """The start parameter of a fresh invitation for one, to the programme whose title begins so."""
    menu = (await chat.say(COACH, "/invite"))[-1]
    own = [label for label, _data in menu.buttons if label == "Invite one client"]
    label = (own or [label for label, _data in menu.buttons if label.startswith(title) and label.endswith(": 1")])[0]
    found = re.search(r"start=([\w-]+)", (await chat.tap(COACH, menu, label))[-1].text)
    if found is None:
        raise LookupError("the invitation has no link")
    return found[1]


class Client:
    """Somebody who has just joined and has day 1 before them."""

    def __init__(self, chat: Practice, number: int, day: Said) -> None:
        self.chat, self.number, self.day = chat, number, day

    @classmethod
    async def joins(cls, chat: Practice, name: str) -> Client:
        number = next(NEXT)
        return cls(chat, number, await cls.follows_a_link(chat, number, name))

    @staticmethod
    async def follows_a_link(chat: Practice, number: int, name: str, *, age: str = "18 to 64", usual: int = 0) -> Said:
        """Opens a fresh link and answers everything; gives the last message."""
        offer = (await chat.say(number, f"/start {await link(chat)}", first_name=name))[-1]
        await chat.screened(number, offer, age=age, usual=usual)
        asked = (await chat.messages(number))[-1]
        if "Which city" in asked.text:
            times = (await chat.say(number, "Lisbon"))[-1]
            asked = (await chat.tap(number, times, "07:00"))[-1]
        return (await chat.tap(number, asked, "Begin today"))[-1]

    async def tap(self, label: str, under: Said | None = None) -> Said:
        """Taps under a message (today's) and gives that message as it stands then."""
        under = under or await self.now()
        await self.chat.tap(self.number, under, label)
        return await self.chat.again(self.number, under)

    async def now(self) -> Said:
        """Today's message as it stands."""
        return await self.chat.again(self.number, self.day)

    async def says(self, text: str) -> Said:
        """What the bot last said to these words."""
        return (await self.chat.say(self.number, text))[-1]

    async def hears(self, text: str) -> Said:
        """What the bot first said to these words."""
        return (await self.chat.say(self.number, text))[0]

    async def day_later(self) -> Said:
        """The last message of the next 24 hours, whatever other mornings are, but for the evening's questions."""
        before = max(m.id for m in await self.chat.messages(self.number))
        await self.chat.post("clock", days=1)
        said = await self.chat.from_bot(self.number, after=before)
        self.day = [m for m in said if not m.text.startswith(EVENING)][-1]
        return self.day

    async def next_morning(self) -> Said:
        """The first message of the next morning."""
        before = max(m.id for m in await self.chat.messages(self.number))
        await self.chat.post("clock", next="morning")
        self.day = (await self.chat.from_bot(self.number, after=before))[-1]
        return self.day
