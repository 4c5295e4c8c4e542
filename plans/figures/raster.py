"""A drawing as a picture file: SVG to PNG, with our own font, so that it looks the same on every machine."""

from __future__ import annotations

import io
import re
from functools import cache
from importlib.resources import as_file, files

from PIL import Image

FONTS = ("DejaVuSans.ttf", "DejaVuSans-Bold.ttf")
"""DejaVu Sans: Latin, Greek, Cyrillic, Arabic and more; its licence lies beside it."""

COLOURS = 64
"""Of a picture file: as many as a drawing of flat colours with smooth edges needs, at half the bytes (own choice)."""


MOST_PIXELS = 16_000_000
LONGEST_SIDES = 10_000
"""Of a drawing for the chat, which shows none whose sides are longer together (Bot API, sendPhoto)."""

_SIDES = re.compile(r"<svg\b[^>]*?\bwidth=\"([0-9.]{1,9})\"[^>]*?\bheight=\"([0-9.]{1,9})\"")


class TooLarge(ValueError):
    """A drawing of a size that is not painted for the chat."""


def size_of(svg: str) -> tuple[float, float]:
    """Width and height of an SVG file's text, in pixels. Raises TooLarge for one that is too large for the chat."""
    found = _SIDES.search(svg[:2000])
    if found is None:
        raise TooLarge("a drawing without width and height")
    width, height = float(found[1]), float(found[2])
    if width * height > MOST_PIXELS or width + height > LONGEST_SIDES:
        raise TooLarge(f"a drawing of {width:g} x {height:g} pixels")
    return width, height


def picture(svg: str) -> Image.Image:
    """An SVG file's text as a picture in its own size."""
    import resvg_py

    body = resvg_py.svg_to_bytes(svg_string=svg, font_files=list(_fonts()), skip_system_fonts=True)
    return Image.open(io.BytesIO(bytes(body))).convert("RGB")


def png(svg: str) -> bytes:
    """The PNG file of an SVG file's text, in its own size and few colours."""
    out = io.BytesIO()
    few = picture(svg).quantize(COLOURS, method=Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE)
    few.save(out, "PNG")
    return out.getvalue()


@cache
def _fonts() -> tuple[str, ...]:
    """The paths of the fonts; the package lies in a folder, so they stay where they are."""
    found = []
    for name in FONTS:
        with as_file(files("plans.figures").joinpath("font", name)) as path:
            found.append(str(path))
    return tuple(found)
