"""What is said when something goes wrong on the way in or out: nothing is lost silently."""

from __future__ import annotations

from sqlalchemy.ext.asyncio import AsyncSession

from bot.clocks import Calendar
from bot.flows import calling, telling
from bot.flows.desk import Desk
from bot.flows.installation import DEFAULTS, Installation
from bot.words.message import Message
from db import courses, people


class Hooks:
    """Use cases that the loops call, each in a write of its own or in the write that found the trouble."""

    def __init__(self, calendar: Calendar, bot_username: str, installation: Installation = DEFAULTS) -> None:
        self._calendar = calendar
        self._bot_username = bot_username
        self._installation = installation

    def _desk(self, session: AsyncSession, cause: str) -> Desk:
        return Desk(
            session=session,
            now=self._calendar.now(),
            cause=cause,
            bot_username=self._bot_username,
            installation=self._installation,
        )

    async def unreachable(self, session: AsyncSession, chat: int) -> None:
        """A chat has refused a message: the coach hears of it on the morning list."""
        desk = self._desk(session, f"unreachable:{chat}:{self._calendar.now().isoformat()}")
        person = await people.by_chat(session, chat)
        if person is not None:
            await telling.unreachable(desk, person)
            await calling.lost(desk, person)

    async def update_failed(self, session: AsyncSession, chat: int, update_id: int) -> None:
        """An update could not be handled: the person hears that nothing was changed, their coach that it happened."""
        desk = self._desk(session, f"failed:{update_id}")
        person = await people.by_chat(session, chat)
        if person is None:
            return
        await desk.say(person, Message(desk.words(person).say("client.failed")))
        course = await courses.open_course(session, person)
        if course is not None:
            await telling.tell_of(desk, course, cause="message-failed", at_once=True)
