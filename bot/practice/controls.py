"""People's side of the practice chat as documented JSON: say, tap, send a file, block, move the calendar, look."""

from __future__ import annotations

import asyncio
import html
import json
from collections.abc import Awaitable, Callable
from datetime import UTC, datetime, timedelta
from typing import Any

from aiohttp import web

from bot.practice.clock import Mover, Unsettled
from bot.practice.errors import ApiError
from bot.practice.faults import Fault, Faults, Trouble
from bot.practice.platform import NoSuch, Platform

LONGEST_WAIT = 30.0
FURTHEST = timedelta(days=400)

Handler = Callable[[web.Request], Awaitable[web.StreamResponse]]


def controls(app: web.Application, platform: Platform, mover: Mover | None, faults: Faults | None = None) -> None:
    """Adds the routes. Without a mover the calendar is the real one and cannot be moved; faults are for tests."""
    side = _Side(platform, mover, faults)
    posts: dict[str, Handler] = {
        "say": side.say,
        "tap": side.tap,
        "document": side.document,
        "block": side.block,
        "clock": side.move_clock,
    }
    if faults is not None:
        posts["fault"] = side.fault
    gets: dict[str, Handler] = {
        "messages": side.messages,
        "chats": side.chats,
        "clock": side.clock,
        "answer": side.answer,
        "events": side.events,
    }
    for name, handler in posts.items():
        app.router.add_post(f"/practice/{name}", _guarded(handler))
    for name, handler in gets.items():
        app.router.add_get(f"/practice/{name}", _guarded(handler))


def _guarded(handler: Handler) -> Handler:
    async def run(request: web.Request) -> web.StreamResponse:
        try:
            return await handler(request)
        except NoSuch as error:
            return _problem(404, f"there is no {error}")
        except Unsettled as error:
            return _problem(503, str(error))
        except ApiError as error:
            return _problem(400, error.description)
        except (ValueError, KeyError, TypeError) as error:
            return _problem(400, str(error))

    return run


def _problem(status: int, text: str) -> web.Response:
    return web.json_response({"error": text}, status=status)


async def _body(request: web.Request) -> dict[str, Any]:
    try:
        body = await request.json()
    except json.JSONDecodeError as error:
        raise ValueError("the request's body is no JSON: send an object") from error
    if not isinstance(body, dict):
        raise ValueError("the request's body must be a JSON object")
    return body


def _number(body: dict[str, Any], name: str) -> int:
    value = body.get(name)
    if isinstance(value, bool) or not isinstance(value, int):
        raise ValueError(f"{name} is {value!r}: a whole number is needed")
    return value


def _text(body: dict[str, Any], name: str) -> str:
    value = body.get(name)
    if not isinstance(value, str) or not value:
        raise ValueError(f"{name} is {value!r}: a text is needed")
    return value


