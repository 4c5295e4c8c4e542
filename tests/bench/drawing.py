"""A session's card beside the same picture drawn with matplotlib: `python -m tests.bench.drawing [--runs N]`.

Each run draws the cards of some days of the samples both ways, one after the other; medians in milliseconds of a core,
kilobytes of the files, and how long a card takes that was drawn before.
"""

from __future__ import annotations

import argparse
import asyncio
import io
import re
import time
import xml.etree.ElementTree as ET
from collections.abc import Callable, Iterator
from importlib.resources import files
from math import atan2, cos, pi, sin, sqrt
from statistics import median
from typing import Any

import matplotlib as mpl

mpl.use("agg")

from matplotlib import font_manager
from matplotlib.figure import Figure
from matplotlib.patches import PathPatch
from matplotlib.path import Path as Outline
from matplotlib.transforms import Affine2D

from bot.painting import Painting
from bot.words.cards import session_card, session_picture
from plans.figures.card import card_svg
from plans.figures.raster import FONTS, png
from plans.programme import Day
from plans.reading import read_programme

SVG = "{http://www.w3.org/2000/svg}"
CAUTION = "A pulling feeling is fine. Stop at sharp pain, numbness or tingling."
DAYS = {"rowing-club": (8, 23), "hill-walkers": (9, 27), "pit-musicians": (9, 34)}

Point = tuple[float, float]


def days() -> Iterator[Day]:
    """Some session days of the samples."""
    for name, numbers in DAYS.items():
        plan = read_programme(files("plans.library").joinpath(f"{name}.yaml").read_text(encoding="utf-8"))
        yield from (plan.day(number) for number in numbers)


def outline(path: str) -> Outline:
    """A path of lines and arcs of circles as matplotlib holds it, an arc as lines of nine degrees."""
    points: list[Point] = []
    codes: list[Any] = []
    words = re.findall(r"[MLAZhlva]|-?\d*\.?\d+", path)
    at, command, here = 0, "M", (0.0, 0.0)
    while at < len(words):
        if words[at].isalpha():
            command, at = words[at], at + 1
        if command == "Z":
            points.append(points[0])
            codes.append(Outline.CLOSEPOLY)
            continue
        numbers = [float(word) for word in words[at : at + {"A": 7, "a": 7, "h": 1}.get(command, 2)]]
        at += len(numbers)
        before = here
        if command == "h":
            here = (here[0] + numbers[0], here[1])
        elif command in "al":
            here = (here[0] + numbers[-2], here[1] + numbers[-1])
        else:
            here = (numbers[-2], numbers[-1])
        between = list(_arc(before, here, numbers)) if command in "Aa" else []
        for point in (*between, here):
            points.append(point)
            codes.append(Outline.MOVETO if command == "M" else Outline.LINETO)
        if command == "M":
            command = "L"
    return Outline(points, codes)


def _arc(begin: Point, end: Point, numbers: list[float]) -> Iterator[Point]:
    """Points of an arc of a circle between its ends (SVG 1.1, appendix F.6.5)."""
    radius, large, sweep = numbers[0], numbers[3] > 0, numbers[4] > 0
    dx, dy = (begin[0] - end[0]) / 2, (begin[1] - end[1]) / 2
    half = sqrt(dx * dx + dy * dy)
    off = sqrt(max(0.0, radius * radius - half * half)) / half * (1 if large == sweep else -1)
    x, y = (begin[0] + end[0]) / 2 + off * dy, (begin[1] + end[1]) / 2 - off * dx
    first, last = atan2(begin[1] - y, begin[0] - x), atan2(end[1] - y, end[0] - x)
    if sweep and last < first:
        last += 2 * pi
    if not sweep and last > first:
        last -= 2 * pi
    steps = max(1, int(abs(last - first) / 0.157))
    for step in range(1, steps):
        angle = first + (last - first) * step / steps
        yield x + radius * cos(angle), y + radius * sin(angle)


STYLES = {
    "outline": ("#3a3b38", "#3a3b38", 0.011),
    "near": ("#f0d9bd", "none", 0.0),
    "head": ("#f0d9bd", "none", 0.0),
    "far": ("#d9bfa0", "none", 0.0),
    "trunk": ("#6f8f94", "none", 0.0),
    "thing": ("#cfd3c8", "#7d8479", 0.005),
    "strap": ("#8a6d2f", "#5e4a1f", 0.002),
    "line": ("none", "#c3c7bb", 2.0),
    "way": ("#5d6059", "none", 0.0),
}


