"""A client's answer: what it changes, what it shows, whom it reaches. It acts when the next row is made, or at once
where it makes things more cautious."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields, replace

from bot.flows import day, telling
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.cards import picture_of_words
from bot.words.checkin import ask, caution
from bot.words.message import Message
from db import bodies, courses, measures
from db.courses import CourseState
from db.schema import Course, LedgerRow, Person
from plans import course as way
from plans.checkin import CheckIn, Completion, FlagState, Kind, Why
from plans.course import Decision
from plans.dose import items
from plans.fitting import things
from plans.ledger import RowKind
from plans.past import Past
from plans.rules import Evidence, Settings, Verdict, Vote, votes
from plans.shortening import counted
from plans.talk import Ask, answered, next_ask
from plans.track import lighter

FIRST = {
    "some": Completion.DONE,
    "part": Completion.PART,
    "none": Completion.NONE,
}


async def tap(desk: Desk, person: Person, row_id: int, action: str, value: str) -> str:
    """One tap under a day's message. Returns the words to show for a moment; raises NotAllowed."""
    row, course = await own(desk, person, row_id)
    before = await courses.said_of(desk.session, row)
    if action == "fix":
        await _fix(desk, person, course, row, before)
        return ""
    if action in ("bar", "lacks"):
        await (_bar if action == "bar" else _lacks)(desk, person, course, row, value)
        return ""
    try:
        after = _after_tap(before, action, value)
    except ValueError as error:
        raise NotAllowed("checkin.not_yours") from error
    await change(desk, person, course, row, before, after)
    return ""


async def _bar(desk: Desk, person: Person, course: Course, row: LedgerRow, value: str) -> None:
    """Leaves a movement of the day out from now on. Raises NotAllowed for another number."""
    programme = await desk.programme_of(course, row)
    session = programme.day(row.day).session if row.day is not None else None
    keys = list(dict.fromkeys(item.movement.key for _block, item in items(session)))
    if not value.isdecimal() or int(value) >= len(keys):
        raise NotAllowed("checkin.not_yours")
    course.barred = sorted({*(course.barred or ()), keys[int(value)]})
    await note(desk, person, row, [("barred", keys[int(value)])])
    await show_again(desk, person, course, row)


async def _lacks(desk: Desk, person: Person, course: Course, row: LedgerRow, value: str) -> None:
    """A thing that is not at hand today. Raises NotAllowed for another number."""
    programme = await desk.programme_of(course, row)
    needed = things(programme.day(row.day)) if row.day is not None and row.kind == RowKind.SESSION else ()
    if not value.isdecimal() or int(value) >= len(needed):
        raise NotAllowed("checkin.not_yours")
    await do_without(desk, person, course, row, needed[int(value)].name)


async def do_without(desk: Desk, person: Person, course: Course, row: LedgerRow, thing: str) -> None:
    """Changes today's session so that it needs no such thing."""
    row.lacks = sorted({*(row.lacks or ()), thing})
    await note(desk, person, row, [("lacks", thing)])
    await show_again(desk, person, course, row)


def _after_tap(before: CheckIn, action: str, value: str) -> CheckIn:
    if action == "all":
        earlier = before.pain if before.odd or _is_confirmed(before) else None
        return replace(before, completion=Completion.DONE, pain=earlier if earlier is not None else 0)
    if action in FIRST:
        return replace(
            before, completion=FIRST[action], pain=before.pain if before.odd or _is_confirmed(before) else None
        )
    if action == "odd":
        return replace(before, odd=True)
    if action == "tight":
        return replace(before, tightness=answered(CheckIn(), Ask.PAIN, value).pain)
    if action == Ask.FLAG and before.flag_state is not FlagState.UNSURE:
        raise ValueError("no such question is open")
    after = answered(before, Ask(action), value)
    if action == Ask.PAIN and _is_confirmed(before):
        return replace(after, pain=max(before.pain or 0, after.pain or 0))
    return after


def _is_confirmed(said: CheckIn) -> bool:
    return said.flag is not None and said.flag_state is FlagState.CONFIRMED


async def own(desk: Desk, person: Person, row_id: int) -> tuple[LedgerRow, Course]:
    """The row and its running course, both this person's own; anything else is refused."""
    row = await desk.session.get(LedgerRow, row_id)
    if row is None or row.person_id != person.id:
        raise NotAllowed("checkin.not_yours")
    course = await courses.locked(desk.session, row.course_id)
    if course is None or course.state not in (CourseState.ACTIVE, CourseState.WAITING):
        raise NotAllowed("checkin.not_yours")
    return row, course


