"""The table of handlers: each reads the update, calls one use case, and the answer waits in the outbox."""

from __future__ import annotations

from collections.abc import Awaitable, Callable, Coroutine, Mapping
from contextvars import ContextVar
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from telegram import Chat, Update, User
from telegram.ext import (
    BaseHandler,
    CallbackQueryHandler,
    ChatMemberHandler,
    CommandHandler,
    ContextTypes,
    MessageHandler,
    filters,
)

from bot.flows import (
    away,
    checkin,
    coaching,
    day,
    digest,
    doses,
    how,
    joining,
    leaving,
    less,
    listening,
    measuring,
    places,
    progress,
)
from bot.flows.desk import Desk
from bot.flows.rights import NotAllowed
from bot.words.message import Message
from db import courses, people
from db.schema import Coach, Course, Person
from db.writer import current_session
from plans.localtime import zone_names
from plans.redflags import find_flag

Command = Callable[[Desk, Person, str], Awaitable[None]]
Tap = Callable[[Desk, Person, list[str]], Awaitable[str | None]]
Context = ContextTypes.DEFAULT_TYPE


@dataclass(frozen=True, slots=True)
class Stored:
    """What the inbox knows of the update that is being handled: when it was stored, and the file it carries."""

    at: datetime
    document: bytes | None


STORED: ContextVar[Stored] = ContextVar("stored")
"""Set by whoever takes an update out of the inbox, for as long as it is handled."""


# --- commands -------------------------------------------------------------------------------------------------------


async def _start(desk: Desk, person: Person, rest: str) -> None:
    course = await courses.open_course(desk.session, person)
    if rest:
        await joining.open_link(desk, person, rest)
    elif course is not None and course.state == courses.CourseState.JOINING:
        await joining.ask_next(desk, person, course)
    elif course is None and await people.coach_of(desk.session, person) is None:
        await desk.say(person, Message(desk.words(person).say("joining.stranger")))
    else:
        await _help(desk, person, rest)


async def _help(desk: Desk, person: Person, rest: str) -> None:
    is_coach = await people.coach_of(desk.session, person) is not None
    await desk.say(person, Message(desk.words(person).say("coach.help" if is_coach else "client.help")))


async def _privacy(desk: Desk, person: Person, rest: str) -> None:
    await desk.say(person, Message(desk.words(person).say("client.privacy")))


async def _settings(desk: Desk, person: Person, rest: str) -> None:
    await leaving.settings(desk, person)


async def _stop(desk: Desk, person: Person, rest: str) -> None:
    await leaving.ask(desk, person)


async def _today(desk: Desk, person: Person, rest: str) -> None:
    await day.today(desk, person)


async def _how(desk: Desk, person: Person, rest: str) -> None:
    await how.asked(desk, person, rest)


async def _shorter(desk: Desk, person: Person, rest: str) -> None:
    await less.shorter(desk, person, rest)


async def _lighter(desk: Desk, person: Person, rest: str) -> None:
    await less.lighter(desk, person)


async def _progress(desk: Desk, person: Person, rest: str) -> None:
    await progress.show(desk, person)


async def _away(desk: Desk, person: Person, rest: str) -> None:
    await away.asked(desk, person, rest)


async def _measure(desk: Desk, person: Person, rest: str) -> None:
    await measuring.asked(desk, person, rest)


def _for_coach(act: Callable[[Desk, Person, Coach], Awaitable[None]]) -> Command:
    async def command(desk: Desk, person: Person, rest: str) -> None:
        await act(desk, person, await _coach(desk, person))

    return command


async def _coach(desk: Desk, person: Person) -> Coach:
    coach = await people.coach_of(desk.session, person)
    if coach is None:
        raise NotAllowed("coach.not_a_coach")
    return coach


COMMANDS: Mapping[str, Command] = {
    "start": _start,
    "help": _help,
    "today": _today,
    "how": _how,
    "shorter": _shorter,
    "lighter": _lighter,
    "measure": _measure,
    "progress": _progress,
    "away": _away,
    "settings": _settings,
    "privacy": _privacy,
    "stop": _stop,
    "people": _for_coach(coaching.people_list),
    "programmes": _for_coach(coaching.list_programmes),
    "invite": _for_coach(coaching.choose_invite),
    "digest": _for_coach(digest.now),
}
"""What can be typed after a slash."""

