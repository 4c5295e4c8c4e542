"""What a tap on a button does: the table from the first word of its data to the use case."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Mapping

from bot.flows import (
    assistants,
    away,
    calling,
    checkin,
    clients,
    coach_page,
    day,
    digest,
    doses,
    evening,
    finishing,
    groups,
    handing_over,
    how,
    inviting,
    joining,
    leading,
    leaving,
    less,
    measuring,
    mine,
    moving,
    overruling,
    people,
    photos,
    places,
    previewing,
    programmes,
    recordings,
    reporting,
    ruling,
    settings,
    steering,
    upkeeping,
)
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, acting_for, coach_of_course, coach_of_version, coach_only
from bot.words.message import Message
from db import courses
from db.helpers import Right
from db.schema import Coach, Course, Person
from plans.localtime import zone_names

Tap = Callable[[Desk, Person, list[str]], Awaitable[str | None]]


async def tap(desk: Desk, person: Person, data: str) -> str | None:
    """Leads a button's data to its use case; data that no button of ours has is refused like an old button's."""
    verb, *words = data.split(":")
    act = TAPS.get(verb)
    if act is None or not words:
        raise NotAllowed("checkin.not_yours")
    async with desk.session.begin_nested():
        return await act(desk, person, words)


def _number(words: list[str], at: int) -> int:
    """The number in a button's data; data that was never ours may have none. Raises NotAllowed."""
    found = words[at] if at < len(words) else ""
    if not found.isascii() or not found.isdigit() or len(found) > 15:
        raise NotAllowed("checkin.not_yours")
    return int(found)


def _word(words: list[str], at: int) -> str:
    return words[at] if at < len(words) else ""


async def _own_course(desk: Desk, person: Person, words: list[str]) -> Course:
    course = await courses.locked(desk.session, _number(words, 0))
    if course is None or course.person_id != person.id:
        raise NotAllowed("checkin.not_yours")
    return course


async def _coach(desk: Desk, person: Person, words: list[str], right: Right) -> Coach:
    """The coach of the course that a button names, for whom this person may do that. Raises NotAllowed."""
    return await coach_of_course(desk, person, _number(words, 0), right)


async def _tap_checkin(desk: Desk, person: Person, words: list[str]) -> str | None:
    return await checkin.tap(desk, person, _number(words, 0), _word(words, 1), _word(words, 2))


async def _tap_nudge(desk: Desk, person: Person, words: list[str]) -> str | None:
    row, _course = await checkin.own(desk, person, _number(words, 0))
    await evening.carried_on(desk, row)
    return await _tap_checkin(desk, person, words)


async def _tap_morning(desk: Desk, person: Person, words: list[str]) -> str | None:
    return await checkin.morning(desk, person, _number(words, 0), _word(words, 1))


async def _tap_join(desk: Desk, person: Person, words: list[str]) -> None:
    course = await _own_course(desk, person, words)
    await joining.agree(desk, person, course, _word(words, 1), _number(words, 2) if len(words) > 2 else 0)


async def _tap_screen(desk: Desk, person: Person, words: list[str]) -> None:
    await joining.screen(desk, person, await _own_course(desk, person, words), _word(words, 1), _word(words, 2))


async def _tap_begin(desk: Desk, person: Person, words: list[str]) -> None:
    await joining.begin(desk, person, await _own_course(desk, person, words), _word(words, 1))


async def _tap_well(desk: Desk, person: Person, words: list[str]) -> None:
    course = await _own_course(desk, person, words)
    if course.paused is None:
        raise NotAllowed("checkin.not_yours")
    await day.well_again(desk, person, course)


async def _tap_today(desk: Desk, person: Person, words: list[str]) -> None:
    await _own_course(desk, person, words)
    await day.today(desk, person)


async def _tap_pause(desk: Desk, person: Person, words: list[str]) -> None:
    course = await _own_course(desk, person, words)
    if course.state != courses.CourseState.ACTIVE:
        raise NotAllowed("checkin.not_yours")
    await day.pause(desk, person, course)


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
    await settings.tapped(desk, person, words[0], _word(words, 1))


async def _tap_photo(desk: Desk, person: Person, words: list[str]) -> None:
    await photos.tapped(desk, person, words[0])


async def _tap_photos(desk: Desk, person: Person, words: list[str]) -> None:
    await clients.show_photos(desk, person, await _coach(desk, person, words, Right.SEE), _number(words, 0))


async def _tap_have(desk: Desk, person: Person, words: list[str]) -> None:
    await evening.tapped(desk, person, await _own_course(desk, person, words), _word(words, 1), _word(words, 2))


