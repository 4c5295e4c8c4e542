"""Invitations: a link to one published programme, for one or for a group, as words and as a picture."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import asdict, dataclass, replace
from datetime import date, datetime, timedelta

from bot.flows import drafts, times
from bot.flows.asking import Asked, about, close, open_for
from bot.flows.desk import Desk
from bot.flows.drafts import Draft
from bot.flows.rights import NotAllowed, acting_for, coach_of_version, coachs_today, may, own_version
from bot.words import LOCALES, Words
from bot.words.message import Button, Message, Picture, Rows, shortened
from bot.words.programmes import programme_in
from db import links, programmes
from db.helpers import Right
from db.links import Terms
from db.schema import Coach, Invite, Person, ProgrammeVersion
from plans import localtime
from plans.charts.code import Code
from plans.translated import untranslated

PLACES = (1, 10)
SHOWN = 10
"""Invitations in one list; the rest is counted."""


@dataclass(frozen=True, slots=True)
class _Told:
    """An invitation as it is said: see inviting.j2."""

    title: str
    places: int
    until: str
    starts: str = ""
    together: bool = False
    joined: Sequence[str] = ()
    opened: Sequence[str] = ()
    guardian: str = ""
    lacks_start: bool = False
    own_language: str = ""
    not_in: Sequence[str] = ()


async def choose_invite(desk: Desk, person: Person, coach: Coach) -> None:
    """/invite: which published programme, the newest of each title, for how many; and what is open."""
    published = newest([v for v in await programmes.of_coach(desk.session, coach) if v.published_at is not None])
    words = desk.words(person)
    if not published:
        await desk.say(person, Message(words.say("coach.nothing_published")))
        return
    text = words.say("coach.programmes", items=items_of(words, published))
    rows = invite_buttons(desk, person, published[:8])
    if await links.open_invites(desk.session, coach, desk.now):
        rows = (*rows, (Button(words.gettext("Open invitations"), f"invites:{coach.id}"),))
    await desk.say(person, Message(text, rows))


def invite_buttons(desk: Desk, person: Person, versions: Sequence[ProgrammeVersion]) -> Rows:
    """Buttons that make a link, for one and for ten, of each version, or lead to more choices."""
    _ = desk.words(person).gettext
    rows: list[tuple[Button, ...]] = []
    for version in versions:
        more = Button(_("More choices"), f"invite:{version.id}:0")
        if len(versions) > 1:
            name = shortened(version.title, 22)
            one, many, more = f"{name}: 1", f"{name}: 10", replace(more, label=f"{name}: …")
        else:
            one, many = _("Invite one client"), _("Invite a group of ten")
        rows.append((Button(one, f"invite:{version.id}:1"), Button(many, f"invite:{version.id}:10")))
        rows.append((more,))
    return tuple(rows)


def newest(versions: Sequence[ProgrammeVersion]) -> list[ProgrammeVersion]:
    """Of versions with the same title the one that was sent last; their order stays."""
    last: dict[str, int] = {}
    for version in versions:
        last[version.title] = max(version.id, last.get(version.title, 0))
    return [version for version in versions if version.id == last[version.title]]


def items_of(words: Words, versions: Sequence[ProgrammeVersion]) -> list[dict[str, object]]:
    """What a list says of programme versions; of equal titles it says which came last."""
    last = {version.id for version in newest(versions)}
    titles = Counter(version.title for version in versions)
    return [
        {
            "title": version.title,
            "digest": version.digest[:6],
            "on": words.short_date(version.stored_at.date()),
            "last": version.id in last if titles[version.title] > 1 else None,
            "published": version.published_at is not None,
        }
        for version in versions
    ]


# --- making a link ------------------------------------------------------------------------------------------------


async def invite(desk: Desk, person: Person, coach: Coach, version_id: int, places: int) -> None:
    """Makes an invitation link, or with 0 places shows what can be chosen.

    Raises NotAllowed for a version that is not the coach's or not published.
    """
    if places == 0:
        await _show(desk, person, coach, Draft(version_id))
        return
    if places not in PLACES:
        raise NotAllowed("checkin.not_yours")
    await _make(desk, person, coach, Draft(version_id, places))


async def tapped(desk: Desk, person: Person, words: list[str]) -> None:
    """One button of a draft. Raises NotAllowed for data that no draft has, and for somebody else's version."""
    draft, what = drafts.read(words)
    coach = await coach_of_version(desk, person, draft.version, Right.PUBLISH)
    if what == "make":
        await _make(desk, person, coach, draft)
    elif what == "show":
        await _show(desk, person, coach, draft)
    elif what in drafts.FIELDS:
        _wait_for(person, draft, what)
        buttons = drafts.choices(draft, what, await coachs_today(desk, coach), desk.words(person))
        await desk.say(person, Message(desk.words(person).say("inviting.which", field=what), buttons))
    else:
        raise NotAllowed("checkin.not_yours")