MENU: tuple[tuple[str, str], ...] = (
    ("today", "Today's session"),
    ("how", "How a movement is done"),
    ("shorter", "Less time today"),
    ("lighter", "Something lighter today"),
    ("measure", "Take the test"),
    ("progress", "How it has gone so far"),
    ("away", "No sessions for some days"),
    ("settings", "City, time, stop"),
    ("help", "How this works"),
    ("privacy", "What is kept, who sees it"),
)
"""The menu that the platform shows; a coach's commands are told by /help."""


# --- taps -----------------------------------------------------------------------------------------------------------


async def _own_course(desk: Desk, person: Person, words: list[str]) -> Course:
    course = await courses.locked(desk.session, _number(words, 0))
    if course is None or course.person_id != person.id:
        raise NotAllowed("checkin.not_yours")
    return course


async def _tap_checkin(desk: Desk, person: Person, words: list[str]) -> str | None:
    return await checkin.tap(desk, person, _number(words, 0), _word(words, 1), _word(words, 2))


async def _tap_morning(desk: Desk, person: Person, words: list[str]) -> str | None:
    return await checkin.morning(desk, person, _number(words, 0), _word(words, 1))


async def _tap_join(desk: Desk, person: Person, words: list[str]) -> None:
    await joining.agree(desk, person, await _own_course(desk, person, words), _word(words, 1))


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
    if words[0] not in ("zone", "morning"):
        raise NotAllowed("checkin.not_yours")
    person.asking = words[0]
    if words[0] == "zone":
        await desk.say(person, Message(desk.words(person).say("joining.zone")))
    else:
        await desk.say(person, joining.morning_question(desk, person))


async def _tap_stop(desk: Desk, person: Person, words: list[str]) -> None:
    if words[0] == "yes":
        await leaving.stop(desk, person)
    elif words[0] == "ask":
        await leaving.ask(desk, person)
    else:
        await desk.say(person, Message(desk.words(person).say("client.goes_on")))


async def _tap_publish(desk: Desk, person: Person, words: list[str]) -> None:
    await coaching.publish(desk, person, await _coach(desk, person), _number(words, 0))


async def _tap_invite(desk: Desk, person: Person, words: list[str]) -> None:
    await coaching.invite(desk, person, await _coach(desk, person), _number(words, 0), _number(words, 1))


async def _tap_client(desk: Desk, person: Person, words: list[str]) -> None:
    await coaching.client_page(desk, person, await _coach(desk, person), _number(words, 0))


async def _tap_doses(desk: Desk, person: Person, words: list[str]) -> None:
    await doses.show(desk, person, await _coach(desk, person), _number(words, 0))


async def _tap_rule(desk: Desk, person: Person, words: list[str]) -> None:
    await coaching.overrule(desk, person, await _coach(desk, person), _number(words, 0), _word(words, 1))


async def _tap_bar(desk: Desk, person: Person, words: list[str]) -> None:
    await coaching.bar(desk, person, await _coach(desk, person), _number(words, 0), _word(words, 1))


async def _tap_go(desk: Desk, person: Person, words: list[str]) -> None:
    await coaching.ask_found_out(desk, person, await _coach(desk, person), _number(words, 0))


async def _tap_found(desk: Desk, person: Person, words: list[str]) -> None:
    note = coaching.QUICK_NOTES.get(_word(words, 1), "")
    await coaching.let_go(desk, person, await _coach(desk, person), _number(words, 0), note)


async def _tap_short(desk: Desk, person: Person, words: list[str]) -> None:
    await less.tapped(desk, person, _number(words, 0), _word(words, 1))


async def _tap_away(desk: Desk, person: Person, words: list[str]) -> None:
    await away.tapped(desk, person, await _own_course(desk, person, words), _word(words, 1))


async def _tap_measure(desk: Desk, person: Person, words: list[str]) -> None:
    await measuring.tapped(desk, person, words[0])


async def _tap_how(desk: Desk, person: Person, words: list[str]) -> None:
    await how.tapped(desk, person, words[0])


TAPS: Mapping[str, Tap] = {
    "c": _tap_checkin,
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
    "client": _tap_client,
    "doses": _tap_doses,
    "rule": _tap_rule,
    "bar": _tap_bar,
    "go": _tap_go,
    "how": _tap_how,
    "short": _tap_short,
    "away": _tap_away,
    "measure": _tap_measure,
    "found": _tap_found,
}
"""What the first word of a button's data leads to."""

ONCE = frozenset(
    {"join", "screen", "begin", "zone", "time", "stop", "found", "well", "today", "pause", "short", "away"}
)
"""Questions whose buttons go away with the answer."""