async def _tap_lead(desk: Desk, person: Person, words: list[str]) -> None:
    await leading.tapped(desk, person, _number(words, 0), _word(words, 1))


async def _tap_liked(desk: Desk, person: Person, words: list[str]) -> None:
    await finishing.liked(desk, person, _number(words, 0), _word(words, 1))


async def _tap_upkeep(desk: Desk, person: Person, words: list[str]) -> None:
    await upkeeping.tapped(desk, person, _number(words, 0), _word(words, 1))


async def _tap_mine(desk: Desk, person: Person, words: list[str]) -> None:
    await mine.tapped(desk, person, words[0])


async def _tap_stop(desk: Desk, person: Person, words: list[str]) -> None:
    if words[0] == "yes":
        await leaving.stop(desk, person)
    elif words[0] == "ask":
        await leaving.ask(desk, person)
    else:
        await desk.say(person, Message(desk.words(person).say("client.goes_on")))


async def _tap_publish(desk: Desk, person: Person, words: list[str]) -> None:
    version = _number(words, 0)
    await programmes.publish(desk, person, await coach_of_version(desk, person, version, Right.PUBLISH), version)


async def _tap_invite(desk: Desk, person: Person, words: list[str]) -> None:
    version = _number(words, 0)
    coach = await coach_of_version(desk, person, version, Right.PUBLISH)
    await inviting.invite(desk, person, coach, version, _number(words, 1))


async def _tap_draft(desk: Desk, person: Person, words: list[str]) -> None:
    await inviting.tapped(desk, person, words)


async def _tap_invites(desk: Desk, person: Person, words: list[str]) -> None:
    await inviting.show_open(desk, person, _number(words, 0))


async def _tap_revoke(desk: Desk, person: Person, words: list[str]) -> None:
    await inviting.revoke(desk, person, _number(words, 0))


async def _tap_guardian(desk: Desk, person: Person, words: list[str]) -> None:
    await inviting.ask_guardian(desk, person, _number(words, 0))


async def _tap_own_page(desk: Desk, person: Person, words: list[str]) -> None:
    await coach_page.tapped(desk, person, words)


async def _tap_about(desk: Desk, person: Person, words: list[str]) -> None:
    await coach_page.for_client(desk, person, await _own_course(desk, person, words))


async def _tap_helping(desk: Desk, person: Person, words: list[str]) -> None:
    await assistants.helping(desk, person, words[0], _number(words, 1))


async def _tap_hand_over(desk: Desk, person: Person, words: list[str]) -> None:
    coach = await coach_only(desk, person)
    await handing_over.offer(desk, person, coach, _number(words, 0))


async def _tap_hand(desk: Desk, person: Person, words: list[str]) -> None:
    await handing_over.answered(desk, person, _number(words, 0), _number(words, 1), _word(words, 2))


async def _tap_client(desk: Desk, person: Person, words: list[str]) -> None:
    await clients.client_page(desk, person, await _coach(desk, person, words, Right.SEE), _number(words, 0))


async def _tap_doses(desk: Desk, person: Person, words: list[str]) -> None:
    await doses.show(desk, person, await _coach(desk, person, words, Right.SEE), _number(words, 0))


async def _tap_digest(desk: Desk, person: Person, words: list[str]) -> None:
    await digest.tapped(desk, person, await coach_only(desk, person), words[0], _word(words, 1))


async def _tap_report(desk: Desk, person: Person, words: list[str]) -> None:
    await reporting.show(desk, person, await coach_only(desk, person), _number(words, 0))


async def _tap_rule(desk: Desk, person: Person, words: list[str]) -> None:
    coach, course = await _coach(desk, person, words, Right.RULE), _number(words, 0)
    await overruling.tapped(desk, person, coach, course, _word(words, 1), _word(words, 2), _word(words, 3))


async def _tap_undo(desk: Desk, person: Person, words: list[str]) -> None:
    await overruling.undo(desk, person, await _coach(desk, person, words, Right.RULE), _number(words, 0))


async def _tap_steer(desk: Desk, person: Person, words: list[str]) -> None:
    coach, course = await _coach(desk, person, words, Right.RULE), _number(words, 0)
    await steering.tapped(desk, person, coach, course, _word(words, 1), _word(words, 2))


async def _tap_reply(desk: Desk, person: Person, words: list[str]) -> None:
    await steering.ask_reply(desk, person, await _own_course(desk, person, words))


async def _tap_reasons(desk: Desk, person: Person, words: list[str]) -> None:
    await clients.every_reason(desk, person, await _coach(desk, person, words, Right.SEE), _number(words, 0))


