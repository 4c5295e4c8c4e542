"""The sides of a picture, read from the first bytes of a PNG or JPEG file."""

from __future__ import annotations

import struct

_PNG = b"\x89PNG\r\n\x1a\n"
_START_OF_FRAME = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}


def sides(body: bytes) -> tuple[int, int] | None:
    """Width and height in pixels, None for anything that is no PNG or JPEG."""
    if body[:8] == _PNG and body[12:16] == b"IHDR" and len(body) >= 24:
        width, height = struct.unpack(">II", body[16:24])
        return int(width), int(height)
    return _jpeg(body) if body[:2] == b"\xff\xd8" else None


def _jpeg(body: bytes) -> tuple[int, int] | None:
    at = 2
    while at + 9 <= len(body) and body[at] == 0xFF:
        if body[at + 1] in _START_OF_FRAME:
            height, width = struct.unpack(">HH", body[at + 5 : at + 9])
            return int(width), int(height)
        at += 2 + int(struct.unpack(">H", body[at + 2 : at + 4])[0])
    return None
