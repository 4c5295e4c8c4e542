"""Assistants: added by a one-time link, each with the rights that the coach switches on and off."""

from __future__ import annotations

from sqlalchemy import update

from bot.flows import people
from bot.flows.asking import Asked, open_for
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed, may
from bot.words.message import ON_PHONE, Button, Message, Rows, column
from db import helpers, links
from db.helpers import Right
from db.schema import Absence, Coach, Door, Helper, Person

BUTTONS = frozenset({"assistants", "assistant", "right", "remove", "add"})


async def tapped(desk: Desk, person: Person, coach: Coach, what: str, rest: list[str]) -> None:
    """One button about assistants, tapped by their coach. Raises NotAllowed for another one."""
    if what == "assistants":
        await show_all(desk, person, coach)
        return
    if what == "add":
        link = f"https://t.me/{desk.bot_username}?start={await links.new_door(desk.session, coach, desk.now)}"
        await desk.say(person, Message(desk.words(person).say("coaching.assistant_link", link=link)))
        return
    helper = await _own(desk, coach, rest)
    if what == "assistant":
        await show(desk, person, helper)
    elif what == "right" and len(rest) == 2 and rest[1] in set(Right):
        setattr(helper, rest[1], not getattr(helper, rest[1]))
        await tell(desk, person, helper)
        await show(desk, person, helper)
    elif what == "remove":
        await remove(desk, helper)
    else:
        raise NotAllowed("checkin.not_yours")


async def _own(desk: Desk, coach: Coach, rest: list[str]) -> Helper:
    number = rest[0] if rest else ""
    is_number = number.isascii() and number.isdigit() and len(number) <= 15
    helper = await desk.session.get(Helper, int(number)) if is_number else None
    if helper is None or helper.coach_id != coach.id:
        raise NotAllowed("checkin.not_yours")
    return helper


async def show_all(desk: Desk, person: Person, coach: Coach) -> None:
    """A coach's assistants and what each may do."""
    found = await helpers.of_coach(desk.session, coach)
    words = desk.words(person)
    buttons = [Button(who.label[:ON_PHONE], f"coach:assistant:{helper.id}") for helper, who in found]
    buttons.append(Button(words.gettext("Add an assistant"), "coach:add"))
    items = [_item(helper, who) for helper, who in found]
    await desk.say(person, Message(words.say("coaching.assistants", items=items), column(*buttons)))


def _item(helper: Helper, who: Person) -> dict[str, object]:
    return {"name": who.label} | {str(right): getattr(helper, right) for right in Right}


async def show(desk: Desk, person: Person, helper: Helper) -> None:
    """One assistant and the switches of their rights."""
    who = await desk.session.get_one(Person, helper.person_id)
    words = desk.words(person)
    _ = words.gettext
    names = {
        Right.SEE: _("Sees people and pages"),
        Right.RULE: _("Decides for clients"),
        Right.PUBLISH: _("Invites and publishes"),
        Right.HEAR: _("Gets alerts"),
    }
    on, off = _("on"), _("off")
    switches = [
        Button(f"{name}: {on if getattr(helper, right) else off}", f"coach:right:{helper.id}:{right}")
        for right, name in names.items()
    ]
    rows: Rows = column(*switches, Button(_("Remove"), f"coach:remove:{helper.id}"))
    await desk.say(person, Message(words.say("coaching.assistant", item=_item(helper, who)), rows))


async def remove(desk: Desk, helper: Helper) -> None:
    """Ends somebody's help, also where they were to stand in; both are told."""
    coach = await desk.session.get_one(Coach, helper.coach_id)
    own = await desk.session.get_one(Person, coach.person_id)
    who = await desk.session.get_one(Person, helper.person_id)
    stands = (Absence.coach_id == coach.id, Absence.stand_in_id == who.id)
    await desk.session.execute(update(Absence).where(*stands).values(stand_in_id=None))
    await desk.session.delete(helper)
    await desk.session.flush()
    await desk.say(own, Message(desk.words(own).say("coaching.assistant_gone", name=who.label)))
    await desk.say(who, Message(desk.words(who).say("coaching.you_help_no_more", coach=own.label)))


async def tell(desk: Desk, coach: Person, helper: Helper) -> None:
    """Tells an assistant what they may do."""
    who = await desk.session.get_one(Person, helper.person_id)
    text = desk.words(who).say("coaching.you_help", coach=coach.label, r=_item(helper, who))
    await desk.say(who, Message(text))


async def come(desk: Desk, person: Person, door: Door) -> None:
    """Somebody has opened the link of a coach who looks for an assistant."""
    coach = await desk.session.get_one(Coach, door.coach_id)
    own = await desk.session.get_one(Person, coach.person_id)
    if person.id == own.id:
        await desk.say(person, Message(desk.words(person).say("coaching.own_link")))
        return
    if not await links.use_door(desk.session, door, person, desk.now):
        raise NotAllowed("checkin.not_yours")
    helper = await helpers.helper(desk.session, coach.id, person)
    if helper is None:
        rights = {str(right): right is Right.SEE for right in Right}
        helper = Helper(coach_id=coach.id, person_id=person.id, added_at=desk.now, **rights)
        desk.session.add(helper)
        await desk.session.flush()
    await tell(desk, own, helper)
    await desk.say(own, Message(desk.words(own).say("coaching.assistant_came", name=person.label)))
    await show(desk, own, helper)
    if person.zone is None:
        open_for(person, Asked.ZONE)
        await desk.say(person, Message(desk.words(person).say("coach.zone")))


# --- the assistant's side -----------------------------------------------------------------------------------------


async def buttons_for(desk: Desk, person: Person) -> list[Button]:
    """What an assistant finds among their settings: the people of each coach, and the way out."""
    _ = desk.words(person).gettext
    found = []
    for helper, coach in await helpers.helped_by(desk.session, person):
        name = (await desk.session.get_one(Person, coach.person_id)).label
        found.append(Button(_("People of {coach}").format(coach=name)[:ON_PHONE], f"helping:people:{helper.id}"))
        found.append(Button(_("Stop helping {coach}").format(coach=name)[:ON_PHONE], f"helping:stop:{helper.id}"))
    return found


async def helping(desk: Desk, person: Person, what: str, helper_id: int) -> None:
    """One button of an assistant. Raises NotAllowed for anybody else, and for a right that they do not have."""
    helper = await desk.session.get(Helper, helper_id)
    if helper is None or helper.person_id != person.id:
        raise NotAllowed("checkin.not_yours")
    coach = await desk.session.get_one(Coach, helper.coach_id)
    if what == "stop":
        await remove(desk, helper)
    elif what == "people" and await may(desk, person, coach, Right.SEE):
        await people.show(desk, person, coach)
    else:
        raise NotAllowed("checkin.not_yours")


async def help_words(desk: Desk, person: Person) -> Message | None:
    """What /help says to an assistant; None for who helps nobody."""
    found = await helpers.helped_by(desk.session, person)
    if not found:
        return None
    helper, coach = found[0]
    own = await desk.session.get_one(Person, coach.person_id)
    return Message(desk.words(person).say("coaching.you_help", coach=own.label, r=_item(helper, person)))
