"""A day's session as one picture for a phone: two movements a row, each from start to end, its dose under its figure.

Words come in as they are said to the client; nothing here knows a language. Lengths are pixels.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import asdict, dataclass
from html import escape
from itertools import groupby
from typing import Any

from plans.figures.drawing import HATCH, STYLE, shapes_svg
from plans.figures.letters import broken, wide
from plans.figures.library import Frame, bounds, drawn, frames
from plans.figures.measuring import RULER_STYLE, measuring
from plans.figures.written import Drawn
from plans.movements import Movement, Muscle

WIDE, MARGIN, COLUMNS = 1080, 40, 2
CELL = (WIDE - MARGIN) / COLUMNS
"""Width of a cell with the gap after it."""
ROOM = CELL - MARGIN
"""What a cell has for its words and its figure."""
HIGH, LEAST = 250, 96
"""The room of a figure: at most and at least so high."""
TITLE, NAME, DOSE, SMALL = 46, 32, 38, 31
"""Sizes of letters; on a phone of 360 points' width a third of that."""
LEADING = 1.28
"""From line to line, of the size of the letters."""


@dataclass(frozen=True, slots=True)
class Shown:
    """A movement on a card: its name, its dose and where it is felt in words, and of what its figure is made.

    `own` is the figure of a coach's own movement as it is written; a movement of the library needs its key only.
    """

    movement: str
    name: str
    dose: str
    felt: str
    sides: bool
    main: tuple[Muscle, ...]
    own: Mapping[str, Any] | None = None

    @classmethod
    def of_json(cls, found: Mapping[str, Any]) -> Shown:
        """The movement from its plain values."""
        return cls(**{**found, "main": tuple(Muscle(muscle) for muscle in found["main"])})

    @property
    def is_drawn(self) -> bool:
        """Whether there is a figure of it."""
        return self.own is not None or self.movement in drawn()

    def how(self) -> Drawn | None:
        """What is written of its figure."""
        return Drawn.model_validate(self.own) if self.own is not None else drawn().get(self.movement)

    def frames(self) -> list[Frame]:
        """The first and the last pose; none for a movement that has no figure."""
        how = self.how()
        found = frames(self.movement, how, self) if how else []
        return [found[0], found[-1]] if len(found) > 1 else found


@dataclass(frozen=True, slots=True)
class Measurement:
    """A test on a card: its name, how often it is tried and what is typed, in words."""

    measure: str
    name: str
    dose: str
    felt: str

    def frames(self) -> list[Frame]:
        """The start and the reading, with its ruler."""
        return measuring(self.measure)


@dataclass(frozen=True, slots=True)
class Card:
    """What is on a card: lines of words over the whole width, tests and movements, in their order."""

    title: str
    length: str
    parts: tuple[str | Shown | Measurement, ...]
    caution: str

    def as_json(self) -> dict[str, Any]:
        """The card in plain values, equal for equal cards."""
        return asdict(self)

    @classmethod
    def of_json(cls, found: Mapping[str, Any]) -> Card:
        """The card from its plain values."""
        parts = tuple(_part(part) for part in found["parts"])
        return cls(found["title"], found["length"], parts, found["caution"])


def _part(found: str | Mapping[str, Any]) -> str | Shown | Measurement:
    if isinstance(found, str):
        return found
    return Measurement(**found) if "measure" in found else Shown.of_json(found)


def shown(movement: Movement, name: str, dose: str, felt: str) -> Shown:
    """A movement with the words that stand under its figure."""
    own = movement.figure.model_dump(mode="json", exclude_defaults=True) if movement.figure else None
    return Shown(movement.key, name, dose, felt, movement.sides, movement.main, own)


def card_svg(card: Card) -> str:
    """The card as an SVG file's text, 1080 pixels wide. Raises ImpossiblePose for a figure that cannot be drawn."""
    page = _Page()
    page.words(card.title, TITLE, bold=True)
    page.words(card.length, NAME, kind="soft")
    for is_words, parts in groupby(card.parts, lambda part: isinstance(part, str)):
        page.gap(14)
        if is_words:
            for part in parts:
                page.words(str(part), NAME)
            continue
        cells = [part for part in parts if not isinstance(part, str)]
        for begin in range(0, len(cells), COLUMNS):
            page.row(cells[begin : begin + COLUMNS])
    page.gap(18)
    page.words(card.caution, SMALL, kind="soft")
    return page.svg()


