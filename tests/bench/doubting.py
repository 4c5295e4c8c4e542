"""Learns which words usually go with which answer, from the labelled replies, and writes the tables of two voices.

`plans/doubts_en.py`: how much was done and why not. `plans/suspicions_en.py`: at which level a warning sign is.

`python -m tests.bench.doubting`. The same replies give the same table: rows in the order of the files, no chance.
Held-out replies are never read; those of other languages are learnt from as the grammar reads them, word for word in
English. Log-linear: for each answer the weights of a reply's words are added up; learnt by gradient descent (each
weight
at its own falling pace) with a small pull to zero.
"""

from __future__ import annotations

import json
import math
import textwrap
from collections import Counter
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

from plans.checkin import Kind
from plans.doubt import HOW, UNSAID, WHY
from plans.glossing import GLOSSED, in_english
from plans.redflags import SUSPECTED, flag_in
from plans.replies import STRONG
from plans.scopes import said
from plans.suspicion import LEVELS, NONE
from plans.weighing import ANY, felt_words_of, words_of

REFERENCES = Path(__file__).parent.parent / "references"
PLANS = Path(__file__).parent.parent.parent / "plans"
SEEN_IN = 3
"""Replies that a word must stand in to get weights."""
ROUNDS, PACE, PULL = 16, 0.5, 0.0004
"""Passes over all replies; the first step of a weight; its pull to zero at each step. Our own choice."""
SCALE = 5
"""A whole weight of 5 is one natural logarithm of the odds."""

HEAD = '''"""Which words usually go with which {of}. Written by `python -m tests.bench.doubting`, not by hand."""

WEIGHTS = """
'''
TAIL = '''"""
"""Each entry: a word of at least three replies ("<" first, ">" last, "#" a number, "_" every reply), and its weights in
the order of {order}; 5 is one natural logarithm of the odds."""
'''

Labelled = tuple[frozenset[str], str, str]


def main() -> None:
    """Writes the table anew."""
    replies = list(_replies())
    _write("doubts_en", "answer", "`doubt.HOW` and `doubt.WHY`", learnt([labelled(*reply) for reply in replies]))
    signs = [
        (felt_words_of(said(text)), LEVELS.index(label.get("red_flag") or NONE))
        for text, label in replies
        if _is_clear(text, label)
    ]
    _write("suspicions_en", "warning sign", "`suspicion.LEVELS`", whole(_weights(signs, len(LEVELS))))


def _is_clear(text: str, label: dict[str, Any]) -> bool:
    """Without what is flagged by its number or as sharp, and signs only asked about or past, which are asked back."""
    if (label.get("pain") or 0) >= STRONG or label.get("kind") == Kind.SHARP:
        return False
    found = flag_in(said(text)) if label.get("unsure") and not label.get("red_flag") else None
    return found is None or found.sign == SUSPECTED


def _write(name: str, of: str, order: str, table: dict[str, tuple[int, ...]]) -> None:
    entries = "; ".join(" ".join((word, *map(str, weights))) for word, weights in sorted(table.items()))
    lines = textwrap.wrap(entries, 105, break_long_words=False, break_on_hyphens=False)
    text = HEAD.format(of=of) + "\n".join(lines) + "\n" + TAIL.format(order=order)
    (PLANS / f"{name}.py").write_text(text, encoding="utf-8")


def _replies() -> Iterator[tuple[str, dict[str, Any]]]:
    for name in ("replies.tsv", "replies-by-others.tsv"):
        for line in (REFERENCES / name).read_text("utf-8").splitlines()[1:]:
            part, text, label = line.split("\t")
            if part not in ("held-out", "fresh"):
                yield text, json.loads(label)
    for language in GLOSSED:
        for line in (REFERENCES / f"replies-{language}.tsv").read_text("utf-8").splitlines():
            text, label = line.split("\t")
            yield in_english(text, language), json.loads(label)


def labelled(text: str, label: dict[str, str]) -> Labelled:
    """A reply as its words and the answers to "how much" and "why"."""
    return words_of(said(text)), label.get("completion") or UNSAID, label.get("why") or UNSAID


def learnt(replies: list[Labelled]) -> dict[str, tuple[int, ...]]:
    """For each common word its whole weights, in the order of HOW and WHY; words that tell little are left out."""
    how = _weights([(words, HOW.index(answer)) for words, answer, _ in replies], len(HOW))
    why = _weights([(words, WHY.index(answer)) for words, _, answer in replies], len(WHY))
    return whole({word: [*how[word], *why[word]] for word in how})


def whole(found: dict[str, list[float]]) -> dict[str, tuple[int, ...]]:
    """The weights in whole numbers; words that tell little are left out."""
    table = {word: tuple(round(SCALE * weight) for weight in weights) for word, weights in found.items()}
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
