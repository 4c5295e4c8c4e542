"""How the bot learns what people did: it asks (long polling), or it is told (a webhook)."""

from __future__ import annotations

import json
import re
from dataclasses import asdict, dataclass
from typing import Any

from bot.practice import fields
from bot.practice.errors import ApiError, bad
from bot.practice.fields import Params
from bot.practice.limits import LIMITS
from bot.practice.news import woken
from bot.practice.shapes import Body
from bot.practice.world import World

_KIND = "webhook"


@dataclass(frozen=True, slots=True)
class Hook:
    """Where updates are delivered, and what the platform says of the last failure."""

    url: str
    secret: str
    connections: int
    error_at: int | None = None
    error: str | None = None


class Updates:
    """The Bot API's methods that hand out updates. Each is kept until the bot has confirmed it."""

    def __init__(self, world: World) -> None:
        self._world = world
        self._polls = 0
        self._ended_by = ""

    # --- the bot asks -------------------------------------------------------------------------------------------------

    async def get(self, params: Params) -> list[Body]:
        """getUpdates. A later call ends an earlier one that still waits: that one is answered 409."""
        if self.hook() is not None:
            raise _conflict(
                "can't use getUpdates method while webhook is active; use deleteWebhook to delete the webhook first"
            )
        limit = LIMITS["updates at once"].nearest(fields.number(params, "limit", 100))
        wait = LIMITS["long poll"].nearest(fields.number(params, "timeout"))
        mine = self._new_poll("getUpdates")
        self._allow(params)
        self._confirm(fields.number(params, "offset"))
        return await self._wait(mine, limit, wait)

    async def _wait(self, mine: int, limit: int, seconds: float) -> list[Body]:
        until = self._world.machine.now() + seconds
        with self._world.updates_news.heard() as event:
            while True:
                found = self._world.store.updates(limit)
                left = until - self._world.machine.now()
                if found or left <= 0 or not await woken(event, left):
                    return found
                if self._polls != mine:
                    raise _conflict(f"terminated by {self._ended_by}")

    def _new_poll(self, method: str) -> int:
        self._ended_by = {
            "getUpdates": "other getUpdates request; make sure that only one bot instance is running",
            "setWebhook": "setWebhook request",
        }[method]
        self._polls += 1
        self._world.updates_news.tell()
        return self._polls

    def _confirm(self, offset: int) -> None:
        if offset > 0:
            self._world.store.confirm(offset)
        elif offset < 0:
            self._world.store.keep_last(-offset)

    def _allow(self, params: Params) -> None:
        wanted = fields.structure(params, "allowed_updates", None)
        if wanted is None:
            return
        if not isinstance(wanted, list) or not all(isinstance(kind, str) for kind in wanted):
            raise bad("can't parse allowed_updates: expected an Array of String")
        self._world.store.keep("allowed updates", json.dumps(wanted))

    # --- the bot is told ----------------------------------------------------------------------------------------------

    def set_webhook(self, params: Params) -> bool:
        """setWebhook. An empty address deletes it; http is taken as well as https, for this is one machine."""
        url, secret = fields.word(params, "url").strip(), fields.word(params, "secret_token")
        if not url:
            return self.delete_webhook(params)
        if not re.fullmatch(r"https?://[^\s/?#]+(?:[/?]\S*)?", url):
            raise bad("bad webhook: URL is invalid")
        LIMITS["webhook secret"].check(len(secret))
        if not re.fullmatch(r"[A-Za-z0-9_-]*", secret):
            raise bad("secret token contains unallowed characters")
        most = LIMITS["webhook connections"].nearest(fields.number(params, "max_connections", 40))
        self._allow(params)
        self._drop(params)
        self.keep_hook(Hook(url, secret, most))
        self._new_poll("setWebhook")
        return True

    def delete_webhook(self, params: Params) -> bool:
        """deleteWebhook."""
        self._drop(params)
        self._world.store.keep(_KIND, "")
        self._world.updates_news.tell()
        return True

    def webhook_info(self, _params: Params) -> Body:
        """getWebhookInfo."""
        hook = self.hook()
        found: Body = {
            "url": hook.url if hook else "",
            "has_custom_certificate": False,
            "pending_update_count": self._world.store.unconfirmed(),
        }
        if hook is not None:
            found |= _present(max_connections=hook.connections, ip_address="127.0.0.1")
            found |= _present(last_error_date=hook.error_at, last_error_message=hook.error)
        allowed = json.loads(self._world.store.fact("allowed updates") or "[]")
        return found | _present(allowed_updates=allowed or None)

    def hook(self) -> Hook | None:
        """The webhook, if there is one."""
        kept = self._world.store.fact(_KIND)
        return Hook(**json.loads(kept)) if kept else None

    def keep_hook(self, hook: Hook) -> None:
        """Keeps the webhook."""
        self._world.store.keep(_KIND, json.dumps(asdict(hook)))

    def _drop(self, params: Params) -> None:
        if fields.flag(params, "drop_pending_updates"):
            self._world.store.keep_last(0)


def _present(**values: Any) -> Body:
    return {name: value for name, value in values.items() if value is not None}


def _conflict(what: str) -> ApiError:
    return ApiError(409, f"Conflict: {what}")
