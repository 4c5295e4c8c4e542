"""A coach's word for a client's next row: shown beforehand, noted, taken back until the row is made."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, timedelta

from sqlalchemy import update

from bot.flows import deciding, finishing, times
from bot.flows.asking import Asked, close, open_for
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, own_course
from bot.words import Words
from bot.words.message import Button, Message, Rows, column
from db import alerts, bodies, courses
from db.courses import CourseState
from db.schema import Answer, Coach, Course, Overrule, Person
from plans.course import Decision, Overruling, Word
from plans.heavier import More, more_of, movements_of
from plans.ledger import Entry, RowKind
from plans.past import Past
from plans.programme import Programme
from plans.replay import facts_of
from plans.rules import Verdict

TAPPED = frozenset({Word.REPEAT, Word.EASE, Word.CLIMB, Word.REST, Word.MOVE, Word.FINISH})
"""Words that a coach has buttons for."""
NEAR = 3
"""Days before and after the one in hand that are offered as buttons."""


@dataclass(frozen=True, slots=True)
class Standing:
    """A client's course as it stands before the next row."""

    course: Course
    client: Person
    programme: Programme
    past: list[Entry]
    last: date
    """The date of the newest row, or the one before the first."""

    @property
    def when(self) -> date:
        """The next training date."""
        return deciding.pace_on(self.programme, self.course, self.last).next_training(self.last)


async def standing(desk: Desk, course: Course) -> Standing:
    """Reads what a coach's word would act on."""
    client = await desk.session.get_one(Person, course.person_id)
    past = [entry for _row, entry in await courses.history(desk.session, course)]
    first = course.starts_on or times.today(client, desk.now)
    last = past[-1].on if past else first - timedelta(days=1)
    return Standing(course, client, await desk.next_programme(course), past, last)


async def comes(desk: Desk, at: Standing, words: Words) -> tuple[dict[str, object], Decision]:
    """What the next training date brings as things stand, for `ruling.coming`, and the decision."""
    found = await deciding.ahead(desk, at.course, at.programme, at.past, at.last)
    return coming(at, found, words), found


def coming(at: Standing, found: Decision, words: Words) -> dict[str, object]:
    """A decision as `ruling.coming` says it."""
    return {
        "when": words.long_date(at.when),
        "kind": found.kind,
        "day": found.day,
        "then": min(found.position.day, len(at.programme.days)),
        "level": found.position.level,
        "prescribed": found.prescribed,
    }


async def tapped(
    desk: Desk, person: Person, coach: Coach, course_id: int, what: str, number: str = "", seen: str = ""
) -> None:
    """One button for a client's next row: shows what it would do, or does it. Raises NotAllowed for a strange one.

    `number` is the day of a move; `seen` the client's last answer when the coach was shown what it would do, or for an
    end at once how the course stood.
    """
    course = await own_course(desk, coach, course_id)
    at = await standing(desk, course)
    words = desk.words(person)
    if what not in TAPPED or course.state not in (CourseState.ACTIVE, CourseState.WAITING):
        raise NotAllowed("coach.cannot_rule")
    word = Word(what)
    if word is Word.FINISH and (course.state == CourseState.WAITING or course.paused is not None):
        await _end_now(desk, person, at, seen)
        return
    if course.state != CourseState.ACTIVE:
        raise NotAllowed("coach.cannot_rule")
    refused = _refusal(at, word, words)
    if refused is not None:
        await desk.say(person, refused)
        return
    if word is Word.MOVE and not number:
        open_for(person, Asked.DAY, course.id)
        await desk.say(person, _which_day(at, words))
        return
    to = _day(at.programme, number) if word is Word.MOVE else None
    if not seen.isdecimal():
        await _show_before(desk, person, at, word, to)
    else:
        await _note(desk, person, at, word, to, seen)


