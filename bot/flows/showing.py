"""Rows of the ledger as messages: words and buttons from plain values, no database."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import replace
from datetime import date

from markupsafe import Markup

from bot.words import Words
from bot.words.cards import session_picture
from bot.words.doses import headline, link_words, session_lines
from bot.words.facts import facts
from bot.words.measured import ways_in
from bot.words.message import ON_PHONE, Button, Message, Rows, column, joined
from db.schema import LedgerRow
from plans.checkin import Area, CheckIn, Flag, Kind, Place
from plans.course import Decision
from plans.dose import items, minutes
from plans.fitting import Fit, fitted, stands, things
from plans.ledger import Entry, Question, RowKind
from plans.measures import MEASURES
from plans.pace import pace_of
from plans.programme import Day, MeasureTask, Programme
from plans.questions import open_question
from plans.rules import Verdict
from plans.talk import Ask, next_ask
from plans.units import in_units

NO_FIT = Fit()
Pairs = Sequence[tuple[LedgerRow, Entry]]
"""A course's rows, oldest first, each beside what the rules see of it; the last is the one to show."""


def day(words: Words, programme: Programme, pairs: Pairs, fit: Fit = NO_FIT, follows: date | None = None) -> Message:
    """A day that is handed out: what to do, why when it is not simply the next day, and the buttons.

    `follows` is the course's next training date; the programme's own when it is not given.
    """
    row, entry = pairs[-1]
    missing = _still_missing(words, pairs)
    if entry.kind is RowKind.OFF:
        when = follows or pace_of(programme, row.local_date).next_training(row.local_date)
        return Message(words.say("day.off", when=words.weekday(when)), _odd_button(words, row.id))
    if entry.kind is RowKind.REST:
        return Message(_rest(words, programme, pairs), _odd_button(words, row.id))
    session = _session(words, programme, pairs, fit)
    tests = _ways_into_test(words, programme, pairs)
    if entry.kind is RowKind.MEASURE:
        return replace(session, rows=tests + _odd_button(words, row.id))
    others = _lead_button(words, row.id) + _without_buttons(words, programme, row, fit)
    rows = tests + first_buttons(words, row.id) + others + missing.rows
    return replace(session, text=joined(session.text, missing.text), rows=rows)


def preview(words: Words, programme: Programme, number: int, *, level: int = 0) -> Message:
    """A day exactly as a client gets it who comes to it in the ordinary way. Raises LookupError for another number."""
    planned = programme.day(number)
    kind = RowKind(planned.kind)
    row = LedgerRow(id=0, kind=kind, day=number, level=level, decision={"reason": "clean"})
    return day(words, programme, [(row, Entry(date.min, kind, day=number, level=level))])


def handed_out(programme: Programme, row: LedgerRow, fit: Fit) -> Day:
    """The day of a row as its client gets it: eased, and as it fits them. Raises ValueError for a row without one."""
    if row.day is None:
        raise ValueError(f"ledger row {row.id} of kind {row.kind} has no day")
    return fitted(programme.day(row.day), row.level, fit, programme.catalogue(), programme.ages, programme.muscles)


def area_that_hurts(pairs: Pairs) -> Area | None:
    """Where a client's newest answer says that it hurts, when that is not where the programme works."""
    said = next((entry.checkin for _row, entry in reversed(pairs) if entry.checkin != CheckIn()), CheckIn())
    return said.area if said.place is Place.ELSEWHERE and said.pain != 0 else None


def _session(words: Words, programme: Programme, pairs: Pairs, fit: Fit, *, why: bool = True) -> Message:
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


def _ways_into_test(words: Words, programme: Programme, pairs: Pairs) -> Rows:
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


def area_words(area: Area | None, words: Words) -> str:
    """An area of the body as people name it."""
    return _areas(words).get(area or Area.OTHER, "")


def _areas(words: Words) -> dict[Area, str]:
    _ = words.gettext
    return {
        Area.NECK: _("neck"),
        Area.SHOULDER: _("shoulder"),
        Area.ARM: _("arm, wrist or hand"),
        Area.UPPER_BACK: _("upper back or chest"),
        Area.LOWER_BACK: _("lower back"),
        Area.HIP: _("hip or groin"),
        Area.THIGH: _("thigh"),
        Area.KNEE: _("knee"),
        Area.CALF_OR_FOOT: _("calf, ankle or foot"),
        Area.OTHER: _("another place"),
    }


def _ask_area(words: Words, row: int) -> tuple[Markup, Rows]:
    buttons = [Button(name, f"c:{row}:area:{area}") for area, name in _areas(words).items()]
    return words.say("checkin.ask_area"), tuple(tuple(buttons[n : n + 2]) for n in range(0, len(buttons), 2))


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