def _wait_for(person: Person, draft: Draft, field: str) -> None:
    person.asking = f"{Asked.INVITATION}:{draft.data}:{field}"


async def typed(desk: Desk, person: Person, text: str) -> None:
    """A typed number or date for the draft that asks for it. Raises NotAllowed for somebody else's version."""
    draft, field = drafts.read((person.asking or "").split(":")[1:])
    coach = await coach_of_version(desk, person, draft.version, Right.PUBLISH)
    changed = drafts.typed(draft, field, text, await coachs_today(desk, coach))
    if changed is None:
        await desk.say(person, Message(desk.words(person).say("inviting.not_read", field=field)))
        return
    close(person, Asked.INVITATION)
    await _show(desk, person, coach, changed)


async def _show(desk: Desk, person: Person, coach: Coach, draft: Draft) -> None:
    version = await _published(desk, coach, draft.version)
    told = await _told_of(desk, person, coach, version, draft)
    buttons = drafts.buttons(draft, desk.words(person), together=told.together)
    await desk.say(person, Message(desk.words(person).say("inviting.draft", i=told), buttons))


async def _make(desk: Desk, person: Person, coach: Coach, draft: Draft) -> None:
    version = await _published(desk, coach, draft.version)
    told = await _told_of(desk, person, coach, version, draft)
    still_ahead = drafts.without_past(draft, await coachs_today(desk, coach))
    if told.lacks_start or still_ahead != draft:
        await _show(desk, person, coach, still_ahead)
        return
    until = await _closes(desk, coach, draft)
    terms = Terms(draft.places, until, draft.starts_on, draft.pace)
    made, token = await links.new_invite(desk.session, coach, version, terms, desk.now)
    link = f"https://t.me/{desk.bot_username}?start={token}"
    words = desk.words(person)
    note = " ".join(str(words.say("inviting.terms", i=told)).split())
    picture = Picture("code", asdict(Code(link, version.title, f"{note}.")), personal=True)
    rows: Rows = ((Button(words.gettext("Take it back"), f"revoke:{made.id}"),),)
    if draft.places == 1 and desk.installation.under_18:
        rows = (*rows, (Button(words.gettext("For somebody under 18"), f"guardian:{made.id}"),))
    await desk.say(person, Message(words.say("inviting.invitation", i=told, link=link), rows, picture))


async def _published(desk: Desk, coach: Coach, version_id: int) -> ProgrammeVersion:
    version = await own_version(desk, coach, version_id)
    if version.published_at is None:
        raise NotAllowed("checkin.not_yours")
    return version


async def _told_of(desk: Desk, person: Person, coach: Coach, version: ProgrammeVersion, draft: Draft) -> _Told:
    words, together = desk.words(person), _is_together(draft.pace, version)
    until = await _last_date(desk, coach, await _closes(desk, coach, draft))
    starts = drafts.day(words, draft.starts_on) if draft.starts_on else ""
    lacks = together and draft.places > 1 and draft.starts_on is None
    written = programme_in(version)
    not_in = [words.language_name(one) for one in LOCALES if untranslated(written, one)]
    return _Told(
        version.title,
        draft.places,
        drafts.day(words, until),
        starts,
        together,
        lacks_start=lacks,
        own_language=words.language_name(written.language),
        not_in=not_in,
    )


def _is_together(pace: str | None, version: ProgrammeVersion) -> bool:
    return (pace or programme_in(version).pace) == "together"


