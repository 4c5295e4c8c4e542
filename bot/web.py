"""The program's web server: alive, ready, figures, and the way in for updates that the platform brings."""

from __future__ import annotations

from collections.abc import AsyncIterator, Awaitable, Callable, Mapping
from contextlib import asynccontextmanager
from typing import Any

from aiohttp import web
from sqlalchemy import text
from sqlalchemy.exc import SQLAlchemyError

from bot.metrics import CONTENT_TYPE
from bot.webhook import LARGEST_UPDATE
from db.engine import Database

LAST_ANSWERS = 1.0
"""Seconds for requests that are being answered when the program stops. Our own choice."""

Post = Mapping[str, Callable[[web.Request], Any]]
"""By path, what answers a POST."""

Figures = Callable[[], Awaitable[bytes]]
"""All figures as they stand, in Prometheus' text format."""

HEADERS = {
    "Cache-Control": "no-store",
    "Content-Security-Policy": "default-src 'none'; base-uri 'none'; object-src 'none'; frame-ancestors 'none'",
    "Referrer-Policy": "no-referrer",
    "Strict-Transport-Security": "max-age=31536000; includeSubDomains",
    "X-Content-Type-Options": "nosniff",
    "Server": "easeward",
}
"""Stand on every answer: nothing here is a page, and nothing is to be kept, framed, guessed at or known better."""


@asynccontextmanager
async def serving(
    host: str, port: int | None, database: Database, post: Post, figures: Figures | None = None
) -> AsyncIterator[None]:
    """Serves /livez, /readyz, /metrics and `post` while the block runs; without a port nothing is served."""
    if port is None:
        yield
        return

    async def alive(_request: web.Request) -> web.Response:
        return web.Response(text="alive\n")

    async def ready(_request: web.Request) -> web.Response:
        try:
            async with database.reading() as session:
                await session.execute(text("SELECT 1"))
        except (SQLAlchemyError, OSError):
            return web.Response(status=503, text="the database does not answer\n")
        return web.Response(text="ready\n")

    async def measured(_request: web.Request) -> web.Response:
        return web.Response(body=await figures() if figures else b"", headers={"Content-Type": CONTENT_TYPE})

    async def prepared(_request: web.Request, response: web.StreamResponse) -> None:
        response.headers.update(HEADERS)

    application = web.Application(client_max_size=LARGEST_UPDATE)
    application.on_response_prepare.append(prepared)
    application.add_routes([web.get("/livez", alive), web.get("/readyz", ready), web.get("/metrics", measured)])
    application.add_routes([web.post(path, answer) for path, answer in post.items()])
    runner = web.AppRunner(application, access_log=None, shutdown_timeout=LAST_ANSWERS)
    await runner.setup()
    try:
        await web.TCPSite(runner, host, port).start()
        yield
    finally:
        await runner.cleanup()
