"""A worker's signs of life: where several serve, others take over soon what a dead one had in hand."""

from __future__ import annotations

import asyncio
import os
import secrets
import socket
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager

from bot.clocks import Machine
from db import leads
from db.engine import Database
from db.trouble import steadily

BEAT_SECONDS = 2.0
ALIVE_SECONDS = 10.0
"""A worker that gave no sign for so long counts as dead; a database that restarts takes less. Our own choice."""


def worker_name() -> str:
    """A name for this process; no two lives share one, so that one never takes the other's leases for its own."""
    return f"{socket.gethostname()}:{os.getpid()}-{secrets.token_hex(4)}"


@asynccontextmanager
async def alive(database: Database, machine: Machine, worker: str) -> AsyncIterator[None]:
    """Gives signs of life for `worker` while the block runs, the first before it begins."""
    if database.alone:
        yield
        return

    async def beat() -> None:
        now = machine.now()
        await database.write(lambda session: leads.beat(session, worker, now=now, seconds=ALIVE_SECONDS))

    async def go_on() -> None:
        while True:
            await asyncio.sleep(BEAT_SECONDS)
            await steadily(beat)

    await steadily(beat)
    task = asyncio.create_task(go_on())
    try:
        yield
    finally:
        task.cancel()
        await asyncio.gather(task, return_exceptions=True)
    await database.write(lambda session: leads.end(session, worker))
