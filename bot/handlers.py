"""The table of handlers: each reads the update, calls one use case, and the answer waits in the outbox."""

from __future__ import annotations

import logging
from collections.abc import Callable, Coroutine
from contextvars import ContextVar
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from telegram import Chat, Update, User
from telegram.ext import (
    BaseHandler,
    CallbackQueryHandler,
    ChatMemberHandler,
    CommandHandler,
    ContextTypes,
    MessageHandler,
    filters,
)

from bot.commands import COMMANDS, Command
from bot.flows import calling, day, joining, listening, photos, programmes, recordings, telling
from bot.flows.desk import Desk
from bot.flows.installation import DEFAULTS, Installation
from bot.flows.rights import NotAllowed, acting_for
from bot.taps import ONCE, tap
from bot.words import language_of
from bot.words.message import Message
from db import people
from db.helpers import Right
from db.people import Spoken
from db.schema import Coach, Person
from db.writer import current_session
from plans.units import units_of

log = logging.getLogger(__name__)

Context = ContextTypes.DEFAULT_TYPE


@dataclass(frozen=True, slots=True)
class Stored:
    """What the inbox knows of the update that is being handled: when it was stored, and the file it carries."""

    at: datetime
    document: bytes | None
    machine_now: float = 0.0
    """The machine clock in seconds when the handling began."""


STORED: ContextVar[Stored] = ContextVar("stored")
"""Set by whoever takes an update out of the inbox, for as long as it is handled."""


def handlers(bot_username: str, installation: Installation = DEFAULTS) -> list[BaseHandler[Any, Any, Any]]:
    """The handlers in the order in which they are asked; everything a person can send has one."""
    rooms = _Rooms(bot_username, installation)
    return [
        MessageHandler(~filters.ChatType.PRIVATE, rooms.not_private),
        CallbackQueryHandler(rooms.tapped),
        ChatMemberHandler(rooms.membership, ChatMemberHandler.MY_CHAT_MEMBER),
        *(CommandHandler(name, rooms.commanded(act)) for name, act in COMMANDS.items()),
        MessageHandler(filters.VIDEO | filters.ANIMATION, rooms.film),
        MessageHandler(filters.Document.ALL, rooms.document),
        MessageHandler(filters.TEXT, rooms.text),
        MessageHandler(filters.PHOTO, rooms.photo),
        MessageHandler(filters.LOCATION, rooms.location),
        MessageHandler(filters.ALL, rooms.anything_else),
    ]


