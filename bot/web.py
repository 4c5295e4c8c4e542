"""The program's web server: is it alive, is it ready, and the way in for updates that the platform brings."""

from __future__ import annotations

from collections.abc import AsyncIterator, Callable, Mapping
from contextlib import asynccontextmanager
from typing import Any

from aiohttp import web
from sqlalchemy import text
from sqlalchemy.exc import SQLAlchemyError

from bot.webhook import LARGEST_UPDATE
from db.engine import Database

LAST_ANSWERS = 1.0
"""Seconds for requests that are being answered when the program stops. Our own choice."""

Post = Mapping[str, Callable[[web.Request], Any]]
"""By path, what answers a POST."""


@asynccontextmanager
async def serving(host: str, port: int | None, database: Database, post: Post) -> AsyncIterator[None]:
    """Serves /livez, /readyz and `post` while the block runs; without a port nothing is served."""
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

    application = web.Application(client_max_size=LARGEST_UPDATE)
    application.add_routes([web.get("/livez", alive), web.get("/readyz", ready)])
    application.add_routes([web.post(path, answer) for path, answer in post.items()])
    runner = web.AppRunner(application, access_log=None, shutdown_timeout=LAST_ANSWERS)
    await runner.setup()
    try:
        await web.TCPSite(runner, host, port).start()
        yield
    finally:
        await runner.cleanup()