async def _closes(desk: Desk, coach: Coach, draft: Draft) -> datetime:
    """When the last date to join is over on the coach's clock."""
    person = await desk.session.get_one(Person, coach.person_id)
    last = draft.last_on or times.today(person, desk.now) + timedelta(days=links.INVITE_DAYS)
    return times.at(person, last + timedelta(days=1), times.MIDNIGHT)


async def _last_date(desk: Desk, coach: Coach, closes: datetime) -> date:
    person = await desk.session.get_one(Person, coach.person_id)
    return localtime.local(closes - timedelta(seconds=1), times.zone_of(person)).date()


# --- what is open -------------------------------------------------------------------------------------------------


async def show_open(desk: Desk, person: Person, coach_id: int) -> None:
    """The open invitations of a coach, who used them, and a button that takes each back. Raises NotAllowed."""
    coach = await desk.session.get(Coach, coach_id)
    if coach is None or not await may(desk, person, coach, Right.PUBLISH):
        raise NotAllowed("checkin.not_yours")
    words = desk.words(person)
    found = await links.open_invites(desk.session, coach, desk.now)
    uses = await links.used_by(desk.session, [one for one, _version in found])
    items = []
    for one, version in found[:SHOWN]:
        until = drafts.day(words, await _last_date(desk, coach, one.expires_at))
        starts = drafts.day(words, one.starts_on) if one.starts_on else ""
        joined = [who.label for use, who in uses[one.id] if use.joined_at is not None]
        opened = [who.label for use, who in uses[one.id] if use.joined_at is None]
        together = _is_together(one.pace, version)
        items.append(_Told(version.title, one.places, until, starts, together, joined, opened, _guardian(words, one)))
    label = words.gettext("Take back {number}")
    rows: list[tuple[Button, ...]] = []
    for number, (one, _version) in enumerate(found[:SHOWN], 1):
        row = [Button(label.format(number=number), f"revoke:{one.id}")]
        if one.places == 1 and desk.installation.under_18:
            row.append(Button(words.gettext("{number}: under 18").format(number=number), f"guardian:{one.id}"))
        rows.append(tuple(row))
    text = words.say("inviting.open", items=items, more=len(found[SHOWN:]))
    await desk.say(person, Message(text, tuple(rows)))


def _guardian(words: Words, one: Invite) -> str:
    if one.guardian is None or one.guardian_on is None:
        return ""
    return f"{one.guardian}, {drafts.day(words, one.guardian_on)}"


async def revoke(desk: Desk, person: Person, invite_id: int) -> None:
    """Takes an invitation back; whoever has joined stays. Raises NotAllowed for somebody else's."""
    found = await _own(desk, person, invite_id)
    found.revoked_at = found.revoked_at or desk.now
    await desk.say(person, Message(desk.words(person).say("inviting.revoked")))


async def _own(desk: Desk, person: Person, invite_id: int) -> Invite:
    found = await desk.session.get(Invite, invite_id)
    coach = await desk.session.get(Coach, found.coach_id) if found is not None else None
    if found is None or coach is None or not await may(desk, person, coach, Right.PUBLISH):
        await acting_for(desk, person, Right.PUBLISH)
        raise NotAllowed("checkin.not_yours")
    return found


# --- under 18 -----------------------------------------------------------------------------------------------------


async def ask_guardian(desk: Desk, person: Person, invite_id: int) -> None:
    """Asks who has agreed for somebody under 18. Raises NotAllowed where the installation does not let them."""
    found = await _own(desk, person, invite_id)
    if not desk.installation.under_18 or found.places != 1:
        raise NotAllowed("checkin.not_yours")
    open_for(person, Asked.GUARDIAN, found.id)
    await desk.say(person, Message(desk.words(person).say("inviting.ask_guardian")))


async def type_guardian(desk: Desk, person: Person, text: str) -> None:
    """Keeps a guardian's consent, who and when, with the invitation that asks for it. Raises NotAllowed."""
    found = await _own(desk, person, about(person))
    words = desk.words(person)
    read = drafts.guardian(text, times.today(person, desk.now))
    if read is None:
        await desk.say(person, Message(words.say("inviting.guardian_unread")))
        return
    found.guardian, found.guardian_on = read
    close(person, Asked.GUARDIAN)
    kept = words.say("inviting.guardian_kept", who=found.guardian, day=drafts.day(words, found.guardian_on))
    await desk.say(person, Message(kept))
