"""One local date of one course: its row is made once, shown, and filled by the answer to its morning question."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from bot.flows import deciding, evening, finishing, moving, noting, showing, telling, times
from bot.flows.desk import Desk
from bot.words import Words
from bot.words.message import Button, Message, column
from db import bodies, courses, due, measures, outbox
from db.courses import CourseState
from db.delivery import Kind
from db.schema import Course, LedgerRow, Person
from plans import localtime
from plans.checkin import FlagState, Morning
from plans.course import Decision
from plans.ledger import Entry, Question, RowKind
from plans.rules import Tell, Verdict, Vote
from plans.silence import Voice, silent_mornings, voice
from plans.talk import is_begun, next_ask
from plans.track import lighter

PAUSED_BY_COACH = "coach"
"""Why a course is paused that its coach has paused: only the coach ends that."""

RUNNING = (CourseState.ACTIVE, CourseState.WAITING)
SEEN_IN_THE_MORNING = frozenset({"morning-after", "lapse", "sore-too-long", "sore-noted", "week-on-week", "stuck"})
"""Rules that look at more than one answer: the coach hears of them when the row is made."""


async def morning(desk: Desk, person_id: int) -> None:
    """The morning tick for one person: makes and sends the next date's row, and plans the one after it.

    A date that passed while nothing ran is made too, one tick after the other; its message is late and not sent.
    """
    person = await desk.session.get_one(Person, person_id)
    course = await courses.open_course(desk.session, person)
    if course is None or course.state == CourseState.JOINING:
        await due.cancel(desk.session, due.DueKind.MORNING, person_id)
        return
    day = await _next_date(desk, person, course)
    if day <= times.today(person, desk.now):
        await make(desk, person, course, day, by_itself=True)
    await plan_next(desk, person, course)


async def _next_date(desk: Desk, person: Person, course: Course) -> date:
    """The first date without a row that this person's zone has."""
    last = await courses.last_row(desk.session, course)
    first = last.local_date + timedelta(days=1) if last else (course.starts_on or times.today(person, desk.now))
    while not localtime.date_exists(first, times.zone_of(person)):
        first += timedelta(days=1)
    return first


async def plan_next(desk: Desk, person: Person, course: Course) -> None:
    """Plans the morning of the first date without a row."""
    if course.state in RUNNING:
        day = await _next_date(desk, person, course)
        await due.plan(desk.session, due.DueKind.MORNING, person.id, times.morning_on(person, day))
    else:
        await due.cancel(desk.session, due.DueKind.MORNING, person.id)


async def plan_morning(desk: Desk, person_id: int) -> None:
    """Plans a person's next morning once more."""
    person = await desk.session.get_one(Person, person_id)
    course = await courses.open_course(desk.session, person)
    if course is not None:
        await plan_next(desk, person, course)


async def after_zone_change(desk: Desk, person: Person, course: Course) -> list[date]:
    """Plans everything by the person's new clock; returns the dates that this clock has left out.

    A date that has its row keeps it: nobody gets two sessions on one date. A date that has passed on the new clock
    without one gets its row, whose message is late, and the same day comes on the next date.
    """
    await plan_next(desk, person, course)
    last = await courses.last_row(desk.session, course)
    if last is None:
        return []
    if await due.planned(desk.session, due.DueKind.NUDGE, last.id):
        await evening.replan_nudge(desk, last.id)
    next_date, today = await _next_date(desk, person, course), times.today(person, desk.now)
    return [next_date + timedelta(days=n) for n in range((today - next_date).days)]


async def today(desk: Desk, person: Person) -> None:
    """Shows the present date's row, making it when the morning has not done so."""
    course = await courses.open_course(desk.session, person)
    words = desk.words(person)
    if course is None or course.state == CourseState.JOINING:
        await desk.say(person, Message(words.say("day.no_course")))
        return
    day = times.today(person, desk.now)
    row = await courses.row_on(desk.session, course, day)
    if row is None and course.starts_on is not None and day < course.starts_on:
        soon = (course.starts_on - day).days < 7
        when = words.weekday(course.starts_on) if soon else words.long_date(course.starts_on)
        await desk.say(person, Message(words.say("day.nothing_yet", when=when)))
    elif row is None:
        await _catch_up(desk, person, course, day)
        if course.state in RUNNING:
            await make(desk, person, course, day, by_itself=False)
        await plan_next(desk, person, course)
    elif course.state == CourseState.WAITING:
        coach = await telling.coach_person(desk, course)
        await desk.say(person, Message(words.say("day.waiting", coach=coach.label)))
    elif course.paused is not None:
        await desk.say(person, pause_message(desk, person, course))
    else:
        await show(desk, person, course, row)


