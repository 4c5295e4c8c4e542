"""The way between the program and the platform, in one process: requests arrive, are lost, come late or twice."""

from __future__ import annotations

import asyncio
import json
import random
from collections import deque
from collections.abc import Callable, Mapping
from typing import Any, Protocol
from urllib.parse import parse_qsl, urlsplit

from telegram.request import BaseRequest, RequestData

from bot.calls import Upload
from bot.practice import fields
from bot.practice.errors import ApiError, bad, too_many
from bot.practice.platform import Platform
from bot.transport import AiohttpRequest, AnswerLost, CallInsideWrite, NeverConnected, TooMany
from db.writer import inside_write
from tests.simulation.faults import Faults, Trouble
from tests.simulation.lives import Mortal
from tests.simulation.loop import OWNED

Answer = tuple[int, bytes]

READ_SECONDS = 20.0
FREE = frozenset(("getme", "deletewebhook", "setmycommands"))
"""Methods that nothing happens to: they are part of every start."""


class Watcher(Protocol):
    """Sees every request that leaves and everything that arrives."""

    def leaves(self, method: str, params: Mapping[str, Any]) -> Any:
        """A request is about to leave; what is returned comes back with the others."""

    def left(self, request: Any) -> None:
        """It leaves now. Not told of a process that slept since: that sends what it had marked, however late."""

    def arrived(self, request: Any, params: Mapping[str, Any], result: Any, *, lost: bool) -> None:
        """The platform did what was asked; `lost`: its answer will not reach the process."""


class Network:
    """All that can happen to a request."""

    def __init__(self, platform: Platform, faults: Faults, watcher: Watcher, rng: random.Random) -> None:
        self.platform = platform
        self.faults = faults
        self.watcher = watcher
        self.rng = rng
        self.down_until = 0.0
        self.held_until = 0.0
        self._given: deque[Mapping[str, Any]] = deque(maxlen=60)
        self._on_their_way: set[asyncio.Task[None]] = set()

    def transport(self, mortal: Mortal) -> Callable[..., AiohttpRequest]:
        """Makes ways to the platform for one process."""
        return lambda **_settings: InProcess(self, mortal)

    async def ask(self, mortal: Mortal, method: str, params: Mapping[str, Any]) -> Answer:
        """One request. Raises what the transport raises, and Died."""
        if inside_write():
            raise CallInsideWrite("no call to the platform inside a write")
        request = self.watcher.leaves(method, params)
        slept = await mortal.awake()
        mortal.gate("request leaves")
        if method.lower() in FREE:
            return await self._answered(method, params)
        if method.lower() == "getupdates":
            return await self._polled(mortal, params)
        trouble = self.faults.of_request()
        if trouble is Trouble.SLEPT:
            self.falls_asleep(mortal)
            slept = await mortal.awake()
            mortal.gate("woke up")
            trouble = None
        if not slept:
            self.watcher.left(request)
        return await self._carried(mortal, method, params, request, trouble)

    def falls_asleep(self, mortal: Mortal) -> None:
        """The process stands still for longer than its leases last."""
        mortal.asleep_until = asyncio.get_running_loop().time() + self.rng.uniform(65, 400)

    async def _carried(
        self, mortal: Mortal, method: str, params: Mapping[str, Any], request: Any, trouble: Trouble | None
    ) -> Answer:
        await asyncio.sleep(0)
        early = self._stopped(trouble)
        if early is not None:
            return early
        if trouble is Trouble.LATE:
            self._later(method, params, request)
            raise AnswerLost("answer lost")
        lost = trouble in (Trouble.LOST, Trouble.UNREADABLE)
        answer = await self._does(method, params, request, lost=lost)
        mortal.gate("arrived")
        if trouble is Trouble.UNREADABLE:
            return 200, b"<html>"
        if trouble is Trouble.LOST:
            raise AnswerLost("answer lost")
        if trouble is Trouble.SLOW:
            seconds = self.rng.uniform(1, 30)
            await asyncio.sleep(min(seconds, READ_SECONDS))
            if seconds > READ_SECONDS:
                raise AnswerLost("answer lost")
        await mortal.awake()
        mortal.gate("answered")
        return answer

    def _stopped(self, trouble: Trouble | None) -> Answer | None:
        """What keeps a request from arriving."""
        if asyncio.get_running_loop().time() < self.down_until and not self.faults.quiet:
            self.faults.count("5xx in an outage")
            trouble = Trouble.SERVER_ERROR
        if trouble is Trouble.NEVER_CONNECTED:
            raise NeverConnected("never connected")
        if trouble is Trouble.RESET:
            raise AnswerLost("answer lost")
        if trouble is Trouble.SERVER_ERROR:
            return _refusal(ApiError(self.rng.choice((500, 502, 503)), "Bad Gateway"))
        if trouble is Trouble.TOO_MANY:
            return _refusal(too_many(self.rng.choice((1, 2, 5, 17, 60))))
        return _refusal(bad("simulated")) if trouble is Trouble.BAD_REQUEST else None

    def _later(self, method: str, params: Mapping[str, Any], request: Any) -> None:
        """The request is on its way, whatever becomes of who sent it."""

        async def arrive() -> None:
            await asyncio.sleep(seconds)
            await self._does(method, params, request, lost=True)

        seconds, token = self.rng.uniform(0.1, 40), OWNED.set(None)
        task = asyncio.get_running_loop().create_task(arrive())
        OWNED.reset(token)
        self._on_their_way.add(task)
        task.add_done_callback(self._on_their_way.discard)

    async def end(self) -> None:
        """Drops what is still on its way when a world ends."""
        late = list(self._on_their_way)
        for task in late:
            task.cancel()
        await asyncio.gather(*late, return_exceptions=True)

    async def _does(self, method: str, params: Mapping[str, Any], request: Any, *, lost: bool) -> Answer:
        try:
            result = await self.platform.call(method, params)
        except ApiError as error:
            return _refusal(error)
        self.watcher.arrived(request, params, result, lost=lost)
        return _accepted(result)

    async def _answered(self, method: str, params: Mapping[str, Any]) -> Answer:
        try:
            return _accepted(await self.platform.call(method, params))
        except ApiError as error:
            return _refusal(error)

    # --- polls --------------------------------------------------------------------------------------------------------

    async def _polled(self, mortal: Mortal, params: Mapping[str, Any]) -> Answer:
        loop = asyncio.get_running_loop()
        await self._hold_back(params)
        try:
            found = await self.platform.call("getUpdates", params)
        except ApiError as error:
            return _refusal(error)
        await mortal.awake()
        mortal.gate("updates arrive")
        if found and self.faults.happens("poll's answer lost", self.faults.rates.polls):
            raise AnswerLost("answer lost")
        if found and self.faults.happens("poll refused", self.faults.rates.polls):
            return _refusal(ApiError(502, "Bad Gateway"))
        if found:
            await asyncio.sleep(0)
        given = self._mixed(found) if loop.time() >= self.held_until else []
        return _accepted(given)

    async def _hold_back(self, params: Mapping[str, Any]) -> None:
        """While the platform keeps updates to itself, no poll brings any. Short sleeps: idle time that is passed over
        puts off whoever sleeps."""
        loop = asyncio.get_running_loop()
        while loop.time() < self.held_until:
            await asyncio.sleep(min(10.0, self.held_until - loop.time()))

    def _mixed(self, found: list[Mapping[str, Any]]) -> list[Mapping[str, Any]]:
        """Updates as they may come: some again, some in another order."""
        given = list(found)
        if given and self._given and self.faults.happens("updates repeated", self.faults.rates.repeated):
            given = self.rng.sample(list(self._given), min(3, len(self._given))) + given
        if len(given) > 1 and self.faults.happens("updates reordered", self.faults.rates.reordered):
            self.rng.shuffle(given)
        self._given.extend(found)
        return given


