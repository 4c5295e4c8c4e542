"""The local chat platform: people on one side, the Bot API's methods on the other."""

from __future__ import annotations

import json
import re
from collections.abc import Callable, Mapping
from typing import Any

from bot.clocks import Calendar, Machine
from bot.practice import fields, shapes
from bot.practice.errors import ApiError, bad
from bot.practice.fields import Params
from bot.practice.limits import LIMITS
from bot.practice.sending import Rates, Sending
from bot.practice.shapes import Body
from bot.practice.store import Store
from bot.practice.updates import Updates
from bot.practice.webhook import Deliverer
from bot.practice.world import NoSuch, World

__all__ = ["NoSuch", "Platform", "Rates"]


class Platform(World):
    """One bot and the people who chat with it. Durable when its store is."""

    def __init__(
        self, token: str, *, calendar: Calendar, machine: Machine, store: Store, rates: Rates | None = None
    ) -> None:
        if not re.fullmatch(r"\d{1,15}:[A-Za-z0-9_-]+", token):
            raise ValueError("the bot's token is not of the form 1234:letters-and-digits")
        super().__init__(int(token.partition(":")[0]), calendar=calendar, machine=machine, store=store)
        self.token = token
        self._updates = Updates(self)
        self._methods = self._table(Sending(self, rates or Rates()))

    def deliverer(self) -> Deliverer:
        """What brings updates to the webhook while it runs."""
        return Deliverer(self, self._updates)

    async def call(self, method: str, params: Params) -> Any:
        """One method's result; a method's name may be written in any case. Raises ApiError."""
        if method.lower() == "getupdates":
            return await self._updates.get(params)
        found = self._methods.get(method.lower())
        if found is None:
            raise ApiError(404, "Not Found: method not found")
        return found(params)

    def _table(self, sending: Sending) -> Mapping[str, Callable[[Params], Any]]:
        return {
            "getme": self._get_me,
            "getfile": self._get_file,
            "setmycommands": self._set_commands,
            "getmycommands": self._get_commands,
            "setwebhook": self._updates.set_webhook,
            "deletewebhook": self._updates.delete_webhook,
            "getwebhookinfo": self._updates.webhook_info,
            "sendmessage": sending.send_message,
            "sendphoto": sending.send_photo,
            "sendanimation": sending.send_animation,
            "sendvideo": sending.send_video,
            "senddocument": sending.send_document,
            "sendmediagroup": sending.send_album,
            "sendchataction": sending.action,
            "editmessagetext": sending.edit_text,
            "editmessagecaption": sending.edit_caption,
            "editmessagemedia": sending.edit_media,
            "editmessagereplymarkup": sending.edit_markup,
            "deletemessage": sending.delete,
            "answercallbackquery": sending.answer_tap,
            "getchat": sending.get_chat,
        }

    def _get_me(self, _params: Params) -> Body:
        abilities = ("can_join_groups", "can_read_all_group_messages", "supports_inline_queries", "has_main_web_app")
        return {**shapes.bot(self.bot_id), **dict.fromkeys((*abilities, "can_connect_to_business"), False)}

    def _get_file(self, params: Params) -> Body:
        found = self.store.file(fields.word(params, "file_id"))
        if found is None:
            raise bad("invalid file_id")
        LIMITS["file to fetch"].check(len(found.body))
        path = f"{found.kind}s/{found.id}"
        return {
            "file_id": found.id,
            "file_unique_id": found.unique_id,
            "file_size": len(found.body),
            "file_path": path,
        }

    def _set_commands(self, params: Params) -> bool:
        commands = fields.structure(params, "commands", None)
        if not isinstance(commands, list) or not all(isinstance(each, dict) for each in commands):
            raise bad("can't parse commands: expected an Array of BotCommand")
        LIMITS["commands"].check(len(commands))
        for command in commands:
            name, description = str(command.get("command", "")), str(command.get("description", ""))
            LIMITS["command name"].check(len(name))
            LIMITS["command description"].check(len(description))
            if not re.fullmatch(r"[a-z0-9_]+", name):
                raise bad("BOT_COMMAND_INVALID")
        self.store.keep(_commands_of(params), json.dumps(commands))
        return True

    def _get_commands(self, params: Params) -> Any:
        return json.loads(self.store.fact(_commands_of(params)) or "[]")


def _commands_of(params: Params) -> str:
    scope = fields.structure(params, "scope", {"type": "default"})
    return f"commands {json.dumps(scope, sort_keys=True)} {fields.word(params, 'language_code')}"
