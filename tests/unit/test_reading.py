"""Programme files: what is read, and what a coach is told when it cannot be."""

from __future__ import annotations

import random

import pytest

from plans.programme import Sides, Span
from plans.reading import ProgrammeErrors, read_programme
from tests.samples import HEAD, REST, TEST, programme, session

GOOD = HEAD + session() + REST + TEST


def problems(text: str) -> list[str]:
    with pytest.raises(ProgrammeErrors) as caught:
        read_programme(text, name="p.yaml")
    return [str(problem) for problem in caught.value.problems]


def test_a_file_becomes_plain_days() -> None:
    read = read_programme(GOOD)
    assert [day.kind for day in read.days] == ["session", "rest", "measure"]
    item = read.day(1).session.blocks[0].items[1]  # type: ignore[union-attr]
    assert (item.movement.key, item.dose.hold, item.side) == ("reach", Span(30, 30), Sides.EACH)
    assert read.day(2).text == "Walk a little."


def test_a_day_can_repeat_an_earlier_one() -> None:
    read = programme(session(), "  - {as-day: 1, title: Again}\n")
    assert read.day(2).session == read.day(1).session
    assert problems(HEAD + session() + "  - {as-day: 2}\n")[0].startswith("p.yaml:25:14: day 2, as-day: found 2")


@pytest.mark.parametrize(
    ("written", "expected"),
    [
        ("8", Span(8, 8)),
        ("8-10", Span(8, 10)),
        ("about 8", Span(8, 8, about=True)),
        ("up to 12", Span(1, 12, up_to=True)),
        ("as feels good", Span(1, 10, about=True, up_to=True)),
        ("16 in total, side: each", Span(16, 16, total=True)),
        ("up to 16 in total, side: alternate", Span(1, 16, up_to=True, total=True)),
    ],
)
def test_repetitions_are_written_as_they_are_said(written: str, expected: Span) -> None:
    read = read_programme(GOOD.replace("reps: 8", f"reps: {written}"))
    assert read.day(1).session.blocks[0].items[0].dose.reps == expected  # type: ignore[union-attr]


def test_a_misspelt_word_is_named_with_its_place_and_a_likely_spelling() -> None:
    (found,) = problems(GOOD.replace("hold: 30", "hodl: 30"))[:1]
    assert found.startswith("p.yaml:24:33: day 1, block 1, item 2: found the word 'hodl'")
    assert "did you mean hold?" in found


def test_a_text_that_a_comma_cut_in_two_is_told_how_to_hold_together() -> None:
    (found,) = problems(GOOD + "  - {title: Slowly, and breathe, rest: Walk.}\n")
    assert "found the words 'and breathe', allowed: quotes round a text that has a comma between { and }" in found


def test_an_unknown_movement_is_named_with_a_likely_spelling() -> None:
    (found,) = problems(GOOD.replace("movement: reach", "movement: raech"))
    assert found == (
        "p.yaml:24:26: day 1, block 1, item 2, movement: found 'raech', "
        "allowed: a movement of the library or of this file; did you mean reach?"
    )


def test_all_errors_come_at_once_in_the_order_of_the_file() -> None:
    text = GOOD.replace("hold: 30", "hold: -5").replace("rounds: 2", "rounds: 0").replace("goal: Move", "gaol: Move")
    found = problems(text)
    assert len(found) == 4
    assert "gaol" in " ".join(found)
    assert any("rounds" in line and "found 0" in line for line in found)
    assert any("hold" in line and "found -5" in line for line in found)


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("title: [", "p.yaml:1:"),
        ("%YAML 1.1\n---\n" + GOOD, "directive"),
        (GOOD.replace("goal: Move", "goal: &a Move"), "anchor"),
        (GOOD.replace("goal: Move with less effort.", "goal: *a"), ""),
        (GOOD + "---\n" + GOOD, "second document"),
        ("title: !!python/object:os.system x\n", "tag"),
        ("", "empty"),
        ("just words", "found 'just words'"),
        (GOOD.replace("goal:", "title: Twice\ngoal:"), "'title' a second time"),
        ("x: " + "[" * 60 + "]" * 60, "deep"),
        ("a" * 1_000_001, "1,000,001 characters"),
        ("days:\n" + "- a\n" * 70_000, "more than 60,000 values"),
        ("title: a\ngoal: b\x00", "p.yaml:2:8: found a character that is not text"),
        ("title: \ud800", "p.yaml:1:8: found a character that is not text"),
    ],
)
def test_what_is_no_plain_yaml_is_refused_by_name(text: str, found: str) -> None:
    assert found in problems(text)[0]


