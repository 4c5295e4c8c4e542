"""The local chat platform: people who speak, tap and block, and the Bot API's methods as the bot knows them."""

from __future__ import annotations

import asyncio
import json
import re
import secrets
from collections import deque
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from bot.clocks import Calendar, Machine
from bot.practice.entities import parse_html
from bot.practice.errors import ApiError
from bot.practice.limits import LIMITS, utf16
from bot.practice.store import Store

BOT_USERNAME = "easeward_practice_bot"
FIRST_UPDATE = 731_000_000

Params = Mapping[str, Any]


class NoSuch(LookupError):
    """A chat, message, button or file that is not there; the message names it."""


@dataclass(frozen=True, slots=True)
class Rates:
    """How much is let through: requests that send, in a second in all and in one chat. None: any number."""

    per_second: int | None = None
    per_chat_second: int | None = None


class Platform:
    """One bot and the people who chat with it. Durable when its store is."""

    def __init__(
        self, token: str, *, calendar: Calendar, machine: Machine, store: Store, rates: Rates | None = None
    ) -> None:
        self.token = token
        self._calendar = calendar
        self._machine = machine
        self._store = store
        self._rates = rates or Rates()
        self._sent: deque[tuple[float, int]] = deque()
        self._news = asyncio.Event()
        self._polls = 0
        self._listeners: set[asyncio.Event] = set()
        self.bot_id = int(token.partition(":")[0])

    # --- people -----------------------------------------------------------------------------------------------------

    def say(self, chat: int, text: str, *, first_name: str | None = None) -> int:
        """A person types something; a chat that is new is a new person. Returns the message's id."""
        person = self._person(chat, first_name)
        LIMITS["text"].check(utf16(text))
        found = re.match(r"^/start(?:@\w+)? (\S+)$", text)
        if found is not None:
            LIMITS["start parameter"].check(len(found[1]))
        message = self._message(chat, person, text=text, entities=_commands(text))
        self._receive({"message": message}, stored=message)
        return int(message["message_id"])

    def send_document(self, chat: int, name: str, body: bytes, *, first_name: str | None = None) -> int:
        """A person sends a file. Returns the message's id."""
        person = self._person(chat, first_name)
        file = secrets.token_urlsafe(24)
        self._store.put_file(file, name, body)
        document = {"file_id": file, "file_unique_id": file[:12], "file_name": name, "file_size": len(body)}
        message = self._message(chat, person, document=document)
        self._receive({"message": message}, stored=message)
        return int(message["message_id"])

    def tap(self, chat: int, message_id: int, button: str) -> str:
        """A person taps a button by its data or its label; returns the tap's id. Raises NoSuch."""
        person = self._known(chat)
        message = self._store.message(chat, message_id)
        if message is None:
            raise NoSuch(f"message {message_id} in chat {chat}")
        data = _data_of(message, button)
        tap = secrets.token_hex(8)
        self._store.put_tap(tap, chat)
        query = {
            "id": tap,
            "from": _user(person),
            "message": message,
            "chat_instance": str(chat),
            "data": data,
        }
        self._receive({"callback_query": query})
        return tap

    def forge_tap(self, chat: int, message_id: int, data: str) -> str:
        """A tap with data that no button has, as a meddled client can send it."""
        person = self._known(chat)
        message = self._store.message(chat, message_id)
        tap = secrets.token_hex(8)
        self._store.put_tap(tap, chat)
        query = {"id": tap, "from": _user(person), "chat_instance": str(chat), "data": data}
        self._receive({"callback_query": query | ({"message": message} if message else {})})
        return tap

    def block(self, chat: int, on: bool) -> None:
        """A person blocks the bot, or takes it back; the bot is told either way."""
        person = self._known(chat)
        if person["blocked"] == on:
            return
        self._store.put_chat(chat, person["first_name"], on)
        bot = self._bot()
        free, kicked = {"user": bot, "status": "member"}, {"user": bot, "status": "kicked", "until_date": 0}
        change = {
            "chat": _chat(person),
            "from": _user(person),
            "date": self._now(),
            "old_chat_member": free if on else kicked,
            "new_chat_member": kicked if on else free,
        }
        self._receive({"my_chat_member": change})

    def messages(self, chat: int, *, after: int = 0, since: int = 0) -> list[tuple[int, dict[str, Any]]]:
        """A chat's messages with an id above `after` that changed since a change number. Raises NoSuch."""
        self._known(chat)
        return self._store.messages(chat, after, since)

    def chats(self) -> list[dict[str, Any]]:
        """Everybody who has spoken."""
        return self._store.chats()

    def tap_answer(self, tap: str) -> str | None:
        """What the bot answered to a tap, None as long as it has not. Raises NoSuch."""
        known, answer = self._store.tap_answer(tap)
        if not known:
            raise NoSuch(f"tap {tap}")
        return answer

    def file(self, file: str) -> tuple[str, bytes]:
        """A file's name and bytes. Raises NoSuch."""
        found = self._store.file(file)
        if found is None:
            raise NoSuch(f"file {file}")
        return found

    def unconfirmed(self) -> list[str]:
        """What the bot has not fetched and confirmed yet, in words."""
        count = self._store.unconfirmed()
        return [f"{count} updates are not fetched yet"] if count else []

    def listen(self) -> asyncio.Event:
        """An event that is set whenever a message appears or changes."""
        event = asyncio.Event()
        self._listeners.add(event)
        return event

    def unlisten(self, event: asyncio.Event) -> None:
        """Ends that."""
        self._listeners.discard(event)

    def _person(self, chat: int, first_name: str | None) -> dict[str, Any]:
        found = self._store.chat(chat)
        if found is None:
            if chat <= 0:
                raise NoSuch(f"chat {chat}: private chats have numbers above 0")
            self._store.put_chat(chat, first_name or f"Person {chat}", False)
            found = self._known(chat)
        return found

    def _known(self, chat: int) -> dict[str, Any]:
        found = self._store.chat(chat)
        if found is None:
            raise NoSuch(f"chat {chat}")
        return found

    def _receive(self, update: dict[str, Any], *, stored: dict[str, Any] | None = None) -> None:
        self._store.begin()
        try:
            if stored is not None:
                self._store.put_message(stored["chat"]["id"], stored)
            self._store.put_update({"update_id": FIRST_UPDATE + self._store.count("update"), **update})
        except BaseException:
            self._store.rollback()
            raise
        self._store.commit()
        self._news.set()
        self._tell()

    def _tell(self) -> None:
        for event in self._listeners:
            event.set()

    def _now(self) -> int:
        return int(self._calendar.now().timestamp())

    def _bot(self) -> dict[str, Any]:
        return {"id": self.bot_id, "is_bot": True, "first_name": "Easeward", "username": BOT_USERNAME}

    def _message(self, chat: int, sender: Mapping[str, Any] | None, **content: Any) -> dict[str, Any]:
        """A new message; without a sender it is the bot's. Fields without content are left out."""
        return {
            "message_id": self._store.count("message"),
            "date": self._now(),
            "chat": _chat(self._known(chat)),
            "from": _user(sender) if sender is not None else self._bot(),
            **{name: value for name, value in content.items() if value},
        }

    # --- the Bot API ------------------------------------------------------------------------------------------------

    async def call(self, method: str, params: Params) -> Any:
        """One method's result. Raises ApiError."""
        if method == "getUpdates":
            return await self._get_updates(params)
        found = self._methods().get(method.lower())
        if found is None:
            raise ApiError(404, "Not Found")
        return found(params)

    def _methods(self) -> Mapping[str, Callable[[Params], Any]]:
        return {
            "getme": self._get_me,
            "sendmessage": self._send_message,
            "editmessagetext": self._edit_text,
            "editmessagereplymarkup": self._edit_markup,
            "answercallbackquery": self._answer_tap,
            "getfile": self._get_file,
            "setmycommands": self._set_commands,
            "getmycommands": self._get_commands,
        }

    def _get_me(self, _params: Params) -> dict[str, Any]:
        return {
            **self._bot(),
            "can_join_groups": False,
            "can_read_all_group_messages": False,
            "supports_inline_queries": False,
        }

    async def _get_updates(self, params: Params) -> list[dict[str, Any]]:
        limit, wait = int(params.get("limit") or 100), min(50, int(params.get("timeout") or 0))
        LIMITS["updates at once"].check(limit)
        self._polls += 1
        mine = self._polls
        self._news.set()
        offset = int(params.get("offset") or 0)
        if offset > 0:
            self._store.confirm(offset)
        until = self._machine.now() + wait
        while True:
            found = self._store.updates(limit)
            left = until - self._machine.now()
            if found or left <= 0:
                return found
            self._news.clear()
            try:
                await asyncio.wait_for(self._news.wait(), left)
            except TimeoutError:
                return []
            if self._polls != mine:
                raise ApiError(
                    409,
                    "Conflict: terminated by other getUpdates request; make sure that only one bot instance is running",
                )

    def _send_message(self, params: Params) -> dict[str, Any]:
        chat = self._reachable(params)
        text, entities = _text(params)
        markup = _markup(params)
        self._within_rates(chat)
        message = self._message(chat, None, text=text, entities=entities, reply_markup=markup)
        self._store.put_message(chat, message)
        self._tell()
        return message

    def _edit_text(self, params: Params) -> dict[str, Any]:
        chat, message = self._own_message(params)
        text, entities = _text(params)
        return self._edited(chat, message, {"text": text, "entities": entities, "reply_markup": _markup(params)})

    def _edit_markup(self, params: Params) -> dict[str, Any]:
        chat, message = self._own_message(params)
        same = {"text": message.get("text"), "entities": message.get("entities", [])}
        return self._edited(chat, message, {**same, "reply_markup": _markup(params)})

    def _edited(self, chat: int, message: dict[str, Any], content: dict[str, Any]) -> dict[str, Any]:
        before = {name: message.get(name) or None for name in content}
        if before == {name: value or None for name, value in content.items()}:
            raise ApiError(
                400,
                "Bad Request: message is not modified: specified new message content and reply markup are exactly "
                "the same as a current content and reply markup of the message",
            )
        self._within_rates(chat)
        kept = {name: value for name, value in message.items() if name not in content}
        changed = {**kept, **{n: v for n, v in content.items() if v}, "edit_date": self._now()}
        self._store.put_message(chat, changed)
        self._tell()
        return changed

    def _answer_tap(self, params: Params) -> bool:
        text = str(params.get("text") or "")
        LIMITS["tap answer"].check(len(text))
        if not self._store.answer_tap(str(params.get("callback_query_id")), text):
            raise ApiError(400, "Bad Request: query is too old and response timeout expired or query ID is invalid")
        self._tell()
        return True

    def _get_file(self, params: Params) -> dict[str, Any]:
        file = str(params.get("file_id"))
        found = self._store.file(file)
        if found is None:
            raise ApiError(400, "Bad Request: invalid file_id")
        LIMITS["file to fetch"].check(len(found[1]))
        return {
            "file_id": file,
            "file_unique_id": file[:12],
            "file_size": len(found[1]),
            "file_path": f"documents/{file}",
        }

    def _set_commands(self, params: Params) -> bool:
        commands = _as_json(params.get("commands"), [])
        LIMITS["commands"].check(len(commands))
        for command in commands:
            name = str(command.get("command", ""))
            LIMITS["command name"].check(len(name))
            LIMITS["command description"].check(len(str(command.get("description", ""))))
            if not re.fullmatch(r"[a-z0-9_]+", name):
                raise ApiError(400, "Bad Request: BOT_COMMAND_INVALID")
        self._store.keep("commands", json.dumps(commands))
        return True

    def _get_commands(self, _params: Params) -> Any:
        return json.loads(self._store.fact("commands") or "[]")

    def _reachable(self, params: Params) -> int:
        """The chat of a request: it exists and has not blocked the bot."""
        text = str(params.get("chat_id", "")).strip()
        if not text:
            raise ApiError(400, "Bad Request: chat_id is empty")
        found = self._store.chat(int(text)) if re.fullmatch(r"-?\d{1,16}", text) else None
        if found is None:
            raise ApiError(400, "Bad Request: chat not found")
        if found["blocked"]:
            raise ApiError(403, "Forbidden: bot was blocked by the user")
        return int(found["id"])

    def _own_message(self, params: Params) -> tuple[int, dict[str, Any]]:
        chat = self._reachable(params)
        found = self._store.message(chat, int(params.get("message_id") or 0))
        if found is None:
            raise ApiError(400, "Bad Request: message to edit not found")
        if found["from"]["id"] != self.bot_id:
            raise ApiError(400, "Bad Request: message can't be edited")
        return chat, found

    def _within_rates(self, chat: int) -> None:
        now = self._machine.now()
        while self._sent and self._sent[0][0] <= now - 1:
            self._sent.popleft()
        in_all, in_chat = len(self._sent), sum(1 for _at, where in self._sent if where == chat)
        most, most_in_chat = self._rates.per_second, self._rates.per_chat_second
        if (most is not None and in_all >= most) or (most_in_chat is not None and in_chat >= most_in_chat):
            raise ApiError(429, "Too Many Requests: retry after 1", retry_after=1)
        self._sent.append((now, chat))


