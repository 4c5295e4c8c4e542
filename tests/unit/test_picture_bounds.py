"""How large a picture can get: what is painted fits the chat, what would not is refused before it is painted."""

from __future__ import annotations

import pytest

from bot import painter
from plans.charts.code import Code
from plans.figures.raster import LONGEST_SIDES, MOST_PIXELS, TooLarge, size_of


def square(width: str, height: str) -> str:
    return f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1" width="{width}" height="{height}"></svg>'


@pytest.mark.parametrize(
    ("width", "height"), [("4001", "4000"), ("9999", "2"), ("1", "999999999"), ("1e9", "1"), ("", "1"), ("-5", "5")]
)
def test_a_drawing_that_is_too_large_is_not_painted(width: str, height: str) -> None:
    with pytest.raises(TooLarge):
        size_of(square(width, height))


def test_the_largest_drawing_is_painted() -> None:
    assert size_of(square("4000", "4000")) == (4000, 4000)
    assert MOST_PIXELS == 4000 * 4000
    assert LONGEST_SIDES == 10_000


def test_the_painter_refuses_a_picture_that_no_chat_shows_and_paints_the_next(monkeypatch: pytest.MonkeyPatch) -> None:
    recipe = {"kind": "code", "of": {"link": "https://example.org/x", "title": "X", "note": "Y"}}
    monkeypatch.setitem(painter.KINDS, "code", painter._chart(Code, lambda _code: square("9000", "9000")))
    with pytest.raises(TooLarge, match="9000 x 9000"):
        painter.paint(recipe)
