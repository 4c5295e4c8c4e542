"""Tests in a few words, and the ways into one."""

from __future__ import annotations

from bot.words.doses import Gettext, same
from bot.words.message import Button, Rows, column


def side_words(side: str | None, *, gettext: Gettext = same) -> str:
    """A side as people say it; empty for a test without sides."""
    _ = gettext
    return {"left": _("Left side"), "right": _("Right side")}.get(side or "", "")


def ways_in(measure: str, *, gettext: Gettext = same) -> Rows:
    """The two ways to begin a test."""
    _ = gettext
    return column(
        Button(_("I am warm: begin the test"), f"measure:{measure}:warm"),
        Button(_("Begin without a warm-up"), f"measure:{measure}:cold"),
    )