async def _fix(desk: Desk, person: Person, course: Course, row: LedgerRow, before: CheckIn) -> None:
    """Takes an answer back, as long as the next row is not made; never a confirmed flag or a referral.

    Whoever was ill by this answer is so no longer; any other pause stays.
    """
    last = await courses.last_row(desk.session, course)
    if last is None or last.id != row.id or course.state == CourseState.WAITING or _is_confirmed(before):
        raise NotAllowed("checkin.too_late_to_fix")
    if any(vote.verdict is Verdict.REFER for vote in await _fresh_votes(desk, course, row, CheckIn(), before)):
        raise NotAllowed("checkin.too_late_to_fix")
    if course.paused == "ill" and before.why is Why.ILL:
        course.paused = course.back_on = None
    kept = CheckIn(flag=before.flag, flag_state=before.flag_state)
    await _write(desk, person, row, before, kept)
    await show_again(desk, person, course, row)


async def change(
    desk: Desk,
    person: Person,
    course: Course,
    row: LedgerRow,
    before: CheckIn,
    after: CheckIn,
    *,
    quote: str | None = None,
) -> None:
    """Stores a changed check-in, acts on what it makes more cautious, and shows what is next."""
    after = await in_time(desk, course, row, after)
    if after == before:
        return
    fresh = await hear(desk, person, course, row, before, after, quote)
    newest = await courses.last_row(desk.session, course)
    if newest is None:
        raise LookupError(f"course {course.id} has an answer but no row")
    is_ill = after.why is Why.ILL and after.completion is Completion.NONE
    if is_ill and newest.id == row.id and course.paused != day.PAUSED_BY_COACH:
        course.paused, course.back_on = "ill", None
    if any(vote.verdict is Verdict.REFER for vote in fresh):
        await refer(desk, person, course, after)
    elif newest.kind == RowKind.ASKING:
        await _answer_question(desk, person, course, newest, fresh if before.pain is not None else ())
        return
    elif newest.id != row.id:
        in_steps = next_ask(before) is not None
        given = await _fresh_votes(desk, course, row, CheckIn(), after) if in_steps else fresh
        await _late(desk, person, course, row, newest, given)
        return
    else:
        await _soften(desk, course, row, before, after)
    await show_again(desk, person, course, row)


async def hear(
    desk: Desk, person: Person, course: Course, row: LedgerRow, before: CheckIn, after: CheckIn, quote: str | None
) -> list[Vote]:
    """Stores a changed check-in and tells the coach of the votes that are new with it, which it returns."""
    await measures.close(desk.session, course, desk.now)
    await _write(desk, person, row, before, after, quote)
    fresh = await _fresh_votes(desk, course, row, before, after)
    await telling.tell(desk, course, fresh, row=row, said=after, quote=quote)
    await _tell_of_denial(desk, course, row, before, after)
    return fresh


async def in_time(desk: Desk, course: Course, row: LedgerRow, said: CheckIn) -> CheckIn:
    """What is said of a session, also of one that was cut to the client's minutes."""
    if row.minutes is None or row.day is None:
        return said
    programme = await desk.programme_of(course, row)
    fit = bodies.fit_of(course, row, await courses.history(desk.session, course))
    short, whole = (bodies.handed_out(programme, row, one) for one in (fit, replace(fit, minutes=None)))
    return counted(said, whole, short)


async def _write(
    desk: Desk, person: Person, row: LedgerRow, before: CheckIn, after: CheckIn, quote: str | None = None
) -> None:
    stored = await courses.checkin_row(desk.session, row, desk.now)
    courses.write_checkin(stored, after, desk.now)
    said = [
        (name.name, str(getattr(after, name.name)))
        for name in fields(CheckIn)
        if getattr(after, name.name) != getattr(before, name.name)
    ]
    if quote is not None:
        said.append(("words", quote[:WORDS_KEPT]))
    await note(desk, person, row, said)


WORDS_KEPT = 1000
"""Characters of a client's own words that stay with the answer that was read from them."""


async def note(desk: Desk, person: Person, row: LedgerRow | None, said: list[tuple[str, str]]) -> None:
    """Keeps the facts of one answer as they came, under the update that brought them."""
    if desk.update_id is not None:
        await courses.note_answer(
            desk.session, update_id=desk.update_id, person=person, row=row, said=said, now=desk.now
        )


async def _fresh_votes(desk: Desk, course: Course, row: LedgerRow, before: CheckIn, after: CheckIn) -> list[Vote]:
    """The votes of this answer that the earlier one did not call for; a mere maybe is asked back first."""
    settings = (await desk.programme(course)).settings
    rows = await courses.history(desk.session, course)
    usual = bodies.usual_of(course)
    past = Past.of((entry for r, entry in rows if r.local_date < row.local_date), settings, usual)
    earlier, now = (acting_votes(said, settings, past.had_nerve_signs, usual) for said in (before, after))
    return [vote for vote in now if vote not in earlier]


def acting_votes(said: CheckIn, settings: Settings, nerve_before: bool, usual: int) -> list[Vote]:
    """The votes of an answer as far as it goes: what is still asked back has none."""
    asked_back = {"unsure-flag", "nerve-signs"} if next_ask(said) is not None else {"unsure-flag"}
    given = votes(Evidence(said, nerve_before=nerve_before, usual=usual, settings=settings))
    return [vote for vote in given if vote.rule not in asked_back]


