"""Charts: marks stand where the numbers say, and what cannot be is refused."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from collections import Counter
from dataclasses import replace
from datetime import timedelta
from importlib.resources import files
from typing import Any

import pytest
from pydantic import TypeAdapter

from bot.rehearsing import rehearse
from plans.charts import marks
from plans.charts import rehearsal as rehearsal_chart
from plans.charts.days import Day, Line
from plans.charts.digest import Digest, Pain, Share, digest_svg
from plans.charts.doses import Dose, Doses, Muscle, doses_svg
from plans.charts.fortnight import Fortnight, fortnight_svg
from plans.charts.paper import SMALL
from plans.charts.progress import Progress, progress_svg
from tests.charted import (
    DIGEST_WORDS,
    DOSES_WORDS,
    FIRST,
    FOLLOWED,
    FORTNIGHT_WORDS,
    HEIGHT,
    LINES,
    MONDAYS,
    SIXTEEN_WEEKS,
    WEEKDAYS,
    WEEKS,
    WORDS,
    course,
    muscles,
)
from tests.on_paper import SVG, axis, check_paper, circles, corners, dates, rects, said, used

SAID = {word: monday for monday, word in MONDAYS.items()}


@pytest.mark.parametrize("length", [1, 2, 14, 28, 29, 45, 112, 126])
@pytest.mark.parametrize("pains", [True, False])
def test_a_course_of_any_length_keeps_to_its_paper(length: int, pains: bool) -> None:
    check_paper(progress_svg(Progress(course(length, pains=pains), LINES, (HEIGHT,), WORDS)))


@pytest.mark.parametrize("length", [20, 112])
def test_pain_stands_at_its_date_and_number(length: int) -> None:
    days = course(length)
    svg = progress_svg(Progress(days, LINES, (HEIGHT,), WORDS))
    number, on = axis(svg, WORDS.pain), dates(svg, WORDS.pain, SAID)
    read = [(on(x), round(number(y), 2)) for x, y in circles(svg)]
    assert read == [(day.on, day.pain) for day in days if day.pain is not None]
    assert len(read) > 5


def test_lines_stand_at_the_numbers_that_were_given() -> None:
    svg = progress_svg(SIXTEEN_WEEKS)
    number = axis(svg, WORDS.pain)
    lines = [path for path in ET.fromstring(svg).findall(f"{SVG}path") if path.attrib["class"] == "across"]
    long = [next(corners(path.attrib["d"]))[1] for path in lines if "H1040" in path.attrib["d"]]
    assert [round(number(y), 2) for y in long] == [1, 3, 6]
    assert len({path.attrib["stroke-dasharray"] for path in lines}) == 3


@pytest.mark.parametrize("length", [20, 112])
def test_tightness_stands_at_its_date_and_number(length: int) -> None:
    days = course(length)
    svg = progress_svg(Progress(days, (), (), WORDS))
    number, on = axis(svg, WORDS.tightness), dates(svg, WORDS.tightness, SAID)
    top = next(text.y for text in said(svg) if text.words == WORDS.after) + 10
    read = sorted((on(x), name, round(number(y), 2)) for name, x, y, _r in used(svg, "before", "after", below=top))
    given = [(day.on, name, getattr(day, name)) for day in days for name in ("after", "before")]
    assert read == [one for one in given if one[2] is not None]


def test_up_to_four_weeks_stand_date_by_date() -> None:
    days = course(28)
    svg = progress_svg(Progress(days, (), (), WORDS))
    on, top = dates(svg, WORDS.done, SAID), rects(svg, "tile")[0][1]
    bottom = next(text.y for text in said(svg) if text.words == WORDS.followed)
    drawn = {(on(x), name) for name, x, y, _r in used(svg, below=top) if y < bottom}
    given = {(day.on, day.did.value) for day in days if day.did}
    assert drawn == given | {(day.on, marks.VERDICTS[day.verdict]) for day in days if day.verdict is not None}


def test_many_weeks_stand_in_columns_with_a_row_a_weekday() -> None:
    days = course(112)
    svg = progress_svg(Progress(days, (), (), WORDS))
    rows = {text.words: (text.y - 0.36 * SMALL) for text in said(svg) if text.words in WEEKDAYS}
    tiles = rects(svg, "tile")
    assert len(tiles) == 112
    columns = sorted({round(left) for left, *_rest in tiles})
    assert len(columns) == 16
    for (left, top, long, high), day in zip(tiles, days, strict=True):
        weeks, weekday = divmod((day.on - FIRST).days, 7)
        assert round(left) == columns[weeks]
        assert top + high / 2 == pytest.approx(rows[WEEKDAYS[weekday]], abs=1)
        inside = [m[0] for m in used(svg) if left < m[1] < left + long and top < m[2] < top + high]
        wanted = [day.did.value if day.did else "", marks.VERDICTS[day.verdict] if day.verdict is not None else ""]
        assert sorted(inside) == sorted(filter(None, wanted))


def test_a_longer_course_shows_its_latest_weeks() -> None:
    days = course(300)
    svg = progress_svg(Progress(days, LINES, (HEIGHT,), WORDS))
    check_paper(svg)
    tiles = rects(svg, "tile")
    monday = days[-1].on - timedelta(days=days[-1].on.weekday() + 7 * 17)
    assert len(tiles) == len([day for day in days if day.on >= monday])
    assert WORDS.no_tests in [text.words for text in said(svg)], "its tests are before what is shown"


def test_results_stand_at_their_values_over_the_band_of_the_error() -> None:
    svg = progress_svg(SIXTEEN_WEEKS)
    number, on = axis(svg, HEIGHT.name), dates(svg, HEIGHT.name, SAID)
    top = next(text.y for text in said(svg) if text.words == HEIGHT.name)
    points = used(svg, "measured", "apart", below=top)[:3]
    assert [name for name, *_rest in points] == ["measured", "apart", "measured"]
    assert [(on(x), round(number(y), 2)) for _name, x, y, _r in points] == [(r.on, r.value) for r in HEIGHT.results]
    band = rects(svg, "band", below=top)[1]
    assert number(band[1]) == pytest.approx(14 + 6.75, abs=0.01)
    assert number(band[1] + band[3]) == pytest.approx(14 - 6.75, abs=0.01)
    words = [text.words for text in said(svg)]
    assert {"14 cm", "11,5 cm (1)", "4,5 cm", "(1) 18:30 statt 7:00, ohne Aufwärmen"} <= set(words)


def test_measures_can_have_a_picture_of_their_own() -> None:
    svg = progress_svg(Progress((), LINES, (HEIGHT, replace(HEIGHT, name="links")), WORDS))
    check_paper(svg)
    assert not {WORDS.done, WORDS.pain, WORDS.nothing} & {text.words for text in said(svg)}
    number = axis(svg, "links")
    assert [round(number(y), 2) for _name, _x, y, _r in used(svg, "measured", "apart")[-4:-1]] == [14, 11.5, 4.5]


def test_without_answers_or_tests_the_picture_says_so() -> None:
    svg = progress_svg(Progress(course(20, pains=False), LINES, (replace(HEIGHT, results=()),), WORDS))
    words = [text.words for text in said(svg)]
    assert WORDS.nothing in words
    assert WORDS.no_tests in words
    assert WORDS.tightness not in words
    assert not circles(svg)
    empty = progress_svg(Progress((), LINES, (), WORDS))
    check_paper(empty)
    assert WORDS.nothing in [text.words for text in said(empty)]


@pytest.mark.parametrize("weeks", [1, 2, 6, 16, 26, 40])
def test_doses_stand_at_their_minutes(weeks: int) -> None:
    given = muscles(weeks)
    svg = doses_svg(Doses(tuple(f"Woche {week + 1}" for week in range(weeks)), given, DOSES_WORDS))
    check_paper(svg)
    shown = given[1].weeks[-26:]
    number = axis(svg, "Hüftbeuger")
    first = number.bottom - 200
    for kind, wanted in (
        ("hatch", [dose.done for dose in shown if dose.done is not None]),
        ("asked", [dose.least for dose in shown]),
        ("more", [dose.most - dose.least for dose in shown]),
    ):
        bars = [one for one in rects(svg, kind, below=first) if one[1] + one[3] <= number.bottom + 1]
        assert [round(one[3] / -number.one, 1) for one in bars] == pytest.approx(wanted, abs=0.11)
        assert [one[0] for one in bars] == sorted(one[0] for one in bars)


def test_minutes_are_written_while_the_columns_have_room() -> None:
    given = muscles(16)
    svg = doses_svg(Doses(tuple(str(week) for week in range(16)), given, DOSES_WORDS))
    written = [text.words for text in said(svg) if text.kind == "value"]
    assert written == [f"{dose.done:.0f}" for muscle in given for dose in muscle.weeks if dose.done is not None]


def test_no_doses_are_said_in_words() -> None:
    svg = doses_svg(Doses((), (), DOSES_WORDS))
    check_paper(svg)
    assert DOSES_WORDS.nothing in [text.words for text in said(svg)]


def test_a_digest_shows_both_bounds_and_counts() -> None:
    svg = digest_svg(Digest(WEEKS, Line(80, "80 %"), FOLLOWED, DIGEST_WORDS))
    check_paper(svg)
    number = axis(svg, DIGEST_WORDS.completion)
    bars = rects(svg, "sure")
    full = [one for one in bars if one[1] + one[3] == pytest.approx(number.bottom, abs=0.1)]
    assert [number(one[1]) for one in full] == pytest.approx([50, 0, 100], abs=0.1)
    above = [one for one in rects(svg, "unsure") if number.bottom - 260 < one[1] <= number.bottom and one[2] > 30]
    assert [number(one[1]) for one in above] == pytest.approx([75, 100, 100], abs=0.1)
    assert [number(one[1] + one[3]) for one in above] == pytest.approx([50, 0, 100], abs=0.1)
    assert {"50–75 %", "0–100 %", "100 %"} <= {text.words for text in said(svg)}
    heading = next(text.y for text in said(svg) if text.words == DIGEST_WORDS.followed)
    lengths = [
        one[2]
        for verdict in FOLLOWED
        for one in rects(svg, marks.FILLS[verdict], below=heading)
        if one[3] == pytest.approx(30)
    ]
    assert [round(length / lengths[0], 3) for length in lengths] == [1, 0.25, 0.05, 0.017]
    assert {"60", "15", "3", "1"} <= {text.words for text in said(svg)}
    number = axis(svg, DIGEST_WORDS.pain)
    middles = [number(y) for _x, y in circles(svg)][1:]
    assert middles == pytest.approx([2, 10, 0], abs=0.01)
    spreads = [(number(top + high), number(top)) for _x, top, _w, high in rects(svg, "tile")[1:]]
    assert spreads == [pytest.approx(one, abs=0.05) for one in [(1, 3.5), (0, 10), (0, 0)]]


def test_an_empty_digest_says_so_in_each_part() -> None:
    svg = digest_svg(Digest((), None, {}, DIGEST_WORDS))
    check_paper(svg)
    assert [text.words for text in said(svg)].count(DIGEST_WORDS.nothing) == 4


def test_a_fortnight_has_a_column_for_each_date() -> None:
    days = course(40)
    svg = fortnight_svg(Fortnight(days, LINES, FORTNIGHT_WORDS))
    check_paper(svg)
    tiles = rects(svg, "tile")
    assert len(tiles) == 28
    columns = [left + long / 2 for left, _top, long, _high in tiles[:14]]
    latest = days[-14:]
    numbers = [text.words for text in said(svg) if text.size == SMALL and text.kind == "ink"]
    assert [str(day.on.day) for day in latest] == [word for word in numbers if word.isdigit()]
    for kind, heading, scores in (
        ("full", FORTNIGHT_WORDS.pain, [day.pain for day in latest]),
        ("dotted", FORTNIGHT_WORDS.tightness, [day.after for day in latest]),
    ):
        number = axis(svg, heading)
        bars = {round(left + long / 2): number(top) for left, top, long, _high in rects(svg, kind)}
        wanted = {round(x): score for x, score in zip(columns, scores, strict=True) if score is not None}
        assert bars == pytest.approx(wanted, abs=0.05)
    row = [{name for name, mx, y, _r in used(svg, below=tiles[0][1]) if abs(mx - x) < 1} for x in columns]
    for found, day in zip(row, latest, strict=True):
        wanted_marks = {day.did.value if day.did else None}
        wanted_marks |= {marks.VERDICTS[day.verdict] if day.verdict is not None else None}
        assert found == wanted_marks - {None}


@pytest.mark.parametrize("days", [(), course(1, pains=False), course(20, pains=False)])
def test_a_fortnight_without_answers_says_so(days: tuple[Day, ...]) -> None:
    svg = fortnight_svg(Fortnight(days, LINES, FORTNIGHT_WORDS))
    check_paper(svg)
    assert FORTNIGHT_WORDS.nothing in [text.words for text in said(svg)]


@pytest.mark.parametrize("given", [SIXTEEN_WEEKS, Digest(WEEKS, None, FOLLOWED, DIGEST_WORDS)])
def test_what_is_drawn_survives_its_way_as_json(given: Progress | Digest) -> None:
    adapter: TypeAdapter[Any] = TypeAdapter(type(given))
    assert adapter.validate_json(adapter.dump_json(given)) == given


@pytest.mark.parametrize(
    ("wrong", "message"),
    [
        (lambda: Day(FIRST, pain=11), "pain of 2026-01-05 is 11"),
        (lambda: Day(FIRST, after=-1), "after of 2026-01-05 is -1"),
        (lambda: Share(0.6, 0.5, ""), "a share from 0.6 to 0.5"),
        (lambda: Pain(2, 1, 3), "pain 2, 1, 3"),
        (lambda: Dose(1, 5, 4), "of 5 to 4"),
        (lambda: Doses(("1",), (Muscle("Wade", ()),), DOSES_WORDS), "Wade has 0 weeks"),
        (lambda: replace(HEIGHT, error=None), "baseline 14, error None"),
        (lambda: replace(HEIGHT, baseline=float("nan")), "a value of nan"),
    ],
)
def test_what_cannot_be_is_refused(wrong: Any, message: str) -> None:
    with pytest.raises(ValueError, match=message):
        wrong()


def test_a_rehearsal_is_on_the_same_paper() -> None:
    source = files("plans.library").joinpath("rowing-club.yaml").read_text(encoding="utf-8")
    found, plain = rehearse(source, 30, 7), rehearse(source, 30, 7, adapted=False)
    svg = rehearsal_chart.picture("Oberschenkelrückseite", found, plain)
    check_paper(svg)
    number = axis(svg, "of the group")
    counts = Counter(found.finished)
    bars = rects(svg, "bar")
    assert [round(number(one[1]) * 30 / 100, 2) for one in bars] == [counts[dates] for dates in sorted(counts)]
    number = axis(svg, "For each session day, times a client")
    assert [number(y) for _x, y in circles(svg)][1:] == pytest.approx([day.pained for day in found.days], abs=0.01)
    tops: dict[float, float] = {}
    for verdict in rehearsal_chart.FOLLOWED:
        for left, top, wide_, _high in rects(svg, marks.FILLS[verdict], below=number.bottom - 400):
            if wide_ != pytest.approx(26):
                tops[left] = min(top, tops.get(left, top))
    held = [day.held_up for day in found.days if day.held_up]
    assert [number(top) for _left, top in sorted(tops.items())] == pytest.approx(held, abs=0.01)
