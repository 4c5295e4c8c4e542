"""Rows of the ledger as messages: words and buttons from plain values, no database."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from markupsafe import Markup

from bot.words import Words
from bot.words.cards import session_picture
from bot.words.checkin import (
    area_words,
    ask,
    first_buttons,
    fix_button,
    flag_question,
    lead_button,
    numbers,
    odd_button,
)
from bot.words.doses import headline, link_words, session_lines
from bot.words.measured import ways_in
from bot.words.message import ON_PHONE, Button, Message, Rows, column, joined
from db.bodies import NO_FIT, Pairs, handed_out
from db.schema import LedgerRow
from plans.checkin import Area, CheckIn
from plans.dose import minutes
from plans.fitting import Fit, stands, things
from plans.ledger import Entry, Question, RowKind
from plans.measures import MEASURES
from plans.pace import pace_of
from plans.past import Past
from plans.programme import Day, MeasureTask, Programme
from plans.questions import open_question
from plans.replay import facts_of
from plans.rules import Settings
from plans.talk import Ask, next_ask
from plans.units import in_units


def day(words: Words, programme: Programme, pairs: Pairs, fit: Fit = NO_FIT, follows: date | None = None) -> Message:
    """A day that is handed out: what to do, why when it is not simply the next day, and the buttons.

    `follows` is the course's next training date; the programme's own when it is not given.
    """
    row, entry = pairs[-1]
    missing = _still_missing(words, pairs)
    if entry.kind is RowKind.OFF:
        when = follows or pace_of(programme, row.local_date).next_training(row.local_date)
        return Message(words.say("day.off", when=words.weekday(when)), odd_button(words, row.id))
    if entry.kind is RowKind.REST:
        return Message(_rest(words, programme, pairs), odd_button(words, row.id))
    shown = session(words, programme, pairs, fit)
    tests = ways_into_test(words, programme, pairs)
    if entry.kind is RowKind.MEASURE:
        return replace(shown, rows=tests + odd_button(words, row.id))
    others = lead_button(words, row.id) + _without_buttons(words, programme, row, fit)
    rows = tests + first_buttons(words, row.id) + others + missing.rows
    return replace(shown, text=joined(shown.text, missing.text), rows=rows)


def preview(words: Words, programme: Programme, number: int, *, level: int = 0) -> Message:
    """A day exactly as a client gets it who comes to it in the ordinary way. Raises LookupError for another number."""
    planned = programme.day(number)
    kind = RowKind(planned.kind)
    row = LedgerRow(id=0, kind=kind, day=number, level=level, decision={"reason": "clean"})
    return day(words, programme, [(row, Entry(date.min, kind, day=number, level=level))])


def session(words: Words, programme: Programme, pairs: Pairs, fit: Fit, *, why: bool = True) -> Message:
    """A day's picture and words, without buttons."""
    row, _entry = pairs[-1]
    day = in_units(handed_out(programme, row, fit), words.units)
    planned = programme.day(row.day or 1)
    nothing = day.session is None and planned.session is not None
    if day.session is not None and _is_tested(pairs):
        day = replace(day, measure=None)
    told = None if _is_tested(pairs) or day.measure is None else _test(words, day.measure, alone=not planned.session)
    caution = words.say("day.caution")
    text = words.say(
        "day.session",
        headline=headline(day, gettext=words.gettext),
        why=_why(words, pairs) if why else None,
        lines=session_lines(day, gettext=words.gettext) if day.session else [],
        level=row.level if day.session else 0,
        caution=caution,
        special=day.caution,
        support=fit.older and stands(day),
        spared=None if fit.spares in (None, Area.OTHER) else area_words(fit.spares, words),
        lacks=[programme.say(name) for name in fit.lacks],
        minutes=_cut_to(programme, row, fit, day),
        nothing=nothing,
        measure=told,
        text=day.text,
        link=link_words(day, gettext=words.gettext),
    )
    return Message(text, picture=session_picture(day, str(caution), words.units, gettext=words.gettext))


def _is_tested(pairs: Pairs) -> bool:
    """Whether the test of the last row's day has been taken, on that date or when the day came before."""
    day = pairs[-1][1].day
    return any(entry.recorded and entry.day == day for _row, entry in pairs)


def ways_into_test(words: Words, programme: Programme, pairs: Pairs) -> Rows:
    """How the day's test is begun; nothing for a day without one, and when it has been taken."""
    test = programme.day(pairs[-1][0].day or 1).measure
    return ways_in(test.measure, gettext=words.gettext) if test is not None and not _is_tested(pairs) else ()


def _test(words: Words, test: MeasureTask, *, alone: bool) -> Markup:
    measure = MEASURES[test.measure]
    _ = words.gettext
    facts = {"name": _(measure.name), "how": _(measure.how), "trials": test.trials + measure.practice}
    return words.say("day.measure", warm_up=test.warm_up, alone=alone, **facts)


