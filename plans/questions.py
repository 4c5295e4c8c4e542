"""What must be asked before a date's day is handed out."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date

from plans.checkin import FlagState, Morning
from plans.heard import Heard
from plans.ledger import Entry, Question, RowKind
from plans.past import Past
from plans.rules import Settings


def open_question(history: Iterable[Entry], *, asked_on: date | None = None, usual: int = 0) -> Question | None:
    """The question that a history leaves open; see `question_of`."""
    return question_of(Past.of(history, Settings(), usual), asked_on=asked_on)


def question_of(past: Past, *, asked_on: date | None) -> Question | None:
    """What must be asked before the next row is handed out; `asked_on` is the date whose morning it would be.

    An unsure flag comes first, then what is missing of a report (asked on one morning only), then "how is it now?".
    """
    source, heard = past.source, past.heard
    if source is None or not heard.opens:
        return None
    if heard.said.flag_state is FlagState.UNSURE:
        return Question.FLAG
    if _is_unfinished(source, heard) and all(on == asked_on for on in past.asked_on):
        return Question.PAIN
    if not heard.hurts:
        return None
    settled = any(said is Morning.SETTLED or on == asked_on for on, said in past.mornings)
    return None if settled else Question.MORNING


def _is_unfinished(entry: Entry, heard: Heard) -> bool:
    """Done without a pain number, or "something odd" without its kind or number."""
    said = heard.said
    if said.odd and (said.kind is None or said.pain is None):
        return True
    return heard.done and entry.kind is RowKind.SESSION and said.pain is None
