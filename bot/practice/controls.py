"""People's side of the practice chat as documented JSON: say, tap, send a file, block, move the calendar, look.

`GET /practice` lists every route with its fields, from the table below. Numbers of chats are those of people. What is
wrong with a request comes back as `{"error": …}`: 400 for a field, 404 for what is not there, 503 naming what hangs
when the calendar cannot be moved on.
"""

from __future__ import annotations

import json
import mimetypes
from collections.abc import Awaitable, Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import Any, Literal

from aiohttp import web

from bot.practice.asked import asked_of, body_of, bytes_of, degrees_of, first_name_of, number_of, text_of
from bot.practice.clock import Mover, Unsettled
from bot.practice.errors import ApiError
from bot.practice.faults import MESSAGES, Fault, Faults, Trouble
from bot.practice.news import woken
from bot.practice.platform import NoSuch, Platform
from bot.practice.showing import shown_all

LONGEST_WAIT = 30.0
"""Seconds that a request for messages may wait for one."""
FURTHEST = timedelta(days=400)
"""One move of the calendar at most."""
HEARTBEAT = 15.0
"""Seconds between two events when nothing happens, so that a dead connection is noticed."""

Handler = Callable[[web.Request], Awaitable[web.StreamResponse]]


@dataclass(frozen=True, slots=True)
class Route:
    """One documented route."""

    method: Literal["GET", "POST"]
    name: str
    handler: Handler
    what: str

    @property
    def path(self) -> str:
        """Its path."""
        return f"/practice/{self.name}"


def controls(
    app: web.Application,
    platform: Platform,
    mover: Mover | None,
    faults: Faults | None = None,
    more: Sequence[Route] = (),
) -> None:
    """Adds the routes, and `more` that somebody else answers.

    Without a mover the calendar is the real one and cannot be moved; without faults nothing goes wrong on demand.
    """
    routes = [*_routes(_Side(platform, mover), _Troubles(faults) if faults is not None else None), *more]
    for route in routes:
        app.router.add_route(route.method, route.path, _guarded(route.handler))
    listed = [{"method": route.method, "path": route.path, "what": route.what} for route in routes]

    async def listing(_request: web.Request) -> web.Response:
        return web.json_response(listed)

    app.router.add_get("/practice", listing)


def _routes(side: _Side, troubles: _Troubles | None) -> list[Route]:
    routes = [
        Route(
            "POST",
            "say",
            side.say,
            "{chat, text, first_name?, language?} -> {id}: types; an unknown chat is a new person",
        ),
        Route("POST", "edit", side.edit, "{chat, message, text} -> {}: changes what was typed"),
        Route("POST", "open", side.open, "{chat, start, first_name?} -> {id}: opens the bot's link ?start=…"),
        Route(
            "POST",
            "tap",
            side.tap,
            "{chat, message, button} -> {tap}: button is its data or its label; forged: true sends any data",
        ),
        Route(
            "POST",
            "document",
            side.document,
            "{chat, name, text | base64, caption?, first_name?} -> {id}: sends a file into the chat",
        ),
        Route(
            "POST",
            "location",
            side.location,
            "{chat, latitude, longitude, first_name?} -> {id}: shares a place, in degrees",
        ),
        Route(
            "POST",
            "video",
            side.video,
            "{chat, base64, name?, caption?, first_name?} -> {id}: sends a video",
        ),
        Route("POST", "photo", side.photo, "{chat, base64, caption?, first_name?} -> {id}: sends a PNG or JPEG"),
        Route("POST", "block", side.block, "{chat, on} -> {}: blocks the bot, or takes it back"),
        Route(
            "POST",
            "clock",
            side.move_clock,
            '{to | next: "morning" | days} -> {now}: moves the calendar forward, doing all that is due on the way',
        ),
        Route(
            "GET",
            "messages",
            side.messages,
            "?chat=&after=&since=&wait= -> [{id, from, text, html, buttons, at, edited, change, document?, photo?, "
            "film?}]: messages above an id that changed after a change number, waiting up to some seconds for one",
        ),
        Route("GET", "chats", side.chats, "-> [{id, name, blocked, last}]"),
        Route("GET", "clock", side.clock, "-> {now}"),
        Route("GET", "answer", side.answer, "?tap= -> {text}: the bot's answer to a tap, null until it comes"),
        Route("GET", "files", side.files, "?file= -> the bytes of a document or photo"),
        Route("GET", "events", side.events, "server-sent events: one whenever anything may have changed"),
    ]
    if troubles is not None:
        what = ", ".join(Trouble)
        routes += [
            Route(
                "POST",
                "fault",
                troubles.fault,
                f"{{method, what, times?, seconds?}} -> {{}}: the next requests of a method go wrong ({what}); "
                f"method {MESSAGES}: those of any method that sends or changes a message",
            ),
            Route("GET", "faults", troubles.left, "-> {method: times}: what is still to go wrong"),
        ]
    return routes


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
        except ValueError as error:
            return _problem(400, str(error))

    return run


