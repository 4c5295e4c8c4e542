"""From a stored message to a request of the Bot API, and from its answer to what it means for the message."""

from __future__ import annotations

import base64
import json
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any

from db.delivery import Failure, Reason, words_alone
from db.letters import Letter
from db.outbox import METHODS

_FILES: Mapping[str, str] = {
    "send_photo": "photo",
    "send_animation": "animation",
    "send_video": "video",
    "send_document": "document",
    "edit_message_media": "photo",
}
"""The field of a method that carries a file."""

_OURS = frozenset({"again", "otherwise"})
"""What only the outbox reads."""


@dataclass(frozen=True, slots=True)
class File:
    """A kept file: its bytes, or the id under which the platform has it for this method, or both."""

    body: bytes | None
    file_id: str | None


@dataclass(frozen=True, slots=True)
class Upload:
    """A file that goes along with a request, under the name of a field."""

    field: str
    filename: str
    body: bytes


@dataclass(frozen=True, slots=True)
class Call:
    """A request: the method in the platform's spelling, its fields, and a file if it brings one."""

    method: str
    fields: Mapping[str, Any]
    upload: Upload | None = None


def file_field(letter: Letter) -> str | None:
    """The field of a message that carries its file; None for a message without one."""
    return _FILES.get(letter.method)


def attachment_of(letter: Letter) -> str | None:
    """The digest of the kept file that a message carries; None for one without a file or with its own bytes."""
    field = file_field(letter)
    return None if field is None else letter.payload[field].get("attachment")


def recipe_of(letter: Letter) -> tuple[str, Mapping[str, Any]] | None:
    """The digest and recipe of a picture that is kept with its message; None for a message without one."""
    stored = letter.payload.get(file_field(letter) or "") or {}
    return (stored["digest"], stored["recipe"]) if "recipe" in stored else None


def call_of(letter: Letter, file: File | None) -> Call:
    """The request for a message. Raises `LookupError` or `ValueError` for a message that nobody could send."""
    if letter.method not in METHODS:
        raise ValueError(f"message {letter.id} asks for {letter.method!r}, which is not sent")
    fields = {name: value for name, value in letter.payload.items() if name not in _OURS and value is not None}
    method = letter.method
    if method == "edit_message_text" and letter.captioned:
        method, fields = "edit_message_caption", _as_caption(fields)
    if method == "edit_message_media" and not letter.captioned:
        method, fields = "edit_message_text", words_alone(fields)
    if method != "answer_callback_query":
        fields["chat_id"] = letter.chat
    if method.startswith("edit_"):
        fields["message_id"] = _edited(letter)
    field = _FILES.get(method)
    if field is None:
        return Call(_spelled(method), fields)
    upload = _upload(letter, field, file)
    stands = _file_id(letter, field, file) or f"attach://{field}"
    del fields[field]
    if method == "edit_message_media":
        media = {"type": field, "media": stands} | {name: fields.pop(name) for name in _OF_MEDIA if name in fields}
        return Call(_spelled(method), fields | {"media": media}, upload)
    return Call(_spelled(method), fields if upload else fields | {field: stands}, upload)


_OF_MEDIA = ("caption", "parse_mode")


def _file_id(letter: Letter, field: str, file: File | None) -> str | None:
    """The platform's id of a message's file: of one that a person sent there, or that was uploaded before."""
    sent: str | None = letter.payload[field].get("file_id")
    return sent or (file.file_id if file is not None else None)


def _upload(letter: Letter, field: str, file: File | None) -> Upload | None:
    if _file_id(letter, field, file) is not None:
        return None
    stored = letter.payload[field]
    body = base64.b64decode(stored["base64"], validate=True) if file is None else file.body
    if body is None:
        raise LookupError(f"message {letter.id} has a file without bytes")
    return Upload(field, stored["filename"], body)


def _as_caption(fields: Mapping[str, Any]) -> dict[str, Any]:
    """The fields of an edited text as those of a picture's caption."""
    others = {name: value for name, value in fields.items() if name not in ("text", "link_preview_options")}
    return {"caption": fields["text"], **others}


def file_id_of(result: Any) -> str | None:
    """The id under which the platform keeps the file of a message that was sent; None if there is none."""
    if not isinstance(result, Mapping):
        return None
    photo = result.get("photo")
    kept = photo[-1] if photo else result.get("animation") or result.get("video") or result.get("document")
    return kept["file_id"] if kept else None


def message_id_of(result: Any) -> int | None:
    """The number of the message that was sent or changed; None where the answer is only yes."""
    return result.get("message_id") if isinstance(result, Mapping) else None


@cache
def _spelled(method: str) -> str:
    first, *others = method.split("_")
    return first + "".join(part.capitalize() for part in others)


def _edited(letter: Letter) -> int:
    found = letter.message_id if letter.message_id is not None else letter.payload.get("message_id")
    if found is None:
        raise ValueError(f"message {letter.id} edits a message that has no id")
    return int(found)


# --- the platform's answer --------------------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Accepted:
    """The platform did what it was asked; `result` as it answered."""

    result: Any


def outcome_of(status: int, body: bytes) -> Accepted | Failure:
    """What an answer means for the message (Bot API, "Making requests").

    An answer that cannot be read counts as lost: the message may have arrived.
    """
    try:
        answer = json.loads(body)
        description = str(answer.get("description", "")).lower()
        parameters = answer.get("parameters") or {}
    except (ValueError, AttributeError):
        answer, description, parameters = None, "", {}
    if status == 200:
        readable = answer is not None and answer.get("ok") is True
        return Accepted(answer.get("result")) if readable else Failure(Reason.ANSWER_LOST, "Unreadable")
    if status == 429:
        return Failure(Reason.TOO_MANY, "TooMany", _seconds(parameters))
    if status == 403:
        return Failure(Reason.BLOCKED, "Forbidden")
    if status in (401, 404):
        return Failure(Reason.TOKEN_REFUSED, "TokenRefused")
    if status == 400:
        return Failure(_bad_request(description), "BadRequest")
    return Failure(Reason.SERVER_ERROR, f"Status{status}")


def _seconds(parameters: Mapping[str, Any]) -> float:
    """For how long to send nothing; a second if the platform says nothing that can be read."""
    try:
        return float(parameters["retry_after"])
    except (KeyError, TypeError, ValueError):
        return 1.0


def _bad_request(text: str) -> Reason:
    if "message is not modified" in text:
        return Reason.NOT_MODIFIED
    if "query is too old" in text or "query id is invalid" in text:
        return Reason.QUERY_TOO_OLD
    if "chat not found" in text:
        return Reason.BLOCKED
    if "wrong file identifier" in text or "wrong remote file" in text:
        return Reason.FILE_FORGOTTEN
    return Reason.BAD_REQUEST
