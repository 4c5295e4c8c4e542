"""The sides of a picture or film, read from the bytes of a PNG, JPEG, GIF or MP4 file."""

from __future__ import annotations

import struct

_PNG = b"\x89PNG\r\n\x1a\n"
_START_OF_FRAME = frozenset(range(0xC0, 0xD0)) - {0xC4, 0xC8, 0xCC}


def sides(body: bytes) -> tuple[int, int] | None:
    """Width and height of a picture in pixels, None for anything that is no PNG or JPEG."""
    if body[:8] == _PNG and body[12:16] == b"IHDR" and len(body) >= 24:
        width, height = struct.unpack(">II", body[16:24])
        return int(width), int(height)
    return _jpeg(body) if body[:2] == b"\xff\xd8" else None


def film_sides(body: bytes) -> tuple[int, int] | None:
    """Width and height of a film in pixels, None for anything that is no GIF or MP4."""
    if body[:6] in (b"GIF87a", b"GIF89a") and len(body) >= 10:
        width, height = struct.unpack("<HH", body[6:10])
        return int(width), int(height)
    return _mp4(body) if body[4:8] == b"ftyp" else None


def _mp4(body: bytes) -> tuple[int, int] | None:
    """Of the first track's header, whose last eight bytes are width and height in 16.16 (ISO/IEC 14496-12)."""
    at = body.find(b"tkhd")
    if at < 4:
        return None
    end = at - 4 + int(struct.unpack(">I", body[at - 4 : at])[0])
    width, height = struct.unpack(">II", body[end - 8 : end]) if end <= len(body) else (0, 0)
    return int(width) >> 16, int(height) >> 16


def _jpeg(body: bytes) -> tuple[int, int] | None:
    at = 2
    while at + 9 <= len(body) and body[at] == 0xFF:
        if body[at + 1] in _START_OF_FRAME:
            height, width = struct.unpack(">HH", body[at + 5 : at + 9])
            return int(width), int(height)
        at += 2 + int(struct.unpack(">H", body[at + 2 : at + 4])[0])
    return None
