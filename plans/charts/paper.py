"""The paper of a chart: a light card that is filled from the top, with words that keep to the room they have.

Lengths are pixels; the card is 1080 wide, which a phone shows at about a third.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from html import escape

from plans.charts.marks import DEFS, PAPER, STYLE
from plans.figures.letters import broken, wide

WIDE, MARGIN = 1080, 40
RIGHT = WIDE - MARGIN
TITLE, HEAD, BODY, SMALL = 46, 36, 32, 30
"""Sizes of letters: a small one is ten points on a phone of 360 points' width."""
LEADING = 1.28
"""From line to line, of the size of the letters."""
SWATCH, BESIDE, BETWEEN = 44.0, 12.0, 34.0
"""Of a key: the width of its sample, the gap before its words and before the next key."""


@dataclass(frozen=True, slots=True)
class Key:
    """What a sample means: `sample` draws it around a middle that it is given."""

    sample: Callable[[float, float], str]
    words: str


def clean(words: str) -> str:
    """A text without what a picture file may not hold: control characters, surrogates, noncharacters; blanks joined."""
    kept = (letter if unicodedata.category(letter) not in ("Cc", "Cs", "Cn") else " " for letter in words)
    return " ".join("".join(kept).split())


def shortened(words: str, room: float, size: float = SMALL, *, bold: bool = False) -> str:
    """A text on one line of at most `room`, with an ellipsis for what is beyond; nothing where not even that fits."""
    lines = broken(clean(words), room, size, bold=bold, most=1)
    return lines[0] if lines and wide(lines[0], size, bold=bold) <= room else ""


class Paper:
    """A card that is filled from the top; `y` is where it is empty from."""

    def __init__(self) -> None:
        self.y = 26.0
        self._body: list[str] = []

    def add(self, *shapes: str) -> None:
        """Puts shapes on the card, over those that are there."""
        self._body += shapes

    def room(self, high: float) -> float:
        """Takes so much of the height; gives where it begins."""
        top, self.y = self.y, self.y + high
        return top

    def words(self, text: str, size: float = BODY, *, bold: bool = False, kind: str = "ink") -> None:
        """A text over the whole width, in as many lines as it needs."""
        for line in broken(clean(text), RIGHT - MARGIN, size, bold=bold):
            top = self.room(size * LEADING)
            self.put(line, MARGIN, top + size, size, bold=bold, kind=kind)

    def head(self, title: str, note: str) -> None:
        """What the card is about."""
        self.words(title, TITLE, bold=True)
        self.words(note, BODY, kind="soft")

    def part(self, heading: str) -> None:
        """The heading of a part of the card."""
        self.room(30)
        self.words(heading, HEAD, bold=True)
        self.room(6)

    def put(
        self,
        words: str,
        x: float,
        y: float,
        size: float = SMALL,
        *,
        bold: bool = False,
        kind: str = "ink",
        anchor: str = "start",
    ) -> None:
        """Words on one line from, around or up to x, on the baseline y; nothing for no words."""
        if not words:
            return
        more = f' text-anchor="{anchor}"' if anchor != "start" else ""
        more += ' font-weight="bold"' if bold else ""
        at = f'x="{x:.1f}" y="{y:.1f}" font-size="{size:g}"'
        self._body.append(f'<text class="{kind}" {at}{more}>{escape(words)}</text>')

    def lines(
        self, lines: Sequence[str], x: float, y: float, size: float = SMALL, *, kind: str = "ink", anchor: str = "start"
    ) -> None:
        """Lines under each other, the first on the baseline y."""
        for number, line in enumerate(lines):
            self.put(line, x, y + number * size * LEADING, size, kind=kind, anchor=anchor)

    def keys(self, keys: Iterable[Key]) -> None:
        """Samples with their words, side by side while there is room."""
        x, high = float(MARGIN), SMALL * LEADING
        top, deep = self.y, 0
        for key in keys:
            lines = broken(clean(key.words), RIGHT - MARGIN - SWATCH - BESIDE, SMALL)
            length = SWATCH + BESIDE + max((wide(line, SMALL) for line in lines), default=0.0)
            if x > MARGIN and x + length > RIGHT:
                x, top, deep = float(MARGIN), top + deep * high, 0
            self.add(key.sample(x + SWATCH / 2, top + high * 0.52))
            self.lines(lines, x + SWATCH + BESIDE, top + SMALL)
            x, deep = x + length + BETWEEN, max(deep, len(lines), 1)
        self.y = top + deep * high

    def svg(self, label: str = "") -> str:
        """The card as the text of an SVG file; `label` names it for who does not see it."""
        high = round(self.y + 34)
        said = f' role="img" aria-label="{escape(clean(label))}"' if label else ""
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {WIDE} {high}" width="{WIDE}" height="{high}"{said}>'
            f'<style>{STYLE}</style><defs>{DEFS}</defs><rect x="0" y="0" width="{WIDE}" height="{high}" '
            f'fill="{PAPER}"/>{"".join(self._body)}</svg>\n'
        )
