"""How wide words are in our own font, read from the font's own tables, so that a text can be given its room."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterator
from functools import cache
from importlib.resources import files
from struct import unpack_from

from plans.figures.raster import FONTS

_REGULAR, _BOLD = FONTS


def wide(text: str, size: float, *, bold: bool = False) -> float:
    """The width of a text in the unit of `size`: letter after letter, without kerning; combining marks take no room."""
    widths, missing = _widths(_BOLD if bold else _REGULAR)
    letters = (letter for letter in text if not unicodedata.combining(letter))
    return sum(widths.get(ord(letter), missing) for letter in letters) * size


def broken(text: str, room: float, size: float, *, bold: bool = False, most: int | None = None) -> list[str]:
    """A text in lines of at most `room`; a longer word is cut, and what is beyond `most` lines ends in an ellipsis."""
    lines = [line for paragraph in text.splitlines() for line in _paragraph(paragraph, room, size, bold)]
    if most is None or len(lines) <= most:
        return lines
    last = lines[most - 1]
    while last and wide(f"{last}…", size, bold=bold) > room:
        last = last[:-1]
    return [*lines[: most - 1], f"{last.rstrip(' ,;:')}…"]


def _paragraph(text: str, room: float, size: float, bold: bool) -> Iterator[str]:
    line = ""
    for word in text.split():
        joined = f"{line} {word}" if line else word
        if wide(joined, size, bold=bold) <= room:
            line = joined
            continue
        if line:
            yield line
        *whole, line = _pieces(word, room, size, bold)
        yield from whole
    if line:
        yield line


def _pieces(word: str, room: float, size: float, bold: bool) -> Iterator[str]:
    piece = ""
    for letter in word:
        if piece and wide(piece + letter, size, bold=bold) > room:
            yield piece
            piece = ""
        piece += letter
    yield piece


@cache
def _widths(name: str) -> tuple[dict[int, float], float]:
    """Of each character its width in parts of the font's size, and that of one which the font does not have.

    Tables head, hhea, hmtx and cmap (format 4) of the OpenType specification.
    """
    font = files("plans.figures").joinpath("font", name).read_bytes()
    count = unpack_from(">H", font, 4)[0]
    records = (unpack_from(">4sIII", font, 12 + 16 * number) for number in range(count))
    tables = {tag: begin for tag, _sum, begin, _length in records}
    em = unpack_from(">H", font, tables[b"head"] + 18)[0]
    measured = unpack_from(">H", font, tables[b"hhea"] + 34)[0]
    advances = [unpack_from(">H", font, tables[b"hmtx"] + 4 * glyph)[0] / em for glyph in range(measured)]
    found = {code: advances[min(glyph, measured - 1)] for code, glyph in _glyphs(font, tables[b"cmap"])}
    return found, advances[0]


def _glyphs(font: bytes, cmap: int) -> Iterator[tuple[int, int]]:
    """Each character of the basic plane and its glyph."""
    for number in range(unpack_from(">H", font, cmap + 2)[0]):
        begin = cmap + unpack_from(">I", font, cmap + 8 + 8 * number)[0]
        if unpack_from(">H", font, begin)[0] == 4:
            break
    else:
        raise ValueError("the font has no character table of format 4")
    half = unpack_from(">H", font, begin + 6)[0]
    segments = half // 2
    ends, starts = begin + 14, begin + 16 + half
    for segment in range(segments):
        end = unpack_from(">H", font, ends + 2 * segment)[0]
        start = unpack_from(">H", font, starts + 2 * segment)[0]
        delta = unpack_from(">H", font, starts + half + 2 * segment)[0]
        place = starts + 2 * half + 2 * segment
        offset = unpack_from(">H", font, place)[0]
        for code in range(start, min(end, 0xFFFE) + 1):
            glyph = unpack_from(">H", font, place + offset + 2 * (code - start))[0] if offset else code
            if glyph or not offset:
                yield code, (glyph + delta) & 0xFFFF