class _Rooms:
    """Makes a desk for each update, and lets one use case sit at it."""

    def __init__(self, bot_username: str, installation: Installation) -> None:
        self._bot_username = bot_username
        self._installation = installation

    def _desk(self, update: Update) -> Desk:
        message = update.message or update.edited_message
        return Desk(
            session=current_session(),
            now=STORED.get().at,
            cause=f"update:{update.update_id}",
            bot_username=self._bot_username,
            update_id=update.update_id,
            machine_now=STORED.get().machine_now,
            said_at=message.date if message else None,
            installation=self._installation,
        )

    async def _person(self, desk: Desk, update: Update) -> Person:
        chat, user = update.effective_chat, update.effective_user
        if chat is None or user is None:
            raise LookupError(f"update {update.update_id} has no chat or user")
        tag = user.language_code or ""
        spoken = Spoken(_label(user), language_of(tag), units_of(tag))
        before = await people.by_chat(desk.session, chat.id)
        was_gone = before is not None and before.unreachable_since is not None
        person = await people.known(desk.session, chat.id, spoken, now=desk.now)
        if was_gone:
            await calling.returned(desk, person)
        return person

    def commanded(self, act: Command) -> Callable[[Update, Context], Coroutine[Any, Any, None]]:
        async def handler(update: Update, context: Context) -> None:
            desk = self._desk(update)
            person = await self._person(desk, update)
            rest = " ".join(context.args or [])
            flagged = act is not COMMANDS["start"] and listening.sign_in(rest, person.language) is not None
            if flagged:
                await listening.heard(desk, person, rest)
            if not flagged or act is COMMANDS["stop"]:
                await self._serve(desk, person, update, act, rest)
            await day.offer(desk, person)

        return handler

    async def _serve(self, desk: Desk, person: Person, update: Update, act: Command, rest: str) -> None:
        try:
            await act(desk, person, rest)
        except NotAllowed as refused:
            log.info("not-allowed", extra={"update": update.update_id, "chat": person.chat})
            await desk.say(person, Message(desk.words(person).say(refused.words)))

    async def tapped(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        query = update.callback_query
        if query is None:
            raise LookupError(f"update {update.update_id} has no tap")
        person = await self._person(desk, update)
        data = query.data or ""
        desk.tapped = query.message.message_id if query.message is not None else None
        try:
            shown = await tap(desk, person, data)
            if data.partition(":")[0] in ONCE and query.message is not None:
                await desk.take_buttons(person, query.message.message_id)
        except NotAllowed as refused:
            await desk.session.refresh(person)  # what the act had changed of them is undone with it
            log.info("not-allowed", extra={"update": update.update_id, "chat": person.chat})
            shown = str(desk.words(person).say(refused.words))
        await desk.answer_tap(person, query.id, shown or "")
        await day.offer(desk, person)

    async def document(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        person = await self._person(desk, update)
        try:
            coach: Coach | None = await acting_for(desk, person, Right.PUBLISH)
        except NotAllowed:
            coach = None
        document = update.effective_message.document if update.effective_message else None
        if coach is None or document is None:
            await self._caption_heard(desk, person, update)
            await desk.say(person, Message(desk.words(person).say("coach.not_a_coach")))
            return
        name = document.file_name or "programme.yaml"
        await programmes.receive_file(desk, person, coach, name, STORED.get().document)

    async def text(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        message = update.effective_message
        person = await self._person(desk, update)
        await listening.heard(desk, person, (message.text if message else None) or "")
        await day.offer(desk, person)

    async def film(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        person = await self._person(desk, update)
        message = update.effective_message
        sent = (message.video or message.animation) if message else None
        if message is None or sent is None:
            raise LookupError(f"update {update.update_id} has no film")
        kind = "video" if message.video else "animation"
        if not await recordings.arrived(desk, person, kind, sent.file_id, message.caption or ""):
            await self._anything(desk, person, update)

    async def photo(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        person = await self._person(desk, update)
        message = update.effective_message
        if message and await recordings.arrived(
            desk, person, "photo", message.photo[-1].file_id, message.caption or ""
        ):
            return
        await self._caption_heard(desk, person, update)
        sizes = update.effective_message.photo if update.effective_message else ()
        await photos.arrived(desk, person, sizes[-1].file_id)

    async def location(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        person = await self._person(desk, update)
        place = update.effective_message.location if update.effective_message else None
        if place is None:
            raise LookupError(f"update {update.update_id} has no location")
        await joining.share_place(desk, person, place.latitude, place.longitude)

    async def not_private(self, update: Update, context: Context) -> None:
        """What is said in a group is not for this bot: it counts as handled and changes nothing."""

    async def anything_else(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        await self._anything(desk, await self._person(desk, update), update)

    async def _anything(self, desk: Desk, person: Person, update: Update) -> None:
        if not await self._caption_heard(desk, person, update):
            await desk.say(person, Message(desk.words(person).say("checkin.not_understood")))

    async def _caption_heard(self, desk: Desk, person: Person, update: Update) -> bool:
        """Hears what is written under a picture or file like any other words; False when there are none."""
        caption = update.effective_message.caption if update.effective_message else None
        if caption:
            await listening.heard(desk, person, caption)
        return bool(caption)

    async def membership(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        change = update.my_chat_member
        if change is None or change.chat.type != Chat.PRIVATE:
            return
        if change.new_chat_member.status in ("kicked", "left"):
            gone = await people.mark_unreachable(desk.session, change.chat.id, desk.now)
            if gone is not None:
                await telling.unreachable(desk, gone)
                await calling.lost(desk, gone)
        else:
            await self._person(desk, update)


def _label(user: User) -> str:
    return (user.first_name or "").strip()[:64] or "?"
