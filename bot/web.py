"""A small web server for whoever watches the program: is it alive, is it ready."""

from __future__ import annotations

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

from aiohttp import web
from sqlalchemy import text
from sqlalchemy.exc import SQLAlchemyError

from db.engine import Database


@asynccontextmanager
async def health(port: int | None, database: Database) -> AsyncIterator[None]:
    """Serves /livez and /readyz on 127.0.0.1 while the block runs; without a port nothing is served."""
    if port is None:
        yield
        return

    async def alive(_request: web.Request) -> web.Response:
        return web.Response(text="alive\n")

    async def ready(_request: web.Request) -> web.Response:
        try:
            async with database.reading() as session:
                await session.execute(text("SELECT 1"))
        except SQLAlchemyError:
            return web.Response(status=503, text="the database does not answer\n")
        return web.Response(text="ready\n")

    application = web.Application()
    application.add_routes([web.get("/livez", alive), web.get("/readyz", ready)])
    runner = web.AppRunner(application, access_log=None)
    await runner.setup()
    try:
        await web.TCPSite(runner, "127.0.0.1", port).start()
        yield
    finally:
        await runner.cleanup()