def test_yaml_1_2_keeps_clock_times_and_no_as_words() -> None:
    assert read_programme(GOOD.replace("setting: At home.", "setting: no")).setting == "no"
    assert read_programme(GOOD.replace("setting: At home.", "setting: 7:00")).setting == "7:00"


@pytest.mark.parametrize(
    "line", ["settings: {pain-acceptable: 6}", "settings: {pain-severe: 9}", "settings: {pain-clean: 3}"]
)
def test_no_setting_loosens_the_pain_rules(line: str) -> None:
    assert "settings" in problems(GOOD.replace("muscles:", f"{line}\nmuscles:"))[0]


def test_a_dose_is_needed() -> None:
    assert "no dose" in problems(GOOD.replace(", reps: 8", ""))[0]


def test_a_count_of_both_sides_needs_two_sides() -> None:
    (found,) = problems(GOOD.replace("reps: 8", "reps: 16 in total"))
    assert "side must be each or alternate" in found


@pytest.mark.parametrize(("written", "expected"), [("40-70", Span(40, 70)), ("65+", Span(65, 99))])
def test_ages_are_a_band_of_years(written: str, expected: Span) -> None:
    assert read_programme(GOOD.replace("muscles:", f"ages: {written}\nmuscles:")).ages == expected
    assert read_programme(GOOD).ages is None


@pytest.mark.parametrize("written", ["old", "65", "70-40", "6+"])
def test_ages_that_are_no_band_are_named(written: str) -> None:
    (found,) = problems(GOOD.replace("muscles:", f"ages: {written}\nmuscles:"))
    assert found.startswith("p.yaml:6:7: ages: found ")


def test_a_chain_that_comes_round_is_named_at_every_step() -> None:
    found = problems(
        GOOD.replace("main: [hamstrings], kind: dynamic", "main: [hamstrings], kind: dynamic, easier: sway")
    )
    assert found == [
        "p.yaml:15:95: movement sway, easier: found a way back to 'sway', "
        "allowed: a chain that ends: nothing is easier than itself"
    ]
    round_trip = GOOD.replace("easier: reach", "easier: reach, harder: reach")
    assert ["a way back" in line for line in problems(round_trip)] == [True, True]


def complaints(text: str) -> list[str]:
    """What is wrong with a file, nothing for a programme; any other error comes out."""
    try:
        read_programme(text, name="p.yaml")
    except ProgrammeErrors as errors:
        return [str(problem) for problem in errors.problems]
    return []


def test_a_broken_file_always_ends_in_a_good_error_or_a_programme() -> None:
    """A few hundred seeded mutants: pieces cut, doubled, swapped, and odd characters put in."""
    chance = random.Random(7)
    for _ in range(300):
        text = GOOD
        for _ in range(chance.randint(1, 4)):
            at, to = sorted(chance.choices(range(len(text)), k=2))
            piece = chance.choice(
                ["", text[at:to], ":", "[", "- ", "\t", "&a", "*a", "\x00", "'", "é", "9" * 30, "{", "!!", "? "]
            )
            text = text[:at] + piece + text[to if chance.random() < 0.3 else at :]
        assert all(line.startswith("p.yaml:") for line in complaints(text))
