"""The platform's HTML: markup taken out of a text and kept as entities, or refused as the platform refuses it."""

from __future__ import annotations

import html
import re
from dataclasses import dataclass
from typing import Any

from bot.practice.errors import ApiError, bad
from bot.practice.limits import utf16

Entity = dict[str, Any]
"""Kind, offset and length in UTF-16 units, and what the kind has besides, such as a link's address."""

_KINDS = {
    "b": "bold",
    "strong": "bold",
    "i": "italic",
    "em": "italic",
    "u": "underline",
    "ins": "underline",
    "s": "strikethrough",
    "strike": "strikethrough",
    "del": "strikethrough",
    "code": "code",
    "pre": "pre",
    "blockquote": "blockquote",
    "tg-spoiler": "spoiler",
    "span": "spoiler",
    "a": "text_link",
}
_TOKEN = re.compile(
    r"""<(?P<end>/?)(?P<tag>[a-zA-Z-]+)(?P<rest>(?:\s(?:"[^"]*"|'[^']*'|[^<>"'])*)?)>"""
    r"|&(?P<name>\#\d+|\#x[0-9a-fA-F]+|lt|gt|amp|quot);|<",
    re.VERBOSE,
)
_FIELD = re.compile(r"""([a-zA-Z-]+)\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s"']+))""")


@dataclass(slots=True)
class _Open:
    tag: str
    at: int
    extra: dict[str, Any]


def parse_html(text: str) -> tuple[str, list[Entity]]:
    """The plain text and its entities (offsets and lengths in UTF-16 units). Raises ApiError for broken markup.

    >>> parse_html("Hold <b>30 s</b> &amp; rest")
    ('Hold 30 s & rest', [{'type': 'bold', 'offset': 5, 'length': 4}])
    """
    plain, entities, opened, last = "", list[Entity](), list[_Open](), 0
    for found in _TOKEN.finditer(text):
        plain += text[last : found.start()]
        last = found.end()
        at = len(text[: found.start()].encode())
        if found["name"] is not None:
            plain += html.unescape(f"&{found['name']};")
        elif found["tag"] is None:
            raise _broken(f'Unsupported start tag "" at byte offset {at}')
        elif found["end"]:
            entities += _close(opened, found["tag"].lower(), plain, at)
        else:
            opened.append(_open(found["tag"].lower(), found["rest"], utf16(plain), at))
    if opened:
        raise _broken(f'Can\'t find end tag corresponding to start tag "{opened[-1].tag}"')
    return plain + text[last:], sorted(entities, key=lambda entity: (entity["offset"], -entity["length"]))


def _open(tag: str, rest: str, offset: int, at: int) -> _Open:
    fields = {f[1].lower(): html.unescape(f[2] or f[3] or f[4] or "") for f in _FIELD.finditer(rest)}
    if tag not in _KINDS:
        raise _broken(f'Unsupported start tag "{tag}" at byte offset {at}')
    if tag == "span" and fields.get("class") != "tg-spoiler":
        raise _broken(f'Tag "span" must have class "tg-spoiler" at byte offset {at}')
    return _Open(tag, offset, {"url": fields.get("href", "")} if tag == "a" else {})


def _close(opened: list[_Open], tag: str, plain: str, at: int) -> list[Entity]:
    if not opened:
        raise _broken(f"Unexpected end tag at byte offset {at}")
    start = opened.pop()
    if start.tag != tag:
        raise _broken(f'Unmatched end tag at byte offset {at}, expected "</{start.tag}>", found "</{tag}>"')
    entity = {"type": _KINDS[tag], "offset": start.at, "length": utf16(plain) - start.at, **start.extra}
    return [entity] if entity["length"] and _leads_somewhere(entity) else []


def _leads_somewhere(entity: Entity) -> bool:
    """The platform keeps the words of a link without a usable address, and drops the link."""
    return entity["type"] != "text_link" or re.match(r"(?:https?|tg)://\S", entity["url"]) is not None


def trimmed(text: str, entities: list[Entity]) -> tuple[str, list[Entity]]:
    """The text without white space around it, as the platform keeps it, and its entities where they then are."""
    start, plain = utf16(text) - utf16(text.lstrip()), text.strip()
    kept = []
    for entity in entities:
        begin = max(0, entity["offset"] - start)
        end = min(utf16(plain), entity["offset"] + entity["length"] - start)
        if begin < end:
            kept.append({**entity, "offset": begin, "length": end - begin})
    return plain, kept


def _broken(what: str) -> ApiError:
    return bad(f"can't parse entities: {what}")
