"""An end in order: what is in hand is finished, what is not begun is given back, and all of it in time."""

from __future__ import annotations

import asyncio
import logging
import os
import threading
from collections.abc import Collection
from typing import Any

from bot.pulling import Puller

HANDLED_BY, SENT_BY, ENDED_BY = 3.0, 6.0, 8.0
"""Seconds after the wish to stop at which updates in hand are handled, requests under way are answered, and all loops
have ended. Our own choice: together with closing less than ten seconds."""

LAST_SECONDS = 9.5
"""After so long the process ends wherever it stands, which costs no more than a kill does. Our own choice."""

log = logging.getLogger(__name__)

Loop = tuple[Puller[Any], asyncio.Task[None]]


async def finished(
    handling: Collection[Loop], sending: Collection[Loop], others: Collection[asyncio.Task[None]]
) -> None:
    """Ends all loops: `others` at once, then who handles, then who sends, so that answers still leave."""
    begun = asyncio.get_running_loop().time()
    for puller, _task in handling:
        puller.stop()
    await cancelled(others, until=begun + HANDLED_BY)
    await _done([task for _puller, task in handling], until=begun + HANDLED_BY)
    for puller, _task in sending:
        puller.stop()
    await _done([task for _puller, task in sending], until=begun + SENT_BY)
    await cancelled([task for _puller, task in (*handling, *sending)], until=begun + ENDED_BY)


async def cancelled(tasks: Collection[asyncio.Task[None]], *, until: float) -> None:
    """Cancels tasks; who then writes something down that the database does not take is cancelled once more."""
    for _ in range(2):
        for task in tasks:
            task.cancel()
        await _done(tasks, until=(asyncio.get_running_loop().time() + until) / 2)
    if left := sum(not task.done() for task in tasks):
        log.warning("loops-left", extra={"count": left})


async def _done(tasks: Collection[asyncio.Task[None]], *, until: float) -> None:
    if tasks:
        await asyncio.wait(tasks, timeout=max(0.0, until - asyncio.get_running_loop().time()))


def end_in(seconds: float) -> None:
    """Ends the process after so many seconds, should it still be there."""

    def end() -> None:
        log.error("stopped-hard")
        os._exit(1)

    timer = threading.Timer(seconds, end)
    timer.daemon = True
    timer.start()
