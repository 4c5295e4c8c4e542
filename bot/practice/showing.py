"""A message as the documented JSON shows it: plain text, safe HTML, buttons, files."""

from __future__ import annotations

import html
from collections.abc import Mapping, Sequence
from datetime import UTC, datetime
from typing import Any

from bot.practice import shapes
from bot.practice.entities import Entity
from bot.practice.shapes import Body
from bot.practice.world import World

_TAGS = {
    "bold": "b",
    "italic": "i",
    "underline": "u",
    "strikethrough": "s",
    "code": "code",
    "pre": "pre",
    "blockquote": "blockquote",
}


def shown_all(world: World, chat: int, found: Sequence[tuple[int, Body]]) -> list[dict[str, Any]]:
    """Messages of a chat with their change numbers, as `GET /practice/messages` gives them."""
    edits = world.store.edits(chat)
    return [shown(body, change, edits.get(body["message_id"], 0), world.bot_id) for change, body in found]


def shown(message: Mapping[str, Any], change: int, edits: int, bot_id: int) -> dict[str, Any]:
    """What `GET /practice/messages` gives of one message; `edited` counts how often it has been changed."""
    text = str(message.get("text", message.get("caption", "")))
    found: dict[str, Any] = {
        "id": message["message_id"],
        "from": "bot" if message["from"]["id"] == bot_id else "client",
        "text": text,
        "html": as_html(text, message.get("entities", message.get("caption_entities", []))),
        "buttons": [[_button(button) for button in row] for row in shapes.buttons(message)],
        "at": datetime.fromtimestamp(message["date"], UTC).isoformat().replace("+00:00", "Z"),
        "edited": edits,
        "change": change,
    }
    if "animation" in message or "video" in message:
        film = message.get("animation") or message["video"]
        found["film"] = {"kind": film["mime_type"], "width": film["width"], "height": film["height"]} | _place(film)
    elif "document" in message:
        document = message["document"]
        found["document"] = {"name": document["file_name"], "size": document["file_size"], **_place(document)}
    if "photo" in message:
        photo = message["photo"][-1]
        sides = {"width": photo["width"], "height": photo["height"], "size": photo["file_size"]}
        found["photo"] = sides | _place(photo)
    return found


def _button(button: Mapping[str, Any]) -> dict[str, Any]:
    """A button's label and data; one that opens an address has no data and the address."""
    found = {"label": button["text"], "data": button.get("callback_data")}
    return found if "callback_data" in button else found | {"url": button["url"]}


def _place(file: Mapping[str, Any]) -> dict[str, str]:
    return {"file": file["file_id"], "url": f"/practice/files?file={file['file_id']}"}


def as_html(text: str, entities: list[Entity]) -> str:
    """A text with its entities as safe HTML: only the tags above and links to http addresses are ever written.

    >>> as_html("a < b", [{"type": "bold", "offset": 0, "length": 1}])
    '<b>a</b> &lt; b'
    """
    units = text.encode("utf-16-le", errors="surrogatepass")
    opens: dict[int, str] = {}
    closes: dict[int, str] = {}
    for entity in entities:
        start, end = entity["offset"], entity["offset"] + entity["length"]
        opening, closing = _tags(entity)
        opens[start] = opens.get(start, "") + opening
        closes[end] = closing + closes.get(end, "")
    marks = sorted({0, len(units) // 2, *opens, *closes})
    parts: list[str] = []
    for here, there in zip(marks, [*marks[1:], len(units) // 2], strict=True):
        parts.append(closes.get(here, "") + opens.get(here, ""))
        parts.append(html.escape(units[2 * here : 2 * there].decode("utf-16-le", errors="replace")))
    return "".join(parts)


def _tags(entity: Entity) -> tuple[str, str]:
    if entity["type"] == "text_link" and str(entity.get("url", "")).startswith(("http://", "https://")):
        return f'<a href="{html.escape(entity["url"])}" rel="noreferrer">', "</a>"
    tag = _TAGS.get(entity["type"])
    return (f"<{tag}>", f"</{tag}>") if tag is not None else ("", "")
