"""Delivers updates to the bot's webhook, one after another, again after a failure."""

from __future__ import annotations

import asyncio
from dataclasses import replace

import aiohttp

from bot.practice.news import woken
from bot.practice.shapes import Body
from bot.practice.updates import Hook, Updates
from bot.practice.world import World

ANSWER_SECONDS = 30.0
FIRST_PAUSE, LONGEST_PAUSE = 0.5, 30.0
"""Seconds between two tries of one update; they double. The platform does not publish its own: our numbers."""


class Deliverer:
    """Brings each update to the webhook until it is answered with a 2xx, and only then the next."""

    def __init__(self, world: World, updates: Updates) -> None:
        self._world = world
        self._updates = updates
        self._pause = 0.0

    async def run(self) -> None:
        """Delivers until it is cancelled."""
        timeout = aiohttp.ClientTimeout(total=ANSWER_SECONDS)
        async with aiohttp.ClientSession(timeout=timeout) as http:
            with self._world.updates_news.heard() as event:
                while True:
                    while await self._deliver_next(http):
                        pass
                    await self._rest(event)

    async def _rest(self, event: asyncio.Event) -> None:
        """Until something happens; after a failure until the pause is over or the webhook is another."""
        if not self._pause:
            await event.wait()
            event.clear()
            return
        hook, until = self._updates.hook(), self._world.machine.now() + self._pause
        while self._updates.hook() == hook and (left := until - self._world.machine.now()) > 0:
            await woken(event, left)

    async def _deliver_next(self, http: aiohttp.ClientSession) -> bool:
        """Delivers the oldest update; False when there is none, or nobody took it."""
        hook = self._updates.hook()
        found = self._world.store.updates(1) if hook is not None else []
        if hook is None or not found:
            self._pause = 0.0
            return False
        problem = await self._try(http, hook, found[0])
        if problem is None:
            self._world.store.confirm(found[0]["update_id"] + 1)
        if problem is None or self._updates.hook() != hook:
            self._pause = 0.0
            return True
        self._pause = min(LONGEST_PAUSE, max(FIRST_PAUSE, 2 * self._pause))
        self._updates.keep_hook(replace(hook, error_at=self._world.now(), error=problem))
        return False

    async def _try(self, http: aiohttp.ClientSession, hook: Hook, update: Body) -> str | None:
        """None when the webhook took the update, else what the platform says of the failure."""
        headers = {"X-Telegram-Bot-Api-Secret-Token": hook.secret} if hook.secret else {}
        try:
            async with http.post(hook.url, json=update, headers=headers, allow_redirects=False) as answer:
                if 200 <= answer.status < 300:
                    return None
                return f"Wrong response from the webhook: {answer.status} {answer.reason}"
        except TimeoutError:
            return "Read timeout expired"
        except aiohttp.ClientConnectorError:
            return "Connection refused"
        except aiohttp.ClientError as error:
            return f"Connection failed: {type(error).__name__}"
