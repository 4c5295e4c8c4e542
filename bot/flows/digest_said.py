"""The coach's week in words, as a chart and as a page, from plain values."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from datetime import date, timedelta

from markupsafe import Markup

from bot.flows.weeks import Digest, Seen, Tested
from bot.words import Words, figures
from bot.words.charts import digest_words
from bot.words.inline import inline
from bot.words.measured import side_words
from db.courses import CourseState
from plans.adherence import Week
from plans.charts.days import Line
from plans.charts.digest import Digest as Chart
from plans.charts.digest import Pain, Share, digest_svg
from plans.charts.digest import Week as Bars
from plans.measures import ALONE, Change
from plans.programme import Programme
from plans.units import value_in
from plans.weekly import ends

WANTED = 80.0
"""Percent of sessions done that many programmes are held to (Bailey 2020, Br J Sports Med 54:326)."""


def dates(words: Words, first: date, last: date) -> dict[str, str]:
    """The first and the last date as they are said."""
    return {"first": words.weekday_and_date(first), "last": words.weekday_and_date(last)}


def weekdays(words: Words) -> list[str]:
    """Their names, Monday first."""
    return [words.weekday(date(2024, 1, number)) for number in range(1, 8)]


# --- in a message ---------------------------------------------------------------------------------------------------


def together(words: Words, found: Digest) -> Markup:
    """The whole group in one message."""
    return words.say("digest.together", **_together(words, found))


def _together(words: Words, found: Digest, most: int = figures.NAMES) -> dict[str, object]:
    _, group = words.gettext, found.group
    unanswered = sorted(
        (seen for seen in found.clients if seen.week.week.silent), key=lambda seen: -seen.week.week.silent
    )
    trends = [
        figures.directions(words, _("Pain"), group.pain),
        figures.directions(words, _("Tightness"), group.tightness),
    ]
    return {
        "count": len(found.there),
        "w": group.week,
        "figures": figures.figures(words, group.comparison),
        "trends": [line for line in trends if line],
        "followed": figures.followed(words, group.followed),
        "tests": _counted(words, [test for seen in found.clients for test in seen.tests]),
        "finished": figures.names(words, (seen.label for seen in found.ended(CourseState.FINISHED)), most),
        "stopped": figures.names(words, (seen.label for seen in found.ended(CourseState.STOPPED)), most),
        "silent": figures.names(words, (f"{s.label} ({_unanswered(words, s.week.week)})" for s in unanswered), most),
    }


def _unanswered(words: Words, week: Week) -> str:
    return words.gettext("{count} of {due}").format(count=week.silent, due=week.due)


def _counted(words: Words, tests: Sequence[Tested]) -> str:
    """How many tests of the week are worth what."""
    _ = words.gettext
    counts = Counter(test.change for test in tests)
    named = (
        (Change.GAIN, _("{count} better beyond the error")),
        (Change.INSIDE, _("{count} within it")),
        (Change.LOSS, _("{count} worse beyond it")),
        (None, _("{count} first ones")),
    )
    return ", ".join(text.format(count=counts[change]) for change, text in named if counts[change])


# --- as a chart -----------------------------------------------------------------------------------------------------


def chart(words: Words, found: Digest) -> Chart:
    """The last four weeks of all clients together."""
    title, note = words.gettext("Your group"), words.gettext("the last four weeks")
    return Chart(
        weeks=tuple(_bar(words, end, week) for end, week in zip(ends(found.last), found.group.weeks, strict=True)),
        wanted=Line(WANTED, words.gettext("80 %, a usual mark")),
        followed=dict(found.group.followed),
        words=digest_words(words, title, note),
    )


def _bar(words: Words, end: date, week: Week) -> Bars:
    low, high = week.completion
    pains = sorted(week.pains)
    middle = Pain(*(quantile(pains, share) for share in (0.25, 0.5, 0.75))) if pains else None
    return Bars(
        words.short_date(end - timedelta(days=6)),
        Share(low, high, f"{week.done}/{week.due}") if week.due else None,
        Share(week.response, week.response, f"{week.answered}/{week.due}") if week.due else None,
        middle,
    )


def quantile(numbers: Sequence[int], share: float) -> float:
    """A quantile of sorted numbers, between neighbours in proportion (Hyndman & Fan 1996, type 7).

    >>> [quantile([0, 2, 3, 9], share) for share in (0.25, 0.5, 0.75)]
    [1.5, 2.5, 4.5]
    """
    place = share * (len(numbers) - 1)
    low = int(place)
    high = min(low + 1, len(numbers) - 1)
    return numbers[low] + (numbers[high] - numbers[low]) * (place - low)


# --- as a page ------------------------------------------------------------------------------------------------------


def page(words: Words, found: Digest) -> str:
    """One HTML page for paper of A4 and for a phone, the chart inside, without scripts or addresses."""
    return words.page(
        "digest.html",
        **dates(words, found.first, found.last),
        year=found.last.year,
        titles=sorted({seen.programme.title for seen in found.there}),
        needing=[{"seen": seen, "needs": seen.needs} for seen in found.needing],
        together=_together(words, found, most=1000),
        chart=inline(
            digest_svg(chart(words, found)), words.gettext("The last four weeks; the numbers are in the tables.")
        ),
        tests=[(seen.label, line) for seen in found.clients for line in _tests(words, seen)],
        groups=list(_groups(words, found)),
        say=words.say,
    )


def _tests(words: Words, seen: Seen) -> Iterator[dict[str, object]]:
    for test in seen.tests:
        unit = test.measure.unit
        name, side = words.gettext(test.measure.name), side_words(test.side, gettext=words.gettext).lower()
        yield {
            "name": f"{name}, {side}" if side else name,
            "first": words.number(value_in(test.first, unit, words.units)),
            "value": f"{words.number(value_in(test.value, unit, words.units))} {words.unit(unit)}",
            "error": words.number(value_in(ALONE * test.measure.mdc, unit, words.units)),
            "change": test.change,
        }


def _groups(words: Words, found: Digest) -> Iterator[tuple[Programme, list[dict[str, object]]]]:
    """Everybody by programme, in the order of their names."""
    programmes = {seen.programme.digest: seen.programme for seen in found.there}
    people = sorted(found.there, key=lambda seen: seen.label.lower())
    for digest, programme in programmes.items():
        yield programme, [_person(words, seen) for seen in people if seen.programme.digest == digest]


def _person(words: Words, seen: Seen) -> dict[str, object]:
    week = seen.week.week
    return {
        "label": seen.label,
        "state": seen.course.state,
        "paused": seen.course.paused is not None,
        "day": seen.course.day,
        "level": seen.course.level,
        "week": week,
        "pains": ", ".join(map(str, week.pains)),
        "pain": figures.trend(words, seen.week.pain),
        "tightness": figures.trend(words, seen.week.tightness),
    }
