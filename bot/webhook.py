"""The platform brings updates by itself: each is stored before it is told so, and nobody else may bring any."""

from __future__ import annotations

import hmac
import json
import logging
import re
from collections.abc import Callable
from typing import Any
from urllib.parse import urlsplit

from aiohttp import web

from bot.clocks import Calendar
from db import inbox
from db.engine import Database
from db.trouble import passing

LARGEST_UPDATE = 2**20
"""Bytes. An update is a few kilobytes; files are not in it."""

HEADER = "X-Telegram-Bot-Api-Secret-Token"
"""The platform's own header for the secret (Bot API, setWebhook)."""

_SECRET = re.compile(r"[A-Za-z0-9_-]{16,256}")
"""The platform's alphabet and longest (Bot API, setWebhook); the shortest is our own choice."""

log = logging.getLogger(__name__)


class UnfitWebhook(ValueError):
    """The webhook's settings do not allow to serve; the message says which and what to do."""


def checked(url: str, secret: str | None, port: int | None) -> None:
    """Raises UnfitWebhook unless updates from `url` could be received and told from forged ones."""
    parts = urlsplit(url)
    if parts.scheme not in ("https", "http") or not parts.hostname or len(parts.path) < 2:
        raise UnfitWebhook(
            f"EASEWARD_WEBHOOK_URL: {url!r} is no address with a path, such as https://bot.example.org/in"
        )
    if not secret:
        raise UnfitWebhook("there is no secret: set EASEWARD_WEBHOOK_SECRET, or anybody could send updates")
    if not _SECRET.fullmatch(secret):
        raise UnfitWebhook("EASEWARD_WEBHOOK_SECRET: 16 to 256 letters, digits, - and _ are needed")
    if port is None:
        raise UnfitWebhook("there is no port to receive on: set EASEWARD_WEB_PORT")


def receiving(database: Database, calendar: Calendar, secret: str) -> Callable[[web.Request], Any]:
    """What answers at the webhook's path: 200 after the update is stored, 503 when it could not be stored now."""

    async def receive(request: web.Request) -> web.Response:
        given = request.headers.get(HEADER, "")
        if not hmac.compare_digest(given.encode("utf-8", "surrogateescape"), secret.encode()):
            log.warning("webhook-refused")
            return web.Response(status=401)
        update = update_in(await request.read())
        if update is None:
            return web.Response(status=400)
        now = calendar.now()
        try:
            await database.write(lambda session: inbox.store(session, [update], now))
        except Exception as error:
            if not passing(error):
                raise
            log.warning("update-not-stored", extra={"error": type(error).__name__})
            return web.Response(status=503)
        return web.Response()

    return receive


def update_in(body: bytes) -> dict[str, Any] | None:
    """The update that a body holds; None for whatever is none."""
    try:
        found = json.loads(body)
    except (ValueError, RecursionError):
        return None
    return found if isinstance(found, dict) and inbox.is_update(found) else None
