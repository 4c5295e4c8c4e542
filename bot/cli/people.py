"""Commands about people: a link for a coach, why a client's date is what it is, all that is kept of clients."""

from __future__ import annotations

from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from bot.cli.terminal import NOT_FINE, WRONG_USE, AsJson, complain, print_json, settings, until_done

if TYPE_CHECKING:
    from db.engine import Database


def invite_coach() -> None:
    """Print a link by which one person becomes a coach; it opens once, within seven days."""
    from bot.cli.inviting import invite_coach as invite

    until_done(lambda: invite(settings(), typer.echo))


def explain(
    person: Annotated[str, typer.Argument(help="A client's chat number, or their name.", metavar="PERSON")],
    on: Annotated[str, typer.Argument(help="A local date, such as 2026-05-04.", metavar="DATE")],
    as_json: AsJson = False,
) -> None:
    """Say why a client's date is what it is: every vote with its numbers, and whether the rules still say the same."""
    from datetime import date

    from bot.cli import explaining

    try:
        day = date.fromisoformat(on)
    except ValueError as error:
        complain(f"{on!r} is no date; write it like 2026-05-04")
        raise typer.Exit(WRONG_USE) from error

    async def look(database: Database) -> None:
        found = await explaining.explain(database, person, day)
        print_json(found) if as_json else typer.echo(explaining.in_words(found))

    _with_database(look)


def export(
    coach: Annotated[str, typer.Argument(help="A coach's chat number, or their name.", metavar="COACH")],
    folder: Annotated[Path, typer.Argument(help="A new folder for the files.", metavar="FOLDER")],
    client: Annotated[str | None, typer.Option(help="Only this client, by chat number or name.")] = None,
    only: Annotated[list[str] | None, typer.Option(help="csv, json, events, fhir or calendar; may come twice.")] = None,
) -> None:
    """Write what is kept of a coach's clients as files: tables, JSON, adverse events, FHIR, calendars. Health data."""
    from bot.cli import exporting

    strange = [kind for kind in only or () if kind not in exporting.KINDS]
    if strange:
        complain(f"--only {strange[0]}: there are {', '.join(exporting.KINDS)}")
        raise typer.Exit(WRONG_USE)

    async def write(database: Database) -> None:
        try:
            await exporting.export(database, coach, folder, client, only or (), typer.echo)
        except (exporting.NotEmpty, NotADirectoryError) as error:
            complain(str(error))
            raise typer.Exit(WRONG_USE) from error

    _with_database(write)


def _with_database(work: Callable[[Database], Awaitable[None]]) -> None:
    """Runs something on the database; exit 1 when it does not find whom it is asked for."""
    from db.engine import opened

    async def run() -> None:
        async with opened(settings().database_url) as database:
            try:
                await work(database)
            except LookupError as error:
                complain(str(error.args[0]))
                raise typer.Exit(NOT_FINE) from error

    until_done(run)