async def _catch_up(desk: Desk, person: Person, course: Course, day: date) -> None:
    """Makes the rows of dates before `day` that nobody looked at, as their mornings would; their messages are late."""
    while course.state in RUNNING and (missed := await _next_date(desk, person, course)) < day:
        await make(desk, person, course, missed, by_itself=True)


async def offer(desk: Desk, person: Person) -> None:
    """At the first contact after a morning that did not bring its day: says how to see it."""
    course = await courses.open_course(desk.session, person)
    if course is None or course.state != CourseState.ACTIVE or course.paused is not None:
        return
    row = await courses.row_on(desk.session, course, times.today(person, desk.now))
    if row is None:
        return
    waits = row.withheld and row.outbox_id is None and row.kind != RowKind.REST
    if not waits and not await courses.went_missing(desk.session, row):
        return
    said = desk.words(person).say("day.waits" if waits else "day.offer")
    await desk.send(person, Message(said), key=f"offer:{person.id}:{row.local_date}", kind=Kind.ANSWER)


async def make(desk: Desk, person: Person, course: Course, day: date, *, by_itself: bool) -> None:
    """Makes the row of one date, once, applies what was decided, and sends what it brings."""
    programme = await desk.programme(course)
    if course.state == CourseState.WAITING:
        waiting = Decision(RowKind.WAITING, courses.position_of(course), reason="waiting")
        await _make_unasked(desk, person, course, waiting, day)
        if not by_itself:
            coach = await telling.coach_person(desk, course)
            await desk.say(person, Message(desk.words(person).say("day.waiting", coach=coach.label)))
        return
    if course.back_on is not None and day >= course.back_on:
        course.paused = course.back_on = None
    if course.paused is not None:
        away = Decision(RowKind.AWAY, courses.position_of(course), reason="away")
        await _make_unasked(desk, person, course, away, day)
        if not by_itself:
            await desk.say(person, pause_message(desk, person, course))
        return
    await measures.close(desk.session, course, desk.now)
    if await moving.at_the_boundary(desk, person, course):
        programme = await desk.programme(course)
    past = [entry for _row, entry in await courses.history(desk.session, course)]
    decision = await deciding.decide(desk, course, programme, past, day)
    if decision.kind is None:
        await finishing.finish(desk, person, course, ended_by=await _coach_who(desk, course, decision))
        return
    row = await courses.make_row(desk.session, course, decision, day=day, zone=times.zone_of(person), now=desk.now)
    row.lacks = deciding.lacking(programme, course, row)
    if not any(entry.day for entry in past):
        await measures.adopt(desk.session, course, row, programme.day(row.day or 1).measure)
    await _tell_of_making(desk, course, past, row, decision)
    if decision.kind is RowKind.WAITING:
        course.state = CourseState.WAITING
        coach = await telling.coach_person(desk, course)
        await desk.say(person, Message(desk.words(person).say("day.waiting", coach=coach.label)))
        return
    if not by_itself:
        await show(desk, person, course, row)
    elif decision.kind is not RowKind.OFF:
        await _greet(desk, person, course, row, past)
    await _plan_evening(desk, person, course, row, past)


async def _make_unasked(desk: Desk, person: Person, course: Course, decision: Decision, day: date) -> None:
    """Makes a row that asks nothing: the coach hears of a sign that was still to be asked back."""
    last = await courses.last_row(desk.session, course)
    row = await courses.make_row(desk.session, course, decision, day=day, zone=times.zone_of(person), now=desk.now)
    if last is not None and (await courses.said_of(desk.session, last)).flag_state is FlagState.UNSURE:
        await _tell_of_unsure_flag(desk, course, row)


async def _tell_of_unsure_flag(desk: Desk, course: Course, row: LedgerRow) -> None:
    facts = {"flag": "unsure"}
    await telling.tell_of(
        desk, course, cause="unsure-flag", at_once=True, row=row, facts=facts, red=True, decided="asked"
    )


async def _greet(desk: Desk, person: Person, course: Course, row: LedgerRow, past: list[Entry]) -> None:
    """What a morning says by itself: the day, or less to somebody who has been silent."""
    said = voice(_silent(person, past), RowKind(row.kind))
    if said is Voice.WHOLE:
        await show(desk, person, course, row, by_itself=True)
    elif said is Voice.NOTHING:
        row.withheld = True
    else:
        tests = (await desk.programme(course)).measures if said is Voice.OFFER else ()
        message = _waits_quietly(desk.words(person), course.id, tests, offer=said is Voice.OFFER)
        await put(desk, person, row, message, by_itself=True)
        if said is Voice.OFFER:
            await telling.tell_of(desk, course, cause="silent", at_once=False, row=row)


