"""A session in words, as it stands in a message on a phone."""

from __future__ import annotations

import pytest

from bot.words.doses import headline, session_lines
from plans.programme import Day
from tests.samples import REST, programme


def day(*blocks: str, title: str = "", warm_up: str = "") -> Day:
    """A session day; each block is written as in a file: rounds and rest, then its items after a bar."""
    lines = ["  - session:"]
    lines += [f"      warm-up: {warm_up}"] if warm_up else []
    lines.append("      blocks:")
    for block in blocks:
        head, *items = block.split(" | ")
        lines.append(f"        - {{{head}{', ' if head else ''}items: [{', '.join(f'{{{i}}}' for i in items)}]}}")
    lines += [f"    title: {title}"] if title else []
    return programme("\n".join(lines) + "\n").day(1)


def line(item: str) -> str:
    (only,) = session_lines(day(f" | {item}"))
    return only


@pytest.mark.parametrize(
    ("item", "words"),
    [
        ("movement: reach, hold: 30, side: each", "Long reach: 30 s each side"),
        ("movement: reach, sets: 2, hold: 30, side: each", "Long reach: 2 x 30 s each side"),
        ("movement: reach, hold: 20-30, side: left", "Long reach: 20-30 s left side"),
        ("movement: reach, hold: 2 min, side: right", "Long reach: 2 min right side"),
        ("movement: reach, reps: 3, hold: 10, side: each", "Long reach: 3 x 10 s each side"),
        ("movement: sway, reps: 8", "Sway: 8 times"),
        ("movement: sway, reps: 1", "Sway: once"),
        ("movement: sway, reps: 8-10", "Sway: 8-10 times"),
        ("movement: sway, reps: about 8", "Sway: about 8 times"),
        ("movement: sway, reps: up to 12", "Sway: up to 12 times"),
        ("movement: sway, reps: as feels good", "Sway: as many as feel good"),
        ("movement: reach, reps: 16 in total, side: alternate", "Long reach: 16 times in total, alternating sides"),
        ("movement: reach, reps: 16 in total, side: each", "Long reach: 16 times in total, half on each side"),
        ("movement: sway, flow: 90", "Sway: 90 s without counting"),
        ("movement: sway, steps: 20", "Sway: 20 steps"),
        ("movement: sway, breaths: 8", "Sway: 8 slow breaths"),
        (
            "movement: reach, reps: 3, contract: 6, relax: 20, side: each",
            "Long reach: 3 x tense 6 s, then relax into it 20 s each side",
        ),
        ("movement: sway, reps: 8, last-hold: 20", "Sway: 8 times, the last one held 20 s"),
        ("movement: fold, reps: 5, load: 4 kg, held: in both hands", "Loaded fold: 5 times, with 4 kg in both hands"),
        ("movement: fold, reps: 5, load: a light book", "Loaded fold: 5 times, with a light book"),
        (
            "movement: reach, sets: 2, rest: 15, hold: 30, side: each, effort: 5-6, cue: long back",
            "Long reach: 2 x 30 s each side, stretch feeling 5-6 of 10, rest 15 s between sets, long back",
        ),
        ("movement: sway, reps: 5, practice: true", "Sway: 5 times, for practice"),
        ("movement: sway, sets: 2-3, reps: 5", "Sway: 2-3 x 5 times"),
        ("movement: reach, hold: [10, 20, 30], side: each", "Long reach: 10, then 20, then 30 s each side"),
        ("movement: sway, reps: 8, squeeze: 3", "Sway: 8 times, each squeezed 3 s"),
        (
            "movement: sway, reps: 8, last-hold: {seconds: 20, equipment: [strap: towel], effort: 6, cue: breathe}",
            "Sway: 8 times, the last one held 20 s (with strap (or towel), stretch feeling 6 of 10, breathe)",
        ),
        (
            "movement: reach, reps: 8, side: each, other-side: held",
            "Long reach: 8 times each side, the other side held meanwhile",
        ),
        (
            "movement: sway, reps: 8, side: left, other-side: {movement: reach}",
            "Sway: 8 times left side, meanwhile the other side: long reach",
        ),
        ("movement: sway, reps: 8, build-up: range", "Sway: 8 times, each time a little further"),
        ("movement: fold, reps: 5, load: as last time", "Loaded fold: 5 times, with the same load as last time"),
        ("movement: sway, reps: 8, stop: before the back rounds", "Sway: 8 times, stop before the back rounds"),
        ("movement: sway, reps: 8, stance: feet wide, grip: on hips", "Sway (feet wide, on hips): 8 times"),
        ("movement: sway, reps: 8, equipment: [block], optional: true", "Sway: 8 times, with block, if you like"),
        (
            "movement: sway, reps: 8, link: {to: 'https://example.org/x', start: '1:30'}",
            "Sway: 8 times, https://example.org/x from 1:30",
        ),
    ],
)
def test_a_dose_reads_as_a_coach_would_say_it(item: str, words: str) -> None:
    assert line(item) == f"1. {words}"


