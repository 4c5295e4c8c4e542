"""The platform's HTML: markup taken out of a text and kept as entities, or refused as the platform refuses it."""

from __future__ import annotations

import html
import re
from dataclasses import dataclass
from typing import Any

from bot.practice.errors import ApiError
from bot.practice.limits import utf16

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
    "a": "text_link",
}
_TOKEN = re.compile(r"<(/?)([a-zA-Z-]+)([^<>]*)>|&(#\d+|#x[0-9a-fA-F]+|lt|gt|amp|quot);|<")
_HREF = re.compile(r"""\s+href=(?:"([^"]*)"|'([^']*)'|(\S+))""")


@dataclass(slots=True)
class _Open:
    tag: str
    at: int
    extra: dict[str, Any]


def parse_html(text: str) -> tuple[str, list[dict[str, Any]]]:
    """The plain text and its entities (offsets and lengths in UTF-16 units). Raises ApiError for broken markup."""
    plain, entities, opened, last = "", [], list[_Open](), 0
    for found in _TOKEN.finditer(text):
        plain += text[last : found.start()]
        last = found.end()
        at = len(text[: found.start()].encode())
        if found[4] is not None:
            plain += html.unescape(f"&{found[4]};")
        elif found[2] is None:
            raise _broken(f'Unsupported start tag "" at byte offset {at}')
        elif found[1]:
            entities += _close(opened, found[2].lower(), utf16(plain), at)
        else:
            opened.append(_open(found[2].lower(), found[3], utf16(plain), at))
    plain += text[last:]
    if opened:
        raise _broken(f'Can\'t find end tag corresponding to start tag "{opened[-1].tag}"')
    return plain, sorted(entities, key=lambda entity: (entity["offset"], -entity["length"]))


def _open(tag: str, rest: str, offset: int, at: int) -> _Open:
    if tag not in _KINDS:
        raise _broken(f'Unsupported start tag "{tag}" at byte offset {at}')
    if tag != "a":
        return _Open(tag, offset, {})
    link = _HREF.match(rest)
    url = next((part for part in link.groups() if part is not None), "") if link else ""
    return _Open(tag, offset, {"url": html.unescape(url)})


def _close(opened: list[_Open], tag: str, offset: int, at: int) -> list[dict[str, Any]]:
    if not opened:
        raise _broken(f"Unexpected end tag at byte offset {at}")
    start = opened.pop()
    if start.tag != tag:
        raise _broken(f'Unmatched end tag at byte offset {at}, expected "</{start.tag}>", found "</{tag}>"')
    if offset == start.at:
        return []
    return [{"type": _KINDS[tag], "offset": start.at, "length": offset - start.at, **start.extra}]


def _broken(what: str) -> ApiError:
    return ApiError(400, f"Bad Request: can't parse entities: {what}")