def facts_of(decision: Mapping[str, object] | None) -> dict[str, object]:
    """The numbers behind the reason of a stored decision."""
    decision = decision or {}
    votes = decision.get("votes")
    found = [v for v in votes if v["rule"] == decision.get("reason")] if isinstance(votes, list) else []
    return dict(found[0]["facts"]) if found else {}


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
    source, said = source_of(pairs)
    if asked is Question.FLAG:
        return Message(*_flag_question(words, source.id, said))
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


def source_of(pairs: Pairs) -> tuple[LedgerRow, CheckIn]:
    """The row whose answer an open morning question is about. Raises LookupError when there is none."""
    for row, entry in reversed(pairs):
        if entry.kind is not RowKind.ASKING and (entry.kind is RowKind.SESSION or entry.checkin != CheckIn()):
            return row, entry.checkin
    raise LookupError("no row that a question could be about")


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
    missing = next_ask(said)
    line = words.say("checkin.noted", facts=facts(said, gettext=words.gettext))
    if missing is not None:
        text, rows = ask(words, row.id, missing, said)
        return Message(joined(line, text), rows)
    if waiting:
        return Message(joined(line, words.say("checkin.held")))
    if said.completion is None and entry.kind is RowKind.SESSION:
        softened = words.say("checkin.softened") if row.level else None
        session = _session(words, programme, pairs, fit, why=False)
        tests = _ways_into_test(words, programme, pairs)
        rows = tests + first_buttons(words, row.id)[:-1] + _lead_button(words, row.id) + _fix(words, row.id)
        return replace(session, text=joined(line, softened, session.text), rows=rows)
    if said.completion is None:
        off = words.say("checkin.off_today") if entry.kind is RowKind.REST else None
        return Message(joined(line, off), _fix(words, row.id))
    tail = words.say("checkin.asked_first") if open_question([entry], usual=usual) is not None else None
    if said.kind is Kind.NERVE and entry.kind is RowKind.SESSION:
        which, buttons = _which_movement(words, programme, row, fit)
        return Message(joined(line, _coming(words, entry, follows, when), tail, which), buttons + _fix(words, row.id))
    tight = words.say("checkin.ask_tightness") if said.tightness is None else None
    rows = numbers(f"c:{row.id}:tight", 0) if tight else ()
    return Message(joined(line, _coming(words, entry, follows, when), tail, tight), rows + _fix(words, row.id))


def _which_movement(words: Words, programme: Programme, row: LedgerRow, fit: Fit) -> tuple[Markup, Rows]:
    """In which movement a nerve spoke, as an offer; or what is left out since."""
    movements = {item.movement.key: item.movement.name for _b, item in items(programme.day(row.day or 1).session)}
    left_out = [name for key, name in movements.items() if key in fit.barred]
    if left_out:
        return words.say("checkin.left_out", names=left_out), ()
    rows = column(*(Button(name[:ON_PHONE], f"c:{row.id}:bar:{n}") for n, name in enumerate(movements.values())))
    return words.say("checkin.which_movement"), rows


def noted_late(words: Words, row: int, said: CheckIn, *, waiting: bool) -> Message:
    """What was noted of a row that hands nothing out any more, and what is still missing of it."""
    line = words.say("checkin.noted", facts=facts(said, gettext=words.gettext))
    missing = next_ask(said)
    if missing is not None:
        text, rows = ask(words, row, missing, said)
        return Message(joined(line, text), rows)
    return Message(joined(line, words.say("checkin.held") if waiting else None))


def paused(words: Words, course: int, why: str, row: int | None = None, *, back_on: date | None = None) -> Message:
    """What somebody who is ill or away sees until they say that they go on; `row` can still be corrected."""
    label = words.gettext("Well again") if why == "ill" else words.gettext("Go on")
    own = () if why == "coach" else ((Button(label, f"well:{course}"),),)
    rows = (*own, *(_fix(words, row) if row is not None else ()))
    until = words.long_date(back_on) if back_on else None
    return Message(words.say("day.paused", why=why, until=until), rows)


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


# --- buttons --------------------------------------------------------------------------------------------------------


def first_buttons(words: Words, row: int, *, verb: str = "c") -> Rows:
    """The five ways to say how a session went; `verb` says under which of its messages they stand."""
    _ = words.gettext
    return (
        (Button(_("All done, no pain"), f"{verb}:{row}:all"),),
        (Button(_("Done, some pain"), f"{verb}:{row}:some"), Button(_("Part of it"), f"{verb}:{row}:part")),
        (Button(_("Not today"), f"{verb}:{row}:none"),),
        *_odd_button(words, row, verb),
    )


