"""A chat platform that answers as fast as it can, in a process of its own, for benches and for tests that kill.

`python -m tests.bench.platform PORT [--delay SECONDS]` accepts every method. POST /reset forgets; GET /count says how
many messages arrived and how many a second time; GET /seen gives each text and how often it arrived; POST /feed
{count, chats} lets so many updates wait, which getUpdates hands out until they are confirmed.
"""

from __future__ import annotations

import argparse
import asyncio
import json
from collections import Counter
from collections.abc import Sequence
from typing import Any

from aiohttp import web


class Counting:
    """Counts what arrives by chat and text, and hands out updates."""

    def __init__(self, delay: float) -> None:
        self._delay = delay
        self._seen: Counter[tuple[str, str]] = Counter()
        self._number = 0
        self._updates: list[dict[str, Any]] = []
        self._fed = 0

    async def answer(self, request: web.Request) -> web.Response:
        """Accepts a message; getMe says who the bot is."""
        method = request.match_info["method"]
        if method == "getMe":
            return accepted({"id": 100, "is_bot": True, "first_name": "Bench", "username": "bench_bot"})
        if method == "getUpdates":
            return accepted(await self._waiting(int(request.query.get("offset", 0))))
        if method in ("setMyCommands", "deleteWebhook"):
            return accepted(True)
        fields = await (request.json() if request.content_type == "application/json" else request.post())
        self._number += 1
        number, chat, text = self._number, str(fields.get("chat_id", 0)), str(fields.get("text", ""))
        self._seen[chat, text] += 1
        if self._delay:
            await asyncio.sleep(self._delay)
        chat_is = {"id": int(chat), "type": "private", "first_name": "Bench"}
        result = {"message_id": number, "date": 1, "chat": chat_is, "text": text}
        photo = {"photo": [{"file_id": "kept", "file_unique_id": "k", "width": 1, "height": 1}]}
        return accepted(result | photo if method == "sendPhoto" else result)

    async def _waiting(self, offset: int) -> list[dict[str, Any]]:
        self._updates = [update for update in self._updates if update["update_id"] >= offset]
        if not self._updates:
            await asyncio.sleep(0.1)
        return self._updates[:100]

    async def feed(self, request: web.Request) -> web.Response:
        """Lets updates wait: words of people whom the bot does not know, who get one answer each."""
        wanted = await request.json()
        for _ in range(wanted["count"]):
            self._fed += 1
            person = {"id": 500_000 + self._fed % wanted["chats"], "first_name": "X"}
            message = {
                "message_id": self._fed,
                "date": 1,
                "chat": person | {"type": "private"},
                "from": person | {"is_bot": False},
                "text": "hello",
            }
            self._updates.append({"update_id": self._fed, "message": message})
        return web.json_response({"fed": self._fed})

    async def count(self, _request: web.Request) -> web.Response:
        """How many messages arrived, and how many of them a second time."""
        total = sum(self._seen.values())
        return web.json_response({"arrived": total, "doubles": total - len(self._seen)})

    async def seen(self, _request: web.Request) -> web.Response:
        """How often each text arrived in whichever chat."""
        found: Counter[str] = Counter()
        for (_chat, text), count in self._seen.items():
            found[text] += count
        return web.json_response(found)

    async def reset(self, _request: web.Request) -> web.Response:
        """Forgets what arrived."""
        self._seen.clear()
        return web.Response()


def accepted(result: Any) -> web.Response:
    """The platform's answer to a request that it carries out."""
    return web.Response(body=json.dumps({"ok": True, "result": result}), content_type="application/json")


async def answering(counting: Counting, port: int, more: Sequence[web.RouteDef] = ()) -> None:
    """Answers at a port until the process ends; says when it is ready."""
    application = web.Application(client_max_size=2**28)
    application.router.add_post("/bot{token}/{method}", counting.answer)
    application.router.add_get("/count", counting.count)
    application.router.add_get("/seen", counting.seen)
    application.router.add_post("/feed", counting.feed)
    application.router.add_post("/reset", counting.reset)
    application.router.add_routes(more)
    runner = web.AppRunner(application, access_log=None)
    await runner.setup()
    await web.TCPSite(runner, "127.0.0.1", port).start()
    print("ready", flush=True)
    await asyncio.Event().wait()


if __name__ == "__main__":
    words = argparse.ArgumentParser()
    words.add_argument("port", type=int)
    words.add_argument("--delay", type=float, default=0.0)
    found = words.parse_args()
    asyncio.run(answering(Counting(found.delay), found.port))
