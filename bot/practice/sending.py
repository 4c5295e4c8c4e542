"""What the bot says: messages, pictures, documents, edits, answers to taps."""

from __future__ import annotations

import re
import secrets
from collections import deque
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from bot.practice import fields, shapes
from bot.practice.errors import ApiError, bad, too_many
from bot.practice.fields import Params, Upload
from bot.practice.limits import LIMITS
from bot.practice.shapes import Body
from bot.practice.store import File
from bot.practice.world import World

TAP_SECONDS = 900.0
"""How old a tap may be when it is answered. The platform has such a limit and does not publish it: our own number."""

ACTIONS = frozenset(
    {
        "typing",
        "upload_photo",
        "record_video",
        "upload_video",
        "record_voice",
        "upload_voice",
        "upload_document",
        "choose_sticker",
        "find_location",
        "record_video_note",
        "upload_video_note",
    }
)
"""What a bot may say that it is doing."""


_CONTENT: Mapping[str, Callable[[File], Any]] = {
    "photo": shapes.photo,
    "document": shapes.document,
    "animation": shapes.animation,
    "video": shapes.video,
}
"""What a message says of its file, by its kind."""


@dataclass(frozen=True, slots=True)
class Rates:
    """How much is let through: requests that send, in a second in all and in one chat. None: any number."""

    per_second: int | None = None
    per_chat_second: int | None = None


