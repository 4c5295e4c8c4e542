"""Commands that run the bot, here or against the platform, and the one that looks whether it can run."""

from __future__ import annotations

import gc
from pathlib import Path
from typing import Annotated

import typer

from bot.cli.terminal import FINE, NOT_FINE, WRONG_USE, AsJson, complain, print_json, settings, until_done


def practice(
    port: Annotated[int, typer.Option(help="Where the page is served, on this machine only.")] = 8642,
    no_open: Annotated[bool, typer.Option("--no-open", help="Do not open the page in a browser.")] = False,
    data: Annotated[Path | None, typer.Option(help="Where the practice data is kept.")] = None,
    group: Annotated[
        int | None, typer.Option(min=1, max=300, help="An invented group of so many clients who have lived six weeks.")
    ] = None,
) -> None:
    """Try everything here: a local chat, an invented coach and client, and a calendar that you move."""
    from bot.grouping import OtherPeople, practise_group
    from bot.practising import PortTaken, practise
    from bot.settings import data_folder

    folder = data if data is not None else data_folder() / (f"practice-group-{group}" if group else "practice")
    open_page, say = not no_open, typer.echo
    try:
        if group is None:
            until_done(lambda: practise(port=port, folder=folder, open_page=open_page, say=say))
        else:
            until_done(lambda: practise_group(port=port, folder=folder, open_page=open_page, count=group, say=say))
    except (PortTaken, OtherPeople) as error:
        complain(str(error))
        raise typer.Exit(WRONG_USE) from error


def serve(
    role: Annotated[str, typer.Option(help="all, updates (receive and handle) or sender (only send).")] = "all",
) -> None:
    """Run the bot against the platform, with EASEWARD_TOKEN. On PostgreSQL any number of processes may serve."""
    from bot import app

    gc.freeze()  # what is loaded by now stays, and need not be looked through again

    if role not in list(app.Role):
        complain(f"--role {role}: there are {', '.join(app.Role)}")
        raise typer.Exit(WRONG_USE)
    until_done(lambda: app.serve(settings(), app.Role(role)))


def doctor(as_json: AsJson = False) -> None:
    """Look at settings, database, zone data and platform, and say what to do. Exit 1 when something is wrong."""
    import asyncio

    from bot.cli.examination import examine

    findings = asyncio.run(examine(settings()))
    if as_json:
        print_json([finding.as_json() for finding in findings])
    else:
        for finding in findings:
            typer.echo(finding.in_words())
    raise typer.Exit(FINE if all(finding.fine for finding in findings) else NOT_FINE)
