"""A day's session as a picture: every movement with its dose, nothing clipped, whatever the words."""

from __future__ import annotations

import io
import json
import xml.etree.ElementTree as ET
from collections.abc import Iterator

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot import painter
from bot.cli.drawing import NothingToDraw, card_of
from bot.words import LOCALES
from bot.words import words as words_of
from bot.words.cards import session_card, session_picture
from bot.words.doses import dose_words, session_lines
from plans.dose import items
from plans.figures.card import MARGIN, WIDE, Card, Measurement, Shown, card_svg, shown
from plans.figures.letters import broken, wide
from plans.figures.library import drawn
from plans.figures.measuring import measured, measuring
from plans.figures.raster import png
from plans.figures.written import Drawn
from plans.measures import MEASURES
from plans.movements import library
from plans.reading import ProgrammeErrors, read_programme
from plans.translated import in_language
from tests.pseudo import in_pseudo
from tests.texts import HEAD
from tests.unit.test_sample_programmes import SAMPLES

SVG = "{http://www.w3.org/2000/svg}"
CAUTION = "Stop at sharp pain."


def texts(svg: str) -> Iterator[tuple[float, float, float, str, bool]]:
    """Of every text its left edge, baseline, size, words, and whether it is bold."""
    for text in ET.fromstring(svg).iter(f"{SVG}text"):
        at = text.attrib
        yield float(at["x"]), float(at["y"]), float(at["font-size"]), text.text or "", "font-weight" in at


def check_nothing_is_clipped(svg: str) -> None:
    high = float(ET.fromstring(svg).attrib["height"])
    boxes = []
    for x, y, size, words, bold in texts(svg):
        right = x + wide(words, size, bold=bold)
        assert x >= MARGIN - 0.1
        assert right <= WIDE, f"{words!r} leaves the card"
        assert size * 0.7 < y < high
        boxes.append((x, y - size * 0.75, right, y + size * 0.2, words))
    for number, (left, top, right, bottom, words) in enumerate(boxes):
        for other in boxes[number + 1 :]:
            apart = right <= other[0] or other[2] <= left or bottom <= other[1] or other[3] <= top
            assert apart, f"{words!r} and {other[4]!r} lie over each other"


@pytest.mark.parametrize("language", [*LOCALES, "pseudo"])
@pytest.mark.parametrize("name", sorted(SAMPLES))
def test_every_day_of_a_sample_has_a_card_with_each_name_and_dose(name: str, language: str) -> None:
    say = in_pseudo if language == "pseudo" else words_of(language).gettext
    for day in in_language(SAMPLES[name], language, say).days:
        if day.session is None:
            continue
        svg = card_svg(session_card(day, CAUTION, gettext=say))
        check_nothing_is_clipped(svg)
        said = " ".join(words for _x, _y, _size, words, _bold in texts(svg))
        for _block, item in items(day.session):
            assert item.movement.name in said
            assert dose_words(item, gettext=say) in said
        assert said.endswith(CAUTION)


def test_the_numbers_on_the_card_are_those_of_the_words() -> None:
    day = SAMPLES["hill-walkers"].day(9)
    names = [part.name for part in session_card(day, CAUTION).parts if isinstance(part, Shown)]
    lines = [line for line in session_lines(day) if line[1:2] == "."]
    assert len(names) == len(lines) == 5
    assert all(line.startswith(name) for name, line in zip(names, lines, strict=True))


def test_a_card_survives_its_way_to_the_painter() -> None:
    card = session_card(SAMPLES["rowing-club"].day(9), CAUTION)
    assert Card.of_json(json.loads(json.dumps(card.as_json()))) == card


def test_equal_cards_have_one_digest_and_others_another() -> None:
    day = SAMPLES["rowing-club"].day(9)
    first, again, other = (session_picture(day, caution) for caution in ("a", "a", "b"))
    assert first is not None
    assert again is not None
    assert other is not None
    assert first.digest == again.digest != other.digest


