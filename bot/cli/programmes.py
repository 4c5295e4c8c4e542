"""Commands about a programme file: what is wrong with it, what a client gets of it, how it differs, how it would go."""

from __future__ import annotations

import re
from pathlib import Path
from typing import Annotated, Any

import typer

from bot.cli.terminal import FINE, NOT_FINE, WRONG_USE, AsJson, complain, print_json, write


def check(
    files: Annotated[list[Path], typer.Argument(help="Programme files (YAML).", metavar="FILE…")],
    as_json: AsJson = False,
    html: Annotated[
        Path | None, typer.Option(help="Write a page with the dose chart here too.", metavar="PAGE")
    ] = None,
) -> None:
    """Read programme files and say what is wrong, doubtful or worth knowing. Exit 1 when one cannot be published."""
    from bot.cli import writing
    from bot.words.judging import judged
    from plans.reading import ProgrammeErrors

    if html is not None and len(files) > 1:
        complain(f"--html writes the page of one file; {len(files)} were given")
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
        report = judged(programme)
        code = code if report.ok else NOT_FINE
        results.append({"file": str(file), **writing.report_json(programme, report)})
        if html is not None:
            write(html, writing.report_page(programme, report))
        if not as_json:
            typer.echo(f"{file}: " + writing.report_text(programme, report))
    if as_json:
        print_json(results)
    raise typer.Exit(code)


def texts(
    file: Annotated[Path, typer.Argument(help="A programme file.", metavar="FILE")],
    language: Annotated[str, typer.Argument(help="Two letters, such as es.", metavar="LANGUAGE")],
) -> None:
    """Print a programme's own texts beside what it has for them in a language, as the `texts` of its file."""
    from bot.cli.writing import texts_to_translate

    if not re.fullmatch(r"[a-z]{2}", language):
        complain(f"{language}: a language is two letters, such as es")
        raise typer.Exit(WRONG_USE)
    typer.echo(texts_to_translate(_good_programme_in(file), language), nl=False)


def preview(
    file: Annotated[Path, typer.Argument(help="A programme file.", metavar="FILE")],
    day: Annotated[int, typer.Argument(help="The number of a day.", metavar="DAY")],
    level: Annotated[int, typer.Option(help="0 as written, 1 lighter, 2 lightest.", min=0, max=2)] = 0,
    output: Annotated[Path | None, typer.Option("-o", help="Draw the session's card there.", metavar="PNG")] = None,
) -> None:
    """Show a day's message as a client gets it; with -o also its session as one picture."""
    from bot.cli.writing import preview_text

    programme = _good_programme_in(file)
    try:
        typer.echo(preview_text(programme, day, level=level))
        if output is not None:
            from bot.cli.drawing import card_of

            write(output, card_of(programme, day, level=level))
    except LookupError as error:
        complain(str(error.args[0]))
        raise typer.Exit(WRONG_USE) from error


def compare(
    old: Annotated[Path, typer.Argument(help="A programme file.", metavar="OLD")],
    new: Annotated[Path, typer.Argument(help="Its next version.", metavar="NEW")],
) -> None:
    """Say in words what changed from one version of a programme to the next."""
    from bot.words.changes import changes

    found = changes(_good_programme_in(old), _good_programme_in(new))
    typer.echo("\n".join(found) or "Nothing that a client or a rule would see.")


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
    from plans.charts.rehearsal import picture

    programme = _good_programme_in(file)
    source = file.read_text(encoding="utf-8-sig")
    with Progress(console=Console(stderr=True), transient=True, disable=as_json) as bar:
        task = bar.add_task("rehearsing", total=2 * clients)

        def step(count: int) -> None:
            bar.advance(task, count)

        found = rehearsing.rehearse(source, clients, seed, step=step)
        plain = rehearsing.rehearse(source, clients, seed, adapted=False, step=step)
    if output is not None:
        write(output, picture(programme.title, found, plain))
    if as_json:
        print_json({"seed": seed, "with_rules": found.as_json(), "as_published": plain.as_json()})
    else:
        typer.echo(rehearsing.in_words(programme, found, plain))


def _programme_in(file: Path) -> Any:
    """The programme in a file; exit 2 for a file that cannot be read. Raises ProgrammeErrors."""
    from bot.cli.writing import Unreadable, programme_in

    try:
        return programme_in(file)
    except Unreadable as error:
        complain(str(error))
        raise typer.Exit(WRONG_USE) from error


def _good_programme_in(file: Path) -> Any:
    """The same; exit 1 with all that is wrong for a file that is no programme."""
    from plans.reading import ProgrammeErrors

    try:
        return _programme_in(file)
    except ProgrammeErrors as errors:
        complain(str(errors))
        raise typer.Exit(NOT_FINE) from errors
