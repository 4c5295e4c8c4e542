"""The practice chat over HTTP: the Bot API under /bot<token>, people's side as JSON under /practice, the page at /."""

from __future__ import annotations

import asyncio
import hmac
import json
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager, suppress
from importlib.resources import files
from ipaddress import ip_address
from typing import Any

from aiohttp import web
from yarl import URL

from bot.clocks import Calendar, Machine
from bot.practice.clock import Mover
from bot.practice.controls import controls
from bot.practice.errors import ApiError, bad, too_many
from bot.practice.faults import Fault, Faults, Trouble
from bot.practice.fields import Upload
from bot.practice.limits import MEBIBYTE
from bot.practice.platform import NoSuch, Platform, Rates
from bot.practice.store import Store

LARGEST_REQUEST = 60 * MEBIBYTE
PAGE = (
    "page.css",
    "page.js",
    "chat.js",
    "entry.js",
    "tools.js",
    "course.js",
    "cells.js",
    "acting.js",
    "programmes.js",
    "troubles.js",
)
KINDS = {"html": "text/html", "css": "text/css", "js": "text/javascript"}


class PracticeServer:
    """A local chat platform with one bot, its people and the page, on any address; durable when its store is."""

    def __init__(
        self,
        token: str,
        *,
        store: Store,
        calendar: Calendar,
        machine: Machine,
        mover: Mover | None = None,
        rates: Rates | None = None,
        faults: Faults | None = None,
    ) -> None:
        self.platform = Platform(token, calendar=calendar, machine=machine, store=store, rates=rates)
        self.faults = faults
        self._mover = mover

    @asynccontextmanager
    async def listening(self, host: str = "127.0.0.1", port: int = 0) -> AsyncIterator[str]:
        """Serves while the block runs; gives the address. Port 0 is any free one. Raises OSError."""
        app = application(self.platform, faults=self.faults)
        controls(app, self.platform, self._mover, self.faults)
        async with listening(app, host, port) as address:
            yield address


def application(platform: Platform, *, faults: Faults | None = None) -> web.Application:
    """The Bot API and the page of one platform, and its webhook's deliveries; people's controls are added apart."""
    app = web.Application(client_max_size=LARGEST_REQUEST, middlewares=[own_pages_only])
    app.on_response_prepare.append(_guard)
    api = _Api(platform, faults or Faults())
    app.router.add_route("*", "/bot{token}/{method}", api.call)
    app.router.add_get("/file/bot{token}/{folder}/{file}", api.file)
    for name in ("", *PAGE):
        app.router.add_get(f"/{name}", _page)

    async def delivering(_app: web.Application) -> AsyncIterator[None]:
        task = asyncio.create_task(platform.deliverer().run())
        yield
        task.cancel()
        with suppress(asyncio.CancelledError):
            await task

    app.cleanup_ctx.append(delivering)
    return app


HEADERS = {
    "Content-Security-Policy": "frame-ancestors 'none'",
    "Referrer-Policy": "no-referrer",
    "X-Content-Type-Options": "nosniff",
}
"""Stand on every answer; what the page itself may load stands in the page."""


async def _guard(_request: web.Request, response: web.StreamResponse) -> None:
    response.headers.update(HEADERS)


@web.middleware
async def own_pages_only(request: web.Request, handler: Callable[..., Awaitable[web.StreamResponse]]) -> Any:
    """Refuses what another site's page sends from this machine's browser, also under a name that leads here."""
    origin = request.headers.get("Origin")
    if not _is_here(request.host) or (origin is not None and origin != f"{request.scheme}://{request.host}"):
        return web.json_response({"error": "only this page itself may ask here"}, status=403)
    return await handler(request)


def _is_here(host: str) -> bool:
    """Whether a Host is an address or localhost: no name that somebody else's server could give to this machine."""
    name = URL(f"http://{host}").host or ""
    if name == "localhost":
        return True
    try:
        ip_address(name)
    except ValueError:
        return False
    return True


async def _page(request: web.Request) -> web.Response:
    name = request.path.lstrip("/") or "index.html"
    text = files("bot.practice").joinpath("page", name).read_text(encoding="utf-8")
    return web.Response(text=text, content_type=KINDS[name.rpartition(".")[2]], headers={"Cache-Control": "no-store"})


class _Api:
    def __init__(self, platform: Platform, faults: Faults) -> None:
        self._platform = platform
        self._faults = faults

    async def call(self, request: web.Request) -> web.StreamResponse:
        return await self._answered(request, self._result)

    async def file(self, request: web.Request) -> web.StreamResponse:
        return await self._answered(request, self._file)

    async def _answered(
        self, request: web.Request, work: Callable[[web.Request], Awaitable[web.StreamResponse]]
    ) -> web.StreamResponse:
        try:
            if not hmac.compare_digest(request.match_info["token"].encode(), self._platform.token.encode()):
                raise ApiError(401, "Unauthorized")
            return await work(request)
        except ApiError as error:
            return web.json_response(error.as_json(), status=error.code)

    async def _result(self, request: web.Request) -> web.StreamResponse:
        method = request.match_info["method"]
        fault = self._faults.take(method)
        await _before(request, fault)
        result = await self._platform.call(method, await _params(request))
        if fault is not None and fault.what is Trouble.LOSE_ANSWER:
            await _cut(request)
        return web.json_response({"ok": True, "result": result})

    async def _file(self, request: web.Request) -> web.StreamResponse:
        await _before(request, self._faults.take("file"))
        try:
            found = self._platform.file(request.match_info["file"])
        except NoSuch as error:
            raise ApiError(404, "Not Found") from error
        return web.Response(body=found.body, content_type="application/octet-stream")


async def _before(request: web.Request, fault: Fault | None) -> None:
    """The troubles that come before a request takes effect."""
    if fault is None:
        return
    if fault.what is Trouble.LOSE_REQUEST:
        await _cut(request)
    if fault.what is Trouble.SERVER_ERROR:
        raise ApiError(502, "Bad Gateway")
    if fault.what is Trouble.TOO_MANY:
        raise too_many(max(1, int(fault.seconds)))
    if fault.what is Trouble.SLOW:
        await asyncio.sleep(fault.seconds)


async def _cut(request: web.Request) -> None:
    """Breaks the connection as a failing network does."""
    if request.transport is not None:
        request.transport.abort()
    raise asyncio.CancelledError


async def _params(request: web.Request) -> dict[str, Any]:
    """A request's fields, from query, form, multipart or JSON. Raises ApiError."""
    found: dict[str, Any] = dict(request.query)
    if request.method != "POST" or not request.can_read_body:
        return found
    try:
        if request.content_type == "application/json":
            return found | await _json(request)
        return found | {name: _field(value) for name, value in (await request.post()).items()}
    except web.HTTPRequestEntityTooLarge as error:
        raise ApiError(413, "Request Entity Too Large") from error
    except ValueError as error:
        raise bad("can't parse the request's body") from error


async def _json(request: web.Request) -> dict[str, Any]:
    try:
        body = await request.json()
    except json.JSONDecodeError as error:
        raise bad("can't parse JSON object") from error
    if not isinstance(body, dict):
        raise bad("object expected")
    return body


def _field(value: str | bytes | bytearray | web.FileField) -> str | Upload:
    if isinstance(value, web.FileField):
        return Upload(value.filename, value.file.read())
    return value if isinstance(value, str) else value.decode(errors="replace")


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