def test_a_coachs_own_movement_is_drawn_from_its_own_poses() -> None:
    own = library()["cat-cow"].model_copy(
        update={"key": "bow", "name": "Bow", "figure": Drawn.model_validate({"poses": [{}, {"hips": 60}]})}
    )
    card = Card("Day 1", "about 5 minutes", (shown(own, "1. Bow", "8 times", "back"),), CAUTION)
    sent = Card.of_json(json.loads(json.dumps(card.as_json())))
    assert card_svg(sent) == card_svg(card)
    assert card_svg(card).count("<g ") == 2


def test_a_movement_without_a_figure_is_there_in_words() -> None:
    plain = library()["cat-cow"].model_copy(update={"key": "own-way", "name": "Own way"})
    svg = card_svg(Card("Day 1", "", (shown(plain, "1. Own way", "8 times", ""),), CAUTION))
    assert "<g " not in svg
    assert "Own way" in svg


def test_the_painter_draws_and_says_what_it_cannot_draw() -> None:
    card = session_card(SAMPLES["rowing-club"].day(9), CAUTION).as_json()
    asked = [{"kind": "card", "of": card}, {"kind": "poem", "of": {}}]
    out = io.BytesIO()
    painter.serve(io.BytesIO(b"".join(json.dumps(one).encode() + b"\n" for one in asked)), out)
    answers = out.getvalue()
    length = int.from_bytes(answers[:4], "big")
    assert answers[4:].startswith(b"\x89PNG")
    assert answers[4 + length :] == b"\x00\x00\x00\x00KeyError: 'poem'\n"


def test_the_card_of_a_day_is_a_picture_and_a_rest_day_has_none() -> None:
    plan = SAMPLES["rowing-club"]
    assert card_of(plan, 9).startswith(b"\x89PNG")
    rest = next(day.number for day in plan.days if day.session is None)
    with pytest.raises(NothingToDraw, match=f"day {rest} has no session"):
        card_of(plan, rest)


@pytest.mark.parametrize("key", sorted(key for key, measure in MEASURES.items() if measure.unit == "degrees"))
def test_a_test_in_degrees_has_a_figure_and_no_ruler(key: str) -> None:
    for frame in measuring(key):
        assert len(frame.shapes) > 10
        assert not any(shape.kind in ("ruler", "distance") for shape in frame.shapes)


@pytest.mark.parametrize("key", sorted(key for key, measure in MEASURES.items() if measure.unit == "cm"))
def test_every_test_in_centimetres_has_a_figure_with_its_ruler_where_the_number_is(key: str) -> None:
    start, reading = measuring(key)
    assert not any(shape.kind == "ruler" for shape in start.shapes)
    kinds = [shape.kind for shape in reading.shapes]
    assert (kinds.count("ruler"), kinds.count("distance"), kinds.count("reading")) == (1, 1, 2)
    hand, foot = reading.body["right hand"], reading.body["right foot"]
    distance = next(shape for shape in reading.shapes if shape.kind == "distance").bounds
    across, down = distance[2] - distance[0], distance[3] - distance[1]
    expected = {
        "fingertip-to-floor": (0, hand.end[2]),
        "sit-and-reach": (hand.end[0] - foot.begin[0], 0),
        "chair-sit-and-reach": (0, foot.end[2] - hand.end[2]),
        "knee-to-wall": (measured("knee-to-wall").props[0].at - foot.end[0], 0),
        "back-scratch": (0, hand.end[2] - reading.body["left hand"].end[2]),
    }[key]
    assert (across, down) == pytest.approx(expected, abs=0.012)


def test_a_measure_day_shows_its_test_first() -> None:
    card = session_card(SAMPLES["rowing-club"].day(1), CAUTION)
    assert card.parts[0] == Measurement("fingertip-to-floor", "Test: fingertip to floor", "3 tries, in cm", "")
    assert Card.of_json(json.loads(json.dumps(card.as_json()))) == card
    check_nothing_is_clipped(card_svg(card))


