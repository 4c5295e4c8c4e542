"""The command line. Each command imports what it needs when it is called, so that small questions answer fast."""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Annotated, Any

import typer

app = typer.Typer(
    name="easeward",
    help="A coach's stretching programme, one session a morning, adapted to each client's answer.",
    no_args_is_help=True,
    add_completion=False,
    pretty_exceptions_enable=False,
)

FINE, NOT_FINE, WRONG_USE = 0, 1, 2

AsJson = Annotated[bool, typer.Option("--json", help="Print one JSON object, stable and documented.")]


def main() -> None:
    """The console command."""
    app()


def _print(value: object) -> None:
    typer.echo(json.dumps(value, ensure_ascii=False))


def _complain(text: str) -> None:
    typer.echo(text, err=True)


def _lines() -> Iterator[str]:
    for raw in sys.stdin.buffer:
        yield raw.decode("utf-8", errors="replace").rstrip("\r\n")


def _each_line(read: Callable[[str], dict[str, Any]]) -> None:
    """One JSON object a line, in order; a bad line gives its error in its place and exit 1 in the end."""
    code = FINE
    for line in _lines():
        try:
            _print(read(line))
        except ValueError as error:
            _print({"error": str(error)})
            code = NOT_FINE
    raise typer.Exit(code)


# --- small questions ------------------------------------------------------------------------------------------------


@app.command()
def check(
    files: Annotated[list[Path], typer.Argument(help="Programme files (YAML).", metavar="FILE…")],
    as_json: AsJson = False,
    html: Annotated[
        Path | None, typer.Option(help="Write a page with the dose chart here too.", metavar="PAGE")
    ] = None,
) -> None:
    """Read programme files and say what is wrong, doubtful or worth knowing. Exit 1 when one cannot be published."""
    from bot import writing
    from plans.reading import ProgrammeErrors

    if html is not None and len(files) > 1:
        _complain(f"--html writes the page of one file; {len(files)} were given")
        raise typer.Exit(WRONG_USE)
    code, results = FINE, []
    for file in files:
        try:
            programme = _programme_in(file)
        except ProgrammeErrors as errors:
            code = NOT_FINE
            results.append({"file": str(file), "ok": False, "problems": [p.as_json() for p in errors.problems]})
            if not as_json:
                typer.echo(str(errors))
            continue
        report = writing.judged(programme)
        code = code if report.ok else NOT_FINE
        results.append({"file": str(file), **writing.report_json(programme, report)})
        if html is not None:
            _write(html, writing.report_page(programme, report))
        if not as_json:
            typer.echo(f"{file}: " + writing.report_text(programme, report))
    if as_json:
        _print(results)
    raise typer.Exit(code)


def _programme_in(file: Path) -> Any:
    """The programme in a file; exit 2 for a file that cannot be read. Raises ProgrammeErrors."""
    from bot.writing import Unreadable, programme_in

    try:
        return programme_in(file)
    except Unreadable as error:
        _complain(str(error))
        raise typer.Exit(WRONG_USE) from error


def _good_programme_in(file: Path) -> Any:
    """The same; exit 1 with all that is wrong for a file that is no programme."""
    from plans.reading import ProgrammeErrors

    try:
        return _programme_in(file)
    except ProgrammeErrors as errors:
        _complain(str(errors))
        raise typer.Exit(NOT_FINE) from errors


def _write(file: Path, text: str) -> None:
    try:
        file.write_text(text, encoding="utf-8")
    except OSError as error:
        _complain(f"{file}: cannot be written: {error.strerror}")
        raise typer.Exit(WRONG_USE) from error


@app.command()
def texts(
    file: Annotated[Path, typer.Argument(help="A programme file.", metavar="FILE")],
    language: Annotated[str, typer.Argument(help="Two letters, such as es.", metavar="LANGUAGE")],
) -> None:
    """Print a programme's own texts beside what it has for them in a language, as the `texts` of its file."""
    from bot.writing import texts_to_translate

    if not re.fullmatch(r"[a-z]{2}", language):
        _complain(f"{language}: a language is two letters, such as es")
        raise typer.Exit(WRONG_USE)
    typer.echo(texts_to_translate(_good_programme_in(file), language), nl=False)


