"""Updates as the platform sends them, and the chat library's own application to handle them, without a platform."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from typing import Any

from telegram import User

from bot.handlers import STORED, Stored, handlers
from bot.receiving import QuietApplication, add_handlers, built, dispatch

BOT: dict[str, Any] = {"id": 1000, "is_bot": True, "first_name": "Easeward", "username": "easeward_practice_bot"}


def offline(username: str = BOT["username"]) -> QuietApplication:
    """The application with our handlers; a call to the platform fails."""
    found = built("1000:practice", "http://127.0.0.1:9")
    found.bot._bot_user = User.de_json(BOT | {"username": username}, None)
    found._initialized = True
    add_handlers(found, handlers(username))
    return found


async def handled(
    application: QuietApplication, update: Mapping[str, Any], now: datetime, document: bytes | None = None
) -> None:
    """Handles an update inside the write that is going on."""
    token = STORED.set(Stored(now, document))
    try:
        await dispatch(application, update)
    finally:
        STORED.reset(token)


def message(
    number: int, now: datetime, *, chat: int = 5, sender: int = 5, kind: str = "private", **content: Any
) -> dict[str, Any]:
    """Somebody sends something."""
    text = str(content.get("text", ""))
    if text.startswith("/"):
        content["entities"] = [{"type": "bot_command", "offset": 0, "length": len(text.split()[0])}]
    return {
        "update_id": number,
        "message": {
            "message_id": number,
            "date": int(now.timestamp()),
            "chat": {"id": chat, "type": kind},
            "from": {"id": sender, "is_bot": False, "first_name": "Kim"},
            **content,
        },
    }
