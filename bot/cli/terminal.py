"""How a command answers: on the terminal, as JSON, and by its exit code; and what runs until it is done or stopped."""

from __future__ import annotations

import json
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Annotated, Any

import typer

FINE, NOT_FINE, WRONG_USE = 0, 1, 2
"""Exit codes."""

AsJson = Annotated[bool, typer.Option("--json", help="Print one JSON object, stable and documented.")]


def print_json(value: object) -> None:
    """One line of JSON on standard output."""
    typer.echo(json.dumps(value, ensure_ascii=False))


def complain(text: str) -> None:
    """A line on standard error."""
    typer.echo(text, err=True)


def write(file: Path, what: str | bytes) -> None:
    """Writes a file that was asked for; exit 2 where that cannot be."""
    try:
        file.write_bytes(what.encode() if isinstance(what, str) else what)
    except OSError as error:
        complain(f"{file}: cannot be written: {error.strerror}")
        raise typer.Exit(WRONG_USE) from error


def each_line(read: Callable[[str], dict[str, Any]]) -> None:
    """One JSON object a line, in order; a bad line gives its error in its place and exit 1 in the end."""
    code = FINE
    for line in _lines():
        try:
            print_json(read(line))
        except ValueError as error:
            print_json({"error": str(error)})
            code = NOT_FINE
    raise typer.Exit(code)


def _lines() -> Iterator[str]:
    for raw in sys.stdin.buffer:
        yield raw.decode("utf-8", errors="replace").rstrip("\r\n")


def until_done(work: Callable[[], Any]) -> None:
    """Runs until done or stopped; what stands in the way is said in a line. Files that it makes are their owner's."""
    import asyncio
    import os

    from sqlalchemy.exc import SQLAlchemyError

    from bot.app import CannotServe
    from bot.cli.keeping import UnfitFile
    from bot.heartbeat import UnfitPing
    from bot.webhook import UnfitWebhook
    from db.copying import Differs, NotEmpty, OtherVersion
    from db.engine import UnfitDatabase
    from db.trouble import AlreadyServing

    known = (
        CannotServe,
        AlreadyServing,
        UnfitDatabase,
        UnfitWebhook,
        UnfitPing,
        UnfitFile,
        NotEmpty,
        OtherVersion,
        Differs,
    )
    os.umask(0o077)
    try:
        asyncio.run(work())
    except known as error:
        complain(str(error))
        raise typer.Exit(NOT_FINE) from error
    except (SQLAlchemyError, OSError) as error:
        cause = getattr(error, "orig", None) or error
        complain(f"the database or a file cannot be used: {type(cause).__name__}; easeward doctor says more")
        raise typer.Exit(NOT_FINE) from error
    except KeyboardInterrupt:
        raise typer.Exit(FINE) from None


def settings() -> Any:
    """The settings from the environment; exit 2 with a line for each that is wrong."""
    from pydantic import ValidationError

    from bot.settings import Settings

    try:
        return Settings()
    except ValidationError as error:
        for problem in error.errors():
            name = "EASEWARD_" + "_".join(str(part) for part in problem["loc"]).upper() if problem["loc"] else ""
            complain(f"{name} {problem['msg']}".strip())
        raise typer.Exit(WRONG_USE) from error
