"""Session lengths against a table worked out on paper; each row has its arithmetic beside it.

The seconds for a repetition (4), a step (2), a breath (5), a change of position or side (15) and a warm-up or cool-down
without its time (120) are this program's own choice; the rest is what the row says.
"""

from __future__ import annotations

import pytest

from plans.dose import minutes, session_seconds
from plans.programme import Day
from plans.reading import read_programme
from tests.texts import HEAD

EACH = "movement: reach, side: each"


def day(session: str) -> Day:
    return read_programme(HEAD + f"  - session: {{{session}}}\n").day(1)


@pytest.mark.parametrize(
    ("session", "low", "high"),
    [
        # one hold: 2 sides x 30 + 2 changes x 15 = 90
        (f"blocks: [{{items: [{{{EACH}, hold: 30}}]}}]", 90, 90),
        # 3 sets, 2 sides: 3 x 2 x 30 + 2 x 15 + 2 rests x 20 = 180 + 30 + 40
        (f"blocks: [{{items: [{{{EACH}, hold: 30, sets: 3, rest: 20}}]}}]", 250, 250),
        # a range of sets: 2 x 2 x 30 + 30 + 1 x 20 = 170; 3 sets as above
        (f"blocks: [{{items: [{{{EACH}, hold: 30, sets: 2-3, rest: 20}}]}}]", 170, 250),
        # a range of holds: 2 x 20 + 30; 2 x 45 + 30
        (f"blocks: [{{items: [{{{EACH}, hold: 20-45}}]}}]", 70, 120),
        # a circuit of two, three rounds: (8 x 4 + 15) + (2 x 30 + 30) = 137 a round; 3 x 137 + 2 x 30
        (f"blocks: [{{rounds: 3, rest: 30, items: [{{movement: sway, reps: 8}}, {{{EACH}, hold: 30}}]}}]", 471, 471),
        # the same with changes of 5 s: (32 + 5) + (60 + 10) = 107; 3 x 107 + 60
        (
            f"blocks: [{{rounds: 3, rest: 30, change: 5, items: [{{movement: sway, reps: 8}}, {{{EACH}, hold: 30}}]}}]",
            381,
            381,
        ),
        # two or three rounds: 2 x 137 + 30; 3 x 137 + 60
        (f"blocks: [{{rounds: 2-3, rest: 30, items: [{{movement: sway, reps: 8}}, {{{EACH}, hold: 30}}]}}]", 304, 471),
        # a flow of two minutes and one change
        ("blocks: [{items: [{movement: sway, flow: 2 min}]}]", 135, 135),
        # contract and relax: 3 x (6 + 20) on 2 sides + 30
        (f"blocks: [{{items: [{{{EACH}, reps: 3, contract: 6, relax: 20}}]}}]", 186, 186),
        # holds that build up: (10 + 20 + 30) on 2 sides + 30
        (f"blocks: [{{items: [{{{EACH}, hold: [10, 20, 30]}}]}}]", 150, 150),
        # repetitions with a last hold: 8 x 4 + 20 + 15
        ("blocks: [{items: [{movement: sway, reps: 8, last-hold: 20}]}]", 67, 67),
        # both sides together in one count: 16 in total = 8 a side; 2 x 8 x 4 + 30
        ("blocks: [{items: [{movement: reach, side: alternate, reps: 16 in total}]}]", 94, 94),
        # 20 steps x 2 + 15; 6 to 8 breaths x 5 + 15
        ("blocks: [{items: [{movement: sway, steps: 20}, {movement: sway, breaths: 6-8}]}]", 100, 110),
        # a warm-up of 3 min, a cool-down of 2 min without its time, one hold
        (
            f"warm-up: {{text: Walk., time: 3 min}}, cool-down: Lie., blocks: [{{items: [{{{EACH}, hold: 30}}]}}]",
            390,
            390,
        ),
        # a block for five minutes is five minutes
        (f"blocks: [{{time: 5 min, items: [{{{EACH}, hold: 30}}]}}]", 300, 300),
        # an item and a block for who likes: the hold alone; with 8 x 4 + 15 and another 90
        (
            f"blocks: [{{items: [{{{EACH}, hold: 30}}, {{movement: sway, reps: 8, optional: true}}]}},"
            f" {{optional: true, items: [{{{EACH}, hold: 30}}]}}]",
            90,
            227,
        ),
    ],
)
def test_a_session_takes_what_paper_says(session: str, low: int, high: int) -> None:
    assert session_seconds(day(session)) == (low, high)
    assert minutes(day(session)) == (-(-low // 60), -(-high // 60))
