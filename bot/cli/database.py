"""Commands about the whole database: its tables, a copy of it, its way back, another place for it."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from bot.cli.terminal import settings, until_done


def migrate() -> None:
    """Bring the database to this version's tables."""
    from bot.cli import keeping

    until_done(lambda: keeping.migrate(settings(), typer.echo))


def backup(
    file: Annotated[Path, typer.Argument(help="The new file.")],
) -> None:
    """Copy the database into one file while the bot serves, and compare it row for row."""
    from bot.cli import keeping

    until_done(lambda: keeping.backup(settings(), file, typer.echo))


def restore(
    file: Annotated[Path, typer.Argument(help="A file that backup made.")],
    erasures_of: Annotated[
        Path | None, typer.Option(help="A newer backup, whose erasures are to be heeded too.")
    ] = None,
) -> None:
    """Put a backup in the place of what is there. Nothing leaves twice; who was erased stays erased."""
    from bot.cli import keeping

    until_done(lambda: keeping.restore(settings(), file, erasures_of, typer.echo))


def move_data(
    target: Annotated[str, typer.Argument(help="The new database, as postgresql://user@host/name.")],
) -> None:
    """Copy everything into another, empty database, and compare it row for row."""
    from bot.cli import keeping

    until_done(lambda: keeping.move_data(settings(), target, typer.echo))