def _refusal(at: Standing, word: Word, words: Words) -> Message | None:
    """Why a word has nothing to act on; None when it has."""
    waited = bool(at.past) and at.past[-1].kind is RowKind.WAITING
    if word is Word.CLIMB and (at.course.level == 0 or waited):
        return Message(words.say("ruling.no_climb", label=at.client.label))
    if word is Word.MOVE and at.programme.pace == "together":
        return Message(words.say("ruling.no_move", label=at.client.label))
    return None


def _day(programme: Programme, number: str) -> int:
    if not number.isdecimal() or not 1 <= int(number) <= len(programme.days):
        raise NotAllowed("checkin.not_yours")
    return int(number)


def _which_day(at: Standing, words: Words) -> Message:
    here, count = min(at.course.day, len(at.programme.days)), len(at.programme.days)
    near = [n for n in range(here - NEAR, here + NEAR + 1) if 1 <= n <= count]
    buttons = tuple(Button(str(n), f"rule:{at.course.id}:{Word.MOVE}:{n}") for n in near)
    return Message(words.say("ruling.which_day", label=at.client.label, day=here, all=count), (buttons,))


async def type_day(desk: Desk, person: Person, coach: Coach, course_id: int, text: str) -> None:
    """A typed day of the programme."""
    course = await own_course(desk, coach, course_id)
    count = len((await desk.next_programme(course)).days)
    number = text.strip().lower().removeprefix("day").strip()
    if not number.isdecimal() or not 1 <= int(number) <= count:
        await desk.say(person, Message(desk.words(person).say("ruling.no_such_day", all=count)))
        return
    close(person, Asked.DAY)
    await tapped(desk, person, coach, course_id, Word.MOVE, number)


# --- before -----------------------------------------------------------------------------------------------------------


async def _show_before(desk: Desk, person: Person, at: Standing, word: Word, to: int | None) -> None:
    """What comes as things stand, what would come with the word, and in what that is heavier."""
    words = desk.words(person)
    now, found = await comes(desk, at, words)
    then = await _with(desk, at, Overruling(word, day=to))
    notes = _notes(at, word, found, then)
    more = _more(at, then) if word in (Word.MOVE, Word.CLIMB) else None
    facts = {"now": now, "then": coming(at, then, words), "what": word, "notes": notes}
    text = words.say("ruling.before", label=at.client.label, more=more, **facts)
    _ = words.gettext
    seen = await courses.last_answer_id(desk.session, at.course) or 0
    yes = Button(_("Yes, do this"), f"rule:{at.course.id}:{word}:{to or 0}:{seen}")
    await desk.say(person, Message(text, column(yes, Button(_("Leave it"), f"client:{at.course.id}"))))


async def _with(desk: Desk, at: Standing, overruling: Overruling) -> Decision:
    """What a word would bring, on top of a letting go that has not been applied yet."""
    said = await deciding.word_of(desk, at.course)
    whole = Overruling(overruling.word, overruling.newer, overruling.day, let_go=said is not None and said.goes_on)
    return deciding.what_if(at.course, at.programme, at.past, at.last, whole)


def _notes(at: Standing, word: Word, now: Decision, then: Decision) -> frozenset[str]:
    alone = deciding.what_if(at.course, at.programme, at.past, at.last, None)
    verdict = then.verdict if then.verdict is not None else Verdict.ADVANCE
    bolder = alone.verdict is not None and verdict < alone.verdict
    beaten = bolder or (word is Word.MOVE and alone.kind is RowKind.REST and alone.prescribed)
    found = {
        "same": now[:4] == then[:4],
        "past": beaten,
        "end": word is Word.FINISH,
    }
    return frozenset(name for name, holds in found.items() if holds)


def _more(at: Standing, then: Decision) -> More | None:
    """In what the day to come is heavier than what was last done clean; None when it is not."""
    if then.day is None:
        return None
    past = Past.of(at.past, at.programme.settings, bodies.usual_of(at.course))
    done = [at.programme.day(number) for number in past.known if number <= len(at.programme.days)]
    known = {key for one in done for key in movements_of(one)}
    clean = [at.programme.day(number) for number in past.clean_days if number <= len(at.programme.days)]
    found = more_of(at.programme.day(then.day), clean, known)
    return found if found.is_any and past.last is not None else None


