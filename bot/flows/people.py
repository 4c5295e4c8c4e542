"""The people of a coach as a list: who needs a look first and why, filtered, searched, ten at a time."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import IntEnum

from rapidfuzz import fuzz

from bot.flows import times
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words import Words
from bot.words.facts import facts
from bot.words.message import ON_PHONE, Button, Message, Rows, shortened
from db import roll
from db.courses import CourseState
from db.roll import Listed
from db.schema import Coach, Person
from plans.checkin import CheckIn, Completion

A_PAGE = 10
"""People on one page."""
SILENT = 3
"""Dates without an answer after which somebody needs a look. Our own choice."""
HURTS = 3
"""Pain from which the last answer is worth a look; the rules hold a day back from there too."""
NEAR = 75
"""How like a typed name a person's must be, of 100. Our own choice."""
A_WEEK = 7
LABEL = 28
"""Characters of a programme's title on a button, beside the number of people."""


class Look(IntEnum):
    """Why somebody stands where they do in the list, the most pressing first."""

    WAITING = 0
    ALERT = 1
    HURT = 2
    NOTED = 3
    UNREACHABLE = 4
    SILENT = 5
    FINE = 6
    JOINING = 7
    PAUSED = 8
    FINISHED = 9


STATES = {
    "all": frozenset(Look),
    "look": frozenset(look for look in Look if look <= Look.SILENT),
    "waiting": frozenset({Look.WAITING}),
    "going": frozenset({Look.ALERT, Look.HURT, Look.NOTED, Look.UNREACHABLE, Look.SILENT, Look.FINE}),
    "joining": frozenset({Look.JOINING}),
    "paused": frozenset({Look.PAUSED}),
    "finished": frozenset({Look.FINISHED}),
}
"""What a filter keeps."""


@dataclass(frozen=True, slots=True)
class Seen:
    """One client with the reason for their place in the list."""

    listed: Listed
    look: Look
    silent: int
    """Dates since the last answer, or since the start."""

    @property
    def order(self) -> tuple[int, int, str]:
        """Sorts: the most pressing first, then the worst pain and the longest silence, then by name."""
        worst = self.silent if self.look is Look.SILENT else self.listed.said.pain or 0
        return self.look, -worst, self.listed.person.label.lower()


@dataclass(frozen=True, slots=True)
class Filter:
    """Which of a coach's people: by state, and by programme (the number of one of its versions; 0 is any)."""

    state: str = "all"
    programme: int = 0


def seen(listed: Listed, today: date) -> Seen:
    """A client with the reason for their place."""
    since = listed.said_on or listed.course.starts_on
    silent = (today - since).days if since is not None else 0
    return Seen(listed, _look(listed, today, silent), silent)


def _look(listed: Listed, today: date, silent: int) -> Look:
    course = listed.course
    if course.state == CourseState.WAITING:
        return Look.WAITING
    if course.state == CourseState.JOINING:
        return Look.JOINING
    if course.state == CourseState.FINISHED:
        return Look.FINISHED
    if any(alert.at_once for alert in listed.alerts):
        return Look.ALERT
    if course.paused is not None:
        return Look.PAUSED
    if listed.said_on is not None and (today - listed.said_on).days < 7 and (listed.said.pain or 0) >= HURTS:
        return Look.HURT
    if listed.person.unreachable_since is not None:
        return Look.UNREACHABLE
    if listed.alerts:
        return Look.NOTED
    return Look.SILENT if silent >= SILENT else Look.FINE


async def people_of(desk: Desk, person: Person, coach: Coach) -> list[Seen]:
    """All of a coach's people, whoever needs a look first."""
    today = times.today(person, desk.now)
    return sorted((seen(one, today) for one in await roll.listed(desk.session, coach)), key=lambda one: one.order)


def chosen(everybody: Sequence[Seen], wanted: Filter) -> list[Seen]:
    """Those whom a filter keeps."""
    title = _titles(everybody).get(wanted.programme)
    return [
        one
        for one in everybody
        if one.look in STATES[wanted.state] and (wanted.programme == 0 or one.listed.title == title)
    ]


def _titles(everybody: Sequence[Seen]) -> dict[int, str]:
    """The programmes that people are on: a title by the lowest number of its versions."""
    first: dict[str, int] = {}
    for one in everybody:
        number = one.listed.course.version_id
        first[one.listed.title] = min(number, first.get(one.listed.title, number))
    return {number: title for title, number in sorted(first.items(), key=lambda item: item[1])}


def read_filter(state: str, programme: str) -> Filter:
    """The filter of a button's data. Raises NotAllowed for another one."""
    if state not in STATES or not programme.isdecimal() or len(programme) > 15:
        raise NotAllowed("checkin.not_yours")
    return Filter(state, int(programme))


async def show(desk: Desk, person: Person, coach: Coach, wanted: str = "") -> None:
    """/people: the first page; with a name the people who are meant."""
    everybody = await people_of(desk, person, coach)
    words = desk.words(person)
    name = " ".join(wanted.split())[:60]
    if not name:
        await desk.say(person, page(words, person, coach, everybody, Filter(), 1))
        return
    found = _named(everybody, name)
    lines = [_line(words, one) for one in found[:A_PAGE]]
    text = words.say("people.found", name=name, items=lines, more=max(0, len(found) - A_PAGE))
    await desk.say(person, Message(text, _doors(found[:A_PAGE])))