def _problem(status: int, text: str) -> web.Response:
    return web.json_response({"error": text}, status=status)


class _Side:
    """Everything that people do and see."""

    def __init__(self, platform: Platform, mover: Mover | None) -> None:
        self._platform = platform
        self._mover = mover

    async def say(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        chat, text = number_of(body, "chat"), text_of(body, "text")
        language = text_of(body, "language", "en")[:35]
        said = self._platform.say(chat, text, first_name=first_name_of(body), language=language)
        return web.json_response({"id": said})

    async def edit(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        self._platform.edit(number_of(body, "chat"), number_of(body, "message"), text_of(body, "text"))
        return web.json_response({})

    async def open(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        chat, start = number_of(body, "chat"), text_of(body, "start")
        return web.json_response({"id": self._platform.open_link(chat, start, first_name=first_name_of(body))})

    async def tap(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        chat, message, button = number_of(body, "chat"), number_of(body, "message"), text_of(body, "button")
        tap = self._platform.forge_tap if body.get("forged") is True else self._platform.tap
        return web.json_response({"tap": tap(chat, message, button)})

    async def document(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        chat, name = number_of(body, "chat"), text_of(body, "name")[:200]
        content = bytes_of(body) if "base64" in body else text_of(body, "text", "" if "text" in body else None).encode()
        caption = text_of(body, "caption", "")
        return web.json_response(
            {"id": self._platform.send_document(chat, name, content, caption=caption, first_name=first_name_of(body))}
        )

    async def location(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        chat, latitude, longitude = number_of(body, "chat"), degrees_of(body, "latitude"), degrees_of(body, "longitude")
        return web.json_response(
            {"id": self._platform.share_location(chat, latitude, longitude, first_name=first_name_of(body))}
        )

    async def photo(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        chat, content, caption = number_of(body, "chat"), bytes_of(body), text_of(body, "caption", "")
        return web.json_response(
            {"id": self._platform.send_photo(chat, content, caption=caption, first_name=first_name_of(body))}
        )

    async def video(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        chat, content, caption = number_of(body, "chat"), bytes_of(body), text_of(body, "caption", "")
        name = text_of(body, "name", "video.mp4")[:200] or "video.mp4"
        return web.json_response(
            {"id": self._platform.send_video(chat, name, content, caption=caption, first_name=first_name_of(body))}
        )

    async def block(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        if not isinstance(body.get("on"), bool):
            raise ValueError(f"on is {body.get('on')!r}: true or false is needed")
        self._platform.block(number_of(body, "chat"), body["on"])
        return web.json_response({})

    async def move_clock(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        if self._mover is None:
            raise ValueError("the calendar here is the real one: it cannot be moved")
        await self._mover.move(await _target(self._mover, body))
        return await self.clock(request)

    async def clock(self, _request: web.Request) -> web.Response:
        now = self._platform.calendar.now().astimezone(UTC)
        return web.json_response({"now": now.isoformat().replace("+00:00", "Z")})

    async def chats(self, _request: web.Request) -> web.Response:
        found = [
            {"id": c["id"], "name": c["first_name"], "blocked": c["blocked"], "last": c["last"]}
            for c in self._platform.chats()
        ]
        return web.json_response(found)

    async def messages(self, request: web.Request) -> web.Response:
        chat = int(asked_of(request, "chat"))
        after, since = int(asked_of(request, "after", 0)), int(asked_of(request, "since", 0))
        until = self._platform.machine.now() + min(LONGEST_WAIT, asked_of(request, "wait", 0))
        with self._platform.messages_news.heard() as event:
            while not (found := self._platform.messages(chat, after=after, since=since)):
                left = until - self._platform.machine.now()
                if left <= 0 or not await woken(event, left):
                    break
        return web.json_response(shown_all(self._platform, chat, found))

    async def answer(self, request: web.Request) -> web.Response:
        return web.json_response({"text": self._platform.tap_answer(request.query.get("tap", ""))})

    async def files(self, request: web.Request) -> web.Response:
        found = self._platform.file(request.query.get("file", ""))
        kind, _encoding = mimetypes.guess_type(found.name)
        if found.kind == "photo":
            kind = "image/png" if found.body.startswith(b"\x89PNG") else "image/jpeg"
        safe = kind if found.kind == "photo" or kind in _SHOWN_AS_THEY_ARE else "application/octet-stream"
        return web.Response(body=found.body, content_type=safe, headers={"X-Content-Type-Options": "nosniff"})

    async def events(self, request: web.Request) -> web.StreamResponse:
        response = web.StreamResponse(headers={"Content-Type": "text/event-stream", "Cache-Control": "no-store"})
        await response.prepare(request)
        with self._platform.messages_news.heard() as event:
            try:
                while True:
                    await response.write(b"data: {}\n\n")
                    await woken(event, HEARTBEAT)
            except ConnectionError:
                return response


_SHOWN_AS_THEY_ARE = frozenset(
    {"text/plain", "text/csv", "application/json", "application/pdf", "image/png", "image/gif", "video/mp4"}
)
"""Kinds of documents that a browser may open here; anything else, such as a page with a script, is only saved."""


class _Troubles:
    """What is made to go wrong."""

    def __init__(self, faults: Faults) -> None:
        self._faults = faults

    async def fault(self, request: web.Request) -> web.Response:
        body = await body_of(request)
        method, what = text_of(body, "method"), text_of(body, "what")
        if what not in list(Trouble):
            raise ValueError(f"what is {what!r}: one of {', '.join(Trouble)} is needed")
        times, seconds = number_of({"times": 1} | body, "times"), body.get("seconds", 1.0)
        if isinstance(seconds, bool) or not isinstance(seconds, int | float):
            raise ValueError(f"seconds is {seconds!r}: a number is needed")
        self._faults.plan(method, Fault(Trouble(what), times, float(seconds)))
        return web.json_response({})

    async def left(self, _request: web.Request) -> web.Response:
        return web.json_response({method: times for method, times in self._faults.left().items() if times})


async def _target(mover: Mover, body: Mapping[str, Any]) -> datetime:
    """The instant that a move asks for. Raises ValueError."""
    if "to" in body:
        target = _instant(text_of(body, "to"))
    elif body.get("next") == "morning":
        target = await mover.next_morning()
    elif "days" in body:
        days = number_of(body, "days")
        if not 0 <= days <= FURTHEST.days:
            raise ValueError(f"days is {days}: a number from 0 to {FURTHEST.days} is needed")
        target = mover.now() + timedelta(days=days)
    else:
        raise ValueError(f'the move is {json.dumps(dict(body))}: one of to, next ("morning") or days is needed')
    if target < mover.now():
        raise ValueError(f"{target.isoformat()} is before {mover.now().isoformat()}: the calendar only goes forward")
    if target > mover.now() + FURTHEST:
        raise ValueError(f"{target.isoformat()} is more than {FURTHEST.days} days ahead: move in smaller steps")
    return target.astimezone(UTC)


def _instant(text: str) -> datetime:
    try:
        found = datetime.fromisoformat(text)
    except ValueError as error:
        raise ValueError(f"to is {text!r}: an instant such as 2026-03-02T07:00Z is needed") from error
    if found.tzinfo is None:
        raise ValueError(f"to is {text!r}: an instant with its offset is needed, such as 2026-03-02T07:00Z")
    return found
