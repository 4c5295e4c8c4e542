"""A drawing as a picture file: SVG to PNG, with our own font, so that it looks the same on every machine."""

from __future__ import annotations

from functools import cache
from importlib.resources import as_file, files

FONTS = ("DejaVuSans.ttf", "DejaVuSans-Bold.ttf")
"""DejaVu Sans: Latin, Greek, Cyrillic, Arabic and more; its licence lies beside it."""


def png(svg: str, *, width: int | None = None) -> bytes:
    """The PNG of an SVG file's text, `width` pixels wide or in its own size."""
    import resvg_py

    return bytes(resvg_py.svg_to_bytes(svg_string=svg, font_files=list(_fonts()), width=width, skip_system_fonts=True))


@cache
def _fonts() -> tuple[str, ...]:
    """The paths of the fonts; the package lies in a folder, so they stay where they are."""
    found = []
    for name in FONTS:
        with as_file(files("plans.figures").joinpath("font", name)) as path:
            found.append(str(path))
    return tuple(found)
