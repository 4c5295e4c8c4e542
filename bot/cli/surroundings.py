"""What `doctor` says of the machine's side: who else can read secrets and data, room on the disk, who would notice."""

from __future__ import annotations

import shutil
import stat
from collections.abc import Iterator
from pathlib import Path

from sqlalchemy.engine import URL

from bot.cli.finding import Finding
from bot.settings import Settings
from db import engine

ROOM = 2**30
"""Bytes that should be free where the database lies: some backups of a large one. Our own choice."""

OTHERS = stat.S_IRGRP | stat.S_IWGRP | stat.S_IROTH | stat.S_IWOTH
"""The rights of a file by which somebody but its owner reads or changes it."""


def of_settings(settings: Settings) -> list[Finding]:
    """Secrets, the database's file and its disk, and whether anybody would notice that the bot is gone."""
    return [_secrets(settings), *_file(settings), _noticed(settings)]


def _secrets(settings: Settings) -> Finding:
    files = (settings.token_file, settings.database_url_file, settings.webhook_secret_file, settings.ping_url_file)
    open_ones = [str(file) for file in files if file is not None and is_open(file)]
    if not open_ones:
        return Finding("secrets", True, "no file with a secret can be read by others")
    todo = f"Whoever has the token is the bot. Let only its user read it: chmod 600 {' '.join(open_ones)}"
    return Finding("secrets", False, f"others can read {', '.join(open_ones)}", todo)


def is_open(file: Path) -> bool:
    """Whether others than its owner may read or change a file."""
    return file.exists() and bool(file.stat().st_mode & OTHERS)


def _file(settings: Settings) -> Iterator[Finding]:
    try:
        address = engine.address_of(settings.database_url)
    except engine.UnfitDatabase:
        return
    if not engine.is_file(address):
        yield _line(address)
        return
    if not (file := engine.file_of(address)).exists():
        return
    if is_open(file) and file.parent.stat().st_mode & (stat.S_IXGRP | stat.S_IXOTH):
        todo = f"It holds what clients say of their health. Let only the bot's user in: chmod 700 {file.parent}"
        yield Finding("data", False, f"others on this machine can read {file}", todo)
    else:
        yield Finding("data", True, f"{file} can be read by its owner alone")
    free = shutil.disk_usage(file.parent).free
    todo = "" if free >= ROOM else "On a full disk nothing leaves, as it could not be written down. Make room."
    yield Finding("disk", free >= ROOM, f"{free / 2**30:.1f} GiB free where the database lies", todo)


SAFE_LINES = frozenset({"require", "verify-ca", "verify-full"})
HERE = frozenset({None, "", "localhost", "127.0.0.1", "::1"})


def _line(address: URL) -> Finding:
    """Whether what goes to the database's server can be read on the way."""
    asked = address.query.get("ssl") or address.query.get("sslmode")
    if address.host in HERE or asked in SAFE_LINES:
        return Finding("line", True, "to the database nobody listens")
    todo = "What clients say goes over the network as it is. Add ?ssl=verify-full to the database's address."
    return Finding("line", False, f"the connection to {address.host} need not be encrypted", todo)


def _noticed(settings: Settings) -> Finding:
    if settings.ping_url is not None:
        return Finding("monitoring", True, "hears every minute that all is well")
    todo = "Nobody would notice if the bot stood still. Set EASEWARD_PING_URL to a check that calls you."
    return Finding("monitoring", True, "no address to ping is set", todo)
