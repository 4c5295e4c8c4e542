"""Reading a chart back: where its words and marks stand, and that nothing leaves its paper."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import combinations

from plans.charts import marks
from plans.charts.paper import SMALL, WIDE
from plans.figures.letters import wide

SVG = "{http://www.w3.org/2000/svg}"


@dataclass(frozen=True)
class Said:
    """A text on the paper: its words, its box, its baseline and how it looks."""

    words: str
    left: float
    top: float
    right: float
    bottom: float
    y: float
    kind: str
    size: float
    anchor: str


def said(svg: str) -> list[Said]:
    """Every text with its box by measured widths."""
    found = []
    for text in ET.fromstring(svg).iter(f"{SVG}text"):
        at, words = text.attrib, text.text or ""
        x, y, size = float(at["x"]), float(at["y"]), float(at["font-size"])
        long = wide(words, size, bold="font-weight" in at)
        anchor = at.get("text-anchor", "start")
        left = x - {"start": 0.0, "middle": 0.5, "end": 1.0}[anchor] * long
        found.append(Said(words, left, y - 0.75 * size, left + long, y + 0.22 * size, y, at["class"], size, anchor))
    return found


def corners(path: str) -> Iterator[tuple[float, float]]:
    """The points of a path of straight lines."""
    x = y = 0.0
    for command, numbers in re.findall(r"([MLHVhv])([^MLHVhvZ]*)", path):
        values = [float(number) for number in re.findall(r"-?[\d.]+", numbers)]
        if command in "ML":
            x, y = values
        x = values[0] if command == "H" else x + values[0] if command == "h" else x
        y = values[0] if command == "V" else y + values[0] if command == "v" else y
        yield x, y


def used(svg: str, *names: str, below: float = 0.0) -> list[tuple[str, float, float, float]]:
    """The marks of these names: name, x, y and half of its size; only those that lie below."""
    found = []
    for use in ET.fromstring(svg).iter(f"{SVG}use"):
        at = re.fullmatch(r"translate\((\S+) (\S+)\) scale\((\S+)\)", use.attrib["transform"])
        assert at is not None
        x, y, size = (float(number) for number in at.groups())
        name = use.attrib["href"][1:]
        if (not names or name in names) and y > below:
            found.append((name, x, y, size * marks.RADIUS))
    return found


def rects(svg: str, kind: str, below: float = 0.0) -> list[tuple[float, float, float, float]]:
    """Boxes of a class: left, top, width, height."""
    found = [
        (float(at["x"]), float(at["y"]), float(at["width"]), float(at["height"]))
        for at in (rect.attrib for rect in ET.fromstring(svg).iter(f"{SVG}rect"))
        if at.get("class") == kind
    ]
    return [one for one in found if one[1] >= below]


def circles(svg: str, below: float = 0.0) -> list[tuple[float, float]]:
    """Middles of the pain answers."""
    found = [(float(c.attrib["cx"]), float(c.attrib["cy"])) for c in ET.fromstring(svg).findall(f"{SVG}circle")]
    return [one for one in found if one[1] > below]


def check_paper(svg: str) -> None:
    """Nothing leaves the paper, no words lie over others, and all of them are large enough."""
    root = ET.fromstring(svg)
    high = float(root.attrib["height"])
    assert float(root.attrib["width"]) == WIDE
    texts = said(svg)
    for text in texts:
        assert text.left >= 8, f"{text.words!r} leaves the paper"
        assert text.right <= WIDE - 8, f"{text.words!r} leaves the paper"
        assert text.top >= 8
        assert text.bottom <= high - 8
        assert text.size >= 30
    for one, other in combinations(texts, 2):
        apart = one.right <= other.left or other.right <= one.left or one.bottom <= other.top or other.bottom <= one.top
        assert apart, f"{one.words!r} and {other.words!r} lie over each other"
    points = [(x + way * r, y + way * r) for _name, x, y, r in used(svg) for way in (-1, 1)]
    points += [(x + way * 11, y + way * 11) for x, y in circles(svg) for way in (-1, 1)]
    for rect in root.findall(f"{SVG}rect"):
        x, y, long, tall = (float(rect.attrib[name]) for name in ("x", "y", "width", "height"))
        assert long >= 0
        assert tall >= 0
        points += [(x, y), (x + long, y + tall)]
    points += [point for path in root.findall(f"{SVG}path") for point in corners(path.attrib["d"])]
    for x, y in points:
        assert 0 <= x <= WIDE
        assert 0 <= y <= high


@dataclass(frozen=True)
class Axis:
    """A panel's numbers read off the words to its left."""

    zero: float
    one: float
    bottom: float

    def __call__(self, y: float) -> float:
        return (y - self.zero) / self.one


def axis(svg: str, heading: str) -> Axis:
    """The first upright axis below a heading."""
    texts = said(svg)
    begin = next(text.y for text in texts if text.words == heading)
    end = min((text.y for text in texts if text.size == 36 and text.y > begin), default=1e9)
    ticks = []
    for text in texts:
        number = re.fullmatch(r"(−?[\d,.]+)( \S+)?", text.words)
        if number and text.anchor == "end" and begin < text.y < end:
            ticks.append((float(number[1].replace("−", "-").replace(",", ".")), text.y - 0.36 * SMALL))
    low, high = min(ticks), max(ticks)
    one = (high[1] - low[1]) / (high[0] - low[0])
    return Axis(low[1] - low[0] * one, one, low[1])


def dates(svg: str, heading: str, words: Mapping[str, date]) -> Callable[[float], date]:
    """What date stands at an x: read off the first two of the Mondays' words written below a heading."""
    texts = said(svg)
    begin = next(text.y for text in texts if text.words == heading)
    a, b = [text for text in texts if text.words in words and text.y > begin][:2]
    one = (b.left - a.left) / (words[b.words] - words[a.words]).days
    return lambda x: words[a.words] + timedelta(days=round((x - a.left + 8) / one - 0.5))