@app.command()
def preview(
    file: Annotated[Path, typer.Argument(help="A programme file.", metavar="FILE")],
    day: Annotated[int, typer.Argument(help="The number of a day.", metavar="DAY")],
    level: Annotated[int, typer.Option(help="0 as written, 1 lighter, 2 lightest.", min=0, max=2)] = 0,
    output: Annotated[Path | None, typer.Option("-o", help="Draw the session's card there.", metavar="PNG")] = None,
) -> None:
    """Show a day's message as a client gets it; with -o also its session as one picture."""
    from bot.writing import preview_text

    programme = _good_programme_in(file)
    try:
        typer.echo(preview_text(programme, day, level=level))
        if output is not None:
            from bot.drawing import card_of

            output.write_bytes(card_of(programme, day, level=level))
    except LookupError as error:
        _complain(str(error.args[0]))
        raise typer.Exit(WRONG_USE) from error


@app.command()
def compare(
    old: Annotated[Path, typer.Argument(help="A programme file.", metavar="OLD")],
    new: Annotated[Path, typer.Argument(help="Its next version.", metavar="NEW")],
) -> None:
    """Say in words what changed from one version of a programme to the next."""
    from bot.words.changes import changes

    found = changes(_good_programme_in(old), _good_programme_in(new))
    typer.echo("\n".join(found) or "Nothing that a client or a rule would see.")


@app.command()
def movements(
    wanted: Annotated[
        list[str] | None, typer.Argument(help="Words of a name, a muscle, a kind or equipment.", metavar="[WORD…]")
    ] = None,
) -> None:
    """Search the library of movements; all about one when only one is found. Exit 1 when there is none."""
    from bot.writing import movements_text

    found = movements_text(wanted or [])
    typer.echo(found or f"no movement of the library has all of: {' '.join(wanted or [])}", err=not found)
    raise typer.Exit(FINE if found else NOT_FINE)


@app.command("figure")
def figure_command(
    movement: Annotated[str, typer.Argument(help="A movement's key, or all for a contact sheet.", metavar="MOVEMENT")],
    output: Annotated[Path, typer.Option("-o", help="A file that ends in .png, .svg, .gif or .mp4.", metavar="FILE")],
) -> None:
    """Draw a movement of the library, from start to end. Exit 1 when there is no such movement or no poses for it."""
    from bot.drawing import NothingToDraw, picture_of
    from plans.figures.film import NoEncoder

    try:
        output.write_bytes(picture_of(movement, output.suffix))
    except (NothingToDraw, NoEncoder) as error:
        typer.echo(str(error), err=True)
        raise typer.Exit(NOT_FINE) from None
    except ValueError as error:
        typer.echo(str(error), err=True)
        raise typer.Exit(WRONG_USE) from None


@app.command()
def rehearse(
    file: Annotated[Path, typer.Argument(help="A programme file.", metavar="FILE")],
    clients: Annotated[int, typer.Option(help="How many simulated clients.", min=1, max=1_000_000)] = 200,
    seed: Annotated[int, typer.Option(help="The same seed gives the same group.")] = 1,
    output: Annotated[Path | None, typer.Option("-o", help="Write the picture (SVG) there.", metavar="SVG")] = None,
    as_json: AsJson = False,
) -> None:
    """Let simulated clients go through a programme, under the very rules that real ones go by."""
    from rich.console import Console
    from rich.progress import Progress

    from bot import rehearsing
    from bot.rehearsal_picture import picture

    programme = _good_programme_in(file)
    source = file.read_text(encoding="utf-8-sig")
    with Progress(console=Console(stderr=True), transient=True, disable=as_json) as bar:
        task = bar.add_task("rehearsing", total=2 * clients)

        def step(count: int) -> None:
            bar.advance(task, count)

        found = rehearsing.rehearse(source, clients, seed, step=step)
        plain = rehearsing.rehearse(source, clients, seed, adapted=False, step=step)
    if output is not None:
        output.write_text(picture(programme.title, found, plain), encoding="utf-8")
    if as_json:
        _print({"seed": seed, "with_rules": found.as_json(), "as_published": plain.as_json()})
    else:
        typer.echo(rehearsing.in_words(programme, found, plain))


