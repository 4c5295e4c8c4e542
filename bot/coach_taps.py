"""What a tap of a coach's or an assistant's does: from the first word of its data to the use case."""

from __future__ import annotations

from collections.abc import Mapping

from bot.buttons import Tap, number, word
from bot.flows import (
    calling,
    clients,
    coach_page,
    digest,
    doses,
    exporting,
    groups,
    handing_over,
    inviting,
    moving,
    overruling,
    people,
    previewing,
    programmes,
    recordings,
    reporting,
    ruling,
    steering,
)
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, coach_named, coach_of_course, coach_of_version, coach_only
from db.helpers import Right
from db.schema import Coach, Person


async def _coach(desk: Desk, person: Person, words: list[str], right: Right) -> Coach:
    """The coach of the course that a button names, for whom this person may do that. Raises NotAllowed."""
    return await coach_of_course(desk, person, number(words, 0), right)


async def _tap_publish(desk: Desk, person: Person, words: list[str]) -> None:
    version = number(words, 0)
    await programmes.publish(desk, person, await coach_of_version(desk, person, version, Right.PUBLISH), version)


async def _tap_invite(desk: Desk, person: Person, words: list[str]) -> None:
    version = number(words, 0)
    coach = await coach_of_version(desk, person, version, Right.PUBLISH)
    await inviting.invite(desk, person, coach, version, number(words, 1))


async def _tap_draft(desk: Desk, person: Person, words: list[str]) -> None:
    await inviting.tapped(desk, person, words)


async def _tap_own_page(desk: Desk, person: Person, words: list[str]) -> None:
    await coach_page.tapped(desk, person, words)


async def _tap_hand_over(desk: Desk, person: Person, words: list[str]) -> None:
    coach = await coach_only(desk, person)
    await handing_over.offer(desk, person, coach, number(words, 0))


async def _tap_invites(desk: Desk, person: Person, words: list[str]) -> None:
    await inviting.show_open(desk, person, number(words, 0))


async def _tap_revoke(desk: Desk, person: Person, words: list[str]) -> None:
    await inviting.revoke(desk, person, number(words, 0))


async def _tap_guardian(desk: Desk, person: Person, words: list[str]) -> None:
    await inviting.ask_guardian(desk, person, number(words, 0))


async def _tap_client(desk: Desk, person: Person, words: list[str]) -> None:
    await clients.client_page(desk, person, await _coach(desk, person, words, Right.SEE), number(words, 0))


async def _tap_doses(desk: Desk, person: Person, words: list[str]) -> None:
    await doses.show(desk, person, await _coach(desk, person, words, Right.SEE), number(words, 0))


async def _tap_export(desk: Desk, person: Person, words: list[str]) -> None:
    coach, course = await _coach(desk, person, words, Right.SEE), number(words, 0)
    await exporting.of_client(desk, person, coach, course, word(words, 1))


async def _tap_exports(desk: Desk, person: Person, words: list[str]) -> None:
    coach = await coach_named(desk, person, number(words, 1), Right.SEE)
    await exporting.of_everybody(desk, person, coach, words[0])


async def _tap_digest(desk: Desk, person: Person, words: list[str]) -> None:
    await digest.tapped(desk, person, await coach_only(desk, person), words[0], word(words, 1))


async def _tap_report(desk: Desk, person: Person, words: list[str]) -> None:
    await reporting.show(desk, person, await coach_only(desk, person), number(words, 0))


async def _tap_rule(desk: Desk, person: Person, words: list[str]) -> None:
    coach, course = await _coach(desk, person, words, Right.RULE), number(words, 0)
    await overruling.tapped(desk, person, coach, course, word(words, 1), word(words, 2), word(words, 3))


async def _tap_undo(desk: Desk, person: Person, words: list[str]) -> None:
    word_ = number(words, 0)
    coach = await coach_of_course(desk, person, await overruling.course_of(desk, word_), Right.RULE)
    await overruling.undo(desk, person, coach, word_)


async def _tap_steer(desk: Desk, person: Person, words: list[str]) -> None:
    coach, course = await _coach(desk, person, words, Right.RULE), number(words, 0)
    await steering.tapped(desk, person, coach, course, word(words, 1), word(words, 2))


