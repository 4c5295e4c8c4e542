"""Small questions without a database: the library and its drawings, schemas, how a reply is read, when a morning is."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Annotated, Any

import typer

from bot.cli.terminal import FINE, NOT_FINE, WRONG_USE, AsJson, complain, each_line, print_json, write


def movements(
    wanted: Annotated[
        list[str] | None, typer.Argument(help="Words of a name, a muscle, a kind or equipment.", metavar="[WORD…]")
    ] = None,
) -> None:
    """Search the library of movements; all about one when only one is found. Exit 1 when there is none."""
    from bot.cli.writing import movements_text

    found = movements_text(wanted or [])
    typer.echo(found or f"no movement of the library has all of: {' '.join(wanted or [])}", err=not found)
    raise typer.Exit(FINE if found else NOT_FINE)


def figure(
    movement: Annotated[str, typer.Argument(help="A movement's key, or all for a contact sheet.", metavar="MOVEMENT")],
    output: Annotated[Path, typer.Option("-o", help="A file that ends in .png, .svg, .gif or .mp4.", metavar="FILE")],
) -> None:
    """Draw a movement of the library, from start to end. Exit 1 when there is no such movement or no poses for it."""
    from bot.cli.drawing import NothingToDraw, picture_of
    from plans.figures.film import NoEncoder

    try:
        write(output, picture_of(movement, output.suffix))
    except (NothingToDraw, NoEncoder) as error:
        complain(str(error))
        raise typer.Exit(NOT_FINE) from None
    except ValueError as error:
        complain(str(error))
        raise typer.Exit(WRONG_USE) from None


def schema(
    what: Annotated[str, typer.Argument(help="programme, record or adverse-events.", metavar="[WHAT]")] = "programme",
) -> None:
    """Print a JSON Schema: of programme files, for editors, or of what export writes as JSON."""
    if what == "programme":
        from plans.schema import json_schema

        found = json_schema()
    else:
        from bot.exports.schemas import SCHEMAS

        if what not in SCHEMAS:
            complain(f"{what}: there are programme, {', '.join(SCHEMAS)}")
            raise typer.Exit(WRONG_USE)
        found = SCHEMAS[what]()
    typer.echo(json.dumps(found, ensure_ascii=False, indent=2))


def read_reply(
    text: Annotated[str, typer.Argument(help="A client's reply, or - for one a line from standard input.")],
    as_json: AsJson = False,
    language: Annotated[str, typer.Option(help="The reply's language.")] = "en",
) -> None:
    """Show how a reply in plain words is read."""
    from plans.replies import read_reply

    def read(line: str) -> dict[str, Any]:
        return dict(read_reply(line, language=language).as_json())

    try:
        read("")
    except ValueError as error:
        complain(str(error))
        raise typer.Exit(WRONG_USE) from error
    if text == "-":
        each_line(read)
    found = read(text)
    if as_json:
        print_json(found)
    else:
        said = {key: value for key, value in found.items() if value not in (None, False)}
        typer.echo("\n".join(f"{key}: {value}" for key, value in said.items()) or "nothing that I can read")


def when(
    date: Annotated[str, typer.Argument(help="A local date such as 2026-03-29, or - for lines of date, time, zone.")],
    time: Annotated[str | None, typer.Argument(help="A local time such as 07:00.")] = None,
    zone: Annotated[str | None, typer.Argument(help="An IANA zone name such as Europe/Lisbon.")] = None,
    as_json: AsJson = False,
) -> None:
    """Show the instant at which a local morning falls."""
    if date == "-":
        each_line(lambda line: _instant_of(line.replace(",", " ").split()))
    if time is None or zone is None:
        complain("when needs a date, a time and a zone, or - alone")
        raise typer.Exit(WRONG_USE)
    try:
        found = _instant_of([date, time, zone])
    except ValueError as error:
        if as_json:
            print_json({"error": str(error)})
        else:
            complain(str(error))
        raise typer.Exit(WRONG_USE) from error
    if as_json:
        print_json(found)
    else:
        typer.echo(str(found.get("utc", "that zone has no such day")))


def _instant_of(words: list[str]) -> dict[str, Any]:
    import datetime as dt

    from plans.localtime import instant

    if len(words) != 3:
        raise ValueError(f"found {len(words)} words, expected a date, a time and a zone")
    try:
        day, at = dt.date.fromisoformat(words[0]), dt.time.fromisoformat(words[1])
    except ValueError as error:
        raise ValueError(f"{words[0]} {words[1]}: {error}; write it like 2026-03-29 07:00") from error
    if at.tzinfo is not None:
        raise ValueError(f"{words[1]!r} has an offset of its own; write a local time like 07:00")
    try:
        found = instant(day, at, words[2])
    except OverflowError as error:
        raise ValueError(f"{words[0]} is outside the calendar that can be computed with") from error
    if found is None:
        return {"no_such_day": True}
    return {"utc": f"{found:%Y-%m-%dT%H:%M}{f':{found:%S}' if found.second else ''}Z"}