class _Page:
    """A page that is filled from the top."""

    def __init__(self) -> None:
        self._y = 26.0
        self._body: list[str] = []

    def gap(self, high: float) -> None:
        self._y += high

    def words(self, text: str, size: float, *, bold: bool = False, kind: str = "ink") -> None:
        lines = broken(text, WIDE - 2 * MARGIN, size, bold=bold)
        self._y = self._write(lines, MARGIN, self._y, size, bold=bold, kind=kind)

    def row(self, cells: Sequence[Shown | Measurement]) -> None:
        """Figures on one floor line, and under each its name, its dose and where it is felt (the first place)."""
        figures = [cell.frames() for cell in cells]
        scale = min((_scale(found) for found in figures if found), default=1.0)
        high = max((_high(found) * scale for found in figures if found), default=0.0)
        floor = self._y + high
        ends = [floor]
        for number, (cell, found) in enumerate(zip(cells, figures, strict=True)):
            x = MARGIN + number * CELL
            self._body += _figure(found, x, floor, scale)
            y = floor + 8 if found else self._y
            y = self._write(broken(cell.name, ROOM, NAME, most=3), x, y, NAME)
            y = self._write(broken(cell.dose, ROOM, DOSE, bold=True, most=4), x, y, DOSE, bold=True)
            felt = cell.felt if wide(cell.felt, SMALL) <= ROOM else cell.felt.partition(", ")[0]
            ends.append(self._write(broken(felt, ROOM, SMALL, most=1), x, y, SMALL, kind="soft"))
        self._y = max(ends) + 22

    def _write(
        self, lines: Sequence[str], x: float, y: float, size: float, *, bold: bool = False, kind: str = "ink"
    ) -> float:
        weight = ' font-weight="bold"' if bold else ""
        for line in lines:
            y += size * LEADING
            self._body.append(
                f'<text class="{kind}" x="{x:.1f}" y="{y - size * 0.28:.1f}" font-size="{size}"{weight}>'
                f"{escape(line)}</text>"
            )
        return y

    def svg(self) -> str:
        high = round(self._y + 30)
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {high}" width="{WIDE}" height="{high}">'
            f"<style>{STYLE}{RULER_STYLE}text{{font-family:DejaVu Sans}}.ink{{fill:#2c2e2b}}.soft{{fill:#5d6059}}"
            ".line{stroke:#c3c7bb;stroke-width:2;fill:none}.way{fill:#5d6059;stroke:#fbf9f3;stroke-width:3}</style>"
            f'<defs>{HATCH}</defs><rect width="100%" height="100%" fill="#fbf9f3"/>{"".join(self._body)}</svg>'
        )


def _scale(found: Sequence[Frame]) -> float:
    """Pixels for a body's height, so that the poses have room side by side."""
    left, top, right, bottom = bounds(list(found))
    return min(ROOM / len(found) / (right - left + 0.04), HIGH / max(bottom - top, 0.4))


def _high(found: Sequence[Frame]) -> float:
    _left, top, _right, bottom = bounds(list(found))
    return bottom - top


def _figure(found: Sequence[Frame], x: float, floor: float, scale: float) -> Iterator[str]:
    """The poses from left to right on one floor line, and between them the way from the first to the last."""
    if not found:
        return
    left, _top, right, bottom = bounds(list(found))
    room = ROOM / len(found)
    yield f'<path class="line" d="M{x:.1f} {floor:.1f}h{ROOM:.1f}"/>'
    for number, frame in enumerate(found):
        at = x + (number + 0.5) * room - (left + right) / 2 * scale
        yield (
            f'<g transform="translate({at:.1f} {floor - bottom * scale:.1f}) scale({scale:.1f})">'
            f"{shapes_svg(frame.shapes)}</g>"
        )
    if len(found) > 1:
        yield f'<path class="way" d="M{x + room - 9:.1f} {floor - 7:.1f}l18 7-18 7Z"/>'
