"""The words on charts."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date

from bot.words import Words
from plans.charts.days import Did
from plans.charts.digest import DigestWords
from plans.charts.doses import DosesWords
from plans.charts.fortnight import FortnightWords
from plans.charts.progress import ProgressWords
from plans.charts.staying import StayingWords
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
        verdicts=verdict_words(words),
        pain=_("Pain, 0 to 10"),
        tightness=_("Tightness, 0 to 10"),
        before=_("before"),
        after=_("after"),
        nothing=_("nothing noted yet"),
        no_tests=_("not tested yet"),
        weekdays=_weekdays(words),
        dates=mondays(words, days),
    )


def fortnight_words(words: Words, title: str, note: str) -> FortnightWords:
    """Every word on a client's two weeks."""
    _ = words.gettext
    return FortnightWords(
        title=title,
        note=note,
        done=_("Sessions"),
        did=_did(words),
        pain=_("Pain, 0 to 10"),
        tightness=_("Tightness, 0 to 10"),
        followed=_("What followed"),
        verdicts=verdict_words(words),
        nothing=_("nothing noted yet"),
        weekdays=_weekdays(words),
    )


def digest_words(words: Words, title: str, note: str) -> DigestWords:
    """Every word on a group's week."""
    _ = words.gettext
    return DigestWords(
        title=title,
        note=note,
        completion=_("Sessions done"),
        answers=_("Sessions answered"),
        sure=_("done for sure"),
        unsure=_("perhaps: no answer"),
        answered=_("answered"),
        answered_unsure=_("perhaps"),
        followed=_("What followed this week"),
        verdicts=verdict_words(words),
        pain=_("Pain, 0 to 10"),
        middle=_("middle of the answers"),
        spread=_("half of the answers"),
        nothing=_("nothing noted"),
    )


def doses_words(words: Words, title: str) -> DosesWords:
    """Every word on a client's dose by week."""
    _ = words.gettext
    return DosesWords(
        title=title,
        note=_("minutes of holding a week, one side"),
        done=_("done"),
        asked=_("what came, at least"),
        over=_("what came, at most"),
        minutes=_(" min"),
        nothing=_("nothing noted yet"),
    )


def staying_words(words: Words, title: str, note: str) -> StayingWords:
    """Every word on who stays with a programme."""
    _ = words.gettext
    return StayingWords(
        title=title,
        note=note,
        stays=_("get further than this day"),
        interval=_("95 % interval"),
        still=_("still on this day"),
        day=_("day of the programme"),
        there=_("people who came to this day"),
        nothing=_("nobody has begun"),
    )


def mondays(words: Words, days: Iterable[date]) -> dict[date, str]:
    """How each Monday among some dates is written under a chart."""
    return {day: words.short_date(day) for day in days if day.weekday() == 0}


def _weekdays(words: Words) -> tuple[str, ...]:
    _ = words.gettext
    return (_("Mo"), _("Tu"), _("We"), _("Th"), _("Fr"), _("Sa"), _("Su"))


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


def verdict_words(words: Words) -> Mapping[Verdict, str]:
    """What each verdict is called."""
    _ = words.gettext
    return {
        Verdict.ADVANCE: _("went on"),
        Verdict.REPEAT: _("the same again"),
        Verdict.EASE: _("lighter"),
        Verdict.REST: _("a date off"),
        Verdict.REFER: _("waited for the coach"),
    }
