"""The picture of an invitation: its squares are those of the code, with white around them."""

from __future__ import annotations

import json

import segno

from bot.painter import paint
from plans.charts.code import QUIET, Code, code_svg
from plans.figures.raster import picture

LINK = "https://t.me/easeward_practice_bot?start=join-abcdefghijklmnopqrstuv"


def test_every_square_of_the_picture_is_that_of_the_code() -> None:
    image = picture(code_svg(Code(LINK, "", ""))).convert("L")
    wanted = [[bool(dark) for dark in row] for row in segno.make(LINK, error="m", boost_error=False).matrix]
    dark = [(x, y) for y in range(image.height) for x in range(image.width) if _dark(image.getpixel((x, y)))]
    left, top = min(x for x, _y in dark), min(y for _x, y in dark)
    right, bottom = max(x for x, _y in dark) + 1, max(y for _x, y in dark) + 1
    side = (right - left) / len(wanted)
    assert right - left == bottom - top
    assert min(left, image.width - right, image.height - bottom) >= QUIET * side
    middles = [
        [(left + (x + 0.5) * side, top + (y + 0.5) * side) for x in range(len(wanted))] for y in range(len(wanted))
    ]
    assert [[_dark(image.getpixel((int(x), int(y)))) for x, y in row] for row in middles] == wanted


def _dark(level: object) -> bool:
    return isinstance(level, int) and level < 128


def test_the_painter_draws_it_from_plain_values() -> None:
    recipe = json.loads(
        json.dumps({"kind": "code", "of": {"link": LINK, "title": "<Hips> & more", "note": "10 places"}})
    )
    assert paint(recipe).startswith(b"\x89PNG")