def test_items_are_numbered_through_and_rounds_say_where_they_begin_and_end() -> None:
    written = day(
        " | movement: sway, reps: 8",
        "rounds: 2, rest: 20 | movement: reach, hold: 30, side: each | movement: fold, reps: 5",
        "rounds: 3 | movement: sway, reps: 4",
        " | movement: sway, breaths: 8",
        warm_up="Walk.",
    )
    assert session_lines(written) == [
        "First: Walk.",
        "1. Sway: 8 times",
        "2 rounds of these, rest 20 s between rounds:",
        "2. Long reach: 30 s each side",
        "3. Loaded fold: 5 times",
        "3 rounds of these:",
        "4. Sway: 4 times",
        "Then:",
        "5. Sway: 8 slow breaths",
    ]


def test_a_headline_has_the_day_its_title_and_how_long_it_takes() -> None:
    """2 x (30 + 15) s is 90 s, with a range 8-60 times of 4 s and 15 s to start 47-255 s."""
    assert headline(day(" | movement: reach, hold: 30, side: each", title="Hips")) == "Day 1: Hips, about 2 minutes"
    assert headline(day(" | movement: sway, reps: 8-60")) == "Day 1, 1 to 5 minutes"


def test_a_rest_day_has_a_headline_and_no_lines() -> None:
    rest = programme(REST).day(1)
    assert headline(rest) == "Day 1"
    assert session_lines(rest) == []


def test_every_word_but_the_coachs_own_goes_through_the_catalogue() -> None:
    def upper(text: str) -> str:
        """Capitals outside the places that are filled in."""
        return "".join(part if part.startswith("{") else part.upper() for part in _split(text))

    written = day("rounds: 2, rest: 20 | movement: reach, hold: 30, side: each, effort: 5")
    assert session_lines(written, gettext=upper) == [
        "2 ROUNDS OF THESE, REST 20 S BETWEEN ROUNDS:",
        "1. Long reach: 30 S EACH SIDE, STRETCH FEELING 5 OF 10",
    ]
    assert headline(written, gettext=upper) == "DAY 1, ABOUT 4 MINUTES"


def _split(text: str) -> list[str]:
    return text.replace("{", "\0{").replace("}", "}\0").split("\0")


@pytest.mark.parametrize(
    ("block", "line"),
    [
        ("rounds: 2-3, rest: 20", "2-3 rounds of these, rest 20 s between rounds:"),
        ("time: 5 min", "5 min of these, round after round without hurry:"),
        ("title: Circuit, rounds: 3", "Circuit. 3 rounds of these:"),
        ("title: Floor", "Floor:"),
        ("optional: true", "If you like:"),
        ("optional: true, rounds: 2", "If you like, 2 rounds of these:"),
    ],
)
def test_a_block_says_how_often_before_its_items(block: str, line: str) -> None:
    assert session_lines(day(f"{block} | movement: sway, reps: 8", " | movement: sway, reps: 4")) == [
        line,
        "1. Sway: 8 times",
        "Then:",
        "2. Sway: 4 times",
    ]


def test_a_cool_down_comes_last() -> None:
    plan = programme("  - session: {cool-down: Lie down., blocks: [{items: [{movement: sway, reps: 8}]}]}\n")
    assert session_lines(plan.day(1)) == ["1. Sway: 8 times", "To end: Lie down."]