def _waits_quietly(words: Words, course: int, tests: tuple[str, ...], *, offer: bool) -> Message:
    """A morning in one line for somebody who has not answered for days; the offer is the test again, or a pause."""
    _ = words.gettext
    shows = Button(_("Show today's"), f"today:{course}")
    if not offer:
        return Message(words.say("day.quiet"), column(shows))
    again = [Button(_("Take the test again"), f"measure:{tests[0]}:how")] if tests else []
    return Message(words.say("day.quiet_week"), column(shows, *again, Button(_("Pause"), f"pause:{course}")))


def _silent(person: Person, past: list[Entry]) -> int:
    """How many mornings in a row nothing was heard."""
    heard = person.heard_at
    return silent_mornings(past, localtime.local(heard, times.zone_of(person)).date() if heard else None)


async def fill(desk: Desk, person: Person, course: Course, row: LedgerRow, *, held_by: Sequence[Vote] = ()) -> None:
    """Hands out the day of a row that was waiting for an answer; the filling is its making.

    In a pause it is a date away. `held_by` are votes of what was said just now; when one of them rests, the date is
    off whatever came before.
    """
    if course.paused is not None:
        await _fill_away(desk, person, course, row)
        return
    programme = await desk.programme(course)
    past = [entry for _row, entry in await courses.history(desk.session, course)]
    decision = await deciding.decide(desk, course, programme, past, row.local_date)
    if decision.kind is None:
        await finishing.finish(desk, person, course, ended_by=await _coach_who(desk, course, decision))
        return
    hands_out = decision.kind in _HANDED_OUT or decision.question is Question.MORNING
    if hands_out and any(vote.verdict is Verdict.REST for vote in held_by):
        decision = off(course, (*held_by, *decision.votes))
    courses.fill_row(row, course, decision)
    row.lacks = deciding.lacking(programme, course, row)
    await _tell_of_making(desk, course, past[:-1], row, decision)
    if decision.kind is RowKind.WAITING:
        course.state = CourseState.WAITING
        return
    await show(desk, person, course, row)
    await _plan_evening(desk, person, course, row, past[:-1])


_HANDED_OUT = frozenset({RowKind.SESSION, RowKind.MEASURE})


def off(course: Course, given: Sequence[Vote]) -> Decision:
    """A date off that the first of the votes that rest gives. Raises StopIteration without one."""
    resting = next(vote for vote in given if vote.verdict is Verdict.REST)
    position = lighter(courses.position_of(course))
    return Decision(RowKind.REST, position, prescribed=True, votes=tuple(given), reason=resting.rule)


async def _fill_away(desk: Desk, person: Person, course: Course, row: LedgerRow) -> None:
    """In a pause nothing follows from the answer yet; the coach hears at once that it was worse."""
    away = Decision(RowKind.AWAY, courses.position_of(course), reason="away")
    courses.fill_row(row, course, away)
    if row.morning == Morning.WORSE:
        await telling.tell_of_worse(desk, course, row)
    await desk.say(person, pause_message(desk, person, course))


async def hold(desk: Desk, person: Person, course: Course) -> LedgerRow | None:
    """Stops a course until its coach lets it go on; nothing that is not done yet stays handed out.

    Returns the newest row.
    """
    course.state = CourseState.WAITING
    await outbox.withdraw(desk.session, person.chat, "waiting")
    newest = await courses.last_row(desk.session, course)
    if newest is not None and newest.kind in (RowKind.SESSION, RowKind.ASKING, RowKind.MEASURE):
        [(_row, entry, _at)] = await courses.histories(desk.session, LedgerRow.id == newest.id)
        done = entry.recorded if entry.kind is RowKind.MEASURE else entry.checkin.completion is not None
        newest.kind = newest.kind if done else RowKind.WAITING
    return newest


def pause_message(desk: Desk, person: Person, course: Course, row: int | None = None) -> Message:
    return showing.paused(desk.words(person), course.id, course.paused or "", row, back_on=course.back_on)


async def remake(desk: Desk, person: Person, course: Course, row: LedgerRow) -> None:
    """Changes a day that was repeated only because a pain number was missing, now that the number is there."""
    programme = await desk.programme(course)
    past = [entry for _row, entry in await courses.history(desk.session, course)]
    decision = await deciding.decide(desk, course, programme, past[:-1], row.local_date, heed=False)
    if decision.kind is None or decision.kind is RowKind.ASKING:
        return
    courses.fill_row(row, course, decision)
    await show(desk, person, course, row)


async def _coach_who(desk: Desk, course: Course, decision: Decision) -> Person | None:
    """The coach, when it was their word that decided."""
    return await telling.coach_person(desk, course) if decision.reason == "coach" else None


