"""The platform's objects as it writes them: users, chats, buttons, documents, photos."""

from __future__ import annotations

import mimetypes
import re
from collections.abc import Mapping
from typing import Any

from bot.practice.entities import Entity
from bot.practice.pictures import film_sides, sides
from bot.practice.store import File

BOT_USERNAME = "easeward_practice_bot"

Body = dict[str, Any]


def bot(bot_id: int) -> Body:
    """The bot as a user."""
    return {"id": bot_id, "is_bot": True, "first_name": "Easeward", "username": BOT_USERNAME}


def user(person: Mapping[str, Any]) -> Body:
    """A person as a user."""
    language = person.get("language", "en")
    return {"id": person["id"], "is_bot": False, "first_name": person["first_name"], "language_code": language}


def chat(person: Mapping[str, Any]) -> Body:
    """A person's private chat."""
    return {"id": person["id"], "type": "private", "first_name": person["first_name"]}


def full_chat(person: Mapping[str, Any]) -> Body:
    """The same with everything that the platform says of a chat when it is asked."""
    gifts = ("unlimited_gifts", "limited_gifts", "unique_gifts", "premium_subscription", "gifts_from_channels")
    none = {name: False for name in gifts}
    return {**chat(person), "accent_color_id": 0, "max_reaction_count": 11, "accepted_gift_types": none}


def document(file: File) -> Body:
    """A file as a message's document."""
    kind, _encoding = mimetypes.guess_type(file.name)
    return {
        "file_id": file.id,
        "file_unique_id": file.unique_id,
        "file_name": file.name,
        "mime_type": kind or "application/octet-stream",
        "file_size": len(file.body),
    }


def photo(file: File) -> list[Body]:
    """A file as a message's photo: one size, as it was sent."""
    width, height = sides(file.body) or (0, 0)
    size = {"file_id": file.id, "file_unique_id": file.unique_id, "width": width, "height": height}
    return [{**size, "file_size": len(file.body)}]


def animation(file: File) -> Body:
    """A file as a message's film without sound; how long it is is not looked at."""
    width, height = film_sides(file.body) or (0, 0)
    return {**document(file), "width": width, "height": height, "duration": 0}


def video(file: File) -> Body:
    """A file as a message's video; how long and how large it is is not looked at."""
    return {**document(file), "width": 0, "height": 0, "duration": 0}


def commands(text: str) -> list[Entity]:
    """The command that a text begins with, as an entity."""
    found = re.match(r"^/[a-zA-Z0-9_]{1,32}(?:@\w+)?", text)
    return [{"type": "bot_command", "offset": 0, "length": found.end()}] if found else []


def buttons(message: Mapping[str, Any]) -> list[list[Body]]:
    """The rows of buttons under a message."""
    return list((message.get("reply_markup") or {}).get("inline_keyboard", []))
