"""Pictures for the chat: asked of the painter, one at a time, and kept a while by what is on them."""

from __future__ import annotations

import asyncio
import json
import logging
import sys
from asyncio.subprocess import PIPE, Process
from collections import OrderedDict
from collections.abc import Mapping
from typing import Any

log = logging.getLogger(__name__)

KEPT = 32
"""Files in memory; once the platform has a file, nobody asks for its bytes again. Our own choice."""
SECONDS = 20.0
"""A picture that takes longer is not drawn. Our own choice."""
IDLE_SECONDS = 60.0
"""A painter that nobody has asked for so long ends, and its memory is free. Our own choice."""


class NotDrawn(RuntimeError):
    """A picture that could not be drawn, with the reason."""


class Painting:
    """Draws recipes (see bot/painter.py). Whoever asks for the same one meanwhile waits for the same drawing."""

    def __init__(self) -> None:
        self._files: OrderedDict[str, bytes] = OrderedDict()
        self._asked: dict[str, asyncio.Task[bytes]] = {}
        self._one = asyncio.Lock()
        self._painter: Process | None = None
        self._going: asyncio.TimerHandle | None = None

    async def picture(self, digest: str, recipe: Mapping[str, Any]) -> bytes:
        """The file of a recipe, kept by its digest. Raises NotDrawn."""
        if digest in self._files:
            self._files.move_to_end(digest)
            return self._files[digest]
        task = self._asked.get(digest)
        if task is None:
            task = self._asked[digest] = asyncio.ensure_future(self._draw(digest, recipe))
            task.add_done_callback(lambda _task: self._asked.pop(digest, None))
        return await asyncio.shield(task)

    async def close(self) -> None:
        """Ends the painter and whatever is being drawn."""
        tasks = list(self._asked.values())
        for task in tasks:
            task.cancel()
        await asyncio.gather(*tasks, return_exceptions=True)
        await self._end()

    async def _draw(self, digest: str, recipe: Mapping[str, Any]) -> bytes:
        async with self._one:
            self._stay()
            try:
                file = await self._in_time(recipe)
            except (TimeoutError, OSError, asyncio.IncompleteReadError) as error:
                await self._end()
                raise NotDrawn(f"the painter is gone: {type(error).__name__}") from error
            except asyncio.CancelledError:
                await self._end()
                raise
            finally:
                self._leave_later()
        self._files[digest] = file
        while len(self._files) > KEPT:
            self._files.popitem(last=False)
        return file

    async def _in_time(self, recipe: Mapping[str, Any]) -> bytes:
        """The file from the painter that is there, and from a new one if that was about to go."""
        there = self._painter is not None
        async with asyncio.timeout(SECONDS):
            try:
                return await self._painted(recipe)
            except (OSError, asyncio.IncompleteReadError):
                if not there:
                    raise
                await self._end()
                return await self._painted(recipe)

    async def _painted(self, recipe: Mapping[str, Any]) -> bytes:
        if self._painter is None or self._painter.returncode is not None:
            self._painter = await asyncio.create_subprocess_exec(
                sys.executable, "-m", "bot.painter", stdin=PIPE, stdout=PIPE
            )
        way_in, way_out = self._painter.stdin, self._painter.stdout
        if way_in is None or way_out is None:
            raise OSError("the painter has no pipes")
        way_in.write(json.dumps(recipe).encode() + b"\n")
        await way_in.drain()
        length = int.from_bytes(await way_out.readexactly(4), "big")
        if length == 0:
            raise NotDrawn((await way_out.readline()).decode().strip())
        return await way_out.readexactly(length)

    def _stay(self) -> None:
        if self._going is not None:
            self._going.cancel()
            self._going = None

    def _leave_later(self) -> None:
        self._going = asyncio.get_running_loop().call_later(IDLE_SECONDS, self._leave)

    def _leave(self) -> None:
        if self._painter is not None and self._painter.stdin is not None:
            self._painter.stdin.close()

    async def _end(self) -> None:
        self._stay()
        painter, self._painter = self._painter, None
        if painter is not None and painter.returncode is None:
            painter.kill()
            await painter.wait()