async def _tap_preview(desk: Desk, person: Person, words: list[str]) -> None:
    coach, version = await coach_only(desk, person), _number(words, 0)
    await previewing.tapped(desk, person, coach, version, _word(words, 1), _word(words, 2))


async def _tap_programme(desk: Desk, person: Person, words: list[str]) -> None:
    await programmes.look(desk, person, await coach_only(desk, person), _number(words, 0))


async def _tap_over(desk: Desk, person: Person, words: list[str]) -> None:
    coach, version = await coach_only(desk, person), _number(words, 0)
    await moving.tapped(desk, person, coach, version, _word(words, 1), _number(words, 2))


async def _tap_group(desk: Desk, person: Person, words: list[str]) -> None:
    coach, what = await coach_only(desk, person), _word(words, 1)
    if what == "new":
        await groups.begin(desk, person, coach, people.read_filter(_word(words, 2), _word(words, 3)))
    else:
        await groups.tapped(desk, person, coach, _number(words, 0), what)


async def _tap_film(desk: Desk, person: Person, words: list[str]) -> None:
    coach, number = await coach_only(desk, person), _number(words, 0)
    await recordings.tapped(desk, person, coach, number, _word(words, 1), _word(words, 2))


async def _tap_people(desk: Desk, person: Person, words: list[str]) -> None:
    await people.turn(desk, person, await acting_for(desk, person, Right.SEE), words)


async def _tap_bar(desk: Desk, person: Person, words: list[str]) -> None:
    await ruling.bar(desk, person, await _coach(desk, person, words, Right.RULE), _number(words, 0), _word(words, 1))


async def _tap_go(desk: Desk, person: Person, words: list[str]) -> None:
    await ruling.ask_found_out(desk, person, await _coach(desk, person, words, Right.RULE), _number(words, 0))


async def _tap_found(desk: Desk, person: Person, words: list[str]) -> None:
    note = ruling.QUICK_NOTES.get(_word(words, 1), "")
    await ruling.let_go(desk, person, await _coach(desk, person, words, Right.RULE), _number(words, 0), note)


async def _tap_seen(desk: Desk, person: Person, words: list[str]) -> str:
    return await calling.seen(desk, person, _number(words, 0))


async def _tap_listed(desk: Desk, person: Person, words: list[str]) -> None:
    await calling.seen_list(desk, person, _number(words, 0), _number(words, 1))


async def _tap_short(desk: Desk, person: Person, words: list[str]) -> None:
    await less.tapped(desk, person, _number(words, 0), _word(words, 1))


async def _tap_away(desk: Desk, person: Person, words: list[str]) -> None:
    await away.tapped(desk, person, await _own_course(desk, person, words), _word(words, 1))


async def _tap_measure(desk: Desk, person: Person, words: list[str]) -> None:
    await measuring.tapped(desk, person, words[0], _word(words, 1))


async def _tap_how(desk: Desk, person: Person, words: list[str]) -> None:
    await how.tapped(desk, person, words[0])


TAPS: Mapping[str, Tap] = {
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
    "publish": _tap_publish,
    "invite": _tap_invite,
    "draft": _tap_draft,
    "coach": _tap_own_page,
    "helping": _tap_helping,
    "about": _tap_about,
    "handover": _tap_hand_over,
    "hand": _tap_hand,
    "invites": _tap_invites,
    "revoke": _tap_revoke,
    "guardian": _tap_guardian,
    "client": _tap_client,
    "doses": _tap_doses,
    "digest": _tap_digest,
    "report": _tap_report,
    "rule": _tap_rule,
    "undo": _tap_undo,
    "steer": _tap_steer,
    "reply": _tap_reply,
    "reasons": _tap_reasons,
    "people": _tap_people,
    "preview": _tap_preview,
    "programme": _tap_programme,
    "over": _tap_over,
    "group": _tap_group,
    "film": _tap_film,
    "bar": _tap_bar,
    "go": _tap_go,
    "how": _tap_how,
    "short": _tap_short,
    "away": _tap_away,
    "measure": _tap_measure,
    "found": _tap_found,
    "seen": _tap_seen,
    "listed": _tap_listed,
    "photo": _tap_photo,
    "photos": _tap_photos,
    "have": _tap_have,
    "lead": _tap_lead,
    "mine": _tap_mine,
    "liked": _tap_liked,
    "upkeep": _tap_upkeep,
}
"""What the first word of a button's data leads to."""

ONCE = frozenset(
    {"join", "screen", "begin", "zone", "time", "stop", "found", "well", "today", "pause", "short", "away"}
    | {"photo", "have", "mine", "liked", "listed", "draft", "revoke", "hand"}
)
"""Questions whose buttons go away with the answer."""
