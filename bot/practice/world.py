"""The people of the practice chat: they speak, tap, send files and block; and everything that was said."""

from __future__ import annotations

import json
import re
import secrets
from collections.abc import Mapping
from typing import Any

from bot.clocks import Calendar, Machine
from bot.practice import shapes
from bot.practice.errors import bad
from bot.practice.limits import LIMITS, utf16
from bot.practice.news import News
from bot.practice.pictures import sides
from bot.practice.shapes import Body
from bot.practice.store import File, Store

FIRST_UPDATE = 731_000_000
"""Update ids begin somewhere above, as the platform's begin anywhere."""


class NoSuch(LookupError):
    """A chat, message, button or file that is not there; the message names it."""


class World:
    """One bot's chats. All chats are private ones; a chat that speaks and is not known is a new person."""

    def __init__(self, bot_id: int, *, calendar: Calendar, machine: Machine, store: Store) -> None:
        self.bot_id = bot_id
        self.store = store
        self.calendar = calendar
        self.machine = machine
        self.updates_news = News()
        self.messages_news = News()

    # --- what people do -----------------------------------------------------------------------------------------------

    def say(self, chat: int, text: str, *, first_name: str | None = None, language: str = "en") -> int:
        """A person types something; a chat that is new is a new person. Returns the message's id.

        `language` is what their program says of itself, as a language tag.

        Raises NoSuch for a number that no private chat has, ApiError for a text that the platform does not take,
        ValueError for somebody who has blocked the bot.
        """
        LIMITS["text"].check(utf16(text.strip()))
        return self._post(chat, first_name, language=language, text=text, entities=shapes.commands(text))

    def open_link(self, chat: int, parameter: str, *, first_name: str | None = None) -> int:
        """A person opens the bot's link with a start parameter. Returns the message's id. Raises as `say` does."""
        LIMITS["start parameter"].check(len(parameter))
        if not re.fullmatch(r"[A-Za-z0-9_-]*", parameter):
            raise bad("start parameter is invalid")
        return self.say(chat, f"/start {parameter}".strip(), first_name=first_name)

    def send_document(
        self, chat: int, name: str, body: bytes, *, caption: str = "", first_name: str | None = None
    ) -> int:
        """A person sends a file. Returns the message's id. Raises as `say` does."""
        LIMITS["document"].check(len(body))
        LIMITS["caption"].check(utf16(caption))
        file = self.new_file("document", name, body)
        return self._post(chat, first_name, file=file, document=shapes.document(file), caption=caption)

    def send_photo(self, chat: int, body: bytes, *, caption: str = "", first_name: str | None = None) -> int:
        """A person sends a PNG or JPEG picture. Returns the message's id. Raises as `say` does."""
        self.check_photo(body)
        LIMITS["caption"].check(utf16(caption))
        file = self.new_file("photo", "photo.jpg", body)
        return self._post(chat, first_name, file=file, photo=shapes.photo(file), caption=caption)

    def send_video(self, chat: int, name: str, body: bytes, *, caption: str = "", first_name: str | None = None) -> int:
        """A person sends a video. Returns the message's id. Raises as `say` does."""
        LIMITS["document"].check(len(body))
        LIMITS["caption"].check(utf16(caption))
        file = self.new_file("video", name, body)
        return self._post(chat, first_name, file=file, video=shapes.video(file), caption=caption)

    def tap(self, chat: int, message_id: int, button: str) -> str:
        """A person taps a button by its data or its label; returns the tap's id. Raises NoSuch."""
        self.known(chat)
        message = self.store.message(chat, message_id)
        if message is None:
            raise NoSuch(f"message {message_id} in chat {chat}")
        return self._tap(chat, message, _data_of(message, button))

    def forge_tap(self, chat: int, message_id: int, data: str) -> str:
        """A tap with data that no button has, as a meddled client can send it."""
        self.known(chat)
        return self._tap(chat, self.store.message(chat, message_id), data)

    def block(self, chat: int, on: bool) -> None:
        """A person blocks the bot, or takes it back; the bot is told either way. Raises NoSuch."""
        person = self.known(chat)
        if person["blocked"] == on:
            return
        bot = shapes.bot(self.bot_id)
        free, kicked = {"user": bot, "status": "member"}, {"user": bot, "status": "kicked", "until_date": 0}
        change = {
            "chat": shapes.chat(person),
            "from": shapes.user(person),
            "date": self.now(),
            "old_chat_member": free if on else kicked,
            "new_chat_member": kicked if on else free,
        }
        with self.store.together():
            self.store.put_chat(chat, person["first_name"], on)
            self._receive("my_chat_member", change)
        self._tell()

    def edit(self, chat: int, message_id: int, text: str) -> None:
        """A person changes what they typed; the bot is told. Raises NoSuch for a message that they did not type."""
        LIMITS["text"].check(utf16(text.strip()))
        message = self.store.message(chat, message_id)
        if message is None or message["from"]["id"] != chat or "text" not in message:
            raise NoSuch(f"message {message_id} typed in chat {chat}")
        kept = {name: value for name, value in message.items() if name != "entities"}
        changed = kept | {"text": text, "edit_date": self.now()}
        changed |= {"entities": found} if (found := shapes.commands(text)) else {}
        with self.store.together():
            self.store.put_message(chat, changed)
            self._receive("edited_message", changed)
        self._tell()

    def share_location(self, chat: int, latitude: float, longitude: float, *, first_name: str | None = None) -> int:
        """A person shares a place, in degrees. Returns the message's id. Raises as `say` does."""
        if not (-90 <= latitude <= 90 and -180 <= longitude <= 180):
            raise ValueError(f"{latitude}, {longitude} is no place: latitude to 90 and longitude to 180 degrees")
        return self._post(chat, first_name, location={"latitude": latitude, "longitude": longitude})

    def _post(
        self, chat: int, first_name: str | None, *, file: File | None = None, language: str = "en", **content: Any
    ) -> int:
        with self.store.together():
            person = {**self._person(chat, first_name), "language": language}
            if person["blocked"]:
                raise ValueError(f"chat {chat} has blocked the bot: take that back before anything is sent")
            if file is not None:
                self.store.put_file(file)
            message = self.new_message(chat, person, **content)
            self.store.put_message(chat, message)
            self._receive("message", message)
        self._tell()
        return int(message["message_id"])

    def _tap(self, chat: int, message: Mapping[str, Any] | None, data: str) -> str:
        tap = secrets.token_hex(8)
        query = {"id": tap, "from": shapes.user(self.known(chat)), "chat_instance": str(chat), "data": data}
        with self.store.together():
            self.store.put_tap(tap, chat, self.machine.now())
            self._receive("callback_query", query | ({"message": message} if message is not None else {}))
        self._tell()
        return tap

    def _receive(self, kind: str, content: Mapping[str, Any]) -> None:
        allowed = json.loads(self.store.fact("allowed updates") or "[]")
        if not allowed or kind in allowed:
            self.store.put_update({"update_id": FIRST_UPDATE + self.store.count("update"), kind: content})

    def _tell(self) -> None:
        self.updates_news.tell()
        self.messages_news.tell()

    # --- what there is ------------------------------------------------------------------------------------------------

    def messages(self, chat: int, *, after: int = 0, since: int = 0) -> list[tuple[int, Body]]:
        """A chat's messages with an id above `after` that changed since a change number. Raises NoSuch."""
        self.known(chat)
        return self.store.messages(chat, after, since)

    def chats(self) -> list[Body]:
        """Everybody who has spoken."""
        return self.store.chats()

    def tap_answer(self, tap: str) -> str | None:
        """What the bot answered to a tap, None as long as it has not. Raises NoSuch."""
        known, answer = self.store.tap_answer(tap)
        if not known:
            raise NoSuch(f"tap {tap}")
        return answer

    def file(self, file: str) -> File:
        """A file that somebody sent. Raises NoSuch."""
        found = self.store.file(file)
        if found is None:
            raise NoSuch(f"file {file}")
        return found

    def unconfirmed(self) -> list[str]:
        """What the bot has not fetched and confirmed yet, in words."""
        count = self.store.unconfirmed()
        return [f"{count} updates are not fetched yet"] if count else []

    def known(self, chat: int) -> Body:
        """A chat's id, first_name and blocked. Raises NoSuch."""
        found = self.store.chat(chat)
        if found is None:
            raise NoSuch(f"chat {chat}")
        return found

    def now(self) -> int:
        """The calendar's seconds since 1970, as messages carry them."""
        return int(self.calendar.now().timestamp())

    def _person(self, chat: int, first_name: str | None) -> Body:
        if self.store.chat(chat) is None:
            if not 0 < chat < 2**52:
                raise NoSuch(f"chat {chat}: private chats have numbers from 1 to 2^52")
            self.store.put_chat(chat, first_name or f"Person {chat}", False)
        return self.known(chat)

    # --- what both sides make -----------------------------------------------------------------------------------------

    def new_message(self, chat: int, sender: Mapping[str, Any] | None, **content: Any) -> Body:
        """A message with the next id, not stored yet; without a sender it is the bot's. Empty fields are left out."""
        return {
            "message_id": self.store.count("message"),
            "date": self.now(),
            "chat": shapes.chat(self.known(chat)),
            "from": shapes.user(sender) if sender is not None else shapes.bot(self.bot_id),
            **{name: value for name, value in content.items() if value},
        }

    def new_file(self, kind: str, name: str, body: bytes) -> File:
        """A file with an id of its own, not stored yet; its name without folders."""
        return File(secrets.token_urlsafe(24), kind, re.split(r"[\\/]", name)[-1] or "file", body)

    def check_photo(self, body: bytes) -> None:
        """Raises the platform's error for a photo that it would not take."""
        LIMITS["photo"].check(len(body))
        found = sides(body)
        if found is None or 0 in found:
            raise bad("IMAGE_PROCESS_FAILED")
        LIMITS["photo sides"].check(sum(found))
        LIMITS["photo shape"].check(-(-max(found) // min(found)))


def _data_of(message: Mapping[str, Any], button: str) -> str:
    found = [each for row in shapes.buttons(message) for each in row]
    for each in found:
        if "callback_data" in each and button in (each["callback_data"], each["text"]):
            return str(each["callback_data"])
    labels = ", ".join(each["text"] for each in found) or "none"
    raise NoSuch(f"button {button!r} under message {message['message_id']}: there are {labels}")