class _Side:
    def __init__(self, platform: Platform, mover: Mover | None, faults: Faults | None) -> None:
        self._platform = platform
        self._mover = mover
        self._faults = faults

    async def say(self, request: web.Request) -> web.Response:
        body = await _body(request)
        name = body.get("first_name")
        message = self._platform.say(
            _number(body, "chat"), _text(body, "text"), first_name=str(name)[:64] if name else None
        )
        return web.json_response({"id": message})

    async def tap(self, request: web.Request) -> web.Response:
        body = await _body(request)
        chat, message, button = _number(body, "chat"), _number(body, "message"), _text(body, "button")
        if body.get("forged") is True:
            return web.json_response({"tap": self._platform.forge_tap(chat, message, button)})
        return web.json_response({"tap": self._platform.tap(chat, message, button)})

    async def document(self, request: web.Request) -> web.Response:
        body = await _body(request)
        text = body.get("text")
        if not isinstance(text, str):
            raise ValueError(f"text is {type(text).__name__}: the file's text is needed")
        message = self._platform.send_document(_number(body, "chat"), _text(body, "name")[:200], text.encode())
        return web.json_response({"id": message})

    async def block(self, request: web.Request) -> web.Response:
        body = await _body(request)
        if not isinstance(body.get("on"), bool):
            raise ValueError(f"on is {body.get('on')!r}: true or false is needed")
        self._platform.block(_number(body, "chat"), body["on"])
        return web.json_response({})

    async def fault(self, request: web.Request) -> web.Response:
        body = await _body(request)
        if self._faults is None:
            raise ValueError("faults are not switched on here")
        fault = Fault(Trouble(_text(body, "what")), int(body.get("times", 1)), float(body.get("seconds", 1)))
        self._faults.plan(_text(body, "method"), fault)
        return web.json_response({})

    async def move_clock(self, request: web.Request) -> web.Response:
        body = await _body(request)
        if self._mover is None:
            raise ValueError("the calendar here is the real one: it cannot be moved")
        await self._mover.move(await self._target(self._mover, body))
        return await self.clock(request)

    async def _target(self, mover: Mover, body: dict[str, Any]) -> datetime:
        if "to" in body:
            target = datetime.fromisoformat(_text(body, "to"))
            if target.tzinfo is None:
                raise ValueError(f"to is {body['to']!r}: an instant with its offset is needed, such as …T07:00Z")
        elif body.get("next") == "morning":
            target = await mover.next_morning()
        elif "days" in body:
            target = mover.now() + timedelta(days=_number(body, "days"))
        else:
            raise ValueError('one of to, next ("morning") or days is needed')
        if target > mover.now() + FURTHEST:
            raise ValueError(f"{target.isoformat()} is more than {FURTHEST.days} days ahead")
        return target.astimezone(UTC)

    async def clock(self, _request: web.Request) -> web.Response:
        now = self._mover.now() if self._mover is not None else datetime.now(UTC)
        return web.json_response({"now": now.isoformat().replace("+00:00", "Z")})

    async def chats(self, _request: web.Request) -> web.Response:
        found = [
            {"id": c["id"], "name": c["first_name"], "blocked": c["blocked"], "last": c["last"]}
            for c in self._platform.chats()
        ]
        return web.json_response(found)

    async def messages(self, request: web.Request) -> web.Response:
        query = request.query
        chat, after, since = int(query["chat"]), int(query.get("after", 0)), int(query.get("since", 0))
        wait = min(LONGEST_WAIT, float(query.get("wait", 0)))
        event = self._platform.listen()
        try:
            found = self._platform.messages(chat, after=after, since=since)
            if not found and wait > 0:
                try:
                    await asyncio.wait_for(event.wait(), wait)
                except TimeoutError:
                    return web.json_response([])
                found = self._platform.messages(chat, after=after, since=since)
        finally:
            self._platform.unlisten(event)
        return web.json_response([shown(message, change, self._platform.bot_id) for change, message in found])

    async def answer(self, request: web.Request) -> web.Response:
        return web.json_response({"text": self._platform.tap_answer(request.query["tap"])})

    async def events(self, request: web.Request) -> web.StreamResponse:
        """Server-sent events: one without content whenever anything may have changed."""
        response = web.StreamResponse(headers={"Content-Type": "text/event-stream", "Cache-Control": "no-store"})
        await response.prepare(request)
        event = self._platform.listen()
        try:
            while True:
                await response.write(b"data: {}\n\n")
                event.clear()
                try:
                    await asyncio.wait_for(event.wait(), 15)
                except TimeoutError:
                    continue
        except ConnectionError:
            return response
        finally:
            self._platform.unlisten(event)


def shown(message: dict[str, Any], change: int, bot_id: int) -> dict[str, Any]:
    """A message as the documented JSON gives it."""
    rows = (message.get("reply_markup") or {}).get("inline_keyboard", [])
    found = {
        "id": message["message_id"],
        "from": "bot" if message["from"]["id"] == bot_id else "client",
        "text": message.get("text", ""),
        "html": _as_html(message),
        "buttons": [[{"label": b["text"], "data": b["callback_data"]} for b in row] for row in rows],
        "at": datetime.fromtimestamp(message["date"], UTC).isoformat().replace("+00:00", "Z"),
        "edited": "edit_date" in message,
        "change": change,
    }
    if "document" in message:
        found["document"] = {"name": message["document"]["file_name"], "size": message["document"]["file_size"]}
    return found


_TAGS = {"bold": "b", "italic": "i", "underline": "u", "strikethrough": "s", "code": "code", "pre": "pre"}


def _as_html(message: dict[str, Any]) -> str:
    """The text with its entities as safe HTML; only the tags above are ever written."""
    units = str(message.get("text", "")).encode("utf-16-le")
    opens: dict[int, str] = {}
    closes: dict[int, str] = {}
    for entity in message.get("entities", []):
        tag = _TAGS.get(entity["type"])
        if tag is not None:
            start, end = entity["offset"], entity["offset"] + entity["length"]
            opens[start] = opens.get(start, "") + f"<{tag}>"
            closes[end] = f"</{tag}>" + closes.get(end, "")
    marks = sorted({0, len(units) // 2, *opens, *closes})
    parts: list[str] = []
    for here, there in zip(marks, [*marks[1:], len(units) // 2], strict=True):
        parts.append(closes.get(here, "") + opens.get(here, ""))
        parts.append(html.escape(units[2 * here : 2 * there].decode("utf-16-le", errors="replace")))
    return "".join(parts)
