"""A check-in in a few words, for whoever reads it."""

from __future__ import annotations

from collections.abc import Iterator

from bot.words.doses import Gettext, same
from plans.checkin import CheckIn, Completion, Kind


def facts(said: CheckIn, *, gettext: Gettext = same) -> str:
    """What was said, without a full stop; empty when nothing was.

    >>> facts(CheckIn(Completion.DONE, pain=2, kind=Kind.SHARP))
    'done, pain 2 (sharp or sudden)'
    """
    return ", ".join(_facts(said, gettext))


def _facts(said: CheckIn, _: Gettext) -> Iterator[str]:
    if said.completion is not None:
        yield _completions(_)[said.completion]
    if said.pain == 0:
        yield _("no pain")
    elif said.pain is not None:
        yield _("pain {pain}").format(pain=said.pain) + (f" ({_kinds(_)[said.kind]})" if said.kind else "")
    elif said.kind is not None:
        yield _kinds(_)[said.kind]
    if said.sore:
        yield _("sore")
    if said.tightness is not None:
        yield _("tightness {tightness}").format(tightness=said.tightness)


def _completions(_: Gettext) -> dict[Completion, str]:
    return {Completion.DONE: _("done"), Completion.PART: _("part of it"), Completion.NONE: _("not today")}


def _kinds(_: Gettext) -> dict[Kind, str]:
    return {
        Kind.DULL_BOTH: _("dull, both sides"),
        Kind.DULL_ONE: _("dull, one side"),
        Kind.SHARP: _("sharp or sudden"),
        Kind.NERVE: _("numb, tingling or shooting"),
        Kind.POP: _("a pop, bruise, swelling or no weight on it"),
        Kind.OTHER: _("something else"),
    }