class Sending:
    """The Bot API's methods that reach a person."""

    def __init__(self, world: World, rates: Rates) -> None:
        self._world = world
        self._rates = rates
        self._sent: deque[tuple[float, int]] = deque()

    # --- new messages -------------------------------------------------------------------------------------------------

    def send_message(self, params: Params) -> Body:
        """sendMessage."""
        chat = self.reachable(params)
        text, entities = fields.message_text(params)
        preview, markup = fields.link_preview(params), fields.keyboard(params)
        return self._posted(chat, text=text, entities=entities, link_preview_options=preview, reply_markup=markup)

    def send_photo(self, params: Params) -> Body:
        """sendPhoto."""
        return self._send_file(params, "photo")

    def send_document(self, params: Params) -> Body:
        """sendDocument."""
        return self._send_file(params, "document")

    def send_animation(self, params: Params) -> Body:
        """sendAnimation."""
        return self._send_file(params, "animation")

    def send_video(self, params: Params) -> Body:
        """sendVideo."""
        return self._send_file(params, "video")

    def send_album(self, params: Params) -> list[Body]:
        """sendMediaGroup, with photos that are kept already."""
        chat = self.reachable(params)
        media = fields.structure(params, "media", None)
        if not isinstance(media, list) or not all(
            isinstance(one, dict) and one.get("type") == "photo" for one in media
        ):
            raise bad("can't parse media: expected an Array of InputMedia, here photos only")
        LIMITS["album"].check(len(media))
        group = secrets.token_hex(8)
        contents = [self._photo_of_album(one) | {"media_group_id": group} for one in media]
        return [self._posted(chat, **content) for content in contents]

    def _photo_of_album(self, media: Params) -> Body:
        file = self._kept(fields.word(media, "media"), "photo")
        if file is None:
            raise bad("wrong file identifier/HTTP URL specified")
        caption, entities = fields.caption(media)
        return {"photo": shapes.photo(file), "caption": caption, "caption_entities": entities}

    def _send_file(self, params: Params, kind: str) -> Body:
        chat = self.reachable(params)
        given = fields.file(params, kind)
        caption, entities = fields.caption(params)
        markup = fields.keyboard(params)
        known = self._kept(given, kind) if isinstance(given, str) else None
        file = known or self._uploaded(given, kind)
        content = {kind: _CONTENT[kind](file)} | ({"document": shapes.document(file)} if kind == "animation" else {})
        more = {"caption": caption, "caption_entities": entities, "reply_markup": markup}
        return self._posted(chat, file=None if known else file, **content, **more)

    def _uploaded(self, given: Upload | str, kind: str) -> File:
        if isinstance(given, str):
            raise bad("wrong file identifier/HTTP URL specified")
        if kind == "photo":
            self._world.check_photo(given.body)
        else:
            LIMITS["document"].check(len(given.body))
        return self._world.new_file(kind, given.name, given.body)

    def _kept(self, file_id: str, kind: str) -> File | None:
        found = self._world.store.file(file_id)
        if found is not None and found.kind != kind:
            raise bad(f"can't use file of type {found.kind.title()} as {kind.title()}")
        return found

    def _posted(self, chat: int, *, file: File | None = None, **content: Any) -> Body:
        self._within_rates(chat)
        store = self._world.store
        with store.together():
            if file is not None:
                store.put_file(file)
            message = self._world.new_message(chat, None, **content)
            store.put_message(chat, message)
        self._world.messages_news.tell()
        return message

    # --- changes ------------------------------------------------------------------------------------------------------

    def edit_text(self, params: Params) -> Body:
        """editMessageText."""
        message = self._own_message(params)
        if "text" not in message:
            raise bad("there is no text in the message to edit")
        text, entities = fields.message_text(params)
        content = {"text": text, "entities": entities, "link_preview_options": fields.link_preview(params)}
        return self._edited(message, content, params)

    def edit_caption(self, params: Params) -> Body:
        """editMessageCaption."""
        message = self._own_message(params)
        if "text" in message:
            raise bad("there is no caption in the message to edit")
        caption, entities = fields.caption(params)
        return self._edited(message, {"caption": caption, "caption_entities": entities}, params)

    def edit_media(self, params: Params) -> Body:
        """editMessageMedia, with a photo."""
        message = self._own_message(params)
        media = fields.structure(params, "media", None)
        if not isinstance(media, dict) or media.get("type") != "photo":
            raise bad("can't parse InputMedia: only a photo can be put there")
        given = fields.file({**params, "media": media.get("media")}, "media")
        caption, entities = fields.caption(media)
        known = self._kept(given, "photo") if isinstance(given, str) else None
        file = known or self._uploaded(given, "photo")
        if known is None:
            self._world.store.put_file(file)
        content = {"photo": shapes.photo(file), "caption": caption, "caption_entities": entities}
        words = ("text", "entities", "link_preview_options")
        return self._edited({key: value for key, value in message.items() if key not in words}, content, params)

    def edit_markup(self, params: Params) -> Body:
        """editMessageReplyMarkup."""
        return self._edited(self._own_message(params), {}, params)

    def _edited(self, message: Body, content: Mapping[str, Any], params: Params) -> Body:
        wanted = {**content, "reply_markup": fields.keyboard(params, inline_only=True)}
        if all((message.get(name) or None) == (value or None) for name, value in wanted.items()):
            raise bad(
                "message is not modified: specified new message content and reply markup are exactly the same as a "
                "current content and reply markup of the message"
            )
        chat = int(message["chat"]["id"])
        self._within_rates(chat)
        kept = {name: value for name, value in message.items() if name not in wanted}
        changed = {**kept, **{n: v for n, v in wanted.items() if v}, "edit_date": self._world.now()}
        self._world.store.put_message(chat, changed)
        self._world.messages_news.tell()
        return changed

    def delete(self, params: Params) -> bool:
        """deleteMessage."""
        chat = self.reachable(params)
        message = self._world.store.message(chat, fields.number(params, "message_id"))
        if message is None:
            raise bad("message to delete not found")
        LIMITS["hours until deleting"].check(-(-(self._world.now() - message["date"]) // 3600))
        self._world.store.delete_message(chat, message["message_id"])
        self._world.messages_news.tell()
        return True

    # --- without a message --------------------------------------------------------------------------------------------

    def answer_tap(self, params: Params) -> bool:
        """answerCallbackQuery."""
        text = fields.word(params, "text")
        LIMITS["tap answer"].check(len(text))
        oldest = self._world.machine.now() - TAP_SECONDS
        if not self._world.store.answer_tap(fields.word(params, "callback_query_id"), text, oldest):
            raise bad("query is too old and response timeout expired or query ID is invalid")
        self._world.messages_news.tell()
        return True

    def action(self, params: Params) -> bool:
        """sendChatAction."""
        self.reachable(params)
        if fields.word(params, "action") not in ACTIONS:
            raise bad("wrong parameter action in request")
        return True

    def get_chat(self, params: Params) -> Body:
        """getChat."""
        return shapes.full_chat(self._chat(params))

    # --- who and whether ----------------------------------------------------------------------------------------------

    def reachable(self, params: Params) -> int:
        """The chat of a request: it exists and has not blocked the bot. Raises ApiError."""
        found = self._chat(params)
        if found["blocked"]:
            raise ApiError(403, "Forbidden: bot was blocked by the user")
        return int(found["id"])

    def _chat(self, params: Params) -> Body:
        text = fields.word(params, "chat_id").strip()
        if not text:
            raise bad("chat_id is empty")
        found = self._world.store.chat(int(text)) if re.fullmatch(r"-?\d{1,16}", text) else None
        if found is None:
            raise bad("chat not found")
        return found

    def _own_message(self, params: Params) -> Body:
        chat = self.reachable(params)
        message_id = fields.number(params, "message_id")
        if message_id <= 0:
            raise bad("message identifier is not specified")
        found = self._world.store.message(chat, message_id)
        if found is None:
            raise bad("message to edit not found")
        if found["from"]["id"] != self._world.bot_id:
            raise bad("message can't be edited")
        return found

    def _within_rates(self, chat: int) -> None:
        """Counts a request that sends. Raises ApiError for one too many."""
        most, most_in_chat = self._rates.per_second, self._rates.per_chat_second
        if most is None and most_in_chat is None:
            return
        now = self._world.machine.now()
        while self._sent and self._sent[0][0] <= now - 1:
            self._sent.popleft()
        in_chat = sum(1 for _at, where in self._sent if where == chat)
        if (most is not None and len(self._sent) >= most) or (most_in_chat is not None and in_chat >= most_in_chat):
            raise too_many(1)
        self._sent.append((now, chat))
