"""Requests to the chat platform over aiohttp, with "never connected" and "answer lost" kept apart.

The token stands in every address, so no address ever appears in an error or a log record from here.
"""

from __future__ import annotations

import json
import logging
from collections.abc import Mapping
from http import HTTPStatus
from typing import Any, TypeVar

import aiohttp
from telegram.error import NetworkError, TelegramError, TimedOut
from telegram.request import BaseRequest, RequestData

from bot.calls import Upload
from bot.clocks import PlatformClock
from db.writer import inside_write

T = TypeVar("T")

LARGEST_ANSWER = 20 * 2**20
"""Bytes: more than this is not read. The platform lets a bot download 20 MB at most."""

IDLE_SECONDS = 15.0
"""An idle connection is closed after so long, well before the platform would: a request that meets a closing
connection counts as lost."""


class NeverConnected(NetworkError):
    """The request surely never reached the platform."""


class AnswerLost(TimedOut):
    """The request may have reached the platform; its answer did not reach us."""


class TooMany(TelegramError):
    """The platform wants fewer requests: nothing more for `seconds`.

    The library's own error of this sort warns about its own future each time it is made.
    """

    def __init__(self, seconds: float) -> None:
        super().__init__(f"too many requests: again in {seconds:g} s")
        self.seconds = seconds


class CallInsideWrite(TelegramError):
    """Somebody called the platform inside the writer's transaction; put a row into the outbox instead."""


class AiohttpRequest(BaseRequest):
    """python-telegram-bot's way to the platform, over one aiohttp session. Timeouts are seconds."""

    def __init__(
        self,
        *,
        connections: int = 64,
        read_timeout: float = 20.0,
        connect_timeout: float = 5.0,
        clock: PlatformClock | None = None,
    ) -> None:
        self._clock = clock or PlatformClock()
        self._connections = connections
        self._read_timeout = read_timeout
        self._connect_timeout = connect_timeout
        self._timeout = aiohttp.ClientTimeout(total=None, connect=connect_timeout, sock_read=read_timeout)
        self._session: aiohttp.ClientSession | None = None

    @property
    def clock(self) -> PlatformClock:
        """What the platform's answers say about the host's clock."""
        return self._clock

    @property
    def read_timeout(self) -> float:
        """Seconds to wait for an answer unless a call says otherwise."""
        return self._read_timeout

    async def initialize(self) -> None:
        """Open the session, if it is not open yet."""
        if self._session is None:
            connector = aiohttp.TCPConnector(limit=self._connections, keepalive_timeout=IDLE_SECONDS)
            self._session = aiohttp.ClientSession(connector=connector)

    async def shutdown(self) -> None:
        """Close the session and all its connections."""
        if self._session is not None:
            await self._session.close()
            self._session = None

    async def do_request(
        self,
        url: str,
        method: str,
        request_data: RequestData | None = None,
        read_timeout: Any = BaseRequest.DEFAULT_NONE,
        write_timeout: Any = BaseRequest.DEFAULT_NONE,
        connect_timeout: Any = BaseRequest.DEFAULT_NONE,
        pool_timeout: Any = BaseRequest.DEFAULT_NONE,
    ) -> tuple[int, bytes]:
        """The status and body of the answer.

        Raises `NeverConnected`, `AnswerLost`, `TooMany` or `CallInsideWrite`.

        A wait for a free connection counts into the time to connect; there is no time limit for writing apart
        from that for the answer.
        """
        timeout = aiohttp.ClientTimeout(
            total=None,
            connect=_or(connect_timeout, self._connect_timeout),
            sock_read=_or(read_timeout, self._read_timeout),
        )
        sent = None if request_data is None else _form(request_data)
        status, body = await self._ask(method, url, timeout, data=sent)
        if status == HTTPStatus.TOO_MANY_REQUESTS:
            raise TooMany(_retry_after(body))
        return status, body

    async def call(self, url: str, fields: Mapping[str, Any], upload: Upload | None = None) -> tuple[int, bytes]:
        """Asks for a method with fields as JSON holds them, and a file if there is one; whatever the answer's status.

        Raises `NeverConnected`, `AnswerLost` or `CallInsideWrite`.
        """
        if upload is None:
            return await self._ask("POST", url, self._timeout, data=json.dumps(fields).encode(), headers=_JSON)
        form = aiohttp.FormData(
            {name: value if isinstance(value, str) else json.dumps(value) for name, value in fields.items()}
        )
        form.add_field(upload.field, upload.body, filename=upload.filename, content_type="application/octet-stream")
        return await self._ask("POST", url, self._timeout, data=form)

    async def _ask(self, method: str, url: str, timeout: aiohttp.ClientTimeout, **sent: Any) -> tuple[int, bytes]:
        if inside_write():
            raise CallInsideWrite("no call to the platform inside a write: put a row into the outbox")
        if self._session is None:
            raise NeverConnected("never connected: the transport is not open")
        try:
            async with self._session.request(method, url, timeout=timeout, allow_redirects=False, **sent) as answer:
                self._clock.heard(answer.headers.get("Date"))
                return answer.status, await _body(answer)
        except _NEVER_CONNECTED as error:
            failure: TelegramError = NeverConnected(f"never connected: {type(error).__name__}")
        except (aiohttp.ClientError, TimeoutError, OSError) as error:
            failure = AnswerLost(f"answer lost: {type(error).__name__}")
        raise failure


_JSON = {"Content-Type": "application/json"}
_NEVER_CONNECTED = (aiohttp.ClientConnectorError, aiohttp.ConnectionTimeoutError, aiohttp.InvalidURL)


def _or(given: T | Any, default: T) -> T | Any:
    return default if given is BaseRequest.DEFAULT_NONE else given


def _form(data: RequestData) -> aiohttp.FormData | dict[str, str]:
    if not data.contains_files:
        return data.json_parameters
    form = aiohttp.FormData(data.json_parameters)
    for name, (filename, content, mimetype) in (data.multipart_data or {}).items():
        form.add_field(name, content, filename=filename, content_type=mimetype)
    return form


async def _body(answer: aiohttp.ClientResponse) -> bytes:
    if answer.content_length is not None and answer.content_length <= LARGEST_ANSWER:
        return await answer.read()
    chunks, size = [], 0
    async for chunk in answer.content.iter_chunked(2**16):
        size += len(chunk)
        if size > LARGEST_ANSWER:
            raise AnswerLost(f"answer lost: more than {LARGEST_ANSWER} bytes")
        chunks.append(chunk)
    return b"".join(chunks)


def _retry_after(body: bytes) -> float:
    """What the platform says about when to go on; a second if it says nothing that can be read."""
    try:
        return float(json.loads(body)["parameters"]["retry_after"])
    except (ValueError, KeyError, TypeError):
        return 1.0


def quiet_library_logs() -> None:
    """Keep the chat library's own records to itself: they quote messages, and at start the token."""
    library = logging.getLogger("telegram")
    library.propagate = False
    if not library.handlers:
        library.addHandler(logging.NullHandler())
