"""The page of one client: where they stand and why, the last two weeks, and what their coach may do."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from bot.flows import deciding, overruling, photos, progress, steering, times
from bot.flows.asking import turn_away
from bot.flows.desk import Desk
from bot.flows.rights import own_course
from bot.words import Words
from bot.words.charts import verdict_words
from bot.words.facts import facts
from bot.words.message import Button, Message, Rows
from db import alerts, courses
from db.courses import CourseState
from db.schema import Alert, Coach, Course, LedgerRow, Person, ProgrammeVersion
from plans.ledger import Entry
from plans.localtime import local
from plans.overruling import Word
from plans.replay import facts_of

DATES = 14
"""Dates on the page."""
QUOTES, QUOTED = 4, 160
"""Answers in a client's own words on the page, and how many characters of each."""
NOTES = 3


async def client_page(desk: Desk, person: Person, coach: Coach, course_id: int) -> None:
    """Where a client stands and why, the last two weeks, and what the coach may do."""
    course = await own_course(desk, coach, course_id)
    turn_away(person)
    client = await desk.session.get_one(Person, course.person_id)
    pairs = await courses.history(desk.session, course)
    words = desk.words(person)
    if pairs:
        two_weeks = progress.fortnight(words, await desk.programme(course), course, pairs, client.label)
        await desk.say(person, Message(words.say("coach.two_weeks", label=client.label), picture=two_weeks))
    version = await desk.session.get_one(ProgrammeVersion, course.version_id)
    text = words.say(
        "page.client",
        c=_state(course, client) | {"title": version.title, "all": len((await desk.programme(course)).days)},
        **await _next(desk, course, words),
        alerts=[_open(words, client, alert) for alert in await alerts.open_of(desk.session, course)],
        said=await _own_words(desk, client, course, words),
        tests=await progress.tests_said(desk, course, words),
        notes=[_dated(words, client, note.at, note.text) for note in (await steering.notes_of(desk, course))[:NOTES]],
        rows=[_row_line(words, row, entry) for row, entry in pairs[-DATES:]],
    )
    actions = await _actions(desk, words, course)
    if course.state in steering.RUNNING and coach.person_id == person.id:
        actions = (*actions, (Button(words.gettext("Hand over"), f"handover:{course.id}"),))
    await desk.say(person, Message(text, actions))


def _state(course: Course, client: Person) -> dict[str, object]:
    return {
        "label": client.label,
        "state": course.state,
        "day": course.day,
        "level": course.level,
        "paused": course.paused is not None,
        "goes_over": course.next_version_id is not None,
        "unreachable": client.unreachable_since is not None,
    }


async def _next(desk: Desk, course: Course, words: Words) -> dict[str, object]:
    """What comes next and why, and whether that is the coach's own word."""
    if course.state != CourseState.ACTIVE or course.paused is not None:
        return {"coming": None, "why": None, "word": False}
    at = await overruling.standing(desk, course)
    coming, found = await overruling.comes(desk, at, words)
    word = await deciding.pending(desk, course)
    return {"coming": coming, "why": overruling.because(words, found), "word": word is not None}


async def _own_words(desk: Desk, client: Person, course: Course, words: Words) -> list[dict[str, object]]:
    """The newest answers of this course in the client's own words, the newest first."""
    found = await courses.own_words(desk.session, course, QUOTES)
    return [_dated(words, client, answer.at, answer.value) for answer in found]


def _dated(words: Words, client: Person, at: datetime, text: str) -> dict[str, object]:
    on = local(at, times.zone_of(client)).date()
    return {"date": words.short_date(on), "text": text if len(text) <= QUOTED else f"{text[: QUOTED - 1]}…"}


