"""How long the first steps take: `python -m tests.bench.first_steps`.

The README's command for trying it, in a fresh copy of the folder with a fresh virtual environment and nothing kept from
an earlier download, from enter until the first session stands in the practice chat; then how long the smallest command
of a coach takes from enter to the end. How fast the packages arrive is the network's share and is printed apart.
"""

from __future__ import annotations

import asyncio
import os
import re
import shutil
import signal
import statistics
import subprocess
import time
from pathlib import Path
from tempfile import TemporaryDirectory

import aiohttp

from tests.acceptance.driver import Practice

ROOT = Path(__file__).parents[2]
CLIENT = 2001
"""The invented client of the practice chat."""
CHECKS = 11


def command() -> tuple[str, str]:
    """What the README says to type: what sets up, and what starts."""
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    found = re.search(r"^(python3 -m venv .*) && (\S+ practice)$", readme, re.MULTILINE)
    if found is None:
        raise LookupError("README.md has no line that sets up a virtual environment and starts `easeward practice`")
    return found[1], found[2]


def copied(folder: Path) -> Path:
    """The files that a clone has, somewhere else."""
    names = subprocess.run(["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, text=True, check=True).stdout
    for name in filter(None, names.split("\0")):
        target = folder / name
        target.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(ROOT / name, target)
    return folder


async def until_the_first_session(started: str, folder: Path, environment: dict[str, str]) -> float:
    """Seconds from starting the practice chat to the first session in it."""
    begin = time.perf_counter()
    process = await asyncio.create_subprocess_exec(
        *started.split(),
        *("--no-open", "--port", "0", "--data", str(folder / "data")),
        cwd=folder,
        env=environment,
        stdout=asyncio.subprocess.PIPE,
    )
    try:
        if process.stdout is None:
            raise RuntimeError("the process has no output to read")
        address = re.search(r"http://127\.0\.0\.1:\d+", (await process.stdout.readline()).decode())
        if address is None:
            raise RuntimeError("the practice chat did not say where it is")
        async with aiohttp.ClientSession() as http:
            chat = Practice(address[0], http)
            while not any(said.text.startswith("Day 1:") for said in await chat.from_bot(CLIENT)):
                await asyncio.sleep(0.02)
        return time.perf_counter() - begin
    finally:
        process.send_signal(signal.SIGINT)
        await process.wait()


def seconds_of_a_check(folder: Path, environment: dict[str, str]) -> list[float]:
    """Each of some runs of `easeward check` on a sample, from start to end."""
    words, found = [".venv/bin/easeward", "check", "plans/library/rowing-club.yaml"], []
    for _ in range(CHECKS):
        begin = time.perf_counter()
        subprocess.run(words, cwd=folder, env=environment, capture_output=True, check=True)
        found.append(time.perf_counter() - begin)
    return found


def main() -> None:
    """Prints the figures."""
    environment = {name: value for name, value in os.environ.items() if name not in ("PYTHONPATH", "VIRTUAL_ENV")}
    environment |= {"PIP_NO_CACHE_DIR": "1", "PIP_DISABLE_PIP_VERSION_CHECK": "1", "PYTHONUNBUFFERED": "1"}
    set_up, started = command()
    with TemporaryDirectory() as place:
        folder = copied(Path(place))
        begin = time.perf_counter()
        subprocess.run(set_up, shell=True, cwd=folder, env=environment, check=True)
        installed = time.perf_counter() - begin
        first = asyncio.run(until_the_first_session(started, folder, environment))
        again = asyncio.run(until_the_first_session(started, folder, environment))
        checks = seconds_of_a_check(folder, environment)
    print(f"setting up {installed:.1f} s, then {first:.1f} s to the first session: {installed + first:.1f} s in all")
    print(f"starting again {again:.1f} s")
    print(f"easeward check: {statistics.median(checks):.2f} s (of {len(checks)}: {min(checks):.2f}-{max(checks):.2f})")


if __name__ == "__main__":
    main()
