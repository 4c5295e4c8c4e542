"""A small network over the words of a reply: how likely each answer to each question is. Knows no questions itself.

A word is what it means (learnt for the common ones) and how it is spelled (a convolution over its letters). Gated
recurrent units go over the words from both ends; each question looks at the words that matter to it and at the
strongest of each unit. Equations: Cho et al. 2014 (arXiv:1406.1078) in the form of Chung et al. 2014 (arXiv:1412.3555)
with the reset gate after the product, as PyTorch's `GRU` has them. What it has learnt is in `second_reading.npz`.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

FILE = Path(__file__).with_name("second_reading.npz")
LETTERS = " abcdefghijklmnopqrstuvwxyz0123456789'"
"""Letters by number, the first for none; what is not among them is the number after the last."""
LONGEST = 12
"""Letters of a word that are looked at."""
PAD, UNKNOWN = 0, 1
"""The first two words of the vocabulary: none, and any that is not in it."""


def letters_of(word: str) -> list[int]:
    """The numbers of a word's letters, filled up with none."""
    found = [LETTERS.find(letter) if letter in LETTERS else len(LETTERS) for letter in word[:LONGEST]]
    return found + [PAD] * (LONGEST - len(found))


@dataclass(frozen=True, slots=True)
class Network:
    """What was learnt: weights by name, each with its inputs as rows, and the numbers of the words."""

    weights: Mapping[str, Array]
    known: Mapping[str, int]


def network_of(stored: Mapping[str, NDArray[Any]]) -> Network:
    """The network of arrays as they are stored; `vocabulary` has the words as UTF-8, a line each."""
    words = stored["vocabulary"].tobytes().decode("utf-8").split("\n")
    weights = {name: stored[name].astype(np.float64) for name in stored if name != "vocabulary"}
    return Network(weights, {word: number for number, word in enumerate(words)})


@lru_cache(maxsize=1)
def network() -> Network:
    """What is stored beside this module."""
    with np.load(FILE, allow_pickle=False) as stored:
        return network_of(stored)


def odds_of(learnt: Network, told: Sequence[str], questions: Iterable[str]) -> dict[str, tuple[float, ...]]:
    """How likely each answer to each question is, as natural logarithms.

    The numbers are the same on every machine to at least six digits.
    """
    states = _states(learnt, told or ("",))
    return {question: tuple(map(float, _odds(learnt.weights, question, states))) for question in questions}


def _states(learnt: Network, told: Sequence[str]) -> Array:
    """What has been understood at each word, from the left and from the right."""
    meant = learnt.weights["word"][[learnt.known.get(word, UNKNOWN) for word in told]]
    inputs = np.concatenate([meant, _spelled(learnt.weights, told)], axis=1)
    there, back = _pass(learnt.weights, "forward", inputs), _pass(learnt.weights, "backward", inputs[::-1])
    return np.concatenate([there, back[::-1]], axis=1)


def _spelled(weights: Mapping[str, Array], told: Sequence[str]) -> Array:
    """What three neighbouring letters say, the strongest of a word."""
    letters = weights["letter"][[[PAD, *letters_of(word), PAD] for word in told]]
    windows = np.concatenate([letters[:, at : at + LONGEST] for at in range(3)], axis=2)
    return np.asarray(np.maximum(windows @ weights["spelling"] + weights["spelling.bias"], 0).max(axis=1))


def _pass(weights: Mapping[str, Array], way: str, inputs: Array) -> Array:
    """One way over the words; the three gates lie side by side: reset, update, new."""
    coming = inputs @ weights[f"{way}.input"] + weights[f"{way}.input.bias"]
    matrix, bias = weights[f"{way}.state"], weights[f"{way}.state.bias"]
    size = len(bias) // 3
    state, states = np.zeros(size), np.empty((len(inputs), size))
    for at, gates in enumerate(coming):
        held = state @ matrix + bias
        reset, update = np.split(1 / (1 + np.exp(-gates[: 2 * size] - held[: 2 * size])), 2)
        new = np.tanh(gates[2 * size :] + reset * held[2 * size :])
        states[at] = state = new + update * (state - new)
    return states


def _odds(weights: Mapping[str, Array], question: str, states: Array) -> Array:
    looks = states @ weights[f"{question}.look"]
    shares = np.exp(looks - looks.max())
    seen = np.concatenate([shares @ states / shares.sum(), states.max(axis=0)])
    scores = seen @ weights[f"{question}.answer"] + weights[f"{question}.answer.bias"]
    scores -= scores.max()
    return np.asarray(scores - np.log(np.exp(scores).sum()))
