"""The curve of who stays: it stands where the numbers say, keeps to its paper, and says nothing of nobody."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from itertools import pairwise

import pytest
from pydantic import TypeAdapter

from bot.painter import paint
from plans.charts.staying import Drop, Staying, StayingWords, staying_svg
from plans.survival import Stay, kaplan_meier
from tests.on_paper import SVG, axis, check_paper, corners, said

WORDS = StayingWords(
    title="Wer bleibt: Hüfte und Oberschenkelrückseite für das Bootshaus",
    note="24 haben begonnen",
    stays="kommen weiter als bis zu diesem Tag",
    interval="95-%-Intervall",
    still="noch an diesem Tag",
    day="Tag des Programms",
    there="so viele kamen bis hierher",
    nothing="Niemand hat begonnen.",
)
LEFT, ON = (2, 5, 5, 9, 16), (3, 9, 12, 20)


def staying(days: int = 28, left: tuple[int, ...] = LEFT, still: tuple[int, ...] = ON, finished: int = 6) -> Staying:
    stays = (*left, *still, *(days,) * finished)
    curve = kaplan_meier(Stay(day, at < len(left)) for at, day in enumerate(stays))
    drops = tuple(Drop(step.time, step.share, step.low, step.high) for step in curve.steps)
    return Staying(days, max(stays, default=0), drops, still, stays, WORDS)


def way(svg: str, kind: str) -> list[tuple[float, float]]:
    """The corners of the longest path of a class."""
    paths = [path.attrib["d"] for path in ET.fromstring(svg).findall(f"{SVG}path") if path.attrib["class"] == kind]
    return list(corners(max(paths, key=len).rstrip("Z")))


@pytest.mark.parametrize("days", [1, 5, 14, 28, 70, 365])
@pytest.mark.parametrize("left", [(), LEFT])
def test_a_curve_of_any_length_keeps_to_its_paper(days: int, left: tuple[int, ...]) -> None:
    check_paper(staying_svg(staying(days, tuple(min(day, days) for day in left), tuple(min(day, days) for day in ON))))


def test_the_curve_goes_down_where_somebody_left_to_the_share_that_stays() -> None:
    given = staying()
    svg = staying_svg(given)
    share, line = axis(svg, WORDS.note), way(svg, "line")
    assert share(line[0][1]) == pytest.approx(100, abs=0.1)
    down = [(x, round(share(y), 1)) for (x, _y), (x2, y) in pairwise(line) if x == x2]
    assert [value for _x, value in down] == [round(100 * drop.share, 1) for drop in given.drops]
    width = (down[-1][0] - down[0][0]) / (given.drops[-1].day - given.drops[0].day)
    assert [round((x - line[0][0]) / width) for x, _value in down] == [2, 5, 9, 16]
    assert round((line[-1][0] - line[0][0]) / width) == 28
    band = [round(share(y), 1) for _x, y in way(svg, "band")]
    assert min(band) == round(100 * min(drop.low for drop in given.drops), 1)


def test_under_the_days_stands_how_many_came_to_them() -> None:
    words = [text.words for text in said(staying_svg(staying()))]
    after = words[words.index(WORDS.there) + 1 :]
    assert after == ["15", "11", "8", "6", "6"], "on days 1, 7, 14, 21 and 28"
    assert words[words.index(WORDS.day) - 4 : words.index(WORDS.day)] == ["7", "14", "21", "28"]


def test_nobody_is_said_to_be_nobody() -> None:
    words = [text.words for text in said(staying_svg(staying(left=(), still=(), finished=0)))]
    assert words[-1] == WORDS.nothing
    assert WORDS.interval not in [text.words for text in said(staying_svg(staying(left=())))]


def test_the_painter_draws_it_from_plain_values() -> None:
    plain = TypeAdapter(Staying).dump_python(staying(), mode="json")
    assert paint({"kind": "staying", "of": plain}).startswith(b"\x89PNG")


def test_a_share_outside_its_interval_is_refused() -> None:
    with pytest.raises(ValueError, match=re.escape("0.9 between 0.1 and 0.8")):
        Drop(1, 0.9, 0.1, 0.8)