@app.command()
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
            _complain(f"{what}: there are programme, {', '.join(SCHEMAS)}")
            raise typer.Exit(WRONG_USE)
        found = SCHEMAS[what]()
    typer.echo(json.dumps(found, ensure_ascii=False, indent=2))


@app.command("read-reply")
def read_reply_command(
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
        _complain(str(error))
        raise typer.Exit(WRONG_USE) from error
    if text == "-":
        _each_line(read)
    found = read(text)
    if as_json:
        _print(found)
    else:
        said = {key: value for key, value in found.items() if value not in (None, False)}
        typer.echo("\n".join(f"{key}: {value}" for key, value in said.items()) or "nothing that I can read")


@app.command()
def when(
    date: Annotated[str, typer.Argument(help="A local date such as 2026-03-29, or - for lines of date, time, zone.")],
    time: Annotated[str | None, typer.Argument(help="A local time such as 07:00.")] = None,
    zone: Annotated[str | None, typer.Argument(help="An IANA zone name such as Europe/Lisbon.")] = None,
    as_json: AsJson = False,
) -> None:
    """Show the instant at which a local morning falls."""
    if date == "-":
        _each_line(lambda line: _instant_of(line.replace(",", " ").split()))
    if time is None or zone is None:
        _complain("when needs a date, a time and a zone, or - alone")
        raise typer.Exit(WRONG_USE)
    try:
        found = _instant_of([date, time, zone])
    except ValueError as error:
        if as_json:
            _print({"error": str(error)})
        else:
            _complain(str(error))
        raise typer.Exit(WRONG_USE) from error
    if as_json:
        _print(found)
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


# --- running --------------------------------------------------------------------------------------------------------


@app.command()
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
    open_page = not no_open
    try:
        if group is None:
            _run(lambda: practise(port=port, folder=folder, open_page=open_page, say=typer.echo))
        else:
            _run(lambda: practise_group(port=port, folder=folder, open_page=open_page, count=group, say=typer.echo))
    except (PortTaken, OtherPeople) as error:
        _complain(str(error))
        raise typer.Exit(WRONG_USE) from error


@app.command()
def serve(
    role: Annotated[str, typer.Option(help="all, updates (receive and handle) or sender (only send).")] = "all",
) -> None:
    """Run the bot against the platform, with EASEWARD_TOKEN. On PostgreSQL any number of processes may serve."""
    from bot.app import Role
    from bot.app import serve as run

    if role not in list(Role):
        _complain(f"--role {role}: there are {', '.join(Role)}")
        raise typer.Exit(WRONG_USE)
    _run(lambda: run(_settings(), Role(role)))


def _run(work: Callable[[], Any]) -> None:
    """Runs until done or stopped; what stands in the way is said in a line. Files that it makes are their owner's."""
    import asyncio
    import os

    from sqlalchemy.exc import SQLAlchemyError

    from bot.app import CannotServe
    from bot.heartbeat import UnfitPing
    from bot.keeping import UnfitFile
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
        _complain(str(error))
        raise typer.Exit(NOT_FINE) from error
    except (SQLAlchemyError, OSError) as error:
        cause = getattr(error, "orig", None) or error
        _complain(f"the database or a file cannot be used: {type(cause).__name__}; easeward doctor says more")
        raise typer.Exit(NOT_FINE) from error
    except KeyboardInterrupt:
        raise typer.Exit(FINE) from None


def _settings() -> Any:
    from pydantic import ValidationError

    from bot.settings import Settings

    try:
        return Settings()
    except ValidationError as error:
        for problem in error.errors():
            name = "EASEWARD_" + "_".join(str(part) for part in problem["loc"]).upper() if problem["loc"] else ""
            _complain(f"{name} {problem['msg']}".strip())
        raise typer.Exit(WRONG_USE) from error


@app.command()
def migrate() -> None:
    """Bring the database to this version's tables."""
    from bot.app import migrate as run

    _run(lambda: run(_settings(), typer.echo))


@app.command()
def backup(
    file: Annotated[Path, typer.Argument(help="The new file.")],
) -> None:
    """Copy the database into one file while the bot serves, and compare it row for row."""
    from bot.keeping import backup as run

    _run(lambda: run(_settings(), file, typer.echo))


@app.command()
def restore(
    file: Annotated[Path, typer.Argument(help="A file that backup made.")],
    erasures_of: Annotated[
        Path | None, typer.Option(help="A newer backup, whose erasures are to be heeded too.")
    ] = None,
) -> None:
    """Put a backup in the place of what is there. Nothing leaves twice; who was erased stays erased."""
    from bot.keeping import restore as run

    _run(lambda: run(_settings(), file, erasures_of, typer.echo))


@app.command("move-data")
def move_data(
    target: Annotated[str, typer.Argument(help="The new database, as postgresql://user@host/name.")],
) -> None:
    """Copy everything into another, empty database, and compare it row for row."""
    from bot.keeping import move_data as run

    _run(lambda: run(_settings(), target, typer.echo))


@app.command("invite-coach")
def invite_coach() -> None:
    """Print a link by which one person becomes a coach; it opens once, within seven days."""
    from bot.app import invite_coach as run

    _run(lambda: run(_settings(), typer.echo))


@app.command()
def explain(
    person: Annotated[str, typer.Argument(help="A client's chat number, or their name.", metavar="PERSON")],
    on: Annotated[str, typer.Argument(help="A local date, such as 2026-05-04.", metavar="DATE")],
    as_json: AsJson = False,
) -> None:
    """Say why a client's date is what it is: every vote with its numbers, and whether the rules still say the same."""
    from datetime import date

    try:
        day = date.fromisoformat(on)
    except ValueError as error:
        _complain(f"{on!r} is no date; write it like 2026-05-04")
        raise typer.Exit(WRONG_USE) from error

    async def run() -> None:
        from bot.explaining import explain as look
        from bot.explaining import in_words
        from db.engine import opened

        async with opened(_settings().database_url) as database:
            try:
                found = await look(database, person, day)
            except LookupError as error:
                _complain(str(error.args[0]))
                raise typer.Exit(NOT_FINE) from error
        _print(found) if as_json else typer.echo(in_words(found))

    _run(run)


@app.command()
def export(
    coach: Annotated[str, typer.Argument(help="A coach's chat number, or their name.", metavar="COACH")],
    folder: Annotated[Path, typer.Argument(help="A new folder for the files.", metavar="FOLDER")],
    client: Annotated[str | None, typer.Option(help="Only this client, by chat number or name.")] = None,
    only: Annotated[list[str] | None, typer.Option(help="csv, json, events, fhir or calendar; may come twice.")] = None,
) -> None:
    """Write what is kept of a coach's clients as files: tables, JSON, adverse events, FHIR, calendars. Health data."""
    from bot.exporting import KINDS, NotEmpty
    from bot.exporting import export as write

    strange = [kind for kind in only or () if kind not in KINDS]
    if strange:
        _complain(f"--only {strange[0]}: there are {', '.join(KINDS)}")
        raise typer.Exit(WRONG_USE)

    async def run() -> None:
        from db.engine import opened

        async with opened(_settings().database_url) as database:
            try:
                await write(database, coach, folder, client, only or (), typer.echo)
            except LookupError as error:
                _complain(str(error.args[0]))
                raise typer.Exit(NOT_FINE) from error
            except (NotEmpty, NotADirectoryError) as error:
                _complain(str(error))
                raise typer.Exit(WRONG_USE) from error

    _run(run)


@app.command()
def doctor(as_json: AsJson = False) -> None:
    """Look at settings, database, zone data and platform, and say what to do. Exit 1 when something is wrong."""
    import asyncio

    from bot.examination import examine

    findings = asyncio.run(examine(_settings()))
    if as_json:
        _print([finding.as_json() for finding in findings])
    else:
        for finding in findings:
            typer.echo(finding.in_words())
    raise typer.Exit(FINE if all(finding.fine for finding in findings) else NOT_FINE)


if __name__ == "__main__":
    main()
