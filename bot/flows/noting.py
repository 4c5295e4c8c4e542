"""What was noted of a row's answer, what is still asked of it, and what follows from it, as messages."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from markupsafe import Markup

from bot.flows.showing import session, ways_into_test
from bot.words import Words
from bot.words.checkin import ask, first_buttons, fix_button, lead_button, numbers
from bot.words.facts import facts
from bot.words.message import ON_PHONE, Button, Message, Rows, column, joined
from db.bodies import NO_FIT, Pairs
from db.schema import LedgerRow
from plans.checkin import CheckIn, Kind
from plans.course import Decision
from plans.dose import movement_names
from plans.fitting import Fit
from plans.ledger import Entry, RowKind
from plans.programme import Programme
from plans.questions import open_question
from plans.rules import Verdict
from plans.talk import next_ask


def noted(
    words: Words,
    programme: Programme,
    pairs: Pairs,
    follows: Decision,
    when: date,
    *,
    waiting: bool,
    fit: Fit = NO_FIT,
    usual: int = 0,
) -> Message:
    """What was noted of a row, the next question or what follows `when` and why, and a way to correct it."""
    row, entry = pairs[-1]
    said = entry.checkin
    if waiting or next_ask(said) is not None:
        return noted_late(words, row.id, said, waiting=waiting)
    line = words.say("checkin.noted", facts=facts(said, gettext=words.gettext))
    if said.completion is None and entry.kind is RowKind.SESSION:
        softened = words.say("checkin.softened") if row.level else None
        shown = session(words, programme, pairs, fit, why=False)
        tests = ways_into_test(words, programme, pairs)
        rows = tests + first_buttons(words, row.id)[:-1] + lead_button(words, row.id) + fix_button(words, row.id)
        return replace(shown, text=joined(line, softened, shown.text), rows=rows)
    if said.completion is None:
        off = words.say("checkin.off_today") if entry.kind is RowKind.REST else None
        return Message(joined(line, off), fix_button(words, row.id))
    coming = _coming(words, entry, follows, when)
    tail = words.say("checkin.asked_first") if open_question([entry], usual=usual) is not None else None
    if said.kind is Kind.NERVE and entry.kind is RowKind.SESSION:
        which, buttons = _which_movement(words, programme, row, fit)
        return Message(joined(line, coming, tail, which), buttons + fix_button(words, row.id))
    tight = words.say("checkin.ask_tightness") if said.tightness is None else None
    rows = numbers(f"c:{row.id}:tight", 0) if tight else ()
    return Message(joined(line, coming, tail, tight), rows + fix_button(words, row.id))


def noted_late(words: Words, row: int, said: CheckIn, *, waiting: bool) -> Message:
    """What was noted of a row that hands nothing out any more, and what is still missing of it."""
    line = words.say("checkin.noted", facts=facts(said, gettext=words.gettext))
    missing = next_ask(said)
    if missing is not None:
        text, rows = ask(words, row, missing, said)
        return Message(joined(line, text), rows)
    return Message(joined(line, words.say("checkin.held") if waiting else None))


def _which_movement(words: Words, programme: Programme, row: LedgerRow, fit: Fit) -> tuple[Markup, Rows]:
    """In which movement a nerve spoke, as an offer; or what is left out since."""
    movements = movement_names(programme.day(row.day or 1))
    left_out = [name for key, name in movements.items() if key in fit.barred]
    if left_out:
        return words.say("checkin.left_out", names=left_out), ()
    rows = column(*(Button(name[:ON_PHONE], f"c:{row.id}:bar:{n}") for n, name in enumerate(movements.values())))
    return words.say("checkin.which_movement"), rows


def _coming(words: Words, entry: Entry, follows: Decision, when: date) -> Markup:
    facts = {
        "when": words.gettext("Tomorrow") if (when - entry.on).days == 1 else words.weekday(when),
        "kind": follows.kind,
        "day": follows.day,
        "then": follows.position.day,
        "level": follows.position.level,
        "prescribed": follows.prescribed,
        "again": follows.day == entry.day and follows.verdict is not Verdict.ADVANCE,
    }
    return words.say("checkin.coming", d=facts, reason=follows.reason, f=follows.facts)
