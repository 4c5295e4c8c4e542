"""From a stored message to the chat library's call: JSON becomes typed arguments, a file its bytes or a known id."""

from __future__ import annotations

import base64
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from telegram import InlineKeyboardMarkup, InputFile, LinkPreviewOptions, Message

from db.outbox import METHODS, Letter

_FILES: Mapping[str, str] = {"send_photo": "photo", "send_document": "document"}
"""The argument of a method that carries a file."""

_TYPES: Mapping[str, Any] = {"reply_markup": InlineKeyboardMarkup, "link_preview_options": LinkPreviewOptions}
"""The arguments that the library wants in a type of its own."""

_OURS = frozenset({"again"})
"""What only the outbox reads."""


@dataclass(frozen=True, slots=True)
class File:
    """A kept file: its bytes, and the id under which the platform has it for this method, if it has it."""

    body: bytes
    file_id: str | None


def attachment_of(letter: Letter) -> str | None:
    """The digest of the kept file that a message carries; None for one without a file or with its own bytes."""
    field = _FILES.get(letter.method)
    return None if field is None else letter.payload[field].get("attachment")


def arguments_of(letter: Letter, file: File | None) -> dict[str, Any]:
    """What the method is called with. Raises `LookupError` or `ValueError` for a message that nobody could send."""
    if letter.method not in METHODS:
        raise ValueError(f"message {letter.id} asks for {letter.method!r}, which is not sent")
    arguments = {name: _typed(name, value) for name, value in letter.payload.items() if name not in _OURS}
    if letter.method != "answer_callback_query":
        arguments["chat_id"] = letter.chat
    if letter.method.startswith("edit_"):
        arguments["message_id"] = _edited(letter)
    field = _FILES.get(letter.method)
    return arguments if field is None else arguments | {field: _content(arguments[field], file)}


def uploaded(letter: Letter, message: Message | None) -> tuple[str, str] | None:
    """The digest of a sent file and the id under which the platform keeps it; None if there is nothing to note."""
    digest = attachment_of(letter)
    if digest is None or message is None:
        return None
    kept = message.photo[-1] if message.photo else message.document
    return None if kept is None else (digest, kept.file_id)


def _content(stored: Mapping[str, str], file: File | None) -> InputFile | str:
    if file is None:
        return InputFile(base64.b64decode(stored["base64"], validate=True), filename=stored["filename"])
    return file.file_id or InputFile(file.body, filename=stored["filename"])


def _typed(name: str, value: Any) -> Any:
    kind = _TYPES.get(name)
    return value if kind is None or value is None else kind.de_json(value, None)


def _edited(letter: Letter) -> int:
    found = letter.message_id if letter.message_id is not None else letter.payload.get("message_id")
    if found is None:
        raise ValueError(f"message {letter.id} edits a message that has no id")
    return int(found)
