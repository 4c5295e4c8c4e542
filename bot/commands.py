"""What can be typed after a slash: the table from a command to its use case, and the menu that the platform shows."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Mapping

from bot.flows import (
    assistants,
    away,
    day,
    digest,
    how,
    inviting,
    joining,
    leaving,
    less,
    measuring,
    mine,
    programmes,
    progress,
    settings,
)
from bot.flows import people as clients_list
from bot.flows.asking import turn_away
from bot.flows.desk import Desk
from bot.flows.rights import acting_for
from bot.words import words
from bot.words.message import Message
from db import courses, helpers, people
from db.helpers import Right
from db.schema import Coach, Person

Command = Callable[[Desk, Person, str], Awaitable[None]]


async def _start(desk: Desk, person: Person, rest: str) -> None:
    course = await courses.open_course(desk.session, person)
    if rest:
        await joining.open_link(desk, person, rest)
    elif course is not None and course.state == courses.CourseState.JOINING:
        await joining.ask_next(desk, person, course)
    elif course is None and not await _has_a_part(desk, person):
        await desk.say(person, Message(desk.words(person).say("joining.stranger")))
    else:
        await _help(desk, person, rest)


async def _has_a_part(desk: Desk, person: Person) -> bool:
    """Whether somebody is a coach or helps one."""
    is_coach = await people.coach_of(desk.session, person) is not None
    return is_coach or bool(await helpers.helped_by(desk.session, person))


async def _help(desk: Desk, person: Person, rest: str) -> None:
    helps = await assistants.help_words(desk, person)
    is_coach = await people.coach_of(desk.session, person) is not None
    has_course = await courses.open_course(desk.session, person) is not None
    if is_coach or has_course or helps is None:
        await desk.say(person, Message(desk.words(person).say("coach.help" if is_coach else "client.help")))
    if helps is not None:
        await desk.say(person, helps)


async def _privacy(desk: Desk, person: Person, rest: str) -> None:
    await desk.say(person, Message(desk.words(person).say("client.privacy")))


def _alone(act: Callable[[Desk, Person], Awaitable[None]]) -> Command:
    """A command whose further words say nothing."""

    async def command(desk: Desk, person: Person, rest: str) -> None:
        await act(desk, person)

    return command


def _for_coach(act: Callable[[Desk, Person, Coach], Awaitable[None]], right: Right) -> Command:
    async def command(desk: Desk, person: Person, rest: str) -> None:
        coach = await acting_for(desk, person, right)
        turn_away(person)
        await act(desk, person, coach)

    return command


async def _people(desk: Desk, person: Person, rest: str) -> None:
    coach = await acting_for(desk, person, Right.SEE)
    turn_away(person)
    await clients_list.show(desk, person, coach, rest)


COMMANDS: Mapping[str, Command] = {
    "start": _start,
    "help": _help,
    "today": _alone(day.today),
    "how": how.asked,
    "shorter": less.shorter,
    "lighter": _alone(less.lighter),
    "measure": _alone(measuring.asked),
    "progress": _alone(progress.show),
    "away": away.asked,
    "settings": _alone(settings.show),
    "mine": _alone(mine.show),
    "privacy": _privacy,
    "stop": _alone(leaving.ask),
    "people": _people,
    "programmes": _for_coach(programmes.list_programmes, Right.PUBLISH),
    "invite": _for_coach(inviting.choose_invite, Right.PUBLISH),
    "digest": _for_coach(digest.now, Right.SEE),
}
"""What can be typed after a slash."""


def menu(language: str) -> list[tuple[str, str]]:
    """The menu that the platform shows in a language, as (command, what it does); a coach's commands are in /help."""
    _ = words(language).gettext
    return [
        ("today", _("Today's session")),
        ("how", _("How a movement is done")),
        ("shorter", _("Less time today")),
        ("lighter", _("Something lighter today")),
        ("measure", _("Take the test")),
        ("progress", _("How it has gone so far")),
        ("away", _("No sessions for some days")),
        ("settings", _("City, time, language, stop")),
        ("help", _("How this works")),
        ("mine", _("All your data, or delete it")),
        ("privacy", _("What is kept, who sees it")),
    ]
