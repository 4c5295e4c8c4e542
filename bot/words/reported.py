"""A programme's report in words: in few lines, as a curve, and as a page."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from typing import TypeVar

from markupsafe import Markup

from bot.words import Words
from bot.words.charts import staying_words
from bot.words.figures import percent
from bot.words.inline import inline
from bot.words.measured import side_words
from plans.adherence import wilson
from plans.charts.staying import Drop, Staying, staying_svg
from plans.group_error import ENOUGH, GroupError
from plans.measures import ALONE, MEASURES
from plans.programme import Programme
from plans.programme_report import Count, DayReport, MovementReport, ProgrammeReport
from plans.units import value_in

Found = TypeVar("Found")

OF_DAY = ("done", "part", "left_out", "silent", "repeated", "eased", "hurt", "left_there")
"""The figures of a day, in the order of the page."""
OF_MOVEMENT = ("barred", "easier", "gone", "kept")
TO_LOOK_AT = 3
"""Days, and movements, that a message names. Our own choice."""
LEAST = 2
"""A figure of fewer clients is not named in a message. Our own choice."""
CHANGES, LONGEST = 3, 200
"""Changes from the version before in a message, and characters of each; the page has them all."""


@dataclass(frozen=True, slots=True)
class Told:
    """What is told: a version, what came of it, the error of its tests; the version before and what has changed."""

    programme: Programme
    report: ProgrammeReport
    errors: Sequence[GroupError]
    before: ProgrammeReport | None
    changed: Sequence[str]


# --- in a message ---------------------------------------------------------------------------------------------------


def text(words: Words, told: Told) -> Markup:
    """The report in few lines."""
    found = told.report
    return words.say(
        "reporting.report",
        title=found.title,
        digest=found.digest[:6],
        r=found,
        past=_past(told),
        days=[_day(words, day) for day in worst_days(found)],
        movements=[_movement(words, told.programme, movement) for movement in worst_movements(found)],
        errors=[_error(words, error) for error in told.errors],
        enough=ENOUGH,
        before=told.before,
        changed=[line if len(line) <= LONGEST else f"{line[: LONGEST - 1]}…" for line in told.changed[:CHANGES]],
        more=max(0, len(told.changed) - CHANGES),
    )


def _past(told: Told) -> list[tuple[int, str]]:
    """Which share gets past the middle and past the last session, as far as anybody has come."""
    last, furthest = _last(told.report), max((day.day for day in told.report.days if day.had), default=0)
    return [(day, _share(told.report, day)) for day in dict.fromkeys((last // 2, last)) if 0 < day <= furthest]


def _last(found: ProgrammeReport) -> int:
    """The last day that has a session."""
    return max((day.day for day in found.days), default=0)


def _share(found: ProgrammeReport, day: int) -> str:
    step = found.staying.at(day)
    if step is None:  # nobody has left yet: as if those who came so far were all (own choice)
        there = sum(1 for stay in found.stays if stay >= day)
        return f"{percent(1, 1)} ({percent(*wilson(there, there))})"
    return f"{percent(step.share, step.share)} ({percent(step.low, step.high)})"


def worst_days(found: ProgrammeReport) -> list[DayReport]:
    """The days to look at: where surely most had it again, had it lighter, were hurt or left."""
    return _worst(found.days, lambda day: [day.repeated, day.eased, day.hurt, day.left_there])


def worst_movements(found: ProgrammeReport) -> list[MovementReport]:
    """The movements to look at: those that surely were left out or replaced for most."""
    return _worst(found.movements, lambda movement: [movement.barred, movement.easier, movement.gone])


def _worst(found: Sequence[Found], counts: Callable[[Found], Sequence[Count]]) -> list[Found]:
    def surely(one: Found) -> float:
        return max((count.interval[0] for count in counts(one) if count.count >= LEAST), default=0.0)

    return [one for one in sorted(found, key=surely, reverse=True)[:TO_LOOK_AT] if surely(one) > 0]


def _day(words: Words, day: DayReport) -> dict[str, object]:
    _ = words.gettext
    named = (
        (_("again for {count}"), day.repeated),
        (_("lighter for {count}"), day.eased),
        (_("hurt {count}"), day.hurt),
        (_("left there: {count}"), day.left_there),
    )
    return {"day": day.day, "said": _named(words, named)}


def _movement(words: Words, programme: Programme, movement: MovementReport) -> dict[str, object]:
    _ = words.gettext
    named = (
        (_("barred for {count}"), movement.barred),
        (_("easier for {count}"), movement.easier),
        (_("left out for {count}"), movement.gone),
    )
    return {"name": programme.catalogue()[movement.movement].name, "said": _named(words, named)}


def _named(words: Words, named: Sequence[tuple[str, Count]]) -> str:
    of = words.gettext("{count} of {of}")
    return ", ".join(
        text.format(count=of.format(count=count.count, of=count.of)) for text, count in named if count.count >= LEAST
    )


def _error(words: Words, error: GroupError) -> dict[str, object]:
    measure, found = MEASURES[error.measure], error.found
    name, side = words.gettext(measure.name), side_words(error.side, gettext=words.gettext).lower()

    def said(value: float) -> str:
        return f"{words.number(value_in(value, measure.unit, words.units), 1)} {words.unit(measure.unit)}"

    return {
        "name": f"{name}, {side}" if side else name,
        "people": error.people,
        "tries": found.tries if found else 0,
        "error": said(found.error) if found else "",
        "smallest": said(found.smallest_change) if found else "",
        "agreement": words.number(found.agreement, 2) if found else "",
        "counted": said(ALONE * measure.mdc),
    }


# --- as a curve -----------------------------------------------------------------------------------------------------


def chart(words: Words, told: Told) -> Staying:
    """Who stays, day by day."""
    found = told.report
    note = words.gettext("{count} people have begun").format(count=found.begun)
    return Staying(
        days=_last(found),
        until=max(found.stays, default=0),
        drops=tuple(Drop(step.time, step.share, step.low, step.high) for step in found.staying.steps),
        still=found.on_days,
        stays=found.stays,
        words=staying_words(words, words.gettext("Who stays: {title}").format(title=found.title), note),
    )


# --- as a page ------------------------------------------------------------------------------------------------------


def page(words: Words, told: Told) -> str:
    """One HTML page for paper of A4 and for a phone, the curve inside, without scripts or addresses."""
    found = told.report
    titles = {day.number: day.title or "" for day in told.programme.days}
    return words.page(
        "programme_report.html",
        r=found,
        past=_past(told),
        days=[(day, titles[day.day], [_cell(getattr(day, name)) for name in OF_DAY]) for day in found.days],
        day_names=_day_names(words),
        movements=list(_movement_rows(told)),
        movement_names=_movement_names(words),
        errors=[_error(words, error) for error in told.errors],
        enough=ENOUGH,
        before=told.before,
        before_past=[(day, _share(told.before, day)) for day, _share_now in _past(told)] if told.before else [],
        changed=told.changed,
        chart=inline(staying_svg(chart(words, told)), words.gettext("Who stays; the numbers are in the tables.")),
    )


def _movement_rows(told: Told) -> Iterator[tuple[str, list[dict[str, str]]]]:
    catalogue = told.programme.catalogue()
    for movement in told.report.movements:
        yield catalogue[movement.movement].name, [_cell(getattr(movement, name)) for name in OF_MOVEMENT]


def _cell(count: Count) -> dict[str, str]:
    """A count with its interval; nothing of nobody."""
    if not count.of:
        return {"count": "–", "interval": "", "small": ""}
    small = "few" if count.is_small else ""
    return {"count": f"{count.count}/{count.of}", "interval": percent(*count.interval), "small": small}


def _day_names(words: Words) -> list[str]:
    _ = words.gettext
    return [_("Done"), _("In part"), _("Not done"), _("No answer"), _("Again"), _("Lighter"), _("Hurt"), _("Left")]


def _movement_names(words: Words) -> list[str]:
    _ = words.gettext
    return [_("Barred"), _("Easier instead"), _("Left out"), _("As written")]
