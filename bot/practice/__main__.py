"""`python -m bot.practice`: the local platform alone, on the real clock, for a bot that runs as its own process."""

from __future__ import annotations

import argparse
import asyncio
import signal
from pathlib import Path

from bot.clocks import SystemCalendar, SystemMachine
from bot.practice.faults import Faults
from bot.practice.platform import Rates
from bot.practice.server import PracticeServer
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
    stop = asyncio.Event()
    for name in (signal.SIGINT, signal.SIGTERM):
        asyncio.get_running_loop().add_signal_handler(name, stop.set)
    with Store(words.data / "platform.sqlite" if words.data else None) as store:
        server = PracticeServer(
            words.token,
            store=store,
            calendar=SystemCalendar(),
            machine=SystemMachine(),
            rates=Rates(words.rate),
            faults=Faults() if words.faults else None,
        )
        async with server.listening("127.0.0.1", words.port) as address:
            print(address, flush=True)
            await stop.wait()


if __name__ == "__main__":
    asyncio.run(_serve(_words()))