def _cut_to(programme: Programme, row: LedgerRow, fit: Fit, day: Day) -> int | None:
    """The minutes that a cut session takes; None for one from which nothing was cut."""
    if fit.minutes is None or day == handed_out(programme, row, replace(fit, minutes=None)):
        return None
    return minutes(day)[1]


def _without_buttons(words: Words, programme: Programme, row: LedgerRow, fit: Fit) -> Rows:
    """What can be said of things that are not at hand today, one button each."""
    wanted = things(handed_out(programme, row, fit))
    everything = things(programme.day(row.day or 1))
    label = words.gettext("No {thing} here today")
    numbered = [(everything.index(thing), thing) for thing in wanted if thing in everything]
    return column(
        *(
            Button(label.format(thing=programme.say(thing.name))[:ON_PHONE], f"c:{row.id}:lacks:{n}")
            for n, thing in numbered[:MOST]
        )
    )


MOST = 2
"""Buttons for things that are not at hand."""


def _rest(words: Words, programme: Programme, pairs: Pairs) -> Markup:
    row, _entry = pairs[-1]
    planned = programme.day(row.day) if row.day is not None else None
    is_rest = planned is not None and planned.kind == "rest"
    title = headline(planned, gettext=words.gettext) if planned and is_rest else words.say("day.day_off")
    text = planned.text if planned and is_rest and planned.text else words.say("day.day_off_text")
    return words.say("day.rest", headline=title, why=_why(words, pairs), text=text)


def _why(words: Words, pairs: Pairs) -> Markup | None:
    """Why this day, said only when it is not simply the next one."""
    row, entry = pairs[-1]
    decision = row.decision or {}
    if decision.get("reason") in ("clean", "start", "rest-over", "measured", None):
        return None
    before = [e.day for _r, e in pairs[:-1] if e.kind in (RowKind.SESSION, RowKind.MEASURE)]
    again = bool(before) and before[-1] == entry.day
    rest = entry.kind is RowKind.REST
    return words.say("day.why", again=again, rest=rest, reason=decision["reason"], f=facts_of(decision)) or None


def _still_missing(words: Words, pairs: Pairs) -> Message:
    """The pain number of the session before, asked once more in the same message as the repeated day."""
    row, _entry = pairs[-1]
    if (row.decision or {}).get("reason") != "unanswered":
        return Message(Markup())
    source = next((r for r, e in reversed(pairs[:-1]) if e.kind is RowKind.SESSION), None)
    if source is None:
        return Message(Markup())
    return Message(words.say("day.pain_still_missing"), numbers(f"c:{source.id}:pain", 0))


def question(words: Words, pairs: Pairs, usual: int = 0) -> Message:
    """A morning's question, asked before anything is handed out."""
    row, _entry = pairs[-1]
    asked = open_question([entry for _r, entry in pairs], asked_on=row.local_date, usual=usual)
    source, said = source_of(pairs, usual)
    if asked is Question.FLAG:
        return Message(*flag_question(words, source.id, said))
    if asked is Question.PAIN and said.odd:
        text, rows = ask(words, source.id, next_ask(said) or Ask.PAIN, said)
        return Message(joined(words.say("day.report_unfinished"), text), rows)
    if asked is Question.PAIN:
        return Message(words.say("day.pain_missing"), numbers(f"c:{source.id}:pain", 0))
    _ = words.gettext
    answers = column(
        Button(_("Settled"), f"m:{row.id}:settled"),
        Button(_("About the same"), f"m:{row.id}:same"),
        Button(_("Worse"), f"m:{row.id}:worse"),
    )
    return Message(words.say("day.how_now", pain=said.pain), answers)


def source_of(pairs: Pairs, usual: int = 0) -> tuple[LedgerRow, CheckIn]:
    """The row whose answer an open morning question is about. Raises LookupError when there is none."""
    source = Past.of((entry for _row, entry in pairs), Settings(), usual).source
    for row, entry in pairs:
        if source is not None and entry.on == source.on:
            return row, entry.checkin
    raise LookupError("no row that a question could be about")


def paused(words: Words, course: int, why: str, row: int | None = None, *, back_on: date | None = None) -> Message:
    """What somebody who is ill or away sees until they say that they go on; `row` can still be corrected."""
    label = words.gettext("Well again") if why == "ill" else words.gettext("Go on")
    own = () if why == "coach" else ((Button(label, f"well:{course}"),),)
    rows = (*own, *(fix_button(words, row) if row is not None else ()))
    until = words.long_date(back_on) if back_on else None
    return Message(words.say("day.paused", why=why, until=until), rows)
