"""Minutes of holding by muscle and week, beside what the programme asked for.

It needs, for each muscle (or for all of them as one) and each week of the course, the minutes that were done and the
least and most that the programme asked for in the weeks that the client went through.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from plans.charts.axes import Panel, columns_under, gutter, said, steps
from plans.charts.marks import box, path
from plans.charts.paper import BODY, HEAD, MARGIN, RIGHT, SMALL, Key, Paper
from plans.figures.letters import wide

MOST_WEEKS = 26
"""A picture has room for so many weeks; of more it shows the latest."""
HIGH = 255.0
WIDEST = 150.0
"""Of a week's column, however few there are."""


@dataclass(frozen=True, slots=True)
class Dose:
    """Minutes of one muscle in one week: `done` (None while it has not come), and asked for at least and at most.

    Raises ValueError for minutes below 0 or a most below the least.
    """

    done: float | None
    least: float
    most: float

    def __post_init__(self) -> None:
        if (self.done is not None and self.done < 0) or not 0 <= self.least <= self.most:
            raise ValueError(f"minutes {self.done} of {self.least} to {self.most}: none below 0, the most not below")


@dataclass(frozen=True, slots=True)
class Muscle:
    """A muscle by name, or all of them together, and its weeks in the order of `Doses.weeks`."""

    name: str
    weeks: tuple[Dose, ...]


@dataclass(frozen=True, slots=True)
class DosesWords:
    """Every word on the picture beside names: `minutes` is the unit at the axis, `over` a range's upper part."""

    title: str
    note: str
    done: str
    asked: str
    over: str
    minutes: str
    nothing: str
    decimal: str = "."


@dataclass(frozen=True, slots=True)
class Doses:
    """Weeks by their words and, for each muscle, as many doses. Raises ValueError when the numbers of weeks differ."""

    weeks: tuple[str, ...]
    muscles: tuple[Muscle, ...]
    words: DosesWords

    def __post_init__(self) -> None:
        for muscle in self.muscles:
            if len(muscle.weeks) != len(self.weeks):
                raise ValueError(f"{muscle.name} has {len(muscle.weeks)} weeks, the picture {len(self.weeks)}")


def doses_svg(doses: Doses) -> str:
    """The picture as an SVG file's text: a panel a muscle, all with the same scale."""
    paper, words = Paper(), doses.words
    paper.head(words.title, words.note)
    given = [dose for muscle in doses.muscles for dose in muscle.weeks[-MOST_WEEKS:]]
    if not given:
        paper.room(20)
        paper.words(words.nothing, BODY, kind="soft")
        return paper.svg()
    paper.room(14)
    paper.keys(_keys(given, words))
    ticks = steps(0, max(1.0, *(max(dose.most, dose.done or 0) for dose in given)), 6)
    told = said(ticks, words.minutes, words.decimal)
    left = MARGIN + gutter(told)
    for muscle in doses.muscles:
        paper.room(20)
        paper.words(muscle.name, HEAD, bold=True)
        _weeks(paper, muscle.weeks[-MOST_WEEKS:], doses.weeks[-MOST_WEEKS:], ticks, told, left)
    return paper.svg()


def _keys(given: Sequence[Dose], words: DosesWords) -> list[Key]:
    keys = [
        Key(lambda x, y: box("hatch", x - 12, y - 14, 24, 28), words.done),
        Key(lambda x, y: box("asked", x - 18, y - 14, 36, 28), words.asked),
    ]
    if any(dose.most > dose.least for dose in given):
        keys.append(Key(lambda x, y: box("more", x - 18, y - 14, 36, 28), words.over))
    return keys


def _weeks(
    paper: Paper, given: Sequence[Dose], weeks: Sequence[str], ticks: Sequence[float], told: Sequence[str], left: float
) -> None:
    """What was asked for as a frame, and what was done as a hatched bar in it, its minutes above."""
    panel = Panel.on(paper, HIGH, ticks, told, left)
    step = min(WIDEST, (RIGHT - left) / len(given))
    middles = [left + (number + 0.5) * step for number in range(len(given))]
    for x, dose in zip(middles, given, strict=True):
        half, zero, least = step * 0.4, panel.up(0), panel.up(dose.least)
        if dose.most > dose.least:
            paper.add(box("more", x - half, panel.up(dose.most), 2 * half, least - panel.up(dose.most)))
        if dose.least:
            paper.add(box("asked", x - half, least, 2 * half, zero - least))
        if dose.done is not None:
            done = panel.up(dose.done)
            paper.add(box("hatch", x - half * 0.62, done, 1.24 * half, zero - done))
            minutes = f"{dose.done:.0f}"
            if wide(minutes, SMALL, bold=True) <= step - 8:
                baseline = _over(done, (least, panel.up(dose.most)))
                paper.put(minutes, x, baseline, bold=True, kind="value", anchor="middle")
    paper.add(path("axis", f"M{left:.1f} {panel.bottom:.2f}H{RIGHT}"))
    columns_under(paper, middles, weeks)


def _over(y: float, edges: tuple[float, float]) -> float:
    """The baseline of a number above y that no edge goes through; the upper edge comes last."""
    baseline = y - 8
    for edge in edges:
        if baseline - SMALL * 0.85 < edge < baseline + 5:
            baseline = edge - 8
    return baseline