# --- done and undone --------------------------------------------------------------------------------------------------


async def _note(desk: Desk, person: Person, at: Standing, word: Word, to: int | None, seen: str) -> None:
    """Keeps the word for the next row in the place of an earlier one."""
    words = desk.words(person)
    await withdraw(desk, at.course)
    row = Overrule(course_id=at.course.id, what=word, day=to, at=desk.now)
    row.seen_answer_id = await _answer_seen(desk, at.course, seen)
    desk.session.add(row)
    await desk.session.flush()
    then, _found = await comes(desk, at, words)
    undo = Button(words.gettext("Take it back"), f"undo:{row.id}")
    text = words.say("ruling.done", label=at.client.label, then=then)
    await desk.say(person, Message(text, column(undo, _back(words, at.course))))


async def _answer_seen(desk: Desk, course: Course, seen: str) -> int | None:
    """The client's answer that the coach had seen; none for a number that is no answer of theirs."""
    found = await desk.session.get(Answer, int(seen)) if seen.isdecimal() and len(seen) <= 15 else None
    return found.id if found is not None and found.person_id == course.person_id else None


async def withdraw(desk: Desk, course: Course) -> None:
    """Takes back what was said for the next row; letting go stays."""
    await desk.session.execute(
        update(Overrule)
        .where(
            Overrule.course_id == course.id,
            Overrule.applied_on.is_(None),
            Overrule.withdrawn_at.is_(None),
            Overrule.what != Word.GO_ON,
        )
        .values(withdrawn_at=desk.now)
    )


async def course_of(desk: Desk, overrule_id: int) -> int:
    """The number of the course that a word is for; 0 where there is no such word."""
    row = await desk.session.get(Overrule, overrule_id)
    return row.course_id if row is not None else 0


async def undo(desk: Desk, person: Person, coach: Coach, overrule_id: int) -> None:
    """Takes a word back as long as the row that it is for is not made. Raises NotAllowed."""
    row = await desk.session.get(Overrule, overrule_id)
    if row is None:
        raise NotAllowed("checkin.not_yours")
    course = await own_course(desk, coach, row.course_id)
    await desk.session.refresh(row)
    if row.applied_on is not None or row.withdrawn_at is not None or row.what == Word.GO_ON:
        raise NotAllowed("ruling.too_late")
    row.withdrawn_at = desk.now
    await desk.session.flush()
    words, at = desk.words(person), await standing(desk, course)
    now, _found = await comes(desk, at, words)
    text = words.say("ruling.undone", label=at.client.label, now=now)
    await desk.say(person, Message(text, column(_back(words, course))))


def _back(words: Words, course: Course) -> Button:
    return Button(words.gettext("Their page"), f"client:{course.id}")


async def _end_now(desk: Desk, person: Person, at: Standing, seen: str) -> None:
    """Ends a course to which nothing is sent anyway, after one yes to how it stands."""
    words, course = desk.words(person), at.course
    stands = f"{course.state}-{await alerts.told_so_far(desk.session, course)}"
    if seen != stands:
        yes = Button(words.gettext("Yes, end it"), f"rule:{course.id}:{Word.FINISH}:0:{stands}")
        rows: Rows = column(yes, Button(words.gettext("Leave it"), f"client:{course.id}"))
        await desk.say(person, Message(words.say("ruling.end_now", label=at.client.label), rows))
        return
    await withdraw(desk, course)
    await alerts.close_all(desk.session, course, desk.now)
    await finishing.finish(desk, at.client, course, ended_by=person)


def because(words: Words, found: Decision) -> str:
    """Why a date brings what it brings, for the coach."""
    facts = found.facts or (facts_of(found.as_json()) if found.votes else {})
    return str(words.say("ruling.why", reason=found.reason, f=facts))
