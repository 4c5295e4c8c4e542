"""`python -m bot.practice`: the local platform alone, on the real clock, for a bot that runs as its own process."""

from __future__ import annotations

import argparse
import asyncio
import signal
from pathlib import Path

from bot.clocks import SystemCalendar, SystemMachine
from bot.practice.controls import controls
from bot.practice.faults import Faults
from bot.practice.platform import Platform, Rates
from bot.practice.server import application, listening
from bot.practice.store import Store


def _words() -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="python -m bot.practice", description=__doc__)
    parser.add_argument("--port", type=int, default=0)
    parser.add_argument("--token", default="1000:practice")
    parser.add_argument("--data", type=Path, help="a folder to keep the state in")
    parser.add_argument("--faults", action="store_true", help="allow POST /practice/fault")
    parser.add_argument("--rate", type=int, help="messages a second that are let through")
    return parser.parse_args()


async def _serve(words: argparse.Namespace) -> None:
    store = Store(words.data / "platform.sqlite" if words.data else None)
    faults = Faults() if words.faults else None
    platform = Platform(
        words.token, calendar=SystemCalendar(), machine=SystemMachine(), store=store, rates=Rates(words.rate)
    )
    app = application(platform, faults=faults)
    controls(app, platform, None, faults)
    stop = asyncio.Event()
    for name in (signal.SIGINT, signal.SIGTERM):
        asyncio.get_running_loop().add_signal_handler(name, stop.set)
    async with listening(app, "127.0.0.1", words.port) as address:
        print(address, flush=True)
        await stop.wait()
    store.close()


if __name__ == "__main__":
    asyncio.run(_serve(_words()))
