"""A chat platform that answers as fast as it can, in a process of its own, so that both sides of a bench meet the same.

`python -m tests.bench.platform PORT [--delay SECONDS]` accepts every method; POST /reset and GET /count tell how many
messages arrived and how many chats got one twice.
"""

from __future__ import annotations

import argparse
import asyncio
import json
from collections import Counter
from typing import Any

from aiohttp import web


class Counting:
    """Counts what arrives by chat and text."""

    def __init__(self, delay: float) -> None:
        self._delay = delay
        self._seen: Counter[tuple[str, str]] = Counter()
        self._number = 0

    async def answer(self, request: web.Request) -> web.Response:
        """Accepts a message; getMe says who the bot is."""
        if request.match_info["method"] == "getMe":
            return _accepted({"id": 100, "is_bot": True, "first_name": "Bench", "username": "bench_bot"})
        fields = await (request.json() if request.content_type == "application/json" else request.post())
        if self._delay:
            await asyncio.sleep(self._delay)
        chat, text = str(fields.get("chat_id", 0)), str(fields.get("text", ""))
        self._seen[chat, text] += 1
        self._number += 1
        chat_is = {"id": int(chat), "type": "private", "first_name": "Bench"}
        return _accepted({"message_id": self._number, "date": 1, "chat": chat_is, "text": text})

    async def count(self, _request: web.Request) -> web.Response:
        """How many messages arrived, and how many of them a second time."""
        total = sum(self._seen.values())
        return web.json_response({"arrived": total, "doubles": total - len(self._seen)})

    async def reset(self, _request: web.Request) -> web.Response:
        """Forgets what arrived."""
        self._seen.clear()
        return web.Response()


def _accepted(result: Any) -> web.Response:
    return web.Response(body=json.dumps({"ok": True, "result": result}), content_type="application/json")


async def _serve(port: int, delay: float) -> None:
    counting = Counting(delay)
    application = web.Application()
    application.router.add_post("/bot{token}/{method}", counting.answer)
    application.router.add_get("/count", counting.count)
    application.router.add_post("/reset", counting.reset)
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
    asyncio.run(_serve(found.port, found.delay))
