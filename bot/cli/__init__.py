"""The command line. Each command imports what it needs when it is called, so that small questions answer fast."""

from __future__ import annotations

import gc
from collections.abc import Callable, Mapping

import typer

from bot.cli import database, people, programmes, questions, serving

COMMANDS: Mapping[str, Callable[..., None]] = {
    "check": programmes.check,
    "texts": programmes.texts,
    "preview": programmes.preview,
    "compare": programmes.compare,
    "movements": questions.movements,
    "figure": questions.figure,
    "rehearse": programmes.rehearse,
    "schema": questions.schema,
    "read-reply": questions.read_reply,
    "when": questions.when,
    "practice": serving.practice,
    "serve": serving.serve,
    "migrate": database.migrate,
    "backup": database.backup,
    "restore": database.restore,
    "move-data": database.move_data,
    "invite-coach": people.invite_coach,
    "explain": people.explain,
    "export": people.export,
    "doctor": serving.doctor,
}
"""In the order in which help lists them."""

SELDOM = 50_000
"""New objects between two looks for garbage: what a command loads are hundreds of thousands that all stay."""

app = typer.Typer(
    name="easeward",
    help="A coach's stretching programme, one session a morning, adapted to each client's answer.",
    no_args_is_help=True,
    add_completion=False,
    pretty_exceptions_enable=False,
)
for _name, _command in COMMANDS.items():
    app.command(_name)(_command)


def main() -> None:
    """The console command."""
    gc.set_threshold(SELDOM)
    app()