def _odd_button(words: Words, row: int, verb: str = "c") -> Rows:
    return ((Button(words.gettext("Sore, pain or something odd"), f"{verb}:{row}:odd"),),)


def _lead_button(words: Words, row: int) -> Rows:
    return ((Button(words.gettext("Lead me step by step"), f"lead:{row}:begin"),),)


def _fix(words: Words, row: int) -> Rows:
    return ((Button(words.gettext("Change this answer"), f"c:{row}:fix"),),)


def _yes_no(words: Words, row: int) -> Rows:
    _ = words.gettext
    return column(Button(_("Yes, that is so"), f"c:{row}:flag:yes"), Button(_("No"), f"c:{row}:flag:no"))


def numbers(prefix: str, first: int) -> Rows:
    """Plain numbers from `first` to 10 in two rows."""
    row = [Button(str(n), f"{prefix}:{n}") for n in range(first, 11)]
    return tuple(row[:5]), tuple(row[5:])


def ask(words: Words, row: int, missing: Ask, said: CheckIn) -> tuple[Markup, Rows]:
    """One question of the check-in and its buttons."""
    if missing is Ask.FLAG:
        return _flag_question(words, row, said)
    return _ASKS[missing](words, row)


def _ask_pain(words: Words, row: int) -> tuple[Markup, Rows]:
    none = Button(words.gettext("No pain after all"), f"c:{row}:pain:0")
    return words.say("checkin.ask_pain"), (*numbers(f"c:{row}:pain", 1), (none,))


def _ask_half(words: Words, row: int) -> tuple[Markup, Rows]:
    _ = words.gettext
    rows = column(Button(_("Less than half"), f"c:{row}:half:no"), Button(_("Half or more"), f"c:{row}:half:yes"))
    return words.say("checkin.ask_half"), rows


def _ask_why(words: Words, row: int) -> tuple[Markup, Rows]:
    _ = words.gettext
    pairs = (
        (_("No time"), "time"),
        (_("Too hard"), "too-hard"),
        (_("Sore or in pain"), "pain"),
        (_("Ill"), "ill"),
        (_("Something else"), "other"),
    )
    return words.say("checkin.ask_why"), column(*(Button(label, f"c:{row}:why:{key}") for label, key in pairs))


def _ask_kind(words: Words, row: int) -> tuple[Markup, Rows]:
    _ = words.gettext
    pairs = (
        (_("Dull, on both sides"), Kind.DULL_BOTH),
        (_("Dull, on one side"), Kind.DULL_ONE),
        (_("Sharp or sudden"), Kind.SHARP),
        (_("Numb, tingling or shooting"), Kind.NERVE),
        (_("Pop, bruise, swelling, no weight on it"), Kind.POP),
        (_("Something else"), Kind.OTHER),
    )
    return words.say("checkin.ask_kind"), column(*(Button(label, f"c:{row}:kind:{key}") for label, key in pairs))


def _ask_place(words: Words, row: int) -> tuple[Markup, Rows]:
    _ = words.gettext
    rows = (
        (Button(_("Where we stretch, left"), f"c:{row}:place:here-left"),),
        (Button(_("Where we stretch, right"), f"c:{row}:place:here-right"),),
        (Button(_("Where we stretch, both sides"), f"c:{row}:place:here-both"),),
        (Button(_("Somewhere else"), f"c:{row}:place:elsewhere"),),
    )
    return words.say("checkin.ask_place"), rows


def _flag_question(words: Words, row: int, said: CheckIn) -> tuple[Markup, Rows]:
    name = "day.nerve_question" if said.kind is Kind.NERVE else "day.flag_question"
    return words.say(name), _yes_no(words, row)


_ASKS: dict[Ask, Callable[[Words, int], tuple[Markup, Rows]]] = {
    Ask.PAIN: _ask_pain,
    Ask.HALF: _ask_half,
    Ask.WHY: _ask_why,
    Ask.KIND: _ask_kind,
    Ask.PLACE: _ask_place,
    Ask.AREA: _ask_area,
}


def caution(words: Words, said: CheckIn) -> Message:
    """The text that comes with a referral: stop, whom to see, how soon; never a diagnosis."""
    level = said.flag if said.flag is not None else _level_of(said)
    return Message(words.say("checkin.caution", level=str(level), told=True))


def _level_of(said: CheckIn) -> Flag:
    grave = said.kind in (Kind.SHARP, Kind.POP) or (said.pain or 0) >= 8
    return Flag.SAME_DAY if grave and said.kind is not Kind.NERVE else Flag.CLINICIAN
