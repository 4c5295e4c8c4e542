"""The process that workers are forked from: a role a line on its standard input gives one, whose number it prints."""

from __future__ import annotations

import asyncio
import os
import signal
import sys

from bot.app import Role, serve
from bot.settings import Settings


def nurse() -> None:
    """Forks a worker for each line."""
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)
    for line in sys.stdin:
        number = os.fork()
        if number == 0:
            signal.signal(signal.SIGCHLD, signal.SIG_DFL)
            os.dup2(2, 1)
            asyncio.run(serve(Settings(), Role(line.strip())))
            os._exit(0)
        print(number, flush=True)


if __name__ == "__main__":
    nurse()
