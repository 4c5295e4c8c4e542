"""One measure of flexibility: its results by date, and the band in which a change is no more than the test's error."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date

from plans.charts.axes import Panel, Weeks, dates_under, said, steps
from plans.charts.course import sample
from plans.charts.marks import box, mark, path
from plans.charts.paper import RIGHT, SMALL, SWATCH, Key, Paper, clean, shortened
from plans.figures.letters import wide

HIGH = 310.0
"""Of a panel."""
MOST = 1e6
"""No value of a measure is greater, nor less than its opposite."""


@dataclass(frozen=True, slots=True)
class Result:
    """One time that a measure was tested: its value in the measure's unit, that in words, and what was different.

    `apart` is empty for a test like the baseline, or says that it was at another time of day or without warm-up.
    """

    on: date
    value: float
    said: str
    apart: str = ""


@dataclass(frozen=True, slots=True)
class Measured:
    """A measure's results, oldest first, in `unit`; a measure with sides is two of these.

    From `baseline - error` to `baseline + error` a change is no more than the error of the test; `band` says so in
    words. Both are None while there is no baseline. Raises ValueError for one without the other and beyond 1e6.
    """

    name: str
    unit: str
    results: tuple[Result, ...]
    baseline: float | None
    error: float | None
    band: str

    @property
    def edges(self) -> tuple[float, float] | None:
        """From where to where a change is no more than the error; None without a baseline."""
        if self.baseline is None or self.error is None:
            return None
        return self.baseline - self.error, self.baseline + self.error

    def __post_init__(self) -> None:
        if (self.baseline is None) != (self.error is None) or (self.error or 0) < 0:
            raise ValueError(
                f"{self.name}: baseline {self.baseline}, error {self.error}: both or none, no error below 0"
            )
        for value in (*(result.value for result in self.results), self.baseline or 0, self.error or 0):
            if not abs(value) <= MOST:
                raise ValueError(f"{self.name}: a value of {value}; none is beyond {MOST:g}")


def axis(measured: Measured, decimal: str) -> tuple[tuple[float, ...], list[str]]:
    """The steps of a measure's axis around its values and its band, and their words."""
    values = [*(result.value for result in measured.results), *(measured.edges or ())]
    ticks = steps(min(values), max(values)) if values else (0.0, 1.0)
    return ticks, said(ticks, measured.unit, decimal)


def draw(
    paper: Paper,
    weeks: Weeks,
    measured: Measured,
    ticks: Sequence[float],
    told: Sequence[str],
    dates: Mapping[date, str],
) -> None:
    """The results over the band of the baseline's error; one that was measured otherwise is open and numbered."""
    results = [result for result in measured.results if weeks.has(result.on)]
    edges = measured.edges
    if edges and clean(measured.band):
        paper.keys([Key(_band_sample, measured.band)])
    panel = Panel.on(paper, HIGH, ticks, told, weeks.left)
    if edges:
        paper.add(*_band(panel.left, panel.up(edges[1]), RIGHT - panel.left, panel.up(edges[0]) - panel.up(edges[1])))
    places = [(weeks.middle(result.on), panel.up(result.value)) for result in results]
    if len(places) > 1:
        paper.add(path("line", "M" + "L".join(f"{x:.2f} {y:.2f}" for x, y in places)))
    notes = list(dict.fromkeys(clean(result.apart) for result in results if clean(result.apart)))
    for result, (x, y) in zip(results, places, strict=True):
        paper.add(mark("apart" if clean(result.apart) else "measured", x, y))
    _values(paper, panel, places, [_numbered(result, notes) for result in results])
    dates_under(paper, weeks, panel.bottom, dates)
    paper.keys(Key(sample("apart"), f"({number}) {note}") for number, note in enumerate(notes, 1))


def _numbered(result: Result, notes: Sequence[str]) -> str:
    apart = clean(result.apart)
    return f"{clean(result.said)} ({notes.index(apart) + 1})" if apart else clean(result.said)


def _band(left: float, top: float, long: float, high: float) -> list[str]:
    lines = f"M{left:.1f} {top:.2f}h{long:.1f}M{left:.1f} {top + high:.2f}h{long:.1f}"
    return [box("band", left, top, long, high), path("edge", lines)]


def _band_sample(x: float, y: float) -> str:
    return "".join(_band(x - SWATCH / 2, y - 12, SWATCH, 24))


def _values(paper: Paper, panel: Panel, places: Sequence[tuple[float, float]], told: Sequence[str]) -> None:
    """The values in words, the last first, above or below their mark, as many as have room."""
    taken = [(x - 14, y - 14, x + 14, y + 14) for x, y in places]
    order = sorted(range(len(told)), key=lambda place: (place != len(told) - 1, place))
    for place in order:
        word = shortened(told[place], 240, SMALL, bold=True)
        (x, y), half = places[place], wide(word, SMALL, bold=True) / 2
        x = min(max(x, panel.left + half + 4), RIGHT - half)
        for baseline in (y - 24, y + 20 + SMALL * 0.76):
            room = (x - half - 6, baseline - SMALL * 0.8, x + half + 6, baseline + SMALL * 0.22)
            inside = room[1] >= panel.top - SMALL * 1.1 and room[3] <= panel.bottom + 4
            if inside and not any(_meet(room, other) for other in taken):
                taken.append(room)
                paper.put(word, x, baseline, bold=True, kind="value", anchor="middle")
                break


def _meet(a: tuple[float, float, float, float], b: tuple[float, float, float, float]) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]
