"""Learns which words usually go with which answer, from the labelled replies, and writes plans/doubts_en.py.

`python -m tests.bench.doubting`. The same replies give the same table: rows in the order of the files, no chance.
Held-out replies are never read. Log-linear: for each answer the weights of a reply's words are added up; learnt by
gradient descent (each weight at its own falling pace) with a small pull to zero.
"""

from __future__ import annotations

import json
import math
import textwrap
from collections import Counter
from collections.abc import Iterable, Iterator
from pathlib import Path

from plans.doubt import ANY, HOW, UNSAID, WHY, words_of
from plans.scopes import said

REFERENCES = Path(__file__).parent.parent / "references"
TARGET = Path(__file__).parent.parent.parent / "plans" / "doubts_en.py"
SEEN_IN = 3
"""Replies that a word must stand in to get weights."""
ROUNDS, PACE, PULL = 16, 0.5, 0.0004
"""Passes over all replies; the first step of a weight; its pull to zero at each step. Our own choice."""
SCALE = 5
"""A whole weight of 5 is one natural logarithm of the odds."""

HEAD = '''"""Which words usually go with which answer. Written by `python -m tests.bench.doubting`, not by hand."""

WEIGHTS = """
'''
TAIL = '''"""
"""Each entry: a word of at least three replies ("<" first, ">" last, "#" a number, "_" every reply), and its weights in
the order of `doubt.HOW` and `doubt.WHY`; 5 is one natural logarithm of the odds."""
'''

Labelled = tuple[frozenset[str], str, str]


def main() -> None:
    """Writes the table anew."""
    table = learnt(list(_replies()))
    entries = "; ".join(" ".join((word, *map(str, weights))) for word, weights in sorted(table.items()))
    lines = textwrap.wrap(entries, 105, break_long_words=False, break_on_hyphens=False)
    TARGET.write_text(HEAD + "\n".join(lines) + "\n" + TAIL, encoding="utf-8")


def _replies() -> Iterator[Labelled]:
    for name in ("replies.tsv", "replies-by-others.tsv"):
        for line in (REFERENCES / name).read_text("utf-8").splitlines()[1:]:
            part, text, label = line.split("\t")
            if part not in ("held-out", "fresh"):
                yield labelled(text, json.loads(label))


def labelled(text: str, label: dict[str, str]) -> Labelled:
    """A reply as its words and the answers to "how much" and "why"."""
    return words_of(said(text)), label.get("completion") or UNSAID, label.get("why") or UNSAID


def learnt(replies: list[Labelled]) -> dict[str, tuple[int, ...]]:
    """For each common word its whole weights, in the order of HOW and WHY; words that tell little are left out."""
    how = _weights([(words, HOW.index(answer)) for words, answer, _ in replies], len(HOW))
    why = _weights([(words, WHY.index(answer)) for words, _, answer in replies], len(WHY))
    table = {word: tuple(round(SCALE * weight) for weight in (*how[word], *why[word])) for word in how}
    return {word: weights for word, weights in table.items() if any(weights) or word == ANY}


def _weights(replies: Iterable[tuple[frozenset[str], int]], answers: int) -> dict[str, list[float]]:
    rows = list(replies)
    seen = Counter(word for words, _ in rows for word in words)
    known = {word for word, times in seen.items() if times >= SEEN_IN and ";" not in word}
    weights = {word: [0.0] * answers for word in (*sorted(known), ANY)}
    pace = {word: [1e-8] * answers for word in weights}
    kept = [([*sorted(words & known), ANY], right) for words, right in rows]
    for _ in range(ROUNDS):
        for words, right in kept:
            _step(weights, pace, words, right)
    return weights


def _step(weights: dict[str, list[float]], pace: dict[str, list[float]], words: list[str], right: int) -> None:
    """One step down the slope of one reply."""
    sums = [sum(column) for column in zip(*(weights[word] for word in words), strict=True)]
    shares = [math.exp(total - max(sums)) for total in sums]
    slopes = [share / sum(shares) - (index == right) for index, share in enumerate(shares)]
    for word in words:
        own, passed = weights[word], pace[word]
        for index, slope in enumerate(slopes):
            push = slope + PULL * own[index]
            passed[index] += push * push
            own[index] -= PACE * push / math.sqrt(passed[index])


if __name__ == "__main__":
    main()