def _named(everybody: Sequence[Seen], name: str) -> list[Seen]:
    """Whose name begins with what was typed, else has it in it, else is like it."""
    plain = name.lower()
    for fits in (
        lambda label: label.startswith(plain),
        lambda label: plain in label,
        lambda label: fuzz.ratio(plain, label) >= NEAR,
    ):
        found = [one for one in everybody if fits(one.listed.person.label.lower())]
        if found:
            return found
    return []


async def turn(desk: Desk, person: Person, coach: Coach, words_: Sequence[str]) -> None:
    """Another page or filter, in the same message. Raises NotAllowed for a button that is none of ours."""
    number, state, programme = (*words_, "", "", "")[:3]
    wanted = read_filter(state, programme)
    if not number.isdecimal() or len(number) > 5:
        raise NotAllowed("checkin.not_yours")
    everybody = await people_of(desk, person, coach)
    await desk.change_tapped(person, page(desk.words(person), person, coach, everybody, wanted, int(number)))


def page(words: Words, reader: Person, coach: Coach, everybody: Sequence[Seen], wanted: Filter, number: int) -> Message:
    """One page of the list: ten lines, a button to each person, next and back, and the filters.

    Only the coach themselves can write to all of them.
    """
    found = chosen(everybody, wanted)
    pages = max(1, -(-len(found) // A_PAGE))
    number = min(max(number, 1), pages)
    shown = found[(number - 1) * A_PAGE : number * A_PAGE]
    text = words.say(
        "people.page",
        items=[_line(words, one) for one in shown],
        everybody=len(everybody),
        count=len(found),
        look=sum(one.look in STATES["look"] for one in found),
        number=number,
        pages=pages,
    )
    write = Button(words.gettext("Write to these"), f"group:{coach.id}:new:{wanted.state}:{wanted.programme}")
    out = Button(words.gettext("Files"), f"exports:menu:{coach.id}")
    more = ((write, out),) if found and coach.person_id == reader.id else ((out,),)
    turning = _turning(words, coach, wanted, number, pages)
    rows = (*_doors(shown), *turning, *_filters(words, coach, everybody, wanted), *more)
    return Message(text, rows if everybody else ())


def _doors(shown: Sequence[Seen]) -> Rows:
    buttons = [Button(one.listed.person.label[:30], f"client:{one.listed.course.id}") for one in shown]
    return _in_rows(buttons, 2)


def _data(coach: Coach, wanted: Filter, number: int = 1) -> str:
    """The data of a button that leads to a page of this coach's people."""
    return f"people:{number}:{wanted.state}:{wanted.programme}:{coach.id}"


def _turning(words: Words, coach: Coach, wanted: Filter, number: int, pages: int) -> Rows:
    _ = words.gettext
    back = [Button(_("Back"), _data(coach, wanted, number - 1))] if number > 1 else []
    following = [Button(_("Next"), _data(coach, wanted, number + 1))] if number < pages else []
    return ((*back, *following),) if back or following else ()


def _filters(words: Words, coach: Coach, everybody: Sequence[Seen], wanted: Filter) -> Rows:
    """A button for each state that somebody is in and, with several programmes, for each of them."""
    _ = words.gettext
    labels = {
        "all": _("Everybody"),
        "look": _("Need a look"),
        "waiting": _("Waiting"),
        "going": _("Going"),
        "joining": _("Joining"),
        "paused": _("Paused"),
        "finished": _("Finished"),
    }
    here = chosen(everybody, Filter("all", wanted.programme))
    counts = {state: sum(one.look in looks for one in here) for state, looks in STATES.items()}
    states = [
        Button(_marked(f"{labels[state]} {count}", state == wanted.state), _data(coach, replace(wanted, state=state)))
        for state, count in counts.items()
        if count or state == wanted.state
    ]
    titles = _titles(everybody)
    sizes = Counter(one.listed.title for one in everybody)
    programmes = [
        Button(
            _marked(f"{shortened(title, LABEL)} {sizes[title]}", number == wanted.programme)[:ON_PHONE],
            _data(coach, replace(wanted, programme=number)),
        )
        for number, title in titles.items()
    ]
    every = Button(_marked(_("Every programme"), wanted.programme == 0), _data(coach, replace(wanted, programme=0)))
    more = [every, *programmes[:9]] if len(titles) > 1 else []
    return _in_rows(states, 3) + _in_rows(more, 1)


def _in_rows(buttons: Sequence[Button], wide: int) -> Rows:
    return tuple(tuple(buttons[n : n + wide]) for n in range(0, len(buttons), wide))


def _marked(label: str, is_on: bool) -> str:
    return f"[{label}]" if is_on else label


def _when(words: Words, on: date, ago: int) -> str:
    """A weekday, and the date of what was longer ago than one can tell by that."""
    return words.short_weekday(on) if ago < A_WEEK else words.short_date(on)


def _line(words: Words, one: Seen) -> dict[str, object]:
    listed, course = one.listed, one.listed.course
    alert = next((a for a in listed.alerts if a.at_once), None) or next(iter(listed.alerts), None)
    said = facts(listed.said, gettext=words.gettext) if listed.said != CheckIn() else ""
    return {
        "label": listed.person.label,
        "look": one.look.name.lower(),
        "needed": one.look in STATES["look"],
        "cause": alert.cause if alert else None,
        "facts": alert.facts if alert else {},
        "others": len(listed.alerts) - 1,
        "day": course.day,
        "level": course.level,
        "silent": one.silent,
        "why_paused": course.paused,
        "well": listed.said.completion is Completion.DONE and (listed.said.pain or 0) < HURTS,
        "said": f"{_when(words, listed.said_on, one.silent)} {said}" if said and listed.said_on else "",
        "since": words.short_date(course.created_at.date()),
    }