WORDS = st.text(
    st.characters(codec="utf-8", exclude_categories=("Cc", "Cs")) | st.sampled_from("aeiou  Oberschenkelмышца"),
    max_size=90,
)


@settings(deadline=None, max_examples=60)
@given(WORDS, WORDS, st.lists(st.tuples(st.sampled_from(sorted(drawn())), WORDS, WORDS, WORDS), max_size=7), WORDS)
def test_no_words_leave_the_card(title: str, length: str, cells: list[tuple[str, str, str, str]], line: str) -> None:
    parts: tuple[str | Shown | Measurement, ...] = (
        line,
        *(shown(library()[key], name, dose, felt) for key, name, dose, felt in cells),
    )
    check_nothing_is_clipped(card_svg(Card(title, length, parts, CAUTION)))


@given(WORDS, st.integers(40, 900), st.integers(1, 4))
def test_broken_words_fit_and_none_is_lost(text: str, room: int, most: int) -> None:
    lines = broken(text, room, 32)
    assert all(wide(line, 32) <= max(room, wide(line[:1], 32)) for line in lines)
    assert "".join(lines).replace(" ", "") == "".join(text.split())
    short = broken(text, room, 32, most=most)
    assert len(short) <= most
    assert short == lines or short[-1].endswith("…")


def test_the_letters_are_as_wide_as_the_renderer_draws_them() -> None:
    """Against the rasteriser: nothing of a row of letters is left beyond its width, and something just within it."""
    for text in ("Hamstring stretch", "Straße", "мышца бедра", "WWWiii"):
        row = f'<text x="0" y="60" font-family="DejaVu Sans" font-size="40">{text}</text>'
        beyond = _drawn_beyond(row, wide(text, 40) + 2)
        within = _drawn_beyond(row, wide(text, 40) - 8)
        assert beyond == _drawn_beyond("", 0)
        assert within != _drawn_beyond("", 0)


def _drawn_beyond(row: str, x: float) -> bytes:
    """A drawing of which only what lies to the right of `x` is left."""
    head = '<svg xmlns="http://www.w3.org/2000/svg" width="900" height="80"><rect width="900" height="80" fill="#fff"/>'
    return png(f'{head}{row}<rect width="{x}" height="80" fill="#fff"/></svg>')


FIGURE = """    figure:
      props: [table: {at: 0.78}]
      poses:
        - {forward: 0.36, hips: 42, knees: 8, hands: table at 0.66}
        - {forward: 0.05, hips: 95, knees: 15, hands: table at 0.62}
"""
OWN = f"""{HEAD[: HEAD.index("days:")]}  desk-hinge:
    name: Hinge with hands on the desk
    how: Hands on the desk, step back, let the chest sink.
    main: [hamstrings]
    kind: static
{FIGURE}days:
  - {{session: {{blocks: [{{items: [{{movement: desk-hinge, hold: 30}}]}}]}}}}
"""


def test_a_coachs_file_draws_its_own_movement() -> None:
    picture = session_picture(read_programme(OWN).day(1), CAUTION)
    assert picture is not None
    assert card_svg(Card.of_json(picture.of)).count("<g ") == 2
    assert session_picture(read_programme(OWN.replace(FIGURE, "")).day(1), CAUTION) is None


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("hips: 95", "hips: 195", "figure, poses 2, hips"),
        ("hands: table at 0.62", "ankles: 60", "pose 2: .*ankle.* 60"),
        ("0.05", "0.9", "pose 2: what the left hand touches is .* body heights away"),
        ("hands: table at 0.62", "hands: roof", "pose 2: .*roof"),
    ],
)
def test_an_impossible_figure_is_an_error_at_its_place(old: str, new: str, said: str) -> None:
    with pytest.raises(ProgrammeErrors, match=said) as caught:
        read_programme(OWN.replace(old, new))
    assert str(caught.value).splitlines()[0].split(": ")[1].startswith("movement desk-hinge, figure")