async def show_photos(desk: Desk, person: Person, coach: Coach, course_id: int) -> None:
    """A client's first and last photo side by side."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    await photos.show(desk, person, client, course)


async def every_reason(desk: Desk, person: Person, coach: Coach, course_id: int) -> None:
    """Every vote behind the last two weeks, with its numbers."""
    course = await own_course(desk, coach, course_id)
    client = await desk.session.get_one(Person, course.person_id)
    words = desk.words(person)
    pairs = (await courses.history(desk.session, course))[-DATES:]
    lines = [
        {"date": words.weekday_and_date(row.local_date), "what": _what(words, row, entry), **_votes(words, row)}
        for row, entry in pairs
        if row.decision
    ]
    await desk.say(person, Message(words.say("page.reasons_of", label=client.label, rows=lines)))


def _votes(words: Words, row: LedgerRow) -> dict[str, object]:
    """The verdict behind a row and the votes for it, in words; a row without a verdict has its kind to say."""
    decision, names = row.decision or {}, {verdict.word: name for verdict, name in verdict_words(words).items()}
    votes = [vote | {"verdict": names.get(vote.get("verdict"))} for vote in decision.get("votes") or ()]
    return {"verdict": names.get(str(decision.get("verdict"))), "votes": votes}


def _row_line(words: Words, row: LedgerRow, entry: Entry) -> dict[str, object]:
    reason = (row.decision or {}).get("reason")
    said = facts(entry.checkin, gettext=words.gettext)
    morning = words.say("page.morning", answer=entry.morning) if entry.morning else ""
    plain = reason in (None, "clean", "start", "rest-over", "measured", "off", "away", "waiting")
    return {
        "date": words.weekday_and_date(row.local_date),
        "what": _what(words, row, entry),
        "said": ", ".join(part for part in (morning, said) if part),
        "why": "" if plain else _why(words, reason, row),
    }


def _why(words: Words, reason: str | None, row: LedgerRow) -> str:
    """Why a date had what it had. What is "not done yet" for the next row was not done before this one."""
    if reason in ("no-vote", "not-done"):
        return words.gettext("not done before")
    return words.say("ruling.why", reason=reason, f=facts_of(row.decision))


def _what(words: Words, row: LedgerRow, entry: Entry) -> str:
    return words.say("page.date", kind=entry.kind, day=row.day, level=row.level)


def _open(words: Words, client: Person, alert: Alert) -> dict[str, object]:
    since = words.short_date(local(alert.opened_at, times.zone_of(client)).date())
    return {"cause": alert.cause, "facts": alert.facts, "events": alert.events, "since": since}


async def _actions(desk: Desk, words: Words, course: Course) -> Rows:
    """The buttons under a client's page, two in a row."""
    _ = words.gettext
    number = course.id
    found = list(_for_the_next_row(words, course))
    word = await deciding.pending(desk, course)
    if word is not None and course.state == CourseState.ACTIVE:
        found.insert(0, Button(_("Take your word back"), f"undo:{word.id}"))
    if course.state in steering.RUNNING:
        found.append(Button(_("Message"), f"steer:{number}:message"))
        found.append(Button(_("Time of day"), f"steer:{number}:time"))
    found.append(Button(_("Note for myself"), f"steer:{number}:note"))
    found.append(Button(_("Dose by week"), f"doses:{number}"))
    found.append(Button(_("Every reason"), f"reasons:{number}"))
    found.append(Button(_("Files"), f"export:{number}:menu"))
    if await photos.taken(desk, course):
        found.append(Button(_("Photos"), f"photos:{number}"))
    if course.state in steering.RUNNING:
        found.append(Button(_("End the course"), f"rule:{number}:{Word.FINISH}"))
    return tuple(tuple(found[n : n + 2]) for n in range(0, len(found), 2))


def _for_the_next_row(words: Words, course: Course) -> Iterator[Button]:
    _ = words.gettext
    number = course.id
    if course.state == CourseState.WAITING:
        yield Button(_("Let go on"), f"go:{number}")
        return
    if course.state != CourseState.ACTIVE:
        return
    if course.paused is not None:
        yield Button(_("Open again"), f"steer:{number}:resume")
        return
    yield Button(_("Repeat the day"), f"rule:{number}:{Word.REPEAT}")
    yield Button(_("Ease the day"), f"rule:{number}:{Word.EASE}")
    if course.level:
        yield Button(_("A level fuller"), f"rule:{number}:{Word.CLIMB}")
    yield Button(_("A day off"), f"rule:{number}:{Word.REST}")
    yield Button(_("Another day"), f"rule:{number}:{Word.MOVE}")
    yield Button(_("Pause"), f"steer:{number}:pause")
    yield Button(_("Leave a movement out"), f"bar:{number}:list")