def _accepted(result: Any) -> Answer:
    return 200, json.dumps({"ok": True, "result": result}).encode()


def _refusal(error: ApiError) -> Answer:
    return error.code, json.dumps(error.as_json()).encode()


class InProcess(AiohttpRequest):
    """The program's own transport without a socket: what it would send is handed to the network."""

    def __init__(self, network: Network, mortal: Mortal) -> None:
        super().__init__()
        self._network = network
        self._mortal = mortal

    async def initialize(self) -> None:
        """There is nothing to open."""

    async def shutdown(self) -> None:
        """There is nothing to close."""

    async def do_request(
        self,
        url: str,
        method: str,
        request_data: RequestData | None = None,
        read_timeout: Any = BaseRequest.DEFAULT_NONE,
        write_timeout: Any = BaseRequest.DEFAULT_NONE,
        connect_timeout: Any = BaseRequest.DEFAULT_NONE,
        pool_timeout: Any = BaseRequest.DEFAULT_NONE,
    ) -> Answer:
        parts = urlsplit(url)
        if parts.path.startswith("/file/"):
            return 200, self._network.platform.file(parts.path.rpartition("/")[2]).body
        params = dict(parse_qsl(parts.query)) | (request_data.json_parameters if request_data else {})
        status, body = await self._network.ask(self._mortal, parts.path.rpartition("/")[2], params)
        if status == 429:
            raise TooMany(float(json.loads(body)["parameters"]["retry_after"]))
        return status, body

    async def call(self, url: str, fields_: Mapping[str, Any], upload: Upload | None = None) -> Answer:
        params: dict[str, Any] = json.loads(json.dumps(dict(fields_)))
        if upload is not None:
            params[upload.field] = fields.Upload(upload.filename, upload.body)
        return await self._network.ask(self._mortal, url.rpartition("/")[2], params)
