"""A platform whose people tap at moments that were set beforehand, whether they are answered or not.

`python -m tests.bench.crowd PORT`. POST /crowd [[seconds from now, update], …] lets taps come; they are asked for, or
brought to the webhook that was set. GET /heard says of each tap how many seconds after its moment it was answered
(`taps`, by the query), the tapped message was changed (`edits`, by the chat), and of each client named "P" and a number
when somebody else was first told of them (`told`, by the number). POST /reset forgets.
"""

from __future__ import annotations

import argparse
import asyncio
import json
import re
import time
from typing import Any

import aiohttp
from aiohttp import web

from tests.bench.platform import Counting, accepted, answering

CONNECTIONS = 40
"""To a webhook at once: the platform's own number (Bot API, setWebhook, `max_connections`)."""

HELD_SECONDS = 25.0
NAMED = re.compile(r"\bP(\d+)\b")


class Crowd(Counting):
    """Hands out taps at their moments and notes when each was answered."""

    def __init__(self) -> None:
        super().__init__(delay=0.0)
        self._came = asyncio.Event()
        self._webhook: tuple[str, str] | None = None
        self._http: aiohttp.ClientSession | None = None
        self._moments: dict[int, float] = {}
        """By chat: when its tap was to come."""
        self._heard: dict[str, dict[str, float]] = {}
        self._tasks: set[asyncio.Task[None]] = set()
        self._forget()

    def _forget(self) -> None:
        self._moments = {}
        self._heard = {"taps": {}, "edits": {}, "told": {}}

    async def answer(self, request: web.Request) -> web.Response:
        """As any platform, and notes what answers a tap."""
        method = request.match_info["method"]
        if method == "getUpdates":
            asked = request.query.get("offset") or (await request.post()).get("offset") or 0
            return accepted(await self._waiting(int(str(asked))))
        if method in ("setWebhook", "deleteWebhook"):
            fields = await request.post()
            url = str(fields.get("url", ""))
            self._webhook = (url, str(fields.get("secret_token", ""))) if url else None
            return accepted(True)
        if method not in ("getMe", "setMyCommands"):
            fields = await (request.json() if request.content_type == "application/json" else request.post())
            self._note(method, fields)
        return await super().answer(request)

    def _note(self, method: str, fields: Any) -> None:
        now = time.monotonic()
        if method == "answerCallbackQuery":
            self._hear("taps", str(fields["callback_query_id"]), now)
            return
        chat = int(fields.get("chat_id", 0))
        if method.startswith("editMessage"):
            self._hear("edits", str(chat), now)
            return
        for number in NAMED.findall(str(fields.get("text") or fields.get("caption") or "")):
            if int(number) != chat:
                self._hear("told", number, now)

    def _hear(self, what: str, who: str, now: float) -> None:
        moment = self._moments.get(int(who))
        if moment is not None:
            self._heard[what].setdefault(who, now - moment)

    async def _waiting(self, offset: int) -> list[dict[str, Any]]:
        self._updates = [update for update in self._updates if update["update_id"] >= offset]
        if not self._updates:
            self._came.clear()
            try:
                await asyncio.wait_for(self._came.wait(), HELD_SECONDS)
            except TimeoutError:
                return []
        return self._updates[:100]

    async def crowd(self, request: web.Request) -> web.Response:
        """Lets taps come at their moments."""
        self._begin(self._come(await request.json(), time.monotonic()))
        return web.Response()

    async def _come(self, taps: list[tuple[float, dict[str, Any]]], begin: float) -> None:
        for after, update in taps:
            await asyncio.sleep(begin + after - time.monotonic())
            self._fed += 1
            self._moments[update["callback_query"]["from"]["id"]] = begin + after
            if self._webhook is None:
                self._updates.append(update | {"update_id": self._fed})
                self._came.set()
            else:
                self._begin(self._bring(update | {"update_id": self._fed}, *self._webhook))

    async def _bring(self, update: dict[str, Any], url: str, secret: str) -> None:
        if self._http is None:
            self._http = aiohttp.ClientSession(connector=aiohttp.TCPConnector(limit=CONNECTIONS))
        headers = {"X-Telegram-Bot-Api-Secret-Token": secret}
        async with self._http.post(url, json=update, headers=headers) as answer:
            if answer.status != 200:
                raise RuntimeError(f"the webhook answered {answer.status}")

    def _begin(self, work: Any) -> None:
        task = asyncio.create_task(work)
        self._tasks.add(task)
        task.add_done_callback(self._ended)

    def _ended(self, task: asyncio.Task[None]) -> None:
        self._tasks.discard(task)
        task.result()

    async def heard(self, _request: web.Request) -> web.Response:
        """What was noted so far."""
        return web.Response(body=json.dumps(self._heard), content_type="application/json")

    async def reset(self, request: web.Request) -> web.Response:
        """Forgets what came and what was noted; update numbers go on."""
        self._forget()
        return await super().reset(request)


async def _serve(port: int) -> None:
    crowd = Crowd()
    more = [web.post("/crowd", crowd.crowd), web.get("/heard", crowd.heard)]
    await answering(crowd, port, more)


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("port", type=int)
    asyncio.run(_serve(words.parse_args().port))
