"""Charts of anything keep to their paper, stand out from it, and say nothing by colour alone."""

from __future__ import annotations

import io
from dataclasses import replace
from itertools import combinations
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image, ImageChops, ImageStat

from plans.charts import marks
from plans.charts.axes import steps
from plans.charts.days import Day, Did, Line
from plans.charts.digest import Digest, Pain, Share, Week, digest_svg
from plans.charts.doses import Dose, Doses, Muscle, doses_svg
from plans.charts.fortnight import Fortnight, fortnight_svg
from plans.charts.measured import Measured, Result
from plans.charts.paper import WIDE, Paper
from plans.charts.progress import Progress, progress_svg
from plans.figures.letters import wide
from plans.figures.raster import picture, png
from plans.rules import Verdict
from tests.charted import (
    A_DAY,
    DIGEST_WORDS,
    DOSES_WORDS,
    FIRST,
    FOLLOWED,
    FORTNIGHT_WORDS,
    LINES,
    MONDAYS,
    ONE_DAY,
    SIXTEEN_WEEKS,
    WEEKS,
    WORDS,
    course,
    muscles,
)
from tests.on_paper import check_paper


def bright(colour: str) -> float:
    """Relative luminance of a colour, as WCAG 2 defines it."""
    parts = [int(colour[place : place + 2], 16) / 255 for place in (1, 3, 5)]
    linear = [part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4 for part in parts]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def contrast(one: str, other: str) -> float:
    """Of two colours, from 1 to 21."""
    low, high = sorted((bright(one), bright(other)))
    return (high + 0.05) / (low + 0.05)


@pytest.mark.parametrize("ground", [marks.PAPER, marks.BAND, marks.TILE])
def test_words_and_marks_stand_out_from_every_ground(ground: str) -> None:
    for colour in (marks.INK, marks.SOFT):
        assert contrast(colour, ground) >= 4.5
    for colour in (marks.BLUE, marks.VERMILLION, marks.WORK, marks.INK, marks.SOFT):
        assert contrast(colour, ground) >= 3, colour
    for colour in (marks.GREEN, marks.TEAL):
        assert contrast(colour, marks.PAPER) >= 3, colour


def greys(body: str, side: int) -> Image.Image:
    """A drawing around 0, 0 as grey points."""
    svg = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="-14 -14 28 28" width="{side}" height="{side}">'
        f'<style>{marks.STYLE}</style><defs>{marks.DEFS}</defs><rect x="-14" y="-14" width="28" height="28" '
        f'fill="{marks.PAPER}"/>{body}</svg>'
    )
    return picture(svg).convert("L")


@pytest.mark.parametrize(
    "names",
    [
        [did.value for did in Did],
        list(marks.VERDICTS.values()),
        ["before", "after"],
        ["measured", "apart"],
    ],
)
def test_marks_differ_without_their_colours_at_the_size_of_a_phone(names: list[str]) -> None:
    seen = {name: greys(marks.mark(name, 0, 0), 10) for name in names}
    for one, other in combinations(names, 2):
        difference = ImageStat.Stat(ImageChops.difference(seen[one], seen[other])).mean[0]
        assert difference > 10, f"{one} and {other} look the same in grey"


def test_fillings_differ_without_their_colours() -> None:
    seen = {kind: greys(marks.box(kind, -14, -14, 28, 28), 28) for kind in marks.FILLS.values()}
    for one, other in combinations(seen, 2):
        difference = ImageStat.Stat(ImageChops.difference(seen[one], seen[other])).mean[0]
        assert difference > 10, f"{one} and {other} look the same in grey"


@pytest.mark.parametrize(
    "words", ["Oberschenkelrückseite", "Tensión después, año", "Анастасия Воскресенская", "علاء الدين المهندس"]
)
@pytest.mark.parametrize("bold", [False, True])
def test_measured_widths_are_those_of_the_picture(words: str, bold: bool) -> None:
    paper = Paper()
    paper.y = 100
    paper.put(words, 100, 80, 60, bold=bold)
    grey = picture(paper.svg()).convert("L").point(lambda value: 255 if value < 160 else 0)
    box = grey.getbbox()
    assert box is not None
    assert 92 <= box[0] <= 110
    assert box[2] - 100 <= wide(words, 60, bold=bold) + 2
    if not any("\u0600" <= letter <= "\u06ff" for letter in words):
        assert box[2] - 100 >= wide(words, 60, bold=bold) * 0.93, "or words would be cut for nothing"


PICTURES = {
    "one day": lambda: progress_svg(ONE_DAY),
    "sixteen weeks": lambda: progress_svg(SIXTEEN_WEEKS),
    "doses": lambda: doses_svg(Doses(tuple(str(week) for week in range(16)), muscles(16), DOSES_WORDS)),
    "digest": lambda: digest_svg(Digest(WEEKS, Line(80, "80 %"), FOLLOWED, DIGEST_WORDS)),
    "fortnight": lambda: fortnight_svg(Fortnight(course(40), LINES, FORTNIGHT_WORDS)),
}