async def _tap_reasons(desk: Desk, person: Person, words: list[str]) -> None:
    await clients.every_reason(desk, person, await _coach(desk, person, words, Right.SEE), number(words, 0))


async def _tap_people(desk: Desk, person: Person, words: list[str]) -> None:
    await people.turn(desk, person, await coach_named(desk, person, number(words, 3), Right.SEE), words)


async def _tap_preview(desk: Desk, person: Person, words: list[str]) -> None:
    coach, version = await coach_only(desk, person), number(words, 0)
    await previewing.tapped(desk, person, coach, version, word(words, 1), word(words, 2))


async def _tap_programme(desk: Desk, person: Person, words: list[str]) -> None:
    await programmes.look(desk, person, await coach_only(desk, person), number(words, 0))


async def _tap_over(desk: Desk, person: Person, words: list[str]) -> None:
    coach, version = await coach_only(desk, person), number(words, 0)
    await moving.tapped(desk, person, coach, version, word(words, 1), number(words, 2))


async def _tap_group(desk: Desk, person: Person, words: list[str]) -> None:
    coach, what = await coach_only(desk, person), word(words, 1)
    if what == "new":
        if number(words, 0) != coach.id:
            raise NotAllowed("checkin.not_yours")
        await groups.begin(desk, person, coach, people.read_filter(word(words, 2), word(words, 3)))
    else:
        await groups.tapped(desk, person, coach, number(words, 0), what)


async def _tap_film(desk: Desk, person: Person, words: list[str]) -> None:
    coach, recording = await coach_only(desk, person), number(words, 0)
    await recordings.tapped(desk, person, coach, recording, word(words, 1), word(words, 2))


async def _tap_bar(desk: Desk, person: Person, words: list[str]) -> None:
    await ruling.bar(desk, person, await _coach(desk, person, words, Right.RULE), number(words, 0), word(words, 1))


async def _tap_go(desk: Desk, person: Person, words: list[str]) -> None:
    await ruling.ask_found_out(desk, person, await _coach(desk, person, words, Right.RULE), number(words, 0))


async def _tap_found(desk: Desk, person: Person, words: list[str]) -> None:
    note = ruling.QUICK_NOTES.get(word(words, 1), "")
    coach, course = await _coach(desk, person, words, Right.RULE), number(words, 0)
    await ruling.found_out(desk, person, coach, course, note, number(words, 2) if len(words) > 2 else 0)


async def _tap_seen(desk: Desk, person: Person, words: list[str]) -> str:
    return await calling.seen(desk, person, number(words, 0))


async def _tap_listed(desk: Desk, person: Person, words: list[str]) -> None:
    await calling.seen_list(desk, person, number(words, 0), number(words, 1))


async def _tap_photos(desk: Desk, person: Person, words: list[str]) -> None:
    await clients.show_photos(desk, person, await _coach(desk, person, words, Right.SEE), number(words, 0))


OF_COACHES: Mapping[str, Tap] = {
    "publish": _tap_publish,
    "invite": _tap_invite,
    "draft": _tap_draft,
    "coach": _tap_own_page,
    "handover": _tap_hand_over,
    "invites": _tap_invites,
    "revoke": _tap_revoke,
    "guardian": _tap_guardian,
    "client": _tap_client,
    "doses": _tap_doses,
    "export": _tap_export,
    "exports": _tap_exports,
    "digest": _tap_digest,
    "report": _tap_report,
    "rule": _tap_rule,
    "undo": _tap_undo,
    "steer": _tap_steer,
    "reasons": _tap_reasons,
    "people": _tap_people,
    "preview": _tap_preview,
    "programme": _tap_programme,
    "over": _tap_over,
    "group": _tap_group,
    "film": _tap_film,
    "bar": _tap_bar,
    "go": _tap_go,
    "found": _tap_found,
    "seen": _tap_seen,
    "listed": _tap_listed,
    "photos": _tap_photos,
}
"""Buttons under a coach's messages; each asks whether this person may."""
