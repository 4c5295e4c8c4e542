"""A request's fields, read and checked as the platform reads them."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from bot.practice.entities import Entity, parse_html, trimmed
from bot.practice.errors import bad
from bot.practice.limits import LIMITS, utf16

Params = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Upload:
    """A file that came with a request."""

    name: str
    body: bytes


def word(params: Params, name: str) -> str:
    """A field as text, empty when it is not there."""
    value = params.get(name)
    return "" if value is None else str(value)


def number(params: Params, name: str, default: int = 0) -> int:
    """A field as a whole number, the default when it is none."""
    text = word(params, name).strip()
    return int(text) if re.fullmatch(r"-?\d{1,18}", text) else default


def flag(params: Params, name: str) -> bool:
    """A field as yes or no."""
    return word(params, name).lower() in ("true", "yes", "1")


def structure(params: Params, name: str, default: Any) -> Any:
    """A field that is JSON, or the default when it is not there. Raises ApiError."""
    value = params.get(name)
    if value is None or value == "":
        return default
    if not isinstance(value, str):
        return value
    try:
        return json.loads(value)
    except ValueError as error:
        raise bad(f"can't parse {name}: expected a JSON-serialized value") from error


def formatted(params: Params, text: str, entities: str) -> tuple[str, list[Entity]]:
    """A text after its markup, trimmed, and its entities; nothing is checked against a limit yet. Raises ApiError."""
    mode = word(params, "parse_mode").lower()
    if mode == "html":
        return trimmed(*parse_html(word(params, text)))
    if mode:
        raise bad("unsupported parse_mode")
    given = structure(params, entities, [])
    if not isinstance(given, list) or not all(_is_entity(entity) for entity in given):
        raise bad("can't parse entities: expected an Array of MessageEntity")
    return trimmed(word(params, text), given)


def _is_entity(value: Any) -> bool:
    if not isinstance(value, dict) or not isinstance(value.get("type"), str):
        return False
    return all(isinstance(value.get(name), int) and value[name] >= 0 for name in ("offset", "length"))


def message_text(params: Params) -> tuple[str, list[Entity]]:
    """The text of a message and its entities. Raises ApiError."""
    plain, entities = formatted(params, "text", "entities")
    LIMITS["text"].check(utf16(plain))
    return plain, entities


def caption(params: Params) -> tuple[str, list[Entity]]:
    """The caption of a picture or document and its entities. Raises ApiError."""
    plain, entities = formatted(params, "caption", "caption_entities")
    LIMITS["caption"].check(utf16(plain))
    return plain, entities


def link_preview(params: Params) -> dict[str, Any]:
    """How a link in the text is shown. Raises ApiError."""
    found = structure(params, "link_preview_options", {})
    if not isinstance(found, dict):
        raise bad("object expected as link preview options")
    return found


def keyboard(params: Params, *, inline_only: bool = False) -> dict[str, Any] | None:
    """The inline buttons of a request, checked; none at all is None. Raises ApiError.

    The platform's other keyboards belong to what a person types with, not to the message: they are accepted with a
    new message and leave nothing in it.
    """
    found = structure(params, "reply_markup", None)
    if found is None:
        return None
    if not isinstance(found, dict):
        raise bad("object expected as reply markup")
    if not inline_only and found.keys() & {"keyboard", "remove_keyboard", "force_reply"}:
        return None
    rows = found.get("inline_keyboard", [])
    if not isinstance(rows, list) or not all(isinstance(row, list) for row in rows):
        raise bad('field "inline_keyboard" of the InlineKeyboardMarkup must be an Array of Arrays')
    rows = [row for row in rows if row]
    LIMITS["buttons"].check(sum(len(row) for row in rows))
    for row in rows:
        LIMITS["buttons in a row"].check(len(row))
        for button in row:
            _check_button(button)
    return {"inline_keyboard": rows} if rows else None


def _check_button(button: Any) -> None:
    if not isinstance(button, dict) or not isinstance(button.get("text"), str):
        raise bad('can\'t parse inline keyboard button: field "text" must be of type String')
    if not button["text"].strip():
        raise bad("inline keyboard button text must be non-empty")
    if "callback_data" in button:
        LIMITS["callback data"].check(len(str(button["callback_data"]).encode()))
    elif "url" not in button:
        raise bad("can't parse inline keyboard button: Text buttons are unallowed in the inline keyboard")
    elif not re.match(r"(?:https?|tg)://\S", str(button["url"])):
        raise bad("BUTTON_URL_INVALID")


def file(params: Params, name: str) -> Upload | str:
    """The file of a request: uploaded with it, or the id of one that the platform has. Raises ApiError."""
    value = params.get(name)
    if isinstance(value, str) and value.startswith("attach://"):
        value = params.get(value.removeprefix("attach://"))
        if not isinstance(value, Upload):
            raise bad(f"there is no {name} in the request")
    if isinstance(value, Upload):
        return value
    if not value:
        raise bad(f"there is no {name} in the request")
    if re.match(r"https?://", str(value)):
        raise bad("failed to get HTTP URL content")
    return str(value)
