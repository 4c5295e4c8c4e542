"""The second reader's network: held to a second implementation, and whatever is typed gets odds."""

from __future__ import annotations

from math import exp, log, tanh

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from plans.checkin import Completion, Flag
from plans.network import LETTERS, LONGEST, letters_of, network_of, odds_of
from plans.scopes import said
from plans.second_reading import FIELDS, SecondReading, second_reading, words_of

SMALL = {
    "vocabulary": np.frombuffer(b"\n?\nhip", dtype=np.uint8),
    "word": np.array([[0.0], [0.5], [-0.75]]),
    "letter": np.array([[0.0], *([0.25 + number / 64] for number in range(len(LETTERS)))]),
    "spelling": np.array([[0.5], [-1.0], [0.25]]),
    "spelling.bias": np.array([0.25]),
    **{f"{way}.input": np.array([[0.5, -0.25, 1.0], [0.75, 0.5, -0.5]]) for way in ("forward", "backward")},
    **{f"{way}.input.bias": np.array([0.25, 0.125, -0.25]) for way in ("forward", "backward")},
    "forward.state": np.array([[0.5, -0.5, 0.75]]),
    "backward.state": np.array([[-0.25, 0.5, 1.0]]),
    **{f"{way}.state.bias": np.array([0.0, 0.25, 0.5]) for way in ("forward", "backward")},
    **{f"{field}.look": np.array([1.0, -0.5]) for field in FIELDS},
    **{
        f"{field}.answer": np.array(
            [[(row + 1) * (column - 1) / 8 for column in range(len(answers))] for row in range(4)]
        )
        for field, answers in FIELDS.items()
    },
    **{f"{field}.answer.bias": np.arange(len(answers)) / 16 for field, answers in FIELDS.items()},
}
"""A network of one number for each thing, in round weights."""


def squashed(value: float) -> float:
    return 1 / (1 + exp(-value))


def spelled(word: str) -> float:
    """The strongest of three neighbouring letters, in plain sums."""
    row = [0.0, *(float(SMALL["letter"][letter][0]) for letter in letters_of(word)), 0.0]
    return max(0.0, *(0.5 * row[at] - row[at + 1] + 0.25 * row[at + 2] + 0.25 for at in range(LONGEST)))


def states_of(inputs: list[tuple[float, float]], matrix: tuple[float, float, float]) -> list[float]:
    """Gated recurrent units, one number wide (Chung et al. 2014, with the reset gate after the product)."""
    state, states = 0.0, []
    for meant, spelling in inputs:
        reset = squashed(0.5 * meant + 0.75 * spelling + 0.25 + matrix[0] * state)
        update = squashed(-0.25 * meant + 0.5 * spelling + 0.125 + matrix[1] * state + 0.25)
        new = tanh(meant - 0.5 * spelling - 0.25 + reset * (matrix[2] * state + 0.5))
        state = (1 - update) * new + update * state
        states.append(state)
    return states


def test_a_small_network_is_worked_out_as_by_hand() -> None:
    words = ("hip", "ouch", "7!")
    inputs = [(-0.75 if word == "hip" else 0.5, spelled(word)) for word in words]
    there = states_of(inputs, (0.5, -0.5, 0.75))
    back = states_of(inputs[::-1], (-0.25, 0.5, 1.0))[::-1]
    looks = [exp(one - 0.5 * other) for one, other in zip(there, back, strict=True)]
    seen = [
        sum(look * state for look, state in zip(looks, states, strict=True)) / sum(looks) for states in (there, back)
    ]
    seen += [max(there), max(back)]
    scores = [sum(seen[row] * (row + 1) * (column - 1) / 8 for row in range(4)) + column / 16 for column in range(4)]
    expected = [score - log(sum(map(exp, scores))) for score in scores]
    odds = odds_of(network_of(SMALL), words, ["completion"])
    assert odds["completion"] == pytest.approx(expected, abs=1e-12)


@given(st.text(max_size=200))
def test_whatever_is_typed_gets_odds_for_every_answer(text: str) -> None:
    odds = second_reading(words_of(said(text).units)).odds
    assert {field: len(found) for field, found in odds.items()} == {f: len(answers) for f, answers in FIELDS.items()}
    for found in odds.values():
        assert sum(map(exp, found)) == pytest.approx(1)


def test_the_longest_message_of_the_platform_is_read() -> None:
    assert second_reading(words_of(said("done and " * 455).units)).odds


def test_letters_are_numbers_filled_up_or_cut_to_the_longest_word() -> None:
    assert letters_of("ab") == [1, 2, *[0] * (LONGEST - 2)]
    assert letters_of("é") == [len(LETTERS), *[0] * (LONGEST - 1)]
    assert len(letters_of("unbelievably-long")) == LONGEST


def test_likelihoods_are_told_as_logarithms() -> None:
    odds = {"red_flag": (log(0.5), log(0.125), log(0.25), log(0.125)), "completion": (log(0.25), log(0.5), -9.0, -9.0)}
    read = SecondReading(odds)
    assert read.unlikely("completion", Completion.DONE) == pytest.approx(log(2))
    assert read.unlikely("completion", None) == pytest.approx(log(4))
    level, likelier = read.flag()
    assert level is Flag.SAME_DAY
    assert likelier == pytest.approx(-log(2))