@pytest.mark.parametrize("name", PICTURES)
def test_a_picture_is_small_enough_to_send(name: str) -> None:
    file = png(PICTURES[name]())
    assert len(file) < 150_000
    long, high = Image.open(io.BytesIO(file)).size
    assert long == WIDE
    assert long + high <= 10_000, "the platform takes no more"


scores = st.none() | st.integers(0, 10)
texts = st.text(max_size=60)
values = st.floats(-1e6, 1e6)


@st.composite
def some_days(draw: st.DrawFn) -> tuple[Day, ...]:
    offsets = sorted(draw(st.sets(st.integers(0, 160), max_size=40)))
    verdicts, dids = st.none() | st.sampled_from(list(Verdict)), st.none() | st.sampled_from(list(Did))
    return tuple(
        Day(FIRST + days * A_DAY, draw(dids), draw(scores), draw(scores), draw(scores), draw(verdicts))
        for days in offsets
    )


@st.composite
def some_measure(draw: st.DrawFn) -> Measured:
    offsets = sorted(draw(st.sets(st.integers(0, 160), max_size=8)))
    results = tuple(Result(FIRST + days * A_DAY, draw(values), draw(texts), draw(texts)) for days in offsets)
    baseline = draw(st.none() | values)
    error = None if baseline is None else draw(st.floats(0, 1e5))
    return Measured(draw(texts), draw(texts), results, baseline, error, draw(texts))


@st.composite
def some_progress(draw: st.DrawFn) -> Progress:
    told: dict[str, Any] = {
        name: draw(texts) for name in ("title", "note", "done", "pain", "tightness", "before", "nothing")
    }
    words = replace(WORDS, **told, weekdays=tuple(draw(st.lists(texts, min_size=7, max_size=7))))
    if draw(st.booleans()):
        words = replace(words, dates={monday: draw(texts) for monday in list(MONDAYS)[:26]})
    lines = draw(st.lists(st.builds(Line, st.floats(0, 10), texts), max_size=4))
    return Progress(draw(some_days()), tuple(lines), tuple(draw(st.lists(some_measure(), max_size=2))), words)


@settings(max_examples=60, deadline=None)
@given(some_progress())
def test_any_progress_keeps_to_its_paper(progress: Progress) -> None:
    check_paper(progress_svg(progress))


@settings(max_examples=60, deadline=None)
@given(some_days(), st.lists(texts, min_size=7, max_size=7), texts)
def test_any_fortnight_keeps_to_its_paper(days: tuple[Day, ...], weekdays: list[str], title: str) -> None:
    words = replace(FORTNIGHT_WORDS, weekdays=tuple(weekdays), title=title)
    check_paper(fortnight_svg(Fortnight(days, LINES, words)))


minutes = st.floats(0, 10_000)
a_dose = st.builds(lambda done, a, b: Dose(done, min(a, b), max(a, b)), st.none() | minutes, minutes, minutes)


@settings(max_examples=60, deadline=None)
@given(st.data(), st.integers(0, 30), texts, texts)
def test_any_doses_keep_to_their_paper(data: st.DataObject, weeks: int, name: str, unit: str) -> None:
    words = tuple(data.draw(st.lists(texts, min_size=weeks, max_size=weeks)))
    given_ = tuple(data.draw(st.lists(a_dose, min_size=weeks, max_size=weeks)))
    check_paper(doses_svg(Doses(words, (Muscle(name, given_),) * 2, replace(DOSES_WORDS, minutes=unit))))


a_share = st.builds(lambda a, b, said: Share(min(a, b), max(a, b), said), st.floats(0, 1), st.floats(0, 1), texts)
a_pain = st.lists(st.floats(0, 10), min_size=3, max_size=3).map(lambda found: Pain(*sorted(found)))
a_week = st.builds(Week, texts, st.none() | a_share, st.none() | a_share, st.none() | a_pain)


@settings(max_examples=60, deadline=None)
@given(
    st.lists(a_week, max_size=10),
    st.none() | st.builds(Line, st.floats(0, 100), texts),
    st.dictionaries(st.sampled_from(list(Verdict)), st.integers(0, 1_000_000)),
    st.lists(texts, min_size=5, max_size=5),
)
def test_any_digest_keeps_to_its_paper(
    weeks: list[Week], wanted: Line | None, followed: dict[Verdict, int], verdicts: list[str]
) -> None:
    words = replace(DIGEST_WORDS, verdicts=dict(zip(Verdict, verdicts, strict=True)))
    check_paper(digest_svg(Digest(tuple(weeks), wanted, followed, words)))


@given(st.floats(-1e6, 1e6), st.floats(-1e6, 1e6), st.integers(3, 8))
def test_steps_hold_what_they_are_for(one: float, other: float, most: int) -> None:
    low, high = sorted((one, other))
    found = steps(low, high, most)
    near = (found[1] - found[0]) * 1e-6
    assert found[0] <= low + near
    assert found[-1] >= high - near
    assert 2 <= len(found) <= most + 1
    assert list(found) == sorted(set(found))