async def show(desk: Desk, person: Person, course: Course, row: LedgerRow, *, by_itself: bool = False) -> None:
    """Sends a row's message and remembers it as the one that carries the row's buttons."""
    message = await message_of(desk, person, course, row)
    await put(desk, person, row, message, by_itself=by_itself)


async def put(desk: Desk, person: Person, row: LedgerRow, message: Message, *, by_itself: bool = False) -> None:
    """Sends a message that carries a row's buttons from now on."""
    if by_itself:
        row.outbox_id = await desk.send(
            person,
            message,
            key=f"session:{person.id}:{row.local_date}",
            kind=Kind.SESSION,
            late_after=times.too_late(person, row.local_date),
            skipped="unreachable" if person.unreachable_since is not None else None,
        )
    else:
        if row.outbox_id is not None:
            await outbox.withdraw(desk.session, person.chat, "replaced", row=row.outbox_id)
        row.outbox_id = await desk.say(person, message)
    row.picture = message.picture_digest


async def change(desk: Desk, person: Person, row: LedgerRow, message: Message) -> None:
    """Changes the message that carries a row's buttons; a picture that it shows already is not sent again."""
    digest = message.picture_digest
    if row.outbox_id is not None:
        await desk.edit(person, message.in_words() if digest == row.picture else message, row.outbox_id)
        row.picture = digest or row.picture


async def message_of(desk: Desk, person: Person, course: Course, row: LedgerRow) -> Message:
    """A row as the client sees it: the day, a question, or what was noted of it and what follows.

    Nothing is handed out by it that the row does not hold any more: an older row shows only what was noted.
    """
    pairs = await courses.history(desk.session, course)
    upto = [(r, entry) for r, entry in pairs if r.local_date <= row.local_date]
    said = upto[-1][1].checkin
    words = desk.words(person)
    waiting = course.state == CourseState.WAITING
    if len(upto) < len(pairs):
        return noting.noted_late(words, row.id, said, waiting=waiting)
    if course.paused is not None and next_ask(said) is None:
        return pause_message(desk, person, course, row.id)
    if row.kind == RowKind.ASKING:
        return showing.question(words, upto, bodies.usual_of(course))
    programme = await desk.programme_of(course, row)
    if is_begun(said):
        coming = await desk.next_programme(course)
        follows = await deciding.ahead(desk, course, coming, [entry for _row, entry in pairs], row.local_date)
        when = deciding.pace_on(coming, course, row.local_date).next_training(row.local_date)
        fit, usual = bodies.fit_of(course, row, upto), bodies.usual_of(course)
        return noting.noted(words, programme, upto, follows, when, waiting=waiting, fit=fit, usual=usual)
    if row.kind in (RowKind.WAITING, RowKind.AWAY):
        return noting.noted_late(words, row.id, said, waiting=waiting)
    when = deciding.pace_on(programme, course, row.local_date).next_training(row.local_date)
    return showing.day(words, programme, upto, bodies.fit_of(course, row, upto), when)


async def _tell_of_making(desk: Desk, course: Course, past: list[Entry], row: LedgerRow, decision: Decision) -> None:
    """What the coach hears of when a row is made: the list's votes, the morning's news, an answer that stays away."""
    waits = decision.kind is RowKind.WAITING
    fresh = [v for v in decision.votes if v.rule in SEEN_IN_THE_MORNING or (waits and v.tell is Tell.NOW)]
    await telling.tell(desk, course, fresh, row=row)
    if decision.question is Question.FLAG:
        await _tell_of_unsure_flag(desk, course, row)
    elif decision.kind is RowKind.ASKING and past and past[-1].kind is RowKind.ASKING:
        await telling.tell_of(desk, course, cause="no-answer", at_once=False, row=row)
    if decision.kind is RowKind.SESSION:
        pairs = await courses.history(desk.session, course)
        programme = await desk.programme(course)
        if bodies.handed_out(programme, row, bodies.fit_of(course, row, pairs)).session is None:
            await telling.tell_of(desk, course, cause="nothing-left", at_once=False, row=row)
    unmeasured = [e for e in past[-2:] if e.kind is RowKind.MEASURE and not e.recorded]
    if decision.reason == "not-measured" and len(unmeasured) == 2:
        await telling.tell_of(desk, course, cause="not-measured", at_once=False, row=row)


async def _plan_evening(desk: Desk, person: Person, course: Course, row: LedgerRow, past: list[Entry]) -> None:
    """Plans what the evening may ask; somebody who has been silent is asked nothing."""
    if voice(_silent(person, past), RowKind(row.kind)) is Voice.WHOLE:
        await evening.plan_nudge(desk, person, course, row)
        await evening.plan_things(desk, person, course)