async def _tell_of_denial(desk: Desk, course: Course, row: LedgerRow, before: CheckIn, after: CheckIn) -> None:
    denied = before.flag_state is FlagState.UNSURE and after.flag_state is FlagState.DENIED
    if denied and after.kind is not Kind.NERVE:
        await telling.tell_of(
            desk, course, cause="flag-denied", at_once=False, row=row, facts={"flag": str(after.flag)}
        )


async def refer(desk: Desk, person: Person, course: Course, said: CheckIn) -> None:
    """Stops the course until the coach lets it go on; nothing that is not done yet stays handed out."""
    await day.hold(desk, person, course)
    await desk.say(person, caution(desk.words(person), said))


async def _answer_question(
    desk: Desk, person: Person, course: Course, newest: LedgerRow, risen: Sequence[Vote]
) -> None:
    """Fills the row that waited for this answer; a further question keeps it open.

    `risen` are the new votes of a pain that was there before: what rests does so whatever else is open.
    """
    await _take_buttons(desk, person, newest)
    await day.fill(desk, person, course, newest, held_by=risen)


async def _take_buttons(desk: Desk, person: Person, row: LedgerRow) -> None:
    if row.outbox_id is not None:
        words = desk.words(person)
        await desk.edit(person, Message(words.say("checkin.thanks")), row.outbox_id)


async def _late(
    desk: Desk, person: Person, course: Course, row: LedgerRow, newest: LedgerRow, given: list[Vote]
) -> None:
    """An answer for an older day: kept, counted, and acting only where it is more cautious.

    `given` are its new votes; all of them once an answer in steps is whole.
    """
    words = desk.words(person)
    said = await courses.said_of(desk.session, row)
    missing = next_ask(said)
    [(_row, entry, _at)] = await courses.histories(desk.session, LedgerRow.id == newest.id)
    untouched = entry.checkin == CheckIn()
    is_session = untouched and newest.kind == RowKind.SESSION
    is_test = untouched and newest.kind == RowKind.MEASURE and not entry.recorded
    rests, eases = (any(vote.verdict is verdict for vote in given) for verdict in (Verdict.REST, Verdict.EASE))
    if missing is not None:
        text, buttons = ask(words, row.id, missing, said)
        await desk.say(person, Message(text, buttons))
    elif rests and (is_session or is_test):
        courses.fill_row(newest, course, day.off(course, given))
        await day.show(desk, person, course, newest)
    elif is_session and (newest.decision or {}).get("reason") == "unanswered" and said.pain is not None:
        await day.remake(desk, person, course, newest)
    elif is_session and eases:
        courses.fill_row(newest, course, _lighter(course, newest, given))
        await day.show(desk, person, course, newest)
    else:
        await desk.say(person, Message(words.say("checkin.late", day=words.weekday(row.local_date))))


def _lighter(course: Course, row: LedgerRow, given: list[Vote]) -> Decision:
    """The lighter version of a session that is handed out."""
    reason = next(vote.rule for vote in given if vote.verdict is Verdict.EASE)
    position = lighter(courses.position_of(course))
    votes = tuple(given)
    return Decision(RowKind.SESSION, position, day=row.day, verdict=Verdict.EASE, votes=votes, reason=reason)


async def _soften(desk: Desk, course: Course, row: LedgerRow, before: CheckIn, after: CheckIn) -> None:
    """What a report before the session, or the test, does to what is already handed out; a test is never lighter."""
    if (
        row.kind not in (RowKind.SESSION, RowKind.MEASURE)
        or after.completion is not None
        or next_ask(after) is not None
    ):
        return
    settings = (await desk.programme(course)).settings
    position = courses.position_of(course)
    now = way.soften_today(after, position, settings, bodies.usual_of(course))
    is_whole = next_ask(before) is None
    earlier = way.soften_today(before, position, settings, bodies.usual_of(course)) if is_whole else None
    if now is None or now.kind is RowKind.WAITING or (earlier and earlier.verdict == now.verdict):
        return
    if row.kind == RowKind.MEASURE:
        [(_row, entry, _at)] = await courses.histories(desk.session, LedgerRow.id == row.id)
        if now.kind is not RowKind.REST or entry.recorded:
            return
    courses.fill_row(row, course, now._replace(day=row.day))


async def show_again(desk: Desk, person: Person, course: Course, row: LedgerRow) -> None:
    """Shows the row as it stands now: in its own message, or in a new one when that is not there yet."""
    message = await day.message_of(desk, person, course, row)
    if row.picture is not None and row.kind not in (RowKind.SESSION, RowKind.MEASURE):
        message = replace(message, picture=picture_of_words(desk.words(person).gettext("No session now")))
    if row.outbox_id is None or desk.typed or not message.shows_in(row.picture):
        await day.put(desk, person, row, message)
    else:
        await day.change(desk, person, row, message)
