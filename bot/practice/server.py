"""The practice chat over HTTP: the Bot API under /bot<token>, people's side as JSON under /practice, the page at /."""

from __future__ import annotations

import asyncio
import hmac
import json
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from importlib.resources import files
from typing import Any

from aiohttp import web

from bot.practice.errors import ApiError
from bot.practice.faults import Fault, Faults, Trouble
from bot.practice.platform import NoSuch, Platform

LARGEST_REQUEST = 60 * 2**20
PAGE = {
    "": ("index.html", "text/html"),
    "page.css": ("page.css", "text/css"),
    "page.js": ("page.js", "text/javascript"),
}


def application(platform: Platform, *, faults: Faults | None = None) -> web.Application:
    """The routes of one platform; people's controls and the page are added by whoever composes them."""
    app = web.Application(client_max_size=LARGEST_REQUEST)
    api = _Api(platform, faults or Faults())
    app.router.add_route("*", "/bot{token}/{method}", api.call)
    app.router.add_get("/file/bot{token}/documents/{file}", api.file)
    for name in PAGE:
        app.router.add_get(f"/{name}", _page)
    return app


async def _page(request: web.Request) -> web.Response:
    name, kind = PAGE[request.path.lstrip("/")]
    text = files("bot.practice").joinpath("page", name).read_text(encoding="utf-8")
    return web.Response(text=text, content_type=kind, headers={"Cache-Control": "no-store"})


class _Api:
    def __init__(self, platform: Platform, faults: Faults) -> None:
        self._platform = platform
        self._faults = faults

    async def call(self, request: web.Request) -> web.StreamResponse:
        try:
            self._check_token(request)
            method = request.match_info["method"]
            fault = self._faults.take(method)
            await self._before(request, fault)
            result = await self._platform.call(method, await _params(request))
            if fault is not None and fault.what is Trouble.LOSE_ANSWER:
                await _cut(request)
            return web.json_response({"ok": True, "result": result})
        except ApiError as error:
            return web.json_response(error.as_json(), status=error.code)

    async def _before(self, request: web.Request, fault: Fault | None) -> None:
        if fault is None:
            return
        if fault.what is Trouble.LOSE_REQUEST:
            await _cut(request)
        if fault.what is Trouble.SERVER_ERROR:
            raise ApiError(502, "Bad Gateway")
        if fault.what is Trouble.TOO_MANY:
            seconds = max(1, int(fault.seconds))
            raise ApiError(429, f"Too Many Requests: retry after {seconds}", retry_after=seconds)
        if fault.what is Trouble.SLOW:
            await asyncio.sleep(fault.seconds)

    def _check_token(self, request: web.Request) -> None:
        if not hmac.compare_digest(request.match_info["token"].encode(), self._platform.token.encode()):
            raise ApiError(401, "Unauthorized")

    async def file(self, request: web.Request) -> web.Response:
        try:
            self._check_token(request)
            _name, body = self._platform.file(request.match_info["file"])
        except ApiError as error:
            return web.json_response(error.as_json(), status=error.code)
        except NoSuch:
            return web.json_response(ApiError(404, "Not Found").as_json(), status=404)
        return web.Response(body=body, content_type="application/octet-stream")


async def _cut(request: web.Request) -> None:
    """Breaks the connection as a failing network does."""
    if request.transport is not None:
        request.transport.abort()
    raise asyncio.CancelledError


async def _params(request: web.Request) -> dict[str, Any]:
    """A request's fields, from query, form, multipart or JSON."""
    found: dict[str, Any] = dict(request.query)
    if request.method != "POST" or not request.can_read_body:
        return found
    if request.content_type == "application/json":
        try:
            body = await request.json()
        except json.JSONDecodeError as error:
            raise ApiError(400, "Bad Request: can't parse JSON object") from error
        if not isinstance(body, dict):
            raise ApiError(400, "Bad Request: object expected")
        return found | body
    return found | dict(await request.post())


@asynccontextmanager
async def listening(app: web.Application, host: str, port: int) -> AsyncIterator[str]:
    """Serves an application while the block runs; gives its address. Port 0 is any free one. Raises OSError."""
    runner = web.AppRunner(app, access_log=None, shutdown_timeout=1.0)
    await runner.setup()
    try:
        site = web.TCPSite(runner, host, port)
        await site.start()
        bound = runner.addresses[0][1]
        yield f"http://{host}:{bound}"
    finally:
        await runner.cleanup()
