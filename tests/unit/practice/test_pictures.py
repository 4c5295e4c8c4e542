"""The sides of a picture, against files that Pillow's and other writers' formats describe.

Source of the layouts: PNG specification, 11.2.2 (IHDR); ITU T.81, B.2.2 (frame header).
"""

from __future__ import annotations

import struct

import pytest

from bot.practice.pictures import sides


def png_head(width: int, height: int) -> bytes:
    return b"\x89PNG\r\n\x1a\n" + struct.pack(">I4sII", 13, b"IHDR", width, height)


def jpeg(width: int, height: int, *, marker: int = 0xC0, before: bytes = b"") -> bytes:
    frame = struct.pack(">BBHBHHB", 0xFF, marker, 17, 8, height, width, 3)
    return b"\xff\xd8" + before + frame + bytes(9)


def segment(marker: int, content: bytes) -> bytes:
    return struct.pack(">BBH", 0xFF, marker, len(content) + 2) + content


@pytest.mark.parametrize(
    ("body", "found"),
    [
        (png_head(1080, 1350), (1080, 1350)),
        (jpeg(640, 480), (640, 480)),
        (jpeg(640, 480, marker=0xC2), (640, 480)),
        (jpeg(640, 480, before=segment(0xE0, b"JFIF\0") + segment(0xC4, bytes(20))), (640, 480)),
        (png_head(1, 1)[:20], None),
        (jpeg(1, 1)[:8], None),
        (b"\xff\xd8" + segment(0xE0, b"x"), None),
        (b"GIF89a\x01\x00\x01\x00", None),
        (b"", None),
    ],
)
def test_sides_are_read_from_the_head_of_the_file(body: bytes, found: tuple[int, int] | None) -> None:
    assert sides(body) == found
