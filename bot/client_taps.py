"""What a tap of a client's does: from the first word of its data to the use case."""

from __future__ import annotations

from collections.abc import Mapping

from bot.buttons import Tap, number, word
from bot.flows import (
    assistants,
    away,
    checkin,
    coach_page,
    day,
    evening,
    finishing,
    handing_over,
    how,
    joining,
    leading,
    leaving,
    less,
    measuring,
    mine,
    mornings,
    pauses,
    photos,
    places,
    settings,
    steering,
    upkeeping,
)
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.message import Message
from db import courses
from db.schema import Course, Person
from plans.localtime import zone_names


async def _own_course(desk: Desk, person: Person, words: list[str]) -> Course:
    course = await courses.locked(desk.session, number(words, 0))
    if course is None or course.person_id != person.id:
        raise NotAllowed("checkin.not_yours")
    return course


async def _tap_checkin(desk: Desk, person: Person, words: list[str]) -> str | None:
    return await checkin.tap(desk, person, number(words, 0), word(words, 1), word(words, 2))


async def _tap_nudge(desk: Desk, person: Person, words: list[str]) -> str | None:
    row, _course = await checkin.own(desk, person, number(words, 0))
    await evening.carried_on(desk, row)
    return await _tap_checkin(desk, person, words)


async def _tap_morning(desk: Desk, person: Person, words: list[str]) -> str | None:
    return await mornings.answered(desk, person, number(words, 0), word(words, 1))


async def _tap_join(desk: Desk, person: Person, words: list[str]) -> None:
    course = await _own_course(desk, person, words)
    if word(words, 1) != "agree":
        await joining.decline(desk, person, course)
    else:
        await joining.agree(desk, person, course, *(number(words, n) if n < len(words) else 0 for n in (2, 3)))


async def _tap_screen(desk: Desk, person: Person, words: list[str]) -> None:
    await joining.screen(desk, person, await _own_course(desk, person, words), word(words, 1), word(words, 2))


async def _tap_begin(desk: Desk, person: Person, words: list[str]) -> None:
    await joining.begin(desk, person, await _own_course(desk, person, words), word(words, 1))


async def _tap_well(desk: Desk, person: Person, words: list[str]) -> None:
    course = await _own_course(desk, person, words)
    if course.paused is None or course.state not in day.RUNNING:
        raise NotAllowed("checkin.not_yours")
    await pauses.well_again(desk, person, course)


async def _tap_today(desk: Desk, person: Person, words: list[str]) -> None:
    await _own_course(desk, person, words)
    await day.today(desk, person)


async def _tap_pause(desk: Desk, person: Person, words: list[str]) -> None:
    course = await _own_course(desk, person, words)
    if course.state != courses.CourseState.ACTIVE:
        raise NotAllowed("checkin.not_yours")
    await pauses.pause(desk, person, course)


async def _tap_zone(desk: Desk, person: Person, words: list[str]) -> None:
    if words[0] not in zone_names():
        raise NotAllowed("checkin.not_yours")
    await joining.take_zone(desk, person, words[0])


async def _tap_time(desk: Desk, person: Person, words: list[str]) -> None:
    at = places.time_of(f"{words[0][:2]}:{words[0][2:]}")
    if at is None:
        raise NotAllowed("checkin.not_yours")
    await joining.take_morning(desk, person, at)


async def _tap_settings(desk: Desk, person: Person, words: list[str]) -> None:
    await settings.tapped(desk, person, words[0], word(words, 1))


async def _tap_stop(desk: Desk, person: Person, words: list[str]) -> None:
    if words[0] == "yes":
        await leaving.stop(desk, person, await _own_course(desk, person, words[1:]))
    elif words[0] == "ask":
        await leaving.ask(desk, person)
    else:
        await desk.say(person, Message(desk.words(person).say("client.goes_on")))


async def _tap_helping(desk: Desk, person: Person, words: list[str]) -> None:
    await assistants.helping(desk, person, words[0], number(words, 1))


async def _tap_about(desk: Desk, person: Person, words: list[str]) -> None:
    await coach_page.for_client(desk, person, await _own_course(desk, person, words))


async def _tap_hand(desk: Desk, person: Person, words: list[str]) -> None:
    await handing_over.answered(desk, person, number(words, 0), number(words, 1), word(words, 2))


async def _tap_reply(desk: Desk, person: Person, words: list[str]) -> None:
    await steering.ask_reply(desk, person, await _own_course(desk, person, words))


async def _tap_how(desk: Desk, person: Person, words: list[str]) -> None:
    await how.tapped(desk, person, words[0])


async def _tap_short(desk: Desk, person: Person, words: list[str]) -> None:
    await less.tapped(desk, person, number(words, 0), word(words, 1))


async def _tap_away(desk: Desk, person: Person, words: list[str]) -> None:
    await away.tapped(desk, person, await _own_course(desk, person, words), word(words, 1))


async def _tap_measure(desk: Desk, person: Person, words: list[str]) -> None:
    await measuring.tapped(desk, person, words[0], word(words, 1))


async def _tap_photo(desk: Desk, person: Person, words: list[str]) -> None:
    await photos.tapped(desk, person, words[0])


async def _tap_have(desk: Desk, person: Person, words: list[str]) -> None:
    await evening.tapped(desk, person, await _own_course(desk, person, words), word(words, 1), word(words, 2))


async def _tap_lead(desk: Desk, person: Person, words: list[str]) -> None:
    await leading.tapped(desk, person, number(words, 0), word(words, 1))


async def _tap_mine(desk: Desk, person: Person, words: list[str]) -> None:
    await mine.tapped(desk, person, words[0])


async def _tap_liked(desk: Desk, person: Person, words: list[str]) -> None:
    await finishing.liked(desk, person, number(words, 0), word(words, 1))


async def _tap_upkeep(desk: Desk, person: Person, words: list[str]) -> None:
    await upkeeping.tapped(desk, person, number(words, 0), word(words, 1))


OF_CLIENTS: Mapping[str, Tap] = {
    "c": _tap_checkin,
    "n": _tap_nudge,
    "m": _tap_morning,
    "join": _tap_join,
    "screen": _tap_screen,
    "begin": _tap_begin,
    "well": _tap_well,
    "today": _tap_today,
    "pause": _tap_pause,
    "zone": _tap_zone,
    "time": _tap_time,
    "settings": _tap_settings,
    "stop": _tap_stop,
    "helping": _tap_helping,
    "about": _tap_about,
    "hand": _tap_hand,
    "reply": _tap_reply,
    "how": _tap_how,
    "short": _tap_short,
    "away": _tap_away,
    "measure": _tap_measure,
    "photo": _tap_photo,
    "have": _tap_have,
    "lead": _tap_lead,
    "mine": _tap_mine,
    "liked": _tap_liked,
    "upkeep": _tap_upkeep,
}
"""Buttons under a client's own messages."""
