"""The words on charts."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date

from bot.words import Words
from plans.charts.days import Did
from plans.charts.progress import ProgressWords
from plans.rules import Verdict


def progress_words(words: Words, title: str, note: str, days: Iterable[date]) -> ProgressWords:
    """Every word on a client's progress; `days` are the dates that it shows."""
    _ = words.gettext
    return ProgressWords(
        title=title,
        note=note,
        done=_("Sessions"),
        did=_did(words),
        followed=_("What followed"),
        verdicts=_verdicts(words),
        pain=_("Pain, 0 to 10"),
        tightness=_("Tightness, 0 to 10"),
        before=_("before"),
        after=_("after"),
        nothing=_("nothing noted yet"),
        no_tests=_("not tested yet"),
        weekdays=(_("Mo"), _("Tu"), _("We"), _("Th"), _("Fr"), _("Sa"), _("Su")),
        dates=mondays(words, days),
    )


def mondays(words: Words, days: Iterable[date]) -> dict[date, str]:
    """How each Monday among some dates is written under a chart."""
    return {day: words.short_date(day) for day in days if day.weekday() == 0}


def _did(words: Words) -> Mapping[Did, str]:
    _ = words.gettext
    return {
        Did.DONE: _("done"),
        Did.PART: _("part of it"),
        Did.LEFT_OUT: _("not done"),
        Did.SILENT: _("no answer"),
        Did.REST: _("rest day"),
        Did.MEASURED: _("test"),
    }


def _verdicts(words: Words) -> Mapping[Verdict, str]:
    _ = words.gettext
    return {
        Verdict.ADVANCE: _("went on"),
        Verdict.REPEAT: _("the same again"),
        Verdict.EASE: _("lighter"),
        Verdict.REST: _("a date off"),
        Verdict.REFER: _("waited for the coach"),
    }
