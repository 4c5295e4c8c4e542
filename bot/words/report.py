"""The checker's report as one page that needs nothing else: findings, dose chart, weeks, and what a reader is told."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from jinja2 import Environment, PackageLoader, StrictUndefined

from plans.cert import answers
from plans.findings import Report, in_runs
from plans.lint import ENOUGH_A_WEEK, LEAST_A_WEEK, MUCH_A_SESSION, MUCH_A_WEEK
from plans.movements import MovementKind, Muscle
from plans.overview import Week, day_seconds, overview
from plans.programme import Day, Programme

WIDTH, HEIGHT, LEFT, BASE = 720, 190, 44, 160
"""Of a chart in its own units: the whole, the room for the scale, and the line on which bars stand."""
SCALE_STEP = 60
"""Seconds between the lines of the scale."""


@dataclass(frozen=True, slots=True)
class Bar:
    """One part of a day's bar: where, how high, of which kind, and what it says when pointed at."""

    x: float
    y: float
    width: float
    height: float
    kind: MovementKind
    says: str


@dataclass(frozen=True, slots=True)
class Chart:
    """Seconds for each side of one muscle, day by day."""

    muscle: Muscle
    bars: tuple[Bar, ...]
    lines: tuple[tuple[float, int], ...]
    limit: float
    """Where the line of the most useful seconds of a session is."""
    labels: tuple[tuple[float, int], ...]


def page(programme: Programme, report: Report) -> str:
    """The report as HTML, with its drawing and style inside."""
    environment = Environment(
        loader=PackageLoader("bot.words", "templates"), autoescape=True, undefined=StrictUndefined, trim_blocks=True
    )
    weeks = overview(programme)
    return environment.get_template("report.html").render(
        programme=programme,
        report=report,
        weeks=weeks,
        tables=[(muscle, [_row(week, muscle) for week in weeks]) for muscle in programme.muscles],
        charts=[_chart(programme.days, muscle) for muscle in programme.muscles],
        kinds=[kind for kind in MovementKind if any(key[2] is kind for week in weeks for key in week.seconds)],
        said=answers(programme),
        in_runs=in_runs,
        size=(WIDTH, HEIGHT, LEFT, BASE),
        limits=(LEAST_A_WEEK, ENOUGH_A_WEEK, MUCH_A_WEEK, MUCH_A_SESSION),
    )


def _row(week: Week, muscle: Muscle) -> tuple[Week, list[str]]:
    """A week with the seconds held on the left and right side, and moved on both."""
    held = [week.held(muscle, side) for side in ("left", "right")]
    moved = [week.moved(muscle, side) for side in ("left", "right")]
    return week, [_range(seconds) for seconds in (*held, *moved)]


def _range(seconds: tuple[int, int]) -> str:
    return f"{seconds[0]} s" if seconds[0] == seconds[1] else f"{seconds[0]}-{seconds[1]} s"


def _chart(days: tuple[Day, ...], muscle: Muscle) -> Chart:
    room = (WIDTH - LEFT) / len(days)
    tallest = max((_total(day, muscle, side) for day in days for side in ("left", "right")), default=0)
    most = max(MUCH_A_SESSION, tallest) + SCALE_STEP / 2
    unit = (BASE - 10) / most
    bars = [
        bar
        for day in days
        for place, side in enumerate(("left", "right"))
        for bar in _stack(day, muscle, side, LEFT + (day.number - 1) * room + place * room * 0.42, room * 0.38, unit)
    ]
    every = 1 if len(days) <= 31 else 7
    labels = [(LEFT + (day.number - 0.6) * room, day.number) for day in days if (day.number - 1) % every == 0]
    lines = [(BASE - seconds * unit, seconds) for seconds in range(0, int(most) + 1, SCALE_STEP)]
    return Chart(muscle, tuple(bars), tuple(lines), BASE - MUCH_A_SESSION * unit, tuple(labels))


def _total(day: Day, muscle: Muscle, side: str) -> int:
    return sum(high for _low, high in day_seconds(day, muscle, side).values())


def _stack(day: Day, muscle: Muscle, side: str, x: float, width: float, unit: float) -> Iterator[Bar]:
    at = float(BASE)
    for kind, (low, high) in day_seconds(day, muscle, side).items():
        amount = f"{low}" if low == high else f"{low}-{high}"
        at -= high * unit
        yield Bar(x, at, width, high * unit, kind, f"day {day.number}, {side}: {amount} s {kind}")
