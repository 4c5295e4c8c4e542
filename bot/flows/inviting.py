"""Invitations: a link to one published programme, for one or for a group."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta

from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, own_version
from bot.words.message import Button, Message, Rows
from db import links, programmes
from db.schema import Coach, Person, ProgrammeVersion

PLACES = (1, 10)


async def invite(desk: Desk, person: Person, coach: Coach, version_id: int, places: int) -> None:
    """Makes an invitation link. Raises NotAllowed for a version that is not the coach's or not published."""
    version = await own_version(desk, coach, version_id)
    if version.published_at is None or places not in PLACES:
        raise NotAllowed("checkin.not_yours")
    token = await links.new_invite(desk.session, coach, version, places=places, now=desk.now)
    until = (desk.now + timedelta(days=links.INVITE_DAYS)).date().isoformat()
    link = f"https://t.me/{desk.bot_username}?start={token}"
    text = desk.words(person).say("coach.invitation", title=version.title, link=link, places=places, until=until)
    await desk.say(person, Message(text))


async def choose_invite(desk: Desk, person: Person, coach: Coach) -> None:
    """/invite: which published programme, for how many."""
    published = [v for v in await programmes.of_coach(desk.session, coach) if v.published_at is not None]
    words = desk.words(person)
    if not published:
        await desk.say(person, Message(words.say("coach.nothing_published")))
        return
    text = words.say("coach.programmes", items=[item_of(v) for v in published])
    await desk.say(person, Message(text, invite_buttons(desk, person, published[:8])))


def invite_buttons(desk: Desk, person: Person, versions: Sequence[ProgrammeVersion]) -> Rows:
    """Buttons that make a link, for one and for ten, of each version."""
    _ = desk.words(person).gettext
    rows: list[tuple[Button, ...]] = []
    for version in versions:
        if len(versions) > 1:
            one, many = f"{version.title[:20]}: 1", f"{version.title[:20]}: 10"
        else:
            one, many = _("Invite one client"), _("Invite a group of ten")
        rows.append((Button(one, f"invite:{version.id}:1"), Button(many, f"invite:{version.id}:10")))
    return tuple(rows)


def item_of(version: ProgrammeVersion) -> dict[str, object]:
    """What a list says of a programme version."""
    return {
        "title": version.title,
        "digest": version.digest[:6],
        "published": version.published_at is not None,
    }