# --- from an update to a desk ---------------------------------------------------------------------------------------


def handlers(bot_username: str) -> list[BaseHandler[Any, Any, Any]]:
    """The handlers in the order in which they are asked; everything a person can send has one."""
    rooms = _Rooms(bot_username)
    return [
        MessageHandler(~filters.ChatType.PRIVATE, rooms.not_private),
        CallbackQueryHandler(rooms.tapped),
        ChatMemberHandler(rooms.membership, ChatMemberHandler.MY_CHAT_MEMBER),
        *(CommandHandler(name, rooms.commanded(act)) for name, act in COMMANDS.items()),
        MessageHandler(filters.Document.ALL, rooms.document),
        MessageHandler(filters.TEXT, rooms.text),
        MessageHandler(filters.ALL, rooms.anything_else),
    ]


class _Rooms:
    """Makes a desk for each update, and lets one use case sit at it."""

    def __init__(self, bot_username: str) -> None:
        self._bot_username = bot_username

    def _desk(self, update: Update) -> Desk:
        return Desk(
            session=current_session(),
            now=STORED.get().at,
            cause=f"update:{update.update_id}",
            bot_username=self._bot_username,
            update_id=update.update_id,
        )

    async def _person(self, desk: Desk, update: Update) -> Person:
        chat, user = update.effective_chat, update.effective_user
        if chat is None or user is None:
            raise LookupError(f"update {update.update_id} has no chat or user")
        return await people.known(desk.session, chat.id, label=_label(user), now=desk.now)

    def commanded(self, act: Command) -> Callable[[Update, Context], Coroutine[Any, Any, None]]:
        async def handler(update: Update, context: Context) -> None:
            desk = self._desk(update)
            person = await self._person(desk, update)
            measuring.forget(person)
            rest = " ".join(context.args or [])
            if act is not _start and find_flag(rest) is not None:
                await listening.heard(desk, person, rest)
            try:
                await act(desk, person, rest)
            except NotAllowed as refused:
                await desk.say(person, Message(desk.words(person).say(refused.words)))
            await day.offer(desk, person)

        return handler

    async def tapped(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        query = update.callback_query
        if query is None:
            raise LookupError(f"update {update.update_id} has no tap")
        person = await self._person(desk, update)
        data = query.data or ""
        measuring.forget(person)
        try:
            shown = await _tap(desk, person, data)
            if data.partition(":")[0] in ONCE and query.message is not None:
                await desk.take_buttons(person, query.message.message_id)
        except NotAllowed as refused:
            shown = str(desk.words(person).say(refused.words))
        await desk.answer_tap(person, query.id, shown or "")
        await day.offer(desk, person)

    async def document(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        person = await self._person(desk, update)
        coach = await people.coach_of(desk.session, person)
        document = update.effective_message.document if update.effective_message else None
        if coach is None or document is None:
            await self._caption_heard(desk, person, update)
            await desk.say(person, Message(desk.words(person).say("coach.not_a_coach")))
            return
        name = document.file_name or "programme.yaml"
        await coaching.receive_file(desk, person, coach, name, STORED.get().document)

    async def text(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        message = update.effective_message
        person = await self._person(desk, update)
        await listening.heard(desk, person, (message.text if message else None) or "")
        await day.offer(desk, person)

    async def not_private(self, update: Update, context: Context) -> None:
        """What is said in a group is not for this bot: it counts as handled and changes nothing."""

    async def anything_else(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        person = await self._person(desk, update)
        if not await self._caption_heard(desk, person, update):
            await desk.say(person, Message(desk.words(person).say("checkin.not_understood")))

    async def _caption_heard(self, desk: Desk, person: Person, update: Update) -> bool:
        """Hears what is written under a picture or file like any other words; False when there are none."""
        caption = update.effective_message.caption if update.effective_message else None
        if caption:
            await listening.heard(desk, person, caption)
        return bool(caption)

    async def membership(self, update: Update, context: Context) -> None:
        desk = self._desk(update)
        change = update.my_chat_member
        if change is None or change.chat.type != Chat.PRIVATE:
            return
        if change.new_chat_member.status in ("kicked", "left"):
            gone = await people.mark_unreachable(desk.session, change.chat.id, desk.now)
            if gone is not None:
                await coaching.unreachable(desk, gone)
        else:
            await self._person(desk, update)


async def _tap(desk: Desk, person: Person, data: str) -> str | None:
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


def _label(user: User) -> str:
    return (user.first_name or "").strip()[:64] or "?"