def by_matplotlib(svg: str) -> bytes:
    """The PNG file of a card, every shape and text of it drawn with matplotlib."""
    root = ET.fromstring(svg)
    wide, high = float(root.attrib["width"]), float(root.attrib["height"])
    figure = Figure(figsize=(wide / 100, high / 100), dpi=100, facecolor="#fbf9f3")
    axes = figure.add_axes((0, 0, 1, 1))
    axes.set_xlim(0, wide)
    axes.set_ylim(high, 0)
    axes.axis("off")
    for element in root:
        if element.tag == f"{SVG}g":
            x, y, scale = map(float, re.findall(r"-?[\d.]+", element.attrib["transform"]))
            for path in element:
                _draw(axes, path, x, y, scale)
        elif element.tag == f"{SVG}path":
            _draw(axes, element, 0, 0, 1)
        elif element.tag == f"{SVG}text":
            weight = "bold" if "font-weight" in element.attrib else "normal"
            axes.text(
                float(element.attrib["x"]),
                float(element.attrib["y"]),
                element.text or "",
                fontsize=float(element.attrib["font-size"]) * 0.72,
                family="DejaVu Sans",
                weight=weight,
                color="#2c2e2b" if element.attrib["class"] == "ink" else "#5d6059",
            )
    out = io.BytesIO()
    figure.savefig(out, format="png")
    return out.getvalue()


def _draw(axes: Any, path: ET.Element, x: float, y: float, scale: float) -> None:
    kind = path.attrib["class"].split()[0]
    face, edge, width = STYLES.get(kind, ("#f6e7d2", "#7a2f1d", 0.004))
    moved = outline(path.attrib["d"]).transformed(Affine2D().scale(scale).translate(x, y))
    hatch = "////" if kind == "hatch" else None
    patch = PathPatch(moved, facecolor=face, edgecolor=edge, linewidth=width * scale * 0.72, hatch=hatch)
    axes.add_patch(patch)


def timed(draw: Callable[[], bytes]) -> tuple[float, int]:
    """Milliseconds of a core, and the size of the file."""
    begin = time.process_time()
    size = len(draw())
    return (time.process_time() - begin) * 1000, size


async def cached(day: Day) -> tuple[float, float]:
    """Milliseconds by the clock of a card that is drawn in the painter's process, and of the same one again."""
    painting, picture = Painting(), session_picture(day, CAUTION)
    assert picture is not None
    await painting.picture("warm", picture.recipe)
    found = []
    for _ in range(2):
        begin = time.perf_counter()
        await painting.picture(picture.digest, picture.recipe)
        found.append((time.perf_counter() - begin) * 1000)
    await painting.close()
    return found[0], found[1]


def main() -> None:
    """Prints each run and the medians."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--runs", type=int, default=5)
    runs = parser.parse_args().runs
    for name in FONTS:
        font_manager.fontManager.addfont(str(files("plans.figures").joinpath("font", name)))
    for day in days():
        card_svg(session_card(day, CAUTION))
    ours, theirs, ratios = [], [], []
    for run in range(runs):
        for day in days():
            svg = card_svg(session_card(day, CAUTION))
            shapes, _size = timed(lambda day=day: card_svg(session_card(day, CAUTION)).encode())  # type: ignore[misc]
            mine, size = timed(lambda svg=svg: png(svg))  # type: ignore[misc]
            plain, plain_size = timed(lambda svg=svg: by_matplotlib(svg))  # type: ignore[misc]
            ours.append((shapes, mine, size))
            theirs.append((plain, plain_size))
            ratios.append(plain / (shapes + mine))
            print(
                f"run {run + 1}, day {day.number}: figures {shapes:.0f} ms, picture {mine:.0f} ms, "
                f"{size / 1000:.0f} kB; "
                f"matplotlib {plain:.0f} ms, {plain_size / 1000:.0f} kB"
            )
    print(
        f"medians: figures {median(o[0] for o in ours):.0f} ms, picture {median(o[1] for o in ours):.0f} ms, "
        f"{median(o[2] for o in ours) / 1000:.0f} kB; matplotlib {median(t[0] for t in theirs):.0f} ms, "
        f"{median(t[1] for t in theirs) / 1000:.0f} kB; matplotlib takes {median(ratios):.2f} times as long"
    )
    first, again = asyncio.run(cached(next(days())))
    print(f"in the chat: {first:.0f} ms by the painter, {again:.3f} ms for the same card again")


if __name__ == "__main__":
    main()