# --- shapes -----------------------------------------------------------------------------------------------------


def _user(person: Mapping[str, Any]) -> dict[str, Any]:
    return {"id": person["id"], "is_bot": False, "first_name": person["first_name"], "language_code": "en"}


def _chat(person: Mapping[str, Any]) -> dict[str, Any]:
    return {"id": person["id"], "type": "private", "first_name": person["first_name"]}


def _commands(text: str) -> list[dict[str, Any]]:
    found = re.match(r"^/[a-zA-Z0-9_]{1,32}(?:@\w+)?", text)
    return [{"type": "bot_command", "offset": 0, "length": found.end()}] if found else []


def _as_json(value: Any, default: Any) -> Any:
    if value is None or value == "":
        return default
    if not isinstance(value, str):
        return value
    try:
        return json.loads(value)
    except ValueError as error:
        raise ApiError(400, "Bad Request: can't parse JSON object") from error


def _text(params: Params) -> tuple[str, list[dict[str, Any]]]:
    """A request's text after its markup, trimmed as the platform trims, and its entities."""
    text = str(params.get("text") or "")
    mode = params.get("parse_mode")
    if mode and str(mode).lower() != "html":
        raise ApiError(400, "Bad Request: unsupported parse_mode")
    plain, entities = parse_html(text) if mode else (text, [])
    _as_json(params.get("link_preview_options"), {})
    plain = plain.rstrip()
    LIMITS["text"].check(utf16(plain))
    return plain, entities


def _markup(params: Params) -> dict[str, Any] | None:
    """A request's inline keyboard, checked; an empty one is none."""
    markup = _as_json(params.get("reply_markup"), None)
    if markup is None:
        return None
    rows = markup.get("inline_keyboard") if isinstance(markup, dict) else None
    if not isinstance(rows, list) or not all(isinstance(row, list) for row in rows):
        raise ApiError(400, "Bad Request: object expected as reply markup")
    LIMITS["buttons"].check(sum(len(row) for row in rows))
    for row in rows:
        LIMITS["buttons in a row"].check(len(row))
        for button in row:
            LIMITS["button label"].check(len(str(button.get("text", "")).strip()))
            LIMITS["callback data"].check(len(str(button.get("callback_data", "")).encode()))
    return {"inline_keyboard": rows} if rows else None


def _data_of(message: Mapping[str, Any], button: str) -> str:
    rows = (message.get("reply_markup") or {}).get("inline_keyboard", [])
    buttons = [found for row in rows for found in row]
    for found in buttons:
        if button in (found["callback_data"], found["text"]):
            return str(found["callback_data"])
    labels = ", ".join(found["text"] for found in buttons) or "none"
    raise NoSuch(f"button {button!r} under message {message['message_id']}: there are {labels}")
